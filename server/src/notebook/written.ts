/** A stretch of a scalar's text with its place, so that a message about a part of a value stands at that part. */
import type { Fix, Problem, Related, Tier } from "./problem.js";
import { asScalar } from "./quoting.js";
import type { ScalarNode, Span } from "./tree.js";

export interface Written {
  readonly text: string;
  readonly node: ScalarNode;
  /** Where `text` begins in `node.text`. */
  readonly from: number;
  readonly inFlow: boolean;
}

export const wholeOf = (node: ScalarNode, inFlow: boolean): Written => ({ text: node.text, node, from: 0, inFlow });

export const partOf = (written: Written, start: number, end: number): Written => ({
  ...written,
  text: written.text.slice(start, end),
  from: written.from + start,
});

/** The place of a part; the whole scalar where its text is not written letter by letter. */
export function spanIn(written: Written, at = 0, length = written.text.length - at): Span {
  const { node, from } = written;
  if (!node.verbatim) return node.span;
  const start = Math.min(node.span.start + from + at, node.span.end);
  return { block: node.span.block, start, end: Math.min(Math.max(start, start + length), node.span.end) };
}

/** A fix that replaces a part; quotes are kept, and written where the new text needs them. */
export function replacing(title: string, written: Written, text: string, at = 0, length = written.text.length - at): Fix {
  const { node, from, inFlow } = written;
  const whole = node.text.slice(0, from + at) + text + node.text.slice(from + at + length);
  const small = node.verbatim && asScalar(node, whole, inFlow) === whole;
  if (small) return { title, edits: [{ span: spanIn(written, at, length), text }] };
  if (node.style === "block") return { title, edits: [{ span: node.span, text: asScalar({ style: "plain" }, whole, inFlow) }] };
  return { title, edits: [{ span: node.span, text: asScalar(node, whole, inFlow) }] };
}

/** Where an alias or a merge brought the value in, for a message placed at the original. */
export const viaRelated = (via: Span | undefined): readonly Related[] | undefined => (via ? [{ span: via, message: "It is repeated here." }] : undefined);

export function problemAt(code: string, message: string, span: Span, more: Partial<Problem> & { readonly tier?: Tier } = {}): Problem {
  return { code, tier: "shape", severity: "error", message, span, ...more };
}
