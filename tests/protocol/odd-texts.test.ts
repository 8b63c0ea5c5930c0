import { describe, expect, it } from "vitest";
import { crlf, notebook, withChange } from "./notebooks.js";
import { said, saidAs, serving } from "./serving.js";
import { textIn } from "./text.js";

const shallow = withChange(notebook, "depth: 8 ft", "depth: 1 ft");
const aliasBomb = `rootfast: 1\na: &a [${Array(9).fill("x").join(", ")}]\n${[..."bcdefghi"].map((key, i) => `${key}: &${key} [${Array(9).fill(`*${"abcdefgh"[i]}`).join(", ")}]\n`).join("")}`;
const asJson = JSON.stringify(
  {
    rootfast: 1,
    site: { "frost depth": "30 in" },
    ground: { sand: { kind: "soil", class: "SM", "water table": "15 ft" } },
    foundations: {
      pier: { kind: "pier", ground: "sand", diameter: "30 in", depth: "1 ft", reactions: { dead: { down: "1 kip" }, "wind from west": { up: "2 kip", "shear x": "0.4 kip", "moment y": "4 kip-ft" } } },
    },
  },
  undefined,
  2,
);

describe("Texts that are hard to place", () => {
  const client = serving();

  it.each([
    ["line feeds", shallow],
    ["carriage returns and line feeds", crlf(shallow)],
    ["a byte order mark", `\ufeff${shallow}`],
    ["emoji above and on the line", withChange(shallow, "    diameter: 30 in\n    depth: 1 ft", "    diameter: 30 in # 🏕️ 👩‍👩‍👧\n    depth:   1 ft # 🏕️")],
    ["emoji in the name", shallow.replaceAll("round pier", "🏕️ pier")],
    ["flow style behind emoji", withChange(shallow, "project:\n  name: Path signs\n  units: US", 'project: { name: "🏕️ 👩‍👩‍👧", units: US }')],
  ])("with %s, the finding stands on the value in UTF-16 units", async (_, text) => {
    const open = client().open(text);
    const diagnostics = await open.diagnostics();
    const embedment = diagnostics.filter(({ code }) => code === "pier.embedment");
    expect(embedment.map(({ range }) => textIn(text, range))).toEqual(["1 ft", "1 ft"]);
    expect(open.text.split(/\r?\n/u)[embedment[0].range.start.line]).toContain("depth:");
    await open.close();
  });

  it("a value behind an emoji on its own line is found by its UTF-16 column", async () => {
    const text = withChange(notebook, "project:\n  name: Path signs\n  units: US", 'project: { name: "🏕️🏕️", units: XX }');
    const open = client().open(text);
    expect(saidAs(text, await open.diagnostics(), "error")).toEqual(['error choice.unknown "XX"']);
    await open.close();
  });

  it("edits behind an emoji keep the server's text in step", async () => {
    const open = client().open(`# 🏕️\n${notebook}`);
    await open.answer();
    open.edit({ from: 2, to: 4, text: "👩‍👩‍👧🏕️ " });
    open.replace("depth: 8 ft", "depth: 1 ft");
    expect((await open.diagnostics()).filter(({ code }) => code === "pier.embedment").map(({ range }) => textIn(open.text, range))).toEqual(["1 ft", "1 ft"]);
    await open.close();
  });

  it.each(["untitled:Untitled-1", "vscode-vfs://host/a/b.rootfast", "git:/a.rootfast?ref", "vscode-notebook-cell:/x#1"])("a text under %s is checked like any other", async (uri) => {
    const open = client().open(shallow, uri);
    expect((await open.diagnostics()).some(({ code }) => code === "pier.embedment")).toBe(true);
    expect((await open.lenses()).length).toBe(4);
    await open.close();
  });

  it("JSON of the same shape is a notebook", async () => {
    const open = client().open(asJson);
    // 0.6 of 1 kip and of the pier's own 0.7 kip do not hold 0.6 of 2 kip down; a foot of depth is a block too, which tips and slides, and the rule of exposure speaks of concrete in frozen ground.
    expect(saidAs(asJson, await open.diagnostics(), "error").sort()).toEqual(['error pier.block-overturning "1 ft"', 'error pier.block-sliding "1 ft"', 'error pier.embedment "1 ft"', 'error pier.uplift "1 ft"', 'error site.exposure "pier"', 'error site.frost "1 ft"']);
    await open.close();
  });

  it("every document of a file is checked, each in its own lines", async () => {
    const text = `${notebook}---\n${shallow}...\n---\n${notebook}`;
    const open = client().open(text);
    const embedment = (await open.diagnostics()).filter(({ code }) => code === "pier.embedment");
    expect(embedment.map(({ range }) => textIn(text, range))).toEqual(["1 ft", "1 ft"]);
    expect(embedment[0].range.start.line).toBe(notebook.split("\n").length + shallow.slice(0, shallow.indexOf("depth: 1 ft")).split("\n").length - 1);
    expect(await open.lenses()).toHaveLength(12);
    await open.close();
  });

  it("a fault in one document leaves the others what they are", async () => {
    const text = `${withChange(notebook, "diameter: 30 in", "diameter: 30")}---\n${shallow}`;
    const open = client().open(text);
    expect(new Set(saidAs(text, await open.diagnostics(), "error"))).toEqual(new Set(['error quantity.no-unit "30"', 'error pier.embedment "1 ft"', 'error site.frost "1 ft"', 'error anchors.fit "18 in"', 'error site.sizes "1 ft"']));
    await open.close();
  });
});

