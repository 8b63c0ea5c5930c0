/** Reading the located tree against the schema: every field located and typed, every slip with its place and its cure. */
import { expressionOf, literalOutcome, type Amount } from "./expression.js";
import type { Field, Located, NamedField, RecordField, Shape, ShortPart, Values } from "./fields.js";
import type { ReadContext } from "./read-context.js";
import { evaluated, pointOf, readValue, tellFault } from "./read-value.js";
import type { Entry, MapNode, Node, Span } from "./tree.js";
import { unknownKey } from "./unknown-key.js";
import { partOf, problemAt, replacing, spanIn, viaRelated, wholeOf, type Written } from "./written.js";

/** Reads a mapping into the record's fields. A name written twice counts the first time. */
export function readRecord<S extends Shape>(map: MapNode, field: RecordField<S>, keys: readonly string[], context: ReadContext): Values<S> {
  const values: Record<string, Located<unknown> | undefined> = {};
  for (const name of Object.keys(field.fields)) values[name] = undefined;
  const seen = new Set<string>();
  for (const entry of map.entries) {
    if (seen.has(entry.key)) continue;
    seen.add(entry.key);
    if (!Object.hasOwn(field.fields, entry.key)) context.problems.push(unknownKey(entry, field, keys, map.flow));
    else values[entry.key] = readField(field.fields[entry.key], entry.value, entry, [...keys, entry.key], context, map.flow);
  }
  return values as Values<S>;
}

const located = (value: unknown, node: Node, span: Span, entry: Entry | undefined, keys: readonly string[], expression?: string): Located<unknown> => ({
  value,
  path: keys.join("."),
  span,
  node,
  entry,
  ...(expression === undefined ? {} : { expression }),
  ...((node.via ?? entry?.via) ? { via: node.via ?? entry?.via } : {}),
});

/** Where something about a whole mapping or list is said: at its name. */
const nameSpan = (node: Node, entry: Entry | undefined): Span => entry?.keySpan ?? { ...node.span, end: Math.min(node.span.end, node.span.start + 1) };

/** Reads one field's node, or gives undefined after a message (or none, where the field is left empty on purpose). */
export function readField(field: Field, node: Node, entry: Entry | undefined, keys: readonly string[], context: ReadContext, inFlow: boolean): Located<unknown> | undefined {
  if (node.type === "null") {
    if (!isContainer(field)) context.problems.push(noValue(field, node, entry, keys));
    return undefined;
  }
  if (field.type === "record") return readRecordField(field, node, entry, keys, context, inFlow);
  if (field.type === "named") {
    if (node.type === "map") return located(readNamed(field, node, keys, context), node, nameSpan(node, entry), entry, keys);
    return wrongShape(`${last(keys)} holds entries under names of their own, each on a line of its own with a colon; a ${said(node)} stands here.`, node, entry, context);
  }
  if (field.type === "list") {
    if (node.type === "seq") return located(readList(field.of, node.items, keys, context), node, nameSpan(node, entry), entry, keys);
    return wrongShape(`${last(keys)} is a list; begin each item on a line of its own with "- ".`, node, entry, context);
  }
  if (field.type === "point" && node.type === "seq") return readPointList(node, entry, keys, context);
  const scalar = node.type === "map" && field.type === "text" ? colonText(node) : node;
  if (scalar?.type !== "scalar") return wrongShape(`${last(keys)} is ${what(field)}; a ${said(node)} stands here.`, node, entry, context);
  const read = readValue(field, wholeOf(scalar, inFlow), keys, context);
  return read && located(read.value, scalar, scalar.span, entry, keys, read.expression);
}

const last = (keys: readonly string[]): string => keys[keys.length - 1];
const isContainer = (field: Field): boolean => field.type === "record" || field.type === "named" || field.type === "list";
const said = (node: Node): string => (node.type === "map" ? "group of fields" : node.type === "seq" ? "list" : "single value");

function what(field: Field): string {
  const words: Record<Field["type"], string> = {
    quantity: "one number with its unit", number: "one number", text: "text", "yes-no": "yes or no", choice: "one word or phrase", reference: "the name of one entry",
    point: "a place in plan, like 3 ft, 21 ft", bar: "one bar size, like no. 6", section: "one section, like HSS6x6x3/8", record: "a group of fields", named: "a group of named entries", list: "a list",
  };
  return words[field.type];
}

function noValue(field: Field, node: Node, entry: Entry | undefined, keys: readonly string[]) {
  return problemAt("shape.no-value", `${last(keys)} has no value yet; write ${what(field)} after the colon.`, nameSpan(node, entry), { related: viaRelated(node.via) });
}

function wrongShape(message: string, node: Node, entry: Entry | undefined, context: ReadContext): undefined {
  context.problems.push(problemAt("shape.wrong-kind", message, node.type === "scalar" ? node.span : nameSpan(node, entry), { related: viaRelated(node.via) }));
  return undefined;
}

function readRecordField(field: RecordField, node: Node, entry: Entry | undefined, keys: readonly string[], context: ReadContext, inFlow: boolean): Located<unknown> | undefined {
  if (node.type === "map") return located(readRecord(node, field, keys, context), node, nameSpan(node, entry), entry, keys);
  if (node.type === "scalar" && field.short) return readShort(field, wholeOf(node, inFlow), entry, keys, context);
  const how = field.short ? `write it like ${field.short.example}, or its fields on lines of their own` : `write its fields below it, each on a line of its own: ${Object.keys(field.fields).slice(0, 4).join(", ")}`;
  return wrongShape(`${last(keys)} is a group of fields and a ${said(node)} stands here; ${how}.`, node, entry, context);
}

