import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sameData } from "../../server/src/findings/same-data.js";

describe("Two values of plain data are the same", () => {
  it.each([
    ["numbers that are none", Number.NaN, Number.NaN, true],
    ["records whatever the order of their keys", { a: 1, b: [2, "x"] }, { b: [2, "x"], a: 1 }, true],
    ["lists in another order", [1, 2], [2, 1], false],
    ["a list that is longer", [1, 2], [1, 2, 3], false],
    ["a record with one thing more", { a: 1 }, { a: 1, b: 2 }, false],
    ["a thing not there and a thing that is nothing", { a: undefined }, { b: undefined }, false],
    ["nothing and a record", null, {}, false],
    ["a list and a record with the same keys", [1], { 0: 1, length: 1 }, false],
    ["two functions, whatever they do", () => 1, () => 1, false],
    ["two maps, whatever is in them", new Map([[1, 2]]), new Map([[1, 2]]), false],
  ])("or not: %s", (_, a, b, expected) => {
    expect(sameData(a, b)).toBe(expected);
    expect(sameData(b, a)).toBe(expected);
  });

  it("as their copies", () => {
    fc.assert(fc.property(fc.jsonValue(), (value) => sameData(value, structuredClone(value))));
  });

  it("where they are written alike with their keys in order, and nowhere else", () => {
    const small = fc.jsonValue({ maxDepth: 2, stringUnit: fc.constantFrom("a", "b") }).map(withoutNegativeZero);
    fc.assert(fc.property(small, small, (a, b) => sameData(a, b) === (JSON.stringify(sorted(a)) === JSON.stringify(sorted(b)))));
  });
});

/** JSON writes 0 and -0 alike. */
const withoutNegativeZero = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

const sorted = (value: unknown): unknown =>
  Array.isArray(value)
    ? value.map(sorted)
    : typeof value === "object" && value !== null
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, inner]) => [key, sorted(inner)]))
      : value;
