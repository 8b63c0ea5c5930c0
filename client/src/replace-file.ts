/** Writing a file so that a reader sees the old text or the new one, never half of it. */
import { rename } from "node:fs/promises";
import * as vscode from "vscode";

/**
 * Writes under a temporary name in the same folder, then renames over the old file.
 * @throws where the folder cannot be written; the old file is then as it was.
 */
export const replaceFile = async (file: vscode.Uri, text: string): Promise<void> => {
  const { fs } = vscode.workspace;
  const name = file.path.slice(file.path.lastIndexOf("/") + 1);
  const mark = Math.random().toString(36).slice(2, 10);
  const temporary = vscode.Uri.joinPath(file, "..", `.${name}.${mark}.tmp`);
  try {
    await fs.writeFile(temporary, new TextEncoder().encode(text));
    // The editor's own rename removes the old file first, and for that moment there would be none.
    if (file.scheme === "file") await rename(temporary.fsPath, file.fsPath);
    else await fs.rename(temporary, file, { overwrite: true });
  } catch (error) {
    await fs.delete(temporary).then(undefined, () => undefined);
    throw error;
  }
};
