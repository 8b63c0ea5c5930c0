/** Which field stands at an offset, also on a line that is still being written. */
import type { ParsedNotebook } from "./parse.js";
import { absolute, type Entry, type MapNode, type Node } from "./tree.js";

export interface Location {
  /** -1 where the text has no document. */
  readonly documentIndex: number;
  /** `["foundations", "pier", "depth"]`; on a blank line the mapping the line would belong to. */
  readonly path: readonly string[];
  /** The entry the path ends at, where the tree has it. */
  readonly entry?: Entry;
  readonly onKey: boolean;
  /** On or right after the colon's value, written or not. */
  readonly onValue: boolean;
  readonly inComment: boolean;
}

interface Found {
  readonly path: readonly string[];
  readonly entry: Entry;
  readonly onKey: boolean;
  readonly value: Node;
}

export function locate(parsed: ParsedNotebook, offset: number): Location {
  const { text } = parsed;
  const at = Math.max(0, Math.min(offset, text.length));
  const documentIndex = documentAt(parsed, at);
  const root = parsed.documents[documentIndex] as MapNode | undefined;
  const line = lineAround(text, at);
  const inside = root && inTree(root, at, []);
  // A key without its colon is read as one with the next line; here it is a line still being written.
  const found = inside?.onKey && isTorn(inside.entry) ? undefined : inside;
  const inComment = !isBlockText(found, at) && at > commentStart(line.text) + line.start;
  const written = keyOf(line.text);
  const unfinished = !written && !line.text.trimStart().startsWith("- ") && !found;
  if (found && (found.onKey || !isGap(found))) {
    return { documentIndex, path: found.path, entry: found.entry, onKey: found.onKey, onValue: !found.onKey && found.value.type !== "map", inComment };
  }
  const path = pathByIndent(text, line, at, unfinished || line.text.trim() === "");
  const entry = entryAt(root, path);
  const colon = written ? line.start + written.colon : Number.POSITIVE_INFINITY;
  const onKey = written !== undefined && at <= colon;
  return { documentIndex, path, ...(entry ? { entry } : {}), onKey, onValue: written !== undefined && at > colon, inComment };
}

const isTorn = ({ keySpan }: Entry): boolean => keySpan.block.text.slice(keySpan.start, keySpan.end).includes("\n");

/** Inside a block mapping and in none of its entries: the line itself says by its indentation where it stands. */
const isGap = (found: Found): boolean => found.value.type === "map" && !found.value.flow;

const isBlockText = (found: Found | undefined, at: number): boolean =>
  found?.value.type === "scalar" && found.value.style === "block" && at > absolute(found.value.span).start + 1;

function documentAt(parsed: ParsedNotebook, at: number): number {
  let index = parsed.documents.length - 1;
  while (index > 0 && absolute(parsed.documents[index].span).start > at) index--;
  return index;
}

/** The deepest entry whose key or value holds the offset; what aliases brought in stands elsewhere. */
function inTree(map: MapNode, at: number, path: readonly string[]): Found | undefined {
  for (const entry of map.entries) {
    if (entry.via) continue;
    const key = absolute(entry.keySpan);
    const here = [...path, entry.key];
    if (key.start <= at && at <= key.end) return { path: here, entry, onKey: true, value: entry.value };
    if (at < key.start) continue;
    const found = inNode(entry.value, at, here, entry);
    if (found) return found;
  }
  return undefined;
}

function inNode(node: Node, at: number, path: readonly string[], entry: Entry): Found | undefined {
  if (node.via) {
    const { start, end } = absolute(node.via);
    return start <= at && at <= end ? { path, entry, onKey: false, value: node } : undefined;
  }
  const { start, end } = absolute(node.span);
  if (at < start || end < at) return undefined;
  const here: Found = { path, entry, onKey: false, value: node };
  if (node.type === "map") return inTree(node, at, path) ?? here;
  if (node.type !== "seq") return here;
  for (const [i, item] of node.items.entries()) {
    const found = item.type === "map" || item.type === "seq" ? inNode(item, at, [...path, String(i + 1)], entry) : undefined;
    if (found) return found;
  }
  return here;
}

interface Line {
  readonly start: number;
  readonly text: string;
}

function lineAround(text: string, at: number): Line {
  const start = at === 0 ? 0 : text.lastIndexOf("\n", at - 1) + 1;
  const end = text.indexOf("\n", at);
  return { start, text: text.slice(start, end < 0 ? text.length : end).replace(/\r$/u, "") };
}

const keyPattern = /^(\s*(?:- +)*)("[^"]*"|'[^']*'|[^\s#"'[\]{}-][^:#]*|[^\s#"'[\]{}][^:#\s]*[^:#]*?)\s*:(?=\s|$)/u;

function keyOf(line: string): { readonly key: string; readonly indent: number; readonly colon: number } | undefined {
  const found = keyPattern.exec(line);
  return found ? { key: found[2].trim().replace(/^(["'])(.*)\1$/u, "$2"), indent: found[1].length, colon: found[0].length - 1 } : undefined;
}

/** Where the line's comment begins; beyond the line where it has none. */
function commentStart(line: string): number {
  let quote = "";
  for (let i = 0; i < line.length; i++) {
    const char = line[i];
    const opens = i === 0 || /[\s,[{]/u.test(line[i - 1]);
    if (quote !== "") {
      if (char === quote) quote = "";
    } else if ((char === '"' || char === "'") && opens) quote = char;
    else if (char === "#" && (i === 0 || /\s/u.test(line[i - 1]))) return i;
  }
  return Number.POSITIVE_INFINITY;
}

/** The path a line has by its indentation. An unfinished line belongs to the mapping above that is indented less. */
function pathByIndent(text: string, line: Line, at: number, unfinished: boolean): readonly string[] {
  const own = keyOf(line.text);
  const path: string[] = own && !unfinished ? [own.key] : [];
  const blank = line.text.trim() === "";
  let indent = own ? own.indent : blank ? at - line.start : line.text.length - line.text.trimStart().length;
  let end = line.start - 1;
  while (indent > 0 && end >= 0) {
    const start = end === 0 ? 0 : text.lastIndexOf("\n", end - 1) + 1;
    const above = text.slice(start, end).replace(/\r$/u, "");
    if (/^(?:---|\.\.\.)(?:\s|$)/u.test(above)) break;
    const key = above.trimStart().startsWith("#") ? undefined : keyOf(above);
    if (key && key.indent < indent) {
      path.unshift(key.key);
      indent = key.indent;
    }
    end = start - 1;
  }
  return path;
}

function entryAt(root: MapNode | undefined, path: readonly string[]): Entry | undefined {
  let map = root;
  let entry: Entry | undefined;
  for (const key of path) {
    entry = map?.entries.find((candidate) => candidate.key === key);
    if (!entry) return undefined;
    map = entry.value.type === "map" ? entry.value : undefined;
  }
  return entry;
}
