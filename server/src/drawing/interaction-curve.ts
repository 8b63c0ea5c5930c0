/** Axial force over moment: the design strength of a concrete section, and every combination as a point. */
import type { Demand } from "../actions/demand.js";
import { interactionPicture, type BendingInputs } from "../checks/pier/concrete-bending.js";
import type { CheckResult } from "../findings/result.js";
import type { Point } from "../mechanics/rectangles.js";
import { axes } from "./axes.js";
import type { Picture, Show } from "./picture.js";
import { circle, drawing, polyline, words } from "./svg.js";

const frame = { left: 70, top: 50, width: 400, height: 290 } as const;

/** Number and unit of a shown value apart, by which the axes are divided. */
function unitOf(show: Show, kind: "force" | "moment"): { readonly unit: string; readonly of: (value: number) => number } {
  const shown = show(1e6, kind);
  const at = shown.indexOf(" ");
  const perUnit = 1e6 / Number(shown.slice(0, at));
  return { unit: shown.slice(at + 1), of: (value) => value / perUnit };
}

export function interactionDrawing(result: CheckResult, show: Show, demands: readonly Demand[]): Picture | undefined {
  const picture = interactionPicture(result.inputs as BendingInputs, demands);
  const [force, moment] = [unitOf(show, "force"), unitOf(show, "moment")];
  // The design curve ends where the limit against chance eccentricity cuts it.
  const curves = picture.curves.map(({ direction, points }) => ({ direction, points: points.map(({ P_n, M_n, phi }) => ({ N: Math.min(phi * P_n, picture.cap), M: phi * M_n })) }));
  const all = [...curves.flatMap(({ points }) => points), ...picture.points];
  const most = { M: Math.max(...all.map(({ M }) => M)), N: Math.max(...all.map(({ N }) => N)), least: Math.min(0, ...all.map(({ N }) => N)) };
  if (!Object.values(most).every(Number.isFinite) || !(most.M > 0) || !(most.N > most.least)) return undefined;
  const { x, y, strokes } = axes(frame, [0, moment.of(1.05 * most.M)], [force.of(1.05 * most.least), force.of(1.05 * most.N)], { x: `moment, ${moment.unit}`, y: `axial force, compression up, ${force.unit}` });
  const at = ({ N, M }: { readonly N: number; readonly M: number }): Point => ({ x: x(moment.of(M)), y: y(force.of(N)) });
  // Points that fall on one another on the page are drawn once.
  const points = [...new Map(picture.points.map(at).map((point) => [`${point.x.toFixed(2)} ${point.y.toFixed(2)}`, point])).values()];
  const caption =
    `Strength of the section under axial force with bending: the design curve ${curves.map(({ direction }, i) => `${i === 0 ? "(full line)" : "(dashed)"} with ${direction.startsWith("along") ? `bending ${direction}` : direction}`).join(", ")}; ` +
    `each circle is a combination at a section along the height, ${picture.points.length} in all. A circle outside the curve is over.`;
  return {
    caption,
    svg: drawing(560, 372, caption, [
      words(20, 20, "Axial force and moment", "start", 12),
      ...strokes,
      ...curves.map(({ points: of }, i) => polyline(of.map(at), "cut", "open", i === 0 ? undefined : "6 3")),
      ...points.map((point) => circle(point.x, point.y, 2)),
    ]),
  };
}
