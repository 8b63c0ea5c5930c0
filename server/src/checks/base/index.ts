import { baseBearing } from "./bearing.js";
import { levelingNuts } from "./leveling-nuts.js";
import { plateCompression } from "./plate-compression.js";
import { plateUplift } from "./plate-uplift.js";

/** Checks of the base plate. */
export const baseChecks = [baseBearing, plateCompression, plateUplift, levelingNuts];
