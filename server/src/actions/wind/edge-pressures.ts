/**
 * Pressures on the edges and corners of a free roof, for the connector at a column top: components and cladding. The roof has three zones: inside (1), a strip along
 * the edges (2) and the squares where two strips cross (3). The coefficient of a zone also falls with the area the connector
 * holds, its effective wind area. Values between the angles of the figure are interpolated, those below 7.5 degrees too.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";
import type { Rectangle, ZonedAreas } from "../../mechanics/tributary.js";
import type { RoofPlane } from "../roof-plane.js";
import { edgeTable, type Cells, type EdgeRow } from "./edge-tables.js";
import type { Flow } from "./free-roof-tables.js";
import { roofAngle } from "./net-coefficients.js";
import { netPressureOf, velocityPressureAt, type LoadStandard, type WindSite } from "./velocity-pressure.js";

export const zoneWidth = formula({
  id: "wind.edge-zone-width",
  text: "a = min(max(min(0.1 * B, 0.4 * h), 0.04 * B, a_min), B / 2)",
  source: "ASCE 7-22 Figure 30.5-1, note on a; not more than half the roof, where it is very narrow",
  symbols: {
    a: { kind: "distance", meaning: "width of the edge zone" },
    B: { kind: "distance", meaning: "least plan size of the roof", field: "roof.width" },
    h: { kind: "distance", meaning: "mean roof height", field: "roof.mean height" },
  },
  constants: { a_min: "3 ft" },
});

const smallArea = formula({
  id: "wind.edge-small-area",
  text: "A_a = a^2",
  source: "ASCE 7-22 Figure 30.5-1: rows by effective wind area",
  symbols: { A_a: { kind: "planArea", meaning: "area up to which the highest coefficients hold" }, a: { kind: "distance", meaning: "width of the edge zone" } },
});

const largeArea = formula({
  id: "wind.edge-large-area",
  text: "A_4a = 4 * a^2",
  source: "ASCE 7-22 Figure 30.5-1: rows by effective wind area",
  symbols: { A_4a: { kind: "planArea", meaning: "area beyond which edges and corners count as inside" }, a: { kind: "distance", meaning: "width of the edge zone" } },
});

const farSide = formula({
  id: "wind.edge-far-side",
  text: "t = b - a",
  source: "geometry",
  symbols: { t: { kind: "distance", meaning: "where the strip along the far edge begins" }, b: { kind: "distance", meaning: "plan size of the roof" }, a: { kind: "distance", meaning: "width of the edge zone" } },
});

const ridgeStrip = formula({
  id: "wind.edge-ridge-strip",
  text: "t = b / 2 + k * a",
  source: "geometry: the strip reaches a to both sides of the ridge or valley",
  symbols: {
    t: { kind: "distance", meaning: "side of the strip along the ridge or valley" },
    b: { kind: "distance", meaning: "plan size of the roof across its ridge or valley" },
    k: { kind: "ratio", meaning: "-1 before the ridge, 1 beyond it", range: [-1, 1] },
    a: { kind: "distance", meaning: "width of the edge zone" },
  },
});

export const edgeCoefficient = formula({
  id: "wind.edge-coefficient",
  text: "C_N = C_1 + (C_2 - C_1) * (theta - theta_1) / (theta_2 - theta_1)",
  source: "ASCE 7-22 Figure 30.5-1, note on interpolation: linear at every angle",
  symbols: {
    C_N: { kind: "ratio", meaning: "net pressure coefficient, positive toward the top surface" },
    C_1: { kind: "ratio", meaning: "coefficient of the row below" },
    C_2: { kind: "ratio", meaning: "coefficient of the row above" },
    theta: { kind: "number", meaning: "roof angle in degrees", range: [11, 14] },
    theta_1: { kind: "number", meaning: "angle of the row below, degrees", range: [5, 10] },
    theta_2: { kind: "number", meaning: "angle of the row above, degrees", range: [15, 20] },
  },
});

export const upliftPressure = formula({
  id: "wind.edge-uplift-pressure",
  text: "p_u = max(-p, p_min)",
  source: "ASCE 7-22 30.2.2: not less than 16 psf in either direction",
  symbols: {
    p_u: { kind: "pressure", meaning: "pressure away from the roof" },
    p: { kind: "pressure", meaning: "net pressure normal to the roof, positive down", range: [-3000, 3000] },
  },
  constants: { p_min: "16 psf" },
});

export const upliftOnArea = formula({
  id: "wind.edge-uplift",
  text: "W_u = p_1 * A_1 + p_2 * A_2 + p_3 * A_3",
  source: "statics: each zone on the part of the tributary area that lies in it; the vertical part of a pressure on a slope acts on plan area",
  symbols: {
    W_u: { kind: "force", meaning: "uplift on the tributary area of the column top" },
    p_1: { kind: "pressure", meaning: "pressure away from the roof, zone 1" },
    p_2: { kind: "pressure", meaning: "pressure away from the roof, zone 2" },
    p_3: { kind: "pressure", meaning: "pressure away from the roof, zone 3" },
    A_1: { kind: "planArea", meaning: "tributary area in zone 1" },
    A_2: { kind: "planArea", meaning: "tributary area in zone 2" },
    A_3: { kind: "planArea", meaning: "tributary area in zone 3" },
  },
});

export type Zone = 1 | 2 | 3;

/** From this roof angle on, degrees, the strips along a ridge or valley count as edges (from memory; the safe side). */
const ridgeCountsFrom = 10;

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly isEdge: boolean;
}

