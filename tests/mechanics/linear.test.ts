import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { factor, solve } from "../../server/src/mechanics/linear.js";

describe("linear equations", () => {
  it("solves a system whose first pivot is zero", () => {
    const factored = factor(Float64Array.of(0, 2, 1, 1, 1, 0, 3, 0, 1), 3)!;
    // 2y + z = 7, x + y = 3, 3x + z = 6 gives x = 1, y = 2, z = 3.
    expect([...solve(factored, [7, 3, 6])]).toEqual([expect.closeTo(1, 12), expect.closeTo(2, 12), expect.closeTo(3, 12)]);
  });

  it("returns the vector a random well-conditioned matrix was multiplied by, whatever the scale of its rows", () => {
    const term = fc.double({ min: -1, max: 1, noNaN: true });
    const vector = fc.array(term, { minLength: 5, maxLength: 5 });
    fc.assert(
      fc.property(fc.array(term, { minLength: 25, maxLength: 25 }), vector, fc.array(fc.integer({ min: -8, max: 8 }), { minLength: 5, maxLength: 5 }), (terms, x, powers) => {
        const matrix = Float64Array.from(terms, (t, i) => (t + (i % 6 === 0 ? 6 : 0)) * 10 ** powers[Math.floor(i / 5)]);
        const right = powers.map((_, i) => x.reduce((sum, xj, j) => sum + matrix[i * 5 + j] * xj, 0));
        const found = solve(factor(matrix, 5)!, right);
        for (let i = 0; i < 5; i++) expect(found[i]).toBeCloseTo(x[i], 10);
      }),
    );
  });

  it.each([
    ["a row of zeros", [1, 2, 0, 0]],
    ["two proportional rows", [1, 2, 2, 4]],
    ["a broken number", [1, Number.NaN, 2, 3]],
  ])("refuses a matrix with %s", (_, terms) => {
    expect(factor(Float64Array.from(terms), 2)).toBeUndefined();
  });
});
