import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { basicBond, bondEdge, bondReach, bondStrength } from "../../../server/src/checks/anchors/adhesive.js";
import { bond, type BondInputs } from "../../../server/src/checks/anchors/bond.js";
import { breakoutShear } from "../../../server/src/checks/anchors/breakout-shear.js";
import { breakoutTension } from "../../../server/src/checks/anchors/breakout-tension.js";
import { interaction } from "../../../server/src/checks/anchors/interaction.js";
import { pryout } from "../../../server/src/checks/anchors/pryout.js";
import { pullout } from "../../../server/src/checks/anchors/pullout.js";
import { reinforcementTension } from "../../../server/src/checks/anchors/reinforcement-tension.js";
import { sideFaceBlowout } from "../../../server/src/checks/anchors/side-face-blowout.js";
import { spacing } from "../../../server/src/checks/anchors/spacing.js";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { projectedArea } from "../../../server/src/mechanics/rectangles.js";
import { findRodGroup } from "../../../server/src/mechanics/rod-group.js";
import type { Structure } from "../../../server/src/project/model.js";
import { gatherer, inch, kip, psi, run, say, strength, valuesOf } from "../given.js";
import { supportWith, type Given } from "../base/base.js";

const pound = kip / 1000;
const near = (found: number | undefined, expected: number, part = 0.001) => {
  expect(found).toBeDefined();
  expect(Math.abs(found! / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
};
const lift = (pounds: number) => strength({ P: -pounds * pound });

/** One 5/8 in rod in the middle of a pier 40 in square, outdoors, category 1. */
const alone: Given = { section: "HSS3x3x1/4", plate: [8, 8, 1], count: 1, spacing: [undefined, undefined], rod: 0.625, embedment: 10, pier: 40 };
const outdoor = { conditions: "outdoor", category: 1, "sustained tension": 0 };
const supportOf = (adhesive: Record<string, unknown> = {}, given: Given = {}) => supportWith({ ...alone, ...given, anchors: { end: "set in adhesive", adhesive: { ...outdoor, ...adhesive }, ...given.anchors } });
const inputsOf = <I extends object = BondInputs>(adhesive: Record<string, unknown> = {}, given: Given = {}, of: CheckDecl<I, "strength"> = bond as never): I => {
  const gather = gatherer();
  const inputs = of.inputs(supportOf(adhesive, given), gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};
const said = (adhesive: Record<string, unknown>, given: Given = {}, of: CheckDecl<any, "strength"> = bond): string => {
  const gather = gatherer();
  of.inputs(supportOf(adhesive, given), gather, 0);
  return [...new Set([...gather.missing, ...gather.blocks])].join("; ");
};

describe("bond of rods set in adhesive (ACI 318-19 17.6.5)", () => {
  it.each([
    [650, 4.804],
    [1000, 5.959],
  ])("reaches from a 5/8 in rod with %d psi in uncracked concrete over %d in", (tau, expected) => {
    near(bondReach.value({ d_a: 0.625 * inch, tau_uncr: tau * psi }) / inch, expected, 0.0005);
  });

  // Closed forms: tau pi d h, and 0.65 of it outdoors in category 1.
  it.each([
    ["outdoor", 6, 2356, 1532],
    ["outdoor", 10, 3927, 2553],
    ["outdoor", 12.5, 4909, 3191],
    ["indoor", 6, 3534, 2297],
    ["indoor", 10, 5890, 3829],
    ["indoor", 12.5, 7363, 4786],
  ])("%s, cracked, %d in deep: %d lb, and %d lb by design", (conditions, embedment, expected, design) => {
    const values = valuesOf(bond, inputsOf({ conditions }, { embedment }), lift(1000));
    near(values.get("N_ba")! / pound, expected, 0.0005);
    near(values.get("N_ag")! / pound, expected, 0.0005);
    near(run(bond, inputsOf({ conditions }, { embedment }), lift(1000)).capacity / pound, design, 0.0005);
  });

  it.each([
    [1, 0.65],
    [2, 0.55],
    [3, 0.45],
  ])("a product of category %d takes the factor %d, in bond and in breakout", (category, phi) => {
    near(run(bond, inputsOf({ category }), lift(1000)).capacity / pound, phi * 3927, 0.0005);
    // 17 sqrt(4000) 10^1.5 = 34.0 kip, edges at 20 in beyond 15 in.
    near(run(breakoutTension, inputsOf({ category }, {}, breakoutTension), lift(1000)).capacity / kip, phi * 34.0, 0.002);
  });

  it("uncracked concrete has 650 psi outdoors and 1000 psi indoors, less what splits it: c_Na over twice the depth, or the edge", () => {
    const at = (conditions: string, pier: number) => valuesOf(bond, inputsOf({ conditions }, { pier, base: { "cracked concrete": false } }), lift(1000));
    near(at("outdoor", 60).get("N_ag")! / pound, 12763, 0.001);
    near(at("indoor", 60).get("N_ag")! / pound, 19635, 0.001);
    // c_ac = 20 in; 10 in to the faces is half of it.
    near(at("outdoor", 20).get("psi_cpNa"), 0.5);
    near(at("outdoor", 30).get("psi_cpNa"), 0.75);
  });

  it("uncracked concrete breaks out with 1.4 of it and the splitting factor: 15 in to the faces over 2 x 10 in", () => {
    const inputs = inputsOf({}, { pier: 30, base: { "cracked concrete": false } }, breakoutTension);
    near(run(breakoutTension, inputs, lift(1000)).capacity / kip, 0.65 * 1.4 * 0.75 * 34.0, 0.002);
  });

  it("3 in from an edge outdoors, 0.812 of the area and a factor of 0.887 are left", () => {
    const c_Na = bondReach.value({ d_a: 0.625 * inch, tau_uncr: 650 * psi });
    const member = { west: -3 * inch, east: 1, south: -1, north: 1 };
    near(projectedArea({ anchors: [{ x: 0, y: 0 }], reach: c_Na, member }).area / (2 * c_Na) ** 2, 0.812, 0.001);
    near(bondEdge.value({ c_a_min: 3 * inch, c_Na }), 0.887, 0.001);
    expect(bondEdge.value({ c_a_min: c_Na, c_Na })).toBe(1);
  });

  it("a group of four 4 in square outdoors shares (4 + 9.608)² of 9.608² each: 2.006 rods' worth", () => {
    const values = valuesOf(bond, inputsOf({}, { count: 4, spacing: [4, 4] }), lift(1000));
    near(values.get("N_ag")! / pound, 2.006 * 3927, 0.001);
  });

  it("the eccentricity of the pull counts with its share of c_Na", () => {
    const inputs = inputsOf({}, { count: 4, spacing: [4, 4] });
    const group = findRodGroup({ rods: inputs.rods, tensions: [1, 1, 1, 1], member: inputs.member.edges });
    const c_Na = 4.804 * inch;
    const askew = { ...group, eccentricityX: 1 * inch, eccentricityY: 0.5 * inch };
    near(bondStrength(inputs, askew, plainCalc) / bondStrength(inputs, group, plainCalc), (1 / (1 + inch / c_Na)) * (1 / (1 + (0.5 * inch) / c_Na)), 0.0005);
  });

  it("a pull that stays takes 0.4 of the table, and is held against 0.55 of the bond of one rod", () => {
    const inputs = inputsOf({ "sustained tension": 400 * pound });
    near(run(bond, inputs, lift(100)).capacity / pound, 0.55 * 0.65 * 0.4 * 3927, 0.001);
    near(run(bond, inputs, lift(100)).demand / pound, 400);
    near(run(bond, inputs, lift(900)).demand / pound, 900);
    near(run(bond, inputs, lift(900)).capacity / pound, 0.65 * 0.4 * 3927, 0.001);
    // The stress of a report is taken as it is given.
    const report = inputsOf({ conditions: undefined, "cracked bond": 700 * psi, "uncracked bond": 1400 * psi, "sustained tension": 400 * pound });
    near(run(bond, report, lift(900)).capacity / pound, 0.65 * 3.5 * 3927, 0.001);
  });

  it("takes the place of pullout, and blowout does not try rods without heads", () => {
    const support = supportOf();
    expect([pullout, sideFaceBlowout].map((of) => of.applies(support))).toEqual([false, false]);
    expect(bond.applies(support)).toBe(true);
    expect(Object.keys(interaction.inputs(support, gatherer(), 0).modes)).toEqual(expect.arrayContaining(["anchors.bond", "anchors.breakout-tension"]));
    expect(bond.applies(supportWith(alone))).toBe(false);
  });

  it("pries out by the lesser of breakout and bond: twice 0.70 of 3,927 lb", () => {
    near(run(pryout, inputsOf({}, {}, pryout), strength({ Vx: kip })).capacity / pound, 0.7 * 2 * 3927, 0.001);
  });

  it("concrete counts to 8,000 psi, drilled or pushed off an edge", () => {
    const ratio = <I extends object>(of: CheckDecl<I, "strength">, demand: ReturnType<typeof strength>) =>
      run(of, inputsOf({}, { fc: 10000 }, of), demand).capacity / run(of, inputsOf({}, { fc: 5000 }, of), demand).capacity;
    near(ratio(breakoutTension, lift(1000)), Math.sqrt(8 / 5));
    near(ratio(breakoutShear, strength({ Vx: kip })), Math.sqrt(8 / 5));
  });

  it.each<[string, Record<string, unknown>, Given, RegExp]>([
    ["a bond stress", { conditions: undefined }, {}, /give cracked bond and uncracked bond by the product's report, or, for the least values/],
    ["the uncracked bond too", { conditions: undefined, "cracked bond": 700 * psi }, {}, /give cracked bond and uncracked bond/],
    ["the pull that stays", { "sustained tension": undefined }, {}, /factored tension of one rod that stays/],
    ["4 diameters", {}, { embedment: 2.4 }, /4 to 20 diameters/],
    ["20 diameters", {}, { embedment: 12.6 }, /4 to 20 diameters/],
    ["concrete of 2,500 psi", {}, { fc: 2400 }, /weaker than 2,500 psi/],
    ["a quiet site", {}, { site: { "seismic design category": "D" } }, /category D: whether a product holds in an earthquake is in its report/],
  ])("asks for %s", (_, adhesive, given, words) => {
    expect(said(adhesive, given)).toMatch(words);
  });

  it("names the adhesive where nothing is said of it, and bars take no pull of rods without heads", () => {
    expect(said({}, { anchors: { end: "set in adhesive", adhesive: undefined } })).toMatch(/adhesive the rods are set in/);
    expect(said({}, { base: { "anchor reinforcement": "pier bars" } }, reinforcementTension)).toMatch(/cast-in rods alone/);
  });

  it("stands six diameters apart and six from a face, torqued or not", () => {
    const judged = (s: number) => spacing.judge({ project: {}, supports: [supportOf({}, { count: 4, spacing: [s, s], anchors: { end: "set in adhesive", adhesive: outdoor, torqued: false } })] } as unknown as Structure)[0];
    expect(judged(3.8).verdict).toBe("holds");
    expect(judged(3.7).message).toMatch(/3\.75 in needed \(6 rod diameters for rods set in adhesive\)/);
  });

  it("says what to change", () => {
    const inputs = inputsOf();
    expect(bond.advise!(inputs, run(bond, inputs, lift(3000)), say)).toMatch(/^3 kip tension in the rods; their adhesive holds 2\.553 kip\. Set them deeper/);
  });

  it("deeper, stronger bond or farther from the edge never holds less, and strength is never below zero", () => {
    const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(size(2.5, 12), size(0, 0.5), size(60, 3000), size(0, 500), size(10, 60), size(0, 20), fc.boolean(), size(0, 6), (h, deeper, tau, more, pier, wider, isCracked, moment) => {
        const at = (embedment: number, bonded: number, width: number) => {
          const given = { count: 4, spacing: [4, 4] as [number, number], plate: [8, 8, 1] as [number, number, number], embedment, pier: width, base: { "cracked concrete": isCracked } };
          return run(bond, inputsOf({ conditions: undefined, "cracked bond": bonded * psi, "uncracked bond": 2000 * psi }, given), strength({ P: -kip, My: moment * kip * inch })).capacity;
        };
        const found = at(h, tau, pier);
        expect(found).toBeGreaterThan(0);
        const least = found * (1 - 1e-9);
        if (isCracked) {
          expect(at(h + deeper, tau, pier)).toBeGreaterThanOrEqual(least);
          expect(at(h, tau + more, pier)).toBeGreaterThanOrEqual(least);
        }
        expect(at(h, tau, pier + wider)).toBeGreaterThanOrEqual(least);
      }),
      { numRuns: 60 },
    );
  });

  it("is the stress round the rod, over its depth", () => near(basicBond.value({ tau: 1, d_a: 2, h_ef: 3 }), 6 * Math.PI, 1e-12));
});
