/** What crosses the wire between the extension and its server beside the standard protocol. */
import type { Report, StructureReport, SupportReport } from "./report.js";

export const languageId = "rootfast";

/** Sent with the first request. */
export interface InitializationOptions {
  /** HTML tags a hover may carry, beside those of the client's capabilities. */
  readonly hoverTags?: readonly string[];
}

/** Client to server: everything the derivation view shows of one support. */
export const derivationRequest = "rootfast/derivation";
export interface DerivationParams {
  readonly uri: string;
  /** Path of the support, `columns.south`; left out: the first support of the notebook. */
  readonly subject?: string;
  /** Titles of the load derivations whose steps are wanted; the others come with their title alone. */
  readonly loads?: readonly string[];
}
export interface DerivationReply {
  /** Version of the text the numbers belong to. */
  readonly version: number;
  /** True while the text has errors and the numbers are those of the last readable text. */
  readonly stale: boolean;
  readonly structure?: Omit<StructureReport, "supports">;
  /** With steps and MathML. */
  readonly support?: SupportReport;
  /** Every support, for the list to choose from. */
  readonly subjects: readonly { readonly path: string; readonly name: string; readonly state: string; readonly ratio?: number }[];
  readonly cautions: readonly string[];
  /** Which way forces and moments are positive, drawn as SVG. */
  readonly signConvention: string;
}

/** Client to server: the summary documents of a notebook. */
export const summaryRequest = "rootfast/summary";
export interface SummaryParams {
  readonly uri: string;
}
export interface SummaryReply {
  readonly html: string;
  readonly markdown: string;
  /** Forces at every column, as comma-separated values. */
  readonly csv: string;
  /** File name without extension, beside the notebook. */
  readonly stem: string;
}

/** Client to server: text of a new notebook. */
export const starterRequest = "rootfast/starter";
export interface StarterParams {
  readonly kind: string;
}
export interface StarterReply {
  readonly text: string;
  readonly kinds: readonly { readonly kind: string; readonly label: string; readonly detail: string }[];
}

/** Server to client, after each set of diagnostics: the state in numbers, for the status bar and a view to renew itself. */
export const checkedNotification = "rootfast/checked";
export interface CheckedParams {
  readonly uri: string;
  readonly version: number;
  readonly stale: boolean;
  readonly counts: Readonly<Record<string, number>>;
  readonly problems: number;
  readonly worst?: { readonly state: string; readonly ratio?: number; readonly subject: string; readonly title: string };
}

/** Commands the server's lenses and hovers name. */
export const commands = {
  openDerivation: "rootfast.openDerivation",
  exportSummary: "rootfast.exportSummary",
  newNotebook: "rootfast.newNotebook",
} as const;

export interface OpenDerivationArgs {
  readonly uri: string;
  readonly subject: string;
  /** Id of a check to bring into view. */
  readonly check?: string;
}

export type { Report };
