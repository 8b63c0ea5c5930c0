/** A key the schema does not have here: the nearest one, or where the key belongs. */
import { nearestNames } from "./nearest.js";
import type { Field, RecordField, Shape } from "./fields.js";
import type { Problem } from "./problem.js";
import { asYaml } from "./quoting.js";
import { notebook } from "./schema.js";
import type { Entry } from "./tree.js";
import { problemAt, viaRelated } from "./written.js";

let index: ReadonlyMap<string, readonly string[]> | undefined;

/** Every key of the schema with the places it belongs to: `frost depth` under `site`, `spacing x` under `anchors`. */
function places(): ReadonlyMap<string, readonly string[]> {
  if (index) return index;
  const found = new Map<string, string[]>();
  const visit = (field: Field, place: string) => {
    if (field.type === "named" || field.type === "list") return visit(field.of, place);
    if (field.type !== "record") return;
    for (const [key, inner] of Object.entries(field.fields as Shape)) {
      const where = found.get(key) ?? [];
      if (!where.includes(place)) where.push(place);
      found.set(key, where);
      visit(inner, key);
    }
  };
  visit(notebook, "");
  index = found;
  return found;
}

const shownPlaces = (where: readonly string[]): string =>
  where.map((place) => (place === "" ? "a section of its own, at the left margin" : `under ${place}`)).slice(0, 3).join(" or ");

/** @param keys The path of the record the key stands in. */
export function unknownKey(entry: Entry, field: RecordField, keys: readonly string[], inFlow: boolean): Problem {
  const known = Object.keys(field.fields as Shape);
  const here = keys.length === 0 ? "the notebook" : keys[keys.length - 1];
  const related = viaRelated(entry.via);
  const elsewhere = places().get(entry.key);
  if (elsewhere) {
    const said = elsewhere.includes("") ? `it is ${shownPlaces([""])}` : `it belongs ${shownPlaces(elsewhere)}`;
    return problemAt("shape.unknown-key", `"${entry.key}" is not a field of ${here}; ${said}.`, entry.keySpan, { related });
  }
  // One letter off is nothing to go by in a key of one or two letters.
  const near = entry.key.length < 3 ? [] : nearestNames(entry.key, known);
  const far = near.length > 0 || entry.key.length < 4 ? undefined : nearestNames(entry.key, [...places().keys()], 1)[0];
  const advice =
    near.length > 0 ? `did you mean ${near.join(" or ")}?` : far !== undefined ? `${far} is known, ${shownPlaces(places().get(far) ?? [])}.` : `it has ${known.slice(0, 8).join(", ")}${known.length > 8 ? " and more" : ""}.`;
  const fixes = near.map((name) => ({ title: `Write ${name}`, edits: [{ span: entry.keySpan, text: asYaml(name, inFlow) }] }));
  return problemAt("shape.unknown-key", `"${entry.key}" is not a field of ${here}; ${advice}`, entry.keySpan, { fixes, related });
}
