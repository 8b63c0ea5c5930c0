/**
 * Flow below the roof that something blocks. More than half of the opening below an edge makes the flow of the winds that cross this edge obstructed; what can be
 * taken away again, as goods, leaves clear flow possible too, so both are tried. A wall that is less than 80 percent open is another matter: the building is then not open,
 * and the figures of free roofs do not hold. ASCE 7-22 Figure 27.3-4, notes; 26.2, open building.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import type { Edge } from "../demand.js";
import { oppositeEdge } from "../roof-plane.js";
import type { FlowBelow } from "./free-roof.js";

/** Share of the opening below each edge. */
export type EdgeShares = Readonly<Record<Edge, number>>;

/** More of an opening than this makes the flow obstructed. */
const mostClear = 0.5;
/** More of a wall than this may not be closed in an open building. */
export const mostClosed = 0.2;

export const sharesTogether = formula({
  id: "wind.blocked-share",
  text: "k_b = min(1, k_w + k_p + k_g + k_n)",
  source: "ASCE 7-22 Figure 27.3-4, notes: blockage as a share of the opening",
  symbols: {
    k_b: { kind: "ratio", meaning: "blocked share of the opening below the edge" },
    k_w: { kind: "ratio", meaning: "share closed by walls", field: "roof.blocked.walls.north edge" },
    k_p: { kind: "ratio", meaning: "share closed by panels between columns", field: "columns.*.panels.height" },
    k_g: { kind: "ratio", meaning: "share closed by goods", field: "roof.blocked.goods.north edge" },
    k_n: { kind: "ratio", meaning: "share a building close by stands before", field: "roof.blocked.building.height" },
  },
});

export const wallShare = formula({
  id: "wind.closed-share",
  text: "k_c = k_w + k_p",
  source: "ASCE 7-22 26.2, open building",
  symbols: {
    k_c: { kind: "ratio", meaning: "closed share of the wall" },
    k_w: { kind: "ratio", meaning: "share closed by walls", field: "roof.blocked.walls.north edge" },
    k_p: { kind: "ratio", meaning: "share closed by panels between columns", field: "columns.*.panels.height" },
  },
});

export const panelShare = formula({
  id: "wind.panel-share",
  text: "k_p = epsilon * s * n * B / (H * l)",
  source: "geometry: panels in the opening between grade, roof and the ends of the edge",
  symbols: {
    k_p: { kind: "ratio", meaning: "share closed by panels between columns" },
    epsilon: { kind: "ratio", meaning: "solid part of the panels", field: "columns.*.panels.solidity" },
    s: { kind: "distance", meaning: "height of the panels", field: "columns.*.panels.height" },
    n: { kind: "number", meaning: "bays of the line" },
    B: { kind: "distance", meaning: "length of a bay" },
    H: { kind: "distance", meaning: "height of the opening", field: "columns.*.height" },
    l: { kind: "distance", meaning: "length of the edge of the roof" },
  },
});

export const neighborShare = formula({
  id: "wind.neighbor-share",
  text: "k_n = g < h ? min(1, h_n / h) : 0",
  source: "common practice, no source: a building nearer than the roof is high blocks the flow as far as it reaches up",
  symbols: {
    k_n: { kind: "ratio", meaning: "share a building close by stands before" },
    g: { kind: "distance", meaning: "gap between the roof and the building", field: "roof.blocked.building.gap" },
    h: { kind: "distance", meaning: "mean roof height", field: "roof.mean height" },
    h_n: { kind: "distance", meaning: "height of the building", field: "roof.blocked.building.height" },
  },
});

/** Whether more than half of the opening below an edge is blocked. */
export const isOverHalf = (shares: EdgeShares, edge: Edge): boolean => isAbove(shares[edge], mostClear);

/** Whether the wind from an edge finds the opening there or on the far side blocked. */
const isBlocked = (shares: EdgeShares, from: Edge): boolean => isOverHalf(shares, from) || isOverHalf(shares, oppositeEdge[from]);

/** The flow to take for wind from an edge. */
export const flowFrom = (flow: FlowBelow, shares: EdgeShares, from: Edge): FlowBelow => (flow === "clear" && isBlocked(shares, from) ? "either" : flow);

/** Every kind of flow that occurs in some direction. */
export const flowAnywhere = (flow: FlowBelow, shares: EdgeShares): FlowBelow => (flow === "clear" && (isBlocked(shares, "north") || isBlocked(shares, "east")) ? "either" : flow);

/** Blocked share of one edge from its parts. */
export const blockedShare = (parts: { readonly walls: number; readonly panels: number; readonly goods: number; readonly neighbor: number }, calc: Calc): number =>
  calc(sharesTogether, { k_w: parts.walls, k_p: parts.panels, k_g: parts.goods, k_n: parts.neighbor });
