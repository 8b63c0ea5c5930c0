/** The base plate on its bedding, the column's foot, rods and bars, seen in section. */
import { placedSection } from "../catalog/sections.js";
import { stackOf } from "../checks/base/projection.js";
import { rodPlaces } from "../checks/base/rod-places.js";
import { readHardware } from "../checks/base/hardware.js";
import type { Base, Column, Foundation, Support } from "../project/model.js";
import { hatched } from "./hatch.js";
import type { Scale } from "./scale.js";
import { line, rectangle, solid } from "./svg.js";

/** Heights above the top of concrete, m: underside of the plate, its top, top of the rods. */
export interface BaseHeights {
  readonly underside: number;
  readonly plateTop: number;
  readonly rodTop: number;
}

/** Undefined where the sizes for it are not all there. */
export function baseHeights(base: Base): BaseHeights | undefined {
  const stack = stackOf(base);
  const thickness = base.plate?.value.thickness?.value;
  if ("missing" in stack || thickness === undefined) return undefined;
  return { underside: stack.h_0, plateTop: stack.h_0 + thickness, rodTop: base.projection?.value ?? stack.h_p };
}

/** What a section cuts along: a plan axis, to the right of the page or, negative, to its left. */
export interface Across {
  readonly axis: "x" | "y";
  readonly sign: 1 | -1;
}

/** East to the right, unless a wall is cut across: then what it holds back is at the right. */
export function acrossOf({ foundation, places }: Pick<Support, "foundation" | "places">): Across {
  const fields = foundation?.fields;
  const side = fields?.fill?.value.side?.value;
  if (fields?.kind?.value !== "wall on footing") return { axis: "x", sign: 1 };
  const sign = side === "south" || side === "west" ? -1 : 1;
  const isAlongX = side === "north" || side === "south" || fields["wall runs"]?.value === "east-west" || (places.length > 1 && places.every(({ y }) => Math.abs(y - places[0].y) < 1e-6));
  return { axis: isAlongX ? "y" : "x", sign };
}

const least = (size: number, pixels: number): number => Math.max(size, pixels);

/** Places of the rods across the section, each once. */
export function rodsAcross(base: Base, { axis, sign }: Across): readonly number[] {
  const places = rodPlaces(base.anchors?.value);
  if (places === undefined || "problem" in places) return [];
  return [...new Set(places.map((at) => Number((sign * at[axis]).toFixed(6))))].sort((a, b) => a - b);
}

/** Size of the plate across the section. */
export const plateAcross = ({ plate }: Base, { axis }: Across): number | undefined => (axis === "x" ? plate?.value.width : plate?.value.length)?.value;

/** Rods from their head or hook in the concrete to their top. `top` is the level of the concrete. */
export function rodsInSection(base: Base, across: Across, top: number, { x, y, of }: Scale): readonly string[] {
  const anchors = base.anchors?.value;
  const heights = baseHeights(base);
  const d = anchors?.diameter?.value;
  const deep = anchors?.embedment?.value;
  if (d === undefined || deep === undefined) return [];
  const above = heights?.rodTop ?? 0;
  const [wide, thick] = [least(of(d), 1.4), least(of(d), 3)];
  return rodsAcross(base, across).flatMap((at, i, all) => {
    const outward = at < 0 || (at === 0 && i < all.length / 2) ? -1 : 1;
    const hook = anchors?.["hook length"]?.value ?? 3 * d;
    const foot =
      anchors?.end?.value === "hooked"
        ? solid(outward < 0 ? x(at) - of(hook) : x(at), y(top - deep) - wide / 2, of(hook), wide)
        : solid(x(at) - least(of(1.7 * d), 5) / 2, y(top - deep), least(of(1.7 * d), 5), thick);
    return [solid(x(at) - wide / 2, y(top + above), wide, y(top - deep) - y(top + above)), foot];
  });
}

