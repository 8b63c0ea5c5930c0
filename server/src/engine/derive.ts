/** The reasons behind a result: the same check runs again for the governing combination, with a recorder in place of the calculator. */
import { recordingCalc } from "../formula/calc.js";
import type { Step } from "../formula/types.js";
import type { CheckResult } from "../findings/result.js";

export function derive(result: CheckResult): readonly Step[] {
  if (!result.governing) return [];
  const { calc, steps } = recordingCalc();
  try {
    result.check.evaluate(result.inputs as never, result.governing, calc);
  } catch (error) {
    steps.push({ type: "note", text: `The derivation stopped: ${error instanceof Error ? error.message : String(error)}.` });
  }
  return steps;
}
