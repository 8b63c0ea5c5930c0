/** The derivation view: one panel beside each notebook, renewed after each check of its text. */
import * as vscode from "vscode";
import type { DerivationReply } from "../../shared/protocol.js";
import type { Place } from "../../shared/report.js";
import type { Server } from "./client.js";
import { pageHtml } from "./view-html.js";
import type { PageState, ToExtension, ToPage } from "./view/messages.js";

const viewType = "rootfast.derivation";

/** Least time between two renewals, milliseconds. */
const pause = 150;

const nameOf = (path: string): string => path.slice(path.indexOf(".") + 1);

class DerivationView {
  private subject: string | undefined;
  private check: string | undefined;
  private loads: readonly string[] = [];
  private latest: DerivationReply | undefined;
  private running = false;
  private again = false;
  private remark: string | undefined;
  private gone = false;
  /** Set while the page can take messages: it is there, and its tab is in front. */
  private ready = false;

  constructor(
    private readonly panel: vscode.WebviewPanel,
    readonly uri: vscode.Uri,
    private readonly server: Server,
    distUri: vscode.Uri,
  ) {
    panel.webview.options = { enableScripts: true, localResourceRoots: [distUri] };
    panel.webview.onDidReceiveMessage((message: ToExtension) => this.receive(message));
    panel.onDidDispose(() => (this.gone = true));
    panel.onDidChangeViewState(() => (this.ready &&= panel.visible));
    panel.webview.html = pageHtml(panel.webview, distUri);
  }

  show(subject: string | undefined, check?: string): void {
    if (subject !== undefined && subject !== this.subject) {
      this.subject = subject;
      this.latest = undefined;
    }
    this.check = check;
    this.panel.title = this.subject === undefined ? "Derivation" : `Derivation: ${nameOf(this.subject)}`;
    void this.renew();
  }

  reveal(): void {
    // The keyboard stays in the text, so that typing goes on while the numbers change beside it.
    this.panel.reveal(undefined, true);
  }

  /** Asks for the numbers again; a request that comes meanwhile is answered by one more round, not by a queue. */
  async renew(): Promise<void> {
    if (this.running) {
      this.again = true;
      return;
    }
    this.running = true;
    try {
      do {
        this.again = false;
        await this.renewOnce();
        // All the reasons of a support are much work; between two rounds the server belongs to the typing.
        await new Promise((resolve) => setTimeout(resolve, pause));
      } while (this.again && !this.gone);
    } finally {
      this.running = false;
    }
  }

  private async renewOnce(): Promise<void> {
    const asked = this.subject;
    try {
      const reply = await this.server.derivation(this.uri, asked, this.loads);
      if (this.gone || asked !== this.subject) return;
      this.latest = reply;
      this.remark = undefined;
      this.postLatest();
    } catch (error) {
      this.notice(`These numbers could not be renewed: ${error instanceof Error ? error.message : String(error)}`);
    }
  }

  notice(text: string): void {
    this.remark = text;
    this.post({ type: "notice", text });
  }

  private postLatest(): void {
    if (!this.latest || !this.ready) return;
    const subject = this.subject ?? this.latest.support?.path;
    const file = this.uri.path.slice(this.uri.path.lastIndexOf("/") + 1);
    this.post({ type: "show", uri: this.uri.toString(), file, subject, reply: this.latest, check: this.check });
    // Brought into view once; a renewal leaves the reader where they are.
    this.check = undefined;
  }

  private post(message: ToPage): void {
    if (!this.gone && this.ready) void this.panel.webview.postMessage(message);
  }

  private receive(message: ToExtension): void {
    switch (message.type) {
      case "ready":
        // A page is made anew each time its tab comes to the front.
        this.ready = true;
        this.postLatest();
        if (this.remark !== undefined) this.post({ type: "notice", text: this.remark });
        void this.renew();
        break;
      case "choose":
        this.show(message.subject);
        break;
      case "loads":
        this.loads = message.titles;
        void this.renew();
        break;
      case "reveal":
        void this.revealPlace(message.place);
        break;
    }
  }

  private async revealPlace(place: Place): Promise<void> {
    const range = new vscode.Range(place.line, place.character, place.endLine, place.endCharacter);
    const uri = this.uri.toString();
    const shown = vscode.window.visibleTextEditors.find((editor) => editor.document.uri.toString() === uri);
    await vscode.window.showTextDocument(this.uri, { selection: range, viewColumn: shown?.viewColumn ?? vscode.ViewColumn.One });
  }
}

export interface Wanted {
  /** Path of the support. */
  readonly subject?: string;
  /** Where no support is named: paths that may be one, the likeliest first; the notebook's first support where none is. */
  readonly maybe?: readonly string[];
  readonly check?: string;
}

export class DerivationViews implements vscode.Disposable, vscode.WebviewPanelSerializer<PageState> {
  private readonly views = new Map<string, DerivationView>();
  private readonly subscriptions: vscode.Disposable[];
  private readonly distUri: vscode.Uri;

  constructor(
    extensionUri: vscode.Uri,
    private readonly server: Server,
  ) {
    this.distUri = vscode.Uri.joinPath(extensionUri, "dist");
    this.subscriptions = [
      vscode.window.registerWebviewPanelSerializer(viewType, this),
      server.onChecked((uri) => void this.views.get(uri.toString())?.renew()),
      vscode.workspace.onDidCloseTextDocument(({ uri }) =>
        this.views.get(uri.toString())?.notice("The notebook is closed; these are its last numbers. Open it to renew them."),
      ),
    ];
  }

  async open(uri: vscode.Uri, { subject: named, maybe = [], check }: Wanted): Promise<void> {
    // The server knows the notebooks that are open.
    await vscode.workspace.openTextDocument(uri);
    const subject = named ?? (await this.supportAmong(uri, maybe, this.views.has(uri.toString())));
    const view = this.views.get(uri.toString()) ?? this.add(uri, this.newPanel());
    view.show(subject, check);
    view.reveal();
  }

  /** The first candidate that is a support; failing that the first support, unless a view already shows one. */
  private async supportAmong(uri: vscode.Uri, candidates: readonly string[], shown: boolean): Promise<string | undefined> {
    const { subjects } = await this.server.derivation(uri);
    return candidates.find((path) => subjects.some((support) => support.path === path)) ?? (shown ? undefined : subjects[0]?.path);
  }

  /** Called by the editor with the state a page kept, after a reload of the window. */
  async deserializeWebviewPanel(panel: vscode.WebviewPanel, state: PageState | undefined): Promise<void> {
    if (typeof state?.uri !== "string") {
      panel.dispose();
      return;
    }
    const uri = vscode.Uri.parse(state.uri);
    const view = this.add(uri, panel);
    try {
      await vscode.workspace.openTextDocument(uri);
      view.show(state.subject);
    } catch {
      view.notice("The notebook cannot be opened; it may have been moved. Close this view and open the derivation from the notebook.");
    }
  }

  private newPanel(): vscode.WebviewPanel {
    return vscode.window.createWebviewPanel(viewType, "Derivation", { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true }, { enableFindWidget: true });
  }

  private add(uri: vscode.Uri, panel: vscode.WebviewPanel): DerivationView {
    const key = uri.toString();
    const view = new DerivationView(panel, uri, this.server, this.distUri);
    this.views.set(key, view);
    panel.onDidDispose(() => {
      if (this.views.get(key) === view) this.views.delete(key);
    });
    return view;
  }

  dispose(): void {
    for (const subscription of this.subscriptions) subscription.dispose();
  }
}
