/**
 * Loads that meet a column between its ends, as the drag of the wind. The roof first props the column at its top; the prop's force then goes to the roof,
 * which shares it among all columns like any other push. For columns with pinned tops this is exact: equal columns under equal drag
 * each stand as a cantilever. A fixed top is taken as pinned here, which puts a little more moment into the base.
 */
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import type { Forces } from "../mechanics/forces.js";
import type { RoofColumn, RoofLoad } from "../mechanics/rigid-roof.js";
import type { Reaction } from "./way-down.js";

/** A load along a stretch of a column, N/m toward the east and the north; heights in m above the column base. */
export interface ColumnLoad {
  /** Number of the column in the order of the inputs. */
  readonly at: number;
  readonly wx: number;
  readonly wy: number;
  readonly from: number;
  readonly to: number;
  /** Whether the base holds a moment, by the direction of the push. */
  readonly holds: { readonly x: boolean; readonly y: boolean };
}

const w = { kind: "lineLoad", meaning: "load along the column" } as const;
const a = { kind: "distance", meaning: "where it begins, above the base" } as const;
const b = { kind: "distance", meaning: "where it ends, above the base" } as const;
const H = { kind: "distance", meaning: "column height", field: "columns.*.height" } as const;

const propFixed = formula({
  id: "actions.column-load.prop-fixed",
  text: "R_t = w * (H * (b^3 - a^3) - (b^4 - a^4) / 4) / (2 * H^3)",
  source: "beam theory: a column fixed at its base and propped at its top; 3/8 of a load along all of it",
  symbols: { R_t: { kind: "force", meaning: "force of the roof on the column top" }, w, H, a, b },
});

const propPinned = formula({
  id: "actions.column-load.prop-pinned",
  text: "R_t = w * (b^2 - a^2) / (2 * H)",
  source: "statics: a column pinned at its base and propped at its top",
  symbols: { R_t: { kind: "force", meaning: "force of the roof on the column top" }, w, H, a, b },
});

const whole = formula({
  id: "actions.column-load.whole",
  text: "F = w * (b - a)",
  source: "statics",
  symbols: { F: { kind: "force", meaning: "force of the load in all" }, w, a, b },
});

const middle = formula({
  id: "actions.column-load.middle",
  text: "z = z_b + (a + b) / 2",
  source: "geometry",
  symbols: { z: { kind: "distance", meaning: "elevation of the middle of the load" }, z_b: { kind: "distance", meaning: "elevation of the column base", range: [-2, 2] }, a, b },
});

const topElevation = formula({
  id: "actions.column-load.top",
  text: "z_t = z_b + H",
  source: "geometry",
  symbols: { z_t: { kind: "distance", meaning: "elevation of the column top" }, z_b: { kind: "distance", meaning: "elevation of the column base", range: [-2, 2] }, H },
});

const lessProp = formula({
  id: "actions.column-load.top-shear",
  text: "V_t = V - R_t",
  source: "statics: the roof holds the top back",
  symbols: { V_t: { kind: "force", meaning: "shear at the column top" }, V: { kind: "force", meaning: "shear from the roof", range: [-1e5, 1e5] }, R_t: { kind: "force", meaning: "force of the prop" } },
});

const baseShear = formula({
  id: "actions.column-load.base-shear",
  text: "V_b = V + F - R_t",
  source: "statics",
  symbols: {
    V_b: { kind: "force", meaning: "shear at the column base" },
    V: { kind: "force", meaning: "shear from the roof", range: [-1e5, 1e5] },
    F: { kind: "force", meaning: "force of the load in all" },
    R_t: { kind: "force", meaning: "force of the prop" },
  },
});

