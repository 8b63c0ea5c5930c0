/** Statics by hand. */
import { describe, expect, it } from "vitest";
import { isAbove, isBelow } from "../../server/src/mechanics/compare.js";
import { resultantOf, roofResultant, superpose, superposition } from "../../server/src/mechanics/superposition.js";

const forces = (k: number) => ({ P: k, Vx: 2 * k, Vy: -3 * k, Mx: 4 * k, My: -5 * k });

describe("superposition", () => {
  it("adds factor times force, part by part", () => {
    expect(superpose([{ factor: 2, forces: forces(1) }, { factor: -1, forces: forces(10) }])).toEqual({ P: -8, Vx: -16, Vy: 24, Mx: -32, My: 40 });
  });

  it("of nothing is nothing", () => {
    expect(superpose([])).toEqual({ P: 0, Vx: 0, Vy: 0, Mx: 0, My: 0 });
  });

  it("shows the factors and the sum", () => {
    const parts = [{ factor: 0.9, forces: forces(10) }];
    const { given, found } = superposition.show(parts, superposition.run(parts));
    expect(given.find(({ symbol }) => symbol === "f_1")?.value).toBe(0.9);
    expect(found.find(({ symbol }) => symbol === "P")?.value).toBe(9);
  });
});

describe("resultant about a point", () => {
  const about = { x: 1, y: 2, z: 3 };
  it.each([
    ["a lift east of it turns about -y", { x: 4, y: 2, z: 3, Fx: 0, Fy: 0, Fz: 10 }, { P: -10, Mx: 0, My: -30 }],
    ["a lift north of it turns about +x", { x: 1, y: 6, z: 3, Fx: 0, Fy: 0, Fz: 10 }, { P: -10, Mx: 40, My: 0 }],
    ["a push east above it turns about +y", { x: 1, y: 2, z: 5, Fx: 10, Fy: 0, Fz: 0 }, { Vx: 10, Mx: 0, My: 20 }],
    ["a push north above it turns about -x", { x: 1, y: 2, z: 5, Fx: 0, Fy: 10, Fz: 0 }, { Vy: 10, Mx: -20, My: 0 }],
  ])("%s", (_, load, expected) => {
    const sum = resultantOf({ loads: [load], about });
    for (const [part, value] of Object.entries(expected)) expect(sum[part as "P"]).toBeCloseTo(value, 12);
    expect(roofResultant.show({ loads: [load], about }, sum).found.find(({ symbol }) => symbol === "P")?.value).toBe(sum.P);
  });
});

describe("comparison that rounding does not decide", () => {
  it.each([
    [(11 * 0.3048) / (44 * 0.3048), 0.25, false, false],
    [0.25 - 1e-12, 0.25, false, false],
    [0.2499, 0.25, true, false],
    [0.2501, 0.25, false, true],
    [-2, -1, true, false],
  ])("%f against %f", (a, b, below, above) => {
    expect([isBelow(a, b), isAbove(a, b)]).toEqual([below, above]);
  });
});
