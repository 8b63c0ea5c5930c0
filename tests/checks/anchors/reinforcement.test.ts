import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readBar } from "../../../server/src/catalog/bars.js";
import { breakoutTension } from "../../../server/src/checks/anchors/breakout-tension.js";
import { developmentOf, type Developed } from "../../../server/src/checks/anchors/development.js";
import { interaction } from "../../../server/src/checks/anchors/interaction.js";
import { hookPlaceFactor, hookSpacingFactor, reinforcementStrength, reinforcementTension, type ReinforcementInputs } from "../../../server/src/checks/anchors/reinforcement-tension.js";
import { barsOfRods, shiftsOfRows, turnsOfRing } from "../../../server/src/mechanics/rod-bars.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { gatherer, inch, kip, ksi, psi, ratioOf, run, say, strength, valuesOf } from "../given.js";
import { supportWith, type Given } from "../base/base.js";

const near = (found: number | undefined, expected: number, part = 0.003) => {
  expect(found).toBeDefined();
  expect(Math.abs(found! / expected - 1), `${found} against ${expected}`).toBeLessThan(part);
};
const lift = (kips: number) => strength({ P: -kips * kip });
const bar = (name: string) => readBar(name)!;

/** Pier 20 in square, 4 ksi, rods 7/8 in 10 in square, 8 no. 6 in no. 3 ties, 2 in of cover. */
const caged: Given = { section: "HSS3x3x1/4", plate: [14, 14, 1], pier: 20, rod: 0.875, spacing: [10, 10], embedment: 24 };
const foundation = { bars: { count: 8, bar: bar("no. 6") }, spiral: { bar: bar("no. 3"), pitch: 3 * inch }, cover: 2 * inch, "bar grade": "Gr 60", "bar tops": "hooked" };
const inputsOf = (given: Given = {}): ReinforcementInputs => {
  const gather = gatherer();
  const support = supportWith({ ...caged, ...given, base: { "anchor reinforcement": "pier bars", ...given.base }, foundation: { ...foundation, ...given.foundation } });
  const inputs = reinforcementTension.inputs(support, gather, 0);
  expect([...gather.missing, ...gather.blocks]).toEqual([]);
  return inputs;
};
const said = (given: Given): string => {
  const gather = gatherer();
  reinforcementTension.inputs(supportWith({ ...caged, ...given, foundation: { ...foundation, ...given.foundation } }), gather, 0);
  return [...new Set([...gather.missing, ...gather.blocks])].join("; ");
};