const baseMoment = formula({
  id: "actions.column-load.base-moment",
  text: "M_b = M + k * (w * (b^2 - a^2) / 2 - R_t * H)",
  source: "statics; k is 1 about the north axis and -1 about the east axis, moments right-handed",
  symbols: {
    M_b: { kind: "moment", meaning: "moment at the column base" },
    M: { kind: "moment", meaning: "moment from the roof", range: [-1e5, 1e5] },
    k: { kind: "ratio", meaning: "sense of the moment", range: [-1, 1] },
    w,
    a,
    b,
    R_t: { kind: "force", meaning: "force of the prop" },
    H,
  },
});

interface Parts {
  readonly w: number;
  readonly R_t: number;
  readonly F: number;
}

const none: Parts = { w: 0, R_t: 0, F: 0 };

function partsOf(load: ColumnLoad, axis: "x" | "y", height: number, calc: Calc): Parts {
  const along = axis === "x" ? load.wx : load.wy;
  if (along === 0) return none;
  const of = { w: along, H: height, a: load.from, b: load.to };
  return { w: along, R_t: calc(load.holds[axis] ? propFixed : propPinned, of), F: calc(whole, { w: along, a: load.from, b: load.to }) };
}

/** The loads where they meet the columns, as forces in space. */
export const forcesOfColumnLoads = (columns: readonly RoofColumn[], loads: readonly ColumnLoad[], calc: Calc): readonly RoofLoad[] =>
  loads.map((load) => {
    const { x, y, base, height } = columns[load.at];
    const z = calc(middle, { z_b: base, a: load.from, b: load.to });
    return { x, y, z, Fx: partsOf(load, "x", height, calc).F, Fy: partsOf(load, "y", height, calc).F, Fz: 0 };
  });

/** What the columns hand to the roof when it props them at their tops. */
export const propsOnRoof = (columns: readonly RoofColumn[], loads: readonly ColumnLoad[], calc: Calc): readonly RoofLoad[] =>
  loads.map((load) => {
    const { x, y, base, height } = columns[load.at];
    return { x, y, z: calc(topElevation, { z_b: base, H: height }), Fx: partsOf(load, "x", height, calc).R_t, Fy: partsOf(load, "y", height, calc).R_t, Fz: 0, over: { x1: x, x2: x, y1: y, y2: y } };
  });

/** What takes the props out again, so that with {@link propsOnRoof} and {@link forcesOfColumnLoads} the total is the load alone. */
export const propsBack = (columns: readonly RoofColumn[], loads: readonly ColumnLoad[], calc: Calc): readonly RoofLoad[] =>
  propsOnRoof(columns, loads, calc).map((prop) => ({ ...prop, Fx: -prop.Fx, Fy: -prop.Fy }));

function withLoad({ top, base, ...more }: Reaction, load: ColumnLoad, height: number, calc: Calc): Reaction {
  const x = partsOf(load, "x", height, calc);
  const y = partsOf(load, "y", height, calc);
  const moment = (M: number, k: number, of: Parts): number => (of === none ? M : calc(baseMoment, { M, k, w: of.w, a: load.from, b: load.to, R_t: of.R_t, H: height }));
  const sheared = (forces: Forces, f: (V: number, of: Parts) => number): Forces => ({ ...forces, Vx: x === none ? forces.Vx : f(forces.Vx, x), Vy: y === none ? forces.Vy : f(forces.Vy, y) });
  return {
    ...more,
    top: sheared(top, (V, { R_t }) => calc(lessProp, { V, R_t })),
    base: { ...sheared(base, (V, { F, R_t }) => calc(baseShear, { V, F, R_t })), Mx: moment(base.Mx, -1, y), My: moment(base.My, 1, x) },
  };
}

/** Reactions of the columns with the loads on them added to what the roof brings. */
export const withColumnLoads = (reactions: readonly Reaction[], columns: readonly RoofColumn[], loads: readonly ColumnLoad[], calc: Calc): readonly Reaction[] =>
  reactions.map((reaction, i) => loads.filter(({ at }) => at === i).reduce((so, load) => withLoad(so, load, columns[i].height, calc), reaction));
