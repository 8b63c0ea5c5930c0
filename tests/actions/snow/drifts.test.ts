/** Drifts, sliding and unbalanced snow; values by hand from ASCE 7-16 7.6.1, 7.7.1 and 7.9 and the drift height of each edition. */
import { describe, expect, it } from "vitest";
import type { Edition } from "../../../server/src/actions/edition.js";
import type { RoofPlane, TwoHalves } from "../../../server/src/actions/roof-plane.js";
import { densityOf, driftHeight } from "../../../server/src/actions/snow/drift-height.js";
import type { SnowSite } from "../../../server/src/actions/snow/editions.js";
import { driftedSnow, slidSnow, type HigherRoof } from "../../../server/src/actions/snow/higher-roof.js";
import { isUnbalanced, unbalancedSnow } from "../../../server/src/actions/snow/unbalanced.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import type { RoofLoad } from "../../../server/src/mechanics/rigid-roof.js";
import { foot, pound, psf } from "../given.js";

const pcf = pound / foot ** 3;

const site = (standard: Edition, groundSnow: number, more: Partial<SnowSite> = {}): SnowSite => ({
  standard,
  groundSnow: groundSnow * psf,
  terrain: "C",
  roofExposure: "partially exposed",
  riskCategory: "II",
  ...more,
});

describe("weight and height of drifted snow", () => {
  it.each([
    [30, 17.9],
    [10, 15.3],
    [123, 29.99],
    [200, 30],
  ])("snow of %f psf on the ground weighs %f pcf", (pg, weight) => {
    expect(densityOf(site("ASCE 7-16", pg), plainCalc) / pcf).toBeCloseTo(weight, 9);
  });

  it.each<[Edition, number, number, Partial<SnowSite>, number]>([
    // 0.43 * 50^(1/3) * 40^(1/4) - 1.5
    ["ASCE 7-16", 30, 50, {}, 2.484],
    ["ASCE 7-10", 30, 50, { riskCategory: "IV" }, 2.484],
    ["ASCE 7-16", 30, 50, { riskCategory: "IV" }, 2.721],
    // No less than 20 ft: 0.43 * 20^(1/3) * 60^(1/4) - 1.5
    ["ASCE 7-16", 50, 8, {}, 1.748],
    // 1.5 * sqrt(50^0.74 * 60^0.7 * 0.45^1.7 / 20.5)
    ["ASCE 7-22", 50, 60, { winterWind: 0.45 }, 2.995],
    ["ASCE 7-22", 50, 60, { winterWind: 0.3 }, 2.122],
  ])("%s, ground snow %f psf, %f ft of roof, %o: %f ft", (standard, pg, length, more, height) => {
    expect(Math.abs(driftHeight(site(standard, pg, more), length * foot, plainCalc) / foot - height)).toBeLessThan(0.002);
  });

  it("has no height where the winter wind parameter is not known", () => {
    expect(driftHeight(site("ASCE 7-22", 50), 60 * foot, plainCalc)).toBeNaN();
  });
});

const roof: RoofPlane = { shape: "monoslope", slope: 0.1, length: 30 * foot, width: 24 * foot, lowEdge: "south", meanHeight: 12 * foot };
const higher = (more: Partial<Record<keyof HigherRoof, number>> = {}, edge: HigherRoof["edge"] = "north"): HigherRoof => ({
  edge,
  above: (more.above ?? 6) * foot,
  upwind: (more.upwind ?? 50) * foot,
  sliding: (more.sliding ?? 0) * foot,
});

const inFeet = ({ x, y, Fz }: RoofLoad) => ({ x: x / foot, y: y / foot, down: -Fz / pound });

describe("a drift against a higher roof", () => {
  const at = site("ASCE 7-16", 30);

  it("is a triangle against the step: 44.46 psf over 9.94 ft, on 30 ft of edge, beside 25.2 psf of even snow", () => {
    const [even, drift] = driftedSnow(roof, at, false, higher(), plainCalc).map(inFeet);
    expect(even.down).toBeCloseTo(25.2 * 720, 3);
    expect(Math.abs(drift.down - 0.5 * 44.46 * 9.936 * 30)).toBeLessThan(8);
    expect(drift.x).toBeCloseTo(15, 6);
    expect(Math.abs(drift.y - (24 - 9.936 / 3))).toBeLessThan(0.01);
  });

  it("fills a low step and spreads further: step 2 ft above the even snow, 35.8 psf over 12.34 ft", () => {
    const [, drift] = driftedSnow(roof, at, false, higher({ above: 2 + 25.2 / 17.9 }), plainCalc).map(inFeet);
    expect(Math.abs(drift.down - 0.5 * 35.8 * 12.34 * 30)).toBeLessThan(10);
  });

  it("spreads no further than eight times the step", () => {
    const [, drift] = driftedSnow(roof, at, false, higher({ above: 1 + 25.2 / 17.9 }), plainCalc).map(inFeet);
    expect(Math.abs(drift.down - 0.5 * 17.9 * 8 * 30)).toBeLessThan(1);
  });

  it("is taken three quarters of the height for this roof where that is more: 10 ft of higher roof, 0.75 of 1.619 ft against 1.440", () => {
    // 0.43 * 20^(1/3) * 40^(1/4) - 1.5 = 1.435 ft for the higher roof, 0.43 * 60^(1/3) * 40^(1/4) - 1.5 = 2.734 ft for a lower one of 60 ft.
    const long: RoofPlane = { ...roof, width: 60 * foot };
    const [, drift] = driftedSnow(long, at, false, higher({ upwind: 10 }), plainCalc).map(inFeet);
    const height = 0.75 * 2.734;
    expect(Math.abs(drift.down - 0.5 * height * 17.9 * 4 * height * 30)).toBeLessThan(6);
  });

  it("does not form where the even snow fills the step", () => {
    expect(driftedSnow(roof, at, false, higher({ above: 1.5 }), plainCalc)).toHaveLength(1);
  });

  it("is cut off at the far edge of a narrow roof: 4 ft of 9.94 hold 44.46 and 26.56 psf", () => {
    const narrow: RoofPlane = { ...roof, width: 4 * foot };
    const [, drift] = driftedSnow(narrow, at, false, higher(), plainCalc).map(inFeet);
    expect(Math.abs(drift.down - ((44.46 + 26.56) / 2) * 4 * 30)).toBeLessThan(5);
    // Center of the trapezoid from the step: 4/3 (44.46 + 53.12) / 71.02.
    expect(Math.abs(4 - drift.y - 1.832)).toBeLessThan(0.003);
  });

  it.each([
    ["north", 15, 24 - 3.312],
    ["south", 15, 3.312],
    ["east", 30 - 3.312, 12],
    ["west", 3.312, 12],
  ] as const)("lies along the %s edge", (edge, x, y) => {
    const [, drift] = driftedSnow(roof, at, false, higher({}, edge), plainCalc).map(inFeet);
    expect(Math.abs(drift.x - x)).toBeLessThan(0.01);
    expect(Math.abs(drift.y - y)).toBeLessThan(0.01);
  });
});

