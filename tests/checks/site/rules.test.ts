import { describe, expect, it } from "vitest";
import type { RuleDecl, RuleFinding } from "../../../server/src/checks/contract.js";
import { frost } from "../../../server/src/checks/site/frost.js";
import { loadPath } from "../../../server/src/checks/site/load-path.js";
import { oneGround } from "../../../server/src/checks/site/one-ground.js";
import type { Structure, Support } from "../../../server/src/project/model.js";
import { foot, inch, kip } from "../given.js";
import { standing } from "../ground.js";

const structure = (supports: readonly Support[], parts: object = {}): Structure =>
  ({ project: {}, codes: {}, site: {}, supports, assumptions: [], confirm: [], accept: [], span: { block: 0, start: 0, end: 0 }, ...parts }) as unknown as Structure;

const judge = (rule: RuleDecl, supports: readonly Support[], parts?: object): readonly RuleFinding[] => rule.judge(structure(supports, parts));
const line = (count: number): { x: number; y: number }[] => Array.from({ length: count }, (_, i) => ({ x: i, y: 0 }));

describe("All supports on rock, or none", () => {
  const on = (name: string, kind: string | undefined, count = 1) => standing({ name, foundation: { kind: "pier" }, ground: { kind }, places: line(count) });

  it("holds where every support stands on the same kind", () => {
    expect(judge(oneGround, [on("north", "rock"), on("south", "rock")]).map(({ verdict }) => verdict)).toEqual(["holds", "holds"]);
    expect(judge(oneGround, [on("alone", "soil")]).map(({ verdict }) => verdict)).toEqual(["holds"]);
  });

  it("is over at the smaller part, names both and points to the others", () => {
    const [south, ...others] = judge(oneGround, [on("north", "rock", 4), on("south", "soil", 2)]);
    expect(south.support?.name).toBe("south");
    expect(south.verdict).toBe("over");
    expect(south.message).toContain("north on rock, south on soil");
    expect(south.message).toMatch(/down to rock; or bench .* cushion .*; or separate/);
    expect(south.related?.map(({ message }) => message)).toEqual(["north stands on rock."]);
    expect(others).toEqual([]);
  });

  it("counts columns, not lines", () => {
    const found = judge(oneGround, [on("a", "soil"), on("b", "soil"), on("ledge", "rock", 4)]).filter(({ verdict }) => verdict === "over");
    expect(found.map(({ support }) => support?.name)).toEqual(["a", "b"]);
    const other = judge(oneGround, [on("a", "soil", 4), on("ledge", "rock")]).filter(({ verdict }) => verdict === "over");
    expect(other.map(({ support }) => support?.name)).toEqual(["ledge"]);
  });

  it("is over at the supports on soil where there are as many on rock", () => {
    const found = judge(oneGround, [on("north", "rock", 4), on("south", "soil", 4)]).filter(({ verdict }) => verdict === "over");
    expect(found.map(({ support }) => support?.name)).toEqual(["south"]);
  });

  it("does not answer for a support whose ground is not said", () => {
    const found = judge(oneGround, [on("north", "rock"), on("south", undefined)]);
    expect(found.map(({ support, verdict }) => [support?.name, verdict])).toEqual([["north", "holds"], ["south", "unchecked"]]);
  });
});

