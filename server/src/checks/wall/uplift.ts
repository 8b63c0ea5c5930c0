/**
 * The post lifts its length of wall: the pull of the roof is more than that length and the soil counted on it weigh. In the field the wall has cracked
 * along its footing beside the post.
 *
 * Weight times the dead load factor of the combination (ASCE 7-22 2.4.1). How long a piece one post can lift is a choice of the design, limited by the
 * ends, the movement joints and the next post.
 */
import { formula } from "../../formula/declare.js";
import { check, weigh } from "../contract.js";
import { netUplift } from "../pier/uplift.js";
import { deadFactor } from "../site/dead-factor.js";
import { isWall, weightFormulas } from "./body.js";
import { isDoweledWall } from "./overturning.js";
import { readStability } from "./safety.js";
import { actingIn, postAt, type Situation, situationFormulas } from "./situations.js";

export const holdsDown = formula({
  id: "wall.holds-down",
  text: "R_a = max(f_D * W - U, 0 * W)",
  source: "ASCE 7-22 2.4.1",
  symbols: {
    R_a: { kind: "force", meaning: "what holds the post down" },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    W: { kind: "force", meaning: "weight of wall, footing and the soil counted on it" },
    U: { kind: "force", meaning: "lift of the water below the footing" },
  },
});

const bare: Situation = { words: "without the fill", hasFill: false, hasPost: true, soil: "holds without the fill" };

export const wallUplift = check({
  id: "wall.uplift",
  title: "Uplift of the wall by its post",
  link: "wall",
  level: "allowable",
  clause: "ASCE 7-22 2.4.1",
  fails: "The pull of the roof is more than the length of wall below the post weighs.",
  seen: "A wall cracked along its footing beside a post, and a gap under it.",
  range:
    "The length of wall that acts with one post, without the fill behind it, which may not be there yet; the other soil on the footing where it is compacted and tested. Moment goes into overturning. A wall doweled to rock is held by its dowels instead. Whether the wall carries its own length to the post as a beam is not checked.",
  formulas: [...situationFormulas, ...weightFormulas, holdsDown, netUplift],
  applies: (support) => isWall(support) && !isDoweledWall(support),
  inputs: readStability,
  fixedBy: (support) => support.foundation?.fields["length per post"] ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { factor: f_D, note } = deadFactor(demand);
    calc.note(note);
    if (inputs.stretch !== "") calc.note(inputs.stretch);
    const { weights, lift: U } = actingIn(inputs, bare, postAt(inputs, demand, calc), bare.soil, calc);
    const capacity = calc(holdsDown, { f_D, W: weights.total, U });
    if (!(demand.base.P < 0)) return weigh(0, capacity, "force");
    return weigh(calc(netUplift, { P: demand.base.P }), capacity, "force");
  },
  advise: (inputs, outcome, say) => `the pull is ${say.show(outcome.demand, "force")}; ${say.show(inputs.run, "distance")} of the wall holds ${say.show(outcome.capacity, "force")} down. Make the wall heavier, or let more of it act with the post.`,
});
