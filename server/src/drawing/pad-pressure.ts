/** Pressure under a pad seen from above: the part in contact, lines of equal pressure, and the pressure at the corners. */
import { footingContact, type FootingArgs, type FootingPressure } from "../mechanics/partial-contact.js";
import type { Unstable } from "../mechanics/plate-contact.js";
import { sharedContact } from "../checks/footing/forces.js";
import type { CheckResult } from "../findings/result.js";
import { lineAt } from "./contact-plan.js";
import { northMark } from "./concrete-plan.js";
import { levelDimension, plumb } from "./dimension.js";
import { hatched } from "./hatch.js";
import { observed } from "./observe.js";
import type { Picture, Show } from "./picture.js";
import { fitted, placed } from "./scale.js";
import { drawing, line, polyline, rectangle, words } from "./svg.js";

const frame = { left: 110, top: 56, width: 300, height: 250 } as const;
const levels = [0.25, 0.5, 0.75] as const;

type Contact = { readonly args: FootingArgs; readonly result: FootingPressure | Unstable };

/** Undefined where the check solved no contact, or there is no equilibrium. */
export function padPressure(result: CheckResult, show: Show): Picture | undefined {
  const found = observed(result);
  const contact: Contact | undefined = found?.routine(sharedContact) ?? found?.routine(footingContact);
  if (!contact || "unstable" in contact.result) return undefined;
  const { width, length, P, Mx, My } = contact.args;
  const { contact: region, plane, qmax, corners, contactRatio } = contact.result;
  const scale = fitted({ west: -width / 2, east: width / 2, south: -length / 2, north: length / 2 }, frame);
  const { x, y, of } = scale;
  const drawn = placed(scale, region);
  const [west, east, south, north] = [x(-width / 2), x(width / 2), y(-length / 2), y(length / 2)];
  const isobars = levels.flatMap((level) => {
    const [from, to] = placed(scale, lineAt(region, plane, level * qmax));
    return from && to ? [line(from.x, from.y, to.x, to.y, "thin", "4 3"), words((from.x + to.x) / 2 + 3, (from.y + to.y) / 2 - 3, `${level * 100} %`, "start", 9)] : [];
  });
  const at = { x: x(My / P), y: y(-Mx / P) };
  const caption =
    `Contact under the footing, to scale. Hatched: the ${Math.round(100 * contactRatio)} % of the underside that bears; dashed: lines of equal pressure as parts of the greatest, ${show(qmax, "pressure")}. ` +
    `The cross marks the resultant ${show(P, "force")}.`;
  return {
    caption,
    svg: drawing(560, 350, caption, [
      words(20, 20, "Contact under the footing", "start", 12),
      drawn.length > 2 ? hatched([drawn], { gap: 10 }) + polyline(drawn, "thin") : "",
      ...isobars,
      rectangle(west, north, of(width), of(length), "cut"),
      line(at.x - 7, at.y, at.x + 7, at.y, "cut"),
      line(at.x, at.y - 7, at.x, at.y + 7, "cut"),
      words(west - 6, north + 2, show(corners.northwest, "pressure"), "end", 10),
      words(east + 6, north + 2, show(corners.northeast, "pressure"), "start", 10),
      words(west - 6, south + 4, show(corners.southwest, "pressure"), "end", 10),
      words(east + 6, south + 4, show(corners.southeast, "pressure"), "start", 10),
      levelDimension(west, east, south + 24, show(width, "distance")),
      plumb(west - 20, north + 14, south - 14, show(length, "distance")),
      northMark(530, 70),
    ]),
  };
}
