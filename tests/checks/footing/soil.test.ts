import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Forces, Term } from "../../../server/src/actions/demand.js";
import { bearingCapacity } from "../../../server/src/checks/footing/bearing-capacity.js";
import { depthC, depthQ, depthRatio, factorC, factorGamma, factorQ, inclinationGamma, inclinationQ, ultimateBearing, ultimatePressure } from "../../../server/src/checks/footing/bearing-equation.js";
import { footingBearing } from "../../../server/src/checks/footing/bearing.js";
import { footingOverturning } from "../../../server/src/checks/footing/overturning.js";
import { footingSliding } from "../../../server/src/checks/footing/sliding.js";
import { footingUplift } from "../../../server/src/checks/footing/uplift.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, inch, kip, kipFoot, say } from "../given.js";
import { allowable, degree, lb, outcomeOf, pcf, psf, psfPerFoot, read, stepsFor, weigh } from "../ground.js";
import { type Given, pad } from "./pad.js";

const full: readonly Term[] = [{ factor: 1, type: "D" }, { factor: 0.6, type: "W" }];
const light: readonly Term[] = [{ factor: 0.6, type: "D" }, { factor: 0.6, type: "W" }];
const withDead = (forces: Partial<Forces>, terms: readonly Term[], dead: number) => ({ ...allowable(forces, terms), dead });

describe("Bearing capacity factors", () => {
  // Closed forms of Prandtl and Reissner, and Vesic's N-gamma; the values textbooks print at these angles.
  it.each([
    [5, 1.568, 6.489, 0.449],
    [20, 6.399, 14.835, 5.386],
    [25, 10.662, 20.721, 10.876],
    [30, 18.401, 30.14, 22.402],
    [35, 33.296, 46.124, 48.029],
    [40, 64.195, 75.313, 109.411],
    [45, 134.874, 133.874, 271.748],
  ])("at %d°", (angle, q, c, gamma) => {
    const phi = angle * degree;
    const N_q = factorQ.value({ phi });
    expect(N_q).toBeCloseTo(q, 2.9);
    expect(factorC.value({ N_q, phi })).toBeCloseTo(c, 2.9);
    expect(factorGamma.value({ N_q, phi })).toBeCloseTo(gamma, 2.9);
  });

  const strip = { c: 0, N_c: 0, F_cs: 1, F_cd: 1, F_i: 1, F_qs: 1, F_gs: 1, F_gi: 1 };

  // B. M. Das, Principles of Foundation Engineering, Example 3.4 (read in a transcription, recomputed): strip 6 ft, e 0.5 ft, 4 ft deep, 110 pcf, 35°.
  it("a strip of 6 ft with the load 0.5 ft off its middle bears 30,347.6 psf on its effective 5 ft", () => {
    const phi = 35 * degree;
    const N_q = factorQ.value({ phi });
    const F_qd = depthQ.value({ phi, k_d: depthRatio.value({ d: 4 * foot, B: 6 * foot }) });
    expect(F_qd).toBeCloseTo(1.16976, 5);
    const q = ultimatePressure.value({ ...strip, N_q, F_qd, q_0: 440 * psf, gamma_b: 110 * pcf, B_e: 5 * foot, N_g: factorGamma.value({ N_q, phi }) });
    expect(q / psf / 30347.6).toBeCloseTo(1, 3.5);
  });

  // A later example of the same book (from memory, recomputed): strip 2 m, e 0.2 m, 1.5 m deep, 16.5 kN/m³, 40°: 3287.4 kPa, 3288.35 at full precision.
  it("a strip of 2 m at 40° bears 3,288 kPa", () => {
    const phi = 40 * degree;
    const N_q = factorQ.value({ phi });
    const F_qd = depthQ.value({ phi, k_d: depthRatio.value({ d: 1.5, B: 2 }) });
    const q = ultimatePressure.value({ ...strip, N_q, F_qd, q_0: 24.75e3, gamma_b: 16.5e3, B_e: 1.6, N_g: factorGamma.value({ N_q, phi }) });
    expect(q / 1e3).toBeCloseTo(3288.35, 0.5);
  });

  it("a load leaning 15° keeps (1 - 15/90)² of two terms and (1 - 15/30)² of the third", () => {
    const V = Math.tan(15 * degree);
    expect(inclinationQ.value({ V, N: 1 })).toBeCloseTo((75 / 90) ** 2, 9);
    expect(inclinationGamma.value({ V, N: 1, phi: 30 * degree })).toBeCloseTo(0.25, 9);
    expect(inclinationGamma.value({ V: 1, N: 1, phi: 30 * degree })).toBe(0);
  });

  it("deeper than wide, the depth counts by its arc tangent", () => {
    expect(depthRatio.value({ d: 2, B: 1 })).toBeCloseTo(Math.atan(2), 12);
    expect(depthC.value({ phi: 30 * degree, F_qd: 1.288675, N_c: 30.14 })).toBeCloseTo(1.288675 + 0.288675 / (30.14 * Math.tan(30 * degree)), 9);
  });

  it("water at the underside takes 62.4 pcf from the soil below, one width lower nothing", () => {
    const of = (waterTable: number | undefined) =>
      ultimateBearing({ frictionAngle: 30 * degree, cohesion: 0, unitWeight: 120 * pcf, waterTable }, { B: 5 * foot, B_e: 5 * foot, L_e: 5 * foot, depth: 4 * foot, waterHeight: 0, N: 1, V: 0 }, plainCalc);
    const third = (gamma: number) => 0.5 * gamma * pcf * 5 * foot * 22.402 * 0.6;
    expect((of(undefined) - of(4 * foot)) / (third(62.4) - third(0))).toBeCloseTo(1, 4);
    expect(of(9 * foot)).toBeCloseTo(of(undefined), 6);
    expect(of(6.5 * foot)).toBeGreaterThan(of(4 * foot));
  });

  it("needs the factor of safety of the report, and is not asked for without an angle or a cohesion", () => {
    const stated = pad({ ground: { "friction angle": 30 * degree } });
    expect(bearingCapacity.applies(stated)).toBe(true);
    expect(bearingCapacity.applies(pad())).toBe(false);
    expect(read(bearingCapacity, stated).missing.join()).toMatch(/factor of safety/);
  });
});

