/**
 * Strong axis of W shapes whose webs are not compact: AISC 360-22 F5, which holds for slender webs and, on the safe side, for noncompact ones
 * too (F4, user note). A thin web sheds stress to the flanges, and does not count in the twist of lateral-torsional buckling.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";

const steel = { E: "29000 ksi" } as const;
const F_y = { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade", range: [2e8, 4e8] } as const;
const S = { kind: "sectionModulus", meaning: "elastic section modulus", field: "columns.*.section" } as const;
const a_w = { kind: "ratio", meaning: "area of the web over that of one flange", range: [0.2, 3] } as const;
const R_pg = { kind: "ratio", meaning: "what a thin web leaves of the bending strength" } as const;
const F_cr = { kind: "steelStress", meaning: "critical stress of the flange" } as const;
const r_t = { kind: "length", meaning: "radius of gyration of the flange with a third of the web in compression", range: [0.03, 0.08] } as const;
const L = { kind: "distance", meaning: "unbraced length, the height of the column", field: "columns.*.height", range: [1, 9] } as const;

export const webToFlange = formula({
  id: "column.web-to-flange",
  text: "a_w = min(10, h * t_w / (B * t_f))",
  source: "AISC 360-22 Eq. F4-12 and F5-6, at most 10",
  symbols: {
    a_w,
    h: { kind: "length", meaning: "clear height of the web" },
    t_w: { kind: "length", meaning: "web", field: "columns.*.section" },
    B: { kind: "length", meaning: "flange width", field: "columns.*.section" },
    t_f: { kind: "length", meaning: "flange thickness", field: "columns.*.section" },
  },
});

export const webShedding = formula({
  id: "column.web-shedding",
  text: "R_pg = min(1, 1 - a_w / (1200 + 300 * a_w) * (lambda - 5.7 * sqrt(E / F_y)))",
  source: "AISC 360-22 Eq. F5-6",
  symbols: { R_pg, a_w, lambda: { kind: "ratio", meaning: "clear web over thickness", range: [90, 260] }, F_y },
  constants: steel,
});

export const flangeRadius = formula({
  id: "column.flange-radius",
  text: "r_t = B / sqrt(12 * (1 + a_w / 6))",
  source: "AISC 360-22 Eq. F4-11",
  symbols: { r_t, B: { kind: "length", meaning: "flange width", field: "columns.*.section" }, a_w },
});

export const thinLateralStress = formula({
  id: "column.thin-web-lateral-stress",
  text: "F_cr = L <= 1.1 * r_t * sqrt(E / F_y) ? F_y : L <= pi * r_t * sqrt(E / (0.7 * F_y)) ? F_y - 0.3 * F_y * (L - 1.1 * r_t * sqrt(E / F_y)) / (pi * r_t * sqrt(E / (0.7 * F_y)) - 1.1 * r_t * sqrt(E / F_y)) : pi^2 * E / (L / r_t)^2",
  source: "AISC 360-22 Eq. F5-3 to F5-5 with F4-7, C_b = 1.0 on the safe side",
  symbols: { F_cr: { ...F_cr, meaning: "critical stress, lateral-torsional buckling" }, F_y, L, r_t },
  constants: steel,
});

export const thinFlangeStress = formula({
  id: "column.thin-web-flange-stress",
  text: "F_cr = lambda <= lambda_pf ? F_y : lambda <= lambda_rf ? F_y - 0.3 * F_y * (lambda - lambda_pf) / (lambda_rf - lambda_pf) : 0.9 * E * k_c / lambda^2",
  source: "AISC 360-22 Eq. F5-8 and F5-9",
  symbols: {
    F_cr: { ...F_cr, meaning: "critical stress, flange local buckling" },
    F_y,
    lambda: { kind: "ratio", meaning: "half flange over thickness", field: "columns.*.section", range: [5, 40] },
    lambda_pf: { kind: "ratio", meaning: "limit of a compact flange", range: [8, 11] },
    lambda_rf: { kind: "ratio", meaning: "limit of a slender flange", range: [20, 28] },
    k_c: { kind: "ratio", meaning: "how firmly the web holds the flange" },
  },
  constants: steel,
});

export const thinMoment = formula({
  id: "column.thin-web-moment",
  text: "M_n = R_pg * min(F_lt, F_lf) * S",
  source: "AISC 360-22 Eq. F5-1, F5-2 and F5-7",
  symbols: {
    M_n: { kind: "moment", meaning: "nominal moment" },
    R_pg,
    F_lt: { ...F_cr, meaning: "critical stress, lateral-torsional buckling" },
    F_lf: { ...F_cr, meaning: "critical stress, flange local buckling" },
    S,
  },
});

/** What this way to the strength takes. */
export interface ThinWeb {
  readonly h: number;
  readonly web: number;
  readonly t_w: number;
  readonly B: number;
  readonly t_f: number;
  readonly F_y: number;
  readonly S: number;
  readonly L: number;
  /** Half flange over thickness, its limits, and how firmly the web holds it. */
  readonly lambda: number;
  readonly lambda_pf: number;
  readonly lambda_rf: number;
  readonly k_c: number;
}

/** Nominal moment about the strong axis, N·m. */
export function thinWebMoment({ h, web, t_w, B, t_f, F_y, S, L, lambda, lambda_pf, lambda_rf, k_c }: ThinWeb, calc: Calc): number {
  calc.note("The web is not compact: strength by F5.");
  const a_w = calc(webToFlange, { h, t_w, B, t_f });
  const R_pg = calc(webShedding, { a_w, lambda: web, F_y });
  const F_lt = calc(thinLateralStress, { F_y, L, r_t: calc(flangeRadius, { B, a_w }) });
  const F_lf = calc(thinFlangeStress, { F_y, lambda, lambda_pf, lambda_rf, k_c });
  return calc(thinMoment, { R_pg, F_lt, F_lf, S });
}

export const thinWebFormulas = [webToFlange, webShedding, flangeRadius, thinLateralStress, thinFlangeStress, thinMoment];
