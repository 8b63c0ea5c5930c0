/** Forces of several columns as one set of forces about a point in plan. */
import type { Forces } from "./forces.js";

export interface PlacedForces {
  /** Place of the column, east and north, m. */
  readonly x: number;
  readonly y: number;
  readonly base: Forces;
}

/** Middle of points in plan. */
export function middleOfPlaces(places: readonly { readonly x: number; readonly y: number }[]): { readonly x: number; readonly y: number } {
  let x = 0;
  let y = 0;
  for (const place of places) {
    x += place.x / places.length;
    y += place.y / places.length;
  }
  return { x, y };
}

/** Resultant about the origin of the places; axial forces have moments about it, torsion is left out. */
export function forcesTogether(all: readonly PlacedForces[]): Forces {
  const sum = { P: 0, Vx: 0, Vy: 0, Mx: 0, My: 0 };
  for (const { x, y, base } of all) {
    sum.P += base.P;
    sum.Vx += base.Vx;
    sum.Vy += base.Vy;
    sum.Mx += base.Mx - base.P * y;
    sum.My += base.My + base.P * x;
  }
  return sum;
}

/** Places from their middle. */
export function placesFromMiddle(places: readonly { readonly x: number; readonly y: number }[]): readonly { readonly x: number; readonly y: number }[] {
  const middle = middleOfPlaces(places);
  return places.map(({ x, y }) => ({ x: x - middle.x, y: y - middle.y }));
}

/** Sum, or undefined where one is. */
export function sumOf(values: readonly (number | undefined)[]): number | undefined {
  let sum = 0;
  for (const value of values) {
    if (value === undefined) return undefined;
    sum += value;
  }
  return sum;
}

/** Less than this beside the line, m, is none. */
const inLine = 0.01;

/** Axis along which places from their middle stand; undefined where they stand askew or in one place. */
export function lineAxis(places: readonly { readonly x: number; readonly y: number }[]): "x" | "y" | undefined {
  const isNear = (along: "x" | "y"): boolean => places.every((place) => Math.abs(place[along]) < inLine);
  const [x, y] = [isNear("x"), isNear("y")];
  return x === y ? undefined : x ? "y" : "x";
}
