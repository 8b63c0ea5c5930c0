import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { linesAlong } from "../../server/src/mechanics/column-grid.js";

const groups = (places: readonly { x: number; y: number }[], axis: "x" | "y") =>
  linesAlong(places, axis)
    .map(({ columns }) => [...columns].sort((a, b) => a - b).join())
    .sort();

describe("Columns in line", () => {
  it.each([
    ["a foot out of line is a line of its own", [0, 0.1, 0.5], ["0,1", "2"]],
    ["a little out of line is in it", [0, 0.1, 0.2], ["0,1,2"]],
    ["a scattered row is no line", [0, 0.19, 0.49, 0.7], ["0", "1", "2", "3"]],
  ])("%s", (_, across, expected) => {
    expect(groups(across.map((y, i) => ({ x: i * 3, y })), "x")).toEqual(expected);
  });

  it("are the same columns in a mirror", () => {
    const places = fc.array(fc.record({ x: fc.double({ min: 0, max: 4, noNaN: true }), y: fc.double({ min: 0, max: 4, noNaN: true }) }), { minLength: 2, maxLength: 9 });
    fc.assert(
      fc.property(places, (all) => {
        // A gap of exactly the limit may round to either side in a mirror.
        fc.pre(all.every((a) => all.every((b) => Math.abs(Math.abs(a.x - b.x) - 0.3) > 1e-9)));
        expect(groups(all.map(({ x, y }) => ({ x: 4 - x, y })), "y")).toEqual(groups(all, "y"));
      }),
      { numRuns: 2000 },
    );
  });
});
