import type { CheckDecl } from "../contract.js";
import { wallBearing } from "./bearing.js";
import { wallOverturning } from "./overturning.js";
import { wallSliding } from "./sliding.js";
import { wallUplift } from "./uplift.js";

export const wallChecks: readonly CheckDecl[] = [wallUplift, wallOverturning, wallSliding, wallBearing];
