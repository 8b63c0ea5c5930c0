import type { Demand } from "../../actions/demand.js";
import type { Calc } from "../../formula/types.js";
import { unchecked, weigh, type Outcome } from "../contract.js";
import { dowelPull, type DowelInputs } from "./dowel-force.js";

/** Weighs the pull on the worst dowel against the capacity of one. */
export function weighDowel(inputs: DowelInputs, demand: Demand, capacity: number, calc: Calc): Outcome {
  const found = dowelPull(inputs, demand, calc);
  return "because" in found ? unchecked(found.because) : weigh(found.pull, capacity, "force");
}
