/** Source: ASCE 7-22 Figure 27.3-4, notes (more than 50 percent blocked is obstructed), and 26.2 (an open building has each wall at least 80 percent open); shares by hand. */
import { describe, expect, it } from "vitest";
import { actionsOf } from "../../../server/src/actions/index.js";
import { flowAnywhere, flowFrom, neighborShare, panelShare } from "../../../server/src/actions/wind/blocked.js";
import { allEdges, baseOf, foot, fourColumns, recordOf, solved, structureOf, unknownOf } from "../given.js";

const nested = (fields: Readonly<Record<string, Readonly<Record<string, unknown>>>>) => recordOf(Object.fromEntries(Object.entries(fields).map(([name, inner]) => [name, recordOf(inner)])));
const idsOf = (blocked: ReturnType<typeof nested>, more = {}) => solved({ roof: { blocked, ...more } }).columns[0].cases.map(({ loadCase }) => loadCase.id);

describe("the flow of one direction", () => {
  const west = { north: 0, east: 0, south: 0, west: 0.6 };
  it.each([
    ["west", "either"],
    ["east", "either"],
    ["north", "clear"],
    ["south", "clear"],
  ] as const)("with 60 %% of the west edge blocked, wind from the %s: %s", (from, flow) => {
    expect(flowFrom("clear", west, from)).toBe(flow);
    expect(flowFrom("obstructed", west, from)).toBe("obstructed");
  });

  it("half blocked is clear, more is not", () => {
    expect(flowFrom("clear", { ...west, west: 0.5 }, "west")).toBe("clear");
    expect(flowFrom("clear", { ...west, west: 0.51 }, "west")).toBe("either");
    expect(flowAnywhere("clear", { ...west, west: 0.5 })).toBe("clear");
    expect(flowAnywhere("clear", west)).toBe("either");
  });
});

describe("goods below the roof", () => {
  it("that close more than half of an edge bring obstructed flow to the winds across it, beside clear flow", () => {
    const ids = idsOf(nested({ goods: { "west edge": 0.6 } }));
    for (const edge of ["east", "west"]) expect(ids).toEqual(expect.arrayContaining([`wind/${edge}/A/clear`, `wind/${edge}/A/obstructed`]));
    for (const edge of ["north", "south"]) expect(ids).not.toContain(`wind/${edge}/A/obstructed`);
  });

  it("that close half of it change nothing", () => {
    expect(idsOf(nested({ goods: { "west edge": 0.5 } }))).toEqual(solved().columns[0].cases.map(({ loadCase }) => loadCase.id));
  });

  it("take the same pressures as a roof stated as obstructed", () => {
    const goods = solved({ roof: { blocked: nested({ goods: { "south edge": 1 } }) } }).columns;
    const stated = solved({ roof: { "flow below": "obstructed" } }).columns;
    goods.forEach((column, i) => expect(baseOf(column, "wind/north/B/obstructed")).toEqual(baseOf(stated[i], "wind/north/B/obstructed")));
  });

  it("are said among the remarks on the loads", () => {
    const { information } = actionsOf(structureOf({ roof: { blocked: nested({ goods: { "west edge": 0.6 } }) } }));
    expect(information.map(({ message }) => message(String))).toContainEqual(
      "60 % of the opening below the west edge is blocked: wind from the east and west is taken in obstructed flow too, as more than half blocked is no clear flow (ASCE 7-22 Figure 27.3-4).",
    );
  });
});

describe("a building close by", () => {
  it.each([
    // Gap and height in feet before a roof at 12 ft.
    [0.5, 8, 8 / 12],
    [0.5, 20, 1],
    [11.9, 6, 0.5],
    [12, 20, 0],
  ])("%f ft away and %d ft high stands before %f of the opening", (g, h_n, expected) => {
    expect(neighborShare.value({ g: g * foot, h: 12 * foot, h_n: h_n * foot })).toBeCloseTo(expected, 9);
  });

  it("a few inches away and higher than half the roof makes the flow across its edge obstructed", () => {
    const building = (height: number) => nested({ building: { edge: "north", gap: 0.3 * foot, height: height * foot } });
    expect(idsOf(building(8))).toContain("wind/south/B/obstructed");
    expect(idsOf(building(8))).not.toContain("wind/west/B/obstructed");
    expect(idsOf(building(5))).not.toContain("wind/south/B/obstructed");
  });

  it.each([
    [0.5, 36, true],
    [0.5, 11, false],
    [13, 36, false],
  ])("%f ft away and %d ft high is said to lift a roof at 12 ft more than the figures give: %s", (gap, height, isSaid) => {
    const { information } = actionsOf(structureOf({ roof: { "mean height": 12 * foot, blocked: nested({ building: { edge: "north", gap: gap * foot, height: height * foot } }) } }));
    const said = information.map(({ message }) => message((value) => `${Math.round((value / foot) * 10) / 10} ft`)).filter((text) => text.startsWith("A building"));
    expect(said).toEqual(isSaid ? [expect.stringMatching(/^A building 36 ft high stands 0\.5 ft from the north edge\. .*can lift a roof so close by more: hold the uplift .*not covered here/u)] : []);
  });

  it("without a gap has the roof fastened to it: no figure of free roofs, and what to do", () => {
    const fastened = (gap: number) => unknownOf({ roof: { blocked: nested({ building: { edge: "north", gap, height: 20 * foot } }) } });
    expect(fastened(0)).toMatch(/^no gap is left between the roof and the building at its north edge: .*ASCE 7-22 30\.9.*state the reactions$/u);
    expect(fastened(0.1)).toBe("");
  });

  it("without its height is named", () => {
    expect(unknownOf({ roof: { blocked: nested({ building: { edge: "north", gap: 0.1 } }) } })).toBe("the loads need the height of the building close by (blocked, building, height)");
  });
});

