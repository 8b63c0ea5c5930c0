/** The concrete of a foundation as seen in elevation or section: rectangles and slopes about the middle of the column, grade at zero. */
import { gridOf } from "../checks/rock/dowel-force.js";
import { evenPlaces } from "../mechanics/held-rows.js";
import type { Point, Rectangle } from "../mechanics/rectangles.js";
import type { Foundation } from "../project/model.js";

/** One length to be dimensioned below the concrete. */
export interface Width {
  readonly from: number;
  readonly to: number;
}

export interface Outline {
  /** Corners of the concrete, anticlockwise from its lower left. */
  readonly corners: readonly Point[];
  readonly top: number;
  readonly bottom: number;
  /** Part at grade, where ground meets the concrete. */
  readonly sides: { readonly left: number; readonly right: number };
  readonly width: Width;
  /** Where vertical bars of a pier or pedestal stand between. */
  readonly shaft: Rectangle;
  /** Ground to the left and the right of it, above grade at zero: a fill held back. */
  readonly fill: { readonly left: number; readonly right: number };
}

const box = (left: number, right: number, bottom: number, top: number): readonly Point[] => [
  { x: left, y: bottom },
  { x: right, y: bottom },
  { x: right, y: top },
  { x: left, y: top },
];

const none = { left: 0, right: 0 } as const;

function pier(fields: Foundation): Outline | undefined {
  const width = fields.diameter?.value ?? fields.width?.value;
  const depth = fields.depth?.value;
  if (width === undefined || depth === undefined) return undefined;
  const half = width / 2;
  const [top, bottom] = [fields["above grade"]?.value ?? 0, -depth];
  const bell = fields.bell?.value;
  const [foot, rise] = [(bell?.diameter?.value ?? 0) / 2, bell?.height?.value ?? 0];
  const corners =
    foot > half && rise > 0
      ? [{ x: -foot, y: bottom }, { x: foot, y: bottom }, { x: half, y: bottom + rise }, { x: half, y: top }, { x: -half, y: top }, { x: -half, y: bottom + rise }]
      : box(-half, half, bottom, top);
  const least = Math.max(half, foot);
  return { corners, top, bottom, sides: { left: -half, right: half }, width: { from: -least, to: least }, shaft: { west: -half, east: half, south: bottom, north: top }, fill: none };
}

function pad(fields: Foundation): Outline | undefined {
  const { width, thickness, depth, pedestal } = fields;
  if (!width || !thickness) return undefined;
  const half = width.value / 2;
  const bottom = -(depth?.value ?? thickness.value);
  const shoulder = bottom + thickness.value;
  const top = pedestal ? Math.max(fields["above grade"]?.value ?? 0, shoulder) : shoulder;
  const post = pedestal?.value.diameter?.value ?? pedestal?.value.width?.value;
  if (post === undefined) return { corners: box(-half, half, bottom, shoulder), top: shoulder, bottom, sides: { left: -half, right: half }, width: { from: -half, to: half }, shaft: { west: -half, east: half, south: bottom, north: shoulder }, fill: none };
  const p = post / 2;
  const corners = [{ x: -half, y: bottom }, { x: half, y: bottom }, { x: half, y: shoulder }, { x: p, y: shoulder }, { x: p, y: top }, { x: -p, y: top }, { x: -p, y: shoulder }, { x: -half, y: shoulder }];
  return { corners, top, bottom, sides: shoulder >= 0 ? { left: -half, right: half } : { left: -p, right: p }, width: { from: -half, to: half }, shaft: { west: -p, east: p, south: bottom, north: top }, fill: none };
}

/** The side of the toe is drawn at the left, that of the heel and of what is held back at the right. */
function wall(fields: Foundation): Outline | undefined {
  const { thickness, height, footing } = fields;
  const strip = footing?.value;
  if (!thickness || !height || !strip?.width || !strip.thickness) return undefined;
  const half = thickness.value / 2;
  // Its height above the lower ground is stated, or follows from the depth.
  const stated = fields["above grade"] && !fields["above grade"].assumed ? fields["above grade"].value : undefined;
  const top = stated ?? (fields.depth ? height.value + strip.thickness.value - fields.depth.value : 0);
  const shoulder = top - height.value;
  const bottom = shoulder - strip.thickness.value;
  const rest = strip.width.value - thickness.value;
  const toe = strip.toe?.value ?? (strip.heel ? rest - strip.heel.value : rest / 2);
  const [left, right] = [-half - toe, -half - toe + strip.width.value];
  const corners = [{ x: left, y: bottom }, { x: right, y: bottom }, { x: right, y: shoulder }, { x: half, y: shoulder }, { x: half, y: top }, { x: -half, y: top }, { x: -half, y: shoulder }, { x: left, y: shoulder }];
  return { corners, top, bottom, sides: { left: -half, right: half }, width: { from: left, to: right }, shaft: { west: -half, east: half, south: bottom, north: top }, fill: { left: 0, right: fields.retains?.value ?? 0 } };
}

/** Undefined where the sizes for it are not all there. */
export function outlineOf(fields: Foundation): Outline | undefined {
  switch (fields.kind?.value) {
    case "pier":
      return pier(fields);
    case "footing":
    case "footing on rock":
      return pad(fields);
    case "wall on footing":
      return wall(fields);
    default:
      return undefined;
  }
}

/** Where the rows of dowels are seen, from the middle of the column: those of a pad along x, those of a wall across it. None where it is not stated. */
export function dowelRows(fields: Foundation, { from, to }: Width): readonly number[] {
  const dowels = fields.dowels?.value;
  const middle = (from + to) / 2;
  if (!dowels) return [];
  if (fields.kind?.value === "wall on footing") {
    const rows = dowels.rows?.value ?? 1;
    if (rows === 1) return [middle];
    return dowels["row spacing"] ? evenPlaces(rows, dowels["row spacing"].value, middle) : [];
  }
  if (fields.kind?.value !== "footing on rock") return [];
  const along = dowels["along x"]?.value ?? gridOf(dowels.count?.value)?.alongX;
  if (along === 1) return [middle];
  return along !== undefined && dowels.spacing ? evenPlaces(along, dowels.spacing.value, middle) : [];
}
