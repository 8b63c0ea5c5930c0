/** Size, weight and place of a wall on its strip footing, and of the length of it that acts with one post. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { type Stretch, wallStretch } from "../../mechanics/wall-run.js";
import type { Support } from "../../project/model.js";
import { readWallRun } from "../base/wall-place.js";
import type { Gather } from "../contract.js";
import { calculatedOnce } from "../once.js";
import { type EarthInputs, readEarth } from "./earth.js";

export type Side = "north" | "east" | "south" | "west";

export interface WallBody {
  /** Side the soil is held back on; of a wall that holds none, north or east, so that toe and heel have a meaning. */
  readonly fillSide: Side;
  readonly thickness: number;
  readonly height: number;
  /** Of the strip footing, m; toe and heel reach out beyond the wall. */
  readonly width: number;
  readonly base: number;
  readonly toe: number;
  readonly heel: number;
  /** Height of the soil above the footing, on the lower side and on the side of the fill, m. */
  readonly low: number;
  readonly high: number;
  readonly retains: number;
  /** Unit weight of the soil on the toe, N/m³. */
  readonly toeWeight: number;
  /** Whether soil beside the footing that is not held back may be counted to hold it. */
  readonly isSoilCounted: boolean;
  readonly depth: number;
  readonly keyDepth: number;
  /** Height of the water above the underside, on the lower side and on the side of the fill, m. */
  readonly lowWater: number;
  readonly highWater: number;
  readonly grout: number;
  readonly plate: number;
  /** Length of wall that acts with the post, m, and how far its middle stands from the post toward larger coordinates. */
  readonly run: number;
  readonly offset: number;
  readonly stretch: string;
  /** Undefined where no soil is held back. */
  readonly earth: EarthInputs | undefined;
}

/** Bars driven dry into the rock: they stop a footing from sliding and hold nothing down. */
export const hasPinsAlone = (support: Support): boolean => support.foundation?.fields.dowels?.value["set in"]?.value === "nothing";

export const isWall = (support: Support): boolean => support.foundation?.fields.kind?.value === "wall on footing";

const thickness = { kind: "length", meaning: "thickness of the wall", field: "foundations.*.thickness" } as const;
const height = { kind: "distance", meaning: "height of the wall above its footing", field: "foundations.*.height" } as const;
const width = { kind: "length", meaning: "width of the strip footing", field: "foundations.*.footing.width" } as const;
const base = { kind: "length", meaning: "thickness of the strip footing", field: "foundations.*.footing.thickness" } as const;
const toe = { kind: "length", meaning: "toe of the strip footing", field: "foundations.*.footing.toe" } as const;
const heel = { kind: "length", meaning: "heel of the strip footing", field: "foundations.*.footing.heel" } as const;
const depth = { kind: "distance", meaning: "depth of the underside below the lower ground", field: "foundations.*.depth" } as const;
const run = { kind: "distance", meaning: "length of wall that acts with the post" } as const;
const lowSoil = { kind: "distance", meaning: "height of the soil on the toe" } as const;
const highSoil = { kind: "distance", meaning: "height of the soil on the heel, at the wall" } as const;

export const depthByTop = formula({
  id: "wall.depth-by-top",
  text: "d = h + t_f - h_a",
  source: "geometry",
  symbols: { d: depth, h: height, t_f: base, h_a: { kind: "length", meaning: "height of the top of concrete above the lower ground", field: "foundations.*.above grade" } },
});

export const otherReach = formula({
  id: "wall.other-reach",
  text: "b_o = B - t_w - b",
  source: "geometry",
  symbols: { b_o: { kind: "length", meaning: "reach of the footing on the other side" }, B: width, t_w: thickness, b: { kind: "length", meaning: "reach of the footing on one side" } },
});

export const evenReach = formula({
  id: "wall.even-reach",
  text: "b = (B - t_w) / 2",
  source: "geometry: the wall on the middle of its footing",
  symbols: { b: { kind: "length", meaning: "reach of the footing on each side" }, B: width, t_w: thickness },
});

