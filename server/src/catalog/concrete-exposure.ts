/**
 * What the exposure of concrete asks of its mix: least strength, largest ratio of water to cementitious materials, air. ACI 318-19 Table 19.3.2.1 and
 * Table 19.3.3.1 (from memory); the values are those of ACI 318-14.
 */
import { readQuantity } from "../units/parse.js";

export type ExposureClass = "F0" | "F1" | "F2" | "F3" | "S0" | "S1" | "S2" | "S3" | "W0" | "W1" | "W2" | "C0" | "C1" | "C2";

export interface MixNeeded {
  /** Least f'c, Pa. */
  readonly strength: number;
  /** Largest ratio of water to cementitious materials; left out where none is set. */
  readonly waterCement?: number;
}

const SI = (text: string, kind: "stress" | "length"): number => {
  const read = readQuantity(text, kind);
  return read.ok ? read.value : Number.NaN;
};

const mix = (strength: string, waterCement?: number): MixNeeded => ({ strength: SI(strength, "stress"), waterCement });

/** ACI 318-19 Table 19.3.2.1, normalweight concrete; S3 by its first option. */
export const mixNeeded: Readonly<Record<ExposureClass, MixNeeded>> = {
  F0: mix("2500 psi"),
  F1: mix("3500 psi", 0.55),
  F2: mix("4500 psi", 0.45),
  F3: mix("5000 psi", 0.4),
  S0: mix("2500 psi"),
  S1: mix("4000 psi", 0.5),
  S2: mix("4500 psi", 0.45),
  S3: mix("4500 psi", 0.45),
  W0: mix("2500 psi"),
  W1: mix("2500 psi"),
  W2: mix("4000 psi", 0.5),
  C0: mix("2500 psi"),
  C1: mix("2500 psi"),
  C2: mix("5000 psi", 0.4),
};

interface AirRow {
  /** Largest nominal size of the aggregate, m. */
  readonly aggregate: number;
  readonly F1: number;
  readonly F2: number;
}

const air = (aggregate: string, F1: number, F2: number): AirRow => ({ aggregate: SI(aggregate, "length"), F1, F2 });

/** ACI 318-19 Table 19.3.3.1: total air by the size of the aggregate; F3 as F2. As delivered it may differ by 1.5 points. */
const airRows: readonly AirRow[] = [
  air("3/8 in", 0.06, 0.075),
  air("1/2 in", 0.055, 0.07),
  air("3/4 in", 0.05, 0.06),
  air("1 in", 0.045, 0.06),
  air("1-1/2 in", 0.045, 0.055),
  air("2 in", 0.04, 0.05),
  air("3 in", 0.035, 0.045),
];

/** A size given in other units may miss its row by the rounding of its last digit, m. */
const rounding = 3e-4;

/** Total air for a class of freezing and an aggregate, by the row of that size or of the next smaller one; undefined below the table. */
export function airFor(freezing: "F1" | "F2" | "F3", aggregate: number): number | undefined {
  const row = airRows.filter((each) => each.aggregate <= aggregate + rounding).at(-1);
  return row && (freezing === "F1" ? row.F1 : row.F2);
}
