import { describe, expect, it } from "vitest";
import { crlf, notebook, withChange } from "./notebooks.js";
import { saidAs, serving } from "./serving.js";
import { cursorIn, positionAt } from "./text.js";

interface Case {
  readonly what: string;
  /** What stands in the notebook, and the slip in its place. */
  readonly right: string;
  readonly slip: string;
  readonly code: string;
  readonly title: string;
  /** What the fix leaves there; the right text where not given. */
  readonly mended?: string;
}

const cases: readonly Case[] = [
  { what: "a number without its unit", right: "diameter: 30 in", slip: "diameter: 30", code: "quantity.no-unit", title: "Write 30 in" },
  { what: "a bar size lost to a comment", right: "bars: 8 no. 7", slip: "bars: 8 #7", code: "yaml.hash-callout", title: "Write 8 no. 7" },
  { what: "a misspelled key", right: "    ignored depth: 1 ft", slip: "    ignored dept: 1 ft", code: "shape.unknown-key", title: "Write ignored depth" },
  { what: "a reference to a name that is close", right: "    ground: sand\n    concrete", slip: "    ground: snad\n    concrete", code: "reference.unknown", title: "Write sand" },
  { what: "a decimal comma", right: "ignored depth: 1 ft", slip: "ignored depth: 1,5 ft", code: "quantity.comma", title: "Write 1.5 ft", mended: "ignored depth: 1.5 ft" },
  { what: "a misspelled key at the end of its entry's line", right: "leveling nuts: yes\n", slip: "leveling nuts: yes\n    cracked concret: yes\n", code: "shape.unknown-key", title: "Write cracked concrete", mended: "leveling nuts: yes\n    cracked concrete: yes\n" },
  { what: "a choice that is close", right: "kind: soil", slip: "kind: siol", code: "choice.unknown", title: "Write soil" },
  { what: "a space missing after a colon", right: "    depth: 8 ft", slip: "    depth:8 ft", code: "yaml.colon-space", title: "Write a space after the colon" },
  { what: "a tab in the indentation", right: "    depth: 8 ft", slip: "\t\tdepth: 8 ft", code: "yaml.tab", title: "Write spaces" },
  { what: "a comma that ends a value in braces", right: "dead: { down: 1 kip }\n      wind from the west", slip: "dead: { down: = max(1 kip, 2 kip) }\n      wind from the west", code: "yaml.flow-comma", title: 'Write "= max(1 kip, 2 kip)"', mended: 'dead: { down: "= max(1 kip, 2 kip)" }\n      wind from the west' },
];

const kinds = [
  { name: "line feeds", make: (text: string) => text },
  { name: "carriage returns and line feeds", make: crlf },
  { name: "a byte order mark and an emoji above", make: (text: string) => `\ufeff# 🏕️ camp\n${text}` },
];

describe("Fixes change what they name and no other byte", () => {
  const client = serving();

  for (const { name, make } of kinds) {
    it.each(cases.map((slip) => [slip.what, slip] as const))(`%s, in a text with ${name}`, async (_, { right, slip, code, title, mended }) => {
      const open = client().open(make(withChange(notebook, right, slip)));
      const diagnostics = await open.diagnostics();
      const slipped = diagnostics.find((diagnostic) => diagnostic.code === code);
      expect(slipped, saidAs(open.text, diagnostics, "error").join()).toBeDefined();
      if (!slipped) return;
      const actions = await open.actions(slipped.range, [slipped]);
      const action = actions.find((offered) => offered.title === title);
      expect(action, actions.map((offered) => offered.title).join("; ")).toBeDefined();
      const result = open.applied(action?.edit);
      expect(result).toBe(make(withChange(notebook, right, mended ?? right)));
      open.edit({ from: 0, to: open.text.length, text: result });
      expect(saidAs(result, await open.diagnostics(), "error").filter((line) => line.includes(code))).toEqual([]);
      await open.close();
    });
  }

  it("offers the likely units of a bare number, the field's own first", async () => {
    const open = client().open(withChange(notebook, "diameter: 30 in", "diameter: 30"));
    const [slip] = await open.diagnostics();
    const titles = (await open.actions(slip.range)).filter(({ kind }) => kind === "quickfix").map(({ title }) => title);
    expect(titles.slice(0, 2)).toEqual(["Write 30 in", "Write 30 mm"]);
    await open.close();
  });

  it("says where a key belongs that is known elsewhere", async () => {
    const open = client().open(withChange(notebook, "    depth: 8 ft", "    frost depth: 8 ft"));
    const messages = (await open.diagnostics()).map(({ message }) => message);
    expect(messages).toContainEqual(expect.stringMatching(/"frost depth" is not a field of round pier; it belongs under site/u));
    await open.close();
  });

  it("offers the long form of a one-line plate, and the numbers stay the same", async () => {
    const open = client().open(notebook);
    await open.answer();
    const before = await open.derivation("columns.west sign");
    const at = positionAt(open.text, cursorIn(open.text, "plate: 14| in x 14 in x 1 in"));
    const rewrite = (await open.actions({ start: at, end: at })).find(({ kind }) => kind === "refactor.rewrite");
    const result = open.applied(rewrite?.edit);
    expect(result).toBe(withChange(notebook, "    plate: 14 in x 14 in x 1 in\n", "    plate:\n      width: 14 in\n      length: 14 in\n      thickness: 1 in\n"));
    open.edit({ from: 0, to: open.text.length, text: result });
    await open.answer();
    const after = await open.derivation("columns.west sign");
    expect(after?.support?.findings.map(({ check, ratio }) => [check, ratio])).toEqual(before?.support?.findings.map(({ check, ratio }) => [check, ratio]));
    await open.close();
  });

  it("offers nothing where nothing is wrong", async () => {
    const open = client().open(notebook);
    await open.answer();
    const at = positionAt(open.text, cursorIn(open.text, "depth: 8| ft"));
    expect(await open.actions({ start: at, end: at })).toEqual([]);
    await open.close();
  });
});
