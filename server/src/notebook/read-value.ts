/** Reading the text of one value against its field. */
import { findBar } from "../catalog/bars.js";
import { nearestNames } from "./nearest.js";
import { findSection } from "../catalog/sections.js";
import { dimensionOfKind, plain, sameDimension } from "../units/dimension.js";
import { kinds } from "../units/kinds.js";
import { listed } from "../units/likely.js";
import { readQuantity, type Misread } from "../units/parse.js";
import { readNumber, readYesNo } from "../units/plain.js";
import { wordsForAmount } from "./arithmetic.js";
import type { Fault } from "./expression-syntax.js";
import { expressionOf, type Amount } from "./expression.js";
import type { ChoiceField, Field, NumberField, QuantityField } from "./fields.js";
import type { ReadContext } from "./read-context.js";
import { leftRange } from "./usual.js";
import { partOf, problemAt, replacing, spanIn, viaRelated, type Written } from "./written.js";

export interface ReadValue {
  readonly value: unknown;
  readonly expression?: string;
}

/** The value a text says, or undefined after a message about it. `keys` is the path of the field. */
export function readValue(field: Field, written: Written, keys: readonly string[], context: ReadContext): ReadValue | undefined {
  const text = written.text;
  const name = keys[keys.length - 1];
  if (field.type === "quantity" || field.type === "number") {
    const expression = expressionOf(text);
    if (expression) return readExpression(field, written, expression, keys, context);
    const read = field.type === "quantity" ? readQuantity(text, field.kind) : readNumber(text);
    if (!read.ok) return misread(withUnitsOf(field, text, read), written, context);
    leadingZero(written, context);
    return bounded(field, read.value, text.trim(), keys, written, context) ? { value: read.value } : undefined;
  }
  if (field.type === "yes-no") {
    const read = readYesNo(text);
    return read.ok ? { value: read.value } : misread(read, written, context);
  }
  if (field.type === "choice") return readChoice(field, written, name, context);
  if (field.type === "bar" || field.type === "section") {
    const found = field.type === "bar" ? findBar(text) : findSection(text);
    if (!("problem" in found)) return { value: found };
    const sentence = found.problem.charAt(0).toUpperCase() + found.problem.slice(1);
    const near = found.nearest.length > 0 ? ` Nearest: ${listed(found.nearest)}.` : "";
    tell(context, written, `${field.type}.unknown`, `${sentence.replace(/\.$/u, "")}.${near}`, 0, text.length, found.nearest);
    return undefined;
  }
  if (field.type === "point") return readPoint(written, keys, context);
  if (field.type === "reference") {
    const value = text.trim();
    const start = text.length - text.trimStart().length;
    const end = start + value.length;
    context.uses.push({ section: field.to, name: value, span: spanIn(written, start, value.length), written, start, end, alone: true });
    return { value };
  }
  return { value: field.type === "text" ? text : undefined };
}

function tell(context: ReadContext, written: Written, code: string, message: string, at: number, length: number, instead: readonly string[] = [], tier: "shape" | "references" = "shape"): void {
  const fixes = instead.map((text) => replacing(`Write ${text}`, written, text, at, length));
  context.problems.push(problemAt(code, message, spanIn(written, at, length), { tier, fixes, related: viaRelated(written.node.via) }));
}

/** Units the schema names for the field are offered first. */
function withUnitsOf(field: QuantityField | NumberField, text: string, read: Misread): Misread {
  if (field.type !== "quantity" || !field.units || read.code !== "quantity.no-unit") return read;
  const bare = text.trim();
  const first = field.units.map((unit) => `${bare} ${unit}`);
  const texts = [...new Set([...first, ...read.fixes.map((fix) => fix.text)])].slice(0, 4);
  return { ...read, message: `${bare} has no unit; write ${listed(first)}.`, fixes: texts.map((fixed) => ({ title: `Write ${fixed}`, text: fixed })) };
}

