/** Recorded steps as plain data: symbols with SI value and unit, the lines in text and in MathML from the one tree. */
import type { StepReport, SymbolReport } from "../../../shared/report.js";
import { shownConstant } from "../formula/constants.js";
import { parsedOf } from "../formula/declare.js";
import { declaredMathml, resultMathml, substitutedMathml } from "../formula/mathml.js";
import { declaredText, resultText, substitutedText } from "../formula/plain.js";
import { namesIn } from "../formula/tree.js";
import type { Formula, ShownValue, Step, SymbolDecl } from "../formula/types.js";
import type { Dimension } from "../units/dimension.js";
import { format } from "../units/format.js";
import { kinds, type UnitSystem } from "../units/kinds.js";

/** SI unit of a constant, from its dimension: `kg^0.5 m^-1 s^-1`. */
const siUnitOf = ({ mass, length, time }: Dimension): string =>
  ([["kg", mass], ["m", length], ["s", time]] as const)
    .filter(([, exponent]) => exponent !== 0)
    .map(([unit, exponent]) => (exponent === 1 ? unit : `${unit}^${exponent}`))
    .join(" ") || "1";

type FormulaStep = Extract<Step, { type: "formula" }>;

const declared = (symbol: string, decl: SymbolDecl, value: number, system: UnitSystem): SymbolReport => ({
  symbol,
  meaning: decl.meaning,
  value,
  unit: kinds[decl.kind].si,
  shown: format(value, decl.kind, system),
  field: decl.field,
});

/** Symbols of the right-hand side in the order they appear, the constants among them. */
export function symbolsOf(formula: Formula, args: Readonly<Record<string, number>>, system: UnitSystem): SymbolReport[] {
  const { tree, constants } = parsedOf(formula);
  return [...new Set(namesIn(tree))].flatMap((name): SymbolReport[] => {
    const constant = constants[name];
    if (constant) {
      return [{ symbol: name, meaning: "constant of the formula", value: constant.value, unit: siUnitOf(constant.dimension), shown: shownConstant(constant) }];
    }
    const decl = formula.symbols[name];
    return decl ? [declared(name, decl, args[name], system)] : [];
  });
}

function formulaStep(step: FormulaStep, system: UnitSystem, mathml: boolean): StepReport {
  const { formula, args, value } = step;
  return {
    type: "formula",
    id: formula.id,
    source: formula.source,
    result: declared(formula.result, formula.symbols[formula.result], value, system),
    symbols: symbolsOf(formula, args, system),
    plain: { formula: declaredText(formula), substituted: substitutedText(formula, args, system), result: resultText(formula, value, system) },
    mathml: mathml
      ? { formula: declaredMathml(formula), substituted: substitutedMathml(formula, args, system), result: resultMathml(formula, value, system) }
      : undefined,
  };
}

const shown = (value: ShownValue, system: UnitSystem): SymbolReport => ({
  symbol: value.symbol,
  meaning: value.meaning,
  value: value.value,
  unit: kinds[value.kind].si,
  shown: format(value.value, value.kind, system),
});

export function stepReports(steps: readonly Step[], system: UnitSystem, mathml: boolean): StepReport[] {
  return steps.map((step): StepReport => {
    if (step.type === "formula") return formulaStep(step, system, mathml);
    if (step.type === "note") return { type: "note", text: step.text };
    const { routine } = step;
    return {
      type: "routine",
      id: routine.id,
      title: routine.title,
      method: routine.method,
      source: routine.source,
      given: step.given.map((value) => shown(value, system)),
      found: step.found.map((value) => shown(value, system)),
    };
  });
}
