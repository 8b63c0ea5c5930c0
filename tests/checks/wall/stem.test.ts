import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { wallStemFlexure } from "../../../server/src/checks/wall/stem-flexure.js";
import { momentAt, sectionAt, shearAt } from "../../../server/src/checks/wall/stem-forces.js";
import { heightsOf } from "../../../server/src/checks/wall/stem-heights.js";
import { wallStemShear } from "../../../server/src/checks/wall/stem-shear.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, inch, kip, kipFoot } from "../given.js";
import { outcomeOf, psf, read, stepsFor, strengthOf, weigh } from "../ground.js";
import { face, fluid, no, spaced, stemOf } from "./stem-given.js";

const terms = [{ factor: 1.2, type: "D" }, { factor: 1, type: "W" }] as const;
const light = [{ factor: 0.9, type: "D" }, { factor: 1, type: "W" }] as const;
const held = { retains: 4 * foot, depth: 1 * foot, fill: fluid };
const away = { Vy: -0.6 * kip, Mx: 5 * kipFoot };
const poundFoot = (kip * foot) / 1000 / foot;
const flexure = (given: Parameters<typeof stemOf>[0], base: Parameters<typeof strengthOf>[0], by: Parameters<typeof strengthOf>[1] = terms) => weigh(wallStemFlexure, stemOf(given), strengthOf(base, by));
const checks: readonly CheckDecl<any, any>[] = [wallStemFlexure, wallStemShear];

describe("A post of 5 kip-ft and 0.6 kip on a wall 4 ft high that holds 45 psf a foot of depth, its plate 10 in wide and its forces spread at 45 degrees", () => {
  const { inputs } = read(wallStemFlexure, stemOf({ more: held }));
  it.each([
    [4, 8.833, 1317.7, 427.9],
    [1, 2.833, 1984, 234.3],
    [0.5, 1.833, 2892, 332.9],
  ])("%s ft below its top is carried by %s ft of wall, which is bent with %s lb-ft a foot and sheared with %s lb a foot, without load factors", (z, width, moment, shear) => {
    const section = sectionAt(inputs, (4 - z) * foot, plainCalc);
    expect(section.width / foot).toBeCloseTo(width, 3);
    const args = { V_n: 0.6 * kip, b: section.width };
    const found = momentAt.value({ ...args, delta: 1, M_n: 5 * kipFoot, a: section.arm, f_H: 1, M_e: section.soilMoment });
    expect(found / poundFoot / moment).toBeCloseTo(1, 3);
    expect((shearAt.value({ ...args, f_H: 1, V_e: section.soilShear }) / section.width / (kip / 1000 / foot)) / shear).toBeCloseTo(1, 3);
  });

  it("is tried most just below its rods, not at the footing: 5.6 kip-ft over 2.833 ft and 1.6 times 7.5 lb-ft a foot", () => {
    const { demand } = flexure({ more: held }, away);
    expect(demand / poundFoot).toBeCloseTo(5600 / (2 + 10 / 12) + 1.6 * 7.5, 1);
    expect(stepsFor(wallStemFlexure, stemOf({ more: held }), strengthOf(away, terms)).notes.join(" ")).toMatch(/at the ends of the rods, .*the post pushed away from the fill/);
  });

  it("holds what both layers and its own weight above the rods press into the block, on the arm from the block to its middle", () => {
    // No. 5 at 12 in at both faces yield, 2 x 18.6 kip a foot, and 1.2 x 150 lb x 1.25 ft; phi is 0.9.
    const C = 2 * 0.31 * 60 + 0.225 / 0.9;
    const expected = (0.9 * C * (7.5 - C / (0.85 * 4 * 12) / 2)) / 12;
    expect(flexure({ more: held }, away).capacity / (1000 * poundFoot)).toBeCloseTo(expected, 2);
  });
});

