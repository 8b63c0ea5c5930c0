/** Says a result in trade words: number first, then what to change. */
import { format } from "../units/format.js";
import type { UnitSystem } from "../units/kinds.js";
import { isRule, type AnyResult } from "./result.js";

const upperFirst = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

export const showRatio = (ratio: number): string => (ratio >= 100 ? ratio.toFixed(0) : ratio >= 10 ? ratio.toFixed(1) : ratio.toFixed(2));

export function messageOf(result: AnyResult, system: UnitSystem): string {
  if (isRule(result)) return result.state === "accepted" ? `${result.message} Accepted: ${result.because}.` : result.message;
  const { check, weighed, ratio, governing } = result;
  const place = result.support.places.length > 1 ? `, column ${result.place + 1} of ${result.support.places.length}` : "";
  if (result.state === "not checked" || !weighed) return `${check.title}: not checked, ${result.because ?? "no combination reaches it"}.`;
  if (weighed.demand <= 0) return `${check.title}: no combination tries it.`;
  const show = (value: number) => format(value, weighed.quantity, system);
  const against =
    weighed.quantity === "ratio" && weighed.capacity === 1
      ? `${show(weighed.demand)} of 1`
      : `${show(weighed.demand)} against ${show(weighed.capacity)}${ratio === undefined ? "" : `, ratio ${showRatio(ratio)}`}`;
  const head = `${check.title}: ${against} (${governing?.label ?? "governing combination"}${place}).`;
  const advice =
    result.state === "over" || result.state === "near" || result.state === "accepted"
      ? check.advise?.(result.inputs as never, weighed, { show: (value, kind) => format(value, kind, system) })
      : undefined;
  const tail = result.state === "accepted" ? ` Accepted: ${result.because}.` : "";
  return `${head}${advice ? ` ${upperFirst(advice)}` : ""}${tail}`;
}
