/**
 * Snow a higher roof beside this one brings: a drift against the step, blown from either roof, and snow that slides down. The higher
 * roof is taken to touch this one and to be as long as the edge; a gap between them would make both loads smaller.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { RoofLoad } from "../../mechanics/rigid-roof.js";
import type { Edge } from "../demand.js";
import { uniformLoad } from "../gravity/vertical.js";
import { extents, inward, type RoofPlane } from "../roof-plane.js";
import { densityOf, driftHeight } from "./drift-height.js";
import { flatSnow, type SnowSite } from "./editions.js";
import { evenSnow } from "./sloped.js";

/** A higher roof along an edge of this one. Lengths m. */
export interface HigherRoof {
  readonly edge: Edge;
  /** From this roof up to the eave of the higher one. */
  readonly above: number;
  /** Of the higher roof, in the direction away from this one. */
  readonly upwind: number;
  /** Plan length of the higher roof, eave to ridge, that slopes down to this one; 0 where none does. */
  readonly sliding: number;
}

const h_d = { kind: "distance", meaning: "height of the drift" } as const;
const h_c = { kind: "distance", meaning: "height from the even snow up to the higher roof" } as const;
const gamma = { kind: "unitWeight", meaning: "weight of the snow" } as const;
const w = { kind: "distance", meaning: "width of the drift from the step" } as const;
const p_d = { kind: "pressure", meaning: "load of the drift at the step" } as const;
const B = { kind: "distance", meaning: "length of the edge below the higher roof" } as const;
const w_r = { kind: "distance", meaning: "width of the part of the drift that lies on this roof" } as const;
const drifts = "ASCE 7-16 and 7-22 7.7.1, ASCE 7-10 7.7.1";

export const evenDepth = formula({
  id: "snow.even-depth",
  text: "h_b = p_s / gamma",
  source: drifts,
  symbols: { h_b: { kind: "distance", meaning: "depth of the even snow" }, p_s: { kind: "pressure", meaning: "even snow" }, gamma },
});

export const clearHeight = formula({
  id: "snow.clear-height",
  text: "h_c = max(h_r - h_b, 0)",
  source: drifts,
  symbols: { h_c, h_r: { kind: "distance", meaning: "height of the higher roof above this one", field: "roof.higher roof.height above" }, h_b: { kind: "distance", meaning: "depth of the even snow" } },
});

export const clearRatio = formula({
  id: "snow.clear-ratio",
  text: "k_c = h_c / h_b",
  source: `${drifts}: no drift where it is below 0.2`,
  symbols: { k_c: { kind: "ratio", meaning: "clear height over depth of the even snow" }, h_c, h_b: { kind: "distance", meaning: "depth of the even snow" } },
});

export const governingDrift = formula({
  id: "snow.governing-drift",
  text: "h_d = max(h_l, 0.75 * h_w)",
  source: `${drifts}: the larger of the drift blown from the higher roof and three quarters of the height for this one`,
  symbols: { h_d, h_l: { kind: "distance", meaning: "height of the drift blown from the higher roof" }, h_w: { kind: "distance", meaning: "height for the length of this roof" } },
});

export const driftWidth = formula({
  id: "snow.drift-width",
  text: "w = h_d <= h_c ? 4 * h_d : min(4 * h_d^2 / h_c, 8 * h_c)",
  source: drifts,
  symbols: { w, h_d, h_c },
});

export const driftLoad = formula({
  id: "snow.drift-load",
  text: "p_d = min(h_d, h_c) * gamma",
  source: drifts,
  symbols: { p_d, h_d, h_c, gamma },
});

const widthOnRoof = formula({
  id: "snow.drift-on-roof",
  text: "w_r = min(w, L)",
  source: "geometry: what lies beyond the far edge falls off",
  symbols: { w_r, w, L: { kind: "distance", meaning: "plan length of this roof away from the step" } },
});

const farLoad = formula({
  id: "snow.drift-far-load",
  text: "p_e = p_d * (1 - w_r / w)",
  source: "geometry of the triangle",
  symbols: { p_e: { kind: "pressure", meaning: "load of the drift where it ends on this roof" }, p_d, w_r, w },
});

const driftForce = formula({
  id: "snow.drift-force",
  text: "F_v = (p_d + p_e) / 2 * w_r * B",
  source: "statics of a load that falls off evenly from the step",
  symbols: { F_v: { kind: "force", meaning: "weight of the drift" }, p_d, p_e: { kind: "pressure", meaning: "load of the drift where it ends on this roof" }, w_r, B },
});

const driftMiddle = formula({
  id: "snow.drift-middle",
  text: "c = w_r / 3 * (p_d + 2 * p_e) / (p_d + p_e)",
  source: "statics of a load that falls off evenly from the step",
  symbols: { c: { kind: "distance", meaning: "center of the drift from the step" }, w_r, p_d, p_e: { kind: "pressure", meaning: "load of the drift where it ends on this roof" } },
});

