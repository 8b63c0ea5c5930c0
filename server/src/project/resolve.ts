/** Turns what was read into values with their sources, filling in the schema's defaults as visible assumptions. */
import { readBar } from "../catalog/bars.js";
import type { Field, Located, NamedField, RecordField, Shape, Values } from "../notebook/fields.js";
import type { Span } from "../notebook/tree.js";
import { readQuantity } from "../units/parse.js";
import { readNumber, readYesNo } from "../units/plain.js";
import type { Assumption, Resolved, Sourced } from "./model.js";

/** Reads the text of a default by the same readers as the notebook; a default that cannot be read is a fault of the schema. */
function readAssumed(field: Field, text: string): unknown {
  if (field.type === "quantity") {
    const read = readQuantity(text, field.kind);
    return read.ok ? read.value : undefined;
  }
  if (field.type === "number") {
    const read = readNumber(text);
    return read.ok ? read.value : undefined;
  }
  if (field.type === "yes-no") {
    const read = readYesNo(text);
    return read.ok ? read.value : undefined;
  }
  if (field.type === "bar") return readBar(text);
  return text;
}

const resolvedRecords = new WeakMap<object, unknown>();

function resolveField(field: Field, located: Located<unknown> | undefined, path: string, holder: Span): Sourced<unknown> | undefined {
  if (!located) {
    if (!field.assumed) return undefined;
    const assumption: Assumption = { path, field: field.doc, text: field.assumed.text, source: field.assumed.source, span: holder };
    return { value: readAssumed(field, field.assumed.text), path, span: holder, assumed: assumption };
  }
  const base = { path: located.path, span: located.span, expression: located.expression };
  if (field.type === "record") {
    return { ...base, value: resolveRecord(field, located.value as Values<Shape>, located.path, located.entry?.keySpan ?? located.span) };
  }
  if (field.type === "named") return { ...base, value: resolveNamed(field, located.value as ReadonlyMap<string, Located<Values<Shape>>>) };
  if (field.type === "list") {
    const items = located.value as readonly Located<unknown>[];
    return { ...base, value: items.map((item) => resolveField(field.of, item, item.path, item.span)) };
  }
  return { ...base, value: located.value };
}

/** Resolves a record. The same values object always gives the same resolved object, so that an unchanged entry stays itself. */
export function resolveRecord<S extends Shape>(field: RecordField<S>, values: Values<S> | undefined, path: string, holder: Span): Resolved<S> {
  const known = values && (resolvedRecords.get(values) as Resolved<S> | undefined);
  if (known) return known;
  const resolved: Record<string, unknown> = {};
  for (const [name, inner] of Object.entries(field.fields)) {
    resolved[name] = resolveField(inner, values?.[name] as Located<unknown> | undefined, `${path}.${name}`, holder);
  }
  if (values) resolvedRecords.set(values, resolved);
  return resolved as Resolved<S>;
}

const resolvedEntries = new WeakMap<object, unknown>();

/** Resolves entries. The same entries always give the same map, and the same entry the same resolved one. */
export function resolveNamed<S extends Shape>(
  field: NamedField<S>,
  entries: ReadonlyMap<string, Located<Values<S>>> | undefined,
): ReadonlyMap<string, Sourced<Resolved<S>>> {
  const known = entries && (resolvedEntries.get(entries) as ReadonlyMap<string, Sourced<Resolved<S>>> | undefined);
  if (known) return known;
  const resolved = new Map<string, Sourced<Resolved<S>>>();
  for (const [name, entry] of entries ?? []) {
    let made = resolvedEntries.get(entry) as Sourced<Resolved<S>> | undefined;
    if (!made) {
      const key = entry.entry?.keySpan ?? entry.span;
      made = { value: resolveRecord(field.of, entry.value, entry.path, key), path: entry.path, span: key };
      resolvedEntries.set(entry, made);
    }
    resolved.set(name, made);
  }
  if (entries) resolvedEntries.set(entries, resolved);
  return resolved;
}

const assumptionsOfRecord = new WeakMap<object, readonly Assumption[]>();

/** The assumptions made anywhere inside a resolved record; looked for once in each. */
export function assumptionsIn(record: Readonly<Record<string, unknown>>): readonly Assumption[] {
  const known = assumptionsOfRecord.get(record);
  if (known) return known;
  const found: Assumption[] = [];
  for (const field of Object.values(record) as (Sourced<unknown> | undefined)[]) {
    if (!field) continue;
    if (field.assumed) found.push(field.assumed);
    if (field.value instanceof Map) {
      for (const entry of field.value.values()) found.push(...assumptionsIn((entry as Sourced<Record<string, unknown>>).value));
    } else if (isRecord(field.value)) found.push(...assumptionsIn(field.value));
  }
  assumptionsOfRecord.set(record, found);
  return found;
}

/** A resolved record is told from a catalog row or a plan place by its fields, which are all sourced. */
function isRecord(value: unknown): value is Record<string, unknown> {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return false;
  return Object.values(value).every((inner) => inner === undefined || (typeof inner === "object" && inner !== null && "path" in inner && "span" in inner));
}
