/** Published footings on soil: bearing capacity by the equations of several books, pads pulled up, and two-way eccentricity. */
import { describe, expect, it } from "vitest";
import { depthQ, depthRatio, factorC, factorGamma, factorQ, ultimateBearing } from "../../../server/src/checks/footing/bearing-equation.js";
import { coneVolume } from "../../../server/src/checks/footing/uplift.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { solveFootingContact } from "../../../server/src/mechanics/partial-contact.js";
import { foot } from "../given.js";
import { degree, pcf, psf } from "../ground.js";

const near = (found: number, expected: number, part = 0.005) => expect(Math.abs(found / expected - 1), `${found} against ${expected}`).toBeLessThan(part);

describe("Bearing capacity factors, a whole table of them", () => {
  // Prandtl, Reissner and Vesic in closed form; then N-gamma of Meyerhof and of Hansen, which are not taken: at 30° 15.7 and 15.1 against 22.4.
  it.each([
    [5, 1.568, 6.489, 0.449, 0.07, 0.075],
    [10, 2.471, 8.345, 1.224, 0.367, 0.389],
    [15, 3.941, 10.977, 2.648, 1.129, 1.182],
    [20, 6.399, 14.835, 5.386, 2.871, 2.948],
    [25, 10.662, 20.721, 10.876, 6.766, 6.758],
    [30, 18.401, 30.14, 22.402, 15.668, 15.07],
    [32, 23.177, 35.49, 30.215, 22.022, 20.786],
    [34, 29.44, 42.164, 41.064, 31.146, 28.774],
    [35, 33.296, 46.124, 48.029, 37.152, 33.921],
    [36, 37.752, 50.585, 56.311, 44.426, 40.053],
    [38, 48.933, 61.352, 78.024, 64.074, 56.174],
    [40, 64.195, 75.313, 109.411, 93.691, 79.541],
    [45, 134.874, 133.874, 271.748, 262.742, 200.811],
  ])("at %d degrees", (angle, q, c, vesic, meyerhof, hansen) => {
    const phi = angle * degree;
    const N_q = factorQ.value({ phi });
    near(N_q, q, 0.0003);
    near(factorC.value({ N_q, phi }), c, 0.0003);
    near(factorGamma.value({ N_q, phi }), vesic, 0.001);
    // Both others from the same N_q: (N_q - 1) tan 1.4 phi and 1.5 (N_q - 1) tan phi.
    near((N_q - 1) * Math.tan(1.4 * phi), meyerhof, 0.01);
    near(1.5 * (N_q - 1) * Math.tan(phi), hansen, 0.01);
  });

  // Das, Example 8.1, the ground below a wall: phi 18: 13.1, 5.26, 4.07; phi 15: 10.98, 3.94, 2.65.
  it.each([[18, 13.1, 5.26, 4.07], [15, 10.98, 3.94, 2.65]])("at %d degrees are %d, %d and %d as printed", (angle, c, q, gamma) => {
    const phi = angle * degree;
    const N_q = factorQ.value({ phi });
    near(factorC.value({ N_q, phi }), c, 0.001);
    near(N_q, q, 0.001);
    near(factorGamma.value({ N_q, phi }), gamma, 0.002);
  });
});

type Soil = Parameters<typeof ultimateBearing>[0];
const bearing = (soil: Soil, base: { B: number; B_e: number; L_e: number; depth: number }) => ultimateBearing(soil, { ...base, waterHeight: 0, N: 1, V: 0 }, plainCalc);

/**
 * Published examples whose books use other factors than De Beer's of shape and Hansen's of depth, which go with Vesic's N-gamma here. Each is stated with
 * what the equation of the check gives; the general equation is taken since it alone knows depth, shape and a load that leans.
 */
