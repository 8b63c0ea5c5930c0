/** The grammar of `= clear height + 6 in`: a small parser of our own, bounded in length and depth, that calls nothing. */
import { findLookalike, plainCharacters } from "../units/characters.js";
import type { KnownName } from "./names.js";
import { readLiteral, type Amount } from "./literal.js";

interface Place {
  readonly start: number;
  readonly end: number;
}
export type Expression = Place &
  (
    | { readonly type: "amount"; readonly amount: Amount }
    | { readonly type: "name"; readonly name: KnownName }
    | { readonly type: "negate"; readonly operand: Expression }
    | { readonly type: "operation"; readonly sign: Sign; readonly left: Expression; readonly right: Expression }
    | { readonly type: "call"; readonly name: FunctionName; readonly arguments: readonly Expression[] }
  );
export type Sign = "+" | "-" | "*" | "/" | "^";

export const functionNames = ["min", "max", "sqrt", "abs", "sin", "cos", "tan", "asin", "acos", "atan", "round", "ceil", "floor"] as const;
export type FunctionName = (typeof functionNames)[number];

/** Why an expression has no value; `at` and `length` inside its text. */
export interface Fault {
  readonly code: string;
  readonly message: string;
  readonly at: number;
  readonly length: number;
  /** Replacements of that stretch. */
  readonly instead?: readonly string[];
}

export interface NameSource {
  /** The longest known name at a position. */
  readonly match: (text: string, at: number) => KnownName | Fault | undefined;
  /** Names close to one that is not known. */
  readonly near: (written: string) => readonly string[];
}

export const longestExpression = 500;
const deepest = 40;

export const isFault = (result: object): result is Fault => "code" in result;

/** Parses an expression without its `=`. */
export function parseExpression(text: string, names: NameSource): Expression | Fault {
  if (text.length > longestExpression)
    return { code: "expression.too-long", message: `${text.length} characters are more than the ${longestExpression} read in one expression; name parts of it under given.`, at: 0, length: text.length };
  if (text.trim() === "") return { code: "expression.empty", message: "Nothing stands after the =; write a calculation such as = clear height + 6 in.", at: 0, length: text.length };
  try {
    const parser = new Parser(text, names);
    const tree = parser.sum(0);
    parser.expectEnd(tree);
    return tree;
  } catch (stop) {
    if (stop instanceof Stop) return stop.fault;
    throw stop;
  }
}

/** Leaves the recursion with the first fault; never seen outside this file. */
class Stop extends Error {
  constructor(readonly fault: Fault) {
    super(fault.code);
  }
}

