/** Pressures straight down on the plan of the roof, and the load cases they make. */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { RoofLoad } from "../../mechanics/rigid-roof.js";
import type { LoadCase } from "../demand.js";
import type { RoofCase } from "../roof-case.js";
import { middleOf, type PlanRectangle, type RoofPlane } from "../roof-plane.js";

const onRoof = formula({
  id: "actions.gravity.on-roof",
  text: "F_v = p * l * w",
  source: "statics: uniform on plan, so its resultant is at the middle",
  symbols: {
    F_v: { kind: "force", meaning: "load on the whole roof, down" },
    p: { kind: "pressure", meaning: "load on plan" },
    l: { kind: "distance", meaning: "length of the roof in plan", field: "roof.length" },
    w: { kind: "distance", meaning: "width of the roof in plan", field: "roof.width" },
  },
});

const onRectangle = formula({
  id: "actions.gravity.on-rectangle",
  text: "F_v = p * (x_2 - x_1) * (y_2 - y_1)",
  source: "statics: uniform on plan",
  symbols: {
    F_v: { kind: "force", meaning: "load on a part of the roof, down" },
    p: { kind: "pressure", meaning: "load on plan" },
    x_1: { kind: "distance", meaning: "west edge" },
    x_2: { kind: "distance", meaning: "east edge" },
    y_1: { kind: "distance", meaning: "south edge" },
    y_2: { kind: "distance", meaning: "north edge" },
  },
});

const between = formula({
  id: "actions.gravity.middle",
  text: "c = (a + b) / 2",
  source: "geometry",
  symbols: {
    c: { kind: "distance", meaning: "middle of a part of the roof" },
    a: { kind: "distance", meaning: "one edge" },
    b: { kind: "distance", meaning: "the other edge" },
  },
});

/** A pressure (Pa, down) over all of the roof. */
export const uniformLoad = (roof: RoofPlane, pressure: number, calc: Calc): RoofLoad => ({
  ...middleOf(roof, calc),
  Fx: 0,
  Fy: 0,
  Fz: -calc(onRoof, { p: pressure, l: roof.length, w: roof.width }),
  over: { x1: 0, x2: roof.length, y1: 0, y2: roof.width },
});

/** A pressure (Pa, down) over a rectangle of the roof. */
export const rectangleLoad = (roof: RoofPlane, { x1, x2, y1, y2 }: PlanRectangle, pressure: number, calc: Calc): RoofLoad => ({
  x: calc(between, { a: x1, b: x2 }),
  y: calc(between, { a: y1, b: y2 }),
  z: roof.meanHeight,
  Fx: 0,
  Fy: 0,
  Fz: -calc(onRectangle, { p: pressure, x_1: x1, x_2: x2, y_1: y1, y_2: y2 }),
  over: { x1, x2, y1, y2 },
});

/** A load case of one pressure all over the roof, found by `pressure`. */
export function uniformCase(roof: RoofPlane, loadCase: Omit<LoadCase, "uniform">, source: string, pressure: (calc: Calc) => number): RoofCase {
  const known = pressure(plainCalc);
  return {
    loadCase: { ...loadCase, uniform: known },
    source,
    loads: (calc) => [uniformLoad(roof, calc === plainCalc ? known : pressure(calc), calc)],
  };
}
