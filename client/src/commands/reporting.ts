/** Turns a failure of a command into one message that says what was not done. */
import * as vscode from "vscode";

export const reporting =
  <A extends readonly unknown[]>(what: string, run: (...args: A) => Promise<unknown>) =>
  async (...args: A): Promise<void> => {
    try {
      await run(...args);
    } catch (error) {
      void vscode.window.showErrorMessage(`${what}: ${error instanceof Error ? error.message : String(error)}`);
    }
  };
