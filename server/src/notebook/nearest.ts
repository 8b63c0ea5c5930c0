/** The names a misspelled one may stand for. */
import { plainText } from "../catalog/lookup.js";

/** Slips between two words: a letter more, fewer or changed, or two neighbors swapped (optimal string alignment). */
export function slips(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      let least = Math.min(last[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1), last[j] + 1, row[j - 1] + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, before[j - 2] + 1);
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length];
}

/** Longer texts are no misspelled names, and comparing them with many would only cost time. */
const longest = 60;
const mostCompared = 500;

/** Names with slips in at most about a third of the letters, nearest first. */
export function nearestNames(written: string, names: readonly string[], most = 3): readonly string[] {
  if (written.length > longest) return [];
  const wanted = plainText(written);
  const limit = Math.max(1, Math.floor(wanted.length / 3));
  return names
    .slice(0, mostCompared)
    .filter((name) => Math.abs(name.length - written.length) <= limit + 2)
    .map((name) => ({ name, count: slips(wanted, plainText(name)) }))
    .filter(({ count }) => count <= limit)
    .sort((a, b) => a.count - b.count)
    .slice(0, most)
    .map(({ name }) => name);
}
