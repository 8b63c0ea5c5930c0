import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pierBroms } from "../../../server/src/checks/pier/broms.js";
import { foot, inch, kip, kipFoot, psi, say } from "../given.js";
import { allowable, degree, lb, pcf, psf, read, standing, stepsFor, weigh } from "../ground.js";

const ksf = 1000 * psf;
const pier = (D: number, ground: object, more: object = {}) => standing({ foundation: { kind: "pier", diameter: D * foot, depth: 8 * foot, ...more }, ground: { kind: "soil", ...ground } as never });
const clay = (c: number, safety: number) => ({ cohesion: c * ksf, "lateral safety": safety });
const sand = (gamma: number, phi: number, safety: number) => ({ "friction angle": phi * degree, "unit weight": gamma * 1000 * pcf, "lateral safety": safety });
const push = (V: number, M: number) => allowable({ Vx: V * kip, My: M * kipFoot });

describe("A short pier by Broms", () => {
  // Clay, V kip, M kip-ft, c ksf, D ft: f, g, L ft, Mmax kip-ft. The second is the first with a factor of 2.5. Recomputed.
  it.each([
    [1.2, 12, 1, 2, 1, 0.0667, 1.8643, 4.931, 15.64],
    [1.2, 12, 1, 2, 2.5, 0.1667, 2.9533, 6.12, 39.25],
    [5, 60, 1.5, 3, 1, 0.1235, 2.8598, 7.4833, 82.809],
  ])("in clay: %d kip and %d kip-ft on %d ksf, %d ft wide, times %d", (V, M, c, D, safety, f, g, L, Mmax) => {
    const support = pier(D, clay(c, safety));
    const { values } = stepsFor(pierBroms, support, push(V, M));
    expect(values.get("f")! / foot).toBeCloseTo(f, 4);
    expect(values.get("g")! / foot).toBeCloseTo(g, 3);
    expect(values.get("M_max")! / kipFoot).toBeCloseTo(Mmax, 2);
    expect(weigh(pierBroms, support, push(V, M)).demand / foot).toBeCloseTo(L, 3);
  });

  // The same clay in the form of the sign-support specifications: L = 1.5 D + q (1 + sqrt(2 + (4 H' + 6 D)/q)), q = V/(9 c D), H' = M/V.
  it("in clay agrees with the form of the sign-support specifications", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 20, noNaN: true }), fc.double({ min: 0, max: 200, noNaN: true }), fc.double({ min: 0.3, max: 5, noNaN: true }), fc.double({ min: 1, max: 5, noNaN: true }), (V, M, c, D) => {
        const q = V / (9 * c * D);
        const L = 1.5 * D + q * (1 + Math.sqrt(2 + (4 * (M / V) + 6 * D) / q));
        expect(weigh(pierBroms, pier(D, clay(c, 1)), push(V, M)).demand / foot / L).toBeCloseTo(1, 9);
      }),
    );
  });

  // Sand, V kip, M kip-ft, kcf, degrees, D ft: Kp, L, f ft, Mmax kip-ft. Recomputed.
  it.each([
    [1.2, 12, 0.11, 30, 2, 3, 3.6775, 1.101, 12.881],
    [12.5, 150, 0.12, 34, 3, 3.5371, 7.2271, 2.5582, 171.318],
  ])("in sand: %d kip and %d kip-ft, %d kcf, %d°, %d ft wide", (V, M, gamma, phi, D, Kp, L, f, Mmax) => {
    const support = pier(D, sand(gamma, phi, 1));
    const { values } = stepsFor(pierBroms, support, push(V, M));
    expect(values.get("K_p")).toBeCloseTo(Kp, 4);
    expect(values.get("f")! / foot).toBeCloseTo(f, 3);
    expect(values.get("M_max")! / kipFoot).toBeCloseTo(Mmax, 2);
    expect(weigh(pierBroms, support, push(V, M)).demand / foot).toBeCloseTo(L, 3);
  });

  it("says what to change", () => {
    const support = pier(2, clay(1, 2.5), { depth: 5 * foot });
    expect(pierBroms.advise!(read(pierBroms, support).inputs, weigh(pierBroms, support, push(1.2, 12)), say)).toBe("depth 5 ft; 6.12 ft needed for the soil's strength with a factor of 2.5. Deepen the pier or widen it.");
  });

  it("lets the ground begin below the ignored depth, with the moment there", () => {
    const low = weigh(pierBroms, pier(2, sand(0.11, 30, 1), { "ignored depth": 2 * foot }), push(1.2, 12 - 2.4)).demand;
    expect(low / foot).toBeCloseTo(3.6775 + 2, 3);
  });

  it("counts the soil as under water where water stands along the pier: 110 less 62.4 pcf", () => {
    const wet = stepsFor(pierBroms, pier(2, { ...sand(0.11, 30, 1), "water table": 3 * foot }), push(1.2, 12)).values;
    expect(wet.get("gamma")! / pcf).toBeCloseTo(47.6, 6);
    expect(stepsFor(pierBroms, pier(2, { ...sand(0.11, 30, 1), "water table": 9 * foot }), push(1.2, 12)).values.has("gamma")).toBe(false);
  });

  it("is not tried without a push or moment", () => {
    expect(weigh(pierBroms, pier(2, clay(1, 2)), allowable({ P: 5 * kip })).demand).toBe(0);
  });
});

