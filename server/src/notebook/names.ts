/** Names an expression may use: those of `given`, with their spaces, and dotted paths to the fields of the notebook. */
import { nearestNames } from "./nearest.js";
import type { Fault, NameSource } from "./expression-syntax.js";
import type { Field, NamedField, Shape } from "./fields.js";
import { notebook } from "./schema.js";
import { entryOf, type MapNode, type Node } from "./tree.js";

/** One name inside a path, with its place in the expression. */
export interface NamePart {
  readonly name: string;
  readonly start: number;
  readonly end: number;
}

export interface KnownName {
  /** `["given", "clear height"]`, `["columns", "south", "height"]`. */
  readonly keys: readonly string[];
  /** Undefined for a given value. */
  readonly field: Field | undefined;
  /** Names of the user's own among the keys: which section defines them, and their place. */
  readonly symbols: readonly (NamePart & { readonly section: string })[];
  readonly end: number;
}

const mapOf = (node: Node | undefined): MapNode | undefined => (node?.type === "map" ? node : undefined);
const isNameChar = (char: string): boolean => /[\p{L}\p{N}_]/u.test(char);
const isSpace = (code: number): boolean => code === 32 || code === 9;

/** Where `name` ends in the text, any run of spaces standing for a space; undefined where it does not stand there whole. */
export function nameEnd(text: string, at: number, name: string): number | undefined {
  let i = at;
  for (let j = 0; j < name.length; ) {
    if (isSpace(name.charCodeAt(j))) {
      if (!isSpace(text.charCodeAt(i))) return undefined;
      while (isSpace(name.charCodeAt(j))) j++;
      while (isSpace(text.charCodeAt(i))) i++;
    } else if (text[i++] !== name[j++]) return undefined;
  }
  const last = name.charAt(name.length - 1);
  return isNameChar(last) && isNameChar(text.charAt(i)) ? undefined : i;
}

const longestFirst = (names: readonly string[]): readonly string[] => [...names].sort((a, b) => b.length - a.length);

export class Names implements NameSource {
  private readonly given: readonly string[];
  private readonly cache = new Map<MapNode, readonly string[]>();
  /** All names of the user's own; while it is unchanged, every expression resolves as before. */
  readonly signature: string;

  constructor(private readonly root: MapNode | undefined) {
    const given = mapOf(entryOf(root, "given")?.value);
    this.given = given ? this.keysOf(given) : [];
    this.signature = signatureOf(root);
  }

  private keysOf(map: MapNode): readonly string[] {
    let keys = this.cache.get(map);
    if (!keys) this.cache.set(map, (keys = longestFirst(map.entries.map((entry) => entry.key).filter((key) => key !== ""))));
    return keys;
  }

  match(text: string, at: number): KnownName | Fault | undefined {
    for (const [section, field] of Object.entries(notebook.fields)) {
      if (text.startsWith(section, at) && text[at + section.length] === ".") return this.path(text, at, section, field);
    }
    for (const name of this.given) {
      const end = nameEnd(text, at, name);
      if (end !== undefined) return { keys: ["given", name], field: undefined, symbols: [{ section: "given", name, start: at, end }], end };
    }
    return undefined;
  }

  private path(text: string, start: number, section: string, first: Field): KnownName | Fault {
    const keys = [section];
    const symbols: (NamePart & { section: string })[] = [];
    let field: Field | undefined = first;
    let node: Node | undefined = entryOf(this.root, section)?.value;
    let end = start + section.length;
    while (text[end] === "." && field && (field.type === "named" || field.type === "record")) {
      const at = end + 1;
      const known: readonly string[] = field.type === "named" ? this.keysOf(mapOf(node) ?? noEntries) : longestFirst(Object.keys(field.fields as Shape));
      const found = known.map((name) => ({ name, end: nameEnd(text, at, name) })).find((candidate) => candidate.end !== undefined);
      if (!found) return this.unknownStep(text, at, keys, known);
      end = found.end as number;
      keys.push(found.name);
      if (field.type === "named" && keys.length === 2) symbols.push({ section, name: found.name, start: at, end });
      node = entryOf(mapOf(node), found.name)?.value;
      field = section === "given" ? undefined : field.type === "named" ? (field as NamedField).of : (field.fields as Shape)[found.name];
    }
    const shown = keys.join(".");
    if (field && field.type !== "quantity" && field.type !== "number") {
      const more = field.type === "record" ? Object.entries(field.fields as Shape).find(([, inner]) => inner.type === "quantity")?.[0] : undefined;
      return { code: "expression.not-a-value", message: `${shown} is not a single number${more ? `; go on to one of its fields, like ${shown}.${more}` : ""}.`, at: start, length: end - start };
    }
    if (text[end] === ".") return { code: "expression.unknown-name", message: `${shown} is a single value, nothing is inside it.`, at: end, length: 1 };
    return { keys, field, symbols, end };
  }

  private unknownStep(text: string, at: number, keys: readonly string[], known: readonly string[]): Fault {
    const written = /^[^+*/^(),=.]*/.exec(text.slice(at))?.[0].replace(/\s+-.*$/u, "").trimEnd() ?? "";
    const near = nearestNames(written, known);
    const within = keys.join(".");
    const advice = near.length > 0 ? `did you mean ${near.join(" or ")}?` : known.length > 0 ? `there ${known.length === 1 ? "is" : "are"} ${known.slice(0, 8).join(", ")}.` : "nothing is written there.";
    return { code: "expression.unknown-name", message: `"${written}" is not known under ${within}; ${advice}`, at, length: Math.max(1, written.length), instead: near };
  }

  near(written: string): readonly string[] {
    const word = written.trim();
    const fields = [...fieldPaths(this.root)].filter((path) => path.endsWith(`.${word}`)).slice(0, 2);
    return [...nearestNames(word, this.given), ...fields].slice(0, 3);
  }
}

const noEntries: MapNode = { type: "map", span: { block: { key: "", text: "", offset: 0 }, start: 0, end: 0 }, entries: [], flow: false };

/** Paths of the fields written in the notebook, for suggestions. */
function* fieldPaths(root: MapNode | undefined): Generator<string> {
  let left = 2000;
  for (const section of root?.entries ?? []) {
    if (section.key === "given" || !Object.hasOwn(notebook.fields, section.key)) continue;
    for (const entry of mapOf(section.value)?.entries ?? []) {
      yield `${section.key}.${entry.key}`;
      for (const field of mapOf(entry.value)?.entries ?? []) {
        if (left-- <= 0) return;
        yield `${section.key}.${entry.key}.${field.key}`;
      }
    }
  }
}

const ownNames = new WeakMap<object, string>();

/** The user's own names of one entry and of the named lists inside it. */
function namesIn(node: Node, field: Field): string {
  if (node.type !== "map" || field.type !== "record") return "";
  const known = ownNames.get(node);
  if (known !== undefined) return known;
  const inner = Object.entries(field.fields as Shape)
    .filter(([, child]) => child.type === "named")
    .map(([name]) => `${name}:${mapOf(entryOf(node, name)?.value)?.entries.map((entry) => entry.key).join("\t") ?? ""}`)
    .join("\n");
  ownNames.set(node, inner);
  return inner;
}

function signatureOf(root: MapNode | undefined): string {
  const parts: string[] = [];
  for (const [section, field] of Object.entries(notebook.fields)) {
    if (field.type !== "named") continue;
    for (const entry of mapOf(entryOf(root, section)?.value)?.entries ?? []) parts.push(section, entry.key, namesIn(entry.value, (field as NamedField).of));
  }
  return parts.join("\n");
}
