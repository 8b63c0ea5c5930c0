/**
 * Drag of the wind on what stands below the roof or hangs from its edge: the columns themselves, panels between columns, beams and braces,
 * and the fascia. Each as an "other structure", F = q_z K_d G C_f A_f. Nothing shelters anything else: the safe side.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import type { RoofColumn, RoofLoad } from "../../mechanics/rigid-roof.js";
import type { ColumnLoad } from "../column-loads.js";
import type { Edge } from "../demand.js";
import type { Ends } from "../sway-inputs.js";
import { elevationAt, extents, inward, middleOf, oppositeEdge, senseOf, type RoofPlane } from "../roof-plane.js";
import { frameCoefficient, mostSolidFrame, panelCoefficient, partlySolid, postCoefficient, relativeDiameter, slender } from "./force-coefficients.js";
import { roofAngle } from "./net-coefficients.js";
import { otherPressureOf, velocityPressureAt, withDirectionality, type WindSite } from "./velocity-pressure.js";

/** Directionality factors of ASCE 7-22 Table 26.6-1: square posts, solid panels, open frames. */
const K_d = { squarePost: 0.9, panel: 0.85, frame: 0.85 } as const;

/** A panel between the columns of a line, as one column sees it. Lengths m. */
export interface PostPanel {
  /** Above the column base. */
  readonly bottom: number;
  readonly height: number;
  readonly solidity: number;
  /** Length of one bay. */
  readonly bay: number;
  /** Bays beside the column. */
  readonly bays: 1 | 2;
  /** Plan axis across the panel, along which the wind pushes it. */
  readonly across: "x" | "y";
}

/** A column in the wind. */
export interface DragPost {
  /** Across the wind, m; the wind passes by a column of no width. */
  readonly width: number;
  readonly ends?: Ends;
  readonly panel?: PostPanel;
}

/** A beam, brace or frame below the roof. SI. */
export interface WindMember {
  readonly name: string;
  /** Solid area the wind sees. */
  readonly area: number;
  /** Plan axis along which the wind meets it. */
  readonly along: "x" | "y";
  /** Of its middle, above grade. */
  readonly height: number;
  readonly solidity: number;
  /** Of round members. */
  readonly diameter?: number;
}

const middleHeight = formula({
  id: "wind.drag.middle-height",
  text: "z = z_b + (a + b) / 2",
  source: "ASCE 7-22 29.4: the velocity pressure at the middle of the area",
  symbols: {
    z: { kind: "distance", meaning: "height of the middle above grade" },
    z_b: { kind: "distance", meaning: "elevation of the column base", range: [-2, 2] },
    a: { kind: "distance", meaning: "lower end above the base" },
    b: { kind: "distance", meaning: "upper end above the base" },
  },
});

const lineDrag = formula({
  id: "wind.drag.line",
  text: "w = u_w * p * D",
  source: "ASCE 7-22 Eq. 29.4-1, per length of the column",
  symbols: {
    w: { kind: "lineLoad", meaning: "drag along the column" },
    u_w: { kind: "ratio", meaning: "direction of the wind along the axis", range: [-1, 1] },
    p: { kind: "pressure", meaning: "pressure of the drag" },
    D: { kind: "length", meaning: "width of the column across the wind", field: "columns.*.section" },
  },
});

const panelDrag = formula({
  id: "wind.drag.panel",
  text: "w = u_w * p * k_o * n * 0.7 * B",
  source: "ASCE 7-22 Figure 29.3-1, case B: each bay by itself, its force 0.2 of its length off the middle toward the column",
  symbols: {
    w: { kind: "lineLoad", meaning: "load of the panels along the column" },
    u_w: { kind: "ratio", meaning: "direction of the wind along the axis", range: [-1, 1] },
    p: { kind: "pressure", meaning: "pressure on the panel" },
    k_o: { kind: "ratio", meaning: "factor for openings, or the solid part of a frame" },
    n: { kind: "number", meaning: "bays beside the column" },
    B: { kind: "distance", meaning: "length of a bay" },
  },
});

const panelTop = formula({
  id: "wind.drag.panel-top",
  text: "h_p = z_b + a + s",
  source: "ASCE 7-22 Figure 29.3-1: height of the top of the panel above grade",
  symbols: {
    h_p: { kind: "distance", meaning: "top of the panel above grade" },
    z_b: { kind: "distance", meaning: "elevation of the column base", range: [-0.05, 2] },
    a: { kind: "distance", meaning: "bottom of the panel above the column base" },
    s: { kind: "distance", meaning: "height of the panel" },
  },
});

const panelEnd = formula({
  id: "wind.drag.panel-end",
  text: "b = min(a + s, H)",
  source: "geometry: the panel ends at the column top at the latest",
  symbols: {
    b: { kind: "distance", meaning: "upper end of the panel above the column base" },
    a: { kind: "distance", meaning: "bottom of the panel above the column base" },
    s: { kind: "distance", meaning: "height of the panel" },
    H: { kind: "distance", meaning: "column height", field: "columns.*.height" },
  },
});

