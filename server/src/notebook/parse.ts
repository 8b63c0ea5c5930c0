/** Text to located trees: blocks that did not change keep theirs, and the result always equals that of a full parse. */
import { parseAllDocuments, type Document, type YAMLError } from "yaml";
import { judgeRoot, unreadable } from "./file.js";
import type { Problem } from "./problem.js";
import { split, type Piece } from "./split.js";
import { absolute, type Block, type Entry, type MapNode, type Node, type Span } from "./tree.js";
import { expansionBudget, repeated, walk, writtenEnd } from "./walk.js";
import { explain, mappingEnd, oncePerLine } from "./yaml-errors.js";

export interface ParsedNotebook {
  readonly text: string;
  /** One located root per YAML document that has content; empty where the text is not read at all. */
  readonly documents: readonly MapNode[];
  readonly problems: readonly Problem[];
  /** How many blocks the YAML parser read in this call. */
  readonly parsedBlocks: number;
  /** Parsed blocks by key, for the next call. */
  readonly blocks: ReadonlyMap<string, ParsedBlock>;
}

/** A block with its part of the tree. */
export interface ParsedBlock {
  readonly block: Block;
  readonly entries: readonly Entry[];
  readonly problems: readonly Problem[];
  readonly expanded: number;
  /** True where the block alone gives what it gives inside the whole text. */
  readonly local: boolean;
}

const mostProblems = 100;
/** Errors of the parser looked at; several may fall on one line, of which one is told. */
const mostExplained = 400;
const options = { prettyErrors: false, uniqueKeys: false, schema: "failsafe", logLevel: "silent", strict: true } as const;

const readDocuments = (text: string): { readonly documents: readonly Document[]; readonly errors: readonly YAMLError[] } => {
  const found = parseAllDocuments(text, options);
  if (!Array.isArray(found)) return { documents: [], errors: [] };
  const stream = "empty" in found ? ((found as unknown as { errors?: readonly YAMLError[] }).errors ?? []) : [];
  return { documents: found as readonly Document[], errors: stream };
};

/**
 * Parses a notebook. With the previous result, only changed blocks are read again; unchanged ones keep their `Block` object
 * and tree, and their offset is brought up to date (so the previous result's places follow the new text).
 */
export function parseNotebook(text: string, previous?: ParsedNotebook): ParsedNotebook {
  const blocks = new Map<string, ParsedBlock>();
  const stop = unreadable(text);
  if (stop) return { text, documents: [], problems: [stop], parsedBlocks: 0, blocks: previous?.blocks ?? blocks };
  const pieces = split(text);
  if (!pieces) return parseWhole(text, 0, previous?.blocks);

  let parsed = 0;
  let expanded = 0;
  const known = previous?.blocks;
  for (const piece of pieces) {
    const before = known?.get(piece.key);
    const same = before !== undefined && before.block.text.length === piece.end - piece.start && text.startsWith(before.block.text, piece.start);
    if (!same) parsed++;
    const made = same ? before : parseBlock(text, piece);
    blocks.set(piece.key, made);
    expanded += made.expanded;
    if (!made.local) return parseWhole(text, parsed, kept(pieces, blocks, known));
  }
  if (expanded > expansionBudget) return parseWhole(text, parsed, blocks);
  // Offsets are moved only now that this result is the one given out.
  for (const piece of pieces) (blocks.get(piece.key) as ParsedBlock).block.offset = piece.start;
  return assemble(text, pieces, blocks, parsed);
}

/** The blocks worth keeping while the text has to be read as one: those of the pieces now in the text. */
function kept(pieces: readonly Piece[], made: ReadonlyMap<string, ParsedBlock>, known: ReadonlyMap<string, ParsedBlock> | undefined): ReadonlyMap<string, ParsedBlock> {
  const result = new Map<string, ParsedBlock>();
  for (const { key } of pieces) {
    const block = made.get(key) ?? known?.get(key);
    if (block) result.set(key, block);
  }
  return result;
}

