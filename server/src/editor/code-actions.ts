/** Edits offered: the fixes that come with a problem, and the long form of a one-line record. */
import { CodeActionKind, type CodeAction, type Range } from "vscode-languageserver";
import { fieldAt } from "../notebook/field-at.js";
import { locate } from "../notebook/paths.js";
import type { Fix } from "../notebook/problem.js";
import { shortToLong } from "../notebook/short-to-long.js";
import { absolute } from "../notebook/tree.js";
import { valueAt } from "./hover.js";
import { rangeOf } from "./positions.js";
import type { Session } from "./sessions.js";

export function codeActionsFor(session: Session, range: Range): CodeAction[] {
  const start = session.lines.offsetAt(range.start);
  const end = session.lines.offsetAt(range.end);
  const fixes = session.checked.problems
    .filter((problem) => {
      const span = absolute(problem.span);
      return span.start <= end && start <= span.end;
    })
    .flatMap((problem) => (problem.fixes ?? []).map((fix, i) => action(session, fix, CodeActionKind.QuickFix, i === 0 && problem.fixes?.length === 1)));
  return [...fixes, ...longForm(session, start)];
}

function action(session: Session, fix: Fix, kind: CodeActionKind, preferred = false): CodeAction {
  return {
    title: fix.title,
    kind,
    isPreferred: preferred,
    edit: { changes: { [session.uri]: fix.edits.map(({ span, text }) => ({ range: rangeOf(span, session.lines), newText: text })) } },
  };
}

function longForm(session: Session, offset: number): CodeAction[] {
  const spot = locate(session.checked.parsed, offset);
  const document = session.checked.documents[spot.documentIndex];
  const field = fieldAt(spot.path)?.field;
  if (!document || field?.type !== "record") return [];
  const located = valueAt(document, spot.path);
  const fix = located && shortToLong(located, field);
  return fix ? [action(session, fix, CodeActionKind.RefactorRewrite)] : [];
}
