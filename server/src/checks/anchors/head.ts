/** The head of a rod, which bears against the concrete. */
import { rodByDiameter } from "../../catalog/rods.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";

/** Names of heads in the catalog of rods. */
const heads = { "heavy hex nut": "heavy hex", "hex nut": "hex" } as const;

/** Bearing area of the head of a rod of this diameter, m²; not a number where either is not known. */
export function readHead(support: Support, gather: Gather, d_a: number): number {
  const head = gather.needs(support.base?.fields.anchors?.value.head, "head of the rods");
  const rod = Number.isFinite(d_a) ? rodByDiameter(d_a) : undefined;
  return rod && head ? rod.headBearingArea[heads[head]] : Number.NaN;
}
