import { plainCalc } from "../../formula/calc.js";
import type { Calc } from "../../formula/types.js";

/** What does not change from case to case: found once while somebody types, and again only where its steps are asked for. Kept by no one but its maker. */
export function once<T>(of: (calc: Calc) => T): (calc: Calc) => T {
  let known: { readonly value: T } | undefined;
  return (calc) => (calc === plainCalc ? (known ??= { value: of(plainCalc) }).value : of(calc));
}
