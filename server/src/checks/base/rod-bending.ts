/** One rod that stands free below its leveling nut: as a short column, in tension, in bending by shear, and all of them together. */
import { formula } from "../../formula/declare.js";

const freeLength = { kind: "length", meaning: "length of the rod that bends" } as const;
const netDiameterSymbol = { kind: "length", meaning: "diameter of the net section" } as const;
const yieldSymbol = { kind: "steelStress", meaning: "specified yield strength", field: "bases.*.anchors.grade" } as const;

export const gapInGrout = formula({
  id: "base.gap-in-grout",
  text: "g = max(0, t_g - h_n - t_w)",
  source: "geometry: the nut and its washer stand in the space of the grout",
  symbols: {
    g: { kind: "length", meaning: "clear height below the leveling nut before grout is placed" },
    t_g: { kind: "length", meaning: "grout", field: "bases.*.grout" },
    h_n: { kind: "length", meaning: "height of the nut" },
    t_w: { kind: "length", meaning: "thickness of the washer" },
  },
});

export const rodNetDiameter = formula({
  id: "base.rod-net-diameter",
  text: "d_n = sqrt(4 * A_se / pi)",
  source: "geometry: the round bar of the net tensile area of ASME B1.1",
  symbols: { d_n: netDiameterSymbol, A_se: { kind: "area", meaning: "net area of the rod", field: "bases.*.anchors.diameter" } },
});

export const rodFreeLength = formula({
  id: "base.rod-free-length",
  text: "l_b = g + 0.5 * d_a",
  source: "the rod is held half a diameter below the surface of the concrete, as in EN 1992-4 6.2.2.3 (from memory)",
  symbols: {
    l_b: freeLength,
    g: { kind: "length", meaning: "clear height below the leveling nut", field: "bases.*.gap below nuts" },
    d_a: { kind: "length", meaning: "diameter of the rod", field: "bases.*.anchors.diameter" },
  },
});

export const rodSlenderness = formula({
  id: "base.rod-slenderness",
  text: "KLr = K * l_b / (d_n / 4)",
  source: "AISC 360-22 E2, r = d/4 of a round bar; K = 1.2 for ends that shift and do not turn, Table C-A-7.1",
  symbols: { KLr: { kind: "ratio", meaning: "effective slenderness ratio" }, l_b: freeLength, d_n: netDiameterSymbol },
  constants: { K: "1.2" },
});

export const rodCompressive = formula({
  id: "base.rod-compressive",
  text: "phiN_n = phi_c * F_n * A_se",
  source: "AISC 360-22 E3, phi_c = 0.90",
  symbols: {
    phiN_n: { kind: "force", meaning: "design axial strength of one rod" },
    F_n: { kind: "steelStress", meaning: "nominal compressive stress" },
    A_se: { kind: "area", meaning: "net area of the rod", field: "bases.*.anchors.diameter" },
  },
  constants: { phi_c: "0.90" },
});

export const rodYielding = formula({
  id: "base.rod-yielding",
  text: "phiN_n = phi_t * F_y * A_se",
  source: "AISC 360-22 Eq. D2-1, phi_t = 0.90, on the net section of the thread, where the rod also bends",
  symbols: {
    phiN_n: { kind: "force", meaning: "design axial strength of one rod" },
    F_y: yieldSymbol,
    A_se: { kind: "area", meaning: "net area of the rod", field: "bases.*.anchors.diameter" },
  },
  constants: { phi_t: "0.90" },
});

export const rodFlexure = formula({
  id: "base.rod-flexure",
  text: "phiM_n = phi_b * F_y * min(d_n^3 / 6, 1.6 * pi * d_n^3 / 32)",
  source: "AISC 360-22 F11.1, phi_b = 0.90; plastic modulus of a round bar, at most 1.6 times the elastic one (from memory)",
  symbols: { phiM_n: { kind: "smallMoment", meaning: "design moment of one rod" }, F_y: yieldSymbol, d_n: netDiameterSymbol },
  constants: { phi_b: "0.90" },
});

export const rodBending = formula({
  id: "base.rod-bending",
  text: "M_r = V_ua * l_b / 2",
  source: "statics: held at the nut and in the concrete, bent in a double curve; AASHTO sign structures (from memory)",
  symbols: { M_r: { kind: "smallMoment", meaning: "moment of one rod by shear" }, V_ua: { kind: "force", meaning: "shear of one rod" }, l_b: freeLength },
});

export const rodUse = formula({
  id: "base.rod-use",
  text: "U = N_r / phiN_n + M_r / phiM_n + (V_ua / phiV_sa)^2",
  source: "the form of AISC 360-22 Eq. H3-6: axial force and bending as they are, shear squared; for rods common practice, no source",
  symbols: {
    U: { kind: "ratio", meaning: "part of the rod's strength that is used" },
    N_r: { kind: "force", meaning: "tension or compression of the rod" },
    phiN_n: { kind: "force", meaning: "design axial strength of one rod" },
    M_r: { kind: "smallMoment", meaning: "moment of one rod by shear" },
    phiM_n: { kind: "smallMoment", meaning: "design moment of one rod" },
    V_ua: { kind: "force", meaning: "shear of one rod" },
    phiV_sa: { kind: "force", meaning: "design shear strength of one rod" },
  },
});