describe("walls", () => {
  const closedOf = (given: Parameters<typeof structureOf>[0]) => actionsOf(structureOf(given)).information.map(({ message }) => message(String)).filter((text) => text.startsWith("Walls or panels close"));
  const wallsOf = (shares: Readonly<Record<string, number>>) => nested({ walls: { ...shares, "carried by": "columns" } });

  it.each(allEdges)("less than 80 %% open on the %s make it no open building, whatever flow is stated", (edge) => {
    for (const flow of ["clear", "obstructed", "either"]) {
      const given = { roof: { "flow below": flow, blocked: wallsOf({ [`${edge} edge`]: 1 }) } };
      expect(closedOf(given)).toEqual([expect.stringMatching(new RegExp(`^Walls or panels close 100 % of the ${edge} edge: .*not open.*0\\.55.*0\\.18.*from memory`, "u"))]);
      const ids = solved(given).columns[0].cases.map(({ loadCase }) => loadCase.id);
      for (const from of allEdges) expect(ids).toEqual(expect.arrayContaining([`wind/${from}/A/obstructed`, `wind/${from}/walls/lifting/+0.55`, `wind/${from}/walls/pressing/-0.55`]));
    }
  });

  it("leave a troughed roof without loads, in words", () => {
    const trough = { shape: "troughed", "low edge": undefined, valley: "along x" };
    expect(unknownOf({ roof: { ...trough, blocked: wallsOf({ "east edge": 0.5 }) } })).toMatch(/^walls or panels close 50 % of the east edge: .*troughed.*state the reactions/u);
    expect(unknownOf({ roof: { ...trough, blocked: wallsOf({ "east edge": 0.2 }) } })).toBe("");
  });

  it("80 % open are still open", () => {
    expect(closedOf({ roof: { blocked: wallsOf({ "north edge": 0.2 }) } })).toEqual([]);
    expect(closedOf({ roof: { blocked: wallsOf({ "north edge": 0.21 }) } })).toEqual([expect.stringContaining("21 % of the north edge")]);
  });

  it("count with the panels between columns", () => {
    // 3 ft of 10 ft on 18 ft of 24 ft.
    expect(panelShare.value({ epsilon: 1, s: 3, n: 1, B: 18, H: 10, l: 24 })).toBeCloseTo(0.225, 12);
    const lines = (height: number) => [{ ...fourColumns[0], fields: { ...fourColumns[0].fields, panels: recordOf({ height: height * foot, bottom: 0, solidity: 1 }) } }, fourColumns[1]];
    expect(closedOf({ lines: lines(3) })).toEqual([expect.stringMatching(/close 2[23] % of the south edge/u)]);
    expect(closedOf({ lines: lines(2.6) })).toEqual([]);
    expect(closedOf({ lines: lines(2.6), roof: { blocked: wallsOf({ "south edge": 0.01 }) } })).toEqual([expect.stringContaining("21 % of the south edge")]);
  });

  it("keep the connection at the column top from being held against the edge pressures of an open roof", () => {
    const [column] = solved({ roof: { blocked: wallsOf({ "north edge": 1 }) } }).columns;
    const edges = column.atTop.filter(({ cases }) => cases.some(({ id }) => id.startsWith("wind/edges/")));
    expect(edges.length).toBeGreaterThan(0);
    for (const { beyond } of edges) expect(beyond).toMatch(/^walls or panels close 100 % of the north edge, .*another way/u);
    expect(column.strength.some(({ beyond }) => beyond !== undefined)).toBe(false);
    expect(solved().columns[0].atTop.some(({ beyond }) => beyond !== undefined)).toBe(false);
  });
});

describe("the share of an edge", () => {
  it("adds what different things block, and is no more than all of it", () => {
    const both = nested({ goods: { "west edge": 0.4 }, building: { edge: "west", gap: 0.1, height: 2 * foot } });
    // 0.4 and 2/12.
    expect(idsOf(both)).toContain("wind/west/A/obstructed");
  });
});
