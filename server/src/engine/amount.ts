import type { Amount } from "../../../shared/report.js";
import { format } from "../units/format.js";
import { kinds, type KindName, type UnitSystem } from "../units/kinds.js";

/** A value of the report: SI, and as the notebook's unit system shows it. */
export const amount = (value: number, kind: KindName, system: UnitSystem): Amount => ({ value, unit: kinds[kind].si, shown: format(value, kind, system) });
