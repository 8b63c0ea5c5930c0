import { describe, expect, it } from "vitest";
import { concreteUnitWeight, findBarGrade, findSteel, steelModulus, steelShearModulus, waterUnitWeight } from "../../server/src/catalog/materials.js";
import { compareBond, findRockBond, rockBonds } from "../../server/src/catalog/rock.js";

const psi = 6894.757293168361;
const ksi = 1000 * psi;

describe("materials", () => {
  it("takes steel at 29,000 ksi, which is 200 GPa, and concrete at 150 pcf, which is 23.6 kN/m³", () => {
    expect(steelModulus.value / 1e9).toBeCloseTo(199.95, 2);
    expect(concreteUnitWeight.value / 1000).toBeCloseTo(23.56, 2);
  });

  it("takes steel in shear at 11,200 ksi, which is 77.2 GPa, and water at 62.4 pcf, which is 9.80 kN/m³", () => {
    expect(steelShearModulus.value / 1e9).toBeCloseTo(77.2, 1);
    expect(waterUnitWeight.value / 1000).toBeCloseTo(9.802, 3);
  });

  it.each([
    ["A500 Gr C", 50, 62],
    ["ASTM A500 grade B", 46, 58],
    ["A1085", 50, 65],
    ["A36", 36, 58],
    ["A572-50", 50, 65],
    ["A572 Gr. 50", 50, 65],
  ])("%s yields at %i ksi and breaks at %i ksi", (text, fy, fu) => {
    const steel = findSteel(text);
    if ("problem" in steel) throw new Error(steel.problem);
    expect(steel.fy / ksi).toBeCloseTo(fy, 10);
    expect(steel.fu / ksi).toBeCloseTo(fu, 10);
  });

  it("refuses a steel without its grade and names the grades", () => {
    expect(findSteel("A500")).toEqual({ problem: expect.stringContaining("not a steel"), nearest: ["A500 Gr B", "A500 Gr C"] });
  });

  it.each([
    ["60", 60, 80],
    ["Gr 60", 60, 80],
    ["A615 Gr. 80", 80, 100],
    ["grade 80", 80, 100],
  ])("reads bar grade %s", (text, grade, fu) => {
    const found = findBarGrade(text);
    if ("problem" in found) throw new Error(found.problem);
    expect([found.fy / ksi, found.fu / ksi]).toEqual([expect.closeTo(grade, 10), expect.closeTo(fu, 10)]);
  });

  it("refuses bars of grade 50", () => {
    expect(findBarGrade("50")).toHaveProperty("problem");
  });
});

describe("usual bond of grout to rock, from memory of the PTI table", () => {
  it.each([
    ["granite", 200, "below"],
    ["granite", 300, "within"],
    ["granite", 500, "above"],
    ["soft shale", 30, "within"],
    ["chalk", 156, "above"],
  ])("%s at %i psi is %s its range", (rock, bond, place) => {
    const range = findRockBond(rock);
    if ("problem" in range) throw new Error(range.problem);
    expect(compareBond(range, bond * psi)).toBe(place);
  });

  it.each([
    ["granite", 250, 450],
    ["basalt", 250, 450],
    ["dolomitic limestone", 200, 300],
    ["soft limestone", 150, 200],
    ["slate", 120, 200],
    ["hard shale", 120, 200],
    ["sandstone", 120, 250],
    ["weathered sandstone", 100, 120],
    ["soft shale", 30, 120],
    ["chalk", 30, 155],
    ["weathered marl", 25, 35],
  ])("of %s is from %i to %i psi", (rock, low, high) => {
    expect(findRockBond(rock)).toMatchObject({ low: expect.closeTo(low * psi, 3), high: expect.closeTo(high * psi, 3) });
  });

  it("says of every row that it is from memory and wants a test", () => {
    for (const row of rockBonds) {
      expect(row.source).toMatch(/from memory.*pull test/);
      expect(row.low).toBeLessThan(row.high);
    }
  });

  it("asks which kind is meant where the name covers two", () => {
    expect(findRockBond("limestone")).toHaveProperty("nearest", ["dolomitic limestone", "soft limestone"]);
  });
});
