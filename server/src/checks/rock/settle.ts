import type { Demand } from "../../actions/demand.js";
import type { Calc } from "../../formula/types.js";
import { unchecked, weigh, type Outcome, type Weighed } from "../contract.js";
import type { RockBlock } from "./block.js";
import { dowelPull, type DowelInputs } from "./dowel-force.js";

/**
 * Behind a wall that holds back soil the earth pressure, which is not part of what is weighed, can only add: such a wall can be found over, and
 * cannot be found to hold.
 */
export function earthLeftOut({ body }: RockBlock, what: string, outcome: Weighed, calc: Calc): Outcome {
  if (body.type !== "wall" || !(body.retains > 0)) return outcome;
  calc.note(`Earth pressure on the wall is left out of the ${what}.`);
  if (outcome.demand > outcome.capacity) return outcome;
  return unchecked(`the wall holds back soil, and earth pressure is not part of the ${what} yet: have it designed, or leave out \`retains\` where both sides are backfilled alike`);
}

/** Weighs the pull on the worst dowel against the capacity of one. */
export function weighDowel(inputs: DowelInputs, demand: Demand, capacity: number, calc: Calc): Outcome {
  const found = dowelPull(inputs, demand, calc);
  if ("because" in found) return unchecked(found.because);
  return earthLeftOut(inputs.block, "pull on the dowels", weigh(found.pull, capacity, "force"), calc);
}
