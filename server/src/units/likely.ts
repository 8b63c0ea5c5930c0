import type { KindName } from "./kinds.js";

/** Units offered for a kind, the commonest first, in both systems; each is read by `readQuantity`. */
export const likelyUnits: Readonly<Record<KindName, readonly string[]>> = {
  number: [],
  ratio: [],
  length: ["in", "ft", "mm"],
  distance: ["ft", "in", "m"],
  area: ["in²", "mm²"],
  planArea: ["ft²", "m²"],
  sectionModulus: ["in³", "mm³"],
  volume: ["ft³", "m³"],
  inertia: ["in⁴", "mm⁴"],
  force: ["kip", "lb", "kN"],
  smallForce: ["lb", "kip", "N"],
  moment: ["kip-ft", "lb-ft", "kN·m"],
  smallMoment: ["kip-in", "kip-ft", "kN·m"],
  stress: ["psi", "ksi", "MPa"],
  steelStress: ["ksi", "psi", "MPa"],
  pressure: ["psf", "ksf", "kPa"],
  lineLoad: ["plf", "klf", "kN/m"],
  forcePerLength: ["kip/in", "kN/m"],
  momentPerLength: ["kip-in/in", "kip-ft/ft", "kN·m/m"],
  unitWeight: ["pcf", "kN/m³"],
  pressurePerDepth: ["psf/ft", "kPa/m"],
  subgradeModulus: ["pci", "MN/m³"],
  rotationalStiffness: ["kip-ft/rad", "kip-in/rad", "kN·m/rad"],
  stiffness: ["kip/in", "kN/m"],
  speed: ["mph", "m/s"],
  time: ["s"],
  angle: ["deg", "rad"],
  slope: ["in 12", "%", "deg"],
};

/** `in, ft or mm`. */
export function listed(units: readonly string[]): string {
  return units.length < 2 ? units.join("") : `${units.slice(0, -1).join(", ")} or ${units[units.length - 1]}`;
}
