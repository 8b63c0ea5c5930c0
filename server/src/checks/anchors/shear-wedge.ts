/**
 * Nominal strength of the concrete between a row of rods and the edge it is pushed toward, or pushed along: ACI 318-19 17.7.2. Everything
 * that breakout in shear needs beside the forces, and the choice of rods that stand for the group.
 */
import { formula } from "../../formula/declare.js";
import type { Calc, Formula, Routine } from "../../formula/types.js";
import { edgeRows, neighborPairs, rowMeasures, sideProjected, type EdgeName, type EdgeRow, type SideProjectionArgs } from "../../mechanics/edge-rows.js";
import { concreteStrengthDrilled, concreteStrengthUsed, concreteUsed } from "./concrete.js";
import { roundNote, type ConeInputs } from "./cone.js";

export interface WedgeInputs extends ConeInputs {
  /** Plate washers are welded on, so every rod takes shear. */
  readonly isWelded: boolean;
  /** Factor for cracking and the bars at the edge. */
  readonly psi_cV: number;
}

const edgeDistance = { kind: "length", meaning: "edge distance in the formulas, in the direction of the shear" } as const;

export const narrowEdge = formula({
  id: "anchors.narrow-edge",
  text: "c_1 = min(c_a1, max(c_a2_max / 1.5, h_a / 1.5, s / 3))",
  source: "ACI 318-19 17.7.2.1.2",
  symbols: {
    c_1: edgeDistance,
    c_a1: { kind: "length", meaning: "from the row to the edge" },
    c_a2_max: { kind: "length", meaning: "greater distance from the row to an end of the edge" },
    h_a: { kind: "length", meaning: "depth of the concrete" },
    s: { kind: "length", meaning: "largest spacing in the row" },
  },
});

export const wedgeReach = formula({
  id: "anchors.wedge-reach",
  text: "l_w = 1.5 * c_1",
  source: "ACI 318-19 17.7.2.1.1",
  symbols: { l_w: { kind: "length", meaning: "reach of the wedge to each side and down" }, c_1: edgeDistance },
});

export const singleWedge = formula({
  id: "anchors.single-wedge",
  text: "A_Vco = 4.5 * c_1^2",
  source: "ACI 318-19 Eq. 17.7.2.1.3",
  symbols: { A_Vco: { kind: "area", meaning: "projected area of one rod in deep concrete, far from other edges" }, c_1: edgeDistance },
});

export const groupWedge = formula({
  id: "anchors.group-wedge",
  text: "A_Vc = min(A, n * A_Vco)",
  source: "ACI 318-19 17.7.2.1.1",
  symbols: {
    A_Vc: { kind: "area", meaning: "projected area of the row" },
    A: { kind: "area", meaning: "union of the rectangles before the rods, within the concrete" },
    n: { kind: "number", meaning: "rods in the row" },
    A_Vco: { kind: "area", meaning: "projected area of one rod" },
  },
});

export const bearingLength = formula({
  id: "anchors.bearing-length",
  text: "l_e = min(h_ef, 8 * d_a)",
  source: "ACI 318-19 17.7.2.2.1",
  symbols: {
    l_e: { kind: "length", meaning: "length of the rod that bears against the concrete" },
    h_ef: { kind: "length", meaning: "embedment", field: "bases.*.anchors.embedment" },
    d_a: { kind: "length", meaning: "rod diameter", field: "bases.*.anchors.diameter" },
  },
});

const basic = { kind: "force", meaning: "basic breakout strength of one rod in shear, cracked concrete" } as const;
const strengthUsed = { kind: "stress", meaning: "concrete strength that may be used" } as const;

export const basicShearByRod = formula({
  id: "anchors.basic-shear-by-rod",
  text: "V_ba = k_a * (l_e / d_a)^0.2 * sqrt(d_a) * lambda_a * sqrt(f_c) * c_1^1.5",
  source: "ACI 318-19 Eq. 17.7.2.2.1a; lambda_a = 1.0, normalweight concrete",
  symbols: {
    V_ba: basic,
    l_e: { kind: "length", meaning: "length of the rod that bears against the concrete" },
    d_a: { kind: "length", meaning: "rod diameter", field: "bases.*.anchors.diameter" },
    f_c: strengthUsed,
    c_1: edgeDistance,
  },
  constants: { k_a: "7 lbf^0.5/inch", lambda_a: "1.0" },
});

export const basicShearByEdge = formula({
  id: "anchors.basic-shear-by-edge",
  text: "V_bb = k_b * lambda_a * sqrt(f_c) * c_1^1.5",
  source: "ACI 318-19 Eq. 17.7.2.2.1b; lambda_a = 1.0, normalweight concrete",
  symbols: { V_bb: basic, f_c: strengthUsed, c_1: edgeDistance },
  constants: { k_b: "9 lbf^0.5/inch^0.5", lambda_a: "1.0" },
});

export const basicShear = formula({
  id: "anchors.basic-shear",
  text: "V_b = min(V_ba, V_bb)",
  source: "ACI 318-19 17.7.2.2.1",
  symbols: { V_b: basic, V_ba: basic, V_bb: basic },
});

export const shearEccentricity = formula({
  id: "anchors.shear-eccentricity",
  text: "psi_ecV = 1 / (1 + e_V / (1.5 * c_1))",
  source: "ACI 318-19 Eq. 17.7.2.3.1",
  symbols: {
    psi_ecV: { kind: "ratio", meaning: "factor for the eccentricity of the shear" },
    e_V: { kind: "length", meaning: "from the line of the shear to the middle of the row" },
    c_1: edgeDistance,
  },
});

