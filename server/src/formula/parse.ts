import { create, parseDependencies } from "mathjs/number";
import type { MathNode } from "mathjs";
import { functions, isFunctionName, namesIn, type BinaryOp, type CompareOp, type Condition, type Tree } from "./tree.js";

/** A declaration that cannot stand: a mistake in the program, never in a notebook. */
export class FormulaError extends Error {
  constructor(id: string, what: string) {
    super(`Formula ${id}: ${what}`);
    this.name = "FormulaError";
  }
}

type Parser = (text: string) => MathNode;
let parser: Parser | undefined;

/** The parser alone, made at its first use: it costs more than all the rest of the start. */
function mathjsParse(text: string): MathNode {
  parser ??= (create({ parseDependencies }, {}) as unknown as { parse: Parser }).parse;
  return parser(text);
}

export interface Names {
  readonly id: string;
  readonly symbols: ReadonlySet<string>;
  readonly constants: ReadonlySet<string>;
  readonly result: string;
}

/** `N_b = k_c * sqrt(f)` in its two sides. */
export function splitText(id: string, text: string): { result: string; expression: string } {
  const at = text.indexOf(" = ");
  const result = text.slice(0, at).trim();
  if (at < 0 || !/^[A-Za-z]\w*$/.test(result)) throw new FormulaError(id, `the text must read "result = expression", not "${text}".`);
  return { result, expression: text.slice(at + 3) };
}

/**
 * Parses the right side of a formula into our own tree. Only the node types, operators and functions of a formula are let
 * through, every name must be declared, and every declared name must occur.
 */
export function parseFormula(expression: string, names: Names): Tree {
  let node: MathNode;
  try {
    node = mathjsParse(expression);
  } catch (error) {
    throw new FormulaError(names.id, `cannot be parsed: ${error instanceof Error ? error.message : String(error)}`);
  }
  const tree = toTree(node, names);
  const used = new Set(namesIn(tree));
  for (const name of [...names.symbols, ...names.constants])
    if (name !== names.result && !used.has(name)) throw new FormulaError(names.id, `"${name}" is declared and does not occur in "${expression}".`);
  return tree;
}

// The fields of a mathjs node that are read here; the type of a node says which of them it has.
interface Raw {
  readonly type: string;
  readonly op: string;
  readonly args: readonly Raw[];
  readonly implicit?: boolean;
  readonly name: string;
  readonly value: unknown;
  readonly fn: Raw;
  readonly content: Raw;
  readonly condition: Raw;
  readonly trueExpr: Raw;
  readonly falseExpr: Raw;
  readonly conditionals: readonly string[];
  readonly params: readonly Raw[];
}

const binary = new Set(["+", "-", "*", "/", "^"]);
const compare = new Set(["<", "<=", ">", ">=", "==", "!="]);
const relational: Readonly<Record<string, CompareOp>> = {
  smaller: "<", smallerEq: "<=", larger: ">", largerEq: ">=", equal: "==", unequal: "!=",
};

function toTree(mathjs: MathNode, names: Names): Tree {
  const fail = (what: string): never => {
    throw new FormulaError(names.id, what);
  };

  const symbol = (name: string): Tree => {
    if (name === names.result) return fail(`the result "${name}" stands on both sides.`);
    if (names.constants.has(name)) return { type: "constant", name };
    if (names.symbols.has(name)) return { type: "symbol", name };
    if (name === "pi") return { type: "pi" };
    return fail(`"${name}" is not declared.`);
  };

  const number = (node: Raw): Tree => {
    switch (node.type) {
      case "ParenthesisNode":
        return number(node.content);
      case "ConstantNode":
        return typeof node.value === "number" && Number.isFinite(node.value) ? { type: "number", value: node.value } : fail(`"${String(node.value)}" is not a number.`);
      case "SymbolNode":
        return symbol(node.name);
      case "FunctionNode": {
        const { name } = node.fn;
        if (node.fn.type !== "SymbolNode" || !isFunctionName(name)) return fail(`the function "${name}" is not one a formula may call.`);
        const [least, most] = functions[name];
        if (node.args.length < least || node.args.length > most) return fail(`${name} takes ${least === most ? least : `${least} to ${most}`} arguments, not ${node.args.length}.`);
        return { type: "call", name, args: node.args.map(number) };
      }
      case "ConditionalNode":
        return { type: "choice", when: condition(node.condition), yes: number(node.trueExpr), no: number(node.falseExpr) };
      case "OperatorNode":
        if (node.implicit) return fail("a product is written with *.");
        if (node.op === "-" && node.args.length === 1) return { type: "negate", of: number(node.args[0]) };
        if (node.args.length === 2 && binary.has(node.op)) return { type: "binary", op: node.op as BinaryOp, left: number(node.args[0]), right: number(node.args[1]) };
        return fail(`"${node.op}" does not stand where a number is needed.`);
      default:
        return fail(`a ${node.type} does not stand in a formula.`);
    }
  };

  const condition = (node: Raw): Condition => {
    if (node.type === "ParenthesisNode") return condition(node.content);
    if (node.type === "RelationalNode") {
      const parts = node.conditionals.map((name, i): Condition => {
        const op = relational[name];
        return op ? { type: "compare", op, left: number(node.params[i]), right: number(node.params[i + 1]) } : fail(`"${name}" is not a comparison.`);
      });
      return parts.reduce((left, right) => ({ type: "both", left, right }));
    }
    if (node.type === "OperatorNode") {
      if (compare.has(node.op)) return { type: "compare", op: node.op as CompareOp, left: number(node.args[0]), right: number(node.args[1]) };
      if (node.op === "and" || node.op === "or") return { type: node.op === "and" ? "both" : "either", left: condition(node.args[0]), right: condition(node.args[1]) };
      if (node.op === "not") return { type: "not", of: condition(node.args[0]) };
    }
    return fail("a condition is made of comparisons, and, or, not.");
  };

  return number(mathjs as unknown as Raw);
}
