/** Problems and findings as diagnostics, each on the value that can fix it. */
import { DiagnosticSeverity, type Diagnostic } from "vscode-languageserver";
import { idOf, isRule, titleOf, type AnyResult, type State } from "../findings/result.js";
import { messageOf, whyNot } from "../findings/message.js";
import type { CheckedDocument } from "../engine/check-text.js";
import { differencesIn } from "../engine/report.js";
import type { Span } from "../notebook/tree.js";
import { format } from "../units/format.js";
import { rangeOf } from "./positions.js";
import type { Session } from "./sessions.js";

/** The editor cannot take in more at once, and a flood hides the first cause. */
const most = 500;

const severities = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
} as const;

const severityOf: Readonly<Record<State, DiagnosticSeverity | undefined>> = {
  over: DiagnosticSeverity.Error,
  "not checked": DiagnosticSeverity.Warning,
  near: DiagnosticSeverity.Information,
  accepted: DiagnosticSeverity.Information,
  holds: undefined,
  "not covered": DiagnosticSeverity.Hint,
};

export function diagnosticsOf(session: Session): Diagnostic[] {
  const { checked, lines, uri } = session;
  const related = (span: Span, message: string) => ({ location: { uri, range: rangeOf(span, lines) }, message });
  const found: Diagnostic[] = checked.problems.map((problem) => ({
    range: rangeOf(problem.span, lines),
    severity: severities[problem.severity],
    code: problem.code,
    source: "rootfast",
    message: problem.message,
    relatedInformation: problem.related?.map((other) => related(other.span, other.message)),
  }));
  if (!session.stale) {
    for (const document of checked.documents) found.push(...findingsOf(document, session));
  }
  if (found.length > most) {
    const left = found.length - most;
    found.length = most;
    found.push({
      range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
      severity: DiagnosticSeverity.Information,
      code: "file.many-messages",
      source: "rootfast",
      message: `${left} more messages are held back until these are dealt with.`,
    });
  }
  return found;
}

function findingsOf(document: CheckedDocument, session: Session): Diagnostic[] {
  const { lines, uri } = session;
  const found: Diagnostic[] = [];
  const unknown = new Map<string, { span: Span; titles: string[]; because: string; code: string }>();
  for (const result of [...document.checks, ...document.rules] as AnyResult[]) {
    const severity = severityOf[result.state];
    // What an error of the text stands in the way of is said by that error.
    if (severity === undefined || result.isEcho) continue;
    if (result.state === "not checked" && !isRule(result)) {
      const because = whyNot(result, document.system);
      const key = `${result.support.path} ${because}`;
      const group = unknown.get(key);
      if (group) group.titles.push(titleOf(result));
      else unknown.set(key, { span: because.startsWith("needs ") ? result.support.span : result.at, titles: [titleOf(result)], because, code: idOf(result) });
      continue;
    }
    found.push({
      range: rangeOf(result.at, lines),
      severity,
      code: idOf(result),
      source: "rootfast",
      message: `${messageOf(result, document.system)}${isRule(result) ? ` [${result.rule.clause}]` : ` [${result.check.clause}]`}`,
      relatedInformation: relatedOf(result).map(({ span, message }) => ({ location: { uri, range: rangeOf(span, lines) }, message })),
    });
  }
  for (const group of unknown.values()) {
    found.push({
      range: rangeOf(group.span, lines),
      severity: DiagnosticSeverity.Warning,
      code: group.code,
      source: "rootfast",
      message: `Not checked: ${group.because}. (${group.titles.join("; ")})`,
    });
  }
  for (const { difference, drawn, built } of differencesIn(document)) {
    found.push({
      range: rangeOf(difference.built.span, lines),
      severity: DiagnosticSeverity.Information,
      code: "as-built.differs",
      source: "rootfast",
      message: `Built ${built}, drawn ${drawn}. The checks run on what was built.`,
      relatedInformation: difference.drawn && [{ location: { uri, range: rangeOf(difference.drawn.span, lines) }, message: "as drawn" }],
    });
  }
  for (const item of document.actions.information) {
    found.push({
      range: rangeOf(item.at.span, lines),
      severity: DiagnosticSeverity.Information,
      code: "loads.remark",
      source: "rootfast",
      message: item.message((value, kind) => format(value, kind, document.system)),
    });
  }
  for (const [support, listed] of document.notCovered) {
    if (listed.length === 0) continue;
    found.push({
      range: rangeOf(support.span, lines),
      severity: DiagnosticSeverity.Hint,
      code: "support.not-covered",
      source: "rootfast",
      // The list is long and would stand above the checks in the hover, which ends with it.
      message: `${listed.length} limit states of "${support.name}" are not covered and need another look; the hover and the derivation list them.`,
    });
  }
  return found;
}

/** The other values the result rests on, nearest relations first, without those in the same place. */
export function relatedOf(result: AnyResult): readonly { span: Span; message: string }[] {
  if (isRule(result)) return result.related;
  const seen = new Set<string>();
  return result.used
    .filter((used) => used.what !== "" && !used.assumed && !(used.span.block === result.at.block && used.span.start === result.at.start))
    .filter((used) => !seen.has(used.path) && seen.add(used.path))
    .slice(0, 8)
    .map((used) => ({ span: used.span, message: used.what }));
}
