import * as assert from "node:assert/strict";
import * as vscode from "vscode";
import { page } from "./page.js";
import { test } from "./registry.js";
import { diagnostics, keyRange, openShelter, patience, setValue, untilErrors, valueRange } from "./shelter.js";
import { waitUntil } from "./wait.js";

const labelsAt = async (document: vscode.TextDocument, position: vscode.Position): Promise<string[]> => {
  const { items } = await vscode.commands.executeCommand<vscode.CompletionList>("vscode.executeCompletionItemProvider", document.uri, position);
  return items.filter(({ kind }) => kind !== vscode.CompletionItemKind.Text).map(({ label }) => (typeof label === "string" ? label : label.label));
};

test("behind `stands on` the foundations are offered, and Enter takes one", async () => {
  const editor = await openShelter();
  const { document } = editor;
  const path = ["columns", "south", "stands on"];
  await setValue(editor, path, "");
  const { end } = document.lineAt(valueRange(document, ...path).start.line).range;
  editor.revealRange(new vscode.Range(end, end), vscode.TextEditorRevealType.InCenter);
  assert.deepEqual((await labelsAt(document, end)).sort(), ["ledge wall", "short pier"]);
  editor.selection = new vscode.Selection(end, end);
  await waitUntil("the text has the focus", () => page.evaluate<boolean>("document.activeElement?.closest('.monaco-editor') !== null"), patience);
  await page.press("Control+Space");
  await page.waitFor(".suggest-widget .monaco-list-row", { timeout: patience });
  await page.screenshot("completion");
  await page.type("led");
  await waitUntil("the list is narrowed", async () => (await page.text(".suggest-widget .monaco-list-row")).every((row) => row.replaceAll("\u00a0", " ").includes("ledge wall")), patience);
  await page.press("Enter");
  await waitUntil("it is written", () => document.lineAt(end.line).text.trimEnd() === "    stands on: ledge wall", patience);
});

test("in an entry the keys are offered that it does not have", async () => {
  const editor = await openShelter();
  const { document } = editor;
  const { line } = keyRange(document, "foundations", "short pier", "depth").start;
  await editor.edit((edit) => edit.insert(new vscode.Position(line, 0), "    \n"));
  const offered = await labelsAt(document, new vscode.Position(line, 4));
  assert.ok(offered.includes("elevation") || offered.includes("restrained at grade"), offered.join());
  for (const there of ["depth", "diameter", "kind"]) assert.ok(!offered.includes(there), `${there} is there already`);
});

const rename = async (document: vscode.TextDocument, at: vscode.Range, name: string): Promise<vscode.WorkspaceEdit> =>
  vscode.commands.executeCommand<vscode.WorkspaceEdit>("vscode.executeDocumentRenameProvider", document.uri, at.start.translate(0, 1), name);

test("a foundation is renamed where it is described and where a column stands on it", async () => {
  const { document } = await openShelter();
  const before = document.getText();
  const edit = await rename(document, valueRange(document, "columns", "south", "stands on"), "deep pier");
  assert.ok(await vscode.workspace.applyEdit(edit));
  assert.equal(document.getText(), before.replaceAll("short pier", "deep pier"));
  assert.equal(document.getText(valueRange(document, "columns", "south", "stands on")), "deep pier");
  await untilErrors(document, "pier.embedment", "site.one-ground");
});

test("a name that is taken is refused, with the reason", async () => {
  const { document } = await openShelter();
  await assert.rejects(rename(document, keyRange(document, "foundations", "short pier"), "ledge wall"), /ledge wall/);
});

test("going to the definition of a base leads to its entry", async () => {
  const { document } = await openShelter();
  const at = valueRange(document, "columns", "south", "base").start.translate(0, 1);
  const [found] = await vscode.commands.executeCommand<(vscode.Location | vscode.LocationLink)[]>("vscode.executeDefinitionProvider", document.uri, at);
  const range = "range" in found ? found.range : found.targetRange;
  assert.equal(range.start.line, keyRange(document, "bases", "pier base").start.line);
});

test("bars written with a number sign are marked, and the fix spells them out", async () => {
  const editor = await openShelter();
  const { document } = editor;
  await setValue(editor, ["foundations", "short pier", "bars"], "16 #6");
  const { line } = keyRange(document, "foundations", "short pier", "bars").start;
  const mark = await waitUntil("the comment is marked", () => diagnostics(document).find(({ range, severity }) => range.start.line === line && severity !== vscode.DiagnosticSeverity.Hint), patience);
  const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>("vscode.executeCodeActionProvider", document.uri, mark.range, vscode.CodeActionKind.QuickFix.value);
  const fix = actions.find(({ edit }) => edit);
  assert.ok(fix?.edit, `no fix for: ${mark.message}`);
  assert.ok(await vscode.workspace.applyEdit(fix.edit));
  assert.match(document.lineAt(line).text, /^ {4}bars: 16 no\. 6(?:\s|$)/u);
  await untilErrors(document, "pier.embedment", "site.one-ground");
});
