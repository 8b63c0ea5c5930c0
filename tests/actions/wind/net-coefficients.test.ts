/** Source: ASCE 7-22 Figures 27.3-4 and 27.3-7; the same values stand in BNBC 2020 Figure 6.2.18. */
import { describe, expect, it } from "vitest";
import type { Flow, PressureCase, RoofShape } from "../../../server/src/actions/wind/free-roof-tables.js";
import { figureFor, interpolatedCoefficient, zonesOf, type Direction } from "../../../server/src/actions/wind/net-coefficients.js";
import { plainCalc, recordingCalc } from "../../../server/src/formula/calc.js";
import { foot } from "../given.js";

const slopeOf = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

const direction = (sense: Direction["sense"], degrees: number, h = 12, along = 20, shape: RoofShape = "monoslope"): Direction => ({
  standard: "ASCE 7-22",
  shape,
  sense,
  slope: slopeOf(degrees),
  meanHeight: h * foot,
  along: along * foot,
});

const coefficients = (of: Direction, flow: Flow, pressureCase: PressureCase): number[] =>
  zonesOf(figureFor(of, plainCalc), of, flow, pressureCase, plainCalc).map(({ C_N }) => C_N);

describe("rows of Figure 27.3-4", () => {
  it.each([
    ["high edge", 0, "A", [1.2, 0.3], [-0.5, -1.2]],
    ["high edge", 0, "B", [-1.1, -0.1], [-1.1, -0.6]],
    ["high edge", 7.5, "A", [-0.6, -1.0], [-1.0, -1.5]],
    ["high edge", 7.5, "B", [-1.4, 0.0], [-1.7, -0.8]],
    ["high edge", 15, "A", [-0.9, -1.3], [-1.1, -1.5]],
    ["high edge", 15, "B", [-1.9, 0.0], [-2.1, -0.6]],
    ["high edge", 22.5, "A", [-1.5, -1.6], [-1.5, -1.7]],
    ["high edge", 22.5, "B", [-2.4, -0.3], [-2.3, -0.9]],
    ["high edge", 30, "A", [-1.8, -1.8], [-1.5, -1.8]],
    ["high edge", 30, "B", [-2.5, -0.5], [-2.3, -1.1]],
    ["high edge", 37.5, "A", [-1.8, -1.8], [-1.5, -1.8]],
    ["high edge", 37.5, "B", [-2.4, -0.6], [-2.2, -1.1]],
    ["high edge", 45, "A", [-1.6, -1.8], [-1.3, -1.8]],
    ["high edge", 45, "B", [-2.3, -0.7], [-1.9, -1.2]],
    ["low edge", 0, "A", [1.2, 0.3], [-0.5, -1.2]],
    ["low edge", 0, "B", [-1.1, -0.1], [-1.1, -0.6]],
    ["low edge", 7.5, "A", [0.9, 1.5], [-0.2, -1.2]],
    ["low edge", 7.5, "B", [1.6, 0.3], [0.8, -0.3]],
    ["low edge", 15, "A", [1.3, 1.6], [0.4, -1.1]],
    ["low edge", 15, "B", [1.8, 0.6], [1.2, -0.3]],
    ["low edge", 22.5, "A", [1.7, 1.8], [0.5, -1.0]],
    ["low edge", 22.5, "B", [2.2, 0.7], [1.3, 0.0]],
    ["low edge", 30, "A", [2.1, 2.1], [0.6, -1.0]],
    ["low edge", 30, "B", [2.6, 1.0], [1.6, 0.1]],
    ["low edge", 37.5, "A", [2.1, 2.2], [0.7, -0.9]],
    ["low edge", 37.5, "B", [2.7, 1.1], [1.9, 0.3]],
    ["low edge", 45, "A", [2.2, 2.5], [0.8, -0.9]],
    ["low edge", 45, "B", [2.6, 1.4], [2.1, 0.4]],
  ] as const)("wind onto the %s at %f degrees, case %s", (sense, degrees, pressureCase, clear, obstructed) => {
    const close = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 9));
    expect(coefficients(direction(sense, degrees), "clear", pressureCase)).toEqual(close(clear));
    expect(coefficients(direction(sense, degrees), "obstructed", pressureCase)).toEqual(close(obstructed));
  });

  it.each([
    // Half way between the rows of 7.5 and 15 degrees, and a third of the way from 15 to 22.5.
    ["high edge", 11.25, "clear", "A", [-0.75, -1.15]],
    ["high edge", 11.25, "obstructed", "B", [-1.9, -0.7]],
    ["low edge", 11.25, "clear", "B", [1.7, 0.45]],
    ["low edge", 17.5, "clear", "A", [1.3 + 0.4 / 3, 1.6 + 0.2 / 3]],
    // Three quarters of the way from 30 to 37.5 degrees.
    ["low edge", 35.625, "obstructed", "B", [1.825, 0.25]],
  ] as const)("interpolates for wind onto the %s at %f degrees, %s flow, case %s", (sense, degrees, flow, pressureCase, expected) => {
    expect(coefficients(direction(sense, degrees), flow, pressureCase)).toEqual(expected.map((value) => expect.closeTo(value, 9)));
  });

  it.each([1, 4.9, 5, 7, 7.49])("takes the row of 0 degrees at %f degrees, without interpolation", (degrees) => {
    expect(coefficients(direction("high edge", degrees), "clear", "A")).toEqual([1.2, 0.3]);
    expect(coefficients(direction("low edge", degrees), "clear", "B")).toEqual([-1.1, -0.1]);
  });

  it("ends the windward half at half the plan length", () => {
    const of = direction("high edge", 10);
    const [windward, leeward] = zonesOf(figureFor(of, plainCalc), of, "clear", "A", plainCalc);
    expect([windward.from, windward.to, leeward.from, leeward.to].map((d) => d / foot)).toEqual([0, 10, 10, 20].map((d) => expect.closeTo(d, 9)));
  });

  it("interpolates linearly: 12 degrees between -0.6 at 7.5 and -0.9 at 15 is -0.78", () => {
    expect(interpolatedCoefficient.value({ C_1: -0.6, C_2: -0.9, theta: 12, theta_1: 7.5, theta_2: 15 })).toBeCloseTo(-0.78, 9);
  });
});

