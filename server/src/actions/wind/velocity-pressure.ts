/**
 * Velocity pressure at mean roof height and the net pressure on a free roof. Editions are rows: which terrain constants, and
 * whether the directionality factor stands in the velocity pressure (ASCE 7-10 and 7-16) or in the net pressure (ASCE 7-22).
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";

export type Exposure = "B" | "C" | "D";
export type LoadStandard = "ASCE 7-22";

const elevationRange = [0, 3000] as const;

export const exposureCoefficient = formula({
  id: "wind.exposure-coefficient",
  text: "K_z = c_z * (min(max(z, z_min), z_g) / z_g)^(2 / alpha)",
  source: "ASCE 7-22 Table 26.10-1, note 1, constants of Table 26.11-1; the formula, not the rounded table",
  symbols: {
    K_z: { kind: "ratio", meaning: "velocity pressure exposure coefficient" },
    c_z: { kind: "ratio", meaning: "coefficient of the edition" },
    z: { kind: "distance", meaning: "mean roof height above grade", field: "roof.mean height" },
    z_g: { kind: "distance", meaning: "gradient height of the exposure", field: "site.exposure" },
    alpha: { kind: "ratio", meaning: "power of the wind profile", field: "site.exposure" },
  },
  constants: { z_min: "15 ft" },
});

export const elevationFactor = formula({
  id: "wind.elevation-factor",
  text: "K_e = exp(-c_e * z_e)",
  source: "ASCE 7-22 Table 26.9-1, note 2",
  symbols: {
    K_e: { kind: "ratio", meaning: "ground elevation factor" },
    z_e: { kind: "distance", meaning: "ground elevation above sea level", field: "site.ground elevation", range: elevationRange },
  },
  constants: { c_e: "0.0000362 ft^-1" },
});

const factors = {
  K_z: { kind: "ratio", meaning: "velocity pressure exposure coefficient" },
  K_zt: { kind: "ratio", meaning: "topographic factor", field: "site.topographic factor" },
  K_e: { kind: "ratio", meaning: "ground elevation factor" },
  V: { kind: "speed", meaning: "basic wind speed", field: "site.wind speed" },
} as const;

export const velocityPressure = formula({
  id: "wind.velocity-pressure",
  text: "q_h = c_q * K_z * K_zt * K_e * V^2",
  source: "ASCE 7-22 Eq. 26.10-1, at mean roof height; the directionality factor is not in it",
  symbols: { q_h: { kind: "pressure", meaning: "velocity pressure at mean roof height" }, ...factors },
  constants: { c_q: "0.00256 psf/mph^2" },
});

export const netPressure = formula({
  id: "wind.net-pressure",
  text: "p = q_h * K_d * G * C_N",
  source: "ASCE 7-22 Eq. 27.3-2; G of 26.11.1 for a rigid structure, K_d of Table 26.6-1 for main wind force resisting systems of buildings",
  symbols: {
    p: { kind: "pressure", meaning: "net pressure normal to the roof, positive down" },
    q_h: { kind: "pressure", meaning: "velocity pressure at mean roof height" },
    C_N: { kind: "ratio", meaning: "net pressure coefficient" },
  },
  constants: { K_d: "0.85", G: "0.85" },
});

interface Terrain {
  readonly alpha: number;
  /** m */
  readonly z_g: number;
}

/** What an edition of the load standard says about velocity pressure. */
interface WindRow {
  readonly c_z: number;
  readonly terrain: Readonly<Record<Exposure, Terrain>>;
  readonly velocityPressure: (calc: Calc, of: { K_z: number; K_zt: number; K_e: number; V: number }) => number;
  readonly netPressure: (calc: Calc, of: { q_h: number; C_N: number }) => number;
}

/** Gradient heights are the SI ones of the edition's table, 3280, 2460 and 1935 ft, written in meters exactly. */
const wind: Readonly<Record<LoadStandard, WindRow>> = {
  "ASCE 7-22": {
    c_z: 2.41,
    terrain: {
      B: { alpha: 7.5, z_g: 999.744 },
      C: { alpha: 9.8, z_g: 749.808 },
      D: { alpha: 11.5, z_g: 589.788 },
    },
    velocityPressure: (calc, of) => calc(velocityPressure, of),
    netPressure: (calc, of) => calc(netPressure, of),
  },
};

/** What the place says about wind; speed m/s, lengths m. */
export interface WindSite {
  readonly standard: LoadStandard;
  readonly V: number;
  readonly exposure: Exposure;
  readonly K_zt: number;
  readonly groundElevation: number;
}

/** Velocity pressure at a height, Pa; in ASCE 7-22 without the directionality factor. */
export function velocityPressureAt(z: number, site: WindSite, calc: Calc): number {
  const row = wind[site.standard];
  const { alpha, z_g } = row.terrain[site.exposure];
  const K_z = calc(exposureCoefficient, { c_z: row.c_z, z, z_g, alpha });
  const K_e = calc(elevationFactor, { z_e: site.groundElevation });
  return row.velocityPressure(calc, { K_z, K_zt: site.K_zt, K_e, V: site.V });
}

/** Net pressure normal to a free roof, Pa, positive down. */
export const netPressureOf = (standard: LoadStandard, q_h: number, C_N: number, calc: Calc): number => wind[standard].netPressure(calc, { q_h, C_N });
