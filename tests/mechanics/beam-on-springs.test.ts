import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { solveBeamOnSprings, type BeamAnswer, type BeamArgs } from "../../server/src/mechanics/beam-on-springs.js";
import { rigidMovement } from "../../server/src/mechanics/rigid-pier.js";
import type { SoilLaw } from "../../server/src/mechanics/soil-curves.js";
import { foot, inch } from "../checks/given.js";
import { degree, lb, pcf, psf } from "../checks/ground.js";

const poundInch = lb * inch;
const pci = lb / inch ** 3;
const psi = lb / inch ** 2;

/** A pier of 24 in with EI of 5.8630e10 lb·in², E 3,600 ksi on the whole section. */
const E = 3600e3 * psi;
const I = (5.863e10 / 3600e3) * inch ** 4;

const solved = (args: Omit<BeamArgs, "E" | "I" | "width"> & Partial<BeamArgs>): BeamAnswer => {
  const found = solveBeamOnSprings({ E, I, width: 24 * inch, ...args });
  if (!found) throw new Error("no answer");
  return found;
};

const even = (k: number): BeamArgs["layers"] => [{ top: 0, law: { type: "springs", k: k * psi, growth: 0 } }];
const growing = (nh: number): BeamArgs["layers"] => [{ top: 0, law: { type: "springs", k: 0, growth: nh * pci } }];

