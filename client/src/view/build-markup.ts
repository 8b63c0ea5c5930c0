import type { CleanNode } from "./markup.js";

/** The tree as elements of a namespace. */
export const built = (node: CleanNode, namespace: string): Element => {
  const element = document.createElementNS(namespace, node.name);
  for (const [name, value] of node.attributes) element.setAttribute(name, value);
  for (const child of node.children) element.append(typeof child === "string" ? child : built(child, namespace));
  return element;
};