describe("The wall below a post", () => {
  const forces = fc.record({ P: fc.double({ min: -6, max: 20, noNaN: true }), V: fc.double({ min: 0.05, max: 1.5, noNaN: true }), M: fc.double({ min: 0.05, max: 9, noNaN: true }) });
  const ratio = (check: CheckDecl<any, any>, given: Parameters<typeof stemOf>[0], base: Parameters<typeof strengthOf>[0]) => {
    const { demand, capacity } = weigh(check, stemOf(given), strengthOf(base, light));
    return demand / capacity;
  };

  it("holds wind from either side alike where nothing is held back", () => {
    fc.assert(fc.property(forces, ({ P, V, M }) => {
      for (const check of checks) expect(ratio(check, {}, { P: P * kip, Vy: V * kip, Mx: -M * kipFoot })).toBeCloseTo(ratio(check, {}, { P: P * kip, Vy: -V * kip, Mx: M * kipFoot }), 9);
    }), { numRuns: 30 });
  });

  it("holds the same whichever way it runs", () => {
    fc.assert(fc.property(forces, ({ P, V, M }) => {
      for (const check of checks)
        expect(ratio(check, { more: { "wall runs": "north-south" } }, { P: P * kip, Vx: V * kip, My: M * kipFoot, Vy: 0.2 * kip, Mx: -M * kipFoot })).toBeCloseTo(
          ratio(check, {}, { P: P * kip, Vy: V * kip, Mx: -M * kipFoot, Vx: 0.2 * kip, My: M * kipFoot }), 9);
    }), { numRuns: 20 });
  });

  it("is tried more by a larger moment, and by soil behind it; never less by more bars", () => {
    fc.assert(fc.property(forces, fc.double({ min: 0.1, max: 4, noNaN: true }), ({ P, V, M }, more) => {
      const base = (m: number) => ({ P: P * kip, Vy: -V * kip, Mx: m * kipFoot });
      expect(ratio(wallStemFlexure, {}, base(M + more))).toBeGreaterThanOrEqual(ratio(wallStemFlexure, {}, base(M)));
      for (const check of checks) {
        expect(ratio(check, { more: held }, base(M))).toBeGreaterThanOrEqual(ratio(check, { more: { ...held, retains: 0, fill: undefined } }, base(M)) * 0.9999);
        const barred = (spacing: number) => ({ more: { ...held, "stem bars": { "fill face": face(spaced(5, spacing)), "free face": face(spaced(5, spacing)), "outer bars": "vertical" } } });
        expect(ratio(check, barred(8), base(M))).toBeLessThanOrEqual(ratio(check, barred(12), base(M)) * 1.0001);
      }
    }), { numRuns: 25 });
  });

  it("pulls its bars alone in uplift at the end that is pressed less", () => {
    const { demand, capacity, quantity } = flexure({ more: { "post width": 4 * foot, "post spread": undefined } }, { P: -20 * kip, My: 2 * kipFoot }, light);
    expect(quantity).toBe("lineLoad");
    // 20 kip on 4 ft and 6 x 2 / 16, less 0.9 x 150 lb x 1.25 ft a foot of depth, at the ends of the rods.
    expect((demand * foot) / kip).toBeCloseTo(5 + 0.75 - (0.9 * 150 * 1.25 * 1) / 1000, 4);
    expect((capacity * foot) / kip).toBeCloseTo(0.9 * 60 * 0.62, 4);
  });

  it("spreads less at 30 degrees and not at all by the plate alone; a stated width stays as it is down to the footing", () => {
    const width = (more: Record<string, unknown>, z: number) => sectionAt(read(wallStemFlexure, stemOf({ more })).inputs, (4 - z) * foot, plainCalc).width / foot;
    expect(width({ "post spread": "30 degrees" }, 2)).toBeCloseTo(10 / 12 + 4 * Math.tan(Math.PI / 6), 6);
    expect(width({ "post spread": "plate alone" }, 2)).toBeCloseTo(10 / 12, 6);
    expect(width({ "post spread": undefined, "post width": 3 * foot }, 4)).toBeCloseTo(3, 6);
  });

  it("is cut short by an end, by a joint, half way to the next post and by the length per post", () => {
    const at = (given: Parameters<typeof stemOf>[0]) => sectionAt(read(wallStemFlexure, stemOf(given)).inputs, 0, plainCalc);
    expect(at({ more: { "first post": 2 * foot } }).width / foot).toBeCloseTo(2 + 4 + 5 / 12, 6);
    expect(at({ more: { "first post": 2 * foot } }).offset / foot).toBeCloseTo((2 + 5 / 12) / 2, 6);
    expect(at({ more: { "first post": 20 * foot, "movement joints": Object.assign([{ value: 23 * foot }], { name: "joints" }) } }).width / foot).toBeCloseTo(3 + 4 + 5 / 12, 6);
    expect(at({ places: [{ x: 0, y: 0 }, { x: 6 * foot, y: 0 }] }).width / foot).toBeCloseTo(3 + 4 + 5 / 12, 6);
    expect(at({ more: { "length per post": 5 * foot } }).width / foot).toBeCloseTo(5, 6);
  });

  it("near an end takes the post's own weight off the middle of what carries it", () => {
    const { values } = stepsFor(wallStemFlexure, stemOf({ more: { "first post": 1 * foot, "post spread": undefined, "post width": 6 * foot } }), strengthOf({ P: 10 * kip, ...away }, terms));
    // 1 ft and 3 ft carry it: 10 kip stand 1 ft off their middle.
    expect(values.get("M_b")! / kipFoot).toBeCloseTo(-10, 6);
  });

  it("counts bars as far as they are developed below their ends: straight ones 12 in deep 10 in of the 23.7 that no. 5 needs", () => {
    const straight = flexure({ more: { "bar tops": "straight" } }, away);
    const hooked = flexure({}, away);
    expect(straight.capacity).toBeLessThan(hooked.capacity * 0.5);
    const { values } = stepsFor(wallStemFlexure, stemOf({ more: { "bar tops": "straight" } }), strengthOf(away, terms));
    expect(values.get("l_d")! / inch).toBeCloseTo((60000 / (25 * Math.sqrt(4000))) * 0.625, 3);
    expect(values.get("f_s")! / values.get("f_y")! || values.get("f_s")! / 413685437).toBeCloseTo(10 / ((60000 / (25 * Math.sqrt(4000))) * 0.625), 3);
  });

  it("has more bars below where lower ones reach, and not above", () => {
    const lower = { bar: no(5), spacing: 12 * inch, reach: 2.5 * foot };
    const more = (extra: object | undefined) => ({ ...held, retains: 4 * foot, "stem bars": { "fill face": { ...face(spaced(5, 12)), "lower vertical": extra }, "free face": face(spaced(5, 12)), "outer bars": "vertical" } });
    const soil = { retains: 4 * foot, fill: { ...fluid, "equivalent fluid": fluid["equivalent fluid"] * 2.5, surcharge: 600 * psf } };
    // Soil alone is worst at the footing, where the lower bars count in full.
    const alone = (extra: object | undefined) => weigh(wallStemFlexure, stemOf({ base: null, more: { ...more(extra), ...soil } }), strengthOf({}, terms));
    expect(alone(lower).capacity / alone(undefined).capacity).toBeGreaterThan(1.7);
    // A post is worst just below its rods, above their ends.
    expect(flexure({ more: more(lower) }, away).capacity).toBeCloseTo(flexure({ more: more(undefined) }, away).capacity, 3);
    const heights = heightsOf(read(wallStemFlexure, stemOf({ more: more(lower) })).inputs);
    expect(heights.some(({ y, words }) => words === "where bars end" && Math.abs(y - 2.5 * foot) < 1e-9)).toBe(true);
    expect(heights[heights.length - 1].y).toBe(0);
    expect(heights.every(({ y }, i) => i === 0 || y <= heights[i - 1].y)).toBe(true);
  });

  it("has its bars behind the horizontal ones unless the vertical ones are said to be outermost", () => {
    const at = (outer: string | undefined) => flexure({ more: { "stem bars": { "fill face": face(spaced(5, 12)), "outer bars": outer } } }, away).capacity;
    expect(at(undefined)).toBe(at("horizontal"));
    expect(at("vertical")).toBeGreaterThan(at("horizontal"));
  });

  it("magnifies the moment of a slender wall, and does not answer where it buckles", () => {
    const tall = { more: { height: 16 * foot, thickness: 8 * inch, depth: 1 * foot } };
    const { values } = stepsFor(wallStemFlexure, stemOf(tall), strengthOf({ P: 30 * kip, ...away }, terms));
    const P_c = (Math.PI ** 2 * 0.25 * 57000 * Math.sqrt(4000) * 8 ** 3) / 12 / (2 * 192) ** 2;
    expect((values.get("P_c")! * inch) / (kip / 1000) / P_c).toBeCloseTo(1, 4);
    const N = (30000 / (2 * 16 + 10 / 12) + 1.2 * 150 * (8 / 12) * 16) / 12;
    expect(values.get("delta")).toBeCloseTo(1 / (1 - N / (0.75 * P_c)), 4);
    const buckled = outcomeOf(wallStemFlexure, stemOf(tall), strengthOf({ P: 2000 * kip, ...away }, terms));
    expect(buckled.type === "unchecked" && buckled.because).toMatch(/thicken it/);
  });

  it.each<[string, Parameters<typeof stemOf>[0], RegExp]>([
    ["its bars", { more: { "stem bars": undefined } }, /bars of the wall \(`stem bars`\)/],
    ["vertical ones among them", { more: { "stem bars": { "fill face": { horizontal: spaced(4, 12) }, "outer bars": "vertical" } } }, /no vertical bars that are known/],
    ["the horizontal ones that lie before them", { more: { "stem bars": { "fill face": { vertical: spaced(5, 12) } } } }, /horizontal bars of the wall/],
    ["how the post spreads", { more: { "post spread": undefined } }, /post spread/],
    ["one statement of it", { more: { "post width": 3 * foot } }, /leave out one of them/],
    ["bars that fit", { more: { "stem cover": 14.8 * inch } }, /do not fit into the wall/],
    ["lower bars that end in the wall", { more: { "stem bars": { "fill face": { ...face(spaced(5, 12)), "lower vertical": { bar: no(5), spacing: 12 * inch, reach: 5 * foot } }, "outer bars": "vertical" } } }, /reach out of the wall/],
    ["the depth of the rods", { base: { anchors: {} } }, /anchor embedment/],
  ])("asks for %s", (_, given, words) => {
    const { missing, blocks } = read(wallStemFlexure, stemOf(given));
    expect([...missing, ...blocks].join("; ")).toMatch(words);
  });

  it("is not answered without a width where a wall alone carries a post, and is where only soil pushes it", () => {
    const alone = stemOf({ base: null, more: { ...held, "post spread": undefined } });
    const found = outcomeOf(wallStemFlexure, alone, strengthOf(away, terms));
    expect(found.type === "unchecked" && found.because).toMatch(/state `post width`/);
    // 1.6 x 45 x 4^3 / 6 at the footing.
    expect(weigh(wallStemFlexure, alone, strengthOf({}, terms)).demand / poundFoot).toBeCloseTo(1.6 * 480, 1);
  });

  it("of an earlier edition is as strong where its bars are pulled far beyond yield, and needs longer hooks: 11.9 in for no. 5", () => {
    const deep = { base: { anchors: { embedment: 14.1 * inch } } };
    expect(flexure({ ...deep, concrete: "ACI 318-14" }, away).capacity).toBeCloseTo(flexure(deep, away).capacity, 3);
    expect(flexure({ concrete: "ACI 318-14" }, away).capacity).toBeLessThan(flexure({}, away).capacity * 0.5);
  });

  it("is not answered for the soil's push in an earthquake of category D where nobody says how hard it shakes", () => {
    const found = outcomeOf(wallStemFlexure, stemOf({ more: held, site: { "seismic design category": "D" } }), strengthOf(away, [{ factor: 1.2, type: "D" }, { factor: 1, type: "E" }]));
    expect(found.type === "unchecked" && found.because).toMatch(/seismic coefficient/);
  });

  it("is pushed by the shaken soil and its own weight where the coefficient is stated: 0.15, 34 degrees, 120 pcf", () => {
    const fill = { side: "north", method: "Rankine", "unit weight": fluid["unit weight"], "friction angle": (34 * Math.PI) / 180, surcharge: 0, drained: true, "seismic coefficient": 0.15 };
    const alone = stemOf({ base: null, more: { retains: 4 * foot, fill }, site: { "seismic design category": "D" } });
    const phi = (34 * Math.PI) / 180;
    const psi = Math.atan(0.15);
    const K_AE = Math.cos(phi - psi) ** 2 / (Math.cos(psi) ** 2 * (1 + Math.sqrt((Math.sin(phi) * Math.sin(phi - psi)) / Math.cos(psi))) ** 2);
    const K = Math.tan(Math.PI / 4 - phi / 2) ** 2;
    const V_s = ((K_AE - K) * 120 * 16) / 2;
    const V_i = 0.15 * 150 * 1.25 * 4;
    const quake = [{ factor: 0.9, type: "D" }, { factor: 1, type: "E" }] as const;
    expect(weigh(wallStemFlexure, alone, strengthOf({}, quake)).demand / poundFoot).toBeCloseTo((1.6 * K * 120 * 64) / 6 + 0.6 * 4 * V_s + 2 * V_i, 1);
    expect(stepsFor(wallStemFlexure, alone, strengthOf({}, quake)).notes.join(" ")).toMatch(/shakes outward/);
    // Without an earthquake in the combination it stands still.
    expect(weigh(wallStemFlexure, alone, strengthOf({}, light)).demand / poundFoot).toBeCloseTo((1.6 * K * 120 * 64) / 6, 1);
    const z = 4 - (15 - 2.3125) / 12;
    const shear = weigh(wallStemShear, alone, strengthOf({}, quake)).demand / (kip / 1000) / 40;
    expect(shear).toBeCloseTo((1.6 * K * 120 * z ** 2) / 2 + ((K_AE - K) * 120 * z ** 2) / 2 + 0.15 * 150 * 1.25 * z, 1);
  });
});

