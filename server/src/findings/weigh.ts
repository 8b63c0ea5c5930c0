/** Runs one check over every column of a support and every combination, and keeps the worst. */
import type { ColumnActions, Demand, Level, NoActions } from "../actions/demand.js";
import { demandsTogether } from "../actions/together.js";
import { levelsTried, sameInAll, sharesPad, type CheckDecl, type Gather, type Outcome, type Weighed } from "../checks/contract.js";
import { editionBlock } from "../checks/editions.js";
import { plainCalc } from "../formula/calc.js";
import { isAbove } from "../mechanics/compare.js";
import type { Sourced, Support } from "../project/model.js";
import type { CheckResult, State, Used } from "./result.js";
import { sameData } from "./same-data.js";

/** What was computed for one support and check, kept for the next text. */
export interface Weighing {
  readonly result: CheckResult;
  readonly gathered: readonly Gathered[];
  readonly demands: readonly (readonly Demand[])[];
  readonly support: Support;
  readonly reaching: readonly ColumnActions[] | NoActions;
}

/** Counts the evaluations, for the test that an edit costs what it touches. */
export interface Tally {
  evaluations: number;
  checksRun: number;
}

interface Gathered {
  readonly inputs: object;
  readonly used: Used[];
  readonly missing: string[];
  readonly blocks: string[];
}

function gatherInputs(check: CheckDecl, support: Support, place: number): Gathered {
  const used: Used[] = [];
  const missing: string[] = [];
  const blocks: string[] = [];
  const note = <T>(value: Sourced<T> | undefined, what: string) => {
    if (value) used.push({ path: value.path, what, span: value.span, assumed: value.assumed });
  };
  const gather: Gather = {
    need(value, what) {
      note(value, what);
      if (value && Number.isFinite(value.value)) return value.value;
      missing.push(what);
      return Number.NaN;
    },
    needs(value, what) {
      note(value, what);
      if (value === undefined || value.value === undefined) missing.push(what);
      return value?.value;
    },
    may(value) {
      note(value, "");
      return value?.value;
    },
    block(because) {
      blocks.push(because);
    },
  };
  const inputs = check.inputs(support, gather, place);
  if (typeof check.level === "object") gather.may(support.codes.method);
  const edition = editionBlock(check, support.codes);
  if (edition !== undefined) {
    note(support.codes.concrete, "edition of the concrete standard");
    blocks.push(edition);
  }
  return { inputs, used, missing: [...new Set(missing)], blocks: [...new Set(blocks)] };
}

/**
 * What is read of each column of a support. Columns that read the same, and a text in which nothing read has changed, share one object,
 * so that what rests on the inputs alone is found once.
 */
function gatherAll(check: CheckDecl, support: Support, places: number, earlier: readonly Gathered[]): readonly Gathered[] {
  const different: object[] = [];
  return Array.from({ length: places }, (_, place) => {
    const fresh = gatherInputs(check, support, place);
    const known = different.find((inputs) => sameData(inputs, fresh.inputs));
    if (known) return { ...fresh, inputs: known };
    const before = earlier.find(({ inputs }) => sameData(inputs, fresh.inputs));
    const inputs = before?.inputs ?? fresh.inputs;
    different.push(inputs);
    return { ...fresh, inputs };
  });
}

const isNone = (actions: readonly ColumnActions[] | NoActions): actions is NoActions => "unknown" in actions;

function demandsOf(actions: ColumnActions | undefined, check: CheckDecl, support: Support): readonly Demand[] {
  if (!actions) return [];
  const own = ownDemands(actions, check, support);
  // A check that looks at no force is answered whatever the level of the forces given.
  return own.length > 0 || check.measures !== sameInAll ? own : ([actions.strength, actions.allowable, actions.service].find((list) => list.length > 0) ?? []);
}

function ownDemands(actions: ColumnActions, check: CheckDecl, support: Support): readonly Demand[] {
  const { level, demands } = check;
  if (demands === "column top") {
    const levels = levelsTried(check, support);
    return levels.length > 1 ? actions.atTopSteel : levels[0] === "allowable" ? actions.atTopAllowable : actions.atTop;
  }
  // Where two levels are taken, the method of the notebook has chosen among them.
  if (typeof level === "object") return actions.steel;
  return level === "strength" ? actions.strength : level === "allowable" ? actions.allowable : level === "service" ? actions.service : [];
}

