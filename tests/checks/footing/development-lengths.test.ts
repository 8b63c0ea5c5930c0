/** Lengths of bars, a whole table of them: ACI 318-19 Table 25.4.2.3, 25.4.9, uncoated bars of Gr 60 in normalweight concrete. */
import { describe, expect, it } from "vitest";
import { readBar } from "../../../server/src/catalog/bars.js";
import { compressionLength, hooked, straight } from "../../../server/src/checks/footing/bar-development.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { inch, ksi, psi } from "../given.js";

const near = (found: number, expected: number, part = 0.005) => expect(Math.abs(found / expected - 1), `${found} against ${expected}`).toBeLessThan(part);

const bar = (number: number) => readBar(`no. ${number}`)!.diameter;
const straightOf = (number: number, fc: number, spacing: number) => straight({ diameter: bar(number), spacing: spacing * bar(number) }, 3 * inch, 60 * ksi, Math.sqrt(fc) * psi, false, "ACI 318-19", plainCalc);

/** Bar, then lengths in 3 and 4 ksi: roomy bars, close bars, in compression (a textbook rounds the last to 8 in for no. 3 in 4 ksi). */
const lengths: readonly (readonly [number, readonly number[], readonly number[], readonly number[]])[] = [
  [3, [16.4, 14.2], [24.6, 21.3], [8.2, 8]],
  [4, [21.9, 19.0], [32.9, 28.5], [11.0, 9.5]],
  [5, [27.4, 23.7], [41.1, 35.6], [13.7, 11.9]],
  [6, [32.9, 28.5], [49.3, 42.7], [16.4, 14.2]],
  [7, [47.9, 41.5], [71.9, 62.3], [19.2, 16.6]],
  [8, [54.8, 47.4], [82.2, 71.2], [21.9, 19.0]],
  [9, [61.8, 53.5], [92.7, 80.3], [24.7, 21.4]],
  [10, [69.6, 60.2], [104.3, 90.4], [27.8, 24.1]],
  [11, [77.2, 66.9], [115.8, 100.3], [30.9, 26.8]],
];

describe("development lengths", () => {
  it.each(lengths)("no. %d: %j in roomy, %j in close, %j in compression", (number, roomy, close, pressed) => {
    [3000, 4000].forEach((fc, i) => {
      near(straightOf(number, fc, 8) / inch, roomy[i], 0.006);
      near(straightOf(number, fc, 2) / inch, close[i], 0.006);
      near(compressionLength.value({ f_y: 60 * ksi, s_c: Math.sqrt(fc) * psi, d_b: bar(number) }) / inch, pressed[i], 0.007);
    });
  });

  // Structural Concrete (textbook to ACI 318-14), Eq. 7.10a to 7.13a: multiples of the bar in 4 ksi and Gr 60.
  it.each([
    ["no. 6, roomy", 6, 8, 38],
    ["no. 7, roomy", 7, 8, 47.5],
    ["no. 6, close", 6, 2, 57],
    ["no. 7, close", 7, 2, 71.2],
  ] as const)("in 4 ksi %s bars take %d diameters apart: %d diameters long", (_, number, spacing, multiple) => {
    near(straightOf(number, 4000, spacing) / bar(number), multiple, 0.003);
  });

  // 25.4.3.1 with psi_o 1.25 and psi_r 1.6 or 1.0; the earlier edition without reductions.
  it.each([
    [4, 11.3, 10.6, 11.0, 9.5],
    [5, 15.7, 14.8, 13.7, 11.9],
    [6, 20.7, 19.4, 16.4, 14.2],
    [7, 26.1, 24.5, 19.2, 16.6],
    [8, 31.9, 29.9, 21.9, 19.0],
    [9, 38.2, 35.8, 24.7, 21.4],
    [10, 45.6, 42.8, 27.8, 24.1],
    [11, 53.4, 50.0, 30.9, 26.8],
  ])("a hooked no. %d close to others: %d and %d in by ACI 318-19 in 3 and 4 ksi, %d and %d by ACI 318-14", (number, new3, new4, old3, old4) => {
    const of = (fc: number, edition: string) => hooked({ diameter: bar(number), spacing: 3 * bar(number) }, 60 * ksi, fc * psi, Math.sqrt(fc) * psi, edition, plainCalc) / inch;
    near(of(3000, "ACI 318-19"), new3, 0.006);
    near(of(4000, "ACI 318-19"), new4, 0.006);
    near(of(3000, "ACI 318-14"), old3, 0.006);
    near(of(4000, "ACI 318-14"), old4, 0.006);
  });
});
