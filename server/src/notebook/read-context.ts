/** What reading carries along: the evaluator, the messages, and the names that were used. */
import type { Evaluator } from "./expression.js";
import type { Problem } from "./problem.js";
import type { Span } from "./tree.js";
import type { Written } from "./written.js";

/** A place where a name of the user's own is used. */
export interface Use {
  /** `bases`, `foundations`, `ground`, `columns`, `given`. */
  readonly section: string;
  readonly name: string;
  readonly span: Span;
  /** The text that holds the name, and the name's place in it. */
  readonly written: Written;
  readonly start: number;
  readonly end: number;
  /** True for a field that names its target alone (`base: A`), false inside an expression. */
  readonly alone: boolean;
}

export interface ReadContext {
  readonly evaluator: Evaluator;
  readonly problems: Problem[];
  readonly uses: Use[];
  /** Keys of every field an expression read. */
  readonly dependencies: Map<string, readonly string[]>;
  /** Set once an expression was read, whose names depend on the names of the whole notebook. */
  usesNames: boolean;
}

export const newContext = (evaluator: Evaluator): ReadContext => ({ evaluator, problems: [], uses: [], dependencies: new Map(), usesNames: false });
