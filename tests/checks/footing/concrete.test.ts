import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Forces, Term } from "../../../server/src/actions/demand.js";
import { readMember } from "../../../server/src/checks/base/member.js";
import { compressionLength, hooked, straight } from "../../../server/src/checks/footing/bar-development.js";
import { bandShare } from "../../../server/src/checks/footing/flexure.js";
import { footingChecks } from "../../../server/src/checks/footing/index.js";
import { footingDevelopment } from "../../../server/src/checks/footing/development.js";
import { footingFlexure } from "../../../server/src/checks/footing/flexure.js";
import { footingJointBars } from "../../../server/src/checks/footing/joint-bars.js";
import { footingJointBearing, jointForce, jointStress } from "../../../server/src/checks/footing/joint-bearing.js";
import { footingOneWayShear } from "../../../server/src/checks/footing/one-way-shear.js";
import { footingTopFlexure } from "../../../server/src/checks/footing/top-flexure.js";
import { footingTwoWayShear, punchingDemand, sectionProperty, shearShare } from "../../../server/src/checks/footing/two-way-shear.js";
import { padTop } from "../../../server/src/checks/site/concrete-top.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, gatherer, inch, kip, kipFoot, kipInch, ksi, psi } from "../given.js";
import { outcomeOf, read, stepsFor, strengthOf, weigh } from "../ground.js";
import { bar, type Given, mats, pad } from "./pad.js";

const down: readonly Term[] = [{ factor: 1.2, type: "D" }, { factor: 1, type: "W" }];
const light: readonly Term[] = [{ factor: 0.9, type: "D" }, { factor: 1, type: "W" }];

describe("Moment transfer, ACI 318-19 8.4.4.2", () => {
  it("a square section transfers 40 % by shear, an oblong one more along its long side", () => {
    expect(shearShare.value({ b_1: 1, b_2: 1 })).toBeCloseTo(0.4, 12);
    expect(shearShare.value({ b_1: 4, b_2: 1 })).toBeCloseTo(1 - 1 / (1 + 4 / 3), 12);
  });

  it("a square section of side b and depth d has J = 2/3 d b³ + b d³/6", () => {
    const [b, d] = [46 * inch, 28 * inch];
    expect(sectionProperty.value({ d, b_1: b, b_2: b }) / ((2 / 3) * d * b ** 3 + (b * d ** 3) / 6)).toBeCloseTo(1, 12);
  });

  it("adds the stresses of both directions: 100 kip and 50 kip-ft each way on 46 in by 28 in", () => {
    const J = (2 / 3) * 28 * 46 ** 3 + (46 * 28 ** 3) / 6;
    const expected = 100e3 / (184 * 28) + (2 * 0.4 * 50 * 12e3 * 23) / J;
    const J_c = J * inch ** 4;
    const found = punchingDemand.value({
      V_u: -100 * kip, b_o: 184 * inch, d: 28 * inch,
      gamma_vx: 0.4, M_ux: 50 * kipFoot, b_x: 46 * inch, J_cx: J_c,
      gamma_vy: 0.4, M_uy: -50 * kipFoot, b_y: 46 * inch, J_cy: J_c,
    });
    expect(found / psi / expected).toBeCloseTo(1, 9);
  });

  it("a section that reaches the edge of the pad cannot punch, and the check says who answers", () => {
    const narrow = pad({ foundation: { width: 30 * inch } });
    expect(weigh(footingTwoWayShear, narrow, strengthOf({ P: 10 * kip }, down)).demand).toBe(0);
    expect(stepsFor(footingTwoWayShear, narrow, strengthOf({ P: 10 * kip }, down)).notes.join()).toMatch(/one-way shear answers/);
  });
});

