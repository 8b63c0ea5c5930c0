/** What a check found on its way to the governing result, so that a picture shows the numbers that were used and no others. */
import { plainCalc } from "../formula/calc.js";
import type { Calc, Formula, FormulaArgs, Routine } from "../formula/types.js";
import type { CheckResult } from "../findings/result.js";

interface Call<A, R> {
  readonly args: A;
  readonly result: R;
}

export interface Observed {
  /** The last run of this routine. */
  readonly routine: <A, R>(of: Routine<A, R>) => Call<A, R> | undefined;
  /** The last value of this formula. */
  readonly value: (of: Pick<Formula<any, any>, "id">) => number | undefined;
}

/** Runs the check once more for the combination that governs; undefined where none does or it does not come to an answer. */
export function observed({ check, inputs, governing }: CheckResult): Observed | undefined {
  if (!governing) return undefined;
  const routines = new Map<string, Call<unknown, unknown>>();
  const values = new Map<string, number>();
  const calc: Calc = Object.assign(
    (<F extends Formula<any, any>>(of: F, args: FormulaArgs<F>): number => {
      const value = plainCalc(of, args);
      values.set(of.id, value);
      return value;
    }) as Calc,
    {
      routine: <A, R>(of: Routine<A, R>, args: A): R => {
        const result = of.run(args);
        routines.set(of.id, { args, result });
        return result;
      },
      note: (): void => undefined,
    },
  );
  if (check.evaluate(inputs as never, governing, calc).type === "unchecked") return undefined;
  return {
    routine: <A, R>({ id }: Routine<A, R>) => routines.get(id) as Call<A, R> | undefined,
    value: ({ id }) => values.get(id),
  };
}