describe("Texts that are no notebook get one clear message", () => {
  const client = serving();
  const filler = "# a line that nobody reads, only to make the text long enough\n";

  it.each([
    ["an empty file", "", "information file.empty", /rootfast: 1/u],
    ["blank lines", "\n \n\n", "information file.empty", /rootfast: 1/u],
    ["a comment alone", "# nothing yet\n", "information file.empty", /rootfast: 1/u],
    ["5 MB", `rootfast: 1\n${filler.repeat(Math.ceil((5 * 2 ** 20) / filler.length))}`, "error file.too-large", /5\.0 MB/u],
    ["a binary file", "PK\u0003\u0004\0\0\0\u0008", "error file.binary", /not a text file/u],
    ["JSON of another shape", '{"name": "x", "version": "1.0.0", "dependencies": {}}', "error file.other-shape", /not a notebook/u],
    ["a JSON list", "[1, 2, 3]", "error file.other-shape", /not a notebook/u],
    ["Markdown", "# Title\n\nSome text.\n\n- a\n- b\n", "error file.other-shape", /not a notebook/u],
    ["a newer format", "rootfast: 7\nsomething: new\n", "error file.version-newer", /format 7/u],
    ["git conflict markers", withChange(notebook, "    depth: 8 ft\n", "<<<<<<< ours\n    depth: 8 ft\n=======\n    depth: 9 ft\n>>>>>>> theirs\n"), "error file.conflict", /merge/u],
    ["lone carriage returns", notebook.replaceAll("\n", "\r"), "error file.line-end", /carriage return/u],
    ["brackets twenty thousand deep", `rootfast: 1\na: ${"[".repeat(20_000)}`, "error yaml.too-deep", /too deeply/u],
    ["half a line at the end", `${notebook}  next pier`, "error yaml.no-colon", /no colon/u],
  ])("%s", async (_, text, expected, message) => {
    const open = client().open(text);
    const diagnostics = await open.diagnostics();
    expect(said(text, diagnostics).map((line) => line.split(" ").slice(0, 2).join(" "))).toEqual([expected]);
    expect(diagnostics[0].message).toMatch(message);
    // The server is there for the next text.
    expect(Array.isArray(await open.lenses())).toBe(true);
    await open.close();
  });

  it("a conflict keeps the lenses of the text before it", async () => {
    const open = client().open(notebook);
    await open.answer();
    const before = (await open.lenses()).map(({ command }) => command?.title);
    open.replace("    depth: 8 ft\n", "<<<<<<< ours\n    depth: 8 ft\n=======\n    depth: 9 ft\n>>>>>>> theirs\n");
    expect(saidAs(open.text, await open.diagnostics(), "error")).toEqual(['error file.conflict "<<<<<<< ours"']);
    expect((await open.lenses()).map(({ command }) => command?.title)).toEqual(before.map((title) => `last readable text: ${title}`));
    await open.close();
  });

  it("a nest of aliases that would fill the memory is answered with a message on the alias, and the server lives", async () => {
    const open = client().open(aliasBomb);
    const diagnostics = await open.diagnostics();
    expect(saidAs(aliasBomb, diagnostics, "error").filter((line) => line.includes("yaml.alias-budget"))).toHaveLength(1);
    await open.close();
    const next = client().open(notebook);
    expect(saidAs(notebook, await next.diagnostics(), "error")).toEqual([]);
    await next.close();
  });

  it("an alias of itself is a message on the alias", async () => {
    const open = client().open(`${notebook}confirm: &all [*all]\n`);
    expect(saidAs(open.text, await open.diagnostics(), "error")).toEqual(['error yaml.alias-cycle "*all"']);
    await open.close();
  });

  it("six hundred slips are capped, and the cap is said", async () => {
    const open = client().open(`rootfast: 1\n${Array.from({ length: 600 }, (_, i) => `key ${i}: 1\n`).join("")}`);
    const diagnostics = await open.diagnostics();
    expect(diagnostics.length).toBeLessThanOrEqual(501);
    expect(diagnostics.at(-1)?.code).toBe("file.many-messages");
    await open.close();
  });

  it.each(["__proto__", "constructor", "toString", "hasOwnProperty"])("an entry named %s is an entry like any other", async (name) => {
    const text = notebook.replaceAll("round pier", name);
    const open = client().open(text);
    expect(saidAs(text, await open.diagnostics(), "error", "warning")).toEqual([]);
    expect((await open.derivation())?.support?.findings.length).toBeGreaterThan(10);
    await open.close();
  });
});