describe("rows of Figures 27.3-5 and 27.3-6", () => {
  it.each([
    ["pitched", 7.5, "A", [1.1, -0.3], [-1.6, -1.0]],
    ["pitched", 7.5, "B", [0.2, -1.2], [-0.9, -1.7]],
    ["pitched", 15, "A", [1.1, -0.4], [-1.2, -1.0]],
    ["pitched", 15, "B", [0.1, -1.1], [-0.6, -1.6]],
    ["pitched", 22.5, "A", [1.1, 0.1], [-1.2, -1.2]],
    ["pitched", 22.5, "B", [-0.1, -0.8], [-0.8, -1.7]],
    ["pitched", 30, "A", [1.3, 0.3], [-0.7, -0.7]],
    ["pitched", 30, "B", [-0.1, -0.9], [-0.2, -1.1]],
    ["pitched", 37.5, "A", [1.3, 0.6], [-0.6, -0.6]],
    ["pitched", 37.5, "B", [-0.2, -0.6], [-0.3, -0.9]],
    ["pitched", 45, "A", [1.1, 0.9], [-0.5, -0.5]],
    ["pitched", 45, "B", [-0.3, -0.5], [-0.3, -0.7]],
    ["troughed", 7.5, "A", [-1.1, 0.3], [-1.6, -0.5]],
    ["troughed", 7.5, "B", [-0.2, 1.2], [-0.9, -0.8]],
    ["troughed", 15, "A", [-1.1, 0.4], [-1.2, -0.5]],
    ["troughed", 15, "B", [0.1, 1.1], [-0.6, -0.8]],
    ["troughed", 22.5, "A", [-1.1, -0.1], [-1.2, -0.6]],
    ["troughed", 22.5, "B", [-0.1, 0.8], [-0.8, -0.8]],
    ["troughed", 30, "A", [-1.3, -0.3], [-1.4, -0.4]],
    ["troughed", 30, "B", [0.1, 0.9], [-0.2, -0.5]],
    ["troughed", 37.5, "A", [-1.3, -0.6], [-1.4, -0.3]],
    ["troughed", 37.5, "B", [0.2, 0.6], [-0.3, -0.4]],
    ["troughed", 45, "A", [-1.1, -0.9], [-1.2, -0.3]],
    ["troughed", 45, "B", [0.3, 0.5], [-0.3, -0.4]],
  ] as const)("%s at %f degrees, case %s", (shape, degrees, pressureCase, clear, obstructed) => {
    const close = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 9));
    for (const sense of ["low edge", "high edge"] as const) {
      expect(coefficients(direction(sense, degrees, 12, 20, shape), "clear", pressureCase)).toEqual(close(clear));
      expect(coefficients(direction(sense, degrees, 12, 20, shape), "obstructed", pressureCase)).toEqual(close(obstructed));
    }
  });

  it.each([
    ["pitched", 11.25, "clear", "A", [1.1, -0.35]],
    ["troughed", 11.25, "obstructed", "A", [-1.4, -0.5]],
    // Two thirds of the way from 22.5 to 30 degrees.
    ["pitched", 27.5, "obstructed", "B", [-0.4, -1.3]],
  ] as const)("interpolates on a %s roof at %f degrees, %s flow, case %s", (shape, degrees, flow, pressureCase, expected) => {
    expect(coefficients(direction("low edge", degrees, 12, 20, shape), flow, pressureCase)).toEqual(expected.map((value) => expect.closeTo(value, 9)));
  });

  it.each(["pitched", "troughed"] as const)("below 7.5 degrees a %s roof has the coefficients of a level one", (shape) => {
    expect(coefficients(direction("low edge", 7, 12, 20, shape), "clear", "A")).toEqual([1.2, 0.3]);
    expect(coefficients(direction("high edge", 5, 12, 20, shape), "obstructed", "B")).toEqual([-1.1, -0.6]);
  });

  it.each(["pitched", "troughed"] as const)("along the ridge or valley of a %s roof the coefficients go by distance", (shape) => {
    expect(coefficients(direction("side edge", 20, 12, 40, shape), "obstructed", "A")).toEqual([-1.2, -0.9, -0.6]);
  });

  it.each([
    [30, "B", "clear", true],
    [26, "B", "clear", true],
    [22.5, "B", "clear", false],
    [30, "A", "clear", false],
    [30, "B", "obstructed", false],
  ] as const)("says that the coefficient at 30 degrees is printed both ways: at %f degrees, case %s, %s flow: %s", (degrees, pressureCase, flow, said) => {
    const of = direction("low edge", degrees, 12, 20, "troughed");
    const { calc, steps } = recordingCalc();
    zonesOf(figureFor(of, calc), of, flow, pressureCase, calc);
    expect(steps.some((step) => step.type === "note" && step.text.includes("+0.1"))).toBe(said);
  });
});

