/** Forces as cells of a table: the unit stands in the head, so that the numbers of a column stand in one unit, that of its largest. */
import type { ForcesReport } from "../../../shared/report.js";
import { columnUnit } from "../units/format.js";
import type { DisplayUnit, UnitSystem } from "../units/kinds.js";

const columns = [
  ["P", "force"],
  ["Vx", "force"],
  ["Vy", "force"],
  ["Mx", "moment"],
  ["My", "moment"],
  ["Mz", "moment"],
] as const;

/** Less than this, in the unit of the head, is rounding. */
const nothing = 0.0005;

function numeral(value: number, { factor }: DisplayUnit): string {
  const shown = Number((value / factor).toPrecision(4));
  return Math.abs(shown) < nothing ? "0" : String(shown);
}

export interface ForceColumns {
  readonly heads: readonly string[];
  /** The cells of each row, in the order given. */
  readonly rows: readonly (readonly string[])[];
}

/** The columns of forces of a table, all of whose rows are given at once. */
export function forceColumns(forces: readonly ForcesReport[], system: UnitSystem): ForceColumns {
  const valueOf = (one: ForcesReport, name: keyof ForcesReport): number => one[name]?.value ?? 0;
  // Torsion has a column where some row has any.
  const shown = columns.filter(([name]) => name !== "Mz" || forces.some((one) => one.Mz !== undefined));
  const units = shown.map(([name, kind]) => columnUnit(forces.map((one) => valueOf(one, name)), kind, system));
  return {
    heads: shown.map(([name], i) => `${name}, ${units[i].unit}`),
    rows: forces.map((one) => shown.map(([name], i) => numeral(valueOf(one, name), units[i]))),
  };
}