describe("How long the pier is beside its soil", () => {
  // 24 in, 8 ft, 4 ksi: 0.35 of 3,605 ksi and 16,286 in⁴ make 2.055e10 lb·in². In clay 96 in (k 24 in/(4 EI))^0.25 = 96 (2.92e-10 k)^0.25, k in pci; in sand 96 (n/2.055e10)^0.2.
  const pci = lb / inch ** 3;
  it.each([
    ["clay", { "subgrade modulus": 100 * pci }, "short", 1.255],
    ["clay", { "subgrade modulus": 1100 * pci }, "long", 2.286],
    ["sand", { "modulus growth": 20 * pci }, "short", 1.51],
    ["sand", { "modulus growth": 100 * pci }, "neither short nor long", 2.085],
    ["sand", { "modulus growth": 2700 * pci }, "long", 4.032],
  ])("in %s of %j is %s", (soil, stiffness, words, length) => {
    const support = pier(2, { ...(soil === "clay" ? clay(1, 2) : sand(0.11, 30, 2)), ...stiffness }, { concrete: 4000 * psi });
    const { values, notes } = stepsFor(pierBroms, support, push(1, 5));
    expect(notes.join(" ")).toContain(`The pier is ${words} beside its soil`);
    expect(values.get(soil === "clay" ? "beta_L" : "eta_L")! / length).toBeCloseTo(1, 2);
  });

  it("is not told where the notebook states no stiffness, and changes no depth where it does", () => {
    const of = (more: object) => weigh(pierBroms, pier(2, { ...clay(1, 2), ...more }, { concrete: 4000 * psi }), push(1, 5)).demand;
    expect(stepsFor(pierBroms, pier(2, clay(1, 2)), push(1, 5)).notes.join(" ")).toContain("has not been stated");
    expect(of({ "subgrade modulus": 1100 * pci })).toBe(of({}));
  });
});

describe("Where Broms can be asked", () => {
  it.each([
    ["friction angle alone", { "friction angle": 30 * degree }, true],
    ["cohesion alone", { cohesion: 1 * ksf }, true],
    ["cohesion with a friction angle of nothing", { cohesion: 1 * ksf, "friction angle": 0 }, true],
    ["both", { cohesion: 1 * ksf, "friction angle": 30 * degree }, false],
    ["no strength", { "unit weight": 110 * pcf }, false],
    ["rock", { kind: "rock", "friction angle": 30 * degree }, false],
    ["layers", { "friction angle": 30 * degree, layers: [] }, false],
  ])("%s: %s", (_, ground, expected) => {
    expect(pierBroms.applies(pier(2, ground))).toBe(expected);
  });

  it("asks for the factor of safety and the unit weight of sand", () => {
    expect(read(pierBroms, pier(2, { "friction angle": 30 * degree })).missing).toEqual(["unit weight of the ground", "factor of safety on the soil's lateral strength (lateral safety of the ground)"]);
    expect(read(pierBroms, pier(2, { cohesion: 1 * ksf })).missing).toEqual(["factor of safety on the soil's lateral strength (lateral safety of the ground)"]);
  });

  it("is stopped by ground that falls away more than one in ten", () => {
    expect(read(pierBroms, pier(2, clay(1, 2), { "ground slope": 0.1 })).blocks).toEqual([]);
    expect(read(pierBroms, pier(2, clay(1, 2), { "ground slope": 0.2 })).blocks.join()).toContain("falls away");
  });
});

describe("Laws of Broms", () => {
  const size = fc.double({ min: 1, max: 5, noNaN: true });
  const load = fc.double({ min: 0.1, max: 30, noNaN: true });
  it("needs more depth for more load or a larger factor, less for a stronger soil or a wider pier in sand, and is the same from any side", () => {
    fc.assert(
      fc.property(size, load, load, fc.double({ min: 25, max: 40, noNaN: true }), fc.double({ min: 0.3, max: 4, noNaN: true }), (D, V, M, phi, c) => {
        const of = (ground: object, v = V, m = M, d = D) => weigh(pierBroms, pier(d, ground), push(v, m)).demand;
        for (const ground of [sand(0.11, phi, 2), clay(c, 2)]) {
          const depth = of(ground);
          expect(Number.isFinite(depth) && depth > 0).toBe(true);
          expect(of(ground, V * 1.1)).toBeGreaterThan(depth);
          expect(of(ground, V, M * 1.1)).toBeGreaterThan(depth);
          expect(of(ground, -V, -M)).toBeCloseTo(depth, 9);
          const north = weigh(pierBroms, pier(D, ground), allowable({ Vy: V * kip, Mx: -M * kipFoot })).demand;
          expect(north).toBeCloseTo(depth, 9);
        }
        expect(of(sand(0.11, phi, 2.5))).toBeGreaterThan(of(sand(0.11, phi, 2)));
        expect(of(sand(0.11, phi + 2, 2))).toBeLessThan(of(sand(0.11, phi, 2)));
        expect(of(sand(0.11, phi, 2), V, M, D * 1.1)).toBeLessThan(of(sand(0.11, phi, 2)));
        expect(of(clay(c * 1.1, 2))).toBeLessThan(of(clay(c, 2)));
      }),
    );
  });
});
