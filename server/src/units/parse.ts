import { findLookalike, plainCharacters } from "./characters.js";
import { readUnit, type UnitText } from "./compound.js";
import { dimensionOfKind, wordsFor } from "./dimension.js";
import { kinds, type KindName } from "./kinds.js";
import { likelyUnits, listed } from "./likely.js";
import { readNumeral, type Numeral } from "./numeral.js";
import { readDigitGroups, suggestUnit } from "./repair.js";
import { massUnits } from "./table.js";
import { plain, sameDimension } from "./vector.js";

export interface Fix {
  readonly title: string;
  /** Replaces the whole text. */
  readonly text: string;
}

export interface Misread {
  readonly ok: false;
  readonly code: string;
  readonly message: string;
  /** Place inside the text. */
  readonly at: number;
  readonly length: number;
  readonly fixes: readonly Fix[];
}

export type Reading = { readonly ok: true; readonly value: number; readonly unit: string } | Misread;

/** Larger magnitudes are slips of the keyboard, and products of them would overflow further down. */
const largest = 1e60;

/** A number with its unit (or a feet-and-inches pair, or a slope), before it is held against the kind that was asked for. */
interface Found {
  readonly value: number;
  readonly unit: string;
  readonly what: "unit" | "bare" | "rise over run";
  readonly numeral: Numeral;
  readonly read?: UnitText;
}

/**
 * Reads a physical quantity: `5'-6"`, `5 ft 6 in`, `1-1/2 in`, `2 in 12`, `30 psf`, `5 kN·m`.
 *
 * The value is in the SI unit of the kind. Whatever cannot be read exactly as written comes back as a message with its
 * place and, where one is likely, a replacement. Never throws, and an accepted value is finite.
 */
export function readQuantity(source: string, kind: KindName): Reading {
  const text = source.trimEnd();
  const start = text.length - text.trimStart().length;
  const early = unreadable(source, text, start, kind);
  if (early) return early;

  const sign = /^[+-] */.exec(text.slice(start));
  const numberAt = start + (sign ? sign[0].length : 0);
  const numeral = readNumeral(text, numberAt);
  if (!numeral) return misread("quantity.not-a-number", `"${text.trim()}" does not begin with a number; write ${example(kind)}.`, start, text.length - start);
  const found = readAfterNumber(text, numeral, kind);
  if ("ok" in found) return found;

  const fitted = fit(text.slice(start), start, found, kind);
  if (!fitted.ok) return fitted;
  const value = sign?.[0].startsWith("-") ? 0 - fitted.value : fitted.value;
  const lost = value === 0 && /[1-9]/.test(numeral.form === "decimal" ? numeral.text.replace(/e.*/i, "") : "");
  if (!Number.isFinite(value) || Math.abs(value) > largest || lost)
    return misread("quantity.not-finite", `${text.trim()} is too ${lost ? "small" : "large"} to calculate with; write a number of ordinary size.`, start, text.length - start);
  return { ok: true, value, unit: fitted.unit };
}

/** Reads a number without a unit, with the same care as a quantity. */
export const readNumber = (text: string): Reading => readQuantity(text, "number");

const misread = (code: string, message: string, at: number, length: number, fixes: readonly Fix[] = []): Misread => ({
  ok: false,
  code,
  message,
  at,
  length,
  fixes,
});

const write = (text: string): Fix => ({ title: `Write ${text}`, text });

const example = (kind: KindName) => {
  const unit = likelyUnits[kind][0];
  return unit ? `${kinds[kind].words} with its unit, for example ${unit === "in 12" ? "2 in 12" : `4 ${unit}`}` : `${kinds[kind].words}, for example 4`;
};

/** What can be said before any number is looked for. */
function unreadable(source: string, text: string, start: number, kind: KindName): Misread | undefined {
  if (text.trim() === "") return misread("quantity.empty", `Nothing is written here; write ${example(kind)}.`, 0, source.length);
  const strange = findLookalike(source);
  if (strange) return misread(strange.code, strange.message, strange.at, strange.length, [write(plainCharacters(source).trim())]);
  const groups = readDigitGroups(text);
  if (groups) return misread(groups.code, groups.message, groups.at, groups.length, groups.texts.map((t) => write(t.trim())));
  if (/^[+-]? *\.?(inf|infinity|nan)\b/i.test(text.slice(start)))
    return misread("quantity.not-finite", `"${text.trim()}" is not a number one can build to; write ${example(kind)}.`, start, text.length - start);
  return undefined;
}

