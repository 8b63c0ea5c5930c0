import type { Routine } from "../formula/types.js";
import type { Forces } from "./forces.js";

export interface TwoAnswers {
  readonly first: readonly Forces[];
  readonly second: readonly Forces[];
}

export interface Difference {
  /** N */
  readonly force: number;
  /** N·m */
  readonly moment: number;
  /** The larger of both, each as a part of the largest force or moment of its kind; 0 where there is none. */
  readonly part: number;
}

const forces = ({ P, Vx, Vy }: Forces): readonly number[] => [P, Vx, Vy];
const moments = ({ Mx, My }: Forces): readonly number[] => [Mx, My];

/** How far two sets of forces at the same places lie apart. */
export function differenceOf({ first, second }: TwoAnswers): Difference {
  const apart = (of: (one: Forces) => readonly number[]): number => Math.max(0, ...first.flatMap((one, i) => of(one).map((value, k) => Math.abs(value - of(second[i])[k]))));
  const largest = (of: (one: Forces) => readonly number[]): number => Math.max(0, ...[...first, ...second].flatMap((one) => of(one).map(Math.abs)));
  const [force, moment] = [apart(forces), apart(moments)];
  const [largestForce, largestMoment] = [largest(forces), largest(moments)];
  return { force, moment, part: Math.max(largestForce > 0 ? force / largestForce : 0, largestMoment > 0 ? moment / largestMoment : 0) };
}

/** {@link differenceOf} as a step of a calculation. */
export const largestDifference: Routine<TwoAnswers, Difference> = {
  id: "mechanics.largest-difference",
  title: "Largest difference of the two routes at any column base",
  method: "each force and moment of one route against the same of the other",
  source: "comparison; no source",
  run: differenceOf,
  show: ({ first }, { force, moment, part }) => ({
    given: [{ symbol: "n", meaning: "columns", kind: "number", value: first.length }],
    found: [
      { symbol: "d_F", meaning: "largest difference of a force", kind: "force", value: force },
      { symbol: "d_M", meaning: "largest difference of a moment", kind: "moment", value: moment },
      { symbol: "d", meaning: "the larger of both as a part of the largest force or moment", kind: "ratio", value: part },
    ],
  }),
};
