/** Roofs that are not rigid in their plane, and the envelope of both ways. Statics of simple spans in closed form, then laws. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ColumnActions } from "../../server/src/actions/demand.js";
import { baseOf, foot, pound, recordOf, solved, totalOf, type Line } from "./given.js";

/** Two lines of three under 24 ft by 20 ft: 3, 12 and 21 ft along x, 3 and 17 ft along y. The middle column of the south line is short and stiff. */
const lines: readonly Line[] = [
  { name: "south", places: [3, 12, 21].map((x) => ({ x, y: 3 })), fields: { height: 6 * foot } },
  { name: "north", places: [3, 12, 21].map((x) => ({ x, y: 17 })), fields: { height: 12 * foot } },
];
const flat = { slope: 0, "rigid in plane": "no" };

describe("by tributary width", () => {
  const { columns, actions } = solved({ roof: flat, lines });

  it("the dead load goes by half spans and the levers of the overhangs", () => {
    // 10 psf on 24 ft x 10 ft of each line: spans of 9 ft with 3 ft beyond, 3 + 4.5 + 3²/(2·9) = 8 ft at the ends, 8 ft in the middle.
    for (const column of columns) {
      const top = column.cases.find(({ loadCase }) => loadCase.id === "dead")?.top.P;
      expect(top).toBeCloseTo(800 * pound, 3);
    }
  });

  it("a push goes the same way, however unlike the columns are in stiffness", () => {
    const total = totalOf(actions, "wind/west/minimum").Vx;
    for (const column of columns) {
      expect(baseOf(column, "wind/west/minimum").Vx).toBeCloseTo(total / 6, 3);
    }
    expect(baseOf(columns[0], "wind/west/minimum").My).toBeCloseTo((total / 6) * 6 * foot, 3);
    expect(baseOf(columns[3], "wind/west/minimum").My).toBeCloseTo((total / 6) * 12 * foot, 3);
  });

  it("on a rigid roof the short line takes most of the same push", () => {
    const rigid = solved({ roof: { slope: 0 }, lines });
    const share = rigid.columns.slice(0, 3).reduce((sum, column) => sum + baseOf(column, "wind/west/minimum").Vx, 0);
    expect(share).toBeGreaterThan(0.7 * totalOf(rigid.actions, "wind/west/minimum").Vx);
  });

  // 49.03 psf * 0.85 on 2 ft by 24 ft: 1.5 windward, 1.0 leeward; a third of it to each column of the line next to the edge.
  it("the push on a fascia goes to the line next to it, by width, and not to the far one", () => {
    const edge = solved({ roof: { ...flat, fascia: recordOf({ "south edge": 2 * foot }) }, lines });
    const more = (from: string) => edge.columns.map((column, i) => (baseOf(column, `wind/${from}/A/clear`).Vy - baseOf(columns[i], `wind/${from}/A/clear`).Vy) / pound);
    const whole = 49.029 * 0.85 * 48;
    more("south").forEach((value, i) => expect(value).toBeCloseTo(i < 3 ? (1.5 * whole) / 3 : 0, -1));
    more("north").forEach((value, i) => expect(value).toBeCloseTo(i < 3 ? -whole / 3 : 0, -1));
  });

  it("names the way in the derivation of each case", () => {
    const steps = actions.derivations().find(({ title }) => title === "dead load")?.steps ?? [];
    expect(steps.map((step) => (step.type === "routine" ? step.routine.id : ""))).toContain("mechanics.tributary-roof");
  });
});

describe("the envelope", () => {
  const asked = (rigid: string) => solved({ roof: { slope: 0.1, "rigid in plane": rigid }, lines });
  const [plate, width, both] = ["yes", "no", "envelope"].map((rigid) => asked(rigid).columns);
  const most = (of: ColumnActions, level: "strength" | "allowable", part: "P" | "Mx" | "My") => Math.max(...of[level].map(({ base }) => Math.abs(base[part])));

  it("has the demands of both ways, each under a name of its own", () => {
    both.forEach((column, i) => {
      for (const level of ["strength", "allowable", "service", "atTop"] as const) {
        expect(column[level]).toHaveLength(plate[i][level].length + width[i][level].length);
        expect(new Set(column[level].map(({ label }) => label)).size).toBe(column[level].length);
      }
      expect(column.strength.some(({ label }) => label.endsWith("roof shared by tributary width"))).toBe(true);
      expect(column.strength.some(({ label }) => label.endsWith("roof shared as one plate"))).toBe(true);
      expect(new Set(column.cases.map(({ loadCase }) => loadCase.id)).size).toBe(2 * plate[i].cases.length);
    });
  });

  it("is the worse of both in every force, never more", () => {
    both.forEach((column, i) => {
      for (const level of ["strength", "allowable"] as const) {
        for (const part of ["P", "Mx", "My"] as const) {
          expect(most(column, level, part)).toBe(Math.max(most(plate[i], level, part), most(width[i], level, part)));
        }
      }
    });
  });
});

describe("laws, whichever way the roof shares", () => {
  it("the reactions of every case balance its load, in force and in moment", () => {
    const drawn = fc.record({
      slope: fc.double({ min: 0, max: 0.4, noNaN: true }),
      xs: fc.array(fc.double({ min: 2, max: 8, noNaN: true }), { minLength: 2, maxLength: 3 }),
      heights: fc.tuple(fc.double({ min: 6, max: 14, noNaN: true }), fc.double({ min: 6, max: 14, noNaN: true })),
      top: fc.constantFrom("pinned", "fixed"),
      rigid: fc.constantFrom("yes", "no"),
    });
    fc.assert(
      fc.property(drawn, ({ slope, xs, heights, top, rigid }) => {
        let at = 0;
        const along = xs.map((step) => (at += step));
        const made: readonly Line[] = [3, 17].map((y, j) => ({ name: `l${j}`, places: along.map((x) => ({ x, y })), fields: { height: heights[j] * foot, "top of column": top } }));
        const { actions, columns } = solved({ roof: { slope, "rigid in plane": rigid }, lines: made });
        const places = made.flatMap((line, j) => line.places.map(({ x, y }) => ({ x: (x - 12) * foot, y: (y - 10) * foot, z: (slope * (y - 10) - heights[j]) * foot })));
        for (const { loadCase, total } of actions.resultants) {
          const sum = { Vx: 0, Vy: 0, Mx: 0, My: 0 };
          let size = 0;
          columns.forEach((column, i) => {
            const found = column.cases.find((one) => one.loadCase.id === loadCase.id);
            if (!found) throw new Error(loadCase.id);
            // The weight of the column is its own.
            const base = loadCase.type === "D" ? { ...found.base, P: found.top.P } : found.base;
            const { x, y, z } = places[i];
            sum.Vx += base.Vx;
            sum.Vy += base.Vy;
            sum.Mx += base.Mx - y * base.P - z * base.Vy;
            sum.My += base.My + z * base.Vx + x * base.P;
            size += Math.abs(base.P) + Math.abs(base.Vx) + Math.abs(base.Vy) + Math.abs(base.Mx) + Math.abs(base.My);
          });
          for (const part of ["Vx", "Vy", "Mx", "My"] as const) expect(Math.abs(sum[part] - total[part])).toBeLessThan(1e-9 * size * 20 + 1e-6);
        }
      }),
      { numRuns: 40 },
    );
  });
});
