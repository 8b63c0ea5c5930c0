/**
 * Velocity pressure at a height and the net pressure on a free roof. Editions are rows: which terrain constants, whether there is a
 * ground elevation factor (from ASCE 7-16 on), and whether the directionality factor stands in the velocity pressure (ASCE 7-10 and
 * 7-16) or in the net pressure (ASCE 7-22). A velocity pressure of one edition is therefore not to be compared with one of another.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Edition } from "../edition.js";
import { topographicFactorAt, type Hill } from "./topography.js";

export type Exposure = "B" | "C" | "D";
export type LoadStandard = Edition;

const elevationRange = [0, 3000] as const;

export const exposureCoefficient = formula({
  id: "wind.exposure-coefficient",
  text: "K_z = c_z * (min(max(z, z_min), z_g) / z_g)^(2 / alpha)",
  source: "ASCE 7-22 and 7-16 Table 26.10-1, ASCE 7-10 Table 27.3-1, note 1, with the constants of the edition; the formula, not the rounded table",
  symbols: {
    K_z: { kind: "ratio", meaning: "velocity pressure exposure coefficient" },
    c_z: { kind: "ratio", meaning: "coefficient of the edition" },
    z: { kind: "distance", meaning: "height above grade", field: "roof.mean height" },
    z_g: { kind: "distance", meaning: "gradient height of the exposure", field: "site.exposure" },
    alpha: { kind: "ratio", meaning: "power of the wind profile", field: "site.exposure" },
  },
  constants: { z_min: "15 ft" },
});

export const elevationFactor = formula({
  id: "wind.elevation-factor",
  text: "K_e = exp(-c_e * z_e)",
  source: "ASCE 7-22 and 7-16 Table 26.9-1, note 2",
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

const K_d = { kind: "ratio", meaning: "wind directionality factor of the edition" } as const;

/** ASCE 7-16. */
export const directedPressure = formula({
  id: "wind.velocity-pressure-directed",
  text: "q_h = c_q * K_z * K_zt * K_d * K_e * V^2",
  source: "ASCE 7-16 Eq. 26.10-1; the directionality factor is in it",
  symbols: { q_h: { kind: "pressure", meaning: "velocity pressure, directionality factor included" }, K_d, ...factors },
  constants: { c_q: "0.00256 psf/mph^2" },
});

const { K_e: _, ...factorsWithoutElevation } = factors;

