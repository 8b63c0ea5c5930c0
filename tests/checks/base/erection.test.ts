import { describe, expect, it } from "vitest";
import { erection, erectionMoment, erectionTension } from "../../../server/src/checks/base/erection.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { gatherer, inch, kip, ratioOf, run, say, strength, valuesOf } from "../given.js";
import { supportWith, type Given } from "./base.js";

const near = (found: number | undefined, expected: number, part = 0.003) => {
  expect(found).toBeDefined();
  expect(Math.abs(found! / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
};
const read = (given: Given) => {
  const gather = gatherer();
  const inputs = erection.inputs(supportWith(given), gather, 0);
  return { inputs, said: [...new Set([...gather.missing, ...gather.blocks])].join("; ") };
};

describe("four rods and 300 lb at 18 in from the face (29 CFR 1926.755)", () => {
  it("HSS6: 300 lb x (18 + 3) in = 6,300 lb-in; two rods on 8 in share 788 lb (known answer of the trade)", () => {
    const M_e = erectionMoment.value({ b_c: 6 * inch });
    near(M_e / (kip * inch), 6.3, 1e-9);
    near(erectionTension.value({ M_e, s: 8 * inch }) / kip, 0.7875, 1e-9);
    const values = valuesOf(erection, read({ rod: 0.75, spacing: [8, 8] }).inputs, strength({}));
    near(values.get("T_e")! / kip, 0.7875);
    near(values.get("T_u")! / kip, (1.6 * 0.7875) / 2);
    // HSS6x6x3/8 weighs 27.48 lb/ft, 10 ft of it 275 lb.
    near(values.get("W_c")! / kip, 0.2748);
  });

  it("is the plate's to hold: each of two corner rods bends it by half its tension, 0.315 kip-in/in against 0.9 x 36 x 0.5²/4 of 1/2 in", () => {
    const outcome = run(erection, read({ rod: 0.75, spacing: [8, 8], plate: [14, 14, 0.5] }).inputs, strength({ P: 100 * kip }));
    expect(outcome.quantity).toBe("momentPerLength");
    near(outcome.demand / kip, 0.315);
    near(outcome.capacity / kip, 2.025);
  });

  it("is the rods' to hold in a thick plate: 0.63 kip of 14.5 on 8 in", () => {
    const outcome = run(erection, read({ rod: 0.75, spacing: [8, 8], plate: [14, 14, 2] }).inputs, strength({}));
    expect(outcome.quantity).toBe("force");
    near(outcome.demand / kip, 0.63);
    near(outcome.capacity / kip, 14.55);
  });

  it("takes the way in which the rods stand closer, whichever that is", () => {
    for (const spacing of [[12, 5.8], [5.8, 12]] as const) near(valuesOf(erection, read({ section: "HSS4x4x1/4", rod: 0.5, spacing, plate: [14, 14, 2] }).inputs, strength({})).get("T_e")! / kip, (0.3 * 20) / 5.8);
  });

  it("shares it among three rods on a side where there are eight", () => {
    near(valuesOf(erection, read({ rod: 0.75, count: 8, spacing: [8, 8], plate: [14, 14, 2], section: "HSS4x4x1/4" }).inputs, strength({})).get("T_u")! / kip, (1.6 * 0.3 * 20) / 8 / 3);
  });

  it.each([
    [1, [undefined, undefined]],
    [2, [10, undefined]],
  ] as const)("%s rods are over, and the column's weight is said", (count, spacing) => {
    const { inputs } = read({ count, spacing });
    const outcome = run(erection, inputs, strength({}));
    expect(ratioOf(outcome)).toBe(4 / count);
    expect(erection.advise!(inputs, outcome, say)).toMatch(new RegExp(`^${count} rods; 4 are needed.*weighs 274\\.\\d lb\\.$`));
  });

  it("says the force first, and does not answer for rods under the column", () => {
    const { inputs } = read({ rod: 0.75, spacing: [8, 8], plate: [14, 14, 0.5] });
    expect(erection.advise!(inputs, run(erection, inputs, strength({})), say)).toMatch(/^0\.315 kip-in\/in by 300 lb.*Take a thicker plate/);
    expect(erection.evaluate(read({ rod: 0.75, spacing: [4, 4] }).inputs, strength({}), plainCalc)).toMatchObject({ type: "unchecked" });
    expect(read({ base: { plate: undefined } }).said).toMatch(/base plate/);
  });
});
