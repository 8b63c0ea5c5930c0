import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wallJointBars, wallJointLeastBars } from "../../../server/src/checks/wall/joint-bars.js";
import { wallJointDevelopment } from "../../../server/src/checks/wall/joint-development.js";
import { wallJointShear } from "../../../server/src/checks/wall/joint-shear.js";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { foot, inch, kip, kipFoot, psi } from "../given.js";
import { outcomeOf, read, strengthOf, weigh } from "../ground.js";
import { face, fluid, spaced, stemOf } from "./stem-given.js";

type Fields = Readonly<Record<string, unknown>>;

const light = [{ factor: 0.9, type: "D" }, { factor: 1, type: "W" }] as const;
const dowels = (more: Fields = {}) => ({ "fill face": spaced(5, 12), "free face": spaced(5, 12), "into wall": 32 * inch, "into footing": 9 * inch, hooked: true, surface: "not roughened", ...more });
const wall = (more: Fields = {}, joint: Fields = {}) => stemOf({ more: { "joint dowels": dowels(joint), ...more } });
const found = (check: CheckDecl<any, any>, base: Parameters<typeof strengthOf>[0], more: Fields = {}, joint: Fields = {}, by: Parameters<typeof strengthOf>[1] = light) => weigh(check, wall(more, joint), strengthOf(base, by));
const held = { retains: 4 * foot, fill: fluid };
/** One foot of wall without a post, 10 in thick, with one row of no. 5 at 12 in. */
const strip = { length: 1 * foot, thickness: 10 * inch, "stem bars": { middle: face(spaced(5, 12)) } };
const alone = (joint: Fields = {}, more: Fields = {}) => stemOf({ base: null, more: { ...strip, ...held, "joint dowels": { ...dowels(), "fill face": undefined, "free face": undefined, middle: spaced(5, 12), ...joint }, ...more } });

describe("Sliding of a wall on its footing", () => {
  /** Own weight of the foot of wall at 0.9. */
  const own = (0.9 * 150 * (10 / 12) * 4) / 1000;
  it.each([
    ["not roughened", 0.6, 8.37],
    ["roughened 1/4 in", 1, 13.95],
    ["cast in one", 1.4, 19.53],
  ])("no. 5 at 12 in hold, %s, with a coefficient of %s, %s kip a foot beside the part of the wall's own weight", (surface, mu, bars) => {
    const { demand, capacity } = weigh(wallJointShear, alone({ surface }), strengthOf({}, light));
    expect(capacity / kip).toBeCloseTo(bars + 0.75 * mu * own, 3);
    // 1.6 x 45 x 4^2 / 2.
    expect(demand / kip).toBeCloseTo(0.576, 6);
  });

  it.each([
    ["roughened 1/4 in", 4000, 72],
    ["not roughened", 4000, 72],
    ["not roughened", 8000, 72],
    ["roughened 1/4 in", 6000, 0.75 * 0.96 * 120],
    ["roughened 1/4 in", 20000, 144],
    ["cast in one", 3000, 0.75 * 0.6 * 120],
  ])("of a joint %s in concrete of %s psi has its limit at %s kip a foot", (surface, fprime_c, limit) => {
    const { capacity } = weigh(wallJointShear, alone({ surface, middle: spaced(8, 2) }, { concrete: fprime_c * psi }), strengthOf({}, light));
    expect(capacity / kip).toBeCloseTo(limit, 6);
  });

  it("counts bars of more than 60 ksi at 60", () => {
    const at = (grade: string) => weigh(wallJointShear, alone({}, { "bar grade": grade }), strengthOf({}, light)).capacity;
    expect(at("Gr 80")).toBeCloseTo(at("Gr 60"), 6);
  });

  it("takes the bars that a pull needs, and nothing of a push that is not dead load", () => {
    const more = { "post spread": undefined, "post width": 4 * foot };
    const weight = (0.9 * 150 * 1.25 * 4 * 4) / 1000;
    const pulled = found(wallJointShear, { P: -12 * kip, Vy: 3 * kip }, more).capacity / kip;
    expect(pulled).toBeCloseTo(0.75 * 0.6 * (4 * 0.62 * 60 - (12 - weight) / 0.75), 3);
    expect(found(wallJointShear, { P: 12 * kip, Vy: 3 * kip }, more).capacity / kip).toBeCloseTo(0.75 * 0.6 * (4 * 0.62 * 60 + weight), 3);
    const dead = weigh(wallJointShear, wall(more), { ...strengthOf({ P: 12 * kip, Vy: 3 * kip }, light), dead: 5 * kip });
    expect(dead.capacity / kip).toBeCloseTo(0.75 * 0.6 * (4 * 0.62 * 60 + weight + 5), 3);
    expect(found(wallJointShear, { P: -900 * kip, Vy: 3 * kip }, more).capacity).toBe(0);
  });

  it("takes both directions together: 3 and 4 kip make 5", () => {
    expect(found(wallJointShear, { Vx: 4 * kip, Vy: 3 * kip }).demand / kip).toBeCloseTo(5, 6);
  });

  it("is tried alike from either side where nothing is held back, and never less held by more dowels", () => {
    fc.assert(fc.property(fc.double({ min: -10, max: 10, noNaN: true }), fc.double({ min: 0.1, max: 5, noNaN: true }), (P, V) => {
      const one = found(wallJointShear, { P: P * kip, Vy: V * kip });
      const other = found(wallJointShear, { P: P * kip, Vy: -V * kip });
      expect(one.demand).toBeCloseTo(other.demand, 6);
      expect(one.capacity).toBeCloseTo(other.capacity, 6);
      expect(found(wallJointShear, { P: P * kip, Vy: V * kip }, {}, { "fill face": spaced(5, 8) }).capacity).toBeGreaterThanOrEqual(one.capacity);
    }), { numRuns: 20 });
  });
});

