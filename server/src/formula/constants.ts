import { readNumeral } from "../units/numeral.js";
import { unitFrom, type Unit } from "../units/dimension.js";
import { FormulaError } from "./parse.js";

/** A named constant that carries units, `24 lbf^0.5/inch^0.5`. */
export interface Constant {
  /** As declared, the number and the unit apart. */
  readonly number: string;
  readonly unit: string;
  readonly factor: Unit["factor"];
  readonly dimension: Unit["dimension"];
  /** In SI. */
  readonly value: number;
}

/** Reads one; a text that is no number with a known unit is a mistake in the declaration. */
export function readConstant(id: string, name: string, text: string): Constant {
  const trimmed = text.trim();
  const sign = trimmed.startsWith("-") ? 1 : 0;
  const numeral = readNumeral(trimmed, sign);
  const unit = numeral ? unitFrom(trimmed.slice(numeral.end)) : undefined;
  if (!numeral || !unit || !Number.isFinite(numeral.value)) throw new FormulaError(id, `the constant ${name} is not a number with a unit: "${text}".`);
  return {
    number: trimmed.slice(0, numeral.end),
    unit: trimmed.slice(numeral.end).trim(),
    factor: unit.factor,
    dimension: unit.dimension,
    value: (sign ? -1 : 1) * numeral.value * unit.factor,
  };
}

const tradeUnits: Readonly<Record<string, string>> = { "lbf/ft^3": "pcf", "lbf/ft^2": "psf", "lbf/inch^2": "psi", lbf: "lb" };

/** A unit a practitioner writes beside a number, unlike the hidden ones of an empirical constant. */
export const isTradeUnit = (unit: string): boolean => Object.hasOwn(tradeUnits, unit) || /^[a-z]+$/iu.test(unit);

/** A constant's unit as the trade writes it: `pcf` for `lbf/ft^3`, `in` for `inch`. */
export const shownUnit = (unit: string): string => tradeUnits[unit] ?? unit.replaceAll(/\binch\b/gu, "in");

/** A constant as declared, in the trade's units. */
export const shownConstant = ({ number, unit }: Pick<Constant, "number" | "unit">): string => [number, shownUnit(unit)].filter(Boolean).join(" ");
