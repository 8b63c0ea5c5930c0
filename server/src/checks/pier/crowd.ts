/** Piers that act as a group in the ground: no check that takes a pier alone answers for them. */
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";

/** Blocks where another pier stands nearer than three widths (IBC 2021 1810.2.5, from memory). */
export function standsAlone(support: Support, gather: Gather, place: number, what: string): void {
  if (support.crowded?.[place] !== undefined)
    gather.block(`another pier stands nearer than three widths, center to center: they act as a group in the ground, and ${what} of a group is not worked out (IBC 2021 1810.2.5). Set them farther apart, make one pier of them, or have the group looked at by a geotechnical engineer`);
}
