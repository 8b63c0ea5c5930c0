import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dowelPull, type DowelInputs } from "../../../server/src/checks/rock/dowel-force.js";
import { dowelSteel } from "../../../server/src/checks/rock/dowel-steel.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { solvePlateContact } from "../../../server/src/mechanics/plate-contact.js";
import { foot, inch, kip, kipFoot } from "../given.js";
import { allowable, outcomeOf, read, standing, stepsFor, strengthOf } from "../ground.js";

const bar = { name: "no. 6", diameter: 0.75 * inch, area: 0.44 * inch ** 2 };
const rock = { kind: "rock" };
const pad = (dowels: object = {}, more: object = {}, ground: object = rock) =>
  standing({
    foundation: { kind: "footing on rock", width: 4 * foot, length: 4 * foot, thickness: 18 * inch, dowels: { count: 4, spacing: 24 * inch, bar, grade: "Gr 60", ...dowels }, ...more },
    ground: ground as never,
  });
const wall = (more: object = {}, dowels: object = {}, places?: { x: number; y: number }[]) =>
  standing({
    foundation: { kind: "wall on footing", thickness: 18 * inch, height: 4 * foot, footing: { width: 42 * inch, thickness: 14 * inch }, "length per post": 10 * foot, dowels: { spacing: 16 * inch, bar, grade: "Gr 60", ...dowels }, ...more },
    ground: rock,
    places,
  });

const pullOf = (support: ReturnType<typeof pad>, demand: ReturnType<typeof allowable>): number => {
  const found = dowelPull(read(dowelSteel, support).inputs as DowelInputs, demand, plainCalc);
  if ("because" in found) throw new Error(found.because);
  return found.pull;
};

