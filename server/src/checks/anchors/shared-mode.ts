/**
 * A mode of the rods that others weigh again: tension and shear together, and rods that stretch. What it reads of a support and what it finds
 * for a combination are found once and shared, so that the second reader costs little.
 */
import type { Demand } from "../../actions/demand.js";
import { plainCalc } from "../../formula/calc.js";
import type { Support } from "../../project/model.js";
import type { CheckDecl, Gather, Outcome } from "../contract.js";

/** What was asked of the gatherer, to be told to the next one as well. */
type Told = (gather: Gather) => void;

/** A gatherer that passes everything on and keeps it. */
function keeping(gather: Gather, told: Told[]): Gather {
  return {
    need: (value, what) => {
      told.push((next) => void next.need(value, what));
      return gather.need(value, what);
    },
    needs: (value, what) => {
      told.push((next) => void next.needs(value, what));
      return gather.needs(value, what);
    },
    may: (value) => {
      told.push((next) => void next.may(value));
      return gather.may(value);
    },
    block: (because) => {
      told.push((next) => next.block(because));
      gather.block(because);
    },
  };
}

interface Read<I> {
  readonly inputs: I;
  readonly told: readonly Told[];
}

/** The same check, with its inputs kept for each support and its outcomes for each combination. */
export function sharedMode<I extends object>(mode: CheckDecl<I, "strength">): CheckDecl<I, "strength"> {
  const read = new WeakMap<Support, Map<number, Read<I>>>();
  const found = new WeakMap<I, WeakMap<Demand, Outcome>>();
  return {
    ...mode,
    inputs: (support, gather, place) => {
      let places = read.get(support);
      if (!places) read.set(support, (places = new Map()));
      const known = places.get(place);
      if (known) {
        for (const tell of known.told) tell(gather);
        return known.inputs;
      }
      const told: Told[] = [];
      const inputs = mode.inputs(support, keeping(gather, told), place);
      places.set(place, { inputs, told });
      return inputs;
    },
    evaluate: (inputs, demand, calc) => {
      if (calc !== plainCalc) return mode.evaluate(inputs, demand, calc);
      let outcomes = found.get(inputs);
      if (!outcomes) found.set(inputs, (outcomes = new WeakMap()));
      let outcome = outcomes.get(demand);
      if (!outcome) outcomes.set(demand, (outcome = mode.evaluate(inputs, demand, calc)));
      return outcome;
    },
  };
}
