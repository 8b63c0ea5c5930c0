/**
 * The located tree: what the YAML says and where. Positions are relative to their block, so that a block that only moved
 * keeps its tree and everything computed from it.
 */
export interface Block {
  /** Section and entry, for example `foundations/pier`; unique within a document. */
  readonly key: string;
  readonly text: string;
  /** Offset of the block's first character in the whole text (UTF-16 units). Changes when text above it changes. */
  offset: number;
}

/** A stretch of text. Absolute start: `block.offset + start`. */
export interface Span {
  readonly block: Block;
  readonly start: number;
  readonly end: number;
}

export interface ScalarNode {
  readonly type: "scalar";
  readonly span: Span;
  /** The scalar as text, unquoted; quantities are read from this and never from a YAML number. */
  readonly text: string;
  readonly style: "plain" | "single" | "double" | "block";
  /** True where `text` is the very stretch `span` covers, so that an offset inside one is an offset inside the other. */
  readonly verbatim: boolean;
  /** Where an alias or a merge brought this node in, the place of the `*name`. */
  readonly via?: Span;
}

export interface Entry {
  readonly key: string;
  readonly keySpan: Span;
  readonly value: Node;
  /** Set where the entry came through `<<`. */
  readonly via?: Span;
}

export interface MapNode {
  readonly type: "map";
  readonly span: Span;
  readonly entries: readonly Entry[];
  readonly flow: boolean;
  readonly via?: Span;
}

export interface SeqNode {
  readonly type: "seq";
  readonly span: Span;
  readonly items: readonly Node[];
  readonly via?: Span;
}

/** A key with nothing after it, `~` or `null`. */
export interface NullNode {
  readonly type: "null";
  readonly span: Span;
  readonly via?: Span;
}

export type Node = ScalarNode | MapNode | SeqNode | NullNode;

export const absolute = (span: Span): { start: number; end: number } => ({
  start: span.block.offset + span.start,
  end: span.block.offset + span.end,
});

export const entryOf = (map: MapNode | undefined, key: string): Entry | undefined =>
  map?.entries.find((entry) => entry.key === key);
