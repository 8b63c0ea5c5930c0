/**
 * Walls below the edges of a roof in the wind, described by the share of the opening they close. What carries them decides where their push goes: the columns next to
 * them take it along their height; a wall between its own footing and the roof brings half of it to the edge of the roof; a wall that stands by itself brings nothing.
 */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import type { RoofColumn, RoofLoad } from "../../mechanics/rigid-roof.js";
import { nearestStretches } from "../../mechanics/tributary.js";
import type { ColumnLoad } from "../column-loads.js";
import type { Edge } from "../demand.js";
import { extents, middleOfSide, oppositeEdge, type RoofPlane } from "../roof-plane.js";
import { loadAlong } from "./drag.js";
import { alongEdge, edgePlace } from "./fascia.js";
import { panelCoefficient } from "./force-coefficients.js";
import { overHeight, panelEnd, type PostPanel } from "./panels.js";
import { axisOf, K_d, leastPressure, pushAlong, senseAlong, type DragPressure } from "./push.js";
import { otherPressureOf, velocityPressureAt, type WindSite } from "./velocity-pressure.js";

export const wallCarriers = ["columns", "footing and roof", "themselves"] as const;
export type WallCarrier = (typeof wallCarriers)[number];

export interface Wall {
  readonly edge: Edge;
  /** Share of the opening below the edge that it closes. */
  readonly share: number;
  readonly carriedBy: WallCarrier;
}

const share = { kind: "ratio", meaning: "share of the opening that is closed", field: "roof.blocked.walls.north edge" } as const;
const u_e = { kind: "ratio", meaning: "direction into the roof along the axis", range: [-1, 1] } as const;
const inwardPressure = { kind: "pressure", meaning: "pressure on the wall, positive from outside", range: [-3000, 3000] } as const;

const wallAlongColumn = formula({
  id: "wind.wall.column",
  text: "w = u_e * p * k_w * l",
  source: "statics: the wall spread evenly over the opening, each part of it held by the nearest column",
  symbols: { w: { kind: "lineLoad", meaning: "load of the wall along the column" }, u_e, p: inwardPressure, k_w: share, l: { kind: "distance", meaning: "stretch of the wall that is nearest to the column" } },
});

const wallOnRoof = formula({
  id: "wind.wall.roof",
  text: "F = u_e * p * k_w * B * h_e / 2",
  source: "statics: the wall spans from its footing to the roof; half of its load to each",
  symbols: {
    F: { kind: "force", meaning: "push of the wall on the edge of the roof" },
    u_e,
    p: inwardPressure,
    k_w: share,
    B: { kind: "distance", meaning: "length of the edge" },
    h_e: { kind: "distance", meaning: "height of the edge above grade" },
  },
});

const wallLength = formula({
  id: "wind.wall.length",
  text: "B = k_w * l",
  source: "geometry: what the wall closes, as one piece from grade to the roof, for which the coefficient is highest",
  symbols: { B: { kind: "distance", meaning: "length of the wall" }, k_w: share, l: { kind: "distance", meaning: "length of the edge" } },
});

const downwind = formula({
  id: "wind.wall.downwind",
  text: "p = k * p_d",
  source: "geometry: downwind is into the roof on the windward side, and out of it on the leeward side",
  symbols: { p: inwardPressure, k: { kind: "ratio", meaning: "1 windward, -1 leeward", range: [-1, 1] }, p_d: { kind: "pressure", meaning: "pressure of the drag" } },
});

const panelAsWall = formula({
  id: "wind.wall.panels",
  text: "w = u_e * p * epsilon * n * B / 2",
  source: "statics: half of each bay beside the column",
  symbols: {
    w: { kind: "lineLoad", meaning: "load of the panels along the column" },
    u_e,
    p: inwardPressure,
    epsilon: { kind: "ratio", meaning: "solid part of the panels", field: "columns.*.panels.solidity" },
    n: { kind: "number", meaning: "bays beside the column" },
    B: { kind: "distance", meaning: "length of a bay" },
  },
});

