/**
 * Nominal bond strength of a group of rods set in adhesive, ACI 318-19 17.6.5, and what is read of the product. It stands by itself because
 * pryout under shear takes the same strength for the rods that take shear.
 */
import { formula } from "../../formula/declare.js";
import type { Calc, Formula, Routine } from "../../formula/types.js";
import { anchorProjection, type Projection, type ProjectionArgs } from "../../mechanics/rectangles.js";
import type { RodGroup } from "../../mechanics/rod-group.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import type { ConeInputs } from "./cone.js";
import type { AnchorFactors } from "./factors.js";

/** Bond stresses in the formulas, Pa. */
export interface BondValues {
  /** In the concrete as it is taken, cracked or not. */
  readonly tau: number;
  readonly tau_uncr: number;
  /** Taken from the table and not from a report. */
  readonly isLeast: boolean;
}

export interface BondedInputs extends ConeInputs, BondValues {}

const rod = { kind: "length", meaning: "rod diameter", field: "bases.*.anchors.diameter" } as const;
const embedment = { kind: "length", meaning: "embedment", field: "bases.*.anchors.embedment" } as const;
const reach = { kind: "length", meaning: "reach of the bond beside a rod" } as const;
const place = { kind: "number", meaning: "1 outdoor, 0 indoor", range: [-1, 1], field: "bases.*.anchors.adhesive.conditions" } as const;
const sustained = { kind: "number", meaning: "1 where part of the tension stays", range: [-1, 1], field: "bases.*.anchors.adhesive.sustained tension" } as const;

export const leastCrackedBond = formula({
  id: "anchors.least-cracked-bond",
  text: "tau_cr = (is_outdoor > 0 ? t_out : t_in) * (is_sustained > 0 ? 0.4 : 1)",
  source: "ACI 318-19 Table 17.6.5.2.5",
  symbols: { tau_cr: { kind: "stress", meaning: "least bond stress in cracked concrete" }, is_outdoor: place, is_sustained: sustained },
  constants: { t_out: "200 psi", t_in: "300 psi" },
});

export const leastUncrackedBond = formula({
  id: "anchors.least-uncracked-bond",
  text: "tau_uncr = (is_outdoor > 0 ? t_out : t_in) * (is_sustained > 0 ? 0.4 : 1)",
  source: "ACI 318-19 Table 17.6.5.2.5",
  symbols: { tau_uncr: { kind: "stress", meaning: "least bond stress in uncracked concrete" }, is_outdoor: place, is_sustained: sustained },
  constants: { t_out: "650 psi", t_in: "1000 psi" },
});

export const bondReach = formula({
  id: "anchors.bond-reach",
  text: "c_Na = 10 * d_a * sqrt(tau_uncr / t_1)",
  source: "ACI 318-19 Eq. 17.6.5.1.2b",
  symbols: { c_Na: reach, d_a: rod, tau_uncr: { kind: "stress", meaning: "bond stress in uncracked concrete" } },
  constants: { t_1: "1100 psi" },
});

export const singleBondArea = formula({
  id: "anchors.single-bond-area",
  text: "A_Nao = (2 * c_Na)^2",
  source: "ACI 318-19 Eq. 17.6.5.1.2a",
  symbols: { A_Nao: { kind: "area", meaning: "influence area of one rod far from edges" }, c_Na: reach },
});

export const groupBondArea = formula({
  id: "anchors.group-bond-area",
  text: "A_Na = min(A, n * A_Nao)",
  source: "ACI 318-19 17.6.5.1.1",
  symbols: {
    A_Na: { kind: "area", meaning: "influence area of the group" },
    A: { kind: "area", meaning: "union of the squares about the rods, within the concrete" },
    n: { kind: "number", meaning: "rods in tension" },
    A_Nao: { kind: "area", meaning: "influence area of one rod far from edges" },
  },
});

export const basicBond = formula({
  id: "anchors.basic-bond",
  text: "N_ba = lambda_a * tau * pi * d_a * h_ef",
  source: "ACI 318-19 Eq. 17.6.5.2.1; lambda_a = 1.0, normalweight concrete",
  symbols: {
    N_ba: { kind: "force", meaning: "basic bond strength of one rod" },
    tau: { kind: "stress", meaning: "bond stress in the concrete as it is taken", field: "bases.*.anchors.adhesive.cracked bond" },
    d_a: rod,
    h_ef: embedment,
  },
  constants: { lambda_a: "1.0" },
});

export const bondEccentricity = formula({
  id: "anchors.bond-eccentricity",
  text: "psi_ecNa = 1 / (1 + e_Nx / c_Na) * (1 / (1 + e_Ny / c_Na))",
  source: "ACI 318-19 Eq. 17.6.5.3.1, both axes multiplied by 17.6.5.3.3",
  symbols: { psi_ecNa: { kind: "ratio", meaning: "factor for the eccentricity of the tension" }, e_Nx: { kind: "length", meaning: "eccentricity along x" }, e_Ny: { kind: "length", meaning: "eccentricity along y" }, c_Na: reach },
});

export const bondEdge = formula({
  id: "anchors.bond-edge",
  text: "psi_edNa = c_a_min >= c_Na ? 1 : 0.7 + 0.3 * c_a_min / c_Na",
  source: "ACI 318-19 Eq. 17.6.5.4.1a and b",
  symbols: { psi_edNa: { kind: "ratio", meaning: "factor for the nearest edge" }, c_a_min: { kind: "length", meaning: "least edge distance of a rod in tension" }, c_Na: reach },
});

