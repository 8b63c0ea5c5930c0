/** The connection to the language server. */
import * as vscode from "vscode";
import { LanguageClient, TransportKind, type LanguageClientOptions, type ServerOptions } from "vscode-languageclient/node";
import {
  checkedNotification,
  commands,
  derivationRequest,
  languageId,
  starterRequest,
  summaryRequest,
  type CheckedParams,
  type DerivationParams,
  type DerivationReply,
  type InitializationOptions,
  type StarterParams,
  type StarterReply,
  type SummaryParams,
  type SummaryReply,
} from "../../shared/protocol.js";

/** What the commands and the view ask of the server. */
export interface Server {
  derivation(uri: vscode.Uri, subject?: string, loads?: readonly string[]): Promise<DerivationReply>;
  summary(uri: vscode.Uri): Promise<SummaryReply>;
  starter(kind: string): Promise<StarterReply>;
  /** Called with the state of a notebook after each set of diagnostics. */
  onChecked(listener: (uri: vscode.Uri, checked: CheckedParams) => void): vscode.Disposable;
}

const newClient = (context: vscode.ExtensionContext): LanguageClient => {
  const module = vscode.Uri.joinPath(context.extensionUri, "dist", "server.js").fsPath;
  const server: ServerOptions = {
    run: { module, transport: TransportKind.ipc },
    debug: { module, transport: TransportKind.ipc, options: { execArgv: ["--nolazy", "--enable-source-maps"] } },
  };
  const options: LanguageClientOptions = {
    // Any scheme: a notebook may be unsaved or live in a virtual workspace.
    documentSelector: [{ language: languageId }],
    markdown: { isTrusted: { enabledCommands: [commands.openDerivation] }, supportHtml: true },
    // The editor draws these in a hover; the protocol's own list of tags, which the library fills in, leaves two of them out.
    initializationOptions: { hoverTags: ["sub", "sup", "br"] } satisfies InitializationOptions,
    outputChannelName: "Rootfast",
  };
  return new LanguageClient(languageId, "Rootfast", server, options);
};

/** The server answers null of a text it has not been given. */
const known = <R>(reply: R | null): R => {
  if (reply === null) throw new Error("the server has not read this notebook; open it in an editor first");
  return reply;
};

/** Starts the server; the returned object can be used at once, its requests wait for the start. */
export const startServer = (context: vscode.ExtensionContext): { readonly server: Server; readonly stop: () => Promise<void> } => {
  const client = newClient(context);
  const started = client.start();
  const { code2ProtocolConverter: toWire, protocol2CodeConverter: fromWire } = client;
  const ask = async <P, R>(method: string, params: P): Promise<R> => {
    await started;
    return client.sendRequest<R>(method, params);
  };
  const listeners = new Set<(uri: vscode.Uri, checked: CheckedParams) => void>();
  client.onNotification(checkedNotification, (checked: CheckedParams) => {
    const uri = fromWire.asUri(checked.uri);
    for (const listener of listeners) listener(uri, checked);
  });
  return {
    server: {
      derivation: async (uri, subject, loads) =>
        known(await ask<DerivationParams, DerivationReply | null>(derivationRequest, { uri: toWire.asUri(uri), subject, loads })),
      summary: async (uri) => known(await ask<SummaryParams, SummaryReply | null>(summaryRequest, { uri: toWire.asUri(uri) })),
      starter: (kind) => ask<StarterParams, StarterReply>(starterRequest, { kind }),
      onChecked: (listener) => {
        listeners.add(listener);
        return { dispose: () => listeners.delete(listener) };
      },
    },
    // Stopping a client that failed to start would report the same failure a second time.
    stop: () => started.then(
      () => client.stop(),
      () => undefined,
    ),
  };
};
