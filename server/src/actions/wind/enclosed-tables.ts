/**
 * Pressure coefficients of buildings with walls, main wind force resisting system, as data: external ones of roofs and walls, and the internal ones of each enclosure
 * class. All from memory. They serve roofs with a wall that is less than 80 percent open.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";

export const enclosedSource = "ASCE 7-22 Figure 27.3-1 and Table 26.13-1, the same in 7-16 and 7-10 (from memory)";

export const betweenValues = formula({
  id: "wind.enclosed-between",
  text: "C = C_1 + (C_2 - C_1) * (r - r_1) / (r_2 - r_1)",
  source: "ASCE 7-22 Figure 27.3-1, notes on linear interpolation (from memory)",
  symbols: {
    C: { kind: "ratio", meaning: "external pressure coefficient" },
    C_1: { kind: "ratio", meaning: "coefficient before" },
    C_2: { kind: "ratio", meaning: "coefficient after" },
    r: { kind: "number", meaning: "angle in degrees, or ratio of lengths", range: [11, 14] },
    r_1: { kind: "number", meaning: "its value before", range: [5, 10] },
    r_2: { kind: "number", meaning: "its value after", range: [15, 20] },
  },
});

/** The value at `r` of a table over rising numbers; beyond its ends the last value stands. */
function at(numbers: readonly number[], values: readonly number[], r: number, calc: Calc): number {
  const i = numbers.findIndex((number) => !isAbove(r, number));
  if (i < 0) return values[values.length - 1];
  if (i === 0 || !isBelow(r, numbers[i])) return values[i];
  return calc(betweenValues, { C_1: values[i - 1], C_2: values[i], r, r_1: numbers[i - 1], r_2: numbers[i] });
}

/** By both: rows over angles, one list of values for each ratio. */
const over = (angles: readonly number[], ratios: readonly number[], rows: readonly (readonly number[])[], theta: number, ratio: number, calc: Calc): number =>
  at(ratios, rows.map((row) => at(angles, row, theta, calc)), ratio, calc);

/** From this roof angle on, degrees, wind along the slope has coefficients by angle; below it, by distance from the windward edge. */
export const slopedFrom = 10;

/** Mean roof height over length along the wind. */
const heights = [0.25, 0.5, 1] as const;
const windwardAngles = [10, 15, 20, 25, 30, 35, 45] as const;
const leewardAngles = [10, 15, 20] as const;

/** Both values of the windward slope, the one that lifts more and the one that presses more; a row for each height ratio. Zeros are those printed for interpolation. */
const windward = {
  lifting: [
    [-0.7, -0.5, -0.3, -0.2, -0.2, 0, 0],
    [-0.9, -0.7, -0.4, -0.3, -0.2, -0.2, 0],
    [-1.3, -1, -0.7, -0.5, -0.3, -0.2, 0],
  ],
  pressing: [
    [-0.18, 0, 0.2, 0.3, 0.3, 0.4, 0.4],
    [-0.18, -0.18, 0, 0.2, 0.2, 0.3, 0.4],
    [-0.18, -0.18, -0.18, 0, 0.2, 0.2, 0.3],
  ],
} as const;

const leeward = [
  [-0.3, -0.5, -0.6],
  [-0.5, -0.5, -0.6],
  [-0.7, -0.6, -0.6],
] as const;

/** Which of the two values of a roof coefficient is taken. */
export type Outer = keyof typeof windward;

export const windwardSlope = (outer: Outer, theta: number, ratio: number, calc: Calc): number => over(windwardAngles, heights, windward[outer], theta, ratio, calc);
export const leewardSlope = (theta: number, ratio: number, calc: Calc): number => over(leewardAngles, heights, leeward, theta, ratio, calc);

/** Bands by distance from the windward edge in mean roof heights, at h/L of 0.5 or less and of 1.0 or more; the reduction of -1.3 for large areas is left out, the safe side. */
const bands = [
  { to: 0.5, values: [-0.9, -1.3] },
  { to: 1, values: [-0.9, -0.7] },
  { to: 2, values: [-0.5, -0.7] },
  { to: Number.POSITIVE_INFINITY, values: [-0.3, -0.7] },
] as const;

/** The other value of every band. */
export const bandPressing = -0.18;

export const liftingBands = (ratio: number, calc: Calc): readonly { readonly to: number; readonly C_p: number }[] => bands.map(({ to, values }) => ({ to, C_p: at([0.5, 1], values, ratio, calc) }));

/** Walls: windward, side, and leeward by plan length along the wind over that across it. */
export const windwardWall = 0.8;
export const sideWall = -0.7;
export const leewardWall = (L_over_B: number, calc: Calc): number => at([1, 2, 4], [-0.5, -0.3, -0.2], L_over_B, calc);

/**
 * Internal pressure coefficient of a partially enclosed building, of either sign. Enclosed and partially open buildings have 0.18 of either sign (the partially open
 * one from ASCE 7-16 on): what they bring lies between the two signs of this one.
 */
export const partiallyEnclosed = 0.55;
export const otherClasses = 0.18;
