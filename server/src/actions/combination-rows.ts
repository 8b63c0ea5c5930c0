/**
 * The combinations of each edition of ASCE 7 and the alternative basic ones of the building code, as data. Snow of ASCE 7-22 is at
 * strength level, which is why its factors differ; the others differ by the number of the clause.
 */
import type { Edition } from "./edition.js";
import type { Level, LoadType, Term } from "./demand.js";

/** Levels that are combined; service-level wind has no combination of the standard. */
export type CombinedLevel = Exclude<Level, "service">;

export interface CombinationRow {
  readonly clause: string;
  /** Terms without which it is not this combination. */
  readonly all: readonly Term[];
  /** Terms that act with the others wherever the structure has them. */
  readonly with?: readonly Term[];
  /** One of these leads; without any it is not this combination. */
  readonly lead?: readonly Term[];
  /** Companions: of each group one term, or none. */
  readonly any?: readonly (readonly Term[])[];
  /** At least one companion acts; without one another combination with the same or larger factors stands for it. */
  readonly some?: boolean;
}

const term = (factor: number, type: LoadType): Term => ({ factor, type });

/** What differs between the editions: the factors of snow, and the numbers of the combinations. */
interface Wording {
  readonly standard: Edition;
  /** Snow as the leading load, as a companion, and beside an earthquake: strength. */
  readonly strengthSnow: readonly [lead: number, companion: number, withEarthquake: number];
  /** The same: allowable. */
  readonly allowableSnow: readonly [lead: number, companion: number, withEarthquake: number];
  readonly strengthNames: readonly string[];
  readonly allowableNames: readonly string[];
}

const named = (clause: string, numbers: readonly string[], memory = ""): readonly string[] => numbers.map((number) => `${clause}, combination ${number}${memory}`);
const fromMemory = " (from memory)";

const strengthRows = ({ strengthSnow: [lead, companion, shaken], strengthNames: names }: Wording): readonly CombinationRow[] => [
  { clause: names[0], all: [term(1.4, "D")] },
  { clause: names[1], all: [term(1.2, "D"), term(1.6, "L")], any: [[term(0.5, "Lr"), term(companion, "S"), term(0.5, "R")]] },
  {
    clause: names[2],
    all: [term(1.2, "D")],
    lead: [term(1.6, "Lr"), term(lead, "S"), term(1.6, "R")],
    any: [[term(1, "L"), term(0.5, "W")]],
  },
  { clause: names[3], all: [term(1.2, "D"), term(1, "W")], any: [[term(1, "L")], [term(0.5, "Lr"), term(companion, "S"), term(0.5, "R")]] },
  { clause: names[4], all: [term(0.9, "D"), term(1, "W")] },
  { clause: names[5], all: [term(1.2, "D"), term(1, "E")], with: [term(1, "Ev")], any: [[term(1, "L")], [term(shaken, "S")]] },
  { clause: names[6], all: [term(0.9, "D"), term(1, "E")], with: [term(-1, "Ev")] },
  { clause: names[7], all: [term(1.2, "D"), term(1, "N")], any: [[term(1, "L")], [term(shaken, "S")]] },
  { clause: names[7], all: [term(0.9, "D"), term(1, "N")] },
];

/** Combinations of the least sideways force at allowable-stress level, which soil takes beside the alternative ones as well. */
const leastRows = (clause: string, snow: number): readonly CombinationRow[] => [
  { clause, all: [term(1, "D"), term(0.7, "N")] },
  { clause, all: [term(1, "D"), term(0.525, "N")], any: [[term(0.75, "L")], [term(0.75, "Lr"), term(snow, "S"), term(0.75, "R")]], some: true },
  { clause, all: [term(0.6, "D"), term(0.7, "N")] },
];

const leastClause = (standard: Edition): string => `${standard} 1.4.1${fromMemory}`;

/** 0.45 is 0.75 of 0.6 W, 0.525 is 0.75 of 0.7 E. */
const allowableRows = ({ allowableSnow: [lead, companion, shaken], allowableNames: names }: Wording): readonly CombinationRow[] => [
  { clause: names[0], all: [term(1, "D")] },
  { clause: names[1], all: [term(1, "D"), term(1, "L")] },
  { clause: names[2], all: [term(1, "D")], lead: [term(1, "Lr"), term(lead, "S"), term(1, "R")] },
  { clause: names[3], all: [term(1, "D"), term(0.75, "L")], lead: [term(0.75, "Lr"), term(companion, "S"), term(0.75, "R")] },
  { clause: names[4], all: [term(1, "D"), term(0.6, "W")] },
  { clause: names[5], all: [term(1, "D"), term(0.45, "W")], any: [[term(0.75, "L")], [term(0.75, "Lr"), term(companion, "S"), term(0.75, "R")]], some: true },
  { clause: names[6], all: [term(0.6, "D"), term(0.6, "W")] },
  { clause: names[7], all: [term(1, "D"), term(0.7, "E")], with: [term(0.7, "Ev")] },
  { clause: names[8], all: [term(1, "D"), term(0.525, "E")], with: [term(0.525, "Ev")], any: [[term(0.75, "L")], [term(shaken, "S")]], some: true },
  { clause: names[9], all: [term(0.6, "D"), term(0.7, "E")], with: [term(-0.7, "Ev")] },
  ...leastRows(names[10], companion),
];

