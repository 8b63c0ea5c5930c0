/** Names of the user's own: where each is defined and used, for going to, finding and renaming. */
import { nearestNames } from "./nearest.js";
import type { Located } from "./fields.js";
import type { ParsedNotebook } from "./parse.js";
import type { Problem } from "./problem.js";
import type { Use } from "./read-context.js";
import type { NotebookReading, Unit } from "./read-notebook.js";
import { absolute, entryOf, type MapNode, type ScalarNode, type Span } from "./tree.js";
import { problemAt, replacing, spanIn, viaRelated, wholeOf } from "./written.js";

/** Sections whose entries can be referred to. */
export const namingSections = ["ground", "given", "columns", "bases", "foundations"] as const;

export interface Definition {
  readonly section: string;
  readonly name: string;
  /** The name where it is defined. */
  readonly span: Span;
}

const namesOf = (root: MapNode | undefined, section: string): readonly string[] => {
  const node = entryOf(root, section)?.value;
  return node?.type === "map" ? node.entries.map((entry) => entry.key) : [];
};

/** References to names that are not defined, each with the nearest that are. */
export function* referenceProblems(root: MapNode | undefined, units: ReadonlyMap<unknown, Unit>): Generator<Problem> {
  const known = new Map<string, ReadonlySet<string>>();
  for (const unit of units.values()) {
    for (const use of unit.uses) {
      if (!use.alone) continue;
      let names = known.get(use.section);
      if (!names) known.set(use.section, (names = new Set(namesOf(root, use.section))));
      if (!names.has(use.name)) yield unknownReference(use, [...names]);
    }
  }
}

function unknownReference(use: Use, names: readonly string[]): Problem {
  const near = nearestNames(use.name, names);
  const advice =
    near.length > 0 ? `did you mean ${near.join(" or ")}?` : names.length > 0 ? `there ${names.length === 1 ? "is" : "are"} ${names.slice(0, 6).join(", ")}.` : "nothing is written there yet.";
  const offered = near.length > 0 ? near : names.slice(0, 3);
  return problemAt("reference.unknown", `"${use.name}" is not among the ${use.section}; ${advice}`, use.span, {
    tier: "references",
    fixes: offered.map((name) => replacing(`Write ${name}`, use.written, name, use.start, use.end - use.start)),
    related: viaRelated(use.written.node.via),
  });
}

/** Every definition of the document, in the order written. */
export function definitions(reading: NotebookReading): readonly Definition[] {
  const found: Definition[] = [];
  for (const section of namingSections) {
    const node = entryOf(reading.root, section)?.value;
    if (node?.type !== "map") continue;
    const seen = new Set<string>();
    for (const entry of node.entries) {
      if (!seen.has(entry.key)) found.push({ section, name: entry.key, span: entry.keySpan });
      seen.add(entry.key);
    }
  }
  return found;
}

export const definitionOf = (reading: NotebookReading, section: string, name: string): Definition | undefined =>
  definitions(reading).find((definition) => definition.section === section && definition.name === name);

/** Uses of one name, or of all where none is given, in the order written; a place repeated by aliases counts once. */
export function usesOf(reading: NotebookReading, section?: string, name?: string): readonly Use[] {
  const places = new Set<string>();
  return [...allUses(reading)]
    .filter((use) => (section === undefined || use.section === section) && (name === undefined || use.name === name))
    .filter((use) => {
      const { start, end } = absolute(use.span);
      const key = `${start} ${end} ${use.start}`;
      const first = !places.has(key);
      places.add(key);
      return first;
    })
    .sort((a, b) => absolute(a.span).start - absolute(b.span).start || a.start - b.start);
}

function* allUses(reading: NotebookReading): Generator<Use> {
  for (const unit of reading.units.values()) yield* unit.uses;
  for (const accepted of reading.values.accept?.value ?? []) {
    const at = accepted.value.at as Located<string> | undefined;
    const section = at && supportSection(reading, at.value.trim());
    if (!at || !section) continue;
    const node = at.node as ScalarNode;
    const written = wholeOf(node, false);
    const start = node.text.length - node.text.trimStart().length;
    const end = node.text.trimEnd().length;
    yield { section, name: at.value.trim(), span: spanIn(written, start, end - start), written, start, end, alone: true };
  }
}

/** The section a support named under `accept` stands in: columns before what can stand alone. */
const supportSection = (reading: NotebookReading, name: string): string | undefined =>
  ["columns", "foundations", "bases"].find((section) => namesOf(reading.root, section).includes(name));

export interface SymbolAt {
  readonly section: string;
  readonly name: string;
  /** The stretch under the cursor. */
  readonly span: Span;
  readonly role: "definition" | "use";
}

/** The name at an offset; its end counts, so that a cursor right after a name finds it. */
export function findSymbolAt(_parsed: ParsedNotebook, reading: NotebookReading, offset: number): SymbolAt | undefined {
  const holds = (span: Span): boolean => {
    const { start, end } = absolute(span);
    return start <= offset && offset <= end;
  };
  const definition = definitions(reading).find((candidate) => holds(candidate.span));
  if (definition) return { section: definition.section, name: definition.name, span: definition.span, role: "definition" };
  const use = usesOf(reading).find((candidate) => holds(candidate.span));
  return use && { section: use.section, name: use.name, span: use.span, role: "use" };
}
