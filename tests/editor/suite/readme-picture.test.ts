import * as assert from "node:assert/strict";
import { copyFile, mkdir, stat } from "node:fs/promises";
import { join } from "node:path";
import * as vscode from "vscode";
import { inView, openDerivation } from "./derivation.js";
import { page } from "./page.js";
import { test } from "./registry.js";
import { keyRange, openShelter, patience } from "./shelter.js";
import { waitUntil } from "./wait.js";

/** The bundle of the tests stands in a folder of the repository. */
const media = join(__dirname, "..", "media");

test("the sample with its faults, and the derivation beside it, make the picture of the README", async () => {
  const editor = await openShelter();
  const { document } = editor;
  await page.resize(1400, 900);
  const settings = vscode.workspace.getConfiguration("editor");
  const plain = { "minimap.enabled": false, "stickyScroll.enabled": false } as const;
  for (const [name, value] of Object.entries(plain)) await settings.update(name, value, vscode.ConfigurationTarget.Global);
  await vscode.commands.executeCommand("workbench.action.closeSidebar");
  try {
    await openDerivation(document, "columns.south", "pier.embedment");
    await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
    // Both faults are to be seen at once, so what lies between them is folded.
    const folded = [["given"], ["roof"], ["ground", "ledge"], ["columns", "north"], ["columns", "south", "top connection"], ["bases"], ["foundations", "ledge wall"]];
    await vscode.commands.executeCommand("editor.fold", { selectionLines: folded.map((path) => keyRange(document, ...path).start.line) });
    editor.selection = new vscode.Selection(editor.document.lineCount - 1, 0, editor.document.lineCount - 1, 0);
    editor.revealRange(keyRange(document, "ground"), vscode.TextEditorRevealType.AtTop);
    const marks = () => page.evaluate<number>("[...document.querySelectorAll('.squiggly-error')].filter((mark) => mark.getBoundingClientRect().width > 0).length");
    await waitUntil("both faults are drawn", async () => (await marks()) === 2, patience);
    await waitUntil("the lens of the south line is drawn", async () => (await page.text(".codelens-decoration a")).some((text) => text.includes("over")), patience);
    await waitUntil("the embedment is in view", () => page.evaluate<boolean>(`document.querySelector('[data-check="pier.embedment"] h3').getBoundingClientRect().top < 200`, inView), patience);
    const picture = await page.screenshot("editor");
    const { size } = await stat(picture);
    assert.ok(size > 50_000 && size < 300_000, `the picture has ${size} bytes`);
    if (process.env.ROOTFAST_RENEW_DOCS === "1") {
      await mkdir(media, { recursive: true });
      await copyFile(picture, join(media, "editor.png"));
    }
  } finally {
    for (const name of Object.keys(plain)) await settings.update(name, undefined, vscode.ConfigurationTarget.Global);
    await vscode.commands.executeCommand("workbench.action.toggleSidebarVisibility");
  }
});
