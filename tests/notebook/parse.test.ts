import { describe, expect, test } from "vitest";
import { parseNotebook } from "../../server/src/notebook/parse.js";
import { entryOf, type MapNode, type Node } from "../../server/src/notebook/tree.js";
import { applied, sample } from "./sample.js";

const codes = (text: string) => parseNotebook(text).problems.map((problem) => problem.code);
const at = (text: string, ...keys: string[]): Node | undefined =>
  keys.reduce<Node | undefined>((node, key) => (node?.type === "map" ? entryOf(node, key)?.value : undefined), parseNotebook(text).documents[0]);
const textAt = (text: string, ...keys: string[]) => {
  const node = at(text, ...keys);
  return node?.type === "scalar" ? node.text : node?.type;
};

describe("a file as a whole", () => {
  const rows: [string, string, string[]][] = [
    ["an empty file", "", ["file.empty"]],
    ["a file of comments", "# nothing yet\n", ["file.empty"]],
    ["prose", "Dear all,\nplease find attached.\n", ["file.other-shape"]],
    ["a list", "- a\n- b\n", ["file.other-shape"]],
    ["JSON of another shape", '{"name": "x", "scripts": {"a": [1, 2]}}', ["file.other-shape"]],
    ["YAML of another shape, with slips", "on:\n  push: [a, b\njobs:\n  x: : y\n", ["file.other-shape"]],
    ["a newer format, whatever follows", "rootfast: 2\nnew section:\n  a: 1\n", ["file.version-newer"]],
    ["no format stated", "site:\n  air: dry\n", ["file.version-missing"]],
    ["a file with a zero character", "rootfast: 1\n\0", ["file.binary"]],
    ["a file over 2 MB", `rootfast: 1\n${"# x\n".repeat(530_000)}`, ["file.too-large"]],
    ["lines that end with a carriage return alone", "rootfast: 1\rsite:\r  air: dry\r", ["file.line-end"]],
    ["conflict markers", `rootfast: 1\n<<<<<<< ours\nsite:\n  air: dry\n=======\nsite:\n  air: pool\n>>>>>>> theirs\n`, ["file.conflict"]],
    ["JSON of the notebook's shape", '{"rootfast": 1, "site": {"air": "dry", "wind speed": "140 mph"}}', []],
    ["a byte order mark", `\ufeff${sample}`, []],
    ["CRLF", sample.replaceAll("\n", "\r\n"), []],
    ["no final newline", sample.trimEnd(), []],
    ["two notebooks in one file", `${sample}---\n${sample}`, []],
    ["a last document marker with nothing after it", `${sample}---\n`, []],
    ["20,000 open brackets", "[".repeat(20_000), ["yaml.too-deep"]],
    ["20,000 open brackets in a field", `rootfast: 1\nsite: ${"[".repeat(20_000)}`, ["yaml.too-deep"]],
    ["mappings inside one another 3,000 deep", `rootfast: 1\nsite: ${"{a: ".repeat(3000)}`, ["yaml.too-deep", "yaml.open-bracket"]],
  ];
  test.each(rows)("%s gives its one message", (_title, text, expected) => {
    expect(codes(text)).toEqual(expected);
  });

  test("the missing format is written by the fix", () => {
    const text = "site:\n  air: dry\n";
    expect(applied(text, parseNotebook(text).problems[0])).toBe("rootfast: 1\nsite:\n  air: dry\n");
    const json = '{"site": {"air": "dry"}}';
    expect(codes(applied(json, parseNotebook(json).problems[0]))).toEqual([]);
  });

  test("lone carriage returns are replaced by the fix", () => {
    const text = "rootfast: 1\rsite:\r  air: dry\r";
    expect(applied(text, parseNotebook(text).problems[0])).toBe("rootfast: 1\nsite:\n  air: dry\n");
  });
});

