import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { baseBearing } from "../../../server/src/checks/base/bearing.js";
import { cantileverMoment, plateCompression, plateStrength, thicknessNeeded } from "../../../server/src/checks/base/plate-compression.js";
import { plateUplift } from "../../../server/src/checks/base/plate-uplift.js";
import { rodMoment } from "../../../server/src/checks/base/rod-moment.js";
import { plateWithoutPrying, pryingInner } from "../../../server/src/checks/column/top-bolts.js";
import { worstBendLine } from "../../../server/src/mechanics/plate-bend-lines.js";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { gatherer, inch, kip, kipFoot, ksi, run, strength, valuesOf } from "../given.js";
import { supportWith, type Given } from "./base.js";

const near = (found: number | undefined, expected: number, part = 0.003) => {
  expect(found).toBeDefined();
  expect(Math.abs(found! / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
};
const inputsOf = <I extends object>(of: CheckDecl<I, any>, given: Given): I => {
  const gather = gatherer();
  const inputs = of.inputs(supportWith(given), gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};

/** AISC Shapes Database: depth 12.7, flange 12.2 x 0.900, web 0.550 in. */
const w12x96 = "W 12.7 x 12.2 in, flange 0.9 in, web 0.55 in, fillet 0.6 in";

describe("plates under W columns (published cases)", () => {
  /** Depth along y, as in the examples where N goes with the depth. */
  const wide = (section: string, plate: readonly [number, number, number], more: Given): Given => ({ section, plate, spacing: [plate[0] - 3, plate[1] - 3], rod: 0.75, column: { "deep side": "along y" }, ...more });

  it("AISC Companion 16th ed., Example J.6: W12x96 on 22 x 22, n = 6.12 in, n' = 3.11, 690 kip need 1.54 in of grade 50", () => {
    const given = wide(w12x96, [22, 22, 1.54], { plateGrade: "A572 Gr 50", pier: 24, fc: 3000 });
    const values = valuesOf(plateCompression as CheckDecl<any, "strength">, inputsOf(plateCompression, given), strength({ P: 690 * kip }));
    near(values.get("l")! / inch, 6.12);
    near(values.get("n_prime")! / inch, 3.11);
    near(values.get("m_u")! / values.get("m_d")!, 1, 0.01);
    near(run(baseBearing, inputsOf(baseBearing, given), strength({ P: kip })).capacity / kip, 875);
  });

  it("AISC Design Guide 1, 2nd ed., Example 4.1 (inputs from memory): W12x96 on 18 x 16, 376 kip need 0.886 in of A36", () => {
    const given = wide(w12x96, [16, 18, 0.886], { pier: 18.01, fc: 3000 });
    const values = valuesOf(plateCompression as CheckDecl<any, "strength">, inputsOf(plateCompression, given), strength({ P: 376 * kip }));
    near(values.get("l")! / inch, 3.12);
    near(values.get("m_u")! / values.get("m_d")!, 1, 0.01);
  });

  it("a plate hardly larger than its W bends between the flanges: n' = sqrt(12.7 x 12.2)/4 = 3.11 in", () => {
    const inputs = inputsOf(plateCompression, wide(w12x96, [13, 13, 1], { pier: 24, spacing: [5, 5] }));
    near(run(plateCompression as CheckDecl<any, "strength">, inputs, strength({ P: 169 * kip })).demand / kip, 3.11 ** 2 / 2, 0.005);
  });
});

describe("thickness at the bearing stress and the pull of the published cases", () => {
  // Bearing stress, overhang, yield strength, thickness; US in ksi and in, SI in MPa and mm.
  it.each([
    ["AISC Design Guide 1, 3rd ed., Example 4.7-14, n = 3.76", ksi, inch, 4.42, 3.76, 50, 1.67],
    ["2nd ed., Example 4.6 along m (inputs from memory)", ksi, inch, 1.41, 3.47, 36, 1.02],
    ["2nd ed., Example 4.6 along n", ksi, inch, 1.41, 4.62, 36, 1.36],
    ["a memo in SI, axial: 400 kN on 450 x 450", 1e6, 1e-3, 1.9753, 105, 250, 13.9],
    ["a memo in SI, large moment, n more than m", 1e6, 1e-3, 27.6, 105, 250, 52.0],
  ])("bearing side: %s", (_, stress, length, f_p, l, F_y, t) => {
    near(cantileverMoment.value({ f_p: f_p * stress, l: l * length }) / plateStrength.value({ F_y: F_y * stress, t_p: t * length }), 1, 0.01);
  });

  // Pull, arm, width, yield strength, thickness.
  it.each([
    ["3rd ed., Example 4.7-14 with the exact pull of 12.4 kip (0.392 in with the misprinted 15.2)", kip, ksi, inch, 12.4, 1.59, 14, 50, 0.354],
    ["2nd ed., Example 4.7 (inputs from memory)", kip, ksi, inch, 69, 2.1, 19, 36, 0.97],
    ["a memo in SI, 150.5 kN", 1e3, 1e6, 1e-3, 150.5, 34.5, 450, 250, 14.3],
    ["a memo in SI, 634.6 kN", 1e3, 1e6, 1e-3, 634.6, 34.5, 450, 250, 29.4],
  ])("pulled side, over the whole width as these sources do: %s", (_, force, stress, length, T, a, b_eff, F_y, t) => {
    near(rodMoment.value({ T: T * force, a: a * length, b_eff: b_eff * length }) / plateStrength.value({ F_y: F_y * stress, t_p: t * length }), 1, 0.012);
  });

  it("the whole width counts steel the rods do not reach: two of 34 kip on 19 in give half of what 45° gives", () => {
    const found = worstBendLine({ width: 19, length: 19, half: 5.9, rods: [{ x: 8, y: -6 }, { x: 8, y: 6 }], tensions: [34.5, 34.5] })!;
    expect(found.width).toBeLessThanOrEqual(2 * found.distance + 1e-12);
    expect((found.tension * found.distance) / found.width).toBeGreaterThan(2 * ((69 * 2.1) / 19) * 0.99);
  });
});

describe("prying of a plate on its rods", () => {
  it("a plate that holds the rods' pull is never thinner than the AISC Manual, Part 9, asks for to keep it from prying: arm from the rod's edge, the tensile strength", () => {
    fc.assert(
      fc.property(fc.double({ min: 3.7, max: 6.2, noNaN: true }), fc.double({ min: 0, max: 6.2, noNaN: true }), fc.double({ min: 1, max: 40, noNaN: true }), fc.constantFrom(0.625, 0.75, 1), (x, y, T, d) => {
        const found = worstBendLine({ width: 14, length: 14, half: 2.85, rods: [{ x, y }], tensions: [T] })!;
        const m_u = rodMoment.value({ T: T * kip, a: found.distance * inch, b_eff: found.width * inch });
        const t = thicknessNeeded.value({ t_p: inch, m_u, m_d: plateStrength.value({ F_y: 36 * ksi, t_p: inch }) });
        const b_i = pryingInner.value({ b: found.distance * inch, d: d * inch });
        if (b_i <= 0) return;
        // With the pull in place of the bolt's strength this is the plate at which that pull pries no more.
        expect(plateWithoutPrying.value({ B_c: T * kip, b_i, p: found.width * inch, F_y: 36 * ksi })).toBeLessThan(t);
        expect(plateWithoutPrying.value({ B_c: T * kip, b_i, p: found.width * inch, F_y: 58 * ksi })).toBeLessThan(t);
      }),
    );
  });
});

describe("both sides of a plate at once", () => {
  const tall: Given = { section: "HSS6x6x3/8", plate: [14, 14, 1], spacing: [11, 11], rod: 0.75 };
  const momentOf = (of: CheckDecl<any, any>, forces: Parameters<typeof strength>[0]) => run(of as CheckDecl<any, "strength">, inputsOf(of, tall), strength(forces)).demand / kip;

  it("under moments both ways the pressed corner and the pulled corner are both asked, and the way they are turned does not matter", () => {
    const forces = { P: 5 * kip, Mx: -8 * kipFoot, My: 10 * kipFoot };
    for (const of of [plateCompression, plateUplift]) {
      const here = momentOf(of, forces);
      expect(here).toBeGreaterThan(0);
      near(momentOf(of, { ...forces, Mx: 8 * kipFoot }), here, 1e-6);
      near(momentOf(of, { P: 5 * kip, Mx: -10 * kipFoot, My: 8 * kipFoot }), here, 1e-6);
    }
  });

  it("the overhang along a side always asks more than the diagonal across the pressed corner: p l²/2 against p l²/3 of the triangle beyond it", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 6, noNaN: true }), (l) => {
        // The triangle beyond the tube's corner: height l sqrt 2, so p H²/6 per width of its base.
        const corner = (l * Math.SQRT2) ** 2 / 6;
        expect(cantileverMoment.value({ f_p: 1, l })).toBeGreaterThan(corner);
      }),
    );
  });

  it("45° from a rod is never wider than the yield lines of one bolt beside a line: 2 pi m and 4 m + 1.25 e (EN 1993-1-8 Table 6.4, from memory)", () => {
    fc.assert(
      fc.property(fc.double({ min: 3.2, max: 6.5, noNaN: true }), fc.double({ min: 0, max: 6.5, noNaN: true }), (x, y) => {
        const found = worstBendLine({ width: 14, length: 14, half: 3, rods: [{ x, y }], tensions: [1] })!;
        const e = 7 - x;
        expect(found.width).toBeLessThanOrEqual(Math.min(2 * Math.PI * found.distance, 4 * found.distance + 1.25 * e) + 1e-9);
      }),
    );
  });
});