describe("Bars between a wall and its footing", () => {
  it("hold what soil bends: 1.6 x 480 lb-ft a foot, by no. 5 at 12 in on the middle of 10 in", () => {
    const { demand, capacity, quantity } = weigh(wallJointBars, alone(), strengthOf({}, light));
    expect(quantity).toBe("momentPerLength");
    // Slender, 2 x 48 / 3 of 22; magnified by less than a thousandth.
    expect(((demand / kip) * 1000) / 768).toBeCloseTo(1, 2);
    expect(demand / kip).toBeGreaterThan(0.768);
    const C = 0.31 * 60 + (0.9 * 150 * (10 / 12) * 4) / 1000 / 0.9;
    expect(capacity / kip).toBeCloseTo((0.9 * C * (5 - C / (0.85 * 4 * 12) / 2)) / 12, 2);
  });

  it("pull apart in uplift: 40 kip on the length that carries them, less the weight of the wall", () => {
    const { demand, capacity, quantity } = found(wallJointBars, { P: -40 * kip }, { "post spread": undefined, "post width": 4 * foot });
    expect(quantity).toBe("lineLoad");
    expect((demand * foot) / kip).toBeCloseTo(10 - (0.9 * 150 * 1.25 * 4) / 1000, 4);
    expect((capacity * foot) / kip).toBeCloseTo(0.9 * 60 * 0.62, 4);
  });

  it("are tried more by a larger moment and never less held by more of them", () => {
    fc.assert(fc.property(fc.double({ min: -4, max: 4, noNaN: true }), fc.double({ min: 0.5, max: 20, noNaN: true }), (P, M) => {
      const ratio = (m: number, joint: Fields = {}) => {
        const { demand, capacity } = found(wallJointBars, { P: P * kip, Mx: m * kipFoot }, {}, joint);
        return demand / capacity;
      };
      expect(ratio(M + 1)).toBeGreaterThan(ratio(M));
      expect(ratio(M, { "fill face": spaced(5, 8), "free face": spaced(5, 8) })).toBeLessThanOrEqual(ratio(M));
    }), { numRuns: 20 });
  });

  it.each([
    ["no. 5", spaced(5, 12), 0.0012, 0.62 / (12 * 15)],
    ["no. 6", spaced(6, 18), 0.0015, 0.88 / (18 * 15)],
  ])("are at least the vertical bars of a wall: of %s", (_, bars, least, there) => {
    const { demand, capacity, isLimit } = found(wallJointLeastBars, {}, {}, { "fill face": bars, "free face": bars });
    expect([demand, capacity, isLimit]).toEqual([expect.closeTo(least, 9), expect.closeTo(there, 9), true]);
  });

  it("are those of the wall where they go on, the lower ones too", () => {
    const lower = { ...face(spaced(5, 12)), "lower vertical": { ...spaced(5, 12), reach: 2 * foot } };
    const more = { "stem bars": { "fill face": lower, "free face": face(spaced(5, 12)), "outer bars": "vertical" }, "joint dowels": { "stem bars go on": true, "into footing": 9 * inch, hooked: true } };
    const { capacity } = weigh(wallJointLeastBars, stemOf({ more }), strengthOf({}));
    expect(capacity).toBeCloseTo((3 * 0.31) / (12 * 15), 9);
  });
});

