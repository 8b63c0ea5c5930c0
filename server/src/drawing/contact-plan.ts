/** What presses under a base plate and what pulls: the region that bears with its lines of equal pressure, and each rod's tension. */
import { isUnstable, sharedContact } from "../checks/base/distribution.js";
import type { BaseInputs } from "../checks/base/geometry.js";
import type { CheckResult } from "../findings/result.js";
import type { PlateContact } from "../mechanics/plate-contact.js";
import type { Point } from "../mechanics/rectangles.js";
import { hatched } from "./hatch.js";
import { listed, northMark, planOfBase, rodMarks } from "./concrete-plan.js";
import { observed } from "./observe.js";
import type { Picture, Show } from "./picture.js";
import { placed } from "./scale.js";
import { drawing, line, polyline, words } from "./svg.js";

const frame = { left: 20, top: 40, width: 340, height: 300 } as const;
/** Parts of the greatest pressure at which a line is drawn. */
const levels = [0.25, 0.5, 0.75] as const;

/** Where the pressure over a convex region has this value: a straight line, as the pressure is a plane. */
export function lineAt(region: readonly Point[], { atCenter, alongX, alongY }: PlateContact["plane"], value: number): readonly Point[] {
  const over = region.map(({ x, y }) => atCenter + alongX * x + alongY * y - value);
  const found: Point[] = [];
  region.forEach((p, i) => {
    const next = (i + 1) % region.length;
    if (over[i] < 0 === over[next] < 0) return;
    const t = over[i] / (over[i] - over[next]);
    const q = region[next];
    found.push({ x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) });
  });
  return found.slice(0, 2);
}

export function contactPlan(result: CheckResult, show: Show): Picture | undefined {
  const contact = observed(result)?.routine(sharedContact)?.result;
  if (!contact || isUnstable(contact)) return undefined;
  const inputs = result.inputs as BaseInputs;
  const { scale, strokes } = planOfBase(inputs, [], frame);
  const region = placed(scale, contact.contact);
  const outline = region.length > 2 ? polyline(region, "thin") : "";
  // Between the lines there has to be room for their percentages.
  const slope = scale.of(contact.maxBearing / Math.hypot(contact.plane.alongX, contact.plane.alongY)) / (levels.length + 1);
  const isobars = levels.flatMap((level) => {
    const [from, to] = placed(scale, lineAt(contact.contact, contact.plane, level * contact.maxBearing));
    if (!from || !to) return [];
    const end = from.x > to.x ? from : to;
    return [line(from.x, from.y, to.x, to.y, "thin", "4 3") + (slope > 11 ? words(end.x + 4, end.y + 3, `${level * 100} %`, "start", 9) : "")];
  });
  const at = contact.compressionAt && placed(scale, [contact.compressionAt])[0];
  const rows = [
    ...inputs.rods.map((_, i) => `rod ${i + 1}: ${contact.tensions[i] > 0 ? `${show(contact.tensions[i], "force")} tension` : "no tension"}`),
    ...(contact.compression > 0 ? ["", `bearing ${show(contact.compression, "force")}`, `at most ${show(contact.maxBearing, "stress")}`, `on ${Math.round(100 * contact.contactRatio)} % of the plate`] : ["", "the plate is clear", "of the concrete"]),
  ];
  const caption =
    contact.compression > 0
      ? "Plan to scale. Hatched: the part of the plate that bears; dashed: lines of equal pressure as parts of the greatest; the cross marks the resultant of the bearing. Solid rods pull."
      : "Plan to scale. The plate is lifted clear of the concrete; solid rods pull.";
  return {
    caption,
    svg: drawing(560, 360, caption, [
      words(20, 20, "Contact under the plate", "start", 12),
      region.length > 2 ? hatched([region], { gap: 9 }) : "",
      outline,
      ...isobars,
      ...strokes,
      ...rodMarks(inputs.rods, inputs.d_a, scale, (rod) => contact.tensions[rod] > 0),
      at ? line(at.x - 7, at.y, at.x + 7, at.y, "cut") + line(at.x, at.y - 7, at.x, at.y + 7, "cut") : "",
      northMark(384, 70),
      ...listed(400, 110, rows),
    ]),
  };
}
