import { describe, expect, it, test } from "vitest";
import { dimension, dimensionOf, dimensionOfKind, readUnitPrefix, sameDimension, unitFrom, unitTable } from "../../server/src/units/dimension.js";
import { kinds, type KindName } from "../../server/src/units/kinds.js";
import { likelyUnits } from "../../server/src/units/likely.js";

const kindNames = Object.keys(kinds) as KindName[];

describe("dimensions", () => {
  test.each<[string, [number, number, number]]>([
    ["ft", [0, 1, 0]],
    ["kip", [1, 1, -2]],
    ["kip-ft", [1, 2, -2]],
    ["psi", [1, -1, -2]],
    ["kN/m³", [1, -2, -2]],
    ["psf/ft", [1, -2, -2]],
    ["lbf^0.5/inch^0.5", [0.5, 0, -1]],
    ["m/s", [0, 1, -1]],
    ["deg", [0, 0, 0]],
    ["in/ft", [0, 0, 0]],
  ])("%s has the exponents %j of mass, length, time", (unit, [mass, length, time]) => {
    expect(sameDimension(dimensionOf(unit) ?? dimension(9, 9, 9), dimension(mass, length, time))).toBe(true);
  });

  test.each(["kg", "furlong", "ft//m", "5", "kip-", "d"])("%s is no unit", (text) => {
    expect(dimensionOf(text)).toBeUndefined();
  });

  test.each(kindNames)("the display units of %s have its dimension and its factor", (name) => {
    for (const system of ["US", "SI"] as const) {
      const { unit, factor } = kinds[name][system];
      if (unit === "in 12") continue;
      const read = unitFrom(unit);
      expect(read && sameDimension(read.dimension, dimensionOfKind(name))).toBe(true);
      expect((read?.factor ?? 0) / factor).toBeCloseTo(1, 12);
    }
  });

  test.each(kindNames)("the units offered for %s have its dimension", (name) => {
    for (const unit of likelyUnits[name].filter((u) => u !== "in 12")) expect(sameDimension(dimensionOf(unit) ?? dimension(9, 9, 9), dimensionOfKind(name))).toBe(true);
  });

  it("holds every spelling with a positive factor", () => {
    expect(unitTable.size).toBeGreaterThan(50);
    for (const [, unit] of unitTable) expect(unit.factor).toBeGreaterThan(0);
  });
});

describe("units inside an expression", () => {
  test.each<[string, string | undefined]>([
    ["6 in", "in"],
    ["6 in + 2 ft", "in"],
    ["6 ft-b", "ft"],
    ["6 kip-ft", "kip-ft"],
    ["6 kN·m/m", "kN·m/m"],
    ["6 psf/ft*2", "psf/ft"],
    ["6 in^2", "in^2"],
    ["6 in2", "in2"],
    ["6 in)", "in"],
    ["6 in/2", "in"],
    ["6 m - a", "m"],
    ["6 m * b", "m"],
    ["6 inner", undefined],
    ["6 in_x", undefined],
    ["6 height", undefined],
    ["6 %", "%"],
    ["6 '", "'"],
  ])("in %j the unit after the number is %s", (text, unit) => {
    expect(readUnitPrefix(text, 2)?.text).toBe(unit);
  });

  it("tells where the unit ends and what it is worth", () => {
    const unit = readUnitPrefix("= 6 kip-in + 1", 4);
    expect(unit?.end).toBe(10);
    expect(unit?.factor).toBeCloseTo(112.9848, 4); // NIST SP 811, appendix B.8: 1 lbf·in = 0.1129848 N·m.
  });
});
