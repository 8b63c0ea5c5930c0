/**
 * The strokes of a flat drawing: lines, arrows, marks and words in the color of the text around them, so that a drawing reads on paper and on
 * a dark screen alike. Presentation attributes only, as pages without inline styles take no others.
 */

/** Escapes text for markup. */
const escaped = (text: string): string => text.replace(/[&<>"]/gu, (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[sign] as string);

type Attributes = Readonly<Record<string, string | number | undefined>>;

const attributesOf = (attributes: Attributes): string =>
  Object.entries(attributes)
    .flatMap(([name, value]) => (value === undefined ? [] : [` ${name}="${escaped(typeof value === "number" ? String(Number(value.toFixed(2))) : value)}"`]))
    .join("");

const element = (name: string, attributes: Attributes, inside = ""): string => `<${name}${attributesOf(attributes)}${inside === "" ? "/>" : `>${inside}</${name}>`}`;

/** Weights of lines as on a drawing sheet: cut edges, edges seen, dimension lines. */
export const weights = { cut: 1.6, seen: 1, thin: 0.6 } as const;
export type Weight = keyof typeof weights;

export const line = (x1: number, y1: number, x2: number, y2: number, weight: Weight = "seen", dash?: string): string =>
  element("line", { x1, y1, x2, y2, stroke: "currentColor", "stroke-width": weights[weight], "stroke-dasharray": dash });

export const rectangle = (x: number, y: number, width: number, height: number, weight: Weight = "seen", dash?: string): string =>
  element("rect", { x, y, width, height, fill: "none", stroke: "currentColor", "stroke-width": weights[weight], "stroke-dasharray": dash });

export const circle = (cx: number, cy: number, r: number, weight: Weight = "seen", dash?: string): string =>
  element("circle", { cx, cy, r, fill: "none", stroke: "currentColor", "stroke-width": weights[weight], "stroke-dasharray": dash });

/** A filled disk: a rod or a bar cut through. */
export const disk = (cx: number, cy: number, r: number): string => element("circle", { cx, cy, r, fill: "currentColor" });

/** A solid rectangle: steel cut through where it is too thin to hatch, a bar of a chart. */
export const solid = (x: number, y: number, width: number, height: number): string => element("rect", { x, y, width, height, fill: "currentColor" });

/** Straight strokes through points, or a curve where the path says so. */
export const path = (d: string, weight: Weight = "seen", dash?: string): string =>
  element("path", { d, fill: "none", stroke: "currentColor", "stroke-width": weights[weight], "stroke-dasharray": dash });

/** Straight strokes from point to point, back to the first where the outline is closed. */
export const polyline = (points: readonly { readonly x: number; readonly y: number }[], weight: Weight = "seen", end: "open" | "closed" = "closed", dash?: string): string =>
  path(`M${points.map(({ x, y }) => `${x.toFixed(2)} ${y.toFixed(2)}`).join("L")}${end === "closed" ? "Z" : ""}`, weight, dash);

export type Anchor = "start" | "middle" | "end";

export const words = (x: number, y: number, text: string, anchor: Anchor = "start", size = 11): string =>
  element("text", { x, y, fill: "currentColor", "font-size": size, "font-family": "Liberation Sans, Arial, sans-serif", "text-anchor": anchor }, escaped(text));

/** A filled head at (x, y) that points along an angle, radians clockwise from the right. */
export function head(x: number, y: number, angle: number, size = 7): string {
  const at = (turn: number): string => `${(x - size * Math.cos(angle + turn)).toFixed(2)},${(y - size * Math.sin(angle + turn)).toFixed(2)}`;
  return element("polygon", { points: `${x.toFixed(2)},${y.toFixed(2)} ${at(0.35)} ${at(-0.35)}`, fill: "currentColor" });
}

/** A force. */
export const arrow = (x1: number, y1: number, x2: number, y2: number, weight: Weight = "seen"): string =>
  line(x1, y1, x2, y2, weight) + head(x2, y2, Math.atan2(y2 - y1, x2 - x1));

/** A moment about an axis seen along its length, with two heads: it turns as a right hand grips with the thumb along the heads. */
export const doubleArrow = (x1: number, y1: number, x2: number, y2: number): string => {
  const angle = Math.atan2(y2 - y1, x2 - x1);
  return arrow(x1, y1, x2, y2) + head(x2 - 6 * Math.cos(angle), y2 - 6 * Math.sin(angle), angle);
};

/** A moment seen from the end of its axis: an arc from one angle to another, radians clockwise from the right, with its head at the end. */
export function turn(x: number, y: number, radius: number, from: number, to: number): string {
  const place = (angle: number): readonly [number, number] => [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  const [x1, y1] = place(from);
  const [x2, y2] = place(to);
  const isClockwise = to > from ? 1 : 0;
  const isLong = Math.abs(to - from) > Math.PI ? 1 : 0;
  const along = to + (isClockwise ? 1 : -1) * (Math.PI / 2 - 3.5 / radius);
  return path(`M${x1.toFixed(2)} ${y1.toFixed(2)}A${radius} ${radius} 0 ${isLong} ${isClockwise} ${x2.toFixed(2)} ${y2.toFixed(2)}`) + head(x2, y2, along);
}

/** A dimension line with slashes at its ends, plumb. */
export const plumbDimension = (x: number, y1: number, y2: number): string =>
  line(x, y1, x, y2, "thin") + [y1, y2].map((y) => line(x - 3, y + 3, x + 3, y - 3, "seen")).join("");

/** Strokes below a line of ground. */
export function groundHatch(x1: number, x2: number, y: number): string {
  let strokes = line(x1, y, x2, y, "cut");
  for (let x = x1 + 6; x <= x2; x += 9) strokes += line(x, y, x - 6, y + 7, "thin");
  return strokes;
}

/** The drawing itself; `says` is read aloud in its place. */
export const drawing = (width: number, height: number, says: string, strokes: readonly string[]): string =>
  element("svg", { xmlns: "http://www.w3.org/2000/svg", viewBox: `0 0 ${width} ${height}`, width, height, role: "img", "aria-label": says }, strokes.join(""));
