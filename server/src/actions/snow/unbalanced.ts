/**
 * Unbalanced snow on a pitched roof: the wind takes it off one half and leaves it on the other. Short rafters of one depth that span from
 * eave to ridge take all of the ground snow on the lee half and none on the other; elsewhere the lee half has a drift beside the ridge.
 */
import { shortRafters, unbalancedSlopes } from "../../catalog/snow.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { RoofLoad } from "../../mechanics/rigid-roof.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";
import type { Edge } from "../demand.js";
import { rectangleLoad } from "../gravity/vertical.js";
import type { PlanRectangle, TwoHalves } from "../roof-plane.js";
import { densityOf, driftHeight } from "./drift-height.js";
import { importance, isAtStrength, type SnowSite } from "./editions.js";
import { eaveToRidge, evenSnow } from "./sloped.js";

export const shortRafterSnow = formula({
  id: "snow.unbalanced-short",
  text: "p_l = I_s * p_g",
  source: "ASCE 7-16 7.6.1, ASCE 7-10 7.6.1 (from memory): simply supported prismatic members from ridge to eave, at most 20 ft",
  symbols: {
    p_l: { kind: "pressure", meaning: "snow on the lee half; none lies on the other" },
    I_s: { kind: "ratio", meaning: "importance factor of the risk category; 1 in ASCE 7-22, whose ground snow is that of the category", field: "site.risk category" },
    p_g: { kind: "pressure", meaning: "ground snow load", field: "site.ground snow" },
  },
});

export const windwardSnow = formula({
  id: "snow.unbalanced-windward",
  text: "p_w = 0.3 * p_s",
  source: "ASCE 7-16 and 7-22 7.6.1, ASCE 7-10 7.6.1 (from memory)",
  symbols: { p_w: { kind: "pressure", meaning: "snow on the windward half" }, p_s: { kind: "pressure", meaning: "sloped roof snow load on plan" } },
});

export const ridgeSurcharge = formula({
  id: "snow.unbalanced-surcharge",
  text: "p_d = h_d * gamma * sqrt(s)",
  source: "ASCE 7-16 and 7-22 7.6.1, ASCE 7-10 7.6.1 (from memory): h_d gamma over the root of S, the run for a rise of one",
  symbols: {
    p_d: { kind: "pressure", meaning: "surcharge beside the ridge, on the lee half" },
    h_d: { kind: "distance", meaning: "height of the drift" },
    gamma: { kind: "unitWeight", meaning: "weight of the snow" },
    s: { kind: "slope", meaning: "roof slope, rise over run", field: "roof.slope" },
  },
});

export const surchargeWidth = formula({
  id: "snow.unbalanced-width",
  text: "w_d = min(8 / 3 * h_d / sqrt(s), W)",
  source: "ASCE 7-16 and 7-22 7.6.1, ASCE 7-10 7.6.1 (from memory), no further than the eave",
  symbols: {
    w_d: { kind: "distance", meaning: "width of the surcharge from the ridge" },
    h_d: { kind: "distance", meaning: "height of the drift" },
    s: { kind: "slope", meaning: "roof slope, rise over run", field: "roof.slope" },
    W: { kind: "distance", meaning: "plan distance from eave to ridge" },
  },
});

const fromRidge = formula({
  id: "snow.from-ridge",
  text: "t = m + u * w_d",
  source: "geometry",
  symbols: {
    t: { kind: "distance", meaning: "edge of the surcharge" },
    m: { kind: "distance", meaning: "place of the ridge" },
    u: { kind: "ratio", meaning: "1 toward the north or east, -1 toward the south or west", range: [-1, 1] },
    w_d: { kind: "distance", meaning: "width of the surcharge from the ridge" },
  },
});

const ridgePlace = formula({
  id: "snow.ridge",
  text: "m = L / 2",
  source: "geometry: the ridge is at the middle of the plan",
  symbols: { m: { kind: "distance", meaning: "place of the ridge" }, L: { kind: "distance", meaning: "plan size of the roof across its ridge" } },
});

/** Whether unbalanced snow is asked for on this roof. */
export const isUnbalanced = (slope: number): boolean => !isBelow(slope, unbalancedSlopes.least) && !isAbove(slope, unbalancedSlopes.most);

/** Whether the short-rafter rule may hold, which depends on how the rafters span. */
export const mayBeShort = (roof: TwoHalves, calc: Calc): boolean => !isAbove(eaveToRidge(roof, calc), shortRafters);

/** The eaves snow can be blown toward. */
export const leeEaves = (roof: TwoHalves): readonly Edge[] => (roof.ridge === "x" ? ["north", "south"] : ["east", "west"]);

/** The strip between the ridge and a place on the lee side, or on the other side, over the whole length of the ridge. */
const strip = (roof: TwoHalves, a: number, b: number): PlanRectangle => {
  const [low, high] = a < b ? [a, b] : [b, a];
  return roof.ridge === "x" ? { x1: 0, x2: roof.length, y1: low, y2: high } : { x1: low, x2: high, y1: 0, y2: roof.width };
};

/** Snow blown toward an eave. `short` says that simple rafters span from eave to ridge. */
export function unbalancedSnow(roof: TwoHalves, site: SnowSite, slippery: boolean, short: boolean, lee: Edge, calc: Calc): readonly RoofLoad[] {
  const across = roof.ridge === "x" ? roof.width : roof.length;
  const m = calc(ridgePlace, { L: across });
  const isFar = lee === "north" || lee === "east";
  const leeHalf = strip(roof, m, isFar ? across : 0);
  const windwardHalf = strip(roof, m, isFar ? 0 : across);
  if (short && mayBeShort(roof, calc)) {
    const p_l = calc(shortRafterSnow, { I_s: isAtStrength(site.standard) ? 1 : importance[site.riskCategory], p_g: site.groundSnow });
    return [rectangleLoad(roof, leeHalf, p_l, calc)];
  }
  const p_s = evenSnow(roof, site, slippery, calc);
  const W = eaveToRidge(roof, calc);
  const h_d = driftHeight(site, W, calc);
  const p_d = calc(ridgeSurcharge, { h_d, gamma: densityOf(site, calc), s: roof.slope });
  const w_d = calc(surchargeWidth, { h_d, s: roof.slope, W });
  return [
    rectangleLoad(roof, windwardHalf, calc(windwardSnow, { p_s }), calc),
    rectangleLoad(roof, leeHalf, p_s, calc),
    rectangleLoad(roof, strip(roof, m, calc(fromRidge, { m, u: isFar ? 1 : -1, w_d })), p_d, calc),
  ];
}
