import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breakoutShear, type ShearBreakoutInputs } from "../../../server/src/checks/anchors/breakout-shear.js";
import { pryout } from "../../../server/src/checks/anchors/pryout.js";
import { basicShearByEdge, rowsToward, shearDepth, shearEccentricity, shearEnd, wedgeStrength } from "../../../server/src/checks/anchors/shear-wedge.js";
import type { CheckDecl } from "../../../server/src/checks/contract.js";
import { plainCalc, recordingCalc } from "../../../server/src/formula/calc.js";
import { edgeNames } from "../../../server/src/mechanics/edge-rows.js";
import { gatherer, inch, kip, ratioOf, run, say, strength, valuesOf } from "../given.js";
import { supportWith, type Given } from "../base/base.js";

const near = (found: number | undefined, expected: number, part = 0.001) => {
  expect(found).toBeDefined();
  expect(Math.abs(found! / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
};
const lb = kip / 1000;

const inputsOf = (given: Given = {}): ShearBreakoutInputs => {
  const gather = gatherer();
  const inputs = breakoutShear.inputs(supportWith(given), gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};

/** The same rods with the concrete's edges at these distances from the middle of the plate, and this depth; inches. */
const within = (inputs: ShearBreakoutInputs, [west, east, south, north]: readonly number[], depth = 100): ShearBreakoutInputs => ({
  ...inputs,
  member: { ...inputs.member, edges: { west: -west * inch, east: east * inch, south: -south * inch, north: north * inch }, depth: depth * inch },
});

const single: Given = { section: "HSS3x3x1/4", plate: [6, 6, 1], count: 1, spacing: [undefined, undefined], rod: 0.75, embedment: 12 };
const far = 100;
const push = (Vx: number, Vy = 0) => strength({ Vx: Vx * kip, Vy: Vy * kip });

/** What the formulas give toward the east for the row nearest to that edge, or the one that stands for the group. */
const eastward = (inputs: ShearBreakoutInputs) => {
  const { calc, steps } = recordingCalc();
  const found = wedgeStrength(inputs, rowsToward(inputs, "east")[0], calc);
  return { ...found, values: new Map(steps.flatMap((step) => (step.type === "formula" ? [[step.formula.result, step.value] as const] : []))) };
};

describe("breakout of the concrete in shear (ACI 318-19 17.7.2), 3/4 in rod 12 in deep, 4 ksi, cracked", () => {
  // Closed forms from ACI 318-19 17.7.2, no published example: edge distance, both ends, depth, then what is printed.
  it.each<[string, number, readonly [number, number], number, Readonly<Record<string, number>>, number]>([
    ["in deep concrete", 6, [far, far], far, { l_e: 6, V_ba: 8541, V_bb: 8366 }, 8366],
    ["in concrete 6 in thick", 6, [far, far], 6, { A_Vc: 108, A_Vco: 162, psi_hV: 1.2247 }, 6831],
    ["5 in from a corner", 6, [5, far], far, { A_Vc: 126, A_Vco: 162, psi_edV: 0.8667 }, 5639],
    ["in a member 10 in wide and 6 in thick, by 17.7.2.1.2", 8, [5, 5], 6, { c_1: 4, V_ba: 4649, V_bb: 4554, A_Vc: 60, A_Vco: 72, psi_edV: 0.95, psi_hV: 1 }, 3605],
  ])("%s, %d in from the edge", (_, c_a1, [south, north], depth, printed, expected) => {
    const { toward, values } = eastward(within(inputsOf(single), [far, c_a1, south, north], depth));
    const unit: Readonly<Record<string, number>> = { l_e: inch, c_1: inch, V_ba: lb, V_bb: lb, A_Vc: inch ** 2, A_Vco: inch ** 2 };
    for (const [symbol, value] of Object.entries(printed)) near(values.get(symbol)! / (unit[symbol] ?? 1), value);
    near(toward / lb, expected);
  });

  it("is 5,856 lb by design in deep concrete 6 in from the edge", () => {
    near(run(breakoutShear, within(inputsOf(single), [far, 6, far, far]), push(1)).capacity / lb, 5856);
  });

  it("follows PCA Notes on ACI 318-11, Example 34.4 (from memory): 1/2 in bolt 1-3/4 in from the edge, 7 in deep: V_ba 1,098 lb, V_bb 1,318 lb, 769 lb by design", () => {
    const inputs = within(inputsOf({ ...single, rod: 0.5, embedment: 7 }), [far, 1.75, far, far]);
    const { values } = eastward(inputs);
    near(values.get("V_ba")! / lb, 1098);
    near(values.get("V_bb")! / lb, 1318);
    near(run(breakoutShear, inputs, push(0.5)).capacity / lb, 769, 0.002);
  });

  // A worked memo in SI units prints 0.849 for 400 mm beside 537.5 mm, and 230.5 kN with 3.7 in place of 9, whose exact value is 3.766 in SI.
  it("psi_ed,V is 0.849 for an end 400 mm away at an edge distance of 537.5 mm, and V_b 230.5 kN x 3.766/3.7 in 25 MPa", () => {
    near(shearEnd.value({ c_a2: 0.4, c_1: 0.5375 }), 0.849);
    near(basicShearByEdge.value({ f_c: 25e6, c_1: 0.5375 }) / 1000, (230.5 * 3.766) / 3.7, 0.002);
  });

  it.each([
    [0, 1],
    [3, 0.75],
    [9, 0.5],
  ])("psi_ec,V for a shear %d in off the middle of a row 6 in from the edge is %d (Eq. 17.7.2.3.1)", (e, expected) => near(shearEccentricity.value({ e_V: e * inch, c_1: 6 * inch }), expected));

  it.each([
    [9, 1],
    [20, 1],
    [4, 1.5],
  ])("psi_h,V in concrete %d in thick, 6 in from the edge, is %d (17.7.2.6.1)", (h, expected) => near(shearDepth.value({ h_a: h * inch, c_1: 6 * inch }), expected));
});

describe("shear toward, along and askew to an edge", () => {
  const corner = within(inputsOf(single), [far, 6, 5, far]);

  it("along an edge counts twice, without the factor for the corner (17.7.2.1(c)): 2 x 8,366 x 126/162 lb", () => {
    near(eastward(corner).along / lb, (2 * 8366 * 126) / 162);
  });

  it("is weighed against the edge it runs along, where it pushes toward none", () => {
    const outcome = run(breakoutShear, within(inputsOf(single), [far, 6, far, far]), push(0, 3));
    near(outcome.demand / kip, 3);
    near(outcome.capacity / lb, 2 * 5856);
  });

  it("askew, squares both parts and adds them: 3 kip toward and 4 kip along use sqrt((3/5.856)² + (4/11.71)²)", () => {
    near(ratioOf(run(breakoutShear, within(inputsOf(single), [far, 6, far, far]), push(3, 4))), Math.hypot(3 / 5.856, 4 / 11.712));
  });

  it("at a corner the weaker of both edges counts (17.7.2.1(d))", () => {
    // Toward the south, 5 in away with its end 6 in off: 13.5 x 7.5 of 112.5 in², 0.94, and 9 sqrt(4000) 5^1.5 lb.
    const south = ((13.5 * 7.5) / 112.5) * 0.94 * 6364;
    near(run(breakoutShear, corner, push(0, -1)).capacity / lb, 0.7 * south);
    near(run(breakoutShear, corner, push(1, 0)).capacity / lb, 0.7 * 5639);
    // Toward the north and the east: the east edge takes both parts.
    near(ratioOf(run(breakoutShear, corner, push(1, 1))), Math.hypot(1 / (0.7 * 5.639), 1 / (0.7 * 2 * 6.507)));
  });

  it("pushed away from the only near edge, the far edges count", () => {
    const inputs = within(inputsOf(single), [far, 6, far, far]);
    expect(run(breakoutShear, inputs, push(-1)).capacity / run(breakoutShear, inputs, push(1)).capacity).toBeGreaterThan(10);
  });

  it("without shear nothing is tried, and the weakest edge is shown", () => {
    const outcome = run(breakoutShear, corner, push(0));
    expect(outcome.demand).toBe(0);
    // The south edge, as above.
    near(outcome.capacity / lb, 0.7 * 5384);
  });
});

describe("rods that stand for the group", () => {
  const four: Given = { rod: 0.75, embedment: 12, spacing: [10, 8] };
  const edges = [far, 11, far, far];

  it("with loose washers the front row takes all: 6 in from the edge, 8 in apart, (18 + 8) x 9 of 162 in²", () => {
    near(eastward(within(inputsOf(four), edges)).toward / lb, ((26 * 9) / 162) * 8366);
  });

  it("with welded washers the rear row takes all: 16 in from the edge, (48 + 8) x 24 of 1,152 in², by 7 (6/0.75)^0.2 sqrt(0.75)", () => {
    const welded = within(inputsOf({ ...four, base: { "washers welded": true } }), edges);
    const V_b = Math.min(7 * 8 ** 0.2 * 0.75 ** 0.5, 9) * 4000 ** 0.5 * 16 ** 1.5;
    near(eastward(welded).toward / lb, ((56 * 24) / 1152) * V_b);
  });

  it("six rods, three in the front row: with loose washers two of them, off the line of the shear by a quarter of the row", () => {
    const inputs = within(inputsOf({ ...four, count: 6, spacing: [8, 10] }), [far, 10, far, far]);
    const rows = rowsToward(inputs, "east");
    expect(rows.map(({ along }) => along.length)).toEqual([2, 2]);
    // (18 + 5) x 9 of 162 in², over 1 + 2.5/9: as if the middle rod stood alone.
    near(eastward(inputs).toward / lb, ((23 * 9) / 162) * (1 / (1 + 2.5 / 9)) * 8366);
    const welded = { ...inputs, isWelded: true };
    expect(rowsToward(welded, "east").map(({ along }) => along.length)).toEqual([3]);
  });

  it.each([
    ["two rods in a line toward the edge: the front one", [8, undefined], 1],
    ["two rods in a line along the edge: both", [undefined, 8], 2],
  ] as const)("%s", (_, spacing, count) => {
    expect(rowsToward(inputsOf({ ...four, count: 2, spacing }), "east").map(({ along }) => along.length)).toEqual([count]);
  });

  it("a round pier is taken as the square inside it: 30 in, rods 10 in square stand 5.61 in from its sides", () => {
    const inputs = inputsOf({ diameter: 30, spacing: [10, 10] });
    for (const edge of edgeNames) near(rowsToward(inputs, edge)[0].distance / inch, 30 / Math.SQRT2 / 2 - 5);
    const { calc, steps } = recordingCalc();
    breakoutShear.evaluate(inputs, push(1), calc);
    expect(steps.some((step) => step.type === "note" && /square inside/.test(step.text))).toBe(true);
  });

  it("a thin pad: 10 in of concrete before rods 10 in from the side, (30 + 10) x 10 of 450 in², times sqrt(15/10)", () => {
    const pad = { kind: "footing on rock", width: 30 * inch, length: 200 * inch, thickness: 10 * inch };
    const inputs = inputsOf({ rod: 0.75, embedment: 9, spacing: [10, 10], foundation: pad });
    const { values } = eastward(inputs);
    near(values.get("A_Vc")! / inch ** 2, 400);
    near(values.get("psi_hV"), Math.sqrt(1.5));
  });
});

describe("cracking and bars at the edge (ACI 318-19 Table 17.7.2.5.1)", () => {
  it.each([
    [{}, 1],
    [{ "edge bars": "none" }, 1],
    [{ "edge bars": "no. 4" }, 1.2],
    [{ "edge bars": "no. 4 in ties at 4 in" }, 1.4],
    [{ "cracked concrete": false }, 1.4],
    [{ "cracked concrete": false, "edge bars": "no. 4" }, 1.4],
  ])("%j: psi_c,V %d", (base, expected) => expect(inputsOf({ ...single, base }).psi_cV).toBe(expected));

  it("says what to change", () => {
    const inputs = within(inputsOf(single), [far, 6, far, far]);
    expect(breakoutShear.advise!(inputs, run(breakoutShear, inputs, push(7)), say)).toBe(
      "7 kip shear toward the edge; the concrete before the rods holds 5.856 kip. Set the rods farther from the edge or widen the concrete, weld plate washers to the plate so that the far rods take it too, or give it hairpins for all of it (foundation, hairpins).",
    );
  });

  it("asks for what it needs, and does not answer for rods outside the concrete", () => {
    const gather = gatherer();
    breakoutShear.inputs(supportWith({ pier: 9, plate: [8, 8, 1], spacing: [10, 10], anchors: { embedment: undefined } }), gather, 0);
    expect(gather.missing).toContain("anchor embedment");
    expect(gather.blocks.join()).toMatch(/outside the concrete/);
  });
});

describe("laws of breakout in shear", () => {
  const inches = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const given = fc.record({ count: fc.constantFrom(1, 4, 6, 8), isWelded: fc.boolean(), rod: fc.constantFrom(0.5, 0.75, 1.25), embedment: inches(3, 20), spacing: fc.tuple(inches(4, 12), inches(4, 12)) });
  const made = ({ isWelded, count, spacing, ...rest }: { isWelded: boolean; count: number; rod: number; embedment: number; spacing: [number, number] }) =>
    inputsOf({ ...rest, count, spacing: count === 1 ? [undefined, undefined] : spacing, base: { "washers welded": isWelded } });
  const shears = fc.tuple(inches(-5, 5), inches(-5, 5)).filter(([x, y]) => Math.hypot(x, y) > 0.001);

  // No exception stands beside this one, as there is for the cone in tension: the cut of the edge distance in 17.7.2.1.2 sets in where both
  // ends and the depth are near, and what it gives grows with each of them.
  it("an edge, an end or the underside that comes nearer never makes it stronger", () => {
    fc.assert(
      fc.property(given, fc.tuple(inches(7, 60), inches(7, 60), inches(7, 60), inches(7, 60), inches(21, 80)), fc.integer({ min: 0, max: 4 }), inches(0.1, 1), shears, (base, [w, e, s, n, h], which, part, [Vx, Vy]) => {
        const inputs = made(base);
        const sizes = [w, e, s, n, h];
        // Edges stay outside the rods, which reach 6 in from the middle.
        const nearer = sizes.map((size, i) => (i === which ? (i === 4 ? part * size : 6.1 + part * (size - 6.1)) : size));
        const ratio = (of: readonly number[]) => ratioOf(run(breakoutShear, within(inputs, of.slice(0, 4), of[4]), push(Vx, Vy)));
        expect(ratio(nearer)).toBeGreaterThanOrEqual(ratio(sizes) * (1 - 1e-9));
      }),
      { numRuns: 2000 },
    );
  });

  it("turning pattern, concrete and push by a right angle changes no ratio, of breakout and of pryout", () => {
    fc.assert(
      fc.property(given, fc.tuple(inches(7, 60), inches(7, 60), inches(7, 60), inches(7, 60)), shears, (base, [west, east, south, north], [Vx, Vy]) => {
        const here = within(made(base), [west, east, south, north]);
        const turned = within(made({ ...base, spacing: [base.spacing[1], base.spacing[0]] }), [north, south, west, east]);
        fc.pre(base.count !== 6 || Math.abs(base.spacing[0] - base.spacing[1]) > 0.01);
        for (const of of [breakoutShear, pryout] as readonly CheckDecl<any, "strength">[]) near(ratioOf(run(of, turned, push(-Vy, Vx))) || 1, ratioOf(run(of, here, push(Vx, Vy))) || 1, 1e-6);
      }),
      { numRuns: 500 },
    );
  });

  it("deeper than eight diameters changes nothing", () => {
    fc.assert(
      fc.property(fc.constantFrom(0.5, 1), inches(0, 10), (rod, deeper) => {
        const at = (embedment: number) => run(breakoutShear, within(inputsOf({ ...single, rod, embedment }), [far, 6, far, far]), push(1)).capacity;
        expect(at(8 * rod + deeper) / at(8 * rod)).toBeCloseTo(1, 12);
      }),
    );
  });

  it("never gives a number that is none, nor a strength below zero, over 3,000 random groups", () => {
    fc.assert(
      fc.property(given, fc.tuple(inches(6.001, 300), inches(6.001, 300), inches(6.001, 300), inches(6.001, 300)), inches(0.1, 300), fc.tuple(inches(-1e6, 1e6), inches(-1e6, 1e6)), (base, edges, depth, [Vx, Vy]) => {
        const outcome = breakoutShear.evaluate(within(made(base), edges, depth), strength({ Vx, Vy }), plainCalc);
        if (outcome.type === "unchecked") throw new Error(outcome.because);
        expect(outcome.demand).toBeGreaterThanOrEqual(0);
        expect(outcome.capacity).toBeGreaterThan(0);
        expect(Number.isFinite(outcome.demand + outcome.capacity)).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });

  it("the formulas shown are those that ran", () => {
    const inputs = within(inputsOf(single), [far, 6, far, far]);
    near(valuesOf(breakoutShear, inputs, push(1)).get("phiV_cbg")!, run(breakoutShear, inputs, push(1)).capacity, 1e-12);
  });
});
