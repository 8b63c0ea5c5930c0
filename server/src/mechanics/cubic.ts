import type { Routine } from "../formula/types.js";

/** Terms of d³ = a d + b; with d a length, `a` is in m² and `b` in m³. Neither may be negative. */
export interface CubicTerms {
  readonly a: number;
  readonly b: number;
}

/**
 * The positive root of d³ = a d + b for a, b >= 0 (one exists by Descartes' rule of signs), or 0 when both are 0. NaN when a
 * term is negative or not finite.
 */
export function positiveCubicRoot({ a, b }: CubicTerms): number {
  if (!(a >= 0 && b >= 0 && Number.isFinite(a) && Number.isFinite(b))) return Number.NaN;
  // Scaled so that neither term exceeds 1: no power can overflow, whatever the units.
  const scale = Math.max(Math.sqrt(a), Math.cbrt(b));
  if (scale === 0) return 0;
  const p = (Math.sqrt(a) / scale) ** 2;
  const q = (Math.cbrt(b) / scale) ** 3;
  // This start is never below the root, and the curve is convex there, so that Newton's steps fall onto it from the right.
  let d = Math.sqrt(p) + Math.cbrt(q);
  for (let i = 0; i < 60; i++) {
    const next = (2 * d ** 3 + q) / (3 * d ** 2 - p);
    if (!(next < d)) break;
    d = next;
  }
  return d * scale;
}

/** {@link positiveCubicRoot} as a step of a calculation. */
export const cubicRoot: Routine<CubicTerms, number> = {
  id: "mechanics.cubic-root",
  title: "Positive root of d³ = a·d + b",
  method: "Newton's method from a start that is never below the root, so that it cannot miss the one positive root",
  source: "standard numerical method",
  run: positiveCubicRoot,
  show: ({ a, b }, root) => ({
    given: [
      { symbol: "a", meaning: "factor of the linear term", kind: "planArea", value: a },
      { symbol: "b", meaning: "constant term", kind: "volume", value: b },
    ],
    found: [{ symbol: "d", meaning: "positive root", kind: "distance", value: root }],
  }),
};
