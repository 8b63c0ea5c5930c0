import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { atRest, coulomb, rankine, rankinePassive } from "../../../server/src/checks/wall/coefficients.js";
import { downDrag, earthOf, pressureAt, pushAbove, waterFor, type Earth, type EarthInputs } from "../../../server/src/checks/wall/earth.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot } from "../given.js";
import { degree, pcf, psf } from "../ground.js";

const plain: EarthInputs = { method: "Rankine", phi: 30 * degree, delta: 0, slope: 0, fluid: 0, gamma: 110 * pcf, saturated: 110 * pcf, cohesion: 0, surcharge: 0, water: undefined };
const push = (inputs: EarthInputs, z: number) => pushAbove(earthOf(inputs, plainCalc), z, waterFor(inputs, z), plainCalc);
const kN = 1e3;

describe("The coefficients of earth pressure", () => {
  it.each([
    [20, 0.4903, 0.658], [25, 0.4059, 0.5774], [30, 0.3333, 0.5], [34, 0.2827, 0.4408], [40, 0.2174, 0.3572],
  ])("at a friction angle of %d degrees Rankine's is %f and at rest %f", (phi, active, rest) => {
    expect(rankine.value({ phi: phi * degree, beta: 0 })).toBeCloseTo(active, 4);
    expect(atRest.value({ phi: phi * degree, beta: 0 })).toBeCloseTo(rest, 4);
  });
  it.each([[28, 2.7698], [35, 3.6902], [40, 4.5989]])("the passive one at %d degrees is %f", (phi, K_p) => {
    expect(rankinePassive.value({ phi: phi * degree })).toBeCloseTo(K_p, 4);
  });
  it.each([
    [5, 28, 0.3656], [10, 34, 0.2944], [15, 30, 0.3729], [20, 38, 0.2769], [25, 28, 0.5727], [25, 40, 0.275],
  ])("under a slope of %d degrees at %d degrees of friction Rankine's is %f", (beta, phi, K) => {
    expect(rankine.value({ phi: phi * degree, beta: beta * degree })).toBeCloseTo(K, 4);
  });
  it.each([
    [30, 5, 0.3189], [30, 10, 0.3085], [30, 15, 0.3014], [30, 20, 0.2973], [34, (2 / 3) * 34, 0.2543], [40, (2 / 3) * 40, 0.1998],
  ])("at %f degrees and a wall friction of %f Coulomb's is %f", (phi, delta, K) => {
    expect(coulomb.value({ phi: phi * degree, delta: delta * degree, beta: 0 })).toBeCloseTo(K, 4);
  });
});

/** Published pushes: Das, Principles of Foundation Engineering; Coduto, Geotechnical Engineering. Arm above the base. */
describe("The push of the soil", () => {
  it("is 74.8 kN/m for 6 m of dry soil (phi 36, 16 kN/m³), at 2 m", () => {
    const { shear, moment } = push({ ...plain, phi: 36 * degree, gamma: 16 * kN }, 6);
    expect(shear / kN).toBeCloseTo(74.8, 1);
    expect(moment / shear).toBeCloseTo(2, 6);
  });
  it("is 51.85 kN/m by Coulomb for 4.6 m (phi 30, wall friction 20, 16.5 kN/m³)", () => {
    const earth = earthOf({ ...plain, method: "Coulomb", delta: 20 * degree, gamma: 16.5 * kN }, plainCalc);
    const { shear } = pushAbove(earth, 4.6, 4.6, plainCalc);
    const P_v = downDrag.value({ V_s: shear, K_v: earth.K_v, K_h: earth.K_h });
    // Printed with the coefficient rounded to 0.297.
    expect(Math.abs(Math.hypot(shear, P_v) / (51.85 * kN) - 1)).toBeLessThan(0.0015);
    expect(P_v / shear).toBeCloseTo(Math.tan(20 * degree), 9);
  });
  it("is 8,180 lb/ft under a slope of 10 degrees over 21.808 ft (phi 34, 117 pcf): 8,055 across and 1,420 down", () => {
    const earth = earthOf({ ...plain, phi: 34 * degree, slope: Math.tan(10 * degree), gamma: 117 * pcf }, plainCalc);
    const { shear } = pushAbove(earth, 21.808 * foot, 21.808 * foot, plainCalc);
    const perFoot = psf * foot;
    expect(Math.abs(shear / perFoot / 8055 - 1)).toBeLessThan(0.003);
    expect(Math.abs(downDrag.value({ V_s: shear, K_v: earth.K_v, K_h: earth.K_h }) / perFoot / 1420 - 1)).toBeLessThan(0.003);
  });
  it("is 38.32 kN/m at 1.12 m with cohesion, below a crack of 2.64 m", () => {
    const { shear, moment } = push({ ...plain, phi: 26 * degree, gamma: 17.4 * kN, cohesion: 14.36 * kN }, 6);
    expect(shear / kN).toBeCloseTo(38.32, 1);
    expect(moment / shear).toBeCloseTo(1.12, 2);
  });
  it("is 189.1 kN/m in clay without friction (10 kPa, 16.5 kN/m³, 6 m)", () => {
    expect(push({ ...plain, phi: 0, gamma: 16.5 * kN, cohesion: 10 * kN }, 6).shear / kN).toBeCloseTo(189.1, 1);
  });
  it("is 8,381 lb/ft with water at two thirds of 15 ft, 4.83 ft above the base, at rest with a coefficient of 0.7071", () => {
    const earth: Earth = { K_h: Math.SQRT1_2, K_v: 0, gamma: 100 * pcf, gamma_b: 60 * pcf, q: 0, p_c: 0 };
    expect(pressureAt(earth, 10 * foot, 10 * foot, plainCalc).soil / psf).toBeCloseTo(707.1, 1);
    const deep = pressureAt(earth, 15 * foot, 10 * foot, plainCalc);
    expect(deep.soil / psf).toBeCloseTo(919.2, 1);
    expect((deep.depthInWater * 62.4 * pcf) / psf).toBeCloseTo(312, 6);
    const { shear, moment } = pushAbove(earth, 15 * foot, 10 * foot, plainCalc);
    expect(shear / (psf * foot)).toBeCloseTo(8381, 0);
    expect(moment / shear / foot).toBeCloseTo(4.83, 2);
  });
  it("of a surcharge of 250 psf at a coefficient of a third is 83.3 psf at every depth", () => {
    const inputs = { ...plain, surcharge: 250 * psf };
    const more = push(inputs, 12 * foot).shear - push(plain, 12 * foot).shear;
    expect(more / (12 * foot) / psf).toBeCloseTo(83.3, 1);
  });
  it("of an equivalent fluid of 45 psf/ft over 4 ft is 360 lb/ft with 480 lb-ft/ft", () => {
    const { shear, moment } = push({ ...plain, method: "equivalent fluid", fluid: 45 * pcf }, 4 * foot);
    expect(shear / (psf * foot)).toBeCloseTo(360, 6);
    expect(moment / (psf * foot * foot)).toBeCloseTo(480, 6);
  });
});

