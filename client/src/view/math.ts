/** Shows a formula: its MathML where it is sound, its line of plain text otherwise. */
import { h } from "./dom.js";
import { cleanedFormula, type MathNode } from "./mathml.js";

const namespace = "http://www.w3.org/1998/Math/MathML";

const built = (node: MathNode): Element => {
  const element = document.createElementNS(namespace, node.name);
  for (const [name, value] of node.attributes) element.setAttribute(name, value);
  for (const child of node.children) element.append(typeof child === "string" ? child : built(child));
  return element;
};

export const math = (mathml: string | undefined, plain: string): Element => {
  const root = mathml === undefined ? undefined : new DOMParser().parseFromString(mathml, "application/xml").documentElement;
  const clean = root && cleanedFormula(root);
  return clean ? built(clean) : h("span", { class: "plain" }, plain);
};
