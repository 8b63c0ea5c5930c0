/** The summary documents of an open notebook. */
import type { SummaryReply } from "../../../shared/protocol.js";
import { forcesOf } from "../engine/forces.js";
import { buildReport } from "../engine/report.js";
import { forcesCsv } from "../summary/forces-table.js";
import { summaryHtml } from "../summary/html.js";
import { summaryMarkdown } from "../summary/markdown.js";
import { summaryStem } from "../summary/stem.js";
import type { Session } from "./sessions.js";

export function summaryFor(session: Session | undefined): SummaryReply | null {
  if (!session) return null;
  const file = decodeURIComponent(session.uri.split("/").at(-1) ?? session.uri);
  const report = buildReport(session.checked, { file, drawings: "supports" });
  return { html: summaryHtml(report), markdown: summaryMarkdown(report), csv: forcesCsv(forcesOf(session.checked)), stem: summaryStem(file) };
}
