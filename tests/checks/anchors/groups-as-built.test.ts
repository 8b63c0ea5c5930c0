import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { groupsAsBuilt } from "../../../server/src/checks/anchors/groups-as-built.js";
import { checkText } from "../../../server/src/engine/check-text.js";
import { leastBetween } from "../../../server/src/mechanics/nearest-neighbor.js";
import { middleOf } from "../../../server/src/mechanics/rod-pattern.js";

/** Three columns in a row, the rods of the first two found so far off their drawn places, in inches east. */
const told = (first?: number, second?: number, third?: number) => {
  const base = (name: string, off: number | undefined) =>
    `  ${name}:\n    anchors: 4 x 3/4 in F1554 Gr 36, headed, 12 in deep, 10 in square\n` +
    (off === undefined ? "" : `    as built:\n      anchors:\n        places:\n${[[-5, -5], [5, -5], [5, 5], [-5, 5]].map(([x, y]) => `          - ${(x + off).toFixed(4)} in, ${y} in`).join("\n")}\n`);
  const column = (name: string, x: number, on: string) => `  ${name}:\n    at: ${x} ft, 0 ft\n    base: ${on}\n`;
  const text = `rootfast: 1\ncolumns:\n${column("west", 0, "one")}${column("middle", 10, "two")}${column("east", 24, "three")}bases:\n${base("one", first)}${base("two", second)}${base("three", third)}`;
  return groupsAsBuilt.judge(checkText(text).documents[0].structure).map(({ verdict, message }) => ({ verdict, message }));
};

// Older AISC 303 7.5.1, from memory: 1/4 in from group to group, 1 in summed up.
describe("Distance from one group of rods to the next", () => {
  it("is said nothing of where every group stands as drawn", () => expect(told()).toEqual([]));

  it.each([
    ["a quarter of an inch is within it", [0.25, undefined, undefined], ["holds"], /off by 0\.25 in; 0\.25 in is the tolerance/],
    ["0.26 in is over", [0.26, undefined, undefined], ["over"], /found 0\.26 in off, and the distance to the rods of middle is off by 0\.26 in/],
    ["the nearest other group counts", [undefined, undefined, 0.3], ["over"], /distance to the rods of middle/],
    ["two that moved alike keep their distance", [0.5, 0.5, undefined], ["holds", "holds"], /off by 0 in/],
    ["two that moved apart do not", [-0.15, 0.15, undefined], ["over", "holds"], /distance to the rods of middle is off by 0\.3 in/],
    ["three sum up to more than an inch", [-0.95, -0.95, 0.1], ["over", "over", "over"], /of east is off by 1\.05 in; 1 in is the most/],
  ] as const)("%s", (_, offs, verdicts, words) => {
    const found = told(...offs);
    expect(found[0].message).toMatch(words);
    if (verdicts.length === 1 || verdicts[0] === verdicts[1]) expect(found.map(({ verdict }) => verdict)).toEqual(verdicts);
    else expect(found[0].verdict).toBe(verdicts[0]);
  });

  it("does not change when all groups move alike", () => {
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), (off) => {
        expect(told(off, off, off).map(({ verdict }) => verdict)).toEqual(["holds", "holds", "holds"]);
      }),
      { numRuns: 15 },
    );
  });
});

describe("Points in plan", () => {
  it("have a middle, from another point where one is given", () => {
    expect(middleOf([{ x: 0, y: 0 }, { x: 4, y: 2 }])).toEqual({ x: 2, y: 1 });
    expect(middleOf([{ x: 0, y: 0 }, { x: 4, y: 2 }], { x: 1, y: 1 })).toEqual({ x: 1, y: 0 });
  });
  it("have a set that comes nearest, or none", () => {
    expect(leastBetween([{ x: 0, y: 0 }], [[{ x: 5, y: 0 }], [{ x: 9, y: 0 }, { x: 0, y: 3 }]])).toBe(1);
    expect(leastBetween([{ x: 0, y: 0 }], [])).toBeUndefined();
  });
});
