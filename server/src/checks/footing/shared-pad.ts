/** A pad under all the columns of a line: where they stand on it, and along which of its sides they stand. */
import { lineAxis, placesFromMiddle } from "../../mechanics/forces-together.js";
import type { Support } from "../../project/model.js";
import { type Gather, sharesPad } from "../contract.js";
import { isFooting } from "./body.js";

export const isShared = (support: Support): boolean => isFooting(support) && sharesPad(support);
export const isOwn = (support: Support): boolean => isFooting(support) && !sharesPad(support);

export interface OnSharedPad {
  readonly along: "x" | "y";
  /** Places of the columns from the middle of their line, m. */
  readonly places: readonly { readonly x: number; readonly y: number }[];
}

export function readShared(support: Support, gather: Gather): OnSharedPad {
  const places = placesFromMiddle(support.places);
  gather.may(support.foundation?.fields["shared by line"]);
  const along = lineAxis(places);
  if (along === undefined) gather.block("the columns on the pad do not stand in a line along x or y: a pad askew under them, or under columns in one place, is not worked out");
  return { along: along ?? "x", places };
}
