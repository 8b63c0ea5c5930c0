/**
 * Load combinations as data, and the choice of load cases for each. A combination names a load type, and every case of that type is
 * tried in turn; types the structure has no load of drop out. One or more variable loads may also be absent (ASCE 7-22 2.3.1, 2.4.1).
 */
import type { Calc } from "../formula/types.js";
import { superposition } from "../mechanics/superposition.js";
import type { Combination, Demand, Level, LoadCase, LoadType, Term } from "./demand.js";
import type { Reaction } from "./way-down.js";
import type { LoadStandard } from "./wind/velocity-pressure.js";

/** Levels that are combined; service-level wind has no combination of the standard. */
export type CombinedLevel = Exclude<Level, "service">;

interface CombinationRow {
  readonly clause: string;
  /** Terms without which it is not this combination. */
  readonly all: readonly Term[];
  /** Of each group one term, or none. */
  readonly any?: readonly (readonly Term[])[];
}

const term = (factor: number, type: LoadType): Term => ({ factor, type });

const asce722Strength: readonly CombinationRow[] = [
  { clause: "ASCE 7-22 2.3.1, combination 1a", all: [term(1.4, "D")] },
  { clause: "ASCE 7-22 2.3.1, combination 2a", all: [term(1.2, "D"), term(1.6, "L")], any: [[term(0.5, "Lr"), term(0.3, "S"), term(0.5, "R")]] },
  {
    clause: "ASCE 7-22 2.3.1, combination 3a",
    all: [term(1.2, "D")],
    any: [[term(1.6, "Lr"), term(1, "S"), term(1.6, "R")], [term(1, "L"), term(0.5, "W")]],
  },
  {
    clause: "ASCE 7-22 2.3.1, combination 4a",
    all: [term(1.2, "D"), term(1, "W")],
    any: [[term(1, "L")], [term(0.5, "Lr"), term(0.3, "S"), term(0.5, "R")]],
  },
  { clause: "ASCE 7-22 2.3.1, combination 5a", all: [term(0.9, "D"), term(1, "W")] },
  { clause: "ASCE 7-22 2.3.6, combination 6 (from memory)", all: [term(1.2, "D"), term(1, "E")], any: [[term(1, "L")], [term(0.15, "S")]] },
  { clause: "ASCE 7-22 2.3.6, combination 7 (from memory)", all: [term(0.9, "D"), term(1, "E")] },
];

/** 0.45 is 0.75 of 0.6 W, 0.525 is 0.75 of 0.7 S or of 0.7 E. */
const asce722Allowable: readonly CombinationRow[] = [
  { clause: "ASCE 7-22 2.4.1, combination 1a", all: [term(1, "D")] },
  { clause: "ASCE 7-22 2.4.1, combination 2a", all: [term(1, "D"), term(1, "L")] },
  { clause: "ASCE 7-22 2.4.1, combination 3a", all: [term(1, "D")], any: [[term(1, "Lr"), term(0.7, "S"), term(1, "R")]] },
  {
    clause: "ASCE 7-22 2.4.1, combination 4a",
    all: [term(1, "D"), term(0.75, "L")],
    any: [[term(0.75, "Lr"), term(0.525, "S"), term(0.75, "R")]],
  },
  { clause: "ASCE 7-22 2.4.1, combination 5a", all: [term(1, "D"), term(0.6, "W")] },
  {
    clause: "ASCE 7-22 2.4.1, combination 6a",
    all: [term(1, "D"), term(0.45, "W")],
    any: [[term(0.75, "L")], [term(0.75, "Lr"), term(0.525, "S"), term(0.75, "R")]],
  },
  { clause: "ASCE 7-22 2.4.1, combination 7a", all: [term(0.6, "D"), term(0.6, "W")] },
  { clause: "ASCE 7-22 2.4.5, combination 8 (from memory)", all: [term(1, "D"), term(0.7, "E")] },
  { clause: "ASCE 7-22 2.4.5, combination 9 (from memory)", all: [term(1, "D"), term(0.525, "E")], any: [[term(0.75, "L")], [term(0.1, "S")]] },
  { clause: "ASCE 7-22 2.4.5, combination 10 (from memory)", all: [term(0.6, "D"), term(0.7, "E")] },
];

