/** What depends on the inputs alone is found once for all combinations. */
import { plainCalc } from "../formula/calc.js";
import type { Calc } from "../formula/types.js";

/** `find` with its answer kept for each inputs object; inputs are never changed once they are read. */
export function oncePerInputs<I extends object, T>(find: (inputs: I) => T): (inputs: I) => T {
  const known = new WeakMap<I, { readonly found: T }>();
  return (inputs) => {
    let kept = known.get(inputs);
    if (!kept) known.set(inputs, (kept = { found: find(inputs) }));
    return kept.found;
  };
}

/** The same for a calculation with steps: they run again where a reader asks for them. */
export function calculatedOnce<I extends object, T>(find: (inputs: I, calc: Calc) => T): (inputs: I, calc: Calc) => T {
  const plain = oncePerInputs((inputs: I) => find(inputs, plainCalc));
  return (inputs, calc) => (calc === plainCalc ? plain(inputs) : find(inputs, calc));
}