describe("snow slid from a higher roof", () => {
  it("is 0.4 of its flat snow, spread over 15 ft: 20 ft of 25.2 psf bring 201.6 lb for each foot of edge", () => {
    const [even, slid] = slidSnow(roof, site("ASCE 7-16", 30), false, higher({ sliding: 20 }), plainCalc).map(inFeet);
    expect(even.down).toBeCloseTo(25.2 * 720, 3);
    expect(slid.down).toBeCloseTo(201.6 * 30, 3);
    expect(slid.y).toBeCloseTo(24 - 7.5, 9);
  });

  it("falls off a roof narrower than 15 ft in part", () => {
    const [, slid] = slidSnow({ ...roof, width: 10 * foot }, site("ASCE 7-16", 30), false, higher({ sliding: 20 }), plainCalc).map(inFeet);
    expect(slid.down).toBeCloseTo((201.6 * 30 * 10) / 15, 3);
    expect(slid.y).toBeCloseTo(5, 9);
  });
});

const pitched = (width: number, slope: number, ridge: "x" | "y" = "x"): TwoHalves => ({
  shape: "pitched",
  slope,
  length: (ridge === "x" ? 24 : width) * foot,
  width: (ridge === "x" ? width : 24) * foot,
  ridge,
  meanHeight: 12 * foot,
});

describe("unbalanced snow on a pitched roof", () => {
  it.each([
    [0.4 / 12, false],
    [0.5 / 12, true],
    [4 / 12, true],
    [7 / 12, true],
    [7.1 / 12, false],
  ])("is asked for from 1/2 in 12 to 7 in 12: %f", (slope, asked) => {
    expect(isUnbalanced(slope)).toBe(asked);
  });

  it.each<[Edition, Partial<SnowSite>, number]>([
    ["ASCE 7-16", {}, 30],
    ["ASCE 7-16", { riskCategory: "III" }, 33],
    ["ASCE 7-10", { riskCategory: "I" }, 24],
    ["ASCE 7-22", { riskCategory: "III" }, 30],
  ])("of simple rafters of 16 ft is all of the ground snow on the lee half: %s %o, %f psf", (standard, more, load) => {
    const [lee, ...others] = unbalancedSnow(pitched(32, 4 / 12), site(standard, 30, more), false, true, "north", plainCalc).map(inFeet);
    expect(others).toEqual([]);
    expect(lee.down).toBeCloseTo(load * 16 * 24, 3);
    expect(lee.y).toBeCloseTo(24, 9);
  });

  it.each([
    ["rafters longer than 20 ft, though simple", true],
    ["others", false],
  ])("of %s: 0.3 of the snow to windward; to lee all of it and 17.18 psf over 7.68 ft beside the ridge", (_, short) => {
    const [windward, lee, surcharge] = unbalancedSnow(pitched(50, 4 / 12), site("ASCE 7-16", 30), false, short, "north", plainCalc).map(inFeet);
    expect(windward.down).toBeCloseTo(0.3 * 25.2 * 25 * 24, 3);
    expect(windward.y).toBeCloseTo(12.5, 9);
    expect(lee.down).toBeCloseTo(25.2 * 25 * 24, 3);
    expect(Math.abs(surcharge.down - 17.18 * 7.677 * 24)).toBeLessThan(6);
    expect(Math.abs(surcharge.y - (25 + 7.677 / 2))).toBeLessThan(0.01);
  });

  it.each([
    ["x", "south", 12, 12.5],
    ["y", "east", 37.5, 12],
    ["y", "west", 12.5, 12],
  ] as const)("with the ridge along %s lies on the half blown to, %s", (ridge, lee, x, y) => {
    const [, half] = unbalancedSnow(pitched(50, 4 / 12, ridge), site("ASCE 7-16", 30), false, false, lee, plainCalc).map(inFeet);
    expect([half.x, half.y]).toEqual([x, y].map((value) => expect.closeTo(value, 9)));
  });

  it("goes no further than the eave", () => {
    const [, , surcharge] = unbalancedSnow(pitched(8, 0.5 / 12), site("ASCE 7-16", 60), false, false, "north", plainCalc).map(inFeet);
    expect(surcharge.y).toBeCloseTo(6, 9);
  });
});