export const bondSplitting = formula({
  id: "anchors.bond-splitting",
  text: "psi_cpNa = min(1, max(c_a_min, c_Na) / (2 * h_ef))",
  source: "ACI 318-19 17.6.5.5.1 in uncracked concrete, with c_ac = 2 h_ef by 17.9.5",
  symbols: { psi_cpNa: { kind: "ratio", meaning: "factor for splitting of uncracked concrete" }, c_a_min: { kind: "length", meaning: "least edge distance of a rod in tension" }, c_Na: reach, h_ef: embedment },
});

export const groupBond = formula({
  id: "anchors.group-bond",
  text: "N_ag = A_Na / A_Nao * psi_ecNa * psi_edNa * psi_cpNa * N_ba",
  source: "ACI 318-19 Eq. 17.6.5.1b",
  symbols: {
    N_ag: { kind: "force", meaning: "nominal bond strength of the group" },
    A_Na: { kind: "area", meaning: "influence area of the group" },
    A_Nao: { kind: "area", meaning: "influence area of one rod far from edges" },
    psi_ecNa: { kind: "ratio", meaning: "factor for the eccentricity of the tension" },
    psi_edNa: { kind: "ratio", meaning: "factor for the nearest edge" },
    psi_cpNa: { kind: "ratio", meaning: "factor for splitting, 1.0 in cracked concrete" },
    N_ba: { kind: "force", meaning: "basic bond strength of one rod" },
  },
});

export const bondFormulas: readonly Formula<any, any>[] = [bondReach, singleBondArea, groupBondArea, basicBond, bondEccentricity, bondEdge, bondSplitting, groupBond];

const bondProjection: Routine<ProjectionArgs, Projection> = { ...anchorProjection, id: "anchors.bond-area", source: "geometry; the squares are those of ACI 318-19, 17.6.5.1" };

/** Strength reduction factor of concrete and bond in tension by the category of the product. */
export const phiOfAdhesive = (support: Support, factors: AnchorFactors | undefined, gather: Gather): number | undefined => {
  const category = gather.needs(support.base?.fields.anchors?.value.adhesive, "adhesive the rods are set in (anchors, adhesive)")?.category;
  return factors?.adhesive[[1, 2, 3].indexOf(gather.may(category) ?? 3)];
};

/** Bond stresses by the product's report, or the least of the table where its conditions are given. */
export function readBondValues(support: Support, gather: Gather): BondValues {
  const adhesive = gather.needs(support.base?.fields.anchors?.value.adhesive, "adhesive the rods are set in (anchors, adhesive)");
  const isCracked = gather.may(support.base?.fields["cracked concrete"]) ?? true;
  const none: BondValues = { tau: Number.NaN, tau_uncr: Number.NaN, isLeast: false };
  if (!adhesive) return none;
  const [cracked, uncracked] = [gather.may(adhesive["cracked bond"]), gather.may(adhesive["uncracked bond"])];
  const conditions = gather.may(adhesive.conditions);
  if (conditions !== undefined && cracked === undefined && uncracked === undefined) {
    const is = { is_outdoor: conditions === "outdoor" ? 1 : 0, is_sustained: (gather.may(adhesive["sustained tension"]) ?? 0) > 0 ? 1 : 0 };
    const tau_uncr = leastUncrackedBond.value(is);
    return { tau: isCracked ? leastCrackedBond.value(is) : tau_uncr, tau_uncr, isLeast: true };
  }
  if (uncracked === undefined || (isCracked && cracked === undefined)) {
    gather.block(`the bond stress of the adhesive is not known: give ${isCracked ? "cracked bond and uncracked bond" : "uncracked bond"} by the product's report, or, for the least values of ACI 318-19 Table 17.6.5.2.5, the conditions (anchors, adhesive)`);
    return none;
  }
  return { tau: isCracked ? (cracked ?? Number.NaN) : uncracked, tau_uncr: uncracked, isLeast: false };
}

/** Nominal bond strength of these rods together, N. */
export function bondStrength(inputs: BondedInputs, group: RodGroup, calc: Calc): number {
  const { d_a, h_ef, tau, tau_uncr } = inputs;
  const c_Na = calc(bondReach, { d_a, tau_uncr });
  const { area: A } = calc.routine(bondProjection, { anchors: group.rods, reach: c_Na, member: inputs.member.edges });
  const A_Nao = calc(singleBondArea, { c_Na });
  const A_Na = calc(groupBondArea, { A, n: group.rods.length, A_Nao });
  const N_ba = calc(basicBond, { tau, d_a, h_ef });
  const psi_ecNa = calc(bondEccentricity, { e_Nx: group.eccentricityX, e_Ny: group.eccentricityY, c_Na });
  const psi_edNa = calc(bondEdge, { c_a_min: group.leastEdge, c_Na });
  const psi_cpNa = inputs.isCracked ? 1 : calc(bondSplitting, { c_a_min: group.leastEdge, c_Na, h_ef });
  return calc(groupBond, { A_Na, A_Nao, psi_ecNa, psi_edNa, psi_cpNa, N_ba });
}
