/** Elevation of a foundation in its ground, to scale: layers, water, frost, concrete with bars and rods, and what is left out of its resistance. */
import type { Ground, Site, Support } from "../project/model.js";
import { plumb, levelDimension } from "./dimension.js";
import { dowelRows, outlineOf, type Outline } from "./foundation-outline.js";
import { hatched } from "./hatch.js";
import type { Picture, Show } from "./picture.js";
import { fitted, placed, type Scale } from "./scale.js";
import { acrossOf, barsInSection, baseHeights, plateInSection, rodsInSection } from "./steel-in-section.js";
import { drawing, groundHatch, line, path, polyline, words } from "./svg.js";

const frame = { left: 90, top: 44, width: 300, height: 330 } as const;
/** Where words about the ground stand. */
const wordsAt = frame.left + frame.width + 10;

interface Level {
  readonly depth: number;
  readonly text: string;
  readonly dash: string;
  readonly mark?: "water";
}

function levelsOf(ground: Ground | undefined, site: Site, ignored: number | undefined, show: Show): readonly Level[] {
  const at = (depth: number | undefined, text: string, dash: string, mark?: "water"): readonly Level[] =>
    depth === undefined || depth <= 0 ? [] : [{ depth, text: `${text} ${show(depth, "distance")}`, dash, ...(mark ? { mark } : {}) }];
  return [
    ...at(site["frost depth"]?.value, "frost", "2 4"),
    ...at(ignored, "left out above", "1 3"),
    ...at(ground?.["water table"]?.value, "water", "8 3", "water"),
    ...(ground?.layers?.value ?? []).flatMap(({ value }) => at(value.from?.value, "next layer", "12 3")),
  ];
}

/** Words beside their lines, each at least one line below the one above. */
function spread(levels: readonly Level[], y: Scale["y"]): readonly { readonly level: Level; readonly at: number }[] {
  let free = Number.NEGATIVE_INFINITY;
  return [...levels]
    .sort((a, b) => a.depth - b.depth)
    .map((level) => {
      const at = Math.max(y(-level.depth), free);
      free = at + 13;
      return { level, at };
    });
}

/** The surface of the ground to both sides, a slope beside a pier where one is stated, and the fill behind a wall. */
function groundLine({ sides, fill }: Outline, shown: { readonly west: number; readonly east: number }, slope: number, { x, y }: Scale): string {
  const left = slope > 0 ? line(x(shown.west), y(slope * (shown.west - sides.left)), x(sides.left), y(0), "cut") : groundHatch(x(shown.west), x(sides.left), y(0));
  return left + groundHatch(x(sides.right), x(shown.east), y(fill.right));
}

/** Undefined where the foundation lacks the sizes for it. */
export function elevation(support: Support, show: Show): Picture | undefined {
  const { base, column, foundation, ground, site } = support;
  const concrete = foundation && outlineOf(foundation.fields);
  if (!foundation || !concrete) return undefined;
  const fields = foundation.fields;
  const across = acrossOf(support);
  const heights = base && baseHeights(base.fields);
  const isRock = ground?.fields.kind?.value === "rock";
  const dowels = isRock ? fields.dowels?.value : undefined;
  const intoRock = dowels?.["into rock"]?.value ?? 0;
  const { from, to } = concrete.width;
  const beside = 0.45 * (to - from) + 0.15;
  const under = Math.max(intoRock * 1.15, 0.12 * (concrete.top - concrete.bottom));
  const stub = (heights?.plateTop ?? 0) + 0.3;
  const shown = { west: from - beside, east: to + beside, south: concrete.bottom - under, north: Math.max(concrete.top, concrete.fill.right) + stub };
  const scale = fitted(shown, frame);
  const { x, y } = scale;
  const corners = placed(scale, concrete.corners);
  const levels = spread(levelsOf(ground?.fields, site, fields["ignored depth"]?.value, show).filter(({ depth }) => depth < -shown.south), y);
  const inConcrete = dowels?.["in concrete"]?.value ?? 0;
  const kind = fields.kind?.value;
  const dowelsAt = dowels ? dowelRows(fields, concrete.width) : [];
  const caption =
    `${kind === "wall on footing" ? "Section across the wall, the side of its toe at the left" : "Elevation looking north"}, to scale. Grade at 0; underside ${show(-concrete.bottom, "distance")} below it${ground ? `, ${isRock ? "on" : "in"} ${ground.name}` : ""}.` +
    (fields["ground slope"]?.value ? " The ground falls away at the left." : "") +
    (dowels && dowelsAt.length === 0 ? " The dowels are not drawn: where they stand is not stated." : "");
  return {
    caption,
    svg: drawing(560, 410, caption, [
      words(20, 20, kind === "wall on footing" ? "Section" : "Elevation", "start", 12),
      isRock ? line(x(shown.west), y(concrete.bottom), x(from), y(concrete.bottom), "seen") + line(x(to), y(concrete.bottom), x(shown.east), y(concrete.bottom), "seen") : "",
      isRock
        ? hatched([placed(scale, [{ x: shown.west, y: shown.south }, { x: shown.east, y: shown.south }, { x: shown.east, y: concrete.bottom }, { x: shown.west, y: concrete.bottom }])], { angle: 1.2, gap: 16, dash: "10 6" })
        : "",
      groundLine(concrete, shown, fields["ground slope"]?.value ?? 0, scale),
      polyline(corners, "cut"),
      ...(kind === "wall on footing" ? [] : barsInSection(fields, concrete.shaft, scale)),
      ...dowelsAt.map((at) => line(x(at), y(concrete.bottom - intoRock), x(at), y(concrete.bottom + inConcrete), "cut")),
      ...(base ? rodsInSection(base.fields, across, concrete.top, scale) : []),
      ...(base ? plateInSection(base.fields, column?.fields, across, concrete.top, scale, 0.3) : []),
      ...levels.flatMap(({ level, at }) => {
        const py = y(-level.depth);
        const reach = level.mark === "water" ? path(`M${(x(shown.east) - 12).toFixed(2)} ${(py - 8).toFixed(2)}h10l-5 8z`, "thin") : "";
        return [line(x(shown.west), py, x(concrete.sides.left), py, "thin", level.dash), line(x(concrete.sides.right), py, x(shown.east), py, "thin", level.dash), reach, line(x(shown.east), py, wordsAt - 3, at, "thin"), words(wordsAt, at + 4, level.text)];
      }),
      words(wordsAt, y(concrete.fill.right) - 6, concrete.fill.right > 0 ? "fill" : "grade"),
      concrete.top > 0 ? plumb(frame.left - 20, y(0), y(concrete.top), show(concrete.top, "length")) : "",
      plumb(frame.left - 20, y(concrete.bottom), y(Math.min(0, concrete.top)), show(-concrete.bottom + Math.min(0, concrete.top), "distance")),
      intoRock > 0 ? plumb(frame.left - 20, y(concrete.bottom - intoRock), y(concrete.bottom), show(intoRock, "length")) : "",
      levelDimension(x(from), x(to), y(shown.south) + 18, show(to - from, "length")),
    ]),
  };
}