describe("development of bars in tension (ACI 318-19 25.4)", () => {
  const developed = (of: Partial<Developed>): Developed => ({ d_b: 0.75 * inch, f_y: 60 * ksi, fprime_c: 4000 * psi, c_b: 4 * inch, psi_r: 1, psi_o: 1, ...of });
  const length = (end: "straight" | "hooked" | "headed", of: Partial<Developed> = {}) => developmentOf(end, developed(of), plainCalc) / inch;

  it("is 17.1 in straight and 9.71 in hooked for no. 6 in 4 ksi, as in AISC Design Guide 1, 3rd ed., Example 4.7-15", () => {
    near(length("straight"), 17.1);
    near(length("hooked"), 9.71);
  });

  // Best straight lengths, (c_b + K_tr)/d_b = 2.5, by Eq. 25.4.2.4a: no. 3, 5, 8, 9 in 3 and 4 ksi.
  it.each([
    [0.5, 3000, 13.1],
    [0.625, 3000, 16.4],
    [0.625, 4000, 14.2],
    [0.75, 3000, 19.7],
    [1, 3000, 32.9],
    [1, 4000, 28.5],
    [1.128, 3000, 37.1],
    [0.375, 3000, 12],
  ])("a straight bar of %d in in %i psi needs %d in", (d, fc, expected) => {
    near(length("straight", { d_b: d * inch, fprime_c: fc * psi }), expected, 0.005);
  });

  // Hooks by 25.4.3.1, psi_r psi_o of 1.0, 1.6 and 2.0.
  it.each([
    [0.625, 3000, 7.9, 12.6, 15.7],
    [0.75, 4000, 9.7, 15.5, 19.4],
    [1, 3000, 15.9, 25.5, 31.9],
    [1, 4000, 14.9, 23.9, 29.9],
    [1.128, 4000, 17.9, 28.7, 35.8],
  ])("a hooked bar of %d in in %i psi needs %d, %d and %d in", (d, fc, best, middle, worst) => {
    const of = { d_b: d * inch, fprime_c: fc * psi };
    near(length("hooked", of), best, 0.005);
    near(length("hooked", { ...of, psi_r: 1.6 }), middle, 0.005);
    near(length("hooked", { ...of, psi_r: 1.6, psi_o: 1.25 }), worst, 0.005);
  });

  it.each([
    [6.05, 1],
    [6, 1],
    [5.95, 1.6],
  ])("hooks %d diameters apart take the factor %d", (s, expected) => {
    expect(hookSpacingFactor.value({ s, d_b: 1 })).toBe(expected);
  });

  // 2.5 in of side cover, or six diameters of a thin bar.
  it.each([
    [2.5, 0.75, 1],
    [2.52, 0.75, 1],
    [2.48, 0.75, 1.25],
    [2.25, 0.375, 1],
    [2.23, 0.375, 1.25],
  ])("hooks inside %d in of cover and ties, bars of %d in, take the factor %d", (cover, d, expected) => {
    expect(hookPlaceFactor.value({ c_c: cover * inch, d_t: 0, d_b: d * inch })).toBe(expected);
  });

  it("is 55/75 of a hook's for a head, with its least of 8 bar diameters and 6 in (ACI 318-19 25.4.4.2, from memory)", () => {
    near(length("headed", { d_b: inch }) / length("hooked", { d_b: inch }), 55 / 75, 1e-9);
    near(length("headed", { d_b: 0.375 * inch }), 6, 1e-9);
    near(length("hooked", { d_b: 0.375 * inch }), 6, 1e-9);
  });

  it("is 1.15 times as long for Gr 80 beyond the ratio of the strengths, and does not gain beyond 10 ksi concrete", () => {
    near(length("straight", { f_y: 80 * ksi }) / length("straight"), (80 / 60) * 1.15, 1e-9);
    near(length("straight", { fprime_c: 14000 * psi, d_b: 1.41 * inch }) / length("straight", { fprime_c: 10000 * psi, d_b: 1.41 * inch }), 1, 1e-9);
  });
});

