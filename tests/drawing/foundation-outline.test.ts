import { describe, expect, it } from "vitest";
import { dowelRows, outlineOf } from "../../server/src/drawing/foundation-outline.js";
import { checkText } from "../../server/src/engine/check-text.js";

/** The outline of the one foundation described, lengths in feet. */
function outline(fields: string) {
  const [document] = checkText(`rootfast: 1\nfoundations:\n  one:\n${fields.replace(/^/gmu, "    ")}\n    combined:\n      uplift: 1 kip\n`).documents;
  const found = document.structure.supports[0].foundation;
  const drawn = found && outlineOf(found.fields);
  const feet = (value: number): number => Number((value / 0.3048).toFixed(6));
  return drawn && { top: feet(drawn.top), bottom: feet(drawn.bottom), from: feet(drawn.width.from), to: feet(drawn.width.to), fill: feet(drawn.fill.right), corners: drawn.corners.length };
}

describe("the outline of a foundation, grade at zero", () => {
  it.each([
    ["a pier", "kind: pier\ndiameter: 3 ft\ndepth: 7 ft\nabove grade: 6 in", { top: 0.5, bottom: -7, from: -1.5, to: 1.5, fill: 0, corners: 4 }],
    ["a pier with a bell", "kind: pier\ndiameter: 2 ft\ndepth: 8 ft\nbell:\n  diameter: 5 ft\n  height: 2 ft", { top: 0, bottom: -8, from: -2.5, to: 2.5, fill: 0, corners: 6 }],
    ["a pad with a pedestal", "kind: footing\nwidth: 5 ft\nlength: 5 ft\nthickness: 1 ft\ndepth: 4 ft\nabove grade: 6 in\npedestal: 20 in x 20 in", { top: 0.5, bottom: -4, from: -2.5, to: 2.5, fill: 0, corners: 8 }],
    ["a pad alone", "kind: footing\nwidth: 5 ft\nlength: 5 ft\nthickness: 1 ft\ndepth: 1 ft", { top: 0, bottom: -1, from: -2.5, to: 2.5, fill: 0, corners: 4 }],
    [
      "a wall that holds back soil, its toe at the left",
      "kind: wall on footing\nthickness: 1 ft\nheight: 6 ft\ndepth: 3 ft\nretains: 3 ft\nfooting:\n  width: 5 ft\n  thickness: 1 ft\n  toe: 1 ft",
      { top: 4, bottom: -3, from: -1.5, to: 3.5, fill: 3, corners: 8 },
    ],
    ["a wall whose top is stated", "kind: wall on footing\nthickness: 1 ft\nheight: 3 ft\nabove grade: 6 in\nfooting: 3 ft x 1 ft", { top: 0.5, bottom: -3.5, from: -1.5, to: 1.5, fill: 0, corners: 8 }],
  ])("of %s", (_, fields, expected) => expect(outline(fields)).toEqual(expected));

  it("is not made up where a size is missing", () => {
    expect(outline("kind: pier\ndepth: 7 ft")).toBeUndefined();
    expect(outline("kind: wall on footing\nheight: 3 ft")).toBeUndefined();
    expect(outline("kind: footing\nthickness: 1 ft")).toBeUndefined();
  });
});

describe("the rows of dowels, from the middle of the column", () => {
  const rows = (fields: string) => {
    const [document] = checkText(`rootfast: 1\nground:\n  ledge:\n    kind: rock\nfoundations:\n  one:\n    ground: ledge\n${fields.replace(/^/gmu, "    ")}\n    combined:\n      uplift: 1 kip\n`).documents;
    const found = document.structure.supports[0].foundation!.fields;
    return dowelRows(found, outlineOf(found)!.width).map((x) => Number((x / 0.3048).toFixed(6)));
  };
  const wall = "kind: wall on footing\nthickness: 1 ft\nheight: 6 ft\nabove grade: 1 ft\nfooting:\n  width: 5 ft\n  thickness: 1 ft\n  toe: 1 ft\n";
  const pad = "kind: footing on rock\nwidth: 4 ft\nlength: 4 ft\nthickness: 1 ft\ndepth: 1 ft\ndowels:\n  spacing: 16 in\n  ";
  it.each([
    // The footing reaches from 1.5 ft before the middle of the wall to 3.5 ft behind it.
    ["one on the middle of a wall's footing", `${wall}dowels:\n  spacing: 16 in`, [1]],
    ["two of a wall as far apart as stated", `${wall}dowels:\n  rows: 2\n  row spacing: 3 ft`, [-0.5, 2.5]],
    ["two of a wall whose distance is not stated", `${wall}dowels:\n  rows: 2`, []],
    ["four in a pad, in a square", `${pad}count: 4`, [-0.666667, 0.666667]],
    ["one in a pad", `${pad}count: 1`, [0]],
    ["a grid in a pad", `${pad}along x: 3\n  along y: 2`, [-1.333333, 0, 1.333333]],
    ["a number in a pad that tells no places", `${pad}count: 6`, []],
  ])("are %s", (_, fields, expected) => expect(rows(fields)).toEqual(expected));
});
