/** How every check of a wall's stability opens a combination: what of it cannot be answered, the dead load's factor, and the post's forces below the footing. */
import type { Demand } from "../../actions/demand.js";
import type { Calc } from "../../formula/types.js";
import { deadFactor } from "../site/dead-factor.js";
import { shakenFill, type StabilityInputs } from "./safety.js";
import { type Post, postAt, type Situation, situationsOf } from "./situations.js";

export interface Opened {
  readonly f_D: number;
  readonly post: Post;
  readonly situations: readonly Situation[];
}

export function openWall(inputs: StabilityInputs, demand: Demand, calc: Calc): Opened | { readonly because: string } {
  const shaken = shakenFill(inputs, demand);
  if (shaken !== undefined) return { because: shaken };
  const { factor: f_D, note } = deadFactor(demand);
  const post = postAt(inputs, demand, calc);
  calc.note(note);
  if (inputs.stretch !== "") calc.note(inputs.stretch);
  return { f_D, post, situations: situationsOf(inputs) };
}
