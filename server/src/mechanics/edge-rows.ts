/** Rods seen from one edge of the concrete: in rows that run along it, the nearest first, and what a wedge of concrete before a row meets. */
import type { Routine } from "../formula/types.js";
import { unionArea, type Point, type Rectangle } from "./rectangles.js";

/** The four edges of a member seen from above, by the side they lie on. */
export const edgeNames = ["west", "east", "south", "north"] as const;
export type EdgeName = (typeof edgeNames)[number];

/** Rods at one distance from an edge, or nearly so. Lengths m. */
export interface EdgeRow {
  /** From the nearest rod of the row to the edge. */
  readonly distance: number;
  /** Places along the edge, from the middle of the plate, in order. */
  readonly along: readonly number[];
  /** Which of the rods these are, in the order given, as places in that list. */
  readonly indices: readonly number[];
  /** The member's ends along the edge, from the middle of the plate. */
  readonly from: number;
  readonly to: number;
}

export interface EdgeRowsArgs {
  readonly rods: readonly Point[];
  readonly member: Rectangle;
  readonly edge: EdgeName;
}

/** Rods within an inch of each other's line stand in one row, m: rows are seldom built straight, and none are drawn so near to each other. */
const sameRow = 0.0254;

const distanceTo = ({ x, y }: Point, member: Rectangle, edge: EdgeName): number =>
  edge === "west" ? x - member.west : edge === "east" ? member.east - x : edge === "south" ? y - member.south : member.north - y;

/** The rows of rods along an edge, from the nearest to the farthest. */
export function edgeRows({ rods, member, edge }: EdgeRowsArgs): readonly EdgeRow[] {
  const runsAlongY = edge === "west" || edge === "east";
  const placed = rods
    .map((rod, index) => ({ index, along: runsAlongY ? rod.y : rod.x, distance: distanceTo(rod, member, edge) }))
    .sort((a, b) => a.distance - b.distance);
  const rows: (typeof placed)[] = [];
  for (const rod of placed) {
    const row = rows[rows.length - 1];
    if (row && rod.distance - row[0].distance < sameRow) row.push(rod);
    else rows.push([rod]);
  }
  const [from, to] = runsAlongY ? [member.south, member.north] : [member.west, member.east];
  return rows.map((row) => {
    row.sort((a, b) => a.along - b.along);
    return { distance: row[0].distance, along: row.map(({ along }) => along), indices: row.map(({ index }) => index), from, to };
  });
}

/** Every two neighbors of a row, as rows of their own; a row of one or two stays as it is. */
export function neighborPairs(row: EdgeRow): readonly EdgeRow[] {
  if (row.along.length <= 2) return [row];
  return row.along.slice(1).map((_, i) => ({ ...row, along: row.along.slice(i, i + 2), indices: row.indices.slice(i, i + 2) }));
}

/** What is measured on a row: its gaps, its ends, and how far it stands from the line of the force. Lengths m. */
export interface RowMeasures {
  /** Largest gap between neighbors; 0 for one rod. */
  readonly spacing: number;
  /** From the first rod to the last. */
  readonly extent: number;
  /** From the outer rods to the member's ends: the lesser and the greater. */
  readonly leastEnd: number;
  readonly mostEnd: number;
  /** From the middle of the plate to the middle of the row's rods. */
  readonly offset: number;
}

export function measureRow({ along, from, to }: EdgeRow): RowMeasures {
  let spacing = 0;
  for (let i = 1; i < along.length; i += 1) spacing = Math.max(spacing, along[i] - along[i - 1]);
  const first = along[0];
  const last = along[along.length - 1];
  const offset = Math.abs(along.reduce((sum, place) => sum + place, 0) / along.length);
  return { spacing, extent: last - first, leastEnd: Math.min(first - from, to - last), mostEnd: Math.max(first - from, to - last), offset };
}

export interface SideProjectionArgs {
  readonly row: EdgeRow;
  /** Half width and depth of the wedge before one rod, on the side of the member, m. */
  readonly reach: number;
  /** Depth of the member, m. */
  readonly thickness: number;
}

/** Area on the side of a member reached by a row of rods: the union of their rectangles, cut off at the ends and at the underside, m². */
export function sideProjection({ row, reach, thickness }: SideProjectionArgs): number {
  const rectangles = row.along.map((place) => ({ west: place - reach, east: place + reach, south: 0, north: reach }));
  return unionArea(rectangles, { west: row.from, east: row.to, south: 0, north: thickness });
}

/** {@link sideProjection} as a step of a calculation. */
export const sideProjected: Routine<SideProjectionArgs, number> = {
  id: "mechanics.side-projection",
  title: "Projected area on the side of the concrete",
  method: "union of the rectangles before the rods, cut off at the ends and the underside of the member; exact",
  source: "geometry; the rectangles are those of ACI 318-19, 17.7.2.1",
  run: sideProjection,
  show: ({ row, reach, thickness }, area) => ({
    given: [
      { symbol: "n", meaning: "rods in the row", kind: "number", value: row.along.length },
      { symbol: "r", meaning: "reach to each side of a rod and down", kind: "length", value: reach },
      { symbol: "L", meaning: "length of the edge", kind: "length", value: row.to - row.from },
      { symbol: "h_a", meaning: "depth of the concrete", kind: "length", value: thickness },
    ],
    found: [{ symbol: "A", meaning: "projected area", kind: "area", value: area }],
  }),
};

/** {@link measureRow} as a step of a calculation. */
export const rowMeasures: Routine<EdgeRow, RowMeasures> = {
  id: "mechanics.edge-row",
  title: "Row of rods along an edge",
  method: "distances of the row to the edge beside it and to the ends of that edge",
  source: "geometry",
  run: measureRow,
  show: (row, found) => ({
    given: [
      { symbol: "n", meaning: "rods in the row", kind: "number", value: row.along.length },
      { symbol: "c_a1", meaning: "from the row to the edge", kind: "length", value: row.distance },
    ],
    found: [
      { symbol: "c_a2", meaning: "lesser distance to an end of the edge", kind: "length", value: found.leastEnd },
      { symbol: "c_a2,max", meaning: "greater distance to an end of the edge", kind: "length", value: found.mostEnd },
      { symbol: "s", meaning: "largest spacing in the row", kind: "length", value: found.spacing },
      { symbol: "e'_V", meaning: "from the line of the shear to the middle of the row", kind: "length", value: found.offset },
    ],
  }),
};
