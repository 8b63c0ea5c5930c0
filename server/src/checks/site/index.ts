import type { RuleDecl } from "../contract.js";
import { agreement } from "./agreement.js";
import { closedSections } from "./closed-sections.js";
import { frost } from "./frost.js";
import { loadPath } from "./load-path.js";
import { oneGround } from "./one-ground.js";

export const siteRules: readonly RuleDecl[] = [loadPath, agreement, oneGround, frost, closedSections];
