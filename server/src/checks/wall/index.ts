import type { CheckDecl } from "../contract.js";
import { wallBearing } from "./bearing.js";
import { wallJointBars, wallJointLeastBars } from "./joint-bars.js";
import { wallJointDevelopment } from "./joint-development.js";
import { wallJointShear } from "./joint-shear.js";
import { wallMovementJoint } from "./movement-joint.js";
import { wallOverturning } from "./overturning.js";
import { wallSliding } from "./sliding.js";
import { wallStemCover, wallStemCurtains, wallStemSpacing, wallStemSteel } from "./stem-details.js";
import { wallStemFlexure } from "./stem-flexure.js";
import { wallStemShear } from "./stem-shear.js";
import { wallStripDevelopment } from "./strip-development.js";
import { wallStripSpacing, wallStripSteel } from "./strip-details.js";
import { wallStripFlexure } from "./strip-flexure.js";
import { wallStripShear } from "./strip-shear.js";
import { wallUplift } from "./uplift.js";

export const wallChecks: readonly CheckDecl[] = [
  wallUplift,
  wallOverturning,
  wallSliding,
  wallBearing,
  wallStripFlexure,
  wallStripShear,
  wallStripDevelopment,
  wallStripSteel,
  wallStripSpacing,
  wallStemFlexure,
  wallStemShear,
  wallStemSteel,
  wallStemCurtains,
  wallStemSpacing,
  wallStemCover,
  wallJointBars,
  wallJointShear,
  wallJointDevelopment,
  wallJointLeastBars,
  wallMovementJoint,
];
