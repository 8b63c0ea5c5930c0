import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wallStripDevelopment } from "../../../server/src/checks/wall/strip-development.js";
import { wallStripSpacing, wallStripSteel } from "../../../server/src/checks/wall/strip-details.js";
import { wallStripFlexure } from "../../../server/src/checks/wall/strip-flexure.js";
import { wallStripShear } from "../../../server/src/checks/wall/strip-shear.js";
import { foot, inch, kip, kipFoot, psi } from "../given.js";
import { outcomeOf, pcf, psfPerFoot, standing, stepsFor, strengthOf, weigh } from "../ground.js";

type Fields = Readonly<Record<string, unknown>>;

const no4 = { name: "no. 4", diameter: 0.5 * inch, area: 0.2 * inch ** 2 };
const terms = [{ factor: 1.2, type: "D" }, { factor: 1, type: "W" }] as const;
const light = [{ factor: 0.9, type: "D" }, { factor: 1, type: "W" }] as const;
const fill = { side: "north", method: "equivalent fluid", "unit weight": 120 * pcf, "equivalent fluid": 45 * psfPerFoot, surcharge: 0, drained: true };

const wallOf = (strip: Fields = {}, more: Fields = {}, site: Fields = {}) => {
  const made = standing({
    site: { "seismic design category": "B", ...site },
    ground: { kind: "soil", class: "GP", "unit weight": 120 * pcf },
    foundation: {
      kind: "wall on footing", concrete: 4000 * psi, "bar grade": "Gr 60", cover: 3 * inch, length: 8 * foot, thickness: 1 * foot, height: 4 * foot, depth: 1 * foot, retains: 0,
      footing: { width: 5 * foot, thickness: 1 * foot, "bottom bars": { bar: no4, spacing: 9 * inch }, "long bars": { bar: no4, count: 8 }, ...strip },
      ...more,
    },
  });
  return { ...made, codes: { ...made.codes, overturning: { value: "factored dead load", path: "", span: made.span } } } as typeof made;
};
const flexure = (support: ReturnType<typeof wallOf>, base: Parameters<typeof strengthOf>[0], by: Parameters<typeof strengthOf>[1] = terms) => weigh(wallStripFlexure, support, strengthOf(base, by));

