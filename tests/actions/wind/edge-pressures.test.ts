/**
 * Source: ASCE 7-22 Figures 30.5-1 to 30.5-3 (components and cladding of free roofs), as BNBC 2020 Figure 6.2.19 prints them after ASCE 7-05,
 * its misprints put right by the pattern of the table. Zone widths and resultants by hand.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RoofPlane } from "../../../server/src/actions/roof-plane.js";
import { areaRow, edgeUplift, edgeVelocityPressure, edgeZones, upliftPressure, upwardCoefficient, zoneWidth } from "../../../server/src/actions/wind/edge-pressures.js";
import { edgeTable } from "../../../server/src/actions/wind/edge-tables.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, mph, pound, psf } from "../given.js";

const up = (shape: RoofPlane["shape"], theta: number, flow: "clear" | "obstructed", row: 0 | 1 | 2) =>
  ([3, 2, 1] as const).map((zone) => upwardCoefficient("ASCE 7-22", shape, theta, flow, row, zone, plainCalc));

describe("upward coefficients of zones 3, 2 and 1", () => {
  it.each([
    ["monoslope", 0, "clear", [-3.3, -1.7, -1.1], [-1.7, -1.7, -1.1], [-1.1, -1.1, -1.1]],
    ["monoslope", 0, "obstructed", [-3.6, -1.8, -1.2], [-1.8, -1.8, -1.2], [-1.2, -1.2, -1.2]],
    ["monoslope", 7.5, "clear", [-4.2, -2.1, -1.4], [-2.1, -2.1, -1.4], [-1.4, -1.4, -1.4]],
    ["monoslope", 7.5, "obstructed", [-5.1, -2.6, -1.7], [-2.6, -2.6, -1.7], [-1.7, -1.7, -1.7]],
    ["monoslope", 15, "clear", [-3.8, -2.9, -1.9], [-2.9, -2.9, -1.9], [-1.9, -1.9, -1.9]],
    ["monoslope", 15, "obstructed", [-4.2, -3.2, -2.1], [-3.2, -3.2, -2.1], [-2.1, -2.1, -2.1]],
    ["monoslope", 30, "clear", [-5.0, -3.8, -2.5], [-3.8, -3.8, -2.5], [-2.5, -2.5, -2.5]],
    ["monoslope", 45, "obstructed", [-3.8, -2.9, -1.9], [-2.9, -2.9, -1.9], [-1.9, -1.9, -1.9]],
    ["pitched", 0, "clear", [-3.3, -1.7, -1.1], [-1.7, -1.7, -1.1], [-1.1, -1.1, -1.1]],
    ["pitched", 7.5, "clear", [-3.6, -1.8, -1.2], [-1.8, -1.8, -1.2], [-1.2, -1.2, -1.2]],
    ["pitched", 7.5, "obstructed", [-5.1, -2.6, -1.7], [-2.6, -2.6, -1.7], [-1.7, -1.7, -1.7]],
    ["pitched", 15, "obstructed", [-3.2, -2.4, -1.6], [-2.4, -2.4, -1.6], [-1.6, -1.6, -1.6]],
    ["pitched", 30, "clear", [-1.8, -1.4, -0.9], [-1.4, -1.4, -0.9], [-0.9, -0.9, -0.9]],
    ["pitched", 45, "clear", [-1.6, -1.2, -0.8], [-1.2, -1.2, -0.8], [-0.8, -0.8, -0.8]],
    ["troughed", 7.5, "obstructed", [-4.8, -2.4, -1.6], [-2.4, -2.4, -1.6], [-1.6, -1.6, -1.6]],
    ["troughed", 15, "clear", [-2.2, -1.7, -1.1], [-1.7, -1.7, -1.1], [-1.1, -1.1, -1.1]],
    ["troughed", 30, "clear", [-2.6, -2.0, -1.3], [-2.0, -2.0, -1.3], [-1.3, -1.3, -1.3]],
    ["troughed", 45, "obstructed", [-2.4, -1.8, -1.2], [-1.8, -1.8, -1.2], [-1.2, -1.2, -1.2]],
  ] as const)("%s roof of %f degrees, %s flow: to a², to 4a², and more", (shape, theta, flow, ...rows) => {
    rows.forEach((expected, row) => expect(up(shape, theta, flow, row as 0)).toEqual(expected));
  });

  it.each([
    // Half way between 0 and 7.5, a third of the way from 15 to 30.
    ["monoslope", 3.75, "clear", 0, [-3.75, -1.9, -1.25]],
    ["pitched", 20, "obstructed", 1, [-2.2, -2.2, -1.6 + 0.4 / 3]],
  ] as const)("interpolates at every angle: %s, %f degrees, %s flow", (shape, theta, flow, row, expected) => {
    expect(up(shape, theta, flow, row)).toEqual(expected.map((value) => expect.closeTo(value, 9)));
  });

  it("keep the pattern of the table in every cell, to the rounding of a tenth", () => {
    for (const shape of ["monoslope", "pitched", "troughed"] as const) {
      for (const { angle, clear, obstructed } of edgeTable("ASCE 7-22", shape).rows) {
        for (const [small, middle, large] of [clear, obstructed]) {
          const [down3, up3, down2, up2, down1, up1] = small;
          const near = (value: number, expected: number) => expect(Math.abs(value - expected), `${shape} ${angle}`).toBeLessThan(0.15);
          near(down3, 2 * down1);
          near(up3, (angle < 10 ? 3 : 2) * up1);
          near(down2, 1.5 * down1);
          near(up2, 1.5 * up1);
          expect(middle).toEqual([down2, up2, down2, up2, down1, up1]);
          expect(large).toEqual([down1, up1, down1, up1, down1, up1]);
        }
      }
    }
  });

  it.each([
    ["ASCE 7-10", "troughed", "ASCE 7-10 Figure 30.8-3"],
    ["ASCE 7-16", "pitched", "ASCE 7-16 Figure 30.7-2"],
    ["ASCE 7-22", "monoslope", "ASCE 7-22 Figure 30.5-1"],
  ] as const)("%s, %s: %s", (standard, shape, figure) => {
    expect(edgeTable(standard, shape).figure).toBe(figure);
  });
});

describe("the width of the edge zone", () => {
  it.each([
    [20, 12, 3],
    [40, 15, 4],
    [12, 10, 3],
    [60, 15, 6],
    // 0.4 h is less than a tenth of the roof, and 0.04 of a very large roof more than both.
    [100, 12, 4.8],
    [150, 12, 6],
    [5, 10, 2.5],
  ])("least plan size %d ft, mean height %d ft: %f ft", (B, h, a) => {
    expect(zoneWidth.value({ B: B * foot, h: h * foot }) / foot).toBeCloseTo(a, 9);
  });

  it.each([
    [9, 0],
    [9.1, 1],
    [36, 1],
    [36.1, 2],
  ])("of 3 ft: the row of %f ft² is %d", (A, row) => {
    expect(areaRow(A * foot ** 2, 3 * foot, plainCalc)).toBe(row);
  });
});

const roof = (more: Partial<RoofPlane> = {}): RoofPlane => ({ shape: "monoslope", slope: 0, length: 60 * foot, width: 60 * foot, lowEdge: "south", meanHeight: 15 * foot, ...more }) as RoofPlane;

const areaOf = (zones: ReturnType<typeof edgeZones>["zones"], zone: number) =>
  zones.filter((one) => one.zone === zone).reduce((sum, { x1, x2, y1, y2 }) => sum + (x2 - x1) * (y2 - y1), 0) / foot ** 2;

describe("zones in plan", () => {
  it("60 ft square with strips of 6 ft: four corners, four strips, one inside", () => {
    const { zones } = edgeZones(roof(), plainCalc);
    expect([3, 2, 1].map((zone) => areaOf(zones, zone))).toEqual([4 * 36, 4 * 6 * 48, 48 * 48].map((area) => expect.closeTo(area, 6)));
  });

  it("from 10 degrees on the strips along a ridge count as edges, with corners at its ends", () => {
    const ridged = (degrees: number) => edgeZones(roof({ shape: "pitched", ridge: "x", slope: Math.tan((degrees * Math.PI) / 180) } as never), plainCalc).zones;
    expect(areaOf(ridged(9), 3)).toBeCloseTo(144, 6);
    expect(areaOf(ridged(12), 3)).toBeCloseTo(144 + 2 * 6 * 12, 6);
    expect(areaOf(ridged(12), 2)).toBeCloseTo(1152 - 2 * 6 * 12 + 48 * 12, 6);
  });

  it("always cover the roof once", () => {
    fc.assert(
      fc.property(fc.double({ min: 2, max: 80, noNaN: true }), fc.double({ min: 2, max: 80, noNaN: true }), fc.constantFrom("pitched", "troughed", "monoslope"), fc.constantFrom("x", "y"), (length, width, shape, ridge) => {
        const { zones } = edgeZones(roof({ shape, ridge, slope: 0.4, length: length * foot, width: width * foot } as never), plainCalc);
        expect(areaOf(zones, 1) + areaOf(zones, 2) + areaOf(zones, 3)).toBeCloseTo(length * width, 6);
      }),
    );
  });
});

describe("uplift on a tributary area", () => {
  const site = { standard: "ASCE 7-22", V: 150 * mph, exposure: "C", K_zt: 1, groundElevation: 0 } as const;
  // q of 40/(0.85 * 0.85) psf makes a coefficient of 1.0 count 40 psf.
  const q_h = (40 / 0.7225) * psf;
  const areas = (one: number, two: number, three: number) => ({ all: (one + two + three) * foot ** 2, 1: one * foot ** 2, 2: two * foot ** 2, 3: three * foot ** 2 });
  const uplift = (of: ReturnType<typeof areas>, q = q_h) => edgeUplift({ plane: roof(), site }, 0, 6 * foot, of, "clear", q, plainCalc) / pound;

  it("of a corner column, 10 ft by 10 ft: each zone by its own part", () => {
    expect(uplift(areas(16, 48, 36))).toBeCloseTo(40 * (1.1 * 16 + 1.7 * 48 + 1.7 * 36), 6);
  });

  it("is highest per area on a small one", () => {
    expect(uplift(areas(0, 10, 20))).toBeCloseTo(40 * (1.7 * 10 + 3.3 * 20), 6);
  });

  it("is that of the inside on one larger than 4a²", () => {
    expect(uplift(areas(100, 48, 36))).toBeCloseTo(40 * 1.1 * 184, 6);
  });

  it("is at least 16 psf", () => {
    expect(uplift(areas(100, 48, 36), q_h / 4)).toBeCloseTo(16 * 184, 6);
    expect(upliftPressure.value({ p: 10 * psf }) / psf).toBeCloseTo(16, 9);
  });
});

describe("the velocity pressure for edges", () => {
  const site = (standard: "ASCE 7-10" | "ASCE 7-16", exposure: "B" | "C") => ({ standard, V: 100 * mph, exposure, K_zt: 1, groundElevation: 0 }) as const;
  it.each([
    ["ASCE 7-10", "B", 0.7],
    ["ASCE 7-16", "B", 0.57],
    ["ASCE 7-10", "C", 0.85],
  ] as const)("%s, exposure %s, 12 ft: K_z is %f", (standard, exposure, K_z) => {
    expect(Math.abs(edgeVelocityPressure(site(standard, exposure), 12 * foot, plainCalc) / psf / 21.76 - K_z)).toBeLessThan(0.006);
  });
});
