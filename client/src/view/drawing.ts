/** Shows a drawing of the server; nothing where there is none or it is not sound. */
import { built } from "./build-markup.js";
import { cleanedDrawing } from "./svg.js";

const namespace = "http://www.w3.org/2000/svg";

export const drawing = (svg: string): Element | undefined => {
  if (svg === "") return undefined;
  const clean = cleanedDrawing(new DOMParser().parseFromString(svg, "application/xml").documentElement);
  return clean && built(clean, namespace);
};