export const slidingForce = formula({
  id: "snow.sliding",
  text: "F_v = 0.4 * p_f * W * min(1, L / l_15) * B",
  source: "ASCE 7-16 and 7-22 7.9, ASCE 7-10 7.9 (from memory): 0.4 of the higher roof's flat snow, over 15 ft of this roof",
  symbols: {
    F_v: { kind: "force", meaning: "snow that slides onto this roof" },
    p_f: { kind: "pressure", meaning: "flat roof snow load of the higher roof" },
    W: { kind: "distance", meaning: "plan length of the higher roof from eave to ridge", field: "roof.higher roof.sliding length" },
    L: { kind: "distance", meaning: "plan length of this roof away from the step" },
    B,
  },
  constants: { l_15: "15 ft" },
});

export const slidingMiddle = formula({
  id: "snow.sliding-middle",
  text: "c = min(L, l_15) / 2",
  source: "ASCE 7-16 and 7-22 7.9, ASCE 7-10 7.9 (from memory): spread evenly",
  symbols: { c: { kind: "distance", meaning: "center of the snow that slid, from the step" }, L: { kind: "distance", meaning: "plan length of this roof away from the step" } },
  constants: { l_15: "15 ft" },
});

const awayFromStep = formula({
  id: "snow.away-from-step",
  text: "t = t_0 + u * c",
  source: "geometry",
  symbols: {
    t: { kind: "distance", meaning: "place across the edge" },
    t_0: { kind: "distance", meaning: "place of the edge" },
    u: { kind: "ratio", meaning: "direction away from the step", range: [-1, 1] },
    c: { kind: "distance", meaning: "distance from the step" },
  },
});

const alongEdge = formula({ id: "snow.along-edge", text: "b = B / 2", source: "geometry: the middle of the edge", symbols: { b: { kind: "distance", meaning: "place along the edge" }, B } });

const evenBand = formula({
  id: "snow.even-band",
  text: "b_e = 2 * c",
  source: "statics: the band over which the same weight, spread evenly, has the same center",
  symbols: { b_e: { kind: "distance", meaning: "width of the band from the step" }, c: { kind: "distance", meaning: "center of the snow from the step" } },
});

/** A force `F_v` (N, down) at a distance from the step, at the middle of the edge. */
function atStep(roof: RoofPlane, edge: Edge, F_v: number, c: number, calc: Calc): RoofLoad {
  const away = inward[edge];
  const t_0 = edge === "north" ? roof.width : edge === "east" ? roof.length : 0;
  const u = away.x === 0 ? away.y : away.x;
  const across = calc(awayFromStep, { t_0, u, c });
  const far = calc(awayFromStep, { t_0, u, c: calc(evenBand, { c }) });
  const [low, high] = t_0 < far ? [t_0, far] : [far, t_0];
  const along = calc(alongEdge, { B: extents(roof, edge).across });
  const place =
    away.x === 0
      ? { x: along, y: across, over: { x1: 0, x2: roof.length, y1: low, y2: high } }
      : { x: across, y: along, over: { x1: low, x2: high, y1: 0, y2: roof.width } };
  return { ...place, z: roof.meanHeight, Fx: 0, Fy: 0, Fz: -F_v };
}

/** Below this share of the depth of the even snow there is no step left to drift against. */
const leastStep = 0.2;

/** The even snow with the drift against the step; nothing where the step is too low for one. */
export function driftedSnow(roof: RoofPlane, site: SnowSite, slippery: boolean, higher: HigherRoof, calc: Calc): readonly RoofLoad[] {
  const p_s = evenSnow(roof, site, slippery, calc);
  const even = uniformLoad(roof, p_s, calc);
  const weight = densityOf(site, calc);
  const h_b = calc(evenDepth, { p_s, gamma: weight });
  const clear = calc(clearHeight, { h_r: higher.above, h_b });
  if (h_b > 0 && calc(clearRatio, { h_c: clear, h_b }) < leastStep) {
    calc.note("The even snow nearly fills the step: no drift forms.");
    return [even];
  }
  const { along: L, across } = extents(roof, higher.edge);
  const height = calc(governingDrift, { h_l: driftHeight(site, higher.upwind, calc), h_w: driftHeight(site, L, calc) });
  const width = calc(driftWidth, { h_d: height, h_c: clear });
  const load = calc(driftLoad, { h_d: height, h_c: clear, gamma: weight });
  const onRoof = calc(widthOnRoof, { w: width, L });
  const p_e = calc(farLoad, { p_d: load, w_r: onRoof, w: width });
  const F_v = calc(driftForce, { p_d: load, p_e, w_r: onRoof, B: across });
  return [even, atStep(roof, higher.edge, F_v, calc(driftMiddle, { w_r: onRoof, p_d: load, p_e }), calc)];
}

/** The even snow with what slides down from the higher roof. */
export function slidSnow(roof: RoofPlane, site: SnowSite, slippery: boolean, higher: HigherRoof, calc: Calc): readonly RoofLoad[] {
  calc.note("The higher roof is taken as cold as this one, and its snow as free to slide.");
  const { along: L, across } = extents(roof, higher.edge);
  const F_v = calc(slidingForce, { p_f: flatSnow(site, calc), W: higher.sliding, L, B: across });
  return [uniformLoad(roof, evenSnow(roof, site, slippery, calc), calc), atStep(roof, higher.edge, F_v, calc(slidingMiddle, { L }), calc)];
}
