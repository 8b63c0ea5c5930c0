/** Wind on the fascias of the windward and of the leeward edge. Nothing shelters anything else: the safe side. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import type { PlanArea, RoofColumn, RoofLoad } from "../../mechanics/rigid-roof.js";
import type { Edge } from "../demand.js";
import { elevationAt, extents, middleOf, oppositeEdge, senseOf, type Point3, type RoofPlane } from "../roof-plane.js";
import { panelCoefficient } from "./force-coefficients.js";
import { roofAngle } from "./net-coefficients.js";
import { overHeight, overTop } from "./panels.js";
import { areaForce, axisOf, K_d, pushAlong, senseAlong } from "./push.js";
import { otherPressureOf, withDirectionality, type WindSite } from "./velocity-pressure.js";

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

const fasciaArea = formula({
  id: "wind.fascia-area",
  text: "A_f = t * B",
  source: "geometry",
  symbols: { A_f: { kind: "planArea", meaning: "area of the fascia" }, t: { kind: "distance", meaning: "depth of the fascia", field: "roof.fascia.depth" }, B: { kind: "distance", meaning: "length of the edge" } },
});

/** Depth of the fascia on each edge, m. */
export type Fascia = Readonly<Record<Edge, number>>;

/** The middle of an edge of the roof. */
export function edgePlace(roof: RoofPlane, edge: Edge, calc: Calc): Point3 {
  const center = middleOf(roof, calc);
  const x = edge === "west" ? 0 : edge === "east" ? roof.length : center.x;
  const y = edge === "south" ? 0 : edge === "north" ? roof.width : center.y;
  // An edge along the slope has its middle at mean height.
  return { x, y, z: senseOf(edge, roof) === "side edge" ? roof.meanHeight : elevationAt(roof, x, y, center, calc) };
}

/**
 * Where a push on an edge comes to the columns of a roof that is not rigid in its plane: spread along the edge, at the columns nearest to it, as a push travels along
 * a purlin or beam without the lever of its overhang.
 */
export function alongEdge(roof: RoofPlane, columns: readonly Pick<RoofColumn, "x" | "y">[], edge: Edge): PlanArea {
  if (edge === "north" || edge === "south") {
    const ys = columns.map(({ y }) => y);
    const y = edge === "north" ? Math.max(...ys) : Math.min(...ys);
    return { x1: 0, x2: roof.length, y1: y, y2: y };
  }
  const xs = columns.map(({ x }) => x);
  const x = edge === "east" ? Math.max(...xs) : Math.min(...xs);
  return { x1: x, x2: x, y1: 0, y2: roof.width };
}

/** Wind on the fascias of the windward and of the leeward edge. */
export function dragOnFascia(roof: RoofPlane, columns: readonly Pick<RoofColumn, "x" | "y">[], fascia: Fascia, site: WindSite, q_h: number, from: Edge, calc: Calc): readonly RoofLoad[] {
  if (fascia[from] === 0 && fascia[oppositeEdge[from]] === 0) return [];
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
    return [{ ...place, ...pushAlong(axisOf(from), F), over: alongEdge(roof, columns, edge) }];
  });
}