describe("pier bars in place of concrete breakout (ACI 318-19 17.5.2.1)", () => {
  it("1.56 in² of bars carry 70 kip, as in AISC Design Guide 1, 3rd ed., Example 4.7-15: 70 / (0.75 x 60)", () => {
    near(reinforcementStrength.value({ n_b: 1, A_b: 1.5556 * inch ** 2, f_y: 60 * ksi, k_a: 1, k_u: 1 }) / kip, 70);
  });

  it("the bars of that example stand 2.83 in from their rods, and a hook fits from 13.6 in of embedment: 9.71 + 2.83/1.5 + 2", () => {
    // The four bars stand 8 in apart; 5.625 in of cover and tie put them there, and the cover at the top is the example's 2 in.
    const inputs: ReinforcementInputs = {
      ...inputsOf({ spacing: [4, 4], embedment: 14 }),
      cover: 2 * inch,
      c_b: 4 * inch,
      psi_r: 1,
      psi_o: 1,
      leans: Array.from({ length: 4 }, () => ({ count: 1, farthest: 2.83 * inch })),
    };
    const at = (h_ef: number) => ({ ...inputs, h_ef: h_ef * inch });
    const values = valuesOf(reinforcementTension, at(14), lift(70));
    near(values.get("l_dh")! / inch, 9.71);
    near(values.get("l_d")! / inch, 17.1);
    near(run(reinforcementTension, at(14), lift(70)).capacity / kip, 0.75 * 0.44 * 60);
    expect(run(reinforcementTension, at(13.65), lift(70)).capacity).toBeGreaterThan(0);
    expect(run(reinforcementTension, at(13.55), lift(70)).capacity).toBe(0);
    near(4 * run(reinforcementTension, at(14), lift(70)).demand / kip, 70);
  });

  it("a straight top that is 12.35 in of 17.08 in long counts with its part", () => {
    // l_a = 18 - 5.483/1.5 - 2 = 12.345 in; two bars a rod, 0.75 x 2 x 0.44 x 60 x 0.7228 = 28.6 kip.
    const outcome = run(reinforcementTension, inputsOf({ embedment: 18, foundation: { "bar tops": "straight" } }), lift(70));
    near(outcome.capacity / kip, 28.62);
  });

  it("a rod with no bar within half its embedment has nothing to lean on, and says so", () => {
    const inputs = inputsOf({ pier: 40, embedment: 20 });
    const outcome = run(reinforcementTension, inputs, lift(70));
    expect(outcome.capacity).toBe(0);
    expect(reinforcementTension.advise!(inputs, outcome, say)).toMatch(/^17\.5 kip in one rod; no vertical bar stands within 10 in of it/);
  });

  it("bars too short above the breakout surface carry nothing, and the words say which", () => {
    const inputs = inputsOf({ embedment: 12 });
    const outcome = run(reinforcementTension, inputs, lift(70));
    expect(outcome.capacity).toBe(0);
    expect(reinforcementTension.advise!(inputs, outcome, say)).toMatch(/too short above or below/);
  });

  it("the concrete then takes no tension, and the bars stand in its place where tension meets shear", () => {
    const support = supportWith({ ...caged, base: { "anchor reinforcement": "pier bars" }, foundation });
    const gather = gatherer();
    expect(run(breakoutTension, breakoutTension.inputs(support, gather, 0), lift(70)).demand).toBe(0);
    expect(Object.keys(interaction.inputs(support, gather, 0).modes)).toContain("anchors.reinforcement-tension");
    expect(Object.keys(interaction.inputs(supportWith(caged), gather, 0).modes)).not.toContain("anchors.reinforcement-tension");
  });

  it.each<[string, Given, RegExp]>([
    ["bars", { foundation: { bars: undefined } }, /vertical bars of the pier/],
    ["ties", { foundation: { spiral: undefined } }, /ties or spiral/],
    ["an even number of bars in a square pier", { foundation: { bars: { count: 7, bar: bar("no. 6") } } }, /an even number of four or more/],
    ["room for the cage", { foundation: { cover: 10 * inch } }, /do not fit into the pier/],
    ["a pier", { foundation: { kind: "wall on footing", thickness: 20 * inch, length: 200 * inch, height: 72 * inch } }, /do not stand in a pier or pedestal; vertical bars of a wall are counted by anchor reinforcement: wall bars/],
  ])("asks for %s", (_, given, words) => {
    expect(said(given)).toMatch(words);
  });

  it("is made by ACI 318-19 alone", () => {
    const support = supportWith({ ...caged, foundation });
    const gather = gatherer();
    reinforcementTension.inputs({ ...support, codes: { ...support.codes, concrete: { ...support.codes.concrete!, value: "ACI 318-14" } } } as never, gather, 0);
    expect(gather.blocks.join()).toMatch(/ACI 318-14 is not covered/);
  });

  it("load times k needs strength times k, and a longer embedment never carries less while the bars reach down", () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 40, noNaN: true }), fc.double({ min: 0, max: 10, noNaN: true }), fc.constantFrom("straight", "hooked", "headed"), (h, more, top) => {
        const at = (embedment: number) => inputsOf({ embedment, foundation: { "bar tops": top } });
        near(ratioOf(run(reinforcementTension, at(24), lift(20))) * 2, ratioOf(run(reinforcementTension, at(24), lift(40))), 1e-9);
        expect(run(reinforcementTension, at(h + more), lift(20)).capacity).toBeGreaterThanOrEqual(run(reinforcementTension, at(h), lift(20)).capacity * (1 - 1e-9));
      }),
      { numRuns: 60 },
    );
  });

  it("pull that presses tries nothing", () => {
    expect(run(reinforcementTension, inputsOf(), strength({ P: 40 * kip })).demand).toBe(0);
  });
});