const skip = (text: string, at: number) => {
  while (text.charAt(at) === " " || text.charAt(at) === "\t") at++;
  return at;
};

function readAfterNumber(text: string, numeral: Numeral, kind: KindName): Found | Misread {
  const at = skip(text, numeral.end);
  if (at >= text.length) return { value: numeral.value, unit: "", what: "bare", numeral };
  const run = /^(?::|in\b) *(?=[\d.])/i.exec(text.slice(at));
  const slope = run ? readNumeral(text, at + run[0].length) : undefined;
  if (run && slope && slope.end === text.length)
    return { value: numeral.value / slope.value, unit: text.slice(at), what: "rise over run", numeral };

  const unit = readUnit(text, at, { loose: true });
  if (!unit) return unknownUnit(text, at, numeral, kind);
  const after = skip(text, unit.end);
  if (isFoot(unit)) {
    const inches = readInches(text, after, numeral);
    if (inches) return inches;
  }
  if (after < text.length) {
    const rest = text.slice(after);
    const kept = text.slice(0, unit.end).trim();
    // A second number is never dropped by a fix.
    return misread("quantity.trailing", `"${rest}" after ${kept} is not read; write one number and its unit, and nothing after it.`, after, rest.length, /\d/.test(rest) ? [] : [write(kept)]);
  }
  return { value: numeral.value * unit.factor, unit: unit.text, what: "unit", numeral, read: unit };
}

const isFoot = (unit: UnitText) => unit.simple && unit.factor === 0.3048;
const isInch = (unit: UnitText) => unit.simple && unit.factor === 0.0254;

/** The inches after feet: `-6"`, ` 6 1/2"`, `-6 in`. Undefined where no number follows. */
function readInches(text: string, after: number, feet: Numeral): Found | Misread | undefined {
  const hyphen = text.charAt(after) === "-";
  const at = skip(text, hyphen ? after + 1 : after);
  const numeral = readNumeral(text, at);
  if (!numeral) return undefined;
  const unitAt = skip(text, numeral.end);
  const unit = readUnit(text, unitAt, { loose: true });
  const whole = text.trim();
  if (unitAt >= text.length)
    return misread("quantity.no-unit", `${numeral.text} after the feet has no unit; write ${whole} in.`, at, numeral.text.length, [write(`${whole} in`)]);
  if (!unit || !isInch(unit) || unit.end < text.length)
    return misread("quantity.trailing", `After feet only inches are read, as in 5 ft 6 in; here stands "${text.slice(at)}".`, at, text.length - at);
  if (feet.form !== "whole")
    return misread("quantity.feet-and-inches", `${feet.text} ft is not a whole number of feet; write whole feet before inches, or feet alone.`, feet.end - feet.text.length, feet.text.length);
  const inches = Math.round((feet.value * 12 + numeral.value) * 1e9) / 1e9;
  if (numeral.value >= 12)
    return misread("quantity.feet-and-inches", `${numeral.text} in is a foot or more; write fewer than 12 inches after feet.`, at, numeral.text.length, Number.isFinite(inches) ? [write(`${inches} in`)] : []);
  return { value: (feet.value * 12 + numeral.value) * 0.0254, unit: "ft", what: "unit", numeral: feet, read: { ...unit, text: "ft" } };
}

