/** A push of the wind along a plan axis, and the least pressure on what stands in it. */
import { formula } from "../../formula/declare.js";
import type { Edge } from "../demand.js";
import { inward } from "../roof-plane.js";

/** Directionality factors of ASCE 7-22 Table 26.6-1: square posts, solid panels, open frames. */
export const K_d = { squarePost: 0.9, panel: 0.85, frame: 0.85 } as const;

/** Pressure the drag of a case is found with. */
export type DragPressure = "by coefficient" | "least";

/** The least pressure on the projected area of an open structure, ASCE 7-22 27.1.5. */
export const leastPressure = formula({
  id: "wind.drag.least-pressure",
  text: "p = p_min * k_p",
  source: "ASCE 7-10, 7-16 and 7-22 27.1.5, open buildings",
  symbols: { p: { kind: "pressure", meaning: "least pressure on the projected area" }, k_p: { kind: "ratio", meaning: "solid part of the area" } },
  constants: { p_min: "16 psf" },
});

export const areaForce = formula({
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

/** The plan axis wind from an edge blows along. */
export const axisOf = (from: Edge): "x" | "y" => (inward[from].x === 0 ? "y" : "x");

/** 1 where it blows toward the east or the north, -1 against it. */
export const senseAlong = (from: Edge): number => (axisOf(from) === "x" ? inward[from].x : inward[from].y);

/** A force along an axis, as the parts of a load. */
export const pushAlong = (axis: "x" | "y", F: number): { readonly Fx: number; readonly Fy: number; readonly Fz: 0 } => (axis === "x" ? { Fx: F, Fy: 0, Fz: 0 } : { Fx: 0, Fy: F, Fz: 0 });
