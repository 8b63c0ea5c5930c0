import { kinds } from "../units/kinds.js";
import { inchName, readInchSize } from "./inches.js";
import { plainText, type NotInCatalog } from "./lookup.js";
import { ring, rolled, rolledTorsion, tube, tubeTorsion, type AxisProperties } from "./section-geometry.js";
import { otherSource, pipeSizes, rectangularSizes, rolledSizes, roundSizes, squareSizes, squareSource, type PipeWeight } from "./section-sizes.js";

export type { AxisProperties };

/** What a section is made as, which goes with its grades of steel. */
export type SectionMake = "shaped HSS" | "round HSS" | "pipe" | "W";

/** A column section. Lengths m; properties in m², m³, m⁴; weight N/m. */
export interface ColumnSection {
  readonly name: string;
  readonly shape: "square" | "rectangle" | "round" | "W";
  readonly make: SectionMake;
  /** Outside size across the strong axis: the long side, the diameter, the depth of a W. */
  readonly depth: number;
  /** Outside size across the weak axis: the short side, the diameter, the flange of a W. */
  readonly width: number;
  /** Nominal wall; of a W its web. */
  readonly nominalWall: number;
  /** Design wall, 0.93 of nominal in tubes (AISC 360-22 B4.2); of a W its web. */
  readonly wall: number;
  /** Flange and fillet of a W; elsewhere the wall and 0. */
  readonly flange: number;
  readonly fillet: number;
  readonly area: number;
  readonly strong: AxisProperties;
  readonly weak: AxisProperties;
  /** Torsional constant. */
  readonly torsion: number;
  /** Self weight per length, N/m. */
  readonly weight: number;
}

/** Where the lists of sizes come from, and how the properties are found. */
export const sectionSource =
  `${squareSource}; other ${otherSource}; properties computed from the geometry: tubes with a design wall of 0.93 of nominal rounded to 0.001 in and corner radii 2t outside and t inside, W shapes with their fillets`;

const inch = kinds.length.US.factor;
/** Steel at 490 pcf, the weight behind published weights per foot. */
const steelWeight = 490 * kinds.unitWeight.US.factor;

/** The published tables use the design wall rounded to a thousandth, and b/t and area follow from that. */
const designWall = (nominalInches: number): number => (Math.round(nominalInches * 930 + 1e-9) / 1000) * inch;

function shapedHss(depthInches: number, widthInches: number, wallName: string): ColumnSection {
  const nominal = readInchSize(wallName) ?? Number.NaN;
  const [depth, width, wall] = [depthInches * inch, widthInches * inch, designWall(nominal)];
  return {
    name: `HSS${inchName(depthInches)}x${inchName(widthInches)}x${wallName}`,
    shape: depthInches === widthInches ? "square" : "rectangle",
    make: "shaped HSS",
    depth,
    width,
    nominalWall: nominal * inch,
    wall,
    flange: wall,
    fillet: 0,
    ...tube(depth, width, wall),
    torsion: tubeTorsion(depth, width, wall),
    weight: tube(depth, width, nominal * inch).area * steelWeight,
  };
}

function roundSection(name: string, make: "round HSS" | "pipe", diameterInches: number, nominalInches: number): ColumnSection {
  const [diameter, wall] = [diameterInches * inch, designWall(nominalInches)];
  const properties = ring(diameter, wall);
  return {
    name,
    shape: "round",
    make,
    depth: diameter,
    width: diameter,
    nominalWall: nominalInches * inch,
    wall,
    flange: wall,
    fillet: 0,
    ...properties,
    torsion: 2 * properties.strong.inertia,
    weight: ring(diameter, nominalInches * inch).area * steelWeight,
  };
}

function rolledSection(name: string, size: { readonly depth: number; readonly width: number; readonly flange: number; readonly web: number; readonly fillet: number }): ColumnSection {
  const properties = rolled(size);
  const { depth, width, flange, web, fillet } = size;
  return { name, shape: "W", make: "W", depth, width, nominalWall: web, wall: web, flange, fillet, ...properties, torsion: rolledTorsion(size), weight: properties.area * steelWeight };
}

const decimals = (inches: number): string => inches.toFixed(3);

