/** How a pattern of rods stands against a twist about its middle: all of them by their distances, or two of them as a couple. */
import type { Routine } from "../formula/types.js";
import type { Point } from "./rectangles.js";

export interface RodTwist {
  /** Rods from their own middle: the farthest along x and along y, and straight out, m. */
  readonly x: number;
  readonly y: number;
  readonly r: number;
  /** Sum of the squares of their distances, m². */
  readonly squares: number;
  /** Least distance of two rods, m; 0 where there is one. */
  readonly pair: number;
}

/** Rods nearer to each other than this stand in one place, m. */
const onePlace = 1e-9;

/** Places of the rods are from any origin, m. Undefined where they cannot hold a twist: one rod, or all in one place. */
export function twistOf(rods: readonly Point[]): RodTwist | undefined {
  const n = rods.length;
  const middle = { x: rods.reduce((sum, { x }) => sum + x, 0) / n, y: rods.reduce((sum, { y }) => sum + y, 0) / n };
  const places = rods.map(({ x, y }) => ({ x: x - middle.x, y: y - middle.y }));
  const most = (of: (place: Point) => number): number => places.reduce((far, place) => Math.max(far, of(place)), 0);
  let pair = Number.POSITIVE_INFINITY;
  for (let i = 0; i < n; i += 1) for (let j = i + 1; j < n; j += 1) pair = Math.min(pair, Math.hypot(rods[i].x - rods[j].x, rods[i].y - rods[j].y));
  if (n < 2 || !(pair > onePlace)) return undefined;
  return {
    x: most(({ x }) => Math.abs(x)),
    y: most(({ y }) => Math.abs(y)),
    r: most(({ x, y }) => Math.hypot(x, y)),
    squares: places.reduce((sum, { x, y }) => sum + x * x + y * y, 0),
    pair,
  };
}

/** {@link twistOf} as a step of a calculation. */
export const rodTwist: Routine<readonly Point[], RodTwist | undefined> = {
  id: "mechanics.rod-twist",
  title: "Rods against a twist of the base",
  method: "distances of the rods from their own middle, and the sum of their squares",
  source: "statics of a stiff plate on like rods; common practice, no single source",
  run: twistOf,
  show: (rods, found) => ({
    given: [{ symbol: "n", meaning: "rods", kind: "number", value: rods.length }],
    found: found
      ? [
          { symbol: "x_m", meaning: "farthest rod from the middle, along x", kind: "length", value: found.x },
          { symbol: "y_m", meaning: "farthest rod from the middle, along y", kind: "length", value: found.y },
          { symbol: "r_m", meaning: "farthest rod from the middle", kind: "length", value: found.r },
          { symbol: "J_r", meaning: "sum of the squares of the distances", kind: "area", value: found.squares },
          { symbol: "s", meaning: "least distance of two rods", kind: "length", value: found.pair },
        ]
      : [],
  }),
};
