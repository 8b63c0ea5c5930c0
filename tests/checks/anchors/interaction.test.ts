import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breakoutShear } from "../../../server/src/checks/anchors/breakout-shear.js";
import { breakoutTension } from "../../../server/src/checks/anchors/breakout-tension.js";
import { countsTogether, interaction, mostTogether } from "../../../server/src/checks/anchors/interaction.js";
import { pryout } from "../../../server/src/checks/anchors/pryout.js";
import { pullout } from "../../../server/src/checks/anchors/pullout.js";
import { sideFaceBlowout } from "../../../server/src/checks/anchors/side-face-blowout.js";
import { steelShear } from "../../../server/src/checks/anchors/steel-shear.js";
import { steelTension } from "../../../server/src/checks/anchors/steel-tension.js";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, gatherer, inch, kip, kipFoot, ratioOf, run, say, stepsOf, strength } from "../given.js";
import { supportWith, type Given } from "../base/base.js";

const near = (found: number, expected: number, part = 0.001) => expect(Math.abs(found / expected - 1), `${found} against ${expected}`).toBeLessThan(part);

const inputsOf = <I extends object>(of: CheckDecl<I, "strength">, given: Given): I => {
  const gather = gatherer();
  const inputs = of.inputs(supportWith(given), gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};

/** One 3/4 in rod in the middle of a wall 12 in thick: 11.78 kip in tension by its cone, 5.856 kip in shear by its wedge, both closed forms. */
const wall: Given = {
  section: "HSS3x3x1/4",
  plate: [6, 6, 1],
  count: 1,
  spacing: [undefined, undefined],
  rod: 0.75,
  base: { grout: 0 },
  foundation: { kind: "wall on footing", thickness: 12 * inch, height: 4 * foot, length: 20 * foot },
};
const acting = (pull: number, push: number) => strength({ P: -pull * kip, Vy: push * kip });

describe("tension and shear together (ACI 318-19 17.8)", () => {
  it.each([
    [0.2, 0.9, 0],
    [0.9, 0.2, 0],
    [0.21, 0.9, 1.11],
    [0.5, 0.7, 1.2],
    [0.9, 0.9, 1.8],
    [0, 0, 0],
  ])("%d of tension and %d of shear: %d counts", (r_N, r_V, expected) => expect(countsTogether.value({ r_N, r_V })).toBeCloseTo(expected, 12));

  it("at most 1.2", () => expect(mostTogether.value({})).toBe(1.2));

  it.each([
    [5, 4, 5 / 11.78 + 4 / 5.856],
    [6.5, 4, 6.5 / 11.78 + 4 / 5.856],
  ])("%d kip up and %d kip toward the face add up to %d", (pull, push, expected) => {
    const outcome = run(interaction, inputsOf(interaction, wall), acting(pull, push));
    near(outcome.demand, expected);
    expect(outcome.capacity).toBe(1.2);
    expect(outcome.quantity).toBe("ratio");
  });

  it("counts nothing where one of them is small, and nothing where the plate is pressed down", () => {
    const inputs = inputsOf(interaction, wall);
    expect(run(interaction, inputs, acting(2.3, 5)).demand).toBe(0);
    expect(run(interaction, inputs, acting(10, 1.1)).demand).toBe(0);
    expect(run(interaction, inputs, acting(-10, 5)).demand).toBe(0);
  });

  it("shows the steps of the two modes that govern, and no others", () => {
    const { steps } = stepsOf(interaction, inputsOf(interaction, wall), acting(5, 4));
    const shown = steps.flatMap((step) => (step.type === "formula" ? [step.formula.id] : []));
    expect(shown).toEqual(expect.arrayContaining(["anchors.group-breakout", "anchors.group-shear", "anchors.counts-together"]));
    expect(shown).not.toContain("anchors.rod-tension");
    expect(shown).not.toContain("anchors.pryout-strength");
  });

  it("leaves side-face blowout out for hooks", () => {
    const hooked = inputsOf(interaction, { ...wall, anchors: { end: "hooked", head: undefined, "hook length": 3 * inch } });
    expect(Object.keys(hooked.modes)).not.toContain("anchors.side-face-blowout");
    expect(Object.keys(inputsOf(interaction, wall).modes)).toContain("anchors.side-face-blowout");
  });

  it("says how much is used", () => {
    const inputs = inputsOf(interaction, wall);
    expect(interaction.advise!(inputs, run(interaction, inputs, acting(6.5, 4)), say)).toMatch(/^the parts used by tension and by shear add up to 1\.235; 1\.2 is the most/);
  });

  it("is the sum of the worst of the other checks under the same combination", () => {
    const kips = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
    const worst = (of: readonly CheckDecl<any, "strength">[], given: Given, demand: ReturnType<typeof strength>) => Math.max(...of.map((each) => ratioOf(run(each, inputsOf(each, given), demand))));
    fc.assert(
      fc.property(kips(40), kips(8), kips(8), kips(12), kips(12), fc.boolean(), (P, Vx, Vy, Mx, My, welded) => {
        const given: Given = { pier: 20, spacing: [10, 10], rod: 0.75, embedment: 18, base: { "washers welded": welded } };
        const demand = strength({ P: P * kip, Vx: Vx * kip, Vy: Vy * kip, Mx: Mx * kipFoot, My: My * kipFoot });
        const r_N = worst([steelTension, breakoutTension, pullout, sideFaceBlowout], given, demand);
        const r_V = worst([steelShear, breakoutShear, pryout], given, demand);
        expect(run(interaction, inputsOf(interaction, given), demand).demand).toBeCloseTo(r_N > 0.2 && r_V > 0.2 ? r_N + r_V : 0, 9);
      }),
      { numRuns: 300 },
    );
  });

  it("does not answer where a mode has no answer", () => {
    const nothing = { ...inputsOf(interaction, wall), modes: {} };
    expect(interaction.evaluate(nothing, acting(5, 4), plainCalc)).toMatchObject({ type: "unchecked" });
  });
});