function misread(read: Misread, written: Written, context: ReadContext): undefined {
  const fixes = read.fixes.map((fix) => replacing(fix.title, written, fix.text));
  context.problems.push(problemAt(read.code, read.message, spanIn(written, read.at, read.length), { fixes, related: viaRelated(written.node.via) }));
  return undefined;
}

/** `012` is 12 here and 10 in an older reading of YAML; whoever wrote the zero should see which. */
function leadingZero(written: Written, context: ReadContext): void {
  const found = /^\s*[+-]?\s*(0+)(\d+)(?![\d/]|-\d)/.exec(written.text);
  if (!found) return;
  const digits = found[1] + found[2];
  const at = found[0].length - digits.length;
  const fix = replacing(`Write ${found[2]}`, written, found[2], at, digits.length);
  const message = `${digits} is read as ${found[2]}; leave out the zero in front.`;
  context.problems.push(problemAt("number.leading-zero", message, spanIn(written, at, digits.length), { severity: "warning", fixes: [fix], related: viaRelated(written.node.via) }));
}

function bounded(field: QuantityField | NumberField, value: number, shown: string, keys: readonly string[], written: Written, context: ReadContext): boolean {
  const name = keys[keys.length - 1];
  const left = field.type === "quantity" ? leftRange(keys, value, field.kind) : undefined;
  const message = field.type === "quantity" ? outOfBounds(field, value) : outOfRange(field, value);
  if (!message && left) {
    tell(context, written, "quantity.unusual", `${shown} is outside any ${name} in use (${left[0]} to ${left[1]}); look at the number and its unit.`, 0, written.text.length);
    return false;
  }
  if (!message) return true;
  tell(context, written, field.type === "quantity" ? "quantity.bounds" : "number.bounds", `${shown} cannot be the ${name}; ${message}`, 0, written.text.length);
  return false;
}

function outOfBounds({ bounds, kind }: QuantityField, value: number): string | undefined {
  if (bounds === "any" || value > 0 || (value === 0 && bounds === "zero or more")) return undefined;
  return bounds === "zero or more" ? `write ${kinds[kind].words} of zero or more.` : `write ${kinds[kind].words} more than zero.`;
}

function outOfRange({ integer, least, most }: NumberField, value: number): string | undefined {
  if (integer && !Number.isInteger(value)) return "write a whole number.";
  if (least !== undefined && most !== undefined && (value < least || value > most)) return `write a number from ${least} to ${most}.`;
  if (least !== undefined && value < least) return `write ${least} or more.`;
  return most !== undefined && value > most ? `write ${most} or less.` : undefined;
}

function readExpression(field: QuantityField | NumberField, written: Written, expression: { readonly text: string; readonly at: number }, keys: readonly string[], context: ReadContext): ReadValue | undefined {
  const amount = evaluated(written, expression, keys, context);
  if (!amount) return undefined;
  const shown = written.text.trim();
  const fitted = field.type === "quantity" ? fit(field, amount) : sameDimension(amount.dimension, plain) && !amount.angle ? amount.value : undefined;
  if (fitted === undefined) {
    const needed = field.type === "quantity" ? kinds[field.kind].words : "a plain number";
    tell(context, written, "expression.kind", `${shown} comes to ${wordsForAmount(amount)}; ${needed} is needed here.`, 0, written.text.length);
    return undefined;
  }
  return bounded(field, fitted, shown, keys, written, context) ? { value: fitted, expression: expression.text.trim() } : undefined;
}

function fit({ kind }: QuantityField, amount: Amount): number | undefined {
  if (kind === "angle") return amount.angle ? amount.value : undefined;
  if (kind === "slope" && amount.angle) return Math.abs(amount.value) < Math.PI / 2 ? Math.tan(amount.value) : undefined;
  return !amount.angle && sameDimension(amount.dimension, dimensionOfKind(kind)) ? amount.value : undefined;
}

