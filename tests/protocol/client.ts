/**
 * A client of the real server, over its standard streams. It knows what the server may say; a message nobody expected, one
 * nobody looked at, a word on standard error or an early end makes `end` fail.
 */
import { spawn, type ChildProcessWithoutNullStreams } from "node:child_process";
import { createMessageConnection, StreamMessageReader, StreamMessageWriter, type MessageConnection } from "vscode-jsonrpc/node";
import type { CodeAction, CodeLens, CompletionItem, Diagnostic, DocumentSymbol, Hover, InitializeResult, Location, WorkspaceEdit } from "vscode-languageserver";
import type { CheckedParams, DerivationReply, StarterReply, SummaryReply } from "../../shared/protocol.js";
import { applyEdits, cursorIn, positionAt, type Position, type Range, type TextEdit } from "./text.js";

export interface Published {
  readonly uri: string;
  readonly version?: number;
  readonly diagnostics: readonly Diagnostic[];
}

/** One set of diagnostics with the state that follows it. */
export interface Answer extends Published {
  readonly checked?: CheckedParams;
}

export interface ClientOptions {
  /** Whether hovers may hold sub and sup. */
  readonly html?: boolean;
  readonly lensRefresh?: boolean;
}

/** A stretch by offset, and what comes in its place. */
export interface Change {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

const patience = 30_000;

export class Client {
  /** The reply to `initialize`. */
  initialized!: InitializeResult;
  private readonly connection: MessageConnection;
  private readonly complaints: string[] = [];
  private readonly inbox: Answer[] = [];
  private readonly waiting: (() => void)[] = [];
  private readonly exited: Promise<number | null>;
  private opened = 0;
  private refreshes = 0;
  private answers = 0;
  private ending = false;

  private constructor(
    private readonly child: ChildProcessWithoutNullStreams,
    private readonly options: ClientOptions,
  ) {
    this.connection = createMessageConnection(new StreamMessageReader(child.stdout), new StreamMessageWriter(child.stdin));
    child.stderr.setEncoding("utf8").on("data", (text: string) => this.complain(`on standard error: ${text}`));
    this.exited = new Promise((resolve) => {
      child.on("exit", (code) => {
        if (!this.ending) this.complain(`the server ended with code ${code}`);
        resolve(code);
      });
    });
    this.connection.onError(([error]) => this.complain(`the connection failed: ${error.message}`));
    this.connection.onNotification((method, params) => this.receive(method, params));
    this.connection.onRequest((method) => {
      if (method !== "workspace/codeLens/refresh" || options.lensRefresh === false) this.complain(`an unexpected request: ${method}`);
      this.refreshes += 1;
      return null;
    });
    this.connection.listen();
  }

  /** Starts the server at this path and gets as far as `initialized`. */
  static async start(server: string, options: ClientOptions = {}): Promise<Client> {
    const client = new Client(spawn(process.execPath, [server, "--stdio"]), options);
    client.initialized = await client.request("initialize", {
      processId: process.pid,
      rootUri: null,
      capabilities: {
        general: options.html ? { markdown: { parser: "test", allowedTags: ["sub", "sup", "br", "table", "span"] } } : {},
        workspace: { codeLens: { refreshSupport: options.lensRefresh !== false } },
        textDocument: { publishDiagnostics: { versionSupport: true, relatedInformation: true } },
      },
    });
    client.notify("initialized", {});
    return client;
  }

  request<R>(method: string, params: unknown): Promise<R> {
    return this.connection.sendRequest(method, params) as Promise<R>;
  }

  notify(method: string, params: unknown): void {
    void this.connection.sendNotification(method, params);
  }

  /** Opens a text under a name of its own; its first answer is for the caller to take. */
  open(text: string, uri = `file:///notebooks/${(this.opened += 1)}.rootfast`): OpenText {
    this.notify("textDocument/didOpen", { textDocument: { uri, languageId: "rootfast", version: 1, text } });
    return new OpenText(this, uri, text);
  }

  /** Takes the next answer about this text. */
  async next(uri: string): Promise<Answer> {
    const began = Date.now();
    for (;;) {
      const at = this.inbox.findIndex((answer) => answer.uri === uri && (answer.checked !== undefined || answer.version === undefined));
      if (at >= 0) return this.inbox.splice(at, 1)[0];
      if (Date.now() - began > patience) throw new Error(`No diagnostics of ${uri} came. ${this.complaints.join("\n")}`);
      await this.something();
    }
  }

  /** Shuts the server down and fails on everything that should not have been. */
  async end(): Promise<void> {
    await this.request("shutdown", undefined);
    for (const answer of this.inbox) this.complain(`nobody asked for the diagnostics of ${answer.uri}, version ${answer.version}`);
    if (this.options.lensRefresh !== false && this.refreshes !== this.answers) this.complain(`${this.answers} texts were checked and ${this.refreshes} refreshes of the lenses asked for`);
    this.ending = true;
    this.notify("exit", undefined);
    const code = await this.exited;
    this.connection.dispose();
    if (code !== 0) this.complain(`the server ended with code ${code}`);
    if (this.complaints.length > 0) throw new Error(this.complaints.join("\n"));
  }

  /** Ends the process without asking it; for after a failure. */
  kill(): void {
    this.ending = true;
    this.child.kill();
  }

  private receive(method: string, params: unknown): void {
    if (method === "textDocument/publishDiagnostics") this.inbox.push(params as Published);
    else if (method === "rootfast/checked") this.pair(params as CheckedParams);
    else this.complain(`an unexpected notification: ${method} ${JSON.stringify(params)}`);
    for (const wake of this.waiting.splice(0)) wake();
  }