/** A copy that does not hold on to the text it was cut from; otherwise every block would keep a whole old text alive. */
const detached = (text: string): string => ` ${text}`.slice(1);

function parseBlock(text: string, piece: Piece): ParsedBlock {
  const block: Block = { key: piece.key, text: detached(text.slice(piece.start, piece.end)), offset: piece.start };
  const { documents, errors: stray } = readDocuments(block.text);
  const broken: ParsedBlock = { block, entries: [], problems: [], expanded: 0, local: false };
  if (stray.length > 0 || documents.length !== 1 || !documents[0].errors.every(staysInside)) return broken;
  const { root, problems, expanded, crosses } = walk(documents[0], block, piece.kind === "entry" ? 1 : 0);
  if (crosses || root.type !== "map" || root.entries.length !== 1) return broken;
  return { block, entries: root.entries, problems: withErrors(problems, documents[0].errors, block), expanded, local: true };
}

/**
 * Errors the parser makes of a line without a colon, the usual state while a key is typed: it goes on with the next line that
 * is indented less, so the blocks after it are read as if nothing were wrong.
 */
const staysInside = (error: YAMLError): boolean =>
  error.code === "MULTILINE_IMPLICIT_KEY" || (error.code === "MISSING_CHAR" && error.message.startsWith("Implicit map keys need"));

/** The end of a stretch in another block, seen from `block`. */
const reach = (block: Block, span: Span): number => absolute(span).end - block.offset;

function assemble(text: string, pieces: readonly Piece[], blocks: ReadonlyMap<string, ParsedBlock>, parsedBlocks: number): ParsedNotebook {
  const problems: Problem[] = [];
  const sections: Entry[] = [];
  let heading: { readonly entry: Entry; readonly entries: Entry[]; readonly seen: Map<string, Span> } | undefined;
  const seen = new Map<string, Span>();

  const close = () => {
    if (!heading) return;
    const { entry, entries } = heading;
    const first = entries[0].keySpan;
    const value: MapNode = { type: "map", span: { block: first.block, start: first.start, end: reach(first.block, writtenEnd(entries[entries.length - 1].value)) }, entries, flow: false };
    sections.push({ ...entry, value });
    heading = undefined;
  };
  for (const piece of pieces) {
    const made = blocks.get(piece.key) as ParsedBlock;
    for (const problem of made.problems) problems.push(problem);
    const [entry] = made.entries;
    if (piece.kind === "entry" && heading) {
      note(heading.seen, entry, problems);
      heading.entries.push(entry);
      continue;
    }
    close();
    note(seen, entry, problems);
    if (piece.kind === "heading") heading = { entry, entries: [], seen: new Map() };
    else sections.push(entry);
  }
  close();

  const first = sections[0].keySpan;
  const last = sections[sections.length - 1];
  const root: MapNode = { type: "map", span: { block: first.block, start: first.start, end: reach(first.block, writtenEnd(last.value)) }, entries: sections, flow: false };
  return finish(text, [{ root, problems }], parsedBlocks, blocks);
}

function note(seen: Map<string, Span>, entry: Entry, problems: Problem[]): void {
  const before = seen.get(entry.key);
  if (before) problems.push(repeated(`"${entry.key}" is written twice here; keep one of them.`, entry.keySpan, before));
  else seen.set(entry.key, entry.keySpan);
}

