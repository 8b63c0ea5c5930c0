import type { RuleDecl } from "../contract.js";
import { baseBearing } from "./bearing.js";
import { belowFinish } from "./below-finish.js";
import { details } from "./details.js";
import { erection } from "./erection.js";
import { groutThickness } from "./grout-thickness.js";
import { levelingNuts } from "./leveling-nuts.js";
import { oneWay } from "./one-way.js";
import { plateCompression } from "./plate-compression.js";
import { plateUplift } from "./plate-uplift.js";
import { projection } from "./projection.js";
import { shearLug } from "./shear-lug.js";

/** Checks of the base plate. */
export const baseChecks = [baseBearing, plateCompression, plateUplift, oneWay, levelingNuts, erection, shearLug];

/** Rules of its details, which take no load. */
export const baseRules: readonly RuleDecl[] = [details, groutThickness, projection, belowFinish];
