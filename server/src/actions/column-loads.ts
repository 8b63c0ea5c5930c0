/**
 * Loads that meet a column between its ends, as the drag of the wind. The roof first props the column at its top, and where the top is fixed holds it against
 * turning there; force and moment of the prop then go to the roof, which shares them among all columns like any other push. Displacement method; exact
 * for a roof that is one plate.
 */
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import type { Forces } from "../mechanics/forces.js";
import type { EndsHeld, RoofColumn, RoofLoad } from "../mechanics/rigid-roof.js";
import { bendingStiffness, proppedColumn } from "../mechanics/propped-column.js";
import { superpose } from "../mechanics/superposition.js";
import type { Reaction } from "./way-down.js";

/** A load along a stretch of a column, N/m toward the east (x) or the north (y); heights in m above the column base. */
export interface ColumnLoad {
  /** Number of the column in the order of the inputs. */
  readonly at: number;
  readonly axis: "x" | "y";
  readonly w: number;
  readonly from: number;
  readonly to: number;
  /** Which ends hold a moment in this direction. */
  readonly ends: EndsHeld;
}

const w = { kind: "lineLoad", meaning: "load along the column" } as const;
const a = { kind: "distance", meaning: "where it begins, above the base" } as const;
const b = { kind: "distance", meaning: "where it ends, above the base" } as const;
const H = { kind: "distance", meaning: "column height", field: "columns.*.height" } as const;
const R_t = { kind: "force", meaning: "force of the roof on the column top" } as const;
const M_t = { kind: "moment", meaning: "moment of the roof on the column top" } as const;
const F = { kind: "force", meaning: "force of the load in all" } as const;
const k = { kind: "ratio", meaning: "sense of the moment", range: [-1, 1] } as const;
const f = { kind: "distance", meaning: "height of the foot of the knee brace above the base" } as const;
const z_b = { kind: "distance", meaning: "elevation of the column base", range: [-2, 2] } as const;

const propFixed = formula({
  id: "actions.column-load.prop-fixed",
  text: "R_t = w * (H * (b^3 - a^3) - (b^4 - a^4) / 4) / (2 * H^3)",
  source: "beam theory: a column fixed at its base and propped at its top; 3/8 of a load along all of it",
  symbols: { R_t, w, H, a, b },
});

const propPinned = formula({
  id: "actions.column-load.prop-pinned",
  text: "R_t = w * (b^2 - a^2) / (2 * H)",
  source: "statics: a column pinned at its base and propped at its top",
  symbols: { R_t, w, H, a, b },
});

const propBoth = formula({
  id: "actions.column-load.prop-both",
  text: "R_t = w * (H * (b^3 - a^3) - (b^4 - a^4) / 2) / H^3",
  source: "beam theory: a column fixed at its base and at its top; half of a load along all of it",
  symbols: { R_t, w, H, a, b },
});

const momentBoth = formula({
  id: "actions.column-load.top-moment-both",
  text: "M_t = w * (H * (b^3 - a^3) / 3 - (b^4 - a^4) / 4) / H^2",
  source: "beam theory: a column fixed at its base and at its top; w H² / 12 under a load along all of it",
  symbols: { M_t, w, H, a, b },
});

const propTop = formula({
  id: "actions.column-load.prop-top",
  text: "R_t = w * (3 * H^2 * (b^2 - a^2) / 2 - (b^4 - a^4) / 4) / (2 * H^3)",
  source: "beam theory: a column pinned at its base and fixed at its top; 5/8 of a load along all of it",
  symbols: { R_t, w, H, a, b },
});

const momentTop = formula({
  id: "actions.column-load.top-moment-top",
  text: "M_t = w * (H^2 * (b^2 - a^2) / 2 - (b^4 - a^4) / 4) / (2 * H^2)",
  source: "beam theory: a column pinned at its base and fixed at its top; w H² / 8 under a load along all of it",
  symbols: { M_t, w, H, a, b },
});

