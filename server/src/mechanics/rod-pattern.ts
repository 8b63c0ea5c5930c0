/** Where anchor rods stand on a base plate: on the rectangle of their spacings or on a bolt circle, about the center of the plate. */
import type { Point } from "./rectangles.js";

/** Why the rods have no places, in trade words. */
export interface NoPattern {
  readonly problem: string;
}

/**
 * Places of `count` rods on a rectangle `spacingX` by `spacingY` (out to out of the rod centers, m), from its center. One stands in
 * the middle; two in a line along the one spacing given; four at the corners; six at the corners and the middles of the two long
 * sides (the sides along x when the rectangle is square); eight at the corners and the middles of all sides. Spacings that are not
 * given are undefined.
 */
export function rodPattern(count: number, spacingX: number | undefined, spacingY: number | undefined): readonly Point[] | NoPattern {
  if (count === 1) return [{ x: 0, y: 0 }];
  if (count === 2) {
    if (spacingX !== undefined && spacingY !== undefined) return { problem: "two rods stand in one line: give their spacing along x or along y, not both" };
    if (spacingX === undefined && spacingY === undefined) return { problem: "the spacing of the two rods is missing" };
    const x = (spacingX ?? 0) / 2;
    const y = (spacingY ?? 0) / 2;
    return [
      { x: -x, y: -y },
      { x, y },
    ];
  }
  if (count !== 4 && count !== 6 && count !== 8) return { problem: `a pattern of ${count} rods is not known here: 1, 2, 4, 6 or 8 rods on a rectangle are` };
  if (spacingX === undefined || spacingY === undefined) return { problem: "the rods need a spacing along x and along y" };
  const x = spacingX / 2;
  const y = spacingY / 2;
  const corners = [
    { x: -x, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
  ];
  const onSidesAlongX = [
    { x: 0, y: -y },
    { x: 0, y },
  ];
  const onSidesAlongY = [
    { x: -x, y: 0 },
    { x, y: 0 },
  ];
  if (count === 4) return corners;
  if (count === 6) return [...corners, ...(spacingX >= spacingY ? onSidesAlongX : onSidesAlongY)];
  return [...corners, ...onSidesAlongX, ...onSidesAlongY];
}

/**
 * Places of `count` rods evenly round a circle of this diameter (through the rod centers, m). The first stands half a step north of east, so that
 * four of them make a square along the axes. A circle of no size, or fewer than three rods, has no places.
 */
export function rodCircle(count: number, diameter: number): readonly Point[] | NoPattern {
  if (count < 3) return { problem: `${count === 1 ? "one rod makes" : "two rods make"} no bolt circle: give their spacing` };
  if (!(diameter > 0)) return { problem: "the bolt circle has no size" };
  const step = (2 * Math.PI) / count;
  return Array.from({ length: count }, (_, i) => {
    const angle = step * (i + 0.5);
    return { x: (diameter / 2) * Math.cos(angle), y: (diameter / 2) * Math.sin(angle) };
  });
}

/** Middle of so many places, from another point. */
export function middleOf(places: readonly Point[], from: Point = { x: 0, y: 0 }): Point {
  const mean = (of: (place: Point) => number): number => places.reduce((all, place) => all + of(place), 0) / Math.max(places.length, 1);
  return { x: mean(({ x }) => x) - from.x, y: mean(({ y }) => y) - from.y };
}
