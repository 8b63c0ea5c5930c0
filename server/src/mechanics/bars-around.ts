/** Where bars stand in a pedestal: on a rectangle, shared among its sides by their lengths, or evenly on a circle. */
import type { Point } from "./rectangles.js";

/**
 * Places of an even number of bars, four or more, on a rectangle `x` by `y` (m, center to center): one at each corner, the rest in pairs on
 * opposite sides, evenly spaced, the longer sides first. Undefined for other numbers.
 */
export function barsOnRectangle(count: number, x: number, y: number): readonly Point[] | undefined {
  if (!(Number.isInteger(count) && count >= 4 && count % 2 === 0)) return undefined;
  const pairs = (count - 4) / 2;
  const share = (pairs * Math.max(x, y)) / (x + y);
  const onLong = Math.ceil(share - 1e-9);
  const [onX, onY] = x >= y ? [onLong, pairs - onLong] : [pairs - onLong, onLong];
  const places: Point[] = [];
  for (const sx of [-1, 1]) for (const sy of [-1, 1]) places.push({ x: (sx * x) / 2, y: (sy * y) / 2 });
  const inner = (n: number, side: number): readonly number[] => Array.from({ length: n }, (_, i) => side * ((i + 1) / (n + 1) - 0.5));
  for (const at of inner(onX, x)) for (const sy of [-1, 1]) places.push({ x: at, y: (sy * y) / 2 });
  for (const at of inner(onY, y)) for (const sx of [-1, 1]) places.push({ x: (sx * x) / 2, y: at });
  return places;
}

/** Places of three or more bars evenly on a circle of this diameter, m, the first at the east. */
export const barsOnCircle = (count: number, diameter: number): readonly Point[] =>
  Array.from({ length: count }, (_, i) => ({ x: (diameter / 2) * Math.cos((2 * Math.PI * i) / count), y: (diameter / 2) * Math.sin((2 * Math.PI * i) / count) }));

/** Most bars of one side between the corners of a rectangle of bars, and the farthest that one of them stands from the next corner, m; 0 without any. */
export function barsBetweenCorners(places: readonly Point[]): { readonly most: number; readonly farthest: number } {
  const x = Math.max(...places.map((place) => place.x));
  const y = Math.max(...places.map((place) => place.y));
  const blur = 1e-9 * (x + y);
  let most = 0;
  let farthest = 0;
  const sides = [
    { side: places.filter((place) => place.y >= y - blur && Math.abs(place.x) < x - blur).map((place) => Math.abs(place.x)), half: x },
    { side: places.filter((place) => place.x >= x - blur && Math.abs(place.y) < y - blur).map((place) => Math.abs(place.y)), half: y },
  ];
  for (const { side, half } of sides) {
    most = Math.max(most, side.length);
    for (const at of side) farthest = Math.max(farthest, half - at);
  }
  return { most, farthest };
}