describe("Overturning by each of three definitions", () => {
  // Weights 6.425 and 6.386 kip (worked by hand); arm 4.5 ft. Dead 2 kip; the storm lifts 4 kip and pushes 1.8 kip in D + 0.6W.
  const W = 6.425 + (25 - (16 / 12) ** 2) * 2.5 * 0.11;
  const storm = (factor: number) => ({ P: (2 * factor - 4) * kip, Vx: 1.8 * kip });

  it("factored dead load: 0.6 of all weight less the uplift, about the edge", () => {
    const found = weigh(footingOverturning, pad(), withDead(storm(0.6), light, 1.2 * kip));
    expect(found.demand / kipFoot).toBeCloseTo(8.1, 9);
    expect(found.capacity / kipFoot).toBeCloseTo((0.6 * (W + 2) - 4) * 2.5, 6);
  });

  it("1.5 on the net weight: unreduced, the uplift taken from it", () => {
    const found = weigh(footingOverturning, pad({ overturning: "1.5 on the net weight" }), withDead(storm(1), full, 2 * kip));
    expect(found.demand / kipFoot).toBeCloseTo(8.1, 9);
    expect(found.capacity / kipFoot).toBeCloseTo(((W + 2 - 4) * 2.5) / 1.5, 6);
  });

  it("1.5 with uplift as a load: the uplift added to the moment that turns over", () => {
    const found = weigh(footingOverturning, pad({ overturning: "1.5 with uplift as a load" }), withDead(storm(1), full, 2 * kip));
    expect(found.demand / kipFoot).toBeCloseTo(8.1 + 4 * 2.5, 9);
    expect(found.capacity / kipFoot).toBeCloseTo(((W + 2) * 2.5) / 1.5, 6);
  });

  it("with a factor of 1.5 looks only where the dead load is not reduced, and not at combined reactions", () => {
    const support = pad({ overturning: "1.5 on the net weight" });
    expect(weigh(footingOverturning, support, withDead(storm(0.6), light, 1.2 * kip)).demand).toBe(0);
    expect(outcomeOf(footingOverturning, support, allowable(storm(1)))).toMatchObject({ type: "unchecked" });
  });

  it("has no capacity where more lifts than weighs", () => {
    const found = weigh(footingOverturning, pad(), allowable({ P: -50 * kip, Vx: kip }));
    expect(Object.is(found.capacity, 0)).toBe(true);
    expect(found.demand).toBeGreaterThan(0);
  });

  it("says what to change", () => {
    const found = weigh(footingOverturning, pad(), withDead(storm(0.6), light, 1.2 * kip));
    expect(footingOverturning.advise!(read(footingOverturning, pad()).inputs, found, say)).toMatch(/^8.1 kip-ft turns the footing over; 12.22 kip-ft holds it/);
  });
});

