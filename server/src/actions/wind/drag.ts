/**
 * Drag of the wind on what stands below the roof: the columns themselves, panels between columns, beams and braces. Each as an "other structure",
 * F = q_z K_d G C_f A_f. Nothing shelters anything else: the safe side.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isBelow } from "../../mechanics/compare.js";
import { endsOf, type RoofColumn, type RoofLoad } from "../../mechanics/rigid-roof.js";
import type { ColumnLoad } from "../column-loads.js";
import type { Edge } from "../demand.js";
import { middleOf, type RoofPlane } from "../roof-plane.js";
import { frameCoefficient, postCoefficient, relativeDiameter, slender } from "./force-coefficients.js";
import { panelEnd, panelLoad, type PostPanel } from "./panels.js";
import { roundPostPressure, type SeenPost } from "./posts.js";
import { areaForce, axisOf, K_d, leastPressure, pushAlong, senseAlong, type DragPressure } from "./push.js";
import { otherPressureOf, velocityPressureAt, withDirectionality, type WindSite } from "./velocity-pressure.js";

/** A column in the wind. */
export interface DragPost extends SeenPost {
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

/** Pressure of the drag on a column, Pa. Rectangles and W shapes take the coefficients of a square post. */
export function postDrag({ base, height }: Pick<RoofColumn, "base" | "height">, width: number, site: WindSite, calc: Calc, isRound = false): number {
  const z = calc(middleHeight, { z_b: base, a: 0, b: height });
  if (isRound) return roundPostPressure(z, height, width, site, calc);
  const q_z = velocityPressureAt(z, site, calc, K_d.squarePost);
  const C_f = postCoefficient("square, wind on the face", calc(slender, { H: height, D: width }), calc);
  return otherPressureOf(site.standard, q_z, K_d.squarePost, C_f, calc);
}

/** A load along a column between two heights, or none. */
export function loadAlong(columns: readonly RoofColumn[], at: number, axis: "x" | "y", w: number, from: number, to: number): readonly ColumnLoad[] {
  return w === 0 || !isBelow(from, to) ? [] : [{ at, axis, w, from, to, ends: endsOf(columns[at])[axis] }];
}

/** Drag on the columns and on the panels between them, for wind from an edge. */
export function dragOnColumns(columns: readonly RoofColumn[], posts: readonly DragPost[], site: WindSite, from: Edge, by: DragPressure, calc: Calc): readonly ColumnLoad[] {
  const u_w = senseAlong(from);
  const axis = axisOf(from);
  return columns.flatMap((column, at) => {
    const { isRound, panel } = posts[at];
    // The wind passes by a column of no width.
    const width = posts[at].width[axis];
    const found: ColumnLoad[] = [];
    if (width !== 0) {
      const p = by === "least" ? calc(leastPressure, { k_p: 1 }) : postDrag(column, width, site, calc, isRound);
      found.push(...loadAlong(columns, at, axis, calc(lineDrag, { u_w, p, D: width }), 0, column.height));
    }
    if (panel?.across === axis) {
      const to = calc(panelEnd, { a: panel.bottom, s: panel.height, H: column.height });
      found.push(...loadAlong(columns, at, axis, panelLoad(column, panel, site, u_w, by, calc), panel.bottom, to));
    }
    return found;
  });
}

/** Drag on beams, braces and frames, taken by the roof at the middle of its plan. */
export function dragOnMembers(roof: RoofPlane, members: readonly WindMember[], site: WindSite, from: Edge, by: DragPressure, calc: Calc): readonly RoofLoad[] {
  if (members.length === 0) return [];
  const center = middleOf(roof, calc);
  return members.flatMap((member) => {
    if (member.along !== axisOf(from)) return [];
    calc.note(`${member.name}:`);
    const p = by === "least" ? calc(leastPressure, { k_p: 1 }) : memberPressure(member, site, calc);
    const F = calc(areaForce, { u_w: senseAlong(from), p, A_f: member.area });
    return [{ x: center.x, y: center.y, z: member.height, ...pushAlong(member.along, F) }];
  });
}

function memberPressure(member: WindMember, site: WindSite, calc: Calc): number {
  const q = velocityPressureAt(member.height, site, calc, K_d.frame);
  const r_D = member.diameter === undefined ? undefined : calc(relativeDiameter, { D: member.diameter, q_d: withDirectionality(site.standard, q, K_d.frame, calc) });
  return otherPressureOf(site.standard, q, K_d.frame, frameCoefficient(member.solidity, r_D), calc);
}
