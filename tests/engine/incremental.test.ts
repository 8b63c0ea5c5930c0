import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkText, type Checked } from "../../server/src/engine/check-text.js";
import { buildReport } from "../../server/src/engine/report.js";
import { longNotebook } from "../bench/long-notebook.js";

const samples = ["landing-shelter", "market-canopy", "bus-stop-reactions"].map((name) => readFileSync(join(__dirname, "../../samples", `${name}.rootfast`), "utf8"));

const reportOf = (checked: Checked) => buildReport(checked, { file: "x" });

describe("An edit costs what it touches", () => {
  const text = longNotebook(100);
  const first = checkText(text);

  it("the long notebook is read whole at first", () => {
    expect(first.problems.filter((problem) => problem.severity === "error").map((problem) => problem.message)).toEqual([]);
    expect(first.documents[0].structure.supports).toHaveLength(100);
    expect(first.work.blocksParsed).toBeGreaterThan(200);
    expect(first.work.entriesRead).toBeGreaterThan(200);
    expect(first.work.checksRun).toBeGreaterThan(500);
  });

  it("the same text again does nothing", () => {
    const again = checkText(text, first);
    expect(again.work).toMatchObject({ blocksParsed: 0, entriesRead: 0, checksRun: 0, evaluations: 0 });
  });

  it("one depth of a hundred parses one block, reads one entry and runs checks of that support alone", () => {
    const from = text.indexOf("depth:", text.indexOf("  P50:"));
    const edited = `${text.slice(0, from)}depth: 11 ft${text.slice(text.indexOf("\n", from))}`;
    const next = checkText(edited, first);
    expect(next.work.blocksParsed).toBe(1);
    expect(next.work.entriesRead).toBe(1);
    expect(next.work.checksRun).toBeGreaterThan(0);
    const before = new Map(first.documents[0].checks.map((result) => [`${result.support.path} ${result.check.id}`, result]));
    const fresh = next.documents[0].checks.filter((result) => before.get(`${result.support.path} ${result.check.id}`) !== result);
    expect([...new Set(fresh.map((result) => result.support.path))]).toEqual(["columns.C50"]);
    expect(next.work.checksRun).toBeLessThan(fresh.length);
    expect(reportOf(next)).toEqual(reportOf(checkText(edited)));
  });

  it("a line added above moves everything and computes nothing", () => {
    const edited = text.replace("project:", "# a remark\n\nproject:");
    const next = checkText(edited, first);
    expect(next.work.checksRun).toBe(0);
    expect(next.work.blocksParsed).toBeLessThanOrEqual(2);
    expect(reportOf(next)).toEqual(reportOf(checkText(edited)));
  });
});

describe("Incremental equals full", () => {
  const pieces = ["1", "0", " ", "\n", "ft", ":", "  ", "x", "= ", "#", "depth: 9 ft\n", "&a ", "*a", "'", "{", "}", ",", "- ", "140 mph", "\t"];
  const edit = fc.record({ at: fc.double({ min: 0, max: 1, noNaN: true }), remove: fc.integer({ min: 0, max: 12 }), insert: fc.constantFrom(...pieces, "") });

  it("over random edits of the samples, one after the other", () => {
    fc.assert(
      fc.property(fc.constantFrom(...samples), fc.array(edit, { minLength: 1, maxLength: 6 }), (sample, edits) => {
        let text = sample;
        let checked = checkText(text);
        for (const { at, remove, insert } of edits) {
          const from = Math.floor(at * text.length);
          text = text.slice(0, from) + insert + text.slice(from + remove);
          checked = checkText(text, checked);
          expect(reportOf(checked)).toEqual(reportOf(checkText(text)));
        }
      }),
      { numRuns: 30 },
    );
  }, 180_000);

  it("over sensible edits of values", () => {
    const value = fc.constantFrom("7 ft", "9 ft", "30 in", "6 in", "5000 psi", "yes", "no", "SM", "rock", "", "= clear height", "= nothing");
    fc.assert(
      fc.property(fc.constantFrom(...samples), fc.array(fc.record({ line: fc.double({ min: 0, max: 0.999, noNaN: true }), value }), { minLength: 1, maxLength: 8 }), (sample, edits) => {
        let text = sample;
        let checked = checkText(text);
        for (const { line, value: written } of edits) {
          const lines = text.split("\n");
          const i = Math.floor(line * lines.length);
          lines[i] = lines[i].replace(/:.*$/u, `: ${written}`);
          text = lines.join("\n");
          checked = checkText(text, checked);
          expect(reportOf(checked)).toEqual(reportOf(checkText(text)));
        }
      }),
      { numRuns: 30 },
    );
  }, 180_000);
});
