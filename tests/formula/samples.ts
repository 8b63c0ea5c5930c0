import { unregistered } from "../../server/src/formula/declare.js";

/** Formulas used by the tests of this room. The real ones are declared where they are used. */

/** Basic concrete breakout strength in tension, ACI 318-19 Eq. 17.6.2.2.1 with k_c = 24 for cast-in anchors. */
export const breakout = unregistered({
  id: "sample.breakout",
  text: "N_b = k_c * lambda_a * sqrt(fprime_c) * h_ef^1.5",
  source: "ACI 318-19 Eq. 17.6.2.2.1",
  symbols: {
    N_b: { kind: "force", meaning: "basic breakout strength" },
    lambda_a: { kind: "ratio", meaning: "lightweight concrete factor" },
    fprime_c: { kind: "stress", meaning: "concrete strength" },
    h_ef: { kind: "length", meaning: "effective depth", field: "foundations.*.anchors.depth" },
  },
  constants: { k_c: "24 lbf^0.5/inch^0.5" },
});

/** Edge factor for breakout, ACI 318-19 Eq. 17.6.2.4.1. */
export const edgeFactor = unregistered({
  id: "sample.edge-factor",
  text: "psi_ed_N = c_a1 >= 1.5 * h_ef ? 1 : 0.7 + 0.3 * c_a1 / (1.5 * h_ef)",
  source: "ACI 318-19 Eq. 17.6.2.4.1",
  symbols: {
    psi_ed_N: { kind: "ratio", meaning: "edge factor" },
    c_a1: { kind: "length", meaning: "least edge distance" },
    h_ef: { kind: "length", meaning: "effective depth" },
  },
});

/** Velocity pressure, ASCE 7-16 Eq. 26.10-1. */
export const velocityPressure = unregistered({
  id: "sample.velocity-pressure",
  text: "q_h = k * K_z * K_zt * V^2",
  source: "ASCE 7-16 Eq. 26.10-1",
  symbols: {
    q_h: { kind: "pressure", meaning: "velocity pressure" },
    K_z: { kind: "ratio", meaning: "exposure coefficient" },
    K_zt: { kind: "ratio", meaning: "topographic factor" },
    V: { kind: "speed", meaning: "basic wind speed" },
  },
  constants: { k: "0.00256 psf/mph^2" },
});

/** Largest contact pressure under a rigid footing with an eccentric load, from statics. */
export const contact = unregistered({
  id: "sample.contact",
  text: "q_max = e <= B / 6 ? P / (B * L) * (1 + 6 * e / B) : 2 * P / (3 * L * max(B / 2 - e, 0))",
  source: "statics of a rigid footing without tension under it",
  symbols: {
    q_max: { kind: "pressure", meaning: "largest pressure" },
    P: { kind: "force", meaning: "vertical load" },
    B: { kind: "distance", meaning: "width", range: [0.5, 3] },
    L: { kind: "distance", meaning: "length" },
    e: { kind: "distance", meaning: "eccentricity", range: [0.01, 1] },
  },
});
