/** Quantities inside an expression, read as the trade writes them: `6 in`, `5'-6"`, `1-1/2 in`, `3/4 in`, `2 in 12`, `30 deg`. */
import { plain, readUnitPrefix, type Dimension } from "../units/dimension.js";
import { readNumeral } from "../units/numeral.js";
import { readQuantity } from "../units/parse.js";

/** A number with its dimension, SI. An angle is told from a plain number, so that `sin(30)` is not taken for radians. */
export interface Amount {
  readonly value: number;
  readonly dimension: Dimension;
  readonly angle: boolean;
}

export interface Literal {
  readonly amount: Amount;
  readonly end: number;
}

/** Written in a way that could mean two things; each text says one of them. */
export interface Ambiguous {
  readonly ambiguous: readonly [string, string];
  readonly end: number;
}

const inches = String.raw`(?:\d+(?:[- ]\d+\/\d+)?|\d+\/\d+|\d*\.\d+)`;
const feetAndInches = new RegExp(String.raw`\d+(?: *['′] *|['′]-| *(?:ft|feet) +)${inches} *(?:"|″|in\b)`, "y");
const tightFeet = new RegExp(String.raw`(\d+ *(?:ft|feet))-(${inches} *(?:"|″|in\b))`, "y");
const slope = /(\d+(?:\.\d+)?) +in +(\d+(?:\.\d+)?)(?! *[\w.'"/])/y;
const mixed = /(\d+)-(\d+\/\d+)(?![\w.])/y;
const oneNumber = /(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+(?![\w.]))?/iy;

const match = (pattern: RegExp, text: string, at: number): RegExpExecArray | null => {
  pattern.lastIndex = at;
  return pattern.exec(text);
};

const skip = (text: string, at: number): number => {
  while (text.charCodeAt(at) === 32) at++;
  return at;
};

const number = (value: number): Amount => ({ value, dimension: plain, angle: false });

/** Reads the quantity that begins at a digit or a decimal point; undefined where none does. */
export function readLiteral(text: string, at: number): Literal | Ambiguous | undefined {
  const feet = match(feetAndInches, text, at);
  if (feet) {
    const read = readQuantity(feet[0], "length");
    if (read.ok) return { amount: { value: read.value, dimension: lengthDimension, angle: false }, end: at + feet[0].length };
  }
  const tight = match(tightFeet, text, at);
  if (tight) return { ambiguous: [`${tight[1]} ${tight[2]}`, `${tight[1]} - ${tight[2]}`], end: at + tight[0].length };
  const rise = match(slope, text, at);
  if (rise) return { amount: number(Number(rise[1]) / Number(rise[2])), end: at + rise[0].length };

  // A fraction is one number where a unit follows it; without one it is a division, with the same value.
  const numeral = readNumeral(text, at);
  if (numeral && numeral.form !== "decimal" && numeral.form !== "whole") {
    const unit = readUnitPrefix(text, skip(text, numeral.end));
    if (unit) return { amount: { value: numeral.value * unit.factor, dimension: unit.dimension, angle: unit.role === "angle" }, end: unit.end };
    const whole = match(mixed, text, at);
    if (whole) return { ambiguous: [`(${whole[1]} + ${whole[2]})`, `${whole[1]} - ${whole[2]}`], end: at + whole[0].length };
  }
  const found = match(oneNumber, text, at);
  if (!found) return undefined;
  const end = at + found[0].length;
  const unit = readUnitPrefix(text, skip(text, end));
  if (!unit) return { amount: number(Number(found[0])), end };
  return { amount: { value: Number(found[0]) * unit.factor, dimension: unit.dimension, angle: unit.role === "angle" }, end: unit.end };
}

const lengthDimension: Dimension = { mass: 0, length: 1, time: 0 };
