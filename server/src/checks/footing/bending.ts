/** Bending strength of a pad: with bars, and plain where it has none at the top. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";

const steel = { kind: "area", meaning: "bars that cross the section" } as const;
const yieldStrength = { kind: "steelStress", meaning: "yield strength of the bars", field: "foundations.*.bar grade" } as const;
const concrete = { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" } as const;
const width = { kind: "length", meaning: "width of the section" } as const;
const depth = { kind: "length", meaning: "effective depth" } as const;
const block = { kind: "length", meaning: "depth of the stress block" } as const;

export const stressBlock = formula({
  id: "footing.stress-block",
  text: "a = A_s * f_y / (0.85 * fprime_c * b)",
  source: "ACI 318-19 22.2.2.4",
  symbols: { a: block, A_s: steel, f_y: yieldStrength, fprime_c: concrete, b: width },
});

export const blockFactor = formula({
  id: "footing.block-factor",
  text: "beta_1 = min(0.85, max(0.65, 0.85 - 0.05 * (fprime_c - f_4) / f_1))",
  source: "ACI 318-19 Table 22.2.2.4.3",
  symbols: { beta_1: { kind: "ratio", meaning: "depth of the stress block over that of the neutral axis" }, fprime_c: concrete },
  constants: { f_4: "4000 psi", f_1: "1000 psi" },
});

export const steelStrain = formula({
  id: "footing.steel-strain",
  text: "eps_t = 0.003 * (beta_1 * d / a - 1)",
  source: "ACI 318-19 22.2.1.2, 22.2.2.1",
  symbols: { eps_t: { kind: "ratio", meaning: "strain of the bars at strength" }, beta_1: { kind: "ratio", meaning: "depth of the stress block over that of the neutral axis" }, d: depth, a: block },
});

export const strainNeeded = formula({
  id: "footing.strain-needed",
  text: "eps_tc = f_y / E_s + 0.003",
  source: "ACI 318-19 Table 21.2.2: tension-controlled (from memory)",
  symbols: { eps_tc: { kind: "ratio", meaning: "least strain of a tension-controlled section" }, f_y: yieldStrength },
  constants: { E_s: "29000 ksi" },
});

export const bendingStrength = formula({
  id: "footing.bending-strength",
  text: "phiM_n = phi * A_s * f_y * (d - a / 2)",
  source: "ACI 318-19 22.3, 21.2.2",
  symbols: { phiM_n: { kind: "moment", meaning: "design strength in bending" }, A_s: steel, f_y: yieldStrength, d: depth, a: block },
  constants: { phi: "0.9" },
});

export const plainStrength = formula({
  id: "footing.plain-bending-strength",
  text: "phiM_n = phi * 5 * s_c * b * max(t - t_g, 0 * t)^2 / 6",
  source: "ACI 318-19 14.5.2.1, 14.5.1.7 (2 in. of what is cast against the ground left out), 21.2.1 (from memory)",
  symbols: {
    phiM_n: { kind: "moment", meaning: "design strength of plain concrete in bending" },
    s_c: { kind: "stress", meaning: "square root of the concrete strength, as a stress" },
    b: width,
    t: { kind: "length", meaning: "thickness of the pad", field: "foundations.*.thickness" },
  },
  constants: { phi: "0.6", t_g: "2 inch" },
});

/** Design strength in bending, N·m; undefined where there is so much steel that the section is not tension-controlled. */
export function reinforcedStrength(A_s: number, f_y: number, fprime_c: number, b: number, d: number, calc: Calc): number | undefined {
  const a = calc(stressBlock, { A_s, f_y, fprime_c, b });
  const beta_1 = calc(blockFactor, { fprime_c });
  const eps_t = calc(steelStrain, { beta_1, d, a });
  if (eps_t < calc(strainNeeded, { f_y })) return undefined;
  return calc(bendingStrength, { A_s, f_y, d, a });
}

export const bendingFormulas = [stressBlock, blockFactor, steelStrain, strainNeeded, bendingStrength] as const;

export const tooMuchSteel = "there is so much steel that the section is not tension-controlled (ACI 318-19 Table 21.2.2): thicken the pad or use fewer bars";
