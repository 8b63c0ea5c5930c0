/** What the connection at the column top is made of, as its checks choose by. */
import { isByHand } from "../../actions/by-hand.js";
import type { Support } from "../../project/model.js";

export const topOf = (support: Support) => support.column?.fields["top connection"];

/** The roof's loads come to its column top. */
export const carriesTop = (support: Support): boolean => support.column !== undefined && !isByHand(support.column.fields);

/** Bolts or a weld are described, whose strength is found instead of stated. */
export const isDescribed = (support: Support): boolean => topOf(support)?.value.bolts !== undefined || topOf(support)?.value.weld !== undefined;