describe("Sliding", () => {
  const push = (V: number) => withDead({ P: 2 * kip, Vx: V * kip }, full, 2 * kip);

  it("clay grips by no more than half the dead load", () => {
    const light5 = pad({ ground: { class: "CL" }, foundation: { width: 10 * foot, length: 10 * foot, thickness: 12 * inch, depth: 12 * inch, pedestal: undefined, "above grade": undefined, backfill: "loose" } });
    // 15 kip of concrete and 2 of column: half is 8.5 kip, cohesion on 100 ft² would be 13.
    expect(weigh(footingSliding, light5, push(1)).capacity / kip).toBeCloseTo(8.5, 6);
  });

  it("snow and live load give no friction, a stated coefficient takes the place of the presumptive one", () => {
    const support = pad({ ground: { friction: 0.4 }, foundation: { backfill: "loose" } });
    const of = (P: number) => weigh(footingSliding, support, withDead({ P: P * kip, Vx: kip }, full, 2 * kip)).capacity / kip;
    expect(of(2)).toBeCloseTo(0.4 * 8.425, 6);
    expect(of(20)).toBeCloseTo(of(2), 9);
    expect(of(-2)).toBeCloseTo(0.4 * 4.425, 6);
    expect(of(-9)).toBe(0);
  });

  it("of a reaction already combined counts the weight of the footing alone, and says so", () => {
    const support = pad({ foundation: { backfill: "loose" } });
    expect(weigh(footingSliding, support, allowable({ P: 10 * kip, Vx: kip })).capacity / kip).toBeCloseTo(0.25 * 6.425, 6);
    expect(stepsFor(footingSliding, support, allowable({ P: 10 * kip, Vx: kip })).notes.join(" ")).toMatch(/already combined/);
  });

  it("pushed askew, both faces press back along the push", () => {
    const oblong = pad({ foundation: { width: 4 * foot, length: 8 * foot }, ground: { "lateral bearing": 200 * psfPerFoot } });
    const R = (side: number) => ((200 * (16 - 6.25)) / 2 / 1000) * side;
    const of = (Vx: number, Vy: number) => stepsFor(footingSliding, oblong, withDead({ P: 2 * kip, Vx: Vx * kip, Vy: Vy * kip }, full, 2 * kip)).values.get("R_p")! / kip;
    expect(of(1, 0)).toBeCloseTo(R(8), 6);
    expect(of(0, 1)).toBeCloseTo(R(4), 6);
    expect(of(1, 1)).toBeCloseTo(Math.SQRT2 * R(4), 6);
  });

  it("the ignored depth takes soil from the face of the pad", () => {
    const of = (ignored: number) => stepsFor(footingSliding, pad({ foundation: { "ignored depth": ignored * foot } }), push(1)).values.get("R_p")! / kip;
    expect(of(0)).toBeCloseTo(((150 * (16 - 6.25)) / 2 / 1000) * 5, 6);
    expect(of(3)).toBeCloseTo(((150 * (16 - 9)) / 2 / 1000) * 5, 6);
  });

  it("needs a class or a coefficient; fill has neither", () => {
    expect(read(footingSliding, pad({ ground: { class: undefined } })).missing.join()).toMatch(/coefficient of friction/);
    expect(read(footingSliding, pad({ ground: { class: "fill" } })).blocks.join()).toMatch(/no presumptive friction/);
  });
});

