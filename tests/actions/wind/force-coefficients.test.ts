/** Source: ASCE 7-22 Figures 29.3-1, 29.4-1 and 29.4-2, as BNBC 2020 Figures 6.2.20 to 6.2.22 print them; interpolation by hand. */
import { describe, expect, it } from "vitest";
import { frameCoefficient, panelCoefficient, partlySolid, postCoefficient, relativeDiameter, windwardEndCoefficients } from "../../../server/src/actions/wind/force-coefficients.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, psf } from "../given.js";

describe("posts", () => {
  it.each([
    ["square, wind on the face", [1.3, 1.4, 2.0]],
    ["round, moderately smooth", [0.5, 0.6, 0.7]],
    ["round, small or slow", [0.7, 0.8, 1.2]],
  ] as const)("%s, at h/D of 1, 7 and 25", (surface, expected) => {
    expect([1, 7, 25].map((r) => postCoefficient(surface, r, plainCalc))).toEqual(expected);
  });

  it.each([
    [22, 1.9],
    [4, 1.35],
    [40, 2.0],
    [0.5, 1.3],
  ])("square at h/D of %f: %f", (r, expected) => {
    expect(postCoefficient("square, wind on the face", r, plainCalc)).toBeCloseTo(expected, 9);
  });

  it.each([
    [6, 3.16],
    [4, 2.11],
  ])("a diameter of %d in at 40 psf has a relative diameter of %f", (inches, expected) => {
    expect(relativeDiameter.value({ D: (inches / 12) * foot, q_d: 40 * psf })).toBeCloseTo(expected, 2);
  });
});

describe("open frames, by solidity: flat, round up to 2.5, round beyond", () => {
  it.each([
    [0.05, 2.0, 1.2, 0.8],
    // One-bay carport of a permit record to ASCE 7-16: solidity 0.153, flat members, C_f 1.8.
    [0.153, 1.8, 1.3, 0.9],
    [0.3, 1.6, 1.5, 1.1],
    [0.7, 1.6, 1.5, 1.1],
  ])("%f", (solidity, flat, small, large) => {
    expect(frameCoefficient(solidity, undefined)).toBe(flat);
    expect(frameCoefficient(solidity, 2.5)).toBe(small);
    expect(frameCoefficient(solidity, 2.6)).toBe(large);
  });
});

describe("solid panels, by B/s and s/h", () => {
  it.each([
    [0.05, 1, 1.8],
    [1, 1, 1.45],
    [45, 1, 1.3],
    [2, 0.9, 1.5],
    [10, 0.7, 1.55],
    [5, 0.5, 1.7],
    [0.2, 0.3, 1.85],
    [20, 0.2, 1.9],
    [4, 0.16, 1.85],
    // 3 ft square at 20 ft: s/h of 0.15 is read as 0.16.
    [1, 0.15, 1.8],
    // Beyond the ends of the table.
    [100, 1, 1.3],
  ])("%f and %f: %f", (B_over_s, s_over_h, expected) => {
    expect(panelCoefficient(B_over_s, s_over_h, plainCalc)).toBeCloseTo(expected, 9);
  });

  it.each([
    // Half way between 2 (1.40) and 4 (1.35).
    [3, 1, 1.375],
    // Half way between s/h of 0.9 (1.55) and 1 (1.45).
    [1, 0.95, 1.5],
    // Both: 1.475 at 0.9, 1.375 at 1.
    [3, 0.95, 1.425],
  ])("interpolates at %f and %f: %f", (B_over_s, s_over_h, expected) => {
    expect(panelCoefficient(B_over_s, s_over_h, plainCalc)).toBeCloseTo(expected, 9);
  });

  it("with a fifth open has 0.9106 of it", () => {
    expect(partlySolid.value({ epsilon: 0.8 })).toBeCloseTo(1 - 0.2 ** 1.5, 12);
    expect(partlySolid.value({ epsilon: 0.8 })).toBeCloseTo(0.9106, 4);
  });
});

/** Case C of Figure 29.3-1: the region next to the windward end is in BNBC 2020 Figure 6.2.20, the others are from memory. */
describe("a long panel in oblique wind", () => {
  it.each([
    [2, [2.25, 1.5]],
    [3, [2.6, 1.7, 1.15]],
    [4, [2.9, 1.9, 1.3, 1.1]],
    [5, [3.1, 2, 1.45, 1.05, 1.05]],
    [6, [3.3, 2.15, 1.55, 1.05, 1.05, 1.05]],
    [7, [3.4, 2.25, 1.65, 1.05, 1.05, 1.05]],
    [8, [3.55, 2.3, 1.7, 1.05, 1.05, 1.05]],
    [9, [3.65, 2.35, 1.75, 1, 1, 1]],
    [10, [3.75, 2.45, 1.85, 0.95, 0.95, 0.95]],
    [13, [4, 2.6, 2, 1.5, 1.35, 0.9, 0.55]],
    [45, [4.3, 2.55, 1.95, 1.85, 1.85, 1.1, 0.55]],
  ])("of %d times its height has the coefficients %j", (r, expected) => {
    const steps = windwardEndCoefficients(r, plainCalc);
    expect(steps.slice(0, expected.length).map(({ value }) => value)).toEqual(expected);
    expect(steps.map(({ to }) => to)).toEqual([1, 2, 3, 4, 5, 10, Number.POSITIVE_INFINITY]);
  });

  it("half way between two lengths has the mean", () => {
    expect(windwardEndCoefficients(11.5, plainCalc)[0].value).toBeCloseTo(3.875, 9);
    expect(windwardEndCoefficients(60, plainCalc)[0].value).toBe(4.3);
  });
});
