/** The vertical bars of a pier or pedestal, with the rods of a base between them: where they stand, and which of them each rod can lean on. */
import { formula } from "../../formula/declare.js";
import { barsOnCircle, barsOnRectangle } from "../../mechanics/bars-around.js";
import type { Point } from "../../mechanics/rectangles.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { leastDistance } from "./rod-edges.js";

export const outerBars = formula({
  id: "anchors.outer-bars",
  text: "s_b = c - 2 * (c_c + d_t) - d_b",
  source: "geometry",
  symbols: {
    s_b: { kind: "length", meaning: "distance of the outermost vertical bars, center to center" },
    c: { kind: "length", meaning: "side or diameter of the pier" },
    c_c: { kind: "length", meaning: "clear cover of the ties", field: "foundations.*.cover" },
    d_t: { kind: "length", meaning: "diameter of the ties or spiral", field: "foundations.*.ties" },
    d_b: { kind: "length", meaning: "diameter of the vertical bars", field: "foundations.*.bars" },
  },
});

export interface PierBars {
  readonly bar: { readonly name: string; readonly diameter: number; readonly area: number };
  /** Places of the bars from the middle, m. */
  readonly places: readonly Point[];
  /** On a circle, of which it is not known how it is turned. */
  readonly isRing: boolean;
  /** Clear cover of the ties, and diameter of these, m. */
  readonly cover: number;
  readonly tie: number;
  /** Least distance of two neighboring bars, m. */
  readonly spacing: number;
}

/** Whether vertical bars stand in place of concrete breakout in tension. */
export const hasBarsForBreakout = (support: Support): boolean => (support.base?.fields["anchor reinforcement"]?.value ?? "none") !== "none";

/** Whether the support has a pier or pedestal for its rods. */
export function hasPier(support: Support): boolean {
  const foundation = support.foundation?.fields;
  return foundation?.kind?.value === "pier" || (foundation?.kind?.value === "footing" && foundation.pedestal !== undefined);
}

/** The vertical bars; undefined where they are not known, with what is missing noted. */
export function barPlaces(support: Support, gather: Gather): PierBars | undefined {
  const fields = support.foundation?.fields;
  if (!fields || !hasPier(support)) {
    gather.block("the rods do not stand in a pier or pedestal; vertical bars of a wall are counted by anchor reinforcement: wall bars, and a pad has none");
    return undefined;
  }
  const bars = gather.needs(fields.bars, "vertical bars of the pier");
  const bar = bars ? gather.needs(bars.bar, "size of the vertical bars") : undefined;
  const count = bars ? gather.need(bars.count, "number of vertical bars") : Number.NaN;
  const tie = gather.needs((fields.ties ?? fields.spiral)?.value.bar, "ties or spiral round the vertical bars")?.diameter ?? Number.NaN;
  const cover = gather.need(fields.cover, "clear cover of the bars");
  const pedestal = fields.pedestal?.value;
  const isPedestal = fields.kind?.value === "footing";
  const round = isPedestal ? pedestal?.diameter : fields.diameter;
  const line = (c: number) => outerBars.value({ c, c_c: cover, d_t: tie, d_b: bar?.diameter ?? Number.NaN });
  const x = line(gather.need(round ?? (isPedestal ? pedestal?.width : fields.width), "size of the pier or pedestal"));
  const y = round ? x : line(gather.need(isPedestal ? pedestal?.length : fields.width, "size of the pier or pedestal"));
  if (!bar || !(Number.isFinite(x) && Number.isFinite(y) && Number.isFinite(count))) return undefined;
  if (x <= 0 || y <= 0) {
    gather.block("the vertical bars with their ties and cover do not fit into the pier");
    return undefined;
  }
  const places = round ? barsOnCircle(count, x) : barsOnRectangle(count, x, y);
  if (!places) {
    gather.block(`where ${count} bars stand in a rectangular pier is not known: an even number of four or more does`);
    return undefined;
  }
  return { bar: { name: bar.name, diameter: bar.diameter, area: bar.area }, places, isRing: round !== undefined, cover, tie, spacing: leastDistance(places) };
}