function unknownUnit(text: string, at: number, numeral: Numeral, kind: KindName): Misread {
  const rest = text.slice(at);
  const number = text.slice(0, numeral.end).trim();
  if (/^[^A-Za-z]/.test(rest) && /\d/.test(rest))
    return misread("quantity.trailing", `"${rest}" after ${number} is not read; write ${example(kind)}.`, at, rest.length);
  const mass = /^(kg|g|t|tonnes?|lbm|slugs?)(?:\/(m|ft)(3|³|\^3)?)?(?![\w^²³])/.exec(rest);
  const kilograms = mass ? massUnits.get(mass[1]) : undefined;
  if (mass && kilograms !== undefined) {
    const instead = mass[3] ? "kN/m³" : mass[2] ? "kN/m" : "kN";
    const per = mass[2] === "ft" ? 0.3048 ** (mass[3] ? 3 : 1) : 1;
    // Standard gravity, 9.80665 m/s² (NIST SP 811).
    const weight = Number(((numeral.value * kilograms * 9.80665) / per / 1000).toPrecision(4));
    const whole = mass[0].length === rest.length && Number.isFinite(weight);
    const fix = write(`${number.startsWith("-") ? "-" : ""}${weight} ${instead}`);
    return misread("quantity.mass", `${number} ${mass[0]} is a mass; give the weight, in ${instead}.`, at, mass[0].length, whole ? [fix] : []);
  }
  const wanted = likelyUnits[kind];
  const near = suggestUnit(rest, kind);
  const fixes = near ? [write(`${number} ${near}`)] : wanted.map((u) => write(`${number} ${u}`));
  const instead = near ? `write ${near}` : wanted.length ? `write ${listed(wanted)}` : "write the number alone";
  return misread("quantity.unknown-unit", `"${rest}" is not a unit read here; ${instead}.`, at, rest.length, fixes);
}

/** Holds what was read against the kind that was asked for. */
function fit(shown: string, start: number, found: Found, kind: KindName): Reading {
  const { words } = kinds[kind];
  const wanted = likelyUnits[kind];
  const good = (value: number): Reading => ({ ok: true, value, unit: found.unit });
  const wrong = (is: string, fixes: readonly Fix[] = []): Misread =>
    misread("quantity.wrong-dimension", `${shown} is ${is}; ${words} is needed${wanted.length ? ` (${listed(wanted)})` : ", without a unit"}.`, start, shown.length, fixes);
  const isPlain = kind === "number" || kind === "ratio";

  if (found.what === "rise over run") return kind === "slope" ? good(found.value) : kind === "angle" ? good(Math.atan(found.value)) : wrong("a slope");
  if (found.what === "bare") {
    if (isPlain || (kind === "slope" && found.numeral.form === "fraction")) return good(found.value);
    const fixes = wanted.map((u) => write(`${shown} ${u}`));
    return misread("quantity.no-unit", `${shown} has no unit; write ${listed(fixes.map((f) => f.text))}.`, start, shown.length, fixes);
  }

  const read = found.read as UnitText;
  if (read.role === "angle") {
    if (kind === "angle") return good(found.value);
    if (kind !== "slope") return wrong("an angle");
    if (found.value >= (Math.PI / 2) * (1 - 1e-12)) return misread("quantity.not-finite", `${shown} is upright or beyond; write a slope below 90 deg.`, start, shown.length);
    return good(Math.tan(found.value));
  }
  if (read.role === "percent") return kind === "slope" || kind === "ratio" ? good(found.value) : wrong("a percentage");
  const needed = dimensionOfKind(kind);
  if (kind === "angle" && sameDimension(read.dimension, plain)) return good(Math.atan(found.value));
  if (sameDimension(read.dimension, needed)) return good(found.value);
  return wrong(wordsFor(read.dimension), slips(shown, found, kind, read));
}

/** `150 lb` for a unit weight, `30 psf` for a pressure per depth: the number is meant, the unit falls short by a length. */
function slips(shown: string, found: Found, kind: KindName, read: UnitText): Fix[] {
  const needed = dimensionOfKind(kind);
  const number = shown.slice(0, shown.indexOf(found.numeral.text) + found.numeral.text.length);
  if (sameDimension(needed, plain)) return [write(number)];
  const alike = read.dimension.mass === needed.mass && read.dimension.time === needed.time && needed.mass !== 0;
  if (!alike) return [];
  const metric = /^(?:[kMG]?N|[kMG]?Pa)\b/.test(read.text);
  const offered = likelyUnits[kind].filter((unit) => /^[kM]?(?:N|Pa)\b/.test(unit) === metric);
  return offered.slice(0, 1).map((unit) => write(`${number} ${unit}`));
}
