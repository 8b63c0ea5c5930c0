/**
 * Source: terrain constants and K_z formula of ASCE 7-22 Table 26.10-1 and 26.11-1; K_z table of ASCE 7-10/7-16 (Table 26.10-1), which
 * is also BNBC 2020 Table 6.2.11. Products computed from them by hand.
 */
import { describe, expect, it } from "vitest";
import { directedPressure, elevationFactor, exposureCoefficient, netPressure, netPressureOf, seaLevelPressure, velocityPressure, velocityPressureAt, type Exposure, type LoadStandard } from "../../../server/src/actions/wind/velocity-pressure.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, mph, psf } from "../given.js";

const constants = { B: { alpha: 7.5, z_g: 3280 * foot }, C: { alpha: 9.8, z_g: 2460 * foot }, D: { alpha: 11.5, z_g: 1935 * foot } };

describe("K_z by the formula of ASCE 7-22", () => {
  it.each([
    [8, 0.5729, 0.8512, 1.035],
    [15, 0.5729, 0.8512, 1.035],
    [20, 0.6186, 0.9026, 1.0881],
    [25, 0.6565, 0.9447, 1.1312],
    [30, 0.6892, 0.9805, 1.1676],
    [40, 0.7442, 1.0398, 1.2276],
    [60, 0.8291, 1.1295, 1.3172],
    [100, 0.9501, 1.2536, 1.4396],
    [3280, 2.41, 2.41, 2.41],
  ])("at %d ft it is %f in B, %f in C and %f in D", (z, ...expected) => {
    (["B", "C", "D"] as const).forEach((exposure, i) => {
      expect(exposureCoefficient.value({ c_z: 2.41, z: z * foot, ...constants[exposure] })).toBeCloseTo(expected[i], 4);
    });
  });

  it("agrees with the table of the earlier editions within 1.6 % up to 30 ft in B, C and D", () => {
    const table: readonly (readonly [number, number, number, number])[] = [[15, 0.57, 0.85, 1.03], [20, 0.62, 0.9, 1.08], [25, 0.66, 0.94, 1.12], [30, 0.7, 0.98, 1.16]];
    for (const [z, ...expected] of table) {
      (["B", "C", "D"] as const).forEach((exposure, i) => {
        expect(Math.abs(exposureCoefficient.value({ c_z: 2.41, z: z * foot, ...constants[exposure] }) - expected[i]) / expected[i]).toBeLessThan(0.016);
      });
    }
  });
});

describe("K_e", () => {
  it.each([[0, 1], [1000, 0.9644], [2000, 0.9302], [3000, 0.8971], [4000, 0.8652], [5000, 0.8344], [6000, 0.8048]])("at %d ft is %f", (elevation, expected) => {
    expect(elevationFactor.value({ z_e: elevation * foot })).toBeCloseTo(expected, 4);
  });
});

describe("velocity pressure", () => {
  // The earlier editions have K_d = 0.85 inside q; here it stands in the net pressure, so the product of both is compared.
  it.each([
    ["150 mph, C", 150, 0.85, 41.616],
    ["180 mph, D", 180, 1.03, 72.617],
    ["175 mph, C", 175, 0.85, 56.644],
    ["140 mph, C", 140, 0.85, 36.252],
    ["115 mph, B", 115, 0.57, 16.403],
    ["115 mph, K_z 0.70", 115, 0.7, 20.14],
  ])("%s: q K_d is the published figure", (_, speed, K_z, expected) => {
    const q_h = velocityPressure.value({ K_z, K_zt: 1, K_e: 1, V: speed * mph });
    const p = netPressure.value({ q_h, C_N: 1 });
    expect(Math.abs(p / 0.85 / psf - expected)).toBeLessThan(0.005);
  });

  it("keeps K_d out: 150 mph in exposure C at 12 ft gives 49.03 psf", () => {
    const site = { standard: "ASCE 7-22", V: 150 * mph, exposure: "C" as Exposure, K_zt: 1, groundElevation: 0 } as const;
    // 0.00256 * 0.8512 * 150^2
    expect(velocityPressureAt(12 * foot, site, plainCalc) / psf).toBeCloseTo(49.029, 2);
  });

  it.each([
    ["a hill multiplies it by K_zt", { K_zt: 1.6627 }, 1.6627],
    ["5000 ft of elevation take 17 % off", { groundElevation: 5000 * foot }, 0.8344],
    ["twice the speed gives four times the pressure", { V: 300 * mph }, 4],
  ])("%s", (_, change, factor) => {
    const site = { standard: "ASCE 7-22", V: 150 * mph, exposure: "D" as Exposure, K_zt: 1, groundElevation: 0 } as const;
    const before = velocityPressureAt(20 * foot, site, plainCalc);
    expect(velocityPressureAt(20 * foot, { ...site, ...change }, plainCalc) / before).toBeCloseTo(factor, 4);
  });
});

