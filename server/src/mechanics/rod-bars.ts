/** Which bars beside a group of anchor rods each rod leans on by inclined struts: the bars within reach of it, each shared by the rods nearest to it. */
import type { Point } from "./rectangles.js";

export interface RodBarsArgs {
  readonly rods: readonly Point[];
  readonly bars: readonly Point[];
  /** How far from a rod a bar still counts, m. */
  readonly reach: number;
}

/** What one rod leans on. */
export interface RodBars {
  /** Bars of this rod, shared ones in parts. */
  readonly count: number;
  /** To the farthest of them, m; 0 without any. */
  readonly farthest: number;
}

/** Rods are equally near to a bar within this, m: an inch, which is how truly rods and bars are set. */
const asNear = 0.0254;

/** The bars of each rod, in the order of the rods. A bar that is out of reach of a rod takes nothing from it. */
export function barsOfRods({ rods, bars, reach }: RodBarsArgs): readonly RodBars[] {
  const counts = rods.map(() => 0);
  const farthest = rods.map(() => 0);
  for (const bar of bars) {
    const distances = rods.map(({ x, y }) => Math.hypot(x - bar.x, y - bar.y));
    const nearest = Math.min(...distances);
    const near = distances.map((distance) => distance <= nearest + asNear && distance <= reach * (1 + 1e-9));
    const sharers = near.filter(Boolean).length;
    for (let i = 0; i < rods.length; i += 1) {
      if (!near[i]) continue;
      counts[i] += 1 / sharers;
      farthest[i] = Math.max(farthest[i], distances[i]);
    }
  }
  return counts.map((count, i) => ({ count, farthest: farthest[i] }));
}

/** A ring of bars turned by each eighth of the way from one bar to the next, where it is not known how it will be set; m. */
export function turnsOfRing(bars: readonly Point[]): readonly (readonly Point[])[] {
  return Array.from({ length: 8 }, (_, k) => {
    const angle = ((2 * Math.PI) / bars.length) * (k / 8);
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return bars.map(({ x, y }) => ({ x: x * cos - y * sin, y: y * cos + x * sin }));
  });
}

/** Bars in a row along a wall, at one distance from its middle; m. */
export interface BarRow {
  readonly across: number;
  readonly spacing: number;
}

export interface BarRowsArgs {
  readonly rows: readonly BarRow[];
  readonly axis: "x" | "y";
  /** The stretch of wall looked at, along it, m. */
  readonly from: number;
  readonly to: number;
}

/** Shifts of a row that are tried, from one bar's place to the next. */
const shifts = 5;

const placesOf = ({ across, spacing }: BarRow, shift: number, { axis, from, to }: BarRowsArgs): readonly Point[] => {
  const first = Math.ceil(from / spacing - shift);
  const last = Math.floor(to / spacing - shift);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => {
    const along = (first + k + shift) * spacing;
    return axis === "x" ? { x: along, y: across } : { x: across, y: along };
  });
};

/** Rows of bars, each shifted along the wall by each fifth of its spacing against the others, where it is not known at which bar they begin; m. */
export function shiftsOfRows(args: BarRowsArgs): readonly (readonly Point[])[] {
  let found: readonly (readonly Point[])[] = [[]];
  for (const row of args.rows) {
    found = found.flatMap((before) => Array.from({ length: shifts }, (_, k) => [...before, ...placesOf(row, k / shifts, args)]));
  }
  return found;
}
