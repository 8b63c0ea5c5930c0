import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { barsOnCircle, barsOnRectangle } from "../../server/src/mechanics/bars-around.js";
import { pressureAt, pressureOver, solveOutside, solveOverhang } from "../../server/src/mechanics/footing-section.js";
import { solveFootingContact, type FootingPressure } from "../../server/src/mechanics/partial-contact.js";

const solved = (width: number, length: number, P: number, ex: number, ey: number): FootingPressure => {
  const result = solveFootingContact({ width, length, P, Mx: -P * ey, My: P * ex });
  if ("unstable" in result) throw new Error(result.unstable);
  return result;
};

const side = fc.double({ min: 0.5, max: 6, noNaN: true });
const off = fc.double({ min: -0.46, max: 0.46, noNaN: true });
const load = fc.double({ min: 1e3, max: 1e7, noNaN: true });
const inside = (ex: number, ey: number) => Math.abs(ex) + Math.abs(ey) < 0.75;

describe("pressure over a part of a footing", () => {
  it("over all of it balances the load and its moments to 1e-9, from full contact to a corner", () => {
    fc.assert(
      fc.property(side, side, load, off, off, (B, L, P, ex, ey) => {
        fc.pre(inside(ex, ey));
        const sum = pressureOver(solved(B, L, P, ex * B, ey * L), { west: -B / 2, east: B / 2, south: -L / 2, north: L / 2 });
        expect(Math.abs(sum.force / P - 1)).toBeLessThan(1e-9);
        expect(Math.abs(sum.alongX - P * ex * B)).toBeLessThan(1e-9 * P * B);
        expect(Math.abs(sum.alongY - P * ey * L)).toBeLessThan(1e-9 * P * L);
      }),
      { numRuns: 4000 },
    );
  });

  it("of any four parts adds up to the whole", () => {
    fc.assert(
      fc.property(side, side, off, off, off, off, (B, L, ex, ey, u, v) => {
        fc.pre(inside(ex, ey));
        const pressure = solved(B, L, 1e5, ex * B, ey * L);
        const [x, y] = [u * B, v * L];
        const parts = [
          { west: -B / 2, east: x, south: -L / 2, north: y },
          { west: x, east: B / 2, south: -L / 2, north: y },
          { west: -B / 2, east: x, south: y, north: L / 2 },
          { west: x, east: B / 2, south: y, north: L / 2 },
        ].map((part) => pressureOver(pressure, part).force);
        expect(parts.every((force) => force >= -1e-6)).toBe(true);
        expect(parts.reduce((a, b) => a + b, 0)).toBeCloseTo(1e5, 3);
      }),
      { numRuns: 1000 },
    );
  });

  it("of a corner triangle is that of its pyramid: a third of base times height", () => {
    // Legs 4(B/2 - e) = 0.8 of the side each; peak 6/(16 · 0.2²) of the mean.
    const pressure = solved(2, 2, 1e5, 0.6, 0.6);
    const peak = (6 / (16 * 0.2 ** 2)) * (1e5 / 4);
    expect(pressureAt(pressure, 1, 1) / peak).toBeCloseTo(1, 9);
    expect(pressureAt(pressure, -1, -1)).toBe(0);
    expect(pressureOver(pressure, { west: -1, east: 1, south: -1, north: 1 }).force).toBeCloseTo((1.6 * 1.6) / 2 / 3 * peak, 3);
  });

  it("is that of the plane at every corner", () => {
    const pressure = solved(2, 3, 6e5, 0.2, 0.3);
    expect([pressureAt(pressure, -1, -1.5), pressureAt(pressure, 1, -1.5), pressureAt(pressure, 1, 1.5), pressureAt(pressure, -1, 1.5)]).toEqual([
      pressure.corners.southwest, pressure.corners.southeast, pressure.corners.northeast, pressure.corners.northwest,
    ]);
  });
});

