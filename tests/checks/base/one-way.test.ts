/** The one-way formulas against their published cases, and against the exact contact of plate and concrete. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aboutRods, againstExact, cornerPull, evenRod, largeMomentBlock, liftedRod, mostAboutRods, oneWay, rodOfRow, rodStrength, rowPull } from "../../../server/src/checks/base/one-way.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { gatherer, inch, kip, kipFoot, kipInch, ksi, ratioOf, run, say, strength, valuesOf } from "../given.js";
import { supportWith, type Given } from "./base.js";

const near = (found: number | undefined, expected: number, part = 0.005) => expect(Math.abs((found ?? Number.NaN) / expected - 1), `${found} against ${expected}`).toBeLessThan(part);

const inputsOf = (given: Given) => {
  const gather = gatherer();
  const inputs = oneWay.inputs(supportWith(given), gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};

const guide: Given = { plate: [14, 14, 1.75], spacing: [11, 11], rod: 0.875, grade: "F1554 Gr 55", pier: 60 };

describe("the one-way formulas of base plates (published cases)", () => {
  it("AISC Design Guide 1, 3rd ed., Example 4.7-14: 90 kip and 700 kip-in on 14 in, f 5.5: e_crit 6.27, Y 1.654 and T 12.4 without the misprint", () => {
    const values = valuesOf(oneWay, inputsOf(guide), strength({ P: 90 * kip, Mx: 700 * kipInch }));
    near(values.get("f_d")! / ksi, 4.42);
    near(values.get("q_m")! / (kip / inch), 61.9);
    near(values.get("e_c")! / inch, 6.27);
    near(values.get("Y")! / inch, 1.654);
    near(values.get("T")! / kip, 12.4);
    near(values.get("T_c")! / kip, 6.2, 0.006);
  });

  it("the same about the other axis, 450 kip-in: e of 5.0 in is a small moment, and no rod pulls", () => {
    const values = valuesOf(oneWay, inputsOf(guide), strength({ P: 90 * kip, My: -450 * kipInch }));
    near([...values.entries()].find(([name]) => name === "Y")![1] / inch, 14);
    expect(values.get("T_c")).toBe(0);
    expect(values.has("T")).toBe(false);
  });

  it("2nd ed., Examples 4.6 and 4.7 (inputs from memory): 376 kip on 19 in, 940 kip-in are small with Y 14.0; 3600 are large, T 69 kip", () => {
    const inputs = inputsOf({ plate: [19, 19, 2], spacing: [16, 16], rod: 1, fc: 4000 });
    const small = valuesOf(oneWay, inputs, strength({ P: 376 * kip, Mx: 940 * kipInch }));
    near(small.get("e_c")! / inch, 7.26);
    near(small.get("Y")! / inch, 14);
    const large = valuesOf(oneWay, inputs, strength({ P: 376 * kip, Mx: 3600 * kipInch }));
    near(large.get("Y")! / inch, 5.3, 0.01);
    near(large.get("T")! / kip, 69, 0.01);
  });

  it("a memo in SI without axial force, the couple of a lug of 5.2 kN·m, f 175 mm, q 12.43 kN/mm: Y 1.05 mm, T 13.0 kN", () => {
    const q_m = 12.43e6;
    const M_r = aboutRods.value({ M: 5200, P: 0, f: 0.175 });
    const Y = largeMomentBlock.value({ f: 0.175, N_l: 0.45, M_r, q_m });
    near(Y * 1e3, 1.05);
    near(rowPull.value({ q_m, Y, P: 0 }) / 1e3, 13.0);
    near(rodOfRow.value({ T: 13, n_r: 2 }), 6.5);
    near(mostAboutRods.value({ q_m, f: 0.175, N_l: 0.45 }), (q_m * 0.4 ** 2) / 2, 1e-9);
  });

  it.each([
    ["F1554 Gr 36", 58, 0.75, 14.4],
    ["F1554 Gr 55", 75, 0.875, 25.4],
    ["F1554 Gr 105", 125, 1, 55.2],
  ])("%s of %d ksi, %f in, carries %f kip (AISC 360-22 J3.7)", (_, F_u, d_a, R) => {
    near(rodStrength.value({ F_u: F_u * ksi, d_a: d_a * inch }) / kip, R);
  });
});

describe("statics of the one-way formulas", () => {
  it("uplift of 8 kip is 2 kip a rod; 5.5 kip-ft beside it add 3 kip to the two rods of one row, the other way those of the other", () => {
    const inputs = inputsOf(guide);
    near(run(oneWay, inputs, strength({ P: -8 * kip })).demand / kip, 2, 1e-9);
    for (const M of [20, -20]) {
      near(run(oneWay, inputs, strength({ P: -8 * kip, Mx: M * kipInch })).demand / kip, 2 + 20 / 22, 1e-9);
      near(run(oneWay, inputs, strength({ P: -8 * kip, My: M * kipInch })).demand / kip, 2 + 20 / 22, 1e-9);
    }
    near(run(oneWay, inputs, strength({ P: -8 * kip, Mx: 20 * kipInch, My: 10 * kipInch })).demand / kip, 2 + 30 / 22, 1e-9);
    near(liftedRod.value({ P: -8, n: 4, M: 66, f: 5.5, n_r: 2 }), 5, 1e-9);
    expect(evenRod.value({ P: -8, n: 4 })).toBe(2);
    near(cornerPull.value({ T_1x: 3, T_1y: 4, P: -8, n: 4 }), 5, 1e-9);
    near(againstExact.value({ T_c: 3, T_e: 4 }), 0.75, 1e-9);
  });

  it("a moment the bearing has no room for is over, with the moment it can balance", () => {
    const inputs = inputsOf(guide);
    const outcome = run(oneWay, inputs, strength({ P: 400 * kip, Mx: 2900 * kipInch }));
    expect([outcome.quantity, ratioOf(outcome) > 1]).toEqual(["moment", true]);
    // 61.9 x 12.5²/2 = 4834 kip-in.
    near(outcome.capacity / kipInch, (61.88 * 12.5 ** 2) / 2);
    near(outcome.demand / kipInch, 2900 + 400 * 5.5);
    expect(oneWay.advise?.(inputs, outcome, say)).toMatch(/^Moment about the rods 425 kip-ft; bearing balances 402\.\d kip-ft\. Take a larger plate/);
  });

  it("puts the tension first in its advice, and is no check of a plate on its nuts alone", () => {
    const inputs = inputsOf(guide);
    expect(oneWay.advise?.(inputs, run(oneWay, inputs, strength({ P: -120 * kip })), say)).toMatch(/^Tension of a rod 30 kip by the one-way formulas; it carries 25\.3\d kip/);
    expect(oneWay.applies(supportWith(guide))).toBe(true);
    expect(oneWay.applies(supportWith({ ...guide, base: { "leveling nuts": true, grout: 0 } }))).toBe(false);
  });
});

describe("the one-way formulas and the exact contact", () => {
  const axial = fc.double({ min: -40, max: 120, noNaN: true });
  const moment = fc.double({ min: 1, max: 60, noNaN: true });
  const inputs = inputsOf({ ...guide, plate: [14, 18, 1.75], spacing: [11, 14] });

  // Where a lifted plate just begins to bear at its far edge, beyond the far rods, that bearing turns with the uplift and takes a little off the rods.
  it("pushed one way the exact contact pulls more, never less but by 5 % under uplift, and both at least what bearing at the very edge would: (M - P N/2)/(f + N/2)", () => {
    fc.assert(
      fc.property(axial, moment, fc.boolean(), fc.boolean(), (P, M, isAlongX, isBack) => {
        const m = (isBack ? -M : M) * kipFoot;
        const demand = strength({ P: P * kip, ...(isAlongX ? { My: m } : { Mx: m }) });
        const values = valuesOf(oneWay, inputs, demand);
        const [f, half] = isAlongX ? [5.5, 7] : [7, 9];
        const least = (M * 12 - P * half) / (f + half) / 2;
        const oneWayPull = values.get("T_c");
        if (oneWayPull === undefined) return;
        // Of a lifted plate the far rods may pull too.
        if (P >= 0) expect(oneWayPull / kip).toBeGreaterThanOrEqual(least - 1e-6);
        if (values.has("k_T")) expect(values.get("k_T")).toBeLessThanOrEqual(P < 0 ? 1.05 : 1 + 1e-6);
        else expect(oneWayPull).toBeLessThan(1e-6 * kip);
      }),
    );
  });

  it("without axial force they agree within a tenth", () => {
    fc.assert(
      fc.property(moment, fc.boolean(), (M, isAlongX) => {
        const k = valuesOf(oneWay, inputs, strength(isAlongX ? { My: M * kipFoot } : { Mx: M * kipFoot })).get("k_T")!;
        expect(k).toBeGreaterThan(0.85);
        expect(k).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("lifted clear of the concrete they are the same", () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 80, noNaN: true }), fc.double({ min: -0.77, max: 0.77, noNaN: true }), (T, part) => {
        // The far edge, at 9/7 of the rods' distance, is clear up to 7/9 of T f.
        near(valuesOf(oneWay, inputs, strength({ P: -T * kip, Mx: part * T * 7 * kipInch })).get("k_T"), 1, 1e-6);
      }),
    );
  });

  it("a larger moment never pulls less, and pressing the plate down never more", () => {
    fc.assert(
      fc.property(axial, moment, moment, (P, Mx, My) => {
        const of = (p: number, x: number, y: number) => oneWay.evaluate(inputs, strength({ P: p * kip, Mx: x * kipFoot, My: y * kipFoot }), plainCalc);
        const here = of(P, Mx, My);
        const more = of(P, 1.1 * Mx, 1.05 * My);
        if (here.type !== "weighed" || more.type !== "weighed" || here.quantity !== "force" || more.quantity !== "force") return;
        expect(more.demand).toBeGreaterThanOrEqual(here.demand - 1e-6);
        const pressed = of(P + 5, Mx, My);
        if (pressed.type === "weighed" && pressed.quantity === "force") expect(pressed.demand).toBeLessThanOrEqual(here.demand + 1e-6);
      }),
    );
  });
});
