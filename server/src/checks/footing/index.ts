import type { CheckDecl } from "../contract.js";
import { footingBarLap } from "./bar-lap.js";
import { footingBarSpacing } from "./bar-spacing.js";
import { footingBearing } from "./bearing.js";
import { bearingCapacity } from "./bearing-capacity.js";
import { blockChecks } from "./block-checks.js";
import { combinedBending, combinedShear } from "./combined.js";
import { combinedDevelopment } from "./combined-development.js";
import { footingDevelopment } from "./development.js";
import { footingFlexure } from "./flexure.js";
import { footingFrostGrip } from "./frost-grip.js";
import { footingBeamDetails, pierBeamDetails } from "./grade-beam-details.js";
import { footingBeamDevelopment, pierBeamDevelopment } from "./grade-beam-development.js";
import { footingBeamStrength, pierBeamStrength } from "./grade-beam-strength.js";
import { footingJointBars } from "./joint-bars.js";
import { footingJointBearing } from "./joint-bearing.js";
import { footingJointDevelopment } from "./joint-development.js";
import { footingJointLeastBars } from "./joint-least-bars.js";
import { footingLeastDepth } from "./least-depth.js";
import { footingLeastSteel } from "./least-steel.js";
import { footingOneWayShear } from "./one-way-shear.js";
import { footingOverturning } from "./overturning.js";
import { pedestalConcrete } from "./pedestal-concrete.js";
import { footingSettlement } from "./settlement.js";
import { footingSliding } from "./sliding.js";
import { footingTopFlexure } from "./top-flexure.js";
import { footingTwoWayShear } from "./two-way-shear.js";
import { footingUplift } from "./uplift.js";

export const footingChecks: readonly CheckDecl[] = [
  ...blockChecks,
  footingUplift,
  footingFrostGrip,
  footingOverturning,
  footingSliding,
  footingBearing,
  bearingCapacity,
  footingSettlement,
  footingJointBearing,
  footingJointBars,
  footingJointLeastBars,
  footingJointDevelopment,
  footingTwoWayShear,
  footingOneWayShear,
  footingFlexure,
  combinedBending,
  combinedShear,
  combinedDevelopment,
  footingTopFlexure,
  footingLeastSteel,
  footingBarSpacing,
  footingLeastDepth,
  footingDevelopment,
  footingBarLap,
  ...pedestalConcrete,
  footingBeamStrength,
  ...footingBeamDetails,
  footingBeamDevelopment,
  pierBeamStrength,
  ...pierBeamDetails,
  pierBeamDevelopment,
];
