/** What the connection at the column top is made of, as its checks choose by. */
import { isByHand } from "../../actions/by-hand.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";

export const topOf = (support: Support) => support.column?.fields["top connection"];

/** The roof's loads come to its column top. */
export const carriesTop = (support: Support): boolean => support.column !== undefined && !isByHand(support.column.fields);

/** The level that strengths of the connection are stated at. */
export const statedLevels = (support: Support): readonly ("strength" | "allowable")[] => [topOf(support)?.value.level?.value ?? "strength"];

/** Notes that level as one of the values a check reads. */
export const readLevel = (support: Support, gather: Gather): void => void gather.may(topOf(support)?.value.level);

/** Bolts or a weld are described, whose strength is found instead of stated. */
export const isDescribed = (support: Support): boolean => topOf(support)?.value.bolts !== undefined || topOf(support)?.value.weld !== undefined;
