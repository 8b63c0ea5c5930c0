import { describe, expect, it } from "vitest";
import { edgeRows, measureRow, neighborPairs, sideProjection, type EdgeRow } from "../../server/src/mechanics/edge-rows.js";

const member = { west: -10, east: 12, south: -14, north: 16 };
const rods = [{ x: -5, y: -4 }, { x: 5, y: -4 }, { x: 5, y: 4 }, { x: -5, y: 4 }, { x: 0, y: -4 }];

describe("Rods seen from an edge, in rows", () => {
  it.each<[Parameters<typeof edgeRows>[0]["edge"], readonly number[], readonly number[], readonly number[], readonly number[]]>([
    ["west", [5, 10, 15], [-4, 4], [0, 3], [-14, 16]],
    ["east", [7, 12, 17], [-4, 4], [1, 2], [-14, 16]],
    ["south", [10, 18], [-5, 0, 5], [0, 4, 1], [-10, 12]],
    ["north", [12, 20], [-5, 5], [3, 2], [-10, 12]],
  ])("from the %s at %j, the nearest row at %j along the edge", (edge, distances, along, indices, ends) => {
    const rows = edgeRows({ rods, member, edge });
    expect(rows.map(({ distance }) => distance)).toEqual(distances);
    expect(rows[0]).toMatchObject({ along, indices, from: ends[0], to: ends[1] });
  });

  it("measures gaps, extent, ends and the way from the plate's middle", () => {
    const row: EdgeRow = { distance: 3, along: [-4, -1, 6], indices: [0, 1, 2], from: -10, to: 8 };
    expect(measureRow(row)).toEqual({ spacing: 7, extent: 10, leastEnd: 2, mostEnd: 6, offset: expect.closeTo(1 / 3, 12) });
  });

  it("leaves a row of two as it is, and makes two pairs of three rods", () => {
    const row: EdgeRow = { distance: 3, along: [-4, 0, 4], indices: [2, 0, 1], from: -10, to: 8 };
    expect(neighborPairs(row).map(({ along, indices }) => [along, indices])).toEqual([[[-4, 0], [2, 0]], [[0, 4], [0, 1]]]);
    expect(neighborPairs({ ...row, along: [-4, 4] })).toHaveLength(1);
  });
});

describe("Area on the side of a member before a row", () => {
  const row = (along: readonly number[], from = -100, to = 100): EdgeRow => ({ distance: 4, along, indices: [], from, to });
  it.each([
    ["one rod far from all: 12 by 6", row([0]), 6, 100, 72],
    ["in thin concrete: 12 by 4", row([0]), 6, 4, 48],
    ["cut off at one end: 8 by 6", row([0], -2), 6, 100, 48],
    ["two that overlap: 20 by 6", row([-4, 4]), 6, 100, 120],
    ["two apart: twice one", row([-20, 20]), 6, 100, 144],
    ["a narrow and thin member: all of it", row([0], -3, 2), 6, 4, 20],
  ])("%s", (_, given, reach, thickness, area) => expect(sideProjection({ row: given, reach, thickness })).toBeCloseTo(area, 9));
});
