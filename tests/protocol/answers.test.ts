import { describe, expect, it } from "vitest";
import { notebook, withChange } from "./notebooks.js";
import { sample, serving } from "./serving.js";
import { textIn } from "./text.js";

describe("Hovers", () => {
  const client = serving();
  const shelter = sample("landing-shelter");

  it.each([
    ["an input says what it is, its value, and the math of the worst check that reads it", "depth: 3| ft 6 in", [/Depth of the underside below grade/u, /Read as 3\.5 ft/u, /Embedment of the pier/u, /over 1\.\d\d/u, /IBC 2021 1807\.3/u]],
    ["a support says all its answers and the math of the worst", "  so|uth:\n", [/Embedment of the pier \| over/u, /All supports on rock, or none \| over/u, /symbol \| value \| meaning/u, /not covered/u]],
    ["an expression says what it comes to and from what", "= clear| height + 2 ft 4 in", [/Read as 10\.83 ft/u, /Computed from clear height \+ 2 ft 4 in/u]],
    ["a short form is spelled out", "plate: 12| in x 12 in x 1 in", [/width: 12 in, length: 12 in, thickness: 1 in/u]],
    ["a field with a default says which, and its source", "  rigid in |plane: yes", [/Left out, it is taken as yes/u]],
  ])("%s", async (_, marked, parts) => {
    const open = client().open(shelter);
    const hover = await open.hover(marked);
    for (const part of parts) expect(hover).toMatch(part);
    await open.answer();
    await open.close();
  });

  it.each([
    ["a comment", "# An open| shelter"],
    ["a blank line", "\n|\nbases:"],
  ])("%s has nothing to say", async (_, marked) => {
    const open = client().open(shelter);
    expect(await open.hover(marked)).toBeNull();
    await open.answer();
    await open.close();
  });

  it.each(["", "@", "\n", "  de", "depth:", "depth: 3 ft"])("the end of a text that ends with %j can be asked about", async (tail) => {
    const open = client().open(`${shelter}${tail}`);
    await open.answer();
    const lines = open.text.split("\n");
    const end = { line: lines.length - 1, character: lines[lines.length - 1].length };
    // The last line may be a field or nothing; the server answers and lives.
    const hover = await open.hoverAt(end);
    expect(hover === null || typeof hover.contents === "object").toBe(true);
    expect(await open.hoverAt({ line: end.line + 10, character: 0 })).toBeNull();
    expect(Array.isArray(await client().request("textDocument/completion", { textDocument: { uri: open.uri }, position: end }))).toBe(true);
    expect((await open.symbols()).length).toBeGreaterThan(5);
    await open.close();
  });

  it("no part of any hover is the name of a JavaScript value", async () => {
    const open = client().open(notebook);
    await open.answer();
    const lines = open.text.split("\n");
    for (let line = 0; line < lines.length; line += 1) {
      for (const character of new Set([lines[line].search(/\S|$/u), lines[line].length])) {
        const hover = await open.hoverAt({ line, character });
        const text = hover === null ? "" : (hover.contents as { value: string }).value;
        expect(text, lines[line]).not.toMatch(/\[object|undefined|\bNaN\b|\bInfinity\b|\bnull\b/u);
      }
    }
    await open.close();
  });
});

describe("Hovers of a client that takes sub and sup", () => {
  const client = serving({ html: true });

  it("write symbols with them", async () => {
    const open = client().open(sample("landing-shelter"));
    expect(await open.hover("depth: 3| ft 6 in")).toMatch(/<su[bp]>/u);
    await open.answer();
    await open.close();
  });
});

describe("Code lenses", () => {
  const client = serving();

  it("stand over each column line, base and foundation with ratio, state and check, and open the derivation there", async () => {
    const open = client().open(sample("landing-shelter"));
    await open.answer();
    const lenses = await open.lenses();
    const shown = lenses.map(({ range, command }) => ({ on: textIn(open.text, range), title: command?.title, command: command?.command, args: command?.arguments?.[0] }));
    expect(shown.map(({ on }) => on).sort()).toEqual(["ledge wall", "north", "pier base", "short pier", "south", "wall base"]);
    for (const { title, command, args } of shown) {
      expect(title).toMatch(/^(?:\d+(?:\.\d+)? )?(?:holds|near|over|not checked): \S/u);
      expect(command).toBe("rootfast.openDerivation");
      expect(args).toMatchObject({ uri: open.uri, subject: expect.stringMatching(/^columns\.(?:north|south)$/u), check: expect.stringMatching(/^[a-z]+\.[a-z-]+$/u) });
    }
    const south = shown.find(({ on }) => on === "south");
    const derivation = await open.derivation("columns.south");
    const embedment = derivation?.support?.findings.find(({ check }) => check === "pier.embedment");
    expect(south?.title).toBe(`${embedment?.ratio?.toFixed(2)} over: Embedment of the pier`);
    expect(south?.args).toEqual({ uri: open.uri, subject: "columns.south", check: "pier.embedment" });
    await open.close();
  });
});

describe("Completion", () => {
  const client = serving();

  const offered = async (text: string, marked: string): Promise<string[]> => {
    const open = client().open(text);
    const items = await open.completions(marked);
    await open.answer();
    await open.close();
    return items.map(({ label }) => label);
  };

  it("offers the keys an entry lacks and none it has", async () => {
    const labels = await offered(withChange(notebook, "    ignored depth: 1 ft\n", "    \n"), "above grade: = above\n    |\n");
    expect(labels).toContain("ignored depth");
    expect(labels).toContain("restrained at grade");
    expect(labels).not.toContain("depth");
    expect(labels).not.toContain("bars");
  });

  it("offers sections at the left margin", async () => {
    const labels = await offered(`${notebook}\n`, "ties: no. 4 at 10 in\n\n|");
    expect(labels).toEqual(expect.arrayContaining(["roof", "codes", "confirm", "accept"]));
    expect(labels).not.toContain("foundations");
  });

  it.each([
    ["the choices of a field", "kind: pier", "kind: |", ["pier", "footing", "footing on rock", "wall on footing"]],
    ["yes and no", "leveling nuts: yes", "leveling nuts: |", ["yes", "no"]],
    ["names that can be referred to", "    ground: sand\n    concrete", "    ground: |\n    concrete", ["sand"]],
    ["units after a number", "diameter: 30 in", "diameter: 30 |", ["in", "mm"]],
    ["nothing in a comment", "# of the pier", "# of the |", []],
    ["an example of a one-line form", "bars: 8 no. 7", "bars: |", expect.arrayContaining([expect.stringMatching(/no\. \d/u)])],
  ])("offers %s", async (_, old, marked, expected) => {
    const text = withChange(notebook, old, marked.replace("|", ""));
    const context = marked.trim() === "kind: |" ? "round pier:\n    kind: |" : marked;
    expect(await offered(text, context)).toEqual(expected);
  });

  it("offers bases and foundations by the names they have", async () => {
    const text = withChange(notebook, "    base: A\n    stands on: round pier\n    reactions:\n      dead: { down: 1 kip }\n      wind from the west", "    base: \n    stands on: \n    reactions:\n      dead: { down: 1 kip }\n      wind from the west");
    expect(await offered(text, "base: |\n")).toEqual(["A"]);
    expect(await offered(text, "stands on: |\n")).toEqual(["round pier"]);
  });
});

describe("The outline", () => {
  const client = serving();

  it("lists sections and their entries, each range inside that of its parent", async () => {
    const open = client().open(notebook);
    const symbols = await open.symbols();
    await open.answer();
    expect(symbols.map(({ name }) => name)).toEqual(["rootfast", "project", "site", "ground", "given", "columns", "bases", "foundations"]);
    expect(symbols.find(({ name }) => name === "columns")?.children?.map(({ name }) => name)).toEqual(["west sign", "east sign"]);
    for (const { range, children } of symbols) {
      for (const child of children ?? []) {
        expect(child.range.start.line).toBeGreaterThanOrEqual(range.start.line);
        expect(child.range.end.line).toBeLessThanOrEqual(range.end.line);
      }
    }
    await open.close();
  });
});
