import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Demand } from "../../../server/src/actions/demand.js";
import { baseBearing } from "../../../server/src/checks/base/bearing.js";
import { levelingNuts } from "../../../server/src/checks/base/leveling-nuts.js";
import { plateCompression } from "../../../server/src/checks/base/plate-compression.js";
import { plateUplift } from "../../../server/src/checks/base/plate-uplift.js";
import { gapInGrout, rodBending, rodFlexure, rodNetDiameter } from "../../../server/src/checks/base/rod-bending.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { gatherer, inch, kip, kipFoot, kipInch, ksi, ratioOf, run, say, strength, valuesOf } from "../given.js";
import { supportWith, type Given } from "./base.js";

const near = (found: number | undefined, expected: number, part = 0.003) => {
  expect(found).toBeDefined();
  expect(Math.abs(found! / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
};

const standing = (gap: number | undefined, given: Given = {}): Given => ({
  rod: 0.75,
  ...given,
  base: { "leveling nuts": true, grout: 0, "gap below nuts": gap === undefined ? undefined : gap * inch, ...given.base },
});
const read = (given: Given) => {
  const gather = gatherer();
  const inputs = levelingNuts.inputs(supportWith(given), gather, 0);
  return { inputs, said: [...new Set([...gather.missing, ...gather.blocks])].join("; ") };
};
const ratio = (given: Given, demand: Demand<"strength">): number => run(levelingNuts, read(given).inputs, demand).demand;

describe("rods below leveling nuts, no grout", () => {
  /**
   * 3/4 in grade 36 rods, 1-1/2 in clear, 2 kip shear on four: practice counts half the gap, 0.375 kip-in or 25 % of the rod by the plastic
   * modulus of its net section. With half a diameter of the rod in the concrete and 1.6 of the elastic modulus the same rod is used to a third.
   */
  it("2 kip on four 3/4 in rods with 1-1/2 in clear: 0.469 kip-in of 1.414 (by half the clear gap and the whole plastic modulus 0.375 of 1.50, a quarter)", () => {
    const inputs = read(standing(1.5, { base: { "washers welded": true } })).inputs;
    const values = valuesOf(levelingNuts, inputs, strength({ P: -0.001, Vx: 2 * kip }));
    near(values.get("V_ua")! / kip, 0.5);
    near(values.get("l_b")! / inch, 1.875, 1e-9);
    near(values.get("M_r")! / kipInch, 0.46875);
    near(values.get("phiM_n")! / kipInch, 1.414);
    near(rodBending.value({ V_ua: 0.5 * kip, l_b: 1.5 * inch }) / kipInch, 0.375, 1e-9);
    const d_n = rodNetDiameter.value({ A_se: inputs.A_se });
    near((0.9 * 36 * (d_n / inch) ** 3) / 6, 1.5, 0.005);
    near(rodFlexure.value({ F_y: 36 * ksi, d_n }) / kipInch, 0.9 * 36 * 1.6 * Math.PI * (0.65257 ** 3 / 32));
  });

  it.each([
    // phi N_n in compression by AISC 360-22 E3: K l/r = 1.2 x 2.375/(0.6526/4), F_e = 938 ksi, F_n = 35.4 ksi, 0.9 x 35.4 x 0.3345.
    ["6.2 kip pressed evenly on four 3/4 in rods over 2 in: 1.55/10.66 each, K l/r = 17.5", 2, { P: 6.2 * kip }, {}, 1.55 / 10.66],
    ["10 in of gap, slender: K l/r = 76.3, F_e = 49.2 ksi, F_n = 0.658^(36/49.2) x 36 = 26.5 ksi", 10, { P: 6.2 * kip }, {}, 1.55 / (0.9 * 26.5 * 0.3345)],
    ["20 in of gap: K l/r = 149.9, F_e = 12.74 ksi, beyond 2.25, F_n = 0.877 F_e", 20, { P: 6.2 * kip }, {}, 1.55 / (0.9 * 0.877 * 12.74 * 0.3345)],
    ["8 kip of uplift: 2 kip on 0.9 x 36 x 0.3345 = 10.84", 0.5, { P: -8 * kip }, {}, 2 / 10.84],
    ["a moment of 5 kip-ft as a couple on rods 10 in apart: 60/(2 x 10) = 3 kip", 0.5, { My: 5 * kipFoot }, {}, 3 / 10.804],
    ["the same about the other axis", 0.5, { Mx: 5 * kipFoot }, {}, 3 / 10.804],
    ["shear on two rods where washers are loose: (2/7.57)² with no bending in a gap of one diameter", 0.75, { Vy: 4 * kip }, {}, (2 / 7.566) ** 2],
    ["shear on four where they are welded", 0.75, { Vy: 4 * kip }, { "washers welded": true }, (1 / 7.566) ** 2],
  ] as const)("%s", (_, gap, forces, base, expected) => near(ratio(standing(gap, { base }), strength(forces)), expected, 0.005));

  it("bending begins where the gap passes one rod diameter, and grows with it", () => {
    const at = (gap: number) => ratio(standing(gap), strength({ Vx: kip }));
    expect(at(0.75)).toBe(at(0.25));
    expect(at(0.76)).toBeGreaterThan(2 * at(0.75));
    expect(at(2)).toBeGreaterThan(at(1));
  });

  it("adds axial force and bending, and squares the shear: 1 kip up and 1 kip of shear a rod, 1 in clear", () => {
    const outcome = ratio(standing(1), strength({ P: -4 * kip, Vx: 2 * kip }));
    near(outcome, 1 / 10.84 + (1 * 1.375) / 2 / 1.414 + (1 / 7.566) ** 2, 0.004);
  });

  it("is never lower with more of any force", () => {
    const part = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(part, part, part, fc.double({ min: 0, max: 6, noNaN: true }), fc.double({ min: 1, max: 3, noNaN: true }), (P, V, M, gap, times) => {
        const forces = (k: number) => strength({ P: k * P * kip, Vx: k * V * kip, My: k * M * kipFoot });
        const one = ratio(standing(gap), forces(1));
        expect(Number.isFinite(one)).toBe(true);
        expect(ratio(standing(gap), forces(times))).toBeGreaterThanOrEqual(one * (1 - 1e-12));
      }),
    );
  });

  it("asks for the gap, and does not answer for two rods that a moment turns, nor where earthquake rules apply", () => {
    expect(read(standing(undefined)).said).toMatch(/gap below nuts/);
    const pair = read(standing(1, { count: 2, spacing: [10, undefined] })).inputs;
    expect(levelingNuts.evaluate(pair, strength({ Mx: kip }), plainCalc)).toMatchObject({ type: "unchecked" });
    expect(read(standing(1, { site: { "seismic design category": "D" } })).said).toMatch(/17\.10/);
    expect(read({ base: { "leveling nuts": true, grout: undefined } }).said).toMatch(/grout/);
  });

  it("says the used part first", () => {
    const { inputs } = read(standing(2));
    const outcome = run(levelingNuts, inputs, strength({ Vx: 8 * kip }));
    expect(levelingNuts.advise!(inputs, outcome, say)).toMatch(/^\d\.\d+ times what the rods hold with 2 in clear below the leveling nuts\. Place grout, lower the plate to a gap of 0\.75 in/);
  });
});

describe("rods below leveling nuts, before the grout", () => {
  const dead = (forces: Parameters<typeof strength>[0], terms: readonly ("D" | "W")[]): Demand<"strength"> => {
    const demand = strength(forces);
    return { ...demand, combination: { ...demand.combination, terms: terms.map((type) => ({ factor: 1.4, type })) } };
  };
  const grouted: Given = { rod: 0.75, base: { "leveling nuts": true } };

  it("3/4 in rods in 1-1/2 in of grout stand 1/2 in clear: the nut takes 3/4, its washer 1/4", () => {
    near(gapInGrout.value({ t_g: 1.5 * inch, h_n: 0.75 * inch, t_w: 0.25 * inch }) / inch, 0.5, 1e-9);
    near(read(grouted).inputs.g / inch, 0.5, 1e-9);
    expect(gapInGrout.value({ t_g: 0.5 * inch, h_n: 0.75 * inch, t_w: 0.25 * inch })).toBe(0);
  });

  it("takes dead load alone, and nothing of what comes after the grout", () => {
    near(ratio(grouted, dead({ P: 8 * kip }, ["D"])), 2 / 10.804, 0.005);
    expect(ratio(grouted, dead({ P: 80 * kip, My: 90 * kipFoot }, ["D", "W"]))).toBe(0);
    expect(levelingNuts.evaluate(read(grouted).inputs, strength({ P: kip }), plainCalc)).toMatchObject({ type: "unchecked", because: expect.stringContaining("reactions by load case") });
  });
});

describe("a plate that stands on its rods alone", () => {
  const given = standing(0.5, { section: "HSS8x8x3/8", plate: [14, 14, 0.75], spacing: [11, 11], base: {} });
  const outcome = (of: typeof baseBearing | typeof plateCompression | typeof plateUplift, forces: Parameters<typeof strength>[0]) => {
    const inputs = of.inputs(supportWith(given), gatherer(), 0) as never;
    return run(of as typeof plateUplift, inputs, strength(forces));
  };

  it("bends the same whether 40 kip lift it or press it: 5.0 kip-in/in under the corner rods", () => {
    near(outcome(plateUplift, { P: -40 * kip }).demand / kip, 5);
    near(outcome(plateCompression, { P: 40 * kip }).demand / kip, 5);
    expect(outcome(plateCompression, { P: -40 * kip }).demand).toBe(0);
    expect(outcome(plateUplift, { P: 40 * kip }).demand).toBe(0);
  });

  it("under a moment bends on both sides at once, alike", () => {
    near(outcome(plateUplift, { My: 11 * kipFoot }).demand / kip, 3);
    near(ratioOf(outcome(plateUplift, { My: 11 * kipFoot })), ratioOf(outcome(plateCompression, { My: 11 * kipFoot })), 1e-9);
  });

  it("asks nothing of the concrete in bearing", () => expect(outcome(baseBearing, { P: 40 * kip, My: kipFoot }).demand).toBe(0));
});
