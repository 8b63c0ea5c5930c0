import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { footingSettlement, immediateSettlement, shearModulus } from "../../../server/src/checks/footing/settlement.js";
import { foot, inch, kip } from "../given.js";
import { allowable, psf, read, stepsFor, weigh } from "../ground.js";
import { pad } from "./pad.js";

const ksf = 1000 * psf;
const down = [{ factor: 1, type: "D" }] as const;
const on = (foundation: object = {}, ground: object = {}) => pad({ foundation: { width: 6 * foot, length: 6 * foot, "settlement limit": 1 * inch, ...foundation }, ground: { "elastic modulus": 200 * ksf, "poisson ratio": 0.3, ...ground } });

describe("Settlement of a pad", () => {
  it("is that of a rigid rectangle on an elastic half-space", () => {
    const N = stepsFor(footingSettlement, on(), allowable({ P: 30 * kip }, down)).values.get("N")! / kip;
    // G = 200/2.6 = 76.92 ksf; N 0.7 / (76.92 x 6 x 2.27).
    expect(weigh(footingSettlement, on(), allowable({ P: 30 * kip }, down)).demand / foot).toBeCloseTo((N * 0.7) / ((200 / 2.6) * 6 * 2.27), 6);
  });

  it("of a long pad counts its shape", () => {
    // 4 ft by 16 ft: 0.73 + 1.54 (1/4)^0.75 = 1.2745.
    const at = (b: number, c: number) => immediateSettlement.value({ N: 100 * kip, nu: 0.3, G: 100 * ksf, b: b * foot, c: c * foot }) / foot;
    expect(at(4, 16)).toBeCloseTo(70 / (100 * 16 * (0.73 + 1.54 * 0.25 ** 0.75)), 9);
    expect(at(16, 4)).toBeCloseTo(at(4, 16), 12);
  });

  it("of a square is within 1 % of that of the rigid circle of its area, N (1 - nu)/(4 G R)", () => {
    const G = shearModulus.value({ E: 200 * ksf, nu: 0.3 });
    const circle = (100 * kip * 0.7) / (4 * G * 6 * foot * Math.sqrt(1 / Math.PI));
    expect(Math.abs(immediateSettlement.value({ N: 100 * kip, nu: 0.3, G, b: 6 * foot, c: 6 * foot }) / circle - 1)).toBeLessThan(0.01);
  });

  it("grows with the load and falls with modulus and size, and a pad that is lifted does not settle", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 100, noNaN: true }), fc.double({ min: 1.05, max: 3, noNaN: true }), (P, k) => {
        const at = (p: number, E = 200, side = 6) => weigh(footingSettlement, on({ width: side * foot, length: side * foot, thickness: 6 * inch, depth: 6 * inch, "above grade": 0 * inch, pedestal: undefined }, { "elastic modulus": E * ksf }), allowable({ P: p * kip }, down)).demand;
        expect(at(P * k)).toBeGreaterThan(at(P));
        expect(at(P, 200 * k) * k).toBeCloseTo(at(P), 9);
        expect(at(50 * P, 200, 6 * k)).toBeLessThan(at(50 * P));
      }),
      { numRuns: 40 },
    );
    expect(weigh(footingSettlement, on(), allowable({ P: -300 * kip }, down)).demand).toBeCloseTo(0, 12);
  });

  it("is asked for by a limit, and names what it needs", () => {
    expect(footingSettlement.applies(on({ "settlement limit": undefined }))).toBe(false);
    expect(read(footingSettlement, on({}, { "elastic modulus": undefined, "poisson ratio": undefined })).missing).toEqual(["elastic modulus of the ground, from the report", "Poisson's ratio of the ground (`poisson ratio`)"]);
    expect(read(footingSettlement, on({}, { layers: [] })).blocks.join()).toMatch(/in layers/);
  });
});