const rows: Readonly<Record<LoadStandard, Readonly<Record<CombinedLevel, readonly CombinationRow[]>>>> = {
  "ASCE 7-22": { strength: asce722Strength, allowable: asce722Allowable },
};

const factorText = (factor: number): string => (Number.isInteger(factor) ? factor.toFixed(1) : String(factor));

export const labelOf = (terms: readonly Term[]): string => terms.map(({ factor, type }) => `${factorText(factor)}${type}`).join(" + ");

/** Every way to take one present term of each group, or none. */
function choices(groups: readonly (readonly Term[])[], present: ReadonlySet<LoadType>): readonly (readonly Term[])[] {
  return groups.reduce<readonly (readonly Term[])[]>(
    (so, group) => {
      const possible = group.filter(({ type }) => present.has(type));
      return so.flatMap((terms) => [terms, ...possible.map((one) => [...terms, one])]);
    },
    [[]],
  );
}

/** The combinations of a level for a structure with loads of these types, each once, named by its terms. */
export function combinationsFor<L extends CombinedLevel>(standard: LoadStandard, level: L, present: ReadonlySet<LoadType>): readonly Combination<L>[] {
  const found = new Map<string, Combination<L>>();
  for (const row of rows[standard][level]) {
    if (!row.all.every(({ type }) => present.has(type))) continue;
    for (const more of choices(row.any ?? [], present)) {
      const terms = [...row.all, ...more];
      const label = labelOf(terms);
      if (!found.has(label)) found.set(label, { level, label, terms, clause: row.clause });
    }
  }
  return [...found.values()];
}

/** A combination with one load case chosen for each of its terms. */
export interface Chosen<L extends CombinedLevel> {
  readonly combination: Combination<L>;
  readonly label: string;
  readonly cases: readonly LoadCase[];
  /** Place of each term's case in the list of load cases. */
  readonly indices: readonly number[];
}

/** Enumerates the load cases of every combination. The same list serves every column. */
export function chosenCases<L extends CombinedLevel>(standard: LoadStandard, level: L, loadCases: readonly LoadCase[]): readonly Chosen<L>[] {
  const present = new Set(loadCases.map(({ type }) => type));
  return combinationsFor(standard, level, present).flatMap((combination) => {
    const picks = combination.terms.reduce<readonly (readonly number[])[]>((so, { type }) => {
      const of = [...loadCases.keys()].filter((i) => loadCases[i].type === type);
      return so.flatMap((indices) => of.map((i) => [...indices, i]));
    }, [[]]);
    return picks.map((indices): Chosen<L> => {
      const cases = indices.map((i) => loadCases[i]);
      // The dead load is in every combination; naming it again would tell nothing.
      const named = cases.filter(({ type }) => type !== "D").map(({ title }) => title);
      const label = [combination.label, named.join("; ")].filter(Boolean).join(": ");
      return { combination, label, cases, indices };
    });
  });
}

/** The combined forces of one column, whose reactions stand in the order of the load cases. */
export function combine<L extends CombinedLevel>(chosen: readonly Chosen<L>[], reactions: readonly Reaction[], calc: Calc): readonly Demand<L>[] {
  return chosen.map(({ combination, label, cases, indices }) => {
    const { terms } = combination;
    const sum = (end: "top" | "base") => calc.routine(superposition, indices.map((at, i) => ({ factor: terms[i].factor, forces: reactions[at][end] })));
    return { level: combination.level, label, combination, cases, top: sum("top"), base: sum("base") };
  });
}
