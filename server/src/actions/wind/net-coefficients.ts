/**
 * Net pressure coefficients for one direction of the wind on a free roof: which figure, which row, where the zones end.
 * Interpolation is linear between 7.5 and 45 degrees; below 7.5 degrees the row of 0 degrees is used without interpolation.
 * The figures hold for 0.25 <= h/L <= 1.0 and angles up to 45 degrees, with L the plan length along the wind and h the mean height.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";
import type { EdgeSense } from "../roof-plane.js";
import {
  bandTable,
  flatHeightRange,
  heightRange,
  interpolatedFrom,
  nearlyFlat,
  slopeTable,
  steepest,
  type AngleRow,
  type BandTable,
  type DisputedCell,
  type Flow,
  type PressureCase,
  type RoofShape,
} from "./free-roof-tables.js";
import type { LoadStandard } from "./velocity-pressure.js";

export const roofAngle = formula({
  id: "wind.roof-angle",
  text: "theta = atan(s) / deg",
  source: "geometry; the figures are entered in degrees",
  symbols: {
    theta: { kind: "number", meaning: "roof angle in degrees" },
    s: { kind: "slope", meaning: "roof slope, rise over run", field: "roof.slope" },
  },
  constants: { deg: "1 deg" },
});

export const heightRatio = formula({
  id: "wind.height-ratio",
  text: "r_h = h / L",
  source: "ASCE 7-22 Figures 27.3-1, 27.3-4 and 27.3-7",
  symbols: {
    r_h: { kind: "ratio", meaning: "mean roof height over plan length along the wind" },
    h: { kind: "distance", meaning: "mean roof height", field: "roof.mean height" },
    L: { kind: "distance", meaning: "plan length of the roof along the wind", field: "roof.length" },
  },
});

export const interpolatedCoefficient = formula({
  id: "wind.interpolated-coefficient",
  text: "C_N = C_1 + (C_2 - C_1) * (theta - theta_1) / (theta_2 - theta_1)",
  source: "ASCE 7-22 Figure 27.3-4, note on interpolation: linear from 7.5 to 45 degrees",
  symbols: {
    C_N: { kind: "ratio", meaning: "net pressure coefficient, positive toward the top surface" },
    C_1: { kind: "ratio", meaning: "coefficient of the row below" },
    C_2: { kind: "ratio", meaning: "coefficient of the row above" },
    theta: { kind: "number", meaning: "roof angle in degrees", range: [11, 14] },
    theta_1: { kind: "number", meaning: "angle of the row below, degrees", range: [5, 10] },
    theta_2: { kind: "number", meaning: "angle of the row above, degrees", range: [15, 20] },
  },
});

export const halfLength = formula({
  id: "wind.half-length",
  text: "d = L / 2",
  source: "ASCE 7-22 Figures 27.3-1 and 27.3-4: windward half and leeward half",
  symbols: {
    d: { kind: "distance", meaning: "end of the windward half, from the windward edge" },
    L: { kind: "distance", meaning: "plan length of the roof along the wind" },
  },
});

export const bandEnd = formula({
  id: "wind.band-end",
  text: "d = min(n * h, L)",
  source: "ASCE 7-22 Figures 27.3-1 and 27.3-7: bands that end at multiples of h from the windward edge",
  symbols: {
    d: { kind: "distance", meaning: "end of the band, from the windward edge" },
    n: { kind: "number", meaning: "mean roof heights from the windward edge" },
    h: { kind: "distance", meaning: "mean roof height", field: "roof.mean height" },
    L: { kind: "distance", meaning: "plan length of the roof along the wind" },
  },
});

/** A strip of the roof across the wind, by distance from the windward edge, m. */
export interface Zone {
  readonly from: number;
  readonly to: number;
  readonly C_N: number;
  /** Name of the zone and of its coefficient in the figure. */
  readonly where: string;
  readonly symbol: string;
  /** The row or rows of the figure it is read from; left out where the zone names the row. */
  readonly row?: string;
}

/** A direction of the wind against the roof. Lengths m. */
export interface Direction {
  readonly standard: LoadStandard;
  readonly shape: RoofShape;
  readonly sense: EdgeSense;
  readonly slope: number;
  readonly meanHeight: number;
  /** Plan length along the wind. */
  readonly along: number;
}

export type FigureUse = {
  readonly disputed?: DisputedCell;
  /** The figure the coefficients are read from. */
  readonly figure: string;
  readonly source: string;
  /** Roof angle, degrees. */
  readonly theta: number;
  /** Mean height over plan length along the wind. */
  readonly ratio: number;
  /** In words, why the figure does not hold here; left out where it does. */
  readonly outside?: string;
} & ({ readonly by: "halves"; readonly rows: readonly AngleRow[] } | { readonly by: "bands"; readonly table: BandTable });

