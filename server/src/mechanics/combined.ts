/** Forces of many combinations of the same load cases at one column. The cases are laid out as plain numbers once, as every column has some hundred combinations. */
import { routine } from "../formula/calc.js";
import type { Forces } from "./forces.js";

/** What a load case does to a column. */
export interface CaseAtColumn {
  readonly top: Forces;
  readonly base: Forces;
  /** Movement of the column top in plan, m; left out where it is not known. */
  readonly sway?: { readonly x: number; readonly y: number };
}

const each = 14;

/** Load cases of one column in a row of numbers: top, base, movement. */
export function laidOut(cases: readonly CaseAtColumn[]): Float64Array {
  const row = new Float64Array(cases.length * each);
  let i = 0;
  for (const { top, base, sway } of cases) {
    row[i] = top.P;
    row[i + 1] = top.Vx;
    row[i + 2] = top.Vy;
    row[i + 3] = top.Mx;
    row[i + 4] = top.My;
    row[i + 5] = top.Mz ?? 0;
    row[i + 6] = base.P;
    row[i + 7] = base.Vx;
    row[i + 8] = base.Vy;
    row[i + 9] = base.Mx;
    row[i + 10] = base.My;
    row[i + 11] = base.Mz ?? 0;
    row[i + 12] = sway ? sway.x : Number.NaN;
    row[i + 13] = sway ? sway.y : Number.NaN;
    i += each;
  }
  return row;
}

export interface CombinedArgs {
  /** Of {@link laidOut}. */
  readonly row: Float64Array;
  /** Places of the cases in the row, each with the factor of its term and whether that is a permanent load. */
  readonly at: readonly number[];
  readonly terms: readonly { readonly factor: number; readonly isPermanent: boolean }[];
}

export interface CombinedForces {
  readonly top: Forces;
  readonly base: Forces;
  /** The part of the axial force at the base that is permanent. */
  readonly dead: number;
  /** Left out where the movement of a case is not known. */
  readonly sway?: { readonly x: number; readonly y: number };
}

/** Filled anew on every call. */
const sums = new Float64Array(each);

const forcesFrom = (i: number): Forces =>
  sums[i + 5] === 0
    ? { P: sums[i], Vx: sums[i + 1], Vy: sums[i + 2], Mx: sums[i + 3], My: sums[i + 4] }
    : { P: sums[i], Vx: sums[i + 1], Vy: sums[i + 2], Mx: sums[i + 3], My: sums[i + 4], Mz: sums[i + 5] };

/** Sum of factor times force over the chosen cases. */
export function combineRow({ row, at, terms }: CombinedArgs): CombinedForces {
  sums.fill(0);
  let dead = 0;
  for (let i = 0; i < at.length; i++) {
    const { factor, isPermanent } = terms[i];
    const from = at[i] * each;
    for (let k = 0; k < each; k++) sums[k] += factor * row[from + k];
    if (isPermanent) dead += factor * row[from + 6];
  }
  const isSwayKnown = !Number.isNaN(sums[12]);
  return { top: forcesFrom(0), base: forcesFrom(6), dead, sway: isSwayKnown ? { x: sums[12], y: sums[13] } : undefined };
}

/** {@link combineRow} as a step of a calculation. */
export const combinedForces = routine<CombinedArgs, CombinedForces>({
  id: "mechanics.combination",
  title: "Forces of a combination",
  method: "each force is the sum of factor times force over the load cases",
  source: "linear superposition; common practice, no single source",
  run: combineRow,
  show: ({ row, at, terms }, { base }) => ({
    given: at.flatMap((place, i) => [
      { symbol: `f_${i + 1}`, meaning: `factor of case ${i + 1}`, kind: "number" as const, value: terms[i].factor },
      { symbol: `P_${i + 1}`, meaning: `axial force of case ${i + 1}, compression positive`, kind: "force" as const, value: row[place * each + 6] },
    ]),
    found: [
      { symbol: "P", meaning: "axial force at the base, compression positive", kind: "force", value: base.P },
      { symbol: "V", meaning: "shear at the base", kind: "force", value: Math.hypot(base.Vx, base.Vy) },
      { symbol: "M", meaning: "moment at the base", kind: "moment", value: Math.hypot(base.Mx, base.My) },
    ],
  }),
});
