/** The worst answer of a set of results, and where results belong in the notebook. */
import { idOf, isRule, stateOrder, titleOf, type AnyResult, type State } from "../findings/result.js";
import type { Support } from "../project/model.js";
import type { CheckedDocument } from "./check-text.js";

export interface Worst {
  readonly state: State;
  readonly ratio?: number;
  readonly check?: string;
  readonly title?: string;
  readonly result?: AnyResult;
}

/** A check that is over without a ratio has no capacity at all; a rule has no ratio to weigh, so it comes after those that have. */
const ratioOf = (result: AnyResult): number => (isRule(result) ? -1 : (result.ratio ?? (result.state === "over" ? Number.POSITIVE_INFINITY : -1)));

/** Over before not checked before near before holds; among equals the larger ratio. */
const byWeight = (a: AnyResult, b: AnyResult): number => stateOrder.indexOf(a.state) - stateOrder.indexOf(b.state) || compare(ratioOf(b), ratioOf(a));

const compare = (a: number, b: number): number => (a === b ? 0 : a < b ? -1 : 1);

export const worstFirst = (results: readonly AnyResult[]): readonly AnyResult[] => [...results].sort(byWeight);

export function worstOf(results: readonly AnyResult[]): Worst {
  const worst = results.reduce<AnyResult | undefined>((found, result) => (found && byWeight(found, result) <= 0 ? found : result), undefined);
  if (!worst) return { state: "not covered" };
  return { state: worst.state, ratio: isRule(worst) ? undefined : worst.ratio, check: idOf(worst), title: titleOf(worst), result: worst };
}

export const resultsOf = (document: CheckedDocument, support: Support): readonly AnyResult[] => [
  ...document.checks.filter((result) => result.support === support),
  ...document.rules.filter((result) => result.support === support),
];

/** Results about one entry of the notebook: a column line has all of its support's, a base or a foundation its own links'. */
export function resultsAt(document: CheckedDocument, path: string): readonly AnyResult[] {
  const section = path.split(".")[0];
  return document.structure.supports.flatMap((support) => {
    if (support.path === path) return resultsOf(document, support);
    if (section === "bases" && support.base?.path === path) return resultsOf(document, support).filter((result) => !isRule(result) && ["base", "anchors"].includes(result.check.link));
    if (section === "foundations" && support.foundation?.path === path) {
      return resultsOf(document, support).filter((result) => isRule(result) || ["pier", "rock", "wall", "footing"].includes(result.check.link));
    }
    return [];
  });
}

export function countStates(document: CheckedDocument): Record<State, number> {
  const counts = Object.fromEntries(stateOrder.map((state) => [state, 0])) as Record<State, number>;
  for (const result of [...document.checks, ...document.rules]) counts[result.state] += 1;
  for (const lines of document.notCovered.values()) counts["not covered"] += lines.length;
  return counts;
}
