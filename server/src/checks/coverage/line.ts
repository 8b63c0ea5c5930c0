import type { Support } from "../../project/model.js";
import type { Link } from "../contract.js";

/** Something the chain from roof to ground needs. */
export interface CoverageLine {
  /** Dotted and stable. */
  readonly id: string;
  readonly link: Link | "loads" | "footing" | "job";
  /** What it is, in one sentence. */
  readonly line: string;
  /** Ids of the checks and rules that do it, or of the loads; empty where nothing does. */
  readonly by: readonly string[];
  /** What of it is not done, as it is said beside a support; left out only where nothing is left. */
  readonly left: string | undefined;
  readonly applies: (support: Support) => boolean;
}

type Written = Omit<CoverageLine, "link" | "left" | "applies"> & { readonly left?: string; readonly applies?: CoverageLine["applies"] };

export const everywhere = (): boolean => true;

/** Lines of one part of the chain. One that nothing does, and that says no more, is left whole. */
export const linesOf = (link: CoverageLine["link"], applies: CoverageLine["applies"], written: readonly Written[]): readonly CoverageLine[] =>
  written.map((line) => ({ link, applies, ...line, left: line.left ?? (line.by.length === 0 ? line.line : undefined) }));

export const foundationKind = (support: Support): string | undefined => support.foundation?.fields.kind?.value;
export const isOnSoil = (support: Support): boolean => support.ground?.fields.kind?.value === "soil";
export const isOnRock = (support: Support): boolean => support.ground?.fields.kind?.value === "rock" || foundationKind(support) === "footing on rock";
export const isSeismic = (support: Support): boolean => ["C", "D", "E", "F"].includes(support.site["seismic design category"]?.value ?? "");
/** The seismic design category is none, or not known. */
export const mayShake = (support: Support): boolean => support.site["seismic design category"] === undefined || support.site["seismic design category"].value !== "A";
/** The roof's loads are followed to it: it has a column without reactions of its own. */
export const carriesRoof = (support: Support): boolean => support.column !== undefined && !support.column.fields.reactions && !support.column.fields.combined;
