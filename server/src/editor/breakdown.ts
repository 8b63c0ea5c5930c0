/** The math behind a result as Markdown for a hover. Hovers strip MathML, so it is text with sub and sup where the editor takes them. */
import { derive } from "../engine/derive.js";
import { symbolsOf } from "../engine/steps.js";
import { messageOf, showRatio } from "../findings/message.js";
import { isRule, type AnyResult } from "../findings/result.js";
import { declaredHtml, declaredText, substitutedHtml, substitutedText, symbolHtml, symbolText } from "../formula/plain.js";
import type { Step } from "../formula/types.js";
import { format } from "../units/format.js";
import type { UnitSystem } from "../units/kinds.js";
import { escapeMarkdown } from "../summary/markdown.js";

export interface Manner {
  readonly html: boolean;
  readonly system: UnitSystem;
}

export const statement = (result: AnyResult): string => {
  const ratio = isRule(result) || result.ratio === undefined ? "" : ` ${showRatio(result.ratio)}`;
  return `${result.state}${ratio}`;
};

export function breakdown(result: AnyResult, manner: Manner): string {
  if (isRule(result)) {
    return [`**${escapeMarkdown(result.rule.title)}: ${statement(result)}**`, escapeMarkdown(messageOf(result, manner.system)), `_${escapeMarkdown(result.rule.clause)}_`].join("\n\n");
  }
  const { check, governing, support, place } = result;
  const parts = [`**${escapeMarkdown(check.title)}: ${statement(result)}**`];
  if (result.state === "not checked") {
    parts.push(escapeMarkdown(messageOf(result, manner.system)), `_${escapeMarkdown(check.clause)}_`);
    return parts.join("\n\n");
  }
  const column = support.places.length > 1 ? `, column ${place + 1} of ${support.places.length}` : "";
  if (governing) parts.push(`${escapeMarkdown(governing.label)}${column} · _${escapeMarkdown(check.clause)}_`);
  const steps = derive(result);
  parts.push(steps.map((step) => stepMarkdown(step, manner)).join("\n\n"));
  parts.push(symbolTable(steps, manner));
  parts.push(`**${escapeMarkdown(messageOf(result, manner.system))}**`);
  return parts.filter(Boolean).join("\n\n");
}

function stepMarkdown(step: Step, { html, system }: Manner): string {
  if (step.type === "note") return `_${escapeMarkdown(step.text)}_`;
  if (step.type === "routine") {
    const found = step.found.map((value) => `${symbol(value.symbol, html)} = ${text(format(value.value, value.kind, system), html)}`);
    return `${escapeMarkdown(step.routine.title)}: ${found.join(", ")}`;
  }
  const { formula, args } = step;
  const lines = html ? [declaredHtml(formula), substitutedHtml(formula, args, system)] : [declaredText(formula), substitutedText(formula, args, system)];
  return html ? lines.map(keepMarkdown).join("<br>") : lines.map(escapeMarkdown).join("  \n");
}

/** Signs Markdown would take, in lines that carry sub and sup. */
const keepMarkdown = (line: string): string => line.replace(/[\\`*_{}[\]|#]/gu, "\\$&");

const symbol = (name: string, html: boolean): string => (html ? keepMarkdown(symbolHtml(name)) : escapeMarkdown(symbolText(name)));
const text = (value: string, html: boolean): string => (html ? keepMarkdown(value) : escapeMarkdown(value));

function symbolTable(steps: readonly Step[], { html, system }: Manner): string {
  const rows = new Map<string, string>();
  for (const step of steps) {
    if (step.type !== "formula") continue;
    for (const row of symbolsOf(step.formula, step.args, system)) {
      if (row.field || !rows.has(row.symbol)) rows.set(row.symbol, `| ${symbol(row.symbol, html)} | ${escapeMarkdown(row.shown)} | ${escapeMarkdown(row.meaning)} |`);
    }
  }
  return rows.size === 0 ? "" : ["| symbol | value | meaning |", "| --- | --- | --- |", ...rows.values()].join("\n");
}

