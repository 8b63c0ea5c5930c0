/**
 * The factor on the foundation's own weight. The combination has factored the column's dead load already; the weight below the
 * column is not among the reactions and takes the same factor, once.
 */
import type { Demand } from "../../actions/demand.js";

export interface DeadFactor {
  readonly factor: number;
  readonly note: string;
}

/** ASCE 7-22 2.4.1, combination 7, and 2.3.1, combination 5: the part of the dead load that may be counted against uplift. */
const againstUplift = { allowable: 0.6, strength: 0.9, service: 0.6 } as const;

/**
 * Factor of the dead load in the combination. A reaction given already combined has no terms: then its weight counts with the
 * code's factor against uplift where the column pulls, and in full where it presses.
 */
export function deadFactor(demand: Demand): DeadFactor {
  const term = demand.combination.terms.find(({ type }) => type === "D");
  if (term) return { factor: term.factor, note: `The foundation's own weight takes the factor ${term.factor} of dead load in ${demand.combination.label}.` };
  const factor = demand.base.P < 0 ? againstUplift[demand.level] : 1;
  return { factor, note: `The reaction is given already combined; the foundation's own weight is taken with the factor ${factor}${factor < 1 ? " of dead load against uplift (ASCE 7-22 2.3.1 and 2.4.1)" : ""}.` };
}