/** Grout, nuts, washers, plate and the foot of the column. */
export function plateInSection(base: Base, column: Column | undefined, across: Across, top: number, scale: Scale, stub: number): readonly string[] {
  const { x, y, of } = scale;
  const heights = baseHeights(base);
  const width = plateAcross(base, across);
  if (!heights || width === undefined) return [];
  const { underside, plateTop } = heights;
  const hardware = readHardware(base);
  const grout = base.grout?.value ?? 0;
  const half = width / 2;
  const corners = (from: number, to: number, low: number, high: number) => [
    { x: x(from), y: y(low) },
    { x: x(to), y: y(low) },
    { x: x(to), y: y(high) },
    { x: x(from), y: y(high) },
  ];
  const flare = grout / 2;
  const bed = [
    { x: x(-half - flare), y: y(top) },
    { x: x(half + flare), y: y(top) },
    { x: x(half), y: y(top + underside) },
    { x: x(-half), y: y(top + underside) },
  ];
  const nuts = rodsAcross(base, across).flatMap((at) => {
    if (!hardware) return [];
    const [nut, washer] = [1.7 * hardware.nut, hardware.washerWidth];
    const washerTop = plateTop + hardware.washerThickness;
    const above = [rectangle(x(at) - of(washer) / 2, y(top + washerTop), of(washer), of(hardware.washerThickness), "thin"), rectangle(x(at) - of(nut) / 2, y(top + washerTop + hardware.nut), of(nut), of(hardware.nut), "thin")];
    const below = base["leveling nuts"]?.value === true ? [rectangle(x(at) - of(nut) / 2, y(top + underside - hardware.washerThickness), of(nut), of(hardware.nut), "thin")] : [];
    return [...above, ...below];
  });
  const section = column?.section?.value;
  const body = section && placedSection(section, column?.["deep side"]?.value ?? "along x")[across.axis === "x" ? "alongX" : "alongY"];
  const legs =
    body !== undefined
      ? [line(x(-body / 2), y(top + plateTop), x(-body / 2), y(top + plateTop + stub), "cut"), line(x(body / 2), y(top + plateTop), x(body / 2), y(top + plateTop + stub), "cut")]
      : [];
  return [
    grout > 0 ? hatched([bed], { gap: 4, angle: -Math.PI / 4 }) + line(bed[0].x, bed[0].y, bed[3].x, bed[3].y, "thin") + line(bed[1].x, bed[1].y, bed[2].x, bed[2].y, "thin") : "",
    hatched([corners(-half, half, top + underside, top + plateTop)], { gap: 3 }),
    rectangle(x(-half), y(top + plateTop), of(width), Math.max(of(plateTop - underside), 1.5), "cut"),
    ...nuts,
    ...legs,
  ];
}

/** Two of the vertical bars, and the ties or spiral between them at their pitch. */
export function barsInSection(fields: Foundation, shaft: { readonly west: number; readonly east: number; readonly south: number; readonly north: number }, { x, y }: Scale): readonly string[] {
  if (!fields.bars) return [];
  const around = fields.ties?.value ?? fields.spiral?.value;
  const tie = around?.bar?.value.diameter ?? 0;
  const cover = (fields.cover?.value ?? 0) + tie;
  const end = cover;
  const [left, right, low, high] = [shaft.west + cover, shaft.east - cover, shaft.south + end, shaft.north - end];
  if (!(left < right && low < high)) return [];
  const strokes = [line(x(left), y(low), x(left), y(high), "thin"), line(x(right), y(low), x(right), y(high), "thin")];
  const pitch = (fields.ties?.value.spacing ?? fields.spiral?.value.pitch)?.value;
  if (pitch === undefined || !(pitch > 0)) return strokes;
  const number = Math.floor((high - low) / pitch);
  if (number > 200) return strokes;
  for (let i = 0; i <= number; i += 1) strokes.push(line(x(left), y(high - i * pitch), x(right), y(high - i * pitch), "thin", "2 2"));
  return strokes;
}