function stretches(b: number, a: number, hasRidge: boolean, calc: Calc): readonly Stretch[] {
  const far = calc(farSide, { b, a });
  const cuts = hasRidge ? [calc(ridgeStrip, { b, k: -1, a }), calc(ridgeStrip, { b, k: 1, a })] : [];
  const ends = [a, ...cuts, far, b];
  let from = 0;
  const all = ends.map((end, i): Stretch => {
    const one = { from, to: Math.max(from, Math.min(end, b)), isEdge: i === 0 || i === ends.length - 1 || (hasRidge && i === 2) };
    from = one.to;
    return one;
  });
  return all.filter(({ from: start, to }) => isBelow(start, to));
}

/** The roof cut into its zones. */
export function zonesOfRoof(roof: RoofPlane, theta: number, a: number, calc: Calc): readonly (Rectangle & { readonly zone: Zone })[] {
  const ridge = roof.shape === "monoslope" || isBelow(theta, ridgeCountsFrom) ? undefined : roof.ridge;
  if (ridge) calc.note("The strips along both sides of the ridge or valley are taken as edges, from 10 degrees on (from memory; the safe side).");
  const xs = stretches(roof.length, a, ridge === "y", calc);
  const ys = stretches(roof.width, a, ridge === "x", calc);
  return xs.flatMap((x) => ys.map((y) => ({ x1: x.from, x2: x.to, y1: y.from, y2: y.to, zone: x.isEdge && y.isEdge ? (3 as const) : x.isEdge || y.isEdge ? (2 as const) : (1 as const) })));
}

/** The row by area, 0 to 2. */
export function areaRow(A: number, a: number, calc: Calc): 0 | 1 | 2 {
  if (!isAbove(A, calc(smallArea, { a }))) return 0;
  return isAbove(A, calc(largeArea, { a })) ? 2 : 1;
}

const upwardCell: Readonly<Record<Zone, number>> = { 3: 1, 2: 3, 1: 5 };

/** Upward coefficient of a zone, interpolated between the angles of the figure. */
export function upwardCoefficient(standard: LoadStandard, roof: RoofPlane["shape"], theta: number, flow: Flow, row: 0 | 1 | 2, zone: Zone, calc: Calc): number {
  const { rows } = edgeTable(standard, roof);
  const cell = (of: EdgeRow): number => (of[flow][row] as Cells)[upwardCell[zone]];
  const above = rows.find(({ angle }) => !isAbove(theta, angle)) ?? rows[rows.length - 1];
  const at = rows.indexOf(above);
  if (at === 0 || !isBelow(theta, above.angle)) return cell(above);
  const below = rows[at - 1];
  return calc(edgeCoefficient, { C_1: cell(below), C_2: cell(above), theta, theta_1: below.angle, theta_2: above.angle });
}

/** Height for the velocity pressure of components, m: ASCE 7-10 Table 30.3-1 keeps exposure B at 30 ft and more. */
const heightForEdges = ({ standard, exposure }: WindSite, meanHeight: number): number => (standard === "ASCE 7-10" && exposure === "B" ? Math.max(meanHeight, 9.144) : meanHeight);

/** Velocity pressure for components and cladding, Pa. */
export function edgeVelocityPressure(site: WindSite, meanHeight: number, calc: Calc): number {
  const z = heightForEdges(site, meanHeight);
  if (z !== meanHeight) calc.note("ASCE 7-10 takes K_z of exposure B for components not lower than at 30 ft, 0.70.");
  return velocityPressureAt(z, site, calc);
}

/** What edge pressures need of the roof. */
export interface EdgeRoof {
  readonly plane: RoofPlane;
  readonly site: WindSite;
}

/** The roof angle, the width of the edge zone and the zones themselves. */
export function edgeZones(plane: RoofPlane, calc: Calc) {
  const theta = calc(roofAngle, { s: plane.slope });
  const a = calc(zoneWidth, { B: Math.min(plane.length, plane.width), h: plane.meanHeight });
  return { theta, a, zones: zonesOfRoof(plane, theta, a, calc) };
}

/** Uplift on a tributary area, N, in one kind of flow. */
export function edgeUplift({ plane, site }: EdgeRoof, theta: number, a: number, areas: ZonedAreas, flow: Flow, q_h: number, calc: Calc): number {
  const row = areaRow(areas.all, a, calc);
  const pressure = (zone: Zone): number => {
    const C_N = upwardCoefficient(site.standard, plane.shape, theta, flow, row, zone, calc);
    return calc(upliftPressure, { p: netPressureOf(site.standard, q_h, C_N, calc) });
  };
  const [p_1, p_2, p_3] = ([1, 2, 3] as const).map(pressure);
  return calc(upliftOnArea, { p_1, p_2, p_3, A_1: areas[1], A_2: areas[2], A_3: areas[3] });
}
