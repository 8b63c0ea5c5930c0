import { lookUp, unitMarks, type Unit } from "./table.js";
import { over, plain, power, sameDimension, times, dimension } from "./vector.js";

export interface UnitText extends Unit {
  /** As written. */
  readonly text: string;
  /** Position after its last character. */
  readonly end: number;
  /** Set for a single unit to the first power, so that feet can be told from feet squared. */
  readonly simple: boolean;
}

interface Manner {
  /** Spaces inside a compound, `sq in`, `per`, a dot after an abbreviation: fine in a field, ambiguous in an expression. */
  readonly loose: boolean;
}

const superscripts: Readonly<Record<string, string>> = { "²": "2", "³": "3", "⁴": "4", "⁻": "-", "¹": "1" };
const isForce = (u: Unit) => sameDimension(u.dimension, dimension(1, 1, -2));
const isLength = (u: Unit) => sameDimension(u.dimension, dimension(0, 1, 0));

const match = (pattern: RegExp, text: string, at: number) => {
  pattern.lastIndex = at;
  return pattern.exec(text);
};

const prefixWord = /(sq|square|cu|cubic)\.? +([A-Za-z]+)\b/iy;
const letters = /[A-Za-z]+/y;
const caret = /\^(?:\((-?\d+)\/(\d+)\)|(-?\d+(?:\.\d+)?))/y;
const raised = /⁻?[¹²³⁴]/y;
// `in2`, `N/mm2`: a digit right after the letters, and nothing else to make a number or a name of it.
const digit = /[234](?![\w.])/y;
const wordGoesOn = /[\w]/y;

function readPower(text: string, at: number): { exponent: number; end: number } {
  const written = match(caret, text, at);
  if (written) {
    const exponent = written[3] !== undefined ? Number(written[3]) : Number(written[1]) / Number(written[2]);
    if (Number.isFinite(exponent) && Math.abs(exponent) <= 9) return { exponent, end: at + written[0].length };
  }
  const small = match(raised, text, at);
  if (small) return { exponent: Number([...small[0]].map((c) => superscripts[c]).join("")), end: at + small[0].length };
  const plainDigit = match(digit, text, at);
  if (plainDigit) return { exponent: Number(plainDigit[0]), end: at + 1 };
  return { exponent: 1, end: at };
}

function readOne(text: string, at: number, { loose }: Manner): UnitText | undefined {
  const mark = unitMarks.get(text.charAt(at));
  if (mark) return { ...mark, text: text.charAt(at), end: at + 1, simple: true };

  const prefixed = loose ? match(prefixWord, text, at) : null;
  if (prefixed) {
    const unit = lookUp(prefixed[2]);
    const exponent = /^sq/i.test(prefixed[1]) ? 2 : 3;
    if (unit && isLength(unit)) return raise(unit, exponent, text, at, at + prefixed[0].length);
  }

  const word = match(letters, text, at);
  if (!word) return undefined;
  const unit = lookUp(word[0]);
  if (!unit) return undefined;
  const { exponent, end } = readPower(text, at + word[0].length);
  if (match(wordGoesOn, text, end)) return undefined;
  const dotted = loose && exponent === 1 && text.charAt(end) === "." && !/\d/.test(text.charAt(end + 1));
  return raise(unit, exponent, text, at, dotted ? end + 1 : end);
}

const raise = (unit: Unit, exponent: number, text: string, at: number, end: number): UnitText =>
  exponent === 1
    ? { ...unit, text: text.slice(at, end), end, simple: true }
    : { factor: unit.factor ** exponent, dimension: power(unit.dimension, exponent), text: text.slice(at, end), end, simple: false };

const tight = /[/*·⋅-]/y;
const spaced = / *(?:[/*·⋅×]|per\b) *|-| +/y;

/** Reads the longest unit that starts at a position: one unit, or units joined by `/`, `·`, `*` or the hyphen of `kip-ft`. */
export function readUnit(text: string, at: number, manner: Manner): UnitText | undefined {
  const first = readOne(text, at, manner);
  if (!first) return undefined;
  let whole = first;
  let last = first;
  for (;;) {
    const joint = match(manner.loose ? spaced : tight, text, whole.end);
    if (!joint) return whole;
    const next = readOne(text, whole.end + joint[0].length, manner);
    // A mark (feet, inches, degrees, percent) is never part of a compound.
    if (!next || unitMarks.has(next.text) || unitMarks.has(last.text)) return whole;
    const sign = joint[0].trim();
    // The hyphen is a joint only in a moment, so that it stays a minus sign everywhere else.
    if (sign === "-" && !((isForce(last) && isLength(next)) || (isLength(last) && isForce(next)))) return whole;
    const divides = sign === "/" || sign === "per";
    whole = {
      factor: divides ? whole.factor / next.factor : whole.factor * next.factor,
      dimension: (divides ? over : times)(whole.dimension, next.dimension),
      text: text.slice(at, next.end),
      end: next.end,
      simple: false,
    };
    last = next;
  }
}

/**
 * The longest unit spelled at a position of an expression, as in `clear height + 6 in`, or undefined. No space is read
 * inside it, so `2 m - a` ends the unit after `m`.
 */
export const readUnitPrefix = (text: string, at: number): UnitText | undefined => readUnit(text, at, { loose: false });

/** Reads a whole text as a unit; the empty text is the unit of a plain number. */
export function unitFrom(text: string): Unit | undefined {
  const trimmed = text.trim();
  if (trimmed === "" || trimmed === "1") return { factor: 1, dimension: plain };
  const unit = readUnit(trimmed, 0, { loose: true });
  return unit?.end === trimmed.length ? unit : undefined;
}