describe("The strip footing under a wall", () => {
  it("is bent and sheared alike by winds from either side where the wall stands on its middle", () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 30, noNaN: true }), fc.double({ min: 0.1, max: 8, noNaN: true }), (P, M) => {
      for (const check of [wallStripFlexure, wallStripShear]) {
        const one = weigh<any>(check, wallOf(), strengthOf({ P: P * kip, Mx: M * kipFoot }, terms)).demand;
        const other = weigh<any>(check, wallOf(), strengthOf({ P: P * kip, Mx: -M * kipFoot }, terms)).demand;
        expect(one / other).toBeCloseTo(1, 9);
      }
    }), { numRuns: 40 });
  });
  it("is bent more by a larger load and by a larger moment", () => {
    fc.assert(fc.property(fc.double({ min: 2, max: 30, noNaN: true }), fc.double({ min: 0, max: 6, noNaN: true }), fc.double({ min: 0.1, max: 4, noNaN: true }), (P, M, more) => {
      const at = (p: number, m: number) => flexure(wallOf(), { P: p * kip, Mx: m * kipFoot }).demand;
      expect(at(P + more, M)).toBeGreaterThan(at(P, M));
      expect(at(P, M + more)).toBeGreaterThan(at(P, M));
    }), { numRuns: 40 });
  });
  it("is pressed evenly without a moment: 20 kip on 40 sq ft bend 2 ft of it with 8 kip-ft", () => {
    // Own weight cancels but for the wall's own 1.2 x 4.8 kip.
    expect(flexure(wallOf(), { P: 20 * kip }).demand / kipFoot).toBeCloseTo(((20 + 5.76) / 40) * 2 * 8, 6);
  });
  it("has its heel bent downward by the soil on it, and needs its top", () => {
    const strip = { toe: 0.5 * foot, heel: 3.5 * foot };
    const held = { retains: 3 * foot, fill };
    const bare = flexure(wallOf(strip, held), { P: 0 });
    const barred = flexure(wallOf({ ...strip, "top bars": { bar: no4, spacing: 9 * inch } }, held), { P: 0 });
    expect(bare.demand).toBeCloseTo(barred.demand, 6);
    // Plain: 0.6 x 5 sqrt(f'c) on 10 in of 8 ft; by no. 4 at 9 in at the top as at the bottom.
    expect(bare.capacity / kipFoot).toBeCloseTo((0.6 * 5 * Math.sqrt(4000) * 96 * 100) / 6 / 12000, 4);
    expect(barred.capacity).toBeCloseTo(flexure(wallOf(), { P: 20 * kip }).capacity, 3);
    expect(stepsFor(wallStripFlexure, wallOf(strip, held), strengthOf({ P: 0 }, terms)).notes.join(" ")).toMatch(/heel bends downward/);
    const inD = outcomeOf(wallStripFlexure, wallOf(strip, held, { "seismic design category": "D" }), strengthOf({ P: 0 }, terms));
    expect(inD.type === "unchecked" && inD.because).toMatch(/state top bars/);
  });
  it("is sheared at the face of the wall where soil pushes its heel down, and at d from it where the ground pushes it up", () => {
    // Heel 3 ft under 3 ft of soil; 1.6 x 80 psf/ft on 4 ft turn the weights toward the toe.
    const heavy = wallOf({ toe: 1 * foot, heel: 3 * foot }, { retains: 3 * foot, fill: { ...fill, "equivalent fluid": 80 * psfPerFoot } });
    const N = 1.2 * (0.15 * 5 + 0.15 * 4 + 0.12 * 3 * 3);
    const M = 1.2 * (0.15 * 5 * 2.5 + 0.15 * 4 * 1.5 + 0.12 * 3 * 3 * 3.5) - (1.6 * 0.08 * 4 ** 3) / 6;
    const e = 2.5 - M / N;
    const at = (x: number) => (N / 5) * (1 - (12 * e * (x - 2.5)) / 25);
    // From the tip of the heel to the face, 2 ft from the toe: what lies on it less what presses below.
    const V = 3 * (1.2 * (0.15 + 0.36) - (at(2) + at(5)) / 2);
    expect(weigh<any>(wallStripShear, heavy, strengthOf({ P: 0 }, terms)).demand / kip).toBeCloseTo(8 * V, 4);
    // 40 kip and 1.2 x 4.8 kip press 8 ft of the even footing with 1.144 ksf; d = 8.75 in.
    expect(weigh<any>(wallStripShear, wallOf(), strengthOf({ P: 40 * kip }, terms)).demand / kip).toBeCloseTo(8 * (45.76 / 40) * (2 - 8.75 / 12), 4);
  });
  it("is not answered where it tips over, with what to do", () => {
    const found = outcomeOf(wallStripFlexure, wallOf(), strengthOf({ P: 1 * kip, Mx: 60 * kipFoot }, light));
    expect(found.type === "unchecked" && found.because).toMatch(/Widen the footing/);
  });
  it("needs hooks where its toe is short: half an inch needs 12 in at least, straight", () => {
    const short = { width: 3 * foot };
    const straight = weigh(wallStripDevelopment, wallOf(short), strengthOf({ P: 20 * kip }, terms));
    expect([straight.demand / inch, straight.capacity / inch]).toEqual([expect.closeTo(12, 6), expect.closeTo(9, 6)]);
    const hooked = weigh(wallStripDevelopment, wallOf(short, { "hooked bars": true }), strengthOf({ P: 20 * kip }, terms));
    // 1.25 x (4000/15000 + 0.6) x 60000 / (55 sqrt(4000)) x 0.5^1.5.
    expect(hooked.demand / inch).toBeCloseTo((1.25 * (4 / 15 + 0.6) * 60000 * 0.5 ** 1.5) / (55 * Math.sqrt(4000)), 4);
  });
  it("in category D has its bars developed in full", () => {
    const { demand } = weigh(wallStripDevelopment, wallOf({}, {}, { "seismic design category": "D" }), strengthOf({ P: 20 * kip }, terms));
    expect(demand / inch).toBeCloseTo((60000 / (25 * Math.sqrt(4000))) * 0.5, 4);
  });
  it("has 0.0018 of its section both ways, and bars at most 18 in apart", () => {
    const few = weigh(wallStripSteel, wallOf({ "long bars": { bar: no4, count: 6 } }), strengthOf({ P: 0 }));
    expect([few.demand / inch ** 2, few.capacity / inch ** 2]).toEqual([expect.closeTo(0.0018 * 60 * 12, 6), expect.closeTo(1.2, 6)]);
    const wide = weigh(wallStripSpacing, wallOf({ "top bars": { bar: no4, spacing: 20 * inch } }), strengthOf({ P: 0 }));
    expect([wide.demand / inch, wide.capacity / inch]).toEqual([expect.closeTo(20, 6), expect.closeTo(18, 6)]);
  });
});

