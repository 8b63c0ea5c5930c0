/** What length of wall carries the forces of a post at a depth below its top: they spread from the base plate, cut short by ends, joints and the next posts. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { wallStretch } from "../../mechanics/wall-run.js";
import type { Support } from "../../project/model.js";
import { halfOf } from "../base/member.js";
import { readWallRun } from "../base/wall-place.js";
import type { Gather } from "../contract.js";

const side = { kind: "distance", meaning: "length of wall to one side of the post that carries its forces", range: [0.1, 3] } as const;
const depth = { kind: "distance", meaning: "depth of the section below the top of the wall", range: [0.05, 3] } as const;
const half = { kind: "length", meaning: "half of the base plate along the wall, or of the width stated", field: "foundations.*.post width" } as const;
const slope = { kind: "number", meaning: "spread to one side per depth: the tangent of its angle", field: "foundations.*.post spread", range: [0.1, 1] } as const;
const limit = { kind: "distance", meaning: "from the post to the wall's end, a joint, the middle to the next post, or half the length per post" } as const;

export const spreadSide = formula({
  id: "wall.spread-side",
  text: "a_s = min(b_h + k_s * z, l_s)",
  source: "spread of the post's forces as the notebook states it; common practice, no source",
  symbols: { a_s: side, b_h: half, k_s: slope, z: depth, l_s: limit },
});

export const spreadWidth = formula({
  id: "wall.spread-width",
  text: "b = a_1 + a_2",
  source: "geometry",
  symbols: { b: { kind: "distance", meaning: "length of wall that carries the forces of the post" }, a_1: side, a_2: side },
});

export const spreadOffset = formula({
  id: "wall.spread-offset",
  text: "e_b = (a_2 - a_1) / 2",
  source: "geometry",
  symbols: { e_b: { kind: "distance", meaning: "from the post to the middle of that length", range: [-3, 3] }, a_1: side, a_2: side },
});

export const depthOfLimit = formula({
  id: "wall.depth-of-limit",
  text: "z = (l_s - b_h) / k_s",
  source: "geometry: where the spread meets its limit",
  symbols: { z: depth, l_s: limit, b_h: half, k_s: slope },
});

export const spreadFormulas = [spreadSide, spreadWidth, spreadOffset] as const;

/** How the forces of the post spread; plain data. */
export interface Spread {
  /** m. */
  readonly half: number;
  readonly perDepth: number;
  /** Limits toward smaller and larger coordinates, m. */
  readonly before: number;
  readonly after: number;
}

/** Tangents of the angles of spread. */
const tangent = { "45 degrees": 1, "30 degrees": 0.5773502691896258, "plate alone": 0 } as const;

/** Undefined where a wall that stands alone says neither a width nor has a plate: then only the soil may load it. */
export function readSpread(support: Support, gather: Gather, place: number): Spread | undefined {
  const f = support.foundation?.fields;
  const stated = gather.may(f?.["post width"]);
  const plate = support.base?.fields.plate;
  const length = gather.need(f?.length ?? f?.["length per post"], "length of the wall");
  const run = readWallRun(support, gather, place, length);
  if (!run) return undefined;
  const { before, after } = wallStretch(support.places, place, run, gather.may(f?.["length per post"]) ?? Number.POSITIVE_INFINITY);
  if (stated !== undefined) {
    if (f?.["post spread"]) gather.block("the wall has both a `post spread` and a `post width`: leave out one of them");
    return { half: halfOf.value({ b: stated }), perDepth: 0, before, after };
  }
  if (!support.base && !support.column) return undefined;
  const spread = gather.needs(f?.["post spread"], "how the forces of a post spread down the wall (`post spread`, or a `post width`)");
  const sides = gather.needs(plate, "base plate of the post on the wall");
  const along = gather.need(run.axis === "x" ? sides?.width : sides?.length, "side of the base plate along the wall");
  return { half: halfOf.value({ b: along }), perDepth: spread ? tangent[spread] : Number.NaN, before, after };
}

export interface Carried {
  /** m. */
  readonly width: number;
  readonly offset: number;
}

export function carriedAt({ half: b_h, perDepth: k_s, before, after }: Spread, z: number, calc: Calc): Carried {
  const a_1 = calc(spreadSide, { b_h, k_s, z, l_s: before });
  const a_2 = calc(spreadSide, { b_h, k_s, z, l_s: after });
  return { width: calc(spreadWidth, { a_1, a_2 }), offset: a_1 === a_2 ? 0 : calc(spreadOffset, { a_1, a_2 }) };
}
