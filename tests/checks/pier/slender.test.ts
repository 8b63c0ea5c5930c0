import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readBar } from "../../../server/src/catalog/bars.js";
import { pierBending } from "../../../server/src/checks/pier/concrete-bending.js";
import { pedestalSlender, pierSlender } from "../../../server/src/checks/pier/concrete-slender.js";
import { foot, inch, kip, kipFoot, psi, say, sourced } from "../given.js";
import { pcf, read, standing, strengthOf, weigh } from "../ground.js";

type Fields = Readonly<Record<string, unknown>>;

const coded = <T extends object>(made: T): T => ({ ...made, codes: { ...(made as { codes: object }).codes, concrete: sourced("ACI 318-19") } }) as T;
const bars = { count: 6, bar: readBar("no. 5")! };
const ties = { bar: readBar("no. 3")!, spacing: 8 * inch };

/** Round, 12 in, 4 ft deep and 5 ft out of the ground, six no. 5, 3 ksi. */
const pier = (foundation: Fields = {}) =>
  coded(standing({ foundation: { kind: "pier", diameter: 12 * inch, depth: 4 * foot, "above grade": 5 * foot, concrete: 3000 * psi, bars, ties, "bar grade": "Gr 60", cover: 1.5 * inch, ...foundation }, ground: { kind: "soil" } }));

/** A pedestal of 12 in by 16 in, 5 ft above its pad of 12 in. */
const pedestal = (foundation: Fields = {}) =>
  coded(
    standing({
      foundation: {
        kind: "footing", width: 4 * foot, length: 4 * foot, thickness: 12 * inch, depth: 4 * foot, "above grade": 2 * foot, pedestal: { width: 12 * inch, length: 16 * inch },
        concrete: 3000 * psi, bars: { count: 6, bar: readBar("no. 6")! }, ties, "bar grade": "Gr 60", cover: 2 * inch, ...foundation,
      },
      ground: { kind: "soil", "unit weight": 110 * pcf },
    }),
  );

const E_c = 57000 * Math.sqrt(3000);
/** Critical load of a cantilever, lb, all of the load lasting. */
const critical = (I: number, l: number) => (Math.PI ** 2 * 0.4 * E_c * I) / 2 / (2 * l) ** 2;

describe("A slender pier", () => {
  const P_s = (0.75 * critical((Math.PI * 12 ** 4) / 64, 108)) / 1000;
  const weight = (150 * Math.PI * 0.25 * 9) / 1000;

  it("has its moment magnified", () => {
    const found = weigh(pierSlender, pier(), strengthOf({ P: 20 * kip, My: 5 * kipFoot }));
    expect(found.demand / kipFoot).toBeCloseTo(5 / (1 - (20 + weight) / P_s), 6);
    expect(found.quantity).toBe("moment");
  });

  it("has a least moment where it is given none", () => {
    const P = 20 + weight;
    expect(weigh(pierSlender, pier(), strengthOf({ P: 20 * kip })).demand / kipFoot).toBeCloseTo((P * (0.6 + 0.36)) / 12 / (1 - P / P_s), 6);
  });

  it("is over where the moments grow by more than 1.4, and where it buckles", () => {
    const grown = weigh(pierSlender, pier(), strengthOf({ P: 40 * kip, My: 1 * kipFoot }));
    expect(grown).toMatchObject({ quantity: "ratio", isLimit: true });
    expect([grown.demand, grown.capacity]).toEqual([expect.closeTo(1 / (1 - (40 + weight) / P_s), 6), 1.4]);
    const buckled = weigh(pierSlender, pier(), strengthOf({ P: 200 * kip }));
    expect([buckled.demand / kip, buckled.capacity / kip]).toEqual([expect.closeTo(200 + weight, 6), expect.closeTo(P_s, 6)]);
    expect(pierSlender.advise!(read(pierSlender, pier()).inputs, buckled, say)).toMatch(/sways without end at .*Slenderness 72/);
  });

  it("counts the soil to 10 ft of depth", () => {
    const deep = weigh(pierSlender, pier({ depth: 20 * foot }), strengthOf({ P: 200 * kip }));
    expect(deep.capacity / kip).toBeCloseTo((0.75 * critical((Math.PI * 12 ** 4) / 64, 180)) / 1000, 6);
  });

  it("is not asked about where it stands out by no more than its width, nor where it is pulled", () => {
    expect(pierSlender.applies(pier({ "above grade": 12 * inch }))).toBe(false);
    expect(pierSlender.applies(pier({ "above grade": 13 * inch }))).toBe(true);
    expect(weigh(pierSlender, pier(), strengthOf({ P: -20 * kip })).demand).toBe(0);
  });

  it("is stocky up to a slenderness of 22", () => {
    // 2 (34 + 48)/ (0.25 x 30) = 21.9; with one inch more, 22.1.
    const at = (h: number) => weigh(pierSlender, pier({ diameter: 30 * inch, "above grade": h * inch }), strengthOf({ P: 5 * kip, My: 1 * kipFoot }));
    expect(at(34)).toMatchObject({ demand: expect.closeTo((2 * 82) / 7.5, 6), capacity: 22, quantity: "ratio" });
    expect(at(35).quantity).toBe("moment");
  });

  it("is bent no less than one that is stocky, and more under more load", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 25, noNaN: true }), fc.double({ min: 0.1, max: 10, noNaN: true }), fc.double({ min: 1.01, max: 1.1, noNaN: true }), (P, M, k) => {
        const at = (p: number) => weigh(pierSlender, pier(), strengthOf({ P: p * kip, My: M * kipFoot }));
        expect(at(P).demand).toBeGreaterThanOrEqual(weigh(pierBending, pier(), strengthOf({ P: P * kip, My: M * kipFoot })).demand * (1 - 1e-12));
        expect(at(P * k).demand).toBeGreaterThan(at(P).demand);
      }),
      { numRuns: 40 },
    );
  });
});

describe("A slender pedestal", () => {
  it("is taken about its thinner side, from the pad up", () => {
    const found = weigh(pedestalSlender, pedestal(), strengthOf({ P: 300 * kip }));
    // 16 x 12³/12 = 2304 in⁴, 60 in; it does not buckle under 300 kip, and its moments grow by more than 1.4.
    const P_s = (0.75 * critical(2304, 60)) / 1000;
    const weight = (150 * (12 / 12) * (16 / 12) * 5) / 1000;
    expect(found.demand).toBeCloseTo(1 / (1 - (300 + weight) / P_s), 6);
  });

  it("is stocky where it is short", () => {
    expect(pedestalSlender.applies(pedestal({ "above grade": -2.5 * foot }))).toBe(false);
    // 2 x 36 / 3.6 = 20.
    expect(weigh(pedestalSlender, pedestal({ "above grade": 0 }), strengthOf({ P: 30 * kip }))).toMatchObject({ demand: expect.closeTo(20, 6), capacity: 22 });
  });
});
