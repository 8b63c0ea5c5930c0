import * as assert from "node:assert/strict";
import * as vscode from "vscode";
import { page } from "./page.js";
import { test } from "./registry.js";
import { statusItem, statusText } from "./status.js";
import { closeAll, depthOfPier, openShelter, patience, setValue, sufficientDepth } from "./shelter.js";
import { waitUntil } from "./wait.js";

const until = (text: string) => waitUntil(`the status bar says "${text}"`, async () => (await statusText()) === text, patience);

test("the status bar counts what is over, and says when all holds", async () => {
  const editor = await openShelter();
  await until("2 over");
  await setValue(editor, depthOfPier, sufficientDepth);
  await until("1 over");
  await setValue(editor, ["columns", "south", "stands on"], "ledge wall");
  await setValue(editor, ["columns", "south", "base"], "wall base");
  await until("All checked links hold");
});

test("the status bar opens the derivation of the support that governs", async () => {
  await openShelter();
  await until("2 over");
  await page.click({ selector: `${statusItem} a` });
  await page.waitFor("section.check", { frame: "webview", timeout: patience });
  assert.deepEqual(await page.text("h1", { frame: "webview", containing: "section.check" }), ["south"]);
});

test("the status bar says nothing of a file that is no notebook", async () => {
  await openShelter();
  await until("2 over");
  await closeAll();
  await vscode.window.showTextDocument(await vscode.workspace.openTextDocument({ language: "plaintext", content: "a remark" }));
  await waitUntil("the item is gone", async () => (await statusText()) === "", patience);
});
