/** Flat, least and sloped snow and rain on snow by edition; values by hand from ASCE 7-16 and 7-22 chapter 7 and 7-10 chapter 7. */
import { describe, expect, it } from "vitest";
import type { Edition } from "../../../server/src/actions/edition.js";
import type { RoofPlane } from "../../../server/src/actions/roof-plane.js";
import { flatSnow, leastOf, type RiskCategory, type RoofExposure, type SnowSite, type Terrain } from "../../../server/src/actions/snow/editions.js";
import { evenSnow, evenSnowWithRain, leastOnRoof } from "../../../server/src/actions/snow/sloped.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, psf } from "../given.js";

const site = (standard: Edition, groundSnow: number, more: Partial<SnowSite> = {}): SnowSite => ({
  standard,
  groundSnow: groundSnow * psf,
  terrain: "C",
  roofExposure: "partially exposed",
  riskCategory: "II",
  ...more,
});

const mono = (degrees: number, along = 20): RoofPlane => ({
  shape: "monoslope",
  slope: Math.tan((degrees * Math.PI) / 180),
  length: 30 * foot,
  width: along * foot,
  lowEdge: "south",
  meanHeight: 12 * foot,
});

describe("flat roof snow of an open structure", () => {
  it.each<[Edition, number, Partial<SnowSite>, number]>([
    // 0.7 * 1.0 * 1.2 * 50
    ["ASCE 7-22", 50, {}, 42],
    ["ASCE 7-22", 50, { riskCategory: "IV" }, 42],
    ["ASCE 7-16", 30, {}, 25.2],
    // 0.7 * 1.0 * 1.2 * 1.1 * 30
    ["ASCE 7-16", 30, { riskCategory: "III" }, 27.72],
    ["ASCE 7-16", 30, { riskCategory: "I" }, 20.16],
    ["ASCE 7-10", 30, { riskCategory: "IV" }, 30.24],
  ])("%s, ground snow %f psf, %o: %f psf", (standard, pg, more, expected) => {
    expect(flatSnow(site(standard, pg, more), plainCalc) / psf).toBeCloseTo(expected, 9);
  });

  it.each<[Terrain, RoofExposure, number]>([
    ["B", "fully exposed", 0.9],
    ["B", "partially exposed", 1],
    ["B", "sheltered", 1.2],
    ["C", "fully exposed", 0.9],
    ["C", "partially exposed", 1],
    ["C", "sheltered", 1.1],
    ["D", "fully exposed", 0.8],
    ["D", "partially exposed", 0.9],
    ["D", "sheltered", 1],
  ])("Ce of exposure %s, %s, is %f", (terrain, roofExposure, C_e) => {
    expect(flatSnow(site("ASCE 7-16", 10, { terrain, roofExposure }), plainCalc) / psf).toBeCloseTo(0.7 * 1.2 * 10 * C_e, 9);
  });
});

describe("least snow of a low slope", () => {
  it.each<[Edition, RiskCategory, number, number]>([
    ["ASCE 7-16", "II", 15, 15],
    ["ASCE 7-16", "II", 50, 20],
    ["ASCE 7-16", "III", 15, 16.5],
    ["ASCE 7-10", "IV", 50, 24],
    ["ASCE 7-22", "I", 60, 25],
    ["ASCE 7-22", "II", 60, 30],
    ["ASCE 7-22", "III", 60, 35],
    ["ASCE 7-22", "IV", 60, 40],
    ["ASCE 7-22", "IV", 22, 22],
  ])("%s, risk category %s, ground snow %f psf: %f psf", (standard, riskCategory, pg, expected) => {
    expect(leastOf(site(standard, pg, { riskCategory }), plainCalc) / psf).toBeCloseTo(expected, 9);
  });

  it.each([
    [14.9, true],
    [15.1, false],
  ])("is asked for below 15 degrees: %f", (degrees, asked) => {
    expect(leastOnRoof(mono(degrees), site("ASCE 7-16", 30), plainCalc) !== undefined).toBe(asked);
  });
});

describe("the slope of a cold roof", () => {
  it.each([
    // degrees, slippery, Cs: from 15 degrees down to 0 at 70, or from 45
    [10, true, 1],
    [15, true, 1],
    [30, true, 40 / 55],
    [30, false, 1],
    [45, false, 1],
    [60, false, 10 / 25],
    [60, true, 10 / 55],
    [71, false, 0],
  ])("%f degrees, slippery %s, leaves %f", (degrees, slippery, C_s) => {
    expect(evenSnow(mono(degrees), site("ASCE 7-16", 30), slippery, plainCalc) / psf).toBeCloseTo(25.2 * C_s, 6);
  });

  it("takes nothing off a trough", () => {
    const trough: RoofPlane = { shape: "troughed", slope: 1, length: 30 * foot, width: 20 * foot, ridge: "x", meanHeight: 12 * foot };
    expect(evenSnow(trough, site("ASCE 7-16", 30), true, plainCalc) / psf).toBeCloseTo(25.2, 9);
  });
});

describe("rain on snow", () => {
  it.each<[string, Edition, number, number, number, number]>([
    // edition, pg, slope in degrees, plan length ft, psf: 0.84 pg and 5 or 8 psf where degrees < W/50
    ["a long flat roof", "ASCE 7-16", 20, 1.9, 100, 16.8 + 5],
    ["a shorter one", "ASCE 7-16", 20, 2.1, 100, 16.8],
    ["more ground snow", "ASCE 7-16", 21, 1.9, 100, 17.64],
    ["the first edition", "ASCE 7-10", 20, 1.9, 100, 16.8 + 5],
    ["the strength level", "ASCE 7-22", 30, 1.9, 100, 25.2 + 8],
    ["its limit by risk category", "ASCE 7-22", 31, 1.9, 100, 26.04],
  ])("on %s", (_, standard, pg, degrees, along, expected) => {
    expect(evenSnowWithRain(mono(degrees, along), site(standard, pg), false, plainCalc) / psf).toBeCloseTo(expected, 6);
  });
});
