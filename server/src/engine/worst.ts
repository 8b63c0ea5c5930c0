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

/**
 * A check that is over without a ratio has no capacity at all; a rule has no ratio to weigh, so it comes after those that have. Before the rules, and
 * after every strength, come the limits of a detail that is kept: two curtains of bars where two are asked for are all that is wanted.
 */
function ratioOf(result: AnyResult): number {
  if (isRule(result)) return -1;
  if (result.ratio === undefined) return result.state === "over" ? Number.POSITIVE_INFINITY : -1;
  return result.state === "holds" && result.weighed?.isLimit ? result.ratio - 1 : result.ratio;
}

const rank = Object.fromEntries(stateOrder.map((state, i) => [state, i])) as Record<State, number>;

/** Over before not checked before near before holds; among equals the larger ratio. */
const byWeight = (a: AnyResult, b: AnyResult): number => rank[a.state] - rank[b.state] || compare(ratioOf(b), ratioOf(a));

const compare = (a: number, b: number): number => (a === b ? 0 : a < b ? -1 : 1);

export const worstFirst = (results: readonly AnyResult[]): readonly AnyResult[] => [...results].sort(byWeight);

export function worstOf(results: readonly AnyResult[]): Worst {
  const worst = results.reduce<AnyResult | undefined>((found, result) => (found && byWeight(found, result) <= 0 ? found : result), undefined);
  if (!worst) return { state: "not covered" };
  return { state: worst.state, ratio: isRule(worst) ? undefined : worst.ratio, check: idOf(worst), title: titleOf(worst), result: worst };
}

interface Index {
  readonly results: ReadonlyMap<Support, readonly AnyResult[]>;
  /** Supports by the path of each entry they stand on, themselves included. */
  readonly supports: ReadonlyMap<string, readonly Support[]>;
}

const indexes = new WeakMap<CheckedDocument, Index>();

/** Made once for each document: a long notebook asks for the results of every entry in turn. */
function indexOf(document: CheckedDocument): Index {
  const known = indexes.get(document);
  if (known) return known;
  const results = new Map<Support, AnyResult[]>();
  const supports = new Map<string, Support[]>();
  for (const support of document.structure.supports) {
    results.set(support, []);
    for (const path of new Set([support.path, support.base?.path, support.foundation?.path])) {
      if (path === undefined) continue;
      const standing = supports.get(path);
      if (standing) standing.push(support);
      else supports.set(path, [support]);
    }
  }
  for (const result of [...document.checks, ...document.rules]) if (result.support) results.get(result.support)?.push(result);
  const index = { results, supports };
  indexes.set(document, index);
  return index;
}

export const resultsOf = (document: CheckedDocument, support: Support): readonly AnyResult[] => indexOf(document).results.get(support) ?? [];

const linkOf = (result: AnyResult): string => (isRule(result) ? result.rule.link : result.check.link);

/** Results about one entry of the notebook: a column line has all of its support's, a base or a foundation its own links'. */
export function resultsAt(document: CheckedDocument, path: string): readonly AnyResult[] {
  const section = path.split(".")[0];
  return (indexOf(document).supports.get(path) ?? []).flatMap((support) => {
    const results = resultsOf(document, support);
    if (support.path === path) return results;
    if (section === "bases") return results.filter((result) => ["base", "anchors"].includes(linkOf(result)));
    if (section === "foundations") return results.filter((result) => ["site", "pier", "rock", "wall", "footing"].includes(linkOf(result)));
    return [];
  });
}

export function countStates(document: CheckedDocument): Record<State, number> {
  const counts = Object.fromEntries(stateOrder.map((state) => [state, 0])) as Record<State, number>;
  for (const results of [document.checks, document.rules]) for (const result of results) counts[result.state] += 1;
  for (const lines of document.notCovered.values()) counts["not covered"] += lines.length;
  return counts;
}
