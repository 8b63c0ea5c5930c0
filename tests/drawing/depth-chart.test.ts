import { describe, expect, it } from "vitest";
import { depthCurve, peakOf } from "../../server/src/drawing/depth-chart.js";

const frame = { left: 0, top: 0, width: 100, height: 200 } as const;

describe("a curve along the depth", () => {
  it("writes the value that is greatest without its sign", () => expect(peakOf([1, -4, 3])).toBe(1));

  it("is as wide as its frame allows at the peak, on the side of its sign", () => {
    const strokes = depthCurve({ title: "moment", values: [0, -8, 4], show: (value) => `${value}` }, [0, 1, 2], frame).join("");
    const [, d] = /<path d="M([^"]+)"/u.exec(strokes) ?? [];
    expect(d.split("L").map((pair) => pair.split(" ").map(Number))).toEqual([
      [50, 0],
      [0, 100],
      [75, 200],
    ]);
    expect(strokes).toContain(">-8<");
  });

  it("of nothing lies on its zero line", () => {
    const strokes = depthCurve({ title: "shear", values: [0, 0], show: String }, [0, 1], frame).join("");
    expect(strokes).not.toContain("NaN");
    expect(strokes).toContain("M50.00 0.00L50.00 200.00");
  });
});
