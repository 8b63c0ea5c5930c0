/** The schema's field for a path of the notebook. */
import type { Field } from "./fields.js";
import { notebook } from "./schema.js";

export interface FieldAt {
  readonly field: Field;
  /** The path with `*` for names of the user's own: `foundations.*.depth`. */
  readonly pattern: string;
}

/** `["foundations", "pier", "depth"]` gives the depth field; undefined where the schema has nothing there. */
export function fieldAt(path: readonly string[]): FieldAt | undefined {
  let field: Field = notebook;
  const pattern: string[] = [];
  for (const piece of path) {
    if (field.type === "record") {
      const inner: Field | undefined = Object.hasOwn(field.fields, piece) ? field.fields[piece] : undefined;
      if (!inner) return undefined;
      field = inner;
      pattern.push(piece);
    } else if (field.type === "named") {
      field = field.of;
      pattern.push("*");
    } else if (field.type === "list") {
      field = field.of;
      pattern.push("*");
    } else return undefined;
  }
  return { field, pattern: pattern.join(".") };
}

/** What a field takes, in words. */
export function describeField(field: Field): string {
  switch (field.type) {
    case "quantity":
      return field.units?.length ? `a quantity in ${field.units.join(", ")} or the like` : "a quantity with its unit";
    case "number":
      return field.integer ? "a whole number" : "a plain number";
    case "yes-no":
      return "yes or no";
    case "choice":
      return `one of ${field.choices.join(", ")}`;
    case "reference":
      return `the name of an entry under ${field.to}`;
    case "point":
      return "a place in plan, x east and y north, like 3 ft, 21 ft";
    case "bar":
      return "a bar size, like no. 6";
    case "section":
      return "a section, like HSS6x6x3/8";
    case "record":
      return field.short ? `one line like ${field.short.example}, or its fields below` : "fields below it";
    case "named":
      return "entries under names of your own";
    case "list":
      return "a list, one item a line after a dash";
    case "text":
      return "text";
  }
}
