/**
 * The pier leans in the soil, and the column above it with it. In the field nothing breaks: the roof is seen to move, and a light canopy stands
 * out of plumb to the eye before anything in it is at its strength.
 *
 * Lean at grade under a service wind against a limit that the notebook states; no code has one. Where the reactions are stated there is no service
 * wind, and the allowable-stress combinations stand for it.
 */
import type { Demand } from "../../actions/demand.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import { check, unchecked, weigh, type Gather, type Outcome, type Say, type Weighed } from "../contract.js";
import { isPier } from "./body.js";
import { standsAlone } from "./crowd.js";
import { pierLoad, pierResponse, readPierInGround, responseFormulas, type PierInGround } from "./response.js";

export interface RotationInputs extends PierInGround {
  readonly limit: number;
}

const isLimited = (support: Support): boolean => isPier(support) && support.foundation?.fields["rotation limit"] !== undefined;
const isByHand = ({ column, foundation }: Support): boolean => [column?.fields ?? foundation?.fields].some((stated) => stated?.reactions !== undefined || stated?.combined !== undefined);

function read(support: Support, gather: Gather, place: number): RotationInputs {
  standsAlone(support, gather, place, "the lean");
  return { ...readPierInGround(support, gather), limit: gather.need(support.foundation?.fields["rotation limit"], "rotation limit of the pier") };
}

/** A lean, rad, that stands for ground that has given way: no column leans so far and stands. */
const fallen = 0.5;

function evaluate(inputs: RotationInputs, demand: Demand, calc: Calc): Outcome {
  const found = pierResponse(inputs, demand.base, calc);
  if (!found) return unchecked("the lean of the pier could not be solved for its size and load: check the width, the depth and the values of the ground");
  if (found.givesWay) {
    calc.note("The soil beside the pier gives way before this load is reached: the lean is given as 0.5 rad.");
    return weigh(fallen, inputs.limit, "angle");
  }
  return weigh(Math.min(Math.abs(found.slope[0]), fallen), inputs.limit, "angle");
}

const shared = {
  title: "Lean of the pier",
  link: "pier",
  clause: "limit of the notebook; no code limit",
  fails: "The pier turns in the soil, and the column leans with it.",
  seen: "A roof that moves in an ordinary storm, and columns out of plumb after it.",
  range:
    "A straight pier alone in level ground, under short-term loads: creep of clay and many cycles of load are not in it. Its stiffness is 0.35 of the whole section. Push and moment are taken in one plane and one sense.",
  formulas: responseFormulas,
  inputs: read,
  measures: (inputs: RotationInputs, demand: Demand, calc: Calc) => pierLoad(inputs, demand.base, calc),
  fixedBy: (support: Support) => support.foundation?.fields.depth ?? support.foundation,
  evaluate,
  advise: (inputs: RotationInputs, outcome: Weighed, say: Say) =>
    outcome.demand >= fallen
      ? `depth ${say.show(inputs.depth, "distance")}: the soil gives way before the load is reached. Deepen the pier or widen it.`
      : `lean ${say.show(outcome.demand, "angle")} at grade; ${say.show(outcome.capacity, "angle")} is the limit. Deepen the pier or widen it.`,
} as const;

export const pierRotation = check({ id: "pier.rotation", level: "service", applies: (support) => isLimited(support) && !isByHand(support), ...shared });

export const pierRotationStated = check({
  id: "pier.rotation-stated",
  level: "allowable",
  applies: (support) => isLimited(support) && isByHand(support),
  ...shared,
  title: "Lean of the pier under stated reactions",
});
