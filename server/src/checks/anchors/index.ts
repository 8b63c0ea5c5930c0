import { breakoutShear } from "./breakout-shear.js";
import { breakoutTension } from "./breakout-tension.js";
import { interaction } from "./interaction.js";
import { pryout } from "./pryout.js";
import { pullout } from "./pullout.js";
import { sideFaceBlowout } from "./side-face-blowout.js";
import { steelShear } from "./steel-shear.js";
import { steelTension } from "./steel-tension.js";

/** Checks of cast-in anchor rods in tension, in shear and in both. */
export const anchorChecks = [steelTension, breakoutTension, pullout, sideFaceBlowout, steelShear, breakoutShear, pryout, interaction];
