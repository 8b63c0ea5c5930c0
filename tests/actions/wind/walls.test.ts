/**
 * Source: ASCE 7-22 Figure 27.3-1 (roofs and walls), Table 26.13-1 and Eq. 27.3-1, all from memory; freestanding walls by Figure 29.3-1; numbers by hand. Given: 150 mph, exposure C, q = 49.03 psf,
 * with the directionality factor 41.67 psf.
 */
import { describe, expect, it } from "vitest";
import type { RoofPlane } from "../../../server/src/actions/roof-plane.js";
import { enclosedCases, outerZones, surfacePressure } from "../../../server/src/actions/wind/enclosed.js";
import { leewardSlope, leewardWall, liftingBands, otherClasses, partiallyEnclosed, windwardSlope } from "../../../server/src/actions/wind/enclosed-tables.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { stretchesOf } from "../../../server/src/mechanics/tributary.js";
import { baseOf, foot, fourColumns, pound, recordOf, solved, totalOf } from "../given.js";

const near = (value: number, expected: number, share = 0.002) => expect(Math.abs(value - expected)).toBeLessThanOrEqual(share * Math.abs(expected) + 1e-9);
const q_d = 49.029 * 0.85;
const blocked = (walls: Readonly<Record<string, unknown>>) => recordOf({ walls: recordOf({ "carried by": "columns", ...walls }) });
const northWall = (more = {}) => solved({ roof: { blocked: blocked({ "north edge": 1, ...more }) } });
const roof = (degrees: number, more = {}): RoofPlane => ({ shape: "monoslope", slope: Math.tan((degrees * Math.PI) / 180), length: 24 * foot, width: 20 * foot, lowEdge: "south", meanHeight: 12 * foot, ...more }) as RoofPlane;
const zones = (of: RoofPlane, from: "north" | "south" | "east" | "west", outer: "lifting" | "pressing") => outerZones(of, from, outer, plainCalc).map(({ from: a, to, C_p }) => [a / foot, to / foot, C_p]);
const close = (rows: readonly (readonly number[])[]) => rows.map((row) => row.map((value) => expect.closeTo(value, 9)));

describe("external coefficients of roofs with walls", () => {
  it.each([
    [0.25, [-0.7, -0.5, -0.3, -0.2, -0.2, 0, 0], [-0.18, 0, 0.2, 0.3, 0.3, 0.4, 0.4]],
    [0.5, [-0.9, -0.7, -0.4, -0.3, -0.2, -0.2, 0], [-0.18, -0.18, 0, 0.2, 0.2, 0.3, 0.4]],
    [1, [-1.3, -1, -0.7, -0.5, -0.3, -0.2, 0], [-0.18, -0.18, -0.18, 0, 0.2, 0.2, 0.3]],
  ])("windward slope, h/L of %f", (ratio, lifting, pressing) => {
    const angles = [10, 15, 20, 25, 30, 35, 45];
    expect(angles.map((theta) => windwardSlope("lifting", theta, ratio, plainCalc))).toEqual(lifting);
    expect(angles.map((theta) => windwardSlope("pressing", theta, ratio, plainCalc))).toEqual(pressing);
  });

  it.each([
    [0.2, [-0.3, -0.5, -0.6, -0.6]],
    [0.5, [-0.5, -0.5, -0.6, -0.6]],
    [1.2, [-0.7, -0.6, -0.6, -0.6]],
  ])("leeward slope, h/L of %f", (ratio, expected) => {
    expect([10, 15, 20, 40].map((theta) => leewardSlope(theta, ratio, plainCalc))).toEqual(expected);
  });

  it.each([
    [0.5, [-0.9, -0.9, -0.5, -0.3]],
    [1, [-1.3, -0.7, -0.7, -0.7]],
    [0.75, [-1.1, -0.8, -0.6, -0.5]],
  ])("bands, h/L of %f", (ratio, expected) => {
    liftingBands(ratio, plainCalc).forEach(({ C_p }, i) => expect(C_p).toBeCloseTo(expected[i], 9));
  });

  it.each([[0.5, -0.5], [1, -0.5], [1.5, -0.4], [2, -0.3], [3, -0.25], [4, -0.2], [6, -0.2]])("leeward wall, L/B of %f: %f", (r, expected) => {
    expect(leewardWall(r, plainCalc)).toBeCloseTo(expected, 9);
  });

  // h/L is 12/20.
  it("below 10 degrees go by distance for every wind", () => {
    expect(zones(roof(7.5), "south", "lifting")).toEqual(close([[0, 6, -0.98], [6, 12, -0.86], [12, 20, -0.54]]));
    expect(zones(roof(7.5), "north", "pressing")).toEqual(close([[0, 20, -0.18]]));
  });

  it("of a monoslope roof from 10 degrees on are those of a windward or a leeward slope", () => {
    expect(zones(roof(15), "south", "lifting")).toEqual(close([[0, 20, -0.76]]));
    expect(zones(roof(15), "south", "pressing")).toEqual(close([[0, 20, -0.18]]));
    expect(zones(roof(15), "north", "lifting")).toEqual(close([[0, 20, -0.52]]));
    // Across the slope h/L is 12/24.
    expect(zones(roof(15), "west", "lifting")).toEqual(close([[0, 6, -0.9], [6, 12, -0.9], [12, 24, -0.5]]));
    expect(enclosedCases(roof(15), "north", plainCalc)).toHaveLength(2);
    expect(enclosedCases(roof(15), "south", plainCalc)).toHaveLength(4);
    expect(enclosedCases(roof(7.5), "north", plainCalc)).toHaveLength(4);
  });

  it("of a pitched roof are one for each half", () => {
    const pitched = roof(20, { shape: "pitched", lowEdge: undefined, ridge: "x" });
    expect(zones(pitched, "north", "lifting")).toEqual(close([[0, 10, -0.46], [10, 20, -0.6]]));
    expect(zones(pitched, "north", "pressing")).toEqual(close([[0, 10, -0.036], [10, 20, -0.6]]));
  });
});

