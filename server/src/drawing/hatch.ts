/** Parallel strokes over regions that may overlap: where they do, a stroke is drawn once. */
import type { Point } from "../mechanics/rectangles.js";
import { line } from "./svg.js";

export interface Hatching {
  /** Angle of the strokes from level, radians, rising to the right. */
  readonly angle?: number;
  /** Between strokes, on the page. */
  readonly gap?: number;
  readonly dash?: string;
}

type Interval = readonly [number, number];

/** Part of the line at distance `off` that lies within a convex polygon, as distances along the line. */
function within(polygon: readonly Point[], along: Point, across: Point, off: number): Interval | undefined {
  const crossed: number[] = [];
  polygon.forEach((p, i) => {
    const q = polygon[(i + 1) % polygon.length];
    const [dp, dq] = [p, q].map(({ x, y }) => x * across.x + y * across.y - off);
    if (dp < 0 === dq < 0) return;
    const t = dp / (dp - dq);
    crossed.push((p.x + t * (q.x - p.x)) * along.x + (p.y + t * (q.y - p.y)) * along.y);
  });
  return crossed.length < 2 ? undefined : [Math.min(...crossed), Math.max(...crossed)];
}

/** Strokes over the union of convex polygons given by points of the page. */
export function hatched(polygons: readonly (readonly Point[])[], { angle = Math.PI / 4, gap = 7, dash }: Hatching = {}): string {
  const along = { x: Math.cos(angle), y: -Math.sin(angle) };
  const across = { x: Math.sin(angle), y: Math.cos(angle) };
  const offs = polygons.flatMap((polygon) => polygon.map(({ x, y }) => x * across.x + y * across.y));
  if (!offs.every(Number.isFinite) || offs.length === 0) return "";
  let strokes = "";
  for (let off = Math.ceil(Math.min(...offs) / gap) * gap; off <= Math.max(...offs); off += gap) {
    const parts = polygons.flatMap((polygon) => within(polygon, along, across, off) ?? []);
    const intervals = merged(pairs(parts));
    for (const [a, b] of intervals) strokes += line(off * across.x + a * along.x, off * across.y + a * along.y, off * across.x + b * along.x, off * across.y + b * along.y, "thin", dash);
  }
  return strokes;
}

const pairs = (ends: readonly number[]): Interval[] => ends.flatMap((end, i) => (i % 2 === 0 ? [[end, ends[i + 1]] as const] : []));

function merged(intervals: Interval[]): Interval[] {
  const out: [number, number][] = [];
  for (const [a, b] of intervals.sort((one, other) => one[0] - other[0])) {
    const last = out[out.length - 1];
    if (last && a <= last[1]) last[1] = Math.max(last[1], b);
    else out.push([a, b]);
  }
  return out;
}
