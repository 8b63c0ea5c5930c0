/** Flexural buckling of a steel member, whether a column or a rod that stands free: AISC 360-22 E3. */
import { formula } from "../formula/declare.js";

export const elasticStress = formula({
  id: "steel.elastic-buckling-stress",
  text: "F_e = pi^2 * E / KLr^2",
  source: "AISC 360-22 Eq. E3-4",
  symbols: {
    F_e: { kind: "steelStress", meaning: "elastic buckling stress" },
    KLr: { kind: "ratio", meaning: "effective slenderness ratio", range: [10, 250] },
  },
  constants: { E: "29000 ksi" },
});

export const nominalStress = formula({
  id: "steel.buckling-stress",
  text: "F_n = F_y / F_e <= 2.25 ? 0.658^(F_y / F_e) * F_y : 0.877 * F_e",
  source: "AISC 360-22 Eq. E3-2 and E3-3",
  symbols: {
    F_n: { kind: "steelStress", meaning: "nominal compressive stress" },
    F_y: { kind: "steelStress", meaning: "yield strength of the member's steel", range: [2e8, 4e8] },
    F_e: { kind: "steelStress", meaning: "elastic buckling stress", range: [2e7, 1e9] },
  },
});
