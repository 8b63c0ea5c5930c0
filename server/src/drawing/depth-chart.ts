/** Curves drawn down along the depth of a pier, each about a plumb line of its own, with the greatest value written where it is. */
import { hatched } from "./hatch.js";
import type { Frame } from "./scale.js";
import { line, polyline, words } from "./svg.js";

export interface Curve {
  readonly title: string;
  readonly values: readonly number[];
  /** Writes a value with its unit. */
  readonly show: (value: number) => string;
}

/** Depth of the greatest value, without sign. */
export function peakOf(values: readonly number[]): number {
  return values.reduce((best, value, i) => (Math.abs(value) > Math.abs(values[best]) ? i : best), 0);
}

/** One curve; the frame's middle is its zero line. */
export function depthCurve({ title, values, show }: Curve, depth: readonly number[], { left, top, width, height }: Frame): readonly string[] {
  const zero = left + width / 2;
  const peak = peakOf(values);
  const most = Math.abs(values[peak]);
  const deepest = depth[depth.length - 1];
  const x = (value: number): number => zero + (most > 0 ? (0.5 * width * value) / most : 0);
  const y = (z: number): number => top + (height * z) / deepest;
  const points = depth.map((z, i) => ({ x: x(values[i]), y: y(z) }));
  // Strips between neighboring points; each lies on one side of the zero line or crosses it in a point.
  const strips = depth.slice(1).map((z, i) => [
    { x: zero, y: y(depth[i]) },
    { x: x(values[i]), y: y(depth[i]) },
    { x: x(values[i + 1]), y: y(z) },
    { x: zero, y: y(z) },
  ]);
  const isRight = values[peak] >= 0;
  const at = Math.min(Math.max(y(depth[peak]), top + 12), top + height - 4);
  return [
    words(zero, top - 14, title, "middle"),
    line(zero, top, zero, top + height, "thin"),
    hatched(strips.filter((_, i) => values[i] >= 0 === values[i + 1] >= 0), { angle: 0, gap: 6 }),
    polyline(points, "cut", "open"),
    most > 0 ? line(x(values[peak]) - 3, y(depth[peak]), x(values[peak]) + 3, y(depth[peak]), "seen") : "",
    words(isRight ? zero - 6 : zero + 6, at + 4, show(values[peak]), isRight ? "end" : "start", 10),
  ];
}

/** The scale of depth at the left: grade, and the greatest depth. */
export const depthScale = (x: number, { top, height }: Frame, deepest: string): readonly string[] => [
  line(x, top, x, top + height, "thin"),
  line(x - 3, top, x + 3, top, "seen"),
  line(x - 3, top + height, x + 3, top + height, "seen"),
  words(x - 6, top + 4, "0", "end", 10),
  words(x - 6, top + height + 4, deepest, "end", 10),
];
