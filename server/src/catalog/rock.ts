import { kinds } from "../units/kinds.js";
import { nearestNames, plainText, type NotInCatalog } from "./lookup.js";

/** Usual range of ultimate bond between grout and rock, Pa. For a hint beside a stated value; never a default. */
export interface RockBond {
  readonly rock: string;
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

const psi = kinds.stress.US.factor;
const source = "from memory of the rock and grout bond table in the PTI recommendations for rock and soil anchors; confirm by pull test";

/** Rock, then low and high ultimate bond, psi. */
const rows: readonly (readonly [string, number, number])[] = [
  ["granite", 250, 450],
  ["basalt", 250, 450],
  ["dolomitic limestone", 200, 300],
  ["soft limestone", 150, 200],
  ["slate", 120, 200],
  ["hard shale", 120, 200],
  ["sandstone", 120, 250],
  ["weathered sandstone", 100, 120],
  ["soft shale", 30, 120],
  ["chalk", 30, 155],
  ["weathered marl", 25, 35],
];

export const rockBonds: readonly RockBond[] = rows.map(([rock, low, high]) => ({ rock, low: low * psi, high: high * psi, source }));

/** The usual range for a rock by name, or why there is none. */
export function findRockBond(text: string): RockBond | NotInCatalog {
  const name = plainText(text.slice(0, 80));
  const found = rockBonds.find(({ rock }) => rock === name);
  if (found) return found;
  const inName = rockBonds.filter(({ rock }) => rock.split(" ").includes(name)).map(({ rock }) => rock);
  const nearest = inName.length > 0 ? inName : nearestNames(name, rockBonds.map(({ rock }) => rock));
  return { problem: `no usual range of bond is known here for "${text.trim().slice(0, 40)}"; rely on a pull test`, nearest };
}

/** Where a stated ultimate bond, Pa, lies against the usual range. */
export function compareBond(range: RockBond, bond: number): "below" | "within" | "above" {
  return bond < range.low ? "below" : bond > range.high ? "above" : "within";
}
