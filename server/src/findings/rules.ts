/** Runs the rules of the site over the structure. */
import type { RuleDecl } from "../checks/contract.js";
import type { Structure, Support } from "../project/model.js";
import type { RuleResult } from "./result.js";

/** What the rules that look at a support alone said of it last time, and what else that rested on. */
interface Said {
  readonly project: Structure["project"];
  readonly roof: NonNullable<Structure["roof"]>["fields"] | undefined;
  readonly results: readonly RuleResult[];
}

/** Says what `rules` find in a structure: support after support, then what concerns several of them together. */
export function rulesJudge(rules: readonly RuleDecl[]): (structure: Structure) => readonly RuleResult[] {
  const alone = rules.filter((rule) => rule.alone);
  const together = rules.filter((rule) => !rule.alone);
  const saidBefore = new WeakMap<Support, Said>();

  /** A support that no edit touched is the same object, and keeps what was said of it. */
  function judgeAlone(structure: Structure, support: Support): readonly RuleResult[] {
    const { project } = structure;
    const roof = structure.roof?.fields;
    const before = saidBefore.get(support);
    if (before?.project === project && before.roof === roof) return before.results;
    // Nothing of the rest is handed over: a rule that looked at it would answer otherwise after an edit than anew.
    const seen: Structure = { project, codes: support.codes, site: support.site, roof: structure.roof, loads: new Map(), supports: [support], assumptions: [], confirm: [], accept: [], span: support.span };
    const results = alone.flatMap((rule) => judge(rule, seen));
    saidBefore.set(support, { project, roof, results });
    return results;
  }

  return (structure) => [...structure.supports.flatMap((support) => judgeAlone(structure, support)), ...together.flatMap((rule) => judge(rule, structure))];
}

function judge(rule: RuleDecl, structure: Structure): readonly RuleResult[] {
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
