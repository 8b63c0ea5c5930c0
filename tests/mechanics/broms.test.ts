import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { longInClay, longInSand } from "../../server/src/mechanics/broms.js";
import { degree } from "../checks/ground.js";

describe("A long pier that breaks before the soil gives way", () => {
  // Fundamentals of Foundation Engineering, Example 6.13: D 0.4 m, 33°, 18 kN/m³, fixed head, My 351 kN·m; exact statics.
  it("fixed at its head in sand takes 343.7 kN", () => {
    expect(longInSand({ D: 0.4, e: 0, My: 351e3, isHeadFixed: true }, 18e3, 33 * degree) / 343.7e3).toBeCloseTo(1, 3);
  });

  // Das, Example 11.8: My 240.19 kN·m, 35°, 18 kN/m³, D 0.254 m; the chart gives 152.4 kN, statics 148.65 kN.
  it("free in sand takes 148.65 kN where a chart reads 152.4 kN", () => {
    const Q = longInSand({ D: 0.254, e: 0, My: 240.19e3 }, 18e3, 35 * degree);
    expect(Q / 148.65e3).toBeCloseTo(1, 3);
    expect(Math.abs(Q / 152.4e3 - 1)).toBeLessThan(0.03);
  });

  // H (e + 1.5 D + f/2) = My with f = H/(9 c D): 10 kN·m to the numbers put in.
  it("in clay takes the push that gives its own moment", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 1.5, noNaN: true }), fc.double({ min: 0, max: 10, noNaN: true }), fc.double({ min: 1e3, max: 1e6, noNaN: true }), fc.double({ min: 1e4, max: 2e5, noNaN: true }), fc.boolean(), (D, e, My, c, isHeadFixed) => {
        const H = longInClay({ D, e, My, isHeadFixed }, c);
        const f = H / (9 * c * D);
        expect((H * ((isHeadFixed ? 0 : e) + 1.5 * D + f / 2)) / (isHeadFixed ? 2 * My : My)).toBeCloseTo(1, 9);
      }),
    );
  });

  it("takes less with a push that stands higher, more with a stronger pier", () => {
    const of = (e: number, My: number) => [longInClay({ D: 0.6, e, My }, 50e3), longInSand({ D: 0.6, e, My }, 18e3, 0.55)];
    of(2, 1e5).forEach((H, i) => {
      expect(H).toBeLessThan(of(1, 1e5)[i]);
      expect(H).toBeLessThan(of(2, 2e5)[i]);
    });
  });
});
