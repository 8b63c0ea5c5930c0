/** Values of expressions and of the fields they name: computed when asked for, once, with loops found and named. */
import { dimensionOfKind } from "../units/dimension.js";
import { readQuantity } from "../units/parse.js";
import { readNumber } from "../units/plain.js";
import { apply, finite, operate, wrongCount } from "./arithmetic.js";
import { isFault, parseExpression, type Expression, type Fault } from "./expression-syntax.js";
import type { Field, RecordField, Shape } from "./fields.js";
import type { Amount } from "./literal.js";
import { Names, type KnownName } from "./names.js";
import { notebook } from "./schema.js";
import type { MapNode, Node } from "./tree.js";

export type { Amount } from "./literal.js";

/** A value, a fault of the expression itself, or nothing because what it depends on has none (which is told there). */
export type Outcome =
  | { readonly state: "value"; readonly amount: Amount }
  | { readonly state: "fault"; readonly fault: Fault }
  | { readonly state: "waits"; readonly on: string };

export interface Evaluated {
  readonly outcome: Outcome;
  /** Every name met, resolved, with its place in the expression. */
  readonly names: readonly KnownName[];
  /** Keys of the fields and given values that were read. */
  readonly dependencies: readonly (readonly string[])[];
}

/** Equal texts for equal outcomes, to see whether what an expression read has changed. */
export const outcomeText = (outcome: Outcome): string =>
  outcome.state === "value"
    ? `${outcome.amount.value} ${outcome.amount.dimension.mass} ${outcome.amount.dimension.length} ${outcome.amount.dimension.time} ${outcome.amount.angle}`
    : outcome.state === "fault"
      ? `fault ${outcome.fault.message}`
      : `waits ${outcome.on}`;

const longestChain = 200;

/** Evaluates within one document. Each outcome is kept for the life of the evaluator, which is one reading. */
export class Evaluator {
  readonly names: Names;
  private readonly known = new Map<string, Evaluated>();
  private readonly stack: { readonly key: string; readonly shown: string }[] = [];
  private readonly loops = new Map<string, string>();
  private readonly outcomes = new Map<string, Outcome>();
  private readonly children = new Map<MapNode, ReadonlyMap<string, Node>>();

  constructor(private readonly root: MapNode | undefined) {
    this.names = new Names(root);
  }

  /** The value of an expression (without its `=`) that stands in the field `keys`. */
  evaluate(keys: readonly string[], text: string): Evaluated {
    const key = keys.join("\n");
    const before = this.known.get(key);
    if (before) return before;
    const loop = this.stack.findIndex((step) => step.key === key);
    if (loop >= 0) {
      this.noteLoop(this.stack.slice(loop));
      return { outcome: { state: "waits", on: keys.join(".") }, names: [], dependencies: [] };
    }
    if (this.stack.length >= longestChain) {
      const fault: Fault = { code: "expression.too-deep", message: `More than ${longestChain} expressions depend on one another here.`, at: 0, length: text.length };
      return { outcome: { state: "fault", fault }, names: [], dependencies: [] };
    }
    this.stack.push({ key, shown: shownPath(keys) });
    const run = new Run(text, (name) => this.valueOf(name));
    const tree = parseExpression(text, this.names);
    const result = isFault(tree) ? tree : run.value(tree);
    this.stack.pop();
    const around = this.loops.get(key);
    const outcome: Outcome = around
      ? { state: "fault", fault: { code: "expression.loop", message: `${around} depend on one another in a loop; write one of them as a value.`, at: 0, length: text.length } }
      : isFault(result)
        ? { state: "fault", fault: result }
        : "on" in result
          ? { state: "waits", on: result.on }
          : { state: "value", amount: result };
    const evaluated: Evaluated = { outcome, names: isFault(tree) ? [] : namesIn(tree), dependencies: run.dependencies };
    this.known.set(key, evaluated);
    return evaluated;
  }

  private noteLoop(members: readonly { readonly key: string; readonly shown: string }[]): void {
    members.forEach((member, i) => {
      const turned = [...members.slice(i), ...members.slice(0, i), member];
      this.loops.set(member.key, turned.map((step) => step.shown).join(" -> "));
    });
  }

  /** What a name stands for; kept once no expression around it is being computed, when a loop can no longer change it. */
  private valueOf(name: Pick<KnownName, "keys" | "field">): Outcome {
    const key = name.keys.join("\n");
    const before = this.outcomes.get(key);
    if (before) return before;
    const outcome = this.computed(name);
    if (outcome.state !== "waits" || this.stack.length === 0) this.outcomes.set(key, outcome);
    return outcome;
  }

  private computed(name: Pick<KnownName, "keys" | "field">): Outcome {
    const { keys } = name;
    const written = this.writtenAt(keys);
    const shown = keys.join(".");
    if (keys[0] === "given") return written === undefined ? { state: "waits", on: shown } : this.given(keys, written);
    const field = name.field;
    const text = written ?? field?.assumed?.text;
    if (text === undefined) return { state: "fault", fault: { code: "expression.no-value", message: `${shown} is not written in the notebook.`, at: 0, length: 0 } };
    const expression = expressionOf(text);
    if (expression !== undefined) return this.evaluate(keys, expression.text).outcome;
    if (field?.type === "quantity") {
      const read = readQuantity(text, field.kind);
      return read.ok ? { state: "value", amount: { value: read.value, dimension: dimensionOfKind(field.kind), angle: field.kind === "angle" } } : { state: "waits", on: shown };
    }
    const read = readNumber(text);
    return read.ok ? { state: "value", amount: { value: read.value, dimension: dimensionOfKind("number"), angle: false } } : { state: "waits", on: shown };
  }