export const soilAbove = formula({
  id: "wall.soil-above",
  text: "h_s = max(d - t_f, 0 * d) + h_r",
  source: "geometry",
  symbols: { h_s: { kind: "distance", meaning: "height of the soil above the footing" }, d: depth, t_f: base, h_r: { kind: "distance", meaning: "height of soil retained; none on the lower side", field: "foundations.*.retains" } },
});

export const waterAbove = formula({
  id: "wall.water-above",
  text: "h_w = max(h_s + t_f - z_w, 0 * z_w)",
  source: "geometry",
  symbols: { h_w: { kind: "distance", meaning: "height of the water above the underside" }, h_s: { kind: "distance", meaning: "height of the soil above the footing" }, t_f: base, z_w: { kind: "distance", meaning: "depth of the water below the top of that soil", field: "foundations.*.fill.water" } },
});

export const stretchLength = formula({
  id: "wall.stretch",
  text: "L_r = a_1 + a_2",
  source: "geometry",
  symbols: { L_r: run, a_1: { kind: "distance", meaning: "length that acts on one side of the post" }, a_2: { kind: "distance", meaning: "length that acts on its other side" } },
});

export const stretchOffset = formula({
  id: "wall.stretch-offset",
  text: "e_r = (a_2 - a_1) / 2",
  source: "geometry",
  symbols: { e_r: { kind: "distance", meaning: "from the post to the middle of that length", range: [-3, 3] }, a_1: { kind: "distance", meaning: "length that acts on one side of the post" }, a_2: { kind: "distance", meaning: "length that acts on its other side" } },
});

export const stripWeight = formula({
  id: "wall.strip-weight",
  text: "W_f = gamma_c * B * t_f * L_r",
  source: "statics",
  symbols: { W_f: { kind: "force", meaning: "weight of the strip footing" }, B: width, t_f: base, L_r: run },
  constants: { gamma_c: "150 lbf/ft^3" },
});

export const stemWeight = formula({
  id: "wall.stem-weight",
  text: "W_w = gamma_c * t_w * h * L_r",
  source: "statics",
  symbols: { W_w: { kind: "force", meaning: "weight of the wall above its footing" }, t_w: thickness, h: height, L_r: run },
  constants: { gamma_c: "150 lbf/ft^3" },
});

export const toeSoil = formula({
  id: "wall.toe-soil",
  text: "W_t = gamma_t * b_t * h_t * L_r",
  source: "statics",
  symbols: { W_t: { kind: "force", meaning: "weight of the soil on the toe" }, gamma_t: { kind: "unitWeight", meaning: "unit weight of the soil on the toe", field: "foundations.*.backfill weight" }, b_t: toe, h_t: lowSoil, L_r: run },
});

export const heelSoil = formula({
  id: "wall.heel-soil",
  text: "W_h = b_h * (gamma * h_h + (gamma_sat - gamma) * min(max(h_w - t_f, 0 * h_w), h_h)) * L_r",
  source: "statics: soil straight above the heel, saturated below the water",
  symbols: {
    W_h: { kind: "force", meaning: "weight of the soil on the heel" },
    b_h: heel,
    gamma: { kind: "unitWeight", meaning: "unit weight of the soil on the heel", field: "foundations.*.fill.unit weight" },
    gamma_sat: { kind: "unitWeight", meaning: "unit weight of that soil below the water", field: "foundations.*.fill.saturated weight" },
    h_h: highSoil,
    h_w: { kind: "distance", meaning: "height of the water above the underside" },
    t_f: base,
    L_r: run,
  },
});

export const wedgeSoil = formula({
  id: "wall.wedge-soil",
  text: "W_s = gamma * m * b_h^2 / 2 * L_r",
  source: "statics: the wedge of rising ground above the heel",
  symbols: { W_s: { kind: "force", meaning: "weight of the wedge of soil below the slope" }, gamma: { kind: "unitWeight", meaning: "unit weight of the soil on the heel", field: "foundations.*.fill.unit weight" }, m: { kind: "slope", meaning: "rise over run of the ground behind the wall", field: "foundations.*.fill.slope" }, b_h: heel, L_r: run },
});

