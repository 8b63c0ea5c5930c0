/** Formulas of a shear lug: bearing on the concrete before it, the wedge it pushes off, its own bending, and the rods behind it. */
import { formula } from "../../formula/declare.js";

const psi = { kind: "ratio", meaning: "factor for the axial force" } as const;
const width = { kind: "length", meaning: "width of the lug", field: "bases.*.shear lug.width" } as const;
const thick = { kind: "length", meaning: "thickness of the lug", field: "bases.*.shear lug.thickness" } as const;
const deep = { kind: "length", meaning: "effective depth of the lug in the concrete" } as const;
const strengthUsed = { kind: "stress", meaning: "concrete strength that may be used" } as const;
const edge = { kind: "length", meaning: "from the bearing face to the edge" } as const;

export const lugPulled = formula({
  id: "base.lug-pulled",
  text: "psi_brg = max(0, 1 - T / (n * A_se * f_u))",
  source: "ACI 318-19 Eq. 17.11.2.2.1a, tension",
  symbols: {
    psi_brg: psi,
    T: { kind: "force", meaning: "uplift of the base" },
    n: { kind: "number", meaning: "number of rods", field: "bases.*.anchors.count" },
    A_se: { kind: "area", meaning: "net tensile area of one rod", field: "bases.*.anchors.diameter" },
    f_u: { kind: "steelStress", meaning: "tensile strength of the rod that may be used" },
  },
});

export const lugPressed = formula({
  id: "base.lug-pressed",
  text: "psi_brg = min(2, 1 + 4 * P / (B * N * f_c))",
  source: "ACI 318-19 Eq. 17.11.2.2.1b, compression, at most 2",
  symbols: {
    psi_brg: psi,
    P: { kind: "force", meaning: "compression of the base" },
    B: { kind: "length", meaning: "plate along x", field: "bases.*.plate.width" },
    N: { kind: "length", meaning: "plate along y", field: "bases.*.plate.length" },
    f_c: strengthUsed,
  },
});

export const lugBearing = formula({
  id: "base.lug-bearing",
  text: "phiV_brg = phi * 1.7 * f_c * b_l * h_sl * psi_brg",
  source: "ACI 318-19 Eq. 17.11.2.1, phi = 0.65",
  symbols: { phiV_brg: { kind: "force", meaning: "design bearing strength before the lug" }, f_c: strengthUsed, b_l: width, h_sl: deep, psi_brg: psi },
  constants: { phi: "0.65" },
});

export const lugFaceToEdge = formula({
  id: "base.lug-face-to-edge",
  text: "c_a1 = c_e - t_sl / 2",
  source: "geometry: the lug in the middle of the plate",
  symbols: { c_a1: edge, c_e: { kind: "length", meaning: "from the middle of the plate to the edge" }, t_sl: { kind: "length", meaning: "size of the lug along the shear" } },
});

export const lugEdgeUsed = formula({
  id: "base.lug-edge-used",
  text: "c_1 = min(c_a1, max(c_a2_max / 1.5, h_a / 1.5))",
  source: "ACI 318-19 17.7.2.1.2 with 17.11.3.1, where the concrete is narrow and thin",
  symbols: { c_1: { kind: "length", meaning: "edge distance that may be used" }, c_a1: edge, c_a2_max: { kind: "length", meaning: "greater distance from the lug to an end of the edge" }, h_a: { kind: "length", meaning: "depth of the concrete" } },
});

export const lugWedge = formula({
  id: "base.lug-wedge",
  text: "A_Vc = (b_l + min(1.5 * c_1, c_l) + min(1.5 * c_1, c_r)) * min(h_a, h_sl + 1.5 * c_1) - b_l * h_sl",
  source: "ACI 318-19 17.11.3.1: the projected area less the bearing face of the lug",
  symbols: {
    A_Vc: { kind: "area", meaning: "projected area before the lug" },
    b_l: { kind: "length", meaning: "width of the lug across the shear" },
    c_1: { kind: "length", meaning: "edge distance that may be used" },
    c_l: { kind: "length", meaning: "from the side of the lug to one end of the edge" },
    c_r: { kind: "length", meaning: "from the side of the lug to the other end of the edge" },
    h_a: { kind: "length", meaning: "depth of the concrete" },
    h_sl: deep,
  },
});

export const lugBreakout = formula({
  id: "base.lug-breakout",
  text: "phiV_cb = phi * A_Vc / A_Vco * psi_edV * psi_cV * psi_hV * V_bb",
  source: "ACI 318-19 17.11.3.1 with Eq. 17.7.2.1a, phi = 0.65",
  symbols: {
    phiV_cb: { kind: "force", meaning: "design breakout strength toward the edge" },
    A_Vc: { kind: "area", meaning: "projected area before the lug" },
    A_Vco: { kind: "area", meaning: "projected area in deep concrete far from other edges" },
    psi_edV: { kind: "ratio", meaning: "factor for the nearer end of the edge" },
    psi_cV: { kind: "ratio", meaning: "1.4 in uncracked concrete; in cracked concrete 1.0, or more with bars at the edge", field: "bases.*.edge bars" },
    psi_hV: { kind: "ratio", meaning: "factor for thin concrete" },
    V_bb: { kind: "force", meaning: "basic breakout strength" },
  },
  constants: { phi: "0.65" },
});

export const lugAlongEdge = formula({
  id: "base.lug-along-edge",
  text: "phiV_par = 2 * phiV_cb",
  source: "ACI 318-19 17.11.3.2: along an edge twice the strength toward it, with psi_ed,V taken as 1.0",
  symbols: { phiV_par: { kind: "force", meaning: "design breakout strength along the edge" }, phiV_cb: { kind: "force", meaning: "design breakout strength toward the edge" } },
});

export const lugMoment = formula({
  id: "base.lug-moment",
  text: "M_l = V * e",
  source: "statics",
  symbols: { M_l: { kind: "smallMoment", meaning: "moment of the lug at the plate" }, V: { kind: "force", meaning: "shear the lug takes" }, e: { kind: "length", meaning: "from the plate down to the middle of the lug's bearing" } },
});

export const lugFlexure = formula({
  id: "base.lug-flexure",
  text: "phiM_l = phi_b * F_y * b_l * t_sl^2 / 4",
  source: "AISC 360-22 F11.1, phi_b = 0.90",
  symbols: { phiM_l: { kind: "smallMoment", meaning: "design moment of the lug" }, F_y: { kind: "steelStress", meaning: "yield strength of the lug, of the plate's grade", field: "bases.*.plate.grade" }, b_l: width, t_sl: thick },
  constants: { phi_b: "0.90" },
});

export const embedmentBehindLug = formula({
  id: "base.embedment-behind-lug",
  text: "h_need = 2.5 * max(h_sl, c_sl)",
  source: "ACI 318-19 17.11.1.1.8: embedment of rods in tension against the lug's depth and its distance from them",
  symbols: { h_need: { kind: "length", meaning: "least embedment of rods in tension" }, h_sl: deep, c_sl: { kind: "length", meaning: "from the middle of the lug to the rods in tension" } },
});

export const lugEndDistance = formula({
  id: "base.lug-end-distance",
  text: "c_2 = c_e - b / 2",
  source: "geometry: the lug in the middle of the plate",
  symbols: { c_2: { kind: "length", meaning: "from the side of the lug to the end of the edge" }, c_e: { kind: "length", meaning: "from the middle of the plate to the end of the edge" }, b: { kind: "length", meaning: "size of the lug that way" } },
});
