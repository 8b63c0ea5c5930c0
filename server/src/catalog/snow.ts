/** Limits and surcharges of the snow chapter of ASCE 7, in SI. */
import { kinds } from "../units/kinds.js";

const psf = kinds.pressure.US.factor;
const foot = kinds.distance.US.factor;

/** The most the least snow of a low slope is, by risk category, Pa: ASCE 7-22 Table 7.3-4 (from memory). */
export const mostLeastSnow = { I: 25 * psf, II: 30 * psf, III: 35 * psf, IV: 40 * psf } as const;

/** Ground snow up to which rain on snow is asked for, Pa: ASCE 7-10 and 7-16 7.10. In ASCE 7-22 it is the limit of the least snow. */
export const rainOnSnowUpTo = 20 * psf;

/** Surcharge for rain on snow, Pa: ASCE 7-10 and 7-16 7.10; ASCE 7-22 7.10 (from memory). */
export const rainOnSnow = { earlier: 5 * psf, atStrength: 8 * psf } as const;

/** Longest rafters of the simple rule for unbalanced snow, m: ASCE 7 7.6.1 (from memory). */
export const shortRafters = 20 * foot;

/** Slopes between which unbalanced snow is asked for: 1/2 in 12 and 7 in 12, ASCE 7 7.6.1 (from memory). */
export const unbalancedSlopes = { least: 0.5 / 12, most: 7 / 12 } as const;

/** Slope from which snow gathers in the valleys of folded plates: 3/8 in to the foot, ASCE 7 7.6.3 (from memory). */
export const leastTroughSlope = 0.375 / 12;

/** Part of the flat snow that counts in the seismic weight, and the flat snow above which it does, Pa: ASCE 7 12.7.2. */
export const snowThatShakes = {
  "ASCE 7-10": { part: 0.2, above: 30 * psf },
  "ASCE 7-16": { part: 0.2, above: 30 * psf },
  "ASCE 7-22": { part: 0.15, above: 45 * psf },
} as const;
