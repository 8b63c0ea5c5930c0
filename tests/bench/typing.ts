/** One-character edits in a long notebook, of the kinds somebody makes: values of one support, of the site, remarks, names. */
export interface Place {
  readonly kind: string;
  /** Text to look for behind the heading of the support, or from the start. */
  readonly behind: (support: number) => readonly string[];
  /** What stands at the place in turn. */
  readonly signs: readonly string[];
}

export const places: readonly Place[] = [
  { kind: "depth of a pier", behind: (i) => [`\n  P${i}:`, "depth: "], signs: ["7", "8", "9"] },
  { kind: "reaction of a column", behind: (i) => [`\n  C${i}:`, "up: "], signs: ["2", "3", "4"] },
  { kind: "height of a column", behind: (i) => [`\n  C${i}:`, "height: 1"], signs: ["0", "1", "2"] },
  { kind: "space behind a value", behind: (i) => [`\n  P${i}:`, "ground: sand"], signs: [" "] },
  { kind: "unit half written", behind: (i) => [`\n  P${i}:`, "above grade: 6 i"], signs: ["n", "m"] },
];

/** What all supports share; an edit there reaches every one of them. */
export const sharedPlaces: readonly Place[] = [
  { kind: "frost depth of the site", behind: () => ["frost depth: 3"], signs: ["4", "5", "6"] },
  { kind: "unit weight of the ground", behind: () => ["unit weight: 11"], signs: ["0", "1", "2"] },
  { kind: "thickness of the base plate", behind: () => ["14 in x 14 in x "], signs: ["1", "2", "3"] },
];

/** The text with one character changed, the `turn`th sign that differs from what is there. */
export function edited(text: string, place: Place, support: number, turn: number): string {
  let at = 0;
  for (const stretch of place.behind(support)) {
    const found = text.indexOf(stretch, at);
    if (found < 0) throw new Error(`${JSON.stringify(stretch)} is not in the notebook.`);
    at = found + stretch.length;
  }
  const signs = place.signs.filter((sign) => sign !== text[at]);
  const sign = signs[turn % signs.length];
  // A space added at the end of a line is taken away again by the next edit there.
  if (place.kind.startsWith("space")) return text[at] === " " ? text.slice(0, at) + text.slice(at + 1) : text.slice(0, at) + sign + text.slice(at);
  return text.slice(0, at) + sign + text.slice(at + 1);
}

/** Numbers that visit every part of a range without order, the same in each run. */
export function* wander(count: number): Generator<number> {
  let state = 12345;
  for (;;) {
    state = (state * 1103515245 + 12345) % 2147483648;
    yield 1 + Math.floor((state / 2147483648) * count);
  }
}
