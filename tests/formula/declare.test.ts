import { describe, expect, it, test } from "vitest";
import { plainCalc, recordingCalc, routine, routineById } from "../../server/src/formula/calc.js";
import { allFormulas, formula, formulaById, unregistered, warm } from "../../server/src/formula/declare.js";
import { breakout } from "./samples.js";

const length = { kind: "length", meaning: "a side" } as const;
const area = { kind: "area", meaning: "an area" } as const;

describe("declaring", () => {
  it("registers a formula once, types its arguments and keeps its declaration", () => {
    const made = formula({ id: "test.area", text: "A = b * h", source: "geometry", symbols: { A: area, b: length, h: length } });
    expect(made.value({ b: 2, h: 3 })).toBe(6);
    // @ts-expect-error A symbol is missing: the types refuse it, and the value is none.
    expect(made.value({ b: 2 })).toBeNaN();
    expect(made.result).toBe("A");
    expect(formulaById("test.area")).toBe(made);
    expect(allFormulas()).toContain(made);
    expect(() => formula({ id: "test.area", text: "A = b", source: "none", symbols: { A: area, b: length } })).toThrow(/test\.area: is declared twice/);
    expect(warm).not.toThrow();
  });

  test.each<[string, RegExp]>([
    ["A b * h", /result = expression/],
    ["Z = b * h", /"Z" is not among the symbols/],
  ])("refuses %j at once", (text, message) => {
    expect(() => unregistered({ id: "test.bad", text, source: "none", symbols: { A: area, b: length, h: length } })).toThrow(message);
  });

  test.each<[string, RegExp]>([
    ["A = b * x * h", /"x" is not declared/],
    ["A = b * e * h", /"e" is not declared/],
    ["A = b", /"h" is declared and does not occur/],
    ["A = b * h + A", /stands on both sides/],
    ["A = 2 b * h", /a product is written with \*/],
    ["A = b * h!", /"!"/],
    ["A = b % h", /"%"/],
    ["A = b * h'", /"'"/],
    ["A = random(b, h)", /function "random"/],
    ["A = import(b, h)", /function "import"/],
    ["A = sqrt(b, h)", /sqrt takes 1 argument/],
    ["A = [b, h]", /ArrayNode/],
    ["A = b = h", /AssignmentNode/],
    ["A = b; h", /BlockNode/],
    ["A = f(b) = h", /FunctionAssignmentNode/],
    ['A = b * h * "x"', /not a number/],
    ["A = b > h", /">"/],
    ["A = b ? h : 1", /condition is made of comparisons/],
    ["A = b * (h", /cannot be parsed/],
    ["A = b.h", /AccessorNode/],
    ["A = b * h to cm", /"to"|not declared/],
    ["A = true ? b : h", /condition/],
  ])("refuses %j when it is parsed, naming the formula", (text, message) => {
    const bad = unregistered({ id: "test.bad", text, source: "none", symbols: { A: area, b: length, h: length } });
    const run = () => (bad.value as (args: object) => number)({ b: 1, h: 1 });
    expect(run).toThrow(message);
    expect(run).toThrow(/test\.bad/);
  });

  it("refuses a constant that is no number with a unit", () => {
    const bad = unregistered({ id: "test.bad", text: "A = k * b", source: "none", symbols: { A: area, b: length }, constants: { k: "24 furlong" } });
    expect(() => bad.value({ b: 1 })).toThrow(/constant k/);
  });
});

describe("calculating", () => {
  const halving = routine<{ x: number }, number>({
    id: "test.halving",
    title: "Halving",
    method: "Divides by two.",
    source: "arithmetic",
    run: ({ x }) => x / 2,
    show: ({ x }, half) => ({
      given: [{ symbol: "x", meaning: "a length", kind: "length", value: x }],
      found: [{ symbol: "y", meaning: "its half", kind: "length", value: half }],
    }),
  });
  const args = { lambda_a: 1, fprime_c: 2e7, h_ef: 0.2 };

  it("gives the same numbers with and without a record", () => {
    const { calc, steps } = recordingCalc();
    for (const c of [plainCalc, calc]) {
      c.note("cast in");
      expect(c(breakout, args)).toBe(breakout.value(args));
      expect(c.routine(halving, { x: 3 })).toBe(1.5);
    }
    expect(steps.map((s) => s.type)).toEqual(["note", "formula", "routine"]);
    expect(steps[0]).toEqual({ type: "note", text: "cast in" });
    expect(steps[1]).toMatchObject({ formula: breakout, args, value: breakout.value(args) });
    expect(steps[2]).toMatchObject({ given: [{ value: 3 }], found: [{ value: 1.5 }] });
  });

  it("keeps the arguments as they were", () => {
    const { calc, steps } = recordingCalc();
    const changing = { ...args };
    calc(breakout, changing);
    changing.h_ef = 9;
    expect(steps[0]).toMatchObject({ args: { h_ef: 0.2 } });
  });

  it("refuses a second routine under the same id", () => {
    expect(routineById("test.halving")).toBe(halving);
    expect(() => routine({ ...halving })).toThrow(/declared twice/);
  });
});
