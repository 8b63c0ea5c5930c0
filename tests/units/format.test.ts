import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { columnUnit, format, formatBuildable, formatIn, formatParts, unitOf } from "../../server/src/units/format.js";
import { kinds, type KindName, type UnitSystem } from "../../server/src/units/kinds.js";
import { readQuantity } from "../../server/src/units/parse.js";

const kindNames = Object.keys(kinds) as KindName[];

describe("shown values", () => {
  test.each<[string, KindName, UnitSystem, string]>([
    ["18.7 kip", "force", "US", "18.7 kip"],
    ["62 lb", "force", "US", "62 lb"],
    ["-62 lb", "force", "US", "-62 lb"],
    ["100 lb", "force", "US", "0.1 kip"],
    ["50 N", "force", "SI", "50 N"],
    ["0 kip", "force", "US", "0 kip"],
    ["30 psf", "pressure", "US", "30 psf"],
    ["12 ksf", "pressure", "US", "12 ksf"],
    ["30 psf", "pressure", "SI", "1.436 kPa"],
    ["4000 psi", "stress", "US", "4000 psi"],
    ["29000 ksi", "steelStress", "US", "29000 ksi"],
    ["2 in 12", "slope", "US", "2 in 12"],
    ["16 %", "slope", "SI", "16 %"],
    ["30 deg", "angle", "US", "30°"],
    ["10 kip-ft", "moment", "US", "10 kip-ft"],
    ["1.5", "number", "SI", "1.5"],
    ["1-1/3 in", "length", "US", "1.333 in"],
  ])("%s as %s in %s units reads %s", (text, kind, system, shown) => {
    const reading = readQuantity(text, kind);
    expect(reading.ok && format(reading.value, kind, system)).toBe(shown);
  });

  test.each([NaN, Infinity, -Infinity])("%d has no value, in any kind", (value) => {
    for (const kind of kindNames) {
      expect(format(value, kind, "US")).toBe("no value");
      expect(formatBuildable(value, kind, "SI")).toBe("no value");
    }
  });

  it("never shows a negative zero", () => {
    expect(format(-0, "length", "US")).toBe("0 in");
    expect(formatBuildable(-1e-9, "length", "US")).toBe("0 in");
  });

  it("names the unit of a kind", () => {
    expect([unitOf("moment", "US"), unitOf("moment", "SI"), unitOf("number", "US")]).toEqual(["kip-ft", "kN·m", ""]);
    expect(formatParts(4448.2216152605, "force", "US")).toEqual({ number: "1", unit: "kip" });
  });
});

describe("buildable lengths", () => {
  test.each<[string, KindName, UnitSystem, string]>([
    ["54 in", "distance", "US", "4 ft 6 in"],
    ["4 ft", "distance", "US", "4 ft"],
    ["6 in", "distance", "US", "6 in"],
    ["47.99 in", "distance", "US", "4 ft"],
    ["1.5 in", "length", "US", "1-1/2 in"],
    ["0.74 in", "length", "US", "3/4 in"],
    ["36 in", "length", "US", "36 in"],
    ["-5 ft 6-1/2 in", "distance", "US", "-5 ft 6-1/2 in"],
    ["4 ft 6 in", "distance", "SI", "1372 mm"],
    ["2 kip", "force", "US", "2 kip"],
  ])("%s as %s in %s units is built as %s", (text, kind, system, shown) => {
    const reading = readQuantity(text, kind);
    expect(reading.ok && formatBuildable(reading.value, kind, system)).toBe(shown);
  });

  it("is read back to within half a sixteenth", () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), fc.constantFrom("length" as const, "distance" as const), (value, kind) => {
        const back = readQuantity(formatBuildable(value, kind, "US"), kind);
        return back.ok && Math.abs(back.value - value) <= 0.0254 / 32 + 1e-12;
      }),
    );
  });
});

describe("the way there and back", () => {
  it("reads a shown value back to within its digits", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...kindNames.filter((k) => k !== "angle" && k !== "slope")),
        fc.constantFrom("US" as const, "SI" as const),
        fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
        fc.boolean(),
        (kind, system, size, negative) => {
          const value = (negative ? -1 : 1) * size * kinds[kind][system].factor;
          const back = readQuantity(format(value, kind, system), kind);
          return back.ok && Math.abs(back.value / value - 1) <= 0.5 * 10 ** (1 - kinds[kind][system].digits) + 1e-12;
        },
      ),
      { numRuns: 2000 },
    );
  });

  it("shows the same text after reading it back", () => {
    fc.assert(
      fc.property(fc.constantFrom(...kindNames), fc.constantFrom("US" as const, "SI" as const), fc.double({ min: 0.01, max: 1, noNaN: true }), (kind, system, size) => {
        const shown = format(size * kinds[kind][system].factor, kind, system);
        const back = readQuantity(shown, kind);
        return back.ok && format(back.value, kind, system) === shown;
      }),
      { numRuns: 2000 },
    );
  });
});

describe("a column of values", () => {
  const kip = kinds.force.US.factor;
  it.each([
    ["is in kip where its largest is", [0.002, -3, 0.05], "force", "US", ["0.002 kip", "-3 kip", "0.05 kip"]],
    ["is in lb where nothing in it reaches a tenth of a kip", [0.002, -0.062, 0], "force", "US", ["2 lb", "-62 lb", "0 lb"]],
    ["is in the usual unit where all of it is nothing", [0, 0], "force", "US", ["0 kip", "0 kip"]],
    ["passes over what is no number", [NaN, 0.05], "force", "US", ["no value", "50 lb"]],
  ] as const)("%s", (_, values, kind, system, expected) => {
    const unit = columnUnit(values.map((value) => value * kip), kind, system);
    expect(values.map((value) => formatIn(value * kip, unit))).toEqual(expected);
  });

  it("shows its largest as it is shown alone, and all in one unit", () => {
    fc.assert(
      fc.property(fc.constantFrom<KindName>("force", "moment", "pressure", "lineLoad"), fc.constantFrom<UnitSystem>("US", "SI"), fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 6 }), (kind, system, values) => {
        const unit = columnUnit(values, kind, system);
        const largest = values.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most));
        expect(formatIn(largest, unit)).toBe(format(largest, kind, system));
        expect(new Set(values.map((one) => formatIn(one, unit).split(" ")[1])).size).toBe(1);
      }),
    );
  });
});