describe("the earlier editions", () => {
  // Table 27.3-1 of ASCE 7-10, Table 26.10-1 of ASCE 7-16, rounded to two digits there.
  it.each([
    [10, 0.57, 0.85, 1.03],
    [15, 0.57, 0.85, 1.03],
    [20, 0.62, 0.9, 1.08],
    [25, 0.66, 0.94, 1.12],
    [30, 0.7, 0.98, 1.16],
    [40, 0.76, 1.04, 1.22],
    [50, 0.81, 1.09, 1.27],
    [60, 0.85, 1.13, 1.31],
    [80, 0.93, 1.21, 1.38],
    [100, 0.99, 1.26, 1.43],
  ])("K_z at %d ft is %f in B, %f in C and %f in D", (z, ...expected) => {
    (["B", "C", "D"] as const).forEach((exposure, i) => {
      const site = { standard: "ASCE 7-10", V: 100 * mph, exposure, K_zt: 1, groundElevation: 0 } as const;
      // q = 0.00256 K_z 0.85 * 100^2 = 21.76 K_z
      expect(Math.abs(velocityPressureAt(z * foot, site, plainCalc) / psf / 21.76 - expected[i])).toBeLessThan(0.01);
    });
  });

  it.each([
    ["150 mph, C", 150, 0.85, 41.616],
    ["180 mph, D", 180, 1.03, 72.617],
    ["115 mph, K_z 0.70", 115, 0.7, 20.14],
    // One-bay carport of a permit record to ASCE 7-16, exposure B.
    ["97 mph, B", 97, 0.57, 11.673],
  ])("%s: q with the directionality factor in it is the published figure", (_, speed, K_z, expected) => {
    const of = { K_z, K_zt: 1, K_d: 0.85, V: speed * mph };
    expect(Math.abs(directedPressure.value({ ...of, K_e: 1 }) / psf - expected)).toBeLessThan(0.005);
    expect(Math.abs(seaLevelPressure.value(of) / psf - expected)).toBeLessThan(0.005);
  });

  const site = (standard: LoadStandard, more = {}) => ({ standard, V: 150 * mph, exposure: "C" as Exposure, K_zt: 1, groundElevation: 0, ...more });
  const netOf = (standard: LoadStandard, more = {}) => netPressureOf(standard, velocityPressureAt(12 * foot, site(standard, more), plainCalc), 1, plainCalc) / psf;

  it("give the same net pressure as ASCE 7-22 at a low roof in C, within 0.3 %, although q differs by 1/0.85", () => {
    const now = velocityPressureAt(12 * foot, site("ASCE 7-22"), plainCalc);
    for (const standard of ["ASCE 7-10", "ASCE 7-16"] as const) {
      expect(Math.abs((velocityPressureAt(12 * foot, site(standard), plainCalc) / now) * (1 / 0.85) - 1)).toBeLessThan(0.003);
      // 41.616 psf at the tabulated K_z of 0.85, times G.
      expect(Math.abs(netOf(standard) - 35.374)).toBeLessThan(0.1);
    }
    expect(Math.abs(netOf("ASCE 7-22") - 35.424)).toBeLessThan(0.01);
  });

  it("have a factor for the elevation of the ground from ASCE 7-16 on", () => {
    const at5000 = { groundElevation: 5000 * foot };
    expect(netOf("ASCE 7-16", at5000) / netOf("ASCE 7-16")).toBeCloseTo(0.8344, 4);
    expect(netOf("ASCE 7-10", at5000)).toBe(netOf("ASCE 7-10"));
  });

  it("take the directionality factor of what the wind acts on into q", () => {
    const q = (standard: LoadStandard, K_d: number) => velocityPressureAt(12 * foot, site(standard), plainCalc, K_d);
    expect(q("ASCE 7-16", 0.9) / q("ASCE 7-16", 0.85)).toBeCloseTo(0.9 / 0.85, 9);
    expect(q("ASCE 7-22", 0.9)).toBe(q("ASCE 7-22", 0.85));
  });
});
