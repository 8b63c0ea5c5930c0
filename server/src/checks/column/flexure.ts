/**
 * Flexural strength of a square hollow section about either axis: AISC 360-22 F7, flange and web local buckling. Lateral-torsional
 * buckling does not apply to square sections.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { flatWidth, type HssProperties } from "./compression.js";

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
    B: { kind: "length", meaning: "outside width", field: "columns.*.section" },
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
  text: "M_c = phi_b * min(M_nf, M_nw)",
  source: "AISC 360-22 F1 and F7, phi_b = 0.90",
  symbols: {
    M_c: { kind: "moment", meaning: "design flexural strength about either axis" },
    M_nf: { kind: "moment", meaning: "nominal moment by the flange" },
    M_nw: { kind: "moment", meaning: "nominal moment by the web" },
  },
  constants: { phi_b: "0.90" },
});

/** Design flexural strength, N·m, or undefined where the webs are slender. */
export function flexuralStrength(hss: HssProperties, calc: Calc): number | undefined {
  const { F_y, S, slenderness: lambda } = hss;
  const M_p = calc(plasticMoment, { F_y, Z: hss.Z });
  const lambda_pf = calc(compactFlangeLimit, { F_y });
  let M_nf = M_p;
  if (lambda > lambda_pf) {
    const lambda_rf = calc(slenderFlangeLimit, { F_y });
    if (lambda <= lambda_rf) {
      calc.note("The flanges are noncompact.");
      M_nf = calc(noncompactFlange, { M_p, F_y, S, lambda });
    } else {
      calc.note("The flanges are slender.");
      const b = calc(flatWidth, { lambda, t: hss.t });
      const b_ef = calc(effectiveFlangeWidth, { b, t: hss.t, F_y, lambda });
      const S_e = calc(effectiveSectionModulus, { I: hss.I, b, b_ef, t: hss.t, B: hss.B });
      M_nf = calc(slenderFlange, { F_y, S_e });
    }
  } else calc.note("The flanges are compact.");
  // The web of a square section has the flat width of its flange.
  const lambda_pw = calc(compactWebLimit, { F_y });
  let M_nw = M_p;
  if (lambda > lambda_pw) {
    if (lambda > calc(slenderWebLimit, { F_y })) return undefined;
    calc.note("The webs are noncompact.");
    M_nw = calc(noncompactWeb, { M_p, F_y, S, lambda });
  }
  return calc(flexuralDesignStrength, { M_nf, M_nw });
}