/** Parses the text as one; what `parseNotebook` gives always equals this. */
export function parseWhole(text: string, parsedBefore = 0, blocks: ReadonlyMap<string, ParsedBlock> = new Map()): ParsedNotebook {
  const stop = unreadable(text);
  if (stop) return { text, documents: [], problems: [stop], parsedBlocks: 0, blocks };
  const block: Block = { key: "", text, offset: 0 };
  const found = readGuarded(text);
  if ("problem" in found) return { text, documents: [], problems: [found.problem(block)], parsedBlocks: parsedBefore + 1, blocks };
  const full = found.documents.filter((document) => document.contents !== null && walkable(document));
  const walked = full.map((document, i) => {
    const errors = i === 0 ? [...found.errors, ...document.errors] : document.errors;
    const { root, problems } = walk(document, block, 0);
    return { root, problems: withErrors(problems, errors, block) };
  });
  if (walked.length === 0) {
    const errors = [...found.errors, ...found.documents.flatMap((document) => document.errors)];
    const said = errors.length > 0 ? withErrors([], errors, block) : judgeRoot({ type: "null", span: { block, start: 0, end: 0 } }, block).problems;
    return { text, documents: [], problems: said, parsedBlocks: parsedBefore + 1, blocks };
  }
  return finish(text, walked, parsedBefore + 1, blocks);
}

/** A document of nothing but comments, as a last `---` leaves one behind. */
const walkable = (document: Document): boolean => {
  const { contents } = document as { contents: { source?: unknown; anchor?: string } | null };
  return !(contents && contents.source === "" && !contents.anchor) || document.errors.length > 0;
};

/** The parser recurses; a text nested thousands deep may exhaust the stack in it. */
function readGuarded(text: string): ReturnType<typeof readDocuments> | { readonly problem: (block: Block) => Problem } {
  try {
    return readDocuments(text);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const message = "Lists or mappings stand inside one another too deeply here to be read.";
    return { problem: (block) => ({ code: "yaml.too-deep", tier: "syntax", severity: "error", message, span: { block, start: 0, end: Math.min(1, text.length) } }) };
  }
}

/** Our own findings first. What the parser makes of the lines that an open bracket has swallowed is not told as well. */
function withErrors(own: readonly Problem[], errors: readonly YAMLError[], block: Block): Problem[] {
  const told = oncePerLine(errors.slice(0, mostExplained).map((error) => explain(error, block)));
  const open = [...own.filter(({ code }) => code === "yaml.flow-hash"), ...told.filter(({ code }) => code === "yaml.open-bracket")];
  const swallowed = open.map((problem) => ({ problem, ...swallowedBy(block.text, problem) }));
  const fresh = told.filter(({ span }) => !swallowed.some(({ problem, start, end }) => problem.span !== span && start <= span.start && span.start <= end));
  return [...own, ...fresh];
}

/** For a `#` that swallows a brace also the bracket before it and the line where the parser notices. */
function swallowedBy(text: string, { code, span }: Problem): { readonly start: number; readonly end: number } {
  const over = mappingEnd(text, span.start);
  if (code !== "yaml.flow-hash") return { start: span.start, end: over };
  const noticed = text.indexOf("\n", over + 1);
  return { start: text.lastIndexOf("\n", span.start) + 1, end: noticed < 0 ? text.length : noticed };
}

function finish(text: string, walked: readonly { readonly root: Node; readonly problems: readonly Problem[] }[], parsedBlocks: number, blocks: ReadonlyMap<string, ParsedBlock>): ParsedNotebook {
  const whole: Block = { key: "", text, offset: 0 };
  const documents: MapNode[] = [];
  const problems: Problem[] = [];
  for (const { root, problems: found } of walked) {
    const judged = judgeRoot(root, whole);
    documents.push(judged.root);
    if (judged.isNotebook) for (const problem of found) problems.push(problem);
    for (const problem of judged.problems) problems.push(problem);
  }
  return { text, documents, problems: inOrder(problems).slice(0, mostProblems), parsedBlocks, blocks };
}

/** By place, then by code. */
export const inOrder = (problems: readonly Problem[]): Problem[] =>
  problems
    .map((problem) => ({ problem, at: absolute(problem.span).start }))
    .sort((a, b) => a.at - b.at || (a.problem.code < b.problem.code ? -1 : a.problem.code > b.problem.code ? 1 : 0))
    .map(({ problem }) => problem);
