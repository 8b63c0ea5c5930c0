/**
 * The way down: pressures on strips of the roof become forces on the roof plane, for the roof to share among its columns.
 * A pressure acts normal to the slope, so that each strip also pushes sideways: a downward pressure toward the high edge, an upward
 * one toward the low edge.
 */
import type { ColumnSection, DeepSide } from "../catalog/sections.js";
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import type { Forces } from "../mechanics/forces.js";
import type { RoofColumn, RoofLoad } from "../mechanics/rigid-roof.js";
import { steelColumn } from "../mechanics/steel-column.js";
import type { Ends } from "./sway-inputs.js";
import { elevationAt, inOnePlane, middleOf, riseAt, type RoofPlane } from "./roof-plane.js";
import type { Patch } from "./wind/free-roof.js";

const stripForce = formula({
  id: "actions.strip.vertical",
  text: "F_v = p * (x_2 - x_1) * (y_2 - y_1)",
  source: "statics: normal pressure on the sloped area, its vertical part is pressure times plan area",
  symbols: {
    F_v: { kind: "force", meaning: "vertical force of the strip, positive down" },
    p: { kind: "pressure", meaning: "net pressure normal to the roof, positive down" },
    x_1: { kind: "distance", meaning: "west edge of the strip" },
    x_2: { kind: "distance", meaning: "east edge of the strip" },
    y_1: { kind: "distance", meaning: "south edge of the strip" },
    y_2: { kind: "distance", meaning: "north edge of the strip" },
  },
});

const stripPush = formula({
  id: "actions.strip.horizontal",
  text: "F_h = u * s * F_v",
  source: "statics: normal pressure on the sloped area, its horizontal part is the vertical one times the slope",
  symbols: {
    F_h: { kind: "force", meaning: "horizontal force of the strip along a plan axis" },
    u: { kind: "ratio", meaning: "direction the roof rises in along that axis", field: "roof.shape" },
    s: { kind: "slope", meaning: "roof slope, rise over run", field: "roof.slope" },
    F_v: { kind: "force", meaning: "vertical force of the strip, positive down" },
  },
});

const stripMiddle = formula({
  id: "actions.strip.middle",
  text: "c = (a + b) / 2",
  source: "geometry",
  symbols: {
    c: { kind: "distance", meaning: "middle of the strip" },
    a: { kind: "distance", meaning: "one edge of the strip" },
    b: { kind: "distance", meaning: "the other edge of the strip" },
  },
});

const baseElevation = formula({
  id: "actions.column.base-elevation",
  text: "z_b = z_t - H",
  source: "geometry: the column top is in the roof plane",
  symbols: {
    z_b: { kind: "distance", meaning: "elevation of the column base above grade" },
    z_t: { kind: "distance", meaning: "elevation of the roof plane over the column" },
    H: { kind: "distance", meaning: "column height", field: "columns.*.height" },
  },
});

/** Forces of strips on the roof, N. */
export function stripLoads(roof: RoofPlane, patches: readonly Patch[], calc: Calc): readonly RoofLoad[] {
  const center = middleOf(roof, calc);
  return inOnePlane(roof, patches, center).map((patch) => {
    const F_v = calc(stripForce, { p: patch.pressure, x_1: patch.x1, x_2: patch.x2, y_1: patch.y1, y_2: patch.y2 });
    const x = calc(stripMiddle, { a: patch.x1, b: patch.x2 });
    const y = calc(stripMiddle, { a: patch.y1, b: patch.y2 });
    const rise = riseAt(roof, x, y, center);
    const push = (u: number): number => (u === 0 ? 0 : calc(stripPush, { u, s: roof.slope, F_v }));
    return { x, y, z: elevationAt(roof, x, y, center, calc), Fx: push(rise.x), Fy: push(rise.y), Fz: -F_v, over: { x1: patch.x1, x2: patch.x2, y1: patch.y1, y2: patch.y2 } };
  });
}

/** A column that carries the roof. Lengths m. */
export interface RoofPost {
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly section: ColumnSection;
  /** Which plan axis the depth of the section lies along; of no concern where it is alike both ways. */
  readonly deep?: DeepSide;
  readonly top: "pinned" | "fixed";
  /** Which ends hold a moment, by the direction of the push. */
  readonly ends?: Ends;
}

/** The columns in space, each with its top in the roof plane. */
export function columnsUnder(roof: RoofPlane, posts: readonly RoofPost[], calc: Calc): readonly RoofColumn[] {
  const center = middleOf(roof, calc);
  return posts.map(({ x, y, height, section, deep, top, ends }) => {
    const z_t = elevationAt(roof, x, y, center, calc);
    return steelColumn({ section, deep, x, y, height, top, ends, base: calc(baseElevation, { z_t, H: height }) });
  });
}

/** Forces at both ends of a column under one load case. */
export interface Reaction {
  readonly top: Forces;
  readonly base: Forces;
  /** Movement of the column top in plan, m; known where the roof's loads were carried down. */
  readonly sway?: Sway;
}

/** To the east and to the north, m. */
export interface Sway {
  readonly x: number;
  readonly y: number;
}
