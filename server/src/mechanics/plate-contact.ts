/**
 * A rigid base plate on concrete or grout with anchor rods: cracked elastic section. Plane strain under the plate, bearing in
 * proportion to it in compression alone, rods in tension alone (they pass through loose holes and take no compression). The rods
 * count with the modular ratio as if they were bonded at the surface; the area of the holes is not deducted.
 */
import type { Routine, ShownValue } from "../formula/types.js";
import { solveContact, type ContactRod } from "./contact-solver.js";
import type { Point } from "./rectangles.js";

export interface PlateArgs {
  /** Side along x (east), m. */
  readonly width: number;
  /** Side along y (north), m. */
  readonly length: number;
  /** Rods from the center of the plate, m. */
  readonly rods: readonly Point[];
  /** Area of one rod, m². */
  readonly rodArea: number;
  /** Es/Ec. */
  readonly modularRatio: number;
  /** Compression positive, N, at the center of the plate. */
  readonly P: number;
  /** Moments the column exerts, right-handed about the named axis, N·m: a push to the east above gives +My, to the north -Mx. */
  readonly Mx: number;
  readonly My: number;
}

export interface PlateContact {
  /** Tension of each rod, N, in the order given; 0 where the plate presses down. */
  readonly tensions: readonly number[];
  /** Compression of each rod, N, where the plate stands on its rods alone; elsewhere rods take none. */
  readonly pushes?: readonly number[];
  /** Resultant of the bearing, N, and where it acts; no place when the plate is clear of the concrete. */
  readonly compression: number;
  readonly compressionAt?: Point;
  /** Largest bearing stress, Pa, and its corner. */
  readonly maxBearing: number;
  readonly maxBearingAt?: Point;
  /** Region that bears, anticlockwise; empty when the plate is clear. */
  readonly contact: readonly Point[];
  /** Part of the plate that bears. */
  readonly contactRatio: number;
  /** Where the bearing ends: the two points on the edges of the plate, when only a part bears. */
  readonly neutralLine?: readonly [Point, Point];
  /** Stress plane in the concrete, Pa and Pa/m: s = atCenter + alongX x + alongY y. */
  readonly plane: { readonly atCenter: number; readonly alongX: number; readonly alongY: number };
  /** What is left out of balance, N and N·m, and the largest of them relative to the forces at play. */
  readonly residual: { readonly P: number; readonly Mx: number; readonly My: number; readonly relative: number };
  /** Something about the way it stands. */
  readonly note?: string;
}

/** Why there is no equilibrium, in trade words. */
export interface Unstable {
  readonly unstable: string;
}

/** Bearing and rod tensions under a rigid plate. */
export function solvePlateContact(args: PlateArgs): PlateContact | Unstable {
  const { width, length, P, Mx, My } = args;
  const k = args.modularRatio * args.rodArea;
  if (!(width > 0 && length > 0)) return { unstable: "the plate has no size" };
  if (args.rods.length > 0 && !(k > 0)) return { unstable: "the rods have no area or no modular ratio" };
  if (![width, length, k, P, Mx, My, ...args.rods.flatMap(({ x, y }) => [x, y])].every(Number.isFinite)) return { unstable: "a size or a load of the plate is not a number" };
  const rods: ContactRod[] = args.rods.map(({ x, y }) => ({ x, y, k }));
  const isWithin = ({ x, y }: Point): boolean => 2 * Math.abs(x) < width && 2 * Math.abs(y) < length;
  // One rod inside the plate can balance any load together with the bearing around it; the rest needs looking at.
  const isLoadWithin = P > 0 && 2 * Math.abs(My) < width * P && 2 * Math.abs(Mx) < length * P;
  const isFree = P === 0 && Mx === 0 && My === 0;
  const unstable: Unstable = { unstable: reasonFor(args) };
  if (rods.length === 0 && !isLoadWithin && !isFree) return unstable;
  const found = solveContact(width, length, rods, P, My, -Mx);
  if (!found) return rods.some(isWithin) || isLoadWithin ? { unstable: "the bearing under the plate cannot be found for so extreme a load" } : unstable;

  const { a, b, c, region } = found;
  const tensions = rods.map(({ x, y }) => k * Math.max(0, -(a + b * x + c * y)));
  const peak = region.length > 0 ? region.reduce((most, p) => (p.s > most.s ? p : most)) : undefined;
  const ends = region.filter((p) => p.s === 0);
  const sum = (arm: (rod: ContactRod) => number): number => tensions.reduce((total, t, i) => total + t * arm(rods[i]), 0);
  const note = standing(rods, tensions, region.length);
  return {
    tensions,
    compression: found.compression,
    compressionAt: found.compression > 0 ? { x: found.compressionX / found.compression, y: found.compressionY / found.compression } : undefined,
    maxBearing: peak?.s ?? 0,
    maxBearingAt: peak && { x: peak.x, y: peak.y },
    contact: region.map(({ x, y }) => ({ x, y })),
    contactRatio: found.area / (width * length),
    neutralLine: ends.length === 2 ? [{ x: ends[0].x, y: ends[0].y }, { x: ends[1].x, y: ends[1].y }] : undefined,
    plane: { atCenter: a, alongX: b, alongY: c },
    residual: {
      P: found.compression - sum(() => 1) - P,
      Mx: -found.compressionY + sum(({ y }) => y) - Mx,
      My: found.compressionX - sum(({ x }) => x) - My,
      relative: found.residual,
    },
    ...(note === undefined ? {} : { note }),
  };
}

