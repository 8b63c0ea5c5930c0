/** Share of a value below which two lengths that came through different units count as equal. */
const blur = 1e-9;

/**
 * Whether `a` is below `b`, and not only by the rounding of a unit conversion: 11 ft over 44 ft, read in meters, is not below 0.25.
 */
export const isBelow = (a: number, b: number): boolean => a < b - blur * Math.abs(b);

/** Whether `a` is above `b`, and not only by rounding. */
export const isAbove = (a: number, b: number): boolean => isBelow(b, a);
