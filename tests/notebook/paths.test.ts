import { describe, expect, test } from "vitest";
import { parseNotebook } from "../../server/src/notebook/parse.js";
import { locate } from "../../server/src/notebook/paths.js";
import { sample } from "./sample.js";

const at = (marked: string) => {
  const offset = marked.indexOf("¦");
  const { path, onKey, onValue, inComment, documentIndex } = locate(parseNotebook(marked.replace("¦", "")), offset);
  return { path: path.join("."), onKey, onValue, inComment, documentIndex };
};
const edited = (from: string, to: string) => sample.replace(from, () => to);

describe("the field at an offset", () => {
  const rows: [string, string, string, { path: string; onKey?: boolean; onValue?: boolean; inComment?: boolean }][] = [
    ["a value", "depth: 7 ft", "depth: 7¦ ft", { path: "foundations.pier.depth", onValue: true }],
    ["a key", "depth: 7 ft", "de¦pth: 7 ft", { path: "foundations.pier.depth", onKey: true }],
    ["the end of a key", "depth: 7 ft", "depth¦: 7 ft", { path: "foundations.pier.depth", onKey: true }],
    ["an empty value", "depth: 7 ft", "depth: ¦", { path: "foundations.pier.depth", onValue: true }],
    ["a section", "foundations:", "found¦ations:", { path: "foundations", onKey: true }],
    ["a named entry", "  pier:\n", "  pi¦er:\n", { path: "foundations.pier", onKey: true }],
    ["a nested field", "bar: no. 6\n", "bar: no.¦ 6\n", { path: "foundations.granite wall.dowels.bar", onValue: true }],
    ["a field being written", "    depth: 7 ft\n", "    depth: 7 ft\n    di¦\n", { path: "foundations.pier" }],
    ["a blank line in an entry", "    depth: 7 ft\n", "    depth: 7 ft\n    ¦\n", { path: "foundations.pier" }],
    ["a blank line after an entry", "    ground: till\n", "    ground: till\n    ¦\n", { path: "foundations.pier" }],
    ["a blank line of a section", "    ground: till\n", "    ground: till\n  ¦\n", { path: "foundations" }],
    ["a blank line at the margin", "foundations:\n", "¦\nfoundations:\n", { path: "" }],
    ["a comment", "# from the map", "# from¦ the map", { path: "site.wind speed", inComment: true }],
    ["a comment line", "  # the south side", "  # the south¦ side", { path: "ground", inComment: true }],
    ["block text with a #", "North line on granite", "North # line¦ on granite", { path: "project.notes", onValue: true }],
    ["a flow mapping", "    depth: 7 ft\n", "    dowels: {bar: no. 6, hole: 1¦ in}\n", { path: "foundations.pier.dowels.hole", onValue: true }],
    ["a list item", "check: column drift", "check: column¦ drift", { path: "accept.1.check", onValue: true }],
    ["quoted text with a #", "depth: 7 ft", 'class: "a # b¦"', { path: "foundations.pier.class", onValue: true }],
  ];
  test.each(rows)("on %s", (_title, from, to, expected) => {
    const found = at(edited(from, to));
    expect(found.path).toBe(expected.path);
    expect(found.inComment).toBe(expected.inComment ?? false);
    if (!expected.inComment) expect({ onKey: found.onKey, onValue: found.onValue }).toEqual({ onKey: expected.onKey ?? false, onValue: expected.onValue ?? false });
  });

  test("in the second document counts from its own root", () => {
    expect(at(`${sample}---\nrootfast: 1\nsite:\n  air: d¦ry\n`)).toMatchObject({ documentIndex: 1, path: "site.air" });
  });

  test("is found at every offset of every beginning of a notebook without a throw", () => {
    const text = sample.slice(0, 700);
    for (let length = 0; length <= text.length; length += 7) {
      const parsed = parseNotebook(text.slice(0, length));
      for (const offset of [0, length >> 1, length, length + 5]) expect(Array.isArray(locate(parsed, offset).path)).toBe(true);
    }
  });
});
