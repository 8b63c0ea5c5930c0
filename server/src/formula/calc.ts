import { FormulaError } from "./parse.js";
import type { Calc, Formula, Routine, Step } from "./types.js";

const routines = new Map<string, Routine<any, any>>();

/** Declares a numerical routine and registers it; a second one under the same id throws. */
export function routine<A, R>(decl: Routine<A, R>): Routine<A, R> {
  if (routines.has(decl.id)) throw new FormulaError(decl.id, "this routine is declared twice.");
  const made = Object.freeze({ ...decl });
  routines.set(decl.id, made);
  return made;
}

/** Every declared routine, in the order of declaration. */
export const allRoutines = (): readonly Routine<any, any>[] => [...routines.values()];

/** The routine with this id. */
export const routineById = (id: string): Routine<any, any> | undefined => routines.get(id);

/** Calculates and keeps nothing: the one that runs while somebody types. */
export const plainCalc: Calc = Object.assign(
  ((of: Formula, args: Readonly<Record<string, number>>) => of.value(args)) as unknown as Calc,
  {
    routine: <A, R>(of: Routine<A, R>, args: A): R => of.run(args),
    note: (): void => undefined,
  },
);

/** Calculates the same and keeps every step, in the order it ran. */
export function recordingCalc(): { readonly calc: Calc; readonly steps: Step[] } {
  const steps: Step[] = [];
  const calc = Object.assign(
    ((of: Formula, args: Readonly<Record<string, number>>) => {
      const value = of.value(args);
      steps.push({ type: "formula", formula: of, args: { ...args }, value });
      return value;
    }) as unknown as Calc,
    {
      routine: <A, R>(of: Routine<A, R>, args: A): R => {
        const result = of.run(args);
        steps.push({ type: "routine", routine: of as Routine<unknown, unknown>, ...of.show(args, result) });
        return result;
      },
      note: (text: string): void => void steps.push({ type: "note", text }),
    },
  );
  return { calc, steps };
}
