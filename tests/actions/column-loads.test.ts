/**
 * Source: beams under a uniform load along all of the span or along one half of it (AISC Manual Table 3-22, from memory): propped 3/8 and 1/8, with the load next to the fixed end
 * w a³ (4l - a)/8l³; fixed at both ends 1/2 and 1/12, with half the span loaded 3/32 and 5/192 at the end away from the load; statics.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { columnEffects, forcesOfColumnLoads, propsBack, propsOnRoof, withEffects, type ColumnLoad } from "../../server/src/actions/column-loads.js";
import { plainCalc } from "../../server/src/formula/calc.js";
import type { RoofColumn } from "../../server/src/mechanics/rigid-roof.js";
import { baseOf, foot, fourColumns, solved, totalOf } from "./given.js";

const column: RoofColumn = { x: 2, y: 3, base: 0.5, height: 4, E: 2e11, area: 1e-3, Ix: 1e-5, Iy: 1e-5, top: "pinned" };
const cantilever = { base: true, top: false };
const both = { base: true, top: true };
const topOnly = { base: false, top: true };
const neither = { base: false, top: false };
const load = (more: Partial<ColumnLoad> = {}): ColumnLoad => ({ at: 0, axis: "x", w: 100, from: 0, to: 4, ends: cantilever, ...more });
const none = { P: 0, Vx: 0, Vy: 0, Mx: 0, My: 0 };
const reactionOf = (of: ColumnLoad) => withEffects([{ top: none, base: none }], columnEffects([column], [of], plainCalc))[0];

describe("a column propped by the roof", () => {
  it.each<[string, Partial<ColumnLoad>, number, number, number]>([
    // Force on the roof, moment at the top, moment at the base.
    ["under a load along all of it", {}, (3 / 8) * 400, 0, 1600 / 8],
    ["under one along its lower half", { to: 2 }, (100 * 2 ** 3 * (16 - 2)) / (8 * 4 ** 3), 0, 100 * 2 - (100 * 2 ** 3 * (16 - 2) * 4) / (8 * 4 ** 3)],
    ["under one along its upper half", { from: 2 }, (3 / 8) * 400 - (100 * 2 ** 3 * (16 - 2)) / (8 * 4 ** 3), 0, 1600 / 8 - (100 * 2 - (100 * 2 ** 3 * (16 - 2) * 4) / (8 * 4 ** 3))],
    ["pinned at its base", { ends: neither }, 200, 0, 0],
    ["pinned at its base, lower half", { to: 2, ends: neither }, 50, 0, 0],
    ["fixed at both ends", { ends: both }, 200, 1600 / 12, 1600 / 12],
    ["fixed at both ends, lower half", { to: 2, ends: both }, (3 / 32) * 400, (5 / 192) * 1600, (11 / 192) * 1600],
    ["fixed at both ends, upper half", { from: 2, ends: both }, (13 / 32) * 400, (11 / 192) * 1600, (5 / 192) * 1600],
    ["fixed at its top, pinned at its base", { ends: topOnly }, (5 / 8) * 400, 1600 / 8, 0],
  ])("%s hands its share to the roof", (_, more, force, topMoment, baseMoment) => {
    const [prop] = propsOnRoof([column], [load(more)], plainCalc);
    expect(prop).toMatchObject({ x: 2, y: 3, Fx: expect.closeTo(force, 9), Fy: 0, Fz: 0 });
    // The moment of the fixed end goes to the roof against the sense of the push.
    expect((4.5 - prop.z) * prop.Fx).toBeCloseTo(topMoment, 9);
    const { top, base } = reactionOf(load(more));
    expect([top.Vx, top.My, base.Vx, base.My]).toEqual([-force, topMoment, 100 * ((more.to ?? 4) - (more.from ?? 0)) - force, baseMoment].map((value) => expect.closeTo(value, 9)));
  });

  it("pushed to the north has a negative moment about the east axis", () => {
    const { top, base } = reactionOf(load({ axis: "y" }));
    expect([top.Vy, base.Vy, base.Mx]).toEqual([-150, 250, -200].map((value) => expect.closeTo(value, 9)));
    expect([top.Vx, base.Vx, base.My]).toEqual([0, 0, 0]);
    expect(reactionOf(load({ axis: "y", ends: both })).top.Mx).toBeCloseTo(-1600 / 12, 9);
  });

  it("is in balance with the load, wherever that is and however the ends are held", () => {
    const at = fc.double({ min: 0, max: 4, noNaN: true });
    fc.assert(
      fc.property(at, at, fc.double({ min: 1, max: 500, noNaN: true }), fc.boolean(), fc.boolean(), (a, b, w, base_, top_) => {
        fc.pre(Math.abs(a - b) > 1e-6);
        const of = load({ w, from: Math.min(a, b), to: Math.max(a, b), ends: { base: base_, top: top_ } });
        const { top, base } = reactionOf(of);
        const [force] = forcesOfColumnLoads([column], [of], plainCalc);
        const props = propsOnRoof([column], [of], plainCalc);
        expect(base.Vx - top.Vx).toBeCloseTo(force.Fx, 6);
        expect(propsBack(props)[0].Fx).toBeCloseTo(top.Vx, 9);
        expect(props[0].Fx).toBeCloseTo(-top.Vx, 9);
        // About the base: the load at its middle, less the prop with its moment.
        expect(base.My).toBeCloseTo(force.Fx * (force.z - 0.5) + top.Vx * 4 + top.My, 6);
      }),
    );
  });
});

describe("columns fixed at their tops", () => {
  // All alike under a load all along them, below a roof that cannot turn: the top moves to where the sum of the props, w h/2 each, is taken back as shear. Base moment w h²/12 + (w h/2) h/2 = w h²/3,
  // top moment w h²/12 - w h²/4 = -w h²/6.
  it("under their own drag are in balance, and hold a third of w h² at the base where the roof stays level", () => {
    const lines = fourColumns.map((line) => ({ ...line, fields: { height: 11 * foot, "top of column": "fixed" } }));
    const flat = { slope: 0, length: 200 * foot };
    const far = lines.map((line) => ({ ...line, places: [{ x: 5, y: line.places[0].y }, { x: 195, y: line.places[0].y }] }));
    const with_ = far.map((line) => ({ ...line, fields: { ...line.fields, "width in the wind": 0.5 * foot } }));
    const [bare, wide] = [solved({ roof: flat, lines: far }), solved({ roof: flat, lines: with_ })];
    const id = "wind/west/minimum";
    const wh = (16 * 0.5 * 11 * 4.4482216152605) as number;
    wide.columns.forEach((column, i) => {
      const more = { V: baseOf(column, id).Vx - baseOf(bare.columns[i], id).Vx, M: baseOf(column, id).My - baseOf(bare.columns[i], id).My };
      expect(more.V / wh).toBeCloseTo(1, 3);
      expect(more.M / (wh * 11 * foot)).toBeCloseTo(1 / 3, 2);
    });
    const total = totalOf(wide.actions, id).Vx - totalOf(bare.actions, id).Vx;
    expect(total / (4 * wh)).toBeCloseTo(1, 9);
  });
});
