import { kinds } from "../units/kinds.js";

/** Usual weight of a roofing material. */
export interface DeadWeight {
  readonly name: string;
  /** Least and most it usually weighs: Pa over the surface, or N/m³ where `perThickness` is set. */
  readonly light: number;
  readonly heavy: number;
  /** The weight is one per thickness; the notebook then states the thickness. */
  readonly perThickness: boolean;
  readonly source: string;
}

const psf = kinds.pressure.US.factor;
const psfPerInch = kinds.pressure.US.factor / kinds.length.US.factor;

const table = "ASCE 7-22 Table C3.1-1a (from memory)";
const usual = "common practice, no source";

/** One weight, or the least and the most where makes differ. */
type Row = readonly [name: string, light: number, heavy: number, source: string];

/** psf over the surface. */
const bySurface: readonly Row[] = [
  ["asphalt shingles", 2, 2, table],
  ["wood shingles", 3, 3, table],
  ["cement tile", 16, 16, table],
  ["Spanish clay tile", 19, 19, table],
  ["Roman clay tile", 12, 12, table],
  ["slate 3/16 in", 7, 7, table],
  ["slate 1/4 in", 10, 10, table],
  ["copper or tin", 1, 1, table],
  ["four-ply felt and gravel", 5.5, 5.5, table],
  ["five-ply felt and gravel", 6, 6, table],
  ["three-ply ready roofing", 1, 1, table],
  ["single-ply sheet membrane", 0.7, 0.7, table],
  ["smooth bituminous membrane", 1.5, 1.5, table],
  ["liquid applied membrane", 1, 1, table],
  ["metal deck 20 gage", 2.5, 2.5, table],
  ["metal deck 18 gage", 3, 3, table],
  ["wood decking 2 in", 5, 5, table],
  ["wood decking 3 in", 8, 8, table],
  ["gypsum sheathing 1/2 in", 2, 2, table],
  ["fiberboard 1/2 in", 0.75, 0.75, table],
  ["skylight, metal frame, 3/8 in wire glass", 8, 8, table],
  ["steel roof panels", 1, 2, usual],
  ["aluminum roof panels", 0.6, 1, usual],
];

/** psf for each inch of thickness. */
const byThickness: readonly Row[] = [
  ["plywood", 3.2, 3.2, table],
  ["wood sheathing", 3, 3, table],
  ["fiberboard insulation", 1.5, 1.5, table],
  ["cellular glass insulation", 0.7, 0.7, table],
  ["fibrous glass insulation", 1.1, 1.1, table],
  ["perlite insulation", 0.8, 0.8, table],
  ["polystyrene foam", 0.2, 0.2, table],
  ["urethane foam with skin", 0.5, 0.5, table],
];

const made =
  (unit: number, perThickness: boolean) =>
  ([name, light, heavy, source]: Row): DeadWeight => ({ name, light: light * unit, heavy: heavy * unit, perThickness, source });

/** Weights of roofing by its surface or its thickness. Framing has no usual weight: it is stated. */
export const deadWeights: readonly DeadWeight[] = [...bySurface.map(made(psf, false)), ...byThickness.map(made(psfPerInch, true))];

export const deadWeightNames: readonly string[] = deadWeights.map(({ name }) => name);

export const deadWeightOf = (name: string): DeadWeight | undefined => deadWeights.find((row) => row.name === name);