/** Every square HSS, from the largest to the smallest. */
export const squareSections: readonly ColumnSection[] = squareSizes.flatMap(([width, walls]) => walls.map((wall) => shapedHss(width, width, wall)));
const rectangular = rectangularSizes.flatMap(([depth, width, walls]) => walls.map((wall) => shapedHss(depth, width, wall)));
const round = roundSizes.flatMap(([diameter, walls]) => walls.map((wall) => roundSection(`HSS${decimals(diameter)}x${decimals(wall)}`, "round HSS", diameter, wall)));
const pipes = pipeSizes.flatMap(([size, diameter, walls]) => (["STD", "XS"] as const).map((weight) => roundSection(`Pipe ${size} ${weight}`, "pipe", diameter, walls[weight])));
const rolledSections = rolledSizes.map(([name, d, b, flange, web, toFillet]) =>
  rolledSection(name, { depth: d * inch, width: b * inch, flange: flange * inch, web: web * inch, fillet: (toFillet - flange) * inch }),
);

/** Every section known by its designation: square, rectangular and round HSS, pipe and W, each from the largest to the smallest or by its table. */
export const sections: readonly ColumnSection[] = [...squareSections, ...rectangular, ...round, ...pipes, ...rolledSections];

/** Torsional constant of the section, m⁴. */
export const torsionConstant = (section: ColumnSection): number => section.torsion;

/** Whether it is closed: water stays in it, and it carries torsion by its walls. */
export const isClosed = ({ shape }: Pick<ColumnSection, "shape">): boolean => shape !== "W";

/** Whether it is alike along both plan axes, so that it does not matter which way it stands. */
export const isAlike = ({ shape }: Pick<ColumnSection, "shape">): boolean => shape === "square" || shape === "round";

/** Which plan axis the depth of the section lies along. */
export type DeepSide = "along x" | "along y";

/** A section as it stands in plan: sizes along x and y, and what bends about each plan axis. A push along x bends about y. */
export interface Placed {
  readonly alongX: number;
  readonly alongY: number;
  readonly aboutX: AxisProperties;
  readonly aboutY: AxisProperties;
}

export function placedSection(section: ColumnSection, deep: DeepSide): Placed {
  const { depth, width, strong, weak } = section;
  return deep === "along x" ? { alongX: depth, alongY: width, aboutX: weak, aboutY: strong } : { alongX: width, alongY: depth, aboutX: strong, aboutY: weak };
}

