/** Checks of the concrete of a pedestal and of its bars: those of a pier, declared for a pedestal. Its least bars are those of its joint with the pad. */
import type { CheckDecl } from "../contract.js";
import { pedestalAxial } from "../pier/concrete-axial.js";
import { pedestalMostBars } from "../pier/concrete-bar-area.js";
import { pedestalBarCount, pedestalBarGap } from "../pier/concrete-bar-layout.js";
import { pedestalBending } from "../pier/concrete-bending.js";
import { pedestalCover } from "../pier/concrete-cover.js";
import { pedestalLeastTies } from "../pier/concrete-least-shear.js";
import { pedestalRodLap, pedestalRodLapDistance } from "../pier/concrete-rod-lap.js";
import { pedestalShear } from "../pier/concrete-shear.js";
import { pedestalSlender } from "../pier/concrete-slender.js";
import { pedestalSpiralGap, pedestalSpiralRatio } from "../pier/concrete-spiral.js";
import { pedestalBarsHeld, pedestalTieSize, pedestalTieSpacing } from "../pier/concrete-ties.js";
import { pedestalPlateFit } from "../pier/plate-fit.js";

export const pedestalConcrete: readonly CheckDecl[] = [
  pedestalAxial, pedestalBending, pedestalSlender, pedestalShear, pedestalLeastTies, pedestalMostBars, pedestalBarCount, pedestalBarGap, pedestalCover,
  pedestalSpiralRatio, pedestalSpiralGap, pedestalTieSpacing, pedestalTieSize, pedestalBarsHeld, pedestalRodLap, pedestalRodLapDistance, pedestalPlateFit,
];