describe("a wall that closes the north edge", () => {
  const { actions, columns } = northWall();

  it("lets an internal pressure lift the roof more than obstructed flow does", () => {
    // Per foot of width: 41.67 * (1.383 * 6 + 1.281 * 6 + 1.009 * 8), on 24 ft.
    near(totalOf(actions, "wind/south/walls/lifting/+0.55").P / pound, -q_d * 24.056 * 24);
    near(totalOf(actions, "wind/north/A/obstructed").P / pound, -21254);
    // 0.85 * -0.18 + 0.55 = 0.397 on 480 ft².
    near(totalOf(actions, "wind/south/walls/pressing/-0.55").P / pound, q_d * 0.397 * 480);
  });

  it("lies with the other enclosure classes between both signs", () => {
    const p = (GC_pi: number) => surfacePressure.value({ q_d, C_p: -0.9, GC_pi });
    near(p(0.55), q_d * (0.85 * -0.9 - 0.55));
    for (const GC_pi of [otherClasses, -otherClasses]) {
      expect(p(GC_pi)).toBeGreaterThan(p(partiallyEnclosed));
      expect(p(GC_pi)).toBeLessThan(p(-partiallyEnclosed));
    }
    expect([partiallyEnclosed, otherClasses]).toEqual([0.55, 0.18]);
  });

  // Each north column, 12 ft high, holds 12 ft of it. What the roof itself pushes along y is its lift times tan 7.5, toward the low edge where it lifts.
  const wall = (id: string) => {
    const total = totalOf(actions, id);
    return total.Vy / pound - (total.P / pound) * Math.tan((7.5 * Math.PI) / 180);
  };
  it.each([
    ["leeward, pushed out", "wind/south/walls/lifting/+0.55", 0.85 * 0.5 + 0.55],
    ["leeward, sucked in", "wind/south/walls/lifting/-0.55", 0.85 * 0.5 - 0.55],
    ["windward, pushed in", "wind/north/walls/pressing/-0.55", -(0.85 * 0.8 + 0.55)],
    ["windward, held up from inside", "wind/north/walls/pressing/+0.55", -(0.85 * 0.8 - 0.55)],
    ["beside the wind, pushed out", "wind/west/walls/lifting/+0.55", 0.85 * 0.7 + 0.55],
    ["beside the wind, held in", "wind/west/walls/lifting/-0.55", 0.85 * 0.7 - 0.55],
  ])("is %s", (_, id, expected) => {
    near(wall(id), q_d * expected * 24 * 12, 0.003);
  });

  it("bends the columns next to it, and the far ones by what the roof shares", () => {
    const [south, , north] = columns.map((column) => Math.abs(baseOf(column, "wind/north/walls/pressing/-0.55").Vy));
    expect(north).toBeGreaterThan(2 * south);
  });

  it("of a footing below and the roof above brings half, on the height of the roof's edge; one by itself nothing", () => {
    const id = "wind/north/walls/pressing/-0.55";
    const force = (carriedBy: string) => {
      const total = totalOf(northWall({ "carried by": carriedBy }).actions, id);
      return total.Vy / pound - (total.P / pound) * Math.tan((7.5 * Math.PI) / 180);
    };
    const h_e = 12 + 10 * Math.tan((7.5 * Math.PI) / 180);
    near(force("footing and roof"), (-q_d * 1.23 * 24 * h_e) / 2);
    expect(Math.abs(force("themselves"))).toBeLessThan(1e-6);
  });

  it("stands in the wind of the free-roof cases as a freestanding wall", () => {
    // 24 ft by 13.317 ft from grade: B/s = 1.802, C_f = 1.41; on 24 ft by 12 ft of columns.
    const more = (totalOf(actions, "wind/north/A/obstructed").Vy - totalOf(solved({ roof: { "flow below": "obstructed" } }).actions, "wind/north/A/obstructed").Vy) / pound;
    near(more, -49.029 * 0.7225 * 1.4099 * 24 * 12);
  });
});

