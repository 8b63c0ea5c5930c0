import type { CheckDecl, RuleDecl } from "../contract.js";
import { barBond } from "./bar-bond.js";
import { rockBearing } from "./bearing.js";
import { rockCone } from "./cone.js";
import { dowelBond } from "./dowel-bond.js";
import { dowelDepth } from "./dowel-depth.js";
import { dowelHoles, dowelLayout, dowelSetting, rockSurface, soundDepth } from "./dowel-details.js";
import { dowelDevelopment, dowelLap } from "./dowel-development.js";
import { dowelSteel } from "./dowel-steel.js";
import { padConcrete } from "./pad-concrete.js";
import { rockSliding } from "./sliding.js";

export const rockChecks: readonly CheckDecl[] = [dowelSteel, barBond, dowelBond, rockCone, dowelDepth, dowelDevelopment, dowelLap, rockSliding, rockBearing, ...padConcrete];

export const rockRules: readonly RuleDecl[] = [dowelHoles, dowelLayout, dowelSetting, soundDepth, rockSurface];
