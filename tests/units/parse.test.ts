import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { kinds, type KindName } from "../../server/src/units/kinds.js";
import { readQuantity, type Misread } from "../../server/src/units/parse.js";
import { readNumber, readYesNo } from "../../server/src/units/plain.js";

/** The SI value of a text that must be read. */
function read(text: string, kind: KindName): number {
  const reading = readQuantity(text, kind);
  if (!reading.ok) throw new Error(`${text}: ${reading.message}`);
  return reading.value;
}

function misread(text: string, kind: KindName): Misread {
  const reading = readQuantity(text, kind);
  if (reading.ok) throw new Error(`${text} was read as ${reading.value}`);
  return reading;
}

// One of each unit in SI. The seven-digit factors are those printed in NIST SP 811 (2008), appendix B.8.
const oneOfEach: readonly [text: string, kind: KindName, si: number, digits: number][] = [
  ["1 in", "length", 0.0254, 12],
  ["1 ft", "length", 0.3048, 12],
  ["1 yd", "distance", 0.9144, 12],
  ["1 lb", "force", 4.448222, 6],
  ["1 kip", "force", 4448.222, 6],
  ["1 psi", "stress", 6894.757, 6],
  ["1 ksi", "steelStress", 6.894757e6, 6],
  ["1 psf", "pressure", 47.88026, 6],
  ["1 lb/ft", "lineLoad", 14.5939, 6],
  ["1 lb/in", "stiffness", 175.1268, 6],
  ["1 lb-ft", "moment", 1.355818, 6],
  ["1 lb-in", "moment", 0.1129848, 6],
  ["1 mph", "speed", 0.44704, 12],
  ["1 km/h", "speed", 0.2777778, 6],
  ["1 in2", "area", 6.4516e-4, 12],
  ["1 ft²", "planArea", 0.09290304, 12],
  ["1 in3", "sectionModulus", 1.638706e-5, 6],
  ["1 ft^3", "volume", 0.02831685, 6],
  ["1 in⁴", "inertia", 4.162314e-7, 6],
  ["1 deg", "angle", 0.01745329, 6],
];

describe("unit factors", () => {
  test.each(oneOfEach)("%s has the factor printed in NIST SP 811", (text, kind, si, digits) => {
    expect(read(text, kind) / si).toBeCloseTo(1, digits - 0.5);
  });

  // Common SI arithmetic and the definitions of the compound names (pcf is pounds-force per cubic foot, and so on).
  test.each<[string, string, KindName]>([
    ["1 ksf", "1000 psf", "pressure"],
    ["1 tsf", "2000 psf", "pressure"],
    ["144 psf", "1 psi", "pressure"],
    ["1 plf", "1 lb/ft", "lineLoad"],
    ["1 klf", "1 kip/ft", "lineLoad"],
    ["1 pcf", "1 psf/ft", "pressurePerDepth"],
    ["1728 pcf", "1 pci", "pressurePerDepth"],
    ["1 k-ft", "12 kip-in", "moment"],
    ["1 N/mm2", "1 MPa", "stress"],
    ["1 kN/m2", "1 kPa", "pressure"],
    ["1 kPa/m", "1 kN/m3", "unitWeight"],
    ["1 MN", "1000 kN", "force"],
    ["1 sq ft", "144 sq in", "area"],
    ["1 cy", "27 cu ft", "volume"],
    ["1 kip-ft/ft", "1 kip-in/in", "momentPerLength"],
    ["180 deg", "3.141592653589793 rad", "angle"],
  ])("%s is %s", (a, b, kind) => {
    expect(read(a, kind) / read(b, kind)).toBeCloseTo(1, 12);
  });
});

describe("what is read", () => {
  test.each<[string, KindName, number]>([
    [`5'-6"`, "distance", 66 * 0.0254],
    [`5' 6 1/2"`, "distance", 66.5 * 0.0254],
    [`5'6"`, "distance", 66 * 0.0254],
    [`5′-6″`, "distance", 66 * 0.0254],
    ["5 ft 6 in", "distance", 66 * 0.0254],
    ["5 ft-6 in", "length", 66 * 0.0254],
    ["5 ft 6-1/2 in", "length", 66.5 * 0.0254],
    [`-5'-6"`, "length", -66 * 0.0254],
    [`9"`, "length", 9 * 0.0254],
    ["1-1/2 in", "length", 1.5 * 0.0254],
    ["1 1/2 in", "length", 1.5 * 0.0254],
    ["3/4 in", "length", 0.75 * 0.0254],
    ["6 in.", "length", 6 * 0.0254],
    [".5 in", "length", 0.5 * 0.0254],
    ["2 in 12", "slope", 2 / 12],
    ["2:12", "slope", 2 / 12],
    ["2/12", "slope", 2 / 12],
    ["2 in/ft", "slope", 2 / 12],
    ["45 deg", "slope", 1],
    ["45°", "slope", 1],
    ["16 %", "slope", 0.16],
    ["16%", "slope", 0.16],
    ["1.4 kPa", "pressure", 1400],
    ["62 m/s", "speed", 62],
    ["5 kN·m", "moment", 5000],
    ["5 kN-m", "moment", 5000],
    ["5 kN*m", "moment", 5000],
    ["5 kN m", "moment", 5000],
    ["-3 kN", "force", -3000],
    ["+3kN", "force", 3000],
    ["30 PSF", "pressure", 30 * 144 ** -1 * 6894.757293168361],
    ["0.7", "ratio", 0.7],
    ["70 %", "ratio", 0.7],
    ["3/4", "number", 0.75],
    ["  4  ", "number", 4],
  ])("%s as %s", (text, kind, si) => {
    expect(read(text, kind) / si).toBeCloseTo(1, 12);
  });
});

