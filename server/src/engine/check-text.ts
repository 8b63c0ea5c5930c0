/**
 * The engine: text in, everything that can be said about it out. No I/O, no editor types, no exception. What an earlier text
 * gave is handed in again, so that an edit costs what it touches; the answer is the same as without it.
 */
import { actionsOf, type StructureActions } from "../actions/index.js";
import type { CheckDecl } from "../checks/contract.js";
import { notCovered, type CoverageLine } from "../checks/coverage.js";
import { allChecks, allRules } from "../checks/registry.js";
import { applyAccepted } from "../findings/accept.js";
import type { CheckResult, RuleResult } from "../findings/result.js";
import { rulesJudge } from "../findings/rules.js";
import { weighCheck, type Tally, type Weighing } from "../findings/weigh.js";
import { parseNotebook, type ParsedNotebook } from "../notebook/parse.js";
import type { Problem } from "../notebook/problem.js";
import { readNotebook, type NotebookReading } from "../notebook/read-notebook.js";
import { buildStructure } from "../project/structure.js";
import type { Structure, Support } from "../project/model.js";
import { unreadableEntries, withoutUnreadable } from "./unreadable.js";
import type { UnitSystem } from "../units/kinds.js";

export interface CheckedDocument {
  readonly reading: NotebookReading;
  readonly structure: Structure;
  readonly actions: StructureActions;
  readonly checks: readonly CheckResult[];
  readonly rules: readonly RuleResult[];
  readonly notCovered: ReadonlyMap<Support, readonly CoverageLine[]>;
  readonly system: UnitSystem;
  /** For the next text, by the path of the support. */
  readonly weighed: ReadonlyMap<string, WeighedSupport>;
}

/** What was found for one support, with all of it that it rests on. */
interface WeighedSupport {
  readonly support: Support;
  readonly reaching: ReturnType<StructureActions["of"]>;
  readonly nearFrom: number;
  readonly weighings: ReadonlyMap<CheckDecl, Weighing>;
  readonly results: readonly CheckResult[];
  readonly notCovered: readonly CoverageLine[];
}

/** What the work of one call was, for tests and the bench. */
export interface Work extends Tally {
  readonly blocksParsed: number;
  readonly entriesRead: number;
}

export interface Checked {
  readonly text: string;
  readonly parsed: ParsedNotebook;
  readonly documents: readonly CheckedDocument[];
  /** About the text, in the order of the tiers. */
  readonly problems: readonly Problem[];
  readonly work: Work;
}

export function checkText(text: string, earlier?: Checked): Checked {
  const parsed = parseNotebook(text, earlier?.parsed);
  const tally: Tally = { evaluations: 0, checksRun: 0 };
  const problems: Problem[] = [...parsed.problems];
  let entriesRead = 0;
  const documents: CheckedDocument[] = [];
  for (const index of parsed.documents.keys()) {
    const before = earlier?.documents[index];
    const reading = readNotebook(parsed, index, before?.reading);
    entriesRead += reading.entriesRead;
    problems.push(...reading.problems);
    const { document, accepting } = checkDocument(parsed, index, reading, tally, before);
    problems.push(...accepting);
    documents.push(document);
  }
  return { text, parsed, documents, problems, work: { ...tally, blocksParsed: parsed.parsedBlocks, entriesRead } };
}

const judgeRules = rulesJudge(allRules);

function checkDocument(
  parsed: ParsedNotebook,
  index: number,
  reading: NotebookReading,
  tally: Tally,
  before: CheckedDocument | undefined,
): { document: CheckedDocument; accepting: readonly Problem[] } {
  const structure = buildStructure(reading.values, parsed.documents[index].span, before?.structure);
  const actions = actionsOf(structure, before?.actions);
  const nearFrom = structure.project["near from"]?.value ?? 1;
  const weighed = new Map<string, WeighedSupport>();
  for (const support of structure.supports) weighed.set(support.path, weighSupport(support, actions.of(support), nearFrom, tally, before?.weighed.get(support.path)));
  const ruled = judgeRules(structure);
  const found = [...weighed.values()].map(({ results }) => results);
  const { checks, rules } = withoutUnreadable(found, ruled, structure, unreadableEntries([...parsed.problems, ...reading.problems], reading));
  const accepted = structure.accept.length > 0 ? applyAccepted<CheckResult | RuleResult>(structure, [...checks, ...rules]) : undefined;
  return {
    document: {
      reading,
      structure,
      actions,
      checks: accepted ? (accepted.results.slice(0, checks.length) as CheckResult[]) : checks,
      rules: accepted ? (accepted.results.slice(checks.length) as RuleResult[]) : rules,
      notCovered: new Map([...weighed.values()].map(({ support, notCovered: lines }) => [support, lines])),
      system: structure.project.units?.value ?? "US",
      weighed,
    },
    accepting: accepted?.problems ?? [],
  };
}

/** Runs the checks of a support; one that is the same as before, under the same loads, keeps what was found. */
function weighSupport(support: Support, reaching: WeighedSupport["reaching"], nearFrom: number, tally: Tally, before: WeighedSupport | undefined): WeighedSupport {
  if (before && before.support === support && before.reaching === reaching && before.nearFrom === nearFrom) return before;
  const weighings = new Map<CheckDecl, Weighing>();
  for (const check of allChecks) {
    if (applies(check.applies, support)) weighings.set(check, weighCheck(check, support, reaching, nearFrom, tally, before?.weighings.get(check)));
  }
  return { support, reaching, nearFrom, weighings, results: [...weighings.values()].map(({ result }) => result), notCovered: notCovered(support) };
}

function applies(asks: (support: Support) => boolean, support: Support): boolean {
  try {
    return asks(support);
  } catch {
    // A check that cannot tell is run, and then says itself what stands in the way.
    return true;
  }
}
