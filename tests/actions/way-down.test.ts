/** Laws of statics and of symmetry for the way from the roof to the column bases. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ColumnActions, Edge, Forces } from "../../server/src/actions/demand.js";
import { actionsOf } from "../../server/src/actions/index.js";
import { columnsUnder, stripLoads } from "../../server/src/actions/way-down.js";
import type { RoofPlane } from "../../server/src/actions/roof-plane.js";
import { plainCalc } from "../../server/src/formula/calc.js";
import { allEdges, baseOf, columnFields, columnsOf, foot, psf, solved, structureOf, totalOf, unknownOf, type Given, type Line } from "./given.js";

interface Drawn {
  readonly length: number;
  readonly width: number;
  readonly meanHeight: number;
  readonly slope: number;
  readonly shape: RoofPlane["shape"];
  readonly lowEdge: Edge;
  readonly ridge: "x" | "y";
  readonly exposure: "B" | "C" | "D";
  readonly top: "pinned" | "fixed";
  readonly columns: readonly { readonly u: number; readonly v: number; readonly height: number }[];
}

// Plan sizes and heights, in feet, for which h/L is within the range of the figures in both directions.
const drawn: fc.Arbitrary<Drawn> = fc.record({
  length: fc.double({ min: 17, max: 40, noNaN: true }),
  width: fc.double({ min: 17, max: 40, noNaN: true }),
  meanHeight: fc.double({ min: 10, max: 17, noNaN: true }),
  slope: fc.double({ min: 0, max: 0.9, noNaN: true }),
  shape: fc.constantFrom("monoslope" as const, "pitched" as const, "troughed" as const),
  lowEdge: fc.constantFrom(...allEdges),
  ridge: fc.constantFrom("x" as const, "y" as const),
  exposure: fc.constantFrom("B" as const, "C" as const, "D" as const),
  top: fc.constantFrom("pinned" as const, "fixed" as const),
  // One column in each quarter of the plan, so that the roof is always held.
  columns: fc.tuple(
    ...[[0, 0], [1, 0], [0, 1], [1, 1]].map(([i, j]) =>
      fc.record({
        u: fc.double({ min: 0.05 + 0.55 * i, max: 0.4 + 0.55 * i, noNaN: true }),
        v: fc.double({ min: 0.05 + 0.55 * j, max: 0.4 + 0.55 * j, noNaN: true }),
        height: fc.double({ min: 6, max: 15, noNaN: true }),
      }),
    ),
  ),
});

const shapeFields = ({ shape, lowEdge, ridge }: Drawn) => ({
  shape,
  "low edge": shape === "monoslope" ? lowEdge : undefined,
  ridge: shape === "pitched" ? `along ${ridge}` : undefined,
  valley: shape === "troughed" ? `along ${ridge}` : undefined,
});

const given = (of: Drawn): Given & { lines: readonly Line[] } => ({
  roof: { length: of.length * foot, width: of.width * foot, "mean height": of.meanHeight * foot, slope: of.slope, ...shapeFields(of), "flow below": "either" },
  site: { exposure: of.exposure },
  lines: of.columns.map(({ u, v, height }, i) => ({
    name: `c${i}`,
    places: [{ x: u * of.length, y: v * of.width }],
    fields: { height: height * foot, "top of column": of.top },
  })),
});

/** Elevation of the roof plane from its low edges up, written apart from the program's own form. */
function elevation({ length, width, meanHeight, slope, shape, lowEdge, ridge }: Drawn, x: number, y: number): number {
  if (shape !== "monoslope") {
    const [size, t] = ridge === "x" ? [width, y] : [length, x];
    const run = shape === "pitched" ? Math.min(t, size - t) : Math.max(t, size - t) - size / 2;
    return (meanHeight + slope * (run - size / 4)) * foot;
  }
  const run = { south: y, north: width - y, west: x, east: length - x }[lowEdge];
  const whole = lowEdge === "south" || lowEdge === "north" ? width : length;
  return (meanHeight + slope * (run - whole / 2)) * foot;
}