describe("Shear of the wall", () => {
  const root = Math.sqrt(4000);
  const depth = 15 - 2.3125;

  it("by 318-19 goes with the cube root of the bars and falls with the size: soil alone, one effective depth above the footing", () => {
    const alone = stemOf({ base: null, more: { ...held, length: 1 * foot } });
    const { demand, capacity } = weigh(wallStemShear, alone, strengthOf({}, terms));
    const z = 4 - depth / 12;
    expect(demand / kip).toBeCloseTo((1.6 * 45 * z ** 2) / 2 / 1000, 4);
    // 1.2 times the weight above the section adds N / 6 A.
    const lambda = Math.sqrt(2 / (1 + depth / 10));
    const V_c = 8 * lambda * Math.cbrt(0.31 / (12 * depth)) * root + (1.2 * 150 * z) / 144 / 6;
    expect(capacity / kip).toBeCloseTo((0.75 * V_c * 12 * depth) / 1000, 3);
  });

  it("by 318-14 is 2 sqrt(f'c), less for pull by 500 psi", () => {
    const given = { concrete: "ACI 318-14", more: { "post spread": undefined, "post width": 4 * foot } };
    const { capacity } = weigh(wallStemShear, stemOf(given), strengthOf({ P: -20 * kip, Vy: 2 * kip, Mx: -8 * kipFoot }, light));
    const n = -20000 / (48 * 15) + (0.9 * 150 * 1) / 144;
    expect(capacity / kip).toBeCloseTo((0.75 * 2 * (1 + n / 500) * root * 48 * depth) / 1000, 2);
  });

  it("loses strength by a pull and shear along the wall is held by half of the concrete's part", () => {
    const given = { more: { "post spread": undefined, "post width": 2 * foot } };
    const at = (P: number) => weigh(wallStemShear, stemOf(given), strengthOf({ P: P * kip, Vy: 2 * kip, Mx: -4 * kipFoot }, light)).capacity;
    expect(at(-20)).toBeLessThan(at(0));
    const { demand, capacity } = weigh(wallStemShear, stemOf(given), strengthOf({ Vx: 12 * kip }, light));
    expect([demand / kip, capacity / kip]).toEqual([expect.closeTo(12, 6), expect.closeTo((0.75 * 0.5 * 2 * root * 24 * 15) / 1000, 4)]);
  });
});
