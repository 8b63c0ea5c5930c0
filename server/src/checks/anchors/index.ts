import type { RuleDecl } from "../contract.js";
import { rodsAsBuilt } from "./as-built.js";
import { groupsAsBuilt } from "./groups-as-built.js";
import { bond } from "./bond.js";
import { breakoutShear } from "./breakout-shear.js";
import { breakoutTension } from "./breakout-tension.js";
import { fit } from "./fit.js";
import { hairpins } from "./hairpins.js";
import { interaction } from "./interaction.js";
import { pryout } from "./pryout.js";
import { pullout } from "./pullout.js";
import { reinforcementTension } from "./reinforcement-tension.js";
import { rodSteel } from "./rod-steel.js";
import { sideFaceBlowout } from "./side-face-blowout.js";
import { spacing } from "./spacing.js";
import { steelGoverns } from "./steel-governs.js";
import { steelShear } from "./steel-shear.js";
import { steelTension } from "./steel-tension.js";
import { stretchLength } from "./stretch-length.js";
import { topTies } from "./top-ties.js";

/** Checks of cast-in anchor rods in tension, in shear and in both. */
export const anchorChecks = [steelTension, breakoutTension, reinforcementTension, pullout, bond, sideFaceBlowout, steelGoverns, steelShear, breakoutShear, hairpins, pryout, interaction];

/** Rules of the rods and their concrete, which take no load. */
export const anchorRules: readonly RuleDecl[] = [spacing, fit, topTies, rodSteel, stretchLength, rodsAsBuilt, groupsAsBuilt];
