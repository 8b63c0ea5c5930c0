/** Weight of snow and height of a drift by edition. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { importance, isAtStrength, type SnowSite } from "./editions.js";

const h_d = { kind: "distance", meaning: "height of the drift" } as const;
const l_u = { kind: "distance", meaning: "length of roof the snow is blown from", range: [1, 100] } as const;
const p_g = { kind: "pressure", meaning: "ground snow load", field: "site.ground snow" } as const;

export const snowDensity = formula({
  id: "snow.density",
  text: "gamma = min(k_g * p_g + g_0, g_m)",
  source: "ASCE 7-16 and 7-22 Eq. 7.7-1, ASCE 7-10 Eq. 7.7-1",
  symbols: { gamma: { kind: "unitWeight", meaning: "weight of the snow" }, p_g },
  constants: { k_g: "0.13 ft^-1", g_0: "14 pcf", g_m: "30 pcf" },
});

export const driftHeight710 = formula({
  id: "snow.drift-height-7-10",
  text: "h_d = l_1 * (0.43 * cbrt(max(l_u, l_20) / l_1) * ((p_g + p_10) / p_1)^(1 / 4) - 1.5)",
  source: "ASCE 7-10 Figure 7-9; lengths in feet and loads in psf under the roots; no less than 20 ft of fetch",
  symbols: { h_d, l_u, p_g },
  constants: { l_1: "1 ft", l_20: "20 ft", p_1: "1 psf", p_10: "10 psf" },
});

export const driftHeight716 = formula({
  id: "snow.drift-height-7-16",
  text: "h_d = sqrt(I_s) * l_1 * (0.43 * cbrt(max(l_u, l_20) / l_1) * ((p_g + p_10) / p_1)^(1 / 4) - 1.5)",
  source: "ASCE 7-16 Figure 7.6-1, the root of the importance factor from memory; no less than 20 ft of fetch",
  symbols: { h_d, I_s: { kind: "ratio", meaning: "importance factor of the risk category", field: "site.risk category" }, l_u, p_g },
  constants: { l_1: "1 ft", l_20: "20 ft", p_1: "1 psf", p_10: "10 psf" },
});

export const driftHeight722 = formula({
  id: "snow.drift-height-7-22",
  text: "h_d = l_1 * 1.5 * sqrt((p_g / p_1)^0.74 * (l_u / l_1)^0.7 * W_2^1.7 / (gamma / g_1))",
  source: "ASCE 7-22 Eq. 7.6-1 (from memory); lengths in feet, loads in psf, weight in pcf",
  symbols: {
    h_d,
    p_g,
    l_u,
    W_2: { kind: "ratio", meaning: "winter wind parameter", field: "site.winter wind" },
    gamma: { kind: "unitWeight", meaning: "weight of the snow" },
  },
  constants: { l_1: "1 ft", p_1: "1 psf", g_1: "1 pcf" },
});

/** Weight of the snow, N/m³. */
export const densityOf = (site: SnowSite, calc: Calc): number => calc(snowDensity, { p_g: site.groundSnow });

/** Height of a drift of snow blown from a roof of length `l_u`, m. */
export function driftHeight(site: SnowSite, l_u: number, calc: Calc): number {
  const p_g = site.groundSnow;
  if (isAtStrength(site.standard)) return calc(driftHeight722, { p_g, l_u, W_2: site.winterWind ?? NaN, gamma: densityOf(site, calc) });
  return site.standard === "ASCE 7-10" ? calc(driftHeight710, { l_u, p_g }) : calc(driftHeight716, { I_s: importance[site.riskCategory], l_u, p_g });
}
