/** Section of a wall with the pressure of what it holds back, soil and load in full line, water added in dashes. */
import type { WallBody } from "../checks/wall/body.js";
import { earthOf, pressureAt, pushAbove, waterFor } from "../checks/wall/earth.js";
import type { CheckResult } from "../findings/result.js";
import { plainCalc } from "../formula/calc.js";
import type { Point } from "../mechanics/rectangles.js";
import { kinds } from "../units/kinds.js";
import { plumb } from "./dimension.js";
import { hatched } from "./hatch.js";
import type { Picture, Show } from "./picture.js";
import { fitted, placed } from "./scale.js";
import { arrow, drawing, groundHatch, polyline, words } from "./svg.js";

const frame = { left: 84, top: 56, width: 266, height: 260 } as const;
/** Width of the greatest pressure on the page. */
const widest = 90;
const waterWeight = 62.4 * kinds.unitWeight.US.factor;
const parts = 24;

/** Undefined where the wall holds nothing back. */
export function wallPressure(result: CheckResult, show: Show): Picture | undefined {
  const body = result.inputs as WallBody;
  const { earth: fill, high, low, base, thickness, height, toe, heel } = body;
  if (!fill || !(high > 0)) return undefined;
  const earth = earthOf(fill, plainCalc);
  const deepest = high + base;
  const rows = Array.from({ length: parts + 1 }, (_, i) => {
    const z = (deepest * i) / parts;
    const { soil, depthInWater } = pressureAt(earth, z, waterFor(fill, z), plainCalc);
    return { z, soil, whole: soil + waterWeight * depthInWater };
  });
  const most = Math.max(...rows.map(({ whole }) => whole));
  if (!(most > 0) || !Number.isFinite(most)) return undefined;
  const push = pushAbove(earth, deepest, waterFor(fill, deepest), plainCalc);
  // Heights from the underside; the side of the fill at the right.
  const [left, right] = [-toe - thickness / 2, thickness / 2 + heel];
  const top = base + Math.max(height, high);
  const scale = fitted({ west: left - 0.5 * height, east: right + 0.25 * height, south: 0, north: top }, frame);
  const { x, y } = scale;
  const at = x(right + 0.25 * height) + 14;
  const out = (pressure: number): number => at + (widest * pressure) / most;
  const along = (of: "soil" | "whole"): readonly Point[] => rows.map((row) => ({ x: out(row[of]), y: y(deepest - row.z) }));
  const strips = rows.slice(1).map((row, i) => [
    { x: at, y: y(deepest - rows[i].z) },
    { x: out(rows[i].whole), y: y(deepest - rows[i].z) },
    { x: out(row.whole), y: y(deepest - row.z) },
    { x: at, y: y(deepest - row.z) },
  ]);
  const armHeight = push.shear > 0 ? push.moment / push.shear : 0;
  const half = thickness / 2;
  const corners = [[left, 0], [right, 0], [right, base], [half, base], [half, base + height], [-half, base + height], [-half, base], [left, base]].map(([px, py]) => ({ x: px, y: py }));
  const isWet = rows.some(({ soil, whole }) => whole > soil);
  const last = rows[rows.length - 1];
  const caption =
    `Section to scale with the ${fill.method === "at rest" ? "earth pressure at rest" : fill.method === "equivalent fluid" ? "pressure of the equivalent fluid" : `active pressure by ${fill.method}`}, without load factor: ${show(last.whole, "pressure")} at the underside, ${show(push.shear, "lineLoad")} in all, acting ${show(armHeight, "distance")} above it.` +
    (isWet ? " Dashed: the part of soil and load; the rest is water." : "") +
    " The forces of the post come to it.";
  return {
    caption,
    svg: drawing(560, 350, caption, [
      words(20, 20, "Pressure on the wall", "start", 12),
      polyline(placed(scale, corners), "cut"),
      groundHatch(x(left - 0.5 * height), x(-half), y(base + low)),
      groundHatch(x(half), x(right + 0.25 * height), y(base + high)),
      hatched(strips, { angle: 0, gap: 7 }),
      polyline([{ x: at, y: y(deepest) }, ...along("whole"), { x: at, y: y(0) }], "seen"),
      isWet ? polyline(along("soil"), "seen", "open", "5 3") : "",
      arrow(at + widest + 40, y(armHeight), at + 4, y(armHeight), "cut"),
      words(at + widest + 44, y(armHeight) + 4, show(push.shear, "lineLoad"), "start", 10),
      words(at + widest + 4, y(0) + 4, show(last.whole, "pressure"), "start", 10),
      plumb(frame.left - 26, y(deepest), y(0), show(deepest, "distance")),
    ]),
  };
}
