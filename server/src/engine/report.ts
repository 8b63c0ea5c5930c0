/** Builds the report: the same data for the command line, the view and the summary. */
import {
  reportVersion,
  type FindingReport,
  type Report,
  type State,
  type StructureReport,
  type SupportReport,
} from "../../../shared/report.js";
import { isRule, stateOrder, type AnyResult, type CheckResult, type RuleResult } from "../findings/result.js";
import { messageOf } from "../findings/message.js";
import type { Shape } from "../notebook/fields.js";
import { LineIndex } from "../notebook/lines.js";
import { notebook } from "../notebook/schema.js";
import { fieldAt } from "../notebook/field-at.js";
import { differencesOf, type Difference } from "../project/as-built.js";
import type { Assumption, Sourced, Support } from "../project/model.js";
import { format, formatBuildable } from "../units/format.js";
import type { KindName, UnitSystem } from "../units/kinds.js";
import { amount } from "./amount.js";
import { cautionsFor } from "./cautions.js";
import type { Checked, CheckedDocument } from "./check-text.js";
import { levelsTried } from "../checks/contract.js";
import { loadPathGraph } from "../checks/site/load-path-graph.js";
import { notCoveredText } from "../checks/coverage.js";
import type { Demand } from "../actions/demand.js";
import { columnsPlan } from "../drawing/columns-plan.js";
import { loadPathPictures } from "../drawing/load-path.js";
import type { Show } from "../drawing/picture.js";
import { picturesOf } from "../drawing/pictures.js";
import { picturesOfSupport } from "../drawing/support-pictures.js";
import { derive } from "./derive.js";
import { governingReport, loadsReport, reactionsReport } from "./load-report.js";
import { placeOf } from "./place.js";
import { stepReports } from "./steps.js";
import { countStates, resultsOf, worstFirst, worstOf } from "./worst.js";

/** Values beside a check, as its calculation writes them; sizes of a support as they are built. */
const showIn =
  (system: UnitSystem): Show =>
  (value, kind) =>
    format(value, kind, system);

const showBuilt =
  (system: UnitSystem): Show =>
  (value, kind) =>
    formatBuildable(value, kind, system);

export interface ReportOptions {
  readonly file: string;
  /** With the steps of every check. */
  readonly steps?: boolean;
  /** With MathML in the steps. */
  readonly mathml?: boolean;
  /** With drawings of the supports, or of their checks too. */
  readonly drawings?: "supports" | "supports and checks";
  /** Titles of the load derivations whose steps are wanted; left out: all of them. */
  readonly loads?: readonly string[];
  /** False leaves the supports out, for a view that asks for one of them apart. */
  readonly supports?: boolean;
}

export function buildReport(checked: Checked, options: ReportOptions): Report {
  const lines = new LineIndex(checked.text);
  return {
    rootfastReport: reportVersion,
    file: options.file,
    problems: checked.problems.map((problem) => ({
      code: problem.code,
      tier: problem.tier,
      severity: problem.severity,
      message: problem.message,
      place: placeOf(problem.span, lines),
    })),
    structures: checked.documents.map((document) => structureReport(document, lines, options)),
    cautions: cautionsFor(checked.documents.map(({ structure }) => structure)),
  };
}

export function structureReport(document: CheckedDocument, lines: LineIndex, options: ReportOptions): StructureReport {
  const { structure, system } = document;
  const wanted = (title: string) => options.loads === undefined || options.loads.includes(title);
  return {
    name: structure.project.name?.value ?? "",
    stage: structure.project.stage?.value,
    units: system,
    codes: [structure.codes.building, structure.codes.loads, structure.codes.concrete, structure.codes.steel].flatMap((code) => (code ? [code.value] : [])),
    criteria: criteriaOf(document),
    supports: options.supports === false ? [] : structure.supports.map((support) => supportReport(document, support, lines, options)),
    assumptions: assumptionsThatCount(document).map((assumption) => ({
      field: assumption.field,
      path: assumption.path,
      text: assumption.text,
      source: assumption.source,
      place: placeOf(assumption.span, lines),
    })),
    remarks: document.actions.information.map((item) => ({
      message: item.message((value, kind) => format(value, kind, system)),
      place: placeOf(item.at.span, lines),
    })),
    asBuilt: asBuiltOf(document, lines),
    loads: options.supports === false ? undefined : loadsReport(document),
    plan: options.drawings ? columnsPlan(structure, (value, kind) => format(value, kind, system)) : undefined,
    loadPath: options.drawings ? loadPathPictures(loadPathGraph(structure), structure.supports) : undefined,
    openItems: structure.confirm.map((item) => item.value),
    loadDerivations: options.steps
      ? document.actions.derivations().map((derivation) => ({ title: derivation.title, source: derivation.source, steps: wanted(derivation.title) ? stepReports(derivation.steps, system, options.mathml ?? false) : [] }))
      : undefined,
    counts: countStates(document),
  };
}

