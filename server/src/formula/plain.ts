import { format } from "../units/format.js";
import type { UnitSystem } from "../units/kinds.js";
import type { Values } from "./closure.js";
import type { Marks } from "./print.js";
import { declaredExpression, substitute, type WriteValue } from "./substitute.js";
import { symbolParts } from "./symbols.js";
import type { Formula } from "./types.js";

const escaped: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
export const escapeText = (text: string): string => text.replaceAll(/[&<>"]/g, (c) => escaped[c]);

/** A symbol in one line of text: `h_ef`, `ψ_ed,N`, `f′_c`. */
export function symbolText(name: string): string {
  const { base, subscripts } = symbolParts(name);
  return subscripts.length ? `${base}_${subscripts.join(",")}` : base;
}

/** A symbol for a hover: `h<sub>ef</sub>`. */
export function symbolHtml(name: string): string {
  const { base, subscripts } = symbolParts(name);
  return escapeText(base) + (subscripts.length ? `<sub>${escapeText(subscripts.join(","))}</sub>` : "");
}

const operator = (sign: string) => (sign === "·" ? sign : ` ${sign} `);

/** One line of text. */
export const plainMarks: Marks = {
  number: (text) => text,
  symbol: symbolText,
  operator,
  sequence: (parts) => parts.join(""),
  fenced: (open, inner, close) => open + inner + close,
  fraction: (top, bottom) => `${top}/${bottom}`,
  stacked: false,
  power: (base, exponent) => `${base}^${exponent}`,
  raised: false,
  root: (of, degree) => `${degree === 2 ? "√" : "∛"}(${of})`,
  call: (name, args) => `${name}(${args.join(", ")})`,
  cases: (rows, otherwise) => `${rows.map(({ value, when }) => `${value} if ${when}`).join("; ")}; otherwise ${otherwise}`,
  word: (text) => text,
};

const htmlMarks: Marks = {
  ...plainMarks,
  symbol: symbolHtml,
  operator: (sign) => operator(escapeText(sign)),
  power: (base, exponent) => `${base}<sup>${exponent}</sup>`,
  raised: true,
};

const joined = (number: string, unit: string) => (unit === "" || unit === "°" ? number + unit : `${number} ${unit}`);
const textValue: WriteValue = (_name, { number, unit }) => joined(number, unit);
const htmlValue: WriteValue = (_name, { number, unit }) =>
  joined(number, escapeText(unit).replaceAll(/\^(-?[\d.]+)/g, "<sup>$1</sup>"));

function line(of: Formula<any, any>, args: Values, system: UnitSystem, marks: Marks, write: WriteValue): string {
  const { expression, because, result } = substitute(of, args, system, marks, write);
  const since = because.length ? `, since ${because.join(" and ")}` : "";
  return `= ${expression} = ${write(of.result, { ...result, number: result.number.replace(/^-/, "−") })}${since}`;
}

/** The formula in one line: `N_b = k_c·λ_a·√(f′_c)·h_ef^1.5`. */
export const declaredText = (of: Formula<any, any>): string => `${symbolText(of.result)} = ${declaredExpression(of, plainMarks)}`;

/** The same with sub and sup, for a hover. */
export const declaredHtml = (of: Formula<any, any>): string => `${symbolHtml(of.result)} = ${declaredExpression(of, htmlMarks)}`;

/** The values it ran with and the result: `= 24·1·√(4000 psi)·(5.33 in)^1.5 = 18.7 kip`. Arguments are in SI. */
export const substitutedText = (of: Formula<any, any>, args: Values, system: UnitSystem): string => line(of, args, system, plainMarks, textValue);

/** The same with sub and sup, for a hover. */
export const substitutedHtml = (of: Formula<any, any>, args: Values, system: UnitSystem): string => line(of, args, system, htmlMarks, htmlValue);

/** The result with its symbol: `N_b = 18.7 kip`. */
export const resultText = (of: Formula<any, any>, value: number, system: UnitSystem): string =>
  `${symbolText(of.result)} = ${format(value, of.symbols[of.result].kind, system).replace(/^-/, "−")}`;
