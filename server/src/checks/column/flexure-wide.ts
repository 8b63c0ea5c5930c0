/**
 * Flexural strength of W shapes: about the strong axis AISC 360-22 F2 and F3, yielding, lateral-torsional buckling and local buckling of the
 * flange, and F5 where the web is not compact; about the weak axis F6.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { flangeDistance, flangeLean, wallRatio, webFlat } from "./elements.js";
import { flexuralDesignStrength, lateralBetween, leastMoment, plasticMoment } from "./flexure.js";
import { thinWebFormulas, thinWebMoment } from "./flexure-thin-web.js";
import type { ColumnInputs } from "./member.js";

const steel = { E: "29000 ksi" } as const;
const F_y = { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade", range: [2e8, 4e8] } as const;
const S = { kind: "sectionModulus", meaning: "elastic section modulus", field: "columns.*.section" } as const;
const r_ts = { kind: "length", meaning: "radius of gyration for lateral-torsional buckling" } as const;
const J = { kind: "inertia", meaning: "torsional constant", field: "columns.*.section" } as const;
const h_o = { kind: "length", meaning: "between the middles of the flanges" } as const;

const limit = <const T extends string>(id: string, text: T, meaning: string, source: string) =>
  formula({ id, text, source, symbols: { lambda_l: { kind: "ratio", meaning }, F_y }, constants: steel });

export const wideCompactFlange = limit("column.wide-compact-flange", "lambda_l = 0.38 * sqrt(E / F_y)", "limit of a compact flange of a W", "AISC 360-22 Table B4.1b, case 10");
export const wideSlenderFlange = limit("column.wide-slender-flange", "lambda_l = 1.0 * sqrt(E / F_y)", "limit of a slender flange of a W", "AISC 360-22 Table B4.1b, case 10");
export const wideCompactWeb = limit("column.wide-compact-web", "lambda_l = 3.76 * sqrt(E / F_y)", "limit of a compact web of a W", "AISC 360-22 Table B4.1b, case 15");

export const wideNoncompactFlange = formula({
  id: "column.wide-noncompact-flange",
  text: "M_nf = min(M_p, M_p - (M_p - 0.7 * F_y * S) * (lambda - lambda_pf) / (lambda_rf - lambda_pf))",
  source: "AISC 360-22 Eq. F3-1 and F6-2",
  symbols: {
    M_nf: { kind: "moment", meaning: "nominal moment, flange local buckling" },
    M_p: { kind: "moment", meaning: "plastic moment" },
    F_y,
    S,
    lambda: { kind: "ratio", meaning: "half flange over thickness", field: "columns.*.section", range: [12, 18] },
    lambda_pf: { kind: "ratio", meaning: "limit of a compact flange", range: [8, 11] },
    lambda_rf: { kind: "ratio", meaning: "limit of a slender flange", range: [20, 28] },
  },
});

export const flangeHold = formula({
  id: "column.flange-hold",
  text: "k_c = max(0.35, min(0.76, 4 / sqrt(lambda_w)))",
  source: "AISC 360-22 Table B4.1b, note [a], and F3.2",
  symbols: { k_c: { kind: "ratio", meaning: "how firmly the web holds the flange" }, lambda_w: { kind: "ratio", meaning: "clear web over thickness", range: [28, 130] } },
});

export const wideSlenderFlangeMoment = formula({
  id: "column.wide-slender-flange-moment",
  text: "M_nf = min(M_p, 0.9 * E * k_c * S / lambda^2)",
  source: "AISC 360-22 Eq. F3-2",
  symbols: { M_nf: { kind: "moment", meaning: "nominal moment, flange local buckling" }, M_p: { kind: "moment", meaning: "plastic moment" }, k_c: { kind: "ratio", meaning: "how firmly the web holds the flange" }, S, lambda: { kind: "ratio", meaning: "half flange over thickness", field: "columns.*.section", range: [24, 40] } },
  constants: steel,
});

export const weakSlenderFlangeMoment = formula({
  id: "column.weak-slender-flange-moment",
  text: "M_nf = min(M_p, 0.69 * E / lambda^2 * S)",
  source: "AISC 360-22 Eq. F6-3 and F6-4 (from memory)",
  symbols: { M_nf: { kind: "moment", meaning: "nominal moment, flange local buckling" }, M_p: { kind: "moment", meaning: "plastic moment about the weak axis" }, S, lambda: { kind: "ratio", meaning: "half flange over thickness", field: "columns.*.section", range: [24, 40] } },
  constants: steel,
});

export const longestWeb = formula({
  id: "column.longest-web",
  text: "lambda_l = 260",
  source: "AISC 360-22 F13.2: webs without stiffeners",
  symbols: { lambda_l: { kind: "ratio", meaning: "clear web over thickness that is allowed at most" } },
});

export const bucklingRadius = formula({
  id: "column.buckling-radius",
  text: "r_ts = sqrt(I_y * h_o / (2 * S))",
  source: "AISC 360-22 Eq. F2-7, with C_w = I_y h_o^2 / 4",
  symbols: { r_ts, I_y: { kind: "inertia", meaning: "second moment of area about the weak axis", field: "columns.*.section" }, h_o, S },
});

export const wideYieldLength = formula({
  id: "column.wide-yield-length",
  text: "L_p = 1.76 * r_y * sqrt(E / F_y)",
  source: "AISC 360-22 Eq. F2-5",
  symbols: { L_p: { kind: "distance", meaning: "unbraced length up to which the whole section yields" }, r_y: { kind: "length", meaning: "radius of gyration about the weak axis", field: "columns.*.section" }, F_y },
  constants: steel,
});

export const wideElasticLength = formula({
  id: "column.wide-elastic-length",
  text: "L_r = 1.95 * r_ts * E / (0.7 * F_y) * sqrt(J / (S * h_o) + sqrt((J / (S * h_o))^2 + 6.76 * (0.7 * F_y / E)^2))",
  source: "AISC 360-22 Eq. F2-6, c = 1",
  symbols: { L_r: { kind: "distance", meaning: "unbraced length from which it buckles in the elastic range" }, r_ts, F_y, J, S, h_o },
  constants: steel,
});

export const wideElasticBuckling = formula({
  id: "column.wide-elastic-buckling",
  text: "M_lt = pi^2 * E / (L / r_ts)^2 * sqrt(1 + 0.078 * J / (S * h_o) * (L / r_ts)^2) * S",
  source: "AISC 360-22 Eq. F2-3 and F2-4, C_b = 1.0 on the safe side, c = 1",
  symbols: { M_lt: { kind: "moment", meaning: "nominal moment, lateral-torsional buckling" }, L: { kind: "distance", meaning: "unbraced length, the height of the column", field: "columns.*.height" }, r_ts, J, S, h_o },
  constants: steel,
});

export const weakPlasticMoment = formula({
  id: "column.weak-plastic-moment",
  text: "M_p = min(F_y * Z, 1.6 * F_y * S)",
  source: "AISC 360-22 Eq. F6-1",
  symbols: { M_p: { kind: "moment", meaning: "plastic moment about the weak axis" }, F_y, Z: { kind: "sectionModulus", meaning: "plastic section modulus", field: "columns.*.section" }, S },
});

/** Why the strength of a W is not known here. */
export interface OutsideWide {
  readonly because: string;
}

