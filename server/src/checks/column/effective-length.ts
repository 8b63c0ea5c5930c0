/** Effective length of a column by what holds it against sway: AISC 360-22 Commentary Table C-A-7.1, recommended design values. */
import type { Column } from "../../project/model.js";
import type { Gather } from "../contract.js";

type Condition = NonNullable<Column["sway along x"]>["value"];
type Top = NonNullable<Column["top of column"]>["value"];

/** Cases d, e, c and f of the table; with pins at both ends the column leans and is kept from swaying by others. */
const factors = { "both pinned": 1, cantilever: 2.1, "both fixed": 1.2, "fixed top on a pin": 2 } as const;

function factorOf(condition: Condition, top: Top): number {
  if (condition === "braced bay") return factors["both pinned"];
  if (condition === "pinned base") return top === "fixed" ? factors["fixed top on a pin"] : factors["both pinned"];
  return condition === "fixed base and top" || top === "fixed" ? factors["both fixed"] : factors.cantilever;
}

/** Factors for swaying along x and along y; NaN where it is not known how the top is held. */
export function effectiveLengthFactors(fields: Column | undefined, gather: Gather): { readonly x: number; readonly y: number } {
  const top = gather.needs(fields?.["top of column"], "top of column, pinned or fixed");
  const x = gather.may(fields?.["sway along x"]) ?? "fixed base";
  const y = gather.may(fields?.["sway along y"]) ?? "fixed base";
  return top === undefined ? { x: Number.NaN, y: Number.NaN } : { x: factorOf(x, top), y: factorOf(y, top) };
}
