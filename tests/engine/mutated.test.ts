import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, it } from "vitest";
import { checkText } from "../../server/src/engine/check-text.js";
import { sound } from "./sound.js";

const folder = join(__dirname, "../../samples");
const samples = readdirSync(folder).map((name) => readFileSync(join(folder, name), "utf8"));

/** Values nobody means: of wild size, in the wrong unit, of another kind, half written. */
const values = [
  "", "0", "-1", "1e9 ft", "1e-9 in", "1e308 ft", "99999999999999999999 in", "1000000 kip", "-0 in", "1/0 in", ".5 in", "1,5 in", "0x10", "½ in", "１２ in", "5 ft: 6", "90 deg", "1000 in 12", "300 %", "5 psf", "5 kip-ft", "no. 99", "HSS99x99x9",
  "null", "~", "[]", "{}", "[1 in, 2 in]", "{ a: 1 }", "|", "'", '"', "&a 5 ft", "*a", "!!str 5 ft", "= 1/0", "= 1 ft / (1 ft - 1 ft)", "= depth", "= nobody", "= clear height * 1e300", "= 9^9^9 ft", "= __proto__", "nobody", "\u202e5 ft", "5\u00a0ft", "−5 ft", "🏕️",
];

type Edit = (lines: readonly string[], at: number, other: number) => readonly string[];

const replaced = (lines: readonly string[], at: number, by: (line: string) => string): readonly string[] => lines.map((line, i) => (i === at ? by(line) : line));
const inserted = (lines: readonly string[], at: number, ...more: readonly string[]): readonly string[] => [...lines.slice(0, at), ...more, ...lines.slice(at)];
const valueOf = (line: string): string => /:(?: (.*))?$/u.exec(line)?.[1] ?? "";
const withValue = (line: string, value: string): string => line.replace(/:(?: .*)?$/u, `: ${value}`);
const nest = Array.from({ length: 60 }, (_, i) => `${"  ".repeat(i)}a:`);

const edits: Readonly<Record<string, Edit>> = {
  "a value nobody means": (lines, at, other) => replaced(lines, at, (line) => withValue(line, values[other % values.length])),
  "the value of another field": (lines, at, other) => replaced(lines, at, (line) => withValue(line, valueOf(lines[other % lines.length]))),
  "a field without its value, or a section without its entries": (lines, at) => replaced(lines, at, (line) => withValue(line, "")),
  "a line left out": (lines, at) => lines.filter((_, i) => i !== at),
  "a line twice": (lines, at, other) => inserted(lines, other % lines.length, lines[at]),
  "two lines in each other's place": (lines, at, other) => lines.map((line, i) => (i === at ? lines[other % lines.length] : i === other % lines.length ? lines[at] : line)),
  "another indent": (lines, at, other) => replaced(lines, at, (line) => " ".repeat(other % 9) + line.trimStart()),
  "tabs for spaces": (lines, at) => replaced(lines, at, (line) => line.replace(/^ +/u, (spaces) => "\t".repeat(spaces.length / 2))),
  "brackets that do not close": (lines, at, other) => replaced(lines, at, (line) => withValue(line, "[{(\"'"[other % 5].repeat(1 + (other % 200)))),
  "fields nested without end": (lines, at) => inserted(lines, at, ...nest),
  "a document within the document": (lines, at) => inserted(lines, at, "---"),
};

const anyEdit = fc.record({ edit: fc.constantFrom(...Object.keys(edits)), at: fc.nat({ max: 9999 }), other: fc.nat({ max: 9999 }) });
const anyText = fc
  .record({ sample: fc.constantFrom(...samples), done: fc.array(anyEdit, { minLength: 1, maxLength: 3 }), ends: fc.constantFrom("\n", "\r\n"), mark: fc.constantFrom("", "\ufeff") })
  .map(({ sample, done, ends, mark }) => mark + done.reduce<readonly string[]>((lines, { edit, at, other }) => edits[edit](lines, at % Math.max(1, lines.length), other), sample.split("\n")).join(ends));

describe("A sample with slips in it", () => {
  it("is answered, whatever the slips: places inside the text, no words of the machine, finite numbers", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        sound(text, checkText(text));
      }),
      { numRuns: 30, endOnFailure: true },
    );
  }, 120_000);
});
