/** Collects the names of what is absent while inputs are read. */
import type { Sourced } from "../project/model.js";

export const listed = (words: readonly string[]): string => (words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`);

export class Wanted {
  readonly missing: string[] = [];

  /** The value; where it is absent or no number, `what` is noted and the value must not be used. */
  need<T>(value: Sourced<T> | undefined, what: string): T {
    if (value?.value === undefined || (typeof value.value === "number" && !Number.isFinite(value.value))) this.missing.push(what);
    return value?.value as T;
  }
}
