import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anchorChecks } from "../../../server/src/checks/anchors/index.js";
import { breakoutTension, type BreakoutInputs } from "../../../server/src/checks/anchors/breakout-tension.js";
import { eccentricityFactor, edgeFactor, nearEdgeDepth } from "../../../server/src/checks/anchors/cone.js";
import { concreteStrengthUsed } from "../../../server/src/checks/anchors/concrete.js";
import { pullout } from "../../../server/src/checks/anchors/pullout.js";
import { tensileStrengthUsed } from "../../../server/src/checks/anchors/rod.js";
import { steelShear } from "../../../server/src/checks/anchors/steel-shear.js";
import { steelTension } from "../../../server/src/checks/anchors/steel-tension.js";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, gatherer, inch, kip, kipFoot, kipInch, ksi, psi, ratioOf, run, say, strength, valuesOf } from "../given.js";
import { supportWith, type Given } from "../base/base.js";

const near = (found: number | undefined, expected: number, part = 0.003) => {
  expect(found).toBeDefined();
  expect(Math.abs(found! / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
};

const inputsOf = <I extends object>(of: CheckDecl<I, "strength">, given: Given, place = 0): I => {
  const gather = gatherer();
  const inputs = of.inputs(supportWith(given), gather, place);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};

const said = (of: CheckDecl<any, "strength">, given: Given): string => {
  const gather = gatherer();
  of.inputs(supportWith(given), gather, 0);
  return [...new Set([...gather.missing, ...gather.blocks])].join("; ");
};

/** The checks of rods whose breakout the concrete takes. */
const usual = anchorChecks.filter((of) => of.applies(supportWith()));

const lift = (kips: number) => strength({ P: -kips * kip });
const single: Given = { section: "HSS3x3x1/4", plate: [8, 8, 1], count: 1, spacing: [undefined, undefined] };

/** Rod, then phi N_sa and phi V_sa on a grout pad of grades 36, 55, 105, kip: ACI 318-19 with ASTM F1554 and ASME B1.1. */
const rodTable: readonly (readonly [number, readonly number[], readonly number[]])[] = [
  [1 / 2, [6.2, 8.0, 13.3], [2.57, 3.32, 5.53]],
  [5 / 8, [9.8, 12.7, 21.2], [4.09, 5.29, 8.81]],
  [3 / 4, [14.5, 18.8, 31.4], [6.05, 7.83, 13.0]],
  [7 / 8, [20.1, 26.0, 43.3], [8.36, 10.8, 18.0]],
  [1, [26.3, 34.1, 56.8], [11.0, 14.2, 23.6]],
  [1.125, [33.2, 42.9, 71.6], [13.8, 17.9, 29.8]],
  [1.25, [42.2, 54.5, 90.9], [17.5, 22.7, 37.8]],
  [1.375, [50.2, 65.0, 108], [20.9, 27.0, 45.0]],
  [1.5, [61.1, 79.0, 132], [25.4, 32.9, 54.8]],
  [1.75, [82.6, 107, 178], [34.4, 44.5, 74.1]],
  [2, [109, 141, 234], [45.2, 58.5, 97.4]],
];
const grades = ["F1554 Gr 36", "F1554 Gr 55", "F1554 Gr 105"];
const rodRows = rodTable.flatMap(([rod, tension, shear]) => grades.map((grade, i) => [grade, rod, tension[i], shear[i]] as const));

describe("steel of the anchor rods (ACI 318-19 17.6.1, 17.7.1)", () => {
  it.each(rodRows)("%s, %d in: %d kip in tension and %d kip in shear on a grout pad", (grade, rod, tension, shear) => {
    near(run(steelTension, inputsOf(steelTension, { grade, rod }), lift(40)).capacity / kip, tension, 0.006);
    near(run(steelShear, inputsOf(steelShear, { grade, rod }), strength({ Vx: kip })).capacity / kip, shear, 0.005);
  });

  it("needs 0.322 in² for 14 kip at 58 ksi, as in PCA Notes on ACI 318-11, Example 34.1 (from memory): 3/4 in with 0.334 in²", () => {
    const outcome = run(steelTension, inputsOf(steelTension, { ...single, rod: 0.75 }), lift(14));
    near(ratioOf(outcome) * 0.3345, 0.3218, 0.003);
  });

  it("takes no more than 1.9 times the yield strength and 125 ksi", () => {
    near(tensileStrengthUsed.value({ f_uta: 100 * ksi, f_ya: 50 * ksi }) / ksi, 95, 1e-9);
    near(tensileStrengthUsed.value({ f_uta: 150 * ksi, f_ya: 105 * ksi }) / ksi, 125, 1e-9);
  });

  it("takes the lower phi of Table 17.5.3 where the rod is not ductile", () => {
    const ductile = inputsOf(steelTension, { grade: "F1554 Gr 55" });
    expect(ductile.phi).toBe(0.75);
    expect(steelTension.inputs(supportWith({ grade: "F1554 Gr 55", rod: 2.25 }), gatherer(), 0).phi).toBe(0.65);
    expect(steelShear.inputs(supportWith({ grade: "F1554 Gr 55", rod: 2.25 }), gatherer(), 0).phi).toBe(0.6);
  });

  it("shares tension evenly in plain uplift, and by the rod that pulls most under a moment", () => {
    near(run(steelTension, inputsOf(steelTension, {}), lift(40)).demand / kip, 10, 1e-6);
    // No bearing: 10 kip each, and 50 kip-in over two rods at each end, 10 in apart.
    near(run(steelTension, inputsOf(steelTension, {}), strength({ P: -40 * kip, My: 50 * kipInch })).demand / kip, 12.5, 1e-6);
  });

  it("counts two rods in shear with loose washers, all with welded ones, and adds the two directions", () => {
    const demand = strength({ Vx: 3 * kip, Vy: 4 * kip });
    near(run(steelShear, inputsOf(steelShear, {}), demand).demand / kip, 2.5, 1e-9);
    near(run(steelShear, inputsOf(steelShear, { base: { "washers welded": true } }), demand).demand / kip, 1.25, 1e-9);
    near(run(steelShear, inputsOf(steelShear, { ...single }), demand).demand / kip, 5, 1e-9);
  });

  it("drops the grout factor only where the notebook says there is no grout", () => {
    const capacity = (grout: number | undefined) => run(steelShear, inputsOf(steelShear, { base: { grout } }), strength({ Vx: kip })).capacity;
    near(capacity(undefined) / capacity(0), 0.8, 1e-9);
    near(capacity(inch) / capacity(0), 0.8, 1e-9);
  });

  it("counts no grout pad where a plate stands free on its leveling nuts: 0.65 x 0.6 x 0.606 x 58 kip of a 1 in rod, whose bending is another check", () => {
    const inputs = inputsOf(steelShear, { rod: 1, base: { "leveling nuts": true, grout: 0 } });
    near(run(steelShear, inputs, strength({ Vx: kip })).capacity / kip, 0.65 * 0.6 * 0.606 * 58);
    expect(run(steelShear, inputs, lift(10)).demand).toBe(0);
  });
});

describe("concrete breakout in tension (ACI 318-19 17.6.2)", () => {
  /** Four 7/8 in rods 4 in square in a 20 in pedestal, 4 ksi, 70 kip up: AISC Design Guide 1, 3rd ed., Example 4.7-15. */
  const pedestal: Given = { section: "HSS3x3x1/4", plate: [10, 10, 1], pier: 20, rod: 0.875, spacing: [4, 4], embedment: 14 };

  it("follows AISC Design Guide 1, 3rd ed., Example 4.7-15: depth 5.33 in, A_Nc 400 in², A_Nco 256 in², N_b 18.7 kip, N_cbg 29.2 kip, phi 20.4 kip", () => {
    const inputs = inputsOf(breakoutTension, pedestal);
    const values = valuesOf(breakoutTension, inputs, lift(70));
    near(values.get("h")! / inch, 5.333);
    near(values.get("A_Nc")! / inch ** 2, 400);
    near(values.get("A_Nco")! / inch ** 2, 256);
    near(values.get("psi_ec"), 1);
    near(values.get("psi_ed"), 1);
    near(values.get("N_b")! / kip, 18.7);
    near(values.get("N_cbg")! / kip, 29.2);
    const outcome = run(breakoutTension, inputs, lift(70));
    near(outcome.capacity / kip, 20.4, 0.005);
    near(outcome.demand / kip, 70);
    expect(breakoutTension.advise!(inputs, outcome, say)).toMatch(/^70 kip tension in the rods; the concrete holds 20\.\d+ kip/);
  });

  it("is 25.6 kip for the same rods in uncracked concrete, as in AISC Design Guide 1, 2nd ed., Example 4.5 (from memory)", () => {
    near(run(breakoutTension, inputsOf(breakoutTension, { ...pedestal, base: { "cracked concrete": false } }), lift(70)).capacity / kip, 25.6, 0.005);
  });

  it.each([12, 20])("16 in square pier, rods 8 in square, 4 ksi, %i in deep: 26.4 kip nominal, 18.5 kip design, the same at any depth (17.6.2.1.2 in closed form)", (embedment) => {
    const inputs = inputsOf(breakoutTension, { section: "HSS3x3x1/4", plate: [12, 12, 1], pier: 16, spacing: [8, 8], embedment });
    near(valuesOf(breakoutTension, inputs, lift(10)).get("N_cbg")! / kip, 26.4);
    near(run(breakoutTension, inputs, lift(10)).capacity / kip, 18.5);
  });

  it.each([
    [16, 3, 12.6],
    [16, 8, 16.0],
    [24, 4, 22.8],
    [24, 12, 29.4],
  ])("a %i in square pier with rods %i in square holds %d kip in cracked 3 ksi concrete, however deep (closed form)", (pier, spacing, expected) => {
    for (const embedment of [16, 30]) near(run(breakoutTension, inputsOf(breakoutTension, { section: "HSS3x3x1/4", plate: [14, 14, 1], pier, spacing: [spacing, spacing], fc: 3000, embedment }), lift(10)).capacity / kip, expected, 0.004);
  });

  it("holds 14 kip with one rod 5.58 in deep far from edges in 4 ksi, as in PCA Notes on ACI 318-11, Example 34.1 (from memory)", () => {
    near(run(breakoutTension, inputsOf(breakoutTension, { ...single, rod: 0.75, embedment: 5.58 }), lift(14)).capacity / kip, 14);
  });

  it.each([
    ["along one axis: psi_ec 1/(1 + 1.25/9) = 0.8780", { My: 50 * kipInch }, 33.18],
    ["along both axes: psi_ec (1/(1 + 0.625/9))² = 0.8744", { Mx: 25 * kipInch, My: 25 * kipInch }, 33.04],
  ])("reduces for eccentric tension %s; 28 in square area over 18, N_b 22.31 kip (closed form of 17.6.2.3)", (_, moment, expected) => {
    const outcome = run(breakoutTension, inputsOf(breakoutTension, { embedment: 6 }), strength({ P: -40 * kip, ...moment }));
    near(outcome.capacity / kip, expected);
    near(outcome.demand / kip, 40, 1e-6);
  });

  it("one rod in a wall 10 in thick, 6 in deep: two near edges leave the depth; 180/324 x 0.8667 x 22.31 x 0.70 = 7.52 kip (closed form)", () => {
    const wall: Given = { ...single, embedment: 6, foundation: { kind: "wall on footing", thickness: 10 * inch, height: 4 * foot, length: 20 * foot } };
    near(run(breakoutTension, inputsOf(breakoutTension, wall), lift(5)).capacity / kip, 7.52);
  });

  it("measures a round pier by the square inside it: 30 in, rods 10 in square: A_Nc 450 in², depth 3.738 in, 27.5 kip (closed form)", () => {
    const inputs = inputsOf(breakoutTension, { diameter: 30, embedment: 20 });
    const values = valuesOf(breakoutTension, inputs, lift(10));
    near(values.get("h")! / inch, 3.738);
    near(values.get("A_Nc")! / inch ** 2, 450);
    near(run(breakoutTension, inputs, lift(10)).capacity / kip, 27.5, 0.004);
  });

  it.each([
    ["edges govern", 12, 8, 4, 5.3333],
    ["spacing governs", 12, 3.5, 9, 3],
    ["the embedment is less than both", 2, 8, 4, 2],
  ])("depth with three near edges, %s (17.6.2.1.2)", (_, h_ef, c_a_max, s, expected) => near(nearEdgeDepth.value({ h_ef, c_a_max, s }), expected, 1e-4));

  it.each([
    [1.25, 0, 0.87805],
    [0, 1.25, 0.87805],
    [1.25, 1.25, 0.77097],
  ])("psi_ec for e'_N %d in and %d in at 6 in depth is %d (Eq. 17.6.2.3.1)", (e_Nx, e_Ny, expected) => near(eccentricityFactor.value({ e_Nx, e_Ny, h: 6 }), expected, 1e-4));

  it.each([
    [1.51, 1],
    [1.5, 1],
    [1.49, 0.998],
    [0.75, 0.85],
  ])("psi_ed at an edge distance of %d h_ef is %d (Eq. 17.6.2.4.1)", (c_a_min, expected) => near(edgeFactor.value({ c_a_min, h: 1 }), expected, 1e-6));

  it("counts the rods in tension alone: under a moment the two on the far side", () => {
    const values = valuesOf(breakoutTension, inputsOf(breakoutTension, { embedment: 6 }), strength({ P: 10 * kip, My: 30 * kipFoot }));
    // Two rods 10 in apart far from edges: 18 x 28 in.
    near(values.get("A_Nc")! / inch ** 2, 504);
    expect(values.get("psi_ec")).toBeCloseTo(1, 9);
  });

  it("takes at most 10,000 psi", () => near(concreteStrengthUsed.value({ fprime_c: 12000 * psi }) / psi, 10000, 1e-9));
});

describe("pullout (ACI 318-19 17.6.3)", () => {
  const hook = (length: number): Given => ({ rod: 0.75, fc: 3000, anchors: { end: "hooked", head: undefined, "hook length": length * inch } });

  it.each([
    [2.25, 4556, 3189],
    [3.375, 6834, 4784],
    [6, 6834, 4784],
  ])("3/4 in hook of %d in in 3 ksi: %d lb nominal, %d lb design; past 4.5 diameters it earns nothing (closed form)", (length, nominal, design) => {
    const inputs = inputsOf(pullout, hook(length));
    near(valuesOf(pullout, inputs, lift(4)).get("N_p")! / (kip / 1000), nominal, 0.001);
    near(run(pullout, inputs, lift(4)).capacity / (kip / 1000), design, 0.001);
  });

  it.each([
    [0.75, 4000, 29.2, 9.1],
    [0.625, 3000, 16.1, 4.75],
    [0.5, 3000, 11.2, 3.04],
  ])("%d in rod at %i psi: heavy hex head %d kip, longest hook %d kip, nominal (closed form, nut width 1.5d + 1/8 in)", (rod, fc, head, hooked) => {
    near(valuesOf(pullout, inputsOf(pullout, { rod, fc }), lift(4)).get("N_p")! / kip, head, 0.005);
    near(valuesOf(pullout, inputsOf(pullout, { rod, fc, anchors: { end: "hooked", "hook length": 4.5 * rod * inch } }), lift(4)).get("N_p")! / kip, hooked, 0.005);
  });

  it("needs 0.625 in² of head for 14 kip in 4 ksi, as in PCA Notes on ACI 318-11, Example 34.1 (from memory); a 3/4 in hex nut has 0.654", () => {
    const outcome = run(pullout, inputsOf(pullout, { ...single, rod: 0.75, anchors: { head: "hex nut" } }), lift(14));
    near(ratioOf(outcome) * 0.654, 0.625);
  });

  it("is 1.4 times as much in uncracked concrete", () => {
    const cracked = run(pullout, inputsOf(pullout, {}), lift(4)).capacity;
    near(run(pullout, inputsOf(pullout, { base: { "cracked concrete": false } }), lift(4)).capacity / cracked, 1.4, 1e-9);
  });

  it("does not answer for a hook shorter than three diameters, and asks for a hook length", () => {
    expect(said(pullout, hook(2))).toMatch(/shorter than 3 rod diameters/);
    expect(said(pullout, { anchors: { end: "hooked" } })).toBe("hook length");
  });

  it("says what a hook holds and what to change", () => {
    const inputs = inputsOf(pullout, hook(3.375));
    expect(pullout.advise!(inputs, run(pullout, inputs, lift(28)), say)).toBe("7 kip in one rod; its hook holds 4.784 kip. Change the hooks to headed rods.");
  });
});

describe("what stands in the way of an answer", () => {
  it.each(["C", "D", "E", "F"])("seismic design category %s: no anchor check answers (ACI 318-19 17.10)", (category) => {
    for (const of of usual) expect(said(of, { site: { "seismic design category": category } })).toMatch(/17\.10/);
  });

  it("a seismic design category that is not stated stands in the way", () => {
    for (const of of usual) expect(said(of, { site: { "seismic design category": undefined } })).toBe("seismic design category of the site");
  });

  it.each(["A", "B"])("seismic design category %s does not stand in the way", (category) => {
    for (const of of usual) expect(said(of, { site: { "seismic design category": category } })).toBe("");
  });

  it.each<[string, Given, RegExp]>([
    ["rods outside the square in a round pier", { diameter: 15, plate: [14, 4, 1], spacing: [12, 2], section: "HSS3x3x1/4" }, /square inside the round pier/],
    ["rods through a pad", { embedment: 14, foundation: { kind: "footing on rock", width: 3, length: 3, thickness: 14 * inch } }, /reach through the concrete/],
    ["no embedment", { anchors: { embedment: undefined } }, /^anchor embedment$/],
  ])("%s", (_, given, words) => expect(said(breakoutTension, given)).toMatch(words));
});

describe("laws of the anchors", () => {
  const inches = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const withEdges = (inputs: BreakoutInputs, [west, east, south, north]: readonly number[]): BreakoutInputs => ({
    ...inputs,
    member: { ...inputs.member, edges: { west: -(5 + west) * inch, east: (5 + east) * inch, south: -(5 + south) * inch, north: (5 + north) * inch } },
  });
  const capacity = (inputs: BreakoutInputs) => run(breakoutTension, inputs, lift(10)).capacity;

  it("breakout never grows when an edge comes nearer, while fewer than three edges are near", () => {
    fc.assert(
      fc.property(inches(4, 20), fc.tuple(inches(2, 40), inches(2, 40), inches(2, 40), inches(2, 40)), fc.integer({ min: 0, max: 3 }), inches(0.3, 1), (embedment, edges, which, part) => {
        const nearer = edges.map((c, i) => (i === which ? part * c : c));
        fc.pre(nearer.filter((c) => c < 1.5 * embedment).length < 3);
        const inputs = inputsOf(breakoutTension, { embedment });
        expect(capacity(withEdges(inputs, nearer))).toBeLessThanOrEqual(capacity(withEdges(inputs, edges)) * (1 + 1e-9));
      }),
      { numRuns: 500 },
    );
  });

  it("breakout never grows when the third edge comes near", () => {
    fc.assert(
      fc.property(inches(8, 20), inches(2, 10), inches(2, 10), inches(0.99, 1), (embedment, south, north, part) => {
        const inputs = inputsOf(breakoutTension, { embedment });
        const before = capacity(withEdges(inputs, [100, 1.5 * embedment, south, north]));
        expect(capacity(withEdges(inputs, [100, part * 1.5 * embedment, south, north]))).toBeLessThanOrEqual(before * 1.005);
      }),
    );
  });

  // With three or more near edges the standard cuts the depth to the largest of their distances over 1.5. A nearer far edge then cuts the
  // depth, and the strength printed by the formulas can rise: this is in ACI 318-19 17.6.2.1.2 itself. For a rod 4 in from three edges and
  // c from the fourth it goes with (4 + c)/sqrt(c) (0.7 + 1.2/c), that is 3.607 at c = 8 in and 4.000 at c = 4 in.
  it("the standard's own cut of the depth can print more strength for a nearer fourth edge: 4.000/3.607 from 8 to 4 in", () => {
    const inputs = { ...inputsOf(breakoutTension, { ...single, embedment: 12 }) };
    const at = (c: number) => capacity(withEdges(inputs, [-1, c - 5, -1, -1]));
    near(at(4) / at(8), 4 / 3.607, 0.001);
  });

  it("deeper than the near edges allow changes nothing", () => {
    fc.assert(
      fc.property(inches(14, 30), inches(4, 9), inches(0, 30), (pier, spacing, deeper) => {
        const given: Given = { section: "HSS3x3x1/4", plate: [13, 13, 1], pier, spacing: [spacing, spacing] };
        const enough = (pier - spacing) / 2 / 1.5 + spacing + 1;
        const here = capacity(inputsOf(breakoutTension, { ...given, embedment: enough }));
        expect(capacity(inputsOf(breakoutTension, { ...given, embedment: enough + deeper })) / here).toBeCloseTo(1, 9);
      }),
    );
  });

  it("a thicker rod is always stronger in steel", () => {
    for (const of of [steelTension, steelShear] as readonly CheckDecl<any, "strength">[]) {
      for (const grade of grades) {
        const strengths = rodTable.map(([rod]) => run(of, inputsOf(of, { rod, grade }), lift(10)).capacity);
        expect(strengths).toEqual([...strengths].sort((a, b) => a - b));
        expect(new Set(strengths).size).toBe(strengths.length);
      }
    }
  });

  it("turning pattern, concrete and load by a right angle changes no ratio", () => {
    fc.assert(
      fc.property(inches(5, 12), inches(5, 12), inches(-60, 60), inches(-60, 60), inches(-60, 60), (x, y, P, Mx, My) => {
        const wall = (places: readonly { x: number; y: number }[]) => ({ foundation: { kind: "wall on footing", thickness: 18 * inch, height: 6 * foot, length: 30 * foot }, places });
        const here = supportWith({ plate: [14, 14, 1], spacing: [x, y], ...wall([{ x: 0, y: 0 }, { x: 8, y: 0 }]) });
        const turned = supportWith({ plate: [14, 14, 1], spacing: [y, x], ...wall([{ x: 0, y: 0 }, { x: 0, y: 8 }]) });
        for (const of of usual as readonly CheckDecl<any, "strength">[]) {
          const before = run(of, of.inputs(here, gatherer(), 0), strength({ P: P * kip, Mx: Mx * kipFoot, My: My * kipFoot, Vx: kip }));
          const after = run(of, of.inputs(turned, gatherer(), 0), strength({ P: P * kip, Mx: -My * kipFoot, My: Mx * kipFoot, Vy: kip }));
          expect(ratioOf(after)).toBeCloseTo(ratioOf(before), 6);
        }
      }),
    );
  });

  it("never gives a number that is none over 2,000 random connections", () => {
    fc.assert(
      fc.property(
        fc.record({
          plate: fc.tuple(inches(6, 24), inches(6, 24), inches(0.5, 2)),
          count: fc.integer({ min: 1, max: 9 }),
          rod: fc.constantFrom(0.5, 0.75, 1, 1.5, 2),
          grade: fc.constantFrom(...grades),
          spacing: fc.tuple(inches(1, 24), inches(1, 24)),
          embedment: inches(2, 60),
          pier: inches(8, 80),
          fc: inches(2500, 12000),
        }),
        fc.option(inches(10, 80)),
        fc.tuple(inches(-1e6, 1e6), inches(-1e5, 1e5), inches(-1e5, 1e5), inches(-1e5, 1e5)),
        (given, diameter, [P, Mx, My, Vx]) => {
          const support = supportWith({ ...given, ...(diameter === null ? {} : { diameter }) });
          for (const of of usual as readonly CheckDecl<any, "strength">[]) {
            const gather = gatherer();
            const inputs = of.inputs(support, gather, 0);
            if (gather.missing.length > 0 || gather.blocks.length > 0) continue;
            const outcome = of.evaluate(inputs, strength({ P, Mx, My, Vx }), plainCalc);
            if (outcome.type === "unchecked") continue;
            expect(outcome.demand).toBeGreaterThanOrEqual(0);
            expect(outcome.capacity).toBeGreaterThan(0);
            expect(Number.isFinite(outcome.demand + outcome.capacity)).toBe(true);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });
});
