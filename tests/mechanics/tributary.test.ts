/** Areas of regular grids by hand; laws of a division of the plan. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { areaWithin, tributaryByZone, tributaryPolygon } from "../../server/src/mechanics/tributary.js";

const whole = { x1: 0, x2: 24, y1: 0, y2: 20 };

describe("tributary areas", () => {
  it.each([
    [0, 12 * 10],
    [3, 12 * 10],
  ])("of column %d of four, 24 by 20: halves between the columns, with the overhang", (of, area) => {
    const columns = [{ x: 3, y: 3 }, { x: 21, y: 3 }, { x: 3, y: 17 }, { x: 21, y: 17 }];
    expect(areaWithin(tributaryPolygon(whole, columns, of), whole)).toBeCloseTo(area, 9);
  });

  it("of the middle column of three in a line, spaced 8 and 10: half of both bays", () => {
    const columns = [{ x: 2, y: 10 }, { x: 10, y: 10 }, { x: 20, y: 10 }];
    expect(areaWithin(tributaryPolygon(whole, columns, 1), whole)).toBeCloseTo(9 * 20, 9);
  });

  it("of a column between the bays of another line are polygons", () => {
    // Two columns on one side, one opposite: the one opposite has the triangle's part beyond the bisectors.
    const columns = [{ x: 6, y: 0 }, { x: 18, y: 0 }, { x: 12, y: 20 }];
    const areas = columns.map((_, of) => areaWithin(tributaryPolygon(whole, columns, of), whole));
    expect(areas[0]).toBeCloseTo(areas[1], 9);
    expect(areas[0] + areas[1] + areas[2]).toBeCloseTo(480, 9);
    // The bisector of (6, 0) and (12, 20) is 6x + 20y = 254, from (0, 12.7) to (12, 9.1): below it 12 (12.7 + 9.1) / 2.
    expect(areas[0]).toBeCloseTo(130.8, 9);
  });

  it("add up to the whole, whatever the places", () => {
    const place = fc.record({ x: fc.double({ min: 0, max: 24, noNaN: true }), y: fc.double({ min: 0, max: 20, noNaN: true }) });
    fc.assert(
      fc.property(fc.uniqueArray(place, { minLength: 1, maxLength: 8, selector: ({ x, y }) => `${x.toFixed(3)} ${y.toFixed(3)}` }), (columns) => {
        const sum = columns.reduce((total, _, of) => total + areaWithin(tributaryPolygon(whole, columns, of), whole), 0);
        expect(sum).toBeCloseTo(480, 5);
      }),
    );
  });

  it("are split by zones", () => {
    const zones = [{ x1: 0, x2: 6, y1: 0, y2: 20, zone: 3 as const }, { x1: 6, x2: 10, y1: 0, y2: 20, zone: 2 as const }, { x1: 10, x2: 24, y1: 0, y2: 20, zone: 1 as const }];
    const areas = tributaryByZone.run({ whole, columns: [{ x: 6, y: 10 }, { x: 18, y: 10 }], of: 0, zones });
    expect(areas).toEqual({ all: expect.closeTo(240, 9), 1: expect.closeTo(40, 9), 2: expect.closeTo(80, 9), 3: expect.closeTo(120, 9) });
  });
});
