/**
 * Force coefficients of other structures in the wind, as data: posts, open frames and solid panels. Values between those of a table are
 * interpolated on a straight line; beyond its ends the last value stands.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";

export const betweenRows = formula({
  id: "wind.force-coefficient-between",
  text: "C_f = C_1 + (C_2 - C_1) * (r - r_1) / (r_2 - r_1)",
  source: "ASCE 7-22 Chapter 29, notes on linear interpolation",
  symbols: {
    C_f: { kind: "ratio", meaning: "force coefficient" },
    C_1: { kind: "ratio", meaning: "coefficient before" },
    C_2: { kind: "ratio", meaning: "coefficient after" },
    r: { kind: "number", meaning: "ratio the table is entered with", range: [11, 14] },
    r_1: { kind: "number", meaning: "ratio of the value before", range: [5, 10] },
    r_2: { kind: "number", meaning: "ratio of the value after", range: [15, 20] },
  },
});

/** The value at `r` of a table over rising ratios. */
export function along(ratios: readonly number[], values: readonly number[], r: number, calc: Calc): number {
  const at = ratios.findIndex((ratio) => !isAbove(r, ratio));
  if (at < 0) return values[values.length - 1];
  if (at === 0 || !isBelow(r, ratios[at])) return values[at];
  return calc(betweenRows, { C_1: values[at - 1], C_2: values[at], r, r_1: ratios[at - 1], r_2: ratios[at] });
}

export const relativeDiameter = formula({
  id: "wind.relative-diameter",
  text: "r_D = D / D_1 * sqrt(q_d / q_1)",
  source: "ASCE 7-22 Figures 29.4-1 and 29.4-2: D in ft times the root of the velocity pressure in psf. The limit is older than ASCE 7-22, so that its velocity pressure is taken with the directionality factor, the safe side",
  symbols: {
    r_D: { kind: "number", meaning: "diameter in ft times the root of the velocity pressure in psf" },
    D: { kind: "length", meaning: "diameter" },
    q_d: { kind: "pressure", meaning: "velocity pressure with the directionality factor in it" },
  },
  constants: { D_1: "1 ft", q_1: "1 psf" },
});

/** Beyond this a round section is in the smoother flow. */
export const smoothFrom = 2.5;

export const slender = formula({
  id: "wind.post-slenderness",
  text: "r_h = H / D",
  source: "ASCE 7-22 Figure 29.4-1",
  symbols: {
    r_h: { kind: "number", meaning: "height over width of the post" },
    H: { kind: "distance", meaning: "height of the post", field: "columns.*.height" },
    D: { kind: "length", meaning: "width of the post across the wind", field: "columns.*.section" },
  },
});

const heights = [1, 7, 25] as const;

/** ASCE 7-22 Figure 29.4-1 (chimneys and tanks), by height over width; one published copy, BNBC 2020 Figure 6.2.20. */
const posts = {
  "square, wind on the face": [1.3, 1.4, 2.0],
  "round, moderately smooth": [0.5, 0.6, 0.7],
  "round, small or slow": [0.7, 0.8, 1.2],
} as const;

export type PostSurface = keyof typeof posts;

export const postCoefficient = (surface: PostSurface, r_h: number, calc: Calc): number => along(heights, posts[surface], r_h, calc);

/** ASCE 7-22 Figure 29.4-2 (open signs and frames), by solidity: flat members, round ones up to r_D of 2.5 and beyond; two published copies. */
const frames = [
  { below: 0.1, flat: 2.0, small: 1.2, large: 0.8 },
  { below: 0.3, flat: 1.8, small: 1.3, large: 0.9 },
  { below: Number.POSITIVE_INFINITY, flat: 1.6, small: 1.5, large: 1.1 },
] as const;

/** Most of a frame that may be solid for these coefficients; beyond it a panel's are taken. */
export const mostSolidFrame = 0.7;

export function frameCoefficient(solidity: number, r_D: number | undefined): number {
  const row = frames.find(({ below }) => isBelow(solidity, below)) ?? frames[frames.length - 1];
  if (r_D === undefined) return row.flat;
  return isAbove(r_D, smoothFrom) ? row.large : row.small;
}

const lengths = [0.05, 0.1, 0.2, 0.5, 1, 2, 4, 5, 10, 20, 30, 45] as const;

