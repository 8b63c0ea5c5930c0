/** How every check of a wall's stability opens a combination: what of it cannot be answered, the dead load's factor, and the post's forces below the footing. */
import type { Demand } from "../../actions/demand.js";
import type { Calc } from "../../formula/types.js";
import { deadFactor } from "../site/dead-factor.js";
import { isShaken, quakeFactor, shakenFill, type StabilityInputs } from "./safety.js";
import { shakingTrouble } from "./shaking.js";
import { type Post, postAt, shakenSituations, type Situation, situationsOf } from "./situations.js";

export interface Opened {
  readonly f_D: number;
  readonly post: Post;
  readonly situations: readonly Situation[];
}

export function openWall(inputs: StabilityInputs, demand: Demand, calc: Calc): Opened | { readonly because: string } {
  const isQuake = inputs.earth?.shaking !== undefined && isShaken(demand);
  const shaken = isQuake && inputs.earth ? shakingTrouble(inputs.earth) : shakenFill(inputs, demand);
  if (shaken !== undefined) return { because: shaken };
  const { factor: f_D, note } = deadFactor(demand);
  const post = postAt(inputs, demand, calc);
  calc.note(note);
  if (inputs.stretch !== "") calc.note(inputs.stretch);
  const situations = situationsOf(inputs);
  if (!isQuake) return { f_D, post, situations };
  calc.note("The earthquake shakes the soil held back, by the seismic coefficient stated, and throws wall, footing and the soil on the heel outward; without the fill it acts on the post alone.");
  return { f_D, post, situations: [...situations, ...shakenSituations(quakeFactor(demand))] };
}