  private given(keys: readonly string[], text: string): Outcome {
    const expression = expressionOf(text);
    return expression ? this.evaluate(keys, expression.text).outcome : literalOutcome(text);
  }

  /** The outcome of a field by its keys, for comparing with an earlier reading. */
  outcomeAt(keys: readonly string[]): Outcome {
    return this.valueOf({ keys, field: fieldAt(keys) });
  }

  private childrenOf(map: MapNode): ReadonlyMap<string, Node> {
    let known = this.children.get(map);
    if (!known) {
      // Reversed, so that the first of a repeated name is the one found.
      this.children.set(map, (known = new Map([...map.entries].reverse().map((entry) => [entry.key, entry.value]))));
    }
    return known;
  }

  /** The text of the field, also where a short form says it. */
  private writtenAt(keys: readonly string[]): string | undefined {
    let node: Node | undefined = this.root;
    let field: Field | undefined = notebook;
    for (const key of keys) {
      if (node?.type === "scalar") return shortPart(field, node.text, key);
      if (node?.type !== "map") return undefined;
      node = this.childrenOf(node).get(key);
      field = childField(field, key);
    }
    return node?.type === "scalar" ? node.text : undefined;
  }
}

const shownPath = (keys: readonly string[]): string => (keys[0] === "given" ? keys.slice(1).join(".") : keys.join("."));

const childField = (field: Field | undefined, key: string): Field | undefined =>
  field?.type === "record" ? (field.fields as Shape)[key] : field?.type === "named" ? field.of : undefined;

const fieldAt = (keys: readonly string[]): Field | undefined => (keys[0] === "given" ? undefined : keys.reduce<Field | undefined>(childField, notebook));

function shortPart(field: Field | undefined, text: string, key: string): string | undefined {
  const parts = (field as RecordField | undefined)?.short?.split(text);
  return Array.isArray(parts) ? parts.find((part) => part.field === key)?.text : undefined;
}

/** The text after a leading `=`, with its place; undefined where the text is no expression. */
export function expressionOf(text: string): { readonly text: string; readonly at: number } | undefined {
  const lead = /^\s*=/.exec(text);
  return lead ? { text: text.slice(lead[0].length), at: lead[0].length } : undefined;
}

const noNames = { match: () => undefined, near: () => [] };

/** A single quantity of any dimension, as `given` holds it. */
export function literalOutcome(text: string): Outcome {
  const tree = parseExpression(text, noNames);
  if (isFault(tree)) return { state: "fault", fault: tree };
  const single = tree.type === "amount" || (tree.type === "negate" && tree.operand.type === "amount");
  if (!single) return { state: "fault", fault: { code: "given.calculation", message: `${text.trim()} is a calculation; write = before it.`, at: 0, length: text.length, instead: [`= ${text.trim()}`] } };
  const result = new Run(text, () => ({ state: "waits", on: "" })).value(tree);
  return isFault(result) ? { state: "fault", fault: result } : "on" in result ? { state: "waits", on: result.on } : { state: "value", amount: result };
}

function namesIn(tree: Expression): KnownName[] {
  if (tree.type === "name") return [tree.name];
  if (tree.type === "negate") return namesIn(tree.operand);
  if (tree.type === "operation") return [...namesIn(tree.left), ...namesIn(tree.right)];
  return tree.type === "call" ? tree.arguments.flatMap(namesIn) : [];
}

interface Waits {
  readonly on: string;
}
const isAmount = (result: Amount | Fault | Waits): result is Amount => "value" in result;

/** One evaluation, from left to right, that ends at the first part without a value. */
class Run {
  readonly dependencies: (readonly string[])[] = [];

  constructor(
    private readonly text: string,
    private readonly lookUp: (name: KnownName) => Outcome,
  ) {}

  private shown(tree: Expression): Expression & { readonly shown: string } {
    return { ...tree, shown: this.text.slice(tree.start, tree.end).trim() };
  }

  value(tree: Expression): Amount | Fault | Waits {
    if (tree.type === "amount") return finite(tree.amount, tree, this.shown(tree).shown);
    if (tree.type === "name") return this.named(tree.name, tree);
    if (tree.type === "negate") {
      const inner = this.value(tree.operand);
      return isAmount(inner) ? { ...inner, value: 0 - inner.value } : inner;
    }
    const result = tree.type === "operation" ? this.operation(tree) : this.call(tree);
    return isAmount(result) ? finite(result, tree, this.shown(tree).shown) : result;
  }

  private named(name: KnownName, at: Expression): Amount | Fault | Waits {
    this.dependencies.push(name.keys);
    const outcome = this.lookUp(name);
    if (outcome.state === "value") return outcome.amount;
    const missing = outcome.state === "fault" && outcome.fault.code === "expression.no-value";
    if (missing) return { code: "expression.no-value", message: outcome.fault.message, at: at.start, length: at.end - at.start };
    return { on: name.keys.join(".") };
  }

  private operation(tree: Expression & { type: "operation" }): Amount | Fault | Waits {
    const left = this.value(tree.left);
    if (!isAmount(left)) return left;
    const right = this.value(tree.right);
    if (!isAmount(right)) return right;
    return operate(tree.sign, left, right, tree, this.shown(tree.left), this.shown(tree.right));
  }

  private call(tree: Expression & { type: "call" }): Amount | Fault | Waits {
    const wrong = wrongCount(tree.name, tree.arguments.length, tree);
    if (wrong) return wrong;
    const values: Amount[] = [];
    for (const argument of tree.arguments) {
      const value = this.value(argument);
      if (!isAmount(value)) return value;
      values.push(value);
    }
    return apply(tree.name, values, tree, tree.arguments.map((argument) => this.shown(argument)));
  }
}
