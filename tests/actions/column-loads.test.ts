/** Source: propped cantilever under a uniform load, 3/8 and 1/8, and under one next to the fixed end, w a³ (4l - a)/8l³ (AISC Manual Table 3-22, from memory); statics. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { forcesOfColumnLoads, propsBack, propsOnRoof, withColumnLoads, type ColumnLoad } from "../../server/src/actions/column-loads.js";
import { plainCalc } from "../../server/src/formula/calc.js";
import type { RoofColumn } from "../../server/src/mechanics/rigid-roof.js";

const column: RoofColumn = { x: 2, y: 3, base: 0.5, height: 4, E: 2e11, area: 1e-3, Ix: 1e-5, Iy: 1e-5, top: "pinned" };
const load = (more: Partial<ColumnLoad> = {}): ColumnLoad => ({ at: 0, wx: 100, wy: 0, from: 0, to: 4, holds: { x: true, y: true }, ...more });
const none = { P: 0, Vx: 0, Vy: 0, Mx: 0, My: 0 };
const reactionOf = (of: ColumnLoad) => withColumnLoads([{ top: none, base: none }], [column], [of], plainCalc)[0];

describe("a column propped by the roof", () => {
  it.each([
    ["under a load along all of it", {}, (3 / 8) * 400],
    ["under one along its lower half", { to: 2 }, (100 * 2 ** 3 * (16 - 2)) / (8 * 4 ** 3)],
    ["under one along its upper half", { from: 2 }, (3 / 8) * 400 - (100 * 2 ** 3 * (16 - 2)) / (8 * 4 ** 3)],
    ["pinned at its base", { holds: { x: false, y: true } }, 200],
    ["pinned at its base, lower half", { to: 2, holds: { x: false, y: true } }, 50],
  ])("%s hands its share to the roof", (_, more, expected) => {
    const [prop] = propsOnRoof([column], [load(more)], plainCalc);
    expect(prop).toMatchObject({ x: 2, y: 3, z: 4.5, Fx: expect.closeTo(expected, 9), Fy: 0, Fz: 0 });
  });

  it("has 1/8 of w h² at a fixed base and nothing at a pinned one", () => {
    expect(reactionOf(load()).base.My).toBeCloseTo(100 * 16 * (1 / 8), 9);
    expect(reactionOf(load({ holds: { x: false, y: false } })).base.My).toBeCloseTo(0, 9);
  });

  it("pushed to the north has a negative moment about the east axis", () => {
    const { top, base } = reactionOf(load({ wx: 0, wy: 100 }));
    expect([top.Vy, base.Vy, base.Mx]).toEqual([-150, 250, -200].map((value) => expect.closeTo(value, 9)));
    expect([top.Vx, base.Vx, base.My]).toEqual([0, 0, 0]);
  });

  it("is in balance with the load, wherever that is", () => {
    const at = fc.double({ min: 0, max: 4, noNaN: true });
    fc.assert(
      fc.property(at, at, fc.double({ min: -500, max: 500, noNaN: true }), fc.boolean(), (a, b, w, holds) => {
        const of = load({ wx: w, from: Math.min(a, b), to: Math.max(a, b), holds: { x: holds, y: true } });
        const { top, base } = reactionOf(of);
        const [force] = forcesOfColumnLoads([column], [of], plainCalc);
        const [back] = propsBack([column], [of], plainCalc);
        expect(base.Vx - top.Vx).toBeCloseTo(force.Fx, 6);
        expect(back.Fx).toBeCloseTo(top.Vx, 9);
        // About the base: the load at its middle, less the prop.
        expect(base.My).toBeCloseTo(force.Fx * (force.z - 0.5) + top.Vx * 4, 6);
      }),
    );
  });
});
