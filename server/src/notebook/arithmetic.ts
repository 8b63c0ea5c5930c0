/** Arithmetic on amounts: every operation checks the dimensions, and says both sides where they do not go together. */
import { over, plain, power, sameDimension, times, wordsFor } from "../units/dimension.js";
import type { Expression, Fault, FunctionName, Sign } from "./expression-syntax.js";
import type { Amount } from "./literal.js";

type Part = Expression & { readonly shown: string };

const isPlain = (amount: Amount): boolean => sameDimension(amount.dimension, plain) && !amount.angle;
export const wordsForAmount = (amount: Amount): string => (amount.angle ? "an angle" : wordsFor(amount.dimension));
const alike = (a: Amount, b: Amount): boolean => a.angle === b.angle && sameDimension(a.dimension, b.dimension);
const fault = (code: string, message: string, at: Expression): Fault => ({ code, message, at: at.start, length: at.end - at.start });

/** Refuses what no calculation can go on with. */
export function finite(amount: Amount, at: Expression, shown: string): Amount | Fault {
  if (Number.isFinite(amount.value) && Math.abs(amount.value) < 1e60) return amount;
  return fault("expression.not-finite", `${shown} is too large to calculate with.`, at);
}

export function operate(sign: Sign, a: Amount, b: Amount, at: Expression, left: Part, right: Part): Amount | Fault {
  if (sign === "+" || sign === "-") {
    if (!alike(a, b)) return unlike(a, b, at, left, right, sign === "+" ? "added" : "subtracted");
    return { ...a, value: sign === "+" ? a.value + b.value : a.value - b.value };
  }
  if (sign === "*") return { value: a.value * b.value, dimension: times(a.dimension, b.dimension), angle: a.angle !== b.angle && sameDimension(times(a.dimension, b.dimension), plain) };
  if (sign === "/") {
    if (b.value === 0) return fault("expression.division", `${right.shown} is zero, and nothing can be divided by zero.`, right);
    return { value: a.value / b.value, dimension: over(a.dimension, b.dimension), angle: a.angle && isPlain(b) };
  }
  if (!isPlain(b)) return fault("expression.power", `${right.shown} is ${wordsForAmount(b)}; a power is a plain number.`, right);
  if (!isPlain(a) && (Math.abs(b.value) > 9 || !Number.isInteger(b.value * 2)))
    return fault("expression.power", `A quantity with a unit can be raised to a whole or half power up to 9, not to ${right.shown}.`, right);
  const value = a.value ** b.value;
  if (Number.isNaN(value)) return fault("expression.power", `${left.shown} is negative and cannot be raised to ${right.shown}.`, at);
  return { value, dimension: power(a.dimension, b.value), angle: false };
}

const unlike = (a: Amount, b: Amount, at: Expression, left: Part, right: Part, verb: string): Fault =>
  fault("expression.dimension", `${left.shown} is ${wordsForAmount(a)} and ${right.shown} is ${wordsForAmount(b)}; they cannot be ${verb}.`, at);

const angle = (value: number): Amount => ({ value, dimension: plain, angle: true });
const number = (value: number): Amount => ({ value, dimension: plain, angle: false });

const counts: Readonly<Record<FunctionName, readonly [number, number]>> = {
  min: [1, 50], max: [1, 50], sqrt: [1, 1], abs: [1, 1], sin: [1, 1], cos: [1, 1], tan: [1, 1], asin: [1, 1], acos: [1, 1], atan: [1, 1], round: [1, 2], ceil: [1, 2], floor: [1, 2],
};

/** How many values a function takes, as a fault where that many are not given. */
export function wrongCount(name: FunctionName, given: number, at: Expression): Fault | undefined {
  const [least, most] = counts[name];
  if (least <= given && given <= most) return undefined;
  const wanted = least === most ? `${least} value` : `${least} to ${most} values`;
  return fault("expression.arguments", `${name} takes ${wanted}, and ${given} stand here.`, at);
}

export function apply(name: FunctionName, values: readonly Amount[], at: Expression, parts: readonly Part[]): Amount | Fault {
  const [first, second] = values;
  const [part] = parts;
  if (name === "min" || name === "max") {
    const odd = values.findIndex((value) => !alike(value, first));
    if (odd > 0) return unlike(first, values[odd], at, part, parts[odd], "compared");
    return { ...first, value: Math[name](...values.map((value) => value.value)) };
  }
  if (name === "abs") return { ...first, value: Math.abs(first.value) };
  if (name === "sqrt") {
    if (first.value < 0) return fault("expression.root", `${part.shown} is negative and has no square root.`, part);
    return { value: Math.sqrt(first.value), dimension: power(first.dimension, 0.5), angle: false };
  }
  if (name === "sin" || name === "cos" || name === "tan") {
    if (!first.angle) return fault("expression.angle", `${part.shown} is ${wordsForAmount(first)}; ${name} takes an angle, as in ${name}(30 deg)${isPlain(first) ? `, or ${name}(atan(...)) of a slope` : ""}.`, part);
    return number(Math[name](first.value));
  }
  if (name === "asin" || name === "acos" || name === "atan") {
    if (!isPlain(first)) return fault("expression.angle", `${part.shown} is ${wordsForAmount(first)}; ${name} takes a plain number.`, part);
    const value = Math[name](first.value);
    return Number.isNaN(value) ? fault("expression.angle", `${part.shown} is beyond 1, and ${name} is defined from -1 to 1.`, part) : angle(value);
  }
  return rounded(name, first, second, part, parts[1]);
}

function rounded(name: "round" | "ceil" | "floor", value: Amount, step: Amount | undefined, part: Part, stepPart: Part): Amount | Fault {
  if (!step) {
    if (isPlain(value)) return number(Math[name](value.value));
    return fault("expression.step", `${part.shown} is ${wordsForAmount(value)}; say the step to round to, as in ${name}(${part.shown}, 1 in).`, part);
  }
  if (!alike(value, step)) return unlike(value, step, part, part, stepPart, "rounded to each other");
  if (!(step.value > 0)) return fault("expression.step", `${stepPart.shown} is no step; it has to be more than zero.`, stepPart);
  const steps = value.value / step.value;
  const whole = Math.round(steps);
  // What is a whole number of steps but for rounding stays where it is.
  return { ...value, value: (Math.abs(steps - whole) < 1e-9 ? whole : Math[name](steps)) * step.value };
}
