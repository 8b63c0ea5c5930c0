import { compile, type Closure, type Values } from "./closure.js";
import { readConstant, type Constant } from "./constants.js";
import { FormulaError, parseFormula, splitText } from "./parse.js";
import type { Tree } from "./tree.js";
import type { Formula, FormulaDecl, ResultName, SymbolTable } from "./types.js";

/** What a formula's text parses to, for printing and proof. */
export interface Parsed {
  readonly expression: string;
  readonly tree: Tree;
  readonly constants: Readonly<Record<string, Constant>>;
  /** The constants in SI. */
  readonly constantValues: Values;
}

interface Entry {
  readonly formula: Formula;
  readonly parsed: () => Parsed;
}

const registry = new Map<string, Entry>();

/**
 * Declares a formula and registers it. Nothing is parsed before its first value or printing. A second declaration under
 * the same id, or a text whose result has no symbol, throws at once: it is a mistake in the program.
 */
export function formula<const T extends string, const S extends SymbolTable>(decl: FormulaDecl<T, S>): Formula<T, S> {
  if (registry.has(decl.id)) throw new FormulaError(decl.id, "is declared twice.");
  const entry = build(decl);
  registry.set(decl.id, entry);
  return entry.formula as unknown as Formula<T, S>;
}

/** A formula outside the registry, for tests of this room. */
export const unregistered = <const T extends string, const S extends SymbolTable>(decl: FormulaDecl<T, S>): Formula<T, S> =>
  build(decl).formula as unknown as Formula<T, S>;

const parts = new WeakMap<object, () => Parsed>();

function build(decl: FormulaDecl): Entry {
  const { result, expression } = splitText(decl.id, decl.text);
  if (!Object.hasOwn(decl.symbols, result)) throw new FormulaError(decl.id, `the result "${result}" is not among the symbols.`);
  for (const name of Object.keys(decl.constants ?? {}))
    if (Object.hasOwn(decl.symbols, name)) throw new FormulaError(decl.id, `"${name}" is both a symbol and a constant.`);

  let known: Parsed | undefined;
  const parsed = (): Parsed => (known ??= parse(decl, result, expression));
  let run: Closure = (values) => {
    const { tree, constantValues } = parsed();
    run = compile(tree, constantValues);
    return run(values);
  };
  const value = (args: Values): number => {
    const found = run(args);
    // Dividing by zero has no value either.
    return found - found === 0 ? found : NaN;
  };
  const made = Object.freeze({ ...decl, result, value });
  parts.set(made, parsed);
  return { formula: made as Formula, parsed };
}

function parse(decl: FormulaDecl, result: string, expression: string): Parsed {
  const constants = Object.fromEntries(Object.entries(decl.constants ?? {}).map(([name, text]) => [name, readConstant(decl.id, name, text)]));
  const tree = parseFormula(expression, {
    id: decl.id,
    result,
    symbols: new Set(Object.keys(decl.symbols)),
    constants: new Set(Object.keys(constants)),
  });
  const constantValues = Object.fromEntries(Object.entries(constants).map(([name, c]) => [name, c.value]));
  return { expression, tree, constants, constantValues };
}

/** The parsed parts of a declared formula. */
export function parsedOf(of: Formula<any, any>): Parsed {
  const parsed = parts.get(of);
  if (!parsed) throw new FormulaError(of.id, "was not made by formula().");
  return parsed();
}

/** Every declared formula, in the order of declaration. */
export const allFormulas = (): readonly Formula[] => [...registry.values()].map((entry) => entry.formula);

/** The formula with this id. */
export const formulaById = (id: string): Formula | undefined => registry.get(id)?.formula;

/** Parses every declared formula, so that the first edit does not pay for it; called once the server has answered. */
export function warm(): void {
  for (const { parsed } of registry.values()) parsed();
}

export type { ResultName };
