/** What a check is, made from its declaration: for the command line, the hover and the manual. */
import type { CheckDecl, RuleDecl } from "../checks/contract.js";
import { shownConstant } from "../formula/constants.js";
import { parsedOf } from "../formula/declare.js";
import { declaredText, symbolText } from "../formula/plain.js";
import type { Formula } from "../formula/types.js";
import { formulasOf } from "./formulas-of.js";

const level: Readonly<Record<string, string>> = {
  strength: "strength (LRFD) combinations",
  allowable: "allowable-stress (ASD) combinations",
  service: "service loads",
};

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
  lines.push(`Loads        ${level[item.level] ?? item.level}`);
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
