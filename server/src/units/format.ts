import { kinds, type DisplayUnit, type KindName, type UnitSystem } from "./kinds.js";

/** Shown where a value is missing or not a number. */
export const noValue = "no value";

const lbf = 4.4482216152605;
const foot = 0.3048;

interface Alternative {
  /** Shown instead of the kind's unit below, or from, this multiple of it. */
  readonly below?: number;
  readonly from?: number;
  readonly unit: string;
  readonly factor: number;
}

/** Units taken instead where the usual one would give a long row of zeros. */
const alternatives: { readonly [K in KindName]?: { readonly [S in UnitSystem]?: Alternative } } = {
  force: { US: { below: 0.1, unit: "lb", factor: lbf }, SI: { below: 0.1, unit: "N", factor: 1 } },
  smallForce: { US: { from: 1e4, unit: "kip", factor: 1000 * lbf }, SI: { from: 1e4, unit: "kN", factor: 1e3 } },
  moment: { US: { below: 0.1, unit: "lb-ft", factor: lbf * foot }, SI: { below: 0.1, unit: "N·m", factor: 1 } },
  smallMoment: { SI: { below: 0.1, unit: "N·m", factor: 1 } },
  pressure: { US: { from: 1e4, unit: "ksf", factor: (1000 * lbf) / foot ** 2 }, SI: { below: 0.1, unit: "Pa", factor: 1 } },
  stress: { SI: { below: 0.1, unit: "kPa", factor: 1e3 } },
  lineLoad: { US: { from: 1e4, unit: "klf", factor: (1000 * lbf) / foot }, SI: { below: 0.1, unit: "N/m", factor: 1 } },
};

/** The unit a kind is shown in, in a system; empty for plain numbers. */
export const unitOf = (kind: KindName, system: UnitSystem): string => kinds[kind][system].unit;

/** The display unit chosen for one value: the kind's own, or a smaller or larger one where the value asks for it. */
export function displayUnit(value: number, kind: KindName, system: UnitSystem): DisplayUnit {
  const usual: DisplayUnit = kinds[kind][system];
  const other = alternatives[kind]?.[system];
  const size = Math.abs(value) / usual.factor;
  if (!other || size === 0) return usual;
  const take = (other.below !== undefined && size < other.below) || (other.from !== undefined && size >= other.from);
  return take ? { unit: other.unit, factor: other.factor, digits: usual.digits } : usual;
}

/** The display unit of a whole column of values, that of the largest of them. */
export const columnUnit = (values: readonly number[], kind: KindName, system: UnitSystem): DisplayUnit =>
  displayUnit(Math.max(0, ...values.filter(Number.isFinite).map(Math.abs)), kind, system);

/** A value in a unit that was chosen for its column; as {@link format} otherwise. */
export const formatIn = (value: number, { unit, factor, digits }: DisplayUnit): string => (Number.isFinite(value) ? `${digitsOf(value / factor, digits)} ${unit}` : noValue);

/** A shown value in its two parts, `18.7` and `kip`. */
export interface ShownParts {
  readonly number: string;
  readonly unit: string;
}

/** Number and unit of a value given in SI. A value that is not finite gives "no value" and no unit. */
export function formatParts(value: number, kind: KindName, system: UnitSystem): ShownParts {
  if (!Number.isFinite(value)) return { number: noValue, unit: "" };
  const { unit, factor, digits } = displayUnit(value, kind, system);
  return { number: digitsOf(value / factor, digits), unit };
}

/** A value given in SI, as it is shown: `18.7 kip`, `2 in 12`, `30°`. */
export function format(value: number, kind: KindName, system: UnitSystem): string {
  const { number, unit } = formatParts(value, kind, system);
  return unit === "" ? number : unit === "°" ? number + unit : `${number} ${unit}`;
}

/** Rounded to significant digits, without trailing zeros, and without "-0". */
function digitsOf(value: number, digits: number): string {
  const rounded = Number(value.toPrecision(digits));
  return rounded === 0 ? "0" : String(rounded);
}

/**
 * A length as it is built: to 1/16 in, feet and inches for distances (`4 ft 6 in`), inches for parts (`1-1/2 in`); whole
 * millimeters in SI. Any other kind is shown as by `format`.
 */
export function formatBuildable(value: number, kind: KindName, system: UnitSystem): string {
  if (!Number.isFinite(value) || (kind !== "length" && kind !== "distance")) return format(value, kind, system);
  if (system === "SI") return `${digitsOf(Math.round(value * 1000), 15)} mm`;
  const sixteenths = Math.round((Math.abs(value) / 0.0254) * 16);
  const sign = value < 0 && sixteenths > 0 ? "-" : "";
  const feet = kind === "distance" ? Math.floor(sixteenths / 192) : 0;
  const rest = sixteenths - feet * 192;
  const inches = `${inchText(rest)} in`;
  if (feet === 0) return sign + inches;
  return sign + (rest === 0 ? `${feet} ft` : `${feet} ft ${inches}`);
}

function inchText(sixteenths: number): string {
  const whole = Math.floor(sixteenths / 16);
  let top = sixteenths - whole * 16;
  let bottom = 16;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return String(whole);
  return whole === 0 ? `${top}/${bottom}` : `${whole}-${top}/${bottom}`;
}
