/** Earthquake on a roof and down to its columns; weights and shares by hand, rules of ASCE 7-16 chapter 12. */
import { describe, expect, it } from "vitest";
import { actionsOf } from "../../../server/src/actions/index.js";
import { baseOf, foot, pound, psf, solved, structureOf, totalOf, unknownOf, type Given } from "../given.js";

const shaken = (category: string, more: Given = {}): Given => ({
  ...more,
  site: {
    "seismic design category": category,
    "short-period acceleration": 0.5,
    "one-second acceleration": 0.3,
    "mapped one-second acceleration": 0.4,
    ...more.site,
  },
  roof: { "earthquake system": "ordinary steel cantilevered columns", ...more.roof },
});

// 10 psf on 480 sq ft and 44 ft of HSS6x6x3/8 at 27.48 lb/ft.
const weight = 4800 + 44 * 27.48;

describe("an earthquake in category B", () => {
  const { actions, columns } = solved(shaken("B"));
  const ids = columns[0].cases.flatMap(({ loadCase }) => (loadCase.id.startsWith("earthquake") ? [loadCase.id] : []));

  it("acts toward each edge by itself, and up and down", () => {
    expect(ids).toEqual(["earthquake/vertical", "earthquake/north", "earthquake/east", "earthquake/south", "earthquake/west"]);
  });

  it.each([
    ["north", 0, 1],
    ["east", 1, 0],
    ["south", 0, -1],
    ["west", -1, 0],
  ])("toward the %s is 0.5 / 1.25 of the weight, with the overstrength of 1.25", (edge, x, y) => {
    const { Vx, Vy, P } = totalOf(actions, `earthquake/${edge}`);
    const expected = 0.4 * 1.25 * weight;
    expect(Math.abs(Vx / pound - x * expected)).toBeLessThan(4);
    expect(Math.abs(Vy / pound - y * expected)).toBeLessThan(4);
    expect(P).toBeCloseTo(0, 6);
  });

  it("reaches the bases whole", () => {
    const sum = columns.reduce((total, column) => total + baseOf(column, "earthquake/east").Vx, 0);
    expect(Math.abs(sum - totalOf(actions, "earthquake/east").Vx) / sum).toBeLessThan(1e-9);
  });

  it("shakes 0.2 SDS of the dead load up and down, columns included", () => {
    const sum = (id: string) => columns.reduce((total, column) => total + baseOf(column, id).P, 0);
    expect(sum("earthquake/vertical") / sum("dead")).toBeCloseTo(0.1, 9);
  });

  it("is combined with dead load up and down", () => {
    const labels = new Set([...columns[0].strength, ...columns[0].allowable].map(({ combination }) => combination.label));
    for (const label of ["1.2D + 1.0Ev + 1.0E", "0.9D - 1.0Ev + 1.0E", "1.0D + 0.7Ev + 0.7E", "0.6D - 0.7Ev + 0.7E"]) expect(labels).toContain(label);
  });
});

describe("an earthquake in categories C to F", () => {
  const { actions, columns } = solved(shaken("D"));
  const ids = columns[0].cases.flatMap(({ loadCase }) => (loadCase.type === "E" ? [loadCase.id] : []));

  it("goes with 30 % across and is moved by 5 % of the plan size", () => {
    expect(ids).toHaveLength(16);
    const north = totalOf(actions, "earthquake/north/east/west");
    expect(north.Vx / north.Vy).toBeCloseTo(0.3, 9);
    expect(Math.abs(north.Vy / pound - 0.4 * 1.3 * weight)).toBeLessThan(4);
  });

  it("turns the roof: 5 % of 24 ft to one side and to the other differ in the columns", () => {
    const west = baseOf(columns[0], "earthquake/north/east/west").Vy;
    const east = baseOf(columns[0], "earthquake/north/east/east").Vy;
    expect(Math.abs(west)).toBeGreaterThan(Math.abs(east) * 1.02);
  });

  it("takes a stated redundancy factor, but no less than the overstrength", () => {
    const one = solved(shaken("D", { roof: { "redundancy factor": 1 } }));
    expect(totalOf(one.actions, "earthquake/north/east/west").Vy / totalOf(actions, "earthquake/north/east/west").Vy).toBeCloseTo(1.25 / 1.3, 9);
  });
});

describe("snow that shakes with the roof", () => {
  // Flat snow of 0.84 pg; open air, partially exposed, risk category II.
  it.each<[string, number, number]>([
    ["ASCE 7-16", 35, 0],
    ["ASCE 7-16", 50, 0.2 * 42],
    ["ASCE 7-22", 50, 0],
    ["ASCE 7-22", 60, 0.15 * 50.4],
  ])("%s, ground snow %f psf: %f psf", (standard, pg, pressure) => {
    const structure = structureOf(shaken("B", { site: { "ground snow": pg * psf } }));
    const actions = actionsOf({ ...structure, codes: { ...structure.codes, loads: { ...structure.codes.loads, value: standard } as never } });
    const plain = totalOf(solved(shaken("B")).actions, "earthquake/east").Vx;
    const added = (totalOf(actions, "earthquake/east").Vx - plain) / pound;
    expect(added).toBeCloseTo(0.5 * pressure * 480, 6);
  });
});

describe("what an earthquake needs", () => {
  it.each<[string, Given, string]>([
    ["the category", { site: { "seismic design category": undefined } }, "the seismic design category of the site"],
    ["the accelerations in category D", { site: { "seismic design category": "D" }, roof: { "earthquake system": "ordinary steel cantilevered columns" } }, "the mapped one-second acceleration of the site, the short-period acceleration of the site and the one-second acceleration of the site"],
    ["the system", shaken("C", { roof: { "earthquake system": undefined } }), "what resists earthquakes (roof, earthquake system)"],
  ])("%s", (_, of, words) => {
    expect(unknownOf(of)).toBe(`the loads need ${words}`);
  });

  it("is not R = 3 on columns that stand up from the ground by themselves", () => {
    expect(unknownOf(shaken("B", { roof: { "earthquake system": "steel not detailed for earthquake" } }))).toMatch(/\(R = 3\), is not for columns that stand up from the ground by themselves/u);
  });

  it("is R = 3 where the column tops are held", () => {
    const lines = [{ name: "south", places: [{ x: 3, y: 3 }, { x: 21, y: 3 }, { x: 3, y: 17 }, { x: 21, y: 17 }], fields: { "top of column": "fixed" } }];
    const { columns } = solved(shaken("B", { lines, roof: { "earthquake system": "steel not detailed for earthquake" } }));
    expect(columns[0].cases.some(({ loadCase }) => loadCase.type === "E")).toBe(true);
  });
});

describe("what is said about an earthquake", () => {
  const said = (of: Given): readonly string[] => actionsOf(structureOf(of)).information.map(({ message }) => message(() => ""));

  it.each<[string, Given, RegExp | undefined]>([
    ["nothing in category A", {}, undefined],
    ["in category B that none is among the loads without accelerations", { site: { "seismic design category": "B" } }, /No earthquake is among the loads/u],
    ["that ordinary columns are not permitted in D", shaken("D"), /not permitted in seismic design category D/u],
    ["that special columns ask for detailing", shaken("D", { roof: { "earthquake system": "special steel cantilevered columns" } }), /R = 2.5 asks for the special detailing/u],
    ["that the roof is too high", shaken("B", { roof: { "mean height": 40 * foot }, lines: undefined }), /permitted to 35 ft/u],
  ])("%s", (_, of, words) => {
    const remarks = said(of);
    if (words) expect(remarks.join("\n")).toMatch(words);
    else expect(remarks).toEqual([]);
  });
});
