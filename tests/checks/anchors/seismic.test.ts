import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Demand } from "../../../server/src/actions/demand.js";
import { breakoutShear } from "../../../server/src/checks/anchors/breakout-shear.js";
import { breakoutTension } from "../../../server/src/checks/anchors/breakout-tension.js";
import { pryout } from "../../../server/src/checks/anchors/pryout.js";
import { pullout } from "../../../server/src/checks/anchors/pullout.js";
import { overstrengthFactor } from "../../../server/src/checks/anchors/seismic.js";
import { sideFaceBlowout } from "../../../server/src/checks/anchors/side-face-blowout.js";
import { steelGoverns } from "../../../server/src/checks/anchors/steel-governs.js";
import { steelShear } from "../../../server/src/checks/anchors/steel-shear.js";
import { steelTension } from "../../../server/src/checks/anchors/steel-tension.js";
import { stretchLength } from "../../../server/src/checks/anchors/stretch-length.js";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import type { Structure, Support } from "../../../server/src/project/model.js";
import { gatherer, inch, kip, run, say, sourced, strength, valuesOf } from "../given.js";
import { supportWith, type Given } from "../base/base.js";

/** Four 7/8 in rods in a 20 in pedestal: 20.4 kip by AISC Design Guide 1, 3rd ed., Example 4.7-15. */
const pedestal: Given = { section: "HSS3x3x1/4", plate: [10, 10, 1], pier: 20, rod: 0.875, spacing: [4, 4], embedment: 24 };
const byHand = (category: string, base: Record<string, unknown>): Support => {
  const support = supportWith({ ...pedestal, site: { "seismic design category": category }, base });
  (support.column!.fields as unknown as Record<string, unknown>).reactions = sourced(new Map());
  return support;
};
const inputsOf = <I extends object>(of: CheckDecl<I, "strength">, support: Support): I => {
  const gather = gatherer();
  const inputs = of.inputs(support, gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};
const saidBy = (of: CheckDecl<any, "strength">, support: Support): string => {
  const gather = gatherer();
  of.inputs(support, gather, 0);
  return [...new Set([...gather.missing, ...gather.blocks])].join("; ");
};

/** 9 kip down and an earthquake that lifts 20 and pushes 4, combined with 0.9D + 1.0E. */
const earthquake: Demand<"strength"> = {
  ...strength({ P: -11 * kip, Vx: 4 * kip }),
  combination: { level: "strength", label: "0.9D + 1.0E", terms: [{ factor: 0.9, type: "D" }, { factor: 1, type: "E" }], clause: "given" },
  earthquake: { P: -20 * kip, Vx: 4 * kip, Vy: 0, Mx: 0, My: 0 },
};
const wind: Demand<"strength"> = { ...strength({ P: -11 * kip, Vx: 4 * kip }), combination: { level: "strength", label: "0.9D + 1.0W", terms: [{ factor: 0.9, type: "D" }, { factor: 1, type: "W" }], clause: "given" } };

const withTwo = byHand("D", { "seismic anchors": "overstrength", "overstrength factor": 2 });

describe("anchors in an earthquake (ACI 318-19 17.10)", () => {
  it("are designed for twice the earthquake where the overstrength is 2: 31 kip up, 7.75 kip a rod, 8 kip sideways", () => {
    expect(run(steelTension, inputsOf(steelTension, withTwo), earthquake).demand / kip).toBeCloseTo(7.75, 6);
    expect(run(pullout, inputsOf(pullout, withTwo), earthquake).demand / kip).toBeCloseTo(7.75, 6);
    expect(run(breakoutTension, inputsOf(breakoutTension, withTwo), earthquake).demand / kip).toBeCloseTo(31, 6);
    expect(run(steelShear, inputsOf(steelShear, withTwo), earthquake).demand / kip).toBeCloseTo(4, 6);
    expect(run(pryout, inputsOf(pryout, withTwo), earthquake).demand / kip).toBeCloseTo(8, 6);
    expect(run(breakoutShear, inputsOf(breakoutShear, withTwo), earthquake).demand / kip).toBeCloseTo(8, 6);
  });

  it("take three quarters of the concrete in tension, 15.3 kip of 20.4, and all of the steel and of the concrete in shear", () => {
    const calm = supportWith(pedestal);
    const parts = [breakoutTension, pullout, sideFaceBlowout, steelTension, steelShear, breakoutShear, pryout].map((of) => {
      const check = of as CheckDecl<any, "strength">;
      return run(check, inputsOf(check, withTwo), earthquake).capacity / run(check, inputsOf(check, calm), earthquake).capacity;
    });
    for (const [i, expected] of [0.75, 0.75, 0.75, 1, 1, 1, 1].entries()) expect(parts[i]).toBeCloseTo(expected, 9);
    expect(run(breakoutTension, inputsOf(breakoutTension, withTwo), earthquake).capacity / kip).toBeCloseTo(0.75 * 20.4, 0);
  });

  it("go by the usual rules in a combination without an earthquake, and in categories A and B", () => {
    const calm = supportWith(pedestal);
    const quiet = byHand("B", {});
    for (const of of [breakoutTension, steelTension, steelShear] as readonly CheckDecl<any, "strength">[]) {
      expect(run(of, inputsOf(of, withTwo), wind)).toEqual(run(of, inputsOf(of, calm), wind));
      expect(run(of, inputsOf(of, quiet), earthquake)).toEqual(run(of, inputsOf(of, calm), earthquake));
    }
  });

  it("are not checked where nothing is said about their design, and the words name the field", () => {
    expect(saidBy(steelTension, byHand("D", {}))).toMatch(/seismic design category D: .*seismic anchors: overstrength.*17\.10/);
    expect(saidBy(steelTension, byHand("C", { "seismic anchors": "overstrength" }))).toMatch(/overstrength factor of the seismic system/);
    expect(saidBy(pullout, byHand("D", { "seismic anchors": "overstrength included", "cracked concrete": false }))).toMatch(/17\.10\.5\.4/);
  });

  it("reactions combined by others are taken as an earthquake's; without the overstrength in them nothing is answered", () => {
    const combined = strength({ P: -11 * kip });
    const included = byHand("D", { "seismic anchors": "overstrength included" });
    const outcome = run(breakoutTension, inputsOf(breakoutTension, included), combined);
    expect(outcome.demand / kip).toBeCloseTo(11, 9);
    expect(outcome.capacity / kip).toBeCloseTo(0.75 * 20.4, 0);
    expect(breakoutTension.evaluate(inputsOf(breakoutTension, withTwo), combined, plainCalc)).toMatchObject({ type: "unchecked", because: expect.stringMatching(/by load case/) });
  });

  it("of the roof's system take the overstrength in place of the redundancy factor, and none twice with cantilevered columns", () => {
    const under = (system: string, more: Record<string, unknown> = {}) => {
      const support = supportWith({ ...pedestal, site: { "seismic design category": "D" }, base: { "seismic anchors": "overstrength" } });
      return { ...support, roof: { fields: { "earthquake system": sourced(system), ...more } } } as unknown as Support;
    };
    const factor = (support: Support) => inputsOf(steelTension, support).seismic.k_o;
    expect(factor(under("special steel moment frames"))).toBeCloseTo(3 / 1.3, 9);
    expect(factor(under("special steel moment frames", { "redundancy factor": sourced(1) }))).toBeCloseTo(3, 9);
    expect(factor(under("special steel cantilevered columns"))).toBe(1);
    expect(overstrengthFactor.value({ Omega_0: 1.25, rho: 1.3 })).toBe(1);
  });

  it("moments of the earthquake grow with it and with the second order of the story", () => {
    const bent: Demand<"strength"> = { ...earthquake, base: { P: 20 * kip, Vx: 0, Vy: 0, Mx: 0, My: 11 }, earthquake: { P: 0, Vx: 0, Vy: 0, Mx: 0, My: 10 }, magnified: { x: 1.1, y: 1 } };
    const twice: Demand<"strength"> = { ...strength({ P: 20 * kip, My: 22 }) };
    const calm = supportWith(pedestal);
    expect(run(steelTension, inputsOf(steelTension, withTwo), bent).demand).toBeCloseTo(run(steelTension, inputsOf(steelTension, calm), twice).demand, 6);
  });

  it("more overstrength never helps", () => {
    const ratio = (factor: number, up: number) => {
      const demand: Demand<"strength"> = { ...earthquake, base: { ...earthquake.base, P: (9 - up) * kip }, earthquake: { ...earthquake.earthquake!, P: -up * kip } };
      return run(breakoutTension, inputsOf(breakoutTension, byHand("D", { "seismic anchors": "overstrength", "overstrength factor": factor })), demand).demand;
    };
    fc.assert(
      fc.property(fc.double({ min: 1, max: 3, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 10, max: 60, noNaN: true }), (factor, more, up) => {
        expect(ratio(factor + more, up)).toBeGreaterThanOrEqual(ratio(factor, up) - 1e-6);
      }),
      { numRuns: 40 },
    );
  });
});

describe("rods that stretch in an earthquake (ACI 318-19 17.10.5.3(a))", () => {
  const stretching = (more: Record<string, unknown> = {}) => byHand("D", { "seismic anchors": "stretch length", "overstrength factor": 2, ...more });

  it("take the forces without overstrength in tension, three quarters of the concrete, and the overstrength in shear", () => {
    const support = stretching();
    expect(run(steelTension, inputsOf(steelTension, support), earthquake).demand / kip).toBeCloseTo(2.75, 6);
    const breakout = run(breakoutTension, inputsOf(breakoutTension, support), earthquake);
    expect(breakout.demand / kip).toBeCloseTo(11, 6);
    expect(breakout.capacity / kip).toBeCloseTo(0.75 * 20.4, 0);
    expect(run(steelShear, inputsOf(steelShear, support), earthquake).demand / kip).toBeCloseTo(4, 6);
    expect(saidBy(steelShear, byHand("D", { "seismic anchors": "stretch length" }))).toMatch(/overstrength factor/);
  });

  it("four 7/8 in rods at 1.2 times their strength pull 4 x 1.2 x 0.462 x 58 = 128.6 kip, and the pedestal breaks at 29.2 kip", () => {
    const inputs = inputsOf(steelGoverns, stretching());
    const outcome = run(steelGoverns, inputs, earthquake);
    expect(outcome.demand / kip).toBeCloseTo(128.6, 0);
    expect(outcome.capacity / kip).toBeCloseTo(29.2, 1);
    expect(steelGoverns.advise!(inputs, outcome, say)).toMatch(/^128\.\d kip when the rods yield in an earthquake; the concrete breaks at 29\.\d+ kip/);
    expect(valuesOf(steelGoverns, inputs, earthquake).get("N_n")! / kip).toBeCloseTo(29.2, 1);
  });

  it("are not tried without an earthquake, by pressure, or in another way of design", () => {
    const inputs = inputsOf(steelGoverns, stretching());
    expect(run(steelGoverns, inputs, wind).demand).toBe(0);
    expect(run(steelGoverns, inputs, { ...earthquake, base: { ...earthquake.base, P: 20 * kip } }).demand).toBe(0);
    expect(steelGoverns.applies(withTwo)).toBe(false);
    expect(steelGoverns.applies(byHand("B", { "seismic anchors": "stretch length" }))).toBe(false);
  });

  it("ask the head of one rod for its own 1.2 x 0.462 x 58 = 32.1 kip, which crushes at 8 x 1.188 x 4 = 38.0 kip", () => {
    const inputs = inputsOf(steelGoverns, stretching());
    const outcome = run(steelGoverns, { ...inputs, modes: { "anchors.pullout": inputs.modes["anchors.pullout"] } }, earthquake);
    expect(outcome.demand / kip).toBeCloseTo(32.1, 1);
    expect(outcome.capacity / kip).toBeCloseTo(38, 1);
  });

  it.each<[string, Record<string, unknown>, Record<string, unknown>, string, RegExp]>([
    ["7 in of 7/8 in rods", { "stretch length": 7 * inch }, {}, "holds", /Stretch length 7 in; 7 in needed/],
    ["6.9 in of them", { "stretch length": 6.9 * inch }, {}, "over", /Stretch length 6[ .7-].*; 7 in needed, eight rod diameters/],
    ["grade 105, 125/105 = 1.19", { "stretch length": 12 * inch, grade: "F1554 Gr 105" }, {}, "over", /breaks at 1\.19 times its yield strength; 1\.3 needed/],
    ["grade 55, 75/55 = 1.36", { "stretch length": 12 * inch, grade: "F1554 Gr 55" }, {}, "holds", /12 in/],
    ["no length", {}, {}, "unchecked", /stretch length are needed/],
    ["another way", {}, { "seismic anchors": "overstrength" }, "holds", /not designed to stretch/],
  ])("the rule holds %s against eight diameters and 1.3", (_, anchors, base, verdict, words) => {
    const support = supportWith({ ...pedestal, site: { "seismic design category": "D" }, base: { "seismic anchors": "stretch length", ...base }, anchors });
    const [found] = stretchLength.judge({ project: {}, supports: [support] } as unknown as Structure);
    expect(found.verdict).toBe(verdict);
    expect(found.message).toMatch(words);
  });
});
