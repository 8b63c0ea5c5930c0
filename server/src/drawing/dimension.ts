/** Dimension lines with slashes at their ends and the length written beside them. */
import { line, plumbDimension, words } from "./svg.js";

const slash = (x: number, y: number): string => line(x - 3, y + 3, x + 3, y - 3, "seen");

/** Level, its text above. */
export const levelDimension = (x1: number, x2: number, y: number, text: string): string =>
  line(x1, y, x2, y, "thin") + slash(x1, y) + slash(x2, y) + words((x1 + x2) / 2, y - 4, text, "middle");

/** Plumb, its text to the side. */
export const plumb = (x: number, y1: number, y2: number, text: string, side: "left" | "right" = "left"): string =>
  plumbDimension(x, y1, y2) + (side === "left" ? words(x - 6, (y1 + y2) / 2 + 4, text, "end") : words(x + 6, (y1 + y2) / 2 + 4, text));

/** A chain of level dimensions; one too short for its text is written below the line. */
export function levelChain(stops: readonly number[], y: number, texts: readonly string[]): string {
  const widthOf = (text: string): number => 5.6 * text.length + 6;
  return stops
    .slice(1)
    .map((to, i) => {
      const from = stops[i];
      const isShort = to - from < widthOf(texts[i]);
      return line(from, y, to, y, "thin") + (i === 0 ? slash(from, y) : "") + slash(to, y) + words((from + to) / 2, isShort && i % 2 === 1 ? y + 13 : y - 4, texts[i], "middle");
    })
    .join("");
}

/** A chain of plumb dimensions, their texts to the left; one too short for its text has none. */
export function plumbChain(stops: readonly number[], x: number, texts: readonly string[]): string {
  return stops
    .slice(1)
    .map((to, i) => {
      const from = stops[i];
      return line(x, from, x, to, "thin") + (i === 0 ? slash(x, from) : "") + slash(x, to) + (Math.abs(to - from) > 11 ? words(x - 6, (from + to) / 2 + 4, texts[i], "end") : "");
    })
    .join("");
}
