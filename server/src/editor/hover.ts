/** Hover: on a field what it is, its unit, default and which checks use it; on a support the breakdown of its worst check. */
import { MarkupKind, type Hover } from "vscode-languageserver";
import { notCoveredText } from "../checks/coverage.js";
import type { CheckedDocument } from "../engine/check-text.js";
import { resultsAt, worstFirst, worstOf } from "../engine/worst.js";
import { titleOf, type AnyResult } from "../findings/result.js";
import { isRule } from "../findings/result.js";
import { describeField, fieldAt } from "../notebook/field-at.js";
import type { Field, Located, Shape, Values } from "../notebook/fields.js";
import type { Amount } from "../notebook/expression.js";
import { locate } from "../notebook/paths.js";
import { usesOf } from "../notebook/references.js";
import { absolute } from "../notebook/tree.js";
import { escapeMarkdown } from "../summary/markdown.js";
import { dimensionOfKind, sameDimension } from "../units/dimension.js";
import { format } from "../units/format.js";
import { kinds, type KindName } from "../units/kinds.js";
import { breakdown, statement, type Manner } from "./breakdown.js";
import { rangeBetween } from "./positions.js";
import type { Session } from "./sessions.js";

export function hoverAt(session: Session, position: { line: number; character: number }, html: boolean): Hover | null {
  const offset = session.lines.offsetAt(position);
  const spot = locate(session.checked.parsed, offset);
  if (!spot || spot.inComment || spot.path.length === 0) return null;
  const document = session.shown.documents[spot.documentIndex];
  if (!document) return null;
  const manner: Manner = { html, system: document.system };
  const said = supportHover(document, spot.path, manner) ?? givenHover(document, spot.path, manner) ?? fieldHover(document, spot.path, manner);
  if (!said) return null;
  const value = session.stale ? `_The text has errors; these are the numbers of the last readable text._\n\n${said}` : said;
  const key = spot.entry && absolute(spot.onKey ? spot.entry.keySpan : spot.entry.value.span);
  return { contents: { kind: MarkupKind.Markdown, value }, range: key && rangeBetween(key.start, key.end, session.lines) };
}

/** An entry that is checked: all its answers, then the math of the worst. */
function supportHover(document: CheckedDocument, path: readonly string[], manner: Manner): string | undefined {
  if (path.length !== 2) return undefined;
  const results = resultsAt(document, path.join("."));
  if (results.length === 0) return undefined;
  const worst = worstOf(results).result;
  const supports = [...new Set(results.map((result) => result.support))];
  const lines = [answers(results)];
  if (worst) lines.push("---", breakdown(worst, manner));
  for (const support of supports) {
    const open = (support && document.notCovered.get(support)) ?? [];
    if (!support || open.length === 0) continue;
    lines.push(`_${open.length} further limit states of ${escapeMarkdown(support.name)} are not covered:_`);
    lines.push(open.map((line) => `- ${escapeMarkdown(notCoveredText(line))}`).join("\n"));
  }
  return lines.join("\n\n");
}

/** All answers, the worst first. */
const answers = (unsorted: readonly AnyResult[]): string => {
  const results = worstFirst(unsorted);
  const several = new Set(results.map((result) => result.support?.path)).size > 1;
  const rows = results.map((result) => `| ${several ? `${escapeMarkdown(result.support?.name ?? "")}: ` : ""}${escapeMarkdown(titleOf(result))} | ${statement(result)} |`);
  return ["| check | state |", "| --- | --- |", ...rows].join("\n");
};

/** A value named under `given`: what it comes to, and where it is used. */
function givenHover(document: CheckedDocument, path: readonly string[], manner: Manner): string | undefined {
  if (path.length !== 2 || path[0] !== "given") return undefined;
  const located = valueAt(document, path);
  const amount = located?.value as Amount | undefined;
  if (!located || typeof amount?.value !== "number") return undefined;
  const kind = (Object.keys(kinds) as KindName[]).find((name) => name !== "ratio" && sameDimension(dimensionOfKind(name), amount.dimension));
  const shown = kind ? format(amount.value, kind === "length" ? "distance" : kind, manner.system) : String(amount.value);
  const uses = usesOf(document.reading, "given", path[1]).length;
  const times = uses === 0 ? "Not used yet." : `Used in ${uses} place${uses === 1 ? "" : "s"}.`;
  return `**${escapeMarkdown(path[1])}** · a named value, ${escapeMarkdown(shown)}. ${times}`;
}

function fieldHover(document: CheckedDocument, path: readonly string[], manner: Manner): string | undefined {
  const found = fieldAt(path);
  if (!found) return undefined;
  const { field } = found;
  const parts = [`**${escapeMarkdown(path.at(-1) ?? "")}** · ${escapeMarkdown(field.doc)}`];
  const located = valueAt(document, path);
  const value = located && shownValue(field, located, manner);
  parts.push(`Takes ${escapeMarkdown(describeField(field))}.${value ? ` Read as ${escapeMarkdown(value)}.` : ""}${located?.expression ? ` Computed from ${escapeMarkdown(located.expression)}.` : ""}`);
  if (field.assumed) parts.push(`Left out, it is taken as ${escapeMarkdown(field.assumed.text)} (${escapeMarkdown(field.assumed.source)}).`);
  const users = usersOf(document, path.join("."));
  if (users.length > 0) {
    const worst = worstOf(users).result;
    if (worst) parts.push("---", breakdown(worst, manner));
    parts.push("---", `Used by ${users.length === 1 ? "this check" : `these ${users.length} checks`}:\n\n${answers(users)}`);
  }
  return parts.join("\n\n");
}

/** Results that read this field, or one below it. */
function usersOf(document: CheckedDocument, path: string): AnyResult[] {
  const reads = (used: { path: string }) => used.path === path || used.path.startsWith(`${path}.`);
  return [...document.checks.filter((result) => result.used.some(reads)), ...document.rules.filter((result) => !isRule(result))];
}

/** The value read at a path, through records and named entries. */
export function valueAt(document: CheckedDocument, path: readonly string[]): Located<unknown> | undefined {
  let here: unknown = document.reading.values;
  let located: Located<unknown> | undefined;
  for (const piece of path) {
    if (here instanceof Map) located = here.get(piece) as Located<unknown> | undefined;
    else if (Array.isArray(here)) located = here[Number(piece)] as Located<unknown> | undefined;
    else located = (here as Values<Shape> | undefined)?.[piece] as Located<unknown> | undefined;
    if (!located) return undefined;
    here = located.value;
  }
  return located;
}

/** The value in the notebook's units; a one-line form is spelled out. */
function shownValue(field: Field, located: Located<unknown>, manner: Manner): string | undefined {
  const { value } = located;
  if (typeof value === "number") return field.type === "quantity" ? format(value, field.kind, manner.system) : String(value);
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (field.type === "record" && located.node.type === "scalar") {
    return Object.entries(value as Values<Shape>)
      .flatMap(([name, inner]) => {
        const item = inner as Located<unknown> | undefined;
        const shown = item && shownValue(field.fields[name], item, manner);
        return shown ? [`${name}: ${shown}`] : [];
      })
      .join(", ");
  }
  if ((field.type === "bar" || field.type === "section") && typeof value === "object" && value !== null && "name" in value) return String(value.name);
  if (typeof value === "object" && value !== null && "x" in value && "y" in value) {
    return `${format(value.x as number, "distance", manner.system)} east, ${format(value.y as number, "distance", manner.system)} north`;
  }
  return undefined;
}
