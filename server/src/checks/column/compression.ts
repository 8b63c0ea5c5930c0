/**
 * Compressive strength of a column: flexural buckling in both plan directions by AISC 360-22 E3, of W shapes torsional buckling by E4, with
 * the effective widths of E7 where walls, flanges or webs are slender.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { calculatedOnce } from "../once.js";
import { elasticStress, nominalStress } from "../steel-buckling.js";
import { flangeDistance, flangeLean, flatOf, webFlat, wallRatio } from "./elements.js";
import { axesOf, type ColumnInputs } from "./member.js";

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

export const torsionalStress = formula({
  id: "column.torsional-buckling-stress",
  text: "F_e = (pi^2 * E * I_y * h_o^2 / (4 * (K * L)^2) + G * J) / (I_x + I_y)",
  source: "AISC 360-22 Eq. E4-2, with C_w = I_y h_o^2 / 4",
  symbols: {
    F_e: { kind: "steelStress", meaning: "elastic torsional buckling stress" },
    I_y: { kind: "inertia", meaning: "second moment of area about the weak axis", field: "columns.*.section" },
    I_x: { kind: "inertia", meaning: "second moment of area about the strong axis", field: "columns.*.section" },
    h_o: { kind: "length", meaning: "between the middles of the flanges", field: "columns.*.section" },
    K: { kind: "ratio", meaning: "effective length factor, the larger one" },
    L: { kind: "distance", meaning: "height of the column", field: "columns.*.height" },
    J: { kind: "inertia", meaning: "torsional constant", field: "columns.*.section" },
  },
  constants: { E: "29000 ksi", G: "11200 ksi" },
});

export const roundEffectiveArea = formula({
  id: "column.round-effective-area",
  text: "A_e = lambda <= 0.11 * E / F_y ? A : (0.038 * E / (F_y * lambda) + 2 / 3) * A",
  source: "AISC 360-22 Eq. E7-6 and E7-7, D/t below 0.45 E/F_y",
  symbols: {
    A_e: { kind: "area", meaning: "effective area" },
    lambda: { kind: "ratio", meaning: "diameter over wall", field: "columns.*.section", range: [20, 150] },
    F_y: { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade", range: [2e8, 4e8] },
    A: { kind: "area", meaning: "gross area", field: "columns.*.section" },
  },
  constants: steel,
});

export const slenderFlangeInCompression = formula({
  id: "column.slender-flange-in-compression",
  text: "lambda_r = 0.56 * sqrt(E / F_y)",
  source: "AISC 360-22 Table B4.1a, case 1",
  symbols: { lambda_r: { kind: "ratio", meaning: "half flange over thickness from which a flange is slender in compression" }, F_y: { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade", range: [2e8, 4e8] } },
  constants: steel,
});

export const slenderWebInCompression = formula({
  id: "column.slender-web-in-compression",
  text: "lambda_r = 1.49 * sqrt(E / F_y)",
  source: "AISC 360-22 Table B4.1a, case 5",
  symbols: { lambda_r: { kind: "ratio", meaning: "clear web over thickness from which a web is slender in compression" }, F_y: { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade", range: [2e8, 4e8] } },
  constants: steel,
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

export const wallElasticStress = formula({
  id: "column.wall-elastic-stress",
  text: "F_el = (c_2 * lambda_r / lambda)^2 * F_y",
  source: "AISC 360-22 Eq. E7-5; c2 by Table E7.1: 1.31 of webs, 1.38 of walls of square and rectangular HSS, 1.49 of flanges",
  symbols: {
    F_el: { kind: "steelStress", meaning: "elastic local buckling stress of a wall" },
    c_2: { kind: "ratio", meaning: "factor of the kind of wall" },
    lambda_r: { kind: "ratio", meaning: "limit of a slender wall" },
    lambda: { kind: "ratio", meaning: "flat width over wall", field: "columns.*.section" },
    F_y: { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade" },
  },
});

export const effectiveWallWidth = formula({
  id: "column.effective-wall-width",
  text: "b_e = lambda <= lambda_r * sqrt(F_y / F_n) ? b : b * (1 - c_1 * sqrt(F_el / F_n)) * sqrt(F_el / F_n)",
  source: "AISC 360-22 Eq. E7-2 and E7-3; c1 by Table E7.1: 0.18 of webs, 0.20 of walls of square and rectangular HSS, 0.22 of flanges",
  symbols: {
    b_e: { kind: "length", meaning: "effective width of a wall in compression" },
    c_1: { kind: "ratio", meaning: "factor of the kind of wall", range: [0.18, 0.22] },
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
  text: "A_e = A - n * (b - b_e) * t",
  source: "AISC 360-22 E7: gross area less the ineffective widths",
  symbols: {
    A_e: { kind: "area", meaning: "effective area" },
    A: { kind: "area", meaning: "gross area, less what is ineffective already", field: "columns.*.section" },
    n: { kind: "number", meaning: "walls of this kind" },
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

interface Wall {
  readonly n: number;
  readonly b: number;
  readonly t: number;
  readonly lambda_r: number;
  readonly c_1: number;
  readonly c_2: number;
  readonly called: string;
}

/** The flat walls of a section that could be slender, each kind once. */
function wallsOf(column: ColumnInputs, calc: Calc): readonly Wall[] {
  const { shape, F_y, t, t_f } = column;
  if (shape === "W") {
    const flange = calc(flangeLean, { B: column.B });
    const web = calc(webFlat, { H: column.H, t_f, r_k: column.fillet });
    return [
      { n: 4, b: flange, t: t_f, lambda_r: calc(slenderFlangeInCompression, { F_y }), c_1: 0.22, c_2: 1.49, called: "half flanges" },
      { n: 1, b: web, t, lambda_r: calc(slenderWebInCompression, { F_y }), c_1: 0.18, c_2: 1.31, called: "web" },
    ];
  }
  const lambda_r = calc(slenderWallLimit, { F_y });
  const wall = (side: number): Wall => ({ n: 2, b: calc(flatOf, { B: side, t }), t, lambda_r, c_1: 0.2, c_2: 1.38, called: "walls" });
  return [wall(column.H), wall(column.B)];
}

