import { describe, expect, it } from "vitest";
import { said, saidAs, sample, serving } from "./serving.js";
import { textIn } from "./text.js";

const shelter = sample("landing-shelter");
const faults = ['error pier.embedment "3 ft 6 in"', 'error site.one-ground "soil"'];

describe("The server's life", () => {
  const client = serving();

  it("names itself and what it can do in the reply to initialize", () => {
    const { serverInfo, capabilities } = client().initialized;
    expect(serverInfo?.name).toBe("rootfast");
    expect(capabilities).toMatchObject({
      textDocumentSync: { openClose: true, change: 2 },
      hoverProvider: true,
      codeLensProvider: {},
      completionProvider: {},
      definitionProvider: true,
      referencesProvider: true,
      renameProvider: { prepareProvider: true },
      documentSymbolProvider: true,
    });
    expect(capabilities.codeActionProvider).toMatchObject({ codeActionKinds: expect.arrayContaining(["quickfix"]) });
    // Positions are in UTF-16 units, which is what a client takes where nothing is said.
    expect(capabilities.positionEncoding ?? "utf-16").toBe("utf-16");
  });

  it("finds the two faults of the landing shelter, each on the value that can mend it", async () => {
    const open = client().open(shelter);
    const { diagnostics, version, checked } = await open.answer();
    expect(version).toBe(1);
    expect(saidAs(open.text, diagnostics, "error", "warning").sort()).toEqual(faults);
    expect(checked).toMatchObject({ version: 1, stale: false, problems: 0, counts: { over: 2, "not checked": 0 } });
    const mixed = diagnostics.find(({ code }) => code === "site.one-ground");
    expect(mixed?.relatedInformation?.map(({ location }) => textIn(open.text, location.range))).toEqual(["rock"]);
    expect(diagnostics.every(({ source }) => source === "rootfast")).toBe(true);
    await open.close();
  });

  it("clears a fault with the edit that mends it, under the new version, and brings it back with the next", async () => {
    const open = client().open(shelter);
    await open.answer();
    open.replace("depth: 3 ft 6 in", "depth: 7 ft");
    const mended = await open.answer();
    expect(mended.version).toBe(2);
    expect(saidAs(open.text, mended.diagnostics, "error")).toEqual(['error site.one-ground "soil"']);
    open.replace("depth: 7 ft", "depth: 3 ft 6 in");
    const back = await open.answer();
    expect(back.version).toBe(3);
    expect(saidAs(open.text, back.diagnostics, "error").sort()).toEqual(faults);
    await open.close();
  });

  it("answers twenty quick edits with the newest text last and nothing older after it", async () => {
    const open = client().open(shelter);
    await open.answer();
    for (let turn = 1; turn <= 20; turn += 1) open.replace(/depth: \d+ ft(?: \d+ in)?\n {4}above/u.exec(open.text)?.[0] ?? "", `depth: ${turn} ft\n    above`);
    const { version, diagnostics } = await open.answer();
    expect(version).toBe(21);
    expect(diagnostics.some(({ code }) => code === "pier.embedment")).toBe(false);
    // Whatever was still on its way would be here before the answer to this; `end` fails on it.
    expect(await open.lenses()).not.toHaveLength(0);
    await open.close();
  });

  it("takes several changes in one notification, one after the other", async () => {
    const open = client().open(shelter);
    await open.answer();
    const at = open.text.indexOf("3 ft 6 in\n    above grade");
    open.edit({ from: at, to: at + 9, text: "x" }, { from: at, to: at + 1, text: "7 ft" });
    expect(saidAs(open.text, await open.diagnostics(), "error")).toEqual(['error site.one-ground "soil"']);
    await open.close();
  });

  it("answers a question about a text it has not published yet from that text", async () => {
    const open = client().open(shelter);
    const lenses = await open.lenses();
    expect(lenses.map(({ command }) => command?.title).join()).toContain("Embedment of the pier");
    await open.answer();
    await open.close();
  });

  it("takes the diagnostics away when the text is closed, and knows nothing of it afterwards", async () => {
    const open = client().open(shelter);
    await open.answer();
    await open.close();
    expect(await open.lenses()).toEqual([]);
    expect(await open.hoverAt({ line: 0, character: 0 })).toBeNull();
    expect(await open.derivation()).toBeNull();
    expect(await open.summary()).toBeNull();
  });

  it("keeps two open texts apart", async () => {
    const first = client().open(shelter);
    const second = client().open(sample("market-canopy"));
    await first.answer();
    const canopy = said(second.text, await second.diagnostics());
    first.replace("depth: 3 ft 6 in", "depth: 7 ft");
    expect(saidAs(first.text, await first.diagnostics(), "error")).toEqual(['error site.one-ground "soil"']);
    second.replace("# A market canopy", "# The market canopy");
    expect(said(second.text, await second.diagnostics())).toEqual(canopy);
    expect(canopy.join()).not.toContain("site.one-ground");
    await first.close();
    await second.close();
  });

  it("answers a text opened again under its name as if it were new", async () => {
    const first = client().open(shelter, "file:///notebooks/again.rootfast");
    await first.answer();
    first.replace("depth: 3 ft 6 in", "depth: 7 ft");
    await first.answer();
    await first.close();
    const again = client().open(shelter, "file:///notebooks/again.rootfast");
    const { version, diagnostics } = await again.answer();
    expect(version).toBe(1);
    expect(saidAs(again.text, diagnostics, "error").sort()).toEqual(faults);
    await again.close();
  });
});