/** The one-line form: the same values as the fields written out. */
function readShort(field: RecordField, written: Written, entry: Entry | undefined, keys: readonly string[], context: ReadContext): Located<unknown> | undefined {
  const parts = (field.short as NonNullable<RecordField["short"]>).split(written.text);
  if (!Array.isArray(parts)) {
    const { problem, at, length } = parts as { problem: string; at: number; length: number };
    context.problems.push(problemAt("shape.short-form", problem, spanIn(written, at, length), { related: viaRelated(written.node.via) }));
    return undefined;
  }
  const values: Record<string, unknown> = {};
  for (const name of Object.keys(field.fields as Shape)) values[name] = undefined;
  for (const part of parts as readonly ShortPart[]) {
    const stretch = partOf(written, part.start, part.end);
    const at = [...keys, part.field];
    const inner = (field.fields as Shape)[part.field];
    if (inner.type === "record") {
      values[part.field] = inner.short && readShort(inner, stretch, entry, at, context);
      continue;
    }
    const read = readValue(inner, stretch, at, context);
    if (read) values[part.field] = located(read.value, written.node, spanIn(stretch), entry, at, read.expression);
  }
  return located(values, written.node, written.node.span, entry, keys);
}

function readPointList(node: Node & { type: "seq" }, entry: Entry | undefined, keys: readonly string[], context: ReadContext): Located<unknown> | undefined {
  const parts = node.items.flatMap((item) => (item.type === "scalar" ? [wholeOf(item, true)] : []));
  if (parts.length !== 2 || node.items.length !== 2) return wrongShape(`${last(keys)} is two lengths, x east and y north, like 3 ft, 21 ft; ${node.items.length} parts stand here.`, node, entry, context);
  const read = pointOf(parts, keys, context);
  return read && located(read.value, node, node.span, entry, keys, read.expression);
}

/** `by pull test: two dowels` in a field of text: YAML takes the colon for a key, the writer does not. */
function colonText(map: MapNode): (Node & { type: "scalar" }) | undefined {
  const [entry] = map.entries;
  if (map.entries.length !== 1 || entry.value.type !== "scalar" || entry.value.style !== "plain" || entry.via || map.via) return undefined;
  const { block } = map.span;
  const span: Span = { block, start: entry.keySpan.start, end: entry.value.span.end };
  const text = block.text.slice(span.start, span.end);
  return /[\r\n]/u.test(text) ? undefined : { type: "scalar", span, text, style: "plain", verbatim: true };
}

/** Entries under names of the user's own. */
function readNamed(field: NamedField, map: MapNode, keys: readonly string[], context: ReadContext): ReadonlyMap<string, Located<unknown>> {
  const read = new Map<string, Located<unknown>>();
  for (const entry of map.entries) {
    if (read.has(entry.key)) continue;
    const value = readNamedEntry(field, entry, [...keys, entry.key], context, map.flow);
    if (value) read.set(entry.key, value);
  }
  return read;
}

/** One entry; an entry without fields yet is an empty record. A `given` entry is a value instead. */
export function readNamedEntry(field: NamedField, entry: Entry, keys: readonly string[], context: ReadContext, inFlow: boolean): Located<unknown> | undefined {
  if (keys[0] === "given" && keys.length === 2) return readGiven(entry, keys, context, inFlow);
  if (entry.value.type !== "null") return readRecordField(field.of, entry.value, entry, keys, context, inFlow);
  const empty: MapNode = { type: "map", span: entry.value.span, entries: [], flow: false };
  return located(readRecord(empty, field.of, keys, context), empty, entry.keySpan, entry, keys);
}

/** A named value of any dimension; its `value` is an {@link Amount}. */
function readGiven(entry: Entry, keys: readonly string[], context: ReadContext, inFlow: boolean): Located<unknown> | undefined {
  const node = entry.value;
  if (node.type === "null") {
    context.problems.push(problemAt("shape.no-value", `${entry.key} has no value yet; write a number with its unit after the colon.`, entry.keySpan));
    return undefined;
  }
  if (node.type !== "scalar") return wrongShape(`${entry.key} is one number with its unit, or a calculation after =; a ${said(node)} stands here.`, node, entry, context);
  const written = wholeOf(node, inFlow);
  const expression = expressionOf(node.text);
  let amount: Amount | undefined;
  if (expression) amount = evaluated(written, expression, keys, context);
  else {
    const outcome = literalOutcome(node.text);
    if (outcome.state === "value") amount = outcome.amount;
    else if (outcome.state === "fault") tellGiven(outcome.fault, written, context);
  }
  return amount && located(amount, node, node.span, entry, keys, expression?.text.trim());
}

function tellGiven(fault: Parameters<typeof tellFault>[0], written: Written, context: ReadContext): void {
  if (fault.code !== "expression.unknown-name") return tellFault(fault, written, 0, context);
  const text = written.text.trim();
  const message = `"${text}" is not a number with its unit; a given value is one, like 9 ft, or a calculation after =.`;
  context.problems.push(problemAt("given.not-a-value", message, spanIn(written), { fixes: [replacing(`Write = ${text}`, written, `= ${text}`)], related: viaRelated(written.node.via) }));
}

function readList(field: Field, items: readonly Node[], keys: readonly string[], context: ReadContext): readonly Located<unknown>[] {
  return items.flatMap((item, i) => readField(field, item, undefined, [...keys, String(i + 1)], context, false) ?? []);
}
