import { describe, expect, it } from "vitest";
import { leastPlateEdge, plateHole } from "../../../server/src/catalog/rods.js";
import { findSection } from "../../../server/src/catalog/sections.js";
import { belowFinish } from "../../../server/src/checks/base/below-finish.js";
import { details, edgeNeeded, rodInWide, rodToColumn, rodToEdge } from "../../../server/src/checks/base/details.js";
import { groutThickness } from "../../../server/src/checks/base/grout-thickness.js";
import { nutEngaged, projection, projectionNeeded, stackOf } from "../../../server/src/checks/base/projection.js";
import type { RuleDecl } from "../../../server/src/checks/contract.js";
import type { Structure } from "../../../server/src/project/model.js";
import { inch, supportOf } from "../given.js";
import { supportWith, type Given } from "./base.js";

const judged = (rule: RuleDecl, given: Given) => {
  const structure = { project: {}, supports: [supportWith(given)] } as unknown as Structure;
  const found = rule.judge(structure);
  expect(found).toHaveLength(1);
  return found[0];
};
const size = (width: number, thickness: number) => ({ width: width * inch, thickness: thickness * inch });

describe("details of the base plate", () => {
  it("are those of AISC Companion 16th ed., Example K.9: 3/4 in rods in 1-5/16 in holes, 1-1/2 in from the edges of 13 x 13, and hold", () => {
    const found = judged(details, { section: "HSS6x6x1/2", plate: [13, 13, 1], spacing: [10, 10], rod: 0.75, base: { hole: 1.3125 * inch, washer: size(2, 0.25) } });
    expect(found.message).toBe("here: Plate 1 in, holes 1.313 in, washers 2 in by 0.25 in: edges and room suffice.");
    expect(found.verdict).toBe("holds");
    expect(rodToEdge.value({ B: 13, N: 13, x: 5, y: -5 })).toBe(1.5);
  });

  // Rod, hole, washer: AISC Design Guide 1, 2nd ed., Table 2.3; hole of the later table from memory.
  it.each([
    [0.5, 1.0625, undefined, undefined, undefined],
    [0.625, 1.1875, undefined, undefined, undefined],
    [0.75, 1.3125, 2, 0.25, undefined],
    [0.875, 1.5625, 2.5, 0.3125, undefined],
    [1, 1.8125, 3, 0.375, 1.875],
    [1.25, 2.0625, 3, 0.5, 2.125],
    [1.5, 2.3125, 3.5, 0.5, 2.375],
    [1.75, 2.75, 4, 0.625, 2.875],
    [2, 3.25, 5, 0.75, undefined],
  ])("the table has for a rod of %s in a hole of %s in, a washer of %s by %s in, later a hole of %s in", (rod, hole, width, thickness, later) => {
    const row = plateHole(rod * inch)!;
    const inches = (value: number | undefined) => (value === undefined ? undefined : Number((value / inch).toFixed(6)));
    expect([inches(row.hole), inches(row.washer?.width), inches(row.washer?.thickness), inches(row.laterHole)]).toEqual([hole, width, thickness, later]);
  });

  // AISC 360-22 Table J3.4 (from memory): standard hole, then with the steel beyond a wide hole kept: 1 + (1-5/16 - 13/16)/2.
  it.each([
    [0.5, 0.75],
    [0.75, 1],
    [1, 1.25],
    [1.125, 1.5],
    [1.5, 1.875],
  ])("a rod of %s in stands at least %s in from the edge in a standard hole", (rod, least) => {
    expect(leastPlateEdge(rod * inch) / inch).toBeCloseTo(least, 9);
    const standard = rod < 1 ? rod + 1 / 16 : rod + 1 / 8;
    expect(edgeNeeded.value({ e_t: least * inch, d_h: standard * inch, d_a: rod * inch }) / inch).toBeCloseTo(least, 9);
    expect(edgeNeeded.value({ e_t: least * inch, d_h: (standard + 0.5) * inch, d_a: rod * inch }) / inch).toBeCloseTo(least + 0.25, 9);
  });

  it.each<[string, Given, RegExp]>([
    ["a plate of 1/4 in below a tube", { plate: [14, 14, 0.25] }, /0\.25 in thick; 0\.5 in is the least/],
    ["a plate of 1/2 in below a W", { section: "W8x31", plate: [14, 14, 0.5], spacing: [11, 11], rod: 0.75 }, /0\.5 in thick; 0\.75 in is the least/],
    ["a hole the rod does not pass", { rod: 0.75, base: { hole: 0.75 * inch } }, /does not go over its rods/],
    ["a hole wider than any table has", { rod: 1, base: { hole: 2 * inch } }, /1\.875 in is the largest/],
    ["a narrow washer", { rod: 0.75, base: { washer: size(1.75, 0.25) } }, /washer is 1\.75 in wide; 2 in is needed/],
    ["a thin washer", { rod: 0.75, base: { washer: size(2, 0.1875) } }, /washer is 0\.1875 in thick; 0\.25 in is needed/],
    ["a washer for a hole wider than the table's: an inch larger", { rod: 1, base: { hole: 1.875 * inch, washer: size(2.5, 0.375) } }, /2\.5 in wide; 2\.875 in is needed/],
    ["a hole the edge of the plate cuts: 0.6 in to the edge, half a hole is 0.656 in", { plate: [11.2, 14, 1], spacing: [10, 10], rod: 0.75 }, /0\.6 in from the plate's edge, and its hole of 1\.313 in is cut/],
    ["a rod 1.2 in from the edge, where 1.25 is the least", { plate: [12.4, 14, 1], spacing: [10, 10], rod: 0.75 }, /1\.2 in from the plate's edge; 1\.25 in is the least/],
    ["a washer past the edge: 1.6 in to the edge, half of 4 in", { plate: [13.2, 14, 1], spacing: [10, 10], rod: 0.75, base: { washer: size(4, 0.25) } }, /washer of 4 in reaches past/],
    ["washers that overlap", { section: "HSS3x3x1/4", count: 8, spacing: [6, 6], rod: 1, base: { washer: size(3.25, 0.375) } }, /apart, and their washers are 3\.25 in wide/],
    ["rods close to the column", { spacing: [7.6, 7.6], rod: 0.75 }, /from the face of the column; 1\.5 in is needed/],
    ["rods under the column", { spacing: [4, 4], rod: 0.75 }, /under the column itself/],
  ])("speaks of %s", (_, given, words) => {
    expect(judged(details, given)).toMatchObject({ verdict: "over", message: expect.stringMatching(words) });
  });

  it("the least room is from rod to rounded corner: HSS6x6x3/8, rods 4 in each way, 1.81 - 0.698 x 0.414", () => {
    const r_c = 2 * 0.349;
    expect(rodToColumn.value({ x: 4, y: 4, h_x: 3, h_y: 3, r_c })).toBeCloseTo(Math.SQRT2 * (1 + r_c) - r_c, 9);
    expect(rodToColumn.value({ x: 0, y: 5, h_x: 3, h_y: 3, r_c })).toBeCloseTo(2, 9);
    expect(rodToColumn.value({ x: 3, y: 4, h_x: 2, h_y: 2, r_c: 2 })).toBeCloseTo(3, 9);
  });

  it("between the flanges of a W looks at web and flange: in W8x31 rods 4 in apart have 4 - 0.435 - 2 = 1.565 in, 5 in apart 1.065, 3 in apart across the web 1.5 - 0.1425", () => {
    const between = (x: number, y: number) => judged(details, { section: "W8x31", plate: [14, 14, 1], spacing: [x, y], rod: 0.75, column: { "deep side": "along y" } });
    expect(between(4, 4).verdict).toBe("holds");
    expect(between(4, 5)).toMatchObject({ verdict: "over", message: expect.stringMatching(/stands 1\.065 in from the face of the column; 1\.5 in is needed/) });
    expect(between(3, 4)).toMatchObject({ verdict: "over", message: expect.stringMatching(/stands 1\.35[78] in from the face/) });
    expect(between(5, 4).verdict).toBe("holds");
    expect(rodInWide.value({ u: -2, v: 1, t_w: 0.4, d: 8, t_f: 0.5 })).toBeCloseTo(1.8, 9);
  });

  it("says which hole it took where none is stated", () => {
    expect(judged(details, { rod: 0.75 }).message).toMatch(/holes 1\.313 in, washers 2 in by 0\.25 in \(by AISC Design Guide 1/);
    expect(judged(details, { rod: 0.5 }).message).toMatch(/holes 1\.063 in, washers 2\.063 in by 0\.1667 in/);
  });

  it("asks for a hole where the tables have none, and for what is missing", () => {
    expect(judged(details, { rod: 1.125 })).toMatchObject({ verdict: "unchecked", message: expect.stringMatching(/no hole for a rod of 1\.125 in/) });
    expect(judged(details, { rod: 1.125, base: { hole: 1.75 * inch } }).verdict).toBe("holds");
    expect(judged(details, { base: { anchors: undefined } }).verdict).toBe("unchecked");
  });
});

describe("thickness of the grout", () => {
  it.each<[string, Given, string, RegExp]>([
    ["1/2 in is thin", { base: { grout: 0.5 * inch } }, "over", /Grout 0\.5 in; 0\.75 in is the least/],
    ["3-1/2 in is thick", { base: { grout: 3.5 * inch } }, "over", /Grout 3\.5 in; 3 in is the most/],
    ["2-1/2 in holds, with a word", { base: { grout: 2.5 * inch } }, "holds", /pea gravel/],
    ["1-1/2 in holds", { base: { grout: 1.5 * inch } }, "holds", /at least 0\.75 in needed\. The bag/],
    ["1-1/4 in does not hold the leveling nuts of 1 in rods: 1 + 3/8", { rod: 1, base: { "leveling nuts": true, grout: 1.25 * inch } }, "over", /nut and its washer take 1\.375 in/],
    ["1-1/2 in does", { rod: 1, base: { "leveling nuts": true, grout: 1.5 * inch } }, "holds", /1\.375 in needed/],
    ["none on leveling nuts", { base: { "leveling nuts": true, grout: 0 } }, "holds", /stands on its leveling nuts/],
    ["none on concrete", { base: { grout: 0 } }, "holds", /on the concrete itself/],
    ["not given", { base: { grout: undefined } }, "unchecked", /not given/],
    ["rods not given", { base: { "leveling nuts": true, anchors: undefined } }, "unchecked", /size of the rods/],
  ])("%s", (_, given, verdict, words) => expect(judged(groutThickness, given)).toMatchObject({ verdict, message: expect.stringMatching(words) }));
});

describe("projection of the rods", () => {
  // 1 in rods, 1-1/2 in of grout, 1 in plate, 3/8 in washer, 1 in nut, three threads of 8 to the inch: 4.25 in. Practice, known answer.
  const drawn = (projected: number | undefined, base: Record<string, unknown> = {}): Given => ({ rod: 1, base: { washer: size(3, 0.375), projection: projected === undefined ? undefined : projected * inch, ...base } });

  it("needed is grout 1.5 + plate 1 + washer 0.375 + nut 1 + three threads 0.375 = 4.25 in", () => {
    const stack = stackOf(supportWith(drawn(4.25)).base!.fields);
    if ("missing" in stack) throw new Error(stack.missing);
    expect(stack.h_p / inch).toBeCloseTo(4.25, 9);
    expect(projectionNeeded.value({ h_0: 1.5, t_p: 1, h_r: 1.75 })).toBe(4.25);
  });

  it.each<[string, Given, string, RegExp]>([
    ["3.6 in is 0.65 in short: the nut holds 0.725 in", drawn(3.6), "over", /Projection 3\.6 in, 4\.25 in needed.*0\.65 in short, the nut holds 0\.725 in of thread, and 0\.8 in develop the rod\. Ask/],
    ["a nut 3/16 in short of full holds 0.8125 in of 0.80 that develop the rod", drawn(3.6875), "over", /holds 0\.8125 in of thread, and 0\.8 in develop the rod: the engineer may accept it/],
    ["a rod below its washer does not catch", drawn(2.8), "over", /does not catch/],
    ["a full nut with fewer than three threads beyond holds", drawn(4), "holds", /fewer than three threads/],
    ["4-1/4 in holds", drawn(4.25), "holds", /^here: Projection 4\.25 in, 4\.25 in needed: 1\.5 in below the plate, plate 1 in, washer 0\.375 in, nut 1 in and three threads\. Thread needed from the top of the rod: 1\.75 in\.$/],
    ["on leveling nuts thread goes down past the lower nut", drawn(4.25, { "leveling nuts": true }), "holds", /Thread needed from the top of the rod: 4\.125 in/],
    ["short thread", drawn(4.25, { "leveling nuts": true, thread: 4 * inch }), "over", /Thread 4 in; 4\.125 in needed/],
    ["enough thread", drawn(4.25, { "leveling nuts": true, thread: 6 * inch }), "holds", /6 in given/],
    ["without grout the gap and the lower nut count: 1 + 1 + 3/8 + 1 + 3/8 + 1 + 3/8", drawn(5.125, { "leveling nuts": true, grout: 0, "gap below nuts": inch }), "holds", /5\.125 in needed: 2\.375 in below/],
    ["not given", drawn(undefined), "unchecked", /not given \(projection\); 4\.25 in needed/],
    ["grout not given", drawn(4, { grout: undefined }), "unchecked", /thickness of the grout is needed/],
    ["gap not given", drawn(4, { "leveling nuts": true, grout: 0 }), "unchecked", /gap below nuts/],
    ["plate not given", drawn(4, { plate: undefined }), "unchecked", /thickness of the plate/],
    ["rods not given", { base: { anchors: undefined } }, "unchecked", /size of the rods/],
  ])("%s", (_, given, verdict, words) => expect(judged(projection, given)).toMatchObject({ verdict, message: expect.stringMatching(words) }));

  it("the nut holds no more thread than it is high", () => expect(nutEngaged.value({ h_n: 1, h_g: 9, h_0: 1.5, t_p: 1, t_w: 0.375 })).toBe(1));
});

describe("a plate below the finish", () => {
  const below = (finish: number | undefined, base: Record<string, unknown> = {}, air: string | undefined = "humid", column: Record<string, unknown> = {}): Given => ({
    rod: 1,
    site: { air },
    column,
    base: { "finish above plate": finish === undefined ? undefined : finish * inch, protection: "galvanized and coated", "pocket drains": true, ...base },
  });

  it.each<[string, Given, string, RegExp]>([
    ["level with the finish is not below it", below(0, { protection: undefined }), "holds", /not below the finish/],
    ["4 in cover 1.75 in of washer, nut and threads", below(4), "holds", /Plate 4 in below the finish/],
    ["1-1/2 in does not", below(1.5), "over", /Finish 1\.5 in above the plate, and nut and rod stand 1\.75 in above it/],
    ["a rod that stands 3-1/2 in above the plate, 6 in projected", below(3, { projection: 6 * inch }), "over", /stand 3\.5 in above/],
    ["bare steel", below(4, { protection: "none" }), "over", /Protection none below the finish in humid air; it takes galvanized or/],
    ["zinc alone in salt spray", below(4, { protection: "galvanized" }, "salt spray"), "over", /takes galvanized and coated or encased/],
    ["zinc alone in humid air", below(4, { protection: "galvanized" }), "holds", /galvanized/],
    ["encased plates need no drain", below(4, { protection: "encased in concrete", "pocket drains": undefined }, "pool"), "holds", /encased/],
    ["a weep above the finish", below(4, {}, "humid", { "weep hole": 0.5 * inch, "weep height": 5 * inch }), "holds", /Plate 4 in below the finish/],
    ["a weep below it, that fills the tube with what stands there", below(4, {}, "humid", { "weep hole": 0.5 * inch, "weep height": inch }), "over", /weep hole is 1 in above the plate, below the finish 4 in above it/],
    ["a weep somewhere", below(4, {}, "humid", { "weep hole": 0.5 * inch }), "unchecked", /whether the weep hole .* lies above the finish is not said/i],
    ["no weep at all is for the rule of closed sections", below(4, {}, "humid", { "weep hole": 0 }), "holds", /Plate 4 in below/],
    ["an open section has none", below(4, {}, "humid", { section: findSection("W8x31"), "weep hole": 0.5 * inch }), "holds", /Plate 4 in below/],
    ["a pocket that holds water", below(4, { "pocket drains": false }), "over", /Water stands in the pocket/],
    ["drainage not said", below(4, { "pocket drains": undefined }), "unchecked", /pocket drains/],
    ["protection not said", below(4, { protection: undefined }), "unchecked", /protection/],
    ["air not said", { ...below(4), site: { air: undefined } }, "unchecked", /air/],
    ["finish not said", below(undefined), "unchecked", /finish above plate/],
    ["rods not said", below(4, { anchors: undefined }), "unchecked", /size of the rods/],
  ])("%s", (_, given, verdict, words) => expect(judged(belowFinish, given)).toMatchObject({ verdict, message: expect.stringMatching(words) }));
});

it("a foundation without a base has none of it", () => {
  const structure = { project: {}, supports: [supportOf({ foundation: { kind: "pier" } })] } as unknown as Structure;
  for (const rule of [details, groutThickness, projection, belowFinish]) expect(rule.judge(structure)).toEqual([]);
});
