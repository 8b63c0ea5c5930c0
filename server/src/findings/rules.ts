/** Runs the rules of the site over the structure. */
import type { RuleDecl } from "../checks/contract.js";
import type { Structure } from "../project/model.js";
import type { RuleResult } from "./result.js";

export function judgeRule(rule: RuleDecl, structure: Structure): readonly RuleResult[] {
  try {
    return rule.judge(structure).map((finding) => ({
      rule,
      support: finding.support,
      state: finding.verdict === "unchecked" ? "not checked" : finding.verdict,
      message: finding.message,
      at: finding.at.span,
      related: (finding.related ?? []).map((related) => ({ span: related.at.span, message: related.message })),
    }));
  } catch (error) {
    const because = `the rule itself failed (${error instanceof Error ? error.message : String(error)}); please report it`;
    return [{ rule, state: "not checked", message: `Not checked: ${because}.`, because, at: structure.span, related: [] }];
  }
}
