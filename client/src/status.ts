/** The status bar item: the state of the notebook in the active editor. */
import * as vscode from "vscode";
import { commands, languageId, type CheckedParams } from "../../shared/protocol.js";
import { statusLines, statusText } from "./status-text.js";

export class Status implements vscode.Disposable {
  private readonly item = vscode.window.createStatusBarItem("rootfast.checked", vscode.StatusBarAlignment.Left, 10);
  private readonly latest = new Map<string, CheckedParams>();
  private readonly subscriptions: vscode.Disposable[];

  constructor() {
    this.item.name = "Rootfast checks";
    this.subscriptions = [
      this.item,
      vscode.window.onDidChangeActiveTextEditor(() => this.show()),
      vscode.workspace.onDidCloseTextDocument((document) => {
        this.latest.delete(document.uri.toString());
        this.show();
      }),
      vscode.workspace.onDidOpenTextDocument(() => this.show()),
    ];
    this.show();
  }

  /** Takes the counts of a notebook; `uri` as this editor writes it. */
  update(uri: vscode.Uri, checked: CheckedParams): void {
    this.latest.set(uri.toString(), checked);
    this.show();
  }

  private show(): void {
    const document = vscode.window.activeTextEditor?.document;
    if (document?.languageId !== languageId) {
      this.item.hide();
      return;
    }
    const uri = document.uri.toString();
    const checked = this.latest.get(uri);
    const text = checked ? statusText(checked) : "Checking";
    this.item.text = text;
    this.item.tooltip = checked ? statusLines(checked).join("\n") : "The notebook is being read.";
    this.item.accessibilityInformation = { label: `Rootfast: ${text}. Opens the derivation.`, role: "button" };
    const subject = checked?.worst?.subject;
    this.item.command = {
      command: commands.openDerivation,
      title: "Open the Derivation",
      arguments: subject === undefined ? [] : [{ uri, subject }],
    };
    this.item.show();
  }

  dispose(): void {
    for (const subscription of this.subscriptions) subscription.dispose();
  }
}
