import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { placeTolerance, rodsAsBuilt } from "../../../server/src/checks/anchors/as-built.js";
import { fit } from "../../../server/src/checks/anchors/fit.js";
import { rodsInConcrete } from "../../../server/src/checks/anchors/rod-edges.js";
import { rodSteel } from "../../../server/src/checks/anchors/rod-steel.js";
import { coverNeeded, headAcrossCorners, leastSpacing, spacing } from "../../../server/src/checks/anchors/spacing.js";
import { topTies } from "../../../server/src/checks/anchors/top-ties.js";
import { readBar } from "../../../server/src/catalog/bars.js";
import type { RuleDecl } from "../../../server/src/checks/contract.js";
import { asBuilt } from "../../../server/src/project/as-built.js";
import type { Sourced, Structure, Support } from "../../../server/src/project/model.js";
import { inch, sourced } from "../given.js";
import { supportWith, type Given } from "../base/base.js";

const judge = (rule: RuleDecl, support: Support) => {
  const found = rule.judge({ project: {}, supports: [support] } as unknown as Structure);
  expect(found).toHaveLength(1);
  return found[0];
};
const judged = (rule: RuleDecl, given: Given) => judge(rule, supportWith(given));
const bar = (name: string) => readBar(name)!;

const narrow: Given = { section: "HSS3x3x1/4", plate: [8, 8, 1], spacing: [6, 6], rod: 0.75 };