/** The area that counts at a stress, m². */
function areaAt(column: ColumnInputs, F_n: number, calc: Calc): number {
  const { F_y, A } = column;
  if (column.shape === "round") return calc(roundEffectiveArea, { lambda: calc(wallRatio, { b: column.H, t: column.t }), F_y, A });
  let A_e = A;
  for (const { n, b, t, lambda_r, c_1, c_2, called } of wallsOf(column, calc)) {
    const lambda = calc(wallRatio, { b, t });
    if (lambda <= lambda_r) continue;
    calc.note(`The ${called} are slender in compression: effective widths by E7.`);
    const F_el = calc(wallElasticStress, { c_2, lambda_r, lambda, F_y });
    const b_e = calc(effectiveWallWidth, { c_1, lambda, lambda_r, F_y, F_n, F_el, b });
    A_e = calc(effectiveArea, { A: A_e, n, b, b_e, t });
  }
  if (A_e === A) calc.note("No wall is slender in compression: the whole area counts.");
  return A_e;
}

/** The larger slenderness of both plan directions. A sway along x bends the column about y. */
export function worstSlenderness(column: ColumnInputs, calc: Calc): number {
  const { aboutX, aboutY } = axesOf(column);
  const alongX = calc(slendernessRatio, { K: column.K_x, L: column.L, r: aboutY.r });
  const alongY = calc(slendernessRatio, { K: column.K_y, L: column.L, r: aboutX.r });
  return alongX >= alongY ? alongX : alongY;
}

/** Design compressive strength, N. */
export const compressiveStrength = calculatedOnce((column: ColumnInputs, calc: Calc): number => {
  let F_e = calc(elasticStress, { KLr: worstSlenderness(column, calc) });
  if (column.shape === "W") {
    const K = column.K_x >= column.K_y ? column.K_x : column.K_y;
    const twisting = calc(torsionalStress, { I_y: column.weak.I, I_x: column.strong.I, h_o: calc(flangeDistance, { H: column.H, t_f: column.t_f }), K, L: column.L, J: column.J });
    if (twisting < F_e) {
      calc.note("The column twists before it bends.");
      F_e = twisting;
    }
  }
  const F_n = calc(nominalStress, { F_y: column.F_y, F_e });
  return calc(compressiveDesignStrength, { F_n, A_e: areaAt(column, F_n, calc) });
});

export const compressionFormulas = [slendernessRatio, elasticStress, torsionalStress, nominalStress, flatOf, wallRatio, slenderWallLimit, slenderFlangeInCompression, slenderWebInCompression, wallElasticStress, effectiveWallWidth, effectiveArea, roundEffectiveArea, compressiveDesignStrength];
