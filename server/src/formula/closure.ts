import type { BinaryOp, Choice, Condition, FunctionName, Tree } from "./tree.js";

/** Values by symbol name, in SI. */
export type Values = Readonly<Record<string, number>>;
export type Closure = (values: Values) => number;

/** Told which way each choice went; used by the units proof and by the substituted line. */
export type Watch = (choice: Choice, yes: boolean) => void;

/**
 * Turns a tree into nested functions. Constants are already numbers here. An evaluation allocates nothing; a missing
 * symbol, or an operation without a value, gives NaN, also where it stands in a condition.
 */
export function compile(tree: Tree, constants: Values, watch?: Watch): Closure {
  const toClosure = (t: Tree): Closure => compile(t, constants, watch);
  switch (tree.type) {
    case "number":
      return fixed(tree.value);
    case "pi":
      return fixed(Math.PI);
    case "constant":
      return fixed(constants[tree.name]);
    case "symbol": {
      const { name } = tree;
      return (v) => v[name];
    }
    case "negate": {
      const of = toClosure(tree.of);
      return (v) => -of(v);
    }
    case "binary":
      return compileBinary(tree.op, tree.left, tree.right, constants, toClosure);
    case "call":
      return compileCall(tree.name, tree.args.map(toClosure), tree.args[0].type === "symbol" ? tree.args[0].name : undefined);
    case "choice": {
      const when = compileCondition(tree.when, toClosure);
      const yes = toClosure(tree.yes);
      const no = toClosure(tree.no);
      if (!watch)
        return (v) => {
          const c = when(v);
          return c === 1 ? yes(v) : c === 0 ? no(v) : NaN;
        };
      return (v) => {
        const c = when(v);
        if (c !== 1 && c !== 0) return NaN;
        watch(tree, c === 1);
        return c === 1 ? yes(v) : no(v);
      };
    }
  }
}

const fixed = (value: number): Closure => () => value;

/** The value of a leaf that never changes, or undefined. */
const fixedValue = (tree: Tree, constants: Values) =>
  tree.type === "number" ? tree.value : tree.type === "pi" ? Math.PI : tree.type === "constant" ? constants[tree.name] : undefined;

/** Leaves on either side are read in place: each saves a call, and calls are most of the cost. */
function compileBinary(op: BinaryOp, left: Tree, right: Tree, constants: Values, toClosure: (t: Tree) => Closure): Closure {
  const a = left.type === "symbol" ? left.name : undefined;
  const b = right.type === "symbol" ? right.name : undefined;
  const m = fixedValue(left, constants);
  const n = fixedValue(right, constants);
  const l = toClosure(left);
  const r = toClosure(right);
  switch (op) {
    case "+":
      if (a !== undefined && b !== undefined) return (v) => v[a] + v[b];
      if (b !== undefined) return (v) => l(v) + v[b];
      if (a !== undefined) return (v) => v[a] + r(v);
      return (v) => l(v) + r(v);
    case "-":
      if (a !== undefined && b !== undefined) return (v) => v[a] - v[b];
      if (b !== undefined) return (v) => l(v) - v[b];
      if (m !== undefined) return (v) => m - r(v);
      return (v) => l(v) - r(v);
    case "*":
      if (a !== undefined && b !== undefined) return (v) => v[a] * v[b];
      if (m !== undefined && b !== undefined) return (v) => m * v[b];
      if (b !== undefined) return (v) => l(v) * v[b];
      if (a !== undefined) return (v) => v[a] * r(v);
      if (m !== undefined) return (v) => m * r(v);
      return (v) => l(v) * r(v);
    case "/":
      if (a !== undefined && b !== undefined) return (v) => v[a] / v[b];
      if (b !== undefined) return (v) => l(v) / v[b];
      if (n !== undefined) return (v) => l(v) / n;
      return (v) => l(v) / r(v);
    case "^":
      if (n !== undefined) return compilePower(l, a, n);
      return (v) => l(v) ** r(v);
  }
}

/** The exponents of structural formulas, without the slow general power. */
function compilePower(base: Closure, name: string | undefined, exponent: number): Closure {
  switch (exponent) {
    case 2:
      if (name !== undefined) return (v) => v[name] * v[name];
      return (v) => {
        const x = base(v);
        return x * x;
      };
    case 3:
      return (v) => {
        const x = base(v);
        return x * x * x;
      };
    case 0.5:
      return (v) => Math.sqrt(base(v));
    case 1.5:
      return (v) => {
        const x = base(v);
        return x * Math.sqrt(x);
      };
    default:
      return (v) => base(v) ** exponent;
  }
}

const oneArgument: { readonly [N in FunctionName]?: (x: number) => number } = {
  cbrt: Math.cbrt, abs: Math.abs, exp: Math.exp, log: Math.log, sin: Math.sin, cos: Math.cos, tan: Math.tan,
  asin: Math.asin, acos: Math.acos, atan: Math.atan, floor: Math.floor, ceil: Math.ceil,
};

function compileCall(name: FunctionName, args: readonly Closure[], symbol: string | undefined): Closure {
  const [first, second] = args;
  if (name === "sqrt") return symbol !== undefined ? (v) => Math.sqrt(v[symbol]) : (v) => Math.sqrt(first(v));
  if (name === "atan2") return (v) => Math.atan2(first(v), second(v));
  if (name === "min" || name === "max") {
    const extreme = name === "min" ? Math.min : Math.max;
    // Math.min and Math.max give NaN for NaN, so an unknown part is never passed over.
    if (args.length === 1) return first;
    return args.slice(1).reduce<Closure>((so, next) => (v) => extreme(so(v), next(v)), first);
  }
  const f = oneArgument[name] as (x: number) => number;
  return (v) => f(first(v));
}

/** 1 where the condition holds, 0 where it does not, NaN where it cannot be told. */
function compileCondition(condition: Condition, toClosure: (t: Tree) => Closure): Closure {
  if (condition.type === "not") {
    const of = compileCondition(condition.of, toClosure);
    return (v) => 1 - of(v);
  }
  if (condition.type !== "compare") {
    const left = compileCondition(condition.left, toClosure);
    const right = compileCondition(condition.right, toClosure);
    return condition.type === "both" ? (v) => left(v) * right(v) : (v) => Math.max(left(v), right(v));
  }
  const l = toClosure(condition.left);
  const r = toClosure(condition.right);
  const told = (holds: boolean, a: number, b: number) => (holds ? 1 : a <= b || a > b ? 0 : NaN);
  const by = (test: (a: number, b: number) => boolean): Closure => (v) => {
    const a = l(v);
    const b = r(v);
    return told(test(a, b), a, b);
  };
  switch (condition.op) {
    case "<":
      return by((a, b) => a < b);
    case "<=":
      return by((a, b) => a <= b);
    case ">":
      return by((a, b) => a > b);
    case ">=":
      return by((a, b) => a >= b);
    case "==":
      return by((a, b) => a === b);
    case "!=":
      return by((a, b) => a < b || a > b);
  }
}

/** Whether a condition holds for these values; false where it cannot be told. */
export const holds = (condition: Condition, constants: Values, values: Values): boolean =>
  compileCondition(condition, (t) => compile(t, constants))(values) === 1;
