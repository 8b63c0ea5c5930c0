import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coneCapacity, overlapShare, rockCone, type ConeInputs } from "../../../server/src/checks/rock/cone.js";
import { bondResistance, dowelBond } from "../../../server/src/checks/rock/dowel-bond.js";
import { barStrength, dowelSteel } from "../../../server/src/checks/rock/dowel-steel.js";
import { rockBearing } from "../../../server/src/checks/rock/bearing.js";
import { pressureIn, pullIn } from "../../../server/src/checks/rock/rows.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, inch, kip, kipFoot, ksi, psi, say } from "../given.js";
import { allowable, degree, outcomeOf, pcf, psf, read, standing, strengthOf, weigh } from "../ground.js";

const bar = { name: "no. 6", diameter: 0.75 * inch, area: 0.44 * inch ** 2 };
const granite = { kind: "rock", class: "granite", condition: "sound", "unit weight": 165 * pcf, "dowel bond": 200 * psi, "bond safety": 3 };
const pad = (dowels: object = {}, ground: object = {}, more: object = {}) =>
  standing({
    foundation: { kind: "footing on rock", width: 4 * foot, length: 4 * foot, thickness: 18 * inch, dowels: { count: 4, spacing: 24 * inch, bar, grade: "Gr 60", hole: 1.5 * inch, "into rock": 47.7 * inch, ...dowels }, ...more },
    ground: { ...granite, ...ground },
  });

describe("Steel of the dowels, ACI 318-19 22.4.3.1", () => {
  // ASTM A615 nominal areas; phi 0.9. No. 6: 0.9 x 60 x 0.44 = 23.76 kip; no. 8: 42.66 kip.
  it.each([
    ["no. 6 Gr 60", 0.44, 60, 23.76],
    ["no. 8 Gr 60", 0.79, 60, 42.66],
    ["no. 6 Gr 80", 0.44, 80, 31.68],
  ])("%s", (_, area, fy, strength) => {
    expect(barStrength.value({ f_y: fy * ksi, A_s: area * inch ** 2 }) / kip).toBeCloseTo(strength, 9);
  });

  it("weighs the pull of one dowel against it", () => {
    const found = weigh(dowelSteel, pad(), strengthOf({ P: -100 * kip }));
    expect(found.demand / kip).toBeCloseTo((100 - 0.9 * 3.6) / 4, 9);
    expect(found.capacity / kip).toBeCloseTo(23.76, 9);
    expect(dowelSteel.advise!(read(dowelSteel, pad()).inputs, found, say)).toBe("one no. 6 dowel pulls 24.19 kip; its steel holds 23.76 kip. Use a larger bar or more dowels.");
  });
});

describe("Bond of the dowels to the rock", () => {
  // RK-2: T 15 kip, hole 1.5 in, 200 psi, FS 3 asks for 47.7 in. Coverage rows: a no. 8 bar to yield (47.4 kip) in a 3 in hole at FS 2 asks for
  // 8.4, 4.2 and 1.9 ft at 100, 200 and 450 psi.
  it.each([
    [1.5 * inch, 47.7 * inch, 200, 3, 15],
    [3 * inch, 8.4 * foot, 100, 2, 47.4],
    [3 * inch, 4.2 * foot, 200, 2, 47.4],
    [3 * inch, 1.9 * foot, 450, 2, 47.4],
  ])("hole %d m, depth %d m, %d psi over %d holds %d kip", (d_h, L_b, bond, FS, T) => {
    const found = bondResistance.value({ d_h, L_b, tau_u: bond * psi, FS }) / kip;
    expect(Math.abs(found / T - 1)).toBeLessThan(0.025);
  });

  it("RK-2 to the digits it is given in", () => {
    expect(weigh(dowelBond, pad(), allowable({ P: -60 * kip })).capacity / kip).toBeCloseTo(15, 1);
  });

  it("has no default and says whom to ask", () => {
    expect(read(dowelBond, pad({}, { "dowel bond": undefined })).missing.join()).toMatch(/ask the geotechnical engineer, and prove it by pull tests/);
  });
});

const cone = (depth: number, angle: number, weight: number, safety: number, spacing = Number.NaN): ConeInputs =>
  ({ intoRock: depth * foot, unitWeight: weight * pcf, isRockWet: false, angle: angle * degree, angleFrom: "", safety, spacing: spacing * foot }) as ConeInputs;

