/**
 * The vocabulary of the schema: what a field of the notebook can be. The schema is data made of these; reading, hover,
 * completion, the reference pages and the JSON schema are all made from it.
 */
import type { Bar } from "../catalog/bars.js";
import type { ColumnSection } from "../catalog/sections.js";
import type { KindName } from "../units/kinds.js";
import type { Entry, Node, Span } from "./tree.js";

interface Common {
  /** One sentence for the hover: what it is. */
  readonly doc: string;
  /** The value taken when the field is left out; shown everywhere as an assumption with this source. */
  readonly assumed?: { readonly text: string; readonly source: string };
}

export interface QuantityField extends Common {
  readonly type: "quantity";
  readonly kind: KindName;
  /** What is acceptable, as SI bounds; "positive" excludes zero. */
  readonly bounds?: "positive" | "zero or more" | "any";
  /** Units offered first in a fix and in completion. */
  readonly units?: readonly string[];
}
export interface NumberField extends Common {
  readonly type: "number";
  readonly integer?: boolean;
  readonly least?: number;
  readonly most?: number;
}
export interface TextField extends Common {
  readonly type: "text";
}
export interface YesNoField extends Common {
  readonly type: "yes-no";
}
export interface ChoiceField<C extends string = string> extends Common {
  readonly type: "choice";
  readonly choices: readonly C[];
  /** Other spellings read as one of the choices. */
  readonly also?: Readonly<Record<string, C>>;
}
export interface ReferenceField extends Common {
  readonly type: "reference";
  readonly to: "bases" | "columns" | "foundations" | "ground";
}
/** A place in plan, `3 ft, 21 ft`: x east, y north of the roof's southwest corner. */
export interface PointField extends Common {
  readonly type: "point";
}
/** A reinforcing bar callout: `no. 6`, `16M`, `T16`, `16 mm`. */
export interface BarField extends Common {
  readonly type: "bar";
}
/** A rolled section by its designation. */
export interface SectionField extends Common {
  readonly type: "section";
}
/** Fields by name; `short` names the splitter that reads the one-line form into the same fields. */
export interface RecordField<S extends Shape = Shape> extends Common {
  readonly type: "record";
  readonly fields: S;
  readonly short?: ShortForm;
}
/** Entries under names of the user's own. */
export interface NamedField<S extends Shape = Shape> extends Common {
  readonly type: "named";
  readonly of: RecordField<S>;
}
export interface ListField<F extends Field = Field> extends Common {
  readonly type: "list";
  readonly of: F;
}

export type Field =
  | QuantityField
  | NumberField
  | TextField
  | YesNoField
  | ChoiceField<any>
  | ReferenceField
  | PointField
  | BarField
  | SectionField
  | RecordField<any>
  | NamedField<any>
  | ListField<any>;

export type Shape = Readonly<Record<string, Field>>;

/** Reads a one-line form into the record's field texts, each with its place inside the line. */
export interface ShortForm {
  /** How it is written, for messages and hover: `4 x 1 in F1554 Gr 36, headed, 20 in deep, 10 in square`. */
  readonly example: string;
  readonly split: (text: string) => readonly ShortPart[] | { readonly problem: string; readonly at: number; readonly length: number };
}
export interface ShortPart {
  readonly field: string;
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** A value read from the notebook, with its place. */
export interface Located<T> {
  readonly value: T;
  /** Dotted path, `foundations.pier.depth`. */
  readonly path: string;
  /** The stretch of text that says the value; a finding is placed here. */
  readonly span: Span;
  readonly node: Node;
  /** The entry that holds it, where there is one. */
  readonly entry?: Entry;
  /** The expression, without its `=`, where the value was computed. */
  readonly expression?: string;
  /** The place of the alias or merge that brought it here. */
  readonly via?: Span;
}

export type ValueOf<F> = F extends QuantityField | NumberField
  ? number
  : F extends ChoiceField<infer C>
    ? C
    : F extends YesNoField
      ? boolean
      : F extends PointField
        ? { readonly x: number; readonly y: number }
        : F extends BarField
          ? Bar
          : F extends SectionField
            ? ColumnSection
            : F extends RecordField<infer S>
              ? Values<S>
              : F extends NamedField<infer S>
                ? ReadonlyMap<string, Located<Values<S>>>
                : F extends ListField<infer G>
                  ? readonly Located<ValueOf<G>>[]
                  : string;

/** What reading a record gives: each field located, or undefined where it is left out or cannot be read. */
export type Values<S extends Shape> = { readonly [K in keyof S]: Located<ValueOf<S[K]>> | undefined };

export const quantity = <const K extends KindName>(kind: K, doc: string, more: Partial<Omit<QuantityField, "type" | "kind" | "doc">> = {}) =>
  ({ type: "quantity", kind, doc, bounds: "positive", ...more }) as const satisfies QuantityField;
export const number = (doc: string, more: Partial<Omit<NumberField, "type" | "doc">> = {}): NumberField => ({ type: "number", doc, ...more });
export const text = (doc: string, more: Partial<Omit<TextField, "type" | "doc">> = {}): TextField => ({ type: "text", doc, ...more });
export const yesNo = (doc: string, more: Partial<Omit<YesNoField, "type" | "doc">> = {}): YesNoField => ({ type: "yes-no", doc, ...more });
export const choice = <const C extends string>(
  choices: readonly C[],
  doc: string,
  more: Partial<Omit<ChoiceField<C>, "type" | "choices" | "doc">> = {},
): ChoiceField<C> => ({ type: "choice", choices, doc, ...more });
export const reference = (to: ReferenceField["to"], doc: string): ReferenceField => ({ type: "reference", to, doc });
export const point = (doc: string): PointField => ({ type: "point", doc });
export const bar = (doc: string): BarField => ({ type: "bar", doc });
export const section = (doc: string): SectionField => ({ type: "section", doc });
export const record = <const S extends Shape>(doc: string, fields: S, short?: ShortForm): RecordField<S> => ({ type: "record", doc, fields, short });
export const named = <const S extends Shape>(doc: string, of: RecordField<S>): NamedField<S> => ({ type: "named", doc, of });
export const list = <F extends Field>(doc: string, of: F): ListField<F> => ({ type: "list", doc, of });
