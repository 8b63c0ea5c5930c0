/**
 * The kinds of quantity a notebook can hold. Inside the program every value is in the SI unit of its kind;
 * the display units are used only where a value is shown.
 */
export interface DisplayUnit {
  /** The unit as a practitioner writes it, for example `psf`. */
  readonly unit: string;
  /** SI value of one such unit. */
  readonly factor: number;
  /** Significant digits shown. */
  readonly digits: number;
}

export interface Kind {
  /** In words, for messages: "a length". */
  readonly words: string;
  /** SI unit of the stored number, readable by mathjs; "1" when the kind has none. */
  readonly si: string;
  readonly US: DisplayUnit;
  readonly SI: DisplayUnit;
}

const inch = 0.0254;
const foot = 0.3048;
const lbf = 4.4482216152605;
const kip = 1000 * lbf;
const psi = lbf / inch ** 2;
const psf = lbf / foot ** 2;

const kind = (words: string, si: string, us: [string, number, number], metric: [string, number, number]): Kind => ({
  words,
  si,
  US: { unit: us[0], factor: us[1], digits: us[2] },
  SI: { unit: metric[0], factor: metric[1], digits: metric[2] },
});

/** Exact conversion factors (NIST SP 811, appendix B): inch, foot, pound-force, mile per hour. */
export const kinds = {
  number: kind("a plain number", "1", ["", 1, 4], ["", 1, 4]),
  ratio: kind("a ratio", "1", ["", 1, 3], ["", 1, 3]),
  length: kind("a length", "m", ["in", inch, 4], ["mm", 1e-3, 4]),
  distance: kind("a length", "m", ["ft", foot, 4], ["m", 1, 4]),
  area: kind("an area", "m^2", ["in²", inch ** 2, 4], ["mm²", 1e-6, 4]),
  planArea: kind("an area", "m^2", ["ft²", foot ** 2, 4], ["m²", 1, 4]),
  sectionModulus: kind("a section modulus", "m^3", ["in³", inch ** 3, 4], ["mm³", 1e-9, 4]),
  volume: kind("a volume", "m^3", ["ft³", foot ** 3, 4], ["m³", 1, 4]),
  inertia: kind("a second moment of area", "m^4", ["in⁴", inch ** 4, 4], ["mm⁴", 1e-12, 4]),
  force: kind("a force", "N", ["kip", kip, 4], ["kN", 1e3, 4]),
  smallForce: kind("a force", "N", ["lb", lbf, 4], ["N", 1, 4]),
  moment: kind("a moment", "N*m", ["kip-ft", kip * foot, 4], ["kN·m", 1e3, 4]),
  smallMoment: kind("a moment", "N*m", ["kip-in", kip * inch, 4], ["kN·m", 1e3, 4]),
  stress: kind("a stress", "Pa", ["psi", psi, 4], ["MPa", 1e6, 4]),
  steelStress: kind("a stress", "Pa", ["ksi", 1000 * psi, 4], ["MPa", 1e6, 4]),
  pressure: kind("a pressure", "Pa", ["psf", psf, 4], ["kPa", 1e3, 4]),
  lineLoad: kind("a load per length", "N/m", ["plf", lbf / foot, 4], ["kN/m", 1e3, 4]),
  forcePerLength: kind("a force per length", "N/m", ["kip/in", kip / inch, 4], ["kN/m", 1e3, 4]),
  momentPerLength: kind("a moment per length", "N", ["kip-in/in", kip, 4], ["kN·m/m", 1e3, 4]),
  unitWeight: kind("a unit weight", "N/m^3", ["pcf", lbf / foot ** 3, 4], ["kN/m³", 1e3, 4]),
  pressurePerDepth: kind("a pressure per depth", "N/m^3", ["psf/ft", lbf / foot ** 3, 4], ["kPa/m", 1e3, 4]),
  subgradeModulus: kind("a subgrade modulus", "N/m^3", ["pci", lbf / inch ** 3, 4], ["MN/m³", 1e6, 4]),
  rotationalStiffness: kind("a turning stiffness", "N*m", ["kip-ft/rad", kip * foot, 4], ["kN·m/rad", 1e3, 4]),
  stiffness: kind("a stiffness", "N/m", ["kip/in", kip / inch, 4], ["kN/m", 1e3, 4]),
  speed: kind("a speed", "m/s", ["mph", 1609.344 / 3600, 4], ["m/s", 1, 4]),
  time: kind("a time", "s", ["s", 1, 4], ["s", 1, 4]),
  angle: kind("an angle", "rad", ["°", Math.PI / 180, 4], ["°", Math.PI / 180, 4]),
  slope: kind("a slope", "1", ["in 12", 1 / 12, 4], ["%", 0.01, 4]),
} as const satisfies Record<string, Kind>;

export type KindName = keyof typeof kinds;
export type UnitSystem = "US" | "SI";