/** ASCE 7-22 Figure 29.3-1, cases A and B: rows by s/h, columns by B/s; one published copy, BNBC 2020 Figure 6.2.20. */
const panels: readonly (readonly [s_over_h: number, row: readonly number[]])[] = [
  [0.16, [1.95, 1.9, 1.85, 1.85, 1.8, 1.8, 1.85, 1.85, 1.85, 1.9, 1.9, 1.95]],
  [0.2, [1.95, 1.9, 1.85, 1.8, 1.8, 1.8, 1.8, 1.8, 1.85, 1.9, 1.9, 1.95]],
  [0.3, [1.95, 1.9, 1.85, 1.8, 1.8, 1.8, 1.8, 1.8, 1.8, 1.85, 1.85, 1.85]],
  [0.5, [1.95, 1.85, 1.8, 1.75, 1.75, 1.7, 1.7, 1.7, 1.7, 1.7, 1.7, 1.75]],
  [0.7, [1.9, 1.85, 1.75, 1.7, 1.65, 1.6, 1.6, 1.55, 1.55, 1.55, 1.55, 1.55]],
  [0.9, [1.85, 1.75, 1.7, 1.6, 1.55, 1.5, 1.45, 1.45, 1.4, 1.4, 1.4, 1.4]],
  [1, [1.8, 1.7, 1.65, 1.55, 1.45, 1.4, 1.35, 1.35, 1.3, 1.3, 1.3, 1.3]],
];

const panelHeights = panels.map(([s_over_h]) => s_over_h);

/** Coefficient of a solid panel by its length over its height and its height over that of its top above grade. */
export function panelCoefficient(B_over_s: number, s_over_h: number, calc: Calc): number {
  const first = panelHeights.findIndex((ratio) => !isAbove(s_over_h, ratio));
  const upper = first < 0 ? panels.length - 1 : first;
  const lower = upper === 0 || !isBelow(s_over_h, panelHeights[upper]) ? upper : upper - 1;
  const C_2 = along(lengths, panels[upper][1], B_over_s, calc);
  if (lower === upper) return C_2;
  const C_1 = along(lengths, panels[lower][1], B_over_s, calc);
  return calc(betweenRows, { C_1, C_2, r: s_over_h, r_1: panelHeights[lower], r_2: panelHeights[upper] });
}

/** Case C of ASCE 7-22 Figure 29.3-1 begins at this length over height. */
export const windwardEndFrom = 2;

const windwardEndLengths = [2, 3, 4, 5, 6, 7, 8, 9, 10, 13, 45] as const;

/**
 * ASCE 7-22 Figure 29.3-1, case C, by length over height: the region next to the windward end as BNBC 2020 Figure 6.2.20 has it, the regions beyond from memory. `to` is where a
 * region ends, in heights of the panel from the windward end. A region that a shorter wall does not reach has the value of the first wall that does.
 */
const windwardEnd: readonly { readonly to: number; readonly values: readonly number[] }[] = [
  { to: 1, values: [2.25, 2.6, 2.9, 3.1, 3.3, 3.4, 3.55, 3.65, 3.75, 4, 4.3] },
  { to: 2, values: [1.5, 1.7, 1.9, 2, 2.15, 2.25, 2.3, 2.35, 2.45, 2.6, 2.55] },
  { to: 3, values: [1.15, 1.15, 1.3, 1.45, 1.55, 1.65, 1.7, 1.75, 1.85, 2, 1.95] },
  { to: 4, values: [1.1, 1.1, 1.1, 1.05, 1.05, 1.05, 1.05, 1, 0.95, 1.5, 1.85] },
  { to: 5, values: [1.1, 1.1, 1.1, 1.05, 1.05, 1.05, 1.05, 1, 0.95, 1.35, 1.85] },
  { to: 10, values: [1.1, 1.1, 1.1, 1.05, 1.05, 1.05, 1.05, 1, 0.95, 0.9, 1.1] },
  { to: Number.POSITIVE_INFINITY, values: [1.1, 1.1, 1.1, 1.05, 1.05, 1.05, 1.05, 1, 0.95, 0.55, 0.55] },
];

/** Coefficients from the windward end on, in steps that end at so many heights of the panel. */
export const windwardEndCoefficients = (B_over_s: number, calc: Calc): readonly { readonly to: number; readonly value: number }[] =>
  windwardEnd.map(({ to, values }) => ({ to, value: along(windwardEndLengths, values, B_over_s, calc) }));

export const partlySolid = formula({
  id: "wind.openings-factor",
  text: "k_o = 1 - (1 - epsilon)^1.5",
  source: "ASCE 7-22 Figure 29.3-1, note on openings of less than 30 percent",
  symbols: {
    k_o: { kind: "ratio", meaning: "factor for openings in a panel" },
    epsilon: { kind: "ratio", meaning: "solid part of the panel", range: [0.7, 1] },
  },
});
