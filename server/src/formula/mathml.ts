import { formatParts, type ShownParts } from "../units/format.js";
import type { UnitSystem } from "../units/kinds.js";
import type { Values } from "./closure.js";
import { escapeText } from "./plain.js";
import type { Marks } from "./print.js";
import { declaredExpression, substitute } from "./substitute.js";
import { symbolParts } from "./symbols.js";
import type { Formula } from "./types.js";

const tag = (name: string, inner: string, attributes = "") => `<${name}${attributes}>${inner}</${name}>`;
const mi = (text: string) => tag("mi", escapeText(text));
const mo = (text: string) => tag("mo", escapeText(text));
const mn = (text: string) => tag("mn", escapeText(text));
const mtext = (text: string) => tag("mtext", escapeText(text).replaceAll(" ", "\u00a0"));
const row = (parts: readonly string[]) => tag("mrow", parts.join(""));
/** Tells a reader of the page that the name before it is applied to what follows. */
const applied = tag("mo", "\u2061");

/** A symbol, marked with its name and meaning so that the page can link it to its field. */
export function symbolMathml(name: string, meaning = ""): string {
  return marked(name, meaning, letters(name));
}

function letters(name: string): string {
  const { base, subscripts } = symbolParts(name);
  if (subscripts.length === 0) return mi(base);
  const parts = subscripts.map((s) => (/^\d+$/.test(s) ? mn(s) : mi(s)));
  const below = parts.length === 1 ? parts[0] : row(parts.flatMap((part, i) => (i === 0 ? [part] : [mo(","), part])));
  return tag("msub", mi(base) + below);
}

const marked = (name: string, meaning: string, inner: string) =>
  tag("mrow", inner, ` data-symbol="${escapeText(name)}"${meaning === "" ? "" : ` data-meaning="${escapeText(meaning)}"`}`);

const meaningOf = (of: Formula<any, any>, name: string): string => (Object.hasOwn(of.symbols, name) ? of.symbols[name].meaning : "");

const marksFor = (of: Formula<any, any>): Marks => ({
  number: mn,
  symbol: (name) => (name === "pi" && !Object.hasOwn(of.symbols, name) ? mi("π") : symbolMathml(name, meaningOf(of, name))),
  operator: mo,
  sequence: row,
  fenced: (open, inner, close) => row([mo(open), inner, mo(close)]),
  fraction: (top, bottom) => tag("mfrac", row([top]) + row([bottom])),
  stacked: true,
  power: (base, exponent) => tag("msup", row([base]) + row([exponent])),
  raised: true,
  root: (inner, degree) => (degree === 2 ? tag("msqrt", inner) : tag("mroot", row([inner]) + mn("3"))),
  call: (name, args) => row([mi(name), applied, row([mo("("), ...args.flatMap((arg, i) => (i === 0 ? [arg] : [mo(","), arg])), mo(")")])]),
  cases: (rows, otherwise) => {
    const cell = (inner: string) => tag("mtd", inner);
    const lines = rows.map(({ value, when }) => tag("mtr", cell(value) + cell(row([mtext("if "), when]))));
    return row([mo("{"), tag("mtable", lines.join("") + tag("mtr", cell(otherwise) + cell(mtext("otherwise"))))]);
  },
  word: (text) => (/^\s*\w+\s*$/.test(text) ? mtext(text) : mo(text)),
});

function quantity({ number, unit }: ShownParts): string {
  if (!/\d/.test(number)) return mtext(number);
  const digits = number.startsWith("−") ? row([mo("−"), mn(number.slice(1))]) : mn(number);
  return unit === "" ? digits : row([digits, unit === "°" ? mtext(unit) : tag("mspace", "", ' width="0.2em"') + mtext(unit)]);
}

const page = (parts: readonly string[]) => tag("math", row(parts), ' xmlns="http://www.w3.org/1998/Math/MathML" display="block"');

const minus = (parts: ShownParts): ShownParts => ({ ...parts, number: parts.number.replace(/^-/, "−") });

/** The formula as it is declared, `result = expression`, in MathML Core. */
export function declaredMathml(of: Formula<any, any>): string {
  const marks = marksFor(of);
  return page([marks.symbol(of.result), mo("="), declaredExpression(of, marks)]);
}

/** `result = ` the expression with the values it ran with, in SI, shown in the units of a system. */
export function substitutedMathml(of: Formula<any, any>, args: Values, system: UnitSystem): string {
  const marks = marksFor(of);
  const write = (name: string, parts: ShownParts) => marked(name, meaningOf(of, name), quantity(parts));
  const { expression, because } = substitute(of, args, system, marks, write);
  const since = because.flatMap((condition, i) => [mtext(i === 0 ? ", since " : " and "), condition]);
  return page([marks.symbol(of.result), mo("="), expression, ...since]);
}

/** `result = ` its value with the unit. */
export function resultMathml(of: Formula<any, any>, value: number, system: UnitSystem): string {
  return page([marksFor(of).symbol(of.result), mo("="), quantity(minus(formatParts(value, of.symbols[of.result].kind, system)))]);
}
