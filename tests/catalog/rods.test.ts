import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findRod, findRodGrade, plateHole, plateHoles, rodByDiameter, rodDuctility, rodGrades, rods, type RodGrade } from "../../server/src/catalog/rods.js";

const inch = 0.0254;
const ksi = 6.894757293168361e6;

const grade = (number: 36 | 55 | 105): RodGrade => rodGrades.find((g) => g.grade === number)!;

// Tensile areas as tabulated with the coarse threads of ASME B1.1; head areas as tabulated in handbooks of anchor rods, in².
const tabulated: readonly (readonly [number, number, number, number, number, number, number])[] = [
  // d, gross, tensile, hex, heavy hex, square, heavy square
  [0.5, 0.196, 0.142, 0.291, 0.467, 0.366, 0.569],
  [0.625, 0.307, 0.226, 0.454, 0.671, 0.572, 0.822],
  [0.75, 0.442, 0.334, 0.654, 0.911, 0.824, 1.121],
  [0.875, 0.601, 0.462, 0.891, 1.188, 1.121, 1.465],
  [1, 0.785, 0.606, 1.163, 1.501, 1.465, 1.855],
  [1.125, 0.994, 0.763, 1.472, 1.851, 1.854, 2.291],
  [1.25, 1.227, 0.969, 1.817, 2.237, 2.288, 2.773],
  [1.375, 1.485, 1.155, 2.199, 2.659, 2.769, 3.3],
  [1.5, 1.767, 1.405, 2.617, 3.118, 3.295, 3.873],
  [1.75, 2.405, 1.9, 3.562, 4.144, 4.485, 5.157],
  [2, 3.142, 2.5, 4.653, 5.316, 5.858, 6.624],
];

describe("anchor rods", () => {
  it("cover the sizes from 1/2 to 2 in", () => {
    expect(rods.map((rod) => rod.diameter / inch)).toEqual(tabulated.map(([d]) => expect.closeTo(d, 12)));
  });

  it.each(tabulated)("%f in has its tabulated areas", (d, gross, tensile, hex, heavyHex, square, heavySquare) => {
    const rod = rodByDiameter(d * inch)!;
    const found = [rod.grossArea, rod.tensileArea, rod.headBearingArea.hex, rod.headBearingArea["heavy hex"], rod.headBearingArea.square, rod.headBearingArea["heavy square"]];
    // Half of the last printed digit, and one digit for a head area on the half, which the table rounds either way.
    for (const [i, published] of [gross, tensile, hex, heavyHex, square, heavySquare].entries()) {
      expect(Math.abs(found[i] / inch ** 2 - published)).toBeLessThan(i !== 1 ? 0.001 : d >= 1.75 ? 0.0051 : 0.00051);
    }
  });

  it("has 969 mm² under the heavy hex head of a 1 in rod, as a published metric memo on ACI 318 anchors uses", () => {
    expect(rodByDiameter(inch)!.headBearingArea["heavy hex"] * 1e6).toBeCloseTo(969, -0.5);
  });

  it.each([
    ["3/4 in", "3/4 in"],
    ["3/4", "3/4 in"],
    ['1-1/4"', "1-1/4 in"],
    ["1 1/4 in", "1-1/4 in"],
    ["0.875 in", "7/8 in"],
    ["dia 1 in", "1 in"],
    ["2 in rods", "2 in"],
  ])("reads %s as %s", (text, name) => {
    expect(findRod(text)).toHaveProperty("name", name);
  });

  it.each([
    ["13/16 in", "13/16 in is not a rod size", ["3/4 in", "7/8 in"]],
    ["3 in", "3 in is not a rod size", ["2 in", "1-3/4 in"]],
    ["M20", "is not a rod size", []],
  ])("refuses %s with the nearest sizes", (text, words, nearest) => {
    const answer = findRod(text);
    expect(answer).toHaveProperty("problem", expect.stringContaining(words));
    if ("problem" in answer) expect([...answer.nearest].sort()).toEqual([...nearest].sort());
  });

  it("answers any text without throwing", () => {
    fc.assert(fc.property(fc.string({ unit: "binary" }), (text) => typeof findRod(text) === "object" && typeof findRodGrade(text) === "object"));
  });
});

describe("grades of ASTM F1554", () => {
  it.each([
    [36, 36, 58],
    [55, 55, 75],
    [105, 105, 125],
  ] as const)("grade %i yields at %i ksi and breaks at no less than %i ksi", (number, fya, futa) => {
    expect(grade(number).fya / ksi).toBeCloseTo(fya, 10);
    expect(grade(number).futa / ksi).toBeCloseTo(futa, 10);
  });

  // ASTM F1554: least full-size strength of 1/2 in rods, tensile and yield, lb.
  it.each([
    [36, 8200, 5100],
    [55, 10600, 7800],
    [105, 17700, 14900],
  ] as const)("grade %i in 1/2 in carries the full-size loads of the standard", (number, tensile, yields) => {
    const area = rodByDiameter(inch / 2)!.tensileArea;
    const lb = 4.4482216152605;
    expect(Math.abs((grade(number).futa * area) / lb / tensile - 1)).toBeLessThan(0.01);
    expect(Math.abs((grade(number).fya * area) / lb / yields - 1)).toBeLessThan(0.01);
  });

  it.each([
    [36, 4, true],
    [55, 2, true],
    [55, 2.25, false],
    [55, 3, false],
    [105, 3, true],
    [105, 3.25, false],
  ] as const)("grade %i at %f in is ductile: %s", (number, size, ductile) => {
    const answer = rodDuctility(grade(number), size * inch);
    expect(answer.ductile).toBe(ductile);
    expect(answer.because.length).toBeGreaterThan(10);
  });

  it.each(["F1554 Gr 55", "f1554 grade 55", "ASTM F1554, Gr. 55", "Gr 55", "grade 55", "55"])("reads %s", (text) => {
    expect(findRodGrade(text)).toHaveProperty("grade", 55);
  });

  it("refuses a grade that is not made and names those that are", () => {
    expect(findRodGrade("F1554 Gr 50")).toEqual({ problem: expect.stringContaining("not a rod grade"), nearest: ["F1554 Gr 36", "F1554 Gr 55", "F1554 Gr 105"] });
  });
});

describe("holes in base plates", () => {
  // AISC Design Guide 1, 2nd ed. (2006), Table 2.3.
  it.each([
    [0.75, 1.3125, 2, 0.25],
    [0.875, 1.5625, 2.5, 0.3125],
    [1, 1.8125, 3, 0.375],
    [1.25, 2.0625, 3, 0.5],
    [1.5, 2.3125, 3.5, 0.5],
    [1.75, 2.75, 4, 0.625],
    [2, 3.25, 5, 0.75],
  ])("a %f in rod has a %f in hole and a %f in washer, %f in thick", (rod, hole, width, thickness) => {
    const row = plateHole(rod * inch)!;
    expect([row.hole / inch, (row.washer?.width ?? 0) / inch, (row.washer?.thickness ?? 0) / inch]).toEqual([hole, width, thickness].map((v) => expect.closeTo(v, 10)));
    expect(row.source).toContain("Design Guide 1");
  });

  it("says where a hole is from memory, and has none where its sources have none", () => {
    expect(plateHole(inch / 2)?.source).toContain("from memory");
    expect(plateHole(1.125 * inch)).toBeUndefined();
  });

  it("is covered by its washer and clears its rod in every row", () => {
    for (const row of plateHoles) {
      expect(row.hole).toBeGreaterThan(row.rodDiameter);
      if (row.washer) expect(row.washer.width).toBeGreaterThan(row.hole);
    }
  });
});