/** The amount an expression comes to; its names and what it read are noted. */
export function evaluated(written: Written, expression: { readonly text: string; readonly at: number }, keys: readonly string[], context: ReadContext): Amount | undefined {
  context.usesNames = true;
  const { outcome, names, dependencies } = context.evaluator.evaluate(keys, expression.text);
  for (const read of dependencies) context.dependencies.set(read.join("\n"), read);
  for (const { symbols } of names) {
    for (const symbol of symbols) {
      const start = expression.at + symbol.start;
      const end = expression.at + symbol.end;
      context.uses.push({ section: symbol.section, name: symbol.name, span: spanIn(written, start, end - start), written, start, end, alone: false });
    }
  }
  if (outcome.state === "value") return outcome.amount;
  if (outcome.state === "fault") tellFault(outcome.fault, written, expression.at, context);
  return undefined;
}

export function tellFault(fault: Fault, written: Written, offset: number, context: ReadContext): void {
  const tier = fault.code === "expression.unknown-name" || fault.code === "expression.no-value" ? "references" : "shape";
  tell(context, written, fault.code, fault.message, offset + fault.at, Math.max(1, fault.length), fault.instead, tier);
}

function readChoice(field: ChoiceField, written: Written, name: string, context: ReadContext): ReadValue | undefined {
  const text = written.text.trim();
  const choices: readonly string[] = field.choices;
  const known = choices.find((choice) => choice === text) ?? field.also?.[text] ?? choices.find((choice) => choice.toLowerCase() === text.toLowerCase().replace(/\s+/gu, " "));
  if (known !== undefined) return { value: known };
  const near = nearestNames(text, choices);
  const instead = near.length > 0 ? near : choices.slice(0, 6);
  const advice = near.length > 0 ? `did you mean ${near[0]}? It can be ${listed(choices)}.` : choices.length === 1 ? `only ${choices[0]} is covered.` : `write ${listed(choices)}.`;
  tell(context, written, "choice.unknown", `"${text}" is none of the choices for ${name}; ${advice}`, 0, written.text.length, instead);
  return undefined;
}

/** Parts between commas that stand outside parentheses. */
export function commaParts(written: Written): readonly Written[] {
  const parts: Written[] = [];
  let depth = 0;
  let start = 0;
  const push = (end: number) => {
    const raw = written.text.slice(start, end);
    const lead = raw.length - raw.trimStart().length;
    parts.push(partOf(written, start + lead, start + lead + raw.trim().length));
  };
  for (let i = 0; i < written.text.length; i++) {
    const char = written.text[i];
    if (char === "(") depth++;
    else if (char === ")") depth--;
    else if (char === "," && depth === 0) {
      push(i);
      start = i + 1;
    }
  }
  push(written.text.length);
  return parts;
}

const ordinate: QuantityField = { type: "quantity", kind: "distance", bounds: "any", doc: "", units: ["ft", "m"] };

function readPoint(written: Written, keys: readonly string[], context: ReadContext): ReadValue | undefined {
  const parts = commaParts(written);
  if (parts.length !== 2) {
    tell(context, written, "point.parts", `${parts.length} ${parts.length === 1 ? "length stands" : "parts stand"} here; a place in plan is two lengths, x east and y north, like 3 ft, 21 ft.`, 0, written.text.length);
    return undefined;
  }
  return pointOf(parts, keys, context);
}

/** A place in plan out of its two texts. */
export function pointOf(parts: readonly Written[], keys: readonly string[], context: ReadContext): ReadValue | undefined {
  const [x, y] = ["x", "y"].map((axis, i) => readValue(ordinate, parts[i], [...keys, axis], context));
  if (!x || !y) return undefined;
  const expression = x.expression || y.expression ? parts.map((part) => part.text).join(", ") : undefined;
  return { value: { x: x.value as number, y: y.value as number }, expression };
}
