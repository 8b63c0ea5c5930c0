/**
 * The report: what one notebook gives, as plain data. `rootfast check --format json` prints it, the derivation view and the
 * summary are made from it. Numbers are SI; `shown` is the same value as the notebook's unit system shows it.
 */
export const reportVersion = 1;

/**
 * holds: capacity is enough. near: enough, within the margin the notebook sets. over: not enough. not checked: an input or the
 * method's range stands in the way. not covered: a known limit state the tool does not do. accepted: over, and somebody wrote why.
 */
export type State = "holds" | "near" | "over" | "not checked" | "not covered" | "accepted";

export interface Place {
  /** Zero-based, UTF-16, as editors count. */
  readonly line: number;
  readonly character: number;
  readonly endLine: number;
  readonly endCharacter: number;
}

export interface Amount {
  readonly value: number;
  /** SI unit of `value`. */
  readonly unit: string;
  /** In the notebook's unit system, with unit. */
  readonly shown: string;
}

export interface SymbolReport extends Amount {
  readonly symbol: string;
  readonly meaning: string;
  /** Notebook field it is read from, where it is. */
  readonly field?: string;
}

export type StepReport =
  | {
      readonly type: "formula";
      readonly id: string;
      readonly source: string;
      readonly result: SymbolReport;
      /** The symbols on the right-hand side, constants included. */
      readonly symbols: readonly SymbolReport[];
      /** One line each, with Unicode signs: the formula, the formula with values, the result. */
      readonly plain: { readonly formula: string; readonly substituted: string; readonly result: string };
      /** MathML of the same three; left out of JSON unless asked for. */
      readonly mathml?: { readonly formula: string; readonly substituted: string; readonly result: string };
    }
  | {
      readonly type: "routine";
      readonly id: string;
      readonly title: string;
      readonly method: string;
      readonly source: string;
      readonly given: readonly SymbolReport[];
      readonly found: readonly SymbolReport[];
    }
  | { readonly type: "note"; readonly text: string };

export interface FindingReport {
  /** Id of the check or rule. */
  readonly check: string;
  readonly title: string;
  readonly link: string;
  /** Path of the support, `columns.south`. */
  readonly subject: string;
  readonly clause: string;
  readonly level?: string;
  readonly state: State;
  /** One or two sentences in trade words, number first. */
  readonly message: string;
  readonly demand?: Amount;
  readonly capacity?: Amount;
  /** Demand over capacity; left out where the check was not made. */
  readonly ratio?: number;
  /** The governing combination, named by its terms and cases. */
  readonly combination?: string;
  /** Which column of the line governs, from 1, and of how many. */
  readonly column?: { readonly number: number; readonly of: number };
  readonly place: Place;
  readonly related?: readonly { readonly place: Place; readonly message: string; readonly field?: string }[];
  readonly steps?: readonly StepReport[];
  readonly drawings?: readonly DrawingReport[];
}

/** A drawing to scale, as SVG in the color of the text around it. */
export interface DrawingReport {
  readonly svg: string;
  readonly caption: string;
}

export interface ProblemReport {
  readonly code: string;
  readonly tier: string;
  readonly severity: string;
  readonly message: string;
  readonly place: Place;
}

export interface ForcesReport {
  readonly P: Amount;
  readonly Vx: Amount;
  readonly Vy: Amount;
  readonly Mx: Amount;
  readonly My: Amount;
  /** Torsion about the column's own axis; left out where there is none. */
  readonly Mz?: Amount;
}

/** Forces of the case or combination in which one component is the largest or the smallest. */
export interface GoverningForces {
  readonly level: string;
  readonly section: string;
  readonly component: string;
  readonly extreme: "largest" | "smallest";
  readonly column: number;
  readonly combination: string;
  readonly forces: ForcesReport;
}

/** One load case on the roof, with where each of its pressures comes from. */
export interface LoadCaseReport {
  readonly id: string;
  readonly title: string;
  readonly type: string;
  readonly source: string;
  /** In words, why it is information only. */
  readonly outside?: string;
  readonly parts: readonly {
    readonly where: string;
    readonly coefficient?: { readonly symbol: string; readonly value: number };
    /** Positive down. */
    readonly pressure?: Amount;
    readonly pushX?: Amount;
    readonly pushY?: Amount;
    readonly read: string;
  }[];
  /** On the whole roof, about its middle at mean height; P is positive down. */
  readonly total: ForcesReport;
}

export interface SupportReport {
  readonly path: string;
  readonly name: string;
  /** In words: column section, base, foundation, ground. */
  readonly description: string;
  readonly columns: number;
  readonly place: Place;
  readonly worst: { readonly state: State; readonly ratio?: number; readonly check?: string };
  /** Reactions at each column base, by load case; uplift is a negative P. `cells` are its forces in the units of `reactionHeads`. */
  readonly reactions: readonly { readonly column: number; readonly caseId: string; readonly case: string; readonly type: string; readonly base: ForcesReport; readonly cells: readonly string[] }[];
  /** P, Vx, Vy, Mx and My of the reactions, each with the one unit its numbers stand in. */
  readonly reactionHeads: readonly string[];
  /** At strength at the base, and at allowable level at the underside of the foundation. */
  readonly governing: readonly GoverningForces[];
  readonly noActions?: string;
  readonly findings: readonly FindingReport[];
  readonly notCovered: readonly { readonly id: string; readonly text: string }[];
  /** Of the support as a whole. */
  readonly drawings?: readonly DrawingReport[];
}

export interface StructureReport {
  /** The columns seen from above, with their numbers. */
  readonly plan?: DrawingReport;
  /** The load path, roof to ground, drawn. */
  readonly loadPath?: readonly DrawingReport[];
  readonly name: string;
  readonly stage?: string;
  readonly units: "US" | "SI";
  readonly codes: readonly string[];
  readonly criteria: readonly { readonly label: string; readonly shown: string; readonly assumed?: string }[];
  readonly supports: readonly SupportReport[];
  readonly assumptions: readonly { readonly field: string; readonly path: string; readonly text: string; readonly source: string; readonly place: Place }[];
  /** Worth knowing about the loads, and no finding: a stated load that is not used yet, a result outside the range of a figure. */
  readonly remarks: readonly { readonly message: string; readonly place: Place }[];
  /** Values that were built otherwise than drawn; the checks run on what was built. */
  readonly asBuilt: readonly { readonly path: string; readonly drawn: string; readonly built: string; readonly noted?: string; readonly place: Place }[];
  /** The loads of the roof, where it is described and they are known. */
  readonly loads?: { readonly velocityPressure: Amount; readonly velocityPressureSource: string; readonly cases: readonly LoadCaseReport[] };
  readonly openItems: readonly string[];
  readonly loadDerivations?: readonly { readonly title: string; readonly source: string; readonly steps: readonly StepReport[] }[];
  readonly counts: Readonly<Record<State, number>>;
}

export interface Report {
  readonly rootfastReport: typeof reportVersion;
  readonly file: string;
  readonly problems: readonly ProblemReport[];
  readonly structures: readonly StructureReport[];
  /** The cautions that go wherever results leave the editor. */
  readonly cautions: readonly string[];
}