const parts = {
  W_f: { kind: "force", meaning: "weight of the strip footing" },
  W_w: { kind: "force", meaning: "weight of the wall above its footing" },
  W_t: { kind: "force", meaning: "weight of the soil on the toe" },
  W_h: { kind: "force", meaning: "weight of the soil on the heel" },
  W_s: { kind: "force", meaning: "weight of the wedge of soil below the slope" },
} as const;

export const weightTogether = formula({
  id: "wall.weight",
  text: "W = W_f + W_w + W_t + W_h + W_s",
  source: "statics",
  symbols: { W: { kind: "force", meaning: "weight of wall, footing and the soil counted on it" }, ...parts },
});

export const momentOfWeight = formula({
  id: "wall.weight-moment",
  text: "M_W = W_f * B / 2 + W_w * (b_t + t_w / 2) + W_t * b_t / 2 + W_h * (B - b_h / 2) + W_s * (B - b_h / 3)",
  source: "statics about the edge of the toe",
  symbols: { M_W: { kind: "moment", meaning: "moment of the weights about the edge of the toe" }, ...parts, B: width, b_t: toe, t_w: thickness, b_h: heel },
});

export const heelPlane = formula({
  id: "wall.heel-plane",
  text: "H = h_h + t_f + m * b_h",
  source: "geometry: the plane through the end of the heel, up to the ground",
  symbols: {
    H: { kind: "distance", meaning: "height of the plane the soil presses on" },
    h_h: { kind: "distance", meaning: "height of the soil on the heel, at the wall" },
    t_f: { kind: "length", meaning: "thickness of the strip footing", field: "foundations.*.footing.thickness" },
    m: { kind: "slope", meaning: "rise over run of the ground behind the wall", field: "foundations.*.fill.slope" },
    b_h: { kind: "length", meaning: "heel of the strip footing", field: "foundations.*.footing.heel" },
  },
});

export const weightFormulas = [stripWeight, stemWeight, toeSoil, heelSoil, wedgeSoil, weightTogether, momentOfWeight] as const;

export const apart = formula({
  id: "wall.apart",
  text: "x = abs(a - b)",
  source: "arithmetic",
  symbols: { x: { kind: "length", meaning: "difference of two statements of one size" }, a: { kind: "length", meaning: "one" }, b: { kind: "length", meaning: "the other" } },
});

/** Slack between two statements of one size, m: half an inch. */
const slack = 0.0127;

const isApart = (a: number, b: number): boolean => apart.value({ a, b }) > slack;

type StripFields = NonNullable<NonNullable<Support["foundation"]>["fields"]["footing"]>["value"] | undefined;

const defaultSide = { x: "north", y: "east" } as const;

export function readWall(support: Support, gather: Gather, place: number): WallBody {
  const f = support.foundation?.fields;
  const strip = f?.footing?.value;
  const retains = gather.may(f?.retains) ?? 0;
  const thickness = gather.need(f?.thickness, "thickness of the wall");
  const height = gather.need(f?.height, "height of the wall");
  const width = gather.need(strip?.width, "width of the wall's footing");
  const base = gather.need(strip?.thickness, "thickness of the wall's footing");
  const { toe, heel } = reaches(support, gather, width, thickness, retains);
  const depth = depthOf(support, gather, height, base);
  const low = soilAbove.value({ d: depth, t_f: base, h_r: 0 });
  const high = soilAbove.value({ d: depth, t_f: base, h_r: retains });
  if (high > height && isApart(high, height)) gather.block("the soil stands higher than the wall: correct its height, the depth of its footing or the height it retains");
  const earth = retains > 0 ? readEarth(support, gather) : undefined;
  const unit = f?.["backfill weight"] ?? f?.fill?.value["unit weight"] ?? support.ground?.fields["unit weight"];
  const needsToe = low > 0;
  const table = gather.may(support.ground?.fields["water table"]);
  const lowWater = table === undefined ? 0 : waterAbove.value({ h_s: low, t_f: base, z_w: table });
  const highWater = earth?.water === undefined ? lowWater : Math.max(lowWater, waterAbove.value({ h_s: high, t_f: base, z_w: earth.water }));
  return {
    ...stretchOf(support, gather, place, earth),
    thickness,
    height,
    width,
    base,
    toe,
    heel,
    low,
    high,
    retains,
    toeWeight: needsToe ? gather.need(unit, "unit weight of the soil on the footing (`backfill weight`, or the ground's `unit weight`)") : 0,
    isSoilCounted: gather.may(f?.backfill) === "compacted and tested",
    depth,
    keyDepth: gather.may(f?.key?.value.depth) ?? 0,
    lowWater,
    highWater,
    grout: gather.may(support.base?.fields.grout) ?? 0,
    plate: gather.may(support.base?.fields.plate?.value.thickness) ?? 0,
    earth,
  };
}

