/** Shows a formula: its MathML where it is sound, its line of plain text otherwise. */
import { h } from "./dom.js";
import { built } from "./build-markup.js";
import { cleanedFormula, type MathNode } from "./mathml.js";

const namespace = "http://www.w3.org/1998/Math/MathML";

/** Most formulas of a sheet are the same after an edit as before it. */
const known = new Map<string, MathNode | undefined>();
const mostKnown = 4000;

const read = (mathml: string): MathNode | undefined => {
  if (!known.has(mathml)) {
    if (known.size >= mostKnown) known.clear();
    known.set(mathml, cleanedFormula(new DOMParser().parseFromString(mathml, "application/xml").documentElement));
  }
  return known.get(mathml);
};

export const math = (mathml: string | undefined, plain: string): Element => {
  const clean = mathml === undefined ? undefined : read(mathml);
  return clean ? built(clean, namespace) : h("span", { class: "plain" }, plain);
};
