/** Source: ASCE 7-22 3.1; weights by hand. HSS6x6x3/8 weighs 27.48 lb/ft (AISC Shapes Database v15.0). */
import { describe, expect, it } from "vitest";
import { baseOf, pound, solved, totalOf } from "./given.js";

describe("dead load", () => {
  const { actions, columns } = solved();

  it("of the roof is its load on plan: 10 psf on 24 ft by 20 ft is 4800 lb, at the middle", () => {
    const { P, Vx, Vy, Mx, My } = totalOf(actions, "dead");
    expect(P / pound).toBeCloseTo(4800, 6);
    expect([Vx, Vy, Mx, My]).toEqual(Array(4).fill(expect.closeTo(0, 6)));
  });

  it.each([
    ["a south column, 10 ft", 0, 10],
    ["a north column, 12 ft", 2, 12],
  ])("brings the weight of %s to its own base only", (_, index, height) => {
    const dead = columns[index].cases.find(({ loadCase }) => loadCase.id === "dead");
    const own = ((dead?.base.P ?? 0) - (dead?.top.P ?? 0)) / pound;
    expect(own).toBeGreaterThan(27.48 * height * 0.995);
    expect(own).toBeLessThan(27.48 * height * 1.005);
  });

  it("reaches the bases whole: roof and four columns", () => {
    const sum = columns.reduce((total, column) => total + baseOf(column, "dead").P, 0) / pound;
    expect(Math.abs(sum - (4800 + 27.48 * 44))).toBeLessThan(6);
  });
});
