import type { RoofColumn } from "./rigid-roof.js";

/** Tops closer to a line than this part of the roof's extent count as being in line: the roof would hardly be held. */
const inLine = 1e-4;

/**
 * Says in which way a rigid roof on columns fixed at their bases can move freely, or undefined when it is held. Every column holds
 * its top against movement, and a fixed top also against tilting; so the roof is free only if its column tops are one point, or
 * are one line with none of them fixed.
 */
export function roofMechanism(columns: readonly RoofColumn[]): string | undefined {
  if (columns.length === 0) return "there is no column under the roof";
  for (const [i, c] of columns.entries()) {
    const lacking = lackOf(c);
    if (lacking !== undefined) return `column ${i + 1} has no ${lacking}`;
  }
  const [first] = columns;
  const arms = columns.map((c) => [c.x - first.x, c.y - first.y, c.base + c.height - first.base - first.height] as const);
  const farthest = arms.reduce((a, b) => (Math.hypot(...b) > Math.hypot(...a) ? b : a));
  const span = Math.hypot(...farthest);
  const isFixed = columns.some((c) => c.top === "fixed");
  const isTwistHeld = columns.some((c) => c.top === "fixed" && (c.GJ ?? 0) > 0);
  const planSpan = Math.max(...arms.map(([x, y]) => Math.hypot(x, y)));
  if (planSpan <= inLine * first.height) {
    if (isTwistHeld) return undefined;
    if (isFixed) return "the roof can turn about its one column like a flag, as no torsional stiffness of the column is known";
    return "the roof sits on one pinned column top: it can tip over in any direction and turn about the column. Fix the column top to the roof, or add columns";
  }
  if (isFixed) return undefined;
  const offLine = Math.max(...arms.map((arm) => Math.hypot(...cross(arm, farthest)) / span));
  if (offLine > inLine * span) return undefined;
  const line = Math.abs(farthest[0]) < inLine * span ? "running north to south" : Math.abs(farthest[1]) < inLine * span ? "running east to west" : "";
  return `all columns stand in one line${line && `, ${line},`} with pinned tops: the roof can rotate about that line. Fix the column tops to the roof, or add a column off the line`;
}

function lackOf(c: RoofColumn): string | undefined {
  if (!(Number.isFinite(c.x) && Number.isFinite(c.y) && Number.isFinite(c.base))) return "position";
  if (!(c.height > 0 && Number.isFinite(c.height))) return "height";
  if (!(c.E > 0 && c.Ix > 0 && c.Iy > 0 && Number.isFinite(c.E * c.Ix * c.Iy))) return "bending stiffness";
  if (!(c.area > 0 && Number.isFinite(c.area))) return "area";
  if (!((c.GJ ?? 0) >= 0)) return "valid torsional stiffness";
  return undefined;
}

type Arm = readonly [number, number, number];

function cross(a: Arm, b: Arm): Arm {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}
