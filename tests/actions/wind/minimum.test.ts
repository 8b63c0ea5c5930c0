/** Source: ASCE 7-22 27.1.5: 16 psf on the projected vertical area; areas by hand. */
import { describe, expect, it } from "vitest";
import type { RoofPlane } from "../../../server/src/actions/roof-plane.js";
import { minimumCase, minimumLoad } from "../../../server/src/actions/wind/minimum.js";
import { plainCalc } from "../../../server/src/formula/calc.js";
import { foot, pound } from "../given.js";

const roof: RoofPlane = { shape: "monoslope", slope: 2 / 12, length: 44 * foot, width: 24 * foot, lowEdge: "south", meanHeight: 11 * foot };

describe("least wind force", () => {
  // Rise 24 * 2/12 = 4 ft; with a 1 ft edge the area is 5 * 44 = 220 sq ft along the slope and 1 * 24 across it.
  it.each([
    ["south", 0, 3520],
    ["north", 0, -3520],
    ["west", 384, 0],
    ["east", -384, 0],
  ] as const)("from the %s pushes %d lb east and %d lb north at the middle of the roof", (from, Fx, Fy) => {
    const load = minimumLoad(roof, foot, from, plainCalc);
    expect(load.Fx / pound).toBeCloseTo(Fx, 6);
    expect(load.Fy / pound).toBeCloseTo(Fy, 6);
    expect(load.Fz).toBe(0);
    expect([load.x, load.y, load.z].map((value) => value / foot)).toEqual([22, 12, 11].map((value) => expect.closeTo(value, 9)));
  });

  // 24 ft by 44 ft, 6 in 12: each half rises 6 ft over 12 ft; the gable is 24 ft wide and 6 ft high, 72 sq ft.
  it.each([
    ["pitched", "south", 16 * (1 + 6) * 44],
    ["pitched", "west", 16 * (24 + 72)],
    ["troughed", "south", 16 * (1 + 6) * 44],
    ["troughed", "west", 16 * 24],
  ] as const)("on a %s roof with its ridge or valley along x, wind from the %s", (shape, from, expected) => {
    const halves: RoofPlane = { shape, slope: 0.5, length: 44 * foot, width: 24 * foot, ridge: "x", meanHeight: 12 * foot };
    const load = minimumLoad(halves, foot, from, plainCalc);
    expect((load.Fx + load.Fy) / pound).toBeCloseTo(expected, 6);
  });

  it("is a case of its own, named by its edge", () => {
    expect(minimumCase(roof, "north")).toEqual({ id: "wind/north/minimum", type: "W", from: "north", title: "wind from the north, onto the high edge, least force, no pressure on the roof" });
  });
});
