import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseNotebook, parseWhole, type ParsedNotebook } from "../../server/src/notebook/parse.js";
import { split } from "../../server/src/notebook/split.js";
import { absolute } from "../../server/src/notebook/tree.js";
import { sample, shown, shownProblem } from "./sample.js";

const view = (parsed: ParsedNotebook) => ({ documents: parsed.documents.map(shown), problems: parsed.problems.map(shownProblem) });

const expectEqual = (text: string, parsed: ParsedNotebook) => {
  const whole = parseWhole(text);
  expect(view(parsed), JSON.stringify(text)).toEqual(view(whole));
  for (const problem of parsed.problems) {
    const { start, end } = absolute(problem.span);
    expect(0 <= start && start <= end && end <= text.length, `${problem.code} ${start}-${end} of ${text.length}`).toBe(true);
  }
};

const scraps = [
  "\n", "  ", "    ", " ", ":", ": ", "#", " #6", "# ", "-", "- ", "'", '"', "{", "}", "[", "]", ",", "&a", "*a ", "<<: *a", "|", ">", "\t", "\r\n", "=", "\u00a0", "é", "😀",
  "\nsite:\n", "\n  till:\n", "\n    depth: 7 ft", "\n---\n", "\n...\n", "pier:", "x", "\n# note\n", "~", "? ", "!tag ", "\n  a: |\n    b\n\n", "\n  a: \"b\n", "{a: 1, b}", "\n foo", "\nfoo", "\nfoo: bar", "\n  foo: {", "\n  }",
];

const change = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  remove: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 80 })),
  insert: fc.oneof(fc.constantFrom(...scraps), fc.constant(""), fc.string({ maxLength: 3 }), fc.array(fc.constantFrom(...scraps), { maxLength: 3 }).map((all) => all.join(""))),
});

const apply = (text: string, { at, remove, insert }: { at: number; remove: number; insert: string }) => {
  const start = Math.floor(at * text.length);
  return text.slice(0, start) + insert + text.slice(start + remove);
};

const value = fc.constantFrom("8 no. 6", "8 #6", "7 ft", "= max(1 ft, 2 ft)", "{a: 1 ft, b: 2 ft}", "[1, 2]", "'it''s'", '"q"', "|\n      text\n      more", "", "&x 3 in", "*x", "1,5 ft", "a\n      b", "# note", "#4 at 3 in", "{height: = max(9 ft, 8 ft), base: A}", "{bars: 8 #6, base: A}", ">-\n      folded\n\n");
const name = fc.constantFrom("a", "b", "clear height", "pier", "é", "A/B", "x.y");
const entry = fc.tuple(name, fc.array(fc.tuple(name, value), { maxLength: 3 }), fc.constantFrom("", "\n", "  # note\n", "# note\n")).map(([key, fields, after]) => `  ${key}:\n${fields.map(([k, v]) => `    ${k}: ${v}\n`).join("")}${after}`);
const section = fc.tuple(fc.constantFrom("site", "ground", "columns", "foundations", "given"), fc.constantFrom("", " # note", " #6", " 4", " &x"), fc.array(entry, { maxLength: 4 }), fc.constantFrom("", "\n", "# note\n\n")).map(([key, tail, entries, after]) => `${key}:${tail}\n${entries.join("")}${after}`);
const notebookText = fc.tuple(fc.constantFrom("rootfast: 1\n", "", "\ufeffrootfast: 1\n", "# note\nrootfast: 1\n\n"), fc.array(section, { maxLength: 5 }), fc.boolean()).map(([head, sections, crlf]) => {
  const text = head + sections.join("");
  return crlf ? text.replaceAll("\n", "\r\n") : text;
});

describe("parsing by blocks", () => {
  test("gives for any generated notebook what one parse of the whole gives", () => {
    fc.assert(fc.property(notebookText, (text) => expectEqual(text, parseNotebook(text))), { numRuns: Number(process.env.RUNS ?? 150) });
  });

  test("gives after any sequence of edits what one parse of the whole gives", () => {
    fc.assert(
      fc.property(fc.oneof(fc.constant(sample), fc.constant(sample.replaceAll("\n", "\r\n")), notebookText), fc.array(change, { minLength: 1, maxLength: 5 }), (start, changes) => {
        let text = start;
        let parsed = parseNotebook(text);
        for (const edit of changes) {
          text = apply(text, edit);
          parsed = parseNotebook(text, parsed);
          expectEqual(text, parsed);
        }
      }),
      { numRuns: Number(process.env.RUNS ?? 80) },
    );
  });

  test("cuts the text into pieces that join to the text again", () => {
    fc.assert(
      fc.property(fc.oneof(notebookText, fc.string()), fc.array(change, { maxLength: 3 }), (start, changes) => {
        const text = changes.reduce(apply, start);
        const pieces = split(text);
        if (pieces) expect(pieces.map((piece) => text.slice(piece.start, piece.end)).join("")).toBe(text);
        if (pieces) expect(new Set(pieces.map((piece) => piece.key)).size).toBe(pieces.length);
      }),
    );
  });
});
