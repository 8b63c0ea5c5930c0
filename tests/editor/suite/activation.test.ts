import * as assert from "node:assert/strict";
import * as vscode from "vscode";
import { openSample } from "./samples.js";
import { test } from "./registry.js";
import { waitUntil } from "./wait.js";

test("a notebook opens in the language rootfast", async () => {
  const { document } = await openSample();
  assert.equal(document.languageId, "rootfast");
});

test("opening a notebook activates the extension", async () => {
  await openSample();
  const extension = vscode.extensions.getExtension("rootfast.rootfast");
  assert.ok(extension, "the extension is not installed in this VS Code");
  await waitUntil("the extension is active", () => extension.isActive);
});
