import type { RuleDecl } from "../contract.js";
import { agreement } from "./agreement.js";
import { closedSections } from "./closed-sections.js";
import { corrosion } from "./corrosion.js";
import { cover } from "./cover.js";
import { cure } from "./cure.js";
import { exposure } from "./exposure.js";
import { frost } from "./frost.js";
import { isolation } from "./isolation.js";
import { loadPath } from "./load-path.js";
import { neighbors } from "./neighbors.js";
import { oneGround } from "./one-ground.js";
import { paving } from "./paving.js";
import { sizes } from "./sizes.js";
import { ties } from "./ties.js";
import { water } from "./water.js";

export const siteRules: readonly RuleDecl[] = [loadPath, agreement, sizes, oneGround, frost, paving, neighbors, isolation, water, exposure, cover, corrosion, closedSections, ties, cure];
