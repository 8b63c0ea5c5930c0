/**
 * A stiff plate that stands clear of the concrete on its rods, each held by a nut above and one below: the rods press and pull in
 * proportion to their distance from the middle of the group.
 */
import type { Routine, ShownValue } from "../formula/types.js";
import type { Point } from "./rectangles.js";

export interface RodsBothWaysArgs {
  /** Rods from the center of the plate, m; like rods in a pattern that is its own mirror image along x and along y. */
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

/** P/n and M c over the sum of squares, both ways; or why the rods cannot hold the plate. */
export function solveRodsBothWays({ rods, P, Mx, My }: RodsBothWaysArgs): RodsBothWays | { readonly unstable: string } {
  if (rods.length === 0) return { unstable: "there is no rod to stand on" };
  if (![P, Mx, My, ...rods.flatMap(({ x, y }) => [x, y])].every(Number.isFinite)) return { unstable: "a size or a load of the plate is not a number" };
  const sumX = rods.reduce((sum, { x }) => sum + x * x, 0);
  const sumY = rods.reduce((sum, { y }) => sum + y * y, 0);
  if ((My !== 0 && !(sumX > 0)) || (Mx !== 0 && !(sumY > 0))) return { unstable: "the rods stand in one row and nothing else keeps the plate from turning about it" };
  const alongX = My === 0 ? 0 : My / sumX;
  const alongY = Mx === 0 ? 0 : -Mx / sumY;
  return { forces: rods.map(({ x, y }) => P / rods.length + alongX * x + alongY * y) };
}

/** {@link solveRodsBothWays} as a step of a calculation. */
export const rodsBothWays: Routine<RodsBothWaysArgs, RodsBothWays | { readonly unstable: string }> = {
  id: "mechanics.rods-both-ways",
  title: "Forces of the rods a plate stands on",
  method: "stiff plate on like rods that press and pull: P/n and M c over the sum of c², both ways",
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
