/** Columns as lines in plan, and the share of each in a load spread over a rectangle, by lever in simple spans. */
import type { PlanArea } from "./rigid-roof.js";

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Columns that stand this near to a common line count as being in it, m. */
const offLine = 0.3;

/** A line of columns: where it is across, and its columns in order along it. */
export interface ColumnLine {
  readonly across: number;
  readonly columns: readonly number[];
  readonly along: readonly number[];
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * Groups of columns in line along an axis, from the south or from the west; a group may be a single column. Columns that lie near each other one
 * by one and are spread wider than a line in all are no line: each stands alone, whichever side one begins to count from.
 */
export function linesAlong(places: readonly Place[], axis: "x" | "y"): readonly ColumnLine[] {
  const other = axis === "x" ? "y" : "x";
  const order = places.map((_, i) => i).sort((a, b) => places[a][other] - places[b][other]);
  const apart = (a: number, b: number): boolean => places[b][other] - places[a][other] > offLine;
  const chains: number[][] = [];
  for (const i of order) {
    const chain = chains.at(-1);
    if (chain && !apart(chain[chain.length - 1], i)) chain.push(i);
    else chains.push([i]);
  }
  const groups = chains.flatMap((chain) => (apart(chain[0], chain[chain.length - 1]) ? chain.map((i) => [i]) : [chain]));
  return groups.map((group) => {
    const columns = [...group].sort((a, b) => places[a][axis] - places[b][axis]);
    return { across: mean(columns.map((i) => places[i][other])), columns, along: columns.map((i) => places[i][axis]) };
  });
}

export interface ColumnGrid {
  /** The direction the lines run in. */
  readonly axis: "x" | "y";
  readonly lines: readonly ColumnLine[];
}

/** Two lines or more along an axis, of two columns or more each. */
export function gridAlong(places: readonly Place[], axis: "x" | "y"): ColumnGrid | undefined {
  const lines = linesAlong(places, axis);
  const isApart = lines.every(({ along }) => along.every((at, i) => i === 0 || at > along[i - 1]));
  return lines.length > 1 && isApart && lines.every(({ columns }) => columns.length > 1) ? { axis, lines } : undefined;
}

/** Two lines or more, of two columns or more each; the lines along x where both ways are possible, as both then give the same. */
export const gridOf = (places: readonly Place[]): ColumnGrid | undefined => gridAlong(places, "x") ?? gridAlong(places, "y");

/** Parts of a stretch between the inner points of a row of supports, each with the span it lies in and its part of the whole. */
function partsOf(from: number, to: number, supports: readonly number[]): readonly { readonly span: number; readonly middle: number; readonly part: number }[] {
  const spanAt = (at: number): number => {
    let span = 0;
    while (span < supports.length - 2 && at >= supports[span + 1]) span++;
    return span;
  };
  if (!(to > from)) return [{ span: spanAt(from), middle: from, part: 1 }];
  const cuts = [from, ...supports.slice(1, -1).filter((at) => at > from && at < to), to];
  return cuts.slice(1).map((end, i) => {
    const middle = (cuts[i] + end) / 2;
    return { span: spanAt(middle), middle, part: (end - cuts[i]) / (to - from) };
  });
}

/** By lever: the shares of both ends of a span in a load at `at`, beyond the span too. */
function lever(at: number, a: number, b: number): readonly [number, number] {
  const far = (at - a) / (b - a);
  return [1 - far, far];
}

/**
 * The share of each column in a load spread evenly over a rectangle: purlins in simple spans from line to line, beams in simple spans along each
 * line, both with overhangs beyond the last support. The shares add up to one, and of a grid of two lines or more their resultant is that of the load.
 */
export function sharesOf({ axis, lines }: ColumnGrid, area: PlanArea, count: number): Float64Array {
  const shares = new Float64Array(count);
  const [along, across] = axis === "x" ? [[area.x1, area.x2], [area.y1, area.y2]] : [[area.y1, area.y2], [area.x1, area.x2]];
  const rows = lines.map((line) => line.across);
  for (const purlin of partsOf(across[0], across[1], rows)) {
    // One line carries all of it; what turns about the line is not shared here.
    const ends = rows.length === 1 ? [1] : lever(purlin.middle, rows[purlin.span], rows[purlin.span + 1]);
    for (const end of ends.keys()) {
      const line = lines[purlin.span + end];
      for (const beam of partsOf(along[0], along[1], line.along)) {
        const [near, far] = lever(beam.middle, line.along[beam.span], line.along[beam.span + 1]);
        const part = purlin.part * beam.part * ends[end];
        shares[line.columns[beam.span]] += part * near;
        shares[line.columns[beam.span + 1]] += part * far;
      }
    }
  }
  return shares;
}
