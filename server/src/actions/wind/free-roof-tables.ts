/**
 * Net pressure coefficients of free roofs, main wind force resisting system, as data. A shape or an edition more is a row more:
 * pitched and troughed roofs have the same rows for wind from either side of the ridge or valley.
 */
import type { RoofShape } from "../roof-plane.js";
import type { LoadStandard } from "./velocity-pressure.js";

export type { RoofShape };
export type Flow = "clear" | "obstructed";
export type PressureCase = "A" | "B";

/** Windward and leeward half, in clear flow and then in obstructed flow. */
export type Halves = readonly [clearWindward: number, clearLeeward: number, obstructedWindward: number, obstructedLeeward: number];

export interface AngleRow extends Readonly<Record<PressureCase, Halves>> {
  /** Roof angle, degrees. */
  readonly angle: number;
}

/** A value that published copies of a figure do not agree on. */
export interface DisputedCell {
  readonly angle: number;
  readonly pressureCase: PressureCase;
  readonly flow: Flow;
  /** Which value is taken, and who prints the other. */
  readonly words: string;
}

/** Wind along the slope: one coefficient for each half of the roof. */
export interface SlopeTable {
  readonly figure: string;
  readonly source: string;
  readonly onto: Readonly<Record<"high edge" | "low edge", readonly AngleRow[]>>;
  readonly disputed?: DisputedCell;
}

export interface BandRow extends Readonly<Record<PressureCase, readonly [clear: number, obstructed: number]>> {
  /** The band ends at this many mean roof heights from the windward edge. */
  readonly to: number;
}

/** Wind across the slope: coefficients by distance from the windward edge. */
export interface BandTable {
  readonly figure: string;
  readonly source: string;
  readonly bands: readonly BandRow[];
}

/** Range of mean roof height over the roof's plan length along the wind. */
export const heightRange = { least: 0.25, most: 1 } as const;
/** The same for a nearly flat roof, where the coefficients by distance also serve wind along the slope. */
export const flatHeightRange = { least: 0.05, most: 1 } as const;
/** Below this angle, degrees, a roof counts as nearly flat. */
export const nearlyFlat = 5;
/** Rows are interpolated from this angle on, degrees; below it the row of 0 degrees stands as it is. */
export const interpolatedFrom = 7.5;
/** Largest roof angle of the figures, degrees. */
export const steepest = 45;

const level: AngleRow = { angle: 0, A: [1.2, 0.3, -0.5, -1.2], B: [-1.1, -0.1, -1.1, -0.6] };

/** Wind onto the high edge is gamma = 0, wind onto the low edge gamma = 180. */
const monoslope: SlopeTable["onto"] = {
  "high edge": [
    level,
    { angle: 7.5, A: [-0.6, -1.0, -1.0, -1.5], B: [-1.4, 0.0, -1.7, -0.8] },
    { angle: 15, A: [-0.9, -1.3, -1.1, -1.5], B: [-1.9, 0.0, -2.1, -0.6] },
    { angle: 22.5, A: [-1.5, -1.6, -1.5, -1.7], B: [-2.4, -0.3, -2.3, -0.9] },
    { angle: 30, A: [-1.8, -1.8, -1.5, -1.8], B: [-2.5, -0.5, -2.3, -1.1] },
    { angle: 37.5, A: [-1.8, -1.8, -1.5, -1.8], B: [-2.4, -0.6, -2.2, -1.1] },
    { angle: 45, A: [-1.6, -1.8, -1.3, -1.8], B: [-2.3, -0.7, -1.9, -1.2] },
  ],
  // gamma = 180
  "low edge": [
    level,
    { angle: 7.5, A: [0.9, 1.5, -0.2, -1.2], B: [1.6, 0.3, 0.8, -0.3] },
    { angle: 15, A: [1.3, 1.6, 0.4, -1.1], B: [1.8, 0.6, 1.2, -0.3] },
    { angle: 22.5, A: [1.7, 1.8, 0.5, -1.0], B: [2.2, 0.7, 1.3, 0.0] },
    { angle: 30, A: [2.1, 2.1, 0.6, -1.0], B: [2.6, 1.0, 1.6, 0.1] },
    { angle: 37.5, A: [2.1, 2.2, 0.7, -0.9], B: [2.7, 1.1, 1.9, 0.3] },
    { angle: 45, A: [2.2, 2.5, 0.8, -0.9], B: [2.6, 1.4, 2.1, 0.4] },
  ],
};

