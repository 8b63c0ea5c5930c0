import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pryout, pryoutFactor, type PryoutInputs } from "../../../server/src/checks/anchors/pryout.js";
import { blowoutCorner, blowoutGroup, sideFaceBlowout, sideFaceBlowoutSingle, type BlowoutInputs } from "../../../server/src/checks/anchors/side-face-blowout.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { gatherer, inch, kip, kipInch, psi, ratioOf, run, say, strength, valuesOf } from "../given.js";
import { supportWith, type Given } from "../base/base.js";

const near = (found: number | undefined, expected: number, part = 0.001) => {
  expect(found).toBeDefined();
  expect(Math.abs(found! / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
};
const lb = kip / 1000;
const far = 100;

const inputsOf = <I extends object>(of: CheckDecl<I, "strength">, given: Given): I => {
  const gather = gatherer();
  const inputs = of.inputs(supportWith(given), gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};
const within = <I extends PryoutInputs | BlowoutInputs>(inputs: I, [west, east, south, north]: readonly number[]): I => ({
  ...inputs,
  member: { ...inputs.member, edges: { west: -west * inch, east: east * inch, south: -south * inch, north: north * inch } },
});
const single: Given = { section: "HSS3x3x1/4", plate: [6, 6, 1], count: 1, spacing: [undefined, undefined], rod: 0.75, embedment: 12 };
const pair: Given = { ...single, plate: [10, 5, 1], count: 2, spacing: [6, undefined] };
const lift = (kips: number, more = {}) => strength({ P: -kips * kip, ...more });

describe("side-face blowout (ACI 318-19 17.6.4), 3/4 in rods with heavy hex nuts of 0.911 in², 4 ksi", () => {
  const args = { c_a1: 3 * inch, A_brg: 0.911 * inch ** 2, f_c: 4000 * psi };
  const N_sb = 28975;

  it("3 in from the side one rod holds 28,975 lb, with an end 6 in away 21,732 lb, a pair 6 in apart 38,634 lb (closed form)", () => {
    near(sideFaceBlowoutSingle.value(args) / lb, N_sb);
    near(blowoutCorner.value({ c_a1: 3, c_a2: 6, N_sb }), 21732);
    near(blowoutGroup.value({ s: 6, c_a1: 3, N_sb }), 38634);
  });

  it.each([
    [9, 1],
    [8.99, 0.9992],
    [6, 0.75],
    [3, 0.5],
    [2, 0.5],
  ])("an end %d in away beside a side 3 in away leaves %d of it (17.6.4.1.1)", (c_a2, part) => near(blowoutCorner.value({ c_a1: 3, c_a2, N_sb: 1 }), part));

  it.each<[string, Given, readonly number[], number, number]>([
    ["one rod far from corners", single, [far, far, 3, far], 10, N_sb],
    ["one rod with an end 6 in away", single, [6, far, 3, far], 10, 21732],
    ["a pair 6 in apart, 20 kip on both", pair, [far, far, 3, far], 20, 38634],
    ["a pair 18 in apart, too far for a group: 10 kip on each", { ...pair, plate: [22, 5, 1], spacing: [18, undefined] }, [far, far, 3, far], 10, N_sb],
  ])("%s", (_, given, edges, demand, nominal) => {
    const outcome = run(sideFaceBlowout, within(inputsOf(sideFaceBlowout, given), edges), lift(given.count === 1 ? 10 : 20));
    near(outcome.demand / kip, demand);
    near(outcome.capacity / lb, 0.7 * nominal);
  });

  it("four rods: each row counts with the side it is near, and the weaker governs", () => {
    const four: Given = { rod: 0.75, embedment: 20, spacing: [10, 6] };
    // East: 4 in off, rods 6 in apart. North: 6 in off, rods 10 in apart. Both deeper than 2.5 c_a1.
    const outcome = run(sideFaceBlowout, within(inputsOf(sideFaceBlowout, four), [far, 9, far, 9]), lift(20));
    near(outcome.demand / kip, 10);
    near(outcome.capacity / lb, 0.7 * ((N_sb * 4) / 3) * (1 + 6 / 24));
  });

  it("takes a row as if each of its rods pulled as the most loaded one", () => {
    const outcome = run(sideFaceBlowout, within(inputsOf(sideFaceBlowout, pair), [far, far, 3, far]), lift(20, { My: 12 * kipInch }));
    near(outcome.demand / kip, 2 * 12);
  });

  it.each([
    [7.49, 0],
    [7.51, 10],
  ])("3 in from the side, %d in deep: %d kip are weighed (h_ef against 2.5 c_a1)", (embedment, demand) => {
    expect(run(sideFaceBlowout, within(inputsOf(sideFaceBlowout, { ...single, embedment }), [far, far, 3, far]), lift(10)).demand / kip).toBeCloseTo(demand, 9);
  });

  it("concerns headed rods alone", () => {
    expect(sideFaceBlowout.applies(supportWith({ anchors: { end: "hooked" } }))).toBe(false);
    expect(sideFaceBlowout.applies(supportWith())).toBe(true);
  });

  it("says what to change", () => {
    const inputs = within(inputsOf(sideFaceBlowout, pair), [far, far, 3, far]);
    expect(sideFaceBlowout.advise!(inputs, run(sideFaceBlowout, inputs, lift(28)), say)).toMatch(/^28 kip tension along one side; the concrete beside the heads holds 27\.0\d kip\. Set the rods farther from the side/);
  });

  it("never grows when a side comes nearer", () => {
    const inches = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(1, 4, 6, 8), fc.tuple(inches(4, 12), inches(4, 12)), fc.tuple(inches(7, 40), inches(7, 40), inches(7, 40), inches(7, 40)), fc.integer({ min: 0, max: 3 }), inches(0, 1), inches(4, 40), inches(-30, 30), (count, spacing, edges, which, part, embedment, My) => {
        const inputs = { ...inputsOf(sideFaceBlowout, { count, spacing: count === 1 ? [undefined, undefined] : spacing, rod: 0.75 }), h_ef: embedment * inch };
        const nearer = edges.map((c, i) => (i === which ? 6.1 + part * (c - 6.1) : c));
        const ratio = (of: readonly number[]) => ratioOf(run(sideFaceBlowout, within(inputs, of), lift(20, { My: My * kipInch })));
        expect(ratio(nearer)).toBeGreaterThanOrEqual(ratio(edges) * (1 - 1e-9));
      }),
      { numRuns: 1500 },
    );
  });
});

describe("pryout (ACI 318-19 17.7.3)", () => {
  it.each([
    [2.49, 1],
    [2.5, 2],
    [12, 2],
  ])("k_cp at %d in is %d (17.7.3.1.1)", (h_ef, expected) => expect(pryoutFactor.value({ h_ef: h_ef * inch })).toBe(expected));

  it("is 17,218 lb for a 1/2 in bolt 7 in deep, 1-3/4 in from the edge, as in PCA Notes on ACI 318-11, Example 34.4 (from memory): N_cb 12,299 lb", () => {
    const inputs = within(inputsOf(pryout, { ...single, rod: 0.5, embedment: 7 }), [1.75, far, far, far]);
    const demand = strength({ Vx: 300 * lb, Vy: 400 * lb });
    near(valuesOf(pryout, inputs, demand).get("N_cbg")! / lb, 12299);
    const outcome = run(pryout, inputs, demand);
    near(outcome.capacity / lb, 17218);
    near(outcome.demand / lb, 500);
  });

  it("takes twice the breakout of all four rods where washers are welded: 20 in pedestal of AISC Design Guide 1, 3rd ed., Example 4.7-15, 29.2 kip in tension", () => {
    const pedestal: Given = { section: "HSS3x3x1/4", plate: [10, 10, 1], pier: 20, rod: 0.875, spacing: [4, 4], embedment: 14, base: { "washers welded": true } };
    near(run(pryout, inputsOf(pryout, pedestal), strength({ Vx: kip })).capacity / kip, 0.7 * 2 * 29.2, 0.004);
  });

  it("takes the weakest two rods where washers are loose: 6 in apart, 6 in deep, 18 by 24 of 324 in² times 22.31 kip (closed form)", () => {
    const inputs = inputsOf(pryout, { spacing: [10, 6], embedment: 6 });
    near(run(pryout, inputs, strength({ Vx: kip })).capacity / kip, 0.7 * 2 * ((18 * 24) / 324) * 22.31);
    expect(pryout.advise!(inputs, run(pryout, inputs, strength({ Vx: 50 * kip })), say)).toMatch(/^50 kip shear; .* 41\.6\d kip against prying\. Set the rods deeper, weld plate washers/);
  });

  it("takes the pair at the corner of the concrete, not a pair away from it", () => {
    const inputs = within(inputsOf(pryout, { spacing: [10, 10], embedment: 6 }), [far, far, 8, far]);
    // 10 in apart along a side 3 in away: 28 by 12 of 324 in², psi_ed 0.8.
    near(run(pryout, inputs, strength({ Vx: kip })).capacity / kip, 0.7 * 2 * ((28 * 12) / 324) * 0.8 * 22.31);
  });

  it("deeper than the near edges allow changes nothing", () => {
    const at = (embedment: number) => run(pryout, inputsOf(pryout, { section: "HSS3x3x1/4", plate: [13, 13, 1], pier: 16, spacing: [8, 8], embedment }), strength({ Vx: kip })).capacity;
    for (const embedment of [16, 24, 40]) expect(at(embedment) / at(12)).toBeCloseTo(1, 9);
  });

  it("never gives a number that is none, nor a strength below zero", () => {
    const inches = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(1, 4, 6, 8), fc.boolean(), inches(1, 40), fc.tuple(inches(6, 100), inches(6, 100), inches(6, 100), inches(6, 100)), (count, isWelded, embedment, edges) => {
        const inputs = { ...inputsOf(pryout, { count, spacing: count === 1 ? [undefined, undefined] : [10, 8] }), isWelded, h_ef: embedment * inch };
        const outcome = pryout.evaluate(within(inputs, edges), strength({ Vx: 3 * kip }), plainCalc);
        expect(outcome).toMatchObject({ type: "weighed" });
        expect((outcome as { capacity: number }).capacity).toBeGreaterThan(0);
      }),
      { numRuns: 1500 },
    );
  });
});
