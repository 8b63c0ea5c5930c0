/** What a test hands to a check: demands, supports and a gatherer made by hand, in the trade's units. */
import type { Demand, Forces, Level } from "../../server/src/actions/demand.js";
import { plainCalc, recordingCalc } from "../../server/src/formula/calc.js";
import type { CheckDecl, Gather, Outcome, Weighed } from "../../server/src/checks/contract.js";
import type { Sourced, Support } from "../../server/src/project/model.js";
import { kinds, type KindName } from "../../server/src/units/kinds.js";

export const inch = kinds.length.US.factor;
export const foot = kinds.distance.US.factor;
export const kip = kinds.force.US.factor;
export const kipFoot = kinds.moment.US.factor;
export const kipInch = kinds.smallMoment.US.factor;
export const ksi = kinds.steelStress.US.factor;
export const psi = kinds.stress.US.factor;

const none: Forces = { P: 0, Vx: 0, Vy: 0, Mx: 0, My: 0 };

/** A strength demand with these forces at the base, SI; the top carries none unless given. */
export const strength = (base: Partial<Forces>, top: Partial<Forces> = {}): Demand<"strength"> => ({
  level: "strength",
  label: "given",
  combination: { level: "strength", label: "given", terms: [], clause: "given" },
  cases: [],
  top: { ...none, ...top },
  base: { ...none, ...base },
});

/** The same at allowable-stress level. */
export const allowable = (base: Partial<Forces>, top: Partial<Forces> = {}): Demand<"allowable"> => {
  const { combination, ...rest } = strength(base, top);
  return { ...rest, level: "allowable", combination: { ...combination, level: "allowable" } };
};

/** The outcome as a weighed one; a check that does not answer fails the test with its words. */
export function weighed(outcome: Outcome): Weighed {
  if (outcome.type === "unchecked") throw new Error(`not checked: ${outcome.because}`);
  return outcome;
}

export const run = <I extends object, L extends Level>(of: CheckDecl<I, L>, inputs: I, demand: Demand<NoInfer<L>>): Weighed =>
  weighed(of.evaluate(inputs, demand, plainCalc));

export const ratioOf = ({ demand, capacity }: Weighed): number => demand / capacity;

/** Values of every formula that ran, by result symbol; the last of a name stays. */
export function valuesOf<I extends object, L extends Level>(of: CheckDecl<I, L>, inputs: I, demand: Demand<NoInfer<L>>): ReadonlyMap<string, number> {
  const { calc, steps } = recordingCalc();
  of.evaluate(inputs, demand, calc);
  return new Map(steps.flatMap((step) => (step.type === "formula" ? [[step.formula.result, step.value] as const] : [])));
}

/** The same, with what routines found. */
export function stepsOf<I extends object, L extends Level>(of: CheckDecl<I, L>, inputs: I, demand: Demand<NoInfer<L>>) {
  const { calc, steps } = recordingCalc();
  const outcome = of.evaluate(inputs, demand, calc);
  return { outcome, steps };
}

const span = { block: 0, start: 0, end: 0 } as never;

/** A value as the notebook would give it. */
export const sourced = <T>(value: T, path = "here"): Sourced<T> => ({ value, path, span });

type Fields = Readonly<Record<string, unknown>>;

/** Fields given as plain values, records nested, each wrapped as if it had been read. */
const fieldsOf = (fields: Fields): Fields =>
  Object.fromEntries(
    Object.entries(fields).map(([name, value]) => {
      const isRecord = typeof value === "object" && value !== null && !("name" in value);
      return [name, value === undefined ? undefined : sourced(isRecord ? fieldsOf(value as Fields) : value, name)];
    }),
  );

/** A support made of plain values. */
export function supportOf(parts: {
  column?: Fields;
  base?: Fields;
  foundation?: Fields;
  site?: Fields;
  places?: readonly { x: number; y: number }[];
}): Support {
  const named = (name: string, fields: Fields | undefined) => fields && { name, path: name, span, fields: fieldsOf(fields) };
  return {
    name: "here",
    path: "columns.here",
    span,
    places: parts.places ?? [{ x: 0, y: 0 }],
    column: named("column", parts.column),
    base: named("base", parts.base),
    foundation: named("foundation", parts.foundation),
    codes: fieldsOf({ building: "IBC 2024", loads: "ASCE 7-22", concrete: "ACI 318-19", steel: "AISC 360-22" }),
    site: fieldsOf(parts.site ?? {}),
  } as unknown as Support;
}

/** A gatherer that keeps what is missing and what blocks. */
export function gatherer(): Gather & { readonly missing: string[]; readonly blocks: string[] } {
  const missing: string[] = [];
  const blocks: string[] = [];
  return {
    missing,
    blocks,
    need: (value, what) => {
      if (value === undefined) missing.push(what);
      return value?.value ?? Number.NaN;
    },
    needs: (value, what) => {
      if (value === undefined) missing.push(what);
      return value?.value;
    },
    may: (value) => value?.value,
    block: (because) => void blocks.push(because),
  };
}

/** Shown in the unit named, for messages in tests. */
export const say = {
  show: (value: number, kind: KindName): string => `${Number((value / kinds[kind].US.factor).toPrecision(4))} ${kinds[kind].US.unit}`.trim(),
};

/** Inputs of every check that has all it needs. */
export function inputsOfAll(checks: readonly CheckDecl[], support: Support): ReadonlyMap<CheckDecl, object> {
  const found = new Map<CheckDecl, object>();
  for (const check of checks) {
    if (!check.applies(support)) continue;
    const gather = gatherer();
    const inputs = check.inputs(support, gather, 0) as object;
    if (gather.missing.length + gather.blocks.length === 0) found.set(check, inputs);
  }
  return found;
}
