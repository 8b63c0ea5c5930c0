/** A rigid strip held down by a row of anchors on its middle: it presses from the row to one edge, linearly, and the rest of it has lifted. */
import type { Routine } from "../formula/types.js";
import type { FootingPressure } from "./partial-contact.js";

export interface HalfContactArgs {
  /** Across the strip and along it, m. */
  readonly width: number;
  readonly length: number;
  /** Moment about the middle, toward the larger x positive, N·m. */
  readonly moment: number;
}

/** The resultant of the pressure stands a third of the width from the row; pressure and pull are in balance with the moment. */
export function solveHalfContact({ width, length, moment }: HalfContactArgs): FootingPressure {
  const q = (12 * Math.abs(moment)) / (width * width * length);
  const toward = moment < 0 ? -1 : 1;
  const [x, y] = [(toward * width) / 2, length / 2];
  const contact = toward > 0 ? [{ x: 0, y: -y }, { x, y: -y }, { x, y }, { x: 0, y }] : [{ x, y: -y }, { x: 0, y: -y }, { x: 0, y }, { x, y }];
  const [low, high] = toward > 0 ? [0, q] : [q, 0];
  return {
    qmax: q,
    contactRatio: 0.5,
    corners: { southwest: low, northwest: low, southeast: high, northeast: high },
    contact,
    plane: { atCenter: 0, alongX: (toward * 2 * q) / width, alongY: 0 },
  };
}

export const halfContact: Routine<HalfContactArgs, FootingPressure> = {
  id: "mechanics.half-contact",
  title: "Pressure under a strip held down along its middle",
  method: "linear pressure from the row of anchors to the edge, its resultant a third of the width from the row",
  source: "statics; derived",
  run: solveHalfContact,
  show: ({ width, length, moment }, { qmax }) => ({
    given: [
      { symbol: "B", meaning: "width of the strip", kind: "length", value: width },
      { symbol: "L_r", meaning: "length of the strip", kind: "distance", value: length },
      { symbol: "M_c", meaning: "moment about its middle", kind: "moment", value: moment },
    ],
    found: [{ symbol: "q_max", meaning: "largest pressure", kind: "pressure", value: qmax }],
  }),
};
