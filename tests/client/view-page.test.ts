import { describe, expect, it } from "vitest";
import { changes } from "../../client/src/view/changes.js";
import { cleanedFormula, type MarkupNode, type MathNode } from "../../client/src/view/mathml.js";
import { cleanedDrawing } from "../../client/src/view/svg.js";
import { lettered } from "../../client/src/view/symbol-text.js";
import { markOf, statesByWeight } from "../../client/src/states.js";
import type { DerivationReply } from "../../shared/protocol.js";
import type { FindingReport, State } from "../../shared/report.js";

const element = (localName: string, children: readonly (MarkupNode | string)[] = [], attributes: Record<string, string> = {}): MarkupNode => ({
  nodeType: 1,
  nodeValue: null,
  localName,
  attributes: Object.entries(attributes).map(([name, value]) => ({ name, value })),
  childNodes: children.map((child) => (typeof child === "string" ? { nodeType: 3, nodeValue: child, childNodes: [] } : child)),
});

describe("MathML of the server", () => {
  it("is taken over where it is presentation MathML", () => {
    const formula = element("math", [element("mfrac", [element("mi", ["P"]), element("mi", ["A"])])], { display: "block" });
    expect(cleanedFormula(formula)).toEqual<MathNode>({
      name: "math",
      attributes: [["display", "block"]],
      children: [
        {
          name: "mfrac",
          attributes: [],
          children: [
            { name: "mi", attributes: [], children: ["P"] },
            { name: "mi", attributes: [], children: ["A"] },
          ],
        },
      ],
    });
  });

  const refused = ["script", "img", "a", "style", "maction", "semantics", "annotation-xml", "iframe", "parsererror", "svg"];
  it.each(refused)("is refused as a whole where it holds %s, since a formula with a part left out is a wrong one", (name) => {
    expect(cleanedFormula(element("math", [element("mi", ["P"]), element(name, ["x"])]))).toBeUndefined();
    expect(cleanedFormula(element("math", [element("mrow", [element(name)])]))).toBeUndefined();
    expect(cleanedFormula(element(name, [element("math")]))).toBeUndefined();
  });

  it("loses handlers, links and styles", () => {
    const formula = element("math", [element("mi", ["P"], { onclick: "x()", style: "color: red", mathvariant: "normal" })], { href: "https://example.com" });
    expect(cleanedFormula(formula)?.attributes).toEqual([]);
    expect((cleanedFormula(formula)?.children[0] as MathNode).attributes).toEqual([["mathvariant", "normal"]]);
  });

  it("is refused where it holds a comment or an instruction", () => {
    expect(cleanedFormula(element("math", [{ nodeType: 8, nodeValue: "x", childNodes: [] }]))).toBeUndefined();
  });
});

describe("drawings of the server", () => {
  it("are taken over where they are lines and words", () => {
    const drawn = element("svg", [element("line", [], { x1: "0", onclick: "x()" }), element("text", ["P"], { "font-size": "11", style: "x" })], { viewBox: "0 0 1 1", xmlns: "x" });
    expect(cleanedDrawing(drawn)).toEqual({
      name: "svg",
      attributes: [["viewBox", "0 0 1 1"]],
      children: [
        { name: "line", attributes: [["x1", "0"]], children: [] },
        { name: "text", attributes: [["font-size", "11"]], children: ["P"] },
      ],
    });
  });

  it.each(["script", "style", "image", "use", "a", "foreignObject", "animate", "set", "math"])("are refused as a whole where they hold %s", (name) => {
    expect(cleanedDrawing(element("svg", [element("g", [element(name)])]))).toBeUndefined();
    expect(cleanedDrawing(element(name, [element("line")]))).toBeUndefined();
  });
});

describe("symbols", () => {
  it.each([
    ["phi", { base: "φ" }],
    ["N_cb", { base: "N", sub: "cb" }],
    ["psi_ed_N", { base: "ψ", sub: "ed,N" }],
    ["A", { base: "A" }],
  ])("%s is lettered as %j", (symbol, expected) => expect(lettered(symbol)).toEqual(expected));
});

describe("states", () => {
  it("each have a mark of their own", () => {
    expect(statesByWeight).toHaveLength(6);
    expect(new Set(statesByWeight.map(markOf)).size).toBe(6);
  });
});

describe("what is announced after an edit", () => {
  const finding = (check: string, state: State, ratio: number) => ({ check, title: check, state, ratio }) as FindingReport;
  const reply = (path: string, findings: readonly FindingReport[], stale = false) =>
    ({ version: 1, stale, subjects: [], cautions: [], support: { path, findings } }) as unknown as DerivationReply;
  const before = reply("columns.south", [finding("Embedment", "over", 1.2), finding("Bearing", "holds", 0.4)]);

  it("is each check whose state changed", () => {
    expect(changes(before, reply("columns.south", [finding("Embedment", "holds", 0.9), finding("Bearing", "not checked", 0)]))).toBe(
      "Embedment now holds. Bearing is now not checked.",
    );
  });
  it("is nothing where only numbers moved", () => {
    expect(changes(before, reply("columns.south", [finding("Embedment", "over", 1.9), finding("Bearing", "holds", 0.5)]))).toBe("");
  });
  it("is nothing for another support or the first numbers", () => {
    expect(changes(before, reply("columns.north", [finding("Embedment", "holds", 0.2)]))).toBe("");
    expect(changes(undefined, before)).toBe("");
  });
  it("is that the text can no longer be read", () => {
    expect(changes(before, reply("columns.south", before.support?.findings ?? [], true))).toBe("The text has errors; the numbers are kept.");
  });
});
