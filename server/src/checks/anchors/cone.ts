/**
 * Nominal strength of the concrete against breakout by a group of rods in tension, ACI 318-19 17.6.2. It stands by itself because pryout
 * under shear takes the same strength for the rods that take shear.
 */
import { formula } from "../../formula/declare.js";
import type { Calc, Formula, Routine } from "../../formula/types.js";
import { anchorProjection, type Projection, type ProjectionArgs } from "../../mechanics/rectangles.js";
import type { RodGroup } from "../../mechanics/rod-group.js";
import type { Support } from "../../project/model.js";
import { readBase, type BaseInputs } from "../base/geometry.js";
import type { Gather } from "../contract.js";
import { oncePerInputs } from "../once.js";
import { concreteStrengthDrilled, concreteStrengthUsed, concreteUsed } from "./concrete.js";
import { readFactors, type AnchorFactors } from "./factors.js";

/** Everything breakout in tension depends on, beside the forces. */
export interface ConeInputs extends BaseInputs {
  readonly edition: string;
  readonly h_ef: number;
  /** Factor for cracking, psi_c. */
  readonly psi_c: number;
  readonly isCracked: boolean;
  /** Set in adhesive in drilled holes, and not cast in. */
  readonly isAdhesive: boolean;
}

/** Whether the rods stand in drilled holes filled with adhesive. */
export const isSetInAdhesive = (support: Support): boolean => support.base?.fields.anchors?.value.end?.value === "set in adhesive";

/** Reads the base and what breakout needs beside it; says where rods stand outside the concrete or reach through it. */
export function readCone(support: Support, gather: Gather, place: number): ConeInputs & { readonly factors: AnchorFactors | undefined } {
  const base = readBase(support, gather, place);
  const fields = support.base?.fields;
  const h_ef = gather.need(fields?.anchors?.value.embedment, "anchor embedment");
  const { edges } = base.member;
  if (base.rods.some(({ x, y }) => x <= edges.west || x >= edges.east || y <= edges.south || y >= edges.north)) {
    gather.block(
      base.member.shape === "round"
        ? "the rods stand outside the square inside the round pier, by which its edges are measured; widen the pier or bring the rods in"
        : "the rods stand outside the concrete; widen it or bring the rods in",
    );
  }
  if (h_ef >= base.member.depth) gather.block("the rods reach through the concrete: their embedment is not less than its depth");
  const factors = readFactors(support.codes, gather);
  const isCracked = gather.may(fields?.["cracked concrete"]) ?? true;
  const isAdhesive = isSetInAdhesive(support);
  const cracking = isAdhesive ? factors?.drilledCracking : factors?.breakoutCracking;
  return { ...base, edition: factors?.edition ?? "", h_ef, psi_c: cracking?.[isCracked ? "cracked" : "uncracked"] ?? Number.NaN, isCracked, isAdhesive, factors };
}

const depth = { kind: "length", meaning: "effective embedment in the formulas" } as const;

export const criticalEdge = formula({
  id: "anchors.critical-edge",
  text: "c_cr = 1.5 * h",
  source: "ACI 318-19 17.6.2.1.1",
  symbols: { c_cr: { kind: "length", meaning: "reach of the cone beside a rod" }, h: depth },
});

/**
 * The largest edge distance is that of the near edges alone, as 17.6.2.1.2 words it. There are published examples that take it otherwise, or
 * that leave the depth whole and cut the area alone; the strengths they print for the same rods are 1 to 3 % apart.
 */
export const nearEdgeDepth = formula({
  id: "anchors.near-edge-depth",
  text: "h = min(h_ef, max(c_a_max / 1.5, s / 3))",
  source: "ACI 318-19 17.6.2.1.2",
  symbols: {
    h: depth,
    h_ef: { kind: "length", meaning: "embedment", field: "bases.*.anchors.embedment" },
    c_a_max: { kind: "length", meaning: "largest of the edge distances within 1.5 h_ef" },
    s: { kind: "length", meaning: "largest spacing between neighboring rods in tension" },
  },
});

export const singleArea = formula({
  id: "anchors.single-area",
  text: "A_Nco = 9 * h^2",
  source: "ACI 318-19 Eq. 17.6.2.1.4",
  symbols: { A_Nco: { kind: "area", meaning: "projected area of one rod far from edges" }, h: depth },
});

