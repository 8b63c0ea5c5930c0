/**
 * Where the roof is in space, and which way is up: one plane, or two halves that meet along a ridge (pitched) or a valley (troughed) at
 * the middle of the plan. Plan axes: x east, y north, origin at the southwest corner.
 */
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import { isAbove, isBelow } from "../mechanics/compare.js";
import type { Edge } from "./demand.js";

interface RoofSize {
  /** Rise over run; of each half where there are two. */
  readonly slope: number;
  /** Plan size along x. */
  readonly length: number;
  /** Plan size along y. */
  readonly width: number;
  readonly meanHeight: number;
}

export interface Monoslope extends RoofSize {
  readonly shape: "monoslope";
  readonly lowEdge: Edge;
}

/** Two equal halves. Lengths m. */
export interface TwoHalves extends RoofSize {
  readonly shape: "pitched" | "troughed";
  /** Plan axis the ridge or the valley runs along. */
  readonly ridge: "x" | "y";
}

export type RoofPlane = Monoslope | TwoHalves;
export type RoofShape = RoofPlane["shape"];

export const edges: readonly Edge[] = ["north", "east", "south", "west"];

export const oppositeEdge: Readonly<Record<Edge, Edge>> = { north: "south", east: "west", south: "north", west: "east" };

/** Unit vector away from an edge, into the plan: the way wind from that edge blows, and the way a roof rises from its low edge. */
export const inward: Readonly<Record<Edge, { readonly x: number; readonly y: number }>> = {
  north: { x: 0, y: -1 },
  east: { x: -1, y: 0 },
  south: { x: 0, y: 1 },
  west: { x: 1, y: 0 },
};

export type EdgeSense = "low edge" | "high edge" | "side edge";

/** What the wind from an edge meets. Both edges along the ridge of a pitched roof are low, both along a valley are high. */
export function senseOf(edge: Edge, roof: RoofPlane): EdgeSense {
  if (roof.shape === "monoslope") return edge === roof.lowEdge ? "low edge" : edge === oppositeEdge[roof.lowEdge] ? "high edge" : "side edge";
  const isAlongX = edge === "east" || edge === "west";
  if (isAlongX === (roof.ridge === "x")) return "side edge";
  return roof.shape === "pitched" ? "low edge" : "high edge";
}

/** The edge the wind meets, in the words of the shape. */
export function edgeWords(edge: Edge, roof: RoofPlane): string {
  const sense = senseOf(edge, roof);
  if (roof.shape !== "pitched") return sense;
  return sense === "side edge" ? "gable end" : "eave";
}

/** Plan size of the roof along a wind from this edge, and across it. */
export function extents(roof: RoofPlane, from: Edge): { readonly along: number; readonly across: number } {
  return from === "east" || from === "west" ? { along: roof.length, across: roof.width } : { along: roof.width, across: roof.length };
}

export const middleOfSide = formula({
  id: "actions.roof.middle",
  text: "m = b / 2",
  source: "geometry",
  symbols: {
    m: { kind: "distance", meaning: "middle of the roof, from its south or west edge" },
    b: { kind: "distance", meaning: "plan size of the roof", field: "roof.length" },
  },
});

const planeElevation = formula({
  id: "actions.roof.elevation",
  text: "z = h + s * (u_x * (x - x_0) + u_y * (y - y_0))",
  source: "geometry: a plane through the mean height at the middle of the roof",
  symbols: {
    z: { kind: "distance", meaning: "elevation of the roof above grade" },
    h: { kind: "distance", meaning: "mean roof height", field: "roof.mean height" },
    s: { kind: "slope", meaning: "roof slope, rise over run", field: "roof.slope" },
    u_x: { kind: "ratio", meaning: "direction the roof rises in, east part", field: "roof.low edge" },
    u_y: { kind: "ratio", meaning: "direction the roof rises in, north part", field: "roof.low edge" },
    x: { kind: "distance", meaning: "place, east" },
    y: { kind: "distance", meaning: "place, north" },
    x_0: { kind: "distance", meaning: "middle of the roof, east" },
    y_0: { kind: "distance", meaning: "middle of the roof, north" },
  },
});

const halvesElevation = formula({
  id: "actions.roof.elevation-of-halves",
  text: "z = h + k * s * (b / 4 - abs(t - b / 2))",
  source: "geometry: two halves through the mean height at their middles, meeting at a ridge (k = 1) or in a valley (k = -1)",
  symbols: {
    z: { kind: "distance", meaning: "elevation of the roof above grade" },
    h: { kind: "distance", meaning: "mean roof height", field: "roof.mean height" },
    k: { kind: "ratio", meaning: "1 for a pitched roof, -1 for a troughed one", field: "roof.shape", range: [-1, 1] },
    s: { kind: "slope", meaning: "slope of each half, rise over run", field: "roof.slope" },
    b: { kind: "distance", meaning: "plan size of the roof across its ridge or valley" },
    t: { kind: "distance", meaning: "place across the ridge or valley, from the south or west edge" },
  },
});

export interface Point3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** The middle of the roof in plan, at mean height. */
export const middleOf = (roof: RoofPlane, calc: Calc): Point3 => ({
  x: calc(middleOfSide, { b: roof.length }),
  y: calc(middleOfSide, { b: roof.width }),
  z: roof.meanHeight,
});

/** Elevation of the roof plane over a plan place. */
export function elevationAt(roof: RoofPlane, x: number, y: number, center: Point3, calc: Calc): number {
  if (roof.shape === "monoslope") {
    const rise = inward[roof.lowEdge];
    return calc(planeElevation, { h: roof.meanHeight, s: roof.slope, u_x: rise.x, u_y: rise.y, x, y, x_0: center.x, y_0: center.y });
  }
  const k = roof.shape === "pitched" ? 1 : -1;
  return calc(halvesElevation, { h: roof.meanHeight, k, s: roof.slope, ...(roof.ridge === "x" ? { b: roof.width, t: y } : { b: roof.length, t: x }) });
}

/** The way the roof rises at a plan place, as a unit vector. On the ridge itself the south or west half is meant. */
export function riseAt(roof: RoofPlane, x: number, y: number, center: Point3): { readonly x: number; readonly y: number } {
  if (roof.shape === "monoslope") return inward[roof.lowEdge];
  const isFarHalf = roof.ridge === "x" ? y > center.y : x > center.x;
  const towardMiddle = roof.ridge === "x" ? inward[isFarHalf ? "north" : "south"] : inward[isFarHalf ? "east" : "west"];
  return roof.shape === "pitched" ? towardMiddle : { x: towardMiddle.x === 0 ? 0 : -towardMiddle.x, y: towardMiddle.y === 0 ? 0 : -towardMiddle.y };
}

/** A rectangle in plan. Lengths m. */
export interface PlanRectangle {
  readonly x1: number;
  readonly x2: number;
  readonly y1: number;
  readonly y2: number;
}

/** Cuts rectangles of the roof at its ridge or valley, so that each part lies in one plane. */
export function inOnePlane<R extends PlanRectangle>(roof: RoofPlane, rectangles: readonly R[], center: Point3): readonly R[] {
  if (roof.shape === "monoslope") return rectangles;
  return rectangles.flatMap((one): readonly R[] => {
    if (roof.ridge === "x") return isAbove(center.y, one.y1) && isBelow(center.y, one.y2) ? [{ ...one, y2: center.y }, { ...one, y1: center.y }] : [one];
    return isAbove(center.x, one.x1) && isBelow(center.x, one.x2) ? [{ ...one, x2: center.x }, { ...one, x1: center.x }] : [one];
  });
}
