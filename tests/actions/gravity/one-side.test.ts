/** Loads on one side of a single line of columns: the moments they bring, by statics. */
import { describe, expect, it } from "vitest";
import { sidesOfLine } from "../../../server/src/actions/gravity/one-side.js";
import { baseOf, foot, pound, psf, solved, totalOf, type Given, type Line } from "../given.js";

const fields = { height: 10 * foot, "top of column": "fixed" };
const line: readonly Line[] = [{ name: "row", places: [{ x: 5, y: 10 }, { x: 19, y: 10 }], fields }];
const given = (more: Given = {}): Given => ({ standard: "ASCE 7-16", lines: line, site: { "ground snow": 30 * psf }, ...more, roof: { slope: 0, ...more.roof } });

describe("a roof of 24 ft by 20 ft on one line of two columns at its middle", () => {
  const { actions, columns } = solved(given());

  // p_s = 25.2 psf on 240 sq ft, 6048 lb, and half of it on the other side; 5 ft off the line.
  it.each([
    ["north", -1],
    ["south", 1],
  ])("snow on the %s side bends each column by (6048 - 3024) x 5/2 = 7560 lb-ft", (toward, sign) => {
    expect(totalOf(actions, `snow/one-side/${toward}`).P / pound).toBeCloseTo(9072, 1);
    for (const column of columns) {
      const { P, Mx, My } = baseOf(column, `snow/one-side/${toward}`);
      expect(P / pound).toBeCloseTo(4536, 1);
      expect(Mx / (pound * foot)).toBeCloseTo(sign * 7560, 0);
      expect(My).toBeCloseTo(0, 3);
    }
  });

  // 240 sq ft to a column: R_1 = 0.96, 19.2 psf on 240 sq ft is 4608 lb.
  it.each([
    ["north", -1],
    ["south", 1],
  ])("roof live load on the %s side alone bends each by 4608 x 5/2 = 11520 lb-ft", (toward, sign) => {
    for (const column of columns) expect(baseOf(column, `roof-live/one-side/${toward}`).Mx / (pound * foot)).toBeCloseTo(sign * 11520, 0);
  });

  it("is among the combinations beside the load on the whole roof", () => {
    const labels = columns[0].strength.map(({ label }) => label);
    expect(labels).toContain("1.2D + 1.6Lr: roof live load north of the columns alone");
    expect(labels).toContain("1.2D + 1.6S: snow south of the columns, half of it on the other side");
  });
});

describe("sides", () => {
  const plane = { length: 10, width: 8 };
  it.each([
    ["none of two lines", [{ x: 2, y: 2 }, { x: 2, y: 6 }, { x: 8, y: 2 }], []],
    ["north and south of a line along x", [{ x: 2, y: 3 }, { x: 8, y: 3 }], ["north", "south"]],
    ["east and west of a line along y", [{ x: 4, y: 1 }, { x: 4, y: 7 }], ["east", "west"]],
    ["all four of a single column", [{ x: 5, y: 4 }], ["north", "south", "east", "west"]],
    ["none of a line along the edge of the roof", [{ x: 1, y: 8 }, { x: 9, y: 8 }], []],
    ["none of a line askew", [{ x: 2, y: 2 }, { x: 8, y: 6 }], []],
    ["none without columns", [], []],
  ])("%s", (_, posts, expected) => {
    expect(sidesOfLine(plane, posts).map(({ toward }) => toward)).toEqual(expected);
  });

  it("make up the whole roof", () => {
    for (const { there, rest } of sidesOfLine(plane, [{ x: 5, y: 3 }])) {
      const area = ({ x1, x2, y1, y2 }: typeof there) => (x2 - x1) * (y2 - y1);
      expect(area(there) + area(rest)).toBeCloseTo(80, 12);
    }
  });
});
