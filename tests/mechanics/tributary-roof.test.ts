/** Tributary width by statics of simple spans, then laws. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gridOf, sharesOf } from "../../server/src/mechanics/column-grid.js";
import type { EndsHeld, PlanArea, RoofColumn, RoofLoad } from "../../server/src/mechanics/rigid-roof.js";
import type { RoofBrace } from "../../server/src/mechanics/roof-frame.js";
import { sharedByTributary, solveTributary, tributaryRoof, type TributaryResult } from "../../server/src/mechanics/tributary-roof.js";

const E = 200e9;
const I = 1.6e-5;
const column = (x: number, y: number, other: Partial<RoofColumn> = {}): RoofColumn => ({ x, y, base: 0, height: 3, E, area: 4.9e-3, Ix: I, Iy: I, top: "pinned", ...other });
const plan: PlanArea = { x1: 0, x2: 12, y1: 0, y2: 6 };
const ends = (x: readonly [boolean, boolean], y: readonly [boolean, boolean]): { x: EndsHeld; y: EndsHeld } => ({ x: { base: x[0], top: x[1] }, y: { base: y[0], top: y[1] } });
/** Two lines of three, overhangs of 2 m and 1 m. */
const six = (other: Partial<RoofColumn> = {}): RoofColumn[] => [1, 5].flatMap((y) => [2, 6, 10].map((x) => column(x, y, other)));
const over = (area: PlanArea, F: Partial<Pick<RoofLoad, "Fx" | "Fy" | "Fz">>, z = 3): RoofLoad => ({ x: (area.x1 + area.x2) / 2, y: (area.y1 + area.y2) / 2, z, Fx: 0, Fy: 0, Fz: 0, ...F, over: area });

function solved(columns: readonly RoofColumn[], loads: readonly RoofLoad[], braces: readonly RoofBrace[] = []): TributaryResult {
  const roof = tributaryRoof(columns, braces, plan);
  if ("mechanism" in roof) throw new Error(roof.mechanism);
  return solveTributary(roof, loads);
}
const mechanismOf = (columns: readonly RoofColumn[], braces: readonly RoofBrace[] = []): string => {
  const roof = tributaryRoof(columns, braces, plan);
  return "mechanism" in roof ? roof.mechanism : "";
};

describe("shares, by statics", () => {
  const shares = (area: PlanArea, places = six()): readonly number[] => {
    const grid = gridOf(places);
    if (!grid) throw new Error("no grid");
    return [...sharesOf(grid, area, places.length)];
  };

  it("an even load on spans of 4 m with 2 m beyond: 2 + 2 + 2²/(2·4) at the ends, the rest in the middle", () => {
    expect(shares(plan)).toEqual([4.5, 3, 4.5, 4.5, 3, 4.5].map((part) => expect.closeTo(part / 24, 12)));
  });

  it("without overhang the middle column takes twice the end ones", () => {
    const places = [0, 6].flatMap((y) => [0, 6, 12].map((x) => ({ x, y })));
    expect(shares(plan, places as RoofColumn[])).toEqual([1, 2, 1, 1, 2, 1].map((part) => expect.closeTo(part / 8, 12)));
  });

  it("a load on an overhang lifts the next support: 1 m out over a span of 4 m, 5/4 and -1/4", () => {
    const [a, b, c] = shares({ x1: 1, x2: 1, y1: 1, y2: 1 });
    expect([a, b, c]).toEqual([1.25, -0.25, 0].map((part) => expect.closeTo(part, 12)));
  });

  it("half of the plan pressed: by levers of each span", () => {
    // On the southern half, 0 to 3 m, middle at 1.5 m: lines at 1 and 5 m take 3.5/4 and 0.5/4.
    const parts = shares({ x1: 0, x2: 12, y1: 0, y2: 3 });
    expect(parts.slice(0, 3).reduce((a, b) => a + b)).toBeCloseTo(3.5 / 4, 12);
    expect(parts.slice(3).reduce((a, b) => a + b)).toBeCloseTo(0.5 / 4, 12);
  });

  it("each line has its own columns", () => {
    const places = [column(0, 0), column(6, 0), column(12, 0), column(0, 6), column(12, 6)];
    expect(shares(plan, places)).toEqual([1 / 8, 1 / 4, 1 / 8, 1 / 4, 1 / 4].map((part) => expect.closeTo(part, 12)));
  });
});