/** How far the strip footing reaches out beyond its wall: as stated on both sides, or on one of them; alike where nothing is said. */
export function reachesOf(strip: StripFields, B: number, t_w: number, gather: Gather): { readonly toe: number; readonly heel: number } {
  const toe = gather.may(strip?.toe);
  const heel = gather.may(strip?.heel);
  const other = (b: number): number => otherReach.value({ B, t_w, b });
  if (toe !== undefined && heel !== undefined && isApart(heel, other(toe))) gather.block("toe, wall and heel together are not as wide as the footing: correct one of them");
  const found = toe ?? (heel === undefined ? evenReach.value({ B, t_w }) : other(heel));
  const rest = other(found);
  if (found < 0 || rest < 0) gather.block("the footing is narrower than the wall with its toe or heel: widen it");
  return { toe: found, heel: rest };
}

function reaches(support: Support, gather: Gather, B: number, t_w: number, retains: number): { readonly toe: number; readonly heel: number } {
  const strip = support.foundation?.fields.footing?.value;
  if ((strip?.toe || strip?.heel) && retains <= 0 && !support.foundation?.fields.fill?.value.side)
    gather.block("the footing has a toe or a heel, and which side it is on is not told: state the side of the fill");
  return reachesOf(strip, B, t_w, gather);
}

/** Depth of the underside below the lower ground: as stated, or from the top of the wall. */
function depthOf(support: Support, gather: Gather, h: number, t_f: number): number {
  const f = support.foundation?.fields;
  const top = f?.["above grade"];
  const byTop = top && !top.assumed ? depthByTop.value({ h, t_f, h_a: gather.need(top, "height of the top of the wall above grade") }) : undefined;
  if (!f?.depth && byTop !== undefined) return Math.max(byTop, 0);
  const d = gather.need(f?.depth, "depth of the footing's underside below the lower ground (`depth`, or `above grade` of the wall's top)");
  if (byTop !== undefined && isApart(d, byTop)) gather.block("depth, height of the wall and `above grade` do not close: correct one of them");
  return d;
}

function stretchOf(support: Support, gather: Gather, place: number, earth: EarthInputs | undefined): Pick<WallBody, "fillSide" | "run" | "offset" | "stretch"> {
  const f = support.foundation?.fields;
  const perPost = gather.may(f?.["length per post"]);
  const length = gather.need(f?.length ?? f?.["length per post"], "length of the wall");
  const side = earth ? gather.needs(f?.fill?.value.side, "side of the wall the soil is held back on") : f?.fill?.value.side?.value;
  const at = readWallRun(support, gather, place, length);
  if (!at) return { fillSide: side ?? "north", run: Number.NaN, offset: 0, stretch: "" };
  const found = wallStretch(support.places, place, at, perPost ?? Math.max(length, 0));
  const atCorner = gather.may(f?.["wall ends"]) === "corner" && (found.cutBefore === "end" || found.cutAfter === "end");
  if (earth && atCorner && earth.method !== "at rest" && earth.method !== "equivalent fluid")
    gather.block("near this post the wall turns a corner, whose return holds it from giving way, and active pressure does not come about there: take pressure at rest");
  return {
    fillSide: side ?? defaultSide[at.axis],
    run: stretchLength.value({ a_1: found.before, a_2: found.after }),
    offset: stretchOffset.value({ a_1: found.before, a_2: found.after }),
    stretch: saidOf(found, at.axis),
  };
}