/** A level the check is to be tried at, of which no demand is there. */
function levelWithout(check: CheckDecl, support: Support, demands: readonly (readonly Demand[])[]): Level | undefined {
  const levels = levelsTried(check, support);
  if (levels.length === 1 || check.measures === sameInAll) return demands.every((list) => list.length === 0) ? levels[0] : undefined;
  return levels.find((one) => !demands.some((list) => list.some(({ level }) => level === one)));
}

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

/**
 * Runs the check, or gives back the earlier result where its inputs and demands are the same. Never throws: a check that does
 * becomes one result that says so.
 */
export function weighCheck(
  check: CheckDecl,
  support: Support,
  actions: readonly ColumnActions[] | NoActions,
  nearFrom: number,
  tally: Tally,
  earlier?: Weighing,
): Weighing {
  // The same support under the same loads: nothing the check could read has changed, so nothing is read.
  if (earlier && earlier.support === support && earlier.reaching === actions) {
    const result = withNear(earlier.result, nearFrom);
    return result === earlier.result ? earlier : { ...earlier, result };
  }
  const fallback = check.fixedBy(support)?.span ?? support.span;
  const none = isNone(actions);
  const each = support.places.map((_, i) => (none ? [] : demandsOf(actions[i], check, support)));
  // Columns on one pad press on the ground together.
  const isOne = check.wholePad === true && sharesPad(support);
  const demands = isOne ? [demandsTogether(each, support.places)] : each;
  let gathered: readonly Gathered[] = [];
  const done = (state: State, more: Partial<CheckResult> = {}): Weighing => ({
    result: { check, support, state, place: 0, inputs: gathered[0]?.inputs ?? {}, used: gathered[0]?.used ?? [], at: fallback, ...more },
    gathered,
    demands,
    support,
    reaching: actions,
  });
  try {
    gathered = gatherAll(check, support, demands.length, earlier?.gathered ?? []);
    const fresh = done("holds");
    if (earlier && sameWork(earlier, fresh) && !none) {
      // Same numbers, perhaps written elsewhere: the answer stays, its places are renewed.
      const kept = earlier.result.support === support ? earlier.result : { ...earlier.result, support, used: gathered[earlier.result.place].used, at: fallback };
      return { ...fresh, result: withNear(kept, nearFrom) };
    }
    const missing = [...new Set(gathered.flatMap((g) => g.missing))];
    if (missing.length > 0) return done("not checked", { because: `needs the ${listed(missing)}`, ...largestTried(check, gathered, demands, tally) });
    const blocks = [...new Set(gathered.flatMap((g) => g.blocks))];
    if (blocks.length > 0) return done("not checked", { because: blocks.join("; ") });
    if (none) return done("not checked", { because: actions.unknown });
    const without = levelWithout(check, support, demands);
    if (without !== undefined) return done("not checked", { because: `no ${without}-level reactions are given` });
    tally.checksRun += 1;
    return done("holds", worstOf(check, gathered, demands, nearFrom, tally));
  } catch (error) {
    return done("not checked", { because: `the check itself failed (${error instanceof Error ? error.message : String(error)}); please report it` });
  }
}

function sameWork(a: Weighing, b: Weighing): boolean {
  return (
    a.gathered.length === b.gathered.length &&
    a.gathered.every((one, i) => one.inputs === b.gathered[i].inputs && sameData(one.missing, b.gathered[i].missing) && sameData(one.blocks, b.gathered[i].blocks)) &&
    a.demands.length === b.demands.length &&
    a.demands.every((list, i) => list === b.demands[i])
  );
}

const stateFor = (weighed: Weighed, nearFrom: number): State => {
  if (weighed.demand <= 0) return "holds";
  // A limit that is met to the last digit is met, whatever unit it was written in.
  if (weighed.isLimit) return weighed.capacity <= 0 || isAbove(weighed.demand, weighed.capacity) ? "over" : "holds";
  if (weighed.capacity <= 0 || weighed.demand > weighed.capacity) return "over";
  return weighed.demand >= nearFrom * weighed.capacity ? "near" : "holds";
};

const withNear = (result: CheckResult, nearFrom: number): CheckResult => {
  if (!result.weighed || result.state === "not checked") return result;
  const state = stateFor(result.weighed, nearFrom);
  return state === result.state ? result : { ...result, state };
};

/** A demand below this part of the strength is what rounding left of a sum that is nothing. */
const rounding = 1e-10;

const ratioOf = (weighed: Weighed): number =>
  weighed.demand <= 0 ? 0 : weighed.capacity > 0 ? weighed.demand / weighed.capacity : Number.POSITIVE_INFINITY;

/** A combination at one of the columns. */
interface Candidate {
  readonly demand: Demand;
  readonly place: number;
}

