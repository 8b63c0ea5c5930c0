/** What the derivation view shows of one support. */
import type { DerivationReply } from "../../../shared/protocol.js";
import { signConvention } from "../drawing/sign-convention.js";
import { cautionsFor } from "../engine/cautions.js";
import { structureReport, supportReport } from "../engine/report.js";
import { resultsOf, worstOf } from "../engine/worst.js";
import { LineIndex } from "../notebook/lines.js";
import type { Session } from "./sessions.js";

export function derivationFor(session: Session | undefined, subject: string | undefined, loads: readonly string[] = []): DerivationReply | null {
  if (!session) return null;
  const { shown, stale, version } = session;
  const subjects = shown.documents.flatMap((document) =>
    document.structure.supports.map((support) => {
      const worst = worstOf(resultsOf(document, support));
      return { path: support.path, name: support.name, state: worst.state, ratio: worst.ratio };
    }),
  );
  const lines = shown === session.checked ? session.lines : new LineIndex(shown.text);
  const options = { file: session.uri, steps: true, mathml: true, drawings: "supports and checks" as const, loads };
  for (const document of shown.documents) {
    const support = document.structure.supports.find((item) => item.path === subject) ?? (subject === undefined ? document.structure.supports[0] : undefined);
    if (!support) continue;
    const { supports: _, ...structure } = structureReport(document, lines, { ...options, supports: false });
    return { version, stale, structure, support: supportReport(document, support, lines, options), subjects, cautions: cautionsFor([document.structure]), signConvention: signConvention() };
  }
  return { version, stale, subjects, cautions: cautionsFor(shown.documents.map(({ structure }) => structure)), signConvention: signConvention() };
}