describe("Bars of the pad", () => {
  it("an oblong pad twice as long as wide needs 2β/(β + 1) = 4/3 of its short bars", () => {
    expect(bandShare.value({ b: 4, c: 8 })).toBeCloseTo(4 / 3, 12);
    expect(bandShare.value({ b: 8, c: 4 })).toBeCloseTo(4 / 3, 12);
    expect(bandShare.value({ b: 5, c: 5 })).toBe(1);
  });

  // ACI 318-19 Table 25.4.2.3 by hand: no. 8, Gr 60, 3000 psi: 54.8 in; no. 6, 4000 psi: 28.5 in.
  it.each([
    [8, 12, 3, 60, 3000, false, 54.77],
    [6, 12, 3, 60, 4000, false, 28.46],
    [6, 12, 3, 60, 4000, true, 37.0],
    [6, 12, 3, 80, 4000, false, 43.64],
    [6, 2, 3, 60, 4000, false, 42.69],
    [8, 12, 0.75, 60, 3000, false, 82.16],
  ])("a straight no. %d, %d in apart, %d in cover, Gr %d, %d psi, cast high %s, takes %d in", (number, s, cover, grade, strength, isHigh, length) => {
    const { diameter } = bar(number as 6);
    expect(straight({ diameter, spacing: s * inch }, cover * inch, grade * ksi, Math.sqrt(strength) * psi, isHigh, "ACI 318-19", plainCalc) / inch).toBeCloseTo(length, 1.7);
  });

  // 25.4.3.1 by hand with psi_o 1.25: no. 8 at 4000 psi apart: 1.25 · 0.8667 · 60000/(55 · 63.25) · 1 = 18.69 in; close together 1.6 times that.
  it("a hooked bar takes 18.69 in far apart, 29.90 in close together, and by ACI 318-14 18.97 in", () => {
    const of = (spacing: number, edition: string) => hooked({ diameter: inch, spacing: spacing * inch }, 60 * ksi, 4000 * psi, Math.sqrt(4000) * psi, edition, plainCalc) / inch;
    expect(of(8, "ACI 318-19")).toBeCloseTo(18.69, 2);
    expect(of(4, "ACI 318-19")).toBeCloseTo(29.9, 2);
    expect(of(8, "ACI 318-14")).toBeCloseTo(18.97, 2);
  });

  it("a bar in compression takes the most of 60000/(50 sqrt f'c), 0.0003 fy and 8 in", () => {
    const of = (size: number, strength: number) => compressionLength.value({ f_y: 60 * ksi, s_c: Math.sqrt(strength) * psi, d_b: size * inch }) / inch;
    expect(of(1, 4000)).toBeCloseTo(18.97, 2);
    expect(of(1, 6000)).toBeCloseTo(18, 9);
    expect(of(0.375, 6000)).toBeCloseTo(8, 9);
  });

  it("in seismic design category D the bars are developed for all they hold", () => {
    const of = (category: string) => weigh(footingDevelopment, pad({ site: { "seismic design category": category } }), strengthOf({ P: 60 * kip }, down)).demand / inch;
    expect(of("B")).toBeCloseTo(12, 6);
    expect(of("D")).toBeCloseTo(23.717, 3);
  });

  it("so many bars that they would not yield first are not checked", () => {
    const heavy = pad({ foundation: { "bottom bars": mats(8, 2.1), thickness: 11 * inch } });
    expect(outcomeOf(footingFlexure, heavy, strengthOf({ P: 60 * kip }, down))).toMatchObject({ type: "unchecked" });
  });
});

describe("The top of a pad that lifts", () => {
  const lifted = { P: -5 * kip };

  it("plain concrete may not hold it in seismic design category D", () => {
    const of = (category: string) => outcomeOf(footingTopFlexure, pad({ site: { "seismic design category": category } }), strengthOf(lifted, light));
    expect(of("C").type).toBe("weighed");
    expect(of("D")).toMatchObject({ type: "unchecked" });
  });

  it("top bars take the place of plain concrete", () => {
    const found = weigh(footingTopFlexure, pad({ foundation: { "top bars": mats(5, 12) }, site: { "seismic design category": "D" } }), strengthOf(lifted, light));
    const A = (0.31 * 60) / 12;
    expect(found.capacity / kipInch).toBeCloseTo(0.9 * A * 60 * (14.375 - (A * 60) / (2 * 0.85 * 4 * 60)), 2);
  });

  it("a pad that is pressed everywhere by more than its weight has nothing there", () => {
    expect(weigh(footingTopFlexure, pad(), strengthOf({ P: 20 * kip }, down)).demand).toBe(0);
  });
});

