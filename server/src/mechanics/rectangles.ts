import type { Routine } from "../formula/types.js";

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A rectangle along the axes, m; empty unless west < east and south < north. */
export interface Rectangle {
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

/** The part two rectangles share; may be empty. */
export function overlap(a: Rectangle, b: Rectangle): Rectangle {
  return {
    west: Math.max(a.west, b.west),
    east: Math.min(a.east, b.east),
    south: Math.max(a.south, b.south),
    north: Math.min(a.north, b.north),
  };
}

/** Area, m²; 0 when empty. */
export function rectangleArea(r: Rectangle): number {
  return r.west < r.east && r.south < r.north ? (r.east - r.west) * (r.north - r.south) : 0;
}

/**
 * Area covered by at least one of the rectangles, clipped to `member` when given, m². Exact: the plane is cut at every west and east
 * edge, and in each strip the covered lengths are added.
 */
export function unionArea(rectangles: readonly Rectangle[], member?: Rectangle): number {
  const clipped = (member ? rectangles.map((r) => overlap(r, member)) : [...rectangles]).filter((r) => rectangleArea(r) > 0);
  const cuts = [...new Set(clipped.flatMap((r) => [r.west, r.east]))].sort((a, b) => a - b);
  const fromSouth = clipped.sort((a, b) => a.south - b.south);
  let area = 0;
  for (let i = 1; i < cuts.length; i++) {
    let covered = 0;
    let reached = Number.NEGATIVE_INFINITY;
    for (const r of fromSouth) {
      if (r.west > cuts[i - 1] || r.east < cuts[i] || r.north <= reached) continue;
      covered += r.north - Math.max(r.south, reached);
      reached = r.north;
    }
    area += covered * (cuts[i] - cuts[i - 1]);
  }
  return area;
}

/** Anchors by their centers, the half side of each one's square, and the concrete that there is; m. */
export interface ProjectionArgs {
  readonly anchors: readonly Point[];
  readonly reach: number;
  readonly member: Rectangle;
}

export interface Projection {
  /** Union of the squares about the anchors, within the member, m². */
  readonly area: number;
  /** The rectangle around all the squares, within the member, m². */
  readonly boundingArea: number;
}

/**
 * Area on the surface of a member reached by a group of anchors: the union of a square of half side `reach` about each anchor,
 * clipped to the member. For a rectangular pattern whose spacings are at most twice the reach the union is the rectangle
 * around the group; for an L, a diamond or a ring of anchors it is less, which is on the safe side of drawing one rectangle about
 * them all. For spacings beyond twice the reach it is the sum of separate squares. Limits such as n times the area of a single
 * anchor belong to the codes and are not applied here.
 */
export function projectedArea({ anchors, reach, member }: ProjectionArgs): Projection {
  const squares = anchors.map(({ x, y }) => ({ west: x - reach, east: x + reach, south: y - reach, north: y + reach }));
  if (squares.length === 0) return { area: 0, boundingArea: 0 };
  const around = squares.reduce((a, b) => ({
    west: Math.min(a.west, b.west),
    east: Math.max(a.east, b.east),
    south: Math.min(a.south, b.south),
    north: Math.max(a.north, b.north),
  }));
  return { area: unionArea(squares, member), boundingArea: rectangleArea(overlap(around, member)) };
}

/** {@link projectedArea} as a step of a calculation. */
export const anchorProjection: Routine<ProjectionArgs, Projection> = {
  id: "mechanics.projected-area",
  title: "Projected area of an anchor group",
  method: "union of the squares about the anchors, clipped to the edges of the member; exact",
  source: "geometry; the squares are those of ACI 318-19, 17.6.2.1",
  run: projectedArea,
  show: ({ anchors, reach, member }, { area }) => ({
    given: [
      { symbol: "n", meaning: "anchors in the group", kind: "number", value: anchors.length },
      { symbol: "r", meaning: "reach to each side of an anchor", kind: "length", value: reach },
      { symbol: "B", meaning: "width of the member", kind: "length", value: member.east - member.west },
      { symbol: "L", meaning: "length of the member", kind: "length", value: member.north - member.south },
    ],
    found: [{ symbol: "A", meaning: "projected area", kind: "area", value: area }],
  }),
};
