/** Opens the derivation of a support beside its notebook. */
import * as vscode from "vscode";
import { commands, languageId, type OpenDerivationArgs } from "../../../shared/protocol.js";
import type { DerivationViews } from "../derivation-view.js";
import { subjectsAt } from "../subject-at.js";
import { reporting } from "./reporting.js";

const isArgs = (args: unknown): args is OpenDerivationArgs => {
  const { uri, subject, check } = (args ?? {}) as Partial<Record<keyof OpenDerivationArgs, unknown>>;
  return typeof uri === "string" && typeof subject === "string" && (check === undefined || typeof check === "string");
};

/** The command with arguments comes from a lens, a hover or the status bar; without, from the palette or a menu. */
const openDerivation = async (views: DerivationViews, args: unknown): Promise<void> => {
  if (isArgs(args)) {
    await views.open(vscode.Uri.parse(args.uri, true), { subject: args.subject === "" ? undefined : args.subject, check: args.check });
    return;
  }
  const editor = vscode.window.activeTextEditor;
  if (editor?.document.languageId !== languageId) {
    void vscode.window.showInformationMessage("Open a Rootfast notebook first; the derivation is of the support at the cursor.");
    return;
  }
  const lines = editor.document.getText().split(/\r\n|\r|\n/u);
  await views.open(editor.document.uri, { maybe: subjectsAt(lines, editor.selection.active.line) });
};

export const registerOpenDerivation = (views: DerivationViews): vscode.Disposable =>
  vscode.commands.registerCommand(
    commands.openDerivation,
    reporting("The derivation could not be opened", (args?: unknown) => openDerivation(views, args)),
  );
