/**
 * A stiff plate that stands clear of the concrete on its rods, each held by a nut above and one below: the rods press and pull in
 * proportion to their distance from the middle of the group.
 */
import type { Routine, ShownValue } from "../formula/types.js";
import type { Point } from "./rectangles.js";

export interface RodsBothWaysArgs {
  /** Rods from the center of the plate, m, all alike. */
  readonly rods: readonly Point[];
  /** Compression positive, N, at the center of the plate. */
  readonly P: number;
  /** Moments the column exerts, right-handed, N·m: a push to the east above gives +My, to the north -Mx. */
  readonly Mx: number;
  readonly My: number;
}

/** Force of each rod, N, compression positive, in the order given. */
export interface RodsBothWays {
  readonly forces: readonly number[];
}

/** Share of the squares below which rods count as standing in one row. */
const inRow = 1e-9;

/** Rods nearer to each other than this stand in one place, m; squares of less have no digits. */
const onePlace = 1e-9;

const sumOf = (rods: readonly Point[], of: (rod: Point) => number): number => rods.reduce((total, rod) => total + of(rod), 0);

/** P/n and M c over the sum of squares, about both axes at once; or why the rods cannot hold the plate. */
export function solveRodsBothWays({ rods, P, Mx, My }: RodsBothWaysArgs): RodsBothWays | { readonly unstable: string } {
  if (rods.length === 0) return { unstable: "there is no rod to stand on" };
  if (![P, Mx, My, ...rods.flatMap(({ x, y }) => [x, y])].every(Number.isFinite)) return { unstable: "a size or a load of the plate is not a number" };
  const n = rods.length;
  const middle = { x: sumOf(rods, ({ x }) => x) / n, y: sumOf(rods, ({ y }) => y) / n };
  const places = rods.map(({ x, y }) => ({ x: x - middle.x, y: y - middle.y }));
  const xx = sumOf(places, ({ x }) => x * x);
  const yy = sumOf(places, ({ y }) => y * y);
  const xy = sumOf(places, ({ x, y }) => x * y);
  // First moments the rods have to answer, about their own middle.
  const alongX = My - P * middle.x;
  const alongY = -Mx - P * middle.y;
  const determinant = xx * yy - xy * xy;
  if (determinant > inRow * (xx + yy) ** 2) {
    const b = (alongX * yy - alongY * xy) / determinant;
    const c = (alongY * xx - alongX * xy) / determinant;
    return { forces: places.map(({ x, y }) => P / n + b * x + c * y) };
  }
  // One rod, or one row of them: only turning in the row's own direction is held.
  const far = places.reduce((most, place) => (Math.hypot(place.x, place.y) > Math.hypot(most.x, most.y) ? place : most));
  const reach = Math.hypot(far.x, far.y);
  const row = reach > onePlace ? { x: far.x / reach, y: far.y / reach } : { x: 0, y: 0 };
  const inLine = alongX * row.x + alongY * row.y;
  const across = Math.hypot(alongX - inLine * row.x, alongY - inLine * row.y);
  if (across > inRow * (Math.abs(My) + Math.abs(Mx) + Math.abs(P) * (Math.hypot(middle.x, middle.y) + reach))) {
    return { unstable: "the rods stand in one row and nothing else keeps the plate from turning about it" };
  }
  return { forces: places.map(({ x, y }) => P / n + (reach > onePlace ? (inLine * (x * row.x + y * row.y)) / (xx + yy) : 0)) };
}

/** {@link solveRodsBothWays} as a step of a calculation. */
export const rodsBothWays: Routine<RodsBothWaysArgs, RodsBothWays | { readonly unstable: string }> = {
  id: "mechanics.rods-both-ways",
  title: "Forces of the rods a plate stands on",
  method: "stiff plate on like rods that press and pull: P/n and M c over the sum of c², about both axes of the group at once",
  source: "elastic theory of bolt groups; common practice, no single source",
  run: solveRodsBothWays,
  show: (args, result) => {
    const given: ShownValue[] = [
      { symbol: "n", meaning: "rods", kind: "number", value: args.rods.length },
      { symbol: "P", meaning: "axial force, compression positive", kind: "force", value: args.P },
      { symbol: "M_x", meaning: "moment about the east axis", kind: "moment", value: args.Mx },
      { symbol: "M_y", meaning: "moment about the north axis", kind: "moment", value: args.My },
    ];
    const forces = "unstable" in result ? [] : result.forces;
    return { given, found: forces.map((value, i) => ({ symbol: `N_${i + 1}`, meaning: `force of rod ${i + 1}, compression positive`, kind: "force", value })) };
  },
};
