/** Source: ASCE 7-22 27.3.5 and Figure 27.3-8: case 3 takes three quarters of both winds, case 2 three quarters with an eccentricity of 0.15 B; one story up to 30 ft is free of cases 2 and 4 (Appendix D, from memory). */
import { describe, expect, it } from "vitest";
import type { Forces } from "../../../server/src/actions/demand.js";
import { allEdges, baseOf, foot, fourColumns, recordOf, solved, totalOf, type Given } from "../given.js";

const parts = ["P", "Vx", "Vy", "Mx", "My"] as const;
const idsOf = (given: Given) => solved(given).columns[0].cases.map(({ loadCase }) => loadCase.id);
const corners = (given: Given) => idsOf(given).filter((id) => id.includes("/and-"));
const fascia = recordOf({ depth: 2 * foot });
const minus = (a: Forces, b: Forces, part: (typeof parts)[number]) => a[part] - b[part];

describe("winds along both axes at once", () => {
  it("are not tried where nothing but the roof is in the wind", () => {
    expect(corners({})).toEqual([]);
  });

  it("are not tried where one wind pushes more than both can: drag less than a third of the push of the roof", () => {
    const wide = fourColumns.map((line) => ({ ...line, fields: { ...line.fields, "width in the wind": 0.2 * foot } }));
    expect(corners({ lines: wide, roof: { slope: 0.5 } })).toEqual([]);
    expect(corners({ roof: { slope: 0.5, fascia: recordOf({ "east edge": 5 * foot }) } })).not.toEqual([]);
  });

  it("lead by the one that pushes more, with the case that lifts the most and the one that presses the most", () => {
    // A fascia on 24 ft against one on 20 ft.
    expect(corners({ roof: { slope: 0, fascia } }).sort()).toEqual(
      ["north", "south"].flatMap((main) => ["A", "B"].flatMap((one) => ["east", "west"].map((cross) => `wind/${main}/${one}/clear/and-${cross}`))).sort(),
    );
    const long = { slope: 0, length: 20 * foot, width: 24 * foot, fascia };
    const turned = fourColumns.map((line) => ({ ...line, places: line.places.map(({ x, y }) => ({ x: y, y: x })) }));
    expect(corners({ roof: long, lines: turned })).toContain("wind/east/B/clear/and-north");
  });

  it("are three quarters of the one, its pressures included, and of the drag of the other", () => {
    const flat = { slope: 0 };
    const [bare, with_] = [solved({ roof: flat }), solved({ roof: { ...flat, fascia } })];
    for (const [main, cross] of [["south", "west"], ["north", "east"]]) {
      const total = totalOf(with_.actions, `wind/${main}/B/clear/and-${cross}`);
      const one = totalOf(with_.actions, `wind/${main}/B/clear`);
      const [before, after] = [totalOf(bare.actions, `wind/${cross}/B/clear`), totalOf(with_.actions, `wind/${cross}/B/clear`)];
      for (const part of parts) expect(total[part]).toBeCloseTo(0.75 * (one[part] + minus(after, before, part)), 4);
    }
  });

  it("reach the columns by the same parts, drag on the columns among it", () => {
    const lines = fourColumns.map((line) => ({ ...line, fields: { ...line.fields, "width in the wind": 2 * foot } }));
    const [bare, with_] = [solved({ roof: { slope: 0 } }), solved({ roof: { slope: 0 }, lines })];
    with_.columns.forEach((column, i) => {
      const both = baseOf(column, "wind/north/B/clear/and-east");
      const [before, after] = [baseOf(bare.columns[i], "wind/east/B/clear"), baseOf(column, "wind/east/B/clear")];
      for (const part of parts) expect(both[part]).toBeCloseTo(0.75 * (baseOf(column, "wind/north/B/clear")[part] + minus(after, before, part)), 4);
    });
  });
});

