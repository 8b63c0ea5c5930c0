import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { solveBending } from "../../server/src/mechanics/column-strength.js";
import { pointAt, solveWallBending, wallCurve, wallForcesAt, wallStrength, type WallSection } from "../../server/src/mechanics/wall-section.js";
import { foot, inch, kip, ksi, psi } from "../checks/given.js";

const reduction = { pressed: 0.65, pulledFrom: 60 / 29000 + 0.003 };
const perFoot = inch ** 2 / foot;
const kipFootPerFoot = kip;

/** Areas in square inches per foot, places in inches from the fill face. */
const sectionOf = (t: number, layers: readonly (readonly [from: number, area: number, share?: number])[], fprime_c = 4000): WallSection => ({
  thickness: t * inch,
  layers: layers.map(([from, area, share = 1]) => ({ from: from * inch, area: area * perFoot, stress: share * 60 * ksi })),
  fprime_c: fprime_c * psi,
  f_y: 60 * ksi,
  E_s: 29000 * ksi,
});

const moment = (section: WallSection, N = 0, pulled: "fill" | "free" = "fill"): number => solveWallBending({ strength: wallStrength(section, reduction), pulled, N: (N * kip) / foot }).phiM_n / kipFootPerFoot;

const size = fc.double({ min: 8, max: 30, noNaN: true });
const steel = fc.double({ min: 0.1, max: 1.2, noNaN: true });
const axial = fc.double({ min: -10, max: 40, noNaN: true });

