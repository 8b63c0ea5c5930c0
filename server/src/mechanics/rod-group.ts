/** The rods of a base that pull together: their sum, its eccentricity, and how far they stand from the edges of the concrete. */
import type { Routine } from "../formula/types.js";
import type { Point, Rectangle } from "./rectangles.js";

export interface RodGroupArgs {
  /** Rods from the center of the plate, m. */
  readonly rods: readonly Point[];
  /** Tension of each, N, in the same order. */
  readonly tensions: readonly number[];
  /** Edges of the concrete from the same center, m. */
  readonly member: Rectangle;
}

export interface RodGroup {
  /** The rods in tension; all rods when none is. */
  readonly rods: readonly Point[];
  /** Which rods these are, as a sum of powers of two; equal for equal groups of one pattern. */
  readonly pattern: number;
  readonly isPulled: boolean;
  /** Sum of the tensions and the greatest of them, N. */
  readonly total: number;
  readonly greatest: number;
  /** Distance of the resultant from the middle of the rods in tension, along x and y, m. */
  readonly eccentricityX: number;
  readonly eccentricityY: number;
  /** Largest spacing between neighboring rows of rods in tension, along either axis, m; 0 for one rod. */
  readonly spacing: number;
  /** From the outermost rods in tension to the west, east, south and north edge, m. */
  readonly edges: readonly number[];
  readonly leastEdge: number;
}

/** Largest gap between neighboring places; the list is short. */
function largestGap(places: number[]): number {
  places.sort((a, b) => a - b);
  let gap = 0;
  for (let i = 1; i < places.length; i += 1) gap = Math.max(gap, places[i] - places[i - 1]);
  return gap;
}

/** A rod counts from a billionth of the greatest tension on: less is the remainder of a calculation. */
const countsFrom = 1e-9;

export function findRodGroup({ rods, tensions, member }: RodGroupArgs): RodGroup {
  const greatest = Math.max(0, ...tensions);
  const isPulled = greatest > 0;
  const chosen: Point[] = [];
  const xs: number[] = [];
  const ys: number[] = [];
  let pattern = 0;
  let total = 0;
  let momentX = 0;
  let momentY = 0;
  let sumX = 0;
  let sumY = 0;
  for (let i = 0; i < rods.length; i += 1) {
    if (isPulled && !(tensions[i] > countsFrom * greatest)) continue;
    const { x, y } = rods[i];
    const T = isPulled ? tensions[i] : 1;
    chosen.push(rods[i]);
    xs.push(x);
    ys.push(y);
    pattern += 2 ** i;
    total += T;
    momentX += T * x;
    momentY += T * y;
    sumX += x;
    sumY += y;
  }
  const spacing = Math.max(largestGap(xs), largestGap(ys));
  // Both lists are in order now.
  const last = xs.length - 1;
  const edges = [xs[0] - member.west, member.east - xs[last], ys[0] - member.south, member.north - ys[last]];
  return {
    rods: chosen,
    pattern,
    isPulled,
    total: isPulled ? total : 0,
    greatest,
    eccentricityX: Math.abs(momentX / total - sumX / chosen.length),
    eccentricityY: Math.abs(momentY / total - sumY / chosen.length),
    spacing,
    edges,
    leastEdge: Math.min(...edges),
  };
}

/** {@link findRodGroup} as a step of a calculation. */
export const rodGroup: Routine<RodGroupArgs, RodGroup> = {
  id: "mechanics.rod-group",
  title: "Rods in tension as a group",
  method: "sum and resultant of the rod tensions, against the middle of the rods that pull",
  source: "statics; the group is that of ACI 318-19, 17.5.1.3",
  run: findRodGroup,
  show: ({ member }, group) => ({
    given: [
      { symbol: "B", meaning: "concrete, east to west", kind: "length", value: member.east - member.west },
      { symbol: "L", meaning: "concrete, north to south", kind: "length", value: member.north - member.south },
    ],
    found: [
      { symbol: "n", meaning: group.isPulled ? "rods in tension" : "rods, none in tension", kind: "number", value: group.rods.length },
      { symbol: "N_ua", meaning: "tension of the group", kind: "force", value: group.total },
      { symbol: "N_ua,i", meaning: "tension of the rod that pulls most", kind: "force", value: group.greatest },
      { symbol: "e'_Nx", meaning: "eccentricity along x", kind: "length", value: group.eccentricityX },
      { symbol: "e'_Ny", meaning: "eccentricity along y", kind: "length", value: group.eccentricityY },
      { symbol: "s", meaning: "largest spacing of rows", kind: "length", value: group.spacing },
      { symbol: "c_a,min", meaning: "least edge distance", kind: "length", value: group.leastEdge },
    ],
  }),
};