describe("bars of a wall in place of concrete breakout", () => {
  const no5 = { bar: bar("no. 5"), spacing: 12 * inch };
  const walled: Given = { ...caged, spacing: [6, 6], embedment: 18 };
  const stem = { "fill face": { vertical: no5 }, "free face": { vertical: no5 } };
  const wall = (more: Record<string, unknown> = {}, given: Given = {}) => {
    const gather = gatherer();
    const support = supportWith({
      ...walled,
      ...given,
      base: { "anchor reinforcement": "wall bars" },
      foundation: { kind: "wall on footing", thickness: 20 * inch, length: 200 * inch, height: 72 * inch, "bar grade": "Gr 60", "bar tops": "straight", "stem cover": 2 * inch, "stem bars": stem, ...more },
    });
    return { inputs: reinforcementTension.inputs(support, gather, 0), words: [...new Set([...gather.missing, ...gather.blocks])].join("; ") };
  };

  it("a rod 3 in from the middle each way is left half of one no. 5 bar where the rows stand worst: 0.75 x 0.5 x 0.31 x 60 x 0.865 = 6.03 kip", () => {
    // Bars 10 - 2 - 0.3125 = 7.69 in from the middle; one midway between two rods stands 5.56 in from each. 18 - 5.56/1.5 - 2 = 12.3 in of the 14.23 in needed.
    const { inputs, words } = wall();
    expect(words).toBe("");
    expect(inputs.leans.every(({ count }) => Math.abs(count - 0.5) < 1e-9)).toBe(true);
    near(inputs.leans[0].farthest / inch, 5.563);
    near(run(reinforcementTension, inputs, lift(20)).capacity / kip, 6.03);
  });

  it("bars at 6 in leave a rod more; two rods on the middle line may have all bars at 12 in out of reach, and never those of one curtain in the middle", () => {
    const close = { vertical: { ...no5, spacing: 6 * inch } };
    const two: Given = { spacing: [6, undefined], count: 2 };
    const capacity = (more: Record<string, unknown>, given: Given = {}) => run(reinforcementTension, wall(more, given).inputs, lift(10)).capacity;
    expect(capacity({ "stem bars": { "fill face": close, "free face": close } })).toBeGreaterThan(6.03 * kip);
    expect(capacity({}, two)).toBe(0);
    expect(capacity({ "stem bars": { middle: { vertical: no5 } } }, two)).toBeGreaterThan(0);
  });

  it.each<[string, Record<string, unknown>, RegExp]>([
    ["the bars", { "stem bars": undefined }, /vertical bars of the wall \(stem bars\)/],
    ["vertical ones among them", { "stem bars": { "fill face": { horizontal: no5 } } }, /no vertical bars that are known/],
    ["bars of one size", { "stem bars": { "fill face": { vertical: no5 }, "free face": { vertical: { bar: bar("no. 4"), spacing: 12 * inch } } } }, /differ in size/],
    ["room for them", { "stem cover": 10 * inch }, /do not fit into the wall/],
    ["a wall", { kind: "pier", depth: 72 * inch, width: 20 * inch }, /do not stand in a wall/],
  ])("asks for %s", (_, more, words) => {
    expect(wall(more).words).toMatch(words);
  });

  it("rows are shifted against each other by fifths of their spacing, and stay on their stretch of wall", () => {
    const found = shiftsOfRows({ rows: [{ across: 1, spacing: 10 }, { across: -1, spacing: 5 }], axis: "y", from: -12, to: 12 });
    expect(found).toHaveLength(25);
    for (const places of found) {
      for (const { x, y } of places) expect(Math.abs(x) === 1 && Math.abs(y) <= 12).toBe(true);
      const ys = places.filter(({ x }) => x === 1).map(({ y }) => y);
      for (let i = 1; i < ys.length; i += 1) expect(ys[i] - ys[i - 1]).toBeCloseTo(10, 9);
    }
    expect(new Set(found.map((places) => places[0].y)).size).toBe(5);
  });
});

describe("bars that rods lean on", () => {
  const square = (s: number) => [-s, s].flatMap((x) => [-s, s].map((y) => ({ x, y })));

  it("gives each rod its corner bar and half of each bar midway to the next rod", () => {
    const bars = [...square(0.2), { x: 0.2, y: 0 }, { x: -0.2, y: 0 }, { x: 0, y: 0.2 }, { x: 0, y: -0.2 }];
    for (const { count, farthest } of barsOfRods({ rods: square(0.1), bars, reach: 1 })) {
      expect(count).toBeCloseTo(2, 12);
      expect(farthest).toBeCloseTo(Math.hypot(0.1, 0.1), 12);
    }
  });

  it("no more bars are counted than stand there, and none beyond reach, however the ring is turned", () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 16 }), fc.double({ min: 0.1, max: 0.5, noNaN: true }), fc.double({ min: 0.05, max: 0.6, noNaN: true }), (n, radius, reach) => {
        const ring = Array.from({ length: n }, (_, i) => ({ x: radius * Math.cos((2 * Math.PI * i) / n), y: radius * Math.sin((2 * Math.PI * i) / n) }));
        for (const bars of turnsOfRing(ring)) {
          for (const { x, y } of bars) expect(Math.hypot(x, y)).toBeCloseTo(radius, 9);
          const found = barsOfRods({ rods: square(0.1), bars, reach });
          expect(found.reduce((sum, { count }) => sum + count, 0)).toBeLessThanOrEqual(n + 1e-9);
          for (const { farthest } of found) expect(farthest).toBeLessThanOrEqual(reach * (1 + 1e-6));
        }
      }),
    );
  });
});
