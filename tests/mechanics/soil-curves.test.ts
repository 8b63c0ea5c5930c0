import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reactionAt, sandCoefficients, soilCurve, stiffnessAt, type SoilLaw } from "../../server/src/mechanics/soil-curves.js";
import { inch } from "../checks/given.js";
import { degree, lb, pcf, psf } from "../checks/ground.js";

const pli = lb / inch;
const pci = lb / inch ** 3;
const psi = lb / inch ** 2;
const D = 24 * inch;

describe("p-y curves", () => {
  // Soft clay: c 500 psf, 50 pcf below water, eps50 0.02, y50 1.2 in; z in, pu, then p at 0.1, 0.3, 1.2, 4.8 and 9.6 in, lb/in. Formula recomputed.
  it.each([
    [0, 250, 54.6, 78.75, 125, 198.43, 250],
    [24, 308.33, 67.34, 97.12, 154.17, 244.72, 308.33],
    [60, 395.83, 86.45, 124.68, 197.92, 314.17, 395.83],
    [96, 483.33, 105.56, 152.24, 241.67, 383.62, 483.33],
  ])("of soft clay at %d in hold %d lb/in at most", (z, pu, ...p) => {
    const curve = soilCurve({ type: "clay", c: 500 * psf, eps50: 0.02 }, z * inch, z * inch, D, 50 * pcf * z * inch);
    expect(curve.ultimate / pli / pu).toBeCloseTo(1, 4);
    [0.1, 0.3, 1.2, 4.8, 9.6].forEach((y, i) => expect(reactionAt(curve, y * inch) / pli / p[i]).toBeCloseTo(1, 3));
  });

  it("of soft clay hold 9 c D below the depth where the wedge ends, 205.71 in here", () => {
    const at = (z: number) => soilCurve({ type: "clay", c: 500 * psf, eps50: 0.02 }, z * inch, z * inch, D, 50 * pcf * z * inch).ultimate / pli;
    expect(at(205.71)).toBeCloseTo(750, 1);
    expect(at(400)).toBeCloseTo(750, 6);
    expect(at(180)).toBeLessThan(750);
  });

  // Sand: 33°, 110 pcf, 60 pci; z in, pu·, A, p at 0.1, 0.5, 1.5 in. Formula recomputed.
  it("of sand have the coefficients of wedge and flow", () => {
    const { C1, C2, C3 } = sandCoefficients(33 * degree);
    expect([C1, C2, C3]).toEqual([expect.closeTo(2.49133, 5), expect.closeTo(3.09732, 5), expect.closeTo(41.7255, 3)]);
  });
  it.each([
    [12, 79.62, 2.6, 69.23, 194.62, 207],
    [24, 204.92, 2.2, 139.29, 415.31, 450.76],
    [60, 854.85, 1.0, 340.13, 829.87, 854.84],
    [96, 1915.85, 0.9, 555.49, 1606.31, 1724.11],
  ])("of sand at %d in hold %d lb/in times %d at most", (z, pus, A, ...p) => {
    const curve = soilCurve({ type: "sand", phi: 33 * degree, k: 60 * pci }, z * inch, z * inch, D, 110 * pcf * z * inch);
    expect(curve.ultimate / pli / (A * pus)).toBeCloseTo(1, 4);
    [0.1, 0.5, 1.5].forEach((y, i) => expect(reactionAt(curve, y * inch) / pli / p[i]).toBeCloseTo(1, 3));
  });
  it("of sand under cyclic load take 0.9 for the factor of depth", () => {
    const of = (cyclic: boolean) => soilCurve({ type: "sand", phi: 33 * degree, k: 60 * pci, cyclic }, 24 * inch, 0, D, 110 * pcf * 24 * inch).ultimate / pli;
    expect(of(true) / 204.92).toBeCloseTo(0.9, 4);
  });

  // Weak rock: pur = a q D (1 + 1.4 z/D) to 3 D and 5.2 a q D below, a = 1 - (2/3) RQD/100; p = (pur/2) (y/yrm)^0.25. By hand: a 2/3 at 50 %.
  it.each([
    [0, (2 / 3) * 200 * 24],
    [24, (2 / 3) * 200 * 24 * 2.4],
    [72, (2 / 3) * 200 * 24 * 5.2],
    [200, (2 / 3) * 200 * 24 * 5.2],
  ])("of weak rock %d in down hold %d lb/in at most, half of it at the strain constant times the width", (z, pur) => {
    const curve = soilCurve({ type: "rock", q: 200 * psi, rqd: 50, strain: 2e-4 }, z * inch, z * inch, D, 0);
    expect(curve.ultimate / pli).toBeCloseTo(pur, 6);
    expect(reactionAt(curve, 2e-4 * D) / pli).toBeCloseTo(pur / 2, 6);
    expect(reactionAt(curve, 16 * 2e-4 * D) / pli).toBeCloseTo(pur, 6);
    expect(reactionAt(curve, 1) / pli).toBeCloseTo(pur, 6);
  });

  const laws: readonly SoilLaw[] = [
    { type: "clay", c: 20e3, eps50: 0.01 },
    { type: "sand", phi: 0.6, k: 1e7 },
    { type: "rock", q: 2e6, rqd: 40, strain: 3e-4 },
    { type: "springs", k: 1e7, growth: 1e6 },
    { type: "none" },
  ];
  // At grade itself, or deep enough that a product of depth and movement is a number with all its digits.
  const depths = fc.oneof(fc.constant(0), fc.double({ min: 1e-9, max: 8, noNaN: true }));
  it("are odd, never fall, and rise by their stiffness", () => {
    fc.assert(
      fc.property(fc.constantFrom(...laws), depths, fc.double({ min: 1e-7, max: 0.5, noNaN: true }), (law, z, y) => {
        const curve = soilCurve(law, z, z, 0.6, 18e3 * z);
        const p = reactionAt(curve, y);
        expect(reactionAt(curve, -y) + p).toBe(0);
        expect(reactionAt(curve, 0)).toBe(0);
        const more = reactionAt(curve, y * 1.0001);
        expect(more).toBeGreaterThanOrEqual(p);
        const rise = stiffnessAt(curve, y * 1.00005) * y * 0.0001;
        // A corner of the curve may lie between the two.
        if (Math.abs(stiffnessAt(curve, y) - stiffnessAt(curve, y * 1.0001)) < 1e-3 * stiffnessAt(curve, y)) expect(Math.abs(more - p - rise)).toBeLessThanOrEqual(0.01 * rise + 1e-9 * p);
      }),
    );
  });
});
