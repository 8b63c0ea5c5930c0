/** The list of checks and rules as a Markdown table, for the README. */
import type { CheckDecl, RuleDecl } from "../checks/contract.js";
import { allChecks, allRules } from "../checks/registry.js";

const row = (item: CheckDecl | RuleDecl): string => `| ${item.link} | ${item.title} | ${item.clause} | \`${item.id}\` |`;

export const checksTable = (): string => ["| link | check | clause | id |", "|---|---|---|---|", ...[...allChecks, ...allRules].map(row)].join("\n");
