/** Where the rods of a base stand: at the places the notebook gives one by one, else on the rectangle of their spacings. */
import type { Point } from "../../mechanics/rectangles.js";
import { rodPattern, type NoPattern } from "../../mechanics/rod-pattern.js";
import type { Base } from "../../project/model.js";

export type Anchors = NonNullable<Base["anchors"]>["value"];

/** Places from the middle of the plate, m; undefined where their number is not known. */
export function rodPlaces(anchors: Pick<Anchors, "count" | "spacing x" | "spacing y" | "places"> | undefined): readonly Point[] | NoPattern | undefined {
  const count = anchors?.count?.value;
  const places = anchors?.places?.value;
  if (places) {
    if (count !== undefined && count !== places.length) return { problem: `${places.length} places of rods are given, and there are ${count} rods; give a place for each` };
    return places.map(({ value }) => value);
  }
  return count === undefined ? undefined : rodPattern(count, anchors?.["spacing x"]?.value, anchors?.["spacing y"]?.value);
}
