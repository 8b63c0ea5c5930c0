/** From the YAML parser's tree to the located tree: aliases and merge keys resolved, every node with its place. */
import { isAlias, isMap, isScalar, isSeq, type Alias, type Document, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from "yaml";
import { checkKey, hashCallout, flowComma, flowHash, listComma } from "./pitfalls.js";
import type { Problem } from "./problem.js";
import type { Block, Entry, MapNode, Node, Span } from "./tree.js";

/** Nodes that aliases may copy in one document; a file that needs more is not written by hand. */
export const expansionBudget = 50_000;
/** Collections inside collections; a notebook needs six. */
const deepest = 40;

export interface Walked {
  readonly root: Node;
  readonly problems: readonly Problem[];
  /** How many nodes were copied for aliases. */
  readonly expanded: number;
  /** An alias whose anchor is not in this block. */
  readonly crosses: boolean;
}

interface Anchored {
  node: Node | undefined;
}

/** Everything one walk carries along. `text` is the block's. */
export interface Walk {
  readonly block: Block;
  readonly problems: Problem[];
  readonly anchors: Map<string, Anchored>;
  expanded: number;
  crosses: boolean;
  tooDeep: boolean;
  overBudget: boolean;
}

const range = (node: unknown): readonly [number, number] => {
  const found = (node as { range?: readonly number[] | null }).range;
  return found ? [found[0], found[1]] : [0, 0];
};

/** @param level How many collections stand around the root of this text in the whole notebook. */
export function walk(document: Document, block: Block, level: number): Walked {
  const state: Walk = { block, problems: [], anchors: new Map(), expanded: 0, crosses: false, tooDeep: false, overBudget: false };
  const root = walkNode(state, document.contents, level, range(document.contents ?? document)[0]);
  return { root, problems: state.problems, expanded: state.expanded, crosses: state.crosses };
}

const spanOf = (state: Walk, start: number, end: number): Span => ({
  block: state.block,
  start: Math.min(start, state.block.text.length),
  end: Math.min(Math.max(start, end), state.block.text.length),
});

export function report(state: Walk, code: string, message: string, start: number, end: number, more: Partial<Problem> = {}): void {
  state.problems.push({ code, tier: "syntax", severity: "error", message, span: spanOf(state, start, end), ...more });
}

function walkNode(state: Walk, node: unknown, level: number, emptyAt: number): Node {
  if (isAlias(node)) return walkAlias(state, node);
  const anchor = (node as { anchor?: string } | null)?.anchor;
  const anchored: Anchored = { node: undefined };
  if (anchor) state.anchors.set(anchor, anchored);
  const made = walkPlainNode(state, node, level, emptyAt);
  anchored.node = made;
  return made;
}

function walkPlainNode(state: Walk, node: unknown, level: number, emptyAt: number): Node {
  if (isScalar(node)) return walkScalar(state, node, emptyAt);
  if (!isMap(node) && !isSeq(node)) return { type: "null", span: spanOf(state, emptyAt, emptyAt) };
  if (level >= deepest) {
    const [start] = range(node);
    if (!state.tooDeep) report(state, "yaml.too-deep", `More than ${deepest} levels stand inside one another here; a notebook needs six.`, start, start + 1);
    state.tooDeep = true;
    return { type: "null", span: spanOf(state, start, start) };
  }
  if (isMap(node)) return walkMap(state, node, level + 1);
  return walkSeq(state, node, level + 1);
}

const nothing = new Set(["", "~", "null", "Null", "NULL"]);

function walkScalar(state: Walk, node: Scalar, emptyAt: number): Node {
  const { text } = state.block;
  const [start, end] = range(node);
  const value = typeof node.source === "string" ? node.source : String(node.value ?? "");
  const style = node.type === "QUOTE_DOUBLE" ? "double" : node.type === "QUOTE_SINGLE" ? "single" : node.type?.startsWith("BLOCK") ? "block" : "plain";
  if (style === "plain") {
    if (value === "") return { type: "null", span: spanOf(state, emptyAt, emptyAt) };
    const span = spanOf(state, start, end);
    if (nothing.has(value)) return { type: "null", span };
    return { type: "scalar", span, text: value, style, verbatim: text.slice(start, end) === value };
  }
  if (style === "block") {
    const written = text.slice(start, end);
    return { type: "scalar", span: spanOf(state, start, start + written.trimEnd().length), text: value, style, verbatim: false };
  }
  const mark = text[start];
  const closed = end - start > 1 && text[end - 1] === mark;
  const span = spanOf(state, start + 1, closed ? end - 1 : end);
  return { type: "scalar", span, text: value, style, verbatim: text.slice(span.start, span.end) === value };
}

/** Where a value ends as written; a repeated one ends where its alias does. */
export const writtenEnd = (node: Node): Span => node.via ?? node.span;

function walkMap(state: Walk, node: YAMLMap, level: number): MapNode {
  const flow = node.flow === true;
  const entries: Entry[] = [];
  const merges: { readonly value: unknown; readonly at: number }[] = [];
  const seen = new Map<string, Span>();
  const items = node.items as Pair[];
  for (let i = 0; i < items.length; i++) {
    const pair = items[i];
    if (flow && i > 0 && (pair.value === null || pair.value === undefined)) {
      i = flowComma(state, items, i);
      continue;
    }
    const key = keyOf(state, pair);
    if (!key) continue;
    const [keyStart, keyEnd] = range(pair.key);
    const colon = afterColon(state.block.text, keyEnd);
    if (key.text === "<<" && key.plain) {
      merges.push({ value: pair.value, at: keyStart });
      continue;
    }
    const value = walkNode(state, pair.value, level, colon);
    const swallowed = flow && flowHash(state, pair.value, node, colon);
    if (!swallowed) hashCallout(state, value, isScalar(pair.value) && pair.value.source !== "" ? range(pair.value)[1] : value.type === "null" ? colon : -1);
    const before = seen.get(key.text);
    if (before) {
      const message = `"${key.text}" is written twice here; keep one of them.`;
      state.problems.push(repeated(message, key.span, before));
    } else seen.set(key.text, key.span);
    entries.push({ key: key.text, keySpan: key.span, value });
  }
  const [start, end] = flow ? range(node) : blockRange(node, entries, merges);
  for (const merge of merges) mergeInto(state, entries, seen, merge.value, merge.at, level);
  return { type: "map", span: spanOf(state, start, end), entries, flow };
}

/** From the first key to the end of the last value, without the blank lines and comments that follow. */
function blockRange(node: YAMLMap, entries: readonly Entry[], merges: readonly { readonly value: unknown; readonly at: number }[]): readonly [number, number] {
  const starts = [...entries.map((entry) => entry.keySpan.start), ...merges.map((merge) => merge.at)];
  if (starts.length === 0) return range(node);
  const last = entries.at(-1);
  return [Math.min(...starts), Math.max(last ? writtenEnd(last.value).end : 0, ...merges.map((merge) => (merge.value ? range(merge.value)[1] : merge.at)))];
}

/** The message for a name written twice: at the second, pointing to the first. */
export const repeated = (message: string, second: Span, first: Span): Problem => ({
  code: "yaml.duplicate-key",
  tier: "syntax",
  severity: "error",
  message,
  span: second,
  related: [{ span: first, message: "It is first written here; this one is used." }],
});

const beforeSpaces = (text: string, at: number): number => {
  while (at > 0 && text.charCodeAt(at - 1) === 32) at--;
  return at;
};

const afterColon = (text: string, keyEnd: number): number => {
  let at = keyEnd;
  while (text.charCodeAt(at) === 32 || text.charCodeAt(at) === 9) at++;
  return text[at] === ":" ? at + 1 : keyEnd;
};

function keyOf(state: Walk, pair: Pair): { readonly text: string; readonly span: Span; readonly plain: boolean } | undefined {
  const [start, end] = range(pair.key);
  const node = isAlias(pair.key) ? undefined : pair.key;
  if (isScalar(node)) {
    const made = walkScalar(state, node, start);
    if (made.type === "scalar" || (made.span.end > made.span.start && made.type === "null")) {
      const text = made.type === "scalar" ? made.text : state.block.text.slice(start, end);
      checkKey(state, text, made.span);
      if (node.anchor) state.anchors.set(node.anchor, { node: made });
      return { text, span: made.span, plain: node.type === "PLAIN" };
    }
    report(state, "yaml.key", "Nothing stands before this colon; write a name there, or remove the line.", start, start + 1);
    return undefined;
  }
  report(state, "yaml.key", "A key has to be one word or a few words, not a list, a mapping or a repeated value.", start, Math.max(end, start + 1));
  return undefined;
}

function walkSeq(state: Walk, node: YAMLSeq, level: number): Node {
  const items: Node[] = [];
  const written = node.items as unknown[];
  for (let i = 0; i < written.length; i++) {
    const item = written[i];
    const joined = node.flow === true ? listComma(state, written, i) : i;
    const [start, end] = range(item);
    const value = walkNode(state, item, level, start);
    const swallowed = node.flow === true && flowHash(state, item, node, beforeSpaces(state.block.text, start));
    if (!swallowed) hashCallout(state, value, isScalar(item) ? (value.type === "null" ? beforeSpaces(state.block.text, start) : end) : -1);
    items.push(value);
    i = joined;
  }
  const [start, end] = range(node);
  return { type: "seq", span: spanOf(state, start, node.flow || items.length === 0 ? end : writtenEnd(items[items.length - 1]).end), items };
}

function walkAlias(state: Walk, node: Alias): Node {
  const [start, end] = range(node);
  const via = spanOf(state, start, end);
  const empty: Node = { type: "null", span: via };
  const found = state.anchors.get(node.source);
  if (!found) {
    state.crosses = true;
    report(state, "yaml.alias-unknown", `Nothing above is marked &${node.source}; mark the value to repeat with &${node.source}, or write it out here.`, start, end);
    return empty;
  }
  if (!found.node) {
    report(state, "yaml.alias-cycle", `*${node.source} stands inside what it repeats; write the value out here.`, start, end);
    return empty;
  }
  return copyVia(state, found.node, via) ?? empty;
}

/** A copy that knows the place of the alias, or undefined once the budget is spent. */
function copyVia(state: Walk, node: Node, via: Span): Node | undefined {
  state.expanded++;
  if (state.expanded > expansionBudget) {
    if (!state.overBudget)
      report(state, "yaml.alias-budget", `The repeats in this notebook come to more than ${expansionBudget.toLocaleString("en-US")} values here; write fewer of them inside one another.`, via.start, via.end);
    state.overBudget = true;
    return undefined;
  }
  if (node.type === "scalar" || node.type === "null") return { ...node, via };
  const blank: Node = { type: "null", span: via, via };
  if (node.type === "seq") return { ...node, items: node.items.map((item) => copyVia(state, item, via) ?? blank), via };
  return { ...node, entries: node.entries.map((entry) => ({ ...entry, value: copyVia(state, entry.value, via) ?? blank, via })), via };
}

/** `<<: *base`, `<<: [*a, *b]`: keys the map has itself win, then earlier sources. */
function mergeInto(state: Walk, entries: Entry[], seen: Map<string, Span>, value: unknown, at: number, level: number): void {
  const sources = isSeq(value) ? (value.items as unknown[]) : [value];
  for (const source of sources) {
    const made = walkNode(state, source, level, at);
    const via = isAlias(source) ? spanOf(state, ...range(source)) : spanOf(state, at, at + 2);
    if (made.type !== "map") {
      const told = isAlias(source) && made.type === "null";
      if (!told) report(state, "yaml.merge", "Only a mapping marked with & above can be merged with <<.", at, at + 2);
      continue;
    }
    for (const entry of made.entries) {
      if (seen.has(entry.key)) continue;
      seen.set(entry.key, entry.keySpan);
      entries.push({ ...entry, via: entry.via ?? via });
    }
  }
}

