import { kinds } from "../units/kinds.js";
import { inchName, readInchSize } from "./inches.js";
import { plainText, type NotInCatalog } from "./lookup.js";

/** A square hollow structural section. Lengths m; properties in m², m³, m⁴; weight N/m. */
export interface ColumnSection {
  readonly name: string;
  readonly shape: "square HSS";
  /** Outside width. */
  readonly width: number;
  /** Nominal wall. */
  readonly nominalWall: number;
  /** Design wall, 0.93 of nominal (AISC 360-22 B4.2, ASTM A500). */
  readonly wall: number;
  readonly area: number;
  readonly inertia: number;
  readonly sectionModulus: number;
  readonly plasticModulus: number;
  readonly gyration: number;
  /** Flat width over wall, (B - 3t)/t. */
  readonly slenderness: number;
  /** Self weight per length, N/m. */
  readonly weight: number;
}

/** Where the list of sizes comes from, and how the properties are found. */
export const sectionSource =
  "sizes: AISC Shapes Database v15.0; properties computed from the geometry: design wall 0.93 of nominal rounded to 0.001 in, corner radii 2t outside and t inside";

const inch = kinds.length.US.factor;
/** Steel at 490 pcf, the weight behind published weights per foot. */
const steelWeight = 490 * kinds.unitWeight.US.factor;

/** Sizes that are made: width in, then the nominal walls in. */
const sizes: readonly (readonly [number, readonly string[]])[] = [
  [10, ["3/4", "5/8", "1/2", "3/8", "5/16", "1/4", "3/16"]],
  [8, ["5/8", "1/2", "3/8", "5/16", "1/4", "3/16", "1/8"]],
  [7, ["5/8", "1/2", "3/8", "5/16", "1/4", "3/16", "1/8"]],
  [6, ["5/8", "1/2", "3/8", "5/16", "1/4", "3/16", "1/8"]],
  [5.5, ["3/8", "5/16", "1/4", "3/16", "1/8"]],
  [5, ["1/2", "3/8", "5/16", "1/4", "3/16", "1/8"]],
  [4.5, ["1/2", "3/8", "5/16", "1/4", "3/16", "1/8"]],
  [4, ["1/2", "3/8", "5/16", "1/4", "3/16", "1/8"]],
  [3.5, ["3/8", "5/16", "1/4", "3/16", "1/8"]],
  [3, ["3/8", "5/16", "1/4", "3/16", "1/8"]],
];

interface SquareProperties {
  readonly area: number;
  readonly inertia: number;
  /** First moment of one half about the middle. */
  readonly halfMoment: number;
}

/** A solid square with rounded corners: the full square less four corner spandrels. */
function roundedSquare(width: number, radius: number): SquareProperties {
  const half = width / 2;
  const quarter = (Math.PI / 4) * radius ** 2;
  const toQuarter = half - radius + (4 * radius) / (3 * Math.PI);
  const toCorner = half - radius / 2;
  const cornerInertia = radius ** 4 / 12 + radius ** 2 * toCorner ** 2;
  const quarterInertia = (Math.PI / 16 - 4 / (9 * Math.PI)) * radius ** 4 + quarter * toQuarter ** 2;
  return {
    area: width ** 2 - 4 * (radius ** 2 - quarter),
    inertia: width ** 4 / 12 - 4 * (cornerInertia - quarterInertia),
    halfMoment: width ** 3 / 8 - 2 * (radius ** 2 * toCorner - quarter * toQuarter),
  };
}

function hollow(width: number, wall: number): SquareProperties {
  const outer = roundedSquare(width, 2 * wall);
  const inner = roundedSquare(width - 2 * wall, wall);
  return { area: outer.area - inner.area, inertia: outer.inertia - inner.inertia, halfMoment: outer.halfMoment - inner.halfMoment };
}

