/**
 * Combinations named by their terms, and the choice of load cases for each: every case of a load type is tried in turn, and types the
 * structure has no load of drop out. A variable load may also be absent (ASCE 7-22 2.3.1, 2.4.1).
 *
 * The list is kept short without losing a governing case. Effects are linear in the loads, and what a part can carry is taken as convex,
 * so that a combination between two others does not govern: a companion alone is not tried where a combination with larger factors holds
 * the same loads, and of loads alike in place only the largest.
 */
import { plainCalc } from "../formula/calc.js";
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import { combinedForces, laidOut } from "../mechanics/combined.js";
import { combinationRows, type CombinationRow, type CombinedLevel } from "./combination-rows.js";
import type { Combination, Demand, LoadCase, LoadType, Term } from "./demand.js";
import type { Edition } from "./edition.js";
import type { Reaction } from "./way-down.js";

export type { CombinedLevel } from "./combination-rows.js";

const factoredPressure = formula({
  id: "actions.combination.uniform",
  text: "q = f * p",
  source: "arithmetic",
  symbols: {
    q: { kind: "pressure", meaning: "factored pressure on plan" },
    f: { kind: "ratio", meaning: "load factor" },
    p: { kind: "pressure", meaning: "uniform pressure on plan" },
  },
});

const factorText = (factor: number): string => (Number.isInteger(factor) ? factor.toFixed(1) : String(Number(factor.toPrecision(3))));

/** `0.9D - 1.0Ev + 1.0E`. */
export const labelOf = (terms: readonly Term[]): string =>
  terms.map(({ factor, type }, i) => `${i === 0 ? "" : factor < 0 ? " - " : " + "}${factorText(Math.abs(factor))}${type}`).join("");

/** A term with the place of its load case in the list of load cases. */
interface Acting {
  readonly term: Term;
  readonly at: number;
}

/** Cases that a dead load of this factor is taken from: the light estimate where it holds down, the heavy one where it presses. */
const fits = ({ type, factor }: Term, { estimate }: LoadCase): boolean => type !== "D" || estimate === undefined || estimate === (factor < 1 ? "light" : "heavy");

const actingOf = (term: Term, loadCases: readonly LoadCase[]): readonly Acting[] =>
  loadCases.flatMap((loadCase, at) => (loadCase.type === term.type && fits(term, loadCase) ? [{ term, at }] : []));

/** The pressure a term puts on all of the roof alike, if it does. */
const uniformOf = ({ term, at }: Acting, loadCases: readonly LoadCase[]): number | undefined => {
  const { uniform } = loadCases[at];
  return uniform === undefined ? undefined : plainCalc(factoredPressure, { f: term.factor, p: uniform });
};

/** The choices of a group: every case of each of its terms, but of uniform ones the largest alone. */
function choicesOf(group: readonly Term[], loadCases: readonly LoadCase[]): readonly Acting[] {
  const all = group.flatMap((term) => actingOf(term, loadCases));
  let largest: Acting | undefined;
  let most = 0;
  for (const one of all) {
    const pressure = uniformOf(one, loadCases);
    if (pressure !== undefined && pressure > most) [largest, most] = [one, pressure];
  }
  return all.filter((one) => one === largest || uniformOf(one, loadCases) === undefined);
}

/** Every list of terms and cases a row stands for. */
function listsOf(row: CombinationRow, loadCases: readonly LoadCase[]): readonly (readonly Acting[])[] {
  let lists: readonly (readonly Acting[])[] = [[]];
  const add = (choices: readonly Acting[], mayBeNone: boolean): void => {
    lists = lists.flatMap((list) => [...(mayBeNone ? [list] : []), ...choices.map((one) => [...list, one])]);
  };
  // The terms stand in the order they are named in, dead load first.
  const [dead, ...others] = row.all;
  add(actingOf(dead, loadCases), false);
  for (const term of row.with ?? []) {
    const acting = actingOf(term, loadCases);
    add(acting, acting.length === 0);
  }
  for (const term of others) add(actingOf(term, loadCases), false);
  if (row.lead) add(choicesOf(row.lead, loadCases), false);
  const least = lists[0]?.length ?? 0;
  for (const group of row.any ?? []) add(choicesOf(group, loadCases), true);
  return row.some ? lists.filter((list) => list.length > least) : lists;
}

/** A combination with one load case chosen for each of its terms. */
export interface Chosen<L extends CombinedLevel> {
  readonly combination: Combination<L>;
  readonly label: string;
  readonly cases: readonly LoadCase[];
  /** Place of each term's case in the list of load cases. */
  readonly indices: readonly number[];
  /** Factor of each term, and whether it is dead load or its vertical part in an earthquake. */
  readonly parts: readonly { readonly factor: number; readonly isPermanent: boolean }[];
}

/** Enumerates the load cases of every combination. The same list serves every column. */
export function chosenCases<L extends CombinedLevel>(
  standard: Edition,
  level: L,
  loadCases: readonly LoadCase[],
  useAlternative = false,
): readonly Chosen<L>[] {
  const combinations = new Map<string, Combination<L>>();
  const found = new Map<string, Chosen<L>>();
  for (const row of combinationRows(standard, level, useAlternative)) {
    for (const list of listsOf(row, loadCases)) {
      const terms = list.map(({ term }) => term);
      const name = labelOf(terms);
      let combination = combinations.get(name);
      if (!combination) combinations.set(name, (combination = { level, label: name, terms, clause: row.clause }));
      const parts = terms.map(({ factor, type }) => ({ factor, isPermanent: type === "D" || type === "Ev" }));
      const cases = list.map(({ at }) => loadCases[at]);
      // The one dead load is in every combination, and its vertical part of an earthquake goes with it; naming them again would tell nothing.
      const named = cases.filter(({ type, estimate }) => (type !== "D" || estimate !== undefined) && type !== "Ev").map(({ title }) => title);
      const label = [name, named.join("; ")].filter(Boolean).join(": ");
      if (!found.has(label)) found.set(label, { combination, label, cases, indices: list.map(({ at }) => at), parts });
    }
  }
  return [...found.values()];
}

/** The combinations of a level for a structure with loads of these types, each once, named by its terms. */
export function combinationsFor<L extends CombinedLevel>(standard: Edition, level: L, present: ReadonlySet<LoadType>, useAlternative = false): readonly Combination<L>[] {
  const one = [...present].map((type): LoadCase => ({ id: type, type, title: type }));
  return [...new Set(chosenCases(standard, level, one, useAlternative).map(({ combination }) => combination))];
}

/** The combined forces of one column, whose reactions stand in the order of the load cases. */
export function combine<L extends CombinedLevel>(chosen: readonly Chosen<L>[], reactions: readonly Reaction[], calc: Calc): readonly Demand<L>[] {
  const row = laidOut(reactions);
  return chosen.map(({ combination, label, cases, indices, parts }) => {
    const { top, base, dead, sway } = calc.routine(combinedForces, { row, at: indices, terms: parts });
    const demand = { level: combination.level, label, combination, cases, top, base, dead, sway };
    const shaken = combination.terms.findIndex(({ type }) => type === "E");
    if (shaken < 0) return demand;
    return { ...demand, earthquake: calc.routine(combinedForces, { row, at: [indices[shaken]], terms: [parts[shaken]] }).base };
  });
}
