/** Checks of the concrete of a pad on rock and of its bars: those of a pad on soil, declared for rock. */
import type { CheckDecl } from "../contract.js";
import { barSpacingOf } from "../footing/bar-spacing.js";
import { developmentOf } from "../footing/development.js";
import { flexureOf } from "../footing/flexure.js";
import { leastDepthOf } from "../footing/least-depth.js";
import { leastSteelOf } from "../footing/least-steel.js";
import { oneWayShearOf } from "../footing/one-way-shear.js";
import { topFlexureOf } from "../footing/top-flexure.js";
import { twoWayShearOf } from "../footing/two-way-shear.js";
import { onRock } from "./pad.js";

export const padFlexure = flexureOf(onRock);
export const padTopFlexure = topFlexureOf(onRock);
export const padOneWayShear = oneWayShearOf(onRock);
export const padTwoWayShear = twoWayShearOf(onRock);
export const padDevelopment = developmentOf(onRock);
export const padLeastSteel = leastSteelOf(onRock);
export const padBarSpacing = barSpacingOf(onRock);
export const padLeastDepth = leastDepthOf(onRock);

export const padConcrete: readonly CheckDecl[] = [padTwoWayShear, padOneWayShear, padFlexure, padTopFlexure, padLeastSteel, padBarSpacing, padLeastDepth, padDevelopment];
