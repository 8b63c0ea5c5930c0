/**
 * What presses on a roof or lifts it, brought to the columns by the spans between them. A roof that is rigid in its plane shares pushes as one
 * plate, but it bends across its plane: a column in the middle of a line takes more of the weight and of the lift than one at the end.
 */
import type { Routine, ShownValue } from "../formula/types.js";
import { gridAlong, linesAlong, sharesOf, type ColumnGrid, type Place } from "./column-grid.js";
import type { Forces } from "./forces.js";
import { areaWithin, tributaryPolygon } from "./tributary.js";
import type { PlanArea, RoofColumn, RoofLoad } from "./rigid-roof.js";

/** The spans a roof has by its columns: from line to line and along each line, or along the one line there is. */
export interface RoofSpans {
  readonly columns: readonly RoofColumn[];
  /**
   * One, or two where the columns stand in lines both ways; their mean counts, as columns a little off their line make them differ a little. None
   * where the columns stand in no lines: each then takes what lies nearest to it.
   */
  readonly grids: readonly ColumnGrid[];
}

/** The spans between the columns; undefined where there are so few that statics alone shares a load: one, two, or three not in line. */
export function roofSpans(columns: readonly RoofColumn[]): RoofSpans | undefined {
  const grids = [gridAlong(columns, "x"), gridAlong(columns, "y")].filter((grid) => grid !== undefined);
  if (grids.length > 0) return { columns, grids };
  const line = oneLine(columns);
  if (line) return { columns, grids: [line] };
  return columns.length > 3 ? { columns, grids: [] } : undefined;
}

/** Shares by the part of the load nearest to each column; columns at one place share alike. */
function nearestShares(columns: readonly RoofColumn[], { x1, x2, y1, y2 }: PlanArea): readonly number[] {
  // What acts at a point is spread over a span of next to nothing.
  const least = 1e-3;
  const whole = { x1, x2: Math.max(x2, x1 + least), y1, y2: Math.max(y2, y1 + least) };
  const areas = columns.map((_, i) => areaWithin(tributaryPolygon(whole, columns, i), whole));
  const sum = areas.reduce((total, area) => total + area, 0);
  return areas.map((area) => area / sum);
}

const sharesBy = ({ columns, grids }: RoofSpans, area: PlanArea): readonly number[] => {
  if (grids.length === 0) return nearestShares(columns, area);
  const each = grids.map((grid) => sharesOf(grid, area, columns.length));
  return columns.map((_, i) => each.reduce((sum, shares) => sum + shares[i], 0) / each.length);
};

/** Three columns or more in one line. */
function oneLine(columns: readonly Place[]): ColumnGrid | undefined {
  for (const axis of ["x", "y"] as const) {
    const [line, ...others] = linesAlong(columns, axis);
    if (line && others.length === 0 && line.columns.length > 2 && line.along.every((at, i) => i === 0 || at > line.along[i - 1])) {
      return { axis, lines: [line] };
    }
  }
  return undefined;
}

/** On one line of columns: the largest part of a load over the roof that a column has by the spans, over the mean; undefined on more lines or fewer than three columns. */
export function mostOverMean(places: readonly Place[], roof: PlanArea): number | undefined {
  const line = oneLine(places);
  return line && Math.max(...sharesOf(line, roof, places.length)) * places.length;
}

export interface BySpans {
  /** What presses on each column, N, lift negative. */
  readonly presses: readonly number[];
  /** What is left for the roof as one plate: the pushes, and the turning that forces down the columns cannot make. */
  readonly left: readonly RoofLoad[];
}

const areaOf = ({ x, y, over }: RoofLoad) => over ?? { x1: x, x2: x, y1: y, y2: y };

/** Splits loads on a roof into what its spans bring down each column and what is left for it as one plate. Statics: both together are the loads. */
export function splitBySpans(spans: RoofSpans, loads: readonly RoofLoad[]): BySpans {
  const { columns } = spans;
  const presses = columns.map(() => 0);
  const left: RoofLoad[] = [];
  // Moments of the vertical forces about the axes, the loads' less the columns'.
  let [east, north] = [0, 0];
  for (const load of loads) {
    left.push({ ...load, Fz: 0 });
    if (load.Fz === 0) continue;
    const shares = sharesBy(spans, areaOf(load));
    columns.forEach((c, i) => {
      presses[i] -= shares[i] * load.Fz;
      east -= shares[i] * load.Fz * c.x;
      north -= shares[i] * load.Fz * c.y;
    });
    east += load.Fz * load.x;
    north += load.Fz * load.y;
  }
  const [{ x, y, base, height }] = columns;
  const z = base + height;
  // A couple, as two forces one meter apart.
  const couple = (moment: number, dx: number, dy: number): readonly RoofLoad[] =>
    moment === 0
      ? []
      : [
          { x: x + dx, y: y + dy, z, Fx: 0, Fy: 0, Fz: moment },
          { x, y, z, Fx: 0, Fy: 0, Fz: -moment },
        ];
  return { presses, left: [...left, ...couple(east, 1, 0), ...couple(north, 0, 1)] };
}

/** Forces on a column as the plate gives them, with what its spans press on it. */
export const pressedBy = <F extends Forces>(forces: F, { presses }: BySpans, column: number): F => ({ ...forces, P: forces.P + presses[column] });

export interface RoofSpansArgs {
  readonly spans: RoofSpans;
  readonly loads: readonly RoofLoad[];
}

/** {@link splitBySpans} as a step of a calculation. */
export const sharedBySpans: Routine<RoofSpansArgs, BySpans> = {
  id: "mechanics.roof-spans",
  title: "Weight and lift of each column by the spans of the roof",
  method: "purlins and beams in simple spans with overhangs, by lever, or by what lies nearest to each column where they stand in no lines, for forces down and up; pushes are left to the roof as one plate",
  source: "statics of simple spans; common practice, no single source",
  run: ({ spans, loads }) => splitBySpans(spans, loads),
  show: ({ loads }, { presses }) => {
    const given: ShownValue[] = [{ symbol: "F_z", meaning: "lift", kind: "force", value: loads.reduce((sum, { Fz }) => sum + Fz, 0) }];
    return { given, found: presses.map((value, i) => ({ symbol: `P_${i + 1}`, meaning: `axial force from the roof's spans, column ${i + 1}, compression positive`, kind: "force" as const, value })) };
  },
};
