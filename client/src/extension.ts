/** Activation: the server, the commands, the derivation view and the status bar. */
import * as vscode from "vscode";
import { startServer } from "./client.js";
import { registerExportSummary } from "./commands/export-summary.js";
import { registerNewNotebook } from "./commands/new-notebook.js";
import { registerOpenDerivation } from "./commands/open-derivation.js";
import { DerivationViews } from "./derivation-view.js";
import { Status } from "./status.js";

let stop: (() => Promise<void>) | undefined;

export const activate = (context: vscode.ExtensionContext): void => {
  const started = startServer(context);
  stop = started.stop;
  const { server } = started;
  const views = new DerivationViews(context.extensionUri, server);
  const status = new Status();
  context.subscriptions.push(
    status,
    views,
    server.onChecked((uri, checked) => status.update(uri, checked)),
    registerOpenDerivation(views),
    registerExportSummary(server),
    registerNewNotebook(server),
  );
};

export const deactivate = (): Promise<void> | undefined => stop?.();