describe("The joint of pedestal and pad", () => {
  // Wight and MacGregor, Example 15-2 (from memory, recomputed): an 18 in column of 5 ksi bears 895 kip.
  it("an 18 in column of 5 ksi bears 895 kip", () => {
    const f_d = jointStress.value({ fprime_c: 5 * ksi });
    expect(jointForce.value({ f_d, A_p: (18 * inch) ** 2 }) / kip).toBeCloseTo(895, 0);
  });

  it("within the kern the largest stress is P/A (1 + 6 e/c) and no bar pulls", () => {
    const demand = strengthOf({ P: 60 * kip, My: 60 * 2 * kipInch });
    const found = weigh(footingJointBearing, pad(), demand);
    expect(found.demand / psi).toBeCloseTo((60.8e3 / 256) * (1 + (6 * 120) / 60.8 / 16), 6);
    expect(weigh(footingJointBars, pad(), demand).demand).toBe(0);
  });

  it("a large moment pulls its bars in equilibrium with the bearing", () => {
    const { outcome, M } = { outcome: weigh(footingJointBars, pad(), strengthOf({ P: 5 * kip, My: 30 * kipFoot }, light)), M: 30 * 12 };
    // Three bars on the far line, arm at most from there to the pressed edge and at least 0.7 of it.
    const T = outcome.demand / kip;
    expect(T).toBeGreaterThan((M - 5.72 * 8) / (3 * 12.6875) / 1.15);
    expect(T).toBeLessThan((M - 5.72 * 4) / (3 * 12.6875 * 0.7));
  });

  it("an odd number of bars has no places in a rectangle, and a round pedestal takes any", () => {
    expect(read(footingJointBars, pad({ foundation: { bars: { count: 7, bar: bar(5) } } })).blocks.join()).toMatch(/even number/);
    expect(read(footingJointBars, pad({ foundation: { pedestal: { diameter: 18 * inch }, bars: { count: 7, bar: bar(5) } } })).blocks).toEqual([]);
  });
});

describe("What the concrete of a footing has to say of itself", () => {
  it.each<[string, Given, RegExp]>([
    ["bottom bars", { foundation: { "bottom bars": undefined } }, /bottom bars of the pad/],
    ["a pedestal, or a plate with its column", { foundation: { pedestal: undefined, "above grade": undefined } }, /pedestal, or the base plate/],
    ["the column on the plate", { foundation: { pedestal: undefined, "above grade": undefined }, base: { plate: { width: 14 * inch, length: 14 * inch } } }, /section of the column/],
    ["a spacing or number", { foundation: { "bottom bars": { "along x": { bar: bar(5) }, "along y": { bar: bar(5), count: 6 } } } }, /spacing or number of the bottom bars along x/],
  ])("needs %s", (_, given, words) => {
    expect(read(footingOneWayShear, pad(given)).missing.join()).toMatch(words);
  });

  it.each<[string, Given, RegExp]>([
    ["a pad narrower than its pedestal", { foundation: { width: 12 * inch } }, /narrower than what stands on it/],
    ["bars thicker than the pad", { foundation: { thickness: 3.5 * inch } }, /do not fit into the thickness/],
    ["more bars than have room", { foundation: { "bottom bars": { "along x": { bar: bar(8), count: 60 }, "along y": { bar: bar(5), count: 6 } } } }, /do not fit across/],
    ["both number and spacing", { foundation: { "bottom bars": { "along x": { bar: bar(8), count: 6, spacing: 9 * inch }, "along y": { bar: bar(5), count: 6 } } } }, /both a number and a spacing/],
  ])("%s stands in the way", (_, given, words) => {
    expect(read(footingOneWayShear, pad(given)).blocks.join()).toMatch(words);
  });

  it("takes the section in bending halfway between column and plate edge where there is no pedestal", () => {
    const onPlate = pad({
      foundation: { pedestal: undefined, "above grade": undefined, depth: 18 * inch },
      base: { plate: { width: 14 * inch, length: 16 * inch } },
      column: { section: { name: "HSS6x6x3/8", width: 6 * inch, depth: 6 * inch } },
    });
    expect(read(footingFlexure, onPlate).inputs.face).toEqual({ x: expect.closeTo(5 * inch, 9), y: expect.closeTo(5.5 * inch, 9) });
  });
});