describe("editions", () => {
  it.each([
    ["ASCE 7-10", "monoslope", "27.4-4", "27.4-7"],
    ["ASCE 7-10", "pitched", "27.4-5", "27.4-7"],
    ["ASCE 7-10", "troughed", "27.4-6", "27.4-7"],
    ["ASCE 7-16", "monoslope", "27.3-4", "27.3-7"],
    ["ASCE 7-16", "pitched", "27.3-5", "27.3-7"],
    ["ASCE 7-22", "troughed", "27.3-6", "27.3-7"],
  ] as const)("%s names its own figures for a %s roof", (standard, shape, along, across) => {
    expect(figureFor({ ...direction("high edge", 15, 12, 20, shape), standard }, plainCalc).figure).toBe(`${standard} Figure ${along}`);
    expect(figureFor({ ...direction("side edge", 15, 12, 20, shape), standard }, plainCalc).figure).toBe(`${standard} Figure ${across}`);
  });

  it.each([
    ["ASCE 7-10", -0.1],
    ["ASCE 7-16", -0.1],
    ["ASCE 7-22", 0.1],
  ] as const)("%s has %f in the one cell of a troughed roof that is printed both ways, and says so", (standard, expected) => {
    const of = { ...direction("low edge", 30, 12, 20, "troughed"), standard };
    expect(coefficients(of, "clear", "B")).toEqual([expect.closeTo(expected, 9), expect.closeTo(0.9, 9)]);
    const { calc, steps } = recordingCalc();
    zonesOf(figureFor(of, calc), of, "clear", "B", calc);
    expect(steps).toContainEqual({ type: "note", text: expect.stringContaining(expected < 0 ? "ASCE 7-22 has +0.1" : "print -0.1") });
  });

  it("do not differ in the other coefficients", () => {
    for (const shape of ["monoslope", "pitched", "troughed"] as const) {
      const of = direction("low edge", 20, 12, 20, shape);
      expect(coefficients({ ...of, standard: "ASCE 7-10" }, "clear", "A")).toEqual(coefficients(of, "clear", "A"));
    }
  });
});