describe("Frost and least depth, IBC 2021 1809.4 and 1809.5", () => {
  const one = (depth: number | undefined, frostDepth: number | undefined, ground: object = { kind: "soil" }) =>
    judge(frost, [standing({ foundation: { kind: "pier", depth }, ground: ground as never, site: { "frost depth": frostDepth } })])[0];

  it.each([
    [48 * inch, 48 * inch, "holds"],
    [4 * foot, 48 * inch, "holds"],
    [1.219, 48 * inch, "over"],
    [7 * foot, 48 * inch, "holds"],
    [42 * inch, 48 * inch, "over"],
    [12 * inch, 0, "holds"],
    [11 * inch, 0, "over"],
    [11 * inch, 6 * inch, "over"],
  ])("underside at %d m with frost to %d m: %s", (depth, frostDepth, verdict) => {
    expect(one(depth, frostDepth).verdict).toBe(verdict);
  });

  it("says both depths", () => {
    expect(one(47.99 * inch, 48 * inch).message).toContain("underside at 3.999 ft, 4 ft needed");
    expect(one(42 * inch, 48 * inch).message).toBe("here: underside at 3 ft 6 in, 4 ft needed: the ground freezes to 4 ft. Go deeper.");
    expect(one(6 * inch, 0).message).toContain("least (IBC 2021 1809.4)");
  });

  it("asks for what is missing", () => {
    expect(one(undefined, 48 * inch)).toMatchObject({ verdict: "unchecked", message: expect.stringContaining("the depth of its underside is not given") });
    expect(one(4 * foot, undefined)).toMatchObject({ verdict: "unchecked", message: expect.stringContaining("the frost depth of the site is not given") });
    expect(one(4 * foot, 48 * inch, {})).toMatchObject({ verdict: "unchecked", message: expect.stringContaining("soil or rock is not said") });
  });

  it.each([
    ["sound rock takes the place of depth", { condition: "sound" }, "holds"],
    ["sound and drained rock takes the place of depth", { condition: "sound", drained: true }, "holds"],
    ["rock on which water stands does not", { condition: "sound", drained: false }, "over"],
    ["weathered rock does not", { condition: "weathered" }, "over"],
    ["fractured rock does not", { condition: "fractured" }, "over"],
    ["rock of unknown condition is not answered for", {}, "unchecked"],
  ])("%s", (_, ground, verdict) => {
    expect(one(24 * inch, 42 * inch, { kind: "rock", ...ground }).verdict).toBe(verdict);
  });

  it("counts the depth on weathered rock", () => {
    expect(one(42 * inch, 42 * inch, { kind: "rock", condition: "weathered" }).verdict).toBe("holds");
  });

  it("needs no depth on sound rock", () => {
    expect(one(undefined, undefined, { kind: "rock", condition: "sound" }).verdict).toBe("holds");
  });
});

describe("Load path from roof to ground", () => {
  const whole = {
    column: { base: "A", "stands on": "pier", "top connection": { detail: "welded cap", uplift: 4 * kip } },
    base: { plate: { thickness: 1 * inch }, anchors: { count: 4 } },
    foundation: { kind: "pier", ground: "till" },
    ground: { kind: "soil" },
  };
  const roof = { roof: { name: "roof", path: "roof", span: { block: 0, start: 0, end: 0 }, fields: {} } };
  const one = (parts: object, under: object = roof): RuleFinding => judge(loadPath, [standing({ ...whole, ...parts } as never)], under)[0];

  it("holds where every link is named", () => {
    expect(one({})).toMatchObject({ verdict: "holds", message: expect.stringContaining("roof, column top, column, base plate, anchor rods, foundation") });
  });

  it.each([
    ["no base is named", { column: { ...whole.column, base: undefined }, base: undefined }, "over", /ends at the column: it names no base/],
    ["the base named does not exist", { base: undefined }, "over", /there is no base named A/],
    ["the base has no plate", { base: { anchors: { count: 4 } } }, "over", /it has no plate/],
    ["the base has no anchor rods", { base: { plate: { thickness: 1 } } }, "over", /no anchor rods tie it/],
    ["the column stands on nothing", { column: { ...whole.column, "stands on": undefined }, foundation: undefined, ground: undefined }, "over", /no foundation below it is named/],
    ["the foundation named does not exist", { foundation: undefined, ground: undefined }, "over", /there is no foundation named pier/],
    ["the foundation names no ground", { foundation: { kind: "pier" }, ground: undefined }, "over", /it names no ground/],
    ["the ground named does not exist", { ground: undefined }, "over", /there is no ground named till/],
    ["the kind of ground is not said", { ground: {} }, "unchecked", /soil or rock is not said/],
    ["the top connection is not described", { column: { ...whole.column, "top connection": undefined } }, "unchecked", /what ties the roof to the column top is not described/],
    ["the top connection has no strength", { column: { ...whole.column, "top connection": { detail: "strap" } } }, "unchecked", /no stated uplift strength/],
  ])("%s", (_, parts, verdict, words) => {
    const found = one(parts);
    expect(found.verdict).toBe(verdict);
    expect(found.message).toMatch(words);
  });

  it("says a broken link before one that is not described", () => {
    expect(one({ column: { ...whole.column, "top connection": undefined }, ground: undefined }).verdict).toBe("over");
  });

  it("begins at the column base where reactions are given", () => {
    const column = { base: "A", "stands on": "pier", combined: {} };
    expect(one({ column }, {})).toMatchObject({ verdict: "holds", message: expect.not.stringContaining("roof") });
    expect(one({ column: { ...column, combined: undefined } }, {})).toMatchObject({ verdict: "unchecked", message: expect.stringContaining("nothing loads it") });
  });

  it("begins at a foundation that stands alone with its reactions", () => {
    const alone = { column: undefined, base: undefined };
    expect(one({ ...alone, foundation: { ...whole.foundation, combined: {} } }, {}).verdict).toBe("holds");
    expect(one({ ...alone }, {}).verdict).toBe("unchecked");
  });
});