/** What was built otherwise than drawn, each entry once. */
export function differencesIn(document: CheckedDocument): readonly { readonly difference: Difference; readonly drawn: string; readonly built: string }[] {
  const entries = new Set(document.structure.supports.flatMap(({ base, foundation }) => [base?.fields, foundation?.fields]));
  return [...entries].flatMap((fields) =>
    (fields ? differencesOf(fields) : []).map((difference) => ({
      difference,
      drawn: difference.drawn ? shownField(difference.drawn, document.system) : "nothing",
      built: shownField(difference.built, document.system),
    })),
  );
}

const isPoint = (value: unknown): value is { readonly x: number; readonly y: number } => typeof value === "object" && value !== null && "x" in value && "y" in value;

function shownField({ path, value }: Sourced<unknown>, system: UnitSystem): string {
  const field = fieldAt(path.split("."))?.field;
  if (Array.isArray(value)) return value.map((item: Sourced<unknown>) => shownField(item, system)).join("; ");
  if (isPoint(value)) return [value.x, value.y].map((ordinate) => format(ordinate, path.startsWith("bases.") ? "length" : "distance", system)).join(", ");
  if (typeof value === "number") return field?.type === "quantity" ? format(value, field.kind, system) : String(value);
  return typeof value === "boolean" ? (value ? "yes" : "no") : String(value);
}

const asBuiltOf = (document: CheckedDocument, lines: LineIndex): StructureReport["asBuilt"] =>
  differencesIn(document).map(({ difference: { built, noted }, drawn, built: shown }) => ({ path: built.path, drawn, built: shown, noted, place: placeOf(built.span, lines) }));

/** Assumptions about the whole, and those a check read; a default of a field nobody read would be noise. */
function assumptionsThatCount(document: CheckedDocument): readonly Assumption[] {
  const used = new Set(document.checks.flatMap((result) => result.used.flatMap((value) => (value.assumed ? [value.assumed] : []))));
  const whole = /^(?:project|codes|site|roof|columns)\./u;
  const loaded = document.structure.roof !== undefined;
  const seen = new Set<string>();
  return document.structure.assumptions.filter((assumption) => {
    const counts = used.has(assumption) || (whole.test(assumption.path) && (loaded || !/^(?:roof|columns|site)\./u.test(assumption.path)));
    if (!counts || seen.has(assumption.path)) return false;
    seen.add(assumption.path);
    return true;
  });
}

/** Criteria shown in another unit than their kind's. */
const criterionKinds: Readonly<Record<string, KindName>> = { "frost depth": "length", "edge depth": "length" };

type Fields = Readonly<Record<string, Sourced<unknown> | undefined>>;

function criteriaOf(document: CheckedDocument): StructureReport["criteria"] {
  const { structure, system } = document;
  const rows: { label: string; shown: string; assumed?: string }[] = [];
  const add = (section: string, shape: Shape, fields: Fields): void => {
    for (const [name, field] of Object.entries(fields)) {
      if (!field) continue;
      const { value } = field;
      const label = section ? `${section} ${name}` : name;
      const of = shape[name];
      if (of?.type === "record") add(label, of.fields as Shape, value as Fields);
      else if (of?.type === "named") for (const [entry, one] of value as ReadonlyMap<string, Sourced<Fields>>) add(`${label} ${entry}`, of.of.fields as Shape, one.value);
      else rows.push({ label, shown: shownCriterion(criterionKinds[name] ?? (of?.type === "quantity" ? of.kind : "number"), value, system), assumed: field.assumed?.source });
    }
  };
  const { codes, site, roof } = notebook.fields;
  add("code:", codes.fields, structure.codes);
  add("", site.fields, structure.site);
  if (structure.roof) add("roof", roof.fields, structure.roof.fields);
  return rows;
}

