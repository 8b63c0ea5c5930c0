/** Supports and allowable demands for the checks of what stands in or on the ground. */
import type { Demand, Forces, Level, Term } from "../../server/src/actions/demand.js";
import type { CheckDecl, Outcome } from "../../server/src/checks/contract.js";
import { plainCalc, recordingCalc } from "../../server/src/formula/calc.js";
import type { Support } from "../../server/src/project/model.js";
import { kinds } from "../../server/src/units/kinds.js";
import { gatherer, supportOf, weighed } from "./given.js";

export const lb = kinds.smallForce.US.factor;
export const psf = kinds.pressure.US.factor;
export const pcf = kinds.unitWeight.US.factor;
export const psfPerFoot = kinds.pressurePerDepth.US.factor;
export const lbFoot = lb * kinds.distance.US.factor;
export const degree = kinds.angle.US.factor;

const none: Forces = { P: 0, Vx: 0, Vy: 0, Mx: 0, My: 0 };

const demandAt = <L extends Level>(level: L, base: Partial<Forces>, terms: readonly Term[]): Demand<L> => ({
  level,
  label: "given",
  combination: { level, label: terms.map(({ factor, type }) => `${factor}${type}`).join(" + ") || "given", terms, clause: "given" },
  cases: [],
  top: none,
  base: { ...none, ...base },
});

export const allowable = (base: Partial<Forces>, terms: readonly Term[] = []): Demand<"allowable"> => demandAt("allowable", base, terms);
export const strengthOf = (base: Partial<Forces>, terms: readonly Term[] = []): Demand<"strength"> => demandAt("strength", base, terms);

type Fields = Readonly<Record<string, unknown>>;
type Parts = Parameters<typeof supportOf>[0] & { readonly ground?: Fields; readonly name?: string };

/** A support with its ground. */
export function standing({ ground, name = "here", ...parts }: Parts): Support {
  const made = supportOf(parts);
  const under = supportOf({ foundation: ground }).foundation;
  return { ...made, name, path: `columns.${name}`, ground: under && { ...under, name: "ground", path: "ground.ground" } } as unknown as Support;
}

/** Inputs of a check for a support, with what is missing or stands in the way. */
export function read<I extends object>(check: CheckDecl<I, any>, support: Support): { readonly inputs: I; readonly missing: readonly string[]; readonly blocks: readonly string[] } {
  const gather = gatherer();
  const inputs = check.inputs(support, gather, 0);
  return { inputs, missing: gather.missing, blocks: gather.blocks };
}

export function outcomeOf<I extends object>(check: CheckDecl<I, any>, support: Support, demand: Demand): Outcome {
  const { inputs, missing, blocks } = read(check, support);
  if (missing.length > 0 || blocks.length > 0) throw new Error([...missing, ...blocks].join("; "));
  return check.evaluate(inputs, demand, plainCalc);
}

export const weigh = <I extends object>(check: CheckDecl<I, any>, support: Support, demand: Demand) => weighed(outcomeOf(check, support, demand));

/** Values of every step that ran, by symbol, and the remarks. */
export function stepsFor<I extends object>(check: CheckDecl<I, any>, support: Support, demand: Demand): { readonly values: ReadonlyMap<string, number>; readonly notes: readonly string[] } {
  const { calc, steps } = recordingCalc();
  check.evaluate(read(check, support).inputs, demand, calc);
  return {
    values: new Map(steps.flatMap((step) => (step.type === "formula" ? [[step.formula.result, step.value] as const] : []))),
    notes: steps.flatMap((step) => (step.type === "note" ? [step.text] : [])),
  };
}
