import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { checkText } from "../../server/src/engine/check-text.js";
import { buildReport } from "../../server/src/engine/report.js";
import { summaryHtml } from "../../server/src/summary/html.js";
import { summaryMarkdown } from "../../server/src/summary/markdown.js";

const checked = checkText(readFileSync("samples/landing-shelter.rootfast", "utf8"));
const report = buildReport(checked, { file: "landing-shelter.rootfast", drawings: "supports" });

describe("the drawings of a summary", () => {
  it("stand under the name of their support: its section or elevation, and the section through its base", () => {
    const html = summaryHtml(report);
    const [, north, south] = html.split(/<h3>(?=north|south)/u);
    for (const part of [north, south]) expect(part.slice(0, part.indexOf("<table")).match(/<svg/gu)).toHaveLength(2);
    expect(north).toContain("Section across the wall");
    expect(south).toContain("Elevation looking north");
  });

  it("are told in words in Markdown, which cannot hold them", () => {
    const text = summaryMarkdown(report);
    expect(text).toContain("Elevation looking north, to scale.");
    expect(text).not.toContain("<svg");
  });

  it("are left out where nobody asks for them", () => {
    expect(buildReport(checked, { file: "x" }).structures[0].supports.every(({ drawings }) => drawings === undefined)).toBe(true);
  });
});
