import type { CheckDecl } from "../contract.js";
import { pierAxial } from "./concrete-axial.js";
import { pierLeastBars, pierMostBars } from "./concrete-bar-area.js";
import { pierBarCount, pierBarGap } from "./concrete-bar-layout.js";
import { pierBending } from "./concrete-bending.js";
import { pierCover } from "./concrete-cover.js";
import { pierLeastTies } from "./concrete-least-shear.js";
import { pierPlain, pierPlainShear } from "./concrete-plain.js";
import { pierRodLap, pierRodLapDistance } from "./concrete-rod-lap.js";
import { seismicTies } from "./concrete-seismic-ties.js";
import { pierShear } from "./concrete-shear.js";
import { pierSlender } from "./concrete-slender.js";
import { pierSpiralGap, pierSpiralRatio } from "./concrete-spiral.js";
import { pierBarsHeld, pierTieSize, pierTieSpacing } from "./concrete-ties.js";
import { pierPlateFit } from "./plate-fit.js";

/** Checks of the concrete of a pier and of its bars. */
export const pierConcrete: readonly CheckDecl[] = [
  pierAxial, pierBending, pierSlender, pierShear, pierLeastTies, pierPlain, pierPlainShear, pierLeastBars, pierMostBars, pierBarCount, pierBarGap, pierCover,
  pierSpiralRatio, pierSpiralGap, pierTieSpacing, pierTieSize, pierBarsHeld, ...seismicTies, pierRodLap, pierRodLapDistance, pierPlateFit,
];