describe("slips that YAML lets pass", () => {
  /** Text of the site section's body, the codes, and the body after the first fix. */
  const rows: [string, string, string[], string?][] = [
    ["bars: 8 #6", "bars: 8 #6", ["yaml.hash-callout"], "bars: 8 no. 6"],
    ["a callout alone", "spiral: #4 at 3 in", ["yaml.hash-callout"], "spiral: no. 4 at 3 in"],
    ["a callout in a list", "x:\n    - #6\n    - 8 #5", ["yaml.hash-callout", "yaml.hash-callout"], "x:\n    - no. 6\n    - 8 #5"],
    ["a comment with a space", "bars: 8 # 6", []],
    ["a comment in words", "bars: 8 no. 6 #see sheet 3", []],
    ["a comment on a line of its own", "#6 bars were too many\n  bars: 8 no. 5", []],
    ["a callout in quotes", 'bars: "8 #6"', []],
    ["a number without its space is no comment", "bars: 8#6", []],
    ["an expression cut in { }", "a: {height: = max(9 ft, 8 ft), base: A}", ["yaml.flow-comma"], 'a: {height: "= max(9 ft, 8 ft)", base: A}'],
    ["a value cut twice in { }", "a: {anchors: 4 x 1 in, headed, 20 in deep, grout: 1 in}", ["yaml.flow-comma"], 'a: {anchors: "4 x 1 in, headed, 20 in deep", grout: 1 in}'],
    ["inch marks in a cut value", `a: {from: 3'-0", 21'-0"}`, ["yaml.flow-comma"], `a: {from: '3''-0", 21''-0"'}`],
    ["a part without a key first in { }", "a: {x, y: 1}", []],
    ["an expression cut in [ ]", "a: [= max(9 ft, 8 ft), 3 ft]", ["yaml.flow-comma"], 'a: ["= max(9 ft, 8 ft)", 3 ft]'],
    ["two lengths in [ ]", "a: [3 ft, 21 ft]", []],
    ["a # that swallows the brace", "a: {bars: 8 #6, base: A}", ["yaml.flow-hash"], 'a: {bars: "8 #6", base: A}'],
    ["a # that swallows the brace after an empty key", "a: {bar: #6}", ["yaml.flow-hash"], 'a: {bar: "#6"}'],
    ["a name written twice", "air: dry\n  air: pool", ["yaml.duplicate-key"]],
    ["a key with a non-breaking space", "frost\u00a0depth: 3 ft", ["yaml.odd-character"], "frost depth: 3 ft"],
    ["a key indented by a non-breaking space too many", "\u00a0air: dry", ["yaml.odd-character"], "air: dry"],
    ["full-width digits in a key", "zone １: dry", ["yaml.odd-character"], "zone 1: dry"],
    ["a Unicode minus in a key", "zone −1: dry", ["yaml.odd-character"], "zone -1: dry"],
    ["a tab as indentation", "air: dry\n\texposure: C", ["yaml.tab"], "air: dry\n  exposure: C"],
    ["a key without colon", "exposure: C\n  air", ["yaml.no-colon"]],
    ["a colon without space", "exposure: C\n  air:dry", ["yaml.colon-space"], "exposure: C\n  air: dry"],
    ["a quote left open", 'air: "dry', ["yaml.open-quote"]],
    ["a bracket left open", "a: [1, 2\n  b: 3\n  c: 4", ["yaml.open-bracket"]],
    ["two colons in a line", "air: dry: wet", ["yaml.second-colon"]],
    ["an alias to nothing", "air: *wet", ["yaml.alias-unknown"]],
    ["an alias inside what it repeats", "a: &a\n    b: *a", ["yaml.alias-cycle"]],
    ["a merge of a single value", "a: &a dry\n  <<: *a", ["yaml.merge"]],
    ["a list as a key", "? [a, b]\n  : c", ["yaml.key"]],
  ];
  test.each(rows)("%s", (_title, body, expected, fixed) => {
    const text = `rootfast: 1\nsite:\n  ${body}\nroof:\n  slope: 2 in 12\n`;
    const { problems } = parseNotebook(text);
    expect(problems.map((problem) => problem.code)).toEqual(expected);
    if (fixed !== undefined) expect(applied(text, problems[0])).toBe(text.replace(body, () => fixed));
    else expect(problems.flatMap((problem) => problem.fixes ?? [])).toEqual([]);
  });

  test("a non-breaking space at the left margin is replaced by an ordinary one", () => {
    const text = "rootfast: 1\nsite:\n\u00a0\u00a0air: dry\n";
    expect(applied(text, parseNotebook(text).problems[0])).toBe("rootfast: 1\nsite:\n  air: dry\n");
  });

  test("the message about a name written twice points to the first", () => {
    const text = "rootfast: 1\nbases:\n  A:\n    grout: 1 in\n  A:\n    grout: 2 in\n";
    const [problem] = parseNotebook(text).problems;
    expect(problem.span.block.offset + problem.span.start).toBe(text.lastIndexOf("A:"));
    const related = problem.related?.[0].span;
    expect(related && related.block.offset + related.start).toBe(text.indexOf("A:"));
  });
});

