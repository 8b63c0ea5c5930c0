/** The structure a notebook describes: every field either read, assumed with its source, or absent. */
import type { Bar } from "../catalog/bars.js";
import type { ColumnSection } from "../catalog/sections.js";
import type {
  BarField,
  ChoiceField,
  Field,
  ListField,
  NamedField,
  NumberField,
  PointField,
  QuantityField,
  RecordField,
  SectionField,
  Shape,
  YesNoField,
} from "../notebook/fields.js";
import type { NotebookShape } from "../notebook/schema.js";
import type { Span } from "../notebook/tree.js";

/** A value with where it comes from. */
export interface Sourced<T> {
  readonly value: T;
  /** Dotted path of the field, `foundations.pier.depth`. */
  readonly path: string;
  /** Where the notebook says it; for an assumed value, the place that would hold it (the entry's key). */
  readonly span: Span;
  /** Set where the notebook leaves the field out. */
  readonly assumed?: Assumption;
  /** The expression it was computed from, without its `=`. */
  readonly expression?: string;
}

/** A default, never silent: shown in the editor, in the summary and on the command line. */
export interface Assumption {
  readonly path: string;
  /** What the field is, in words. */
  readonly field: string;
  readonly text: string;
  readonly source: string;
  readonly span: Span;
}

export type ResolvedValue<F> = F extends QuantityField | NumberField
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
              ? Resolved<S>
              : F extends NamedField<infer S>
                ? ReadonlyMap<string, Sourced<Resolved<S>>>
                : F extends ListField<infer G extends Field>
                  ? readonly Sourced<ResolvedValue<G>>[]
                  : string;

export type Resolved<S extends Shape> = { readonly [K in keyof S]: Sourced<ResolvedValue<S[K]>> | undefined };

type Entries<K extends "ground" | "loads" | "columns" | "bases" | "foundations"> = NotebookShape[K]["of"]["fields"];

export type Project = Resolved<NotebookShape["project"]["fields"]>;
export type Codes = Resolved<NotebookShape["codes"]["fields"]>;
export type Site = Resolved<NotebookShape["site"]["fields"]>;
export type Roof = Resolved<NotebookShape["roof"]["fields"]>;
export type Ground = Resolved<Entries<"ground">>;
/** A load added to those of the roof. */
export type Added = Resolved<Entries<"loads">>;
export type Column = Resolved<Entries<"columns">>;
export type Base = Resolved<Entries<"bases">>;
export type Foundation = Resolved<Entries<"foundations">>;

/** A named entry of the notebook. */
export interface Named<T> {
  readonly name: string;
  readonly path: string;
  /** The entry's key. */
  readonly span: Span;
  readonly fields: T;
}

/** A place where the structure comes down: a line of like columns, one column, or a foundation or base given alone. */
export type RoofTilts = "along x" | "along y" | "both ways";

export interface Support {
  /** Name of the column line, or of the foundation or base that stands alone. */
  readonly name: string;
  /** `columns.south`, `foundations.pier`, `bases.A`. */
  readonly path: string;
  readonly span: Span;
  /** Plan places of its columns; one unnamed place at the origin where none is given. */
  readonly places: readonly { readonly x: number; readonly y: number }[];
  /** Distance from each of its piers to the nearest other pier, m, where that is less than three widths; left out where none stands so near. */
  readonly crowded?: readonly (number | undefined)[];
  readonly column?: Named<Column>;
  readonly base?: Named<Base>;
  readonly foundation?: Named<Foundation>;
  readonly ground?: Named<Ground>;
  /** The roof over its column. */
  readonly roof?: Named<Roof>;
  /** Along which axes all columns under the roof stand in one line across, so that the roof tilts freely with their tops. */
  readonly roofTilts?: RoofTilts;
  /** Shared parts, the same objects for every support. */
  readonly codes: Codes;
  readonly site: Site;
}

export interface Structure {
  readonly project: Project;
  readonly codes: Codes;
  readonly site: Site;
  readonly roof?: Named<Roof>;
  /** Loads added to those of the roof, by name. */
  readonly loads: ReadonlyMap<string, Sourced<Added>>;
  readonly supports: readonly Support[];
  readonly assumptions: readonly Assumption[];
  readonly confirm: readonly Sourced<string>[];
  readonly accept: readonly Sourced<Resolved<NotebookShape["accept"]["of"]["fields"]>>[];
  /** Where the notebook begins, for findings about the whole. */
  readonly span: Span;
}