/** ASCE 7-10, which has no factor for the elevation of the ground. */
export const seaLevelPressure = formula({
  id: "wind.velocity-pressure-sea-level",
  text: "q_h = c_q * K_z * K_zt * K_d * V^2",
  source: "ASCE 7-10 Eq. 27.3-1; the directionality factor is in it",
  symbols: { q_h: { kind: "pressure", meaning: "velocity pressure, directionality factor included" }, K_d, ...factorsWithoutElevation },
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

/** The editions whose velocity pressure has the directionality factor in it. */
export const netPressureDirected = formula({
  id: "wind.net-pressure-directed",
  text: "p = q_h * G * C_N",
  source: "ASCE 7-16 Eq. 27.3-2, ASCE 7-10 Eq. 27.4-3; G of 26.11.1 or 26.9.1 for a rigid structure",
  symbols: {
    p: { kind: "pressure", meaning: "net pressure normal to the roof, positive down" },
    q_h: { kind: "pressure", meaning: "velocity pressure at mean roof height, directionality factor included" },
    C_N: { kind: "ratio", meaning: "net pressure coefficient" },
  },
  constants: { G: "0.85" },
});

/** ASCE 7-22. */
export const otherPressure = formula({
  id: "wind.other-structure-pressure",
  text: "p = q_z * K_d * G * C_f",
  source: "ASCE 7-22 Eq. 29.4-1 and 29.3-1, per area",
  symbols: {
    p: { kind: "pressure", meaning: "pressure of the drag" },
    q_z: { kind: "pressure", meaning: "velocity pressure at the middle of the area" },
    K_d,
    C_f: { kind: "ratio", meaning: "force coefficient" },
  },
  constants: { G: "0.85" },
});

/** The editions whose velocity pressure has the directionality factor in it. */
export const otherPressureDirected = formula({
  id: "wind.other-structure-pressure-directed",
  text: "p = q_z * G * C_f",
  source: "ASCE 7-16 Eq. 29.4-1, ASCE 7-10 Eq. 29.5-1, per area",
  symbols: {
    p: { kind: "pressure", meaning: "pressure of the drag" },
    q_z: { kind: "pressure", meaning: "velocity pressure at the middle of the area, directionality factor included" },
    C_f: { kind: "ratio", meaning: "force coefficient" },
  },
  constants: { G: "0.85" },
});

const directed = formula({
  id: "wind.directed-pressure",
  text: "q_d = q_z * K_d",
  source: "ASCE 7-22 26.10: the factor stands beside the velocity pressure",
  symbols: {
    q_d: { kind: "pressure", meaning: "velocity pressure, directionality factor included" },
    q_z: { kind: "pressure", meaning: "velocity pressure" },
    K_d,
  },
});

interface Terrain {
  readonly alpha: number;
  /** m */
  readonly z_g: number;
}

/** Main wind force resisting systems, and components and cladding, of buildings: ASCE 7-22 Table 26.6-1 and its earlier ones. */
export const ofBuildings = 0.85;

interface PressureFactors {
  readonly K_z: number;
  readonly K_zt: number;
  readonly K_d: number;
  readonly V: number;
}

/** What an edition of the load standard says about velocity pressure. */
interface WindRow {
  readonly clause: string;
  readonly c_z: number;
  readonly terrain: Readonly<Record<Exposure, Terrain>>;
  readonly velocityPressure: (calc: Calc, of: PressureFactors, groundElevation: number) => number;
  readonly netPressure: (calc: Calc, of: { q_h: number; C_N: number }) => number;
  readonly otherPressure: (calc: Calc, of: { q_z: number; K_d: number; C_f: number }) => number;
  readonly directed: (calc: Calc, of: { q_z: number; K_d: number }) => number;
}

/** Gradient heights of 1200, 900 and 700 ft, written in meters exactly. */
const earlierTerrain: WindRow["terrain"] = {
  B: { alpha: 7, z_g: 365.76 },
  C: { alpha: 9.5, z_g: 274.32 },
  D: { alpha: 11.5, z_g: 213.36 },
};

const wind: Readonly<Record<LoadStandard, WindRow>> = {
  "ASCE 7-10": {
    clause: "ASCE 7-10 27.3.2, directionality factor included",
    c_z: 2.01,
    terrain: earlierTerrain,
    velocityPressure: (calc, of, groundElevation) => {
      if (groundElevation !== 0) calc.note("ASCE 7-10 has no factor for the elevation of the ground: it is left out.");
      return calc(seaLevelPressure, of);
    },
    netPressure: (calc, of) => calc(netPressureDirected, of),
    otherPressure: (calc, { q_z, C_f }) => calc(otherPressureDirected, { q_z, C_f }),
    directed: (_calc, { q_z }) => q_z,
  },
  "ASCE 7-16": {
    clause: "ASCE 7-16 26.10, directionality factor included",
    c_z: 2.01,
    terrain: earlierTerrain,
    velocityPressure: (calc, of, z_e) => calc(directedPressure, { ...of, K_e: calc(elevationFactor, { z_e }) }),
    netPressure: (calc, of) => calc(netPressureDirected, of),
    otherPressure: (calc, { q_z, C_f }) => calc(otherPressureDirected, { q_z, C_f }),
    directed: (_calc, { q_z }) => q_z,
  },
  // Gradient heights of 3280, 2460 and 1935 ft, written in meters exactly.
  "ASCE 7-22": {
    clause: "ASCE 7-22 26.10, without the directionality factor",
    c_z: 2.41,
    terrain: {
      B: { alpha: 7.5, z_g: 999.744 },
      C: { alpha: 9.8, z_g: 749.808 },
      D: { alpha: 11.5, z_g: 589.788 },
    },
    velocityPressure: (calc, { K_z, K_zt, V }, z_e) => calc(velocityPressure, { K_z, K_zt, V, K_e: calc(elevationFactor, { z_e }) }),
    netPressure: (calc, of) => calc(netPressure, of),
    otherPressure: (calc, of) => calc(otherPressure, of),
    directed: (calc, of) => calc(directed, of),
  },
};

/** What the place says about wind; speed m/s, lengths m. */
export interface WindSite {
  readonly standard: LoadStandard;
  readonly V: number;
  readonly exposure: Exposure;
  /** Stated topographic factor; a hill stands in its place where there is one. */
  readonly K_zt: number;
  readonly hill?: Hill;
  readonly groundElevation: number;
}

/** Where the velocity pressure of an edition is defined, and what is in it. */
export const velocityPressureClause = (standard: LoadStandard): string => wind[standard].clause;

/**
 * Velocity pressure at a height, Pa. In ASCE 7-10 and 7-16 the directionality factor is in it, in ASCE 7-22 it is not; `K_d` is the
 * factor of what the wind acts on, a building where left out.
 */
export function velocityPressureAt(z: number, site: WindSite, calc: Calc, K_d = ofBuildings): number {
  const row = wind[site.standard];
  const { alpha, z_g } = row.terrain[site.exposure];
  const K_z = calc(exposureCoefficient, { c_z: row.c_z, z, z_g, alpha });
  const K_zt = site.hill ? topographicFactorAt(z, site.hill, site.exposure, calc) : site.K_zt;
  return row.velocityPressure(calc, { K_z, K_zt, K_d, V: site.V }, site.groundElevation);
}

/** Net pressure normal to a free roof, Pa, positive down. */
export const netPressureOf = (standard: LoadStandard, q_h: number, C_N: number, calc: Calc): number => wind[standard].netPressure(calc, { q_h, C_N });

/** Pressure of the drag on an other structure, Pa, from the velocity pressure that {@link velocityPressureAt} gives for its `K_d`. */
export const otherPressureOf = (standard: LoadStandard, q_z: number, K_d: number, C_f: number, calc: Calc): number => wind[standard].otherPressure(calc, { q_z, K_d, C_f });

/** The velocity pressure with the directionality factor in it, whatever the edition. */
export const withDirectionality = (standard: LoadStandard, q_z: number, K_d: number, calc: Calc): number => wind[standard].directed(calc, { q_z, K_d });
