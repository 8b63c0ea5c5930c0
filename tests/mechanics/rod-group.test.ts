import { describe, expect, it } from "vitest";
import { findRodGroup } from "../../server/src/mechanics/rod-group.js";
import { rodCircle, rodPattern } from "../../server/src/mechanics/rod-pattern.js";
import { wallRun } from "../../server/src/mechanics/wall-run.js";

const member = { west: -10, east: 12, south: -14, north: 16 };

describe("Places of rods on a rectangle", () => {
  it.each<[string, number, number | undefined, number | undefined, readonly (readonly [number, number])[]]>([
    ["one in the middle", 1, undefined, undefined, [[0, 0]]],
    ["two along x", 2, 6, undefined, [[-3, 0], [3, 0]]],
    ["two along y", 2, undefined, 6, [[0, -3], [0, 3]]],
    ["four at the corners", 4, 6, 8, [[-3, -4], [3, -4], [3, 4], [-3, 4]]],
    ["six with the middles of the sides along y, the longer", 6, 6, 8, [[-3, -4], [3, -4], [3, 4], [-3, 4], [-3, 0], [3, 0]]],
    ["six with the middles of the sides along x, the longer", 6, 8, 6, [[-4, -3], [4, -3], [4, 3], [-4, 3], [0, -3], [0, 3]]],
    ["eight with all middles", 8, 6, 8, [[-3, -4], [3, -4], [3, 4], [-3, 4], [0, -4], [0, 4], [-3, 0], [3, 0]]],
  ])("%s", (_, count, x, y, places) => {
    expect(rodPattern(count, x, y)).toEqual(places.map(([px, py]) => ({ x: px === 0 ? expect.closeTo(0, 12) : px, y: py === 0 ? expect.closeTo(0, 12) : py })));
  });

  it.each([
    [5, 6, 6],
    [16, 6, 6],
    [2, undefined, undefined],
    [4, 6, undefined],
  ])("%i rods with spacings %s and %s are a problem in words", (count, x, y) => {
    expect(rodPattern(count, x, y)).toHaveProperty("problem");
  });
});

describe("Places of rods on a bolt circle", () => {
  it("are a square along the axes for four rods on a circle of its diagonal", () => {
    const square = rodPattern(4, 10, 10) as readonly { x: number; y: number }[];
    const circle = rodCircle(4, 10 * Math.sqrt(2)) as readonly { x: number; y: number }[];
    for (const { x, y } of square) expect(circle.some((at) => Math.hypot(at.x - x, at.y - y) < 1e-12)).toBe(true);
  });

  it.each([3, 5, 6, 8, 12, 16])("%i rods stand evenly spaced on it, about its middle, the first half a step north of east", (count) => {
    const places = rodCircle(count, 2) as readonly { x: number; y: number }[];
    expect(places).toHaveLength(count);
    expect(Math.atan2(places[0].y, places[0].x)).toBeCloseTo(Math.PI / count, 12);
    for (const [i, { x, y }] of places.entries()) {
      expect(Math.hypot(x, y)).toBeCloseTo(1, 12);
      const next = places[(i + 1) % count];
      expect(Math.hypot(next.x - x, next.y - y)).toBeCloseTo(2 * Math.sin(Math.PI / count), 12);
    }
    expect(places.reduce((sum, { x }) => sum + x, 0)).toBeCloseTo(0, 12);
    expect(places.reduce((sum, { y }) => sum + y, 0)).toBeCloseTo(0, 12);
  });

  it.each([
    [1, 5],
    [2, 5],
    [4, 0],
    [4, Number.NaN],
  ])("%i rods on a circle of %d are a problem in words", (count, diameter) => expect(rodCircle(count, diameter)).toHaveProperty("problem"));
});

describe("The rods that pull, as a group (statics)", () => {
  const rods = [{ x: -5, y: -5 }, { x: 5, y: -5 }, { x: 5, y: 5 }, { x: -5, y: 5 }];

  it("takes all rods, concentric, where none pulls", () => {
    expect(findRodGroup({ rods, tensions: [0, 0, 0, 0], member })).toMatchObject({ isPulled: false, total: 0, eccentricityX: 0, eccentricityY: 0, spacing: 10, leastEdge: 5 });
  });

  it("leaves out rods that do not pull, and measures eccentricity from the middle of those that do", () => {
    const found = findRodGroup({ rods, tensions: [0, 3, 1, 0], member });
    expect(found).toMatchObject({ isPulled: true, total: 4, greatest: 3, pattern: 6, spacing: 10, edges: [15, 7, 9, 11], leastEdge: 7 });
    expect(found.eccentricityX).toBeCloseTo(0, 12);
    expect(found.eccentricityY).toBeCloseTo(2.5, 12);
  });

  it("takes the spacing of neighboring rows, not out to out", () => {
    expect(findRodGroup({ rods: [...rods, { x: 0, y: -5 }, { x: 0, y: 5 }, { x: -5, y: 0 }, { x: 5, y: 0 }], tensions: Array(8).fill(1), member }).spacing).toBe(5);
  });
});

describe("How a wall runs under its posts", () => {
  it.each([
    ["along x, first of three", [{ x: 0, y: 0 }, { x: 5, y: 0 }, { x: 10, y: 0 }], 0, 14, { axis: "x", before: 2, after: 12 }],
    ["along y, last of two, written from north to south", [{ x: 0, y: 8 }, { x: 0, y: 0 }], 1, 10, { axis: "y", before: 1, after: 9 }],
    ["a single post: along x, centered", [{ x: 3, y: 3 }], 0, 10, { axis: "x", before: 5, after: 5 }],
    ["too short", [{ x: 0, y: 0 }, { x: 10, y: 0 }], 0, 8, { axis: "x", before: -1, after: 9 }],
  ])("%s", (_, places, place, length, expected) => expect(wallRun(places, place, length)).toEqual(expected));

  it("has no answer for a line askew", () => expect(wallRun([{ x: 0, y: 0 }, { x: 3, y: 4 }], 0, 10)).toBeUndefined());
});