const whole = formula({
  id: "actions.column-load.whole",
  text: "F = w * (b - a)",
  source: "statics",
  symbols: { F, w, a, b },
});

const middle = formula({
  id: "actions.column-load.middle",
  text: "z = z_b + (a + b) / 2",
  source: "geometry",
  symbols: { z: { kind: "distance", meaning: "elevation of the middle of the load" }, z_b, a, b },
});

const propElevation = formula({
  id: "actions.column-load.top",
  text: "z_t = z_b + H - M_t / R_t",
  source: "statics: the force of the prop as far off the column top as its moment asks for",
  symbols: { z_t: { kind: "distance", meaning: "elevation of the force on the roof" }, z_b, H, M_t, R_t },
});

const topShear = formula({
  id: "actions.column-load.top-shear",
  text: "V_t = -R_t",
  source: "statics: the roof holds the top back",
  symbols: { V_t: { kind: "force", meaning: "shear at the column top, beside that from the roof" }, R_t },
});

const topMoment = formula({
  id: "actions.column-load.top-moment",
  text: "M_e = k * M_t",
  source: "statics; k is 1 about the north axis and -1 about the east axis, moments right-handed",
  symbols: { M_e: { kind: "moment", meaning: "moment at the column top, beside that from the roof" }, k, M_t },
});

const lengthBelow = formula({
  id: "actions.column-load.length-below",
  text: "l = max(min(b, f) - min(a, f), 0)",
  source: "geometry: the part of the load below the foot of the knee brace",
  symbols: { l: { kind: "distance", meaning: "length of the load below the foot" }, a, b, f },
});

const footShear = formula({
  id: "actions.column-load.foot-shear",
  text: "V_f = V_b - w * l",
  source: "statics: the section just below the foot of the knee brace",
  symbols: { V_f: { kind: "force", meaning: "shear below the foot of the brace" }, V_b: { kind: "force", meaning: "shear at the column base" }, w, l: { kind: "distance", meaning: "length of the load below the foot" } },
});

const footMoment = formula({
  id: "actions.column-load.foot-moment",
  text: "M_f = M_b - k * (V_f * f + w * l * (min(a, f) + l / 2))",
  source: "statics: the section just below the foot of the knee brace",
  symbols: {
    M_f: { kind: "moment", meaning: "moment below the foot of the brace" },
    M_b: { kind: "moment", meaning: "moment at the column base" },
    k,
    V_f: { kind: "force", meaning: "shear below the foot of the brace" },
    f,
    w,
    l: { kind: "distance", meaning: "length of the load below the foot" },
    a,
  },
});

const baseShear = formula({
  id: "actions.column-load.base-shear",
  text: "V_b = F - R_t",
  source: "statics",
  symbols: { V_b: { kind: "force", meaning: "shear at the column base, beside that from the roof" }, F, R_t },
});

const baseMoment = formula({
  id: "actions.column-load.base-moment",
  text: "M_b = k * (w * (b^2 - a^2) / 2 - R_t * H + M_t)",
  source: "statics; k is 1 about the north axis and -1 about the east axis, moments right-handed",
  symbols: { M_b: { kind: "moment", meaning: "moment at the column base, beside that from the roof" }, k, w, a, b, R_t, H, M_t },
});

interface Prop {
  readonly R_t: number;
  readonly M_t: number;
}

function propOf({ w: along, from, to, ends, axis }: ColumnLoad, { height, E, Ix, Iy }: RoofColumn, calc: Calc): Prop {
  if (ends.knee || (ends.base && ends.baseSpring !== undefined)) {
    const { R, M } = calc.routine(proppedColumn, { EI: bendingStiffness(E, axis === "x" ? Iy : Ix), h: height, ends, w: along, from, to });
    return { R_t: R, M_t: M };
  }
  const of = { w: along, H: height, a: from, b: to };
  if (!ends.top) return { R_t: calc(ends.base ? propFixed : propPinned, of), M_t: 0 };
  return ends.base ? { R_t: calc(propBoth, of), M_t: calc(momentBoth, of) } : { R_t: calc(propTop, of), M_t: calc(momentTop, of) };
}

