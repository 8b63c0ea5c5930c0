import * as assert from "node:assert/strict";
import * as vscode from "vscode";
import { test } from "./registry.js";
import { lensTitles } from "./lenses.js";
import { statusText } from "./status.js";
import { errors, keyRange, openShelter, patience, untilErrors } from "./shelter.js";
import { waitUntil } from "./wait.js";

test("half a line leaves every lens where it is, with the numbers of the last readable text", async () => {
  const editor = await openShelter();
  const { document } = editor;
  const before = await lensTitles(document);
  const { line } = keyRange(document, "foundations", "short pier", "depth").start;
  await editor.edit((edit) => edit.insert(new vscode.Position(line, 0), "    bars\n"));
  const wanted = new Map([...before].map(([entry, title]) => [entry, `last readable text: ${title}`]));
  await waitUntil("the lenses say that they are old", async () => [...(await lensTitles(document)).values()].every((title) => title.startsWith("last readable text: ")), patience);
  assert.deepEqual(await lensTitles(document), wanted);
  assert.ok(errors(document).some(({ range }) => range.start.line === line), "the half line itself is marked");
  await waitUntil("the status bar says so", async () => (await statusText()).includes("numbers of the last readable text"), patience);

  await vscode.commands.executeCommand("undo");
  await untilErrors(document, "pier.embedment", "site.one-ground");
  await waitUntil("the lenses are as before", async () => [...(await lensTitles(document))].every(([entry, title]) => before.get(entry) === title), patience);
});