describe("pushes", () => {
  it("a cantilever keeps the push that comes to it, whatever its stiffness", () => {
    const columns = six().map((c, i) => (i === 1 ? { ...c, Ix: 20 * I, Iy: 20 * I } : c));
    solved(columns, [over(plan, { Fx: 24e3, Fy: 12e3 })]).columns.forEach(({ base }, i) => {
      const part = i % 3 === 1 ? 3e3 : 4.5e3;
      expect([base.Vx, base.Vy, base.My, base.Mx]).toEqual([part, part / 2, 3 * part, -1.5 * part].map((value) => expect.closeTo(value, 6)));
    });
  });

  it("the sway of a cantilever is V h³/3EI", () => {
    const [{ sway }] = solved(six(), [over(plan, { Fx: 24e3 })]).columns;
    expect(sway.x).toBeCloseTo((4.5e3 * 27) / (3 * E * I), 12);
    expect(sway.y).toBe(0);
  });

  it("a line with fixed tops shares along itself, V h/2 at each end, with the couple of its tops in its own columns", () => {
    const { columns } = solved(six({ ends: ends([true, true], [true, false]) }), [over(plan, { Fx: 12e3 })]);
    for (const { base, top } of columns) expect([base.Vx, base.My, top.My]).toEqual([2e3, 3e3, -3e3].map((value) => expect.closeTo(value, 6)));
    // Three tops of 3 kN·m are a couple over columns 8 m apart: 9/8 up in the west, down in the east.
    expect(columns.map(({ base }) => base.P)).toEqual([-9e3 / 8, 0, 9e3 / 8, -9e3 / 8, 0, 9e3 / 8].map((value) => expect.closeTo(value, 6)));
  });

  it("a braced line takes what its own columns bring and no more", () => {
    const rods: RoofBrace[] = [{ from: 0, to: 1, E, area: 3e-4 }];
    const columns = six().map((c, i) => (i < 3 ? { ...c, ends: ends([false, false], [true, false]) } : c));
    const { columns: results } = solved(columns, [over(plan, { Fx: 12e3 })], rods);
    expect(results.map(({ base }) => base.Vx)).toEqual([6e3, 0, 0, 2.25e3, 1.5e3, 2.25e3].map((value) => expect.closeTo(value, 6)));
    expect(results.slice(0, 3).map(({ base }) => base.P)).toEqual([-4.5e3, 4.5e3, 0].map((value) => expect.closeTo(value, 6)));
    const back = solved(columns, [over(plan, { Fx: -12e3 })], rods).columns;
    expect(back.slice(0, 2).map(({ base }) => [base.Vx, base.P])).toEqual([[0, 4.5e3], [-6e3, -4.5e3]].map((row) => row.map((value) => expect.closeTo(value, 6))));
  });

  it("a leaning column hands its push along its line to the others", () => {
    const columns = six().map((c, i) => (i === 1 ? { ...c, ends: ends([false, false], [true, false]) } : c));
    const results = solved(columns, [over(plan, { Fx: 12e3 })]).columns;
    expect(results.map(({ base }) => base.Vx)).toEqual([3e3, 0, 3e3, 2.25e3, 1.5e3, 2.25e3].map((value) => expect.closeTo(value, 6)));
  });
});

describe("what cannot be shared so, in words", () => {
  it.each<[string, readonly RoofColumn[], readonly RoofBrace[], RegExp]>([
    ["one line of columns", [column(2, 3, { top: "fixed" }), column(10, 3, { top: "fixed" })], [], /two lines of columns or more/u],
    ["three columns in a triangle", [column(2, 1), column(10, 1), column(6, 5)], [], /two lines of columns or more/u],
    ["a line that leans along itself", six().map((c, i) => (i < 3 ? { ...c, ends: ends([false, false], [true, false]) } : c)), [], /nothing holds the columns 1, 2, 3 against swaying east to west: a roof that is not rigid/u],
    ["columns that lean across their lines", six({ ends: ends([true, false], [false, false]) }), [], /against swaying north to south/u],
  ])("%s", (_, columns, braces, words) => {
    expect(mechanismOf(columns, braces)).toMatch(words);
  });
});

