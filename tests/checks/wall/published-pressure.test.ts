/** Whole tables of earth pressure coefficients, and published pushes on walls. */
import { describe, expect, it } from "vitest";
import { atRest, coulomb, rankine, rankinePassive } from "../../../server/src/checks/wall/coefficients.js";
import { earthOf, pushAbove, type EarthInputs } from "../../../server/src/checks/wall/earth.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot } from "../given.js";
import { degree, pcf } from "../ground.js";

const plain: EarthInputs = { method: "Rankine", phi: 30 * degree, delta: 0, slope: 0, fluid: 0, gamma: 110 * pcf, saturated: 110 * pcf, cohesion: 0, surcharge: 0, water: undefined };

describe("Coefficients of level ground: Rankine active and passive, at rest", () => {
  it.each([
    [20, 0.4903, 2.0396, 0.658],
    [25, 0.4059, 2.4639, 0.5774],
    [28, 0.361, 2.7698, 0.5305],
    [30, 0.3333, 3.0, 0.5],
    [32, 0.3073, 3.2546, 0.4701],
    [34, 0.2827, 3.5371, 0.4408],
    [35, 0.271, 3.6902, 0.4264],
    [36, 0.2596, 3.8518, 0.4122],
    [38, 0.2379, 4.2037, 0.3843],
    [40, 0.2174, 4.5989, 0.3572],
  ])("at %d degrees: %d, %d, %d", (angle, active, passive, rest) => {
    const phi = angle * degree;
    expect(rankine.value({ phi, beta: 0 })).toBeCloseTo(active, 4);
    expect(rankinePassive.value({ phi })).toBeCloseTo(passive, 3.9);
    expect(atRest.value({ phi, beta: 0 })).toBeCloseTo(rest, 4);
  });
});

describe("Rankine's active coefficient below rising ground", () => {
  const angles = [28, 30, 32, 34, 36, 38, 40];
  it.each([
    [5, [0.3656, 0.3372, 0.3105, 0.2855, 0.262, 0.2399, 0.2192]],
    [10, [0.3802, 0.3495, 0.321, 0.2944, 0.2696, 0.2464, 0.2247]],
    [15, [0.4086, 0.3729, 0.3405, 0.3108, 0.2834, 0.2581, 0.2346]],
    [20, [0.4605, 0.4142, 0.3739, 0.3381, 0.306, 0.2769, 0.2504]],
    [25, [0.5727, 0.4936, 0.4336, 0.3847, 0.3431, 0.307, 0.275]],
  ] as const)("at %d degrees", (slope, row) => {
    expect(angles.map((phi) => rankine.value({ phi: phi * degree, beta: slope * degree }))).toEqual(row.map((K) => expect.closeTo(K, 4)));
  });
});

describe("Coulomb's active coefficient on a vertical back", () => {
  it.each([[28, 0.3213], [30, 0.2973], [32, 0.275], [34, 0.2543], [36, 0.2349], [38, 0.2168], [40, 0.1998]])("at %d degrees and two thirds of it as friction of the wall is %d", (phi, K) => {
    expect(coulomb.value({ phi: phi * degree, delta: (2 / 3) * phi * degree, beta: 0 })).toBeCloseTo(K, 4);
  });
  it.each([[5, 0.3189], [10, 0.3085], [15, 0.3014], [20, 0.2973], [25, 0.2959]])("at 30 degrees with %d degrees of friction of the wall is %d", (delta, K) => {
    expect(coulomb.value({ phi: 30 * degree, delta: delta * degree, beta: 0 })).toBeCloseTo(K, 4);
  });
});

describe("What drained soil presses with per depth", () => {
  // Unit weight times coefficient, psf/ft: active, at rest.
  it.each([[110, 30, 36.7, 55.0], [120, 34, 33.9, 52.9], [125, 28, 45.1, 66.3]])("%d pcf at %d degrees: %d and %d psf/ft", (gamma, phi, active, rest) => {
    const at = (method: EarthInputs["method"]) => {
      const z = 10 * foot;
      const earth = earthOf({ ...plain, method, phi: phi * degree, gamma: gamma * pcf }, plainCalc);
      return (2 * pushAbove(earth, z, z, plainCalc).shear) / z ** 2 / pcf;
    };
    expect(at("Rankine")).toBeCloseTo(active, 0.9);
    expect(at("at rest")).toBeCloseTo(rest, 0.9);
  });
});

describe("Published pushes", () => {
  // Coduto, Geotechnical Engineering, Example 13.2: 36 degrees, 16 kN/m³, 6 m: 74.8 kN/m active, 1109.2 kN/m passive.
  it("6 m of dry soil hold 1109.2 kN/m where they press with 74.8", () => {
    const phi = 36 * degree;
    const earth = earthOf({ ...plain, phi, gamma: 16e3 }, plainCalc);
    const active = pushAbove(earth, 6, 6, plainCalc).shear;
    expect(active / 1e3).toBeCloseTo(74.8, 1);
    expect(Math.abs(((active / earth.K_h) * rankinePassive.value({ phi })) / 1109.2e3 - 1)).toBeLessThan(0.0005);
  });

  // Das, metric twin of Example 8.1 in later editions (from memory, recomputed): H' 7.158 m, 18 kN/m³, 30 degrees below a slope of 10: K 0.3495, 161.2 kN/m.
  it("7.158 m below a slope of 10 degrees press with 161.2 kN/m, 158.75 across and 27.99 down", () => {
    const earth = earthOf({ ...plain, slope: Math.tan(10 * degree), gamma: 18e3 }, plainCalc);
    const { shear } = pushAbove(earth, 7.158, 7.158, plainCalc);
    const down = (shear * earth.K_v) / earth.K_h;
    expect(Math.hypot(earth.K_h, earth.K_v)).toBeCloseTo(0.3495, 4);
    expect(Math.abs(shear / 158.75e3 - 1)).toBeLessThan(0.001);
    expect(Math.abs(down / 27.99e3 - 1)).toBeLessThan(0.001);
    expect(Math.abs(Math.hypot(shear, down) / 161.2e3 - 1)).toBeLessThan(0.001);
  });

  // Coduto, Example 13.4: 3 m at 30 degrees and 16 kN/m³, below it 3 m at 35 degrees and 18 kN/m³ in water: 117.2 kN/m with the water, 1.8 m above the base. The soil
  // behind a wall is of one kind here; the example is two pushes, the upper layer a load on the lower.
  it("two layers, the lower in water, press with 117.2 kN/m at 1.8 m as a load on the lower one", () => {
    const upper = pushAbove(earthOf({ ...plain, gamma: 16e3 }, plainCalc), 3, 3, plainCalc);
    const lower = pushAbove(earthOf({ ...plain, phi: 35 * degree, gamma: 18e3, saturated: 18e3, surcharge: 48e3, water: 0 }, plainCalc), 3, 0, plainCalc);
    const total = upper.shear + lower.shear;
    expect(Math.abs(total / 117.2e3 - 1)).toBeLessThan(0.002);
    expect((upper.moment + upper.shear * 3 + lower.moment) / total).toBeCloseTo(1.8, 1);
  });
});
