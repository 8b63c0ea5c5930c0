/**
 * What is known to be needed on the way from roof to ground, and what of it is done here. A limit state nobody checks is said aloud beside
 * every support it concerns, so that silence never reads as strength. The lines stand in coverage/, one file per part of the chain.
 */
import type { Support } from "../project/model.js";
import { anchorLines } from "./coverage/anchors.js";
import { baseLines } from "./coverage/base.js";
import { columnLines } from "./coverage/column.js";
import { foundationLines } from "./coverage/foundations.js";
import { jobLines } from "./coverage/job.js";
import type { CoverageLine } from "./coverage/line.js";
import { loadLines } from "./coverage/loads.js";

export type { CoverageLine } from "./coverage/line.js";

export const coverageLines: readonly CoverageLine[] = [...loadLines, ...columnLines, ...baseLines, ...anchorLines, ...foundationLines, ...jobLines];

/** The lines to say aloud for a support: those not done at all, and those of which a part is left. */
export const notCovered = (support: Support): readonly CoverageLine[] => coverageLines.filter((line) => line.left !== undefined && line.applies(support));

/** What to say of a line that is not, or not wholly, covered. */
export const notCoveredText = (line: CoverageLine): string => line.left ?? line.line;