const within = (a: number, b: number) => fc.double({ min: a, max: b, noNaN: true });
const push = within(-1e4, 1e4);
const anyEnds: fc.Arbitrary<EndsHeld> = fc.constantFrom({ base: true, top: false }, { base: true, top: true }, { base: false, top: true });
const anyRoof = fc
  .record({
    lines: fc.array(fc.array(within(0.5, 1), { minLength: 2, maxLength: 4 }), { minLength: 2, maxLength: 3 }),
    heights: fc.array(within(2, 5), { minLength: 12, maxLength: 12 }),
    off: fc.array(within(-0.1, 0.1), { minLength: 12, maxLength: 12 }),
    x: anyEnds,
    y: anyEnds,
  })
  .map(({ lines, heights, off, x, y }) => {
    let n = 0;
    return lines.flatMap((steps, j) => {
      let at = 0;
      return steps.map((step) => {
        at += 12 * (step / 5);
        n += 1;
        return column(at, 1 + 2 * j + off[n % 12], { height: heights[n % 12], base: -0.3 * j, ends: { x, y } });
      });
    });
  })
  // A top held alone needs a beam to another column in line.
  .filter((columns) => !("mechanism" in tributaryRoof(columns, [], plan)));
const anyLoads = fc.array(
  fc.record({ x1: within(0, 5), x2: within(6, 12), y1: within(0, 2.5), y2: within(3, 6), z: within(2, 6), Fx: push, Fy: push, Fz: push, spread: fc.boolean() }),
  { minLength: 1, maxLength: 4 },
);

describe("laws", () => {
  it("reactions balance the loads to 1e-9, forces and moments about both plan axes", () => {
    fc.assert(
      fc.property(anyRoof, anyLoads, (columns, drawn) => {
        const loads = drawn.map(({ z, Fx, Fy, Fz, spread, ...area }): RoofLoad => {
          const { over: _, ...point } = over(area, { Fx, Fy, Fz }, z);
          return spread ? over(area, { Fx, Fy, Fz }, z) : point;
        });
        const sum = [0, 0, 0, 0, 0];
        let size = 0;
        const add = (sign: number, x: number, y: number, z: number, F: readonly number[], M: readonly number[]): void => {
          [...F, y * F[2] - z * F[1] + M[0], z * F[0] - x * F[2] + M[1]].forEach((value, i) => {
            sum[i] += sign * value;
            size += Math.abs(value);
          });
        };
        for (const { x, y, z, Fx, Fy, Fz } of loads) add(1, x, y, z, [Fx, Fy, Fz], [0, 0]);
        solved(columns, loads).columns.forEach(({ base }, i) => add(-1, columns[i].x, columns[i].y, columns[i].base, [base.Vx, base.Vy, -base.P], [base.Mx, base.My]));
        for (const rest of sum) expect(Math.abs(rest)).toBeLessThanOrEqual(1e-9 * size + 1e-9);
      }),
      { numRuns: 200 },
    );
  });

  it("a structure mirrored east to west has mirrored reactions", () => {
    fc.assert(
      fc.property(anyRoof, anyLoads, (columns, drawn) => {
        const loads = drawn.map(({ z, Fx, Fy, Fz, ...area }) => over(area, { Fx, Fy, Fz }, z));
        const first = solved(columns, loads).columns;
        const second = solved(
          columns.map((c) => ({ ...c, x: 12 - c.x })),
          drawn.map(({ z, Fx, Fy, Fz, x1, x2, y1, y2 }) => over({ x1: 12 - x2, x2: 12 - x1, y1, y2 }, { Fx: -Fx, Fy, Fz }, z)),
        ).columns;
        const size = Math.max(...first.flatMap(({ base }) => [base.P, base.Vx, base.Vy, base.Mx, base.My].map(Math.abs)), 1);
        first.forEach(({ base }, i) => {
          const other = second[i].base;
          [base.P - other.P, base.Vx + other.Vx, base.Vy - other.Vy, base.Mx - other.Mx, base.My + other.My].forEach((rest) => expect(Math.abs(rest)).toBeLessThan(1e-7 * size));
        });
      }),
      { numRuns: 100 },
    );
  });
});

it("shows the loads that went in and the bases that came out", () => {
  const roof = tributaryRoof(six(), [], plan);
  if ("mechanism" in roof) throw new Error(roof.mechanism);
  const args = { roof, loads: [over(plan, { Fz: -12e3 })] };
  const { given, found } = sharedByTributary.show(args, sharedByTributary.run(args));
  expect(given.map(({ symbol, value }) => [symbol, value])).toEqual([["n_l", 2], ["F_x", 0], ["F_y", 0], ["F_z", -12e3]]);
  expect(found.filter(({ symbol }) => symbol.startsWith("P")).map(({ value }) => value)).toEqual([2.25e3, 1.5e3, 2.25e3, 2.25e3, 1.5e3, 2.25e3].map((value) => expect.closeTo(value, 6)));
});
