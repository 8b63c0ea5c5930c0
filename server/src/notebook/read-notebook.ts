/** Reads one document of a parsed notebook. What did not change keeps its objects, so that nothing below computes it again. */
import { Evaluator, outcomeText } from "./expression.js";
import type { Field, Located, NamedField, Shape, Values } from "./fields.js";
import { inOrder, type ParsedNotebook } from "./parse.js";
import type { Problem } from "./problem.js";
import { newContext, type ReadContext, type Use } from "./read-context.js";
import { readField, readNamedEntry } from "./read.js";
import { referenceProblems } from "./references.js";
import { notebook, type NotebookShape } from "./schema.js";
import { withoutEchoes } from "./tiers.js";
import type { Entry, MapNode, Span } from "./tree.js";
import { unknownKey } from "./unknown-key.js";

/** What is read and kept as one: a named entry, or a section that has none. */
export interface Unit {
  /** The nodes it was read from; the same ones give the same result. */
  readonly keySpan: Span;
  readonly parts: readonly unknown[];
  /** The names of the notebook, where an expression was resolved among them. */
  readonly names: string | undefined;
  readonly dependencies: readonly { readonly keys: readonly string[]; readonly outcome: string }[];
  readonly located: Located<unknown> | undefined;
  readonly problems: readonly Problem[];
  readonly uses: readonly Use[];
}

export interface NotebookReading {
  readonly values: Values<NotebookShape>;
  readonly problems: readonly Problem[];
  /** How many units were read in this call; the others were kept. */
  readonly entriesRead: number;
  readonly root: MapNode | undefined;
  /** By entry for named entries, by name for sections that have none. */
  readonly units: ReadonlyMap<Entry | string, Unit>;
  /** All names of the user's own. */
  readonly signature: string;
}

/** Reads a document. `previous` is the reading of the same document before an edit; the result is the same without it. */
export function readNotebook(parsed: ParsedNotebook, documentIndex: number, previous?: NotebookReading): NotebookReading {
  const root = parsed.documents[documentIndex] as MapNode | undefined;
  const reader = new Reader(root, previous);
  const values: Record<string, Located<unknown> | undefined> = {};
  for (const name of Object.keys(notebook.fields)) values[name] = undefined;
  const seen = new Set<string>();
  const problems: Problem[] = [];
  for (const entry of root?.entries ?? []) {
    if (seen.has(entry.key)) continue;
    seen.add(entry.key);
    if (Object.hasOwn(notebook.fields, entry.key)) values[entry.key] = reader.section((notebook.fields as Shape)[entry.key], entry, root?.flow === true);
    else problems.push(unknownKey(entry, notebook, [], root?.flow === true));
  }
  for (const unit of reader.units.values()) for (const problem of unit.problems) problems.push(problem);
  for (const problem of referenceProblems(root, reader.units)) problems.push(problem);
  return {
    values: values as Values<NotebookShape>,
    problems: withoutEchoes(inOrder(merged(problems)), parsed),
    entriesRead: reader.read,
    root,
    units: reader.units,
    signature: reader.signature,
  };
}

class Reader {
  read = 0;
  readonly units = new Map<Entry | string, Unit>();
  readonly signature: string;
  private readonly evaluator: Evaluator;

  constructor(
    root: MapNode | undefined,
    private readonly previous: NotebookReading | undefined,
  ) {
    this.evaluator = new Evaluator(root);
    const { signature } = this.evaluator.names;
    // The earlier string where it is equal, so that comparing it for every unit compares no characters.
    this.signature = previous?.signature === signature ? previous.signature : signature;
  }

  section(field: Field, entry: Entry, inFlow: boolean): Located<unknown> | undefined {
    const node = entry.value;
    if (field.type !== "named" || node.type !== "map") {
      const parts = node.type === "map" ? node.entries : [node];
      return this.unit(entry.key, entry.keySpan, parts, (context) => readField(field, node, entry, [entry.key], context, inFlow));
    }
    const entries = new Map<string, Located<unknown>>();
    const seen = new Set<string>();
    for (const child of node.entries) {
      if (seen.has(child.key)) continue;
      seen.add(child.key);
      const located = this.unit(child, child.keySpan, [child], (context) => readNamedEntry(field as NamedField, child, [entry.key, child.key], context, node.flow));
      if (located) entries.set(child.key, located);
    }
    const before = this.previous?.values[entry.key as keyof NotebookShape]?.value as ReadonlyMap<string, unknown> | undefined;
    return { value: before && sameMap(before, entries) ? before : entries, path: entry.key, span: entry.keySpan, node, entry, ...(node.via ? { via: node.via } : {}) };
  }

  private unit(key: Entry | string, keySpan: Span, parts: readonly unknown[], read: (context: ReadContext) => Located<unknown> | undefined): Located<unknown> | undefined {
    const before = this.previous?.units.get(key);
    if (before && before.keySpan === keySpan && sameList(before.parts, parts) && this.stillHolds(before)) {
      this.units.set(key, before);
      return before.located;
    }
    this.read++;
    const context = newContext(this.evaluator);
    const located = read(context);
    this.units.set(key, {
      keySpan,
      parts,
      names: context.usesNames ? this.signature : undefined,
      dependencies: [...context.dependencies.values()].map((read) => ({ keys: read, outcome: outcomeText(this.evaluator.outcomeAt(read)) })),
      located,
      problems: context.problems,
      uses: context.uses,
    });
    return located;
  }

  private stillHolds(unit: Unit): boolean {
    // What is suggested for an unknown name may stand anywhere in the notebook.
    if (unit.problems.some((problem) => problem.code === "expression.unknown-name")) return false;
    if (unit.names !== undefined && unit.names !== this.signature) return false;
    return unit.dependencies.every(({ keys, outcome }) => outcomeText(this.evaluator.outcomeAt(keys)) === outcome);
  }
}

const sameList = (a: readonly unknown[], b: readonly unknown[]): boolean => a.length === b.length && a.every((item, i) => item === b[i]);

function sameMap(a: ReadonlyMap<string, unknown>, b: ReadonlyMap<string, unknown>): boolean {
  if (!(a instanceof Map) || a.size !== b.size) return false;
  const others = b.entries();
  for (const [key, value] of a) {
    const next = others.next();
    if (next.done || next.value[0] !== key || next.value[1] !== value) return false;
  }
  return true;
}

/** A slip in a value that is repeated by aliases is told once, with the places of the repeats. */
function merged(problems: readonly Problem[]): readonly Problem[] {
  const firsts = new Map<string, Problem>();
  for (const problem of problems) {
    const { block, start, end } = problem.span;
    const key = `${block.key} ${start} ${end} ${problem.code} ${problem.message}`;
    const first = firsts.get(key);
    if (!first) firsts.set(key, problem);
    else if ((first.related?.length ?? 0) < 10) firsts.set(key, { ...first, related: [...(first.related ?? []), ...(problem.related ?? [])] });
  }
  return [...firsts.values()];
}