describe("Published bearing capacities by other equations", () => {
  // Das, Example 3.1, Terzaghi: 1.3 c Nc + q Nq + 0.4 gamma B Ng = 10,763 psf, Nc 17.69, Nq 7.439, Ng 3.64. The general equation by hand: 320 x 14.835 x 1.4313 x 1.2242 +
  // 345 x 6.399 x 1.364 x 1.1892 + 0.5 x 115 x 5 x 5.386 x 0.6 = 12,829 psf: 19 % more.
  it("a square of 5 ft, 3 ft down, 20 degrees and 320 psf: 10,763 psf by Terzaghi, 12,830 here", () => {
    near(1.3 * 320 * 17.69 + 345 * 7.439 + 0.4 * 115 * 5 * 3.64, 10763, 0.001);
    const q = bearing({ frictionAngle: 20 * degree, cohesion: 320 * psf, unitWeight: 115 * pcf, waterTable: undefined }, { B: 5 * foot, B_e: 5 * foot, L_e: 5 * foot, depth: 3 * foot });
    near(q / psf, 12829, 0.001);
  });

  // The same in meters (from memory): 1.5 m square, 1 m down, 17.8 kN/m³, 15.2 kPa: 520.9 kPa, by the book 521. Coduto, Example 16.1: strip of 4 ft, 3 ft down, 110 pcf, 200 psf:
  // 6,794 psf. The general equation by hand: 15.2 x 14.835 x 1.4313 x 1.2489 + 17.8 x 6.399 x 1.364 x 1.2102 + 0.5 x 17.8 x 1.5 x 5.386 x 0.6 = 634.2 kPa; 200 x 14.835 x 1.2801 +
  // 330 x 6.399 x 1.2365 + 0.5 x 110 x 4 x 5.386 = 7,594 psf.
  it("a square of 1.5 m: 520.9 kPa by Terzaghi, 634 here; a strip of 4 ft: 6,794 psf by Terzaghi, 7,594 here", () => {
    near(1.3 * 15.2 * 17.69 + 17.8 * 7.439 + 0.4 * 17.8 * 1.5 * 3.64, 520.9, 0.001);
    near(200 * 17.69 + 330 * 7.439 + 0.5 * 110 * 4 * 3.64, 6794, 0.001);
    const square = bearing({ frictionAngle: 20 * degree, cohesion: 15.2e3, unitWeight: 17.8e3, waterTable: undefined }, { B: 1.5, B_e: 1.5, L_e: 1.5, depth: 1 });
    near(square / 1e3, 634.2, 0.002);
    const strip = bearing({ frictionAngle: 20 * degree, cohesion: 200 * psf, unitWeight: 110 * pcf, waterTable: undefined }, { B: 4 * foot, B_e: 4 * foot, L_e: 1e9, depth: 3 * foot });
    near(strip / psf, 7594, 0.002);
  });

  // Coduto, Geotechnical Engineering, Example 16.4, Meyerhof's factors: 725.1 kN with the depth factor on the whole width of 1 m, 751.8 on the effective 0.8 m. By the check:
  // 18 x 18.401 x 1.3079 x 1.2887 + 0.5 x 18 x 0.8 x 22.402 x 0.7867 = 685.1 kPa on 1.2 m² are 822 kN.
  it("1 m by 1.5 m, 0.1 m off its middle, 30 degrees: 725 or 752 kN by Meyerhof, 822 here; the depth factor is on the whole width", () => {
    const [Nq, Ng] = [18.401, 15.668];
    const meyerhof = (B: number) => (18 * Nq * 1.16 * (1 + 0.1 * Math.sqrt(3) * (1 / B)) + 0.5 * 18 * 0.8 * Ng * 1.16 * (1 + 0.1 * Math.sqrt(3) * (1 / B))) * 1.2;
    near(meyerhof(1), 725.1, 0.001);
    near(meyerhof(0.8), 751.8, 0.001);
    const q = bearing({ frictionAngle: 30 * degree, cohesion: 0, unitWeight: 18e3, waterTable: undefined }, { B: 1, B_e: 0.8, L_e: 1.5, depth: 1 });
    near((q * 0.8 * 1.5) / 1e3, 822, 0.002);
  });

  // Das, Example 3.4 and a later one: strips, the same equation as here.
  it("strips have the depth factors that are printed: 1.16976 at 4 ft of 6 ft and 35 degrees, 1.16 at 1.5 m of 2 m and 40 degrees", () => {
    expect(depthQ.value({ phi: 35 * degree, k_d: depthRatio.value({ d: 4 * foot, B: 6 * foot }) })).toBeCloseTo(1.16976, 5);
    expect(depthQ.value({ phi: 40 * degree, k_d: depthRatio.value({ d: 1.5, B: 2 }) })).toBeCloseTo(1.16, 2);
  });
});

