import type { KindName } from "../units/kinds.js";

/** A symbol of a formula: what it is, and the kind of quantity it holds. */
export interface SymbolDecl {
  readonly kind: KindName;
  readonly meaning: string;
  /** Notebook field it comes from, with `*` for a name, for example `foundations.*.depth`. */
  readonly field?: string;
  /** Range of SI values for the units proof, where the default range would leave the formula's domain. */
  readonly range?: readonly [number, number];
}

export type SymbolTable = Readonly<Record<string, SymbolDecl>>;

/**
 * A formula is declared once, as text. Its closure, its MathML, its plain text and its units proof are all made from
 * the one tree that mathjs parses out of `text`.
 */
export interface FormulaDecl<T extends string = string, S extends SymbolTable = SymbolTable> {
  /** Dotted and stable, for example `anchors.breakout.basic`. */
  readonly id: string;
  /** `result = expression`: + - * / ^, comparison, `a ? b : c`, and, or, min max sqrt cbrt abs exp log sin cos tan atan. */
  readonly text: T;
  /** Published place it comes from, for example `ACI 318-19 Eq. 17.6.2.2.1`, or "common practice, no source". */
  readonly source: string;
  /** Every symbol in the text, the result included; constants excepted. */
  readonly symbols: S;
  /** Named constants that carry units: `{ k_c: "24 lbf^0.5/inch^0.5" }`. */
  readonly constants?: Readonly<Record<string, string>>;
}

export type ResultName<T extends string> = T extends `${infer R} = ${string}` ? R : never;
export type FormulaArgs<F> =
  F extends Formula<infer T, infer S> ? { readonly [K in Exclude<keyof S, ResultName<T>>]: number } : never;

export interface Formula<T extends string = string, S extends SymbolTable = SymbolTable> extends FormulaDecl<T, S> {
  readonly result: string;
  /** The number: SI in, SI out. Never throws; gives NaN where the formula has no value. */
  readonly value: (args: { readonly [K in Exclude<keyof S, ResultName<T>>]: number }) => number;
}

/** A numerical routine of mechanics/ that stands in a calculation beside the formulas. */
export interface Routine<A, R> {
  readonly id: string;
  readonly title: string;
  /** What it solves, in one sentence, and the source of the method. */
  readonly method: string;
  readonly source: string;
  readonly run: (args: A) => R;
  /** The numbers worth showing, of what went in and what came out. */
  readonly show: (args: A, result: R) => { readonly given: readonly ShownValue[]; readonly found: readonly ShownValue[] };
}

export interface ShownValue {
  readonly symbol: string;
  readonly meaning: string;
  readonly kind: KindName;
  readonly value: number;
}

/**
 * How a check calculates. On the hot path it only calls closures; when reasons are asked for, the same check runs with a
 * recorder in its place, so that the steps shown are the steps that ran.
 */
export interface Calc {
  <F extends Formula<any, any>>(formula: F, args: FormulaArgs<F>): number;
  routine<A, R>(routine: Routine<A, R>, args: A): R;
  /** A remark between steps, for example which branch was taken and why. */
  note(text: string): void;
}

export type Step =
  | { readonly type: "formula"; readonly formula: Formula; readonly args: Readonly<Record<string, number>>; readonly value: number }
  | { readonly type: "routine"; readonly routine: Routine<unknown, unknown>; readonly given: readonly ShownValue[]; readonly found: readonly ShownValue[] }
  | { readonly type: "note"; readonly text: string };
