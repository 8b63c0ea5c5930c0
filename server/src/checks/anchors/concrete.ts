/** The concrete strength anchor formulas may use. */
import type { Calc } from "../../formula/types.js";
import { formula } from "../../formula/declare.js";

export const concreteStrengthUsed = formula({
  id: "anchors.concrete-strength-used",
  text: "f_c = min(fprime_c, f_cap)",
  source: "ACI 318-19 17.3.1: f'c at most 10,000 psi for cast-in anchors",
  symbols: {
    f_c: { kind: "stress", meaning: "concrete strength that may be used" },
    fprime_c: { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" },
  },
  constants: { f_cap: "10000 psi" },
});

export const concreteStrengthDrilled = formula({
  id: "anchors.concrete-strength-drilled",
  text: "f_c = min(fprime_c, f_cap)",
  source: "ACI 318-19 17.3.1: f'c at most 8,000 psi for post-installed anchors",
  symbols: {
    f_c: { kind: "stress", meaning: "concrete strength that may be used" },
    fprime_c: { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" },
  },
  constants: { f_cap: "8000 psi" },
});

/** For rods cast in, and for rods set in drilled holes. */
export const concreteUsed = ({ fprime_c, isAdhesive }: { readonly fprime_c: number; readonly isAdhesive: boolean }, calc: Calc): number =>
  calc(isAdhesive ? concreteStrengthDrilled : concreteStrengthUsed, { fprime_c });
