import { dimension, plain, power, times, type Dimension } from "./vector.js";

export interface Unit {
  /** SI value of one such unit. */
  readonly factor: number;
  readonly dimension: Dimension;
  /** Set where a plain number is meant in a particular way. */
  readonly role?: "angle" | "percent";
}

const inch = 0.0254;
const foot = 0.3048;
const yard = 0.9144;
const mile = 1609.344;
const lbf = 4.4482216152605;
const psi = lbf / inch ** 2;
const psf = lbf / foot ** 2;

const length = dimension(0, 1, 0);
const time = dimension(0, 0, 1);
const force = dimension(1, 1, -2);
const pressure = times(force, power(length, -2));
const perVolume = times(force, power(length, -3));
const perLength = times(force, power(length, -1));
const speed = times(length, power(time, -1));

type Row = readonly [spellings: string, factor: number, dimension: Dimension, role?: Unit["role"]];

/** Factors are exact by definition (NIST SP 811, appendix B): inch, foot, pound-force, mile; the others follow from them. */
const customary: readonly Row[] = [
  ["in inch inches", inch, length],
  ["ft foot feet", foot, length],
  ["yd yard yards", yard, length],
  ["lb lbs lbf pound pounds", lbf, force],
  ["k kip kips", 1000 * lbf, force],
  ["psi", psi, pressure],
  ["ksi", 1000 * psi, pressure],
  ["psf", psf, pressure],
  ["ksf", 1000 * psf, pressure],
  ["tsf", 2000 * psf, pressure],
  ["pcf", lbf / foot ** 3, perVolume],
  ["kcf", (1000 * lbf) / foot ** 3, perVolume],
  ["pci", lbf / inch ** 3, perVolume],
  ["plf", lbf / foot, perLength],
  ["klf", (1000 * lbf) / foot, perLength],
  ["pli", lbf / inch, perLength],
  ["mph", mile / 3600, speed],
  ["fps", foot, speed],
  ["sf", foot ** 2, power(length, 2)],
  ["cf", foot ** 3, power(length, 3)],
  ["cy", yard ** 3, power(length, 3)],
];

const marks: readonly Row[] = [
  ["' ′", foot, length],
  ['" ″', inch, length],
  ["°", Math.PI / 180, plain, "angle"],
  ["%", 0.01, plain, "percent"],
];

const metric: readonly Row[] = [
  ["mm", 1e-3, length],
  ["cm", 1e-2, length],
  ["m", 1, length],
  ["km", 1e3, length],
  ["N", 1, force],
  ["kN", 1e3, force],
  ["MN", 1e6, force],
  ["Pa", 1, pressure],
  ["kPa", 1e3, pressure],
  ["MPa", 1e6, pressure],
  ["GPa", 1e9, pressure],
  ["s sec", 1, time],
  ["h hr", 3600, time],
];

const words: readonly Row[] = [
  ["deg degree degrees", Math.PI / 180, plain, "angle"],
  ["rad radian radians", 1, plain, "angle"],
  ["percent", 0.01, plain, "percent"],
];

const build = (rows: readonly Row[]) =>
  new Map<string, Unit>(
    rows.flatMap(([spellings, factor, dim, role]) =>
      spellings.split(" ").map((spelling): [string, Unit] => [spelling, role ? { factor, dimension: dim, role } : { factor, dimension: dim }]),
    ),
  );

/** Every simple unit under every spelling; compounds such as `kip-ft` and `kN/m²` are made of these. */
export const unitTable: ReadonlyMap<string, Unit> = build([...marks, ...customary, ...metric, ...words]);

/** The marks among them, which need no space and no letter before or after. */
export const unitMarks: ReadonlyMap<string, Unit> = build(marks);

const anyCase = build([...customary, ...words]);

/**
 * The unit a word spells. Customary units are read in capitals too (`PSF`), because drawings are lettered that way;
 * SI units are not, where a capital changes the meaning.
 */
export const lookUp = (word: string): Unit | undefined => unitTable.get(word) ?? anyCase.get(word.toLowerCase());

/** Kilograms in one unit of mass, for the message that asks for a force instead. */
export const massUnits: ReadonlyMap<string, number> = new Map([
  ["kg", 1],
  ["g", 1e-3],
  ["t", 1e3],
  ["tonne", 1e3],
  ["tonnes", 1e3],
  ["lbm", 0.45359237],
  ["slug", lbf / foot],
  ["slugs", lbf / foot],
]);