describe("A strip held down to rock by dowels", () => {
  const rock = (dowels: Fields, strip: Fields = {}) => {
    const made = wallOf({ "top bars": { bar: no4, spacing: 9 * inch }, ...strip }, { dowels: { spacing: 2 * foot, ...dowels } });
    return { ...made, ground: standing({ ground: { kind: "rock" } }).ground } as typeof made;
  };
  it("presses with half of its width where one row on its middle pulls: 12 M/(B² L) at the edge", () => {
    // N = 0.9 x (4.8 + 6.0) - 20 = -10.28 kip; 20 kip-ft press 12 x 20/(25 x 8) = 1.2 ksf at the edge, nothing at the middle, 0.24 ksf at the face.
    const found = weigh(wallStripFlexure, rock({}), strengthOf({ P: -20 * kip, Mx: 20 * kipFoot }, light));
    // Moment at the face: 8 x (0.24 x 2²/2 + 0.96 x 2/2 x 4/3) - 0.9 x 0.15 x 8 x 2²/2.
    expect(found.demand / kipFoot).toBeCloseTo(8 * (0.48 + 1.28) - 2.16, 4);
  });
  it("has its far row of two bend its other side downward", () => {
    // Rows 4 ft apart on 5 ft: r = 2 ft, g = 1 ft. N = -10.28 kip, M = 30 kip-ft: far row (30 - 20.56)/(1 + 2) + 10.28 = 13.4267 kip, 1.5 ft beyond the
    // face; with 2 ft of footing 0.9 x 2.4 kip. The other 3.1467 kip press 4.5 ft, from the edge to that row: 0.3496 kip lift 0.5 ft beyond the face.
    const found = weigh(wallStripFlexure, rock({ rows: 2, "row spacing": 4 * foot }), strengthOf({ P: -20 * kip, Mx: 30 * kipFoot }, light));
    expect(found.demand / kipFoot).toBeCloseTo(13.42667 * 1.5 + 2.16 - 0.17482, 3);
    expect(stepsFor(wallStripFlexure, rock({ rows: 2, "row spacing": 4 * foot }), strengthOf({ P: -20 * kip, Mx: 30 * kipFoot }, light)).notes.join(" ")).toMatch(/bends downward/);
  });
  it("stands by its weight alone where its bars are driven dry", () => {
    const outcome = outcomeOf(wallStripFlexure, rock({ "set in": "nothing" }), strengthOf({ P: -20 * kip, Mx: 20 * kipFoot }, light));
    expect(outcome.type === "unchecked" && outcome.because).toMatch(/no net load down/);
  });
});
