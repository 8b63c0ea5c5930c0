/** Opens an unsaved notebook with the text of a starter the user picks. */
import * as vscode from "vscode";
import { commands, languageId } from "../../../shared/protocol.js";
import type { Server } from "../client.js";
import { reporting } from "./reporting.js";

const newNotebook = async (server: Server): Promise<void> => {
  const { kinds } = await server.starter("");
  const picked = await vscode.window.showQuickPick(
    kinds.map(({ kind, label, detail }) => ({ label, detail, starter: kind })),
    { title: "New Rootfast Notebook", placeHolder: "What does the structure stand on?", matchOnDetail: true },
  );
  if (!picked) return;
  const { text } = await server.starter(picked.starter);
  const document = await vscode.workspace.openTextDocument({ language: languageId, content: text });
  await vscode.window.showTextDocument(document);
};

export const registerNewNotebook = (server: Server): vscode.Disposable =>
  vscode.commands.registerCommand(commands.newNotebook, reporting("The notebook could not be begun", () => newNotebook(server)));