/** Which figure serves a direction, and whether its range holds. */
export function figureFor(direction: Direction, calc: Calc): FigureUse {
  const theta = calc(roofAngle, { s: direction.slope });
  const ratio = calc(heightRatio, { h: direction.meanHeight, L: direction.along });
  const isFlat = isBelow(theta, nearlyFlat);
  const isShallow = isBelow(ratio, heightRange.least);
  const range = isFlat ? flatHeightRange : heightRange;
  const { sense } = direction;
  const slope = slopeTable(direction.standard, direction.shape);
  const bands = bandTable(direction.standard);
  const byBands = sense === "side edge" || (isFlat && isShallow);
  if (sense !== "side edge" && byBands) calc.note(`The roof is flatter than ${nearlyFlat} degrees and h/L is below ${heightRange.least}: the coefficients by distance of ${bands.figure} apply along the slope too.`);
  const { figure } = byBands ? bands : slope;
  const outside = isAbove(theta, steepest)
    ? `the roof angle of ${theta.toFixed(1)} degrees is above the ${steepest} degrees of ${figure}`
    : isBelow(ratio, range.least) || isAbove(ratio, range.most)
      ? `mean height over plan length along the wind is ${ratio.toFixed(2)}, outside ${range.least} to ${range.most.toFixed(1)} of ${figure}`
      : undefined;
  const use = { figure, source: byBands ? bands.source : slope.source, theta, ratio, outside };
  if (byBands) return { ...use, by: "bands", table: bands };
  return { ...use, disputed: slope.disputed, by: "halves", rows: slope.onto[sense === "low edge" ? "low edge" : "high edge"] };
}

/** The rows below and above an angle; outside the table the nearest row stands for both. */
function rowsAround(rows: readonly AngleRow[], theta: number): readonly [AngleRow, AngleRow] {
  if (isBelow(theta, interpolatedFrom)) return [rows[0], rows[0]];
  const above = rows.find((row) => row.angle >= interpolatedFrom && !isAbove(theta, row.angle)) ?? rows[rows.length - 1];
  // The row of 0 degrees is never interpolated with.
  if (above.angle <= interpolatedFrom || isAbove(theta, steepest)) return [above, above];
  return [rows[rows.indexOf(above) - 1], above];
}

/** A band by mean roof heights h from the windward edge, as the figure names it. */
function bandWords(after: number | undefined, to: number): string {
  const heights = (n: number): string => (n === 1 ? "h" : `${n}h`);
  if (after === undefined) return `up to ${heights(to)}`;
  return Number.isFinite(to) ? `${heights(after)} to ${heights(to)}` : `beyond ${heights(after)}`;
}

/** The zones of the roof from the windward edge on. Where the range does not hold they are the nearest ones, for information. */
export function zonesOf(use: FigureUse, direction: Direction, flow: Flow, pressureCase: PressureCase, calc: Calc): readonly Zone[] {
  const { along, meanHeight } = direction;
  if (use.by === "bands") {
    const zones: Zone[] = [];
    let from = 0;
    let after: number | undefined;
    for (const band of use.table.bands) {
      const to = Number.isFinite(band.to) ? calc(bandEnd, { n: band.to, h: meanHeight, L: along }) : along;
      if (isBelow(from, to)) zones.push({ from, to, C_N: band[pressureCase][flow === "clear" ? 0 : 1], where: bandWords(after, band.to), symbol: "C_N" });
      from = to;
      after = band.to;
    }
    return zones;
  }
  const [below, above] = rowsAround(use.rows, use.theta);
  const { disputed } = use;
  if (disputed?.flow === flow && disputed.pressureCase === pressureCase && [below.angle, above.angle].includes(disputed.angle)) calc.note(disputed.words);
  const first = flow === "clear" ? 0 : 2;
  const coefficient = (half: number): number => {
    const C_1 = below[pressureCase][half];
    if (below === above) return C_1;
    return calc(interpolatedCoefficient, { C_1, C_2: above[pressureCase][half], theta: use.theta, theta_1: below.angle, theta_2: above.angle });
  };
  if (below === above) calc.note(`The row of ${below.angle} degrees of ${use.figure} is used without interpolation.`);
  const d = calc(halfLength, { L: along });
  const row = below === above ? `row of ${below.angle}°` : `between the rows of ${below.angle}° and ${above.angle}°`;
  return [
    { from: 0, to: d, C_N: coefficient(first), where: "windward half", symbol: "C_NW", row },
    { from: d, to: along, C_N: coefficient(first + 1), where: "leeward half", symbol: "C_NL", row },
  ];
}