describe("A pier as a beam on springs", () => {
  // Free at both ends on springs of 2,400 lb/in², 1,200 lb and 144,000 lb·in at the head: y0 in, slope, Mmax lb·in. Closed form, recomputed.
  it.each([
    [84, 0.0758501, -0.00172396, 148178.3],
    [144, 0.0344165, -0.00053665, 153502.3],
    [240, 0.0230284, -0.00035187, 158890.2],
    [480, 0.0222076, -0.00034549, 159585.7],
  ])("%d in long moves %d in at its head", (L, y0, slope, Mmax) => {
    const found = solved({ length: L * inch, H: 1200 * lb, M: 144000 * poundInch, layers: even(2400), elements: 60 });
    expect(found.deflection[0] / inch / y0).toBeCloseTo(1, 4);
    expect(found.slope[0] / slope).toBeCloseTo(1, 4);
    expect(found.maxMoment / poundInch / Mmax).toBeCloseTo(1, 4);
  });

  // Hetenyi: semi-infinite beam, b = (k/4EI)^0.25: y0 = 2 H b/k + 2 M b²/k; slope 2 H b²/k + 4 M b³/k; M of a push alone 0.3224 H/b at b z = pi/4.
  it("agrees with the endless beam of Hetenyi within 0.1 %", () => {
    const b = (2400 / (4 * 5.863e10)) ** 0.25;
    const long = { length: 800 * inch, layers: even(2400), elements: 200 };
    const both = solved({ ...long, H: 1200 * lb, M: 144000 * poundInch });
    expect(both.deflection[0] / inch / ((2 * 1200 * b + 2 * 144000 * b ** 2) / 2400)).toBeCloseTo(1, 3);
    expect(-both.slope[0] / ((2 * 1200 * b ** 2 + 4 * 144000 * b ** 3) / 2400)).toBeCloseTo(1, 3);
    const push = solved({ ...long, H: 1200 * lb, M: 0 });
    expect(push.maxMoment / poundInch / ((0.3224 * 1200) / b)).toBeCloseTo(1, 3);
    expect((push.maxMomentAt / inch) * b).toBeCloseTo(Math.PI / 4, 1);
  });

  // Boresi and Schmidt, Example 10.1(a): an endless beam in mm and N, P 170 kN; half of it with half of the load and a head that cannot turn.
  it("gives 5.04 mm and 51.21 kN·m of Boresi and Schmidt's Example 10.1 at the middle of an endless beam", () => {
    const EI = 200e9 * 36.9e-6;
    const half = (M: number) => solved({ length: 10, width: 0.2, E: 200e9, I: 36.9e-6, H: 85e3, M, elements: 80, layers: [{ top: 0, law: { type: "springs", k: 14e6, growth: 0 } }] });
    const free = half(0);
    const M = free.slope[0] / free.head.leanM;
    const found = half(M);
    expect(EI).toBeCloseTo(7.38e6, -1);
    expect(found.slope[0]).toBeCloseTo(0, 9);
    expect(found.deflection[0] * 1e3).toBeCloseTo(5.04, 2);
    expect(Math.abs(found.moment[0]) / 1e3).toBeCloseTo(51.21, 1);
  });

  // Matlock and Reese: y = Ay H T³/EI + By M T²/EI at the head; exact solution, which the published table exceeds by 0.25 %.
  it.each([
    [2, 4.737, -3.418, 3.418, -3.213],
    [3, 2.727, -1.758, 1.758, -1.818],
    [4, 2.441, -1.621, 1.621, -1.751],
    [5, 2.431, -1.621, 1.621, -1.749],
    [10, 2.429, -1.619, 1.619, -1.747],
  ])("on growing springs, %d stiffness lengths long, has the coefficients %d, %d, %d, %d", (Z, Ay, As, By, Bs) => {
    const nh = 40;
    const T = (5.863e10 / nh) ** 0.2 * inch;
    const pier = { length: Z * T, layers: growing(nh), elements: 60 };
    const H = 1000 * lb;
    const M = 100_000 * poundInch;
    const push = solved({ ...pier, H, M: 0 });
    const moment = solved({ ...pier, H: 0, M });
    const EI = E * I;
    expect((push.deflection[0] * EI) / (H * T ** 3) / Ay).toBeCloseTo(1, 3);
    expect((push.slope[0] * EI) / (H * T ** 2) / As).toBeCloseTo(1, 3);
    expect((moment.deflection[0] * EI) / (M * T ** 2) / By).toBeCloseTo(1, 3);
    expect((moment.slope[0] * EI) / (M * T) / Bs).toBeCloseTo(1, 3);
    if (Z === 10) {
      expect(push.maxMoment / (H * T)).toBeCloseTo(0.772, 3);
      expect(push.maxMomentAt / T).toBeCloseTo(1.328, 1);
    }
  });

  // Das, Example 11.7: E 207 GPa, I 123e-6 m⁴, nh 12,000 kN/m³, 8 mm: 53.27 kN, by the coefficient 2.435; 0.3 %.
  it("moves 8 mm under 53.27 kN in Das's Example 11.7", () => {
    const found = solved({ length: 25, width: 0.254, E: 207e9, I: 123e-6, H: 53.27e3, M: 0, elements: 80, layers: [{ top: 0, law: { type: "springs", k: 0, growth: 12e6 } }] });
    expect(found.deflection[0] * 1e3).toBeGreaterThan(8 * 0.997);
    expect(found.deflection[0] * 1e3).toBeLessThan(8 * 1.003);
  });

  // Das, Example 12.7: drilled shaft, EI 22e6 x 0.049 kN·m², T 2.0797 m, 150 kN and 200 kN·m at the head; at a depth of T the moment is 396.4 kN·m by
  // the exact coefficients 0.725 and 0.851, 403 by the chart.
  it("has 396.4 kN·m at a depth of one stiffness length in Das's Example 12.7", () => {
    const T = 2.0797;
    const nh = (22e9 * 0.049) / T ** 5;
    const found = solved({ length: 10 * T, width: 1, E: 22e9, I: 0.049, H: 150e3, M: 200e3, elements: 100, layers: [{ top: 0, law: { type: "springs", k: 0, growth: nh } }] });
    const at = found.depth.findIndex((z) => Math.abs(z - T) < 1e-6);
    expect(found.moment[at] / 396.4e3).toBeCloseTo(1, 2);
  });

  // A rigid pier: 1,200 lb at 120 in, 84 in long, 24 in wide. Closed form.
  it.each([
    ["springs of 100 pci", even(2400), 0.0748299, 0.00163994],
    ["springs of 50 pci", even(1200), 0.14966, 0.00327988],
    ["springs that grow by 60 pci", growing(60), 0.148202, 0.00254524],
  ])("that is rigid turns on %s as in the closed form", (_, layers, y0, theta) => {
    const found = solved({ length: 84 * inch, E: 1e3 * E, H: 1200 * lb, M: 144000 * poundInch, layers });
    expect(found.deflection[0] / inch / y0).toBeCloseTo(1, 3);
    expect(-found.slope[0] / theta).toBeCloseTo(1, 3);
  });

  it("is held back by a slab with all that the push leaves over, and does not move there", () => {
    const found = solved({ length: 120 * inch, H: 1000 * lb, M: 120_000 * poundInch, held: true, layers: even(2400) });
    expect(found.deflection[0]).toBe(0);
    // The soil pushes the same way as the load, below the head about which it turns: the slab takes more than the push.
    expect(found.heldBy).toBeGreaterThan(1000 * lb);
    expect(Math.abs(found.shear.at(-1)!)).toBeLessThan(1e-6 * 1000 * lb);
  });

  it("moves farther with an axial force, as second order asks: by about 1/(1 - P/Pcr) of what the soil holds", () => {
    const of = (P: number) => solved({ length: 144 * inch, H: 1000 * lb, M: 0, P, layers: even(2400) }).deflection[0];
    const some = of(20_000 * lb) / of(0);
    expect(some).toBeGreaterThan(1);
    expect(of(40_000 * lb) / of(0) - 1).toBeGreaterThan(1.9 * (some - 1));
  });

  it("holds the ignored depth for nothing: the pier stands as one whose grade is lower", () => {
    const z = 2 * foot;
    const deep = solved({ length: 9 * foot, H: 1000 * lb, M: 0, surface: z, layers: growing(40) });
    const low = solved({ length: 7 * foot, H: 1000 * lb, M: 1000 * lb * z, layers: growing(40) });
    const at = deep.depth.findIndex((depth) => Math.abs(depth - z) < 1e-9);
    expect(deep.deflection[at] / low.deflection[0]).toBeCloseTo(1, 3);
    expect(deep.maxMoment / low.maxMoment).toBeCloseTo(1, 3);
  });

  it("gives nothing for a pier without size or a number that is none", () => {
    const args = { length: 2, width: 0.6, E, I, H: 1e3, M: 0, layers: even(2400) };
    for (const wrong of [{ length: 0 }, { width: -1 }, { H: Number.NaN }, { M: Number.POSITIVE_INFINITY }, { layers: [] }, { I: 0 }]) expect(solveBeamOnSprings({ ...args, ...wrong })).toBeUndefined();
  });
});

