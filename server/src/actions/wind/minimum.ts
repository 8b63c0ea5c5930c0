/**
 * The least wind force on an open structure: 16 psf on the projected vertical area of the roof. It is taken as a case of its own
 * for each edge, a horizontal push at the middle of the roof at mean height, with no wind pressure on the roof beside it. The projected
 * area is the roof edge across its width, with wind along the slope also the rise of the roof, and with wind onto the gable end of a pitched
 * roof also the gable, taken as closed.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { RoofLoad } from "../../mechanics/rigid-roof.js";
import type { Edge, LoadCase } from "../demand.js";
import { edgeWords, extents, inward, middleOf, senseOf, type RoofPlane } from "../roof-plane.js";

export const minimumSource = "ASCE 7-10, 7-16 and 7-22 27.1.5; the area and the place of the force are common practice, no source";

const edgeDepth = { kind: "length", meaning: "depth of the roof edge seen from the side", field: "roof.edge depth" } as const;
const across = { kind: "distance", meaning: "plan width of the roof across the wind" } as const;

const areaAlongSlope = formula({
  id: "wind.projected-area-along-slope",
  text: "A_f = (t + s * L) * B",
  source: "geometry: roof edge and rise of the roof, projected on a vertical plane across the wind",
  symbols: {
    A_f: { kind: "planArea", meaning: "projected vertical area of the roof" },
    t: edgeDepth,
    s: { kind: "slope", meaning: "roof slope, rise over run", field: "roof.slope" },
    L: { kind: "distance", meaning: "plan length of the roof along the wind" },
    B: across,
  },
});

const areaOfHalf = formula({
  id: "wind.projected-area-of-half",
  text: "A_f = (t + s * L / 2) * B",
  source: "geometry: roof edge and rise of one half, projected on a vertical plane across the wind",
  symbols: {
    A_f: { kind: "planArea", meaning: "projected vertical area of the roof" },
    t: edgeDepth,
    s: { kind: "slope", meaning: "slope of each half, rise over run", field: "roof.slope" },
    L: { kind: "distance", meaning: "plan length of the roof along the wind" },
    B: across,
  },
});

const areaOfGable = formula({
  id: "wind.projected-area-of-gable",
  text: "A_f = (t + s * B / 4) * B",
  source: "geometry: roof edge and the triangle of the gable, taken as closed",
  symbols: {
    A_f: { kind: "planArea", meaning: "projected vertical area of the roof" },
    t: edgeDepth,
    s: { kind: "slope", meaning: "slope of each half, rise over run", field: "roof.slope" },
    B: across,
  },
});

const areaAcrossSlope = formula({
  id: "wind.projected-area-across-slope",
  text: "A_f = t * B",
  source: "geometry: roof edge, projected on a vertical plane across the wind",
  symbols: { A_f: { kind: "planArea", meaning: "projected vertical area of the roof" }, t: edgeDepth, B: across },
});

const leastForce = formula({
  id: "wind.least-force",
  text: "F_min = p_min * A_f",
  source: "ASCE 7-10, 7-16 and 7-22 27.1.5, open buildings",
  symbols: { F_min: { kind: "force", meaning: "least horizontal wind force" }, A_f: { kind: "planArea", meaning: "projected vertical area of the roof" } },
  constants: { p_min: "16 psf" },
});

const pushPart = formula({
  id: "wind.push-part",
  text: "F = u_w * F_w",
  source: "geometry",
  symbols: {
    F: { kind: "force", meaning: "part of the push along a plan axis" },
    u_w: { kind: "ratio", meaning: "direction of the wind along the axis" },
    F_w: { kind: "force", meaning: "horizontal wind force" },
  },
});

export const minimumCase = (roof: RoofPlane, from: Edge): LoadCase => ({
  id: `wind/${from}/minimum`,
  type: "W",
  title: `wind from the ${from}, onto the ${edgeWords(from, roof)}, least force, no pressure on the roof`,
  from,
});

function projectedArea(roof: RoofPlane, t: number, from: Edge, L: number, B: number, calc: Calc): number {
  if (senseOf(from, roof) !== "side edge") return calc(roof.shape === "monoslope" ? areaAlongSlope : areaOfHalf, { t, s: roof.slope, L, B });
  return roof.shape === "pitched" ? calc(areaOfGable, { t, s: roof.slope, B }) : calc(areaAcrossSlope, { t, B });
}

/** The push of the least wind force from an edge, N. `depth` is the depth of the roof edge, m. */
export function minimumLoad(roof: RoofPlane, depth: number, from: Edge, calc: Calc): RoofLoad {
  const { along, across: B } = extents(roof, from);
  const A_f = projectedArea(roof, depth, from, along, B, calc);
  const F_w = calc(leastForce, { A_f });
  const way = inward[from];
  return { ...middleOf(roof, calc), Fx: calc(pushPart, { u_w: way.x, F_w }), Fy: calc(pushPart, { u_w: way.y, F_w }), Fz: 0 };
}
