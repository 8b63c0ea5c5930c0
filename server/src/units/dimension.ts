import { unitFrom } from "./compound.js";
import { kinds, type KindName } from "./kinds.js";
import { plain, sameDimension, type Dimension } from "./vector.js";

export { dimension, over, plain, power, sameDimension, times, type Dimension } from "./vector.js";
export { unitTable, type Unit } from "./table.js";
export { readUnitPrefix, unitFrom, type UnitText } from "./compound.js";

/** Dimension of a unit text such as `kip-ft`, `kN/m²` or `lbf^0.5/inch^0.5`; undefined where it is no unit. */
export const dimensionOf = (unitText: string): Dimension | undefined => unitFrom(unitText)?.dimension;

const ofKinds = new Map(Object.entries(kinds).map(([name, kind]) => [name, dimensionOf(kind.si) ?? plain]));

/** Dimension of the quantities of a kind. */
export const dimensionOfKind = (kind: KindName): Dimension => ofKinds.get(kind) ?? plain;

const named: readonly (readonly [unit: string, words: string])[] = [
  ["m", "a length"],
  ["m^2", "an area"],
  ["m^3", "a volume"],
  ["m^4", "a second moment of area"],
  ["N", "a force"],
  ["N*m", "a moment"],
  ["Pa", "a pressure or stress"],
  ["N/m", "a load per length"],
  ["N/m^3", "a unit weight"],
  ["m/s", "a speed"],
  ["s", "a time"],
];

/** What a quantity of this dimension is called, for messages. */
export function wordsFor(dim: Dimension): string {
  if (sameDimension(dim, plain)) return "a plain number";
  const row = named.find(([unit]) => sameDimension(dimensionOf(unit) ?? plain, dim));
  return row ? row[1] : "some other quantity";
}