describe("Rock cone by its weight", () => {
  // RK-1 and the coverage rows: depth at which the cone over the factor of safety holds the pull.
  it.each([
    [7.03, 30, 165, 2, 10],
    [4.87, 45, 165, 2, 10],
    [6.34, 45, 150, 2, 20],
    [9.14, 30, 150, 2, 20],
    [7.99, 45, 150, 2, 40],
    [11.52, 30, 150, 2, 40],
  ])("%d ft deep, half angle %d°, %d pcf over %d holds %d kip", (depth, angle, weight, safety, pull) => {
    const found = coneCapacity(cone(depth, angle, weight, safety), 0, plainCalc) / kip;
    expect(Math.abs(found / pull - 1)).toBeLessThan(0.005);
  });

  // The row formula takes the ridge gamma D² tan(a) s: 8.16 ft for 20 kip and 11.55 ft for 40 kip at 4 ft spacing, 45°, 150 pcf, FS 2.
  it.each([
    [8.165, 20],
    [11.55, 40],
  ])("a row 4 ft apart and %d ft deep holds a little less than the ridge of the row formula, %d kip", (depth, pull) => {
    const found = coneCapacity(cone(depth, 45, 150, 2, 4), 1, plainCalc) / kip;
    expect(found).toBeLessThan(pull);
    expect(found).toBeGreaterThan(0.93 * pull);
  });

  it("comes to the ridge of the row formula as the spacing goes to nothing", () => {
    const found = coneCapacity(cone(8, 45, 150, 1, 0.008), 1, plainCalc) / kip;
    expect(found / (0.15 * 64 * 0.008)).toBeCloseTo(1, 5);
  });

  // Volume of a cone of unit depth and half angle 45° between planes at ±u, by adding up strips.
  it.each([0.1, 0.25, 0.5, 0.75, 0.9, 1])("the share at spacing ratio %d is the volume between the planes", (u) => {
    const strips = 4000;
    let volume = 0;
    for (let i = 0; i < strips; i += 1) {
      const x = (u * (i + 0.5)) / strips;
      const layers = 400;
      for (let k = 0; k < layers; k += 1) {
        const z = x + ((1 - x) * (k + 0.5)) / layers;
        volume += (2 * 2 * Math.sqrt(z * z - x * x) * (1 - x) * u) / layers / strips;
      }
    }
    expect(overlapShare.value({ u })).toBeCloseTo(volume / (Math.PI / 3), 3);
  });

  /** Volume of the joined cones of one dowel, over that of a lone cone: unit depth, half angle 45°, counted to `west` and `east` of its axis in both directions. */
  const sharedVolume = (west: number, east: number): number => {
    const cells = 500;
    const step = (west + east) / cells;
    let volume = 0;
    for (let i = 0; i < cells; i += 1) for (let k = 0; k < cells; k += 1) volume += step ** 2 * Math.max(0, 1 - Math.hypot(-west + step * (i + 0.5), -west + step * (k + 0.5)));
    return volume / (Math.PI / 3);
  };

  it.each([0.1, 0.2, 0.5, 0.7071, 0.85])("in a square the share of both directions at ratio %d is less than four dowels lift, and within 5 % of an endless grid", (u) => {
    const found = overlapShare.value({ u }) ** 2;
    expect(found).toBeLessThan(sharedVolume(u, 1));
    expect(Math.abs(found / sharedVolume(u, u) - 1)).toBeLessThan(0.05);
  });

  it("holds more where it is deeper or the dowels are farther apart", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 15, noNaN: true }), fc.double({ min: 0.3, max: 20, noNaN: true }), fc.double({ min: 1, max: 2, noNaN: true }), fc.constantFrom(1 as const, 2 as const), (depth, spacing, factor, directions) => {
        const of = (d: number, s: number) => coneCapacity(cone(d, 45, 150, 2, s), directions, plainCalc);
        const held = of(depth, spacing);
        expect(of(depth * factor, spacing)).toBeGreaterThanOrEqual(held * (1 - 1e-9));
        expect(of(depth, spacing * factor)).toBeGreaterThanOrEqual(held * (1 - 1e-9));
        expect(held).toBeLessThanOrEqual(coneCapacity(cone(depth, 45, 150, 2), 0, plainCalc) * (1 + 1e-9));
      }),
    );
  });

  it("is cut by a free face, and by the plane midway to the next pad of the line", () => {
    const of = (face: number | undefined, neighbor?: number) =>
      coneCapacity({ ...cone(4, 45, 150, 2), face: face === undefined ? undefined : face * foot, neighbor: neighbor === undefined ? undefined : neighbor * foot }, 0, plainCalc);
    // 4 ft deep and 45°: 4 ft wide to each side. Half of it is left where the face is at the dowel.
    expect(of(4)).toBeCloseTo(of(undefined), 6);
    expect(of(0.1) / of(undefined)).toBeGreaterThan(0.5);
    expect(of(0.1) / of(undefined)).toBeLessThan(0.55);
    expect(of(2) / of(undefined)).toBeCloseTo((1 + overlapShare.value({ u: 0.5 })) / 2, 9);
    expect(of(undefined, 2)).toBe(of(2));
    expect(of(1, 2)).toBe(of(1));
    expect(of(3, 2)).toBe(of(2));
  });

  it("stands alone where pads are far apart, and shares the rock between near ones", () => {
    const at = (distance: number) =>
      read(rockCone, { ...pad(), places: [{ x: 0, y: 0 }, { x: distance * foot, y: 0 }] } as never).inputs.neighbor! / foot;
    // 24 in between the dowels of each pad: (10 - 2)/2 ft from the outer ones to the plane midway.
    expect(at(10)).toBeCloseTo(4, 9);
    expect(at(2)).toBeCloseTo(0.5, 9);
    expect(read(rockCone, pad()).inputs.neighbor).toBeUndefined();
  });

  it("takes the half angle by the condition of the rock unless it is stated", () => {
    const of = (ground: object) => read(rockCone, pad({}, ground)).inputs.angle / degree;
    expect(of({})).toBeCloseTo(45, 9);
    expect(of({ condition: "fractured" })).toBeCloseTo(30, 9);
    expect(of({ condition: "weathered" })).toBeCloseTo(30, 9);
    expect(of({ condition: "fractured", "cone angle": 40 * degree })).toBeCloseTo(40, 9);
    expect(read(rockCone, pad({}, { condition: undefined })).missing).toContain("condition of the rock, or the cone angle");
  });

  it("counts the rock as submerged where there is a water table", () => {
    const held = (ground: object) => weigh(rockCone, pad({ count: 1 }, ground, { depth: 2 * foot }), allowable({ P: -100 * kip })).capacity;
    expect(held({ "water table": 5 * foot }) / held({})).toBeCloseTo((165 - 62.4) / 165, 9);
  });

  it("takes neighbors in both directions for four dowels, in one for two, in none for one", () => {
    const held = (count: number) => weigh(rockCone, pad({ count }), allowable({ P: -100 * kip })).capacity;
    // u = 24/(2 x 47.7) = 0.25157 at 45°.
    const share = overlapShare.value({ u: 24 / 95.4 });
    expect(held(2) / held(1)).toBeCloseTo(share, 9);
    expect(held(4) / held(1)).toBeCloseTo(share ** 2, 9);
    // 165 pcf x pi/3 x 3.975³ / 3 = 3.617 kip.
    expect(held(1) / kip).toBeCloseTo(3.617, 2);
  });
});

