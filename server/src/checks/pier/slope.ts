/**
 * Ground that falls away beside a pier holds it less. The methods here are for level ground, so that a value which was not given for that slope
 * may not be used on it.
 */
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";

/** As steep as this still counts as level: one in ten; common practice, no source. */
const level = 0.1;

/** Blocks where the ground falls away and nobody has given a value for it. */
export function levelGround(support: Support, gather: Gather, what: string, instead: string): void {
  const slope = gather.may(support.foundation?.fields["ground slope"]);
  if (slope !== undefined && slope > level) gather.block(`the ground falls away beside the pier, and ${what} is for level ground: ${instead}`);
}

/** The ground falls away, and a value has been stated that is to be one for that slope. */
export const falls = (support: Support): boolean => (support.foundation?.fields["ground slope"]?.value ?? 0) > level;
