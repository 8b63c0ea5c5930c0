import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { findSection } from "../../../server/src/catalog/sections.js";
import { readBendRectangle } from "../../../server/src/checks/base/bend-rectangle.js";
import { baseBearing, confinement } from "../../../server/src/checks/base/bearing.js";
import { concreteModulus, distribute, isUnstable, modularRatio } from "../../../server/src/checks/base/distribution.js";
import { fitRectangle, fitRound, readBase } from "../../../server/src/checks/base/geometry.js";
import { readMember } from "../../../server/src/checks/base/member.js";
import { plateCompression, thicknessNeeded } from "../../../server/src/checks/base/plate-compression.js";
import { plateUplift } from "../../../server/src/checks/base/plate-uplift.js";
import { bendSquare } from "../../../server/src/checks/base/rod-moment.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, gatherer, inch, kip, kipFoot, kipInch, ksi, psi, ratioOf, run, say, strength, supportOf, valuesOf } from "../given.js";
import { supportWith, type Given } from "./base.js";

const near = (found: number | undefined, expected: number, part = 0.003) => {
  expect(found).toBeDefined();
  expect(Math.abs(found! / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
};

const inputsOf = <I extends object>(of: CheckDecl<I, any>, given: Given): I => {
  const gather = gatherer();
  const inputs = of.inputs(supportWith(given), gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};

/** HSS6x6x1/2 on PL 13 x 13, f'c 3 ksi, a 90 in footing; AISC Companion to the Manual, 16th ed., Example K.9. */
const k9: Given = { section: "HSS6x6x1/2", plate: [13, 13, 0.917], plateGrade: "A572 Gr 50", pier: 90, fc: 3000, spacing: [10, 10], rod: 0.75 };
/** Plate of W12x96, 22 x 22 on a 24 in pedestal, f'c 3 ksi; Example J.6. */
const j6: Given = { plate: [22, 22, 1.5], pier: 24, fc: 3000 };
/** 14 x 14 plate, HSS8x8, four rods 1-1/2 in from the edges, 40 kip up. */
const lifted: Given = { section: "HSS8x8x3/8", plate: [14, 14, 0.75], spacing: [11, 11], rod: 0.75 };

describe("bearing under the base plate (AISC 360-22 J8)", () => {
  it.each([
    ["AISC Companion 16th ed., Example K.9: sqrt(A2/A1) at its limit of 2", k9, 240, 560],
    ["AISC Companion 16th ed., Example J.6: pedestal 24/22 of the plate", j6, 690, 875],
  ])("%s", (_, given, P, phiPp) => {
    const outcome = run(baseBearing, inputsOf(baseBearing, given), strength({ P: P * kip }));
    near(outcome.demand / kip, P);
    near(outcome.capacity / kip, phiPp);
  });

  it("fits the plate's shape into a round pier: 18 in over the 16.97 in diagonal of a 12 in square, 1.061", () => {
    near(fitRound.value({ D: 18 * inch, B: 12 * inch, N: 12 * inch }), 1.0607);
    near(valuesOf(baseBearing, inputsOf(baseBearing, { plate: [12, 12, 1], spacing: [8, 8], diameter: 18, fc: 3000 }), strength({ P: kip })).get("f_d")! / ksi, 0.65 * 0.85 * 3 * 1.0607);
  });

  it.each([
    ["the nearer direction limits a long plate", fitRectangle.value({ c_x: 10, c_y: 10, B: 10, N: 16 }), 1.25],
    ["and the other way round", fitRectangle.value({ c_x: 10, c_y: 10, B: 16, N: 10 }), 1.25],
    ["a thin pad limits the spread, 1 + 4 x 2/13", confinement.value({ k_A: 3, h: 2, B: 13, N: 10 }), 1.6154],
  ])("%s", (_, found, expected) => near(found, expected));

  it("with a small moment is P/A + 6M/(B N²) at the edge: 100 kip and 10 kip-ft on 14 x 14 give 0.510 + 0.262 ksi", () => {
    const outcome = run(baseBearing, inputsOf(baseBearing, {}), strength({ P: 100 * kip, My: 10 * kipFoot }));
    expect(outcome.quantity).toBe("stress");
    near(outcome.demand / ksi, 0.7726);
  });

  it("asks nothing of the concrete where the plate is lifted", () => {
    expect(run(baseBearing, inputsOf(baseBearing, {}), strength({ P: -10 * kip })).demand).toBe(0);
  });
});

describe("how forces are shared between bearing and rods", () => {
  it("takes E_c = 57000 sqrt(f'c): 3605 ksi at 4000 psi (ACI 318-19 19.2.2.1), n = 8.04", () => {
    const E_c = concreteModulus.value({ fprime_c: 4000 * psi });
    near(E_c / ksi, 3605, 0.001);
    near(modularRatio.value({ E_c }), 8.044, 0.001);
  });

  const anyForce = fc.double({ min: -300, max: 300, noNaN: true });
  const anyMoment = fc.double({ min: -100, max: 100, noNaN: true });
  const anyPattern = fc.record({
    count: fc.constantFrom(4, 6, 8),
    x: fc.double({ min: 4, max: 13, noNaN: true }),
    y: fc.double({ min: 4, max: 13, noNaN: true }),
  });

  it("rods and bearing balance force and moments to one in a billion", () => {
    fc.assert(
      fc.property(anyForce, anyMoment, anyMoment, anyPattern, (P, Mx, My, { count, x, y }) => {
        const base = readBase(supportWith({ count, spacing: [x, y] }), gatherer(), 0);
        const demand = strength({ P: P * kip, Mx: Mx * kipFoot, My: My * kipFoot });
        const found = distribute(base, demand, plainCalc);
        if (isUnstable(found)) throw new Error(found.unstable);
        const at = found.compressionAt ?? { x: 0, y: 0 };
        const sum = (arm: (i: number) => number) => found.tensions.reduce((total, T, i) => total + T * arm(i), 0);
        const scale = Math.abs(demand.base.P) + found.compression + sum(() => 1);
        const outOfBalance = [
          found.compression - sum(() => 1) - demand.base.P,
          found.compression * at.x - sum((i) => base.rods[i].x) - demand.base.My,
          found.compression * at.y - sum((i) => base.rods[i].y) + demand.base.Mx,
        ];
        for (const left of outOfBalance) expect(Math.abs(left)).toBeLessThanOrEqual(1e-9 * scale + 1e-6);
      }),
    );
  });

  it("is found once for a combination and again when the base changes", () => {
    const demand = strength({ P: 10 * kip, My: 20 * kipFoot });
    const base = readBase(supportWith(), gatherer(), 0);
    expect(distribute(base, demand, plainCalc)).toBe(distribute(readBase(supportWith(), gatherer(), 0), demand, plainCalc));
    const wider = readBase(supportWith({ plate: [16, 16, 1] }), gatherer(), 0);
    expect(distribute(wider, demand, plainCalc)).not.toEqual(distribute(base, demand, plainCalc));
  });
});

describe("bending of the plate on the bearing side (AISC Design Guide 1)", () => {
  it("needs 0.917 in in AISC Companion 16th ed., Example K.9, with m = 3.65 in and f_pu = 1.42 ksi", () => {
    const inputs = inputsOf(plateCompression, k9);
    const values = valuesOf(plateCompression, inputs, strength({ P: 240 * kip }));
    near(values.get("l")! / inch, 3.65);
    near(values.get("f_p")! / ksi, 1.42);
    near(values.get("t_min")! / inch, 0.917);
    near(ratioOf(run(plateCompression, inputs, strength({ P: 240 * kip }))), 1);
  });

  it("takes the longer overhang of a plate that is not square", () => {
    for (const plate of [[13, 16, 1], [16, 13, 1]] as const)
      near(valuesOf(plateCompression, inputsOf(plateCompression, { ...k9, plate, pier: 90 }), strength({ P: kip })).get("l")! / inch, 5.15);
  });

  it("takes the largest bearing stress under a moment (0.7726 ksi on 4.15 in: 6.653 kip-in/in)", () => {
    near(run(plateCompression, inputsOf(plateCompression, {}), strength({ P: 100 * kip, My: 10 * kipFoot })).demand / kip, 6.653);
  });

  it("asks nothing of a plate that is only lifted", () => {
    expect(run(plateCompression, inputsOf(plateCompression, k9), strength({ P: -40 * kip })).demand).toBe(0);
  });

  it("does not answer where the plate ends at the column", () => {
    const inputs = { ...inputsOf(plateCompression, {}), b_px: 16 * inch, b_py: 16 * inch };
    expect(plateCompression.evaluate(inputs, strength({ P: kip }), plainCalc)).toMatchObject({ type: "unchecked" });
  });

  it("says the thickness first", () => {
    const inputs = inputsOf(plateCompression, { ...k9, plate: [13, 13, 0.75] });
    const outcome = run(plateCompression, inputs, strength({ P: 240 * kip }));
    expect(plateCompression.advise!(inputs, outcome, say)).toBe("Plate 0.75 in; 0.917 in needed on the bearing side. Take a thicker plate.");
  });
});

describe("bending of the plate by rods in tension", () => {
  it("spreads 10 kip a rod at the corners of HSS8x8 over twice the distance: 5.0 kip-in/in, 0.786 in of A36, 0.667 in of grade 50 (statics)", () => {
    const inputs = inputsOf(plateUplift, lifted);
    const outcome = run(plateUplift, inputs, strength({ P: -40 * kip }));
    near(outcome.demand / kip, 5);
    near(thicknessNeeded.value({ t_p: 0.75 * inch, m_u: outcome.demand, m_d: 4.55625 * kip }) / inch, 0.7857);
    near(thicknessNeeded.value({ t_p: 0.75 * inch, m_u: outcome.demand, m_d: 6.328125 * kip }) / inch, 0.6667);
    near(ratioOf(outcome), 5 / 4.55625);
    expect(plateUplift.advise!(inputs, outcome, say)).toMatch(/^Plate 0\.75 in; 0\.7857 in needed where the rods pull/);
  });

  it.each([
    ["two rods beyond the sides of HSS3x3 on a strip 4 in wide: the whole strip, 10 x 3.575/4", { section: "HSS3x3x1/4", plate: [12, 4, 1], count: 2, spacing: [10, undefined] }, 20, 8.9375],
    ["the same along y", { section: "HSS3x3x1/4", plate: [4, 12, 1], count: 2, spacing: [undefined, 10] }, 20, 8.9375],
    ["eight rods, those at the corners govern: 10 x 6.3/(4 x 2.85)", { section: "HSS6x6x3/8", plate: [14, 14, 1], count: 8, spacing: [12, 12] }, 80, 5.5263],
    ["four corner rods far out from HSS3x3: the diagonal is cut at the middle of the plate, 10 a/(2 x 1.425 sqrt 2), a = (12 - 2.85)/sqrt 2", { section: "HSS3x3x1/4", plate: [18, 18, 1], spacing: [12, 12] }, 40, 16.053],
    ["four corner rods close to HSS8x8 and to the edges of a narrow plate: half the tension", { section: "HSS8x8x3/8", plate: [10, 10, 1], spacing: [9.6, 9.6] }, 40, 5],
  ] as const)("%s", (_, given, up, expected) => {
    near(run(plateUplift, inputsOf(plateUplift, given as Given), strength({ P: -up * kip })).demand / kip, expected, 0.003);
  });

  it.each([
    ["HSS8x8x1/4", undefined, 7.6, 7.6],
    ["HSS8x4x1/4", "along x", 7.6, 3.8],
    ["HSS8x4x1/4", "along y", 3.8, 7.6],
    ["HSS6.000x0.280", undefined, 4.8, 4.8],
    ["W8x31", "along y", 6.4, 7.6],
  ])("bends under %s, deep %s, about a rectangle of %f by %f in (Design Guide 1: 0.95 of sides and depth, 0.80 of flange and diameter)", (name, deep, x, y) => {
    const { b_px, b_py } = readBendRectangle(supportOf({ column: { section: findSection(name), "deep side": deep } }), gatherer());
    near(b_px / inch, x, 1e-9);
    near(b_py / inch, y, 1e-9);
    near(bendSquare.value({ b_p: b_px }) / inch, x / 2, 1e-9);
  });

  it("asks nothing where no rod pulls, and does not answer for a rod under the tube", () => {
    expect(run(plateUplift, inputsOf(plateUplift, {}), strength({ P: 10 * kip })).demand).toBe(0);
    const inside = inputsOf(plateUplift, { count: 1, spacing: [undefined, undefined] });
    expect(plateUplift.evaluate(inside, strength({ P: -kip }), plainCalc)).toMatchObject({ type: "unchecked" });
  });

  it("never counts more width than twice the distance: the moment is at least half the tension", () => {
    fc.assert(
      fc.property(fc.double({ min: 3, max: 13, noNaN: true }), fc.double({ min: 3, max: 13, noNaN: true }), fc.constantFrom("HSS3x3x1/4", "HSS6x6x3/8"), (x, y, section) => {
        const inputs = inputsOf(plateUplift, { section, spacing: [x, y] });
        const outcome = plateUplift.evaluate(inputs, strength({ P: -40 * kip }), plainCalc);
        if (outcome.type === "weighed") expect(outcome.demand).toBeGreaterThanOrEqual(0.4999 * 10 * kip);
      }),
    );
  });
});

describe("what a base reads", () => {
  const said = (given: Given) => {
    const gather = gatherer();
    readBase(supportWith(given), gather, 0);
    return [...gather.missing, ...gather.blocks].join("; ");
  };

  it.each<[string, Given, RegExp]>([
    ["three rods", { count: 3 }, /pattern of 3 rods is not known/],
    ["two rods with two spacings", { count: 2 }, /not both/],
    ["four rods with one spacing", { spacing: [10, undefined] }, /along x and along y/],
    ["rods outside the plate", { spacing: [14, 10] }, /outside the base plate/],
    ["a plate wider than its pier", { pier: 12 }, /past the edge/],
    ["the corners of a plate over a round pier", { diameter: 19 }, /past the edge/],
    ["a rod size that is not made", { rod: 0.9 }, /no anchor rod of this diameter/],
    ["leveling nuts with grout not stated", { base: { "leveling nuts": true, grout: undefined } }, /state the grout/],
    ["no plate", { base: { plate: undefined } }, /^base plate/],
    ["a pier with two sizes", { foundation: { width: 1, diameter: 1 } }, /both a diameter and a width/],
    ["a wall without its length", { foundation: { kind: "wall on footing", thickness: 1, height: 1 } }, /length of the wall/],
    ["posts askew", { foundation: { kind: "wall on footing", thickness: 1, height: 1, length: 20 }, places: [{ x: 0, y: 0 }, { x: 3, y: 4 }] }, /askew/],
    ["a wall shorter than its posts", { foundation: { kind: "wall on footing", thickness: 1, height: 1, length: 4 }, places: [{ x: 0, y: 0 }, { x: 5, y: 0 }] }, /shorter than the line/],
  ])("speaks about %s", (_, given, words) => expect(said(given)).toMatch(words));

  it.each<[string, Given, number, readonly number[]]>([
    ["a square pier", { pier: 24 }, 0, [12, 12, 12, 12]],
    ["the square inside a round pier, 24/(2 sqrt 2)", { diameter: 24 }, 0, [8.4853, 8.4853, 8.4853, 8.4853]],
    ["a pad", { foundation: { kind: "footing on rock", width: 30 * inch, length: 40 * inch, thickness: 14 * inch } }, 0, [15, 15, 20, 20]],
    [
      "the first post of a wall along x, 20 ft long under 12 ft of posts",
      { foundation: { kind: "wall on footing", thickness: 18 * inch, height: 4 * foot, length: 20 * foot }, places: [{ x: 0, y: 0 }, { x: 6 * foot, y: 0 }, { x: 12 * foot, y: 0 }] },
      0,
      [48, 192, 9, 9],
    ],
    [
      "the last post of a wall along y",
      { foundation: { kind: "wall on footing", thickness: 18 * inch, height: 4 * foot, length: 20 * foot }, places: [{ x: 3, y: 0 }, { x: 3, y: 12 * foot }] },
      1,
      [9, 9, 192, 48],
    ],
  ])("finds the edges of %s", (_, given, place, expected) => {
    const { edges } = readMember(supportWith(given), gatherer(), place);
    [-edges.west, edges.east, -edges.south, edges.north].forEach((found, i) => near(found / inch, expected[i], 1e-4));
  });
});

describe("depth of concrete below the plate", () => {
  it("of a pier is its depth and its height above grade", () => {
    near(readMember(supportWith({ foundation: { depth: 6 * foot, "above grade": 18 * inch } }), gatherer(), 0).depth / inch, 90, 1e-9);
    near(readMember(supportWith(), gatherer(), 0).depth / inch, 72, 1e-9);
  });
});

describe("the base as a whole", () => {
  const checks: readonly CheckDecl<any, any>[] = [baseBearing, plateCompression, plateUplift];

  it("gives the same ratio when plate, rods and load are turned by a right angle", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 13, noNaN: true }),
        fc.double({ min: 5, max: 11, noNaN: true }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        (x, y, P, Mx, My) => {
          const here = supportWith({ plate: [14, 12, 1], spacing: [x, y] });
          const turned = supportWith({ plate: [12, 14, 1], spacing: [y, x] });
          for (const of of checks) {
            const before = of.evaluate(of.inputs(here, gatherer(), 0), strength({ P: P * kip, Mx: Mx * kipFoot, My: My * kipFoot }), plainCalc);
            const after = of.evaluate(of.inputs(turned, gatherer(), 0), strength({ P: P * kip, Mx: -My * kipFoot, My: Mx * kipFoot }), plainCalc);
            expect(after.type).toBe(before.type);
            if (before.type === "weighed" && after.type === "weighed") expect(ratioOf(after)).toBeCloseTo(ratioOf(before), 6);
          }
        },
      ),
    );
  });

  it("never gives a ratio that is not a number over 2,000 random bases", () => {
    fc.assert(
      fc.property(
        fc.record({
          section: fc.constantFrom("HSS3x3x1/4", "HSS6x6x3/8", "HSS10x10x3/8"),
          plate: fc.tuple(fc.double({ min: 6, max: 24, noNaN: true }), fc.double({ min: 6, max: 24, noNaN: true }), fc.double({ min: 0.25, max: 2, noNaN: true })),
          count: fc.integer({ min: 1, max: 8 }),
          spacing: fc.tuple(fc.double({ min: 1, max: 24, noNaN: true }), fc.double({ min: 1, max: 24, noNaN: true })),
        }),
        fc.tuple(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.double({ min: -1e5, max: 1e5, noNaN: true }), fc.double({ min: -1e5, max: 1e5, noNaN: true })),
        (given, [P, Mx, My]) => {
          for (const of of checks) {
            const gather = gatherer();
            const inputs = of.inputs(supportWith(given as Given), gather, 0);
            if (gather.missing.length > 0 || gather.blocks.length > 0) continue;
            const outcome = of.evaluate(inputs, strength({ P, Mx, My }), plainCalc);
            if (outcome.type === "weighed") {
              expect(Number.isFinite(outcome.demand)).toBe(true);
              expect(outcome.capacity).toBeGreaterThan(0);
            }
          }
        },
      ),
      { numRuns: 2000 },
    );
  });

  it("moment per width is shown in kip-in per in: 5 kip-in over 1 in", () => {
    expect(say.show((5 * kipInch) / inch, "momentPerLength")).toBe("5 kip-in/in");
  });
});