const hssText = /^hss ?([\d./ -]+?) ?(?:in|")? ?x ?([\d./ -]+?) ?(?:in|")?(?: ?x ?([\d./ -]+?) ?(?:in|")?)?$/;
const pipeText = /^pipe ?([\d./ -]+?) ?(?:in|")? ?(std|xs|x-?strong|standard|extra strong|sch(?:edule)?\.? ?40|sch(?:edule)?\.? ?80)\.?$/;
const rolledText = /^w ?(\d+) ?x ?(\d+(?:\.\d+)?)$/;
/** `W 8 x 8 in, flange 0.435 in, web 0.285 in, fillet 0.394 in` */
const ownRolledText = /^w ?([\d./ -]+?) ?(?:in|")? ?x ?([\d./ -]+?) ?(?:in|")? ?, ?flange ([\d./ -]+?) ?(?:in|")? ?, ?web ([\d./ -]+?) ?(?:in|")? ?, ?fillet ([\d./ -]+?) ?(?:in|")?$/;

const known = "HSS6x6x3/8, HSS8x4x1/4, HSS6.000x0.280, Pipe 6 STD or W8x31";

/** A section by designation, with any spacing and letter case, or why there is none. */
export function findSection(text: string): ColumnSection | NotInCatalog {
  const shown = text.trim().slice(0, 80);
  const bare = plainText(text.slice(0, 120)).replace(/\u2033/g, '"');
  const pipe = pipeText.exec(bare);
  if (pipe) return findPipe(shown, pipe[1], pipe[2]);
  const own = ownRolledText.exec(bare);
  if (own) return ownRolled(shown, own.slice(1).map(readInchSize));
  if (rolledText.test(bare)) return findRolled(shown, bare);
  const hss = hssText.exec(bare);
  if (hss) return findHss(shown, hss.slice(1));
  const withoutPrefix = /^\d/.test(bare) ? findSection(`HSS${bare}`) : undefined;
  const nearest = withoutPrefix === undefined ? [] : "problem" in withoutPrefix ? withoutPrefix.nearest : [withoutPrefix.name];
  return { problem: `"${shown.slice(0, 40)}" is not a section known here. Write ${known}`, nearest };
}

function findPipe(shown: string, size: string, called: string): ColumnSection | NotInCatalog {
  const weight: PipeWeight = /^(?:std|standard|sch.*40)/.test(called) ? "STD" : "XS";
  const wanted = readInchSize(size);
  const row = pipeSizes.find(([name]) => readInchSize(name) === wanted);
  // Schedules and weights part company in large pipe.
  const isSchedule = called.startsWith("sch");
  if (row && !(isSchedule && (wanted ?? 0) > (weight === "STD" ? 10 : 8))) return pipes.find(({ name }) => name === `Pipe ${row[0]} ${weight}`) as ColumnSection;
  return { problem: `${shown} is not among the pipes known here: 3 to 12 in, STD or XS`, nearest: isSchedule && row ? [`Pipe ${row[0]} ${weight}`] : ["Pipe 4 STD", "Pipe 6 STD"] };
}

function findRolled(shown: string, bare: string): ColumnSection | NotInCatalog {
  const name = bare.replace(/ /g, "");
  const match = rolledSections.find((one) => one.name.toLowerCase() === name);
  if (match) return match;
  const series = rolledSections.filter((one) => one.name.toLowerCase().startsWith(`${name.split("x")[0]}x`)).map((one) => one.name);
  return { problem: `${shown} is not among the W shapes known here. State its sizes: W 8 x 8 in, flange 0.435 in, web 0.285 in, fillet 0.394 in`, nearest: series.slice(0, 3) };
}

function ownRolled(shown: string, sizes: readonly (number | undefined)[]): ColumnSection | NotInCatalog {
  const [depth, width, flange, web, fillet] = sizes.map((size) => (size ?? Number.NaN) * inch);
  const isPossible = depth > 0 && width > 0 && flange > 0 && web > 0 && fillet >= 0 && 2 * (flange + fillet) < depth && web + 2 * fillet < width;
  if (!isPossible) return { problem: `the sizes in "${shown}" do not make a W shape: depth x flange width, then flange, web and fillet`, nearest: [] };
  return rolledSection(shown, { depth, width, flange, web, fillet });
}

function findHss(shown: string, parts: readonly (string | undefined)[]): ColumnSection | NotInCatalog {
  const [first, second, third] = parts.map((part) => (part === undefined ? undefined : readInchSize(part)));
  if (first === undefined || second === undefined || (third === undefined && parts[2] !== undefined)) {
    return { problem: `the sizes in "${shown.slice(0, 40)}" cannot be read. Write ${known}`, nearest: [] };
  }
  if (third === undefined) {
    // Two numbers with a thin second one are a round section: diameter and wall.
    if (second >= first / 3) return { problem: `${shown} has no wall thickness`, nearest: nearestSections("shaped HSS", first, second, 0.25) };
    const match = round.find((s) => Math.abs(s.depth - first * inch) < 1e-6 && Math.abs(s.nominalWall - second * inch) < 2e-5);
    return match ?? { problem: `${shown} is not among the round HSS known here`, nearest: nearestSections("round HSS", first, first, second) };
  }
  const [deep, wide] = first >= second ? [first, second] : [second, first];
  const match = [...squareSections, ...rectangular].find(
    (s) => Math.abs(s.depth - deep * inch) < 1e-6 && Math.abs(s.width - wide * inch) < 1e-6 && Math.abs(s.nominalWall - third * inch) < 1e-6,
  );
  if (match) return match;
  // Widths this large can only be the metric designation, in millimeters.
  const scale = deep > 40 ? 1 / 25.4 : 1;
  const problem = scale === 1 ? `${shown} is not among the HSS known here` : `${shown} looks metric. Write the size in inches`;
  return { problem, nearest: nearestSections("shaped HSS", deep * scale, wide * scale, third * scale) };
}

function nearestSections(make: SectionMake, depthInches: number, widthInches: number, wallInches: number): readonly string[] {
  if (!(depthInches > 0 && widthInches > 0 && wallInches > 0)) return [];
  const off = (size: number, wanted: number): number => Math.abs(Math.log(size / inch / wanted));
  const distance = (s: ColumnSection): number => 3 * off(s.depth, depthInches) + 3 * off(s.width, widthInches) + off(s.nominalWall, wallInches);
  return sections.filter((s) => s.make === make).sort((a, b) => distance(a) - distance(b)).slice(0, 3).map((s) => s.name);
}
