/** Renaming what the user named: every place that says the name, quoted where YAML or a calculation asks for it. */
import { functionNames } from "./expression-syntax.js";
import type { Use } from "./read-context.js";
import type { NotebookReading } from "./read-notebook.js";
import { asScalar, asYaml } from "./quoting.js";
import { definitionOf, definitions, usesOf, type SymbolAt } from "./references.js";
import { notebook } from "./schema.js";
import { absolute, entryOf, type Span } from "./tree.js";

export interface Edit {
  readonly span: Span;
  readonly text: string;
}

/** The edits, or why the name cannot be taken. */
export type Renaming = { readonly ok: true; readonly edits: readonly Edit[] } | { readonly ok: false; readonly message: string };

const refuse = (message: string): Renaming => ({ ok: false, message });

export function renameEdits(reading: NotebookReading, symbol: Pick<SymbolAt, "section" | "name">, newName: string): Renaming {
  const name = newName.trim();
  const { section } = symbol;
  const definition = definitionOf(reading, section, symbol.name);
  if (!definition) return refuse(`"${symbol.name}" is not defined under ${section}, so there is nothing to rename.`);
  if (name === symbol.name) return { ok: true, edits: [] };
  if (name === "" || /[\u0000-\u001f\u007f\u0085\u2028\u2029]/u.test(name)) return refuse("A name needs at least one letter, on one line.");
  if (definitions(reading).some((other) => other.section === section && other.name === name)) return refuse(`"${name}" is already a name under ${section}; choose another.`);
  const uses = usesOf(reading, section, symbol.name);
  const inExpressions = uses.some((use) => !use.alone);
  if ((inExpressions || section === "given") && !canStandInExpression(name))
    return refuse(`"${name}" cannot stand in a calculation; begin with a letter and use letters, digits, spaces, hyphens and underscores.`);
  return { ok: true, edits: [definitionEdit(reading, section, definition.span, symbol.name, name), ...useEdits(uses, name)] };
}

function canStandInExpression(name: string): boolean {
  if (!/^[\p{L}_][\p{L}\p{N} _-]*$/u.test(name)) return false;
  return !functionNames.some((known) => known === name) && !Object.hasOwn(notebook.fields, name);
}

function definitionEdit(reading: NotebookReading, section: string, span: Span, old: string, name: string): Edit {
  const { text } = span.block;
  const before = text[span.start - 1];
  const quote = (before === '"' || before === "'") && text[span.end] === before ? before : "";
  const map = entryOf(reading.root, section)?.value;
  const inFlow = map?.type === "map" && map.flow;
  const written = text.slice(span.start, span.end);
  if (quote !== "" && written === old) return { span, text: asScalar({ style: quote === '"' ? "double" : "single" }, name) };
  return { span, text: asYaml(name, inFlow) };
}

/** One edit for each place; a scalar that is not written letter by letter is written anew. */
function useEdits(uses: readonly Use[], name: string): readonly Edit[] {
  const byScalar = new Map<string, Use[]>();
  for (const use of uses) {
    const { start, end } = absolute(use.written.node.span);
    const key = `${start} ${end}`;
    byScalar.set(key, [...(byScalar.get(key) ?? []), use]);
  }
  return [...byScalar.values()].flatMap((group) => scalarEdits(group, name));
}

function scalarEdits(group: readonly Use[], name: string): readonly Edit[] {
  const { node, inFlow } = group[0].written;
  const places = group.map((use) => ({ start: use.written.from + use.start, end: use.written.from + use.end })).sort((a, b) => b.start - a.start);
  const whole = places.reduce((text, { start, end }) => text.slice(0, start) + name + text.slice(end), node.text);
  if (node.verbatim && asScalar(node, whole, inFlow) === whole) return group.map((use) => ({ span: use.span, text: name }));
  return [{ span: node.span, text: asScalar(node.style === "block" ? { style: "plain" } : node, whole, inFlow) }];
}
