/** What a check is, made from its declaration: for the command line, the hover and the manual. */
import type { CheckDecl, RuleDecl } from "../checks/contract.js";
import { allChecks } from "../checks/registry.js";
import { shownConstant } from "../formula/constants.js";
import { allFormulas, parsedOf } from "../formula/declare.js";
import { declaredText, symbolText } from "../formula/plain.js";
import type { Formula } from "../formula/types.js";
import { describeField, fieldAt } from "../notebook/field-at.js";
import type { Field } from "../notebook/fields.js";
import { formulasOf } from "./formulas-of.js";

const level: Readonly<Record<string, string>> = {
  strength: "strength (LRFD) combinations",
  allowable: "allowable-stress (ASD) combinations",
  service: "service loads",
};

const byMethod = "strength (LRFD) or allowable-stress (ASD) combinations, by the design method of steel (codes, method)";

const isCheck = (item: CheckDecl | RuleDecl): item is CheckDecl => "evaluate" in item;

export function explainText(item: CheckDecl | RuleDecl): string {
  const lines = [
    `${item.title} (${item.id})`,
    "",
    `What fails   ${item.fails}`,
    `Seen as      ${item.seen}`,
    `Clause       ${item.clause}`,
    `Range        ${item.range}`,
  ];
  if (!isCheck(item)) return `${lines.join("\n")}\n`;
  lines.push(`Loads        ${typeof item.level === "object" ? byMethod : (level[item.level] ?? item.level)}`);
  const formulas = formulasOf(item);
  if (formulas.length > 0) {
    lines.push("", "Formulas");
    for (const formula of formulas) {
      lines.push(`  ${declaredText(formula)}    [${formula.source}]`);
      for (const [name, constant] of Object.entries(parsedOf(formula).constants)) lines.push(`      ${symbolText(name)} = ${shownConstant(constant)}`);
    }
    lines.push("", "Symbols", ...symbolLines(formulas));
  }
  return `${lines.join("\n")}\n`;
}

function symbolLines(formulas: readonly Formula[]): string[] {
  const rows = new Map<string, string>();
  for (const formula of formulas) {
    for (const [name, decl] of Object.entries(formula.symbols)) {
      if (!rows.has(name) || decl.field) rows.set(name, `${decl.meaning}${decl.field ? `; notebook: ${decl.field}` : ""}`);
    }
  }
  const width = Math.max(...[...rows.keys()].map((name) => symbolText(name).length));
  return [...rows].map(([name, text]) => `  ${symbolText(name).padEnd(width)}  ${text}`);
}

/** What a field of the notebook is, by its path with a `*` or any name for names of the user's own; undefined where there is none. */
export function explainField(path: string): string | undefined {
  const found = fieldAt(path.split("."));
  if (!found) return undefined;
  const { field, pattern } = found;
  const lines = [`${pattern}`, "", field.doc, `Takes ${describeField(field)}.`];
  if (field.assumed) lines.push(`Left out, it is taken as ${field.assumed.text} (${field.assumed.source}).`);
  const inner = field.type === "record" ? field : field.type === "named" ? field.of : undefined;
  if (inner) {
    const names = Object.entries(inner.fields as Readonly<Record<string, Field>>);
    const width = Math.max(...names.map(([name]) => name.length), 0);
    if (names.length > 0) lines.push("", "Fields", ...names.map(([name, one]) => `  ${name.padEnd(width)}  ${one.doc}${one.assumed ? ` Left out: ${one.assumed.text}.` : ""}`));
  }
  const reads = (formula: Formula) => Object.values(formula.symbols).some((symbol) => symbol.field === pattern);
  const users = allChecks.filter((check) => formulasOf(check).some(reads)).map((check) => `  ${check.id}  ${check.title}`);
  const ofChecks = new Set<Formula>(allChecks.flatMap(formulasOf));
  if (allFormulas().some((formula) => !ofChecks.has(formula) && reads(formula))) users.unshift("  the loads");
  if (users.length > 0) lines.push("", "Used by", ...users);
  return `${lines.join("\n")}\n`;
}
