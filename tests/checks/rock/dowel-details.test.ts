import { describe, expect, it } from "vitest";
import type { RuleDecl, RuleFinding } from "../../../server/src/checks/contract.js";
import { dowelHoles, dowelLayout, dowelSetting, rockSurface, soundDepth } from "../../../server/src/checks/rock/dowel-details.js";
import type { Structure } from "../../../server/src/project/model.js";
import { foot, inch } from "../given.js";
import { standing } from "../ground.js";

const bar = { name: "no. 6", diameter: 0.75 * inch, area: 0.44 * inch ** 2 };

function judge(rule: RuleDecl, dowels: object, ground: object = {}): readonly RuleFinding[] {
  const support = standing({
    name: "north",
    foundation: { kind: "footing on rock", dowels: { bar, hole: 1.25 * inch, spacing: 24 * inch, "into rock": 24 * inch, "set in": "cement grout", "hole condition": "dry", "rock temperature": "50 F or more", ...dowels } },
    ground: { kind: "rock", condition: "sound", ...ground },
  });
  const nowhere = { project: {}, codes: {}, site: {}, supports: [support], assumptions: [], confirm: [], accept: [], span: { block: 0, start: 0, end: 0 } };
  return rule.judge(nowhere as unknown as Structure);
}

describe("Size of the dowel holes", () => {
  it.each([
    ["cement grout", 1.25, "holds"],
    ["cement grout", 1.2, "over"],
    ["cement grout", 3, "holds"],
    // The trade's 3/4 in rods in 7/8 in holes.
    ["epoxy", 0.875, "holds"],
    ["epoxy", 0.86, "over"],
    ["epoxy", 1, "holds"],
    ["epoxy", 1.05, "over"],
    ["nothing", 0.75, "holds"],
  ])("a no. 6 bar in %s, hole %d in: %s", (setIn, hole, verdict) => {
    expect(judge(dowelHoles, { "set in": setIn, hole: hole * inch }).map((found) => found.verdict)).toEqual([verdict]);
  });

  it("says number first, then what to change", () => {
    expect(judge(dowelHoles, { hole: 0.875 * inch })[0].message).toBe("north: 0.875 in holes for no. 6 bars in cement grout; 1.25 in is the least, so that it flows all round the bar. Drill wider.");
    expect(judge(dowelHoles, { hole: undefined })[0].verdict).toBe("unchecked");
  });
});

describe("Spacing of the dowels and a face of the rock", () => {
  it.each([
    [{ spacing: 6 * inch }, ["holds"]],
    [{ spacing: 5.9 * inch }, ["over"]],
    [{ spacing: 8 * inch, hole: 2.1 * inch }, ["over"]],
    [{ spacing: 8 * inch, hole: 2 * inch }, ["holds"]],
    // 2 ft from a footing to the edge of rock, Cleveland building code.
    [{ "rock face": 2 * foot }, ["holds", "holds"]],
    [{ "rock face": 23 * inch }, ["holds", "over"]],
  ])("%j", (dowels, verdicts) => {
    expect(judge(dowelLayout, dowels).map(({ verdict }) => verdict)).toEqual(verdicts);
  });
});

describe("Wet and cold holes", () => {
  it.each([
    ["cement grout", "dry", "50 F or more", undefined, undefined, "holds", /clean/],
    ["epoxy", "dry", "50 F or more", undefined, undefined, "holds", /clean/],
    ["epoxy", "under water", "below 50 F", undefined, "some", "over", /adhesive in under water holes|one whose printed instructions cover that/],
    ["epoxy", "damp", "below 50 F", true, undefined, "over", /first 3 dowels and then 1 in 10/],
    ["epoxy", "damp", "below 50 F", true, "some", "holds", /clean/],
    ["epoxy", "dry", "frozen", true, "some", "over", /every dowel/],
    ["epoxy", "dry", "frozen", true, "all", "holds", /clean/],
    ["cement grout", "dry", "frozen", true, "all", "over", /does not set/],
    ["cement grout", "damp", "50 F or more", undefined, "none", "over", /first 3 dowels/],
    ["cement grout", "damp", "50 F or more", undefined, "some", "holds", /clean/],
    ["nothing", "under water", "frozen", undefined, undefined, "holds", /driven dry/],
  ])("%s, %s, %s, listed %s, tested %s: %s", (setIn, wet, cold, listed, test, verdict, words) => {
    const [found] = judge(dowelSetting, { "set in": setIn, "hole condition": wet, "rock temperature": cold, listed, "proof test": test });
    expect(found.verdict).toBe(verdict);
    expect(found.message).toMatch(words);
  });

  it("asks for what is not stated", () => {
    expect(judge(dowelSetting, { "hole condition": undefined })[0].message).toMatch(/how wet the holes are/);
  });
});

describe("Depth to drill below weathered rock", () => {
  it.each([
    [{}, "holds", "north: drill 24 in into sound rock."],
    [{ condition: "weathered" }, "unchecked", /State how thick the weathered rock is/],
    [{ condition: "weathered", "weathered depth": 18 * inch }, "holds", "north: drill 42 in: 18 in of weathered rock and 24 in of sound rock below it."],
    [{ condition: "sound", "weathered depth": 6 * inch }, "holds", /drill 30 in/],
    [{ condition: undefined }, "unchecked", /condition of the rock/],
  ])("%j: %s", (ground, verdict, words) => {
    const [found] = judge(soundDepth, {}, ground);
    expect(found.verdict).toBe(verdict);
    if (typeof words === "string") expect(found.message).toBe(words);
    else expect(found.message).toMatch(words);
  });
});

describe("Slope of the rock, IBC 2021 1809.3: 1 in 10 at most", () => {
  it.each([
    [{}, []],
    [{ "rock slope": 0.1 }, ["holds"]],
    [{ "rock slope": 0.11 }, ["over"]],
    [{ "rock slope": 0.3, surface: "benched" }, ["holds"]],
  ])("%j", (ground, verdicts) => {
    expect(judge(rockSurface, {}, ground).map(({ verdict }) => verdict)).toEqual(verdicts);
  });

  it("sends to benches, and says what a key does not do", () => {
    expect(judge(rockSurface, {}, { "rock slope": 0.25 })[0].message).toBe(
      "north: the rock slopes 3 in 12; the underside of a footing may slope 1 in 10 at most (IBC 2021 1809.3). Cut level benches (`surface: benched`). A key or dowels stop the sliding, and leave the slope.",
    );
  });
});
