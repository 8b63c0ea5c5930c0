/**
 * Flexural strength of square and rectangular hollow sections about either axis: AISC 360-22 F7, flange and web local buckling, and
 * lateral-torsional buckling about the strong axis of rectangular ones.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { flatOf, wallRatio } from "./elements.js";
import type { AxisInputs, ColumnInputs } from "./member.js";

const steel = { E: "29000 ksi" } as const;
const yieldStrength = { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade", range: [2e8, 4e8] } as const;
const flatness = { kind: "ratio", meaning: "flat width over wall", field: "columns.*.section", range: [28, 70] } as const;
const sectionModulus = { kind: "sectionModulus", meaning: "elastic section modulus", field: "columns.*.section" } as const;

export const plasticMoment = formula({
  id: "column.plastic-moment",
  text: "M_p = F_y * Z",
  source: "AISC 360-22 Eq. F7-1",
  symbols: {
    M_p: { kind: "moment", meaning: "plastic moment" },
    F_y: yieldStrength,
    Z: { kind: "sectionModulus", meaning: "plastic section modulus", field: "columns.*.section" },
  },
});

export const compactFlangeLimit = formula({
  id: "column.compact-flange-limit",
  text: "lambda_pf = 1.12 * sqrt(E / F_y)",
  source: "AISC 360-22 Table B4.1b, case 17",
  symbols: { lambda_pf: { kind: "ratio", meaning: "limit of a compact flange" }, F_y: yieldStrength },
  constants: steel,
});

export const slenderFlangeLimit = formula({
  id: "column.slender-flange-limit",
  text: "lambda_rf = 1.40 * sqrt(E / F_y)",
  source: "AISC 360-22 Table B4.1b, case 17",
  symbols: { lambda_rf: { kind: "ratio", meaning: "limit of a slender flange" }, F_y: yieldStrength },
  constants: steel,
});

export const compactWebLimit = formula({
  id: "column.compact-web-limit",
  text: "lambda_pw = 2.42 * sqrt(E / F_y)",
  source: "AISC 360-22 Table B4.1b, case 19",
  symbols: { lambda_pw: { kind: "ratio", meaning: "limit of a compact web" }, F_y: yieldStrength },
  constants: steel,
});

export const slenderWebLimit = formula({
  id: "column.slender-web-limit",
  text: "lambda_rw = 5.70 * sqrt(E / F_y)",
  source: "AISC 360-22 Table B4.1b, case 19",
  symbols: { lambda_rw: { kind: "ratio", meaning: "limit of a slender web" }, F_y: yieldStrength },
  constants: steel,
});

export const noncompactFlange = formula({
  id: "column.noncompact-flange",
  text: "M_nf = min(M_p, M_p - (M_p - F_y * S) * (3.57 * lambda * sqrt(F_y / E) - 4.0))",
  source: "AISC 360-22 Eq. F7-2",
  symbols: {
    M_nf: { kind: "moment", meaning: "nominal moment, flange local buckling" },
    M_p: { kind: "moment", meaning: "plastic moment" },
    F_y: yieldStrength,
    S: sectionModulus,
    lambda: flatness,
  },
  constants: steel,
});

export const effectiveFlangeWidth = formula({
  id: "column.effective-flange-width",
  text: "b_ef = min(b, 1.92 * t * sqrt(E / F_y) * (1 - 0.38 / lambda * sqrt(E / F_y)))",
  source: "AISC 360-22 Eq. F7-4",
  symbols: {
    b_ef: { kind: "length", meaning: "effective width of the compression flange" },
    b: { kind: "length", meaning: "flat width of a wall" },
    t: { kind: "length", meaning: "design wall", field: "columns.*.section" },
    F_y: yieldStrength,
    lambda: flatness,
  },
  constants: steel,
});

export const effectiveSectionModulus = formula({
  id: "column.effective-section-modulus",
  text: "S_e = (I - 2 * ((b - b_ef) * t * ((B - t) / 2)^2 + (b - b_ef) * t^3 / 12)) / (B / 2)",
  source: "AISC 360-22 F7.2(c), with the ineffective width taken out of both flanges, which keeps the axis in the middle and is on the safe side (AISC Companion to the Manual, 16th ed., Example F.8B)",
  symbols: {
    S_e: { kind: "sectionModulus", meaning: "effective section modulus" },
    I: { kind: "inertia", meaning: "second moment of area", field: "columns.*.section" },
    b: { kind: "length", meaning: "flat width of a wall" },
    b_ef: { kind: "length", meaning: "effective width of the compression flange" },
    t: { kind: "length", meaning: "design wall", field: "columns.*.section" },
    B: { kind: "length", meaning: "outside size across the axis", field: "columns.*.section" },
  },
});

export const slenderFlange = formula({
  id: "column.slender-flange",
  text: "M_nf = F_y * S_e",
  source: "AISC 360-22 Eq. F7-3",
  symbols: {
    M_nf: { kind: "moment", meaning: "nominal moment, flange local buckling" },
    F_y: yieldStrength,
    S_e: { kind: "sectionModulus", meaning: "effective section modulus" },
  },
});

export const noncompactWeb = formula({
  id: "column.noncompact-web",
  text: "M_nw = min(M_p, M_p - (M_p - F_y * S) * (0.305 * lambda * sqrt(F_y / E) - 0.738))",
  source: "AISC 360-22 Eq. F7-6",
  symbols: {
    M_nw: { kind: "moment", meaning: "nominal moment, web local buckling" },
    M_p: { kind: "moment", meaning: "plastic moment" },
    F_y: yieldStrength,
    S: sectionModulus,
    lambda: flatness,
  },
  constants: steel,
});

export const flexuralDesignStrength = formula({
  id: "column.flexural-strength",
  text: "M_c = phi_b * M_n",
  source: "AISC 360-22 F1, phi_b = 0.90",
  symbols: {
    M_c: { kind: "moment", meaning: "design flexural strength about the axis" },
    M_n: { kind: "moment", meaning: "nominal moment, the least of all ways to fail" },
  },
  constants: { phi_b: "0.90" },
});

export const boxYieldLength = formula({
  id: "column.box-yield-length",
  text: "L_p = 0.13 * E * r_y * sqrt(J * A) / M_p",
  source: "AISC 360-22 Eq. F7-12",
  symbols: {
    L_p: { kind: "distance", meaning: "unbraced length up to which the whole section yields" },
    r_y: { kind: "length", meaning: "radius of gyration about the weak axis", field: "columns.*.section" },
    J: { kind: "inertia", meaning: "torsional constant", field: "columns.*.section" },
    A: { kind: "area", meaning: "gross area", field: "columns.*.section" },
    M_p: { kind: "moment", meaning: "plastic moment" },
  },
  constants: steel,
});

export const boxElasticLength = formula({
  id: "column.box-elastic-length",
  text: "L_r = 2 * E * r_y * sqrt(J * A) / (0.7 * F_y * S)",
  source: "AISC 360-22 Eq. F7-13",
  symbols: {
    L_r: { kind: "distance", meaning: "unbraced length from which it buckles in the elastic range" },
    r_y: { kind: "length", meaning: "radius of gyration about the weak axis", field: "columns.*.section" },
    J: { kind: "inertia", meaning: "torsional constant", field: "columns.*.section" },
    A: { kind: "area", meaning: "gross area", field: "columns.*.section" },
    F_y: yieldStrength,
    S: sectionModulus,
  },
  constants: steel,
});

export const lateralBetween = formula({
  id: "column.lateral-torsional-between",
  text: "M_lt = min(M_p, M_p - (M_p - 0.7 * F_y * S) * (L - L_p) / (L_r - L_p))",
  source: "AISC 360-22 Eq. F2-2 and F7-10, C_b = 1.0 on the safe side",
  symbols: {
    M_lt: { kind: "moment", meaning: "nominal moment, lateral-torsional buckling" },
    M_p: { kind: "moment", meaning: "plastic moment" },
    F_y: yieldStrength,
    S: sectionModulus,
    L: { kind: "distance", meaning: "unbraced length, the height of the column", field: "columns.*.height", range: [4, 5] },
    L_p: { kind: "distance", meaning: "length up to which it yields", range: [1, 3] },
    L_r: { kind: "distance", meaning: "length from which it buckles in the elastic range", range: [8, 20] },
  },
});

export const boxElasticBuckling = formula({
  id: "column.box-elastic-buckling",
  text: "M_lt = 2 * E * sqrt(J * A) / (L / r_y)",
  source: "AISC 360-22 Eq. F7-11, C_b = 1.0 on the safe side",
  symbols: {
    M_lt: { kind: "moment", meaning: "nominal moment, lateral-torsional buckling" },
    J: { kind: "inertia", meaning: "torsional constant", field: "columns.*.section" },
    A: { kind: "area", meaning: "gross area", field: "columns.*.section" },
    L: { kind: "distance", meaning: "unbraced length, the height of the column", field: "columns.*.height" },
    r_y: { kind: "length", meaning: "radius of gyration about the weak axis", field: "columns.*.section" },
  },
  constants: steel,
});

export const leastMoment = formula({
  id: "column.least-moment",
  text: "M_n = min(M_p, M_nf, M_nw, M_lt)",
  source: "AISC 360-22 F2, F3 and F7: the lowest of the limit states",
  symbols: {
    M_n: { kind: "moment", meaning: "nominal moment" },
    M_p: { kind: "moment", meaning: "plastic moment" },
    M_nf: { kind: "moment", meaning: "nominal moment by the flange" },
    M_nw: { kind: "moment", meaning: "nominal moment by the web" },
    M_lt: { kind: "moment", meaning: "nominal moment, lateral-torsional buckling" },
  },
});

/** Lateral-torsional buckling about the strong axis of a rectangular tube. */
function lateralOfBox(column: ColumnInputs, M_p: number, calc: Calc): number {
  const { J, A, F_y, L, strong } = column;
  const r_y = column.weak.r;
  const L_p = calc(boxYieldLength, { r_y, J, A, M_p });
  if (L <= L_p) return M_p;
  const L_r = calc(boxElasticLength, { r_y, J, A, F_y, S: strong.S });
  return L <= L_r ? calc(lateralBetween, { M_p, F_y, S: strong.S, L, L_p, L_r }) : calc(boxElasticBuckling, { J, A, L, r_y });
}

