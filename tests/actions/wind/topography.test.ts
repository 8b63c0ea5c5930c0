/** Source: ASCE 7-22 Eq. 26.8-1 and Figure 26.8-1, exposure C; the multipliers are from memory but for the ridge of 0.50. */
import { describe, expect, it } from "vitest";
import { distanceFactor, heightFactor, shapeFactor, topographicFactorAt, type Hill } from "../../../server/src/actions/wind/topography.js";
import { velocityPressureAt } from "../../../server/src/actions/wind/velocity-pressure.js";
import { plainCalc, recordingCalc } from "../../../server/src/formula/calc.js";
import { assumed, baseOf, foot, mph, recordOf, solved, unknownOf } from "../given.js";

const hill = (shape: Hill["shape"], H: number, L_h: number, x: number, side: Hill["side"] = "upwind"): Hill => ({ shape, height: H * foot, halfLength: L_h * foot, distance: x * foot, side });
const factor = (of: Hill, z = 15, exposure: "B" | "C" | "D" = "C") => topographicFactorAt(z * foot, of, exposure, plainCalc);

describe("K_1 of the printed table, exposure C", () => {
  it.each([
    ["ridge", 1.45, [0.29, 0.36, 0.43, 0.51, 0.58, 0.65, 0.72]],
    ["escarpment", 0.85, [0.17, 0.21, 0.26, 0.3, 0.34, 0.38, 0.43]],
    ["hill", 1.05, [0.21, 0.26, 0.32, 0.37, 0.42, 0.47, 0.53]],
  ] as const)("of a %s", (_, k_1, printed) => {
    [0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5].forEach((r_H, i) => expect(Math.abs(shapeFactor.value({ k_1, r_H }) - printed[i])).toBeLessThan(0.0055));
  });

  it("does not grow beyond H / L_h = 0.5", () => {
    expect(shapeFactor.value({ k_1: 1.45, r_H: 0.9 })).toBeCloseTo(0.725, 9);
  });
});

describe("K_zt", () => {
  it("of a ridge 60 ft high with a half length of 200 ft, 50 ft from the crest, at 15 ft: 0.435, 0.8333, 0.7985 give 1.6627", () => {
    expect(distanceFactor.value({ x: 50 * foot, mu: 1.5, L_e: 200 * foot })).toBeCloseTo(0.8333, 4);
    expect(heightFactor.value({ gamma: 3, z: 15 * foot, L_e: 200 * foot })).toBeCloseTo(0.7985, 4);
    expect(factor(hill("ridge", 60, 200, 50))).toBeCloseTo(1.6627, 4);
  });

  it("on the crest of the steepest ridge at the ground is (1 + 0.725)^2, the greatest in exposure C", () => {
    // The public figure of 2.9584 squares the rounded 0.72.
    expect(factor(hill("ridge", 100, 200, 0), 0)).toBeCloseTo(1.725 ** 2, 9);
  });

  // By hand: (1 + k_1 r (1 - x / (mu L)) exp(-gamma z / L))^2.
  it.each([
    ["an escarpment downwind reaches 4 half lengths", hill("escarpment", 60, 200, 200, "downwind"), 15, "C", (1 + 0.255 * 0.75 * Math.exp(-0.1875)) ** 2],
    ["an escarpment upwind reaches 1.5", hill("escarpment", 60, 200, 200, "upwind"), 15, "C", (1 + (0.255 / 3) * Math.exp(-0.1875)) ** 2],
    ["a hill in exposure B", hill("hill", 80, 200, 0), 20, "B", (1 + 0.95 * 0.4 * Math.exp(-0.4)) ** 2],
    ["a hill in exposure D", hill("hill", 80, 200, 0), 20, "D", (1 + 1.15 * 0.4 * Math.exp(-0.4)) ** 2],
    ["a ridge in exposure D", hill("ridge", 80, 200, 150, "downwind"), 20, "D", (1 + 1.55 * 0.4 * 0.5 * Math.exp(-0.3)) ** 2],
    ["a ridge in exposure B", hill("ridge", 80, 200, 0), 20, "B", (1 + 1.3 * 0.4 * Math.exp(-0.3)) ** 2],
    ["an escarpment in exposure B", hill("escarpment", 80, 200, 0), 20, "B", (1 + 0.75 * 0.4 * Math.exp(-0.25)) ** 2],
    ["an escarpment in exposure D", hill("escarpment", 80, 200, 0), 20, "D", (1 + 0.95 * 0.4 * Math.exp(-0.25)) ** 2],
    ["beyond its reach nothing is left", hill("ridge", 60, 200, 320), 15, "C", 1],
    ["a steeper one counts with 2H for its half length", hill("ridge", 100, 120, 60), 20, "C", (1 + 0.725 * 0.8 * Math.exp(-0.3)) ** 2],
  ] as const)("%s", (_, of, z, exposure, expected) => {
    expect(factor(of, z, exposure)).toBeCloseTo(expected, 9);
  });

  it.each([
    ["a gentle one", hill("ridge", 39, 200, 0), "C", /less than 0\.2/u],
    ["one of 59 ft in exposure B", hill("ridge", 59, 200, 0), "B", /lower than 60 ft/u],
    ["one of 14 ft in exposure D", hill("hill", 14, 50, 0), "D", /lower than 15 ft/u],
  ] as const)("%s does not count, and the reason is said", (_, of, exposure, words) => {
    const { calc, steps } = recordingCalc();
    expect(topographicFactorAt(4, of, exposure, calc)).toBe(1);
    expect(steps.at(-1)).toEqual({ type: "note", text: expect.stringMatching(words) });
  });

  it.each([
    ["60 ft in B", hill("ridge", 60, 200, 0), "B"],
    ["15 ft in C", hill("ridge", 15, 75, 0), "C"],
  ] as const)("counts from %s on", (_, of, exposure) => {
    expect(factor(of, 15, exposure)).toBeGreaterThan(1.1);
  });
});

describe("a hill of the notebook", () => {
  const fields = { shape: "ridge", height: 60 * foot, "half length": 200 * foot, distance: 50 * foot, side: "upwind" };
  const onHill = { hill: recordOf(fields), "topographic factor": assumed(1) };

  it("multiplies every wind pressure by its factor, in the same ratio as a stated one", () => {
    const site = { standard: "ASCE 7-22", V: 150 * mph, exposure: "C", K_zt: 1, groundElevation: 0 } as const;
    const K_zt = velocityPressureAt(12 * foot, { ...site, hill: hill("ridge", 60, 200, 50) }, plainCalc) / velocityPressureAt(12 * foot, site, plainCalc);
    const stated = solved({ site: { "topographic factor": K_zt } }).columns;
    solved({ site: onHill }).columns.forEach((column, i) => {
      for (const id of ["wind/north/A/clear", "wind/east/B/clear"]) expect(baseOf(column, id).P / baseOf(stated[i], id).P).toBeCloseTo(1, 9);
    });
  });

  it("beside a stated factor is one too many", () => {
    expect(unknownOf({ site: { hill: recordOf(fields) } })).toBe("the site states a hill and a topographic factor: take out one of them");
  });

  it("without its half length or its side is not enough", () => {
    expect(unknownOf({ site: { hill: recordOf({ ...fields, "half length": undefined, side: undefined }), "topographic factor": assumed(1) } })).toBe(
      "the loads need the half length of the hill and the side of the hill (upwind or downwind)",
    );
  });
});
