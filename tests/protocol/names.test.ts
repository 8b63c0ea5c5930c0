import { describe, expect, it } from "vitest";
import { crlf, notebook, withChange } from "./notebooks.js";
import { saidAs, serving } from "./serving.js";
import { textIn } from "./text.js";

describe("Going to and finding names", () => {
  const client = serving();

  it.each([
    ["a foundation from where a column stands on it", "height: = clear height + 1 ft\n    base: A\n    stands on: round| pier", "round pier", 3],
    ["a base", "height: = clear height + 1 ft\n    base: A|\n", "A", 3],
    ["a ground", "    ground: sa|nd", "sand", 2],
    ["a given value in an expression", "height: = clear| height + 1 ft", "clear height", 3],
    ["a given value at the end of its name", "above grade: = above|\n", "above", 2],
    ["a definition from itself", "  round| pier:\n", "round pier", 3],
  ])("finds %s", async (_, marked, name, uses) => {
    const open = client().open(notebook);
    await open.answer();
    const found = await open.definition(marked);
    const definition = Array.isArray(found) ? found[0] : found;
    expect(definition?.uri).toBe(open.uri);
    expect(definition && textIn(open.text, definition.range)).toBe(name);
    expect(definition && open.text.split("\n")[definition.range.start.line]).toMatch(new RegExp(`^  ${name}:`, "u"));
    const references = await open.references(marked);
    expect(references.map(({ range }) => textIn(open.text, range))).toEqual(Array(uses).fill(name));
    expect(await open.references(marked, false)).toHaveLength(uses - 1);
    expect(await open.prepareRename(marked)).toMatchObject({ placeholder: name });
    await open.close();
  });

  it.each(["frost depth: 30| in", "  frost| depth:", "# of the| pier", "section: HSS6|x6x3/8\n    height: = clear height\n"])("has nothing to go to at %j", async (marked) => {
    const open = client().open(notebook);
    await open.answer();
    expect(await open.definition(marked)).toBeNull();
    expect(await open.references(marked)).toEqual([]);
    expect(await open.prepareRename(marked)).toBeNull();
    await open.close();
  });
});

describe("Renaming", () => {
  const client = serving();

  const renamed = async (text: string, marked: string, name: string): Promise<string> => {
    const open = client().open(text);
    await open.answer();
    const result = open.applied(await open.rename(marked, name));
    await open.close();
    return result;
  };
  const foundation = "height: = clear height + 1 ft\n    base: A\n    stands on: round| pier";

  it("changes the definition and every `stands on`, and no other byte", async () => {
    const expected = notebook.replaceAll("stands on: round pier", "stands on: drilled pier 2").replace("  round pier:", "  drilled pier 2:");
    expect(await renamed(notebook, foundation, "drilled pier 2")).toBe(expected);
  });

  it("keeps line ends, comments and spacing", async () => {
    const text = crlf(withChange(notebook, "    stands on: round pier\n    reactions:\n      dead: { down: 1 kip }\n      wind from the west", "    stands on:   round pier   # by the gate\n    reactions:\n      dead: { down: 1 kip }\n      wind from the west"));
    const expected = text.replaceAll(/(stands on: +)round pier/gu, "$1P").replace("  round pier:", "  P:");
    expect(await renamed(text, crlf(foundation), "P")).toBe(expected);
  });

  it("changes a given value with spaces in every expression", async () => {
    const expected = notebook.replace("  clear height: 9 ft", "  head room: 9 ft").replaceAll("= clear height", "= head room");
    expect(await renamed(notebook, "height: = clear| height + 1 ft", "head room")).toBe(expected);
  });

  it.each([
    ["a colon and a space", "P: 1", '"P: 1"'],
    ["a space and a #", "pier #1", '"pier #1"'],
    ["a # in front", "#4", '"#4"'],
    ["an asterisk in front", "*pier", '"*pier"'],
    ["a quotation mark in front", '"pier', "'\"pier'"],
  ])("writes quotes where the new name has %s", async (_, name, written) => {
    const expected = notebook.replaceAll("stands on: round pier", () => `stands on: ${written}`).replace("  round pier:", () => `  ${written}:`);
    const result = await renamed(notebook, foundation, name);
    expect(result).toBe(expected);
    const open = client().open(result);
    expect(saidAs(result, await open.diagnostics(), "error")).toEqual([]);
    await open.close();
  });

  it("keeps quotes a name stands in", async () => {
    const text = notebook.replaceAll("stands on: round pier", "stands on: 'round pier'").replace("  round pier:", '  "round pier":');
    const expected = notebook.replaceAll("stands on: round pier", "stands on: 'P1'").replace("  round pier:", '  "P1":');
    expect(await renamed(text, foundation.replace("round| pier", "'round| pier'"), "P1")).toBe(expected);
  });

  it.each([
    ["a name that is taken", withChange(notebook, "foundations:\n", "foundations:\n  pad:\n    kind: pier\n"), foundation, "pad", /"pad" is already a name under foundations/u],
    ["an empty name", notebook, foundation, "  ", /needs at least one letter/u],
    ["a given value named like a function", notebook, "height: = clear| height + 1 ft", "max", /cannot stand in a calculation/u],
    ["a given value that begins with a digit", notebook, "height: = clear| height + 1 ft", "2nd", /cannot stand in a calculation/u],
  ])("refuses %s with an answer the user reads", async (_, text, marked, name, message) => {
    const open = client().open(text);
    await open.answer();
    await expect(open.rename(marked, name)).rejects.toThrow(message);
    await open.close();
  });

  it("gives no edit where there is no name", async () => {
    const open = client().open(notebook);
    await open.answer();
    expect(await open.rename("frost depth: 30| in", "x")).toBeNull();
    await open.close();
  });
});