describe("What a footing has to say of itself", () => {
  it.each<[string, Given, RegExp]>([
    ["a pedestal without height", { foundation: { thickness: 5 * foot } }, /its pedestal has no height/],
    ["a top of concrete that the pad does not reach", { foundation: { pedestal: undefined, "above grade": 6 * inch } }, /describe the pedestal/],
    ["a pedestal both round and square", { foundation: { pedestal: { diameter: 18 * inch, width: 18 * inch } } }, /both a diameter and sides/],
    ["a cone in loose backfill", { foundation: { "held down by": "soil cone", backfill: "loose" }, ground: { "cone angle": 30 * degree } }, /compacted and tested/],
  ])("%s stands in the way", (_, given, words) => {
    expect(read(footingUplift, pad(given)).blocks.join()).toMatch(words);
  });

  it("names the weight of the soil that lies on it, but not where none does", () => {
    expect(read(footingUplift, pad({ ground: { "unit weight": undefined } })).missing.join()).toMatch(/unit weight of the soil above/);
    expect(read(footingUplift, pad({ ground: { "unit weight": undefined }, foundation: { pedestal: undefined, "above grade": undefined, depth: 18 * inch } })).missing).toEqual([]);
  });

  it("cones that meet the neighbor's are not worked out", () => {
    const given: Given = { foundation: { "held down by": "soil cone" }, ground: { "cone angle": 30 * degree } };
    // 5 ft and twice 2.5 ft of tan 30°: 7.89 ft.
    expect(outcomeOf(footingUplift, pad({ ...given, places: [{ x: 0, y: 0 }, { x: 7.8 * foot, y: 0 }] }), allowable({ P: -kip }))).toMatchObject({ type: "unchecked" });
    expect(outcomeOf(footingUplift, pad({ ...given, places: [{ x: 0, y: 0 }, { x: 8 * foot, y: 0 }] }), allowable({ P: -kip }))).toMatchObject({ type: "weighed" });
  });
});

