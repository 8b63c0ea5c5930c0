/** Lengths over which bars take up their force in concrete: straight in tension, hooked in tension, straight in compression. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { hookConcreteFactor } from "../anchors/development.js";

const yieldStrength = { kind: "steelStress", meaning: "yield strength of the bars", field: "foundations.*.bar grade" } as const;
const root = { kind: "stress", meaning: "square root of the concrete strength, as a stress" } as const;
const diameter = { kind: "length", meaning: "bar diameter" } as const;

export const straightLength = formula({
  id: "footing.straight-development",
  text: "l_d = psi_t * psi_g * k_s * f_y / (k_d * s_c) * d_b",
  source: "ACI 318-19 Table 25.4.2.3, uncoated bars (from memory)",
  symbols: {
    l_d: { kind: "length", meaning: "development length of a straight bar in tension" },
    psi_t: { kind: "ratio", meaning: "casting position: 1.3 over more than 12 in. of fresh concrete" },
    psi_g: { kind: "ratio", meaning: "grade: 1.15 for Gr 80" },
    f_y: yieldStrength,
    k_d: { kind: "number", meaning: "25 to no. 6, 20 for larger bars" },
    k_s: { kind: "ratio", meaning: "1.5 where the bars are less than two diameters clear of each other or their cover less than one" },
    s_c: root,
    d_b: diameter,
  },
});

export const hookLength = formula({
  id: "footing.hook-development",
  text: "l_dh = max(psi_r * psi_o * psi_c * f_y / (55 * s_c) * sqrt(d_b / one) * d_b, 8 * d_b, l_6)",
  source: "ACI 318-19 25.4.3.1, Table 25.4.3.2; psi_o taken as 1.25 (from memory)",
  symbols: {
    l_dh: { kind: "length", meaning: "development length of a bar with a standard hook" },
    psi_r: { kind: "ratio", meaning: "confinement: 1 where the bars are six diameters apart, else 1.6" },
    psi_c: { kind: "ratio", meaning: "concrete strength factor of hooks" },
    f_y: yieldStrength,
    s_c: root,
    d_b: diameter,
  },
  constants: { one: "1 inch", l_6: "6 inch", psi_o: "1.25" },
});

export const hookLengthEarlier = formula({
  id: "footing.hook-development-earlier",
  text: "l_dh = max(f_y / (50 * s_c) * d_b, 8 * d_b, l_6)",
  source: "ACI 318-14 25.4.3.1, without the reductions for cover and ties (from memory)",
  symbols: { l_dh: { kind: "length", meaning: "development length of a bar with a standard hook" }, f_y: yieldStrength, s_c: root, d_b: diameter },
  constants: { l_6: "6 inch" },
});

export const compressionLength = formula({
  id: "footing.compression-development",
  text: "l_dc = max(f_y / (50 * s_c) * d_b, k_f * f_y * d_b, l_8)",
  source: "ACI 318-19 25.4.9.1, 25.4.9.2 (from memory)",
  symbols: { l_dc: { kind: "length", meaning: "development length of a bar in compression" }, f_y: yieldStrength, s_c: root, d_b: diameter },
  constants: { k_f: "0.0003 inch^2/lbf", l_8: "8 inch" },
});

/** The largest bar that counts as small in Table 25.4.2.3: no. 6, 0.75 in. */
const smallBar = 0.0192;

export const closeBars = formula({
  id: "footing.clear-distance",
  text: "s_n = (s - d_b) / d_b",
  source: "ACI 318-19 Table 25.4.2.3: clear spacing in bar diameters",
  symbols: { s_n: { kind: "ratio", meaning: "clear spacing in bar diameters" }, s: { kind: "length", meaning: "spacing of the bars" }, d_b: diameter },
});

interface Bar {
  readonly diameter: number;
  readonly spacing: number;
}

const isHighGrade = (f_y: number): boolean => f_y > 500e6;

/** Straight bar in tension, m. `isHigh`: more than 12 in of fresh concrete below it. */
export function straight(bar: Bar, cover: number, f_y: number, s_c: number, isHigh: boolean, edition: string, calc: Calc): number {
  const psi_g = isHighGrade(f_y) && edition !== "ACI 318-14" ? 1.15 : 1;
  const { diameter: d_b, spacing: s } = bar;
  const isRoomy = calc(closeBars, { s, d_b }) >= 2 && cover >= d_b;
  return calc(straightLength, { psi_t: isHigh ? 1.3 : 1, psi_g, k_s: isRoomy ? 1 : 1.5, f_y, k_d: d_b <= smallBar ? 25 : 20, s_c, d_b });
}

/** Bar with a standard hook, m. */
export function hooked({ diameter: d_b, spacing: s }: Bar, f_y: number, fprime_c: number, s_c: number, edition: string, calc: Calc): number {
  if (edition === "ACI 318-14") return calc(hookLengthEarlier, { f_y, s_c, d_b });
  const psi_r = calc(closeBars, { s, d_b }) >= 5 ? 1 : 1.6;
  return calc(hookLength, { psi_r, psi_c: calc(hookConcreteFactor, { fprime_c }), f_y, s_c, d_b });
}

export const developmentFormulas = [closeBars, straightLength, hookConcreteFactor, hookLength, hookLengthEarlier] as const;