/** Of a check that says what makes its demand grow: the combinations of which none other is as large in everything. */
function largest({ measures }: CheckDecl, inputs: object, candidates: readonly Candidate[]): readonly Candidate[] {
  if (!measures || candidates.length < 2) return candidates;
  const isBelow = (a: readonly number[], b: readonly number[]): boolean => a.every((size, i) => size <= b[i]);
  const front: { readonly candidate: Candidate; readonly sizes: readonly number[] }[] = [];
  for (const candidate of candidates) {
    if (candidate.demand.beyond !== undefined) continue;
    const sizes = measures(inputs, candidate.demand, plainCalc);
    if (front.some((other) => isBelow(sizes, other.sizes))) continue;
    for (let i = front.length - 1; i >= 0; i -= 1) if (isBelow(front[i].sizes, sizes)) front.splice(i, 1);
    front.push({ candidate, sizes });
  }
  // One that is outside a range says so, however small it is.
  return [...candidates.filter(({ demand }) => demand.beyond !== undefined), ...front.map(({ candidate }) => candidate)];
}

/** The combinations to try, column by column; of columns that read the same, the largest among all of them. */
function tried(check: CheckDecl, gathered: readonly Gathered[], demands: readonly (readonly Demand[])[]): readonly Candidate[] {
  const alike = new Map<object, Candidate[]>();
  for (const [place, { inputs }] of gathered.entries()) {
    const candidates = alike.get(inputs) ?? [];
    for (const demand of demands[place]) candidates.push({ demand, place });
    alike.set(inputs, candidates);
  }
  return [...alike].flatMap(([inputs, candidates]) => largest(check, inputs, candidates));
}

/** The largest demand on a check whose strength is missing, where the check says what it does. */
function largestTried(check: CheckDecl, gathered: readonly Gathered[], demands: readonly (readonly Demand[])[], tally: Tally): Partial<CheckResult> {
  if (check.triedBy === undefined) return {};
  let found: Partial<CheckResult> = {};
  for (let place = 0; place < demands.length; place += 1) {
    for (const demand of demands[place]) {
      if (demand.beyond !== undefined) return {};
      tally.evaluations += 1;
      const outcome: Outcome = check.evaluate(gathered[place].inputs, demand, plainCalc);
      if (outcome.type === "weighed" && Number.isFinite(outcome.demand) && outcome.demand > (found.tried?.demand ?? 0)) found = { tried: outcome, governing: demand, place };
    }
  }
  return found;
}

function worstOf(check: CheckDecl, gathered: readonly Gathered[], demands: readonly (readonly Demand[])[], nearFrom: number, tally: Tally): Partial<CheckResult> {
  let worst: { ratio: number; weighed: Weighed; demand: Demand; place: number } | undefined;
  let stopped: { because: string; demand: Demand; place: number } | undefined;
  for (const { demand, place } of tried(check, gathered, demands)) {
    if (demand.beyond !== undefined) {
      stopped ??= { because: demand.beyond, demand, place };
      continue;
    }
    tally.evaluations += 1;
    const outcome: Outcome = check.evaluate(gathered[place].inputs, demand, plainCalc);
    if (outcome.type === "unchecked") {
      stopped ??= { because: outcome.because, demand, place };
      continue;
    }
    if (!Number.isFinite(outcome.demand) || !Number.isFinite(outcome.capacity)) {
      stopped ??= { because: `the numbers leave the range of the method in ${demand.label}`, demand, place };
      continue;
    }
    const ratio = ratioOf(outcome);
    if (!worst || ratio > worst.ratio) worst = ratio > 0 && ratio < rounding ? { ratio: 0, weighed: { ...outcome, demand: 0 }, demand, place } : { ratio, weighed: outcome, demand, place };
  }
  const over = worst !== undefined && worst.ratio > 1;
  // Something over is said even where another combination could not be weighed; otherwise one unknown leaves the whole unknown.
  if (stopped && !over) {
    return { state: "not checked", because: stopped.because, governing: stopped.demand, place: stopped.place, inputs: gathered[stopped.place].inputs, used: gathered[stopped.place].used };
  }
  if (!worst) return { state: "not checked", because: "no combination reaches this check" };
  return {
    state: stateFor(worst.weighed, nearFrom),
    weighed: worst.weighed,
    ratio: Number.isFinite(worst.ratio) ? worst.ratio : undefined,
    governing: worst.demand,
    place: worst.place,
    inputs: gathered[worst.place].inputs,
    used: gathered[worst.place].used,
  };
}