describe("bands of Figure 27.3-7", () => {
  it.each([
    ["clear", "A", [-0.8, -0.6, -0.3]],
    ["clear", "B", [0.8, 0.5, 0.3]],
    ["obstructed", "A", [-1.2, -0.9, -0.6]],
    ["obstructed", "B", [0.5, 0.5, 0.3]],
  ] as const)("%s flow, case %s", (flow, pressureCase, expected) => {
    expect(coefficients(direction("side edge", 20, 12, 40), flow, pressureCase)).toEqual(expected);
  });

  it("end at h and at 2h from the windward edge", () => {
    const of = direction("side edge", 20, 12, 40);
    expect(zonesOf(figureFor(of, plainCalc), of, "clear", "A", plainCalc).map(({ to }) => to / foot)).toEqual([12, 24, 40].map((d) => expect.closeTo(d, 9)));
  });

  it("leave out a band that begins at the leeward edge or beyond", () => {
    expect(coefficients(direction("side edge", 20, 12, 12), "clear", "A")).toEqual([-0.8]);
    expect(coefficients(direction("side edge", 20, 12, 24), "clear", "A")).toEqual([-0.8, -0.6]);
  });

  it("serve wind along the slope of a roof flatter than 5 degrees with h/L below 0.25", () => {
    const of = direction("high edge", 4, 10, 80);
    expect(figureFor(of, plainCalc)).toMatchObject({ figure: "ASCE 7-22 Figure 27.3-7", outside: undefined });
    expect(coefficients(of, "clear", "A")).toEqual([-0.8, -0.6, -0.3]);
  });
});

describe("range of the figures", () => {
  it.each([
    ["h/L of exactly 0.25 in feet holds", direction("side edge", 10, 11, 44), undefined],
    ["h/L of 1.0 holds", direction("high edge", 10, 20, 20), undefined],
    ["7.5 degrees stated as an angle is the row itself", direction("high edge", 7.5), undefined],
    ["45 degrees holds", direction("low edge", 45), undefined],
    ["h/L below 0.25 does not hold", direction("high edge", 10, 10, 50), /0\.20, outside 0\.25 to 1\.0/u],
    ["h/L above 1 does not hold", direction("low edge", 10, 21, 20), /1\.05, outside 0\.25 to 1\.0/u],
    ["a roof of 46 degrees does not hold", direction("low edge", 46), /46\.0 degrees is above the 45 degrees/u],
    ["a nearly flat roof holds down to 0.05", direction("low edge", 4, 10, 200), undefined],
    ["a nearly flat roof does not hold below 0.05", direction("low edge", 4, 10, 210), /outside 0\.05 to 1\.0/u],
    ["a roof of 5 degrees is not nearly flat", direction("low edge", 5, 10, 80), /outside 0\.25/u],
  ])("%s", (_, of, outside) => {
    const use = figureFor(of, plainCalc);
    if (outside === undefined) expect(use.outside).toBeUndefined();
    else expect(use.outside).toMatch(outside);
  });

  it("gives the nearest coefficients outside of it", () => {
    expect(coefficients(direction("low edge", 60), "clear", "A")).toEqual([2.2, 2.5]);
  });
});