describe("what is refused", () => {
  // [text, kind, code, the stretch it is placed on, the first fix]
  test.each<[string, KindName, string, string, string | undefined]>([
    ["30", "pressure", "quantity.no-unit", "30", "30 psf"],
    ["0", "length", "quantity.no-unit", "0", "0 in"],
    ["  12 ", "moment", "quantity.no-unit", "12", "12 kip-ft"],
    ["0.25", "slope", "quantity.no-unit", "0.25", "0.25 in 12"],
    ["5' 6", "length", "quantity.no-unit", "6", "5' 6 in"],
    ["30 ksi", "length", "quantity.wrong-dimension", "30 ksi", undefined],
    ["150 lb", "unitWeight", "quantity.wrong-dimension", "150 lb", "150 pcf"],
    ["2 in 12", "length", "quantity.wrong-dimension", "2 in 12", undefined],
    ["5 %", "length", "quantity.wrong-dimension", "5 %", undefined],
    ["5 deg", "number", "quantity.wrong-dimension", "5 deg", undefined],
    ["4 in", "number", "quantity.wrong-dimension", "4 in", "4"],
    ["1,5 m", "distance", "quantity.comma", "1,5", "1.5 m"],
    ["0,500 m", "distance", "quantity.comma", "0,500", "0.500 m"],
    ["1.234,5 mm", "length", "quantity.comma", "1.234,5", "1234.5 mm"],
    ["1,000 psf", "pressure", "quantity.thousands", "1,000", "1000 psf"],
    ["1,234,567.5 N", "force", "quantity.thousands", "1,234,567.5", "1234567.5 N"],
    ["1'000 psf", "pressure", "quantity.thousands", "1'000", "1000 psf"],
    ["1_000 psf", "pressure", "quantity.underscore", "1_000", "1000 psf"],
    ["\u22125 psf", "pressure", "quantity.minus-sign", "\u2212", "-5 psf"],
    ["5'\u20136\"", "length", "quantity.minus-sign", "\u2013", "5'-6\""],
    ["\uFF15 ft", "length", "quantity.digits", "\uFF15", "5 ft"],
    ["\u0663 ft", "length", "quantity.digits", "\u0663", "3 ft"],
    ["5\u00A0ft", "length", "quantity.space", "\u00A0", "5 ft"],
    ["5\u202Fft", "length", "quantity.space", "\u202F", "5 ft"],
    ["\u200B5 ft", "length", "quantity.invisible", "\u200B", "5 ft"],
    ["5\u2019-6\u201D", "length", "quantity.quote", "\u2019", "5'-6\""],
    ["5\u00BD in", "length", "quantity.fraction-character", "\u00BD", "5-1/2 in"],
    ["1e308 kip", "force", "quantity.not-finite", "1e308 kip", undefined],
    ["1e999 m", "distance", "quantity.not-finite", "1e999 m", undefined],
    ["1e-999 m", "distance", "quantity.not-finite", "1e-999 m", undefined],
    ["1/0 in", "length", "quantity.not-finite", "1/0 in", undefined],
    ["inf", "force", "quantity.not-finite", "inf", undefined],
    ["-.inf", "force", "quantity.not-finite", "-.inf", undefined],
    ["NaN ft", "length", "quantity.not-finite", "NaN ft", undefined],
    ["90 deg", "slope", "quantity.not-finite", "90 deg", undefined],
    ["2400 kg/m3", "unitWeight", "quantity.mass", "kg/m3", "23.54 kN/m³"],
    ["100 kg", "force", "quantity.mass", "kg", "0.9807 kN"],
    ["30 Kpa", "pressure", "quantity.unknown-unit", "Kpa", "30 kPa"],
    ["30 psg", "pressure", "quantity.unknown-unit", "psg", "30 psf"],
    ["4 cubits", "length", "quantity.unknown-unit", "cubits", "4 in"],
    ["30 psf net", "pressure", "quantity.trailing", "net", "30 psf"],
    ["5 m 20 cm", "distance", "quantity.trailing", "20 cm", undefined],
    ["5 - 6 in", "length", "quantity.trailing", "- 6 in", undefined],
    ["4.5' 6\"", "length", "quantity.feet-and-inches", "4.5", undefined],
    ["5' 14\"", "length", "quantity.feet-and-inches", "14", "74 in"],
    ["about 5 ft", "length", "quantity.not-a-number", "about 5 ft", undefined],
    ["", "length", "quantity.empty", "", undefined],
  ])("%j as %s is %s", (text, kind, code, place, fix) => {
    const said = misread(text, kind);
    expect(said.code).toBe(code);
    expect(text.slice(said.at, said.at + said.length)).toBe(place);
    expect(said.fixes[0]?.text).toBe(fix);
  });

  it("says what a value of the wrong dimension is and what was needed", () => {
    expect(misread("30 ksi", "length").message).toBe("30 ksi is a pressure or stress; a length is needed (in, ft or mm).");
  });

  it("offers units of both systems for a bare number", () => {
    expect(misread("30", "pressure").fixes.map((f) => f.text)).toEqual(["30 psf", "30 ksf", "30 kPa"]);
  });
});

