/** What one check says about one support. Plain data; the steps behind it are made again when somebody asks for them. */
import type { Demand } from "../actions/demand.js";
import type { CheckDecl, RuleDecl, Weighed } from "../checks/contract.js";
import type { Assumption, Named, Sourced, Support } from "../project/model.js";
import type { Span } from "../notebook/tree.js";
import type { State } from "../../../shared/report.js";

export type { State };

/** A value the check read, for related places and for the list of assumptions that count. */
export interface Used {
  readonly path: string;
  readonly what: string;
  readonly span: Span;
  readonly assumed?: Assumption;
}

export interface CheckResult {
  readonly check: CheckDecl;
  readonly support: Support;
  readonly state: State;
  /** Set where the check was made. */
  readonly weighed?: Weighed;
  /** What tries it, where that is known and its strength is not. */
  readonly tried?: Pick<Weighed, "demand" | "quantity">;
  /** Demand over capacity; left out where the capacity is zero or the check was not made. */
  readonly ratio?: number;
  readonly governing?: Demand;
  /** Number of the governing column in its line, from 0. */
  readonly place: number;
  readonly inputs: object;
  /** Why it was not checked, or the reason it was accepted. */
  readonly because?: string;
  /** Set where an error of the text stands in the way, which is said where it stands. */
  readonly isEcho?: boolean;
  readonly used: readonly Used[];
  /** The value that can fix it, or the support itself. */
  readonly at: Span;
}

export interface RuleResult {
  readonly rule: RuleDecl;
  readonly support?: Support;
  readonly state: State;
  readonly message: string;
  readonly because?: string;
  readonly isEcho?: boolean;
  readonly at: Span;
  readonly related: readonly { readonly span: Span; readonly message: string }[];
}

export type AnyResult = CheckResult | RuleResult;
export const isRule = (result: AnyResult): result is RuleResult => "rule" in result;

export const idOf = (result: AnyResult): string => (isRule(result) ? result.rule.id : result.check.id);
export const titleOf = (result: AnyResult): string => (isRule(result) ? result.rule.title : result.check.title);

/** Span of anything a finding can be placed on. */
export const spanOf = (thing: Sourced<unknown> | Named<unknown> | { readonly span: Span }): Span => thing.span;

/** From what matters most to what matters least. "Not covered" weighs less than an answer, more than nothing. */
export const stateOrder: readonly State[] = ["over", "not checked", "accepted", "near", "holds", "not covered"];

export const worse = (a: State, b: State): State => (stateOrder.indexOf(a) <= stateOrder.indexOf(b) ? a : b);