describe("walls of an open structure", () => {
  const wind = (id: string, walls: Readonly<Record<string, unknown>>) => (totalOf(solved({ roof: { blocked: blocked(walls) } }).actions, id).Vy - totalOf(solved().actions, id).Vy) / pound;

  it("that close a fifth of an edge have their drag", () => {
    // 4.8 ft by 13.317 ft: B/s = 0.3605, C_f = 1.65 - 0.1 * 0.1605/0.3 = 1.5965; a fifth of 24 ft by 12 ft.
    near(wind("wind/south/A/clear", { "north edge": 0.2 }), 49.029 * 0.7225 * 1.5965 * 0.2 * 24 * 12);
    near(wind("wind/north/A/clear", { "north edge": 0.2 }), -49.029 * 0.7225 * 1.5965 * 0.2 * 24 * 12);
    expect(wind("wind/west/A/clear", { "north edge": 0.2 })).toBeCloseTo(0, 6);
  });

  it("have at least 16 psf", () => {
    near(wind("wind/south/minimum", { "north edge": 0.2 }), 16 * 0.2 * 24 * 12);
    near(wind("wind/south/minimum", { "south edge": 0.1, "north edge": 0.2 }), 16 * (0.2 * 24 * 12 + 0.1 * 24 * 10));
  });

  it("on both sides count both, sheltering nothing", () => {
    const [one, other] = [wind("wind/south/A/clear", { "north edge": 0.1 }), wind("wind/south/A/clear", { "south edge": 0.1 })];
    near(wind("wind/south/A/clear", { "north edge": 0.1, "south edge": 0.1 }), one + other, 1e-9);
  });
});

describe("panels between columns that close more than a fifth", () => {
  const lines = [{ ...fourColumns[0], fields: { ...fourColumns[0].fields, panels: recordOf({ height: 6 * foot, bottom: 0, solidity: 0.8 }) } }, fourColumns[1]];
  it("are walls of their edge: half of each bay to a column", () => {
    const with_ = totalOf(solved({ lines }).actions, "wind/south/walls/pressing/-0.55");
    // 18 ft by 6 ft, 0.8 solid.
    near(with_.Vy / pound - (with_.P / pound) * Math.tan((7.5 * Math.PI) / 180), q_d * 1.23 * 0.8 * 18 * 6);
  });
});

describe("the stretch of an edge next to a column", () => {
  const edge = { from: { x: 0, y: 20 }, to: { x: 24, y: 20 } };
  it.each([
    ["two lines: the far one has none", [[3, 3], [21, 3], [3, 17], [21, 17]], [0, 0, 12, 12]],
    ["three in line", [[2, 10], [10, 10], [22, 10]], [6, 10, 8]],
    ["one column", [[5, 5]], [24]],
  ])("%s", (_, places, expected) => {
    stretchesOf({ ...edge, columns: places.map(([x, y]) => ({ x, y })) }).forEach((length, i) => expect(length).toBeCloseTo(expected[i], 9));
  });
});
