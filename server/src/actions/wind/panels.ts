/**
 * Panels between the columns of a line, in the wind like freestanding walls or solid signs: F = q_h K_d G C_f A. Each bay by itself takes the eccentricity of case B; all bays
 * of the line together, as one wall, take the higher pressure near the windward end in oblique wind, case C. Of the two each column takes the worse. A panel that is
 * mostly open is an open frame.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";
import type { RoofColumn } from "../../mechanics/rigid-roof.js";
import { eitherEnd } from "../../mechanics/spans.js";
import { frameCoefficient, mostSolidFrame, panelCoefficient, partlySolid, windwardEndCoefficients, windwardEndFrom } from "./force-coefficients.js";
import { K_d, leastPressure, type DragPressure } from "./push.js";
import { otherPressureOf, velocityPressureAt, type WindSite } from "./velocity-pressure.js";

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
  /** Bays of the line, and the column's place in it from 0 on. */
  readonly ofLine: number;
  readonly place: number;
  /** Plan axis across the panel, along which the wind pushes it. */
  readonly across: "x" | "y";
}

const load = { kind: "lineLoad", meaning: "load of the panels along the column" } as const;
const u_w = { kind: "ratio", meaning: "direction of the wind along the axis", range: [-1, 1] } as const;
const k_o = { kind: "ratio", meaning: "factor for openings, or the solid part of a frame" } as const;

const panelDrag = formula({
  id: "wind.drag.panel",
  text: "w = u_w * p * k_o * n * 0.7 * B",
  source: "ASCE 7-22 Figure 29.3-1, case B: each bay by itself, its force 0.2 of its length off the middle toward the column",
  symbols: {
    w: load,
    u_w,
    p: { kind: "pressure", meaning: "pressure on the panel" },
    k_o,
    n: { kind: "number", meaning: "bays beside the column" },
    B: { kind: "distance", meaning: "length of a bay" },
  },
});

const windwardEndDrag = formula({
  id: "wind.drag.panel-windward-end",
  text: "w = u_w * p_1 * k_o * k_h * l_C",
  source: "ASCE 7-22 Figure 29.3-1, case C: bays between columns in simple spans",
  symbols: {
    w: load,
    u_w,
    p_1: { kind: "pressure", meaning: "pressure for a coefficient of 1" },
    k_o,
    k_h: { kind: "ratio", meaning: "factor for panels that reach far down" },
    l_C: { kind: "distance", meaning: "coefficient times length that comes to the column" },
  },
});

const reachingDown = formula({
  id: "wind.drag.panel-reaching-down",
  text: "k_h = s / h_p > 0.8 ? 1.8 - s / h_p : 1",
  source: "ASCE 7-22 Figure 29.3-1, note on case C where the height of the panel is more than 0.8 of that of its top",
  symbols: {
    k_h: { kind: "ratio", meaning: "factor for panels that reach far down" },
    s: { kind: "distance", meaning: "height of the panel" },
    h_p: { kind: "distance", meaning: "top of the panel above grade" },
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

export const panelEnd = formula({
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

export const overHeight = formula({
  id: "wind.drag.length-over-height",
  text: "r = B / s",
  source: "ASCE 7-22 Figure 29.3-1",
  symbols: { r: { kind: "number", meaning: "length over height of the panel" }, B: { kind: "distance", meaning: "length of the panel" }, s: { kind: "distance", meaning: "height of the panel" } },
});

export const overTop = formula({
  id: "wind.drag.height-over-top",
  text: "r = s / h_p",
  source: "ASCE 7-22 Figure 29.3-1",
  symbols: { r: { kind: "number", meaning: "height of the panel over that of its top above grade" }, s: { kind: "distance", meaning: "height of the panel" }, h_p: { kind: "distance", meaning: "top of the panel above grade" } },
});

const lineLength = formula({
  id: "wind.drag.panel-line",
  text: "l = n * B",
  source: "geometry",
  symbols: { l: { kind: "distance", meaning: "length of all bays of the line" }, n: { kind: "number", meaning: "bays of the line" }, B: { kind: "distance", meaning: "length of a bay" } },
});

/** The load along a column by case C, or 0 where the line is too short for it. */
function byWindwardEnd(panel: PostPanel, q: number, k: number, h_p: number, sense: number, standard: WindSite["standard"], calc: Calc): number {
  const r = calc(overHeight, { B: calc(lineLength, { n: panel.ofLine, B: panel.bay }), s: panel.height });
  if (isBelow(r, windwardEndFrom)) return 0;
  const steps = windwardEndCoefficients(r, calc);
  const l_C = calc.routine(eitherEnd, { spans: panel.ofLine, length: panel.bay, unit: panel.height, steps })[panel.place];
  const p_1 = otherPressureOf(standard, q, K_d.panel, 1, calc);
  return calc(windwardEndDrag, { u_w: sense, p_1, k_o: k, k_h: calc(reachingDown, { s: panel.height, h_p }), l_C });
}

/** Drag of the panels beside a column along it, N/m, for wind in a sense along the axis across them. */
export function panelLoad(column: RoofColumn, panel: PostPanel, site: WindSite, sense: number, by: DragPressure, calc: Calc): number {
  const across = { u_w: sense, n: panel.bays, B: panel.bay };
  if (by === "least") return calc(panelDrag, { ...across, p: calc(leastPressure, { k_p: 1 }), k_o: panel.solidity });
  const h_p = calc(panelTop, { z_b: column.base, a: panel.bottom, s: panel.height });
  const q = velocityPressureAt(h_p, site, calc, K_d.panel);
  if (isAbove(mostSolidFrame, panel.solidity)) {
    calc.note("Less than 70 percent of the panel is solid: an open frame.");
    return calc(panelDrag, { ...across, p: otherPressureOf(site.standard, q, K_d.frame, frameCoefficient(panel.solidity, undefined), calc), k_o: panel.solidity });
  }
  const C_f = panelCoefficient(calc(overHeight, { B: panel.bay, s: panel.height }), calc(overTop, { s: panel.height, h_p }), calc);
  const k = calc(partlySolid, { epsilon: panel.solidity });
  const bay = calc(panelDrag, { ...across, p: otherPressureOf(site.standard, q, K_d.panel, C_f, calc), k_o: k });
  const end = byWindwardEnd(panel, q, k, h_p, sense, site.standard, calc);
  return Math.abs(end) > Math.abs(bay) ? end : bay;
}
