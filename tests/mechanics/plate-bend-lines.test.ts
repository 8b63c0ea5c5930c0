import { describe, expect, it } from "vitest";
import { worstBendLine } from "../../server/src/mechanics/plate-bend-lines.js";
import { rodPattern } from "../../server/src/mechanics/rod-pattern.js";

const patternOf = (count: number, x: number, y: number) => {
  const found = rodPattern(count, x, y);
  if ("problem" in found) throw new Error(found.problem);
  return found;
};

describe("The line a plate bends on under a rod (statics, 45° spread)", () => {
  it.each([
    ["a rod at mid-side, half way to its neighbors on both sides", 14, 2, 8, 8, 6, "side", 2, 4],
    ["a rod at mid-side, 45° on both sides", 14, 3, 8, 8, 6, "side", 1, 2],
    ["a rod off a corner, 45° on both sides", 14, 3, 8, 8, 2, "corner", Math.SQRT2, 2 * Math.SQRT2],
    ["a rod off a corner, cut at the middle of the plate", 14, 1, 8, 8, 2, "corner", 3 * Math.SQRT2, 2 * Math.SQRT2],
  ] as const)("%s", (_, plate, half, x, y, pulling, line, distance, width) => {
    const rods = patternOf(8, x, y);
    const found = worstBendLine({ width: plate, length: plate, half, rods, tensions: rods.map((_, i) => (i === pulling ? 1 : 0)) });
    expect(found).toMatchObject({ rod: pulling + 1, line });
    expect(found!.distance).toBeCloseTo(distance, 12);
    expect(found!.width).toBeCloseTo(width, 12);
  });

  it("takes the line along the side where the diagonal would miss the corner", () => {
    expect(worstBendLine({ width: 20, length: 6, half: 1, rods: [{ x: 8, y: 1.2 }], tensions: [1] })).toMatchObject({ line: "side", distance: 7 });
  });

  it("takes the rod that strains the plate most", () => {
    const rods = patternOf(4, 8, 8);
    expect(worstBendLine({ width: 14, length: 14, half: 3, rods, tensions: [1, 3, 2, 0] })!.rod).toBe(2);
  });

  it("gives nothing where no rod beside the tube pulls", () => {
    expect(worstBendLine({ width: 14, length: 14, half: 3, rods: patternOf(4, 8, 8), tensions: [0, 0, 0, 0] })).toBeUndefined();
    expect(worstBendLine({ width: 14, length: 14, half: 3, rods: [{ x: 0, y: 0 }], tensions: [1] })).toBeUndefined();
  });
});
