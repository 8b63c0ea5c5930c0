/** What a screen reader is told after an edit: the checks whose state changed, and nothing else. */
import type { DerivationReply } from "../../../shared/protocol.js";

const verb = (state: string): string => (state === "holds" ? "now holds" : `is now ${state}`);

/** One sentence for each check of the same support that has another state than before; empty where none has. */
export const changes = (before: DerivationReply | undefined, after: DerivationReply): string => {
  if (!before?.support || before.support.path !== after.support?.path) return "";
  const old = new Map(before.support.findings.map((finding) => [finding.check, finding.state]));
  const said = after.support.findings
    .filter((finding) => old.get(finding.check) !== finding.state)
    .map((finding) => `${finding.title} ${verb(finding.state)}.`);
  if (before.stale !== after.stale) said.push(after.stale ? "The text has errors; the numbers are kept." : "The text can be read again.");
  return said.join(" ");
};