/**
 * Design flexural strength of a tube about one of its axes, N·m, or undefined where the webs are slender. `across` is the outside size across
 * the axis, `flange` that of the flange.
 */
export function boxStrength(column: ColumnInputs, axis: AxisInputs, across: number, flange: number, calc: Calc): number | undefined {
  const { F_y, t } = column;
  const { S } = axis;
  const M_p = calc(plasticMoment, { F_y, Z: axis.Z });
  const b = calc(flatOf, { B: flange, t });
  const lambda = calc(wallRatio, { b, t });
  const lambda_pf = calc(compactFlangeLimit, { F_y });
  let M_nf = M_p;
  if (lambda > lambda_pf) {
    const lambda_rf = calc(slenderFlangeLimit, { F_y });
    if (lambda <= lambda_rf) {
      calc.note("The flanges are noncompact.");
      M_nf = calc(noncompactFlange, { M_p, F_y, S, lambda });
    } else {
      calc.note("The flanges are slender.");
      const b_ef = calc(effectiveFlangeWidth, { b, t, F_y, lambda });
      const S_e = calc(effectiveSectionModulus, { I: axis.I, b, b_ef, t, B: across });
      M_nf = calc(slenderFlange, { F_y, S_e });
    }
  } else calc.note("The flanges are compact.");
  const lambda_w = across === flange ? lambda : calc(wallRatio, { b: calc(flatOf, { B: across, t }), t });
  const lambda_pw = calc(compactWebLimit, { F_y });
  let M_nw = M_p;
  if (lambda_w > lambda_pw) {
    if (lambda_w > calc(slenderWebLimit, { F_y })) return undefined;
    calc.note("The webs are noncompact.");
    M_nw = calc(noncompactWeb, { M_p, F_y, S, lambda: lambda_w });
  }
  const M_lt = across > flange ? lateralOfBox(column, M_p, calc) : M_p;
  return calc(flexuralDesignStrength, { M_n: calc(leastMoment, { M_p, M_nf, M_nw, M_lt }) });
}

export const boxFormulas = [plasticMoment, flatOf, wallRatio, compactFlangeLimit, slenderFlangeLimit, noncompactFlange, effectiveFlangeWidth, effectiveSectionModulus, slenderFlange, compactWebLimit, slenderWebLimit, noncompactWeb, boxYieldLength, boxElasticLength, lateralBetween, boxElasticBuckling, leastMoment, flexuralDesignStrength];
