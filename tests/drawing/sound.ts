/** What every drawing must be: elements the view lets in, balanced, in one color, with numbers, and inside its frame. */
import { strokes } from "../../client/src/view/svg.js";

/** What is wrong with a drawing, in words; empty where nothing is. */
export function faultsOf(svg: string): string[] {
  const faults: string[] = [];
  const elements = [...svg.matchAll(/<([a-zA-Z]+)/gu)].map(([, name]) => name);
  const attributes = [...svg.matchAll(/\s([a-zA-Z][\w-]*)="/gu)].map(([, name]) => name).filter((name) => name !== "xmlns");
  faults.push(...elements.filter((name) => !strokes.elements.has(name)), ...attributes.filter((name) => !strokes.attributes.has(name)));
  const opened = [...svg.matchAll(/<([a-z]+)(?:\s[^<>]*?)?(\/?)>/gu)].filter(([, , closed]) => closed === "").length;
  if (opened !== [...svg.matchAll(/<\/([a-z]+)>/gu)].length) faults.push("not balanced");
  for (const [, color] of svg.matchAll(/(?:stroke|fill)="([^"]+)"/gu)) if (color !== "currentColor" && color !== "none") faults.push(`color ${color}`);
  for (const word of ["NaN", "Infinity", "undefined", "[object"]) if (svg.includes(word)) faults.push(word);
  const [, width, height] = /viewBox="0 0 (\d+) (\d+)"/u.exec(svg) ?? [];
  const outside = (x: number, y: number): boolean => x < -1 || y < -1 || x > Number(width) + 1 || y > Number(height) + 1;
  for (const [tag] of svg.matchAll(/<line [^>]*>/gu)) {
    const [x1, y1, x2, y2] = ["x1", "y1", "x2", "y2"].map((name) => Number(new RegExp(` ${name}="([^"]*)"`, "u").exec(tag)?.[1]));
    if (outside(x1, y1) || outside(x2, y2)) faults.push(`a line leaves the frame: ${tag}`);
  }
  for (const [, x, y, size, anchor, text] of svg.matchAll(/<text x="([^"]*)" y="([^"]*)" [^>]*?font-size="([^"]*)"[^>]*?text-anchor="([^"]*)">([^<]*)</gu)) {
    // An average letter of the drawing's face is about half as wide as it is high.
    const wide = 0.5 * Number(size) * text.length;
    const from = Number(x) - (anchor === "start" ? 0 : anchor === "end" ? wide : wide / 2);
    if (outside(from, Number(y)) || outside(from + wide, Number(y))) faults.push(`words leave the frame: ${text}`);
  }
  return faults;
}