describe("Pull on the dowels of a pad, by statics", () => {
  // A 4 ft square pad 18 in thick weighs 3.6 kip at 150 pcf.
  it("is a fourth of what is left of the pull after six tenths of the weight", () => {
    expect(pullOf(pad(), allowable({ P: -10 * kip })) / kip).toBeCloseTo((10 - 0.6 * 3.6) / 4, 9);
  });

  it("takes nine tenths at strength level, and the factor of a combination that has one", () => {
    const pull = (demand: unknown) => pullOf(pad(), demand as ReturnType<typeof allowable>) / kip;
    expect(pull(strengthOf({ P: -10 * kip }))).toBeCloseTo((10 - 0.9 * 3.6) / 4, 9);
    expect(pull(allowable({ P: -10 * kip }, [{ factor: 1, type: "D" }]))).toBeCloseTo((10 - 3.6) / 4, 9);
  });

  it("counts the pad as buoyant where water can stand above its underside", () => {
    const wet = pad({}, { depth: 2 * foot }, { kind: "rock", "water table": 1 * foot });
    expect(pullOf(wet, allowable({ P: -10 * kip })) / kip).toBeCloseTo((10 - 0.6 * 24 * 0.0876) / 4, 9);
    const dry = pad({}, { depth: 2 * foot }, { kind: "rock", "water table": 3 * foot });
    expect(pullOf(dry, allowable({ P: -10 * kip })) / kip).toBeCloseTo((10 - 2.16) / 4, 9);
  });

  it("is nothing while the whole underside is pressed", () => {
    // N = 20 + 3.6 kip at full weight; the kern ends at N B/6 = 15.7 kip-ft.
    expect(pullOf(pad(), allowable({ P: 20 * kip, My: 15 * kipFoot }))).toBe(0);
  });

  it("is that of both rows while both pull", () => {
    // N = -7.84 kip; both rows of two pull up to M = N s/2 = 7.84 kip-ft.
    expect(pullOf(pad(), allowable({ P: -10 * kip, My: 6 * kipFoot })) / kip).toBeCloseTo((7.84 / 2 + 6 / 2) / 2, 9);
  });

  it("is that of the far row alone about the least arm beyond that", () => {
    // g = (2 x 4 - 2)/6 = 1 ft: T = (10 + 7.84 x 1)/(1 + 1) = 8.92 kip in two dowels.
    expect(pullOf(pad(), allowable({ P: -10 * kip, My: 10 * kipFoot })) / kip).toBeCloseTo(8.92 / 2, 9);
  });

  it("changes from both rows to the far one where the near row goes slack, and not before", () => {
    // Rows 12 in apart: both pull up to 3.92 kip-ft; at 99 % of it 7.84/2 + 3.8808/1 = 7.8008 kip in the far row.
    expect(pullOf(pad({ spacing: 12 * inch }), allowable({ P: -10 * kip, My: 0.99 * 3.92 * kipFoot })) / kip).toBeCloseTo(7.8008 / 2, 9);
    // At 101 %: g = 7/6 ft, (3.9592 + 7.84 x 7/6)/(7/6 + 1/2) = 7.86352 kip.
    expect(pullOf(pad({ spacing: 12 * inch }), allowable({ P: -10 * kip, My: 1.01 * 3.92 * kipFoot })) / kip).toBeCloseTo(7.86352 / 2, 9);
  });

  it.each(["Mx", "My"] as const)("is told for any number of dowels up to the kern, N B/6, for %s", (axis) => {
    // N = 20 + 3.6 kip: 23.6 x 4/6 = 15.733 kip-ft.
    const at = (moment: number) => outcomeOf(dowelSteel, pad({ count: 6 }), strengthOf({ P: 20 * kip, [axis]: moment * kipFoot }));
    expect(at(15.6).type).toBe("weighed");
    expect(at(15.9).type).toBe("unchecked");
  });

  it("carries the shear down over the pad, the grout and the plate", () => {
    const found = stepsFor(dowelSteel, { ...pad(), base: standing({ base: { grout: 1.5 * inch, plate: { thickness: 1 * inch } } }).base } as never, strengthOf({ Vx: 2 * kip, Vy: -3 * kip, P: -10 * kip }));
    expect(found.values.get("M_y")! / kipFoot).toBeCloseTo((2 * 20.5) / 12, 9);
    expect(found.values.get("M_x")! / kipFoot).toBeCloseTo((3 * 20.5) / 12, 9);
  });

  it("has one dowel in the middle pull about the least arm of a third of the width", () => {
    // N = 2 + 3.6 kip at full weight, M = 10 kip-ft on 4 ft: 3 x 10/4 - 5.6 = 1.9 kip.
    expect(pullOf(pad({ count: 1 }), allowable({ P: 2 * kip, My: 10 * kipFoot })) / kip).toBeCloseTo(1.9, 9);
  });

  it("follows a grid that is said, outer rows first", () => {
    // Three rows 18 in apart, two dowels each: r = 3 x 4/(6 x 2) = 1 ft; all pull up to M = 7.84 kip-ft: 7.84/6 + 6/6.
    const grid = pad({ count: undefined, "along x": 3, "along y": 2, spacing: 18 * inch });
    expect(pullOf(grid, allowable({ P: -10 * kip, My: 6 * kipFoot })) / kip).toBeCloseTo(7.84 / 6 + 1, 9);
    // Beyond it the far row takes what the moment adds: g = (8 - 3)/6 = 5/6 ft; 2 x 7.84/6 + (10 - 7.84)/((5/6 + 1.5) x 2).
    expect(pullOf(grid, allowable({ P: -10 * kip, My: 10 * kipFoot })) / kip).toBeCloseTo(15.68 / 6 + 2.16 / (2 * (5 / 6 + 1.5)), 9);
    // About the other axis two rows of three: g = (8 - 1.5)/6 ft; T = (10 + 7.84 g)/(g + 0.75) in three dowels.
    const g = 6.5 / 6;
    expect(pullOf(grid, allowable({ P: -10 * kip, Mx: 10 * kipFoot })) / kip).toBeCloseTo((10 + 7.84 * g) / (g + 0.75) / 3, 9);
  });

  it("takes one row of dowels along the middle about a third of the width", () => {
    // N = -7.84 kip, M = 10 kip-ft across the row: (3 x 10/4 + 7.84)/3.
    expect(pullOf(pad({ count: 3, "along x": 1, "along y": 3, spacing: 12 * inch }), allowable({ P: -10 * kip, My: 10 * kipFoot })) / kip).toBeCloseTo((7.5 + 7.84) / 3, 9);
  });

  it("refuses a grid of another number of dowels than is counted", () => {
    expect(read(dowelSteel, pad({ count: 4, "along x": 3, "along y": 2 })).blocks.join()).toMatch(/4 dowels are counted, and 3 by 2 of them stand in the grid/);
  });

  it("is not told where an edge lifts and the places of the dowels are not known", () => {
    const outcome = outcomeOf(dowelSteel, pad({ count: 6 }), strengthOf({ P: -10 * kip, My: 5 * kipFoot }));
    expect(outcome.type === "unchecked" && outcome.because).toMatch(/lifts an edge of the pad/);
    expect(outcomeOf(dowelSteel, pad({ count: 6 }), strengthOf({ P: -10 * kip })).type).toBe("weighed");
  });
});

