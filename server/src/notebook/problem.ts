import type { Span } from "./tree.js";

/** Tiers of messages, in this order; the first tier with an error holds back the later ones that would only echo it. */
export type Tier = "syntax" | "shape" | "references" | "engineering";
export type Severity = "error" | "warning" | "information" | "hint";

/** A neutral text edit offered with a message; `title` is what the user reads. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly { readonly span: Span; readonly text: string }[];
}

export interface Related {
  readonly span: Span;
  readonly message: string;
}

/** Something about the text itself. Engineering results are findings, not problems. */
export interface Problem {
  /** Dotted and stable, for example `quantity.no-unit`. */
  readonly code: string;
  readonly tier: Tier;
  readonly severity: Severity;
  readonly message: string;
  readonly span: Span;
  readonly related?: readonly Related[];
  readonly fixes?: readonly Fix[];
}
