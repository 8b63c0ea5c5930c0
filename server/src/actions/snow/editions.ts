/** What the editions of ASCE 7 say about snow, as data. */
import { mostLeastSnow } from "../../catalog/snow.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Edition } from "../edition.js";

export type RiskCategory = "I" | "II" | "III" | "IV";
export type RoofExposure = "fully exposed" | "partially exposed" | "sheltered";
export type Terrain = "B" | "C" | "D";

/** ASCE 7-10 and 7-16 Table 1.5-2. */
export const importance: Readonly<Record<RiskCategory, number>> = { I: 0.8, II: 1, III: 1.1, IV: 1.2 };

/** ASCE 7 Table 7.3-1 (7-10: Table 7-2). */
export const exposureFactor: Readonly<Record<Terrain, Readonly<Record<RoofExposure, number>>>> = {
  B: { "fully exposed": 0.9, "partially exposed": 1, sheltered: 1.2 },
  C: { "fully exposed": 0.9, "partially exposed": 1, sheltered: 1.1 },
  D: { "fully exposed": 0.8, "partially exposed": 0.9, sheltered: 1 },
};

const p_g = { kind: "pressure", meaning: "ground snow load", field: "site.ground snow" } as const;
const C_e = { kind: "ratio", meaning: "exposure factor of the roof", field: "site.snow exposure" } as const;
const C_t = { kind: "ratio", meaning: "thermal factor, 1.2 for a structure open to the air" } as const;
const I_s = { kind: "ratio", meaning: "importance factor of the risk category", field: "site.risk category" } as const;
const p_f = { kind: "pressure", meaning: "flat roof snow load" } as const;

export const flatRoofSnow = formula({
  id: "snow.flat",
  text: "p_f = 0.7 * C_e * C_t * I_s * p_g",
  source: "ASCE 7-16 Eq. 7.3-1, ASCE 7-10 Eq. 7.3-1",
  symbols: { p_f, C_e, C_t, I_s, p_g },
});

export const flatRoofSnowAtStrength = formula({
  id: "snow.flat-at-strength",
  text: "p_f = 0.7 * C_e * C_t * p_g",
  source: "ASCE 7-22 Eq. 7.3-1; ground snow of the risk category, at strength level, so there is no importance factor",
  symbols: { p_f, C_e, C_t, p_g },
});

export const leastSnow = formula({
  id: "snow.least",
  text: "p_m = I_s * min(p_g, p_20)",
  source: "ASCE 7-16 7.3.4, ASCE 7-10 7.3.4",
  symbols: { p_m: { kind: "pressure", meaning: "least snow load of a low slope" }, I_s, p_g },
  constants: { p_20: "20 psf" },
});

export const leastSnowAtStrength = formula({
  id: "snow.least-at-strength",
  text: "p_m = min(p_g, p_mx)",
  source: "ASCE 7-22 7.3.3, upper limits of Table 7.3-4 (from memory)",
  symbols: { p_m: { kind: "pressure", meaning: "least snow load of a low slope" }, p_g, p_mx: { kind: "pressure", meaning: "most the least snow load is, by risk category", field: "site.risk category" } },
});

/** What the place says about snow. Pressures Pa. */
export interface SnowSite {
  readonly standard: Edition;
  readonly groundSnow: number;
  readonly terrain: Terrain;
  readonly roofExposure: RoofExposure;
  readonly riskCategory: RiskCategory;
  /** Winter wind parameter of ASCE 7-22, where it is stated. */
  readonly winterWind?: number;
}

/** Open structures are as cold as the air; ASCE 7 Table 7.3-2. */
const openAir = 1.2;

export const isAtStrength = (standard: Edition): boolean => standard === "ASCE 7-22";

/** Flat roof snow load, Pa. */
export function flatSnow(site: SnowSite, calc: Calc): number {
  const of = { C_e: exposureFactor[site.terrain][site.roofExposure], C_t: openAir, p_g: site.groundSnow };
  return isAtStrength(site.standard) ? calc(flatRoofSnowAtStrength, of) : calc(flatRoofSnow, { ...of, I_s: importance[site.riskCategory] });
}

/** Least snow load of a low slope, Pa. */
export const leastOf = (site: SnowSite, calc: Calc): number =>
  isAtStrength(site.standard)
    ? calc(leastSnowAtStrength, { p_g: site.groundSnow, p_mx: mostLeastSnow[site.riskCategory] })
    : calc(leastSnow, { I_s: importance[site.riskCategory], p_g: site.groundSnow });
