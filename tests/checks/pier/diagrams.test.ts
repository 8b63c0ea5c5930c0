import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pierDiagrams, readPierForDiagrams } from "../../../server/src/checks/pier/diagrams.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, gatherer, inch, psi } from "../given.js";
import { allowable, lb, lbFoot, standing } from "../ground.js";

const pci = lb / inch ** 3;
const of = (foundation: object, ground: object, base: object) => {
  const gather = gatherer();
  const pier = readPierForDiagrams(standing({ foundation: { kind: "pier", diameter: 2 * foot, depth: 7 * foot, concrete: 4000 * psi, ...foundation }, ground: { kind: "soil", ...ground } as never }), gather);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return pierDiagrams(pier, allowable(base).base, plainCalc);
};
const load = { Vx: 1200 * lb, My: 12000 * lbFoot };

describe("Shear and moment along a pier", () => {
  // Rigid pier on even springs in closed form: 148,230.1 lb·in at 7.259 in; on growing springs the moment is larger.
  it("without values of the soil are those of a rigid pier, the worse of two spreads", () => {
    const found = of({}, {}, load)!;
    expect(found.maxMoment / (lb * inch)).toBeGreaterThan(148230.1);
    // By equilibrium of a parabola of soil pressure, integrated apart.
    expect(found.maxMoment / (lb * inch)).toBeCloseTo(158307, -1);
    expect(found.shear[0]).toBeCloseTo(1200 * lb, 6);
  });

  // 144,000 + 1,200 x 24 lb·in at 24 in where nothing above holds.
  it("carry the push down over the ignored depth", () => {
    const found = of({ "ignored depth": 2 * foot }, {}, load)!;
    expect(found.maxMoment / (lb * inch)).toBeGreaterThan(144000 + 1200 * 24);
    expect(found.depth[0]).toBeCloseTo(2 * foot, 9);
  });

  // Held at grade on springs even with depth: pressure grows with depth, its middle at two thirds: 1.5 M/L.
  it("under a slab have the whole moment at grade, and 1.5 M/L of shear", () => {
    const found = of({ "restrained at grade": true }, {}, load)!;
    expect(found.maxMoment).toBeCloseTo(12000 * lbFoot, 3);
    expect(found.maxShear / ((1.5 * 12000 * lbFoot) / (7 * foot))).toBeCloseTo(1, 6);
    expect(Math.abs(found.moment.at(-1)!)).toBeLessThan(1e-6 * found.maxMoment);
  });

  it("come from the springs where they are stated, near those of the rigid pier on the same spread", () => {
    const found = of({}, { "subgrade modulus": 100 * pci }, load)!;
    expect(found.maxMoment / (lb * inch) / 148230).toBeCloseTo(1, 2);
  });

  it("are none where the soil gives way", () => {
    expect(of({}, { cohesion: 5e3, "strain at half strength": 0.02, "unit weight": 17e3 }, { Vx: 1e6, My: 1e6 })).toBeUndefined();
  });

  it("bound a pier on springs of either spread that is stiff", () => {
    const number = fc.double({ min: 0, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(number, number, fc.boolean(), (Vx, My, isEven) => {
        fc.pre(Vx + My > 1);
        const base = { Vx, My };
        const bound = of({}, {}, base)!;
        const soft = of({}, isEven ? { "subgrade modulus": 1 * pci } : { "modulus growth": 1 * pci }, base);
        if (!soft) return;
        expect(soft.maxMoment).toBeLessThanOrEqual(bound.maxMoment * 1.005 + 1e-6);
        expect(soft.maxShear).toBeLessThanOrEqual(bound.maxShear * 1.005 + 1e-6);
      }),
      { numRuns: 60 },
    );
  });
});
