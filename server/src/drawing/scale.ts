/** From meters to a place on the page, to one scale along both axes, north or up toward the top of the page. */
import type { Point, Rectangle } from "../mechanics/rectangles.js";

/** A rectangle of the page, in its own units from the top left. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface Scale {
  readonly x: (east: number) => number;
  readonly y: (north: number) => number;
  /** A length on the page. */
  readonly of: (length: number) => number;
}

/** The largest scale at which `shown` fits into the frame, in its middle. */
export function fitted(shown: Rectangle, frame: Frame): Scale {
  const k = Math.min(frame.width / (shown.east - shown.west), frame.height / (shown.north - shown.south));
  const middle = { x: frame.left + frame.width / 2, y: frame.top + frame.height / 2 };
  const [cx, cy] = [(shown.west + shown.east) / 2, (shown.south + shown.north) / 2];
  return { x: (east) => middle.x + k * (east - cx), y: (north) => middle.y - k * (north - cy), of: (length) => k * length };
}

/** Points of the structure as points of the page. */
export const placed = (scale: Scale, points: readonly Point[]): readonly Point[] => points.map(({ x, y }) => ({ x: scale.x(x), y: scale.y(y) }));

/** The rectangle about points and rectangles, m. */
export function around(points: readonly Point[], rectangles: readonly Rectangle[] = []): Rectangle {
  const xs = [...points.map(({ x }) => x), ...rectangles.flatMap(({ west, east }) => [west, east])];
  const ys = [...points.map(({ y }) => y), ...rectangles.flatMap(({ south, north }) => [south, north])];
  return { west: Math.min(...xs), east: Math.max(...xs), south: Math.min(...ys), north: Math.max(...ys) };
}

/** The four corners, anticlockwise. */
export const cornersOf = ({ west, east, south, north }: Rectangle): readonly Point[] => [
  { x: west, y: south },
  { x: east, y: south },
  { x: east, y: north },
  { x: west, y: north },
];