describe("A wall bent across its thickness", () => {
  it.each([
    // t, d, A_s in sq in per foot, f'c: a = A_s fy / (0.85 f'c 12), 0.9 A_s fy (d - a / 2) / 12.
    [12, 9.6875, 0.31, 4000, 13.20],
    [12, 10, 0.62, 4000, 26.63],
    [8, 4, 0.2, 3000, 3.424],
  ])("%s in thick with bars %s in deep of %s sq in a foot, concrete of %s psi, holds %s kip-ft a foot", (t, d, area, fprime_c, expected) => {
    const a = (area * 60) / (0.85 * (fprime_c / 1000) * 12);
    expect((0.9 * area * 60 * (d - a / 2)) / 12 / expected).toBeCloseTo(1, 3);
    expect(moment(sectionOf(t, [[t - d, area]], fprime_c)) / expected).toBeCloseTo(1, 3);
  });

  it("holds 0.9 A_s fy of pull alone; with bars in the middle a pull takes its part of them and leaves the rest on the arm of the block", () => {
    const pull = wallStrength(sectionOf(12, [[2.5, 0.31], [9.5, 0.31]]), reduction).pull;
    expect((pull * foot) / kip).toBeCloseTo(0.9 * 60 * 0.62, 6);
    // Bars in the middle alone hold 0.9 A_s fy less the pull, on the arm of the block.
    const middle = sectionOf(12, [[6, 0.62]]);
    const left = 0.9 * 60 * 0.62 - 10;
    const a = left / 0.9 / (0.85 * 4 * 12);
    expect(moment(middle, -10) / ((left * (6 - a / 2)) / 12)).toBeCloseTo(1, 3);
  });

  it("counts a bar no farther than it is developed: half the stress, half the strength but for the block", () => {
    const half = moment(sectionOf(12, [[2.5, 0.31, 0.5]]));
    expect(half / moment(sectionOf(12, [[2.5, 0.155]]))).toBeCloseTo(1, 3);
  });

  it("agrees with the general section of a column where its bars are alike at both faces", () => {
    fc.assert(fc.property(size, steel, axial, (t, area, N) => {
      const side = t / 2 - 2.5;
      const section = sectionOf(t, [[2.5, area], [t - 2.5, area]]);
      const bars = [-side, side].map((x) => ({ x: x * inch, y: 0 }));
      const column = { shape: "rectangle" as const, width: t * inch, length: foot, bars, barArea: area * inch ** 2, fprime_c: 4000 * psi, f_y: 60 * ksi, E_s: 29000 * ksi, share: 1 };
      const P = N * kip;
      if (N < -0.8 * 0.9 * 60 * 2 * area) return;
      const expected = solveBending({ section: column, reduction, P, toward: { x: 1, y: 0 } }).phiM_n / kip / foot;
      // Straight pieces of the curve lose a little where the factor changes fast.
      expect(moment(section, N) / expected).toBeGreaterThan(0.985);
      expect(moment(section, N) / expected).toBeLessThan(1.003);
    }), { numRuns: 60 });
  });

  it("is as strong with its faces exchanged", () => {
    fc.assert(fc.property(size, steel, steel, axial, (t, one, other, N) => {
      const there = sectionOf(t, [[2.5, one], [t - 2, other]]);
      const back = sectionOf(t, [[t - 2.5, one], [2, other]]);
      expect(moment(there, N, "fill")).toBeCloseTo(moment(back, N, "free"), 9);
    }), { numRuns: 60 });
  });

  it("is never weaker for more bars at the face that is pulled, nor for more thickness behind them", () => {
    fc.assert(fc.property(size, steel, fc.double({ min: 0.02, max: 0.5, noNaN: true }), fc.double({ min: -4, max: 10, noNaN: true }), (t, area, more, N) => {
      const at = (thick: number, a: number) => moment(sectionOf(thick, [[2.5, a], [thick - 2.5, 0.31]]), N);
      expect(at(t, area + more)).toBeGreaterThanOrEqual(at(t, area) * 0.9999);
      expect(at(t + 1, area)).toBeGreaterThanOrEqual(at(t, area) * 0.9999);
    }), { numRuns: 60 });
  });

  it("balances: block and bars sum to the axial force and the moment about the middle", () => {
    fc.assert(fc.property(size, steel, fc.double({ min: 0.02, max: 1.2, noNaN: true }), (t, area, share) => {
      const section = sectionOf(t, [[2.5, area], [t - 2.5, area / 2]]);
      const c = share * t * inch;
      const { P, M } = wallForcesAt(section, "fill", c);
      const a = Math.min(0.85 * c, t * inch);
      const block = 0.85 * 4000 * psi * a;
      const forces = [t - 2.5, 2.5].map((d, i) => {
        const strain = (0.003 * (c - d * inch)) / c;
        const f = Math.max(-60 * ksi, Math.min(60 * ksi, strain * 29000 * ksi));
        return { d: d * inch, F: section.layers[i].area * (f - (d * inch < a ? Math.min(0.85 * 4000 * psi, Math.max(f, 0)) : 0)) };
      });
      expect(P).toBeCloseTo(block + forces[0].F + forces[1].F, 3);
      expect(M).toBeCloseTo(block * ((t * inch) / 2 - a / 2) + forces.reduce((sum, { d, F }) => sum + F * ((t * inch) / 2 - d), 0), 3);
    }), { numRuns: 60 });
  });

  it("with bars at one face alone holds a pull on its middle by the face beside them pressed: T 3.5 / 6 presses, so that less than T 2.5 / 6 is left; and nothing at all without bars", () => {
    const left = (wallStrength(sectionOf(12, [[2.5, 0.31]]), reduction).pull * foot) / kip / (0.9 * 60 * 0.31);
    expect(left).toBeLessThan(2.5 / 6);
    expect(left).toBeGreaterThan(0.95 * (2.5 / 6));
    expect(moment(sectionOf(12, []))).toBeCloseTo(0, 2);
    expect(moment(sectionOf(12, [[2.5, 0.31]]), -30)).toBe(0);
  });

  it("has a curve whose axial force rises from pure tension to the limit for chance eccentricity", () => {
    fc.assert(fc.property(size, steel, steel, (t, one, other) => {
      const curve = wallCurve(sectionOf(t, [[2.5, one], [t - 2.5, other]]), reduction, "free");
      for (let i = 1; i < curve.length; i += 1) expect(curve[i].P).toBeGreaterThan(curve[i - 1].P);
      const area = (one + other) / 12;
      expect((curve[curve.length - 1].P * inch) / kip / (0.65 * 0.8 * (0.85 * 4 * (t - area) + 60 * area))).toBeCloseTo(1, 6);
      expect(pointAt(curve, curve[0].P)?.P).toBe(curve[0].P);
      expect(pointAt(curve, curve[curve.length - 1].P * 1.01)).toBeUndefined();
    }), { numRuns: 40 });
  });
});
