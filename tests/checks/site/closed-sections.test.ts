import { describe, expect, it } from "vitest";
import { closedSections } from "../../../server/src/checks/site/closed-sections.js";
import { findSection } from "../../../server/src/catalog/sections.js";
import type { Structure } from "../../../server/src/project/model.js";
import { inch, supportOf } from "../given.js";

const judge = (column: Record<string, unknown>, frost = 0.9) => {
  const support = supportOf({ column: { section: findSection("HSS6x6x3/8"), ...column }, site: { "frost depth": frost } });
  return closedSections.judge({ supports: [support], project: {} } as unknown as Structure);
};

// Common practice, no source: a weep of 1/2 in low, a vent high where dipped in zinc (ASTM A385).
describe("weep and vent holes of closed sections", () => {
  it.each([
    ["nothing stated", {}, 0.9, "unchecked", /not stated.*0\.5 in/],
    ["a weep of 1/2 in", { "weep hole": 0.5 * inch }, 0.9, "holds", /drains by a weep hole of 0\.5 in/],
    ["a weep of 1/4 in", { "weep hole": 0.25 * inch }, 0.9, "over", /weep hole 0\.25 in; 0\.5 in is needed/],
    ["no weep where it freezes", { "weep hole": 0 }, 0.9, "over", /freezes.*splits/],
    ["no weep where it does not freeze", { "weep hole": 0 }, 0, "holds", /does not freeze/],
    ["galvanized, no vent stated", { "weep hole": 0.5 * inch, galvanized: true }, 0.9, "unchecked", /vent hole is not stated/],
    ["galvanized without a vent", { "weep hole": 0.5 * inch, galvanized: true, "vent hole": 0 }, 0, "over", /burst/],
    ["galvanized without a drain", { "weep hole": 0, galvanized: true, "vent hole": 0.5 * inch }, 0, "over", /run in and out/],
    ["galvanized with both", { "weep hole": 0.5 * inch, galvanized: true, "vent hole": 0.5 * inch }, 0.9, "holds", /drains/],
  ] as const)("%s", (_, column, frost, verdict, message) => {
    const [found] = judge(column, frost);
    expect(found.verdict).toBe(verdict);
    expect(found.message).toMatch(message);
  });

  it("says nothing of an open section, nor of a foundation alone", () => {
    expect(judge({ section: findSection("W8x31") })).toEqual([]);
    expect(closedSections.judge({ supports: [supportOf({ foundation: {} })], project: {} } as unknown as Structure)).toEqual([]);
  });
});
