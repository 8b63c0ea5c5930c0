import { kinds } from "../units/kinds.js";
import { inchName, readInchSize } from "./inches.js";
import { plainText, type NotInCatalog } from "./lookup.js";

/** The end of a rod in the concrete. */
export type RodHead = "heavy hex" | "hex" | "heavy square" | "square";

/** An anchor rod by nominal diameter, coarse thread (UNC). Lengths m, areas m². */
export interface Rod {
  /** As the trade writes it: `3/4 in`. */
  readonly name: string;
  readonly diameter: number;
  /** Threads per inch, the one number here that is not SI, because the thread is named by it. */
  readonly threadsPerInch: number;
  readonly grossArea: number;
  /** Net tensile area, ASME B1.1: (pi/4)(d - 0.9743/n)². */
  readonly tensileArea: number;
  /** Net bearing area of each kind of head or nut: its face less the rod. */
  readonly headBearingArea: Readonly<Record<RodHead, number>>;
  readonly source: string;
}

const inch = kinds.length.US.factor;
const ksi = kinds.steelStress.US.factor;

const rodSource =
  "coarse threads and tensile area: ASME B1.1; head and nut widths: ASME B18.2.1 and B18.2.2, F = 1.5d, heavy F = 1.5d + 1/8 in";

/** Nominal diameter in, threads per inch (ASME B1.1, coarse series). */
const threads: readonly (readonly [number, number])[] = [
  [1 / 2, 13],
  [5 / 8, 11],
  [3 / 4, 10],
  [7 / 8, 9],
  [1, 8],
  [1.125, 7],
  [1.25, 7],
  [1.375, 6],
  [1.5, 6],
  [1.75, 5],
  [2, 4.5],
];

function makeRod([size, perInch]: readonly [number, number]): Rod {
  const d = size * inch;
  const grossArea = (Math.PI / 4) * d ** 2;
  const width = 1.5 * d;
  const heavy = width + inch / 8;
  const hexagon = (across: number): number => (Math.sqrt(3) / 2) * across ** 2 - grossArea;
  const square = (across: number): number => across ** 2 - grossArea;
  return {
    name: `${inchName(size)} in`,
    diameter: d,
    threadsPerInch: perInch,
    grossArea,
    tensileArea: (Math.PI / 4) * (d - (0.9743 / perInch) * inch) ** 2,
    headBearingArea: { "heavy hex": hexagon(heavy), hex: hexagon(width), "heavy square": square(heavy), square: square(width) },
    source: rodSource,
  };
}

/** Anchor rods from 1/2 to 2 in. */
export const rods: readonly Rod[] = threads.map(makeRod);

/** The rod of this diameter in meters, or undefined. */
export function rodByDiameter(diameter: number): Rod | undefined {
  return rods.find((rod) => Math.abs(rod.diameter - diameter) < 1e-6);
}

/** A rod by size: `3/4 in`, `1-1/4`, `0.75 in`, `dia 1 in`; or why there is none. */
export function findRod(text: string): Rod | NotInCatalog {
  const shown = text.trim().slice(0, 40);
  const size = readInchSize(plainText(text.slice(0, 80)).replace(/^(?:dia\.?|diameter|\u00f8) ?| (?:dia\.?|diameter|rods?)$/g, ""));
  if (size === undefined) return { problem: `"${shown}" is not a rod size. Write it as 3/4 in`, nearest: [] };
  const found = rodByDiameter(size * inch);
  if (found) return found;
  const nearest = [...rods].sort((a, b) => Math.abs(a.diameter - size * inch) - Math.abs(b.diameter - size * inch)).slice(0, 2);
  return { problem: `${inchName(size)} in is not a rod size known here (1/2 to 2 in)`, nearest: nearest.map((rod) => rod.name) };
}

/** A grade of anchor rod. Stresses Pa. */
export interface RodGrade {
  /** `F1554 Gr 36`. */
  readonly name: string;
  readonly grade: 36 | 55 | 105;
  /** Specified yield strength. */
  readonly fya: number;
  /** Specified tensile strength, the lower bound of the standard's range. */
  readonly futa: number;
  /** Largest diameter made, m. */
  readonly largest: number;
  /** Least elongation in 2 in and least reduction of area, by size up to `upTo`, m. */
  readonly elongation: readonly { readonly upTo: number; readonly elongation: number; readonly reductionOfArea: number }[];
  /** Color of the marking on the exposed end. */
  readonly color: string;
  readonly source: string;
}

const f1554 = "ASTM F1554, mechanical requirements by grade";

/** ASTM F1554 grades. */
export const rodGrades: readonly RodGrade[] = [
  {
    name: "F1554 Gr 36",
    grade: 36,
    fya: 36 * ksi,
    futa: 58 * ksi,
    largest: 4 * inch,
    elongation: [{ upTo: 4 * inch, elongation: 0.23, reductionOfArea: 0.4 }],
    color: "blue",
    source: f1554,
  },
  {
    name: "F1554 Gr 55",
    grade: 55,
    fya: 55 * ksi,
    futa: 75 * ksi,
    largest: 4 * inch,
    elongation: [
      { upTo: 2 * inch, elongation: 0.21, reductionOfArea: 0.3 },
      { upTo: 2.5 * inch, elongation: 0.21, reductionOfArea: 0.22 },
      { upTo: 3 * inch, elongation: 0.21, reductionOfArea: 0.2 },
      { upTo: 4 * inch, elongation: 0.21, reductionOfArea: 0.18 },
    ],
    color: "yellow",
    source: f1554,
  },
  {
    name: "F1554 Gr 105",
    grade: 105,
    fya: 105 * ksi,
    futa: 125 * ksi,
    largest: 3 * inch,
    elongation: [{ upTo: 3 * inch, elongation: 0.15, reductionOfArea: 0.45 }],
    color: "red",
    source: f1554,
  },
];

