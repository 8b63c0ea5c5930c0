/** Wind of service: speeds by return period against the maps, and the demands made of it. */
import { describe, expect, it } from "vitest";
import { serviceRatio, serviceSpeed, servicePeriods, type ServicePeriod } from "../../server/src/actions/service.js";
import { plainCalc } from "../../server/src/formula/calc.js";
import { baseOf, mph, solved } from "./given.js";

describe("service wind speed", () => {
  // Speeds of most of the country in the maps of ASCE 7-16 commentary CC for 10, 25, 50 and 100 years beside 115 mph for 700 years (from memory).
  it.each<[ServicePeriod, number]>([
    ["10 years", 76],
    ["25 years", 84],
    ["50 years", 90],
    ["100 years", 96],
  ])("of %s beside 115 mph is near %s mph of the map", (period, map) => {
    const speed = serviceSpeed.value({ V: 115 * mph, T_s: servicePeriods[period], T_b: 700 }) / mph;
    expect(Math.abs(speed - map)).toBeLessThan(1.6);
  });

  it("by the formula: 115 (0.36 + 0.1 ln 120)/(0.36 + 0.1 ln 8400) = 115 (0.83875/1.26360) = 76.33 mph", () => {
    expect(serviceSpeed.value({ V: 115 * mph, T_s: 10, T_b: 700 }) / mph).toBeCloseTo(76.334, 2);
  });

  it("the basic speed of its own period is itself, and a longer period needs a smaller part of it", () => {
    expect(serviceSpeed.value({ V: 50, T_s: 100, T_b: 100 })).toBeCloseTo(50, 12);
    const part = (category: "I" | "II" | "III" | "IV") => serviceRatio("ASCE 7-22", 115 * mph, { period: "10 years", category }, plainCalc) ?? Number.NaN;
    expect(part("I")).toBeGreaterThan(part("II"));
    expect(part("III")).toBeGreaterThan(part("IV"));
    expect(part("II")).toBeCloseTo((76.334 / 115) ** 2, 4);
  });

  it("ASCE 7-10 has 1,700 years for category IV, later editions 3,000", () => {
    const of = (standard: "ASCE 7-10" | "ASCE 7-22") => serviceRatio(standard, 115 * mph, { period: "10 years", category: "IV" }, plainCalc) ?? Number.NaN;
    expect(of("ASCE 7-10")).toBeGreaterThan(of("ASCE 7-22"));
  });

  it("a stated speed goes before the period, and without a category there is none", () => {
    expect(serviceRatio("ASCE 7-22", 100, { speed: 60, period: "10 years", category: "II" }, plainCalc)).toBeCloseTo(0.36, 12);
    expect(serviceRatio("ASCE 7-22", 100, { period: "10 years" }, plainCalc)).toBeUndefined();
  });
});

describe("service demands", () => {
  const { columns } = solved({ site: { "service wind": "10 years" } });
  const k = ((0.36 + 0.1 * Math.log(120)) / (0.36 + 0.1 * Math.log(8400))) ** 2;

  it("are dead load and each pressure of the wind, scaled; the least force is not among them", () => {
    for (const column of columns) {
      const pressures = column.cases.filter(({ loadCase }) => loadCase.type === "W" && !loadCase.id.includes("minimum"));
      expect(column.service).toHaveLength(pressures.length);
      for (const { cases, base, level } of column.service) {
        expect(level).toBe("service");
        const [dead, wind] = cases.map(({ id }) => baseOf(column, id));
        expect(base.Mx).toBeCloseTo(dead.Mx + k * wind.Mx, 4);
        expect(base.P).toBeCloseTo(dead.P + k * wind.P, 4);
      }
    }
  });

  it("a cantilever with a pinned top sways by M h²/3EI of what its base feels", () => {
    const { columns: plain } = solved({ site: { "service wind": "10 years" }, roof: { dead: 0, live: 0 } });
    const E = 29000 * 6894757.293168361;
    for (const [i, column] of plain.entries()) {
      const height = (i < 2 ? 10 : 12) * 0.3048;
      const inertia = 39.5 * 0.0254 ** 4;
      for (const { sway, base } of column.service) {
        expect((sway?.y ?? 0) / ((base.Vy * height ** 3) / (3 * E * inertia))).toBeCloseTo(1, 1);
      }
    }
  });
});