const shownCriterion = (kind: KindName, value: unknown, system: UnitSystem): string =>
  typeof value === "number" ? format(value, kind, system) : typeof value === "boolean" ? (value ? "yes" : "no") : String(value);

/** In words: what stands on what. */
export function describe(support: Support): string {
  const parts: string[] = [];
  const count = support.places.length;
  const section = support.column?.fields.section?.value;
  if (support.column) parts.push(`${count} column${count === 1 ? "" : "s"}${section ? ` ${section.name}` : ""}`);
  if (support.base) parts.push(`base ${support.base.name}`);
  if (support.foundation) parts.push(`${support.foundation.fields.kind?.value ?? "foundation"} "${support.foundation.name}"`);
  if (support.ground) parts.push(`in ${support.ground.name}`);
  return parts.join(", ");
}

export function supportReport(document: CheckedDocument, support: Support, lines: LineIndex, options: ReportOptions): SupportReport {
  const { system, actions } = document;
  const reaching = actions.of(support);
  const results = resultsOf(document, support);
  const worst = worstOf(results);
  return {
    path: support.path,
    name: support.name,
    description: describe(support),
    columns: support.places.length,
    place: placeOf(support.span, lines),
    worst: { state: worst.state, ratio: worst.ratio, check: worst.check },
    ...reactionsReport("unknown" in reaching ? [] : reaching, system),
    governing: "unknown" in reaching ? [] : governingReport(support, reaching, system),
    noActions: "unknown" in reaching ? reaching.unknown : undefined,
    findings: worstFirst(results).map((result) => findingReport(document, result, lines, options)),
    notCovered: (document.notCovered.get(support) ?? []).map((line) => ({ id: line.id, text: notCoveredText(line) })),
    drawings: options.drawings ? picturesOfSupport(support, showBuilt(system)) : undefined,
  };
}

export function findingReport(document: CheckedDocument, result: AnyResult, lines: LineIndex, options: ReportOptions): FindingReport {
  return isRule(result) ? ruleReport(document, result, lines) : checkReport(document, result, lines, options);
}

function ruleReport(document: CheckedDocument, result: RuleResult, lines: LineIndex): FindingReport {
  return {
    check: result.rule.id,
    title: result.rule.title,
    link: result.rule.link,
    subject: result.support?.path ?? "structure",
    clause: result.rule.clause,
    state: result.state,
    message: messageOf(result, document.system),
    place: placeOf(result.at, lines),
    related: result.related.map((other) => ({ place: placeOf(other.span, lines), message: other.message })),
  };
}

function checkReport(document: CheckedDocument, result: CheckResult, lines: LineIndex, options: ReportOptions): FindingReport {
  const { check, weighed, support } = result;
  const { system } = document;
  const made = weighed !== undefined && result.state !== "not checked";
  return {
    check: check.id,
    title: check.title,
    link: check.link,
    subject: support.path,
    clause: check.clause,
    level: result.governing?.level ?? levelsTried(check, support).join(" and "),
    state: result.state,
    message: messageOf(result, system),
    demand: made ? amount(Math.max(weighed.demand, 0), weighed.quantity, system) : undefined,
    capacity: made ? amount(weighed.capacity, weighed.quantity, system) : undefined,
    ratio: made ? result.ratio : undefined,
    combination: result.governing?.label,
    column: support.places.length > 1 && result.governing ? { number: result.place + 1, of: support.places.length } : undefined,
    place: placeOf(result.at, lines),
    related: result.used.filter((used) => used.what !== "").map((used) => ({ place: placeOf(used.span, lines), message: used.what, field: used.path })),
    steps: options.steps ? stepReports(derive(result), system, options.mathml ?? false) : undefined,
    drawings: options.drawings === "supports and checks" ? picturesOf(result, showIn(system), strengthAt(document, support)) : undefined,
  };
}

/** Every strength combination at every column of a support. */
function strengthAt({ actions }: CheckedDocument, support: Support): readonly Demand[] {
  const reaching = actions.of(support);
  return "unknown" in reaching ? [] : reaching.flatMap(({ strength }) => strength);
}

export const worstState = (states: readonly State[]): State | undefined => stateOrder.find((state) => states.includes(state));