/** A grade by text: `F1554 Gr 36`, `Gr. 55`, `grade 105`, `36`; or why there is none. */
export function findRodGrade(text: string): RodGrade | NotInCatalog {
  const shown = text.trim().slice(0, 40);
  const read = /^(?:astm )?(?:f ?1554)?,? ?(?:grade|gr\.?)? ?-?(36|55|105)$/.exec(plainText(text.slice(0, 80)));
  const found = read ? rodGrades.find((grade) => grade.grade === Number(read[1])) : undefined;
  return found ?? { problem: `"${shown}" is not a rod grade known here`, nearest: rodGrades.map((grade) => grade.name) };
}

/** Whether a rod counts as a ductile steel element. */
export interface Ductility {
  readonly ductile: boolean;
  readonly because: string;
}

/**
 * ACI 318-19, 2.3 (definition of a ductile steel element): elongation at least 14 percent and reduction of area at least 30 percent.
 * @param diameter m
 */
export function rodDuctility(grade: RodGrade, diameter: number): Ductility {
  const row = grade.elongation.find(({ upTo }) => diameter <= upTo + 1e-9);
  if (!row) return { ductile: false, because: `${grade.name} is not made above ${inchName(grade.largest / inch)} in` };
  const percent = (part: number): string => `${Math.round(100 * part)} %`;
  const ductile = row.elongation >= 0.14 && row.reductionOfArea >= 0.3;
  return { ductile, because: `elongation ${percent(row.elongation)} against 14 %, reduction of area ${percent(row.reductionOfArea)} against 30 %` };
}

/** Hole in a base plate for one rod, with the washer that covers it. Lengths m. */
export interface PlateHole {
  readonly rodDiameter: number;
  readonly hole: number;
  /** Largest hole of later printings of the same table, from memory, where that is larger. */
  readonly laterHole?: number;
  /** Side of a square or diameter of a round washer; absent where the source gives none. */
  readonly washer?: { readonly width: number; readonly thickness: number };
  readonly source: string;
}

const designGuide = "AISC Design Guide 1, 2nd ed. (2006), Table 2.3";
const fromMemory = "from memory of the AISC Steel Construction Manual, Table 14-2; confirm before use";

/** Rod in, hole in, least washer in, washer thickness in, hole of the later table in. */
const holeRows: readonly (readonly [number, number, number, number, number])[] = [
  [3 / 4, 1 + 5 / 16, 2, 1 / 4, 1 + 5 / 16],
  [7 / 8, 1 + 9 / 16, 2.5, 5 / 16, 1 + 9 / 16],
  [1, 1 + 13 / 16, 3, 3 / 8, 1 + 7 / 8],
  [1.25, 2 + 1 / 16, 3, 1 / 2, 2 + 1 / 8],
  [1.5, 2 + 5 / 16, 3.5, 1 / 2, 2 + 3 / 8],
  [1.75, 2.75, 4, 5 / 8, 2 + 7 / 8],
  [2, 3.25, 5, 3 / 4, 3.25],
];

/** Largest hole usual in a base plate, by rod. No row is given for 1-1/8 and 1-3/8 in. */
export const plateHoles: readonly PlateHole[] = [
  { rodDiameter: inch / 2, hole: (1 + 1 / 16) * inch, source: fromMemory },
  { rodDiameter: (5 / 8) * inch, hole: (1 + 3 / 16) * inch, source: fromMemory },
  ...holeRows.map(
    ([rod, hole, width, thickness, later]): PlateHole => ({
      rodDiameter: rod * inch,
      hole: hole * inch,
      ...(later > hole ? { laterHole: later * inch } : {}),
      washer: { width: width * inch, thickness: thickness * inch },
      source: designGuide,
    }),
  ),
];

/** The usual hole for a rod of this diameter in meters, or undefined where the sources have no row. */
export function plateHole(rodDiameter: number): PlateHole | undefined {
  return plateHoles.find((row) => Math.abs(row.rodDiameter - rodDiameter) < 1e-6);
}

/** Rod in, least distance from the middle of a standard hole to the edge of the plate in. */
const edgeRows: readonly (readonly [number, number])[] = [
  [1 / 2, 3 / 4],
  [5 / 8, 7 / 8],
  [3 / 4, 1],
  [7 / 8, 1 + 1 / 8],
  [1, 1 + 1 / 4],
  [1 + 1 / 8, 1 + 1 / 2],
  [1 + 1 / 4, 1 + 5 / 8],
];

/** Least distance, m, from the middle of a standard hole to the edge of a plate: AISC 360-22 Table J3.4 (from memory); above 1-1/4 in 1.25 times the diameter. */
export const leastPlateEdge = (rodDiameter: number): number => {
  const row = edgeRows.find(([rod]) => Math.abs(rod * inch - rodDiameter) < 1e-6);
  return row ? row[1] * inch : 1.25 * rodDiameter;
};