export const groupArea = formula({
  id: "anchors.group-area",
  text: "A_Nc = min(A, n * A_Nco)",
  source: "ACI 318-19 17.6.2.1.1",
  symbols: {
    A_Nc: { kind: "area", meaning: "projected area of the group" },
    A: { kind: "area", meaning: "union of the squares about the rods, within the concrete" },
    n: { kind: "number", meaning: "rods in tension" },
    A_Nco: { kind: "area", meaning: "projected area of one rod far from edges" },
  },
});

export const basicBreakout = formula({
  id: "anchors.basic-breakout",
  text: "N_b = k_c * lambda_a * sqrt(f_c) * h^1.5",
  source: "ACI 318-19 Eq. 17.6.2.2.1, cast-in; lambda_a = 1.0, normalweight concrete",
  symbols: {
    N_b: { kind: "force", meaning: "basic breakout strength of one rod in cracked concrete" },
    f_c: { kind: "stress", meaning: "concrete strength that may be used" },
    h: depth,
  },
  constants: { k_c: "24 lbf^0.5/inch^0.5", lambda_a: "1.0" },
});

export const drilledBreakout = formula({
  id: "anchors.drilled-breakout",
  text: "N_b = k_c * lambda_a * sqrt(f_c) * h^1.5",
  source: "ACI 318-19 Eq. 17.6.2.2.1, post-installed; lambda_a = 1.0, normalweight concrete",
  symbols: {
    N_b: { kind: "force", meaning: "basic breakout strength of one rod in cracked concrete" },
    f_c: { kind: "stress", meaning: "concrete strength that may be used" },
    h: depth,
  },
  constants: { k_c: "17 lbf^0.5/inch^0.5", lambda_a: "1.0" },
});

export const splittingFactor = formula({
  id: "anchors.splitting-factor",
  text: "psi_cp = min(1, max(c_a_min, 1.5 * h_ef) / (2 * h_ef))",
  source: "ACI 318-19 17.6.2.6.1 in uncracked concrete, with c_ac = 2 h_ef of adhesive anchors by 17.9.5",
  symbols: {
    psi_cp: { kind: "ratio", meaning: "factor for splitting of uncracked concrete at drilled-in rods" },
    c_a_min: { kind: "length", meaning: "least edge distance of a rod in tension" },
    h_ef: { kind: "length", meaning: "embedment", field: "bases.*.anchors.embedment" },
  },
});

export const drilledGroupBreakout = formula({
  id: "anchors.drilled-group-breakout",
  text: "N_cbg = A_Nc / A_Nco * psi_ec * psi_ed * psi_c * psi_cp * N_b",
  source: "ACI 318-19 Eq. 17.6.2.1b",
  symbols: {
    N_cbg: { kind: "force", meaning: "nominal breakout strength of the group" },
    A_Nc: { kind: "area", meaning: "projected area of the group" },
    A_Nco: { kind: "area", meaning: "projected area of one rod far from edges" },
    psi_ec: { kind: "ratio", meaning: "factor for the eccentricity of the tension" },
    psi_ed: { kind: "ratio", meaning: "factor for the nearest edge" },
    psi_c: { kind: "ratio", meaning: "1.4 in uncracked concrete, 1.0 in cracked", field: "bases.*.cracked concrete" },
    psi_cp: { kind: "ratio", meaning: "factor for splitting, 1.0 in cracked concrete" },
    N_b: { kind: "force", meaning: "basic breakout strength of one rod" },
  },
});

export const eccentricityFactor = formula({
  id: "anchors.eccentricity-factor",
  text: "psi_ec = 1 / (1 + e_Nx / (1.5 * h)) * (1 / (1 + e_Ny / (1.5 * h)))",
  source: "ACI 318-19 Eq. 17.6.2.3.1, both axes multiplied by 17.6.2.3.3",
  symbols: {
    psi_ec: { kind: "ratio", meaning: "factor for the eccentricity of the tension" },
    e_Nx: { kind: "length", meaning: "eccentricity along x" },
    e_Ny: { kind: "length", meaning: "eccentricity along y" },
    h: depth,
  },
});

export const edgeFactor = formula({
  id: "anchors.edge-factor",
  text: "psi_ed = c_a_min >= 1.5 * h ? 1 : 0.7 + 0.3 * c_a_min / (1.5 * h)",
  source: "ACI 318-19 Eq. 17.6.2.4.1a and b",
  symbols: {
    psi_ed: { kind: "ratio", meaning: "factor for the nearest edge" },
    c_a_min: { kind: "length", meaning: "least edge distance of a rod in tension" },
    h: depth,
  },
});

