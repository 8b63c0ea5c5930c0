/**
 * Strength of steel by either method of AISC 360. The checks find design strengths, phi R_n; the allowable ones, R_n / Omega, come of the same
 * nominal strength. Which of them a demand is held against, its own load level says.
 */
import type { Demand } from "../actions/demand.js";
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import type { KindName } from "../units/kinds.js";

/** A combination for steel designed by AISC 360, of the method the notebook names. */
export type SteelDemand = Demand<"strength" | "allowable">;

/** Load levels of such checks. */
export const steelLevels = ["strength", "allowable"] as const;

/** Resistance factor of LRFD and safety factor of ASD for the same limit state. */
export interface SteelFactors {
  readonly phi: number;
  readonly Omega: number;
}

/** Axial force, bending, shear and torsion of members and bending of plates: AISC 360-22 D2, E1, F1, G1, H3.1. */
export const ofMembers: SteelFactors = { phi: 0.9, Omega: 1.67 };

/** Welds, bolts, bearing at holes and rupture: AISC 360-22 J2.4, J3, J4. */
export const ofConnectors: SteelFactors = { phi: 0.75, Omega: 2 };

const source = "AISC 360-22 B3.1 and B3.2: design strength phi R_n, allowable strength R_n / Omega";

function allowable<K extends KindName>(id: string, kind: K) {
  return formula({
    id,
    text: "R_a = R_d / (phi * Omega)",
    source,
    symbols: {
      R_a: { kind, meaning: "allowable strength, R_n / Omega" },
      R_d: { kind, meaning: "design strength, phi R_n" },
      phi: { kind: "ratio", meaning: "resistance factor in it", range: [0.7, 1] },
      Omega: { kind: "ratio", meaning: "safety factor of allowable-stress design", range: [1.5, 2.5] },
    },
  });
}

export const allowableForce = allowable("steel.allowable-force", "force");
export const allowableMoment = allowable("steel.allowable-moment", "moment");
export const allowablePlateMoment = allowable("steel.allowable-plate-moment", "momentPerLength");

export const allowableWeld = allowable("steel.allowable-weld", "forcePerLength");

type Allowable = typeof allowableForce | typeof allowableMoment | typeof allowablePlateMoment | typeof allowableWeld;

/** The strength a combination is held against: the design strength, or with allowable-stress loads the allowable one. */
export const available = ({ level }: SteelDemand, R_d: number, by: Allowable, { phi, Omega }: SteelFactors, calc: Calc): number =>
  level === "strength" ? R_d : calc(by, { R_d, phi, Omega });
