import { describe, expect, it } from "vitest";
import { checkText } from "../../server/src/engine/check-text.js";
import { buildReport } from "../../server/src/engine/report.js";
import { starterOf, starters } from "../../server/src/summary/starters.js";

describe("the starters", () => {
  it("are found by their kind, and no other is", () => {
    for (const starter of starters) expect(starterOf(starter.kind)).toBe(starter);
    expect(new Set(starters.map(({ kind }) => kind)).size).toBe(4);
    expect(starterOf("")).toBeUndefined();
  });

  it.each(starters.map(({ kind, text }) => [kind, text]))("begin %s with a text that reads without a problem", (_, text) => {
    expect(checkText(text).problems).toEqual([]);
  });

  it.each(starters.map(({ kind, text }) => [kind, text]))("begin %s with numbers for which every check is made and holds", (kind, text) => {
    const { structures } = buildReport(checkText(text), { file: `${kind}.rootfast` });
    const findings = structures.flatMap(({ supports }) => supports.flatMap((support) => support.findings));
    expect(findings.length).toBeGreaterThan(4);
    expect(findings.filter(({ state }) => state !== "holds").map(({ check, subject, state }) => `${state}: ${check} at ${subject}`)).toEqual([]);
  });

  it.each(starters.map(({ kind, text }) => [kind, text]))("teach in comments in %s, in lines that fit a narrow editor", (_, text) => {
    const lines = text.split("\n");
    expect(lines.filter((line) => /#/u.test(line)).length).toBeGreaterThan(8);
    expect(lines.filter((line) => line.length > 120)).toEqual([]);
    expect(text.endsWith("\n") && !text.endsWith("\n\n")).toBe(true);
  });
});