describe("Dowels on both sides of the joint", () => {
  const root = Math.sqrt(4000);
  const straight = (d: number) => (60000 / ((d > 0.76 ? 20 : 25) * root)) * d;
  const hook = (d: number) => (1.25 * (4 / 15 + 0.6) * 60000 * d ** 1.5) / (55 * root);

  it("no. 5 need a hook of 9.23 in in the footing", () => {
    const { demand, capacity } = found(wallJointDevelopment, {}, {}, { "into wall": 47 * inch });
    expect(hook(0.625)).toBeCloseTo(9.233, 2);
    expect([demand / inch, capacity / inch]).toEqual([expect.closeTo(hook(0.625), 3), expect.closeTo(9, 6)]);
  });

  it("straight ones need 23.7 in, more than a footing has", () => {
    expect(found(wallJointDevelopment, {}, {}, { hooked: false }).demand / inch).toBeCloseTo(straight(0.625), 3);
  });

  it.each([
    ["bars of their own size", spaced(5, 12), 1.3 * straight(0.625)],
    ["no. 6 bars", spaced(6, 12), Math.max(1.3 * straight(0.625), straight(0.75))],
    ["no. 8 bars", spaced(8, 12), straight(1)],
    ["no. 4 bars", spaced(4, 12), Math.max(1.3 * straight(0.5), straight(0.625))],
  ])("lap with %s by class B", (_, bars, expected) => {
    const more = { "stem bars": { "fill face": face(bars), "free face": face(bars), "outer bars": "vertical" } };
    const { demand } = found(wallJointDevelopment, {}, more, { "into wall": 10 * inch });
    expect(demand / inch).toBeCloseTo(expected, 3);
  });

  it("of bars that go on have no lap", () => {
    const { demand, capacity } = weigh(wallJointDevelopment, stemOf({ more: { "joint dowels": { "stem bars go on": true, "into footing": 9 * inch, hooked: true } } }), strengthOf({}));
    expect([demand / inch, capacity / inch]).toEqual([expect.closeTo(hook(0.625), 3), expect.closeTo(9, 6)]);
  });

  it("by 318-14 need longer hooks", () => {
    const { demand } = weigh(wallJointDevelopment, stemOf({ concrete: "ACI 318-14", more: { "joint dowels": dowels({ "into wall": 47 * inch }) } }), strengthOf({}));
    expect(demand / inch).toBeCloseTo((60000 / (50 * root)) * 0.625, 3);
  });

  it.each<[string, Fields, Fields, RegExp]>([
    ["them", { "joint dowels": undefined }, {}, /joint dowels/],
    ["one statement of them", {}, { "stem bars go on": true }, /leave out one of them/],
    ["a face", {}, { "fill face": undefined, "free face": undefined }, /no dowels that are known/],
    ["room in the footing", {}, { "into footing": 10 * inch }, /deeper than the footing/],
    ["room in the wall", {}, { "into wall": 5 * foot }, /reach out of the wall/],
    ["their length below", {}, { "into footing": undefined }, /below the joint/],
    ["their length above", {}, { "into wall": undefined }, /above the joint/],
  ])("ask for %s", (_, more, joint, words) => {
    const { missing, blocks } = read(wallJointDevelopment, wall(more, joint));
    expect([...missing, ...blocks].join("; ")).toMatch(words);
  });

  it("are not answered for the soil's push in an earthquake of category D", () => {
    const support = stemOf({ more: { ...held, "joint dowels": dowels() }, site: { "seismic design category": "D" } });
    for (const check of [wallJointBars, wallJointShear] as readonly CheckDecl<any, any>[]) expect(outcomeOf(check, support, strengthOf({}, [{ factor: 1.2, type: "D" }, { factor: 1, type: "E" }])).type).toBe("unchecked");
  });
});
