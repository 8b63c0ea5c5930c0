import type { CheckDecl } from "../contract.js";
import { rockBearing } from "./bearing.js";
import { rockCone } from "./cone.js";
import { dowelBond } from "./dowel-bond.js";
import { dowelSteel } from "./dowel-steel.js";

export const rockChecks: readonly CheckDecl[] = [dowelSteel, dowelBond, rockCone, rockBearing];