describe("laws of reading", () => {
  const kindNames = Object.keys(kinds) as KindName[];
  const anyKind = fc.constantFrom(...kindNames);
  const pieces = fc.constantFrom(
    "5", "6", "1/2", "0", ".", "-", "'", '"', " ", " in", " ft", "ft", "kip", "/", "·", "^2", "²", "psf", ":", "12", "%", "°", "deg", "e3", ",", "_", "½", "\u2212", "kg", "m", "N", "k", "1e308",
  );
  const anyText = fc.oneof(fc.string({ unit: "binary" }), fc.array(pieces, { maxLength: 9 }).map((p) => p.join("")));

  it("never throws, never accepts a number that is not finite, and places every message inside the text", () => {
    fc.assert(
      fc.property(anyText, anyKind, (text, kind) => {
        const reading = readQuantity(text, kind);
        if (reading.ok) return Number.isFinite(reading.value);
        return reading.at >= 0 && reading.length >= 0 && reading.at + reading.length <= text.length && reading.message !== "";
      }),
      { numRuns: 5000 },
    );
  });

  it("offers no unit for a bare number that it would not read", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 89 }), anyKind, (n, kind) => {
        const reading = readQuantity(String(n), kind);
        return reading.ok || (reading.fixes.length > 0 && reading.fixes.every((fix) => readQuantity(fix.text, kind).ok));
      }),
    );
  });

  const spellings: readonly [KindName, string, string, number][] = [
    ["length", "in", "mm", 25.4],
    ["distance", "ft", "m", 0.3048],
    ["force", "kip", "kN", 4.4482216152605],
    ["pressure", "psf", "lb/ft²", 1],
    ["stress", "ksi", "psi", 1000],
    ["moment", "kip-ft", "lb-in", 12000],
    ["unitWeight", "pcf", "lb/ft3", 1],
    ["speed", "mph", "m/s", 0.44704],
    ["inertia", "in4", "cm^4", 2.54 ** 4],
  ];
  it("gives the same value for the same quantity in any unit", () => {
    fc.assert(
      fc.property(fc.constantFrom(...spellings), fc.double({ min: 1e-3, max: 1e6, noNaN: true }), ([kind, a, b, ratio], x) => {
        const [first, second] = [read(`${x} ${a}`, kind), read(`${x * ratio} ${b}`, kind)];
        return Math.abs(first / second - 1) < 1e-12;
      }),
    );
  });
});

describe("plain values", () => {
  test.each([["4", 4], ["-0.5", -0.5], ["1e3", 1000], ["1-1/2", 1.5]])("%s is the number %d", (text, value) => {
    expect(readNumber(text)).toMatchObject({ ok: true, value });
  });
  test.each(["4 in", "1,5", "٣", "", "four", "1_000", "0x10", "Infinity"])("%j is not a number", (text) => {
    expect(readNumber(text).ok).toBe(false);
  });
  test.each([["yes", true], ["No", false], [" true ", true], ["FALSE", false]])("%j is %s", (text, value) => {
    expect(readYesNo(text)).toEqual({ ok: true, value });
  });
  it("asks for yes or no where neither is written", () => {
    expect(readYesNo(" maybe")).toMatchObject({ ok: false, code: "yes-no.unknown", at: 1, length: 5, fixes: [{ text: "yes" }, { text: "no" }] });
  });
});
