import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findSoil, soilClasses, soilNames } from "../../server/src/catalog/soils.js";

const psf = 47.88025898033584;

// IBC Table 1806.2: vertical psf, lateral psf per ft, friction, cohesion psf.
const table: readonly (readonly [number, number, number, number | undefined, number | undefined])[] = [
  [1, 12000, 1200, 0.7, undefined],
  [2, 4000, 400, 0.35, undefined],
  [3, 3000, 200, 0.35, undefined],
  [4, 2000, 150, 0.25, undefined],
  [5, 1500, 100, undefined, 130],
];

describe("presumptive values", () => {
  it.each(table)("class %i has the values of IBC Table 1806.2", (number, vertical, lateral, friction, cohesion) => {
    const row = soilClasses[number - 1];
    expect(row.class).toBe(number);
    expect(row.verticalBearing / psf).toBeCloseTo(vertical, 8);
    expect((row.lateralPerDepth * 0.3048) / psf).toBeCloseTo(lateral, 8);
    expect(row.friction).toBe(friction);
    expect(row.cohesion === undefined ? undefined : row.cohesion / psf).toEqual(cohesion === undefined ? undefined : expect.closeTo(cohesion, 8));
    expect(row.source).toContain("1806.2");
  });
});

describe("finding the class", () => {
  it.each([
    ["crystalline bedrock", 1],
    ["granite", 1],
    ["sound granite bedrock", 1],
    ["sedimentary rock", 2],
    ["foliated rock", 2],
    ["hard shale", 2],
    ["schist", 2],
    ["GW", 3],
    ["gp", 3],
    ["sandy gravel", 3],
    ["Dense, sandy gravel", 3],
    ["SW", 4],
    ["SP", 4],
    ["SM", 4],
    ["SC", 4],
    ["GM", 4],
    ["GC", 4],
    ["SP-SM", 4],
    ["GW-GM", 4],
    ["silty sand (SM)", 4],
    ["medium dense sand", 4],
    ["CL", 5],
    ["ML", 5],
    ["MH", 5],
    ["CH", 5],
    ["CL-ML", 5],
    ["SC-CL", 5],
    ["clay", 5],
    ["stiff silty clay", 5],
    ["sandy silt", 5],
    ["class 4", 4],
    ["2", 2],
  ])("%s is class %i", (text, number) => {
    expect(findSoil(text)).toHaveProperty("soil.class", number);
  });

  it.each([
    ["OL", "organic"],
    ["OH", "organic"],
    ["PT", "organic"],
    ["peat", "organic"],
    ["organic clay", "organic"],
    ["mud", "organic"],
    ["fill", "fill"],
    ["compacted gravel fill", "fill"],
    ["sand over fill", "fill"],
    ["expansive clay", "expansive"],
    ["expansive", "expansive"],
    ["weathered granite", "weathered"],
    ["loess", "collapsible"],
  ])("%s has no presumptive value, and the reason is said", (text, words) => {
    expect(findSoil(text)).toEqual({ blocked: expect.stringContaining(words) });
  });

  it.each([
    ["loose sand", "carry less"],
    ["CH", "expansive"],
    ["soft clay", "carry less"],
  ])("%s is classed with a caution", (text, words) => {
    expect(findSoil(text)).toHaveProperty("note", expect.stringContaining(words));
  });

  it.each([
    ["SX", []],
    ["sandy gravle", ["sandy gravel"]],
    ["rock", ["crystalline bedrock", "sedimentary and foliated rock"]],
    ["till", []],
    ["SM-XX", []],
    ["class 6", []],
  ])("%s is not guessed at", (text, nearest) => {
    const answer = findSoil(text);
    expect(answer).toHaveProperty("problem");
    if ("problem" in answer) expect(answer.nearest).toEqual(expect.arrayContaining(nearest));
  });

  it("finds every name it offers", () => {
    for (const name of soilNames) expect(findSoil(name)).toHaveProperty("soil");
  });

  it("takes the weaker class of any two symbols", () => {
    const symbol = fc.constantFrom("GW", "GP", "SW", "SP", "SM", "SC", "GM", "GC", "CL", "ML", "MH", "CH");
    const classOf = (text: string): number => {
      const answer = findSoil(text);
      return "soil" in answer ? answer.soil.class : Number.NaN;
    };
    fc.assert(fc.property(symbol, symbol, (a, b) => classOf(`${a}-${b}`) === Math.max(classOf(a), classOf(b))));
  });

  it("answers any text without throwing", () => {
    fc.assert(fc.property(fc.string({ unit: "binary" }), (text) => typeof findSoil(text) === "object"));
  });
});
