/**
 * The seismic base shear by the equivalent lateral force procedure, for one-story structures shorter in period than the long-period
 * transition of the place.
 */
import type { SeismicSystem } from "../../catalog/seismic-systems.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Edition } from "../edition.js";
import type { RiskCategory } from "../snow/editions.js";

/** What the place, the structure and its system say about earthquakes. */
export interface SeismicSite {
  readonly standard: Edition;
  /** Design spectral accelerations, as parts of gravity. */
  readonly S_DS: number;
  readonly S_D1: number;
  /** Mapped one-second acceleration, needed where the place is near a great fault. */
  readonly S_1: number;
  readonly riskCategory: RiskCategory;
  readonly system: SeismicSystem;
  /** Redundancy factor. */
  readonly redundancy: number;
}

/** ASCE 7 Table 1.5-2. */
export const seismicImportance: Readonly<Record<RiskCategory, number>> = { I: 1, II: 1, III: 1.25, IV: 1.5 };

const S_DS = { kind: "ratio", meaning: "design acceleration at short periods, part of gravity", field: "site.short-period acceleration" } as const;
const R = { kind: "ratio", meaning: "response modification coefficient of the system", field: "roof.earthquake system", range: [1, 8] } as const;
const I_e = { kind: "ratio", meaning: "importance factor of the risk category", field: "site.risk category" } as const;
const C_s = { kind: "ratio", meaning: "seismic response coefficient" } as const;
const T_a = { kind: "time", meaning: "approximate period" } as const;
const h_n = { kind: "distance", meaning: "height of the roof above the base", field: "roof.mean height" } as const;

export const period = formula({
  id: "seismic.period",
  text: "T_a = c_t * h_n^0.75",
  source: "ASCE 7-16 Eq. 12.8-7, all other systems of Table 12.8-2; 0.02 s with the height in feet",
  symbols: { T_a, h_n },
  constants: { c_t: "0.02 s/ft^0.75" },
});

export const periodOfMomentFrame = formula({
  id: "seismic.period-moment-frame",
  text: "T_a = c_t * h_n^0.8",
  source: "ASCE 7-16 Eq. 12.8-7, steel moment frames of Table 12.8-2 (from memory); 0.028 s with the height in feet",
  symbols: { T_a, h_n },
  constants: { c_t: "0.028 s/ft^0.8" },
});

export const shortPeriod = formula({
  id: "seismic.response",
  text: "C_s = S_DS / (R / I_e)",
  source: "ASCE 7-16 Eq. 12.8-2",
  symbols: { C_s, S_DS, R, I_e },
});

export const mostResponse = formula({
  id: "seismic.most",
  text: "C_mx = S_D1 * s_1 / (T_a * R / I_e)",
  source: "ASCE 7-16 Eq. 12.8-3, below the long-period transition",
  symbols: {
    C_mx: { kind: "ratio", meaning: "most the coefficient has to be" },
    S_D1: { kind: "ratio", meaning: "design acceleration at one second, part of gravity", field: "site.one-second acceleration" },
    T_a,
    R,
    I_e,
  },
  constants: { s_1: "1 s" },
});

export const leastResponse = formula({
  id: "seismic.least",
  text: "C_mn = max(max(0.044 * S_DS * I_e, 0.01), S_1 >= 0.6 ? 0.5 * S_1 / (R / I_e) : 0)",
  source: "ASCE 7-16 Eq. 12.8-5 and, near a great fault, 12.8-6",
  symbols: {
    C_mn: { kind: "ratio", meaning: "least the coefficient may be" },
    S_DS,
    I_e,
    S_1: { kind: "ratio", meaning: "mapped acceleration at one second, part of gravity", field: "site.mapped one-second acceleration" },
    R,
  },
});

export const responseCoefficient = formula({
  id: "seismic.coefficient",
  text: "C_s = max(min(C_s0, C_mx), C_mn)",
  source: "ASCE 7-16 12.8.1.1",
  symbols: {
    C_s,
    C_s0: { kind: "ratio", meaning: "coefficient at short periods" },
    C_mx: { kind: "ratio", meaning: "most the coefficient has to be" },
    C_mn: { kind: "ratio", meaning: "least the coefficient may be" },
  },
});

export const baseShear = formula({
  id: "seismic.base-shear",
  text: "V = C_s * W",
  source: "ASCE 7-16 Eq. 12.8-1",
  symbols: { V: { kind: "force", meaning: "seismic base shear" }, C_s, W: { kind: "force", meaning: "effective seismic weight" } },
});

export const horizontalEffect = formula({
  id: "seismic.horizontal",
  text: "E_h = max(rho, Omega_0) * V",
  source: "ASCE 7-16 12.4.2.1 and 12.4.3.1; 12.2.5.2 asks for the overstrength at the foundation and anchors of cantilevered columns, and the columns take the same, on the safe side",
  symbols: {
    E_h: { kind: "force", meaning: "sideways earthquake load" },
    rho: { kind: "ratio", meaning: "redundancy factor", field: "roof.redundancy factor" },
    Omega_0: { kind: "ratio", meaning: "overstrength factor of the system; 1 where no overstrength is asked for" },
    V: { kind: "force", meaning: "seismic base shear" },
  },
});

export const verticalFactor = formula({
  id: "seismic.vertical",
  text: "f_v = 0.2 * S_DS",
  source: "ASCE 7-16 Eq. 12.4-4a, E_v = 0.2 S_DS D",
  symbols: { f_v: { kind: "ratio", meaning: "vertical earthquake load as a part of the dead load" }, S_DS },
});

/** The seismic response coefficient at a roof height, m. */
export function coefficientAt(height: number, { S_DS: short, S_D1, S_1, riskCategory, system }: SeismicSite, calc: Calc): number {
  const I = seismicImportance[riskCategory];
  const T = calc(system.steelMomentFrame ? periodOfMomentFrame : period, { h_n: height });
  const C_s0 = calc(shortPeriod, { S_DS: short, R: system.R, I_e: I });
  const C_mx = calc(mostResponse, { S_D1, T_a: T, R: system.R, I_e: I });
  const C_mn = calc(leastResponse, { S_DS: short, I_e: I, S_1, R: system.R });
  return calc(responseCoefficient, { C_s0, C_mx, C_mn });
}

/** Sideways earthquake load of a weight, N. */
export function earthquakeOn(weight: number, height: number, site: SeismicSite, calc: Calc): number {
  const V = calc(baseShear, { C_s: coefficientAt(height, site, calc), W: weight });
  return calc(horizontalEffect, { rho: site.redundancy, Omega_0: site.system.cantilevered ? site.system.overstrength : 1, V });
}
