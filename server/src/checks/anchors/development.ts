/** Lengths over which a bar of a pier takes up its yield strength, straight, hooked or with a head, for anchor reinforcement. */
import { formula } from "../../formula/declare.js";
import type { Calc, Formula } from "../../formula/types.js";

export type BarEnd = "straight" | "hooked" | "headed";

const f_y = { kind: "steelStress", meaning: "yield strength of the bars", field: "foundations.*.bar grade" } as const;
const fprime_c = { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" } as const;
const d_b = { kind: "length", meaning: "bar diameter", field: "foundations.*.bars" } as const;
const psi_c = { kind: "ratio", meaning: "concrete strength factor of hooks and heads" } as const;

export const straightDevelopment = formula({
  id: "anchors.straight-development",
  text: "l_d = max(3 * f_y * psi_s * psi_g / (k_d * min(sqrt(fprime_c), s_cap) * min(c_b / d_b, 2.5)) * d_b, l_12)",
  source: "ACI 318-19 Eq. 25.4.2.4a with K_tr = 0, uncoated vertical bars in normalweight concrete; at least 12 in by 25.4.2.1",
  symbols: {
    l_d: { kind: "length", meaning: "development length of a straight bar in tension" },
    f_y,
    psi_s: { kind: "ratio", meaning: "0.8 to no. 6, 1.0 for larger bars" },
    psi_g: { kind: "ratio", meaning: "1.0 for Gr 60, 1.15 for Gr 80" },
    fprime_c,
    c_b: { kind: "length", meaning: "from the middle of a bar to the face of the concrete, or half the spacing of the bars" },
    d_b,
  },
  constants: { k_d: "40 lbf^0.5/inch", s_cap: "100 lbf^0.5/inch", l_12: "12 inch" },
});

export const hookConcreteFactor = formula({
  id: "anchors.hook-concrete-factor",
  text: "psi_c = min(fprime_c / f_15 + 0.6, 1)",
  source: "ACI 318-19 Tables 25.4.3.2 and 25.4.4.3 (from memory)",
  symbols: { psi_c, fprime_c },
  constants: { f_15: "15000 psi" },
});

export const hookDevelopment = formula({
  id: "anchors.hook-development",
  text: "l_dh = max(f_y * psi_r * psi_o * psi_c / (k_h * min(sqrt(fprime_c), s_cap)) * d_b^1.5, 8 * d_b, l_6)",
  source: "ACI 318-19 25.4.3.1, uncoated bars in normalweight concrete",
  symbols: {
    l_dh: { kind: "length", meaning: "development length of a bar with a standard hook" },
    f_y,
    psi_r: { kind: "ratio", meaning: "1.0 where the bars stand six diameters apart, else 1.6" },
    psi_o: { kind: "ratio", meaning: "1.0 inside ties with 2.5 in of side cover, else 1.25" },
    psi_c,
    fprime_c,
    d_b,
  },
  constants: { k_h: "55 lbf^0.5/inch^0.5", s_cap: "100 lbf^0.5/inch", l_6: "6 inch" },
});

export const headDevelopment = formula({
  id: "anchors.head-development",
  text: "l_dt = max(f_y * psi_p * psi_o * psi_c / (k_t * min(sqrt(fprime_c), s_cap)) * d_b^1.5, 8 * d_b, l_6)",
  source: "ACI 318-19 25.4.4.2, uncoated bars in normalweight concrete, heads of four bar areas or more (from memory)",
  symbols: {
    l_dt: { kind: "length", meaning: "development length of a bar with a head" },
    f_y,
    psi_p: { kind: "ratio", meaning: "1.0 where the bars stand six diameters apart, else 1.6" },
    psi_o: { kind: "ratio", meaning: "1.0 inside ties with 2.5 in of side cover, else 1.25" },
    psi_c,
    fprime_c,
    d_b,
  },
  constants: { k_t: "75 lbf^0.5/inch^0.5", s_cap: "100 lbf^0.5/inch", l_6: "6 inch" },
});

/** The largest bar of psi_s = 0.8: no. 6, 0.75 in, or 19.5 mm. */
const smallBar = 0.0196;

/** Above this a bar is of grade 80, Pa. */
const grade60 = 500e6;

/** What development depends on. */
export interface Developed {
  readonly d_b: number;
  readonly f_y: number;
  readonly fprime_c: number;
  readonly c_b: number;
  readonly psi_r: number;
  readonly psi_o: number;
}

/** Length to full yield strength of a bar that ends so, m. */
export function developmentOf(end: BarEnd, { d_b: d, f_y: f, fprime_c: f_c, c_b, psi_r, psi_o }: Developed, calc: Calc): number {
  if (end === "straight") return calc(straightDevelopment, { f_y: f, psi_s: d <= smallBar ? 0.8 : 1, psi_g: f > grade60 ? 1.15 : 1, fprime_c: f_c, c_b, d_b: d });
  const factor = calc(hookConcreteFactor, { fprime_c: f_c });
  if (end === "hooked") return calc(hookDevelopment, { f_y: f, psi_r, psi_o, psi_c: factor, fprime_c: f_c, d_b: d });
  return calc(headDevelopment, { f_y: f, psi_p: psi_r, psi_o, psi_c: factor, fprime_c: f_c, d_b: d });
}

export const developmentFormulas: readonly Formula<any, any>[] = [straightDevelopment, hookConcreteFactor, hookDevelopment, headDevelopment];
