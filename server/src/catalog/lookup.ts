/** Answer of a catalog search that found no row. */
export interface NotInCatalog {
  /** What is wrong with the text, in trade words. */
  readonly problem: string;
  /** Rows that may have been meant, nearest first; empty when none comes near. */
  readonly nearest: readonly string[];
}

/** True when a catalog search found no row. */
export function isMissing(found: object): found is NotInCatalog {
  return "problem" in found;
}

/** Lower case, single spaces, plain hyphens and plain `x`, so that rows are compared by their letters alone. */
export function plainText(text: string): string {
  return text
    .normalize("NFKC")
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .replace(/\u00d7/g, "x")
    .replace(/\s+/g, " ")
    .trim()
    .toLowerCase();
}

/** Number of single-letter changes between two words (Levenshtein distance). */
export function letterChanges(a: string, b: string): number {
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = previous[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1);
      row.push(Math.min(changed, previous[j] + 1, row[j - 1] + 1));
    }
    previous = row;
  }
  return previous[b.length];
}

/** The names that differ from `text` by at most about a third of its letters, nearest first. */
export function nearestNames(text: string, names: readonly string[], most = 3): readonly string[] {
  // A long text cannot be a misspelled row, and comparing it would only cost time.
  if (text.length > 60) return [];
  const wanted = plainText(text);
  const limit = Math.max(1, Math.floor(wanted.length / 3));
  return names
    .map((name) => ({ name, changes: letterChanges(wanted, plainText(name)) }))
    .filter(({ changes }) => changes <= limit)
    .sort((a, b) => a.changes - b.changes)
    .slice(0, most)
    .map(({ name }) => name);
}
