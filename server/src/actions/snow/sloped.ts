/** Snow on a sloped cold roof, and the rain that falls into it. */
import { mostLeastSnow, rainOnSnow, rainOnSnowUpTo } from "../../catalog/snow.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isBelow } from "../../mechanics/compare.js";
import { extents, inward, type RoofPlane } from "../roof-plane.js";
import { roofAngle } from "../wind/net-coefficients.js";
import { flatSnow, isAtStrength, leastOf, type SnowSite } from "./editions.js";

const theta = { kind: "number", meaning: "roof angle in degrees", range: [1, 80] } as const;

export const slopeFactor = formula({
  id: "snow.slope-factor",
  text: "C_s = theta <= theta_1 ? 1 : theta >= 70 ? 0 : 1 - (theta - theta_1) / (70 - theta_1)",
  source: "ASCE 7-16 and 7-22 Figure 7.4-1, ASCE 7-10 Figure 7-2, cold roofs, C_t of 1.2 or more (from memory)",
  symbols: {
    C_s: { kind: "ratio", meaning: "roof slope factor" },
    theta,
    theta_1: { kind: "number", meaning: "angle from which snow slides: 15 degrees on an unobstructed slippery roof, 45 on another", range: [15, 45] },
  },
});

export const slopedSnow = formula({
  id: "snow.sloped",
  text: "p_s = C_s * p_f",
  source: "ASCE 7-16 and 7-22 Eq. 7.4-1, ASCE 7-10 Eq. 7.4-1",
  symbols: {
    p_s: { kind: "pressure", meaning: "sloped roof snow load on plan" },
    C_s: { kind: "ratio", meaning: "roof slope factor" },
    p_f: { kind: "pressure", meaning: "flat roof snow load" },
  },
});

export const slowDrainage = formula({
  id: "snow.slow-drainage",
  text: "theta_r = W / l_50",
  source: "ASCE 7-16 and 7-22 7.10, ASCE 7-10 7.10: slope in degrees below W/50, W in feet",
  symbols: {
    theta_r: { kind: "number", meaning: "angle below which rain stays in the snow, degrees" },
    W: { kind: "distance", meaning: "plan distance from eave to ridge or high edge" },
  },
  constants: { l_50: "50 ft" },
});

export const withRain = formula({
  id: "snow.with-rain",
  text: "p_r = p_s + r",
  source: "ASCE 7-16 7.10 and ASCE 7-10 7.10, 5 psf; ASCE 7-22 7.10, 8 psf (from memory)",
  symbols: {
    p_r: { kind: "pressure", meaning: "snow load with rain in it" },
    p_s: { kind: "pressure", meaning: "sloped roof snow load on plan" },
    r: { kind: "pressure", meaning: "surcharge of the edition for rain on snow" },
  },
});

const halfOf = formula({
  id: "snow.half-plan",
  text: "W = L / 2",
  source: "geometry",
  symbols: { W: { kind: "distance", meaning: "plan distance from eave to ridge or valley" }, L: { kind: "distance", meaning: "plan size of the roof across its ridge or valley" } },
});

/** Plan distance from eave to ridge, or over a whole monoslope. m */
export function eaveToRidge(roof: RoofPlane, calc: Calc): number {
  if (roof.shape === "monoslope") return extents(roof, inward[roof.lowEdge].x === 0 ? "south" : "west").along;
  return calc(halfOf, { L: roof.ridge === "x" ? roof.width : roof.length });
}

/** Degrees: low slopes have a least snow load, monoslope, hip and gable alike. */
const lowSlope = 15;

/** Snow alike all over the roof, Pa, before rain. A troughed roof keeps all of its snow. */
export function evenSnow(roof: RoofPlane, site: SnowSite, slippery: boolean, calc: Calc): number {
  const p_f = flatSnow(site, calc);
  if (roof.shape === "troughed") {
    calc.note("Snow does not slide out of a trough: the slope takes nothing off (ASCE 7 7.4.4).");
    return calc(slopedSnow, { C_s: 1, p_f });
  }
  const C_s = calc(slopeFactor, { theta: calc(roofAngle, { s: roof.slope }), theta_1: slippery ? 15 : 45 });
  return calc(slopedSnow, { C_s, p_f });
}

/** Whether rain falls on snow and stays in it: little ground snow, and a slope too low for its length. */
function holdsRain(roof: RoofPlane, site: SnowSite, calc: Calc): boolean {
  const most = isAtStrength(site.standard) ? mostLeastSnow[site.riskCategory] : rainOnSnowUpTo;
  if (isBelow(most, site.groundSnow)) return false;
  return calc(roofAngle, { s: roof.slope }) < calc(slowDrainage, { W: eaveToRidge(roof, calc) });
}

/** The even snow with the rain that may fall on it, Pa. */
export function evenSnowWithRain(roof: RoofPlane, site: SnowSite, slippery: boolean, calc: Calc): number {
  const p_s = evenSnow(roof, site, slippery, calc);
  if (!holdsRain(roof, site, calc)) return p_s;
  return calc(withRain, { p_s, r: isAtStrength(site.standard) ? rainOnSnow.atStrength : rainOnSnow.earlier });
}

/** The least snow of a low slope, Pa; nothing where the roof is steep. */
export const leastOnRoof = (roof: RoofPlane, site: SnowSite, calc: Calc): number | undefined =>
  calc(roofAngle, { s: roof.slope }) < lowSlope ? leastOf(site, calc) : undefined;
