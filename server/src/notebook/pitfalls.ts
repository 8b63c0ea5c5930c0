/**
 * Places where YAML is satisfied and the meaning is lost: `8 #6`, a comma inside `{ }`, spaces and digits that only look
 * ordinary. Each is found while the tree is walked, and explained with the text that says what was meant.
 */
import { isPair, isScalar, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from "yaml";
import { quoted } from "./quoting.js";
import type { Fix } from "./problem.js";
import type { Node, Span } from "./tree.js";
import type { Walk } from "./walk.js";

const span = (state: Walk, start: number, end: number): Span => ({ block: state.block, start, end });

const fix = (title: string, at: Span, text: string): Fix => ({ title, edits: [{ span: at, text }] });

const report = (state: Walk, code: string, message: string, at: Span, fixes: readonly Fix[] = []): void => {
  state.problems.push({ code, tier: "syntax", severity: "error", message, span: at, fixes });
};

const callout = /[ \t]+#(\d{1,3})(?![\d\w])([^\r\n]*)/y;

/**
 * A bar size lost to a comment: `bars: 8 #6`, `spiral: #4 at 3 in`. A comment with a space after its `#` is a comment.
 * @param after Where the value ends; negative where there is none on the line.
 */
export function hashCallout(state: Walk, value: Node, after: number): void {
  if (after < 0 || value.type === "map" || value.type === "seq") return;
  const { text } = state.block;
  callout.lastIndex = after;
  const found = callout.exec(text);
  if (!found) return;
  const at = after + found[0].indexOf("#");
  const size = found[1];
  const said = value.type === "scalar" ? `${value.text} ` : "";
  const instead = `${said}no. ${size}${found[2].trimEnd()}`;
  const quotedValue = value.type === "scalar" && value.style !== "plain";
  const fixes = quotedValue ? [] : [fix(`Write ${instead}`, span(state, at, at + 1), "no. ")];
  report(state, "yaml.hash-callout", `"#${size}" is read as a comment, because # begins one in YAML; write ${instead}.`, span(state, at, after + found[0].trimEnd().length), fixes);
}

const rangeOf = (node: unknown): readonly [number, number] => {
  const found = (node as { range?: readonly number[] | null } | null)?.range;
  return found ? [found[0], found[1]] : [0, 0];
};

const isLeftover = (pair: Pair): boolean => (pair.value === null || pair.value === undefined) && isScalar(pair.key);

/** A value cut by a comma inside `{ }`: what follows has no colon. Returns the index of the last leftover. */
export function flowComma(state: Walk, items: readonly Pair[], first: number): number {
  let last = first;
  while (last + 1 < items.length && isLeftover(items[last + 1])) last++;
  const holder = items[first - 1];
  const [, end] = rangeOf(items[last].key);
  const cut = isScalar(holder.value) && (holder.value as Scalar).type === "PLAIN" && (holder.value as Scalar).source !== "";
  if (!cut) {
    const [start] = rangeOf(items[first].key);
    report(state, "yaml.flow-comma", `"${state.block.text.slice(start, end)}" has no key; inside { } each part between commas is a key, a colon and a value.`, span(state, start, end));
    return last;
  }
  sayCut(state, rangeOf(holder.value)[0], end);
  return last;
}

function sayCut(state: Walk, start: number, end: number): void {
  const whole = state.block.text.slice(start, end);
  const at = span(state, start, end);
  const message = `The comma ends this value, because it stands inside { } or [ ]; quote the whole value: ${quoted(whole)}.`;
  report(state, "yaml.flow-comma", message, at, [fix(`Write ${quoted(whole)}`, at, quoted(whole))]);
}

const surplus = (text: string): number => {
  let open = 0;
  for (const char of text) open += char === "(" ? 1 : char === ")" ? -1 : 0;
  return open;
};

const plainText = (node: unknown): string | undefined =>
  isScalar(node) && node.type === "PLAIN" && typeof node.source === "string" ? node.source : undefined;

/** An expression cut by a comma inside `[ ]`, seen by its open parenthesis. Returns the index of its last part. */
export function listComma(state: Walk, items: readonly unknown[], first: number): number {
  const text = plainText(items[first]);
  if (text === undefined || !text.startsWith("=") || surplus(text) <= 0) return first;
  let open = surplus(text);
  let last = first;
  while (open > 0 && last + 1 < items.length) {
    const next = plainText(items[last + 1]);
    if (next === undefined || isPair(items[last + 1])) break;
    last++;
    open += surplus(next);
  }
  if (last > first) sayCut(state, rangeOf(items[first])[0], rangeOf(items[last])[1]);
  return last;
}

const swallowed = /[ \t]#(?:[^\r\n]*?)[\]}][^\r\n]*/y;

/** A `#` that swallows the closing brace on its line: `{bars: 8 #6, base: A}`. Says whether there is one. */
export function flowHash(state: Walk, value: unknown, collection: YAMLMap | YAMLSeq, emptyAt: number): boolean {
  if (!isScalar(value) || value.type !== "PLAIN") return false;
  const { text } = state.block;
  if (closes(text, rangeOf(collection)[1])) return false;
  const empty = value.source === "";
  const end = empty ? emptyAt : rangeOf(value)[1];
  const start = empty ? emptyAt + 1 : rangeOf(value)[0];
  swallowed.lastIndex = end;
  const found = swallowed.exec(text);
  if (!found) return false;
  const comment = span(state, end + 1, end + found[0].trimEnd().length);
  const stop = end + found[0].search(/[,\]}]/u);
  const whole = text.slice(start, stop).trimEnd();
  const message = "The # begins a comment and swallows the closing brace; quote the value, or write the closing brace before the comment.";
  report(state, "yaml.flow-hash", message, comment, [fix(`Write ${quoted(whole)}`, span(state, start, start + whole.length), quoted(whole))]);
  return true;
}

