/** Sizes of column sections that are made, in inches as their tables print them. */

export const squareSource = "sizes: AISC Shapes Database v15.0";
export const otherSource = "sizes: AISC Steel Construction Manual, Part 1 (from memory)";

/** Square HSS: width, then the nominal walls. */
export const squareSizes: readonly (readonly [number, readonly string[]])[] = [
  [10, ["3/4", "5/8", "1/2", "3/8", "5/16", "1/4", "3/16"]],
  [8, ["5/8", "1/2", "3/8", "5/16", "1/4", "3/16", "1/8"]],
  [7, ["5/8", "1/2", "3/8", "5/16", "1/4", "3/16", "1/8"]],
  [6, ["5/8", "1/2", "3/8", "5/16", "1/4", "3/16", "1/8"]],
  [5.5, ["3/8", "5/16", "1/4", "3/16", "1/8"]],
  [5, ["1/2", "3/8", "5/16", "1/4", "3/16", "1/8"]],
  [4.5, ["1/2", "3/8", "5/16", "1/4", "3/16", "1/8"]],
  [4, ["1/2", "3/8", "5/16", "1/4", "3/16", "1/8"]],
  [3.5, ["3/8", "5/16", "1/4", "3/16", "1/8"]],
  [3, ["3/8", "5/16", "1/4", "3/16", "1/8"]],
];

const heavy = ["5/8", "1/2", "3/8", "5/16", "1/4", "3/16"] as const;
const usual = ["1/2", "3/8", "5/16", "1/4", "3/16", "1/8"] as const;
const light = ["3/8", "5/16", "1/4", "3/16", "1/8"] as const;

/** Rectangular HSS: depth, width, then the nominal walls. */
export const rectangularSizes: readonly (readonly [number, number, readonly string[]])[] = [
  [12, 10, ["1/2", "3/8", "5/16", "1/4"]],
  [12, 8, heavy],
  [12, 6, heavy],
  [12, 4, heavy],
  [10, 8, heavy],
  [10, 6, heavy],
  [10, 5, ["3/8", "5/16", "1/4", "3/16"]],
  [10, 4, heavy],
  [9, 7, heavy],
  [9, 5, heavy],
  [8, 6, heavy],
  [8, 4, [...heavy, "1/8"]],
  [8, 3, usual],
  [7, 5, usual],
  [7, 4, usual],
  [6, 5, usual],
  [6, 4, usual],
  [6, 3, usual],
  [5, 4, usual],
  [5, 3, usual],
  [4, 3, light],
  [4, 2, light],
];

/** Round HSS: diameter, then the nominal walls. */
export const roundSizes: readonly (readonly [number, readonly number[]])[] = [
  [10.75, [0.5, 0.365, 0.25]],
  [8.625, [0.625, 0.5, 0.375, 0.322, 0.25, 0.188]],
  [7.5, [0.5, 0.375, 0.312, 0.25, 0.188]],
  [7, [0.5, 0.375, 0.312, 0.25, 0.188, 0.125]],
  [6.625, [0.5, 0.432, 0.375, 0.312, 0.28, 0.25, 0.188, 0.125]],
  [6, [0.5, 0.375, 0.312, 0.28, 0.25, 0.188, 0.125]],
  [5.563, [0.5, 0.375, 0.258, 0.188, 0.134]],
  [5, [0.5, 0.375, 0.312, 0.258, 0.25, 0.188, 0.125]],
  [4.5, [0.375, 0.337, 0.237, 0.188, 0.125]],
  [4, [0.313, 0.25, 0.237, 0.226, 0.22, 0.188, 0.125]],
  [3.5, [0.313, 0.3, 0.25, 0.216, 0.203, 0.188, 0.125]],
];

export type PipeWeight = "STD" | "XS";

/** Pipe: nominal size, outside diameter, and the walls of standard and extra strong; ASME B36.10M (from memory). */
export const pipeSizes: readonly (readonly [string, number, Readonly<Record<PipeWeight, number>>])[] = [
  ["3", 3.5, { STD: 0.216, XS: 0.3 }],
  ["3-1/2", 4, { STD: 0.226, XS: 0.318 }],
  ["4", 4.5, { STD: 0.237, XS: 0.337 }],
  ["5", 5.563, { STD: 0.258, XS: 0.375 }],
  ["6", 6.625, { STD: 0.28, XS: 0.432 }],
  ["8", 8.625, { STD: 0.322, XS: 0.5 }],
  ["10", 10.75, { STD: 0.365, XS: 0.5 }],
  ["12", 12.75, { STD: 0.375, XS: 0.5 }],
];

/** W shapes used as columns: depth, flange width, flange, web, and from the outer face to the web toe of the fillet. */
export const rolledSizes: readonly (readonly [string, number, number, number, number, number])[] = [
  ["W6x15", 5.99, 5.99, 0.26, 0.23, 0.51],
  ["W6x20", 6.2, 6.02, 0.365, 0.26, 0.615],
  ["W6x25", 6.38, 6.08, 0.455, 0.32, 0.705],
  ["W8x24", 7.93, 6.5, 0.4, 0.245, 0.794],
  ["W8x31", 8, 8, 0.435, 0.285, 0.829],
  ["W8x35", 8.12, 8.02, 0.495, 0.31, 0.889],
  ["W8x40", 8.25, 8.07, 0.56, 0.36, 0.954],
  ["W10x33", 9.73, 7.96, 0.435, 0.29, 0.935],
  ["W10x49", 9.98, 10, 0.56, 0.34, 1.06],
];
