/**
 * Compressive strength of a square hollow section: flexural buckling by AISC 360-22 E3, with the effective width of E7 where the
 * walls are slender.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";

/** What the strength of a square HSS is made of; SI. */
export interface HssProperties {
  /** Outside width, m. */
  readonly B: number;
  /** Design wall, m. */
  readonly t: number;
  /** Flat width over design wall. */
  readonly slenderness: number;
  readonly A: number;
  readonly I: number;
  readonly S: number;
  readonly Z: number;
  readonly r: number;
  readonly F_y: number;
}

const steel = { E: "29000 ksi" } as const;

export const slendernessRatio = formula({
  id: "column.slenderness-ratio",
  text: "KLr = K * L / r",
  source: "AISC 360-22 E2",
  symbols: {
    KLr: { kind: "ratio", meaning: "effective slenderness ratio" },
    K: { kind: "ratio", meaning: "effective length factor", field: "columns.*.top of column", range: [0.5, 3] },
    L: { kind: "distance", meaning: "height of the column", field: "columns.*.height" },
    r: { kind: "length", meaning: "radius of gyration", field: "columns.*.section" },
  },
});

export const elasticStress = formula({
  id: "column.elastic-buckling-stress",
  text: "F_e = pi^2 * E / KLr^2",
  source: "AISC 360-22 Eq. E3-4",
  symbols: {
    F_e: { kind: "steelStress", meaning: "elastic buckling stress" },
    KLr: { kind: "ratio", meaning: "effective slenderness ratio", range: [10, 250] },
  },
  constants: steel,
});

export const nominalStress = formula({
  id: "column.nominal-stress",
  text: "F_n = F_y / F_e <= 2.25 ? 0.658^(F_y / F_e) * F_y : 0.877 * F_e",
  source: "AISC 360-22 Eq. E3-2 and E3-3",
  symbols: {
    F_n: { kind: "steelStress", meaning: "nominal compressive stress" },
    F_y: { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade", range: [2e8, 4e8] },
    F_e: { kind: "steelStress", meaning: "elastic buckling stress", range: [2e7, 1e9] },
  },
});

export const slenderWallLimit = formula({
  id: "column.slender-wall-limit",
  text: "lambda_r = 1.40 * sqrt(E / F_y)",
  source: "AISC 360-22 Table B4.1a, case 6",
  symbols: {
    lambda_r: { kind: "ratio", meaning: "flat width over wall from which a wall is slender in compression" },
    F_y: { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade", range: [2e8, 4e8] },
  },
  constants: steel,
});

export const flatWidth = formula({
  id: "column.flat-width",
  text: "b = lambda * t",
  source: "AISC 360-22 B4.1b(d): outside width less three design walls",
  symbols: {
    b: { kind: "length", meaning: "flat width of a wall" },
    lambda: { kind: "ratio", meaning: "flat width over wall", field: "columns.*.section" },
    t: { kind: "length", meaning: "design wall", field: "columns.*.section" },
  },
});

export const wallElasticStress = formula({
  id: "column.wall-elastic-stress",
  text: "F_el = (1.38 * lambda_r / lambda)^2 * F_y",
  source: "AISC 360-22 Eq. E7-5; c2 = 1.38 by Table E7.1, walls of square HSS",
  symbols: {
    F_el: { kind: "steelStress", meaning: "elastic local buckling stress of a wall" },
    lambda_r: { kind: "ratio", meaning: "limit of a slender wall" },
    lambda: { kind: "ratio", meaning: "flat width over wall", field: "columns.*.section" },
    F_y: { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade" },
  },
});

export const effectiveWallWidth = formula({
  id: "column.effective-wall-width",
  text: "b_e = lambda <= lambda_r * sqrt(F_y / F_n) ? b : b * (1 - 0.20 * sqrt(F_el / F_n)) * sqrt(F_el / F_n)",
  source: "AISC 360-22 Eq. E7-2 and E7-3; c1 = 0.20 by Table E7.1, walls of square HSS",
  symbols: {
    b_e: { kind: "length", meaning: "effective width of a wall in compression" },
    lambda: { kind: "ratio", meaning: "flat width over wall", field: "columns.*.section", range: [5, 70] },
    lambda_r: { kind: "ratio", meaning: "limit of a slender wall", range: [30, 36] },
    F_y: { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade", range: [2e8, 4e8] },
    F_n: { kind: "steelStress", meaning: "nominal compressive stress", range: [1e8, 4e8] },
    F_el: { kind: "steelStress", meaning: "elastic local buckling stress of a wall", range: [1e8, 2e9] },
    b: { kind: "length", meaning: "flat width of a wall" },
  },
});

export const effectiveArea = formula({
  id: "column.effective-area",
  text: "A_e = A - 4 * (b - b_e) * t",
  source: "AISC 360-22 E7: gross area less the four walls' ineffective widths",
  symbols: {
    A_e: { kind: "area", meaning: "effective area" },
    A: { kind: "area", meaning: "gross area", field: "columns.*.section" },
    b: { kind: "length", meaning: "flat width of a wall" },
    b_e: { kind: "length", meaning: "effective width of a wall" },
    t: { kind: "length", meaning: "design wall", field: "columns.*.section" },
  },
});

export const compressiveDesignStrength = formula({
  id: "column.compressive-strength",
  text: "P_c = phi_c * F_n * A_e",
  source: "AISC 360-22 E1 and Eq. E7-1, phi_c = 0.90",
  symbols: {
    P_c: { kind: "force", meaning: "design compressive strength" },
    F_n: { kind: "steelStress", meaning: "nominal compressive stress" },
    A_e: { kind: "area", meaning: "effective area" },
  },
  constants: { phi_c: "0.90" },
});

export const tensileDesignStrength = formula({
  id: "column.tensile-strength",
  text: "P_c = phi_t * F_y * A",
  source: "AISC 360-22 Eq. D2-1, phi_t = 0.90",
  symbols: {
    P_c: { kind: "force", meaning: "design tensile strength in yielding" },
    F_y: { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade" },
    A: { kind: "area", meaning: "gross area", field: "columns.*.section" },
  },
  constants: { phi_t: "0.90" },
});

/** Design compressive strength, N, of a member with effective length K·L in both planes. */
export function compressiveStrength(hss: HssProperties, K: number, L: number, calc: Calc): number {
  const KLr = calc(slendernessRatio, { K, L, r: hss.r });
  const F_e = calc(elasticStress, { KLr });
  const F_n = calc(nominalStress, { F_y: hss.F_y, F_e });
  const lambda_r = calc(slenderWallLimit, { F_y: hss.F_y });
  const lambda = hss.slenderness;
  if (lambda <= lambda_r) {
    calc.note("No wall is slender in compression: the whole area counts.");
    return calc(compressiveDesignStrength, { F_n, A_e: hss.A });
  }
  calc.note("The walls are slender in compression: effective widths by E7.");
  const b = calc(flatWidth, { lambda, t: hss.t });
  const F_el = calc(wallElasticStress, { lambda_r, lambda, F_y: hss.F_y });
  const b_e = calc(effectiveWallWidth, { lambda, lambda_r, F_y: hss.F_y, F_n, F_el, b });
  const A_e = calc(effectiveArea, { A: hss.A, b, b_e, t: hss.t });
  return calc(compressiveDesignStrength, { F_n, A_e });
}