describe("A base plate on a footing", () => {
  const edges = (given: Given) => {
    const gather = gatherer();
    const member = readMember(pad(given), gather, 0);
    return { east: member.edges.east / inch, north: member.edges.north / inch, depth: member.depth / inch, shape: member.shape, missing: gather.missing };
  };

  it("stands on its pedestal, which reaches to the underside of the pad", () => {
    expect(edges({ foundation: { pedestal: { width: 16 * inch, length: 20 * inch } } })).toEqual({ east: 8, north: 10, depth: expect.closeTo(54, 9), shape: "rectangle", missing: [] });
  });

  it("or on a round one, in the square inside it", () => {
    expect(edges({ foundation: { pedestal: { diameter: 20 * inch } } })).toEqual({ east: expect.closeTo(10 / Math.SQRT2, 9), north: expect.closeTo(10 / Math.SQRT2, 9), depth: expect.closeTo(54, 9), shape: "round", missing: [] });
  });

  it("or right on the pad, as thick as that is", () => {
    expect(edges({ foundation: { pedestal: undefined } })).toEqual({ east: 30, north: 30, depth: expect.closeTo(18, 9), shape: "rectangle", missing: [] });
  });

  it("a pad without a pedestal ends above or below grade by its thickness and depth", () => {
    expect(padTop.value({ t: 18 * inch, d: 12 * inch }) / inch).toBeCloseTo(6, 9);
    expect(padTop.value({ t: 18 * inch, d: 24 * inch }) / inch).toBeCloseTo(-6, 9);
  });
});

describe("Laws of the concrete of a footing", () => {
  const force = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
  const loads = fc.record({ P: force(60), Vx: force(4), Vy: force(4), Mx: force(30), My: force(30) });
  const si = ({ P, Vx, Vy, Mx, My }: { P: number; Vx: number; Vy: number; Mx: number; My: number }): Forces => ({ P: P * kip, Vx: Vx * kip, Vy: Vy * kip, Mx: Mx * kipFoot, My: My * kipFoot });
  const side = fc.double({ min: 2.5, max: 10, noNaN: true });
  const checks = footingChecks.filter(({ id, level, applies }) => level === "strength" && applies(pad({})) && !id.startsWith("footing.pedestal"));

  it("none gives a number that is none, or a negative one, for thousands of loads and sizes", () => {
    fc.assert(
      fc.property(loads, side, side, fc.double({ min: 0.9, max: 3, noNaN: true }), fc.constantFrom("ACI 318-19", "ACI 318-14"), fc.boolean(), fc.boolean(), (forces, B, L, t, concrete, isTopped, isRound) => {
        const support = pad({
          concrete,
          foundation: { width: B * foot, length: L * foot, thickness: t * foot, "top bars": isTopped ? mats(5, 12) : undefined, pedestal: isRound ? { diameter: 16 * inch } : { width: 16 * inch, length: 12 * inch } },
        });
        for (const check of checks) {
          const outcome = outcomeOf(check, support, strengthOf(si(forces), forces.P < 0 ? light : down));
          if (outcome.type === "unchecked") expect(outcome.because.length).toBeGreaterThan(20);
          else {
            expect(Number.isFinite(outcome.demand) && outcome.demand >= 0).toBe(true);
            expect(Number.isFinite(outcome.capacity) && outcome.capacity >= 0).toBe(true);
          }
        }
      }),
      { numRuns: 2000 },
    );
  }, 60_000);

  it("turned by 90 degrees all say the same", () => {
    fc.assert(
      fc.property(loads, side, side, (forces, B, L) => {
        const f = si(forces);
        const turned: Forces = { P: f.P, Vx: -f.Vy, Vy: f.Vx, Mx: -f.My, My: f.Mx };
        for (const check of checks) {
          const one = outcomeOf(check, pad({ foundation: { width: B * foot, length: L * foot, pedestal: { width: 12 * inch, length: 16 * inch } } }), strengthOf(f, down));
          const other = outcomeOf(check, pad({ foundation: { width: L * foot, length: B * foot, pedestal: { width: 16 * inch, length: 12 * inch } } }), strengthOf(turned, down));
          expect(other.type).toBe(one.type);
          if (one.type === "weighed" && other.type === "weighed") expect(Math.abs(other.demand * one.capacity - one.demand * other.capacity)).toBeLessThanOrEqual(1e-5 * (1e-3 + one.demand * one.capacity));
        }
      }),
      { numRuns: 300 },
    );
  }, 60_000);

  it("shear and moment of the pad never jump as the load leans from full contact into lifting", () => {
    for (const check of [footingOneWayShear, footingTwoWayShear, footingFlexure, footingTopFlexure]) {
      const of = (M: number) => weigh(check as typeof footingFlexure, pad(), strengthOf({ P: 15 * kip, My: M * kipFoot }, light));
      let before = of(0);
      for (let M = 0.1; M < 40; M += 0.1) {
        const here = of(M);
        expect(Math.abs(here.demand / here.capacity - before.demand / before.capacity)).toBeLessThan(0.005);
        before = here;
      }
    }
  });
});