describe("Bearing on rock", () => {
  // IBC 2021 Table 1806.2: 12,000 psf on crystalline bedrock, 4,000 psf on sedimentary and foliated rock. Statics of a 4 ft square pad, 3.6 kip.
  it.each([
    ["granite", 12_000],
    ["slate", 4_000],
  ])("on %s", (name, allowed) => {
    const found = weigh(rockBearing, pad({}, { class: name }), allowable({ P: 28.4 * kip }));
    expect(found.demand / psf).toBeCloseTo(2000, 6);
    expect(found.capacity / psf).toBeCloseTo(allowed, 6);
  });

  it("with an edge lifted takes the pressure on the part in contact", () => {
    // N 32 kip, M 32 kip-ft: e = 1 ft, qmax = 2 x 32/(3 x 4 x (2 - 1)) = 5.333 ksf.
    expect(weigh(rockBearing, pad(), allowable({ P: 28.4 * kip, My: 32 * kipFoot })).demand / psf).toBeCloseTo(5333.3, 0);
  });

  it("where dowels hold the pad down takes what their pull adds", () => {
    // N 5.6 kip, M 32 kip-ft, rows 2 ft apart: g = (8 - 2)/6 = 1 ft; T = (32 - 5.6)/(1 + 1) = 13.2 kip; C = 18.8 kip on a strip 3 ft wide, 4 ft long.
    expect(weigh(rockBearing, pad(), allowable({ P: 2 * kip, My: 32 * kipFoot })).demand / psf).toBeCloseTo((2 * 18.8 * 1000) / 12, 6);
    // One dowel in the middle: C = 3 M/B = 24 kip on half of the pad.
    expect(weigh(rockBearing, pad({ count: 1 }), allowable({ P: 2 * kip, My: 32 * kipFoot })).demand / psf).toBeCloseTo((2 * 24 * 1000) / 8, 6);
  });

  it("adds the two directions at a corner", () => {
    // Pure moments of 8 kip-ft each way and no axial force: C = 8/2 = 4 kip each way, 2 x 4/(3 x 4 x 1) = 0.6667 ksf, twice.
    const found = weigh(rockBearing, pad(), allowable({ P: -3.6 * kip, Mx: 8 * kipFoot, My: -8 * kipFoot }, [{ factor: 1, type: "D" }]));
    expect(found.demand / psf).toBeCloseTo(1333.33, 1);
  });

  it("is nothing while all dowels pull, and nothing stands on the rock", () => {
    expect(weigh(rockBearing, pad(), allowable({ P: -10 * kip, My: 6 * kipFoot })).demand).toBe(0);
    expect(weigh(rockBearing, pad(), allowable({ P: -10 * kip })).demand).toBe(0);
  });

  it("without dowels is told until the load leaves the pad", () => {
    const bare = pad({}, {}, { dowels: undefined });
    expect(weigh(rockBearing, bare, allowable({ P: 28.4 * kip, My: 32 * kipFoot })).demand / psf).toBeCloseTo(5333.3, 0);
    const outcome = outcomeOf(rockBearing, bare, allowable({ P: 2 * kip, My: 32 * kipFoot }));
    expect(outcome.type === "unchecked" && outcome.because).toMatch(/hold it down by dowels/);
  });

  it("balances the axial force: bearing less pull, in one direction", () => {
    const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(double(-60, 60), double(1e-3, 80), fc.constantFrom(1, 2, 3, 5), fc.constantFrom(1, 2, 4), (N, M, rows, inRow) => {
        const way = { across: 5 * foot, along: 4 * foot, rows, inRow, spacing: 0.9 * foot };
        const T = pullIn(way, N * kip, M * kipFoot, plainCalc) / kip;
        const q = pressureIn(way, N * kip, M * kipFoot, plainCalc) / psf / 1000;
        expect(T).toBeGreaterThanOrEqual(0);
        expect(q).toBeGreaterThanOrEqual(0);
        if (q === 0 || T <= 1e-9 || rows > 2) return;
        // A strip (B + s_o)/2 wide is pressed, half of the pad where there is one row.
        const strip = rows === 1 ? 2.5 : (5 + 0.9 * (rows - 1)) / 2;
        const C = (q * strip * 4) / 2;
        expect(C - T * inRow).toBeCloseTo(N, 6);
        expect(C * (2.5 - strip / 3) + T * inRow * (rows === 1 ? 0 : 0.45 * (rows - 1))).toBeCloseTo(M, 6);
      }),
      { numRuns: 500 },
    );
  });

  it("takes a wall across its footing, for the length that acts with one post", () => {
    const wall = (more: object = {}) =>
      standing({
        foundation: { kind: "wall on footing", thickness: 18 * inch, height: 4 * foot, footing: { width: 42 * inch, thickness: 14 * inch }, "length per post": 10 * foot, ...more },
        ground: granite,
      });
    const dowels = { spacing: 16 * inch, bar, grade: "Gr 60" };
    // 15.125 kip of concrete and 4.875 kip press 35 ft2: 571.4 psf; with 7 kip-ft M/(L B2/6) = 342.9 psf more.
    expect(weigh(rockBearing, wall(), allowable({ P: 4.875 * kip })).demand / psf).toBeCloseTo(571.43, 1);
    expect(weigh(rockBearing, wall({ dowels }), allowable({ P: 4.875 * kip, Mx: 7 * kipFoot })).demand / psf).toBeCloseTo(914.29, 1);
    // One row in the middle: C = 3 x 40/3.5 = 34.29 kip on half of 3.5 ft.
    expect(weigh(rockBearing, wall({ dowels }), allowable({ P: 4.875 * kip, Mx: 40 * kipFoot })).demand / psf).toBeCloseTo((4 * 34285.7) / 35, 0);
    // Toe 6 in, heel 18 in puts 20 kip 6 in off the middle: 10 kip-ft.
    const off = wall({ footing: { width: 42 * inch, thickness: 14 * inch, toe: 6 * inch, heel: 18 * inch }, dowels });
    expect(weigh(rockBearing, off, allowable({ P: 4.875 * kip })).demand / psf).toBeCloseTo(571.43 + (6 * 10_000) / (10 * 3.5 ** 2), 1);
    // Where soil is held back the wall is looked at among the walls.
    expect(rockBearing.applies(wall({ dowels, retains: 3 * foot }))).toBe(false);
    expect(rockBearing.applies(wall({ dowels, retains: 0 }))).toBe(true);
  });

  it("has no presumptive value on weathered rock", () => {
    expect(read(rockBearing, pad({}, { class: "weathered granite" })).blocks.join()).toMatch(/weathered/);
    expect(read(rockBearing, pad({}, { condition: "fractured" })).blocks.join()).toMatch(/the rock is fractured, and presumptive values are of sound rock: state its bearing from an investigation/);
    expect(read(rockBearing, pad({}, { condition: "fractured", bearing: 6000 * psf })).blocks).toEqual([]);
  });
});
