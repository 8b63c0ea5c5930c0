/**
 * Unknown is never OK: where an entry of the notebook holds something that cannot be read, whatever rests on that entry is not
 * checked. A misspelled uplift must not leave a support that holds without it.
 */
import { oncePerInputs } from "../checks/once.js";
import type { CheckResult, RuleResult } from "../findings/result.js";
import type { Problem } from "../notebook/problem.js";
import type { NotebookReading, Unit } from "../notebook/read-notebook.js";
import { absolute, type Node, type Span } from "../notebook/tree.js";
import type { Structure, Support } from "../project/model.js";

/** Paths of entries and sections with an error (`columns.C1`, `site`), each with what is wrong; `*` where it may be anything. */
export type Unreadable = ReadonlyMap<string, string>;

const everything = "*";
const nothing: Unreadable = new Map();

/** Sections no answer rests on. */
const beside = new Set(["confirm", "accept"]);

/** The entries that problems of severity error stand in. */
export function unreadableEntries(problems: readonly Problem[], reading: NotebookReading): Unreadable {
  const errors = problems.filter((problem) => problem.severity === "error");
  if (errors.length === 0) return nothing;
  const found = new Map<string, string>();
  const note = (path: string, message: string) => {
    if (!found.has(path)) found.set(path, message);
  };
  const told = new Set<Problem>();
  const units = unitsByPath(reading);
  for (const [path, unit] of units) {
    for (const own of unit.problems) {
      if (own.severity !== "error") continue;
      told.add(own);
      note(path, own.message);
    }
  }
  for (const error of errors) {
    if (told.has(error)) continue;
    const holder = units.find(([, unit]) => holds(unit, error.span));
    if (holder) note(holder[0], error.message);
    // An unknown name is an error of the entry that uses it; anything else may have hidden an entry altogether.
    else if (error.tier === "syntax" || error.tier === "shape") note(everything, error.message);
  }
  return found;
}

/** What was read as one, by its path: `columns.C1`, `site`. */
function unitsByPath({ root, units }: NotebookReading): readonly (readonly [path: string, unit: Unit])[] {
  return (root?.entries ?? []).flatMap((section) => {
    const whole = units.get(section.key);
    if (whole) return [[section.key, whole] as const];
    const inner = section.value.type === "map" ? section.value.entries : [];
    return inner.flatMap((entry) => {
      const unit = units.get(entry);
      return unit ? [[`${section.key}.${entry.key}`, unit] as const] : [];
    });
  });
}

const isNode = (part: unknown): part is { readonly span: Span } => typeof part === "object" && part !== null && "span" in part;

function holds(unit: Unit, span: Span): boolean {
  const { start, end } = absolute(span);
  const from = absolute(unit.keySpan);
  let last = from.end;
  for (const part of unit.parts) {
    const node: { readonly span: Span } | undefined = isNode(part) ? part : (part as { readonly value?: Node } | undefined)?.value;
    if (node) last = Math.max(last, absolute(node.span).end);
  }
  return from.start <= start && end <= last + 1;
}

/** What stands in the way of answers about supports, asked of one structure many times over. */
function whatIsInTheWay(structure: Structure, unreadable: Unreadable): (support: Support, entries: readonly string[]) => string | undefined {
  const all = unreadable.get(everything);
  if (all !== undefined) return () => said("the notebook", all);
  const messages = new Map([...unreadable].filter(([path]) => !beside.has(path)).map(([path, message]) => [path, said(path, message)]));
  const first = (entries: readonly string[]) => entries.find((path) => messages.has(path));
  // A roof stands on all of its columns: what cannot be read in one is in the way of the loads of the others.
  const loads = first(["roof", "site", "loads", "codes", ...structure.supports.filter((other) => !isByHand(other)).map((other) => other.path)]);
  return (support, entries) => {
    const found = first(entries) ?? (isByHand(support) ? undefined : loads);
    return found === undefined ? undefined : messages.get(found);
  };
}

const said = (path: string, message: string): string => `${path} cannot be read as it stands (${message.replace(/\.$/u, "")})`;

/** `columns.C1.section` is in `columns.C1`, `site.frost depth` in `site`. */
function entryOf(path: string): string {
  const [section, name] = path.split(".");
  return ["ground", "columns", "bases", "foundations"].includes(section) ? `${section}.${name}` : section;
}

const isByHand = ({ column, foundation }: Support): boolean => {
  const fields = column?.fields ?? foundation?.fields;
  return fields?.reactions !== undefined || fields?.combined !== undefined;
};

const parts = (support: Support): string[] => [support.column, support.base, support.foundation, support.ground].flatMap((part) => (part ? [part.path] : []));

// What an edit does not touch is the same object as before it, so that its entries are listed once.

/** Entries a result rests on: what it used, and all parts of its support, for what it did not find may be the very thing that cannot be read. */
const entriesOf = oncePerInputs((result: CheckResult) => distinct([...entriesAt(result.support), ...result.used.map((used) => entryOf(used.path))]));

const entriesAt = oncePerInputs((support: Support) => distinct([support.path, ...parts(support)].map(entryOf)));

/** Entries any of the results rests on. */
const entriesOfAll = oncePerInputs((results: readonly CheckResult[]) => distinct(results.flatMap(entriesOf)));

const entriesOfRules = oncePerInputs((support: Support) => distinct([...entriesAt(support), "site"]));

const distinct = (paths: readonly string[]): readonly string[] => [...new Set(paths)];

/** Of one result and one reason there is one answer, the same object at each edit. */
function onceForEach<R extends object>(make: (result: R, because: string) => R): (result: R, because: string) => R {
  const known = new WeakMap<R, { readonly because: string; readonly made: R }>();
  return (result, because) => {
    const before = known.get(result);
    if (before?.because === because) return before.made;
    const made = make(result, because);
    known.set(result, { because, made });
    return made;
  };
}

const unchecked = onceForEach<CheckResult>((result, because) => ({ ...result, state: "not checked", because, isEcho: true, ratio: undefined, weighed: undefined }));

const unjudged = onceForEach<RuleResult>((result, because) => ({ ...result, state: "not checked", because, isEcho: true, message: `${result.rule.title}: not checked, ${because}.` }));

/** Results that rest on what cannot be read, made into what they are: not checked. `checks` are those of one support each. */
export function withoutUnreadable(
  checks: readonly (readonly CheckResult[])[],
  rules: readonly RuleResult[],
  structure: Structure,
  unreadable: Unreadable,
): { readonly checks: readonly CheckResult[]; readonly rules: readonly RuleResult[] } {
  if (unreadable.size === 0) return { checks: checks.flat(), rules };
  const inTheWay = whatIsInTheWay(structure, unreadable);
  return {
    checks: checks.flatMap((results) => {
      if (results.length === 0 || inTheWay(results[0].support, entriesOfAll(results)) === undefined) return results;
      return results.map((result): CheckResult => {
        const because = inTheWay(result.support, entriesOf(result));
        return because === undefined ? result : unchecked(result, because);
      });
    }),
    rules: rules.map((result) => {
      const because = result.support && inTheWay(result.support, entriesOfRules(result.support));
      return because === undefined ? result : unjudged(result, because);
    }),
  };
}