/** The edge of the roof that a line of panels across an axis stands along: the nearer one. */
export function edgeBeside({ length, width }: Pick<RoofPlane, "length" | "width">, { x, y }: { readonly x: number; readonly y: number }, across: "x" | "y"): Edge {
  if (across === "x") return isAbove(x, plainCalc(middleOfSide, { b: length })) ? "east" : "west";
  return isAbove(y, plainCalc(middleOfSide, { b: width })) ? "north" : "south";
}

/** Loads along the columns from the panels between them, taken as walls of the edges they stand along. */
export const panelsAsWalls = (roof: RoofPlane, columns: readonly RoofColumn[], posts: readonly { readonly panel?: PostPanel }[], on: (edge: Edge, calc: Calc) => number, calc: Calc): readonly ColumnLoad[] =>
  columns.flatMap((column, i) => {
    const { panel } = posts[i];
    if (!panel) return [];
    const edge = edgeBeside(roof, column, panel.across);
    const w = calc(panelAsWall, { u_e: senseAlong(edge), p: on(edge, calc), epsilon: panel.solidity, n: panel.bays, B: panel.bay });
    return loadAlong(columns, i, panel.across, w, panel.bottom, calc(panelEnd, { a: panel.bottom, s: panel.height, H: column.height }));
  });

/** Pressure on a wall, Pa, positive from outside. */
export type OnWall = (wall: Wall, calc: Calc) => number;

/** Drag on a wall of an open structure, as on a freestanding wall, for wind from an edge; the wind passes along the walls beside it. */
export const wallDrag = (roof: RoofPlane, site: WindSite, from: Edge, by: DragPressure): OnWall => (wall, calc) => {
  if (wall.edge !== from && wall.edge !== oppositeEdge[from]) return 0;
  const k = wall.edge === from ? 1 : -1;
  if (by === "least") return calc(downwind, { k, p_d: calc(leastPressure, { k_p: 1 }) });
  const h = edgePlace(roof, wall.edge, calc).z;
  const B = calc(wallLength, { k_w: wall.share, l: extents(roof, wall.edge).across });
  const C_f = panelCoefficient(calc(overHeight, { B, s: h }), 1, calc);
  return calc(downwind, { k, p_d: otherPressureOf(site.standard, velocityPressureAt(h, site, calc, K_d.panel), K_d.panel, C_f, calc) });
};

/** Both ends of an edge in plan. */
function ends({ length, width }: RoofPlane, edge: Edge) {
  const [x1, x2] = edge === "east" ? [length, length] : edge === "west" ? [0, 0] : [0, length];
  const [y1, y2] = edge === "north" ? [width, width] : edge === "south" ? [0, 0] : [0, width];
  return { from: { x: x1, y: y1 }, to: { x: x2, y: y2 } };
}

/** Loads along the columns from the walls they carry. */
export const wallsOnColumns = (roof: RoofPlane, columns: readonly RoofColumn[], walls: readonly Wall[], on: OnWall, calc: Calc): readonly ColumnLoad[] =>
  walls.flatMap((wall) => {
    if (wall.carriedBy !== "columns") return [];
    const p = on(wall, calc);
    if (p === 0) return [];
    const stretches = calc.routine(nearestStretches, { ...ends(roof, wall.edge), columns });
    return stretches.flatMap((l, i) => (l === 0 ? [] : loadAlong(columns, i, axisOf(wall.edge), calc(wallAlongColumn, { u_e: senseAlong(wall.edge), p, k_w: wall.share, l }), 0, columns[i].height)));
  });

/** Pushes of walls on the edges of the roof. */
export const wallsOnRoof = (roof: RoofPlane, columns: readonly RoofColumn[], walls: readonly Wall[], on: OnWall, calc: Calc): readonly RoofLoad[] =>
  walls.flatMap((wall) => {
    if (wall.carriedBy !== "footing and roof") return [];
    const p = on(wall, calc);
    if (p === 0) return [];
    const place = edgePlace(roof, wall.edge, calc);
    const F = calc(wallOnRoof, { u_e: senseAlong(wall.edge), p, k_w: wall.share, B: extents(roof, wall.edge).across, h_e: place.z });
    return [{ ...place, ...pushAlong(axisOf(wall.edge), F), over: alongEdge(roof, columns, wall.edge) }];
  });
