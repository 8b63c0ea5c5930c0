import { kinds } from "../units/kinds.js";
import { plainText, type NotInCatalog } from "./lookup.js";

/** Reinforcing bars by callout. Nominal values of ASTM A615/A615M, Table 1. */
export interface Bar {
  /** As the trade writes it: `no. 6`, `16 mm`. */
  readonly name: string;
  /** Nominal diameter, m. */
  readonly diameter: number;
  /** Nominal area, m². */
  readonly area: number;
}

export interface CatalogBar extends Bar {
  /** Standard and table the nominal values come from. */
  readonly source: string;
}

const inch = kinds.length.US.factor;
const squareInch = kinds.area.US.factor;
const mm = 1e-3;
const squareMm = 1e-6;

const a615 = "ASTM A615/A615M-20, Table 1";
const a615Metric = "ASTM A615/A615M-20, Table 1, metric designation";
const g3018 = "CSA G30.18, nominal dimensions";
const round = "EN 10080:2005, Table 6 and AS/NZS 4671: nominal area of a round of this diameter";

/** Number, nominal diameter in, nominal area in², metric designation, nominal diameter mm, nominal area mm². */
const inchRows: readonly (readonly [number, number, number, number, number, number])[] = [
  [3, 0.375, 0.11, 10, 9.5, 71],
  [4, 0.5, 0.2, 13, 12.7, 129],
  [5, 0.625, 0.31, 16, 15.9, 199],
  [6, 0.75, 0.44, 19, 19.1, 284],
  [7, 0.875, 0.6, 22, 22.2, 387],
  [8, 1.0, 0.79, 25, 25.4, 510],
  [9, 1.128, 1.0, 29, 28.7, 645],
  [10, 1.27, 1.27, 32, 32.3, 819],
  [11, 1.41, 1.56, 36, 35.8, 1006],
  [14, 1.693, 2.25, 43, 43.0, 1452],
  [18, 2.257, 4.0, 57, 57.3, 2581],
];

/** Designation, nominal diameter mm, nominal area mm². */
const canadianRows: readonly (readonly [string, number, number])[] = [
  ["10M", 11.3, 100],
  ["15M", 16.0, 200],
  ["20M", 19.5, 300],
  ["25M", 25.2, 500],
  ["30M", 29.9, 700],
  ["35M", 35.7, 1000],
];

const roundSizes = [6, 8, 10, 12, 14, 16, 20, 24, 25, 28, 32, 36, 40];

const inchBars = inchRows.map(
  ([number, diameter, area]): CatalogBar => ({ name: `no. ${number}`, diameter: diameter * inch, area: area * squareInch, source: a615 }),
);
const canadianBars = canadianRows.map(
  ([name, diameter, area]): CatalogBar => ({ name, diameter: diameter * mm, area: area * squareMm, source: g3018 }),
);
/** `10M` and `25M` are taken by the Canadian bars of that name; the other metric designations of A615M are unmistakable. */
const softMetricBars = inchRows
  .filter(([, , , metric]) => !canadianRows.some(([name]) => name === `${metric}M`))
  .map(([, , , metric, diameter, area]): CatalogBar => ({ name: `${metric}M`, diameter: diameter * mm, area: area * squareMm, source: a615Metric }));
const roundBars = roundSizes.map(
  (size): CatalogBar => ({ name: `${size} mm`, diameter: size * mm, area: (Math.PI / 4) * (size * mm) ** 2, source: round }),
);

/** Every bar, in the order a schedule lists them. */
export const bars: readonly CatalogBar[] = [...inchBars, ...canadianBars, ...softMetricBars, ...roundBars];

const byName = new Map(bars.map((bar) => [bar.name.toLowerCase(), bar]));

