/**
 * A rigid pier turning in elastic soil, in closed form: springs the same at every depth, or growing with it. How shear and moment run along it
 * depends on how the springs are spread and not on how stiff they are, so that the diagrams need no soil value at all.
 */
import { routine } from "../formula/calc.js";

export type Spread = "even" | "growing";

export interface RigidArgs {
  /** Springs even with depth, or growing from nothing. */
  readonly spread: Spread;
  /** Length in the ground, m. */
  readonly length: number;
  /** Push at grade, N, and moment at grade that turns the same way, N·m. */
  readonly H: number;
  readonly M: number;
  /** The head cannot move sideways: a slab holds it, and the pier turns about it. */
  readonly held?: boolean;
  /** Depth of its top below grade, m, from which the depths of the diagrams are counted on. */
  readonly from?: number;
}

export interface RigidDiagrams {
  /** From grade down, m. */
  readonly depth: readonly number[];
  /** N·m; positive where the moment at grade is. */
  readonly moment: readonly number[];
  /** N; at grade the push, or below a slab what is left of it. */
  readonly shear: readonly number[];
  /** What the soil pushes back per length, N/m. */
  readonly reaction: readonly number[];
  readonly maxMoment: number;
  readonly maxMomentAt: number;
  readonly maxShear: number;
  /** Depth about which it turns, m. */
  readonly pivot: number;
}

export interface RigidMovement {
  /** Movement at grade, m. */
  readonly y0: number;
  /** Lean, rad. */
  readonly lean: number;
}

const stretches = 24;

/** The lean times the stiffness of a head that is held, by moments about it. */
const heldLean = ({ spread, length: L, M }: RigidArgs): number => (spread === "even" ? (3 * M) / L ** 3 : (4 * M) / L ** 4);

/** y0·k (even, N/m) or y0·nh (growing, N/m²) and the lean times the same: what equilibrium of shear and moment gives. */
const unitMovement = (args: RigidArgs): readonly [number, number] => (args.held ? [0, heldLean(args)] : freeMovement(args));

const freeMovement = ({ spread, length: L, H, M }: RigidArgs): readonly [number, number] =>
  spread === "even" ? [(4 * H * L + 6 * M) / L ** 2, (6 * (H * L + 2 * M)) / L ** 3] : [(18 * H + (24 * M) / L) / L ** 2, (24 * H + (36 * M) / L) / L ** 3];

/** Movement at grade and lean; `stiffness` is k, N/m², of even springs, or nh, N/m³, of growing ones. */
export function rigidMovement(args: RigidArgs, stiffness: number): RigidMovement {
  const [a, b] = unitMovement(args);
  return { y0: a / stiffness, lean: b / stiffness };
}

/** Shear and moment along a rigid pier. */
export function solveRigidPier(args: RigidArgs): RigidDiagrams {
  const { spread, length: L, M, from = 0 } = args;
  const [A, B] = unitMovement(args);
  const isEven = spread === "even";
  // Under a slab the soil alone makes the shear.
  const H = args.held ? -B * (isEven ? L ** 2 / 2 : L ** 3 / 3) : args.H;
  const pushAt = (z: number): number => (isEven ? A - B * z : z * (A - B * z));
  const shearAt = (z: number): number => (isEven ? H - A * z + (B * z ** 2) / 2 : H - (A * z ** 2) / 2 + (B * z ** 3) / 3);
  const momentAt = (z: number): number => (isEven ? M + H * z - (A * z ** 2) / 2 + (B * z ** 3) / 6 : M + H * z - (A * z ** 3) / 6 + (B * z ** 4) / 12);
  const pivot = B === 0 ? 0 : A / B;
  // The shear is nothing at the toe; the other place divides that root out.
  const c = (B * L) / 3 - A / 2;
  const crossing = B === 0 || args.held ? 0 : isEven ? (2 * H) / (B * L) : (-c + Math.sign(B) * Math.sqrt(Math.max(0, c ** 2 - (4 * B * c * L) / 3))) / ((2 * B) / 3);
  const within = [0, crossing].filter((z) => z >= 0 && z <= L);
  const maxMomentAt = within.reduce((best, z) => (Math.abs(momentAt(z)) > Math.abs(momentAt(best)) ? z : best), 0);
  const depth = Array.from({ length: stretches + 1 }, (_, i) => (L * i) / stretches);
  return {
    depth: depth.map((z) => from + z),
    moment: depth.map(momentAt),
    shear: depth.map(shearAt),
    reaction: depth.map(pushAt),
    maxMoment: Math.abs(momentAt(maxMomentAt)),
    maxMomentAt: from + maxMomentAt,
    maxShear: Math.max(Math.abs(H), pivot > 0 && pivot < L ? Math.abs(shearAt(pivot)) : 0),
    pivot: from + pivot,
  };
}

/** {@link solveRigidPier} as a step of a calculation. */
export const rigidPier = routine<RigidArgs, RigidDiagrams>({
  id: "mechanics.rigid-pier",
  title: "Shear and moment along a rigid pier",
  method: "a rigid body on springs along its side that are the same at every depth, or grow from nothing at the surface; closed form by equilibrium of forces and moments",
  source: "statics of a rigid pile on Winkler springs (textbook form from memory)",
  run: solveRigidPier,
  show: ({ length, H, M }: RigidArgs, found) => ({
    given: [
      { symbol: "L", meaning: "length in the ground that counts", kind: "distance", value: length },
      { symbol: "H", meaning: "push at its top", kind: "force", value: H },
      { symbol: "M", meaning: "moment at its top", kind: "moment", value: M },
    ],
    found: [
      { symbol: "M_max", meaning: "largest moment", kind: "moment", value: found.maxMoment },
      { symbol: "z_M", meaning: "depth of the largest moment", kind: "distance", value: found.maxMomentAt },
      { symbol: "V_max", meaning: "largest shear", kind: "force", value: found.maxShear },
      { symbol: "z_0", meaning: "depth about which it turns", kind: "distance", value: found.pivot },
    ],
  }),
});
