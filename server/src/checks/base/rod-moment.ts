/** Bending of the plate by forces of its rods, between the rods and the column. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { bendLine, type BendLine } from "../../mechanics/plate-bend-lines.js";
import type { Point } from "../../mechanics/rectangles.js";

export const bendSquare = formula({
  id: "base.bend-square",
  text: "c = b_p / 2",
  source: "geometry",
  symbols: {
    c: { kind: "length", meaning: "half the rectangle the plate bends about" },
    b_p: { kind: "length", meaning: "its side", field: "columns.*.section" },
  },
});

export const rodMoment = formula({
  id: "base.rod-moment",
  text: "m_u = T * a / b_eff",
  source: "statics; the 45° spread is common practice, no single source",
  symbols: {
    m_u: { kind: "momentPerLength", meaning: "moment in the plate per width" },
    T: { kind: "force", meaning: "force of the rod" },
    a: { kind: "length", meaning: "from the rod to the bend line" },
    b_eff: { kind: "length", meaning: "width of the plate that bends with it" },
  },
});

/** What of a plate the bend lines need. */
export interface BentPlate {
  readonly B: number;
  readonly N: number;
  readonly b_px: number;
  readonly b_py: number;
  readonly rods: readonly Point[];
}

/** Moment per width under the rod that strains the plate most; undefined where these rods stand within the column's outline. */
export function bendByRods({ B, N, b_px, b_py, rods }: BentPlate, forces: readonly number[], calc: Calc): number | undefined {
  const half = calc(bendSquare, { b_p: b_px });
  const halfY = b_py === b_px ? half : calc(bendSquare, { b_p: b_py });
  const worst: BendLine | undefined = calc.routine(bendLine, { width: B, length: N, half, halfY, rods, tensions: forces });
  if (!worst) return undefined;
  calc.note(worst.line === "corner" ? "The rod stands off a corner of the tube: diagonal bend line." : "The rod stands off a side of the tube: bend line along that side.");
  return calc(rodMoment, { T: worst.tension, a: worst.distance, b_eff: worst.width });
}
