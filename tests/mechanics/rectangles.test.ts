import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anchorProjection, projectedArea, unionArea, type Rectangle } from "../../server/src/mechanics/rectangles.js";

const box = (west: number, south: number, east: number, north: number): Rectangle => ({ west, south, east, north });
const block = box(-10, -10, 10, 10);

describe("union of rectangles", () => {
  it.each<[string, Rectangle[], number]>([
    ["none", [], 0],
    ["one", [box(0, 0, 2, 3)], 6],
    ["two apart", [box(0, 0, 1, 1), box(2, 2, 3, 3)], 2],
    ["two overlapping", [box(0, 0, 2, 2), box(1, 1, 3, 3)], 7],
    ["one inside another", [box(0, 0, 4, 4), box(1, 1, 2, 2)], 16],
    ["a cross", [box(0, 1, 3, 2), box(1, 0, 2, 3)], 5],
    ["the same twice", [box(0, 0, 1, 1), box(0, 0, 1, 1)], 1],
    ["a ring of four", [box(0, 0, 3, 1), box(0, 2, 3, 3), box(0, 0, 1, 3), box(2, 0, 3, 3)], 8],
    ["an empty one", [box(1, 1, 1, 5)], 0],
  ])("of %s", (_, rectangles, area) => {
    expect(unionArea(rectangles)).toBeCloseTo(area, 12);
  });

  const rectangle = fc
    .tuple(fc.integer({ min: -6, max: 5 }), fc.integer({ min: -6, max: 5 }), fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 8 }))
    .map(([west, south, w, h]) => box(west, south, west + w, south + h));

  it("counts the unit cells that any of them covers", () => {
    fc.assert(
      fc.property(fc.array(rectangle, { maxLength: 8 }), rectangle, (rectangles, member) => {
        let cells = 0;
        for (let x = member.west; x < member.east; x++)
          for (let y = member.south; y < member.north; y++) if (rectangles.some((r) => r.west <= x && x < r.east && r.south <= y && y < r.north)) cells++;
        expect(unionArea(rectangles, member)).toBe(cells);
      }),
    );
  });

  it("leaves the rectangles it was given as they were", () => {
    const given = Object.freeze([box(5, 5, 6, 6), box(0, 0, 1, 1)]);
    unionArea(given);
    expect(given[0].west).toBe(5);
  });
});

describe("projected area of anchors", () => {
  const square = (half: number) => [
    { x: -half, y: -half },
    { x: half, y: -half },
    { x: half, y: half },
    { x: -half, y: half },
  ];

  it("is 9 hef² for one anchor far from any edge (ACI 318-19 Eq. 17.6.2.1.4)", () => {
    expect(projectedArea({ anchors: [{ x: 0, y: 0 }], reach: 1.5 * 4, member: block }).area).toBeCloseTo(9 * 16, 12);
  });

  it("is the whole 20 in pier for the four rods of AISC Design Guide 1, 3rd ed., Example 4.7-15", () => {
    expect(projectedArea({ anchors: square(2), reach: 8, member: block }).area).toBeCloseTo(400, 12);
  });

  it("is the rectangle around a 2 by 2 group spaced at most twice the reach", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1, noNaN: true }), (part) => {
        const { area, boundingArea } = projectedArea({ anchors: square(part), reach: 1, member: block });
        expect(area).toBeCloseTo((2 * part + 2) ** 2, 10);
        expect(boundingArea).toBeCloseTo(area, 10);
      }),
    );
  });

  it("falls apart into single squares when the group is spread wider", () => {
    const { area, boundingArea } = projectedArea({ anchors: square(3), reach: 1, member: block });
    expect([area, boundingArea]).toEqual([16, 64]);
  });

  it("is less than the rectangle around a diamond of anchors", () => {
    const anchors = [{ x: 2, y: 0 }, { x: -2, y: 0 }, { x: 0, y: 2 }, { x: 0, y: -2 }];
    // A plus of four squares of side 4 about its arms: 8 by 8 less four corner squares of side 2.
    expect(projectedArea({ anchors, reach: 2, member: block })).toEqual({ area: 48, boundingArea: 64 });
  });

  it("never exceeds the squares, the rectangle around them or the member", () => {
    const place = fc.double({ min: -12, max: 12, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.record({ x: place, y: place }), { maxLength: 6 }), fc.double({ min: 0.1, max: 9, noNaN: true }), (anchors, reach) => {
        const { area, boundingArea } = projectedArea({ anchors, reach, member: block });
        expect(area).toBeLessThanOrEqual(Math.min(anchors.length * 4 * reach ** 2, boundingArea, 400) + 1e-9);
      }),
    );
  });

  it("shows the group, the reach and the area", () => {
    const args = { anchors: square(2), reach: 8, member: block };
    const shown = anchorProjection.show(args, anchorProjection.run(args));
    expect(shown.given.map(({ value }) => value)).toEqual([4, 8, 20, 20]);
    expect(shown.found).toMatchObject([{ kind: "area", value: 400 }]);
  });
});
