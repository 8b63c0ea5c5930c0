/**
 * Bending of a base plate by rods that pull beside a square tube. The tension of a rod spreads at 45° toward the line the plate bends
 * on, so the width that bends with one rod is at most twice its distance from that line, and less where the plate ends or the steel works
 * with the next rod. A rod off a side of the tube bends the plate on a line along that side; a rod off a corner bends it on the
 * diagonal line across that corner.
 */
import type { Routine } from "../formula/types.js";
import type { Point } from "./rectangles.js";

export interface BendLineArgs {
  /** Plate, along x and y, m. */
  readonly width: number;
  readonly length: number;
  /** Half the side of the square the plate bends about, m; along x where it is a rectangle. */
  readonly half: number;
  /** Half its side along y, where that is another. */
  readonly halfY?: number;
  readonly rods: readonly Point[];
  /** N, in the same order. */
  readonly tensions: readonly number[];
}

export interface BendLine {
  /** Number of the rod, from 1. */
  readonly rod: number;
  readonly line: "side" | "corner";
  readonly tension: number;
  /** From the rod to the line, m. */
  readonly distance: number;
  /** Width of the plate that bends with this rod, m. */
  readonly width: number;
}

const same = 1e-9;

/** Rods within an inch of each other's line pull on one bend line, m. */
const oneRow = 0.0254;

const halfAlong = ({ half, halfY }: BendLineArgs, axis: "x" | "y"): number => (axis === "x" ? half : (halfY ?? half));

/** Part of the width on one side of a rod: to 45°, to the plate's edge, or half way to the next rod in the row. */
const reachAlong = (distance: number, toEdge: number, neighbors: readonly number[]): number => Math.max(0, Math.min(distance, toEdge, ...neighbors.map((gap) => gap / 2)));

function sideLine(args: BendLineArgs, i: number, axis: "x" | "y"): BendLine {
  const rod = args.rods[i];
  const along = axis === "x" ? "y" : "x";
  const halfPlate = (axis === "x" ? args.length : args.width) / 2;
  const distance = Math.abs(rod[axis]) - halfAlong(args, axis);
  const gaps = args.rods.filter((other, j) => j !== i && Math.abs(other[axis] - rod[axis]) < oneRow).map((other) => other[along] - rod[along]);
  const up = reachAlong(distance, halfPlate - rod[along], gaps.filter((gap) => gap > 0));
  const down = reachAlong(distance, halfPlate + rod[along], gaps.filter((gap) => gap < 0).map((gap) => -gap));
  return { rod: i + 1, line: "side", tension: args.tensions[i], distance, width: up + down };
}

/** The diagonal line across a corner, or undefined where it does not meet both sides of that corner's quarter of the plate. */
function cornerLine(args: BendLineArgs, i: number): BendLine | undefined {
  // By symmetry the corner is looked at as the northeast one.
  const x = Math.abs(args.rods[i].x);
  const y = Math.abs(args.rods[i].y);
  const both = halfAlong(args, "x") + halfAlong(args, "y");
  const distance = (x + y - both) / Math.SQRT2;
  const foot = { x: (both + x - y) / 2, y: (both + y - x) / 2 };
  if (foot.x <= 0 || foot.y <= 0) return undefined;
  // Past the middle of the plate the steel works with the rods of the next corner. The plate's edges never cut the 45° spread of a rod
  // that stands within them.
  const width = Math.min(distance, foot.y * Math.SQRT2) + Math.min(distance, foot.x * Math.SQRT2);
  return { rod: i + 1, line: "corner", tension: args.tensions[i], distance, width };
}

const momentOf = ({ tension, distance, width }: BendLine): number => (width > 0 ? (tension * distance) / width : 0);

/** The bend line with the most moment per width, or undefined where no rod beside the tube pulls. */
export function worstBendLine(args: BendLineArgs): BendLine | undefined {
  let worst: BendLine | undefined;
  for (let i = 0; i < args.rods.length; i += 1) {
    if (!(args.tensions[i] > 0)) continue;
    const outX = Math.abs(args.rods[i].x) - halfAlong(args, "x") > same;
    const outY = Math.abs(args.rods[i].y) - halfAlong(args, "y") > same;
    if (!outX && !outY) continue;
    const farAxis = Math.abs(args.rods[i].x) >= Math.abs(args.rods[i].y) ? "x" : "y";
    const line = (outX && outY ? cornerLine(args, i) : undefined) ?? sideLine(args, i, farAxis);
    if (!worst || momentOf(line) > momentOf(worst)) worst = line;
  }
  return worst;
}

/** {@link worstBendLine} as a step of a calculation. */
export const bendLine: Routine<BendLineArgs, BendLine | undefined> = {
  id: "mechanics.plate-bend-line",
  title: "Line the plate bends on under the rod that strains it most",
  method: "tension spread at 45° to a line along the tube's side, or to the diagonal line across its corner; clipped by the plate's edges, its middle lines and half way to the next rod",
  source: "common practice, no single source; bend lines at 0.95 of the tube's side as in AISC Design Guide 1, 3rd ed.",
  run: worstBendLine,
  show: (args, found) => ({
    given: [
      { symbol: "B", meaning: "plate, east to west", kind: "length", value: args.width },
      { symbol: "L", meaning: "plate, north to south", kind: "length", value: args.length },
      { symbol: "c_x", meaning: "half the rectangle the plate bends about, along x", kind: "length", value: args.half },
      { symbol: "c_y", meaning: "half of it along y", kind: "length", value: halfAlong(args, "y") },
    ],
    found: found
      ? [
          { symbol: "i", meaning: `rod that strains the plate most, off a ${found.line} of the tube`, kind: "number", value: found.rod },
          { symbol: "T", meaning: "its tension", kind: "force", value: found.tension },
          { symbol: "a", meaning: "from the rod to the bend line", kind: "length", value: found.distance },
          { symbol: "b_eff", meaning: "width of the plate that bends with it", kind: "length", value: found.width },
        ]
      : [],
  }),
};
