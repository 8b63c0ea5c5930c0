/**
 * Unknown is never OK: where an entry of the notebook holds something that cannot be read, whatever rests on that entry is not
 * checked. A misspelled uplift must not leave a support that holds without it.
 */
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

/** What stands in the way of answers about a support; undefined where nothing does. */
function inTheWay(support: Support, structure: Structure, paths: readonly string[], unreadable: Unreadable): string | undefined {
  const all = unreadable.get(everything);
  if (all !== undefined) return said("the notebook", all);
  const loads = isByHand(support) ? [] : ["roof", "site", "loads", "codes", ...structure.supports.filter((other) => !isByHand(other)).map((other) => other.path)];
  for (const path of [support.path, ...paths.map(entryOf), ...loads]) {
    const message = unreadable.get(path);
    if (message !== undefined && !beside.has(path)) return said(path, message);
  }
  return undefined;
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

/** Results that rest on what cannot be read, made into what they are: not checked. */
export function withoutUnreadable(
  checks: readonly CheckResult[],
  rules: readonly RuleResult[],
  structure: Structure,
  unreadable: Unreadable,
): { readonly checks: readonly CheckResult[]; readonly rules: readonly RuleResult[] } {
  if (unreadable.size === 0) return { checks, rules };
  return {
    checks: checks.map((result) => {
      // What a check did not find may be the very thing that cannot be read, so all parts of the support count.
      const because = inTheWay(result.support, structure, [...parts(result.support), ...result.used.map((used) => used.path)], unreadable);
      return because === undefined ? result : { ...result, state: "not checked", because, isEcho: true, ratio: undefined, weighed: undefined };
    }),
    rules: rules.map((result) => {
      const because = result.support && inTheWay(result.support, structure, [...parts(result.support), "site"], unreadable);
      return because === undefined ? result : { ...result, state: "not checked", because, isEcho: true, message: `${result.rule.title}: not checked, ${because}.` };
    }),
  };
}