describe("Pull on the dowels of a wall, by statics", () => {
  // 10 ft of an 18 in wall 4 ft high on 42 in by 14 in weigh 0.15 x 10 x (6 + 4.0833) = 15.125 kip; 7.5 dowels at 16 in.
  it("takes the weight of the length per post off the pull, and shares the rest between the dowels along it", () => {
    expect(pullOf(wall(), allowable({ P: -20 * kip })) / kip).toBeCloseTo((20 - 0.6 * 15.125) / 7.5, 9);
    expect(pullOf(wall({}, { count: 5 }), allowable({ P: -20 * kip })) / kip).toBeCloseTo((20 - 0.6 * 15.125) / 5, 9);
  });

  it("adds the moment across the footing about a third of its width", () => {
    expect(pullOf(wall(), allowable({ P: -20 * kip, Mx: 7 * kipFoot })) / kip).toBeCloseTo((20 - 9.075 + (3 * 7) / 3.5) / 7.5, 9);
  });

  it("has two rows pull about an arm of their own", () => {
    // Rows 2 ft apart on 3.5 ft: g = (7 - 2)/6 ft; N = -10.925 kip, r = 1 ft, M = 21 kip-ft; 7.5 dowels in each row.
    const g = 5 / 6;
    const found = pullOf(wall({}, { rows: 2, "row spacing": 24 * inch }), allowable({ P: -20 * kip, Mx: 21 * kipFoot })) / kip;
    expect(found).toBeCloseTo((21 - 10.925) / ((g + 1) * 7.5) + (2 * 10.925) / 15, 9);
    expect(pullOf(wall({}, { rows: 2, "row spacing": 24 * inch, count: 15 }), allowable({ P: -20 * kip, Mx: 21 * kipFoot })) / kip).toBeCloseTo(found, 9);
    expect(read(dowelSteel, wall({}, { rows: 2, "row spacing": 44 * inch })).blocks.join()).toMatch(/wider apart than the footing/);
  });

  it("counts what stands off the middle of the footing", () => {
    // Toe 6 in, heel 18 in: N = -10.925 kip 6 in off the middle.
    const off = wall({ footing: { width: 42 * inch, thickness: 14 * inch, toe: 6 * inch, heel: 18 * inch } });
    expect(pullOf(off, allowable({ P: -20 * kip })) / kip).toBeCloseTo((10.925 + (3 * 10.925 * 0.5) / 3.5) / 7.5, 9);
  });

  it("follows the other reach of the footing from the one that is stated", () => {
    const footing = { width: 42 * inch, thickness: 14 * inch };
    const both = wall({ footing: { ...footing, toe: 6 * inch, heel: 18 * inch } });
    const pull = pullOf(both, allowable({ P: -20 * kip }));
    expect(pullOf(wall({ footing: { ...footing, toe: 6 * inch } }), allowable({ P: -20 * kip }))).toBeCloseTo(pull, 6);
    expect(pullOf(wall({ footing: { ...footing, heel: 18 * inch } }), allowable({ P: -20 * kip }))).toBeCloseTo(pull, 6);
    expect(read(dowelSteel, wall({ footing: { ...footing, toe: 6 * inch, heel: 20 * inch } })).blocks.join()).toMatch(/together are not as wide/);
  });

  it("counts no wall and no dowels beyond the wall's end or a movement joint", () => {
    // 2 ft and half of 10 ft: 0.7 x 15.125 kip and 5.25 dowels; with a joint 2 ft on the other side 0.4 x 15.125 kip and 3.
    const atEnd = { length: 14 * foot, "first post": 2 * foot };
    expect(pullOf(wall(atEnd), allowable({ P: -20 * kip })) / kip).toBeCloseTo((20 - 0.6 * 10.5875) / 5.25, 9);
    const joints = Object.assign([{ value: 4 * foot }], { name: "joints" });
    expect(pullOf(wall({ ...atEnd, "movement joints": joints }), allowable({ P: -20 * kip })) / kip).toBeCloseTo((20 - 0.6 * 6.05) / 3, 9);
    expect(pullOf(wall({ length: 14 * foot }), allowable({ P: -20 * kip })) / kip).toBeCloseTo((20 - 0.6 * 15.125) / 7.5, 9);
    expect(stepsFor(dowelSteel, wall(atEnd), allowable({ P: -20 * kip })).notes.join(" ")).toMatch(/cut short on the west by the end of the wall/);
  });

  it("refuses a length per post longer than the distance between the columns", () => {
    const close = wall({}, {}, [{ x: 0, y: 0 }, { x: 8 * foot, y: 0 }]);
    const outcome = outcomeOf(dowelSteel, close, strengthOf({ P: -20 * kip }));
    expect(outcome.type === "unchecked" && outcome.because).toMatch(/counted twice/);
    expect(outcomeOf(dowelSteel, wall({}, {}, [{ x: 0, y: 0 }, { x: 12 * foot, y: 0 }]), strengthOf({ P: -20 * kip })).type).toBe("weighed");
  });

  it("asks for the length per post and the dowels", () => {
    expect(read(dowelSteel, wall({ "length per post": undefined, dowels: undefined })).missing).toEqual([
      "size of the dowel bars",
      "grade of the dowel bars",
      "length of wall that acts with one post (`length per post`)",
      "spacing of the dowels",
    ]);
  });
});

