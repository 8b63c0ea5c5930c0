/** Sizes of a foundation that contradict each other. */
import { formula } from "../../formula/declare.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";
import type { Foundation, Support } from "../../project/model.js";
import type { Found, ShowAs } from "./judge.js";

const depth = { kind: "distance", meaning: "depth of the underside below grade", field: "foundations.*.depth" } as const;
const above = { kind: "length", meaning: "top of concrete above grade", field: "foundations.*.above grade" } as const;

export const heightByElevations = formula({
  id: "site.height-by-elevations",
  text: "h = d + h_a",
  source: "geometry",
  symbols: { h: { kind: "distance", meaning: "height of the concrete, from its underside to its top" }, d: depth, h_a: above },
});

export const heightOfWall = formula({
  id: "site.height-of-wall",
  text: "h = H_w + t_f",
  source: "geometry",
  symbols: {
    h: { kind: "distance", meaning: "height of wall and footing" },
    H_w: { kind: "distance", meaning: "height of the wall above its footing", field: "foundations.*.height" },
    t_f: { kind: "length", meaning: "thickness of its footing", field: "foundations.*.footing.thickness" },
  },
});

export const missedBy = formula({
  id: "site.missed-by",
  text: "g = abs(h_1 - h_2)",
  source: "geometry",
  symbols: { g: { kind: "distance", meaning: "what two heights differ by" }, h_1: { kind: "distance", meaning: "one height" }, h_2: { kind: "distance", meaning: "the other" } },
});

export const cageWidth = formula({
  id: "site.cage-width",
  text: "b_c = 2 * (c_c + d_t + d_b)",
  source: "geometry: two bars facing each other, with their ties and cover",
  symbols: {
    b_c: { kind: "length", meaning: "least width the bars with their ties and cover take" },
    c_c: { kind: "length", meaning: "clear cover of the ties", field: "foundations.*.cover" },
    d_t: { kind: "length", meaning: "diameter of the ties or spiral", field: "foundations.*.spiral" },
    d_b: { kind: "length", meaning: "diameter of the vertical bars", field: "foundations.*.bars" },
  },
});

export const lineLength = formula({
  id: "site.line-length",
  text: "L_l = sqrt((x_2 - x_1)^2 + (y_2 - y_1)^2)",
  source: "geometry",
  symbols: {
    L_l: { kind: "distance", meaning: "from the first post on the wall to the last" },
    x_1: { kind: "distance", meaning: "first post, east", field: "columns.*.from" },
    y_1: { kind: "distance", meaning: "first post, north", field: "columns.*.from" },
    x_2: { kind: "distance", meaning: "last post, east", field: "columns.*.to" },
    y_2: { kind: "distance", meaning: "last post, north", field: "columns.*.to" },
  },
});

/** What heights may miss by before they contradict, m: half an inch. */
const slack = 0.0127;

function* ofPier({ depth, "ignored depth": ignored, diameter, width, cover, spiral, ties, bars }: Foundation, show: ShowAs): Generator<Found> {
  if (diameter && width) yield { message: `It has a diameter of ${show(diameter.value, "length")} and a side of ${show(width.value, "length")}: a pier is round or square. Take out the one that is wrong.`, at: width };
  if (depth && ignored && !isBelow(ignored.value, depth.value)) yield { message: `Ignored depth ${show(ignored.value, "distance")}, underside at ${show(depth.value, "distance")}: nothing of the pier is left in the ground. Correct one of them.`, at: ignored };
  const side = diameter ?? width;
  const d_b = bars?.value.bar?.value.diameter;
  if (!side || !cover || d_b === undefined) return;
  const needed = cageWidth.value({ c_c: cover.value, d_t: (spiral ?? ties)?.value.bar?.value.diameter ?? 0, d_b });
  if (isAbove(needed, side.value)) yield { message: `Pier ${show(side.value, "length")} wide; its bars with ties and cover take ${show(needed, "length")}. Widen the pier or correct the cover.`, at: side };
}

function* ofPad({ depth, "above grade": above, thickness, width, length, pedestal }: Foundation, show: ShowAs): Generator<Found> {
  const shaft = pedestal?.value;
  const x = shaft?.diameter ?? shaft?.width;
  const y = shaft?.diameter ?? shaft?.length;
  for (const [side, pad, where] of [[x, width, "along x"], [y, length, "along y"]] as const)
    if (side && pad && isAbove(side.value, pad.value)) yield { message: `Pedestal ${show(side.value, "length")} ${where}, on a pad of ${show(pad.value, "length")}. Widen the pad or correct the pedestal.`, at: side };
  if (!depth || !above || !thickness) return;
  const h = heightByElevations.value({ d: depth.value, h_a: above.value });
  if (pedestal && !isAbove(h, thickness.value))
    yield { message: `Pad ${show(thickness.value, "length")} thick, and from its underside to the top of concrete there are ${show(h, "length")}: nothing is left for the pedestal. Correct the depth, the top of concrete or the thickness.`, at: thickness };
  if (!pedestal && !above.assumed) yield* closes(h, thickness.value, "thickness", thickness, show);
}

function* closes(h_1: number, h_2: number, what: string, at: Found["at"], show: ShowAs): Generator<Found> {
  if (!isAbove(missedBy.value({ h_1, h_2 }), slack)) return;
  yield { message: `Depth and top of concrete make ${show(h_1, "length")}, and its ${what} ${show(h_2, "length")}. Correct the depth, the top of concrete or the ${what}.`, at };
}

function* ofWall({ places }: Support, { depth, "above grade": above, height, footing, length }: Foundation, show: ShowAs): Generator<Found> {
  const t_f = footing?.value.thickness;
  if (depth && above && height && t_f) yield* closes(heightByElevations.value({ d: depth.value, h_a: above.value }), heightOfWall.value({ H_w: height.value, t_f: t_f.value }), "height with its footing", height, show);
  const [first, last] = [places[0], places[places.length - 1]];
  if (!length || !first || !last) return;
  const line = lineLength.value({ x_1: first.x, y_1: first.y, x_2: last.x, y_2: last.y });
  if (isAbove(line, length.value)) yield { message: `The posts on it reach over ${show(line, "distance")}, and the wall is ${show(length.value, "distance")} long. Lengthen the wall or correct the places of the posts.`, at: length };
}

/** What of a foundation's own sizes does not agree. */
export function* concreteFound(support: Support, fields: Foundation, show: ShowAs): Generator<Found> {
  const kind = fields.kind?.value;
  if (kind === "pier") yield* ofPier(fields, show);
  if (kind === "footing") yield* ofPad(fields, show);
  if (kind === "wall on footing") yield* ofWall(support, fields, show);
  const { thickness, depth, "above grade": above, dowels } = fields;
  if (kind === "footing on rock" && thickness && depth && above) yield* closes(heightByElevations.value({ d: depth.value, h_a: above.value }), thickness.value, "thickness", thickness, show);
  const inConcrete = dowels?.value["in concrete"];
  if (kind === "footing on rock" && thickness && inConcrete && isAbove(inConcrete.value, thickness.value))
    yield { message: `Dowels ${show(inConcrete.value, "length")} into a pad of ${show(thickness.value, "length")}: they come out at its top. Shorten them, hook them, or thicken the pad.`, at: inConcrete };
  const metBy = fields["as built"]?.value["rock met by"];
  if (metBy && metBy.value > support.places.length) yield { message: `Rock met by ${metBy.value} of ${support.places.length} foundations. Correct the number.`, at: metBy };
}
