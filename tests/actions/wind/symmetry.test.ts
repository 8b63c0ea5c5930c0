/** Laws of symmetry for all that the wind does to a roof and what stands below it: drag, fascias of different depth, members, blocked flow and walls. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ColumnActions, Edge, Forces } from "../../../server/src/actions/demand.js";
import { baseOf, entries, foot, recordOf, solved, type Line } from "../given.js";

interface Drawn {
  readonly length: number;
  readonly width: number;
  readonly slope: number;
  readonly shape: "monoslope" | "pitched" | "troughed";
  readonly lowEdge: Edge;
  readonly ridge: "x" | "y";
  readonly wide: number;
  readonly fascia: Readonly<Record<Edge, number>>;
  readonly goods: Readonly<Record<Edge, number>>;
  readonly walls: Readonly<Record<Edge, number>>;
  readonly carriedBy: string;
  readonly faces: "x" | "y";
  readonly columns: readonly { readonly u: number; readonly v: number; readonly height: number }[];
}

const depth = fc.constantFrom(0, 1, 2.5);
const share = fc.constantFrom(0, 0.4, 0.7);
const perEdge = <T>(of: fc.Arbitrary<T>) => fc.record({ north: of, east: of, south: of, west: of });

const drawn: fc.Arbitrary<Drawn> = fc.record({
  length: fc.double({ min: 18, max: 40, noNaN: true }),
  width: fc.double({ min: 18, max: 40, noNaN: true }),
  slope: fc.constantFrom(0, 0.05, 0.2, 0.6),
  shape: fc.constantFrom("monoslope" as const, "pitched" as const, "troughed" as const),
  lowEdge: fc.constantFrom("north" as const, "east" as const, "south" as const, "west" as const),
  ridge: fc.constantFrom("x" as const, "y" as const),
  wide: fc.constantFrom(0.3, 0.5, 1),
  fascia: perEdge(depth),
  goods: perEdge(share),
  walls: perEdge(fc.constantFrom(0, 0, 0.15, 0.6)),
  carriedBy: fc.constantFrom("columns", "footing and roof", "themselves"),
  faces: fc.constantFrom("x" as const, "y" as const),
  columns: fc.tuple(
    ...[[0, 0], [1, 0], [0, 1], [1, 1]].map(([i, j]) =>
      fc.record({
        u: fc.double({ min: 0.05 + 0.55 * i, max: 0.4 + 0.55 * i, noNaN: true }),
        v: fc.double({ min: 0.05 + 0.55 * j, max: 0.4 + 0.55 * j, noNaN: true }),
        height: fc.double({ min: 7, max: 14, noNaN: true }),
      }),
    ),
  ),
});

const byEdgeField = (of: Readonly<Record<Edge, number>>, factor: number) => recordOf(Object.fromEntries(Object.entries(of).map(([edge, value]) => [`${edge} edge`, value * factor])));

function solvedAs(of: Drawn): readonly ColumnActions[] {
  const lines: readonly Line[] = of.columns.map(({ u, v, height }, i) => ({
    name: `c${i}`,
    places: [{ x: u * of.length, y: v * of.width }],
    fields: { height: height * foot, "width in the wind": of.wide * foot },
  }));
  const roof = {
    shape: of.shape,
    slope: of.slope,
    length: of.length * foot,
    width: of.width * foot,
    "mean height": 12 * foot,
    "low edge": of.shape === "monoslope" ? of.lowEdge : undefined,
    ridge: of.shape === "pitched" ? `along ${of.ridge}` : undefined,
    valley: of.shape === "troughed" ? `along ${of.ridge}` : undefined,
    fascia: byEdgeField(of.fascia, foot),
    blocked: recordOf({ goods: byEdgeField(of.goods, 1), walls: { ...byEdgeField(of.walls, of.shape === "troughed" ? 0.3 : 1), ...recordOf({ "carried by": of.carriedBy }) } }),
    "in the wind": entries({ beams: { area: 3, faces: of.faces === "x" ? "east and west" : "north and south", height: 11 * foot, solidity: 0.05 } }),
  };
  return solved({ roof, lines }).columns;
}

const turnedEdges = (of: Readonly<Record<Edge, number>>, to: Readonly<Record<Edge, Edge>>) =>
  Object.fromEntries(Object.entries(of).map(([edge, value]) => [to[edge as Edge], value])) as Record<Edge, number>;

type Parts = readonly [P: number, Vx: number, Vy: number, Mx: number, My: number];
const partsOf = ({ P, Vx, Vy, Mx, My }: Forces): Parts => [P, Vx, Vy, Mx, My];

function expectSame(first: readonly ColumnActions[], second: readonly ColumnActions[], edge: Readonly<Record<Edge, Edge>>, turn: (parts: Parts) => Parts): void {
  first.forEach((column, i) => {
    expect(second[i].cases).toHaveLength(column.cases.length);
    for (const { loadCase, base } of column.cases.filter((one) => one.loadCase.type === "W")) {
      const id = loadCase.id.replace(/(?<=^wind\/|\/and-)(?:north|east|south|west)/gu, (one) => edge[one as Edge]);
      const other = partsOf(baseOf(second[i], id));
      const size = Math.max(...other.map(Math.abs), 1);
      turn(partsOf(base)).forEach((value, part) => expect(Math.abs(value - other[part]), id).toBeLessThan(1e-7 * size));
    }
    // What tries the column top does not turn.
    const uplift = (of: ColumnActions) => Math.min(...of.atTop.map(({ top }) => top.P));
    expect(Math.abs(uplift(column) - uplift(second[i]))).toBeLessThan(1e-6 * Math.max(1, Math.abs(uplift(column))));
  });
}

describe("with drag, fascias, members, blocked flow and walls", () => {
  it("a structure mirrored north to south has mirrored reactions", () => {
    const mirror: Readonly<Record<Edge, Edge>> = { north: "south", south: "north", east: "east", west: "west" };
    fc.assert(
      fc.property(drawn, (of) => {
        const other = { ...of, lowEdge: mirror[of.lowEdge], fascia: turnedEdges(of.fascia, mirror), goods: turnedEdges(of.goods, mirror), walls: turnedEdges(of.walls, mirror), columns: of.columns.map((column) => ({ ...column, v: 1 - column.v })) };
        expectSame(solvedAs(of), solvedAs(other), mirror, ([P, Vx, Vy, Mx, My]) => [P, Vx, -Vy, -Mx, My]);
      }),
      { numRuns: 25 },
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
          faces: of.faces === "x" ? "y" : "x",
          fascia: turnedEdges(of.fascia, turned),
          goods: turnedEdges(of.goods, turned),
          walls: turnedEdges(of.walls, turned),
          columns: of.columns.map(({ u, v, height }) => ({ u: v, v: 1 - u, height })),
        };
        expectSame(solvedAs(of), solvedAs(other), turned, ([P, Vx, Vy, Mx, My]) => [P, Vy, -Vx, My, -Mx]);
      }),
      { numRuns: 25 },
    );
  });
});