const load = fc.record({ P: fc.double({ min: -6e4, max: 6e4, noNaN: true }), M: fc.double({ min: 0, max: 6e4, noNaN: true }), n: fc.double({ min: 2, max: 200, noNaN: true }) });

describe("A second opinion: the elastic section of a rigid plate with bars", () => {
  const B = 4 * foot;
  const elastic = (rods: { x: number; y: number }[], N: number, Mx: number, My: number, n: number): number | undefined => {
    const found = solvePlateContact({ width: B, length: B, rods, rodArea: bar.area, modularRatio: n, P: N, Mx, My });
    return "unstable" in found ? undefined : Math.max(...found.tensions);
  };
  const half = 12 * inch;
  const square = [-half, half].flatMap((x) => [-half, half].map((y) => ({ x, y })));

  it("never finds more pull in four dowels by a moment about one axis", () => {
    fc.assert(
      fc.property(load, ({ P, M, n }) => {
        const inputs = read(dowelSteel, pad()).inputs as DowelInputs;
        const found = dowelPull(inputs, allowable({ P, My: M }, [{ factor: 0, type: "D" }]), plainCalc);
        const exact = elastic(square, P, 0, M, n);
        if (exact === undefined || "because" in found) return;
        expect(found.pull).toBeGreaterThanOrEqual(exact - 1);
        // Nor does the bound run away from it: the arm is at least half of the longest possible one.
        expect(found.pull).toBeLessThanOrEqual(2 * exact + 0.5 * Math.abs(P) + 1);
      }),
      { numRuns: 400 },
    );
  });

  it("never finds more pull in one dowel in the middle", () => {
    fc.assert(
      fc.property(load, ({ P, M, n }) => {
        const inputs = read(dowelSteel, pad({ count: 1 })).inputs as DowelInputs;
        const found = dowelPull(inputs, allowable({ P, My: M }, [{ factor: 0, type: "D" }]), plainCalc);
        const exact = elastic([{ x: 0, y: 0 }], P, 0, M, n);
        if (exact === undefined || "because" in found) return;
        expect(found.pull).toBeGreaterThanOrEqual(exact - 1);
      }),
      { numRuns: 400 },
    );
  });
});

describe("Laws of the pull", () => {
  const component = fc.double({ min: -5e4, max: 5e4, noNaN: true });
  const forces = fc.record({ P: component, Vx: component, Vy: component, Mx: component, My: component });
  const supports = [
    pad(),
    pad({ count: 1 }),
    pad({ count: undefined, "along x": 3, "along y": 3, spacing: 15 * inch }),
    pad({ count: 3, "along x": 3, "along y": 1, spacing: 15 * inch }),
    wall(),
    wall({}, { rows: 2, "row spacing": 24 * inch }),
  ];

  it("is finite, not negative, the same from either side, and never less for more lift", () => {
    fc.assert(
      fc.property(fc.constantFrom(...supports), forces, fc.double({ min: 0, max: 5e4, noNaN: true }), (support, base, more) => {
        const terms = [{ factor: 0.6, type: "D" }] as const;
        const pull = pullOf(support, allowable(base, terms));
        expect(Number.isFinite(pull)).toBe(true);
        expect(pull).toBeGreaterThanOrEqual(0);
        expect(pullOf(support, allowable({ P: base.P, Vx: -base.Vx, Vy: -base.Vy, Mx: -base.Mx, My: -base.My }, terms))).toBeCloseTo(pull, 6);
        expect(pullOf(support, allowable({ ...base, P: base.P - more }, terms))).toBeGreaterThanOrEqual(pull - 1e-6);
      }),
      { numRuns: 2000 },
    );
  });

  it("does not jump under a small change of load", () => {
    fc.assert(
      fc.property(fc.constantFrom(...supports), forces, (support, base) => {
        const terms = [{ factor: 0.6, type: "D" }] as const;
        const pull = pullOf(support, allowable(base, terms));
        expect(Math.abs(pullOf(support, allowable({ ...base, P: base.P - 0.1, My: base.My + 0.1 }, terms)) - pull)).toBeLessThan(5);
      }),
      { numRuns: 2000 },
    );
  });
});