const precedence: Readonly<Record<string, number>> = { "+": 1, "-": 1, "*": 2, "×": 2, "/": 2, "÷": 2, "^": 4 };
const signOf = (char: string): Sign => (char === "×" ? "*" : char === "÷" ? "/" : (char as Sign));
const call = new RegExp(`(${functionNames.join("|")}) *\\(`, "y");
const anyCall = /([\p{L}_]\w*) *\(/uy;
const run = /[^+*/^(),=]+/y;

class Parser {
  private at = 0;

  constructor(
    private readonly text: string,
    private readonly names: NameSource,
  ) {}

  private stop(code: string, message: string, at: number, length: number, instead?: readonly string[]): never {
    throw new Stop({ code, message, at, length, instead });
  }

  private skip(): void {
    while (/\s/.test(this.text.charAt(this.at))) this.at++;
  }

  sum(depth: number, least = 1): Expression {
    if (depth > deepest) this.stop("expression.too-deep", `More than ${deepest} parentheses stand inside one another; name parts under given.`, this.at, 1);
    let left = this.operand(depth);
    for (;;) {
      this.skip();
      const char = this.text.charAt(this.at);
      const rank = precedence[char];
      if (rank === undefined || rank < least) return left;
      this.at++;
      // Powers go from the right: 2^3^2 is 2^9.
      const right = this.sum(depth + 1, char === "^" ? rank : rank + 1);
      left = { type: "operation", sign: signOf(char), left, right, start: left.start, end: right.end };
    }
  }

  private operand(depth: number): Expression {
    this.skip();
    const start = this.at;
    const char = this.text.charAt(start);
    if (char === "-" || char === "+") {
      this.at++;
      const operand = this.sum(depth + 1, 3);
      return char === "+" ? operand : { type: "negate", operand, start, end: operand.end };
    }
    if (char === "(") return this.parenthesis(depth, start);
    if (/[\d.]/.test(char)) return this.literal(start);
    return this.called(depth, start) ?? this.named(start);
  }

  private parenthesis(depth: number, start: number): Expression {
    this.at++;
    const inner = this.sum(depth + 1);
    this.close(start, "parenthesis");
    return { ...inner, start, end: this.at };
  }

  private close(start: number, what: string): void {
    this.skip();
    const char = this.text.charAt(this.at);
    if (char === ")") {
      this.at++;
      return;
    }
    if (char === "") this.stop("expression.parenthesis", `The ${what} opened here is not closed; write ) after its last part.`, start, Math.max(1, this.text.trimEnd().length - start));
    this.unexpected();
  }

  private literal(start: number): Expression {
    const found = readLiteral(this.text, start);
    if (!found) this.unexpected();
    if ("ambiguous" in found) {
      const [one, other] = found.ambiguous;
      this.stop("expression.ambiguous", `${this.text.slice(start, found.end)} can be read in two ways in a calculation; write ${one} or ${other}.`, start, found.end - start, found.ambiguous);
    }
    this.at = found.end;
    return { type: "amount", amount: found.amount, start, end: found.end };
  }

  private called(depth: number, start: number): Expression | undefined {
    call.lastIndex = start;
    const found = call.exec(this.text);
    if (!found) return undefined;
    this.at = start + found[0].length;
    const parts: Expression[] = [];
    this.skip();
    if (this.text.charAt(this.at) !== ")") {
      for (;;) {
        parts.push(this.sum(depth + 1));
        this.skip();
        if (this.text.charAt(this.at) !== ",") break;
        this.at++;
      }
    }
    this.close(start, found[1]);
    return { type: "call", name: found[1] as FunctionName, arguments: parts, start, end: this.at };
  }

  private named(start: number): Expression {
    const found = this.names.match(this.text, start);
    if (found && isFault(found)) throw new Stop(found);
    if (found) {
      const next = /^\s*([\p{L}\p{N}_])/u.exec(this.text.slice(found.end));
      // A longer name was meant where words go on: `clear height of wall`.
      if (next) this.unknown(start);
      this.at = found.end;
      return { type: "name", name: found, start, end: found.end };
    }
    if (/[\p{L}_]/u.test(this.text.charAt(start))) this.unknown(start);
    this.unexpected();
  }

  private unknown(start: number): never {
    anyCall.lastIndex = start;
    const called = anyCall.exec(this.text);
    if (called) this.stop("expression.unknown-function", `${called[1]} cannot be called here; ${functionNames.join(", ")} can.`, start, called[1].length);
    run.lastIndex = start;
    const written = (run.exec(this.text)?.[0] ?? this.text.charAt(start)).replace(/\s+-(?:\s.*)?$/u, "").trimEnd();
    const near = this.names.near(written);
    const advice = near.length > 0 ? `did you mean ${near.join(" or ")}?` : "name it under given, or write the path of a field such as columns.south.height.";
    this.stop("expression.unknown-name", `"${written}" is not a name known here; ${advice}`, start, written.length, near);
  }

  expectEnd(tree: Expression): void {
    this.skip();
    if (this.at >= this.text.length) return;
    const rest = this.text.slice(this.at).trimEnd();
    if (/^[\p{L}\p{N}_.(]/u.test(rest))
      this.stop("expression.operator", `An operator is missing between "${this.text.slice(tree.start, this.at).trim().slice(-30)}" and "${rest.slice(0, 30)}"; write +, -, * or / there.`, this.at, rest.length);
    this.unexpected();
  }

  private unexpected(): never {
    this.skip();
    const { at } = this;
    const char = this.text.charAt(at);
    if (char === "") this.stop("expression.incomplete", "The calculation ends in the middle; write the value that is missing.", Math.max(0, this.text.trimEnd().length - 1), 1);
    const strange = findLookalike(this.text.slice(at));
    if (strange?.at === 0) this.stop("expression.character", strange.message, at, strange.length, [plainCharacters(this.text.slice(at, at + strange.length))]);
    if (char === ",") this.stop("expression.comma", "A comma separates the values of min, max and the like; write a decimal point, or put the values in the function's parentheses.", at, 1);
    if (char === ")") this.stop("expression.parenthesis", "This ) closes nothing; remove it, or write the ( it belongs to.", at, 1);
    this.stop("expression.character", `"${char}" has no meaning in a calculation; numbers with units, names, + - * / ^ and parentheses do.`, at, 1);
  }
}