describe("statics", () => {
  it("the base reactions of every case balance what is on the roof", () => {
    fc.assert(
      fc.property(drawn, (of) => {
        const { actions, columns } = solved(given(of));
        const center = { x: (of.length * foot) / 2, y: (of.width * foot) / 2, z: of.meanHeight * foot };
        for (const { loadCase, total } of actions.resultants) {
          const sum = { P: 0, Vx: 0, Vy: 0, Mx: 0, My: 0 };
          let size = 0;
          columns.forEach((column, i) => {
            const { u, v, height } = of.columns[i];
            const top = column.cases.find((one) => one.loadCase.id === loadCase.id)?.top as Forces;
            const base = baseOf(column, loadCase.id);
            // The weight of the column is its own; the rest comes from the roof.
            const P = loadCase.id === "dead" ? top.P : base.P;
            const x = u * of.length * foot - center.x;
            const y = v * of.width * foot - center.y;
            const z = elevation(of, u * of.length, v * of.width) - height * foot - center.z;
            sum.P += P;
            sum.Vx += base.Vx;
            sum.Vy += base.Vy;
            sum.Mx += base.Mx - y * P - z * base.Vy;
            sum.My += base.My + z * base.Vx + x * P;
            size += Math.abs(P) + Math.abs(base.Vx) + Math.abs(base.Vy) + Math.abs(base.Mx) + Math.abs(base.My);
          });
          for (const part of ["P", "Vx", "Vy", "Mx", "My"] as const) expect(Math.abs(sum[part] - total[part])).toBeLessThan(1e-9 * size * 20);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("a column bends between its ends by its shear alone", () => {
    fc.assert(
      fc.property(drawn, (of) => {
        const { columns } = solved(given(of));
        // The solution sets to zero what is below 1e-10 of its largest number, so a shear or a moment may lack that much beside a heavy roof.
        const largest = Math.max(...columns.flatMap(({ cases }) => cases.flatMap(({ top, base }) => [top.P, base.P, base.Mx, base.My].map(Math.abs))));
        columns.forEach((column, i) => {
          const height = of.columns[i].height * foot;
          for (const { top, base } of column.cases) {
            const size = 2e-10 * largest * (1 + height) + 1e-9 * (Math.abs(base.Mx) + Math.abs(base.My) + Math.abs(top.Vx) + Math.abs(top.Vy) + 1) * height;
            expect(Math.abs(base.Mx - (top.Mx - top.Vy * height))).toBeLessThanOrEqual(size);
            expect(Math.abs(base.My - (top.My + top.Vx * height))).toBeLessThanOrEqual(size);
          }
        });
      }),
      { numRuns: 30 },
    );
  });

  it("column tops are in the roof plane: 2 in 12 rising north from a low edge south", () => {
    const roof: RoofPlane = { shape: "monoslope", slope: 2 / 12, length: 44 * foot, width: 24 * foot, lowEdge: "south", meanHeight: 11 * foot };
    const section = columnFields.section as never;
    const bases = columnsUnder(
      roof,
      [
        { x: 3 * foot, y: 3 * foot, height: 9 * foot, section, top: "pinned" },
        { x: 3 * foot, y: 21 * foot, height: 12 * foot, section, top: "pinned" },
      ],
      plainCalc,
    ).map(({ base }) => base / foot);
    // Tops at 11 - 9/6 = 9.5 ft and at 12.5 ft.
    expect(bases).toEqual([expect.closeTo(0.5, 9), expect.closeTo(0.5, 9)]);
  });

  it("a pressure normal to the slope pushes down and toward the high edge", () => {
    const roof: RoofPlane = { shape: "monoslope", slope: 0.25, length: 40 * foot, width: 20 * foot, lowEdge: "east", meanHeight: 12 * foot };
    const [load] = stripLoads(roof, [{ x1: 0, x2: 10 * foot, y1: 0, y2: 20 * foot, pressure: 20 * psf }], plainCalc);
    const pound = psf * foot ** 2;
    expect([load.Fx / pound, load.Fy, load.Fz / pound]).toEqual([expect.closeTo(-1000, 6), 0, expect.closeTo(-4000, 6)]);
    // Its middle is 15 ft west of the middle of the roof, 3.75 ft above mean height.
    expect([load.x / foot, load.y / foot, load.z / foot]).toEqual([5, 10, 15.75].map((value) => expect.closeTo(value, 9)));
  });
});

type Parts = readonly [P: number, Vx: number, Vy: number, Mx: number, My: number];

const partsOf = ({ P, Vx, Vy, Mx, My }: Forces): Parts => [P, Vx, Vy, Mx, My];

/** Compares two structures case by case, after turning the forces of the first. */
function expectSame(first: readonly ColumnActions[], second: readonly ColumnActions[], edge: Readonly<Record<Edge, Edge>>, turn: (parts: Parts) => Parts): void {
  first.forEach((column, i) => {
    for (const { loadCase, base } of column.cases) {
      const way = loadCase.from ?? (["north", "east", "south", "west"] as const).find((one) => loadCase.id === `least-sideways/${one}`);
      const id = way ? loadCase.id.replace(`/${way}`, `/${edge[way]}`) : loadCase.id;
      const other = partsOf(baseOf(second[i], id));
      turn(partsOf(base)).forEach((value, part) => {
        const size = Math.max(...other.map(Math.abs), 1);
        expect(Math.abs(value - other[part])).toBeLessThan(1e-7 * size);
      });
    }
  });
}

describe("symmetry", () => {
  it("a structure mirrored east to west has mirrored reactions", () => {
    const mirror: Readonly<Record<Edge, Edge>> = { north: "north", south: "south", east: "west", west: "east" };
    fc.assert(
      fc.property(drawn, (of) => {
        const other: Drawn = { ...of, lowEdge: mirror[of.lowEdge], columns: of.columns.map((column) => ({ ...column, u: 1 - column.u })) };
        expectSame(solved(given(of)).columns, solved(given(other)).columns, mirror, ([P, Vx, Vy, Mx, My]) => [P, -Vx, Vy, Mx, -My]);
      }),
      { numRuns: 30 },
    );
  });

  it("a structure turned a quarter clockwise has turned reactions", () => {
    const turned: Readonly<Record<Edge, Edge>> = { north: "east", east: "south", south: "west", west: "north" };
    fc.assert(
      fc.property(drawn, (of) => {
        const other: Drawn = {
          ...of,
          length: of.width,
          width: of.length,
          lowEdge: turned[of.lowEdge],
          ridge: of.ridge === "x" ? "y" : "x",
          columns: of.columns.map(({ u, v, height }) => ({ u: v, v: 1 - u, height })),
        };
        expectSame(solved(given(of)).columns, solved(given(other)).columns, turned, ([P, Vx, Vy, Mx, My]) => [P, Vy, -Vx, My, -Mx]);
      }),
      { numRuns: 30 },
    );
  });

  it("a line of four reads as four columns", () => {
    const places = [0, 1, 2, 3].map((i) => ({ x: 3 + 6 * i, y: 3 }));
    const north = { name: "north", places: [{ x: 3, y: 17 }, { x: 21, y: 17 }] };
    const asLine = solved({ lines: [{ name: "south", places }, north] }).columns;
    const apart = solved({ lines: [...places.map((place, i) => ({ name: `s${i}`, places: [place] })), north] }).columns;
    expect(asLine.map(({ cases }) => cases)).toEqual(apart.map(({ cases }) => cases));
  });
});

describe("the sense of the wind, clear flow, case A", () => {
  it("onto the high edge lifts and onto the low edge presses, from 7.5 to 15 degrees", () => {
    fc.assert(
      fc.property(fc.constantFrom(...allEdges), fc.double({ min: 7.5, max: 15, noNaN: true }), (lowEdge, degrees) => {
        const opposite: Readonly<Record<Edge, Edge>> = { north: "south", south: "north", east: "west", west: "east" };
        const { actions } = solved({ roof: { "low edge": lowEdge, slope: Math.tan((degrees * Math.PI) / 180) } });
        expect(totalOf(actions, `wind/${opposite[lowEdge]}/A/clear`).P).toBeLessThan(0);
        expect(totalOf(actions, `wind/${lowEdge}/A/clear`).P).toBeGreaterThan(0);
      }),
    );
  });

  it.each(allEdges)("along the slope it pushes downwind, also from the %s", (from) => {
    for (const lowEdge of allEdges) {
      const { actions } = solved({ roof: { "low edge": lowEdge } });
      const { Vx, Vy } = totalOf(actions, `wind/${from}/A/clear`);
      const away = { north: -Vy, south: Vy, west: Vx, east: -Vx }[from];
      const along = (from === "north" || from === "south") === (lowEdge === "north" || lowEdge === "south");
      if (along) expect(away).toBeGreaterThan(0);
      else expect(Math.abs(away)).toBe(0);
    }
  });

  it("twice the pressure gives twice every wind reaction and leaves the dead load", () => {
    const once = solved().columns;
    const twice = solved({ site: { "topographic factor": 2 } }).columns;
    once.forEach((column, i) => {
      for (const { loadCase, base } of column.cases) {
        const factor = loadCase.type !== "W" || loadCase.id.endsWith("minimum") ? 1 : 2;
        expect(baseOf(twice[i], loadCase.id).P).toBeCloseTo(factor * base.P, 6);
      }
    });
  });
});

describe("roofs that cannot be carried down say why", () => {
  it("a single line of pinned columns is a mechanism", () => {
    expect(unknownOf({ lines: [{ name: "south", places: [{ x: 3, y: 10 }, { x: 21, y: 10 }] }] })).toMatch(/in one line/u);
  });

  it("the same line with fixed tops stands", () => {
    const lines = [{ name: "south", places: [{ x: 3, y: 10 }, { x: 21, y: 10 }], fields: { "top of column": "fixed" } }];
    expect(columnsOf(actionsOf(structureOf({ lines })), lines)).toHaveLength(2);
  });

  it("a roof that is not rigid in its plane needs lines of columns", () => {
    const lines = [{ name: "south", places: [{ x: 3, y: 10 }, { x: 21, y: 10 }], fields: { "top of column": "fixed" } }];
    expect(unknownOf({ roof: { "rigid in plane": "no" }, lines })).toMatch(/tributary width needs two lines of columns.*state each column's reactions/u);
  });
});
