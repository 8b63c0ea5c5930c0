/**
 * Frozen ground grips the side of the pier and lifts it as it swells, whatever the depth of its underside. In the field a pier under a light roof
 * has risen an inch or two over some winters, most in wet clay, and the gap below it has filled.
 *
 * Grip by the adfreeze stress of the notebook over the side in the frost depth; there is no default for it. Held by the dead load with the factor of
 * the combination, and by the soil below the frost. Wind is not counted at the same time. Common practice, no source.
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import { check, type Gather, weigh } from "../contract.js";
import { calculatedOnce } from "../once.js";
import { deadFactor } from "../site/dead-factor.js";
import { isPier, perimeterOf, roundPerimeter, squarePerimeter } from "./body.js";
import { allowableSide, sideFormulas } from "./side.js";
import { heldFormulas, heldOf, readUplift, type UpliftInputs } from "./uplift.js";

const practice = "common practice, no source";
const P_D = { kind: "force", meaning: "dead load at the column base, factored", range: [-1e4, 1e5] } as const;
const f_D = { kind: "ratio", meaning: "factor of dead load in the combination" } as const;
const W_p = { kind: "force", meaning: "weight of the foundation" } as const;
const W_s = { kind: "force", meaning: "weight of the soil below the frost that is counted" } as const;
const R_s = { kind: "force", meaning: "allowable side resistance below the frost" } as const;
const R_g = { kind: "force", meaning: "what holds against the grip of frost" } as const;

export const gripForce = formula({
  id: "pier.frost-grip",
  text: "F_g = tau_a * p_s * min(z_f, d)",
  source: `statics with the adfreeze stress stated; ${practice}`,
  symbols: {
    F_g: { kind: "force", meaning: "lift of the frozen ground on the side" },
    tau_a: { kind: "stress", meaning: "adfreeze stress", field: "ground.*.adfreeze stress" },
    p_s: { kind: "distance", meaning: "perimeter of the pier" },
    z_f: { kind: "distance", meaning: "frost depth", field: "site.frost depth" },
    d: { kind: "distance", meaning: "depth of the pier", field: "foundations.*.depth" },
  },
});

export const heldInFrost = formula({
  id: "pier.held-in-frost",
  text: "R_g = max(P_D, 0 * abs(P_D)) + f_D * (W_p + W_s) + R_s",
  source: `statics; ${practice}`,
  symbols: { R_g, P_D, f_D, W_p, W_s, R_s },
});

export const heldWithoutColumn = formula({
  id: "pier.held-without-column",
  text: "R_g = 0.6 * (W_p + W_s) + R_s",
  source: `statics, with the factor of dead load against uplift (ASCE 7-22 2.4.1); ${practice}`,
  symbols: { R_g, W_p, W_s, R_s },
});

/** What holds against the grip, N: of a reaction given already combined the dead load is not known and nothing of it counts. */
export function heldAgainstGrip(weights: { readonly W_p: number; readonly W_s: number; readonly R_s: number }, demand: Demand, calc: Calc): number {
  const hasTerms = demand.combination.terms.some(({ type }) => type === "D");
  if (!hasTerms || demand.dead === undefined) {
    calc.note("How much of the reaction is dead load is not known: only the foundation and the soil hold against the grip.");
    return calc(heldWithoutColumn, weights);
  }
  const { factor, note } = deadFactor(demand);
  calc.note(note);
  return calc(heldInFrost, { P_D: demand.dead, f_D: factor, ...weights });
}

export const isGripped = (support: Support): boolean => support.ground?.fields["adfreeze stress"] !== undefined;

export interface FrostGripInputs extends UpliftInputs {
  readonly stress: number;
  readonly frost: number;
}

const readGrip = (support: Support, gather: Gather, place: number): FrostGripInputs => {
  const frost = gather.need(support.site["frost depth"], "frost depth of the site");
  const inputs = readUplift(support, gather, place);
  return { ...inputs, soilFrom: frost, stress: gather.need(support.ground?.fields["adfreeze stress"], "adfreeze stress of the ground"), frost };
};

const gripOf = calculatedOnce((inputs: FrostGripInputs, calc: Calc): number => calc(gripForce, { tau_a: inputs.stress, p_s: perimeterOf(inputs, calc), z_f: inputs.frost, d: inputs.depth }));

export const pierFrostGrip = check({
  id: "pier.frost-grip",
  title: "Grip of frost on the pier",
  link: "pier",
  level: "allowable",
  clause: "common practice, no source",
  fails: "Frozen ground lifts the pier by its side: it weighs too little and the soil below the frost does not hold it.",
  seen: "A pier under a light roof that has risen an inch or two over some winters.",
  range:
    "Where an adfreeze stress is stated for the ground. The whole side in the frost depth is gripped at once, over its own perimeter; a sleeve or a drained filling is said by a lower stress. Held by dead load, and below the frost by side resistance or the soil above the bell. Wind does not pull at the same time.",
  formulas: [gripForce, roundPerimeter, squarePerimeter, ...heldFormulas, ...sideFormulas, heldInFrost, heldWithoutColumn],
  applies: (support) => isPier(support) && isGripped(support),
  inputs: readGrip,
  fixedBy: (support) => support.foundation?.fields.bell ?? support.foundation?.fields.depth ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const grip = gripOf(inputs, calc);
    const held = heldOf(inputs, calc);
    const R_s = inputs.side ? allowableSide(inputs.side, held.side, false, calc) : 0;
    return weigh(grip, heldAgainstGrip({ W_p: held.weight, W_s: held.soil, R_s }, demand, calc), "force");
  },
  advise: (inputs, outcome, say) =>
    `frost grips the side with ${say.show(outcome.demand, "force")}; ${say.show(outcome.capacity, "force")} holds. ${inputs.bell ? "Widen the bell or set it deeper" : "Flare the foot below the frost or deepen the pier"}, or sleeve the side and drain it and state the stress that is left.`,
});