describe("Published resistance of footings that are pulled up", () => {
  // Das, Example 4.7 (Meyerhof and Adams): a round footing of 1.5 m, 1.5 m down, 17.4 kN/m³, 35 degrees: F_q 2.6385, 121.7 kN. Example 4.8: 1.5 m by 3 m in clay of
  // 52 kPa, 1.8 m down, 18.9 kN/m³: 540.6 kN. Both ultimate.
  it.each([
    ["sand, a square as large as the circle", Math.sqrt(Math.PI / 4) * 1.5, Math.sqrt(Math.PI / 4) * 1.5, 1.5, 17.4, 121.7],
    ["clay", 1.5, 3, 1.8, 18.9, 540.6],
  ])("the cone of soil at 30 degrees, six tenths of its weight, keeps a factor of 1.5 and more on it: %s", (_, B, L, h, gamma, Q) => {
    const cone = gamma * coneVolume.value({ B, L, h, theta: 30 * degree });
    expect(Q / (0.6 * cone)).toBeGreaterThan(1.5);
    expect(Q / (0.6 * cone)).toBeLessThan(3);
  });
});

describe("Both ways off the middle, a whole table", () => {
  // Largest pressure over the mean, by exact integration of the part in contact; e_x/B from 0 in steps of 0.02, a row for each e_y/L.
  const rows: readonly (readonly [number, readonly number[]])[] = [
    [0.0, [1.0, 1.12, 1.24, 1.36, 1.48, 1.6, 1.72, 1.84, 1.96, 2.08, 2.22, 2.38, 2.56, 2.78, 3.03, 3.33]],
    [0.05, [1.3, 1.42, 1.54, 1.66, 1.78, 1.9, 2.02, 2.14, 2.27, 2.42, 2.58, 2.76, 2.97, 3.22, 3.51, 3.87]],
    [0.1, [1.6, 1.72, 1.84, 1.96, 2.08, 2.2, 2.34, 2.48, 2.63, 2.8, 2.99, 3.21, 3.46, 3.74, 4.08, 4.49]],
    [0.15, [1.9, 2.02, 2.14, 2.27, 2.41, 2.55, 2.71, 2.88, 3.07, 3.27, 3.5, 3.76, 4.05, 4.38, 4.78, 5.26]],
    [0.2, [2.22, 2.36, 2.5, 2.65, 2.82, 2.99, 3.18, 3.39, 3.61, 3.86, 4.14, 4.44, 4.79, 5.19, 5.66, 6.23]],
    [0.25, [2.67, 2.83, 3.0, 3.19, 3.38, 3.59, 3.82, 4.07, 4.35, 4.65, 4.98, 5.35, 5.77, 6.25, 6.82, 7.5]],
    [0.3, [3.33, 3.54, 3.75, 3.98, 4.23, 4.49, 4.78, 5.09, 5.43, 5.81, 6.23, 6.69, 7.21, 7.81, 8.52, 9.37]],
  ];
  it.each(rows)("e_y/L of %d", (ey, factors) => {
    factors.forEach((K, i) => {
      const [B, L, P] = [2, 3, 600e3];
      const found = solveFootingContact({ width: B, length: L, P, Mx: -P * ey * L, My: P * 0.02 * i * B });
      expect("unstable" in found ? Number.NaN : Math.abs(found.qmax / 100e3 - K), `e_x/B ${0.02 * i}`).toBeLessThan(0.0075);
    });
  });
});
