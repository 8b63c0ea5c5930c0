import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rigidMovement, solveRigidPier } from "../../server/src/mechanics/rigid-pier.js";
import { inch } from "../checks/given.js";
import { lb } from "../checks/ground.js";

const psi = lb / inch ** 2;
const pci = lb / inch ** 3;
// 1,200 lb at 120 in above grade on a pier 84 in long and 24 in wide.
const load = { length: 84 * inch, H: 1200 * lb, M: 144000 * lb * inch };

describe("A rigid pier in elastic soil", () => {
  // Closed form, recomputed: y0 in, lean rad.
  it.each([
    ["even", 100 * 24 * psi, 0.0748299, 0.00163994],
    ["even", 50 * 24 * psi, 0.14966, 0.00327988],
    ["growing", 60 * pci, 0.148202, 0.00254524],
  ] as const)("turns on %s springs of %d", (spread, stiffness, y0, theta) => {
    const { y0: y, lean } = rigidMovement({ spread, ...load }, stiffness);
    expect(y / inch / y0).toBeCloseTo(1, 5);
    expect(lean / theta).toBeCloseTo(1, 5);
  });

  it("turns about 45.6296 in on even springs, and has its largest moment of 148,230 lb·in at 7.259 in", () => {
    const found = solveRigidPier({ spread: "even", ...load });
    expect(found.pivot / inch).toBeCloseTo(45.6296, 3);
    expect(found.maxMoment / (lb * inch)).toBeCloseTo(148230.1, 0);
    expect(found.maxMomentAt / inch).toBeCloseTo(7.259, 3);
  });

  it("turns about L (18 H + 24 M/L)/(24 H + 36 M/L) on growing springs", () => {
    expect(solveRigidPier({ spread: "growing", ...load }).pivot / inch).toBeCloseTo((84 * (18 * 1200 + (24 * 144000) / 84)) / (24 * 1200 + (36 * 144000) / 84), 6);
  });

  it("has statics that close at the toe, and no shear or moment beyond its largest", () => {
    const number = fc.double({ min: -1e5, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom("even" as const, "growing" as const), fc.double({ min: 0.5, max: 8, noNaN: true }), number, number, (spread, length, H, M) => {
        const found = solveRigidPier({ spread, length, H, M });
        const size = Math.abs(H) + Math.abs(M) / length + 1e-9;
        expect(Math.abs(found.shear.at(-1)!)).toBeLessThan(1e-9 * size);
        expect(Math.abs(found.moment.at(-1)!)).toBeLessThan(1e-9 * size * length);
        for (const m of found.moment) expect(Math.abs(m)).toBeLessThanOrEqual(found.maxMoment * (1 + 1e-9) + 1e-9);
        for (const v of found.shear) expect(Math.abs(v)).toBeLessThanOrEqual(found.maxShear * (1 + 1e-9) + 1e-9);
      }),
    );
  });
});
