import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readBar } from "../../../server/src/catalog/bars.js";
import { breakoutShear } from "../../../server/src/checks/anchors/breakout-shear.js";
import { hairpinPull, hairpinReach, hairpins, hairpinStrength, type HairpinInputs } from "../../../server/src/checks/anchors/hairpins.js";
import { interaction } from "../../../server/src/checks/anchors/interaction.js";
import { straightLength } from "../../../server/src/checks/footing/bar-development.js";
import { gatherer, inch, kip, ratioOf, run, say, strength, valuesOf } from "../given.js";
import { supportWith, type Given } from "../base/base.js";

const near = (found: number | undefined, expected: number, part = 0.003) => {
  expect(found).toBeDefined();
  expect(Math.abs(found! / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
};
const push = (x: number, y = 0, up = 0) => strength({ Vx: x * kip, Vy: y * kip, P: -up * kip });
const no4 = readBar("no. 4")!;

/** Square pedestal 30 in, 4 ksi, 3/4 in rods 10 in square on 1 in of grout; hairpins no. 4 round each rod, 2 in below the top, legs of 20 in. */
const pinned: Given = { section: "HSS3x3x1/4", plate: [14, 14, 1], pier: 30, rod: 0.75, spacing: [10, 10], embedment: 12, base: { grout: inch } };
const around = { count: 4, bar: no4, resists: "both ways", "around rods": true, leg: 20 * inch, "leg ends": "straight", "below top": 2 * inch };
const supportOf = (pins: Record<string, unknown> = {}, given: Given = {}) =>
  supportWith({ ...pinned, ...given, base: { ...pinned.base, ...given.base }, foundation: { cover: 2 * inch, "bar grade": "Gr 60", hairpins: { ...around, ...pins }, ...given.foundation } });
const inputsOf = (pins: Record<string, unknown> = {}, given: Given = {}): HairpinInputs => {
  const gather = gatherer();
  const inputs = hairpins.inputs(supportOf(pins, given), gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};
const said = (pins: Record<string, unknown>, given: Given = {}): string => {
  const gather = gatherer();
  hairpins.inputs(supportOf(pins, given), gather, 0);
  return [...new Set([...gather.missing, ...gather.blocks])].join("; ");
};

describe("hairpins in place of breakout in shear (ACI 318-19 17.5.2.1)", () => {
  // A worked memo to ACI 318-25, SI: 234.4 kN on three U bars of 12 mm, f_y 420 MPa, f'c 25 MPa, c_a1 537.5 mm, c_a2 400 mm.
  it("three U bars of 12 mm carry 256.7 kN at the phi of 0.90 that the memo takes, and 213.9 kN at the 0.75 of ACI 318-19", () => {
    const bars = { n_h: 3, A_b: 113.1e-6, f_y: 420e6, k_i: 1, k_o: 1 };
    near(hairpinStrength.value(bars) / 1e3, (256.7 * 0.75) / 0.9);
    // As required: 744 mm2 at 0.75 in the memo's terms, 234.4 kN / (0.75 x 420 MPa).
    near(hairpinStrength.value({ ...bars, n_h: 1, A_b: 744e-6 / 2 }) / 1e3, 234.4);
  });

  it("the legs of that memo count within 120 mm of the rods, and need 624 mm as top bars", () => {
    near(hairpinReach.value({ c_a1: 0.5375, c_a2: 0.4 }) / 1e-3, 120);
    near(hairpinReach.value({ c_a1: 0.2, c_a2: 0.4 }) / 1e-3, 100);
    // The memo has the SI form of the table; the form in pounds is 0.2 % apart.
    near(straightLength.value({ psi_t: 1.3, psi_g: 1, k_s: 1, f_y: 420e6, k_d: 25, s_c: Math.sqrt(25e6 / 6894.757) * 6894.757, d_b: 0.012 }) / 1e-3, 624, 0.015);
  });

  it("round the rods, straight legs of 20 in as top bars count with the part of 28.5 x 1.3 in that they are", () => {
    // Development of no. 4 in 4 ksi 19.0 in, 1.5 times where legs are less than two bar diameters clear: 3/4 in rod, 1.5 d_b clear. 1.3 x 28.46 = 37.0 in.
    const values = valuesOf(hairpins, inputsOf(), push(5));
    near(values.get("l_d")! / inch, 37.0, 0.002);
    near(values.get("l_i")! / inch, 20);
    // Two rods bear with loose washers: 2 hairpins, 4 legs x 0.20 x 60 x 0.75 x 20/37.0 = 19.46 kip.
    near(values.get("phiN_re")! / kip, 19.46);
    // Lever 2 + 1 in; 0.85 x min(70, 24, 20) = 17 in: 5 x (1 + 3/17) = 5.882 kip.
    near(values.get("N_re")! / kip, 5.882);
  });

  it("welded washers let all four count, and hooked legs in full from their development length on", () => {
    near(run(hairpins, inputsOf({}, { base: { "washers welded": true } }), push(5)).capacity / kip, 2 * 19.46);
    // Hook of no. 4 in 4 ksi: 60000 x 1.6 x 1.25 x 0.867 / (55 x 63.2) x 0.5^1.5 = 10.57 in.
    near(valuesOf(hairpins, inputsOf({ "leg ends": "hooked" }), push(5)).get("l_dh")! / inch, 10.57, 0.002);
    near(run(hairpins, inputsOf({ "leg ends": "hooked", leg: 10.6 * inch }), push(5)).capacity / kip, 36);
    expect(run(hairpins, inputsOf({ "leg ends": "hooked", leg: 10.5 * inch }), push(5)).capacity).toBe(0);
  });

  it("beside the rods they count within reach, with their bend developed before the breakout surface", () => {
    const beside = (g: number, given: Given = {}) => inputsOf({ "around rods": false, "from rods": g * inch }, { pier: 40, ...given });
    // c_a1 = c_a2 = 15 in: reach min(7.5, 4.5) = 4.5 in. Bend: 15 - 3/1.5 - 2 = 11 in against a hook of 10.57 in.
    const values = valuesOf(hairpins, beside(3), push(5));
    near(values.get("r")! / inch, 4.5);
    near(values.get("l_o")! / inch, 11);
    near(values.get("l_i")! / inch, 22);
    expect(values.get("k")).toBe(1);
    expect(run(hairpins, beside(4.6), push(5)).capacity).toBe(0);
    // A bend of 15 - 4/1.5 - 2 = 10.33 in is too short.
    const short = beside(4);
    const outcome = run(hairpins, short, push(5));
    expect(outcome.capacity).toBe(0);
    expect(hairpins.advise!(short, outcome, say)).toMatch(/legs 4 in from the rods are out of their reach, or too short/);
  });

  // 0.85 of the least of the concrete below the bars, twice the embedment and twice the edge distance.
  it.each([
    [20, 24, 10, 1 + 3 / 17],
    [30, 24, 4, 1 + 3 / 6.8],
    [6, 24, 10, 1 + 3 / 5.1],
  ])("%d in of concrete below, rods %d in deep and %d in from the edge: the bars pull %d times the shear", (h_b, h_ef, c_a1, expected) => {
    near(hairpinPull.value({ V_u: 1, e_s: 3 * inch, h_b: h_b * inch, h_ef: h_ef * inch, c_a1: c_a1 * inch }), expected, 1e-9);
    near(hairpinPull.value({ V_u: 1, e_s: 3 * inch, h_b: h_b * inch, h_ef: c_a1 * inch, c_a1: h_ef * inch }), expected, 1e-9);
  });

  it("take the shear they stand against from the concrete, and no other", () => {
    const shear = (resists: string, demand: ReturnType<typeof push>) => {
      const gather = gatherer();
      return run(breakoutShear, breakoutShear.inputs(supportOf({ resists }), gather, 0), demand).demand;
    };
    expect(shear("both ways", push(3, 2))).toBe(0);
    expect(shear("along x", push(3, 0))).toBe(0);
    near(shear("along x", push(3, 2)) / kip, 2, 1e-9);
    expect(run(hairpins, inputsOf({ resists: "along x" }), push(0, 4)).demand).toBe(0);
    near(run(hairpins, inputsOf({ resists: "both ways" }), push(3, -4)).demand / kip, 4 * (1 + 3 / 17));
  });

  it("stand among the modes of shear where tension meets shear", () => {
    const gather = gatherer();
    expect(Object.keys(interaction.inputs(supportOf(), gather, 0).modes)).toContain("anchors.hairpins");
  });

  it.each<[string, Record<string, unknown>, Given, RegExp]>([
    ["the legs", { leg: undefined }, {}, /length of the legs/],
    ["their place", { "below top": undefined }, {}, /depth of the hairpins below the top/],
    ["their distance from the rods", { "around rods": false }, {}, /distance from a rod to the farthest leg/],
    ["what they stand against", { resists: undefined }, {}, /which shear the hairpins stand against/],
    ["a bar to no. 5", { bar: readBar("no. 6") }, {}, /more than no\. 5 are beyond the tests/],
    ["a place inside the concrete", { "below top": 0.2 * inch }, {}, /do not lie inside the concrete/],
    ["rods that are cast in", {}, { anchors: { end: "set in adhesive" } }, /cast-in rods alone/],
  ])("asks for %s", (_, pins, given, words) => {
    expect(said(pins, given)).toMatch(words);
  });

  it("are made by ACI 318-19 alone", () => {
    const support = supportOf();
    const gather = gatherer();
    hairpins.inputs({ ...support, codes: { ...support.codes, concrete: { ...support.codes.concrete!, value: "ACI 318-14" } } } as never, gather, 0);
    expect(gather.blocks.join()).toMatch(/ACI 318-14 is not covered/);
  });

  it("longer legs never carry less, twice the shear needs twice the bars, and the push to one side answers like that to the other", () => {
    fc.assert(
      fc.property(fc.double({ min: 2, max: 60, noNaN: true }), fc.double({ min: 0, max: 20, noNaN: true }), fc.double({ min: 0.1, max: 30, noNaN: true }), fc.constantFrom("straight", "hooked"), (leg, more, V, ends) => {
        const at = (l: number) => inputsOf({ leg: l * inch, "leg ends": ends });
        expect(run(hairpins, at(leg + more), push(V)).capacity).toBeGreaterThanOrEqual(run(hairpins, at(leg), push(V)).capacity * (1 - 1e-9));
        near(run(hairpins, at(leg), push(2 * V)).demand, 2 * run(hairpins, at(leg), push(V)).demand, 1e-9);
        const east = run(hairpins, at(60), push(V));
        for (const other of [push(-V), push(0, V), push(0, -V)]) near(ratioOf(run(hairpins, at(60), other)), ratioOf(east), 1e-9);
      }),
      { numRuns: 60 },
    );
  });
});