describe("While the text is broken", () => {
  const client = serving();

  it.each([
    ["a line without a colon", "  short pier:\n", "  half a line\n  short pier:\n"],
    ["an open quotation mark", "concrete: 4000 psi\n    diameter", 'concrete: "4000 psi\n    diameter'],
    ["an open bracket", "confirm:\n", "confirm: [\n"],
    ["a tab in the indentation", "    diameter: ", "\t\tdiameter: "],
  ])("%s holds engineering back, keeps every lens with its last readable value, and passes", async (_, old, broken) => {
    const open = client().open(shelter);
    await open.answer();
    const before = await open.lenses();
    const key = (line: number) => open.text.split("\n")[line].trim();
    const keys = before.map(({ range }) => key(range.start.line));
    open.replace(old, broken);
    const { diagnostics, checked } = await open.answer();
    expect(checked?.stale).toBe(true);
    expect(diagnostics.length).toBeGreaterThan(0);
    expect(diagnostics.filter(({ code }) => !/^(?:yaml|file|shape|reference|quantity|choice)\./u.test(String(code)))).toEqual([]);
    const during = await open.lenses();
    expect(during.map(({ command }) => command?.title)).toEqual(before.map(({ command }) => `last readable text: ${command?.title}`));
    expect(during.map(({ range }) => key(range.start.line))).toEqual(keys);
    open.replace(broken, old);
    const after = await open.answer();
    expect(after.checked?.stale).toBe(false);
    expect(saidAs(open.text, after.diagnostics, "error").sort()).toEqual(faults);
    expect(await open.lenses()).toEqual(before);
    await open.close();
  });

  it("hovers and the derivation give the last readable numbers and say so", async () => {
    const open = client().open(shelter);
    await open.answer();
    const fresh = await open.derivation("columns.south");
    expect(fresh?.stale).toBe(false);
    open.replace("confirm:\n", "half a line\nconfirm:\n");
    await open.answer();
    expect(await open.hover("depth: 3| ft 6 in")).toMatch(/last readable text[\s\S]*Embedment of the pier/u);
    const stale = await open.derivation("columns.south");
    expect(stale?.stale).toBe(true);
    expect(stale?.support?.findings).toEqual(fresh?.support?.findings);
    await open.close();
  });

  it("a text broken from the start says what is wrong with it and nothing about strength", async () => {
    const open = client().open(shelter.replace("  short pier:\n", "  half a line\n  short pier:\n"));
    const diagnostics = await open.diagnostics();
    expect(said(open.text, diagnostics)).toEqual(['error yaml.no-colon "half a line"']);
    await open.close();
  });
});

describe("A client that knows less", () => {
  const client = serving({ lensRefresh: false });

  it("is not asked to renew its lenses", async () => {
    const open = client().open(shelter);
    expect(await open.diagnostics()).not.toHaveLength(0);
    await open.close();
  });
});