describe("Laws of the ground below a footing", () => {
  const force = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
  const loads = fc.record({ P: force(40), Vx: force(3), Vy: force(3), Mx: force(25), My: force(25) });
  const si = ({ P, Vx, Vy, Mx, My }: { P: number; Vx: number; Vy: number; Mx: number; My: number }): Forces => ({ P: P * kip, Vx: Vx * kip, Vy: Vy * kip, Mx: Mx * kipFoot, My: My * kipFoot });
  const side = fc.double({ min: 2.5, max: 10, noNaN: true });
  const checks = [footingBearing, footingOverturning, footingSliding, footingUplift, bearingCapacity] as const;
  const ground = { "friction angle": 30 * degree, cohesion: 100 * psf, "bearing safety": 3 };

  it("none gives a number that is none, or a negative one, for thousands of loads and sizes", () => {
    fc.assert(
      fc.property(loads, side, side, fc.double({ min: 0.8, max: 3, noNaN: true }), fc.constantFrom("SM", "CL", "GP"), fc.boolean(), (forces, B, L, t, name, isFull) => {
        const support = pad({ foundation: { width: B * foot, length: L * foot, thickness: t * foot }, ground: { class: name, ...ground } });
        for (const check of checks) {
          const outcome = outcomeOf(check as typeof footingBearing, support, withDead(si(forces), isFull ? full : light, 2 * kip));
          if (outcome.type === "unchecked") expect(outcome.because.length).toBeGreaterThan(20);
          else {
            expect(Number.isFinite(outcome.demand) && outcome.demand >= 0).toBe(true);
            expect(Number.isFinite(outcome.capacity) && outcome.capacity >= 0).toBe(true);
          }
        }
      }),
      { numRuns: 3000 },
    );
  });

  it("turned by 90 degrees all say the same", () => {
    fc.assert(
      fc.property(loads, side, side, (forces, B, L) => {
        const f = si(forces);
        const turned: Forces = { P: f.P, Vx: -f.Vy, Vy: f.Vx, Mx: -f.My, My: f.Mx };
        for (const check of checks) {
          const one = outcomeOf(check as typeof footingBearing, pad({ foundation: { width: B * foot, length: L * foot }, ground }), withDead(f, full, 2 * kip));
          const other = outcomeOf(check as typeof footingBearing, pad({ foundation: { width: L * foot, length: B * foot }, ground }), withDead(turned, full, 2 * kip));
          expect(other.type).toBe(one.type);
          if (one.type === "weighed" && other.type === "weighed") {
            expect(Math.abs(other.demand - one.demand)).toBeLessThanOrEqual(1e-6 * (1 + one.demand));
            expect(Math.abs(other.capacity - one.capacity)).toBeLessThanOrEqual(1e-6 * (1 + one.capacity));
          }
        }
      }),
      { numRuns: 600 },
    );
  });

  it("mirrored all say the same", () => {
    fc.assert(
      fc.property(loads, side, (forces, B) => {
        const f = si(forces);
        const mirrored: Forces = { ...f, Vx: -f.Vx, My: -f.My };
        for (const check of checks) {
          const support = pad({ foundation: { width: B * foot }, ground });
          const [one, other] = [f, mirrored].map((base) => outcomeOf(check as typeof footingBearing, support, withDead(base, full, 2 * kip)));
          expect(other.type).toBe(one.type);
          if (one.type === "weighed" && other.type === "weighed") expect(Math.abs(other.demand - one.demand)).toBeLessThanOrEqual(1e-6 * (1 + one.demand));
        }
      }),
      { numRuns: 400 },
    );
  });

  it("a wider pad never bears more at its pressed edge", () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 60, noNaN: true }), fc.double({ min: 0, max: 30, noNaN: true }), fc.double({ min: 3, max: 9, noNaN: true }), fc.double({ min: 0.01, max: 1, noNaN: true }), (P, M, B, more) => {
        const of = (width: number) =>
          outcomeOf(
            footingBearing,
            pad({ foundation: { width: width * foot, length: 6 * foot, depth: 18 * inch, pedestal: undefined, "above grade": undefined } }),
            withDead({ P: P * kip, My: M * kipFoot }, full, 2 * kip),
          );
        const [one, wider] = [of(B), of(B + more)];
        if (one.type === "unchecked") return;
        expect(wider.type).toBe("weighed");
        if (wider.type === "weighed") expect(wider.demand).toBeLessThanOrEqual(one.demand + 1e-6 * one.demand);
      }),
      { numRuns: 2000 },
    );
  });

  it("a small change of load makes a small change of pressure, from full contact into lifting", () => {
    const of = (M: number) => weigh(footingBearing, pad(), withDead({ P: 10 * kip, My: M * kipFoot }, full, 2 * kip)).demand / psf;
    let before = of(0);
    for (let M = 0.1; M < 40; M += 0.1) {
      const here = of(M);
      expect(here).toBeGreaterThanOrEqual(before - 1e-9);
      expect(here - before).toBeLessThan(0.02 * before);
      before = here;
    }
  });

  it("pull and push are in pounds what they are in newtons", () => {
    expect(weigh(footingUplift, pad(), allowable({ P: -1180 * lb })).demand / lb).toBeCloseTo(1180, 9);
  });
});
