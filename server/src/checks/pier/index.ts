import type { CheckDecl } from "../contract.js";
import { pierBearing } from "./bearing.js";
import { pierBroms } from "./broms.js";
import { pierConcrete } from "./concrete-index.js";
import { pierEmbedment } from "./embedment.js";
import { pierFrostGrip } from "./frost-grip.js";
import { pierMovement } from "./movement.js";
import { pierRotation, pierRotationStated } from "./rotation.js";
import { pierSlab } from "./slab-reaction.js";
import { pierUplift } from "./uplift.js";

export const pierChecks: readonly CheckDecl[] = [pierEmbedment, pierSlab, pierBroms, pierMovement, pierRotation, pierRotationStated, pierUplift, pierFrostGrip, pierBearing, ...pierConcrete];
