import { breakoutTension } from "./breakout-tension.js";
import { pullout } from "./pullout.js";
import { steelShear } from "./steel-shear.js";
import { steelTension } from "./steel-tension.js";

/** Checks of the anchor rods in tension, and of their steel in shear. */
export const anchorChecks = [steelTension, breakoutTension, pullout, steelShear];