describe("spacing, edge distance and cover of the rods (ACI 318-19 17.9.2)", () => {
  // Bolts in round piers: closed form, D/2 less the radius of the bolts.
  it.each([
    [12, 6, 1.76],
    [16, 8, 2.34],
    [18, 8, 3.34],
    [24, 10, 4.93],
  ])("a %d in round pier with rods %d in square leaves %d in to the face", (diameter, square, edge) => {
    const found = rodsInConcrete(supportWith({ diameter, spacing: [square, square], rod: 0.75 }));
    if ("lacks" in found) throw new Error(found.lacks);
    expect(found.edge / inch).toBeCloseTo(edge, 2);
  });

  it("says 1.757 in against 4.5 in for 3/4 in rods 6 in square in a 12 in round pier: 6 diameters, where nuts are torqued", () => {
    const found = judged(spacing, { ...narrow, diameter: 12, anchors: { torqued: true } });
    expect(found.verdict).toBe("over");
    expect(found.message).toMatch(/^here: Rod to face of concrete 1\.757 in; 4\.5 in needed \(6 rod diameters/);
  });

  it("holds the edge against cover alone where nuts are not torqued, at the widest part of the head: 3 + (1.5 x 0.75 + 0.125)/2/cos 30°", () => {
    expect(headAcrossCorners.value({ is_heavy: 1, d_a: 0.75 * inch }) / inch).toBeCloseTo(1.25 / Math.cos(Math.PI / 6), 6);
    const found = judged(spacing, { ...narrow, diameter: 12, anchors: { torqued: false } });
    expect(found.message).toMatch(/1\.757 in; 3\.722 in needed for 3 in of cover/);
  });

  it.each([
    [0.5, 1, 3, 2],
    [1, 0, 6, 4],
    [0.75, 1, 4.5, 3],
  ])("rods of %d in need 6 diameters torqued and 4 otherwise", (d) => {
    expect(leastSpacing.value({ is_torqued: 1, d_a: d })).toBeCloseTo(6 * d, 12);
    expect(leastSpacing.value({ is_torqued: 0, d_a: d })).toBeCloseTo(4 * d, 12);
  });

  // ACI 318-19 Table 20.5.1.3.1.
  it.each([
    [0.625, 0, 1.5],
    [0.75, 0, 2],
    [0.5, 1, 3],
  ])("a rod of %d in is covered as a bar of its size", (d, onGround, cover) => {
    expect(coverNeeded.value({ is_on_ground: onGround, d_a: d * inch }) / inch).toBeCloseTo(cover, 9);
  });

  it("tells rods that stand too near to each other, with the diameters the rule counts", () => {
    expect(judged(spacing, { ...narrow, pier: 40, spacing: [4, 4], anchors: { torqued: true } }).message).toMatch(/stand 4 in apart; 4\.5 in needed \(6 rod/);
    expect(judged(spacing, { ...narrow, pier: 40, spacing: [2.9, 2.9], anchors: { torqued: false } }).message).toMatch(/stand 2\.9 in apart; 3 in needed \(4 rod/);
    expect(judged(spacing, { ...narrow, pier: 40, spacing: [4, 4], anchors: { torqued: false } }).verdict).toBe("holds");
  });

  it("names what it needs where the concrete is not known", () => {
    const found = judged(spacing, { foundation: { width: undefined } });
    expect(found).toMatchObject({ verdict: "unchecked", message: expect.stringMatching(/diameter or width of the pier/) });
  });

  it("a wider pier never makes worse, and thicker rods never better", () => {
    const isOver = (pier: number, rod: number) => judged(spacing, { ...narrow, plate: [14, 14, 1], spacing: [8, 8], pier, rod, anchors: { torqued: true } }).verdict === "over";
    const rods = [0.5, 0.625, 0.75, 0.875, 1, 1.25, 1.5];
    fc.assert(
      fc.property(fc.double({ min: 14, max: 40, noNaN: true }), fc.double({ min: 0, max: 10, noNaN: true }), fc.integer({ min: 0, max: 5 }), (pier, more, i) => {
        if (isOver(pier + more, rods[i])) expect(isOver(pier, rods[i])).toBe(true);
        if (isOver(pier, rods[i])) expect(isOver(pier, rods[i + 1])).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});

describe("room for the rods in their concrete", () => {
  it("a rod 69 in deep with its 3/4 in nut and 3 in of cover does not fit into 72 in: 72.75 in needed", () => {
    const found = judged(fit, { ...narrow, pier: 24, embedment: 69 });
    expect(found.verdict).toBe("over");
    expect(found.message).toMatch(/Concrete 72 in deep; 72\.75 in needed for rods 69 in deep/);
    expect(judged(fit, { ...narrow, pier: 24, embedment: 68.25 }).verdict).toBe("holds");
    expect(judged(fit, { ...narrow, pier: 24, embedment: 68.27 }).verdict).toBe("over");
  });

  // 16 in pier, cover 2, ties no. 3, no. 6: corner bars 16 - 4.75 - 0.75 = 10.5 in apart, 5.25 in from the middle each way; rods at 4 in:
  // 1.25 sqrt 2 = 1.768 in apart, less half a head of 1.443 in and half a bar: 0.671 in.
  const cage = { bars: { count: 4, bar: bar("no. 6") }, spiral: { bar: bar("no. 3"), pitch: 3 * inch }, cover: 2 * inch };

  it("heads 0.671 in clear of the corner bars are too near: 1.5 in needed", () => {
    const found = judged(fit, { ...narrow, plate: [12, 12, 1], pier: 16, spacing: [8, 8], foundation: cage });
    expect(found.message).toMatch(/Head to vertical bar 0\.671\d* in clear; 1\.5 in needed/);
    expect(judged(fit, { ...narrow, pier: 16, spacing: [5, 5], foundation: cage }).verdict).toBe("holds");
  });

  it("in a round pier the ring of bars stands turned to its worst: radius 7.25 in against rods at 5.657 in", () => {
    // 20 in: ring 20 - 4.75 - 0.75 = 14.5 in; 7.25 - 5.657 - 0.7217 - 0.375 = 0.497 in.
    const found = judged(fit, { ...narrow, plate: [12, 12, 1], diameter: 20, spacing: [8, 8], foundation: cage });
    expect(found.message).toMatch(/Head to vertical bar 0\.496\d* in clear/);
  });
});

describe("ties at the top of the pier (ACI 318-19 10.7.6.1.5)", () => {
  const withTies = (count: number, name: string) => judged(topTies, { foundation: { "top ties": { count, bar: bar(name) } } });
  it.each([
    [1, "no. 3", "over"],
    [2, "no. 3", "over"],
    [3, "no. 3", "holds"],
    [1, "no. 4", "over"],
    [2, "no. 4", "holds"],
    [2, "no. 5", "holds"],
  ])("%i %s: %s", (count, name, verdict) => {
    expect(withTies(count, name).verdict).toBe(verdict);
  });

  it("asks for them where nothing is said, and asks for none in a wall", () => {
    expect(judged(topTies, {})).toMatchObject({ verdict: "unchecked", message: expect.stringMatching(/top ties/) });
    expect(judged(topTies, { foundation: { kind: "wall on footing" } }).verdict).toBe("holds");
  });
});

describe("steel of the rods", () => {
  // ASTM F1554: color of the end, elongation and reduction of area.
  it.each([
    ["F1554 Gr 36", "blue", /ductile steel \(elongation 23 % against 14 %, reduction of area 40 %/, /may be welded\./],
    ["F1554 Gr 55", "yellow", /ductile steel \(elongation 21 % against 14 %, reduction of area 30 %/, /supplement S1/],
    ["F1554 Gr 105", "red", /ductile steel \(elongation 15 % against 14 %, reduction of area 45 %/, /must not be welded or heated/],
  ])("%s is marked %s", (grade, color, ductile, welded) => {
    const { message, verdict } = judged(rodSteel, { grade });
    expect(verdict).toBe("holds");
    expect(message).toContain(`marked ${color} at the end`);
    expect(message).toMatch(ductile);
    expect(message).toMatch(welded);
  });

  const bent = (grade: string, degrees: number, rod = 1) => judged(rodSteel, { grade, rod, base: { "as built": { anchors: { bent: (degrees * Math.PI) / 180 } } } });
  it("lets a rod of grade 36 be bent back to 45°, cold to 1 in, and no other grade", () => {
    expect(bent("F1554 Gr 36", 30)).toMatchObject({ verdict: "holds", message: expect.stringMatching(/bent back, cold; look for cracks/) });
    expect(bent("F1554 Gr 36", 30, 1.25).message).toMatch(/heated to no more than 1200 °F/);
    expect([bent("F1554 Gr 36", 44.5).verdict, bent("F1554 Gr 36", 45.5).verdict]).toEqual(["holds", "over"]);
    expect(bent("F1554 Gr 36", 50)).toMatchObject({ verdict: "over", message: expect.stringMatching(/bent 50 ?°; 45° is the most/) });
    expect(bent("F1554 Gr 55", 30)).toMatchObject({ verdict: "over", message: expect.stringMatching(/field bending is for grade 36 alone, and this is grade 55/) });
  });

  it("a rod may lean 1 in 40", () => {
    const leaning = (lean: number) => judged(rodSteel, { base: { "as built": { anchors: { lean } } } }).verdict;
    expect([leaning(1 / 40), leaning(1 / 39.5)]).toEqual(["holds", "over"]);
  });
});

describe("rods off their pattern", () => {
  // ACI 117 by the rod's size (from memory).
  it.each([
    [0.5, 0.25],
    [0.875, 0.25],
    [1, 0.375],
    [1.5, 0.375],
    [1.75, 0.5],
    [2, 0.5],
  ])("a rod of %d in may stand %d in off", (rod, tolerance) => {
    expect(placeTolerance.value({ d_a: rod * inch }) / inch).toBeCloseTo(tolerance, 9);
  });

  /** Rods drawn 10 in square of which one was found elsewhere; the entry merged as a notebook's is. */
  const found = (third: readonly [number, number], rod = 0.75): Support => {
    const places = [[-5, -5], [5, -5], third, [-5, 5]].map(([x, y], i) => sourced({ x: x * inch, y: y * inch }, `bases.base.as built.anchors.places.${i}`));
    const drawn = supportWith({ rod });
    const fields = drawn.base!.fields as unknown as Record<string, Sourced<unknown>>;
    const built = sourced({ anchors: sourced({ places: sourced(places, "bases.base.as built.anchors.places") }) });
    const [merged] = [...asBuilt(new Map([["base", sourced({ ...fields, "as built": built } as object)]])).values()];
    return { ...drawn, base: { ...drawn.base!, fields: merged.value as never } };
  };

  it("says nothing where nothing was found otherwise", () => {
    expect(judged(rodsAsBuilt, {}).verdict).toBe("holds");
  });

  it("1/8 in off a 3/4 in rod is within 1/4 in", () => {
    expect(judge(rodsAsBuilt, found([5.125, 5]))).toMatchObject({ verdict: "holds", message: expect.stringMatching(/within 0\.125 in .*0\.25 in is the tolerance/) });
  });

  it("0.27 in off is over the tolerance, and the 1-5/16 in hole still takes the rod", () => {
    expect(judge(rodsAsBuilt, found([5.27, 5]))).toMatchObject({ verdict: "over", message: expect.stringMatching(/Rod 3 stands 0\.27 in off its drawn place; 0\.25 in is the tolerance\. Its hole of 1\.313 in still takes it/) });
  });

  it("1 in off asks for a slot with a washer welded over it, and the rods of the checks stand where they were found", () => {
    const support = found([6, 5]);
    expect(judge(rodsAsBuilt, support)).toMatchObject({ verdict: "over", message: expect.stringMatching(/Rod 3 stands 1 in off .*Slot the hole/) });
    const rods = rodsInConcrete(support);
    if ("lacks" in rods) throw new Error(rods.lacks);
    expect(rods.rods[2].x / inch).toBeCloseTo(6, 9);
  });

  it("a place for each rod is asked for", () => {
    const short = supportWith({ anchors: { places: undefined } });
    const anchors = short.base!.fields.anchors!.value as unknown as Record<string, unknown>;
    anchors.places = sourced([sourced({ x: 0, y: 0 })]);
    expect(judge(spacing, short)).toMatchObject({ verdict: "unchecked", message: expect.stringMatching(/1 places of rods are given, and there are 4 rods/) });
  });
});
