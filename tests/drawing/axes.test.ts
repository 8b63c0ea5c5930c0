import { describe, expect, it } from "vitest";
import { axes, roundSteps } from "../../server/src/drawing/axes.js";

describe("numbers on an axis", () => {
  it.each([
    [0, 10, [0, 2, 4, 6, 8, 10]],
    [-120, 480, [0, 200, 400]],
    [0, 0.9, [0, 0.2, 0.4, 0.6, 0.8]],
    [-3.2, 3.2, [-2, 0, 2]],
    [0, 1234, [0, 500, 1000]],
    [5, 5, [5]],
  ])("from %d to %d are round", (from, to, steps) => expect(roundSteps(from, to)).toEqual(steps));

  it("are placed by the scale of their axis, upward and to the right", () => {
    const { x, y, strokes } = axes({ left: 10, top: 20, width: 100, height: 200 }, [0, 50], [-100, 100], { x: "moment", y: "force" });
    expect([x(0), x(50), y(-100), y(100), y(0)]).toEqual([10, 110, 220, 20, 120]);
    expect(strokes.join("")).toContain(">moment<");
  });
});
