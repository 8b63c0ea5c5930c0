/**
 * Wind on a free roof from each of its four edges: strips of the roof with their net pressure. On a monoslope, wind onto the high
 * edge gets under the roof and lifts it; wind onto the low edge presses on its top. Both halves, cases A and B and the flows that
 * apply are taken for every edge.
 */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Edge, LoadCase } from "../demand.js";
import type { LoadPart } from "../roof-case.js";
import { edgeWords, extents, inward, senseOf, type EdgeSense, type PlanRectangle, type RoofPlane } from "../roof-plane.js";
import type { Flow, PressureCase } from "./free-roof-tables.js";
import { figureFor, zonesOf, type Direction } from "./net-coefficients.js";
import { netPressureOf, type LoadStandard } from "./velocity-pressure.js";

const stripEdge = formula({
  id: "wind.strip-edge",
  text: "t = t_0 + u_w * d",
  source: "geometry: distance from the windward edge to a plan coordinate",
  symbols: {
    t: { kind: "distance", meaning: "plan coordinate along the wind" },
    t_0: { kind: "distance", meaning: "coordinate of the windward edge" },
    u_w: { kind: "ratio", meaning: "direction of the wind along the axis, 1 or -1" },
    d: { kind: "distance", meaning: "distance from the windward edge" },
  },
});

/** A rectangle of the roof in plan with its net pressure normal to the roof, Pa, positive down. Lengths m. */
export interface Patch extends PlanRectangle {
  readonly pressure: number;
}

/** How wind can flow below the roof, as the notebook says it. */
export type FlowBelow = Flow | "either";

export const flowsOf = (below: FlowBelow): readonly Flow[] => (below === "either" ? ["clear", "obstructed"] : [below]);

/** A wind case on the roof, before its pressures are found. */
export interface WindOnRoof {
  readonly loadCase: LoadCase;
  readonly from: Edge;
  readonly sense: EdgeSense;
  readonly pressureCase: PressureCase;
  readonly flow: Flow;
}

/** Every case the figures ask for: four edges, the flows that apply, cases A and B. */
export function windCases(roof: RoofPlane, below: FlowBelow, edges: readonly Edge[]): readonly WindOnRoof[] {
  return edges.flatMap((from) => {
    const sense = senseOf(from, roof);
    const onto = edgeWords(from, roof);
    return flowsOf(below).flatMap((flow) =>
      (["A", "B"] as const).map((pressureCase): WindOnRoof => {
        const title = `wind from the ${from}, onto the ${onto}, case ${pressureCase}, ${flow} flow`;
        return { loadCase: { id: `wind/${from}/${pressureCase}/${flow}`, type: "W", title, from }, from, sense, pressureCase, flow };
      }),
    );
  });
}

export const directionOf = (standard: LoadStandard, roof: RoofPlane, from: Edge): Direction => ({
  standard,
  shape: roof.shape,
  sense: senseOf(from, roof),
  slope: roof.slope,
  meanHeight: roof.meanHeight,
  along: extents(roof, from).along,
});

/** The same strips with where each coefficient is read from. */
export function windParts(wind: WindOnRoof, direction: Direction, q_h: number): readonly LoadPart[] {
  const use = figureFor(direction, plainCalc);
  return zonesOf(use, direction, wind.flow, wind.pressureCase, plainCalc).map(({ from, to, C_N, where, symbol, row }) => ({
    where,
    between: [from, to],
    coefficient: { symbol, value: C_N },
    pressure: netPressureOf(direction.standard, q_h, C_N, plainCalc),
    read: row === undefined ? use.figure : `${use.figure}, ${row}`,
  }));
}

/** A strip of the roof across the wind from an edge, between two distances from that edge. */
export function stripAcross(roof: RoofPlane, windFrom: Edge, from: number, to: number, pressure: number, calc: Calc): Patch {
  const way = inward[windFrom];
  const isAlongX = way.x !== 0;
  // Wind from the north or east begins at the far side of the plan.
  const t_0 = isAlongX ? (way.x > 0 ? 0 : roof.length) : way.y > 0 ? 0 : roof.width;
  const u_w = isAlongX ? way.x : way.y;
  const a = calc(stripEdge, { t_0, u_w, d: from });
  const b = calc(stripEdge, { t_0, u_w, d: to });
  const low = Math.min(a, b);
  const high = Math.max(a, b);
  return isAlongX ? { x1: low, x2: high, y1: 0, y2: roof.width, pressure } : { x1: 0, x2: roof.length, y1: low, y2: high, pressure };
}

/** Strips of the roof under one wind case. Where the figure's range does not hold they are the nearest result, for information. */
export function windPatches(roof: RoofPlane, wind: WindOnRoof, direction: Direction, q_h: number, calc: Calc): readonly Patch[] {
  const use = figureFor(direction, calc);
  return zonesOf(use, direction, wind.flow, wind.pressureCase, calc).map(({ from, to, C_N }) => stripAcross(roof, wind.from, from, to, netPressureOf(direction.standard, q_h, C_N, calc), calc));
}
