/**
 * Sizes in inches the way catalogs of the trade write them: `3/4`, `1-1/4`, `5 1/2`, `0.75`, with or without an inch mark.
 * Quantities in general are read elsewhere; this is for designations alone.
 */
const size = /^(?:(\d+)[- ])?(\d+)\/(\d+)$|^(\d+(?:\.\d*)?|\.\d+)$/;

/** Inches, or undefined when the text is no such size. */
export function readInchSize(text: string): number | undefined {
  const bare = text.trim().replace(/\s*(?:inches|inch|in\.?|"|\u2033)$/i, "").replace(/\s*-\s*/g, "-").replace(/\s+/g, " ");
  const found = size.exec(bare);
  if (!found) return undefined;
  if (found[4] !== undefined) return Number(found[4]);
  const below = Number(found[3]);
  return below === 0 ? undefined : Number(found[1] ?? 0) + Number(found[2]) / below;
}

/** A size in inches as a fraction: 1.25 gives `1-1/4`. Values that are no sixteenth are written as decimals. */
export function inchName(inches: number): string {
  const sixteenths = Math.round(inches * 16);
  if (Math.abs(inches * 16 - sixteenths) > 1e-6) return String(Number(inches.toFixed(4)));
  const whole = Math.floor(sixteenths / 16);
  let above = sixteenths - 16 * whole;
  if (above === 0) return String(whole);
  let below = 16;
  while (above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  return whole === 0 ? `${above}/${below}` : `${whole}-${above}/${below}`;
}
