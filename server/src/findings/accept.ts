/** Applies the `accept` list: a finding that is over and that somebody decided to live with is kept and shown with the reason. */
import type { Problem } from "../notebook/problem.js";
import type { Structure } from "../project/model.js";
import { idOf, titleOf, type AnyResult } from "./result.js";

export function applyAccepted<R extends AnyResult>(structure: Structure, results: readonly R[]): { results: readonly R[]; problems: readonly Problem[] } {
  if (structure.accept.length === 0) return { results, problems: [] };
  const problems: Problem[] = [];
  let out = results;
  for (const entry of structure.accept) {
    const wanted = entry.value.check?.value.trim().toLowerCase();
    const at = entry.value.at?.value.trim();
    const because = entry.value.because?.value.trim();
    const problem = (code: string, message: string) =>
      problems.push({ code, tier: "references", severity: "warning", message, span: entry.span });
    if (!wanted || !at || !because) {
      problem("accept.incomplete", "Nothing is accepted by this entry: it needs check, at and because.");
      continue;
    }
    const fits = (result: AnyResult) =>
      (idOf(result).toLowerCase() === wanted || titleOf(result).toLowerCase() === wanted) && (result.support?.name === at || result.support?.path === at);
    if (!out.some(fits)) {
      problem("accept.no-match", `No check called "${entry.value.check?.value}" is made at "${at}", so nothing is accepted.`);
      continue;
    }
    out = out.map((result) => (fits(result) && result.state === "over" ? { ...result, state: "accepted", because } : result));
  }
  return { results: out, problems };
}