const closes = (text: string, end: number): boolean => text[end - 1] === "}" || text[end - 1] === "]";

const oddSpace = /[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]|[\u00ad\u200b-\u200f\u2060\ufeff]/u;
const oddDigitOrMinus = /[\u2212\uff0d\uff10-\uff19]/u;

/** Spaces, digits and minus signs in a key that only look like those of the keyboard. */
export function checkKey(state: Walk, key: string, at: Span): void {
  const spaced = oddSpace.exec(key);
  const odd = spaced ?? oddDigitOrMinus.exec(key);
  if (!odd) return;
  const code = `U+${(odd[0].codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;
  const plain = key
    .replace(/[\u00ad\u200b-\u200f\u2060\ufeff]/gu, "")
    .replace(new RegExp(oddSpace.source, "gu"), " ")
    .replace(/[\u2212\uff0d]/gu, "-")
    .replace(/[\uff10-\uff19]/gu, (digit) => String(digit.charCodeAt(0) - 0xff10));
  const written = state.block.text.slice(at.start, at.end) === key;
  const leading = spaced && key.trimStart() !== key;
  // After ordinary spaces a single odd one is one too many; otherwise it stands for an ordinary one.
  const stray = leading && at.start > 0 && state.block.text[at.start - 1] === " " && key.length - key.trimStart().length === 1;
  const instead = leading && !stray ? plain : plain.trim();
  const message = leading
    ? `The indentation before "${plain.trim()}" has a space that is not an ordinary one (${code}), so it does not count; write ordinary spaces.`
    : `The name "${plain.trim()}" is written with ${spaced ? "a space or mark" : `"${odd[0]}"`} that is not on the keyboard (${code}); write it with ordinary characters.`;
  report(state, "yaml.odd-character", message, at, written ? [fix(`Write ${instead.trim()} with ordinary characters`, at, instead)] : []);
}
