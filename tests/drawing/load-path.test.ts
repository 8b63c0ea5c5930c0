import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { loadPathGraph } from "../../server/src/checks/site/load-path-graph.js";
import { loadPathPictures } from "../../server/src/drawing/load-path.js";
import { checkText } from "../../server/src/engine/check-text.js";
import { faultsOf } from "./sound.js";

const sample = readFileSync("samples/landing-shelter.rootfast", "utf8");

const drawnOf = (text: string) => checkText(text).documents.flatMap(({ structure }) => loadPathPictures(loadPathGraph(structure), structure.supports));

describe("the drawn load path", () => {
  it("goes from the roof to the ground of every support, one wall under four columns", () => {
    const [picture] = drawnOf(sample);
    expect(picture.caption).toContain("Every link is named.");
    for (const word of [">roof<", ">4 × south<", ">4 × pier base<", ">4 × short pier<", ">ledge wall<", ">sand<", ">ledge<"]) expect(picture.svg).toContain(word);
    expect(faultsOf(picture.svg)).toEqual([]);
  });

  it("names the first missing link and marks its box", () => {
    const [picture] = drawnOf(sample.replace("    base: wall base\n", ""));
    expect(picture.caption).toContain("First missing link: north: the load path ends at the column");
    expect(picture.svg).toContain("missing, look here first");
    expect(picture.svg).toContain("stroke-dasharray");
    expect(faultsOf(picture.svg)).toEqual([]);
  });

  it("leaves out the rows nothing stands in", () => {
    const [first] = drawnOf(readFileSync("samples/bus-stop-reactions.rootfast", "utf8"));
    expect(first.svg).toContain("reactions given");
    expect(first.svg).not.toContain("column top");
  });

  it("of many supports is drawn a few at a time, and each support once", () => {
    const names = Array.from({ length: 12 }, (_, i) => `pier ${String.fromCharCode(97 + i)}`);
    const text = `rootfast: 1\nfoundations:\n${names.map((name) => `  ${name}:\n    kind: pier\n    combined:\n      uplift: 1 kip\n`).join("")}`;
    const pictures = drawnOf(text);
    expect(pictures.length).toBeGreaterThan(1);
    for (const { svg } of pictures) expect(faultsOf(svg)).toEqual([]);
    const all = pictures.map(({ svg }) => svg).join("");
    for (const name of names) expect(all.split(`font-size="11" font-family="Liberation Sans, Arial, sans-serif" text-anchor="middle">${name}<`).length - 1).toBe(2);
  });

  it("of a notebook without supports is not drawn", () => expect(drawnOf("rootfast: 1\n")).toEqual([]));
});