describe("a push off the middle of the roof", () => {
  // Four columns alike at (±20, ±15) ft about the middle of 48 ft by 40 ft: sum of x² + y² is 4 * 625 ft².
  const lines = [5, 35].map((y) => ({ name: y === 5 ? "south" : "north", places: [{ x: 4, y }, { x: 44, y }], fields: { height: 11 * foot } }));
  const roof = { slope: 0, length: 48 * foot, width: 40 * foot, fascia };
  const at = (feet: number, more = {}): Given => ({ roof: { ...roof, "mean height": feet * foot, ...more }, lines });
  const turned = (given: Given) => idsOf(given).filter((id) => id.includes("/toward-"));
  const byBoth = (given: Given) => idsOf(given).filter((id) => id.endsWith("clockwise"));

  it("is taken above 30 ft alone, on roofs rigid in their plane", () => {
    expect(turned(at(30))).toEqual([]);
    expect(turned(at(31, { "rigid in plane": "no" }))).toEqual([]);
    expect(turned(at(31))).toHaveLength(4 * 2 * 2);
  });

  it("adds its moment over the sum of the squares to the outer columns", () => {
    const { columns, actions } = solved(at(31));
    for (const from of allEdges) {
      const id = `wind/${from}/A/clear`;
      const isX = from === "east" || from === "west";
      const [B, toward] = isX ? [40, "north"] : [48, "east"];
      const total = totalOf(actions, id)[isX ? "Vx" : "Vy"];
      // The middle of the push moves by 0.15 B to the north or to the east: anticlockwise for a push to the north.
      const moment = 0.75 * total * 0.15 * B * (isX ? -1 : 1);
      columns.forEach((column, i) => {
        const [x, y] = [i % 2 === 0 ? -20 : 20, i < 2 ? -15 : 15];
        const [one, off] = [baseOf(column, id), baseOf(column, `${id}/toward-${toward}`)];
        expect(off.Vx - 0.75 * one.Vx).toBeCloseTo((-moment * y) / 2500, 3);
        expect(off.Vy - 0.75 * one.Vy).toBeCloseTo((moment * x) / 2500, 3);
        expect(off.P).toBeCloseTo(0.75 * one.P, 3);
      });
    }
  });

  it("is taken of both winds at once above 30 ft alone, either leading, where the one across has drag", () => {
    expect(byBoth(at(30))).toEqual([]);
    expect(byBoth(at(31, { "rigid in plane": "no" }))).toEqual([]);
    // Of each of four winds the case that lifts the most and the one that presses the most, two winds across, two ways to turn.
    expect(byBoth(at(31))).toHaveLength(4 * 2 * 2 * 2);
    expect(byBoth(at(31, { fascia: undefined }))).toEqual([]);
  });

  it("of both winds is 0.563 of each, the moments of both pushes added and shared over the sum of the squares", () => {
    const given = at(31);
    const { columns, actions } = solved(given);
    const bare = solved(at(31, { fascia: undefined }));
    for (const [main, cross] of [["north", "east"], ["south", "west"], ["west", "north"]] as const) {
      const id = `wind/${main}/A/clear`;
      const one = totalOf(actions, id);
      const [before, after] = [totalOf(bare.actions, `wind/${cross}/A/clear`), totalOf(actions, `wind/${cross}/A/clear`)];
      const [V_x, V_y] = (["Vx", "Vy"] as const).map((part) => Math.abs(one[part]) + Math.abs(after[part] - before[part]));
      // 0.15 of 40 ft across a push along x, 0.15 of 48 ft across one along y.
      const moment = 0.563 * 0.15 * foot * (40 * V_x + 48 * V_y);
      for (const [turning, sense] of [["anticlockwise", 1], ["clockwise", -1]] as const) {
        const both = `${id}/and-${cross}/${turning}`;
        const total = totalOf(actions, both);
        for (const part of parts.slice(0, 3)) expect(total[part]).toBeCloseTo(0.563 * (one[part] + minus(after, before, part)), 4);
        columns.forEach((column, i) => {
          const [x, y] = [i % 2 === 0 ? -20 : 20, i < 2 ? -15 : 15];
          const base = baseOf(column, both);
          expect(base.Vx).toBeCloseTo(total.Vx / 4 - (sense * moment * y) / (2500 * foot), 3);
          expect(base.Vy).toBeCloseTo(total.Vy / 4 + (sense * moment * x) / (2500 * foot), 3);
        });
      }
    }
  });
});
