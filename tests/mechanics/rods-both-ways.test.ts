import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rodPattern } from "../../server/src/mechanics/rod-pattern.js";
import { rodsBothWays, solveRodsBothWays } from "../../server/src/mechanics/rods-both-ways.js";

const patternOf = (count: number, x: number, y: number) => {
  const found = rodPattern(count, x, y);
  if ("problem" in found) throw new Error(found.problem);
  return found;
};
const forcesOf = (args: Parameters<typeof solveRodsBothWays>[0]): readonly number[] => {
  const found = solveRodsBothWays(args);
  if ("unstable" in found) throw new Error(found.unstable);
  return found.forces;
};

describe("A plate on its rods alone (P/n and M c over the sum of c²)", () => {
  it("four rods: P/4, and M/(2 s) more on the side the column leans to", () => {
    const rods = patternOf(4, 0.2, 0.3);
    const forces = forcesOf({ rods, P: 40, Mx: 0, My: 8 });
    rods.forEach(({ x }, i) => expect(forces[i]).toBeCloseTo(10 + Math.sign(x) * (8 / 0.4), 9));
  });

  it("holds force and moments in balance", () => {
    const any = fc.double({ min: -100, max: 100, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(4, 6, 8), fc.double({ min: 0.1, max: 1, noNaN: true }), fc.double({ min: 0.1, max: 1, noNaN: true }), any, any, any, (count, sx, sy, P, Mx, My) => {
        const rods = patternOf(count, sx, sy);
        const forces = forcesOf({ rods, P, Mx, My });
        const sum = (arm: (i: number) => number) => forces.reduce((total, force, i) => total + force * arm(i), 0);
        expect(sum(() => 1)).toBeCloseTo(P, 9);
        expect(sum((i) => rods[i].x)).toBeCloseTo(My, 9);
        expect(sum((i) => rods[i].y)).toBeCloseTo(-Mx, 9);
      }),
    );
  });

  it("rods set anywhere, three or more and not in a row, hold force and moments in balance", () => {
    const any = fc.double({ min: -100, max: 100, noNaN: true });
    const spot = fc.record({ x: fc.double({ min: -0.3, max: 0.3, noNaN: true }), y: fc.double({ min: -0.3, max: 0.3, noNaN: true }) });
    fc.assert(
      fc.property(fc.array(spot, { minLength: 3, maxLength: 8 }), any, any, any, (rods, P, Mx, My) => {
        const found = solveRodsBothWays({ rods, P, Mx, My });
        fc.pre(!("unstable" in found));
        const { forces } = found as { forces: readonly number[] };
        const sum = (arm: (i: number) => number) => forces.reduce((total, force, i) => total + force * arm(i), 0);
        const size = 1 + Math.max(...forces.map(Math.abs));
        expect(Math.abs(sum(() => 1) - P) / size).toBeLessThan(1e-6);
        expect(Math.abs(sum((i) => rods[i].x) - My) / size).toBeLessThan(1e-6);
        expect(Math.abs(sum((i) => rods[i].y) + Mx) / size).toBeLessThan(1e-6);
      }),
    );
  });

  it("one rod stands only straight below its load, and a row out of the middle is turned by the load itself", () => {
    expect(forcesOf({ rods: [{ x: 0, y: 0 }], P: 5, Mx: 0, My: 0 })).toEqual([5]);
    expect(solveRodsBothWays({ rods: [{ x: 0, y: 0 }], P: 5, Mx: 0, My: 1 })).toEqual({ unstable: expect.any(String) });
    const row = [{ x: -1, y: 0.1 }, { x: 1, y: 0.1 }];
    expect(solveRodsBothWays({ rods: row, P: 5, Mx: 0, My: 0 })).toEqual({ unstable: expect.stringContaining("one row") });
    expect(forcesOf({ rods: row, P: 10, Mx: -1, My: 0 }).every((force) => Math.abs(force - 5) < 1e-9)).toBe(true);
  });

  it("rods nearer to each other than any length that is built stand as one", () => {
    const rods = [{ x: 0, y: 0 }, { x: 0, y: 0 }, { x: 5e-324, y: 0 }];
    expect(forcesOf({ rods, P: 9, Mx: 0, My: 0 })).toEqual([3, 3, 3]);
    expect(solveRodsBothWays({ rods, P: 9, Mx: 0, My: 1 })).toEqual({ unstable: expect.stringContaining("one row") });
  });

  it("two rods in a row hold no moment about the row, and none hold nothing", () => {
    const pair = [{ x: -1, y: 0 }, { x: 1, y: 0 }];
    expect(solveRodsBothWays({ rods: pair, P: 1, Mx: 1, My: 0 })).toEqual({ unstable: expect.stringContaining("one row") });
    expect(forcesOf({ rods: pair, P: 0, Mx: 0, My: 2 })).toEqual([-1, 1]);
    expect(solveRodsBothWays({ rods: [], P: 1, Mx: 0, My: 0 })).toEqual({ unstable: expect.stringContaining("no rod") });
    expect(solveRodsBothWays({ rods: pair, P: Number.NaN, Mx: 0, My: 0 })).toEqual({ unstable: expect.stringContaining("not a number") });
  });

  it("shows each rod's force", () => {
    const args = { rods: patternOf(4, 1, 1), P: 4, Mx: 0, My: 0 };
    expect(rodsBothWays.show(args, rodsBothWays.run(args)).found.map(({ value }) => value)).toEqual([1, 1, 1, 1]);
    expect(rodsBothWays.show({ ...args, rods: [] }, { unstable: "no" }).found).toEqual([]);
  });
});
