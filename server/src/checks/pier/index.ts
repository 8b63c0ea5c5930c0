import type { CheckDecl } from "../contract.js";
import { pierBearing } from "./bearing.js";
import { pierEmbedment } from "./embedment.js";
import { pierUplift } from "./uplift.js";

export const pierChecks: readonly CheckDecl[] = [pierEmbedment, pierUplift, pierBearing];
