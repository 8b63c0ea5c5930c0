/**
 * Loads on one side of a roof that stands on a single line of columns, or on a single column. What is alike all over the roof bends no column
 * there; on one side alone it bends them all. Roofs on more lines are left to their beams.
 */
import { isAbove, isBelow } from "../../mechanics/compare.js";
import type { Edge } from "../demand.js";
import type { PlanRectangle, RoofPlane } from "../roof-plane.js";

/** The part of the roof on one side of the columns, and the part on the other. */
export interface OneSide {
  readonly toward: Edge;
  readonly there: PlanRectangle;
  readonly rest: PlanRectangle;
}

interface Place {
  readonly x: number;
  readonly y: number;
}

/** The coordinate all columns share, or undefined where they do not, or where it leaves nothing on one side. */
function shared(posts: readonly Place[], axis: "x" | "y", size: number): number | undefined {
  const [first, ...others] = posts.map((post) => post[axis]);
  if (first === undefined || !(first > 0) || !(first < size)) return undefined;
  return others.every((one) => !isAbove(one, first) && !isBelow(one, first)) ? first : undefined;
}

/** The sides of the line the columns stand in; none where they stand in more than one. */
export function sidesOfLine({ length, width }: Pick<RoofPlane, "length" | "width">, posts: readonly Place[]): readonly OneSide[] {
  const whole = { x1: 0, x2: length, y1: 0, y2: width };
  const y = shared(posts, "y", width);
  const x = shared(posts, "x", length);
  const across = (a: Edge, partA: PlanRectangle, b: Edge, partB: PlanRectangle): readonly OneSide[] => [
    { toward: a, there: partA, rest: partB },
    { toward: b, there: partB, rest: partA },
  ];
  return [
    ...(y === undefined ? [] : across("north", { ...whole, y1: y }, "south", { ...whole, y2: y })),
    ...(x === undefined ? [] : across("east", { ...whole, x1: x }, "west", { ...whole, x2: x })),
  ];
}
