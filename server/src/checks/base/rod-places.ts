/** Where the rods of a base stand: at the places the notebook gives one by one, on a bolt circle, or on the rectangle of their spacings. */
import type { Point } from "../../mechanics/rectangles.js";
import { rodCircle, rodPattern, type NoPattern } from "../../mechanics/rod-pattern.js";
import type { Base } from "../../project/model.js";

export type Anchors = NonNullable<Base["anchors"]>["value"];

/** Places from the middle of the plate, m; undefined where their number is not known. */
export function rodPlaces(anchors: Pick<Anchors, "count" | "spacing x" | "spacing y" | "bolt circle" | "places"> | undefined): readonly Point[] | NoPattern | undefined {
  const count = anchors?.count?.value;
  const places = anchors?.places?.value;
  if (places) {
    if (count !== undefined && count !== places.length) return { problem: `${places.length} places of rods are given, and there are ${count} rods; give a place for each` };
    return places.map(({ value }) => value);
  }
  const circle = anchors?.["bolt circle"];
  if (circle && (anchors?.["spacing x"] ?? anchors?.["spacing y"])) return { problem: "both a bolt circle and a spacing of the rods are given; give the one they stand on" };
  if (circle) return count === undefined ? undefined : rodCircle(count, circle.value);
  return count === undefined ? undefined : rodPattern(count, anchors?.["spacing x"]?.value, anchors?.["spacing y"]?.value);
}