const overHeight = formula({
  id: "wind.drag.length-over-height",
  text: "r = B / s",
  source: "ASCE 7-22 Figure 29.3-1",
  symbols: { r: { kind: "number", meaning: "length over height of the panel" }, B: { kind: "distance", meaning: "length of the panel" }, s: { kind: "distance", meaning: "height of the panel" } },
});

const overTop = formula({
  id: "wind.drag.height-over-top",
  text: "r = s / h_p",
  source: "ASCE 7-22 Figure 29.3-1",
  symbols: { r: { kind: "number", meaning: "height of the panel over that of its top above grade" }, s: { kind: "distance", meaning: "height of the panel" }, h_p: { kind: "distance", meaning: "top of the panel above grade" } },
});

const areaForce = formula({
  id: "wind.drag.force",
  text: "F = u_w * p * A_f",
  source: "ASCE 7-22 Eq. 29.4-1",
  symbols: {
    F: { kind: "force", meaning: "drag along a plan axis" },
    u_w: { kind: "ratio", meaning: "direction of the wind along the axis", range: [-1, 1] },
    p: { kind: "pressure", meaning: "pressure of the drag" },
    A_f: { kind: "planArea", meaning: "area the wind sees" },
  },
});

const fasciaArea = formula({
  id: "wind.fascia-area",
  text: "A_f = t * B",
  source: "geometry",
  symbols: { A_f: { kind: "planArea", meaning: "area of the fascia" }, t: { kind: "distance", meaning: "depth of the fascia", field: "roof.fascia.depth" }, B: { kind: "distance", meaning: "length of the edge" } },
});

/** Pressure the drag of a case is found with. */
export type DragPressure = "by coefficient" | "least";

/** The least pressure on the projected area of an open structure, ASCE 7-22 27.1.5. */
const leastPressure = formula({
  id: "wind.drag.least-pressure",
  text: "p = p_min * k_p",
  source: "ASCE 7-10, 7-16 and 7-22 27.1.5, open buildings",
  symbols: { p: { kind: "pressure", meaning: "least pressure on the projected area" }, k_p: { kind: "ratio", meaning: "solid part of the area" } },
  constants: { p_min: "16 psf" },
});

const axisOf = (from: Edge): "x" | "y" => (inward[from].x === 0 ? "y" : "x");
const senseAlong = (from: Edge): number => (axisOf(from) === "x" ? inward[from].x : inward[from].y);

function loadOf(at: number, from: Edge, w: number, a: number, b: number, ends: Ends | undefined): ColumnLoad {
  const isX = axisOf(from) === "x";
  return { at, wx: isX ? w : 0, wy: isX ? 0 : w, from: a, to: b, holds: { x: ends?.x.base ?? true, y: ends?.y.base ?? true } };
}

/** Drag of the wind on a square column, N/m. */
export function postDrag({ base, height }: Pick<RoofColumn, "base" | "height">, width: number, site: WindSite, calc: Calc): number {
  const z = calc(middleHeight, { z_b: base, a: 0, b: height });
  const q_z = velocityPressureAt(z, site, calc, K_d.squarePost);
  const C_f = postCoefficient("square, wind on the face", calc(slender, { H: height, D: width }), calc);
  return otherPressureOf(site.standard, q_z, K_d.squarePost, C_f, calc);
}

function panelPressure(column: RoofColumn, panel: PostPanel, site: WindSite, calc: Calc): { readonly p: number; readonly k_o: number } {
  const h_p = calc(panelTop, { z_b: column.base, a: panel.bottom, s: panel.height });
  const q = velocityPressureAt(h_p, site, calc, K_d.panel);
  if (isAbove(mostSolidFrame, panel.solidity)) {
    calc.note("Less than 70 percent of the panel is solid: an open frame.");
    return { p: otherPressureOf(site.standard, q, K_d.frame, frameCoefficient(panel.solidity, undefined), calc), k_o: panel.solidity };
  }
  const C_f = panelCoefficient(calc(overHeight, { B: panel.bay, s: panel.height }), calc(overTop, { s: panel.height, h_p }), calc);
  return { p: otherPressureOf(site.standard, q, K_d.panel, C_f, calc), k_o: calc(partlySolid, { epsilon: panel.solidity }) };
}

function ownDrag(column: RoofColumn, at: number, { width, ends }: DragPost, site: WindSite, from: Edge, by: DragPressure, calc: Calc): ColumnLoad {
  const p = by === "least" ? calc(leastPressure, { k_p: 1 }) : postDrag(column, width, site, calc);
  return loadOf(at, from, calc(lineDrag, { u_w: senseAlong(from), p, D: width }), 0, column.height, ends);
}

