import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { solveFootingContact } from "../../server/src/mechanics/partial-contact.js";

interface Point {
  readonly x: number;
  readonly y: number;
}

/** The part of a rectangle where the pressure is not below zero, corner by corner. */
function pressed(corners: readonly Point[], q: (at: Point) => number): readonly Point[] {
  return corners.flatMap((a, i) => {
    const b = corners[(i + 1) % corners.length];
    const [qa, qb] = [q(a), q(b)];
    const kept = qa >= 0 ? [a] : [];
    if (qa < 0 === qb < 0) return kept;
    const t = qa / (qa - qb);
    return [...kept, { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) }];
  });
}

/** Force and first moments of a pressure that is linear over a polygon: triangles from its first corner, by the middles of their sides, which is exact to the second degree. */
function sums(polygon: readonly Point[], q: (at: Point) => number): { readonly N: number; readonly x: number; readonly y: number } {
  let [N, x, y] = [0, 0, 0];
  for (let i = 1; i + 1 < polygon.length; i += 1) {
    const [a, b, c] = [polygon[0], polygon[i], polygon[i + 1]];
    const area = Math.abs((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)) / 2;
    for (const [u, v] of [[a, b], [b, c], [c, a]] as const) {
      const middle = { x: (u.x + v.x) / 2, y: (u.y + v.y) / 2 };
      const part = (q(middle) * area) / 3;
      [N, x, y] = [N + part, x + part * middle.x, y + part * middle.y];
    }
  }
  return { N, x, y };
}

describe("Pressure under a rectangular footing", () => {
  it("balances its load within 1e-9, whichever part of the footing is in contact: summed over the polygon pressed", () => {
    const side = fc.double({ min: 0.5, max: 6, noNaN: true });
    const off = fc.oneof(fc.double({ min: -0.49, max: 0.49, noNaN: true }), fc.double({ min: 0.25, max: 0.49, noNaN: true }), fc.double({ min: -0.15, max: -0.05, noNaN: true }));
    const shapes = new Map<number, number>();
    fc.assert(
      fc.property(side, side, off, off, fc.double({ min: 1e3, max: 1e7, noNaN: true }), (B, L, u, v, P) => {
        const found = solveFootingContact({ width: B, length: L, P, Mx: -P * v * L, My: P * u * B });
        if ("unstable" in found) throw new Error(found.unstable);
        const { atCenter, alongX, alongY } = found.plane;
        const q = ({ x, y }: Point): number => atCenter + alongX * x + alongY * y;
        const polygon = pressed([{ x: -B / 2, y: -L / 2 }, { x: B / 2, y: -L / 2 }, { x: B / 2, y: L / 2 }, { x: -B / 2, y: L / 2 }], q);
        shapes.set(polygon.length, (shapes.get(polygon.length) ?? 0) + 1);
        const total = sums(polygon, q);
        expect(Math.abs(total.N / P - 1)).toBeLessThan(1e-9);
        expect(Math.abs(total.x / (P * B) - u)).toBeLessThan(1e-9);
        expect(Math.abs(total.y / (P * L) - v)).toBeLessThan(1e-9);
      }),
      { numRuns: 3000 },
    );
    // Triangles, four and five corners have all been met.
    for (const corners of [3, 4, 5]) expect(shapes.get(corners) ?? 0).toBeGreaterThan(20);
  });
});
