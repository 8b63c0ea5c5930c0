/** Says a result in trade words: number first, then what to change. */
import type { Weighed } from "../checks/contract.js";
import { format } from "../units/format.js";
import type { UnitSystem } from "../units/kinds.js";
import { isRule, type AnyResult, type CheckResult } from "./result.js";

const upperFirst = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

export const showRatio = (ratio: number): string => (ratio >= 100 ? ratio.toFixed(0) : ratio >= 10 ? ratio.toFixed(1) : ratio.toFixed(2));

/** A part of the strength in percent, to three digits. */
const percentOf = (part: number): string => `${Number((100 * part).toPrecision(3))} %`;

const placeOf = ({ support, place }: CheckResult): string => (support.places.length > 1 ? `, column ${place + 1} of ${support.places.length}` : "");

/** Why a check was not made, and what tries it where that is known without its strength. */
export function whyNot(result: CheckResult, system: UnitSystem): string {
  const { because = "no combination reaches it", tried, check, governing } = result;
  return tried ? `${because}; ${format(tried.demand, tried.quantity, system)} ${check.triedBy} (${governing?.label}${placeOf(result)})` : because;
}

/** Demand against capacity. An excess too small to show is said. */
function againstOf({ demand, capacity, quantity }: Weighed, ratio: number | undefined, isOver: boolean, system: UnitSystem): string {
  const show = (value: number) => format(value, quantity, system);
  if (quantity === "ratio" && capacity === 1) return `${isOver && percentOf(demand) === percentOf(1) ? "just over " : ""}${percentOf(demand)} of the strength`;
  const isSlight = isOver && capacity > 0 && show(demand) === show(capacity);
  return `${isSlight ? "just over " : ""}${show(demand)} against ${show(capacity)}${ratio === undefined ? "" : `, ratio ${showRatio(ratio)}`}`;
}

export function messageOf(result: AnyResult, system: UnitSystem): string {
  if (isRule(result)) return result.state === "accepted" ? `${result.message} Accepted: ${result.because}.` : result.message;
  const { check, weighed, ratio, governing } = result;
  if (result.state === "not checked" || !weighed) return `${check.title}: not checked, ${whyNot(result, system)}.`;
  if (weighed.demand <= 0) return `${check.title}: no combination tries it.`;
  const head = `${check.title}: ${againstOf(weighed, ratio, result.state === "over", system)} (${governing?.label ?? "governing combination"}${placeOf(result)}).`;
  const advice =
    result.state === "over" || result.state === "near" || result.state === "accepted"
      ? check.advise?.(result.inputs as never, weighed, { show: (value, kind) => format(value, kind, system) })
      : undefined;
  const tail = result.state === "accepted" ? ` Accepted: ${result.because}.` : "";
  return `${head}${advice ? ` ${upperFirst(advice)}` : ""}${tail}`;
}
