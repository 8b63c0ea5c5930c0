/** Every check and every rule there is. The one place they are found. */
import { anchorChecks, anchorRules } from "./anchors/index.js";
import { baseChecks, baseRules } from "./base/index.js";
import { columnChecks } from "./column/index.js";
import type { CheckDecl, RuleDecl } from "./contract.js";
import { footingChecks } from "./footing/index.js";
import { pierChecks } from "./pier/index.js";
import { rockChecks, rockRules } from "./rock/index.js";
import { siteRules } from "./site/index.js";
import { wallChecks } from "./wall/index.js";

/** In the order of the chain, roof to ground. */
export const allChecks: readonly CheckDecl[] = [...columnChecks, ...baseChecks, ...anchorChecks, ...pierChecks, ...footingChecks, ...wallChecks, ...rockChecks];

export const allRules: readonly RuleDecl[] = [...baseRules, ...anchorRules, ...rockRules, ...siteRules];

export const findDeclared = (id: string): CheckDecl | RuleDecl | undefined =>
  allChecks.find((check) => check.id === id) ?? allRules.find((rule) => rule.id === id);
