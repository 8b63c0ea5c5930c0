import * as assert from "node:assert/strict";
import * as vscode from "vscode";
import { page } from "./page.js";
import { choose, runCommand, shownChoices } from "./palette.js";
import { test } from "./registry.js";
import { closeAll, diagnostics, errors, patience } from "./shelter.js";
import { statusText } from "./status.js";
import { waitUntil } from "./wait.js";

const title = "Rootfast: New Notebook";

async function kindsOffered(): Promise<string[]> {
  await runCommand(title);
  const kinds = await waitUntil(
    "kinds of notebooks are offered",
    async () => {
      const rows = (await shownChoices()).map((text) => text.split("\n")[0]);
      return rows.length > 0 && !rows.some((row) => row.startsWith("Rootfast:")) && rows;
    },
    patience,
  );
  await page.press("Escape");
  await page.waitFor(".quick-input-widget", { state: "hidden" });
  return kinds;
}

test("a new notebook of every kind begins checked, without an error", async () => {
  await closeAll();
  const kinds = await kindsOffered();
  assert.ok(kinds.length >= 2, kinds.join());
  for (const kind of kinds) {
    await runCommand(title);
    await choose(kind);
    const document = await waitUntil(`${kind} is open`, () => {
      const active = vscode.window.activeTextEditor?.document;
      return active?.isUntitled && active.languageId === "rootfast" && active;
    }, patience);
    assert.match(document.getText(), /^rootfast: 1$/m);
    const said = await waitUntil(`${kind} is checked`, async () => {
      const text = await statusText();
      return text !== "" && text !== "Checking" && text;
    }, patience);
    assert.doesNotMatch(said, /over|not checked|problem|Nothing/, `${kind}: ${said}`);
    assert.deepEqual(errors(document).map(({ message }) => message), [], kind);
    assert.ok(diagnostics(document).length > 0, "what is not covered is said");
    await closeAll();
  }
});