const along = (axis: "x" | "y", force: number): Pick<RoofLoad, "Fx" | "Fy"> => (axis === "x" ? { Fx: force, Fy: 0 } : { Fx: 0, Fy: force });

/** The loads where they meet the columns, as forces in space. */
export const forcesOfColumnLoads = (columns: readonly RoofColumn[], loads: readonly ColumnLoad[], calc: Calc): readonly RoofLoad[] =>
  loads.map((load) => {
    const { x, y, base } = columns[load.at];
    const z = calc(middle, { z_b: base, a: load.from, b: load.to });
    return { x, y, z, ...along(load.axis, calc(whole, { w: load.w, a: load.from, b: load.to })), Fz: 0 };
  });

/** What the columns hand to the roof when it props them at their tops. */
export const propsOnRoof = (columns: readonly RoofColumn[], loads: readonly ColumnLoad[], calc: Calc): readonly RoofLoad[] =>
  loads.map((load) => {
    const { x, y, base, height } = columns[load.at];
    const prop = propOf(load, columns[load.at], calc);
    return { x, y, z: calc(propElevation, { z_b: base, H: height, ...prop }), ...along(load.axis, prop.R_t), Fz: 0, over: { x1: x, x2: x, y1: y, y2: y } };
  });

/** What takes the props out again, so that with {@link propsOnRoof} and {@link forcesOfColumnLoads} the total is the load alone. */
export const propsBack = (props: readonly RoofLoad[]): readonly RoofLoad[] => props.map((prop) => ({ ...prop, Fx: -prop.Fx, Fy: -prop.Fy }));

const none: Forces = { P: 0, Vx: 0, Vy: 0, Mx: 0, My: 0 };

/** What the loads and the props do to the ends of one column. */
export interface ColumnEffect {
  readonly at: number;
  readonly top: Forces;
  readonly base: Forces;
}

/** What each load does to the ends of its column, beside what the roof brings. */
export const columnEffects = (columns: readonly RoofColumn[], loads: readonly ColumnLoad[], calc: Calc): readonly ColumnEffect[] =>
  loads.map((load) => {
    const { height } = columns[load.at];
    const { R_t: R, M_t: M } = propOf(load, columns[load.at], calc);
    const F_all = calc(whole, { w: load.w, a: load.from, b: load.to });
    const sense = load.axis === "x" ? 1 : -1;
    const ends = (V: number, moment: number): Forces => (load.axis === "x" ? { ...none, Vx: V, My: moment } : { ...none, Vy: V, Mx: moment });
    const V_b = calc(baseShear, { F: F_all, R_t: R });
    const M_b = calc(baseMoment, { k: sense, w: load.w, a: load.from, b: load.to, H: height, R_t: R, M_t: M });
    const base = ends(V_b, M_b);
    const { knee } = load.ends;
    if (!knee) return { at: load.at, base, top: ends(calc(topShear, { R_t: R }), M === 0 ? 0 : calc(topMoment, { k: sense, M_t: M })) };
    const below = calc(lengthBelow, { a: load.from, b: load.to, f: knee.foot });
    const V_f = calc(footShear, { V_b, w: load.w, l: below });
    return { at: load.at, base, top: ends(V_f, calc(footMoment, { M_b, k: sense, V_f, f: knee.foot, w: load.w, l: below, a: load.from })) };
  });

const sum = (one: Forces, other: Forces): Forces => superpose([{ factor: 1, forces: one }, { factor: 1, forces: other }]);

/** Reactions of the columns with the effects of the loads on them added to what the roof brings. */
export function withEffects(reactions: readonly Reaction[], effects: readonly ColumnEffect[]): readonly Reaction[] {
  const found = [...reactions];
  for (const { at, top, base } of effects) found[at] = { ...found[at], top: sum(found[at].top, top), base: sum(found[at].base, base) };
  return found;
}
