/** Statics of simple spans with overhangs, worked by hand; and the law that what is split is the whole. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RoofColumn, RoofLoad } from "../../server/src/mechanics/rigid-roof.js";
import { roofSpans, splitBySpans } from "../../server/src/mechanics/roof-spans.js";

const column = (x: number, y: number): RoofColumn => ({ x, y, base: 0, height: 3, E: 2e11, area: 3e-3, Ix: 1e-5, Iy: 1e-5, top: "pinned" });

/** 1 N/m² on a rectangle. */
const even = (x1: number, x2: number, y1: number, y2: number): RoofLoad => {
  const area = (x2 - x1) * (y2 - y1);
  return { x: (x1 + x2) / 2, y: (y1 + y2) / 2, z: 3, Fx: 0, Fy: 0, Fz: -area, over: { x1, x2, y1, y2 } };
};

const split = (columns: readonly RoofColumn[], loads: readonly RoofLoad[]) => {
  const spans = roofSpans(columns);
  if (!spans) throw new Error("the columns stand in no lines");
  return splitBySpans(spans, loads);
};

describe("A roof on spans between its columns", () => {
  it("brings twice as much to the middle columns of a line without overhangs as to its ends", () => {
    const columns = [0, 12].flatMap((y) => [0, 10, 20, 30].map((x) => column(x, y)));
    const { presses } = split(columns, [even(0, 30, 0, 12)]);
    [30, 60, 60, 30, 30, 60, 60, 30].forEach((expected, i) => expect(presses[i]).toBeCloseTo(expected, 9));
  });

  it("brings an overhang to the end column by its lever", () => {
    // 26 m roof, columns at 1, 13 and 25 m: ends 1 + 6 + 1 × 0.5 / 12, middle the rest of 26; half of a width of 16 m to each line.
    const columns = [2, 14].flatMap((y) => [1, 13, 25].map((x) => column(x, y)));
    const { presses } = split(columns, [even(0, 26, 0, 16)]);
    const end = 8 * (7 + 0.5 / 12);
    const middle = 8 * 26 - 2 * end;
    [end, middle, end, end, middle, end].forEach((expected, i) => expect(presses[i]).toBeCloseTo(expected, 9));
  });

  it("brings a load off one line of columns down along the line, and its turning to the plate", () => {
    const columns = [0, 10, 20].map((x) => column(x, 5));
    const { presses, left } = split(columns, [{ x: 10, y: 8, z: 3, Fx: 0, Fy: 7, Fz: -100 }]);
    expect(presses).toEqual([0, 100, 0]);
    // Moment about the line, 100 N down 3 m to its north.
    expect(left.reduce((sum, { y, Fz }) => sum + (y - 5) * Fz, 0)).toBeCloseTo(-300, 9);
    expect(left.reduce((sum, { Fz }) => sum + Fz, 0)).toBeCloseTo(0, 9);
    expect(left.reduce((sum, { Fy }) => sum + Fy, 0)).toBe(7);
  });

  it("brings to a column in the middle of four what lies nearest to it", () => {
    // 16 m square, columns at its corners and its middle: half of the square is nearest to the middle, an eighth to each corner.
    const columns = [[0, 0], [16, 0], [8, 8], [0, 16], [16, 16]].map(([x, y]) => column(x, y));
    const { presses } = split(columns, [even(0, 16, 0, 16)]);
    [32, 32, 128, 32, 32].forEach((expected, i) => expect(presses[i]).toBeCloseTo(expected, 9));
  });

  it("leaves to statics what one, two or three columns take", () => {
    expect(roofSpans([column(0, 0), column(5, 3), column(9, 8)])).toBeUndefined();
    expect(roofSpans([column(0, 0), column(8, 0)])).toBeUndefined();
  });

  it.each([
    ["a little off their lines", 0.1],
    ["in no lines", 1.5],
  ])("splits loads without losing any of their force or moment, columns %s", (_, most) => {
    const off = fc.double({ min: -most, max: most, noNaN: true });
    const columns = fc.array(off, { minLength: 12, maxLength: 12 }).map((by) => [0, 6].flatMap((y, j) => [0, 7, 15].map((x, i) => column(x + by[2 * (3 * j + i)], y + by[2 * (3 * j + i) + 1]))));
    const load = fc.record({ x: fc.double({ min: -2, max: 17, noNaN: true }), y: fc.double({ min: -2, max: 8, noNaN: true }), F: fc.double({ min: -1e4, max: 1e4, noNaN: true }) });
    fc.assert(
      fc.property(columns, fc.array(load, { minLength: 1, maxLength: 5 }), (at, of) => {
        const loads = of.map(({ x, y, F }): RoofLoad => ({ x, y, z: 3, Fx: F / 2, Fy: F / 3, Fz: F }));
        const { presses, left } = split(at, loads);
        const whole = (all: readonly RoofLoad[]) => [(l: RoofLoad) => l.Fz, (l: RoofLoad) => l.Fz * l.x, (l: RoofLoad) => l.Fz * l.y, (l: RoofLoad) => l.Fx, (l: RoofLoad) => l.Fy].map((of) => all.reduce((sum, l) => sum + of(l), 0));
        const down = presses.map((P, i): RoofLoad => ({ x: at[i].x, y: at[i].y, z: 3, Fx: 0, Fy: 0, Fz: -P }));
        const [before, after] = [whole(loads), whole([...left, ...down])];
        before.forEach((value, i) => expect(Math.abs(after[i] - value)).toBeLessThan(1e-6));
      }),
    );
  });
});
