/** The roof seen from above with its columns numbered as the tables of forces number them, to scale, north up. */
import type { Roof, Structure, Support } from "../project/model.js";
import type { Rectangle } from "../mechanics/rectangles.js";
import { northMark } from "./concrete-plan.js";
import { levelChain, plumbChain } from "./dimension.js";
import type { Picture, Show } from "./picture.js";
import { around, fitted, type Scale } from "./scale.js";
import { drawing, line, rectangle, solid, words } from "./svg.js";

const width = 560;
const frame = { left: 110, top: 50, width: 390, height: 250 };
/** More lines of columns than this have only the roof's own size written beside them. */
const mostStops = 13;

type Outline = Pick<Structure, "roof" | "supports">;

/** Columns whose place is stated. */
const standing = (supports: readonly Support[]): readonly Support[] => supports.filter(({ column }) => column && (column.fields.at ?? (column.fields.from && column.fields.to)));

function roofOutline(roof: Roof | undefined): Rectangle | undefined {
  const { length, width: across } = roof ?? {};
  return length && across && length.value > 0 && across.value > 0 ? { west: 0, east: length.value, south: 0, north: across.value } : undefined;
}

/** The outline, its low edge, ridge or valley. */
function roofStrokes(roof: Roof | undefined, outline: Rectangle, { x, y, of }: Scale): readonly string[] {
  const [px, py] = [(x(outline.west) + x(outline.east)) / 2, (y(outline.south) + y(outline.north)) / 2];
  const strokes = [rectangle(x(outline.west), y(outline.north), of(outline.east - outline.west), of(outline.north - outline.south), "seen")];
  const low = roof?.shape?.value === "monoslope" ? roof["low edge"]?.value : undefined;
  // Words inside the outline, as the dimensions stand outside.
  if (low === "south") strokes.push(words(px, y(outline.south) - 6, "low edge", "middle", 10));
  if (low === "north") strokes.push(words(px, y(outline.north) + 13, "low edge", "middle", 10));
  if (low === "west") strokes.push(words(x(outline.west) + 6, py + 4, "low edge", "start", 10));
  if (low === "east") strokes.push(words(x(outline.east) - 6, py + 4, "low edge", "end", 10));
  const shape = roof?.shape?.value;
  if (shape === "pitched" || shape === "troughed") {
    const along = roof?.ridge?.value ?? "along x";
    strokes.push(along === "along x" ? line(x(outline.west), py, x(outline.east), py, "thin", "8 3 2 3") : line(px, y(outline.north), px, y(outline.south), "thin", "8 3 2 3"));
    strokes.push(words(along === "along x" ? px : px + 6, along === "along x" ? py - 5 : py, shape === "pitched" ? "ridge" : "valley", along === "along x" ? "middle" : "start", 10));
  }
  return strokes;
}

const columnStrokes = (supports: readonly Support[], { x, y }: Scale): readonly string[] =>
  supports.flatMap(({ name, places }) =>
    places.flatMap((place, i) => {
      const label = places.length === 1 ? name : i === 0 ? `${name} 1` : String(i + 1);
      const isRight = x(place.x) > frame.left + frame.width / 2;
      return [solid(x(place.x) - 3, y(place.y) - 3, 6, 6), words(x(place.x) + (isRight ? -6 : 6), y(place.y) - 6, label, isRight ? "end" : "start", 10)];
    }),
  );

/** The different values in order, those nearer than a hand's breadth taken as one. */
function stopsOf(values: readonly number[]): readonly number[] {
  const stops: number[] = [];
  for (const value of [...values].sort((a, b) => a - b)) if (stops.length === 0 || value - stops[stops.length - 1] > 0.05) stops.push(value);
  return stops;
}

/** From edge to edge by way of every line of columns; of very many lines the whole alone. */
const shownStops = (all: readonly number[]): readonly number[] => (all.length <= mostStops ? all : [all[0], all[all.length - 1]]);

const between = (stops: readonly number[], show: Show): readonly string[] => stops.slice(1).map((to, i) => show(to - stops[i], "distance"));

/** The places in words, for whoever does not see the drawing: `north 1 at 3 ft, 17 ft`. */
const placesInWords = (supports: readonly Support[], show: Show): string =>
  supports
    .map(({ name, places }) => `${name}: ${places.map((place, i) => `${places.length > 1 ? `${i + 1} at ` : ""}${show(place.x, "distance")}, ${show(place.y, "distance")}`).join("; ")}`)
    .join(". ");

/** Nothing where no column has a place. */
export function columnsPlan({ roof, supports }: Outline, show: Show): Picture | undefined {
  const columns = standing(supports);
  if (columns.length === 0) return undefined;
  const outline = roofOutline(roof?.fields);
  const places = columns.flatMap((support) => support.places);
  const whole = around(places, outline ? [outline] : []);
  // Columns in one row, or one column alone, still need a page about them.
  const margin = 0.12 * Math.max(whole.east - whole.west, whole.north - whole.south, 1);
  const isThin = whole.east - whole.west < margin || whole.north - whole.south < margin;
  const shown = isThin || !outline ? { west: whole.west - margin, east: whole.east + margin, south: whole.south - margin, north: whole.north + margin } : whole;
  const tall = Math.min(frame.height, ((shown.north - shown.south) * frame.width) / (shown.east - shown.west));
  const scale = fitted(shown, { ...frame, height: tall });
  const edges = outline ? [outline] : [];
  const xs = shownStops(stopsOf([...places.map(({ x }) => x), ...edges.flatMap(({ west, east }) => [west, east])]));
  const ys = shownStops(stopsOf([...places.map(({ y }) => y), ...edges.flatMap(({ south, north }) => [south, north])]));
  const [bottom, left] = [scale.y(shown.south) + 26, scale.x(shown.west) - 20];
  const caption = `Plan of the ${outline ? "roof and its " : ""}columns, north up, to scale; the numbers are those of the tables. Places east and north of the roof's southwest corner: ${placesInWords(columns, show)}.`;
  return {
    caption,
    svg: drawing(width, Math.ceil(Math.max(bottom + 22, 90)), caption, [
      words(20, 20, "Plan of the columns", "start", 12),
      ...(outline ? roofStrokes(roof?.fields, outline, scale) : []),
      ...columnStrokes(columns, scale),
      xs.length > 1 ? levelChain(xs.map(scale.x), bottom, between(xs, show)) : "",
      ys.length > 1 ? plumbChain(ys.map(scale.y), left, between(ys, show)) : "",
      northMark(width - 24, 66),
    ]),
  };
}