function reasonFor({ rods, P }: PlateArgs): string {
  if (rods.length === 0) return P > 0 ? "the load lies outside the plate and there is no rod to hold it down" : "the plate is lifted and there is no rod to hold it down";
  return "no rod stands within the plate where it could hold this load: the plate tips over its edge";
}

/** Rods in one row hold a lifted plate, but not against turning about their line. */
function standing(rods: readonly ContactRod[], tensions: readonly number[], corners: number): string | undefined {
  const pulling = rods.filter((_, i) => tensions[i] > 0);
  if (corners > 0 || pulling.length === 0) return undefined;
  const [first] = pulling;
  const far = pulling.reduce((most, r) => (Math.hypot(r.x - first.x, r.y - first.y) > Math.hypot(most.x - first.x, most.y - first.y) ? r : most));
  const span = Math.hypot(far.x - first.x, far.y - first.y);
  if (span === 0) return "lifted on one rod: the plate can rock about it until an edge bears";
  const off = Math.max(...pulling.map((r) => Math.abs((r.x - first.x) * (far.y - first.y) - (r.y - first.y) * (far.x - first.x)) / span));
  return off > 1e-6 * span ? undefined : "lifted on one row of rods: the plate can rock about the row until an edge bears";
}

/** {@link solvePlateContact} as a step of a calculation. */
export const plateContact: Routine<PlateArgs, PlateContact | Unstable> = {
  id: "mechanics.plate-contact",
  title: "Bearing and rod tensions under the base plate",
  method: "cracked elastic section with a plane of strain in both directions, solved by Newton's method on its energy; integrals exact",
  source: "elastic theory of cracked sections applied to a rigid plate; common practice, no single source",
  run: solvePlateContact,
  show: (args, result) => {
    const given: ShownValue[] = [
      { symbol: "B", meaning: "plate, east to west", kind: "length", value: args.width },
      { symbol: "L", meaning: "plate, north to south", kind: "length", value: args.length },
      { symbol: "n", meaning: "modular ratio", kind: "ratio", value: args.modularRatio },
      { symbol: "A_b", meaning: "area of one rod", kind: "area", value: args.rodArea },
      { symbol: "P", meaning: "axial force, compression positive", kind: "force", value: args.P },
      { symbol: "M_x", meaning: "moment about the east axis", kind: "moment", value: args.Mx },
      { symbol: "M_y", meaning: "moment about the north axis", kind: "moment", value: args.My },
    ];
    if ("unstable" in result) return { given, found: [] };
    const found: ShownValue[] = result.tensions.map((value, i) => ({ symbol: `T_${i + 1}`, meaning: `tension in rod ${i + 1}`, kind: "force", value }));
    found.push(
      { symbol: "C", meaning: "bearing resultant", kind: "force", value: result.compression },
      { symbol: "f_p", meaning: "largest bearing stress", kind: "stress", value: result.maxBearing },
      { symbol: "A_c/A", meaning: "part of the plate that bears", kind: "ratio", value: result.contactRatio },
    );
    return { given, found };
  },
};
