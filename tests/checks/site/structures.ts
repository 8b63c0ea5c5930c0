/** Structures read from text, for rules that need no loads. */
import type { RuleDecl, RuleFinding } from "../../../server/src/checks/contract.js";
import { parseNotebook } from "../../../server/src/notebook/parse.js";
import { readNotebook } from "../../../server/src/notebook/read-notebook.js";
import type { Structure } from "../../../server/src/project/model.js";
import { buildStructure } from "../../../server/src/project/structure.js";

/** The structures of a text; one that has a problem fails the test with its words. */
export function structuresOf(text: string): readonly Structure[] {
  const parsed = parseNotebook(text);
  return parsed.documents.map((document, index) => {
    const reading = readNotebook(parsed, index);
    const problems = [...parsed.problems, ...reading.problems].filter(({ severity }) => severity === "error");
    if (problems.length > 0) throw new Error(problems.map(({ message }) => message).join("\n"));
    return buildStructure(reading.values, document.span);
  });
}

/** What a rule says of the first structure of a text, beside what holds. */
export const faultsOf = (rule: RuleDecl, text: string): readonly RuleFinding[] => structuresOf(text).flatMap((structure) => rule.judge(structure)).filter(({ verdict }) => verdict !== "holds");

/** The one statement of a rule about a text with one support; undefined where it says nothing. */
export function saidOf(rule: RuleDecl, text: string): RuleFinding | undefined {
  const found = structuresOf(text).flatMap((structure) => rule.judge(structure));
  if (found.length > 1) throw new Error(`${found.length} statements`);
  return found[0];
}
