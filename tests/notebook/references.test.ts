import { describe, expect, test } from "vitest";
import { parseNotebook } from "../../server/src/notebook/parse.js";
import { readNotebook } from "../../server/src/notebook/read-notebook.js";
import { definitionOf, findSymbolAt, usesOf } from "../../server/src/notebook/references.js";
import { renameEdits } from "../../server/src/notebook/rename.js";
import { absolute } from "../../server/src/notebook/tree.js";
import { applied, sample } from "./sample.js";

/** The text without its cursor mark, and what stands there. */
const at = (marked: string) => {
  const offset = marked.indexOf("¦");
  const text = marked.replace("¦", "");
  const parsed = parseNotebook(text);
  const reading = readNotebook(parsed, 0);
  return { text, reading, symbol: findSymbolAt(parsed, reading, offset) };
};

describe("the name under the cursor", () => {
  const rows: [string, string, string, string | undefined][] = [
    ["a reference", "stands on: pier", "stands on: pi¦er", "foundations pier use"],
    ["the end of a reference", "stands on: pier\n", "stands on: pier¦\n", "foundations pier use"],
    ["a reference to ground", "ground: granite", "ground: ¦granite", "ground granite use"],
    ["a definition", "  till:\n", "  t¦ill:\n", "ground till definition"],
    ["a given value in an expression", "= clear height + 3 ft", "= clear hei¦ght + 3 ft", "given clear height use"],
    ["a number in an expression", "= clear height + 3 ft", "= clear height + ¦3 ft", undefined],
    ["an accepted support", "at: south", "at: so¦uth", "columns south use"],
    ["a field's name", "depth: 7 ft", "de¦pth: 7 ft", undefined],
  ];
  test.each(rows)("is %s", (_title, from, to, expected) => {
    const { symbol } = at(sample.replace(from, to));
    expect(symbol && `${symbol.section} ${symbol.name} ${symbol.role}`).toBe(expected);
  });

  test("inside a path is the entry the path names", () => {
    const { symbol } = at("rootfast: 1\ncolumns:\n  the south line:\n    height: 9 ft\n  b:\n    height: = columns.the so¦uth line.height\n");
    expect(symbol).toMatchObject({ section: "columns", name: "the south line", role: "use" });
  });
});

test("definition and uses are found by name, each place once", () => {
  const { reading } = at(sample);
  const definition = definitionOf(reading, "bases", "A");
  expect(definition && absolute(definition.span).start).toBe(sample.indexOf("  A:\n") + 2);
  expect(usesOf(reading, "bases", "A").map((use) => absolute(use.span).start)).toEqual([...sample.matchAll(/base: A/g)].map((found) => found.index + 6));
  const repeated = at("rootfast: 1\nfoundations:\n  a: &a\n    ground: till\n  b: *a\n  c: *a\nground:\n  till:\n    kind: soil\n");
  expect(usesOf(repeated.reading, "ground", "till")).toHaveLength(1);
});

describe("renaming", () => {
  const rename = (text: string, section: string, name: string, to: string) => {
    const { reading } = at(text);
    const renaming = renameEdits(reading, { section, name }, to);
    return renaming.ok ? applied(text, { fixes: [{ title: "", edits: renaming.edits }] } as never) : renaming.message;
  };

  test("changes the definition, every reference, and nothing else", () => {
    expect(rename(sample, "foundations", "granite wall", "ledge")).toBe(sample.replace("  granite wall:", "  ledge:").replace("stands on: granite wall", "stands on: ledge"));
    expect(rename(sample, "columns", "south", "shore")).toBe(sample.replace("  south:\n", "  shore:\n").replace("at: south", "at: shore"));
  });

  test("reaches into expressions", () => {
    expect(rename(sample, "given", "clear height", "headroom")).toBe(sample.replaceAll("clear height", "headroom"));
  });

  test("quotes where YAML asks for it", () => {
    expect(rename(sample, "foundations", "pier", "pier: type 1")).toBe(sample.replace("  pier:\n", '  "pier: type 1":\n').replace("stands on: pier", 'stands on: "pier: type 1"'));
    const quoted = "rootfast: 1\nground:\n  'till':\n    kind: soil\nfoundations:\n  a:\n    ground: \"till\"\n";
    expect(rename(quoted, "ground", "till", "bob's")).toBe("rootfast: 1\nground:\n  'bob''s':\n    kind: soil\nfoundations:\n  a:\n    ground: \"bob's\"\n");
    const flow = "rootfast: 1\nground: {till: {kind: soil}}\nfoundations: {a: {ground: till}}\n";
    expect(rename(flow, "ground", "till", "sand, fine")).toBe('rootfast: 1\nground: {"sand, fine": {kind: soil}}\nfoundations: {a: {ground: "sand, fine"}}\n');
  });

  test("rewrites a name inside a text with escapes", () => {
    const text = `rootfast: 1\ngiven:\n  a: 3 ft\ncolumns:\n  c:\n    height: '= a + 5''-6" + a'\n`;
    expect(rename(text, "given", "a", "bay")).toBe(`rootfast: 1\ngiven:\n  bay: 3 ft\ncolumns:\n  c:\n    height: '= bay + 5''-6" + bay'\n`);
  });

  test.each([
    ["ground", "till", "granite", "already a name"],
    ["given", "clear height", "9 lives", "cannot stand in a calculation"],
    ["given", "clear height", "a + b", "cannot stand in a calculation"],
    ["given", "clear height", "sqrt", "cannot stand in a calculation"],
    ["ground", "till", "  ", "at least one letter"],
    ["ground", "clay", "silt", "not defined"],
  ])("of %s %s to %s is refused with the reason", (section, name, to, message) => {
    expect(rename(sample, section, name, to)).toContain(message);
  });

  test("leaves a notebook that reads the same", () => {
    const renamed = rename(sample, "bases", "A", "B # 2");
    const parsed = parseNotebook(renamed);
    expect([...parsed.problems, ...readNotebook(parsed, 0).problems]).toEqual([]);
  });
});