const wordings: readonly Wording[] = [
  {
    standard: "ASCE 7-10",
    strengthSnow: [1.6, 0.5, 0.2],
    allowableSnow: [1, 0.75, 0.75],
    strengthNames: [...named("ASCE 7-10 2.3.2", ["1", "2", "3", "4", "6", "5", "7"], fromMemory), leastClause("ASCE 7-10")],
    allowableNames: [...named("ASCE 7-10 2.4.1", ["1", "2", "3", "4", "5", "6a", "7", "5", "6b", "8"]), leastClause("ASCE 7-10")],
  },
  {
    standard: "ASCE 7-16",
    strengthSnow: [1.6, 0.5, 0.2],
    allowableSnow: [1, 0.75, 0.75],
    strengthNames: [...named("ASCE 7-16 2.3.1", ["1", "2", "3", "4", "5"], fromMemory), ...named("ASCE 7-16 2.3.6", ["6", "7"], fromMemory), leastClause("ASCE 7-16")],
    allowableNames: [...named("ASCE 7-16 2.4.1", ["1", "2", "3", "4", "5", "6", "7"]), ...named("ASCE 7-16 2.4.5", ["8", "9", "10"], fromMemory), leastClause("ASCE 7-16")],
  },
  {
    standard: "ASCE 7-22",
    strengthSnow: [1, 0.3, 0.15],
    allowableSnow: [0.7, 0.525, 0.1],
    strengthNames: [...named("ASCE 7-22 2.3.1", ["1a", "2a", "3a", "4a", "5a"]), ...named("ASCE 7-22 2.3.6", ["6", "7"], fromMemory), leastClause("ASCE 7-22")],
    allowableNames: [...named("ASCE 7-22 2.4.1", ["1a", "2a", "3a", "4a", "5a", "6a", "7a"]), ...named("ASCE 7-22 2.4.5", ["8", "9", "10"], fromMemory), leastClause("ASCE 7-22")],
  },
];

type Rows = Readonly<Record<CombinedLevel, readonly CombinationRow[]>>;

const basic = new Map<Edition, Rows>(wordings.map((wording) => [wording.standard, { strength: strengthRows(wording), allowable: allowableRows(wording) }]));

/**
 * The alternative basic combinations. Dead load that holds down counts with two thirds of its least. The factor omega on wind is 1.0, as
 * no check here raises an allowable stress or a soil pressure by a third for wind or earthquake; with such a rise it would be 1.3, and
 * the two are never left out or taken together. Two thirds, halves and 1/1.4 are written out, rounded to the safe side.
 */
const alternativeRows = (snow: number, halfSnow: number): readonly CombinationRow[] => {
  const clause = "IBC 2021 1605.2";
  return [
    { clause, all: [term(1, "D")], any: [[term(1, "L")], [term(1, "Lr"), term(snow, "S"), term(1, "R")]] },
    { clause, all: [term(1, "D"), term(0.6, "W")], any: [[term(1, "L")], [term(halfSnow, "S")]] },
    { clause, all: [term(1, "D"), term(snow, "S"), term(0.3, "W")], any: [[term(1, "L")]] },
    { clause: `${clause}: two thirds of the least dead load against wind`, all: [term(0.6666, "D"), term(0.6, "W")] },
    { clause, all: [term(1, "D"), term(0.7143, "E")], with: [term(0.7143, "Ev")], any: [[term(1, "L")], [term(snow, "S")]] },
    { clause, all: [term(0.9, "D"), term(0.7143, "E")], with: [term(-0.7143, "Ev")] },
  ];
};

const alternative: Readonly<Record<Edition, readonly CombinationRow[]>> = {
  "ASCE 7-10": [...alternativeRows(1, 0.5), ...leastRows(leastClause("ASCE 7-10"), 0.75)],
  "ASCE 7-16": [...alternativeRows(1, 0.5), ...leastRows(leastClause("ASCE 7-16"), 0.75)],
  "ASCE 7-22": [...alternativeRows(0.7, 0.35), ...leastRows(leastClause("ASCE 7-22"), 0.525)],
};

/** The combinations of a level; `useAlternative` takes the alternative basic ones where loads are at allowable-stress level. */
export const combinationRows = (standard: Edition, level: CombinedLevel, useAlternative: boolean): readonly CombinationRow[] =>
  useAlternative && level === "allowable" ? alternative[standard] : (basic.get(standard)?.[level] ?? []);