const cutWords = { length: "", end: "the end of the wall", joint: "a movement joint", post: "the neighboring post's share" } as const;

/** What cuts the length short, in words; empty where nothing does. */
export function saidOf({ cutBefore, cutAfter }: Stretch, axis: "x" | "y"): string {
  const [low, high] = axis === "x" ? (["west", "east"] as const) : (["south", "north"] as const);
  const cuts = [cutBefore === "length" ? "" : `on the ${low} by ${cutWords[cutBefore]}`, cutAfter === "length" ? "" : `on the ${high} by ${cutWords[cutAfter]}`].filter((text) => text !== "");
  return cuts.length === 0 ? "" : `The length of wall that acts with the post is cut short ${cuts.join(" and ")}.`;
}

export interface Weights {
  /** N, of the length that acts with the post, without load factor. */
  readonly total: number;
  readonly concrete: number;
  /** About the edge of the toe, N·m. */
  readonly moment: number;
  /** Of the total, the soil straight above the heel and the wedge below the slope. */
  readonly heelSoil: number;
  readonly wedge: number;
}

/** What soil is counted on the footing: all of it where it presses; where it holds, what is held back, and the rest if it is tested. */
export type Soil = "all" | "all but the fill" | "holds with the fill" | "holds without the fill";

const weigh = (soil: Soil) =>
  calculatedOnce((body: WallBody, calc: Calc): Weights => {
    const { width: B, base: t_f, thickness: t_w, height: h, run: L_r, toe: b_t, heel: b_h, earth } = body;
    const W_f = calc(stripWeight, { B, t_f, L_r });
    const W_w = calc(stemWeight, { t_w, h, L_r });
    const besides = soil === "all" || soil === "all but the fill" || body.isSoilCounted;
    const W_t = besides && body.low > 0 && b_t > 0 ? calc(toeSoil, { gamma_t: body.toeWeight, b_t, h_t: body.low, L_r }) : 0;
    let W_h = 0;
    let W_s = 0;
    if (b_h > 0 && earth && (soil === "all" || soil === "holds with the fill")) {
      W_h = calc(heelSoil, { b_h, gamma: earth.gamma, gamma_sat: earth.saturated, h_h: body.high, h_w: earth.water === undefined ? 0 : body.highWater, t_f: t_f, L_r });
      if (earth.slope > 0) W_s = calc(wedgeSoil, { gamma: earth.gamma, m: earth.slope, b_h, L_r });
    } else if (b_h > 0 && !earth && besides && body.high > 0) {
      W_h = calc(heelSoil, { b_h, gamma: body.toeWeight, gamma_sat: body.toeWeight, h_h: body.high, h_w: 0, t_f, L_r });
    }
    const args = { W_f, W_w, W_t, W_h, W_s };
    const concrete = calc(weightTogether, { ...args, W_t: 0, W_h: 0, W_s: 0 });
    return { total: calc(weightTogether, args), concrete, moment: calc(momentOfWeight, { ...args, B, b_t, t_w, b_h }), heelSoil: W_h, wedge: W_s };
  });

const weighers: Readonly<Record<Soil, ReturnType<typeof weigh>>> = { all: weigh("all"), "all but the fill": weigh("all but the fill"), "holds with the fill": weigh("holds with the fill"), "holds without the fill": weigh("holds without the fill") };

/** Weights of the length of wall that acts with the post. */
export const weightsOf = (body: WallBody, soil: Soil, calc: Calc): Weights => weighers[soil](body, calc);