const sand: SoilLaw = { type: "sand", phi: 33 * degree, k: 60 * pci };
const clay: SoilLaw = { type: "clay", c: 500 * psf, eps50: 0.02 };

describe("A pier on p-y curves", () => {
  // 24 in, 120 in long, push 120 in above grade; recomputed by a separate solution on 240 elements: H lb, y0 in, Mmax lb·in.
  it.each([
    [1000, 0.05274, 138719],
    [2000, 0.10643, 277725],
    [4000, 0.220884, 557666],
    [6000, 0.35364, 841764],
  ])("in sand under %d lb moves %d in", (H, y0, Mmax) => {
    const found = solved({ length: 120 * inch, H: H * lb, M: 120 * H * poundInch, layers: [{ top: 0, law: sand, weight: 110 * pcf }] });
    expect(found.deflection[0] / inch / y0).toBeCloseTo(1, 3);
    expect(found.maxMoment / poundInch / Mmax).toBeCloseTo(1, 3);
    if (H === 4000) expect(found.maxMomentAt / inch).toBeCloseTo(30, 0);
  });

  it.each([
    [1000, 0.0564, 130765],
    [2000, 0.4332, 261761],
    [3000, 1.451, 392700],
  ])("in soft clay under %d lb moves %d in", (H, y0, Mmax) => {
    const found = solved({ length: 120 * inch, H: H * lb, M: 120 * H * poundInch, layers: [{ top: 0, law: clay, weight: 50 * pcf }] });
    expect(found.deflection[0] / inch / y0).toBeCloseTo(1, 2);
    expect(found.maxMoment / poundInch / Mmax).toBeCloseTo(1, 3);
  });

  it.each([
    ["sand", sand, 110],
    ["soft clay", clay, 50],
    ["weak rock", { type: "rock", q: 200 * psi, rqd: 50, strain: 2e-4 } as SoilLaw, 0],
  ])("in %s changes little from 24 elements to 60 and 240", (_, law, weight) => {
    const of = (elements: number) => solved({ length: 120 * inch, H: 3000 * lb, M: 360_000 * poundInch, elements, layers: [{ top: 0, law, weight: weight * pcf }] });
    const fine = of(240).deflection[0];
    expect(Math.abs(of(24).deflection[0] / fine - 1)).toBeLessThan(law.type === "rock" ? 0.02 : 2e-3);
    expect(Math.abs(of(60).deflection[0] / fine - 1)).toBeLessThan(law.type === "rock" ? 5e-3 : 3e-4);
  });

  it("says when the soil gives way", () => {
    const of = (H: number) => solved({ length: 120 * inch, H: H * lb, M: 120 * H * poundInch, layers: [{ top: 0, law: clay, weight: 50 * pcf }] }).givesWay;
    expect(of(2000)).toBe(false);
    expect(of(20_000)).toBe(true);
  });
});

const pi = fc.record({
  length: fc.double({ min: 1, max: 6, noNaN: true }),
  width: fc.double({ min: 0.3, max: 1.2, noNaN: true }),
  H: fc.double({ min: -2e4, max: 2e4, noNaN: true }),
  M: fc.double({ min: -4e4, max: 4e4, noNaN: true }),
  law: fc.constantFrom<SoilLaw>(sand, clay, { type: "springs", k: 5e6, growth: 3e6 }, { type: "rock", q: 1e6, rqd: 30, strain: 3e-4 }),
  below: fc.constantFrom<SoilLaw>(sand, clay, { type: "springs", k: 2e7, growth: 0 }),
  from: fc.double({ min: 0.3, max: 4, noNaN: true }),
  surface: fc.double({ min: 0, max: 0.6, noNaN: true }),
  water: fc.double({ min: 0, max: 5, noNaN: true }),
});
const argsOf = ({ law, below, from, ...rest }: (typeof pi extends fc.Arbitrary<infer T> ? T : never)): BeamArgs => ({
  E: 8e9,
  I: rest.width ** 4 / 21,
  ...rest,
  layers: [
    { top: 0, law, weight: 18e3 },
    { top: from, law: below, weight: 19e3 },
  ],
});

