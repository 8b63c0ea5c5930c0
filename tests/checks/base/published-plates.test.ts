/** What published examples of base plates say beside their thickness: bearing by both methods, factors of W plates, and the moment the rods hold. */
import { describe, expect, it } from "vitest";
import { baseBearing } from "../../../server/src/checks/base/bearing.js";
import { aboutRods, largeMomentBlock, oneWay, rodStrength, rowPull } from "../../../server/src/checks/base/one-way.js";
import { cantileverMoment, plateCompression, plateStrength } from "../../../server/src/checks/base/plate-compression.js";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { gatherer, inch, kip, kipInch, ksi, run, strength, valuesOf } from "../given.js";
import { supportWith, type Given } from "./base.js";

const near = (found: number | undefined, expected: number, part = 0.003) => expect(Math.abs((found ?? Number.NaN) / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
const inputsOf = <I extends object>(of: CheckDecl<I, any>, given: Given): I => {
  const gather = gatherer();
  const inputs = of.inputs(supportWith(given), gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};
const w12x96 = "W 12.7 x 12.2 in, flange 0.9 in, web 0.55 in, fillet 0.6 in";

describe("bearing of the whole plate", () => {
  /** Concrete is designed by strength alone; P_p over 2.31 is printed beside phi P_p and comes of the same P_p. */
  it.each([
    ["AISC Companion 16th ed., Example K.9, 13 in square on 90 in of 3 ksi", { section: "HSS6x6x1/2", plate: [13, 13, 1], spacing: [10, 10], rod: 0.75, pier: 90, fc: 3000 }, 560, 373],
    ["AISC Companion 16th ed., Example J.6, 22 in square on 24 in of 3 ksi", { section: w12x96, plate: [22, 22, 1.5], spacing: [19, 19], rod: 0.75, pier: 24, fc: 3000, column: { "deep side": "along y" } }, 875, 583],
    ["AISC Design Guide 1, 2nd ed., Example 4.1 (inputs from memory), 16 x 18 in as wide as its concrete of 3 ksi", { section: w12x96, plate: [16, 18, 1], spacing: [13, 15], rod: 0.75, pier: 18.0001, fc: 3000, column: { "deep side": "along y" } }, 477, 318],
  ] as const)("%s: %d kip by strength, %d by allowable stress", (_, given, byStrength, byAllowable) => {
    const P_d = run(baseBearing, inputsOf(baseBearing, given as Given), strength({ P: kip })).capacity / kip;
    near(P_d, byStrength);
    near(P_d / (0.65 * 2.31), byAllowable, 0.004);
  });

  it("AISC Design Guide 1, 2nd ed., Example 4.6 (inputs from memory): sqrt(A2/A1) of 2 gives 4.42 ksi, 84.0 kip/in of 19 in, and 1.41 ksi over a block of 14.0 in", () => {
    const values = valuesOf(oneWay, inputsOf(oneWay, { plate: [19, 19, 2], spacing: [16, 16], rod: 1, fc: 4000 }), strength({ P: 376 * kip, Mx: 940 * kipInch }));
    near(values.get("f_d")! / ksi, 4.42);
    near(values.get("q_m")! / (kip / inch), 84);
    near((376 * kip) / (19 * inch * values.get("Y")!) / ksi, 1.41, 0.005);
  });
});

describe("plates of W columns", () => {
  /**
   * lambda of the concentric case, 2 sqrt X/(1 + sqrt(1 - X)) at most 1, shortens n' under light loads. The examples have 1.0 in J.6 (X 0.788) and in Example 4.1
   * (X 0.787), and 0.272 in a memo in SI (X 0.0715, n' of 75 mm cut to 20.4). It is not taken here: n' counts whole, the safe side, and where m or n is
   * longer, as in all three, nothing changes.
   */
  it.each([
    ["J.6: 4.97, 6.12, 3.11 in", 12.7, 12.2, 22, 22, 0.788, 1, 6.12, 3.11],
    ["Example 4.1: 2.97, 3.12, 3.11 in", 12.7, 12.2, 18, 16, 0.787, 1, 3.12, 3.11],
    ["a memo in SI: 82.5, 105, 75 mm", 300 / 25.4, 300 / 25.4, 450 / 25.4, 450 / 25.4, 0.0715, 0.272, 105 / 25.4, 75 / 25.4],
  ])("%s", (_, d, b_f, N, B, X, lambda, l, n_prime) => {
    near(Math.min(1, (2 * Math.sqrt(X)) / (1 + Math.sqrt(1 - X))), lambda, 0.004);
    const section = `W ${d} x ${b_f} in, flange ${19 / 25.4} in, web 0.55 in, fillet 0.6 in`;
    const given: Given = { section, plate: [B, N, 1], spacing: [B - 3, N - 3], rod: 0.75, pier: 60, column: { "deep side": "along y" } };
    const values = valuesOf(plateCompression as CheckDecl<any, "strength">, inputsOf(plateCompression, given), strength({ P: 100 * kip }));
    near(values.get("l")! / inch, l, 0.004);
    near(values.get("n_prime")! / inch, n_prime, 0.004);
    expect(lambda * n_prime).toBeLessThanOrEqual(l);
  });

  // The guide's 2.11 and 1.49 are sqrt(4/0.9) and sqrt(2/0.9), rounded.
  it.each([
    ["along m", 4.42, 3.47, 36, 1.81],
    ["along n, for n is more than m", 4.42, 4.62, 36, 2.41],
  ])("AISC Design Guide 1, 2nd ed., Example 4.7 (inputs from memory), bearing side %s", (_, f_p, l, F_y, t) => {
    near(cantileverMoment.value({ f_p: f_p * ksi, l: l * inch }) / plateStrength.value({ F_y: F_y * ksi, t_p: t * inch }), 1, 0.012);
  });
});

describe("the moment two rods hold beside 90 kip: AISC Design Guide 1, 3rd ed., Example 4.7-14", () => {
  const rowUnder = (M: number): number => {
    const P = 90 * kip;
    const [f, N_l, q_m] = [5.5 * inch, 14 * inch, 61.9 * (kip / inch)];
    return rowPull.value({ q_m, Y: largeMomentBlock.value({ f, N_l, M_r: aboutRods.value({ M: M * kipInch, P, f }), q_m }), P }) / kip;
  };

  /**
   * The guide prints 12.7 kip for a 7/8 in rod of grade 55, 25.4 for two, and 837 kip-in; by its own formula one rod has 25.4 and two 50.7, with which it is
   * about 1,104. The formula is taken. Its interaction of both directions, (700/837)² + (450/837)² = 0.988, is no statics of the rods: here the exact
   * contact takes both moments at once, and its answer is told beside the one-way sum.
   */
  it("two rods of 12.7 kip as printed are pulled by 837 kip-in, two of 25.4 by about 1,104", () => {
    near(rodStrength.value({ F_u: 75 * ksi, d_a: 0.875 * inch }) / kip, 25.4);
    near(rowUnder(837), 25.4, 0.012);
    near(rowUnder(1104), 50.7, 0.005);
    near((700 / 837) ** 2 + (450 / 837) ** 2, 0.988, 0.001);
  });
});

/** AISC 360-22 Eq. J3-1 on the nominal area, phi 0.75: diameter, then grades 36, 55 and 105, kip. */
const rods: readonly (readonly [number, readonly number[]])[] = [
  [0.5, [6.4, 8.3, 13.8]],
  [0.625, [10.0, 12.9, 21.6]],
  [0.75, [14.4, 18.6, 31.1]],
  [0.875, [19.6, 25.4, 42.3]],
  [1, [25.6, 33.1, 55.2]],
  [1.125, [32.4, 41.9, 69.9]],
  [1.25, [40.0, 51.8, 86.3]],
  [1.375, [48.4, 62.6, 104]],
  [1.5, [57.7, 74.6, 124]],
  [1.75, [78.5, 102, 169]],
  [2, [103, 133, 221]],
];

describe("rods by the AISC strength, a whole table of them", () => {
  it.each(rods)("%d in: %j kip of grades 36, 55 and 105", (d, strengths) => {
    [58, 75, 125].forEach((F_u, i) => near(rodStrength.value({ F_u: F_u * ksi, d_a: d * inch }) / kip, strengths[i], 0.009));
  });
});