describe("overhangs of a footing", () => {
  it("under even pressure carry (q - w) b c and (q - w) b c²/2", () => {
    const found = solveOverhang({ pressure: solved(3, 2, 6e5, 0, 0), width: 3, length: 2, down: 2e4, across: "x", at: 0.5 });
    for (const i of [0, 1]) {
      expect(found.shear[i] / (8e4 * 2 * 1)).toBeCloseTo(1, 9);
      expect(found.moment[i] / (8e4 * 2 * 0.5)).toBeCloseTo(1, 9);
    }
  });

  it("under a trapezoid carry b c²(2 q1 + q2)/6 less the weight", () => {
    // e = B/12: 1.5 and 0.5 of the mean at the edges; at x = 0.5 of 3 m the pressure is 1 + 0.5 · (1/3) of it.
    const q = 1e5;
    const { moment, shear } = solveOverhang({ pressure: solved(3, 2, q * 6, 0.25, 0), width: 3, length: 2, down: 0, across: "x", at: 0.5 });
    const section = q * (1 + 0.5 / 3);
    expect(moment[1]).toBeCloseTo((2 * 1 * (2 * 1.5 * q + section)) / 6, 3);
    expect(shear[1]).toBeCloseTo((2 * (1.5 * q + section)) / 2, 3);
  });

  it("where all has lifted hang by their weight", () => {
    // e = 0.4 B: contact 0.3 B at the east edge, so that nothing presses west of x = 0.2 B.
    const { shear, moment } = solveOverhang({ pressure: solved(2, 2, 1e5, 0.8, 0), width: 2, length: 2, down: 1e4, across: "x", at: 0.25 });
    expect(shear[0]).toBeCloseTo(-1e4 * 2 * 0.75, 6);
    expect(moment[0]).toBeCloseTo((-1e4 * 2 * 0.75 ** 2) / 2, 6);
  });

  it("turned by 90 degrees carry the same", () => {
    fc.assert(
      fc.property(side, side, off, off, fc.double({ min: 0, max: 0.5, noNaN: true }), (B, L, ex, ey, u) => {
        fc.pre(inside(ex, ey));
        const x = solveOverhang({ pressure: solved(B, L, 1e5, ex * B, ey * L), width: B, length: L, down: 1e3, across: "x", at: u * B });
        // A quarter turn to the left takes east to north and north to west.
        const y = solveOverhang({ pressure: solved(L, B, 1e5, -ey * L, ex * B), width: L, length: B, down: 1e3, across: "y", at: u * B });
        for (const i of [0, 1]) {
          expect(Math.abs(x.shear[i] - y.shear[i])).toBeLessThan(1e-3);
          expect(Math.abs(x.moment[i] - y.moment[i])).toBeLessThan(1e-3);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it("are the whole force when they begin at the middle", () => {
    const { shear } = solveOverhang({ pressure: solved(2, 3, 1e5, 0.5, 0.9), width: 2, length: 3, down: 0, across: "y", at: 0 });
    expect(shear[0] + shear[1]).toBeCloseTo(1e5, 4);
  });

  it("beyond the edge carry nothing", () => {
    expect(solveOverhang({ pressure: solved(2, 2, 1e5, 0, 0), width: 2, length: 2, down: 0, across: "x", at: 1.2 })).toEqual({ shear: [0, 0], moment: [0, 0] });
  });
});

describe("what acts outside a section round the column", () => {
  it("under even pressure is (q - w)(A - A1), without a moment", () => {
    const { force, alongX, alongY } = solveOutside({ pressure: solved(3, 2, 6e5, 0, 0), width: 3, length: 2, down: 1e4, inside: { width: 1, length: 0.5 } });
    expect(force / (9e4 * 5.5)).toBeCloseTo(1, 9);
    expect(Math.abs(alongX) + Math.abs(alongY)).toBeLessThan(1e-3);
  });

  it("of a moment within the kern is M (1 - I1/I), the part of the pressure plane outside", () => {
    const M = 6e5 * 0.2;
    const { alongX } = solveOutside({ pressure: solved(3, 2, 6e5, 0.2, 0), width: 3, length: 2, down: 1e4, inside: { width: 1, length: 0.5 } });
    expect(alongX / (M * (1 - (1 ** 3 * 0.5) / (3 ** 3 * 2)))).toBeCloseTo(1, 9);
  });
});

describe("bars of a pedestal", () => {
  it.each([
    [4, 12, 12, 0, 0],
    [8, 12, 12, 1, 1],
    [6, 18, 12, 1, 0],
    [6, 12, 18, 0, 1],
    [12, 12, 12, 2, 2],
    [10, 30, 10, 3, 0],
  ])("%d on %d by %d have %d between the corners along x and %d along y", (count, x, y, onX, onY) => {
    const places = barsOnRectangle(count, x, y)!;
    expect(places).toHaveLength(count);
    expect(places.filter((p) => p.y === y / 2 && Math.abs(p.x) < x / 2)).toHaveLength(onX);
    expect(places.filter((p) => p.x === x / 2 && Math.abs(p.y) < y / 2)).toHaveLength(onY);
    expect(places.reduce((sum, p) => sum + p.x, 0)).toBeCloseTo(0, 9);
    expect(places.reduce((sum, p) => sum + p.y, 0)).toBeCloseTo(0, 9);
  });

  it("of an odd number or fewer than four have no places on a rectangle", () => {
    expect([2, 3, 5, 7, Number.NaN].map((count) => barsOnRectangle(count, 1, 1))).toEqual([undefined, undefined, undefined, undefined, undefined]);
  });

  it("stand evenly on a circle", () => {
    const places = barsOnCircle(6, 2);
    expect(places.every(({ x, y }) => Math.abs(Math.hypot(x, y) - 1) < 1e-12)).toBe(true);
    expect(Math.hypot(places[1].x - places[0].x, places[1].y - places[0].y)).toBeCloseTo(1, 12);
  });
});
