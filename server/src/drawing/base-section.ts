/** Section through the plate, its grout, nuts and rods, to scale, with the sizes the setting-out needs. */
import type { Support } from "../project/model.js";
import { levelChain, plumb, plumbChain } from "./dimension.js";
import { outlineOf } from "./foundation-outline.js";
import type { Picture, Show } from "./picture.js";
import { fitted } from "./scale.js";
import { acrossOf, baseHeights, plateAcross, plateInSection, rodsAcross, rodsInSection } from "./steel-in-section.js";
import { drawing, line, words } from "./svg.js";

const frame = { left: 100, top: 40, width: 290, height: 300 } as const;

/** Undefined where plate, rods or concrete lack the sizes for it. */
export function baseSection(support: Support, show: Show): Picture | undefined {
  const { base, column, foundation } = support;
  const across = acrossOf(support);
  const anchors = base?.fields.anchors?.value;
  const width = base && plateAcross(base.fields, across);
  const deep = anchors?.embedment?.value;
  const heights = base && baseHeights(base.fields);
  const concrete = foundation && outlineOf(foundation.fields);
  if (!base || !heights || width === undefined || deep === undefined || !concrete) return undefined;
  const { underside, plateTop, rodTop } = heights;
  const stub = Math.max(0.5 * width, rodTop - plateTop + 0.1);
  // The concrete is cut off below the rods and, where it is wide, beside them.
  const low = -Math.min(deep + 0.25 * deep, concrete.top - concrete.bottom);
  const [west, east] = [Math.max(concrete.shaft.west, -1.3 * width), Math.min(concrete.shaft.east, 1.3 * width)];
  const shown = { west: Math.min(west, -0.6 * width), east: Math.max(east, 0.6 * width), south: low, north: plateTop + stub };
  const scale = fitted(shown, frame);
  const { x, y } = scale;
  const finish = base.fields["finish above plate"]?.value;
  const rods = rodsAcross(base.fields, across);
  const stops = [...(west === concrete.shaft.west ? [west] : []), ...rods, ...(east === concrete.shaft.east ? [east] : [])];
  const grout = base.fields.grout?.value;
  const levels = [0, underside, plateTop, rodTop];
  const finishAt = finish !== undefined && finish > 0 ? plateTop + finish : undefined;
  // A side that is not that of the concrete is where the drawing is cut off.
  const side = (at: number, isEdge: boolean): string => (isEdge ? line(x(at), y(low), x(at), y(0), "cut") : line(x(at), y(low), x(at), y(0), "thin", "9 4"));
  const caption =
    `${across.axis === "x" && across.sign > 0 ? "Section looking north" : "Section across the wall"}, to scale. Rods ${show(deep, "length")} in the concrete, ${show(rodTop, "length")} above it; ${show(underside, "length")} from the concrete to the underside of the plate` +
    (grout !== undefined && grout > 0 ? `, ${show(grout, "length")} of it grout.` : ", without grout.") +
    (base.fields.projection ? "" : " The projection is not stated; the rods are drawn as long as is needed.");
  return {
    caption,
    svg: drawing(560, 392, caption, [
      words(20, 20, "Section through the base", "start", 12),
      line(x(west), y(0), x(east), y(0), "cut"),
      side(west, west === concrete.shaft.west),
      side(east, east === concrete.shaft.east),
      low <= -(concrete.top - concrete.bottom) ? line(x(west), y(low), x(east), y(low), "cut") : line(x(west), y(low), x(east), y(low), "thin", "9 4"),
      ...rodsInSection(base.fields, across, 0, scale),
      ...plateInSection(base.fields, column?.fields, across, 0, scale, stub),
      finishAt === undefined ? "" : line(x(shown.west), y(finishAt), x(shown.east), y(finishAt), "thin", "9 3 2 3") + words(x(shown.east) + 6, y(finishAt) + 4, "finish"),
      plumb(frame.left - 14, y(-deep), y(0), show(deep, "length")),
      plumbChain(levels.map(y), frame.left + frame.width + 18, levels.slice(1).map(() => "")),
      words(frame.left + frame.width + 28, y(rodTop) + 4, `${show(rodTop, "length")}, top of rods`, "start", 10),
      words(frame.left + frame.width + 28, Math.max(y(plateTop) + 4, y(rodTop) + 16), `${show(plateTop, "length")}, top of plate`, "start", 10),
      words(frame.left + frame.width + 28, Math.max(y(underside) + 4, y(rodTop) + 28), `${show(underside, "length")}, underside`, "start", 10),
      words(frame.left + frame.width + 28, Math.max(y(0) + 4, y(rodTop) + 40), "concrete", "start", 10),
      levelChain(stops.map(x), y(low) + 22, stops.slice(1).map((to, i) => show(to - stops[i], "length"))),
    ]),
  };
}
