/** Writes the summary of a notebook beside it, as HTML and as Markdown, and the forces at its columns as CSV. */
import * as vscode from "vscode";
import { commands, languageId } from "../../../shared/protocol.js";
import type { Server } from "../client.js";
import { replaceFile } from "../replace-file.js";
import { reporting } from "./reporting.js";

interface Target {
  readonly folder: vscode.Uri;
  readonly stem: string;
}

const targetFor = async (document: vscode.TextDocument, stem: string): Promise<Target | undefined> => {
  if (!document.isUntitled) return { folder: vscode.Uri.joinPath(document.uri, ".."), stem };
  const workspace = vscode.workspace.workspaceFolders?.[0]?.uri;
  const chosen = await vscode.window.showSaveDialog({
    title: "Where to write the summary of the unsaved notebook",
    defaultUri: workspace && vscode.Uri.joinPath(workspace, `${stem}.md`),
    filters: { Markdown: ["md"] },
  });
  if (!chosen) return undefined;
  const name = chosen.path.slice(chosen.path.lastIndexOf("/") + 1);
  return { folder: vscode.Uri.joinPath(chosen, ".."), stem: name.replace(/\.(?:md|html?)$/iu, "") };
};

/** A browser shows the page where the file is on this machine; elsewhere its text is opened. */
const openHtml = async (uri: vscode.Uri): Promise<void> => {
  const local = uri.scheme === "file" && vscode.env.remoteName === undefined && vscode.env.uiKind === vscode.UIKind.Desktop;
  if (local && (await vscode.env.openExternal(uri))) return;
  await vscode.window.showTextDocument(uri, { viewColumn: vscode.ViewColumn.Beside });
};

const notebookFor = async (uri: unknown): Promise<vscode.TextDocument | undefined> => {
  const document = uri instanceof vscode.Uri ? await vscode.workspace.openTextDocument(uri) : vscode.window.activeTextEditor?.document;
  return document?.languageId === languageId ? document : undefined;
};

const exportSummary = async (server: Server, uri: unknown): Promise<void> => {
  const document = await notebookFor(uri);
  if (!document) {
    void vscode.window.showInformationMessage("Open a Rootfast notebook first; its summary is written beside it.");
    return;
  }
  const { html, markdown, csv, stem } = await server.summary(document.uri);
  const target = await targetFor(document, stem);
  if (!target) return;
  const file = (extension: string) => vscode.Uri.joinPath(target.folder, `${target.stem}.${extension}`);
  await replaceFile(file("html"), html);
  await replaceFile(file("md"), markdown);
  await replaceFile(file("csv"), csv);
  await vscode.window.showTextDocument(file("md"), { viewColumn: vscode.ViewColumn.Beside, preview: false });
  // Not awaited: the command is done, and the message may stay as long as it likes.
  void vscode.window.showInformationMessage(`The summary is in ${target.stem}.md and ${target.stem}.html, the forces at the columns in ${target.stem}.csv.`, "Open HTML").then((answer) => {
    if (answer === "Open HTML") void openHtml(file("html"));
  });
};

export const registerExportSummary = (server: Server): vscode.Disposable =>
  vscode.commands.registerCommand(
    commands.exportSummary,
    reporting("The summary could not be written", (uri?: unknown) => exportSummary(server, uri)),
  );
