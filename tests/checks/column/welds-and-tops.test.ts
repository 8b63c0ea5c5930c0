import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boltGrades, pretensionOf, slipCoefficients } from "../../../server/src/catalog/bolts.js";
import { findSection, type ColumnSection } from "../../../server/src/catalog/sections.js";
import { baseWeld, baseWeldSize, leastFillet } from "../../../server/src/checks/column/base-weld.js";
import { boltShear, boltTension, standardHole, topBolts, type BoltInputs } from "../../../server/src/checks/column/top-bolts.js";
import { topConnection } from "../../../server/src/checks/column/top-connection.js";
import { topShear } from "../../../server/src/checks/column/top-shear.js";
import { topWeld } from "../../../server/src/checks/column/top-weld.js";
import { legNeeded, weldMetal, weldTwist, weldWall, type WeldInputs } from "../../../server/src/checks/column/weld.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { weldLineOf } from "../../../server/src/mechanics/weld-line.js";
import { kinds } from "../../../server/src/units/kinds.js";
import { allowable, foot, gatherer, inch, kip, kipFoot, kipInch, ksi, ratioOf, run, say, strength, supportOf, valuesOf } from "../given.js";

const kipPerInch = kinds.forcePerLength.US.factor;
const near = (found: number | undefined, expected: number, part = 0.003) => expect(Math.abs((found ?? Number.NaN) / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
const sectionOf = (name: string) => findSection(name) as ColumnSection;

const welded = (name: string, leg: number, more: Record<string, unknown> = {}): WeldInputs =>
  baseWeld.inputs(supportOf({ column: { section: sectionOf(name), grade: name.startsWith("W") ? "A992" : "A500 Gr C", "deep side": "along y", "base weld": { fillet: leg * inch, electrode: "E70" }, ...more }, base: {} }), gatherer(), 0);

describe("fillet welds (AISC 360-22 J2.4)", () => {
  it("E70 carries 1.392 kip/in for each sixteenth of leg (AISC Companion 16th ed., Example J.1)", () => {
    near(weldMetal.value({ F_EXX: 70 * ksi, w: inch / 16 }) / kipPerInch, 1.392);
    near(weldMetal.value({ F_EXX: 70 * ksi, w: (3 * inch) / 16 }) / kipPerInch / 0.75, 5.57);
  });

  it("Example K.10 needs 4.45 sixteenths for 99.2 kip on four sides of 4 in, without corners: 6.2 kip/in", () => {
    near(legNeeded.value({ q: 6.2 * kipPerInch, F_EXX: 70 * ksi }) / (inch / 16), 4.45);
  });

  it("the wall beside it breaks at 0.75 x 0.60 x 62 x 0.174 = 4.85 kip/in", () => {
    near(weldWall.value({ F_u: 62 * ksi, t: 0.174 * inch }) / kipPerInch, 4.854);
    near(weldTwist.value({ T: 100 * kipInch, A_w: 36 * inch ** 2 }) / kipPerInch, 100 / 72);
  });

  it.each([
    [0.2, 0.125],
    [0.25, 0.125],
    [0.3, 0.1875],
    [0.5, 0.1875],
    [0.7, 0.25],
    [0.8, 0.3125],
  ])("on steel of %f in the least leg is %f in (Table J2.4)", (t, w) => {
    expect(leastFillet.value({ t: t * inch }) / inch).toBeCloseTo(w, 9);
  });
});

describe("a weld all around as a line", () => {
  const of = (name: string, deep: "along x" | "along y" = "along y") => {
    const s = sectionOf(name);
    return weldLineOf({ shape: s.shape, depth: s.depth, width: s.width, wall: s.wall, flange: s.flange, deep });
  };

  it("a sharp square of side a has length 4a and modulus 4a²/3; a circle pi D and pi D²/4 (AISC Manual Part 8, from memory)", () => {
    const square = weldLineOf({ shape: "square", depth: 6, width: 6, wall: 0, flange: 0, deep: "along x" });
    expect([square.length, square.aboutX, square.enclosed]).toEqual([24, expect.closeTo(48, 9), 36]);
    const box = weldLineOf({ shape: "rectangle", depth: 8, width: 4, wall: 0, flange: 0, deep: "along y" });
    // b d + d²/3 about the strong axis.
    expect([box.aboutX, box.aboutY]).toEqual([expect.closeTo(32 + 64 / 3, 9), expect.closeTo(32 + 16 / 3, 9)]);
    const circle = of("HSS6.000x0.280");
    near(circle.length / inch, 18.85);
    near(circle.aboutX / inch ** 2, 28.27);
  });

  it("rounded corners take a little from both", () => {
    const rounded = of("HSS6x6x3/8");
    // 24 - (8 - 2 pi) 0.698 = 22.80 in.
    near(rounded.length / inch, 22.8);
    expect(rounded.aboutX / inch ** 2).toBeLessThan(48);
    expect(rounded.aboutX / inch ** 2).toBeGreaterThan(44);
    // By strips: four sides of 4.604 in and four arcs of 1.0964 in whose centroids lie 2.302 + 0.698 x 0.6366 off the middle, their own inertia 0.698³ x 0.1488.
    const arcs = 4 * (1.0964 * (2.302 + 0.4444) ** 2 + 0.698 ** 3 * 0.1488);
    near(rounded.aboutX / inch ** 2, (2 * 4.604 * 9 + (2 * 4.604 ** 3) / 12 + arcs) / 3, 0.001);
  });

  it("a W has both sides of flanges and web: W8x31 is 4 x 8 - 2 x 0.285 + 2 x 7.13 = 45.69 in long", () => {
    const w = of("W8x31");
    near(w.length / inch, 45.69);
    near(w.aboutX / inch ** 2, (2 * 8 * 16 + 2 * 7.715 * 3.565 ** 2 + 7.13 ** 3 / 6) / 4);
    near(w.aboutY / inch ** 2, ((2 * 512 - 0.285 ** 3) / 6 + 2 * 7.13 * 0.1425 ** 2) / 4);
    expect(w.enclosed).toBe(0);
  });

  it("turning the section swaps its moduli", () => {
    expect(of("HSS8x4x1/4", "along x").aboutX).toBe(of("HSS8x4x1/4", "along y").aboutY);
  });
});

describe("the weld at the base", () => {
  it("round: 12 kip up, 5 and 12 kip-ft, 3 and 4 kip: 12/18.85 + 156/28.27 = 6.154, 5/18.85 = 0.265: 6.160 kip/in", () => {
    const outcome = run(baseWeld, welded("HSS6.000x0.280", 0.25), strength({ P: -12 * kip, Mx: 5 * kipFoot, My: 12 * kipFoot, Vx: 3 * kip, Vy: 4 * kip }));
    near(outcome.demand / kipPerInch, 6.16);
    near(outcome.capacity / kipPerInch, 5.568);
    expect(baseWeld.advise?.(welded("HSS6.000x0.280", 0.25), outcome, say)).toMatch(/^Fillet 0\.25 in; 0\.276\d in needed\. Take a larger fillet\.$/);
  });

  it("a fillet thicker than its wall is worth no more than the wall, and the advice says so", () => {
    const inputs = welded("HSS6x6x3/16", 0.5);
    const outcome = run(baseWeld, inputs, strength({ My: 20 * kipFoot }));
    near(outcome.capacity / kipPerInch, 4.854);
    expect(baseWeld.advise?.(inputs, outcome, say)).toMatch(/^Wall 0\.174 in carries 4\.85\d kip\/in/);
  });

  it("twist goes round the tube: 10 kip-ft in HSS6x6x3/8 are 120/(2 x 35.58) = 1.686 kip/in", () => {
    near(run(baseWeld, welded("HSS6x6x3/8", 0.25), strength({ Mz: 10 * kipFoot })).demand / kipPerInch, 1.686);
  });

  it("the twist of a W is a couple of its flanges: 2 kip-ft in W8x31 of 12 ft, a 52.5 in: 24/(7.565 x 15.715) across and 3 M_f/64 along at the tips", () => {
    const inputs = welded("W8x31", 0.25, { height: 12 * foot });
    const M_f = ((24 * 52.53) / 7.565) * Math.tanh(144 / (2 * 52.53));
    near(run(baseWeld, inputs, strength({ Mz: 2 * kipFoot })).demand / kipPerInch, Math.hypot((3 * M_f) / 64, 24 / (7.565 * 15.715)));
  });

  it("by ASD carries 0.60 x 70 x 0.25/sqrt 2/2 = 3.712 kip/in, and needs the same leg for the same share (J2.4, Omega 2.00)", () => {
    const inputs = welded("HSS6.000x0.280", 0.25);
    const outcome = run(baseWeld, inputs, allowable({ P: -100 * kip }));
    near(outcome.capacity / kipPerInch, 3.712);
    near(outcome.demand / kipPerInch, 100 / 18.85);
    // 5.305/3.712 x 0.25 = 0.357 in is more than the wall can use: 0.75 x 0.60 x 62 x 0.26 = 7.254 against 1.5 x 5.305 = 7.958.
    expect(baseWeld.advise?.(inputs, outcome, say)).toMatch(/^Wall 0\.26 in is too thin for any weld here: 5\.30\d kip\/in needed/);
    expect(baseWeld.advise?.(inputs, run(baseWeld, inputs, allowable({ P: -75 * kip })), say)).toMatch(/^Fillet 0\.25 in; 0\.26[78]\d* in needed/);
  });

  it("asks for the weld where there is none, and does not apply without a base", () => {
    const gather = gatherer();
    baseWeld.inputs(supportOf({ column: { section: sectionOf("HSS6x6x3/8"), grade: "A500 Gr C" }, base: {} }), gather, 0);
    expect(gather.missing).toEqual(["fillet weld of the column to its base plate (base weld)"]);
    expect(baseWeld.applies(supportOf({ column: {} }))).toBe(false);
    expect(baseWeldSize.applies(supportOf({ column: {}, base: {} }))).toBe(true);
  });

  it("an eighth on a wall of 0.349 in is too small: 3/16 is the least", () => {
    const inputs = { w: 0.125 * inch, t_w: 0.349 * inch, t_p: inch };
    const outcome = run(baseWeldSize, inputs, strength({}));
    expect(outcome.demand / inch).toBeCloseTo(0.1875, 9);
    expect(baseWeldSize.advise?.(inputs, outcome, say)).toMatch(/^Fillet 0\.125 in; 0\.1875 in is the least/);
    expect(run(baseWeldSize, { ...inputs, t_p: 0.25 * inch }, strength({})).demand / inch).toBeCloseTo(0.125, 9);
  });

  it("a larger fillet is never weaker, a larger force never less", () => {
    const force = fc.double({ min: -1e5, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom("HSS6x6x3/16", "HSS8x4x1/4", "HSS6.000x0.280", "W8x31"), fc.double({ min: 0.1, max: 0.6, noNaN: true }), force, force, force, (name, leg, P, Mx, Vx) => {
        const demand = strength({ P, Mx, Vx });
        const here = run(baseWeld, welded(name, leg), demand);
        expect(run(baseWeld, welded(name, 1.1 * leg), demand).capacity).toBeGreaterThanOrEqual(here.capacity);
        expect(run(baseWeld, welded(name, leg), strength({ P, Mx: 1.1 * Mx, Vx })).demand).toBeGreaterThanOrEqual(here.demand * (1 - 1e-12));
      }),
    );
  });
});

describe("stated strengths at the column top", () => {
  const inputs = { T_n: 10 * kip, V_n: 8 * kip };

  it.each([
    [-5, 2, 0, 0.75],
    [5, 2, 0, 0.25],
    [-5, 3, 4, 1.125],
  ])("axial force %d, shears %d and %d kip: %f of 10 and 8 kip", (P, Vx, Vy, ratio) => {
    near(ratioOf(run(topShear, inputs, strength({}, { P: P * kip, Vx: Vx * kip, Vy: Vy * kip }))), ratio, 1e-9);
  });

  it("a moment needs a stated strength, and counts against it", () => {
    const demand = strength({}, { P: -5 * kip, Mx: 3 * kipFoot, My: 4 * kipFoot });
    expect(topShear.evaluate(inputs, demand, plainCalc)).toMatchObject({ type: "unchecked", because: expect.stringContaining("moment strength") });
    near(ratioOf(run(topShear, { ...inputs, M_n: 20 * kipFoot }, demand)), 0.75, 1e-9);
  });

  it("gives way to bolts or a weld that are described", () => {
    const column = (top: Record<string, unknown>) => supportOf({ column: { "top connection": top } });
    const bolts = { count: 4, diameter: 0.75 * inch };
    expect([topShear, topConnection, topBolts, topWeld].map((of) => of.applies(column({ uplift: 1, shear: 1 })))).toEqual([true, true, false, false]);
    expect([topShear, topConnection, topBolts, topWeld].map((of) => of.applies(column({ bolts })))).toEqual([false, false, true, false]);
    expect([topShear, topConnection, topBolts, topWeld].map((of) => of.applies(column({ bolts, uplift: 1, weld: { fillet: 0.005 } })))).toEqual([false, true, true, true]);
  });
});

describe("bolts at the column top", () => {
  const [a325, a490, a307] = boltGrades;
  const four: BoltInputs = { n: 4, d: 0.75 * inch, F_nt: a325.F_nt, F_nv: a325.F_nvN };
  const pull = (T: number, V = 0) => strength({}, { P: -T * 4 * kip, Vx: V * 4 * kip });

  // phi r_n in tension and single shear, N and X: AISC 360-22 Table J3.2 with nominal areas; the 3/4 in row is that of Example J.5.
  it.each([
    ["A325", 0.75, a325, 29.8, 17.9, 22.5],
    ["A490", 1, a490, 66.6, 40.1, 49.5],
    ["A307", 0.5, a307, 6.63, 3.98, 3.98],
    ["A325", 0.625, a325, 20.7, 12.4, 15.6],
  ] as const)("%s of %f in", (_, d, grade, T, V, VX) => {
    const inputs = { n: 4, d: d * inch, F_nt: grade.F_nt, F_nv: grade.F_nvN };
    near(ratioOf(run(topBolts, inputs, pull(T))), 1, 0.005);
    near(ratioOf(run(topBolts, inputs, pull(0, V))), 1, 0.005);
    near(ratioOf(run(topBolts, { ...inputs, F_nv: grade.F_nvX }, pull(0, VX))), 1, 0.005);
  });

  it("8 kip of shear leave 76.8 ksi, 25.4 kip, in a 3/4 in bolt (AISC Companion 16th ed., Example J.3)", () => {
    const values = valuesOf(topBolts, four, pull(23.4, 8));
    near(values.get("F_ntp")! / ksi, 76.8, 0.003);
    near(values.get("B_c")! / kip, 25.4);
    near(ratioOf(run(topBolts, four, pull(23.4, 8))), 23.4 / 25.4);
  });

  it("a plate of 0.407 in carries 24.8 kip of 29.8 with prying (AISC Companion 16th ed., Example K.10: rho 0.601, delta 0.919, alpha' 0.548)", () => {
    const cap = { t_p: 0.407 * inch, a: 1.5 * inch, b: 1.5 * inch, p: 10 * inch, F_y: 50 * ksi, F_u: 65 * ksi };
    const values = valuesOf(topBolts, { ...four, cap }, pull(24.8));
    near(values.get("b_i")! / inch, 1.13, 0.005);
    near(values.get("rho"), 0.601, 0.003);
    near(values.get("delta"), 0.919, 0.003);
    near(values.get("alpha"), 0.548, 0.01);
    near(values.get("T_c")! / kip, 24.8, 0.005);
    near(ratioOf(run(topBolts, { ...four, cap }, pull(24.8))), 1, 0.005);
  });

  it("a thick plate does not pry, a thin one bends: (t/t_c)² (1 + delta)", () => {
    const cap = { t_p: 2 * inch, a: 1.5 * inch, b: 1.5 * inch, p: 3 * inch, F_y: 36 * ksi, F_u: 58 * ksi };
    near(ratioOf(run(topBolts, { ...four, cap }, pull(29.8))), 1);
    // t_c² = 4 x 29.82 x 1.125/(0.9 x 3 x 36) = 1.3806; delta = 1 - 0.8125/3 = 0.7292; 0.0625/1.3806 x 1.7292 x 29.82 = 2.334 kip.
    near(valuesOf(topBolts, { ...four, cap: { ...cap, t_p: 0.25 * inch } }, pull(1)).get("T_c")! / kip, 2.334);
    expect(topBolts.evaluate({ ...four, cap: { ...cap, b: 0.3 * inch } }, pull(1), plainCalc)).toMatchObject({ type: "unchecked" });
  });

  it("the arm of the pry is the lesser of a + d/2 and 1.25 b + d/2", () => {
    const cap = { t_p: 0.5 * inch, a: 4 * inch, b: 1.5 * inch, p: 3 * inch, F_y: 36 * ksi, F_u: 58 * ksi };
    near(valuesOf(topBolts, { ...four, cap }, pull(1)).get("rho"), 1.125 / 2.25);
  });

  it("holes are a sixteenth larger, an eighth from 1 in on (Table J3.3)", () => {
    expect(standardHole.value({ d: 0.75 * inch }) / inch).toBeCloseTo(0.8125, 9);
    expect(standardHole.value({ d: inch }) / inch).toBeCloseTo(1.125, 9);
  });

  it("a moment pulls on one row, a twist on the corners", () => {
    // 8/4 + 2 x 60/(4 x 6) + 2 x 40/(4 x 8); 4/4 + 2 x 50/(4 x 10).
    near(boltTension.value({ T: 8 * kip, n: 4, M_x: -60 * kipInch, M_y: 40 * kipInch, s_x: 8 * inch, s_y: 6 * inch }) / kip, 2 + 5 + 2.5, 1e-9);
    near(boltShear.value({ V: 4 * kip, n: 4, M_z: -50 * kipInch, s_x: 8 * inch, s_y: 6 * inch }) / kip, 1 + 2.5, 1e-9);
    const demand = strength({}, { Mx: kipFoot });
    expect(topBolts.evaluate(four, demand, plainCalc)).toMatchObject({ type: "unchecked", because: expect.stringContaining("spacing") });
    expect(run(topBolts, { ...four, s_x: 4 * inch, s_y: 4 * inch }, demand).demand).toBeGreaterThan(0);
  });

  it("never gives a tension beside too much shear, and says the shear", () => {
    const outcome = run(topBolts, four, pull(1, 20));
    expect([outcome.quantity, ratioOf(outcome) > 1]).toEqual(["force", true]);
    expect(topBolts.advise?.(four, outcome, say)).toMatch(/^Shear 20 kip a bolt/);
  });

  // A36 of 1/4 in, 3/4 in bolts 1.5 in from the edge: 0.75 x 1.2 x (1.5 - 0.40625) x 0.25 x 58 = 14.27 kip; 3 in away 0.75 x 2.4 x 0.75 x 0.25 x 58 = 19.58.
  it.each([
    ["tear-out at the edge", 1.5, undefined, 14.27],
    ["tear-out between bolts 1.75 in apart: 1.2 x 0.9375", 4, 1.75, 12.23],
    ["bearing", 4, 4, 19.58],
  ])("the cap plate before a strong bolt gives by %s (J3-6)", (_, a, s, R) => {
    const cap = { t_p: 0.25 * inch, a: a * inch, b: 1.5 * inch, p: 3 * inch, F_y: 36 * ksi, F_u: 58 * ksi };
    const inputs: BoltInputs = { ...four, F_nt: a490.F_nt, F_nv: a490.F_nvX, ...(s && { s_x: s * inch, s_y: s * inch }), cap };
    near(ratioOf(run(topBolts, inputs, pull(0, R))), 1);
    // The same steel in the beam's flange.
    const { cap: none, ...bare } = inputs;
    expect(none).toBeDefined();
    near(ratioOf(run(topBolts, { ...bare, flange: { t: 0.25 * inch, a: a * inch, F_u: 58 * ksi } }, pull(0, R))), 1);
    near(ratioOf(run(topBolts, bare, pull(0, 27.8))), 1, 0.005);
  });

  it("3/4 in A325 bolts slip at 0.30 x 1.13 x 28 = 9.49 kip on class A surfaces (AISC Companion 16th ed., Example J.5)", () => {
    const grip = { mu: slipCoefficients["class A"], T_m: pretensionOf(a325, 0.75 * inch)! };
    near(ratioOf(run(topBolts, { ...four, grip }, pull(0, 9.49))), 1);
    // Example J.5: eight bolts with 9 kip of tension each keep 1 - 9/(1.13 x 28) = 0.716 of it, 54.4 kip together.
    const values = valuesOf(topBolts, { ...four, grip }, pull(9, 6.8));
    near(values.get("k_sc"), 0.716);
    near((8 * values.get("R_s")!) / kip, 54.4);
    near(ratioOf(run(topBolts, { ...four, grip }, pull(9, 6.8))), 1);
    near(slipCoefficients["class B"], 0.5);
  });

  it("bolts that may not slip keep their tension beside the shear, and a grip that tension takes away carries none", () => {
    const grip = { mu: 0.3, T_m: 28 * kip };
    near(valuesOf(topBolts, { ...four, grip }, pull(20, 1)).get("F_ntp") ?? four.F_nt, four.F_nt);
    const outcome = run(topBolts, { ...four, grip }, pull(32, 1));
    expect([outcome.capacity, outcome.quantity]).toEqual([0, "force"]);
  });

  it("reads grip and flange, and has no pretension for A307", () => {
    const read = (bolts: Record<string, unknown>, more: Record<string, unknown> = {}) => {
      const gather = gatherer();
      const inputs = topBolts.inputs(supportOf({ column: { "top connection": { bolts: { count: 4, diameter: 0.75 * inch, grade: "A325", threads: "excluded", ...bolts }, ...more } } }), gather, 0);
      return { inputs, gather };
    };
    near(read({ "slip critical": "class B" }).inputs.grip!.T_m / kip, 28);
    expect(read({ "slip critical": "class B", grade: "A307" }).gather.blocks).toEqual([expect.stringContaining("no pretension")]);
    expect(read({ "slip critical": "no" }).inputs).not.toHaveProperty("grip");
    const flange = read({}, { "beam flange": { thickness: 0.4 * inch, edge: 1.5 * inch, grade: "A992" } });
    near(flange.inputs.flange!.F_u / ksi, 65);
    expect(flange.gather.missing).toEqual([]);
    expect(read({}, { "beam flange": { grade: "A36" } }).gather.missing).toEqual(["thickness of the roof beam's flange at the column top", "edge distance of the bolts in the roof beam's flange"]);
  });

  it("by ASD a bolt carries 2/3 of its design strength, in tension 19.9 and in shear 11.9 kip, and slips at 6.33 (B3.2, Omega 2.00 and 1.50)", () => {
    const pulled = (T: number, V: number) => allowable({}, { P: -T * 4 * kip, Vx: V * 4 * kip });
    near(ratioOf(run(topBolts, four, pulled(19.88, 0))), 1);
    near(ratioOf(run(topBolts, four, pulled(0, 11.93))), 1);
    const grip = { mu: 0.3, T_m: 28 * kip };
    near(ratioOf(run(topBolts, { ...four, grip }, pulled(0, 6.328))), 1);
    // 1 - 1.5 x 9/(1.13 x 28) = 0.573.
    near(valuesOf(topBolts, { ...four, grip }, pulled(9, 1)).get("k_sc"), 0.573);
  });

  it("more force never helps, and a thicker cap plate never harms", () => {
    const size = fc.double({ min: 0.1, max: 15, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.double({ min: 0.2, max: 2, noNaN: true }), (T, V, t) => {
        const cap = { t_p: t * inch, a: 1.5 * inch, b: 1.5 * inch, p: 3 * inch, F_y: 36 * ksi, F_u: 58 * ksi };
        const ratio = (of: BoltInputs, by = 1) => ratioOf(run(topBolts, of, pull(by * T, V)));
        expect(ratio({ ...four, cap }, 1.1)).toBeGreaterThanOrEqual(ratio({ ...four, cap }) - 1e-12);
        expect(ratio({ ...four, cap: { ...cap, t_p: 1.1 * t * inch } })).toBeLessThanOrEqual(ratio({ ...four, cap }) + 1e-12);
        expect(ratio(four)).toBeLessThanOrEqual(ratio({ ...four, cap }) + 1e-12);
      }),
    );
  });
});

describe("the weld at the column top", () => {
  it("takes the forces at the top", () => {
    const inputs = topWeld.inputs(supportOf({ column: { section: sectionOf("HSS6x6x3/8"), grade: "A500 Gr C", "top connection": { weld: { fillet: 0.25 * inch, electrode: "E70" } } } }), gatherer(), 0);
    near(run(topWeld, inputs, strength({ P: -50 * kip }, { P: -22.8 * kip })).demand / kipPerInch, 1);
    expect(run(topWeld, inputs, strength({ Mx: 12 * foot * kip })).demand).toBe(0);
  });
});