/** Drag on the columns and on the panels between them, for wind from an edge. */
export function dragOnColumns(columns: readonly RoofColumn[], posts: readonly DragPost[], site: WindSite, from: Edge, by: DragPressure, calc: Calc): readonly ColumnLoad[] {
  const u_w = senseAlong(from);
  return columns.flatMap((column, at) => {
    const { width, ends, panel } = posts[at];
    const own = width === 0 ? [] : [ownDrag(column, at, posts[at], site, from, by, calc)];
    if (!panel || panel.across !== axisOf(from)) return own;
    const on = by === "least" ? { p: calc(leastPressure, { k_p: 1 }), k_o: panel.solidity } : panelPressure(column, panel, site, calc);
    const w = calc(panelDrag, { u_w, ...on, n: panel.bays, B: panel.bay });
    return [...own, loadOf(at, from, w, panel.bottom, calc(panelEnd, { a: panel.bottom, s: panel.height, H: column.height }), ends)];
  });
}

/** Drag on beams, braces and frames, taken by the roof at the middle of its plan. */
export function dragOnMembers(roof: RoofPlane, members: readonly WindMember[], site: WindSite, from: Edge, by: DragPressure, calc: Calc): readonly RoofLoad[] {
  const center = middleOf(roof, calc);
  return members.flatMap((member) => {
    if (member.along !== axisOf(from)) return [];
    calc.note(`${member.name}:`);
    const p = by === "least" ? calc(leastPressure, { k_p: 1 }) : memberPressure(member, site, calc);
    const F = calc(areaForce, { u_w: senseAlong(from), p, A_f: member.area });
    return [{ x: center.x, y: center.y, z: member.height, Fx: member.along === "x" ? F : 0, Fy: member.along === "y" ? F : 0, Fz: 0 }];
  });
}

function memberPressure(member: WindMember, site: WindSite, calc: Calc): number {
  const q = velocityPressureAt(member.height, site, calc, K_d.frame);
  const r_D = member.diameter === undefined ? undefined : calc(relativeDiameter, { D: member.diameter, q_d: withDirectionality(site.standard, q, K_d.frame, calc) });
  return otherPressureOf(site.standard, q, K_d.frame, frameCoefficient(member.solidity, r_D), calc);
}

/** Up to this roof angle, degrees, a fascia acts as a parapet turned down. */
const parapetUpTo = 5;

/** Net coefficients of a parapet: ASCE 7-22 27.3.4, windward and leeward, both downwind. */
const parapet = { windward: 1.5, leeward: 1 } as const;

const parapetPressure = formula({
  id: "wind.fascia-parapet-pressure",
  text: "p = q_d * GC_pn",
  source: "ASCE 7-22 27.3.4 with the factor GC_pn of 1.5 windward and 1.0 leeward; that a fascia of a roof up to 5 degrees is a parapet turned down is from memory (27.3.2)",
  symbols: {
    p: { kind: "pressure", meaning: "net pressure on the fascia, downwind" },
    q_d: { kind: "pressure", meaning: "velocity pressure at mean roof height, directionality factor included" },
    GC_pn: { kind: "ratio", meaning: "net pressure coefficient of a parapet" },
  },
});

/** Depth of the fascia on each edge, m. */
export type Fascia = Readonly<Record<Edge, number>>;

function edgePlace(roof: RoofPlane, edge: Edge, calc: Calc) {
  const center = middleOf(roof, calc);
  const x = edge === "west" ? 0 : edge === "east" ? roof.length : center.x;
  const y = edge === "south" ? 0 : edge === "north" ? roof.width : center.y;
  // A fascia along the slope has its middle at mean height.
  return { x, y, z: senseOf(edge, roof) === "side edge" ? roof.meanHeight : elevationAt(roof, x, y, center, calc) };
}

/** Wind on the fascias of the windward and of the leeward edge. */
export function dragOnFascia(roof: RoofPlane, fascia: Fascia, site: WindSite, q_h: number, from: Edge, calc: Calc): readonly RoofLoad[] {
  const theta = calc(roofAngle, { s: roof.slope });
  const isParapet = !isAbove(theta, parapetUpTo);
  return ([from, oppositeEdge[from]] as const).flatMap((edge, i) => {
    const t = fascia[edge];
    if (t === 0) return [];
    const place = edgePlace(roof, edge, calc);
    const B = extents(roof, edge).across;
    if (!isParapet) calc.note(`Fascia on the ${edge} edge: above ${parapetUpTo} degrees the standard is silent; its drag is taken as that of a solid panel, which is common practice.`);
    const p = isParapet
      ? calc(parapetPressure, { q_d: withDirectionality(site.standard, q_h, K_d.panel, calc), GC_pn: i === 0 ? parapet.windward : parapet.leeward })
      : otherPressureOf(site.standard, q_h, K_d.panel, panelCoefficient(calc(overHeight, { B, s: t }), calc(overTop, { s: t, h_p: place.z }), calc), calc);
    const F = calc(areaForce, { u_w: senseAlong(from), p, A_f: calc(fasciaArea, { t, B }) });
    return [{ ...place, Fx: axisOf(from) === "x" ? F : 0, Fy: axisOf(from) === "y" ? F : 0, Fz: 0 }];
  });
}