const pitched: readonly AngleRow[] = [
  level,
  { angle: 7.5, A: [1.1, -0.3, -1.6, -1.0], B: [0.2, -1.2, -0.9, -1.7] },
  { angle: 15, A: [1.1, -0.4, -1.2, -1.0], B: [0.1, -1.1, -0.6, -1.6] },
  { angle: 22.5, A: [1.1, 0.1, -1.2, -1.2], B: [-0.1, -0.8, -0.8, -1.7] },
  { angle: 30, A: [1.3, 0.3, -0.7, -0.7], B: [-0.1, -0.9, -0.2, -1.1] },
  { angle: 37.5, A: [1.3, 0.6, -0.6, -0.6], B: [-0.2, -0.6, -0.3, -0.9] },
  { angle: 45, A: [1.1, 0.9, -0.5, -0.5], B: [-0.3, -0.5, -0.3, -0.7] },
];

/** The coefficient of the windward half at 30 degrees, case B, clear flow, is printed with either sign. */
const troughed = (disputed: number): readonly AngleRow[] => [
  level,
  { angle: 7.5, A: [-1.1, 0.3, -1.6, -0.5], B: [-0.2, 1.2, -0.9, -0.8] },
  { angle: 15, A: [-1.1, 0.4, -1.2, -0.5], B: [0.1, 1.1, -0.6, -0.8] },
  { angle: 22.5, A: [-1.1, -0.1, -1.2, -0.6], B: [-0.1, 0.8, -0.8, -0.8] },
  { angle: 30, A: [-1.3, -0.3, -1.4, -0.4], B: [disputed, 0.9, -0.2, -0.5] },
  { angle: 37.5, A: [-1.3, -0.6, -1.4, -0.3], B: [0.2, 0.6, -0.3, -0.4] },
  { angle: 45, A: [-1.1, -0.9, -1.2, -0.3], B: [0.3, 0.5, -0.3, -0.4] },
];

const bands: readonly BandRow[] = [
  { to: 1, A: [-0.8, -1.2], B: [0.8, 0.5] },
  { to: 2, A: [-0.6, -0.9], B: [0.5, 0.5] },
  { to: Number.POSITIVE_INFINITY, A: [-0.3, -0.6], B: [0.3, 0.3] },
];

const bothWays = (rows: readonly AngleRow[]): SlopeTable["onto"] => ({ "high edge": rows, "low edge": rows });

/** BNBC 2020 Figure 6.2.18 follows ASCE 7-05, whose figures the later editions renumber. */
const readAgainst = "read against the same figure in BNBC 2020 (Figure 6.2.18), which follows ASCE 7-05";

interface EditionTables {
  readonly slope: Readonly<Record<RoofShape, SlopeTable>>;
  readonly bands: BandTable;
}

/** The tables of an edition, whose free-roof figures are the fourth to the seventh of a section; `trough` is the disputed coefficient. */
function tablesOf(standard: string, chapter: string, trough: number, disputed: string): EditionTables {
  const figure = (number: number): string => `${standard} Figure ${chapter}-${number}`;
  return {
    slope: {
      monoslope: {
        figure: figure(4),
        source: `${figure(4)}, ${readAgainst}; that gamma = 0 is wind onto the high edge follows from its upward values`,
        onto: monoslope,
      },
      pitched: { figure: figure(5), source: `${figure(5)}, ${readAgainst}; below 7.5 degrees the coefficients of ${figure(4)}`, onto: bothWays(pitched) },
      troughed: {
        figure: figure(6),
        source: `${figure(6)}, ${readAgainst}; below 7.5 degrees the coefficients of ${figure(4)}`,
        onto: bothWays(troughed(trough)),
        disputed: { angle: 30, pressureCase: "B", flow: "clear", words: disputed },
      },
    },
    bands: { figure: figure(7), source: `${figure(7)}, ${readAgainst}`, bands },
  };
}

const printedEarlier = "C_NW of 30 degrees, case B, clear flow, is taken as -0.1, as copies of this edition print it; ASCE 7-22 has +0.1.";

const tables: Readonly<Record<LoadStandard, EditionTables>> = {
  "ASCE 7-10": tablesOf("ASCE 7-10", "27.4", -0.1, printedEarlier),
  "ASCE 7-16": tablesOf("ASCE 7-16", "27.3", -0.1, printedEarlier),
  "ASCE 7-22": tablesOf("ASCE 7-22", "27.3", 0.1, "C_NW of 30 degrees, case B, clear flow, is taken as +0.1, as ASCE 7-22 has it; copies of the earlier editions print -0.1."),
};

/** The table for wind along the slope. */
export const slopeTable = (standard: LoadStandard, shape: RoofShape): SlopeTable => tables[standard].slope[shape];

/** The table for wind across the slope. */
export const bandTable = (standard: LoadStandard): BandTable => tables[standard].bands;