export const shearEnd = formula({
  id: "anchors.shear-end",
  text: "psi_edV = c_a2 >= 1.5 * c_1 ? 1 : 0.7 + 0.3 * c_a2 / (1.5 * c_1)",
  source: "ACI 318-19 Eq. 17.7.2.4.1a and b",
  symbols: {
    psi_edV: { kind: "ratio", meaning: "factor for the nearer end of the edge" },
    c_a2: { kind: "length", meaning: "lesser distance from the row to an end of the edge" },
    c_1: edgeDistance,
  },
});

export const shearDepth = formula({
  id: "anchors.shear-depth",
  text: "psi_hV = max(1, sqrt(1.5 * c_1 / h_a))",
  source: "ACI 318-19 17.7.2.6.1",
  symbols: {
    psi_hV: { kind: "ratio", meaning: "factor for thin concrete" },
    c_1: edgeDistance,
    h_a: { kind: "length", meaning: "depth of the concrete" },
  },
});

export const groupShear = formula({
  id: "anchors.group-shear",
  text: "V_cbg = A_Vc / A_Vco * psi_ecV * psi_edV * psi_cV * psi_hV * V_b",
  source: "ACI 318-19 Eq. 17.7.2.1b; psi_cV by Table 17.7.2.5.1",
  symbols: {
    V_cbg: { kind: "force", meaning: "nominal breakout strength toward the edge" },
    A_Vc: { kind: "area", meaning: "projected area of the row" },
    A_Vco: { kind: "area", meaning: "projected area of one rod" },
    psi_ecV: { kind: "ratio", meaning: "factor for the eccentricity of the shear" },
    psi_edV: { kind: "ratio", meaning: "factor for the nearer end of the edge" },
    psi_cV: { kind: "ratio", meaning: "1.4 in uncracked concrete; in cracked concrete 1.0, or more with bars at the edge", field: "bases.*.edge bars" },
    psi_hV: { kind: "ratio", meaning: "factor for thin concrete" },
    V_b: { kind: "force", meaning: "basic breakout strength of one rod in shear" },
  },
});

export const alongEdge = formula({
  id: "anchors.shear-along-edge",
  text: "V_par = 2 * V_cbg / psi_edV",
  source: "ACI 318-19 17.7.2.1(c): twice the strength toward the edge, with psi_ed,V taken as 1.0",
  symbols: {
    V_par: { kind: "force", meaning: "nominal breakout strength along the edge" },
    V_cbg: { kind: "force", meaning: "nominal breakout strength toward the edge" },
    psi_edV: { kind: "ratio", meaning: "factor for the nearer end of the edge" },
  },
});

export interface WedgeStrength {
  /** Nominal strength toward the edge and along it, N. */
  readonly toward: number;
  readonly along: number;
}

export const wedgeArea: Routine<SideProjectionArgs, number> = { ...sideProjected, id: "anchors.wedge-area" };

/** Nominal strength of the concrete before this row of rods. */
export function wedgeStrength(inputs: WedgeInputs, row: EdgeRow, calc: Calc): WedgeStrength {
  const { d_a, h_ef, psi_cV } = inputs;
  const h_a = inputs.member.depth;
  if (inputs.member.shape === "round") calc.note(roundNote);
  const { spacing: s, leastEnd: c_a2, mostEnd: c_a2_max, offset: e_V } = calc.routine(rowMeasures, row);
  const c_a1 = row.distance;
  let c_1 = c_a1;
  const far = calc(wedgeReach, { c_1 });
  if (c_a2_max < far && h_a < far) {
    calc.note("Both ends of the edge and the depth are nearer than 1.5 c_a1: the edge distance is cut to what these allow.");
    c_1 = calc(narrowEdge, { c_a1, c_a2_max, h_a, s });
  }
  const reach = calc(wedgeReach, { c_1 });
  const A = calc.routine(wedgeArea, { row, reach, thickness: h_a });
  const A_Vco = calc(singleWedge, { c_1 });
  const A_Vc = calc(groupWedge, { A, n: row.along.length, A_Vco });
  const l_e = calc(bearingLength, { h_ef, d_a });
  const f_c = concreteUsed(inputs, calc);
  const V_b = calc(basicShear, { V_ba: calc(basicShearByRod, { l_e, d_a, f_c, c_1 }), V_bb: calc(basicShearByEdge, { f_c, c_1 }) });
  const psi_ecV = calc(shearEccentricity, { e_V, c_1 });
  const psi_edV = calc(shearEnd, { c_a2, c_1 });
  const psi_hV = calc(shearDepth, { c_1, h_a });
  const V_cbg = calc(groupShear, { A_Vc, A_Vco, psi_ecV, psi_edV, psi_cV, psi_hV, V_b });
  return { toward: V_cbg, along: calc(alongEdge, { V_cbg, psi_edV }) };
}

/** The formulas of {@link wedgeStrength}, in the order a reader meets them. */
export const wedgeFormulas: readonly Formula<any, any>[] = [
  wedgeReach,
  narrowEdge,
  singleWedge,
  groupWedge,
  bearingLength,
  concreteStrengthUsed,
  concreteStrengthDrilled,
  basicShearByRod,
  basicShearByEdge,
  basicShear,
  shearEccentricity,
  shearEnd,
  shearDepth,
  groupShear,
  alongEdge,
];

/**
 * The rods that stand for the group toward an edge. Welded washers hold the rods together: the concrete before the row farthest from the edge
 * then takes all. With loose washers the nearest row may bear alone, and of that row two rods.
 */
export function rowsToward({ rods, member, isWelded }: WedgeInputs, edge: EdgeName): readonly EdgeRow[] {
  const rows = edgeRows({ rods, member: member.edges, edge });
  return isWelded ? rows.slice(-1) : neighborPairs(rows[0]);
}
