/** Where a monoslope roof is in space, and which way is up. Plan axes: x east, y north, origin at the southwest corner. */
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import type { Edge } from "./demand.js";

/** A monoslope roof; lengths m, slope as rise over run. */
export interface RoofPlane {
  readonly slope: number;
  /** Plan size along x. */
  readonly length: number;
  /** Plan size along y. */
  readonly width: number;
  readonly lowEdge: Edge;
  readonly meanHeight: number;
}

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

export const senseOf = (edge: Edge, lowEdge: Edge): EdgeSense =>
  edge === lowEdge ? "low edge" : edge === oppositeEdge[lowEdge] ? "high edge" : "side edge";

/** Plan size of the roof along a wind from this edge, and across it. */
export function extents(roof: RoofPlane, from: Edge): { readonly along: number; readonly across: number } {
  return from === "east" || from === "west" ? { along: roof.length, across: roof.width } : { along: roof.width, across: roof.length };
}

const middle = formula({
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

export interface Point3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** The middle of the roof in plan, at mean height. */
export const middleOf = (roof: RoofPlane, calc: Calc): Point3 => ({
  x: calc(middle, { b: roof.length }),
  y: calc(middle, { b: roof.width }),
  z: roof.meanHeight,
});

/** Elevation of the roof plane over a plan place. */
export function elevationAt(roof: RoofPlane, x: number, y: number, center: Point3, calc: Calc): number {
  const rise = inward[roof.lowEdge];
  return calc(planeElevation, { h: roof.meanHeight, s: roof.slope, u_x: rise.x, u_y: rise.y, x, y, x_0: center.x, y_0: center.y });
}
