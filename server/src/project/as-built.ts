/**
 * What was found on site takes the place of what was drawn: checks run on what was built, and the difference is kept to be said.
 */
import type { Sourced } from "./model.js";

type Fields = Readonly<Record<string, Sourced<unknown> | undefined>>;

/** One value that was built otherwise than drawn. */
export interface Difference {
  readonly drawn: Sourced<unknown> | undefined;
  readonly built: Sourced<unknown>;
  /** The remark that stands with it. */
  readonly noted?: string;
}

const key = "as built";
const merged = new WeakMap<object, { readonly fields: Fields; readonly differences: readonly Difference[] }>();

const isFields = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value) && Object.values(value).some((inner) => typeof inner === "object" && inner !== null && "path" in inner);

/** Puts built values over drawn ones, inside nested records too, and lists what differs. */
function over(drawn: Fields, built: Fields, noted: string | undefined, differences: Difference[]): Fields {
  const result: Record<string, Sourced<unknown> | undefined> = { ...drawn };
  for (const [name, value] of Object.entries(built)) {
    if (value === undefined || value.assumed || name === "noted") continue;
    const before = drawn[name];
    if (isFields(value.value)) {
      result[name] = { ...(before ?? value), value: over((before?.value ?? {}) as Fields, value.value, noted, differences) };
      continue;
    }
    result[name] = value;
    differences.push({ drawn: before, built: value, noted });
  }
  return result;
}

function mergeOf(fields: Fields): { readonly fields: Fields; readonly differences: readonly Difference[] } {
  const known = merged.get(fields);
  if (known) return known;
  const built = fields[key] as Sourced<Fields> | undefined;
  const differences: Difference[] = [];
  const made = { fields: built ? over(fields, built.value, (built.value.noted as Sourced<string> | undefined)?.value, differences) : fields, differences };
  merged.set(fields, made);
  // Asked again of what was merged, it has nothing more to merge.
  if (made.fields !== fields) merged.set(made.fields, made);
  return made;
}

/** The entries as they were built. An entry without a remark from the site stays itself. */
export function asBuilt<T extends object>(entries: ReadonlyMap<string, Sourced<T>>): ReadonlyMap<string, Sourced<T>> {
  let changed = false;
  const result = new Map<string, Sourced<T>>();
  for (const [name, entry] of entries) {
    const { fields } = mergeOf(entry.value as unknown as Fields);
    if ((fields as unknown) !== entry.value) changed = true;
    result.set(name, (fields as unknown) === entry.value ? entry : { ...entry, value: fields as unknown as T });
  }
  return changed ? result : entries;
}

/** What of an entry was built otherwise than drawn. */
export const differencesOf = (fields: object): readonly Difference[] => merged.get(fields)?.differences ?? [];
