/** The concrete that a base plate stands on, seen from above, with the plate's center as origin. */
import type { Rectangle } from "../../mechanics/rectangles.js";
import { formula } from "../../formula/declare.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { readWallRun } from "./wall-place.js";

export interface Member {
  readonly shape: "round" | "rectangle";
  /** Diameter where round, m; otherwise not a number. */
  readonly diameter: number;
  /** Edges of a rectangle; of a round pier, of the square inside it. m from the center of the plate. */
  readonly edges: Rectangle;
  /** Depth of concrete below the plate, m. */
  readonly depth: number;
}

/** Half the side of the largest square inside a circle: the safe side for edge distances in a round pier. */
export const inscribedHalf = formula({
  id: "base.inscribed-half",
  text: "c_s = D / (2 * sqrt(2))",
  source: "geometry: the square inside the circle; on the safe side, no source",
  symbols: {
    c_s: { kind: "length", meaning: "half the side of the square inside the round pier" },
    D: { kind: "length", meaning: "diameter of the pier", field: "foundations.*.diameter" },
  },
});

export const halfOf = formula({
  id: "base.half",
  text: "c = b / 2",
  source: "geometry",
  symbols: { c: { kind: "length", meaning: "from the middle to an edge" }, b: { kind: "length", meaning: "side of the concrete or of the plate" } },
});

export const pierDepth = formula({
  id: "base.pier-depth",
  text: "h = d + a",
  source: "geometry",
  symbols: {
    h: { kind: "length", meaning: "depth of concrete below the plate" },
    d: { kind: "distance", meaning: "depth of the pier below grade", field: "foundations.*.depth" },
    a: { kind: "length", meaning: "height of the pier above grade", field: "foundations.*.above grade" },
  },
});

const nowhere: Member = {
  shape: "rectangle",
  diameter: Number.NaN,
  edges: { west: Number.NaN, east: Number.NaN, south: Number.NaN, north: Number.NaN },
  depth: Number.NaN,
};

const about = (x: number, y: number): Rectangle => ({ west: -x, east: x, south: -y, north: y });

/** Reads the concrete below the plate: a round or square pier, a pedestal, a pad, or a wall under its line of posts. */
export function readMember(support: Support, gather: Gather, place: number): Member {
  const fields = support.foundation?.fields;
  const kind = gather.needs(fields?.kind, "foundation below the base");
  if (fields === undefined || kind === undefined) return nowhere;
  const half = (b: number) => halfOf.value({ b });
  if (kind === "pier") {
    const diameter = gather.may(fields.diameter);
    const width = gather.may(fields.width);
    const depth = pierDepth.value({ d: gather.need(fields.depth, "depth of the pier"), a: gather.may(fields["above grade"]) ?? 0 });
    if (diameter !== undefined && width !== undefined) gather.block("the pier has both a diameter and a width; give the one it is");
    if (diameter !== undefined) {
      const c = inscribedHalf.value({ D: diameter });
      return { shape: "round", diameter, edges: about(c, c), depth };
    }
    const c = half(gather.need(fields.width, "diameter or width of the pier"));
    return { ...nowhere, edges: about(c, c), depth };
  }
  if (kind === "footing") return footingMember(support, gather);
  if (kind === "footing on rock") {
    const width = gather.need(fields.width, "width of the pad");
    const length = gather.need(fields.length, "length of the pad");
    return { ...nowhere, edges: about(half(width), half(length)), depth: gather.need(fields.thickness, "thickness of the pad") };
  }
  const thickness = half(gather.need(fields.thickness, "thickness of the wall"));
  const length = gather.need(fields.length ?? fields["length per post"], "length of the wall");
  const depth = gather.need(fields.height, "height of the wall");
  const run = readWallRun(support, gather, place, length);
  if (run === undefined) return nowhere;
  const edges = run.axis === "x" ? { west: -run.before, east: run.after, south: -thickness, north: thickness } : { west: -thickness, east: thickness, south: -run.before, north: run.after };
  return { ...nowhere, edges, depth };
}

/** The pedestal of a footing, down to the underside of its pad; or the pad where the plate stands right on it. */
function footingMember(support: Support, gather: Gather): Member {
  const fields = support.foundation?.fields;
  const half = (b: number) => halfOf.value({ b });
  const pedestal = fields?.pedestal?.value;
  const thickness = gather.need(fields?.thickness, "thickness of the pad");
  if (!pedestal) {
    const width = gather.need(fields?.width, "width of the pad");
    const length = gather.need(fields?.length, "length of the pad");
    return { ...nowhere, edges: about(half(width), half(length)), depth: thickness };
  }
  const depth = pierDepth.value({ d: gather.need(fields.depth, "depth of the underside of the pad"), a: gather.may(fields["above grade"]) ?? 0 });
  if (pedestal.diameter) {
    const diameter = gather.need(pedestal.diameter, "diameter of the pedestal");
    const c = inscribedHalf.value({ D: diameter });
    return { shape: "round", diameter, edges: about(c, c), depth };
  }
  return { ...nowhere, edges: about(half(gather.need(pedestal.width, "width of the pedestal")), half(gather.need(pedestal.length, "length of the pedestal"))), depth };
}
