/** Forces as cells of a table: the unit stands in the head, so that the numbers of a column stand in one unit. */
import type { Amount, ForcesReport } from "../../../shared/report.js";
import { kinds, type UnitSystem } from "../units/kinds.js";

const columns = [
  ["P", "force"],
  ["Vx", "force"],
  ["Vy", "force"],
  ["Mx", "moment"],
  ["My", "moment"],
] as const;

/** Less than this, in the unit of the head, is rounding. */
const nothing = 0.0005;

function numeral({ value }: Amount, kind: "force" | "moment", system: UnitSystem): string {
  const shown = Number((value / kinds[kind][system].factor).toPrecision(4));
  return Math.abs(shown) < nothing ? "0" : String(shown);
}

export const forceHeads = (system: UnitSystem): readonly string[] => columns.map(([name, kind]) => `${name}, ${kinds[kind][system].unit}`);

export const forceCells = (forces: ForcesReport, system: UnitSystem): readonly string[] => columns.map(([name, kind]) => numeral(forces[name], kind, system));
