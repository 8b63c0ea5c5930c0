/** Roof live load by ASCE 7 4.8.2 (7-10: 4.8.1): rows worked by hand from Lr = Lo R1 R2 with 12 psf <= Lr <= 20 psf. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { areaReduction, roofLive, roofLiveLoad, slopeReduction } from "../../../server/src/actions/gravity/roof-live.js";
import type { RoofPlane } from "../../../server/src/actions/roof-plane.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { baseOf, foot, pound, psf, solved, totalOf } from "../given.js";

const squareFoot = foot ** 2;

const onArea = (area: number, rise: number, live = 20): number => {
  const plane: RoofPlane = { shape: "monoslope", slope: rise / 12, length: 100 * foot, width: (area / 100) * foot, lowEdge: "south", meanHeight: 12 * foot };
  return roofLiveLoad(plane, live * psf, 1, plainCalc) / psf;
};

describe("reduction by area and slope", () => {
  it.each([
    // tributary area sq ft, rise in 12, psf
    [150, 2, 20],
    [400, 2, 16],
    [700, 2, 12],
    [400, 8, 12.8],
    [100, 12, 12],
    [300, 4, 18],
    [200, 8, 16],
  ])("of %f sq ft at %f in 12 leaves %f psf", (area, rise, load) => {
    expect(onArea(area, rise)).toBeCloseTo(load, 6);
  });

  it.each([
    [200, 1],
    [200.0001, 1],
    [400, 0.8],
    [600, 0.6],
    [5000, 0.6],
  ])("R1 of %f sq ft is %f", (area, R_1) => {
    expect(areaReduction.value({ A_t: area * squareFoot })).toBeCloseTo(R_1, 6);
  });

  it.each([
    [4, 1],
    [6, 0.9],
    [12, 0.6],
    [18, 0.6],
  ])("R2 of %f in 12 is %f", (rise, R_2) => {
    expect(slopeReduction.value({ s: rise / 12 })).toBeCloseTo(R_2, 9);
  });

  it.each([
    ["an awning of fabric", 5, 700, 5],
    ["a roof people gather on", 100, 700, 100],
  ])("leaves the load of %s as it is", (_, live, area, load) => {
    expect(onArea(area, 2, live)).toBeCloseTo(load, 6);
  });

  it("never gives more than the usual load nor less than 12 psf", () => {
    const ratio = fc.double({ min: 0.6, max: 1, noNaN: true });
    fc.assert(
      fc.property(ratio, ratio, (R_1, R_2) => {
        const load = roofLive.value({ L_o: 20 * psf, R_1, R_2 }) / psf;
        expect(load).toBeGreaterThanOrEqual(12 - 1e-9);
        expect(load).toBeLessThanOrEqual(20 + 1e-9);
      }),
    );
  });
});

describe("roof live load on four columns", () => {
  // 24 ft by 20 ft on four columns: 120 sq ft each, no reduction.
  const { actions, columns } = solved();

  it("is 20 psf on plan, 9600 lb, and reaches the bases whole", () => {
    expect(totalOf(actions, "roof-live").P / pound).toBeCloseTo(9600, 6);
    const sum = columns.reduce((total, column) => total + baseOf(column, "roof-live").P, 0);
    expect(sum / pound).toBeCloseTo(9600, 5);
  });

  it("of 48 ft by 40 ft is reduced for the 480 sq ft of a column: R1 0.72, 14.4 psf", () => {
    const lines = [
      { name: "south", places: [{ x: 6, y: 6 }, { x: 42, y: 6 }], fields: { height: 11 * foot } },
      { name: "north", places: [{ x: 6, y: 34 }, { x: 42, y: 34 }], fields: { height: 11 * foot } },
    ];
    const { actions: large } = solved({ roof: { length: 48 * foot, width: 40 * foot, slope: 0.1, "mean height": 14 * foot }, lines });
    expect(totalOf(large, "roof-live").P / (48 * 40 * pound)).toBeCloseTo(14.4, 6);
  });

  it("is combined with dead load and with wind", () => {
    const labels = columns[0].strength.map(({ combination }) => combination.label);
    for (const label of ["1.2D + 1.6Lr", "1.2D + 1.6Lr + 0.5W", "1.2D + 1.0W + 0.5Lr"]) expect(labels).toContain(label);
  });

  it("shows area and factors", () => {
    const steps = actions.derivations().find(({ title }) => title === "roof live load")?.steps ?? [];
    const value = (symbol: string) => steps.flatMap((step) => (step.type === "formula" && step.formula.result === symbol ? [step.value] : []))[0];
    expect(value("A_t") / squareFoot).toBeCloseTo(120, 2);
    expect([value("R_1"), value("R_2")]).toEqual([1, 1]);
  });
});
