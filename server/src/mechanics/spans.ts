/** Equal simple spans in a row under a load that changes in steps from one end. */
import { routine } from "../formula/calc.js";

export interface SteppedSpans {
  readonly spans: number;
  /** Of one span, m. */
  readonly length: number;
  /** The steps are counted in multiples of this length, m. */
  readonly unit: number;
  /** Load per length of each step and where it ends, in multiples of the unit from the end of the row. */
  readonly steps: readonly { readonly to: number; readonly value: number }[];
}

/** Reactions of the supports, from the end the steps begin at. */
export function steppedReactions({ spans, length, unit, steps }: SteppedSpans): readonly number[] {
  const reactions = Array.from({ length: spans + 1 }, () => 0);
  let from = 0;
  for (const { to, value } of steps) {
    const end = Math.min(to * unit, spans * length);
    for (let span = 0; span < spans; span++) {
      const a = Math.max(from, span * length);
      const b = Math.min(end, (span + 1) * length);
      if (b <= a) continue;
      const far = ((a + b) / 2 - span * length) / length;
      reactions[span] += value * (b - a) * (1 - far);
      reactions[span + 1] += value * (b - a) * far;
    }
    from = Math.max(from, end);
  }
  return reactions;
}

/** The greater of the reactions of each support with the steps from either end. */
export const eitherEnd = routine<SteppedSpans, readonly number[]>({
  id: "mechanics.stepped-spans",
  title: "Load of each support with the steps from either end",
  method: "simple spans by lever; of both ends of the row the one that brings more to the support",
  source: "statics; common practice, no single source",
  run: (of) => {
    const one = steppedReactions(of);
    return one.map((reaction, i) => Math.max(reaction, one[one.length - 1 - i]));
  },
  show: ({ spans, length, unit, steps }, found) => ({
    given: [
      { symbol: "n", meaning: "spans", kind: "number", value: spans },
      { symbol: "B", meaning: "length of a span", kind: "distance", value: length },
      { symbol: "s", meaning: "unit of the steps", kind: "distance", value: unit },
      ...steps.map(({ value }, i) => ({ symbol: `C_${i + 1}`, meaning: `load of step ${i + 1}`, kind: "ratio" as const, value })),
    ],
    found: found.map((value, i) => ({ symbol: `l_${i + 1}`, meaning: `load times length, support ${i + 1}`, kind: "distance" as const, value })),
  }),
});
