/** The lenses of a notebook, by the entry they stand over. */
import * as vscode from "vscode";

/** Titles by the text of the line below the lens, `south`. */
export async function lensTitles(document: vscode.TextDocument): Promise<Map<string, string>> {
  const lenses = await vscode.commands.executeCommand<vscode.CodeLens[]>("vscode.executeCodeLensProvider", document.uri);
  return new Map(lenses.map(({ range, command }) => [document.getText(range), command?.title ?? ""]));
}
