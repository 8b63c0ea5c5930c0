import type { Demand } from "../../actions/demand.js";
import type { Calc } from "../../formula/types.js";
import { unchecked, weigh, type Outcome } from "../contract.js";
import { dowelPull, type DowelInputs } from "./dowel-force.js";

/**
 * Weighs the pull on the worst dowel against the capacity of one. Behind a wall that holds back soil the earth pressure, which is not
 * part of the pull, can only add: such a dowel can be found over, and cannot be found to hold.
 */
export function weighDowel(inputs: DowelInputs, demand: Demand, capacity: number, calc: Calc): Outcome {
  const found = dowelPull(inputs, demand, calc);
  if ("because" in found) return unchecked(found.because);
  const { body } = inputs.block;
  if (body.type === "wall" && body.retains > 0) {
    calc.note("Earth pressure on the wall is left out of the pull.");
    if (!(found.pull > capacity))
      return unchecked("the wall holds back soil, and earth pressure is not part of the pull on the dowels yet: have it designed, or leave out `retains` where both sides are backfilled alike");
  }
  return weigh(found.pull, capacity, "force");
}
