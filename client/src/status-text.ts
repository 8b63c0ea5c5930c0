/** What the status bar says of a notebook: words and numbers, from the counts the server sends after each check. */
import type { CheckedParams } from "../../shared/protocol.js";
import type { State } from "../../shared/report.js";
import { counted, ratioText, statesByWeight } from "./states.js";

const countOf = (checked: CheckedParams, state: State) => checked.counts[state] ?? 0;

const problemsIn = (count: number) => `${count} problem${count === 1 ? "" : "s"} in the text`;

/** States that keep a notebook from being called whole. */
const unsettled: readonly State[] = ["over", "near", "not checked", "accepted"];

/**
 * The line in the status bar. It says that all checked links hold only where some do, nothing is over, near, accepted or
 * unchecked, and the text is free of problems.
 */
export const statusText = (checked: CheckedParams): string => {
  const parts = unsettled.filter((state) => countOf(checked, state) > 0).map((state) => counted(state, countOf(checked, state)));
  if (checked.problems > 0) parts.push(problemsIn(checked.problems));
  if (parts.length === 0) parts.push(countOf(checked, "holds") > 0 ? "All checked links hold" : "Nothing checked yet");
  if (checked.stale) parts.push("numbers of the last readable text");
  return parts.join(" · ");
};

/** Lines of the tooltip: every count, the limit states not covered among them, and the link that governs. */
export const statusLines = (checked: CheckedParams): string[] => {
  const lines = statesByWeight.filter((state) => countOf(checked, state) > 0).map((state) => counted(state, countOf(checked, state)));
  if (checked.problems > 0) lines.push(problemsIn(checked.problems));
  if (checked.worst) {
    const { subject, title, state, ratio } = checked.worst;
    lines.push(`Governs: ${title}${subject === "" ? "" : ` at ${subject}`}, ${state}${ratio === undefined ? "" : ` (${ratioText(ratio)})`}`);
  }
  if (checked.stale) lines.push("The text has errors; these are the numbers of the last readable text.");
  if (lines.length === 0) lines.push("Nothing checked yet");
  return lines;
};
