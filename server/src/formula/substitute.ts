import { displayUnit, formatParts, type ShownParts } from "../units/format.js";
import type { UnitSystem } from "../units/kinds.js";
import { compile, holds, type Values } from "./closure.js";
import { isTradeUnit, shownUnit } from "./constants.js";
import { parsedOf } from "./declare.js";
import { binding, print, printCondition, type Marks, type Piece, type Reading } from "./print.js";
import { visit, type Choice, type Condition } from "./tree.js";
import type { Formula } from "./types.js";

/** How an output writes a value in the place of its symbol. */
export type WriteValue = (name: string, parts: ShownParts) => string;

export interface Substituted {
  /** The right side with numbers and units; of a choice, the branch that was taken. */
  readonly expression: string;
  /** The conditions that decided the branches, with numbers; empty without a choice. */
  readonly because: readonly string[];
  /** The result, as shown. */
  readonly result: ShownParts;
}

/** The right side of a formula with symbols. */
export const declaredExpression = (of: Formula<any, any>, marks: Marks): string =>
  print(parsedOf(of).tree, marks, { name: (name) => ({ text: marks.symbol(name), binds: binding.atom }) });

/** The right side of a formula with the values it ran with. */
export function substitute(of: Formula<any, any>, args: Values, system: UnitSystem, marks: Marks, write: WriteValue): Substituted {
  const { tree, constants, constantValues } = parsedOf(of);
  const bare = worksOutBare(of, args, system);
  const shown = (name: string): ShownParts => {
    const constant = Object.hasOwn(constants, name) ? constants[name] : undefined;
    if (constant) return { number: constant.number, unit: bare && !isTradeUnit(constant.unit) ? "" : shownUnit(constant.unit) };
    return formatParts(args[name], of.symbols[name].kind, system);
  };
  const name = (n: string): Piece => {
    const parts = shown(n);
    const negative = parts.number.startsWith("-");
    const text = write(n, { number: parts.number.replace(/^-/, "−"), unit: parts.unit });
    return { text, binds: negative ? binding.sum : parts.unit !== "" || parts.number.includes(" ") ? binding.quantity : binding.atom };
  };
  const decided: Condition[] = [];
  const taken = (choice: Choice): boolean | undefined =>
    holds(choice.when, constantValues, args) ? true : holds({ type: "not", of: choice.when }, constantValues, args) ? false : undefined;
  const reading: Reading = { name, taken, because: (condition) => decided.push(condition) };
  const expression = print(tree, marks, reading);
  return {
    expression,
    because: decided.map((condition) => printCondition(condition, marks, { name, taken })),
    result: formatParts(of.value(args), of.symbols[of.result].kind, system),
  };
}

/**
 * Whether the line works out with the numbers as shown and the constants without their units, as practice writes it:
 * 24·√(4000 psi)·(6 in)^1.5 in pounds. A result shown in kip for lb or kN for N still counts. Where it does not work out,
 * the constants keep their units.
 */
function worksOutBare(of: Formula<any, any>, args: Values, system: UnitSystem): boolean {
  const { tree, constants } = parsedOf(of);
  if (Object.keys(constants).length === 0) return true;
  const numbers: Record<string, number> = {};
  visit(tree, (t) => {
    if (t.type === "symbol") numbers[t.name] = args[t.name] / displayUnit(args[t.name], of.symbols[t.name].kind, system).factor;
  });
  const bareConstants = Object.fromEntries(Object.entries(constants).map(([name, c]) => [name, Number(c.value / c.factor)]));
  const value = of.value(args);
  const shown = value / displayUnit(value, of.symbols[of.result].kind, system).factor;
  const ratio = compile(tree, bareConstants)(numbers) / shown;
  return [1, 1000, 0.001].some((scale) => Math.abs(ratio / scale - 1) < 1e-9);
}
