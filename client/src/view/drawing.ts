/** Shows a drawing of the server; nothing where there is none or it is not sound. */
import type { DrawingReport } from "../../../shared/report.js";
import { built } from "./build-markup.js";
import { h, type Child } from "./dom.js";
import { cleanedDrawing } from "./svg.js";

const namespace = "http://www.w3.org/2000/svg";

export const drawing = (svg: string): Element | undefined => {
  if (svg === "") return undefined;
  const clean = cleanedDrawing(new DOMParser().parseFromString(svg, "application/xml").documentElement);
  return clean && built(clean, namespace);
};

/** Drawings with their captions below. */
export const figures = (drawings: readonly DrawingReport[] | undefined, key: string): Child =>
  (drawings ?? []).map(({ svg, caption }, i) => h("figure", { "data-key": `${key}:drawing:${i + 1}` }, drawing(svg), h("figcaption", { "aria-hidden": "true" }, caption)));
