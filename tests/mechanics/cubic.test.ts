import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cubicRoot, positiveCubicRoot } from "../../server/src/mechanics/cubic.js";

describe("positive root of d³ = a d + b", () => {
  it.each([
    [0, 0, 0],
    [0, 27, 3],
    [4, 0, 2],
    [7, 6, 3],
    [1, 6, 2],
    [3, 2, 2],
  ])("for a = %d and b = %d is %d, by inspection", (a, b, d) => {
    expect(positiveCubicRoot({ a, b })).toBeCloseTo(d, 12);
  });

  /**
   * IBC Eq. 18-1, d = 0.5A(1 + sqrt(1 + 4.36 h/A)) with A = 2.34 P/(S1 b) and S1 = p d/3, is the cubic d³ = k d + 1.09 h k with
   * k = 7.02 P/(p b). Depths computed apart from this program by iterating the equation; the first is the sign post of a published
   * forum example, "almost 6.5 ft".
   */
  it.each([
    [480, 5, 1.5, 100, 6.4401],
    [480, 5, 1.5, 200, 4.8769],
    [1200, 10, 2, 150, 8.1123],
    [1200, 10, 2, 300, 6.2173],
    [2500, 12, 2.5, 400, 7.0718],
    [1500, 9, 2, 100, 10.1703],
    [800, 8, 1.8856, 150, 6.7467],
  ])("gives the depth of a post for %d lb at %d ft, %d ft wide, %d psf/ft", (P, h, b, p, depth) => {
    const k = (7.02 * P) / (p * b);
    expect(positiveCubicRoot({ a: k, b: 1.09 * h * k })).toBeCloseTo(depth, 3);
  });

  it("satisfies its equation over thirty powers of ten", () => {
    const term = fc.integer({ min: -150, max: 150 }).map((power) => 10 ** (power / 10));
    fc.assert(
      fc.property(term, term, (a, b) => {
        const d = positiveCubicRoot({ a, b });
        expect(Math.abs(d ** 3 - (a * d + b)) / d ** 3).toBeLessThan(1e-12);
      }),
    );
  });

  it("grows with each term", () => {
    const term = fc.double({ min: 0, max: 1e6, noNaN: true });
    fc.assert(fc.property(term, term, term, (a, b, more) => positiveCubicRoot({ a: a + more, b }) >= positiveCubicRoot({ a, b }) * (1 - 1e-14)));
  });

  it("has no value for negative or broken terms", () => {
    for (const a of [-1, Number.NaN, Number.POSITIVE_INFINITY]) expect(positiveCubicRoot({ a, b: 1 })).toBeNaN();
    expect(positiveCubicRoot({ a: 1, b: -1 })).toBeNaN();
  });

  it("shows its terms and its root", () => {
    const shown = cubicRoot.show({ a: 7, b: 6 }, 3);
    expect([...shown.given, ...shown.found].map(({ symbol, value }) => [symbol, value])).toEqual([["a", 7], ["b", 6], ["d", 3]]);
  });
});
