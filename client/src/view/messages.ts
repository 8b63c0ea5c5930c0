/** What the derivation view's page and the extension say to each other. */
import type { DerivationReply } from "../../../shared/protocol.js";
import type { Place } from "../../../shared/report.js";

export type ToPage =
  /** The numbers to show; `check` is the one to bring into view. */
  | { readonly type: "show"; readonly uri: string; readonly file: string; readonly subject?: string; readonly reply: DerivationReply; readonly check?: string }
  /** A remark over the last numbers, which stay. */
  | { readonly type: "notice"; readonly text: string };

export type ToExtension =
  | { readonly type: "ready" }
  | { readonly type: "choose"; readonly subject: string }
  /** The load derivations that are open; their steps are sent for them alone. */
  | { readonly type: "loads"; readonly titles: readonly string[] }
  | { readonly type: "reveal"; readonly place: Place };

/** What a page keeps over a reload of the window. */
export interface PageState {
  readonly uri: string;
  readonly subject?: string;
  /** Whether the part of this key is open, where the reader decided it. */
  readonly open: Readonly<Record<string, boolean>>;
  readonly scroll: number;
}