const numbered = /^(?:no\.?|number|#) ?(\d+)$/;
const metricSize = /^(\d+) ?m$/;
const millimeters = /^(?:(?:t|n|h|dia\.?|diameter|\u00f8|\u2300|\u03c6) ?)(\d+)(?: ?mm)?$|^(\d+) ?mm(?: dia\.?| diameter)?$/;

function nameOf(text: string): string | undefined {
  const bare = plainText(text).replace(/ (?:re)?bars?$/, "");
  const inNumber = numbered.exec(bare);
  if (inNumber) return `no. ${Number(inNumber[1])}`;
  const metric = metricSize.exec(bare);
  if (metric) return `${Number(metric[1])}m`;
  const size = millimeters.exec(bare);
  return size ? `${Number(size[1] ?? size[2])} mm` : undefined;
}

/**
 * A bar by callout: `no. 6`, `#6`, `15M`, `T16`, `N16`, `16 mm`, `dia 16`. The letters T, N and H before a size are read as a
 * round bar of that size in millimeters; they say nothing about its grade here. Undefined when no such bar is made.
 */
export function readBar(text: string): CatalogBar | undefined {
  const name = nameOf(text);
  return name === undefined ? undefined : byName.get(name);
}

/** As {@link readBar}, with the reason and the nearest bars when there is none. */
export function findBar(text: string): CatalogBar | NotInCatalog {
  const found = readBar(text);
  if (found) return found;
  const name = nameOf(text);
  const size = Number(/\d+/.exec(text.slice(0, 40))?.[0] ?? Number.NaN);
  const family = name?.startsWith("no.") ? inchBars : name?.endsWith("mm") ? roundBars : name ? [...canadianBars, ...softMetricBars] : bars;
  const nearest = nearestBySize(family, size);
  if (name === undefined) return { problem: `"${text.trim().slice(0, 40)}" is not a bar. Write it as no. 6, 15M or 16 mm`, nearest };
  return { problem: `${name.replace(/m$/, (m) => (name.endsWith("mm") ? m : "M"))} is not a bar that is made`, nearest };
}

function nearestBySize(family: readonly CatalogBar[], size: number): readonly string[] {
  if (!Number.isFinite(size)) return [];
  const sizeIn = (bar: CatalogBar): number => Number(/\d+/.exec(bar.name)?.[0]);
  return [...family]
    .sort((a, b) => Math.abs(sizeIn(a) - size) - Math.abs(sizeIn(b) - size))
    .slice(0, 3)
    .map((bar) => bar.name);
}

/** Offsets into the text that was read, end exclusive. */
export interface TextRange {
  readonly start: number;
  readonly end: number;
}

/** Bars by number and callout, as in `8 no. 6`, with the place of each part. */
export interface CountedBars {
  readonly count: number;
  readonly countAt: TextRange;
  readonly bar: CatalogBar;
  readonly barAt: TextRange;
}

const counted = /^(\s*\(?)(\d{1,6})(\)?\s*(?:(?:x|\u00d7|-)\s*)?)(\D*\d\S*.*?)\s*$/is;

/**
 * Reads `8 no. 6`, `8-no. 6`, `(8) no. 6`, `8 x 16 mm`, `8T16`. A part that cannot be read is named, with its place.
 */
export function readBarCount(text: string): CountedBars | (NotInCatalog & { readonly at: TextRange }) {
  const alone = readBar(text);
  const whole: TextRange = { start: text.length - text.trimStart().length, end: text.trimEnd().length };
  const split = alone ? undefined : counted.exec(text);
  if (!split) {
    const nearest = alone ? [`4 ${alone.name}`] : [];
    return { problem: alone ? `how many ${alone.name} bars? Write the number first, as in 4 ${alone.name}` : "write the number of bars and the bar, as in 8 no. 6", nearest, at: whole };
  }
  const [, before, number, between, callout] = split;
  const countAt = { start: before.length, end: before.length + number.length };
  const barAt = { start: countAt.end + between.length, end: countAt.end + between.length + callout.length };
  const bar = findBar(callout);
  if ("problem" in bar) return { ...bar, at: barAt };
  const count = Number(number);
  if (count === 0) return { problem: "0 bars: write at least 1", nearest: [], at: countAt };
  return { count, countAt, bar, barAt };
}
