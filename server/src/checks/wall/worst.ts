/** The worst of several situations: found by plain numbers, then shown alone with its steps. */
import { plainCalc } from "../../formula/calc.js";
import type { Calc } from "../../formula/types.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";

export type Tried = (calc: Calc) => Pair;

/** Demand and capacity of the worst; only its steps are recorded. */
export function worstOf(tried: readonly Tried[], calc: Calc): Pair {
  let worst = tried[0];
  let found = worst(plainCalc);
  for (const one of tried.slice(1)) {
    const next = one(plainCalc);
    if (worseOf(found, next) === next) {
      worst = one;
      found = next;
    }
  }
  return calc === plainCalc ? found : worst(calc);
}
