/** The landing shelter, the notebook most tests change: opened as it is on disk, looked into by its keys, and edited. */
import * as vscode from "vscode";
import { openSample } from "./samples.js";
import { waitUntil } from "./wait.js";

/** How long an answer may take on a machine with much else to do, in milliseconds. */
export const patience = 40_000;

/** Closes every editor and view without saving, so that a test begins from the files on disk. */
export async function closeAll(): Promise<void> {
  for (const document of vscode.workspace.textDocuments.filter(({ isDirty, uri }) => isDirty && uri.scheme !== "output")) {
    await vscode.window.showTextDocument(document);
    await vscode.commands.executeCommand(document.isUntitled ? "workbench.action.revertAndCloseActiveEditor" : "workbench.action.files.revert");
  }
  await vscode.commands.executeCommand("workbench.action.closeAllEditors");
  await waitUntil("every editor is closed", () => vscode.window.tabGroups.all.every(({ tabs }) => tabs.length === 0), patience);
}

/** Opens the shelter as it is on disk and waits until its two faults are marked. */
export async function openShelter(): Promise<vscode.TextEditor> {
  await closeAll();
  const editor = await openSample("landing-shelter.rootfast");
  await waitUntil("the faults are marked", () => errors(editor.document).length === 2, patience);
  return editor;
}

export const diagnostics = (document: vscode.TextDocument): vscode.Diagnostic[] => vscode.languages.getDiagnostics(document.uri);

export const errors = (document: vscode.TextDocument): vscode.Diagnostic[] =>
  diagnostics(document).filter(({ severity }) => severity === vscode.DiagnosticSeverity.Error);

/** The codes of the errors, sorted, as one text. */
export const errorCodes = (document: vscode.TextDocument): string => errors(document).map(({ code }) => String(code)).sort().join(" ");

/** Waits until the errors have these codes, in any order. */
export async function untilErrors(document: vscode.TextDocument, ...codes: readonly string[]): Promise<void> {
  const wanted = [...codes].sort().join(" ");
  await waitUntil(`the errors are "${wanted}"`, () => errorCodes(document) === wanted, patience).catch((error: Error) => {
    throw new Error(`${error.message}; they are "${errorCodes(document)}"`);
  });
}

/** The lines of a key, found through the keys above it by indentation of two spaces. */
function lineOf(document: vscode.TextDocument, path: readonly string[]): number {
  let line = 0;
  for (const [level, key] of path.entries()) {
    const begins = `${"  ".repeat(level)}${key}:`;
    while (line < document.lineCount && !document.lineAt(line).text.startsWith(begins)) line += 1;
  }
  if (line >= document.lineCount) throw new Error(`the notebook has no ${path.join(".")}`);
  return line;
}

export function keyRange(document: vscode.TextDocument, ...path: readonly string[]): vscode.Range {
  const line = lineOf(document, path);
  const start = 2 * (path.length - 1);
  return new vscode.Range(line, start, line, start + (path.at(-1) ?? "").length);
}

/** What stands behind the colon of a key on its line. */
export function valueRange(document: vscode.TextDocument, ...path: readonly string[]): vscode.Range {
  const { end } = keyRange(document, ...path);
  const { text } = document.lineAt(end.line);
  const start = text.length - text.slice(end.character + 1).trimStart().length;
  return new vscode.Range(end.line, start, end.line, text.trimEnd().length);
}

/** Writes another value behind a key, as one edit of the user's. */
export async function setValue(editor: vscode.TextEditor, path: readonly string[], value: string): Promise<void> {
  const range = valueRange(editor.document, ...path);
  if (!(await editor.edit((edit) => edit.replace(range, value)))) throw new Error(`the editor refused the edit of ${path.join(".")}`);
}

export const depthOfPier = ["foundations", "short pier", "depth"] as const;

/** Deep enough for the pier with a margin, and not so heavy that the ground below it gives way. */
export const sufficientDepth = "7 ft";
