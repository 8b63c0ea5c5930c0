/**
 * What a check is. One file holds one check: what can fail and how it looks in the field, its clause, its symbols, its
 * range; then the formulas; then the pure function. The manual page, the hover and `explain` are made from the declaration.
 */
import type { Demand, Level } from "../actions/demand.js";
import { methodOf, takesAllowable } from "../actions/steel-method.js";
import type { Calc, Formula } from "../formula/types.js";
import type { Named, Sourced, Structure, Support } from "../project/model.js";
import type { KindName } from "../units/kinds.js";

/** The link of the chain, roof to ground. */
export type Link = "column" | "base" | "anchors" | "pier" | "rock" | "wall" | "footing" | "site";

/** Collects what a check reads, so that a missing value is named and a used one can be shown. */
export interface Gather {
  /** The value; where it is absent, notes what is missing and gives NaN. */
  need(value: Sourced<number> | undefined, what: string): number;
  /** The same for values that are not numbers; gives undefined where absent. */
  needs<T>(value: Sourced<T> | undefined, what: string): T | undefined;
  /** A value the check can do without. */
  may<T>(value: Sourced<T> | undefined): T | undefined;
  /** Says that an input stands in the way, in words: "the rod grade is not ductile at this size". */
  block(because: string): void;
}

/** Demand against capacity, both SI of `quantity`. Demand zero or less means the combination does not try this link. */
export interface Weighed {
  readonly type: "weighed";
  readonly demand: number;
  readonly capacity: number;
  readonly quantity: KindName;
  /** A limit of a detail, which is kept or not kept: as much as it allows is not near. */
  readonly isLimit?: boolean;
}

/** The method or an input does not allow an answer. */
export interface Unchecked {
  readonly type: "unchecked";
  /** In words, what stands in the way and what would remove it. */
  readonly because: string;
}

export type Outcome = Weighed | Unchecked;

export const weigh = (demand: number, capacity: number, quantity: KindName): Weighed => ({ type: "weighed", demand, capacity, quantity });
/** {@link weigh} against a limit of a detail: cover, spacing, a number of bars. */
export const weighLimit = (demand: number, capacity: number, quantity: KindName): Weighed => ({ type: "weighed", demand, capacity, quantity, isLimit: true });
export const unchecked = (because: string): Unchecked => ({ type: "unchecked", because });

/** What the writer of a message may use. */
export interface Say {
  readonly show: (value: number, kind: KindName) => string;
}

/** Plain data only, so that two sets of inputs can be compared and an equal one is not calculated again. */
export type Inputs = Readonly<Record<string, unknown>>;

export interface CheckDecl<I extends object = any, L extends Level = any> {
  /** Dotted and stable: link, then limit state, `anchors.breakout-tension`. */
  readonly id: string;
  /** In the trade's words, as a heading. */
  readonly title: string;
  readonly link: Link;
  /** Load level of the demand it takes. Two where it is of steel and goes by the method named in the notebook: the demand then says which it is. */
  readonly level: L | readonly L[];
  /** Set where the forces that try the connection at the column top are taken, edge pressures among them. */
  readonly demands?: "column top";
  /** The levels it is tried at, where the notebook says so in another place than the method of steel. */
  readonly tried?: (support: Support) => readonly L[];
  /** Set where the forces of all columns on one pad are taken together, and not those of each. */
  readonly wholePad?: true;
  /** Clause with its edition, `ACI 318-19 17.6.2`. */
  readonly clause: string;
  /** Editions of the concrete standard it is right by, where its clause is of that standard and these are more than ACI 318-19 alone. */
  readonly editions?: readonly string[];
  /** What fails, in one sentence. */
  readonly fails: string;
  /** How that looks in the field, or when it is met. */
  readonly seen: string;
  /** The method's range and what it leaves out. */
  readonly range: string;
  /** The formulas it calculates with, in the order a reader meets them. */
  readonly formulas?: readonly Formula<any, any>[];
  readonly applies: (support: Support) => boolean;
  /** Reads the numbers out of the support. `place` is the column's number in its line. */
  readonly inputs: (support: Support, gather: Gather, place: number) => I;
  /**
   * What makes the demand grow, as numbers: a combination that is no larger than another in each of them cannot govern and is not tried. Given by a
   * check whose evaluation costs much and whose demand never falls, and capacity never rises, with any of them.
   */
  readonly measures?: (inputs: I, demand: Demand<L>, calc: Calc) => readonly number[];
  /** The value whose change can make it hold; the finding is placed there. */
  readonly fixedBy: (support: Support) => Sourced<unknown> | Named<unknown> | undefined;
  /**
   * What the demand does, as the words after its number: "lifts the roof there". Set where it is worth saying though the strength is not stated; with
   * its strength missing `evaluate` still gives the demand.
   */
  readonly triedBy?: string;
  /** Pure. Runs for every combination; the worst governs. */
  readonly evaluate: (inputs: I, demand: Demand<L>, calc: Calc) => Outcome;
  /** What to change, in trade words, for a result that is near or over. Number first. */
  readonly advise?: (inputs: I, outcome: Weighed, say: Say) => string;
}

/** {@link CheckDecl.measures} of a check that looks at no force: one combination stands for all. */
export const sameInAll = (): readonly number[] => [];

/** Whether all the columns of the line stand on one pad. */
export const sharesPad = ({ foundation, places }: Pick<Support, "foundation" | "places">): boolean =>
  places.length > 1 && foundation?.fields.kind?.value === "footing" && foundation.fields["shared by line"]?.value === true;

/** Declares a check; the types of inputs and level are inferred. */
export const check = <I extends object, const L extends Level>(decl: CheckDecl<I, L>): CheckDecl<I, L> => decl;

/** The levels a check of a support takes; of one of steel, those of the method the notebook names. */
export function levelsTried({ level, tried }: Pick<CheckDecl, "level" | "tried">, support: Support): readonly Level[] {
  if (tried) return tried(support);
  const { codes } = support;
  if (typeof level !== "object") return [level as Level];
  const method = methodOf(codes);
  return (level as readonly Level[]).filter((one) => method === "both" || (one === "allowable") === takesAllowable(method));
}

/** One statement of a rule about one support (or about the structure, where `support` is left out). */
export interface RuleFinding {
  readonly support?: Support;
  readonly verdict: "holds" | "over" | "unchecked";
  readonly message: string;
  readonly at: Sourced<unknown> | Named<unknown> | Support | Structure;
  readonly related?: readonly { readonly at: Sourced<unknown> | Named<unknown> | Support; readonly message: string }[];
}

/** A rule of the site or the job: no demand, a verdict per support. */
export interface RuleDecl {
  readonly id: string;
  readonly title: string;
  readonly link: "site" | "base" | "anchors" | "rock";
  readonly clause: string;
  readonly fails: string;
  readonly seen: string;
  readonly range: string;
  /** True where what it says of a support rests on that support, the roof and the project alone: only then is a verdict kept over an edit. */
  readonly alone?: true;
  readonly judge: (structure: Structure) => readonly RuleFinding[];
}