  /** The state in numbers comes right after the diagnostics it belongs to. */
  private pair(checked: CheckedParams): void {
    this.answers += 1;
    const at = this.inbox.findLastIndex((answer) => answer.uri === checked.uri && answer.version === checked.version && answer.checked === undefined);
    if (at < 0) this.complain(`a state without diagnostics: ${checked.uri}, version ${checked.version}`);
    else this.inbox[at] = { ...this.inbox[at], checked };
  }

  private complain(text: string): void {
    this.complaints.push(text);
    for (const wake of this.waiting.splice(0)) wake();
  }

  private async something(): Promise<void> {
    await new Promise<void>((resolve) => {
      const timer = setTimeout(resolve, 1000);
      this.waiting.push(() => {
        clearTimeout(timer);
        resolve();
      });
    });
  }
}

/** One open text, kept in step with what the server was told. */
export class OpenText {
  version = 1;

  constructor(
    readonly client: Client,
    readonly uri: string,
    public text: string,
  ) {}

  /** Replaces stretches by offset, in one notification, one change after the other. */
  edit(...changes: readonly Change[]): void {
    this.prepare(...changes)();
  }

  /** Makes the notification of an edit and gives what sends it, for measuring from that moment on. */
  prepare(...changes: readonly Change[]): () => void {
    this.version += 1;
    const contentChanges = changes.map(({ from, to, text }) => {
      const range: Range = { start: positionAt(this.text, from), end: positionAt(this.text, to) };
      this.text = this.text.slice(0, from) + text + this.text.slice(to);
      return { range, text };
    });
    const params = { textDocument: { uri: this.uri, version: this.version }, contentChanges };
    return () => this.client.notify("textDocument/didChange", params);
  }

  /** Replaces the one occurrence of a stretch. */
  replace(old: string, text: string): void {
    const from = cursorIn(this.text, `|${old}`);
    this.edit({ from, to: from + old.length, text });
  }

  /** Takes answers until that of the present version, and gives it; they have to come in order and end with it. */
  async answer(): Promise<Answer> {
    let last = 0;
    for (;;) {
      const answer = await this.client.next(this.uri);
      if (answer.version === undefined || answer.version <= last || answer.version > this.version) {
        throw new Error(`Diagnostics of version ${answer.version} came after ${last}, with the text at ${this.version}.`);
      }
      last = answer.version;
      if (last === this.version) return answer;
    }
  }

  async diagnostics(): Promise<readonly Diagnostic[]> {
    return (await this.answer()).diagnostics;
  }

  async close(): Promise<void> {
    this.client.notify("textDocument/didClose", { textDocument: { uri: this.uri } });
    const last = await this.client.next(this.uri);
    if (last.diagnostics.length > 0) throw new Error("Closing left diagnostics behind.");
  }

  position(marked: string): Position {
    return positionAt(this.text, cursorIn(this.text, marked));
  }

  private at<R>(method: string, position: Position, more: object = {}): Promise<R> {
    return this.client.request<R>(`textDocument/${method}`, { textDocument: { uri: this.uri }, position, ...more });
  }

  hoverAt(position: Position): Promise<Hover | null> {
    return this.at("hover", position);
  }

  /** The hover's Markdown at a `|`. */
  async hover(marked: string): Promise<string | null> {
    const hover = await this.hoverAt(this.position(marked));
    return hover === null ? null : (hover.contents as { value: string }).value;
  }

  completions(marked: string): Promise<CompletionItem[]> {
    return this.at("completion", this.position(marked));
  }

  definition(marked: string): Promise<Location | Location[] | null> {
    return this.at("definition", this.position(marked));
  }

  references(marked: string, includeDeclaration = true): Promise<Location[]> {
    return this.at("references", this.position(marked), { context: { includeDeclaration } });
  }

  prepareRename(marked: string): Promise<unknown> {
    return this.at("prepareRename", this.position(marked));
  }

  rename(marked: string, newName: string): Promise<WorkspaceEdit | null> {
    return this.at("rename", this.position(marked), { newName });
  }

  lenses(): Promise<CodeLens[]> {
    return this.client.request("textDocument/codeLens", { textDocument: { uri: this.uri } });
  }

  symbols(): Promise<DocumentSymbol[]> {
    return this.client.request("textDocument/documentSymbol", { textDocument: { uri: this.uri } });
  }

  async actions(range: Range, diagnostics: readonly Diagnostic[] = []): Promise<CodeAction[]> {
    return (await this.client.request<CodeAction[] | null>("textDocument/codeAction", { textDocument: { uri: this.uri }, range, context: { diagnostics } })) ?? [];
  }

  /** The text after an edit, which may touch nothing else. */
  applied(edit: WorkspaceEdit | null | undefined): string {
    const found = edit?.changes ? Object.entries(edit.changes) : (edit?.documentChanges ?? []).map((change) => ["edits" in change ? change.textDocument.uri : "", "edits" in change ? change.edits : []] as const);
    if (found.length !== 1 || found[0][0] !== this.uri) throw new Error(`The edit does not touch this text alone: ${JSON.stringify(edit)}`);
    return applyEdits(this.text, found[0][1] as TextEdit[]);
  }

  derivation(subject?: string): Promise<DerivationReply | null> {
    return this.client.request("rootfast/derivation", { uri: this.uri, subject });
  }

  summary(): Promise<SummaryReply | null> {
    return this.client.request("rootfast/summary", { uri: this.uri });
  }

  starter(kind: string): Promise<StarterReply> {
    return this.client.request("rootfast/starter", { kind });
  }
}
