/** The sample notebooks, which the runner has copied into the test's own workspace. */
import * as vscode from "vscode";

/** Opens a sample by its file name, or the first one, and shows it. Throws if the workspace holds none. */
export async function openSample(name = "*.rootfast"): Promise<vscode.TextEditor> {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  if (!folder) throw new Error("the test has no workspace");
  const found = await vscode.workspace.findFiles(new vscode.RelativePattern(folder, name));
  const [first] = found.sort((a, b) => a.path.localeCompare(b.path));
  if (!first) throw new Error(`the workspace ${folder.uri.fsPath} holds no ${name}`);
  return vscode.window.showTextDocument(first);
}
