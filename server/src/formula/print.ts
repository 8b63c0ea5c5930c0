import type { BinaryOp, Choice, CompareOp, Condition, FunctionName, Tree } from "./tree.js";

/**
 * How one output writes the pieces of a formula. The printer decides on order, parentheses and branches once, for all
 * outputs; an output only says what a fraction or a root looks like.
 */
export interface Marks {
  readonly number: (text: string) => string;
  readonly symbol: (name: string) => string;
  /** An operator between two operands, with the space it wants. */
  readonly operator: (sign: string) => string;
  readonly sequence: (parts: readonly string[]) => string;
  readonly fenced: (open: string, inner: string, close: string) => string;
  readonly fraction: (top: string, bottom: string) => string;
  /** Whether a fraction shows by itself where it begins and ends. */
  readonly stacked: boolean;
  readonly power: (base: string, exponent: string) => string;
  /** Whether an exponent is set off by its height. */
  readonly raised: boolean;
  readonly root: (of: string, degree: 2 | 3) => string;
  readonly call: (name: string, args: readonly string[]) => string;
  readonly cases: (rows: readonly { readonly value: string; readonly when: string }[], otherwise: string) => string;
  readonly word: (text: string) => string;
}

/** How tightly a piece holds together, loosest first. */
export const binding = { choice: 0, sum: 1, quotient: 2, product: 3, quantity: 4, power: 5, atom: 6 } as const;

export interface Piece {
  readonly text: string;
  readonly binds: number;
}

/** What stands for a name (its letter, or its value), and which way a choice goes where that is known. */
export interface Reading {
  readonly name: (name: string) => Piece;
  readonly taken?: (choice: Choice) => boolean | undefined;
  /** Told the condition that held at each choice that was resolved. */
  readonly because?: (condition: Condition) => void;
}

const signs: Readonly<Record<CompareOp, string>> = { "<": "<", "<=": "≤", ">": ">", ">=": "≥", "==": "=", "!=": "≠" };
const opposite: Readonly<Record<CompareOp, CompareOp>> = { "<": ">=", "<=": ">", ">": "<=", ">=": "<", "==": "!=", "!=": "==" };
const spelled: { readonly [N in FunctionName]?: string } = { log: "ln", asin: "arcsin", acos: "arccos", atan: "arctan" };

/** The condition that holds where this one does not. */
export function negated(condition: Condition): Condition {
  switch (condition.type) {
    case "compare":
      return { ...condition, op: opposite[condition.op] };
    case "not":
      return condition.of;
    default:
      return { type: condition.type === "both" ? "either" : "both", left: negated(condition.left), right: negated(condition.right) };
  }
}

export const print = (tree: Tree, marks: Marks, reading: Reading): string => new Printer(marks, reading).piece(tree).text;
export const printCondition = (condition: Condition, marks: Marks, reading: Reading): string =>
  new Printer(marks, reading).condition(condition).text;

class Printer {
  constructor(
    private readonly marks: Marks,
    private readonly reading: Reading,
  ) {}

  piece(tree: Tree): Piece {
    const { marks } = this;
    switch (tree.type) {
      case "number":
        return { text: marks.number(String(tree.value)), binds: binding.atom };
      case "pi":
        return { text: marks.symbol("pi"), binds: binding.atom };
      case "symbol":
      case "constant":
        return this.reading.name(tree.name);
      case "negate":
        return { text: marks.sequence([marks.word("−"), this.within(tree.of, binding.quotient)]), binds: binding.sum };
      case "binary":
        return this.binary(tree.op, tree.left, tree.right);
      case "call":
        return { text: this.call(tree.name, tree.args), binds: binding.atom };
      case "choice":
        return this.choice(tree);
    }
  }

  /** A piece, in parentheses where it holds together less tightly than its place asks. */
  private within(tree: Tree, least: number): string {
    const { text, binds } = this.piece(tree);
    return binds >= least ? text : this.marks.fenced("(", text, ")");
  }

  private binary(op: BinaryOp, left: Tree, right: Tree): Piece {
    const { marks } = this;
    const join = (l: string, sign: string, r: string) => marks.sequence([l, marks.operator(sign), r]);
    switch (op) {
      case "+":
      case "-":
        return { text: join(this.within(left, binding.sum), op === "+" ? "+" : "−", this.within(right, binding.quotient)), binds: binding.sum };
      case "*":
        return { text: join(this.within(left, binding.quotient), "·", this.within(right, binding.product)), binds: marks.stacked ? binding.product : this.productBinding(left) };
      case "/":
        if (marks.stacked) return { text: marks.fraction(this.piece(left).text, this.piece(right).text), binds: binding.quantity };
        return { text: marks.fraction(this.within(left, binding.quotient), this.within(right, binding.power)), binds: binding.quotient };
      case "^": {
        const exponent = marks.raised ? this.piece(right).text : this.within(right, binding.atom);
        return { text: marks.power(this.within(left, binding.atom), exponent), binds: binding.power };
      }
    }
  }

  /** In one line, `a/b·c` reads as (a/b)·c only as long as nothing stands before it. */
  private productBinding(left: Tree): number {
    return this.piece(left).binds === binding.quotient ? binding.quotient : binding.product;
  }

  private call(name: FunctionName, args: readonly Tree[]): string {
    const { marks } = this;
    const [first] = args;
    if (name === "sqrt" || name === "cbrt") return marks.root(this.piece(first).text, name === "sqrt" ? 2 : 3);
    if (name === "abs") return marks.fenced("|", this.piece(first).text, "|");
    if (name === "floor") return marks.fenced("⌊", this.piece(first).text, "⌋");
    if (name === "ceil") return marks.fenced("⌈", this.piece(first).text, "⌉");
    return marks.call(spelled[name] ?? name, args.map((arg) => this.piece(arg).text));
  }

  private choice(choice: Choice): Piece {
    const taken = this.reading.taken?.(choice);
    if (taken !== undefined) {
      this.reading.because?.(taken ? choice.when : negated(choice.when));
      return this.piece(taken ? choice.yes : choice.no);
    }
    const rows: { value: string; when: string }[] = [];
    let rest: Tree = choice;
    for (; rest.type === "choice"; rest = rest.no) rows.push({ value: this.piece(rest.yes).text, when: this.condition(rest.when).text });
    return { text: this.marks.cases(rows, this.piece(rest).text), binds: binding.choice };
  }

  condition(condition: Condition): Piece {
    const { marks } = this;
    if (condition.type === "compare") {
      const text = marks.sequence([this.within(condition.left, binding.sum), marks.operator(signs[condition.op]), this.within(condition.right, binding.sum)]);
      return { text, binds: binding.atom };
    }
    if (condition.type === "not") return this.condition(negated(condition.of));
    const both = condition.type === "both";
    const part = (c: Condition) => {
      const { text, binds } = this.condition(c);
      // "or" inside "and" is the one order that needs parentheses.
      return both && binds === binding.sum ? marks.fenced("(", text, ")") : text;
    };
    return { text: marks.sequence([part(condition.left), marks.word(both ? " and " : " or "), part(condition.right)]), binds: both ? binding.product : binding.sum };
  }
}
