import { describe, expect, it } from "vitest";
import type { Demand } from "../../../server/src/actions/demand.js";
import { effectiveLengthFactors } from "../../../server/src/checks/column/effective-length.js";
import { columnDrift, columnDriftAtStrength } from "../../../server/src/checks/column/drift.js";
import { columnInteraction, magnifier } from "../../../server/src/checks/column/interaction.js";
import { readColumn } from "../../../server/src/checks/column/member.js";
import { findSection, type ColumnSection } from "../../../server/src/catalog/sections.js";
import { plainCalc, recordingCalc } from "../../../server/src/formula/calc.js";
import type { Named, Roof, Support } from "../../../server/src/project/model.js";
import { foot, gatherer, inch, kip, kipFoot, say, strength, supportOf, weighed } from "../given.js";

const roofed = (column: Record<string, unknown>, roof: Record<string, unknown>, site: Record<string, unknown> = { "risk category": "II", "service wind": "10 years" }): Support => ({
  ...supportOf({ column, site }),
  roof: supportOf({ column: roof }).column as unknown as Named<Roof>,
});

const swayed = (x: number, y: number): Demand<"service"> => ({ ...strength({}), level: "service", sway: { x, y } }) as unknown as Demand<"service">;

const inputsOf = (column: Record<string, unknown>, roof: Record<string, unknown>, site?: Record<string, unknown>) => {
  const gather = gatherer();
  return { inputs: columnDrift.inputs(roofed(column, roof, site), gather, 0), gather };
};

describe("sway at the column top", () => {
  // Limits by finish: common practice, no source. Twelve feet of column.
  it.each([
    ["bare", undefined, 1.44],
    ["ceiling", undefined, 0.72],
    ["glass or stone", undefined, 0.36],
    ["glass or stone", "H/60", 2.4],
    ["bare", "H/400", 0.36],
  ])("with a %s finish and a limit of %s stated, 12 ft of column may sway %s in", (finish, limit, expected) => {
    const { inputs } = inputsOf({ height: 12 * foot }, { finish, "sway limit": limit });
    const { capacity } = weighed(columnDrift.evaluate(inputs, swayed(0, 0), plainCalc));
    expect(capacity / inch).toBeCloseTo(expected, 9);
  });

  it("both directions count together: 1.5 in east and 2 in south are 2.5 in", () => {
    const { inputs } = inputsOf({ height: 12 * foot }, { finish: "bare" });
    const outcome = weighed(columnDrift.evaluate(inputs, swayed(1.5 * inch, -2 * inch), plainCalc));
    expect(outcome.demand / inch).toBeCloseTo(2.5, 9);
    expect(columnDrift.advise?.(inputs, outcome, say)).toBe("Sway 2.5 in over 12 ft; 1.44 in is the limit (H/100 for a bare roof). Take a wider section, fix the column tops, or brace a bay in that direction.");
  });

  it("asks for the risk category unless the service wind speed is stated", () => {
    expect(inputsOf({ height: 3 }, { finish: "bare" }, { "service wind": "10 years" }).gather.missing).toEqual(["risk category of the site, or a stated service wind speed"]);
    expect(inputsOf({ height: 3 }, { finish: "bare" }, { "service wind speed": 34 }).gather.missing).toEqual([]);
  });

  it("is not made where reactions are given by hand, nor at strength without a limit", () => {
    expect(columnDrift.applies(roofed({ height: 3, reactions: new Map() }, { finish: "bare" }))).toBe(false);
    expect(columnDrift.applies(supportOf({ column: { height: 3 } }))).toBe(false);
    expect(columnDrift.applies(roofed({ height: 3 }, { finish: "bare" }))).toBe(true);
    expect(columnDriftAtStrength.applies(roofed({ height: 3 }, { finish: "bare" }))).toBe(false);
    expect(columnDriftAtStrength.applies(roofed({ height: 3 }, { "sway limit at strength": "H/50" }))).toBe(true);
  });

  it("at strength takes the limit stated for it", () => {
    const inputs = columnDriftAtStrength.inputs(roofed({ height: 10 * foot }, { "sway limit at strength": "H/60", finish: "bare" }), gatherer(), 0);
    const outcome = weighed(columnDriftAtStrength.evaluate(inputs, swayed(3 * inch, 0) as never, plainCalc));
    expect([outcome.demand / inch, outcome.capacity / inch]).toEqual([expect.closeTo(3, 9), expect.closeTo(2, 9)]);
  });

  it("cannot be told of a demand without movements", () => {
    const { inputs } = inputsOf({ height: 3 }, { finish: "bare" });
    expect(columnDrift.evaluate(inputs, strength({}) as never, plainCalc)).toMatchObject({ type: "unchecked" });
  });
});