export const groupBreakout = formula({
  id: "anchors.group-breakout",
  text: "N_cbg = A_Nc / A_Nco * psi_ec * psi_ed * psi_c * psi_cp * N_b",
  source: "ACI 318-19 Eq. 17.6.2.1b; psi_cp = 1.0 for cast-in anchors by 17.6.2.6",
  symbols: {
    N_cbg: { kind: "force", meaning: "nominal breakout strength of the group" },
    A_Nc: { kind: "area", meaning: "projected area of the group" },
    A_Nco: { kind: "area", meaning: "projected area of one rod far from edges" },
    psi_ec: { kind: "ratio", meaning: "factor for the eccentricity of the tension" },
    psi_ed: { kind: "ratio", meaning: "factor for the nearest edge" },
    psi_c: { kind: "ratio", meaning: "1.25 in uncracked concrete, 1.0 in cracked", field: "bases.*.cracked concrete" },
    N_b: { kind: "force", meaning: "basic breakout strength of one rod" },
  },
  constants: { psi_cp: "1.0" },
});

export interface SharedArea extends ProjectionArgs {
  readonly inputs: ConeInputs;
  readonly pattern: number;
}

/** Areas already found for a base, by the rods in tension: the same few groups come back in every combination. */
const knownAreas = oncePerInputs((_: ConeInputs) => new Map<number, Projection>());

export const groupProjection: Routine<SharedArea, Projection> = {
  ...anchorProjection,
  id: "anchors.projected-area",
  run: (args) => {
    const known = knownAreas(args.inputs);
    const found = known.get(args.pattern) ?? anchorProjection.run(args);
    known.set(args.pattern, found);
    return found;
  },
};

/** Words for the edges of a round pier, in a derivation. */
export const roundNote = "Edges of the round pier are measured to the square inside it, which is on the safe side.";

/** Nominal breakout strength of these rods together, N. The same routine and formulas serve breakout in tension and pryout. */
export function coneStrength(inputs: ConeInputs, group: RodGroup, calc: Calc): number {
  const { h_ef, psi_c } = inputs;
  const member = inputs.member.edges;
  if (inputs.member.shape === "round") calc.note(roundNote);
  const c_far = calc(criticalEdge, { h: h_ef });
  const near = group.edges.filter((c) => c < c_far);
  let h = h_ef;
  if (near.length >= 3) {
    calc.note(`${near.length} edges are nearer than 1.5 h_ef: the depth is cut to what these edges allow.`);
    h = calc(nearEdgeDepth, { h_ef, c_a_max: Math.max(...near), s: group.spacing });
  }
  const reach = calc(criticalEdge, { h });
  const { area: A } = calc.routine(groupProjection, { inputs, pattern: group.pattern, anchors: group.rods, reach, member });
  const A_Nco = calc(singleArea, { h });
  const A_Nc = calc(groupArea, { A, n: group.rods.length, A_Nco });
  const f_c = concreteUsed(inputs, calc);
  const N_b = calc(inputs.isAdhesive ? drilledBreakout : basicBreakout, { f_c, h });
  const psi_ec = calc(eccentricityFactor, { e_Nx: group.eccentricityX, e_Ny: group.eccentricityY, h });
  const psi_ed = calc(edgeFactor, { c_a_min: group.leastEdge, h });
  if (inputs.isAdhesive) {
    const psi_cp = inputs.isCracked ? 1 : calc(splittingFactor, { c_a_min: group.leastEdge, h_ef });
    return calc(drilledGroupBreakout, { A_Nc, A_Nco, psi_ec, psi_ed, psi_c, psi_cp, N_b });
  }
  return calc(groupBreakout, { A_Nc, A_Nco, psi_ec, psi_ed, psi_c, N_b });
}

/** The formulas of {@link coneStrength}, in the order a reader meets them. */
export const coneFormulas: readonly Formula<any, any>[] = [
  criticalEdge,
  nearEdgeDepth,
  singleArea,
  groupArea,
  concreteStrengthUsed,
  concreteStrengthDrilled,
  basicBreakout,
  drilledBreakout,
  eccentricityFactor,
  edgeFactor,
  groupBreakout,
  splittingFactor,
  drilledGroupBreakout,
];
