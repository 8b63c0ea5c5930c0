/** Sums over the columns that sway together. */
import { routine } from "../formula/calc.js";

export interface LeaningLoad {
  /** Compression of each column, N; negative in tension. */
  readonly P: readonly number[];
  /** Its height, m. */
  readonly h: readonly number[];
}

/** The push per movement that vertical loads put on leaning columns, N/m: the sum of P over h. Tension pulls upright. */
export const leaningOf = ({ P, h }: LeaningLoad): number => P.reduce((sum, one, i) => sum + one / h[i], 0);

/** {@link leaningOf} as a step of a calculation. */
export const leaning = routine<LeaningLoad, number>({
  id: "mechanics.story-leaning",
  title: "Push of the vertical loads per movement of the column tops",
  method: "sum over the columns of axial force over height",
  source: "statics of leaning columns; with equal heights it is the story's load over its height, as in AISC 360-22 Appendix 8",
  run: leaningOf,
  show: ({ P, h }, sum) => ({
    given: P.flatMap((one, i) => [
      { symbol: `P_${i + 1}`, meaning: `compression of column ${i + 1} of the story`, kind: "force" as const, value: one },
      { symbol: `h_${i + 1}`, meaning: `height of column ${i + 1} of the story`, kind: "distance" as const, value: h[i] },
    ]),
    found: [{ symbol: "k_P", meaning: "push of the vertical loads per movement", kind: "stiffness", value: sum }],
  }),
});

export interface FactoredSway {
  readonly factor: number;
  readonly sway: { readonly x: number; readonly y: number };
}

/** Movements of several load cases with their factors, m. */
export const swaySum = routine<readonly FactoredSway[], { readonly x: number; readonly y: number }>({
  id: "mechanics.sway-sum",
  title: "Movement of the column top under a combination",
  method: "sum of factor times movement over the load cases",
  source: "linear superposition; common practice, no single source",
  run: (parts) => ({ x: parts.reduce((sum, { factor, sway }) => sum + factor * sway.x, 0), y: parts.reduce((sum, { factor, sway }) => sum + factor * sway.y, 0) }),
  show: (parts, { x, y }) => ({
    given: parts.map(({ factor }, i) => ({ symbol: `f_${i + 1}`, meaning: `factor of case ${i + 1}`, kind: "number" as const, value: factor })),
    found: [
      { symbol: "u_x", meaning: "movement to the east", kind: "length", value: x },
      { symbol: "u_y", meaning: "movement to the north", kind: "length", value: y },
    ],
  }),
});