function squareHss(widthInches: number, wallName: string): ColumnSection {
  const nominalInches = readInchSize(wallName) ?? Number.NaN;
  const width = widthInches * inch;
  const nominalWall = nominalInches * inch;
  // The published tables use the design wall rounded to a thousandth, and b/t and area follow from that.
  const wall = (Math.round(nominalInches * 930 + 1e-9) / 1000) * inch;
  const { area, inertia, halfMoment } = hollow(width, wall);
  return {
    name: `HSS${inchName(widthInches)}x${inchName(widthInches)}x${wallName}`,
    shape: "square HSS",
    width,
    nominalWall,
    wall,
    area,
    inertia,
    sectionModulus: inertia / (width / 2),
    plasticModulus: 2 * halfMoment,
    gyration: Math.sqrt(inertia / area),
    slenderness: (width - 3 * wall) / wall,
    weight: hollow(width, nominalWall).area * steelWeight,
  };
}

/** Every square section, from the largest to the smallest. */
export const sections: readonly ColumnSection[] = sizes.flatMap(([width, walls]) => walls.map((wall) => squareHss(width, wall)));

/**
 * Torsional constant of the section, m⁴: Bredt's thin-walled tube, 4 A² t / p on the middle line of the wall with a corner
 * radius of 1.5t.
 */
export function torsionConstant(section: ColumnSection): number {
  const { width, wall } = section;
  const radius = 1.5 * wall;
  const enclosed = (width - wall) ** 2 - (4 - Math.PI) * radius ** 2;
  const perimeter = 4 * (width - wall) - 2 * (4 - Math.PI) * radius;
  return (4 * enclosed ** 2 * wall) / perimeter;
}

const designation = /^hss ?([\d./ -]+?) ?(?:in|")? ?x ?([\d./ -]+?) ?(?:in|")?(?: ?x ?([\d./ -]+?) ?(?:in|")?)?$/;

/** A square HSS by designation, `HSS6x6x3/8`, with any spacing and letter case, or why there is none. */
export function findSection(text: string): ColumnSection | NotInCatalog {
  const shown = text.trim().slice(0, 40);
  const bare = plainText(text.slice(0, 80)).replace(/\u2033/g, '"');
  const found = designation.exec(bare);
  if (!found) {
    const withoutPrefix = /^\d/.test(bare) ? findSection(`HSS${bare}`) : undefined;
    const nearest = withoutPrefix === undefined ? [] : "problem" in withoutPrefix ? withoutPrefix.nearest : [withoutPrefix.name];
    return { problem: `"${shown}" is not a section known here: square HSS from 3 to 10 in, written HSS6x6x3/8`, nearest };
  }
  const [width, depth, wall] = [found[1], found[2], found[3]].map((part) => (part === undefined ? undefined : readInchSize(part)));
  if (width === undefined || depth === undefined || (wall === undefined && found[3] !== undefined)) {
    return { problem: `the sizes in "${shown}" cannot be read. Write HSS6x6x3/8 or HSS5-1/2x5-1/2x5/16`, nearest: [] };
  }
  if (wall === undefined) {
    // Two numbers with a thin second one are a round section: diameter and wall.
    const isRound = depth < width / 3;
    const problem = isRound ? `${shown} is a round section; only square HSS is covered` : `${shown} has no wall thickness`;
    return { problem, nearest: nearestSections(width, isRound ? depth : 0.25) };
  }
  if (Math.abs(width - depth) > 1e-6) return { problem: `${shown} is rectangular; only square HSS is covered`, nearest: nearestSections(Math.min(width, depth), wall) };
  const match = sections.find((s) => Math.abs(s.width - width * inch) < 1e-6 && Math.abs(s.nominalWall - wall * inch) < 1e-6);
  if (match) return match;
  // Widths this large can only be the metric designation, in millimeters.
  const scale = width > 40 ? 1 / 25.4 : 1;
  const problem = scale === 1 ? `${shown} is not among the square HSS known here` : `${shown} looks metric. Write the size in inches`;
  return { problem, nearest: nearestSections(width * scale, wall * scale) };
}

function nearestSections(widthInches: number, wallInches: number): readonly string[] {
  if (!(widthInches > 0 && wallInches > 0)) return [];
  const distance = (s: ColumnSection): number =>
    3 * Math.abs(Math.log(s.width / inch / widthInches)) + Math.abs(Math.log(s.nominalWall / inch / wallInches));
  return [...sections].sort((a, b) => distance(a) - distance(b)).slice(0, 3).map((s) => s.name);
}