describe("aliases and merge keys", () => {
  const base = "rootfast: 1\nfoundations:\n  a: &a\n    kind: pier\n    depth: 7 ft\n";

  test("a merged value carries the place of its alias, and the map's own value wins", () => {
    const text = `${base}  b:\n    <<: *a\n    depth: 8 ft\n`;
    expect(textAt(text, "foundations", "b", "depth")).toBe("8 ft");
    const kind = at(text, "foundations", "b", "kind");
    expect(kind?.via && text.slice(kind.via.block.offset + kind.via.start, kind.via.block.offset + kind.via.end)).toBe("*a");
  });

  test("of several merged mappings the first wins, also over two << keys", () => {
    const more = `${base}  c: &c\n    depth: 9 ft\n    ground: till\n`;
    expect(textAt(`${more}  b:\n    <<: [*c, *a]\n`, "foundations", "b", "depth")).toBe("9 ft");
    const twice = `${more}  b:\n    <<: *a\n    <<: *c\n`;
    expect(textAt(twice, "foundations", "b", "depth")).toBe("7 ft");
    expect(textAt(twice, "foundations", "b", "ground")).toBe("till");
    expect(codes(twice)).toEqual([]);
  });

  test("two thousand honest repeats are read", () => {
    const text = base + Array.from({ length: 2000 }, (_, i) => `  p${i}:\n    <<: *a\n`).join("");
    expect(codes(text)).toEqual([]);
    expect(textAt(text, "foundations", "p1999", "depth")).toBe("7 ft");
  });

  test("repeats of repeats past the budget are told once, at the alias", () => {
    const levels = Array.from({ length: 9 }, (_, i) => `  l${i}: &l${i} [${Array(9).fill(i === 0 ? "x" : `*l${i - 1}`).join(", ")}]\n`).join("");
    expect(codes(`rootfast: 1\nsite:\n${levels}`)).toEqual(["yaml.alias-budget"]);
  });

  test("an anchor in another block is found", () => {
    expect(textAt("rootfast: 1\ngiven:\n  d: &d 7 ft\nsite:\n  frost depth: *d\n", "site", "frost depth")).toBe("7 ft");
  });
});

describe("the tree", () => {
  test("keeps scalars as text, whatever YAML would make of them", () => {
    const body = { a: "012", b: "1_000", c: "yes", d: "1e3", e: "12:30", f: ".inf", g: "0x1F" };
    const text = `rootfast: 1\nsite:\n${Object.entries(body).map(([key, value]) => `  ${key}: ${value}\n`).join("")}`;
    for (const [key, value] of Object.entries(body)) expect(textAt(text, "site", key)).toBe(value);
    expect(textAt("rootfast: 1\nsite:\n  a: ~\n  b:\n", "site", "a")).toBe("null");
  });

  test("keeps a key named __proto__ as a key like any other", () => {
    const root = parseNotebook("rootfast: 1\n__proto__:\n  a: 1\nsite:\n  air: dry\n").documents[0];
    expect(root.entries.map((entry) => entry.key)).toEqual(["rootfast", "__proto__", "site"]);
  });

  test("places quoted text inside its quotes", () => {
    const text = `rootfast: 1\nsite:\n  air: "salt spray" # here\n  a: 'it''s'\n`;
    const node = at(text, "site", "air");
    expect(node?.type === "scalar" && [node.verbatim, node.span.block.text.slice(node.span.start, node.span.end)]).toEqual([true, "salt spray"]);
    const other = at(text, "site", "a");
    expect(other?.type === "scalar" && [other.verbatim, other.text]).toEqual([false, "it's"]);
  });
});

describe("an edit", () => {
  const pier = (i: number) => `  pier ${i}:\n    kind: pier\n    depth: 7 ft\n    ground: till\n`;
  const many = sample.replace("foundations:\n", `foundations:\n${Array.from({ length: 100 }, (_, i) => pier(i)).join("")}`);

  test("of one depth among a hundred foundations parses one block", () => {
    const before = parseNotebook(many);
    const entries = (before.documents[0].entries.find((entry) => entry.key === "foundations")?.value as MapNode).entries;
    const after = parseNotebook(many.replace("  pier 50:\n    kind: pier\n    depth: 7 ft", "  pier 50:\n    kind: pier\n    depth: 12 ft"), before);
    expect(after.parsedBlocks).toBe(1);
    const now = (after.documents[0].entries.find((entry) => entry.key === "foundations")?.value as MapNode).entries;
    expect(now.map((entry, i) => entry === entries[i]).filter((same) => !same)).toHaveLength(1);
  });

  test("that leaves a key without its colon parses one block", () => {
    const before = parseNotebook(many);
    const after = parseNotebook(many.replace("  pier 50:\n    kind: pier\n", "  pier 50:\n    kind: pier\n    dia\n"), before);
    expect(after.problems.map((problem) => problem.code)).toEqual(["yaml.no-colon"]);
    expect(after.parsedBlocks).toBe(1);
  });

  test("that breaks the text and is taken back parses only the block it touched", () => {
    const before = parseNotebook(many);
    const broken = parseNotebook(many.replace("  pier 50:\n    kind: pier", '  pier 50:\n    kind: "pier'), before);
    expect(broken.problems.map((problem) => problem.code)).toEqual(["yaml.open-quote"]);
    expect(parseNotebook(many, broken).parsedBlocks).toBe(1);
  });
});