describe("Laws of a pier in soil", () => {
  it("leaves nothing out of balance at the toe, whatever the soil: statics within 1e-9 of the load", () => {
    fc.assert(
      fc.property(pi, (given) => {
        const found = solveBeamOnSprings(argsOf(given));
        if (!found) throw new Error("no answer");
        if (!found.givesWay) expect(found.residual).toBeLessThan(1e-9);
        expect([...found.deflection, ...found.moment, ...found.shear, found.maxMoment, found.maxShear].every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  it("is the same in either direction", () => {
    fc.assert(
      fc.property(pi, (given) => {
        const one = solveBeamOnSprings(argsOf(given))!;
        const other = solveBeamOnSprings(argsOf({ ...given, H: -given.H, M: -given.M }))!;
        if (!one.givesWay) expect(other.deflection[0]).toBeCloseTo(-one.deflection[0], 7);
      }),
      { numRuns: 200 },
    );
  });

  it("moves no less under a larger push and moment, which is what leaves smaller combinations untried", () => {
    fc.assert(
      fc.property(pi, fc.double({ min: 1, max: 2, noNaN: true }), fc.double({ min: 1, max: 2, noNaN: true }), fc.double({ min: 0, max: 2e4, noNaN: true }), (given, h, m, P) => {
        const args = argsOf({ ...given, H: Math.abs(given.H), M: Math.abs(given.M) });
        const less = solveBeamOnSprings(args)!;
        const more = solveBeamOnSprings({ ...args, H: args.H * h, M: args.M * m, P })!;
        if (more.givesWay) return;
        expect(less.givesWay).toBe(false);
        expect(more.deflection[0]).toBeGreaterThanOrEqual(less.deflection[0] * (1 - 1e-6) - 1e-12);
        expect(-more.slope[0]).toBeGreaterThanOrEqual(-less.slope[0] * (1 - 1e-6) - 1e-12);
      }),
      { numRuns: 300 },
    );
  });

  it.each([
    ["a push of 1.3 N, at which rounding is all that is left out of balance", { length: 1.1328129638719244, width: 0.566243811493081, H: 1.2658, M: 0, from: 0.7154656099917328, law: { ...sand, k: 16286828.251578806 }, below: { ...clay, c: 23940.12949016792 }, surface: 0, water: 0 }, 0, false],
    ["no push, under an axial force that topples it", { length: 1, width: 0.3, H: 0, M: 0, from: 0.3, law: sand, below: sand, surface: 0.5413596923341271, water: 0 }, 3e4, true],
  ] as const)("has an answer under %s", (_, given, P, givesWay) => {
    expect(solveBeamOnSprings({ ...argsOf(given), P })?.givesWay).toBe(givesWay);
  });

  it("has springs at its head that give the movement of a small load more", () => {
    const args = { length: 120 * inch, layers: [{ top: 0, law: sand, weight: 110 * pcf }] };
    const at = (H: number, M: number) => solved({ ...args, H, M });
    const base = at(8e3, 2e4);
    const step = 1;
    expect((at(8e3 + step, 2e4).deflection[0] - base.deflection[0]) / base.head.yH).toBeCloseTo(step, 2);
    expect((at(8e3, 2e4 + step).deflection[0] - base.deflection[0]) / base.head.yM).toBeCloseTo(step, 2);
    expect((base.slope[0] - at(8e3, 2e4 + step).slope[0]) / base.head.leanM).toBeCloseTo(step, 2);
  });

  it("is the rigid body where it is stubby", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 2e4, noNaN: true }), fc.double({ min: 0, max: 2e4, noNaN: true }), (H, M) => {
        fc.pre(H + M > 1);
        const found = solveBeamOnSprings({ length: 1.5, width: 1, E: 1e12, I: 0.05, H, M, layers: [{ top: 0, law: { type: "springs", k: 1e7, growth: 0 } }] })!;
        const { y0, lean } = rigidMovement({ spread: "even", length: 1.5, H, M }, 1e7);
        expect(found.deflection[0] / y0).toBeCloseTo(1, 4);
        expect(-found.slope[0] / lean).toBeCloseTo(1, 4);
      }),
    );
  });
});