describe("Laws of the push", () => {
  const soil = fc.record({
    phi: fc.double({ min: 20, max: 42, noNaN: true }),
    gamma: fc.double({ min: 14, max: 22, noNaN: true }),
    slope: fc.double({ min: 0, max: 0.3, noNaN: true }),
    surcharge: fc.double({ min: 0, max: 20, noNaN: true }),
    cohesion: fc.double({ min: 0, max: 15, noNaN: true }),
    water: fc.option(fc.double({ min: 0, max: 6, noNaN: true }), { nil: undefined }),
  });
  const made = (s: { phi: number; gamma: number; slope: number; surcharge: number; cohesion: number; water: number | undefined }, method: EarthInputs["method"]): EarthInputs => ({
    method, phi: s.phi * degree, delta: 0.5 * s.phi * degree, slope: s.slope, fluid: 0, gamma: s.gamma * kN, saturated: (s.gamma + 2) * kN, cohesion: s.cohesion * kN, surcharge: s.surcharge * kN, water: s.water,
  });
  const depth = fc.double({ min: 0.2, max: 8, noNaN: true });

  it("at rest is never less than active, by Rankine or Coulomb", () => {
    fc.assert(fc.property(soil, depth, (s, z) => {
      const rest = push(made({ ...s, slope: 0 }, "at rest"), z);
      for (const method of ["Rankine", "Coulomb"] as const) {
        const active = push(made({ ...s, slope: 0 }, method), z);
        expect(active.shear).toBeLessThanOrEqual(rest.shear * (1 + 1e-12));
        expect(active.moment).toBeLessThanOrEqual(rest.moment * (1 + 1e-12));
      }
    }));
  });
  it("shear is the sum of the pressure and moment the sum of the shear, water and crack included", () => {
    fc.assert(fc.property(soil, depth, (s, z) => {
      const inputs = made({ ...s, slope: 0 }, "Rankine");
      const earth = earthOf(inputs, plainCalc);
      const z_w = inputs.water ?? 20;
      const n = 4000;
      let V = 0;
      let M = 0;
      for (let i = 0; i < n; i++) {
        const at = ((i + 0.5) / n) * z;
        const { soil: p, depthInWater } = pressureAt(earth, at, z_w, plainCalc);
        const dP = ((p + 62.4 * pcf * depthInWater) * z) / n;
        V += dP;
        M += dP * (z - at);
      }
      const found = pushAbove(earth, z, z_w, plainCalc);
      expect(Math.abs(found.shear - V)).toBeLessThanOrEqual(1e-3 * V + 1);
      expect(Math.abs(found.moment - M)).toBeLessThanOrEqual(1e-3 * M + 1);
    }), { numRuns: 40 });
  });
  it("grows with depth, with surcharge and with water", () => {
    fc.assert(fc.property(soil, depth, fc.double({ min: 0.1, max: 5, noNaN: true }), (s, z, more) => {
      for (const method of ["at rest", "Rankine", "Coulomb"] as const) {
        const inputs = made({ ...s, cohesion: 0, slope: method === "at rest" ? s.slope : 0 }, method);
        const here = push(inputs, z).shear;
        expect(push(inputs, z + more).shear).toBeGreaterThan(here);
        expect(push({ ...inputs, surcharge: inputs.surcharge + more * kN }, z).shear).toBeGreaterThan(here);
        // Wet soil of the same weight presses more than dry, its water included.
        if (inputs.water !== undefined && inputs.water < z) expect(push({ ...inputs, water: inputs.water / 2 }, z).shear).toBeGreaterThanOrEqual(here);
      }
    }));
  });
});
