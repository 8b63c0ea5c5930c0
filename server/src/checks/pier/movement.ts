/**
 * The pier moves sideways at grade: the soil beside it gives before it gives way. In the field a gap stands open round the pier after a storm,
 * and the pavement that was cast against it is cracked.
 *
 * IBC 2021 1806.3.4 doubles the lateral bearing only of poles that are not harmed by half an inch of movement at grade under short-term loads;
 * that movement is found here, under the allowable-stress combinations, with the soil followed by springs or p-y curves. A limit of the notebook's
 * own is judged the same way.
 */
import { formula } from "../../formula/declare.js";
import { check, unchecked, weigh } from "../contract.js";
import { isPier } from "./body.js";
import { standsAlone } from "./crowd.js";
import { pierLoad, pierResponse, readPierInGround, responseFormulas, type PierInGround } from "./response.js";

const limit = { kind: "length", meaning: "limit of the movement at grade" } as const;

export const poleLimit = formula({
  id: "pier.movement-limit",
  text: "y_lim = min(y_s, y_p)",
  source: "IBC 2021 1806.3.4 (wording from memory): 1/2 in where the lateral bearing is doubled",
  symbols: { y_lim: limit, y_s: { kind: "length", meaning: "limit stated, or the width of the pier where none is", field: "foundations.*.movement limit" } },
  constants: { y_p: "0.5 inch" },
});

export interface MovementInputs extends PierInGround {
  readonly isolated: boolean;
  readonly limit: number | undefined;
}

export const pierMovement = check({
  id: "pier.movement",
  title: "Movement of the pier at grade",
  link: "pier",
  level: "allowable",
  clause: "IBC 2021 1806.3.4",
  fails: "The head of the pier moves farther than is said to do no harm.",
  seen: "A gap round the pier and cracked paving after a storm.",
  range:
    "A straight pier alone in level ground, under short-term loads: creep of clay, many cycles of load and groups of piers are not in it. Its stiffness is 0.35 of the whole section. " +
    "Push and moment are taken in one plane and one sense. Curves of a layer go by its own depth; the softness of a layer above does not reach into it. No side friction carries the axial force.",
  formulas: [...responseFormulas, poleLimit],
  applies: (support) => isPier(support) && (support.ground?.fields["isolated poles"]?.value === true || support.foundation?.fields["movement limit"] !== undefined),
  inputs: (support, gather, place): MovementInputs => {
    standsAlone(support, gather, place, "the movement");
    return {
      ...readPierInGround(support, gather),
      isolated: gather.may(support.ground?.fields["isolated poles"]) ?? false,
      limit: gather.may(support.foundation?.fields["movement limit"]),
    };
  },
  measures: (inputs, demand, calc) => pierLoad(inputs, demand.base, calc),
  fixedBy: (support) => support.foundation?.fields.depth ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const stated = inputs.limit ?? inputs.size;
    const limit = inputs.isolated ? calc(poleLimit, { y_s: stated }) : stated;
    if (inputs.held) {
      calc.note("A rigid slab tied to the pier holds it at grade: it does not move there.");
      return weigh(0, limit, "length");
    }
    const found = pierResponse(inputs, demand.base, calc);
    if (!found) return unchecked("the movement of the pier could not be solved for its size and load: check the width, the depth and the values of the ground");
    if (found.givesWay) {
      calc.note("The soil beside the pier gives way before this load is reached: the movement is given as the width of the pier.");
      return weigh(inputs.size, limit, "length");
    }
    return weigh(Math.abs(found.deflection[0]), limit, "length");
  },
  advise: (inputs, outcome, say) =>
    outcome.demand >= inputs.size
      ? `depth ${say.show(inputs.depth, "distance")}: the soil gives way before the load is reached. Deepen the pier or widen it.`
      : `movement ${say.show(outcome.demand, "length")} at grade; ${say.show(outcome.capacity, "length")} is the limit. Deepen the pier or widen it${inputs.isolated ? ", or do not count on the doubled lateral bearing (isolated poles: no)" : ""}.`,
});
