/** What the status bar and an open view are told after each check. */
import type { CheckedParams } from "../../../shared/protocol.js";
import { countStates, worstOf } from "../engine/worst.js";
import { stateOrder, type AnyResult } from "../findings/result.js";
import type { Session } from "./sessions.js";

export function checkedOf(session: Session): CheckedParams {
  const { shown, checked, stale } = session;
  const counts = Object.fromEntries(stateOrder.map((state) => [state, 0]));
  for (const document of shown.documents) {
    for (const [state, count] of Object.entries(countStates(document))) counts[state] += count;
  }
  const worst = worstOf(shown.documents.flatMap((document): AnyResult[] => [...document.checks, ...document.rules]));
  return {
    uri: session.uri,
    version: session.version,
    stale,
    counts,
    problems: checked.problems.filter((problem) => problem.severity === "error").length,
    worst: worst.result && { state: worst.state, ratio: worst.ratio, subject: worst.result.support?.path ?? "", title: worst.title ?? "" },
  };
}
