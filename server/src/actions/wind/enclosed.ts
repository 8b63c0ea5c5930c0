/**
 * Wind on a roof with a wall that is less than 80 percent open, which is no open building. Whether it is enclosed, partially enclosed or partially open hangs on
 * openings that come and go, so that all three are enveloped: external pressures on the roof and on its walls with the internal pressure of a partially enclosed
 * building of either sign, between which those of the other classes lie. The free-roof cases, in obstructed flow too, stay beside them, and the worst governs.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isBelow } from "../../mechanics/compare.js";
import type { Edge, LoadCase } from "../demand.js";
import type { LoadPart } from "../roof-case.js";
import { edgeWords, extents, oppositeEdge, senseOf, type RoofPlane } from "../roof-plane.js";
import { bandPressing, enclosedSource, leewardSlope, leewardWall, liftingBands, otherClasses, partiallyEnclosed, sideWall, slopedFrom, windwardSlope, windwardWall, type Outer } from "./enclosed-tables.js";
import { stripAcross, type Patch } from "./free-roof.js";
import { bandEnd, halfLength, heightRatio, roofAngle } from "./net-coefficients.js";

export const surfacePressure = formula({
  id: "wind.surface-pressure",
  text: "p = q_d * (G * C_p - GC_pi)",
  source: "ASCE 7-22 Eq. 27.3-1 and its earlier editions, q_i taken as at mean roof height; the external pressure of walls too, the safe side",
  symbols: {
    p: { kind: "pressure", meaning: "pressure on the surface, inner and outer together, positive from outside" },
    q_d: { kind: "pressure", meaning: "velocity pressure at mean roof height, directionality factor included" },
    C_p: { kind: "ratio", meaning: "external pressure coefficient", range: [-1.3, 0.8] },
    GC_pi: { kind: "ratio", meaning: "internal pressure coefficient", range: [-0.55, 0.55] },
  },
  constants: { G: "0.85" },
});

const lengthOverWidth = formula({
  id: "wind.length-over-width",
  text: "r = L / B",
  source: "ASCE 7-22 Figure 27.3-1, leeward wall",
  symbols: { r: { kind: "number", meaning: "plan length along the wind over that across it" }, L: { kind: "distance", meaning: "plan length along the wind" }, B: { kind: "distance", meaning: "plan width across the wind" } },
});

/** A strip of the roof across the wind, by distance from the windward edge, m. */
interface OuterZone {
  readonly from: number;
  readonly to: number;
  readonly C_p: number;
  readonly where: string;
}

function bandsOf(along: number, h: number, ratio: number, outer: Outer, calc: Calc): readonly OuterZone[] {
  if (outer === "pressing") return [{ from: 0, to: along, C_p: bandPressing, where: "whole roof" }];
  const zones: OuterZone[] = [];
  let from = 0;
  for (const { to: n, C_p } of liftingBands(ratio, calc)) {
    const to = Number.isFinite(n) ? calc(bandEnd, { n, h, L: along }) : along;
    if (isBelow(from, to)) zones.push({ from, to, C_p, where: Number.isFinite(n) ? `up to ${n}h` : "beyond 2h" });
    from = to;
  }
  return zones;
}

/** External coefficients of the roof for wind from an edge. */
export function outerZones(roof: RoofPlane, from: Edge, outer: Outer, calc: Calc): readonly OuterZone[] {
  const { along } = extents(roof, from);
  const theta = calc(roofAngle, { s: roof.slope });
  const ratio = calc(heightRatio, { h: roof.meanHeight, L: along });
  const sense = senseOf(from, roof);
  if (sense === "side edge" || isBelow(theta, slopedFrom)) return bandsOf(along, roof.meanHeight, ratio, outer, calc);
  if (roof.shape === "monoslope") {
    calc.note("All of a monoslope roof is a windward or a leeward slope.");
    return [{ from: 0, to: along, C_p: sense === "low edge" ? windwardSlope(outer, theta, ratio, calc) : leewardSlope(theta, ratio, calc), where: "whole roof" }];
  }
  const d = calc(halfLength, { L: along });
  return [
    { from: 0, to: d, C_p: windwardSlope(outer, theta, ratio, calc), where: "windward half" },
    { from: d, to: along, C_p: leewardSlope(theta, ratio, calc), where: "leeward half" },
  ];
}

/** One case: which of both external values, and the internal coefficient with its sign. */
export interface EnclosedWind {
  readonly loadCase: LoadCase;
  readonly from: Edge;
  readonly outer: Outer;
  readonly GC_pi: number;
}

const hasOneValue = (roof: RoofPlane, from: Edge, calc: Calc): boolean =>
  roof.shape === "monoslope" && senseOf(from, roof) === "high edge" && !isBelow(calc(roofAngle, { s: roof.slope }), slopedFrom);

/** The cases for wind from an edge: both external values where the figure has two, with internal pressure of either sign. */
export function enclosedCases(roof: RoofPlane, from: Edge, calc: Calc): readonly EnclosedWind[] {
  const outers: readonly Outer[] = hasOneValue(roof, from, calc) ? ["lifting"] : ["lifting", "pressing"];
  return outers.flatMap((outer) =>
    ([partiallyEnclosed, -partiallyEnclosed] as const).map((GC_pi): EnclosedWind => {
      const sign = GC_pi > 0 ? "+" : "-";
      const title = `wind from the ${from}, onto the ${edgeWords(from, roof)}, roof with walls, outer pressure ${outer}, internal pressure ${sign}${partiallyEnclosed} (partially enclosed)`;
      return { loadCase: { id: `wind/${from}/walls/${outer}/${sign}${partiallyEnclosed}`, type: "W", title, from }, from, outer, GC_pi };
    }),
  );
}

export const enclosedCaseSource = `${enclosedSource}; of the enclosure classes the partially enclosed one governs, as ${otherClasses} of the others lies between both signs of its ${partiallyEnclosed}`;

/** Pressures on the roof under one case. */
export function enclosedPatches(roof: RoofPlane, { from, outer, GC_pi }: EnclosedWind, q_d: number, calc: Calc): readonly Patch[] {
  return outerZones(roof, from, outer, calc).map((zone) => stripAcross(roof, from, zone.from, zone.to, calc(surfacePressure, { q_d, C_p: zone.C_p, GC_pi }), calc));
}

/** The same with where each coefficient is read from. */
export const enclosedParts = (roof: RoofPlane, { from, outer, GC_pi }: EnclosedWind, q_d: number, calc: Calc): readonly LoadPart[] =>
  outerZones(roof, from, outer, calc).map((zone) => ({
    where: zone.where,
    between: [zone.from, zone.to],
    coefficient: { symbol: "C_p", value: zone.C_p },
    pressure: calc(surfacePressure, { q_d, C_p: zone.C_p, GC_pi }),
    read: enclosedSource,
  }));

/** Pressure on the wall below an edge, Pa, positive from outside. */
export function wallPressure(roof: RoofPlane, { from, GC_pi }: EnclosedWind, edge: Edge, q_d: number, calc: Calc): number {
  const { along: L, across: B } = extents(roof, from);
  const C_p = edge === from ? windwardWall : edge === oppositeEdge[from] ? leewardWall(calc(lengthOverWidth, { L, B }), calc) : sideWall;
  return calc(surfacePressure, { q_d, C_p, GC_pi });
}