/** The flange with its limits. */
function flangeOf(column: ColumnInputs, calc: Calc): { readonly lambda: number; readonly lambda_pf: number; readonly lambda_rf: number } {
  const fy = { F_y: column.F_y };
  return { lambda: calc(wallRatio, { b: calc(flangeLean, { B: column.B }), t: column.t_f }), lambda_pf: calc(wideCompactFlange, fy), lambda_rf: calc(wideSlenderFlange, fy) };
}

/** Nominal moment by the flange; `slender` gives it beyond the limit of a slender one. */
function flangeMoment(column: ColumnInputs, M_p: number, modulus: number, slender: (lambda: number) => number, calc: Calc): number {
  const { lambda, lambda_pf, lambda_rf } = flangeOf(column, calc);
  if (lambda <= lambda_pf) return M_p;
  if (lambda > lambda_rf) {
    calc.note("The flanges are slender.");
    return slender(lambda);
  }
  calc.note("The flanges are noncompact.");
  return calc(wideNoncompactFlange, { M_p, F_y: column.F_y, S: modulus, lambda, lambda_pf, lambda_rf });
}

/** Design flexural strength of a W about its strong axis, N·m. */
export function strongStrength(column: ColumnInputs, calc: Calc): number | OutsideWide {
  const { L, strong, weak } = column;
  const fy = { F_y: column.F_y };
  const h = calc(webFlat, { H: column.H, t_f: column.t_f, r_k: column.fillet });
  const web = calc(wallRatio, { b: h, t: column.t });
  if (web > calc(wideCompactWeb, fy)) {
    if (web > calc(longestWeb, {})) return { because: "the web of this section is thinner than any without stiffeners may be, h/tw of 260; take a thicker web" };
    return calc(flexuralDesignStrength, { M_n: thinWebMoment({ h, web, t_w: column.t, B: column.B, t_f: column.t_f, F_y: column.F_y, S: strong.S, L, ...flangeOf(column, calc), k_c: calc(flangeHold, { lambda_w: web }) }, calc) });
  }
  const M_p = calc(plasticMoment, { ...fy, Z: strong.Z });
  const M_nf = flangeMoment(column, M_p, strong.S, (lambda) => calc(wideSlenderFlangeMoment, { M_p, k_c: calc(flangeHold, { lambda_w: web }), S: strong.S, lambda }), calc);
  let M_lt = M_p;
  const L_p = calc(wideYieldLength, { ...fy, r_y: weak.r });
  if (L > L_p) {
    const depth = calc(flangeDistance, { H: column.H, t_f: column.t_f });
    const radius = calc(bucklingRadius, { I_y: weak.I, h_o: depth, S: strong.S });
    const ofSection = { r_ts: radius, J: column.J, S: strong.S, h_o: depth };
    const L_r = calc(wideElasticLength, { ...fy, ...ofSection });
    M_lt = L <= L_r ? calc(lateralBetween, { M_p, ...fy, S: strong.S, L, L_p, L_r }) : calc(wideElasticBuckling, { L, ...ofSection });
  }
  return calc(flexuralDesignStrength, { M_n: calc(leastMoment, { M_p, M_nf, M_nw: M_p, M_lt }) });
}

/** Design flexural strength of a W about its weak axis, N·m. */
export function weakStrength(column: ColumnInputs, calc: Calc): number {
  const { S } = column.weak;
  const M_p = calc(weakPlasticMoment, { F_y: column.F_y, Z: column.weak.Z, S });
  return calc(flexuralDesignStrength, { M_n: flangeMoment(column, M_p, S, (lambda) => calc(weakSlenderFlangeMoment, { M_p, S, lambda }), calc) });
}

export const wideFormulas = [wideCompactFlange, wideSlenderFlange, wideCompactWeb, flangeLean, webFlat, wideNoncompactFlange, flangeHold, wideSlenderFlangeMoment, weakSlenderFlangeMoment, longestWeb, ...thinWebFormulas, flangeDistance, bucklingRadius, wideYieldLength, wideElasticLength, wideElasticBuckling, weakPlasticMoment];
