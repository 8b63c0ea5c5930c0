/**
 * Seismic base shear. The first case is a one-bay cantilevered canopy of a public building permit (ASCE 7-16, 2022): R 1.25, 8 ft, SDS 1.110,
 * SD1 0.594, category D, 1426 lb, 1646.2 lb sideways with a redundancy factor of 1.3. The others by hand from 12.8.1.1.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coefficientAt, earthquakeOn, period, periodOfMomentFrame, type SeismicSite } from "../../../server/src/actions/seismic/coefficient.js";
import { seismicSystemOf, seismicSystems, type SeismicSystem } from "../../../server/src/catalog/seismic-systems.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, pound } from "../given.js";

const system = (name: string): SeismicSystem => seismicSystemOf(name) as SeismicSystem;

const site = (more: Partial<SeismicSite> = {}): SeismicSite => ({
  standard: "ASCE 7-16",
  S_DS: 1.11,
  S_D1: 0.594,
  S_1: 0.5,
  riskCategory: "II",
  system: system("ordinary steel cantilevered columns"),
  redundancy: 1.3,
  ...more,
});

describe("the published canopy", () => {
  it("has a period of 0.0951 s", () => {
    expect(period.value({ h_n: 8 * foot })).toBeCloseTo(0.0951, 4);
  });

  it("has a coefficient of 0.888: neither the cap of 4.995 nor the least of 0.0488 governs", () => {
    expect(coefficientAt(8 * foot, site(), plainCalc)).toBeCloseTo(0.888, 9);
  });

  it("is pushed sideways with 1646.2 lb", () => {
    expect(earthquakeOn(1426 * pound, 8 * foot, site(), plainCalc) / pound).toBeCloseTo(1646.2, 1);
  });
});

describe("the coefficient", () => {
  it.each<[string, Partial<SeismicSite>, number, number]>([
    // 1.0 / 2.5
    ["special columns", { S_DS: 1, system: system("special steel cantilevered columns") }, 10, 0.4],
    // 1.0 / (1.25 / 1.5)
    ["risk category IV", { S_DS: 1, riskCategory: "IV" }, 10, 1.2],
    ["risk category III", { S_DS: 1, riskCategory: "III" }, 10, 1],
    // T = 0.02 * 40^0.75 = 0.3181 s; cap 0.2 / (0.3181 * 1.25) = 0.5030
    ["the cap of a long period", { S_DS: 1, S_D1: 0.2 }, 40, 0.503],
    // T = 0.028 * 12^0.8 = 0.2044 s; cap 0.1 / (0.2044 * 3.5) = 0.1398, S_DS / R = 0.2857
    ["the cap of a moment frame", { S_DS: 1, S_D1: 0.1, system: system("ordinary steel moment frames") }, 12, 0.1398],
    ["the least of a weak place", { S_DS: 0.05, system: system("special steel moment frames") }, 10, 0.01],
    // 0.044 * 1.0 against a cap of 0.001 / (0.02 * 10^0.75 * 8)
    ["the least by acceleration", { S_DS: 1, S_D1: 0.001, system: system("special steel moment frames") }, 10, 0.044],
    // 0.5 * 0.9 / 8 against 0.4 / 8
    ["the least near a great fault", { S_DS: 0.4, S_1: 0.9, system: system("special steel moment frames") }, 10, 0.05625],
    ["no such least below 0.6", { S_DS: 0.4, S_1: 0.59, system: system("special steel moment frames") }, 10, 0.05],
  ])("of %s", (_, more, height, expected) => {
    expect(Math.abs(coefficientAt(height * foot, site(more), plainCalc) - expected)).toBeLessThan(1e-4);
  });

  it("of moment frames follows their longer period", () => {
    expect(periodOfMomentFrame.value({ h_n: 12 * foot })).toBeCloseTo(0.2044, 4);
  });
});

describe("the sideways load", () => {
  it.each<[string, Partial<SeismicSite>, number]>([
    // The larger of redundancy and overstrength of cantilevered columns, whose foundation and anchors take the overstrength.
    ["cantilevered columns in category B or C", { redundancy: 1 }, 1.25],
    ["cantilevered columns in category D", { redundancy: 1.3 }, 1.3],
    ["timber frames", { redundancy: 1, system: system("cantilevered timber frames") }, 1.5],
    ["braced frames", { redundancy: 1.3, system: system("ordinary steel braced frames") }, 1.3],
  ])("of %s", (_, more, factor) => {
    const of = site(more);
    expect(earthquakeOn(1000, 3, of, plainCalc)).toBeCloseTo(factor * 1000 * coefficientAt(3, of, plainCalc), 6);
  });

  it("grows with the weight in proportion", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e6, noNaN: true }), fc.constantFrom(...seismicSystems), (weight, of) => {
        const one = site({ system: of });
        expect(earthquakeOn(2 * weight, 4, one, plainCalc) / earthquakeOn(weight, 4, one, plainCalc)).toBeCloseTo(2, 9);
      }),
    );
  });
});

describe("the systems", () => {
  // ASCE 7-16 Table 12.2-1 G, typed from memory: R, overstrength, limits in B to F.
  it.each([
    ["special steel cantilevered columns", 2.5, 1.25, 35, 35],
    ["ordinary steel cantilevered columns", 1.25, 1.25, 35, "not permitted"],
    ["special concrete cantilevered columns", 2.5, 1.25, 35, 35],
    ["intermediate concrete cantilevered columns", 1.5, 1.25, 35, "not permitted"],
    ["ordinary concrete cantilevered columns", 1, 1.25, "not permitted", "not permitted"],
    ["cantilevered timber frames", 1.5, 1.5, 35, 35],
  ] as const)("%s", (name, R, overstrength, inC, inD) => {
    const row = system(name);
    const feet = (category: "C" | "D") => {
      const limit = row.limit[category];
      return typeof limit === "string" ? limit : limit.feet;
    };
    expect([row.R, row.overstrength, feet("C"), feet("D"), row.cantilevered]).toEqual([R, overstrength, inC, inD, true]);
  });

  it("are each once, with a source", () => {
    expect(new Set(seismicSystems.map(({ name }) => name)).size).toBe(seismicSystems.length);
    for (const { source } of seismicSystems) expect(source).toContain("12.2-1");
  });
});
