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

const largestGap = (places: readonly number[]): number => {
  const sorted = [...places].sort((a, b) => a - b);
  let gap = 0;
  for (let i = 1; i < sorted.length; i += 1) gap = Math.max(gap, sorted[i] - sorted[i - 1]);
  return gap;
};

/** A rod counts from a billionth of the greatest tension on: less is the remainder of a calculation. */
const countsFrom = 1e-9;

export function findRodGroup({ rods, tensions, member }: RodGroupArgs): RodGroup {
  const greatest = Math.max(0, ...tensions);
  const isPulled = greatest > 0;
  const chosen = rods.map((rod, i) => ({ ...rod, T: isPulled ? tensions[i] : 1 })).filter(({ T }) => !isPulled || T > countsFrom * greatest);
  const sum = (of: (rod: { x: number; y: number; T: number }) => number): number => chosen.reduce((total, rod) => total + of(rod), 0);
  const weight = sum(({ T }) => T);
  const n = chosen.length;
  const xs = chosen.map(({ x }) => x);
  const ys = chosen.map(({ y }) => y);
  const edges = [Math.min(...xs) - member.west, member.east - Math.max(...xs), Math.min(...ys) - member.south, member.north - Math.max(...ys)];
  return {
    rods: chosen.map(({ x, y }) => ({ x, y })),
    isPulled,
    total: isPulled ? weight : 0,
    greatest,
    eccentricityX: Math.abs(sum(({ x, T }) => T * x) / weight - sum(({ x }) => x) / n),
    eccentricityY: Math.abs(sum(({ y, T }) => T * y) / weight - sum(({ y }) => y) / n),
    spacing: Math.max(largestGap(xs), largestGap(ys)),
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
