/**
 * The protocol surface, as one table that can be read at once: what the server answers, and which feature answers it. Every
 * handler is fenced: a fault in one is logged and answered with nothing, and the server lives on.
 */
import { TextDocuments, TextDocumentSyncKind, type Connection, type InitializeParams, type InitializeResult } from "vscode-languageserver";
import { TextDocument } from "vscode-languageserver-textdocument";
import {
  checkedNotification,
  derivationRequest,
  starterRequest,
  summaryRequest,
  type DerivationParams,
  type InitializationOptions,
  type StarterParams,
  type SummaryParams,
} from "../../../shared/protocol.js";
import { warm } from "../formula/declare.js";
import { codeActionsFor } from "./code-actions.js";
import { completionsAt } from "./completion.js";
import { derivationFor } from "./derivation.js";
import { diagnosticsOf } from "./diagnostics.js";
import { hoverAt } from "./hover.js";
import { lensesOf } from "./lenses.js";
import { definitionAt, prepareRenameAt, referencesAt, renameAt } from "./navigation.js";
import { checkedOf } from "./notices.js";
import { Sessions, type Session } from "./sessions.js";
import { starterFor } from "./starter.js";
import { summaryFor } from "./summary.js";
import { symbolsOf } from "./symbols.js";

interface Client {
  html: boolean;
  lensRefresh: boolean;
}

/** What a client sends here is its own affair, so nothing is taken for granted. */
function hoverTags(options: unknown): readonly unknown[] {
  const tags = (options as InitializationOptions | null | undefined)?.hoverTags;
  return Array.isArray(tags) ? tags : [];
}

export function serve(connection: Connection): void {
  const client: Client = { html: false, lensRefresh: false };
  const documents = new TextDocuments(TextDocument);

  const sessions = new Sessions({
    checked(session) {
      void connection.sendDiagnostics({ uri: session.uri, version: session.version, diagnostics: fenced("diagnostics", [], () => diagnosticsOf(session)) });
      void connection.sendNotification(checkedNotification, checkedOf(session));
      if (client.lensRefresh) connection.sendRequest("workspace/codeLens/refresh").catch(() => undefined);
    },
    closed(uri) {
      void connection.sendDiagnostics({ uri, diagnostics: [] });
    },
  });

  function fenced<T>(what: string, otherwise: T, answer: () => T): T {
    try {
      return answer();
    } catch (error) {
      connection.console.error(`${what} failed: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
      return otherwise;
    }
  }

  const about = <P extends { textDocument: { uri: string } }, R>(what: string, otherwise: R, answer: (session: Session, params: P) => R) =>
    (params: P): R =>
      fenced(what, otherwise, () => {
        const session = sessions.get(params.textDocument.uri);
        return session ? answer(session, params) : otherwise;
      });

  connection.onInitialize((params: InitializeParams): InitializeResult => {
    const tags = [...(params.capabilities.general?.markdown?.allowedTags ?? []), ...hoverTags(params.initializationOptions)];
    client.html = ["sub", "sup", "br"].every((tag) => tags.includes(tag));
    client.lensRefresh = params.capabilities.workspace?.codeLens?.refreshSupport === true;
    return {
      serverInfo: { name: "rootfast" },
      capabilities: {
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
        hoverProvider: true,
        codeLensProvider: { resolveProvider: false },
        completionProvider: { triggerCharacters: [" ", ":"] },
        definitionProvider: true,
        referencesProvider: true,
        renameProvider: { prepareProvider: true },
        codeActionProvider: { codeActionKinds: ["quickfix", "refactor.rewrite"] },
        documentSymbolProvider: true,
      },
    };
  });
  connection.onInitialized(() => void setImmediate(warm));

  connection.onHover(about("hover", null, (session, { position }) => hoverAt(session, position, client.html)));
  connection.onCodeLens(about("lenses", [], lensesOf));
  connection.onCompletion(about("completion", [], (session, { position }) => completionsAt(session, position)));
  connection.onDefinition(about("definition", null, (session, { position }) => definitionAt(session, position)));
  connection.onReferences(about("references", [], (session, { position, context }) => referencesAt(session, position, context.includeDeclaration)));
  connection.onPrepareRename(about("rename", null, (session, { position }) => prepareRenameAt(session, position)));
  connection.onRenameRequest((params) => {
    const session = sessions.get(params.textDocument.uri);
    // A refused name is an answer the user must see, so it is not fenced.
    return session ? renameAt(session, params.position, params.newName) : null;
  });
  connection.onCodeAction(about("code actions", [], (session, { range }) => codeActionsFor(session, range)));
  connection.onDocumentSymbol(about("symbols", [], symbolsOf));

  connection.onRequest(derivationRequest, (params: DerivationParams) => fenced("derivation", null, () => derivationFor(sessions.get(params.uri), params.subject, params.loads)));
  connection.onRequest(summaryRequest, (params: SummaryParams) => fenced("summary", null, () => summaryFor(sessions.get(params.uri))));
  connection.onRequest(starterRequest, (params: StarterParams) => starterFor(params.kind));

  documents.onDidChangeContent(({ document }) => sessions.change(document.uri, document.version, document.getText()));
  documents.onDidClose(({ document }) => sessions.close(document.uri));
  documents.listen(connection);
  connection.listen();
}