describe("sway of a column on a pier", () => {
  const pci = kip / 1000 / inch ** 3;
  // A rigid pier's closed form with bending: 1,200 lb and 12 kip-ft at grade, 24 in, 84 in long, 100 pci, EI 5.863e10 lb·in²: 0.0758501 in, 0.00172396 rad.
  const foundation = { kind: "pier", width: 24 * inch, depth: 7 * foot, concrete: 11300 * (kip / 1000 / inch ** 2) };
  const on = (ground: Record<string, unknown>, column: Record<string, unknown> = {}): Support => ({
    ...roofed({ height: 10 * foot, ...column }, { finish: "bare" }),
    foundation: supportOf({ foundation }).foundation,
    ground: supportOf({ foundation: { kind: "soil", ...ground } }).foundation,
  }) as unknown as Support;
  const demand = { ...swayed(0.1 * inch, 0), base: { P: 0, Vx: 1.2 * kip, Vy: 0, Mx: 0, My: 12 * kipFoot } };
  const sway = (support: Support) => weighed(columnDrift.evaluate(columnDrift.inputs(support, gatherer(), 0), demand as never, plainCalc)).demand / inch;

  it("is its own, the movement of the pier and the lean times its height: 0.1 + 0.0759 + 0.00172396 x 120 in", () => {
    expect(sway(on({ "subgrade modulus": 100 * pci }))).toBeCloseTo(0.1 + 0.07585 + 0.00172396 * 120, 3);
  });

  it("takes no lean along where the column turns on its base, and nothing where the soil is not told", () => {
    const pinned = { "sway along x": "pinned base", "sway along y": "braced bay" };
    expect(sway(on({ "subgrade modulus": 100 * pci }, pinned))).toBeCloseTo(0.1 + 0.07585, 3);
    expect(sway(on({}))).toBeCloseTo(0.1, 9);
    // A curve that lacks a value is left out, and the sway itself does not wait for it.
    expect(sway(on({ "friction angle": 0.5, "modulus growth": 1e7 }))).toBeCloseTo(0.1, 9);
  });

  it("has no end where the soil gives way", () => {
    const inputs = columnDrift.inputs(on({ cohesion: 2e3, "strain at half strength": 0.02, "unit weight": 17e3 }), gatherer(), 0);
    expect(columnDrift.evaluate(inputs, { ...demand, base: { ...demand.base, Vx: 100 * kip } } as never, plainCalc)).toMatchObject({ type: "unchecked" });
  });

  it("names what grows it", () => {
    const measured = (support: Support) => columnDrift.measures!(columnDrift.inputs(support, gatherer(), 0), demand as never, plainCalc);
    expect(measured(on({}))).toHaveLength(1);
    expect(measured(on({ "subgrade modulus": 100 * pci }))).toHaveLength(4);
  });
});

describe("effective length by what holds the column", () => {
  // AISC 360-22 Commentary Table C-A-7.1, recommended design values.
  it.each([
    ["fixed base", "fixed base", "pinned", 2.1],
    ["fixed base", "fixed base", "fixed", 1.2],
    ["fixed base and top", "fixed base and top", "pinned", 1.2],
    ["fixed base and top", "fixed base", "pinned", 2.1],
    ["braced bay", "braced bay", "pinned", 1],
    ["braced bay", "bracket", "pinned", 2.1],
    ["pinned base", "pinned base", "pinned", 1],
    ["pinned base", "braced bay", "fixed", 2],
  ])("along x %s, along y %s, top %s: K = %s", (x, y, top, K) => {
    const { column } = supportOf({ column: { "sway along x": x, "sway along y": y, "top of column": top } });
    const found = effectiveLengthFactors(column?.fields, gatherer());
    expect(Math.max(found.x, found.y)).toBe(K);
  });

  it.each([
    ["along y", "fixed base", { x: 1.2, y: 2.1 }],
    ["along x", "fixed base and top", { x: 2.1, y: 1.2 }],
    ["both ways", "fixed base", { x: 2.1, y: 2.1 }],
    ["both ways", "braced bay", { x: 1, y: 1 }],
    [undefined, "fixed base", { x: 1.2, y: 1.2 }],
  ] as const)("a roof that tilts %s on columns of fixed tops, held by a %s", (tilts, condition, K) => {
    const { column } = supportOf({ column: { "sway along x": condition, "sway along y": condition, "top of column": "fixed" } });
    expect(effectiveLengthFactors(column?.fields, gatherer(), tilts)).toEqual(K);
  });
});

describe("second order and the column's own magnifier", () => {
  const section = findSection("HSS4x4x1/4") as ColumnSection;
  const inputs = readColumn(supportOf({ column: { section, grade: "A500 Gr C", "top of column": "pinned", height: 12 * foot } }), gatherer());
  const demand = strength({ P: 12 * kip, My: 3 * kipFoot }, { P: 12 * kip });
  const magnifiers = (of: typeof demand): number => {
    const { calc, steps } = recordingCalc();
    columnInteraction.evaluate(inputs, of, calc);
    return steps.filter((step) => step.type === "formula" && step.formula.id === magnifier.id).length;
  };

  it("moments are magnified once: by the story where it was looked at, otherwise by the column", () => {
    expect(magnifiers(demand)).toBe(2);
    expect(magnifiers({ ...demand, magnified: { x: 1.2, y: 1.1 } })).toBe(0);
    const own = weighed(columnInteraction.evaluate(inputs, demand, plainCalc)).demand;
    const story = weighed(columnInteraction.evaluate(inputs, { ...demand, magnified: { x: 1, y: 1 } }, plainCalc)).demand;
    expect(own).toBeGreaterThan(story * 1.05);
  });
});
