import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseNotebook } from "../../server/src/notebook/parse.js";
import { readNotebook, type NotebookReading } from "../../server/src/notebook/read-notebook.js";
import { absolute } from "../../server/src/notebook/tree.js";
import { sample, shownProblem } from "./sample.js";

const pier = (i: number) => `  pier ${i}:\n    kind: pier\n    depth: 7 ft\n    diameter: = clear height / 3\n    ground: till\n`;
const many = sample.replace("foundations:\n", `foundations:\n${Array.from({ length: 100 }, (_, i) => pier(i)).join("")}`);

const edit = (text: string, from: string, to: string) => {
  const parsed = parseNotebook(text);
  const before = readNotebook(parsed, 0);
  const after = readNotebook(parseNotebook(text.replace(from, () => to), parsed), 0, before);
  return { before, after };
};

describe("reading after an edit", () => {
  test("of one depth among a hundred foundations reads one entry, and keeps the others' objects", () => {
    const { before, after } = edit(many, "  pier 50:\n    kind: pier\n    depth: 7 ft", "  pier 50:\n    kind: pier\n    depth: 8 ft");
    expect(after.entriesRead).toBe(1);
    const [old, now] = [before.values.foundations?.value, after.values.foundations?.value];
    expect([...(now ?? [])].filter(([name, located]) => located !== old?.get(name)).map(([name]) => name)).toEqual(["pier 50"]);
    expect(after.values.columns?.value).toBe(before.values.columns?.value);
    expect(after.values.site?.value).toBe(before.values.site?.value);
  });

  test("of a value others use reads those that use it", () => {
    const { after } = edit(many, "clear height: 9 ft", "clear height: 10 ft");
    // The value itself, 100 piers and both column lines.
    expect(after.entriesRead).toBe(103);
    expect(after.values.columns?.value.get("south")?.value.height?.value).toBeCloseTo(10 * 0.3048, 12);
  });

  test("that leaves a used value as it was stops there", () => {
    const { after } = edit(many, "clear height: 9 ft", "clear height: 9.0 ft");
    expect(after.entriesRead).toBe(1);
  });

  test("of a comment above a section reads at most the entry it stands after", () => {
    const { after } = edit(many, "# the south side", "# the south side, as seen");
    expect(after.entriesRead).toBe(1);
  });

  test("that adds lines above keeps what is below, with its places moved", () => {
    const { before, after } = edit(many, "rootfast: 1\n", "rootfast: 1\n\n# one more\n\n");
    expect(after.values.foundations?.value).toBe(before.values.foundations?.value);
    const depth = after.values.foundations?.value.get("pier 99")?.value.depth;
    expect(depth && absolute(depth.span).start).toBe(many.indexOf("depth: 7 ft", many.indexOf("pier 99:")) + 7 + "\n# one more\n\n".length);
  });

  test("that takes away a name is noticed by what refers to it", () => {
    const { after } = edit(sample, "  till:\n", "  clay:\n");
    expect(after.problems.map((problem) => problem.code)).toEqual(["reference.unknown"]);
    const given = edit(sample, "  clear height: 9 ft", "  clear span: 9 ft").after;
    expect(given.problems.map((problem) => problem.code)).toEqual(["expression.unknown-name", "expression.unknown-name"]);
  });
});

/** Values and problems with absolute places. */
function view(reading: NotebookReading): unknown {
  const values = (value: unknown): unknown => {
    if (value instanceof Map) return [...value].map(([key, inner]) => [key, values(inner)]);
    if (Array.isArray(value)) return value.map(values);
    if (typeof value !== "object" || value === null) return value;
    if ("path" in value && "span" in value) {
      const located = value as { value: unknown; path: string; span: Parameters<typeof absolute>[0]; expression?: string };
      return [located.path, absolute(located.span), located.expression, values(located.value)];
    }
    return Object.entries(value).map(([key, inner]) => [key, values(inner)]);
  };
  return { values: values(reading.values), problems: reading.problems.map(shownProblem) };
}

const scraps = ["\n", " ", "  ", ":", ": ", "=", "= clear height", "clear height", "9 ft", "psi", "A", "B", "till", "pier", "#", " #6", "{", "}", ",", "- ", '"', "&a ", "*a", "<<: *a\n    ", "north", "columns.south.height", "\n  clear height: 3 ft", "\n  h: = clear height", "\n    depth: = h", "1", "-"];
const change = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  remove: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 8 }), fc.integer({ min: 0, max: 60 })),
  insert: fc.oneof(fc.constantFrom(...scraps), fc.constant("")),
});
const apply = (text: string, { at, remove, insert }: { at: number; remove: number; insert: string }) => {
  const start = Math.floor(at * text.length);
  return text.slice(0, start) + insert + text.slice(start + remove);
};

const linked = `rootfast: 1
given:
  a: = b + 1 ft
  b: = columns.north.height
  clear height: 9 ft
columns:
  north:
    height: = clear height
    stands on: pier
    base: A
  south:
    height: = a - b + columns.north.height
bases:
  A:
    plate: 14 in x = a / 12 x 1 in
foundations:
  pier:
    depth: = columns.south.height
    ground: till
ground:
  till:
    kind: soil
`;

test("a reading made step by step equals a reading made afresh", () => {
  fc.assert(
    fc.property(fc.constantFrom(sample, linked), fc.array(change, { minLength: 1, maxLength: 5 }), (start, changes) => {
      let text: string = start;
      let parsed = parseNotebook(text);
      let reading = readNotebook(parsed, 0);
      for (const one of changes) {
        text = apply(text, one);
        parsed = parseNotebook(text, parsed);
        reading = readNotebook(parsed, 0, reading);
        const fresh = parseNotebook(text);
        expect(view(reading), JSON.stringify(text)).toEqual(view(readNotebook(fresh, 0)));
        for (const { span } of reading.problems) {
          const { start: from, end } = absolute(span);
          expect(0 <= from && from <= end && end <= text.length).toBe(true);
        }
      }
    }),
    { numRuns: Number(process.env.RUNS ?? 60) },
  );
});

test("every third beginning of a notebook is read, within a moment", () => {
  for (let length = 0; length <= sample.length; length += 3) {
    const text = sample.slice(0, length);
    const began = performance.now();
    const parsed = parseNotebook(text);
    const reading = readNotebook(parsed, 0);
    expect(performance.now() - began).toBeLessThan(1000);
    for (const { span } of [...parsed.problems, ...reading.problems]) {
      const { start, end } = absolute(span);
      expect(0 <= start && start <= end && end <= text.length, `${length}`).toBe(true);
    }
  }
});

test("no text at all makes reading throw", () => {
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: "binary", maxLength: 200 }), fc.string({ maxLength: 200 }), fc.array(fc.constantFrom(...scraps, "rootfast: 1\n", "site:\n", "given:\n  "), { maxLength: 40 }).map((all) => all.join(""))), (text) => {
      const parsed = parseNotebook(text);
      for (const index of parsed.documents.keys()) readNotebook(parsed, index);
      expect(parsed.text).toBe(text);
    }),
    { numRuns: 200 },
  );
});
