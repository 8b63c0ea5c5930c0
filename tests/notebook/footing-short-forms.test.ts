import { describe, expect, it } from "vitest";
import { eachWayShortForm, matShortForm, pedestalShortForm } from "../../server/src/notebook/short-forms.js";
import { checkText } from "../../server/src/engine/check-text.js";

const said = (parts: ReturnType<typeof matShortForm.split>) => ("problem" in parts ? parts.problem : Object.fromEntries(parts.map(({ field, text }) => [field, text])));

describe("One-line forms of a footing", () => {
  it.each([
    [matShortForm, "no. 5 at 10 in", { bar: "no. 5", spacing: "10 in" }],
    [matShortForm, "16M @ 250 mm", { bar: "16M", spacing: "250 mm" }],
    [matShortForm, "6 no. 5", { count: "6", bar: "no. 5" }],
    [eachWayShortForm, "no. 5 at 10 in", { "along x": "no. 5 at 10 in", "along y": "no. 5 at 10 in" }],
    [eachWayShortForm, "6 no. 5, each way", { "along x": "6 no. 5", "along y": "6 no. 5" }],
    [pedestalShortForm, "16 in x 20 in", { width: "16 in", length: "20 in" }],
    [pedestalShortForm, "16 in square", { width: "16 in", length: "16 in" }],
    [pedestalShortForm, "18 in diameter", { diameter: "18 in" }],
  ])("%# reads %s", (form, text, fields) => {
    expect(said(form.split(text))).toEqual(fields);
  });

  it.each([
    [matShortForm, "no. 5", /count and a size/],
    [pedestalShortForm, "16 in", /1 size where 2 are needed/],
  ])("%# says what is wrong with %s", (form, text, words) => {
    expect(said(form.split(text))).toMatch(words);
  });

  it("are read each way, down to bar and spacing, with the place of what cannot be read", () => {
    const text = (bars: string) => `rootfast: 1\nfoundations:\n  pad:\n    kind: footing\n    bottom bars: ${bars}\n    combined: { full: { level: strength, down: 1 kip } }\n`;
    const read = (bars: string) => checkText(text(bars)).documents[0].structure.supports[0].foundation?.fields["bottom bars"]?.value;
    for (const way of ["along x", "along y"] as const) {
      expect(read("no. 5 at 10 in, each way")?.[way]?.value.bar?.value.name).toBe("no. 5");
      expect(read("no. 5 at 10 in, each way")?.[way]?.value.spacing?.value).toBeCloseTo(0.254, 12);
      expect(read("6 no. 5")?.[way]?.value.count?.value).toBe(6);
    }
    const [problem] = checkText(text("no. 5 at 10")).problems;
    const { block, start, end } = problem.span;
    expect(block.text.slice(start, end)).toBe("10");
  });
});
