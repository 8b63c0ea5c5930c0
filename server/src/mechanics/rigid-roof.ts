/**
 * A roof that is rigid in itself on its columns: how a push anywhere on the roof is shared. First order, linear, columns plumb. A roof of
 * open purlins is not rigid in its plane and does not share loads this way. This is the hand route: six movements of the roof, each column
 * a spring at its top. Braced bays are not in it, and knee braces do not stretch.
 */
import type { Routine, ShownValue } from "../formula/types.js";
import { factor, solve, type Factored } from "./linear.js";
import { freeMovement, roofMechanism, tooUnlike } from "./roof-mechanism.js";
import { planeStiffness, reachOf, type EndsHeld } from "./sway-stiffness.js";

export type { EndsHeld };

/** A column under the roof. Lengths m, stiffness from SI values. */
export interface RoofColumn {
  /** Plan position: x east, y north. */
  readonly x: number;
  readonly y: number;
  /** Elevation of the base, from the same datum as the elevations of the loads. */
  readonly base: number;
  readonly height: number;
  /** Modulus of elasticity, Pa. */
  readonly E: number;
  readonly area: number;
  /** Second moment of area about the east axis, m⁴: bends when pushed north or south. */
  readonly Ix: number;
  /** Second moment of area about the north axis, m⁴: bends when pushed east or west. */
  readonly Iy: number;
  /** Torsional stiffness G·J, N·m²; counts only with a top fixed in both directions. */
  readonly GJ?: number;
  /** How the roof holds the top of the column. */
  readonly top: "pinned" | "fixed";
  /** Which ends hold a moment when it is pushed along x (east) or y (north); left out: the base does, and the top as `top` says. */
  readonly ends?: { readonly x: EndsHeld; readonly y: EndsHeld };
}

/** Which ends of a column hold a moment, by the direction of the push. */
export const endsOf = (c: RoofColumn): { readonly x: EndsHeld; readonly y: EndsHeld } => {
  const same = { base: true, top: c.top === "fixed" };
  return c.ends ?? { x: same, y: same };
};

/** Whether the roof holds the column top against turning about every axis. */
export const isTopFixed = (c: RoofColumn): boolean => {
  const { x, y } = endsOf(c);
  return x.top && y.top;
};

/** A force on the roof, N: Fx to the east, Fy to the north, Fz up; its place is that of its resultant. */
export interface RoofLoad {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly Fx: number;
  readonly Fy: number;
  readonly Fz: number;
  /** The rectangle in plan, or the line, it is spread over evenly; of concern where the roof does not share it as one body. */
  readonly over?: PlanArea;
}

/** Pressure on plan, Pa down, of a load that is spread over an area; undefined for any other. */
export function pressureOver({ Fz, over }: RoofLoad): number | undefined {
  const area = over ? (over.x2 - over.x1) * (over.y2 - over.y1) : 0;
  return area > 0 ? -Fz / area : undefined;
}

export interface PlanArea {
  readonly x1: number;
  readonly x2: number;
  readonly y1: number;
  readonly y2: number;
}

/**
 * Forces the structure above exerts on a section of a column, N and N·m. P is compression positive; moments are right-handed about
 * the named axis, so that a push to the east above the section gives +My and a push to the north gives -Mx.
 */
export interface MemberForces {
  readonly P: number;
  readonly Vx: number;
  readonly Vy: number;
  readonly Mx: number;
  readonly My: number;
  /** Torsion; 0 with a pinned top. */
  readonly Mz: number;
}

export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export interface RoofResult {
  /** In the order of the columns; the weight of the columns is not in it. What comes by knee braces is carried up to the top. */
  readonly columns: readonly { readonly top: MemberForces; readonly base: MemberForces }[];
  /** Where displacement and rotation are measured: the mean of the column tops. */
  readonly reference: Vector;
  /** m */
  readonly displacement: Vector;
  /** rad */
  readonly rotation: Vector;
}

/** Why the roof does not stand, in trade words. */
export interface RoofMechanism {
  readonly mechanism: string;
}

/** Stiffness of a roof on its columns, found once and used for every load case. */
export interface RoofModel {
  readonly columns: readonly RoofColumn[];
  readonly reference: Vector;
  /** Rotations are scaled by this length, so that all terms of the stiffness have one dimension. */
  readonly length: number;
  readonly stiffness: Factored;
}

/** Stiffness terms of one cantilever at its top. */
interface TopStiffness {
  /** Push to the east and tilt about the north axis. */
  readonly xx: number;
  readonly xr: number;
  readonly rx: number;
  /** Push to the north and tilt about the east axis. */
  readonly yy: number;
  readonly yr: number;
  readonly ry: number;
  readonly zz: number;
  readonly twist: number;
}

function topStiffness(c: RoofColumn): TopStiffness {
  const h = c.height;
  const ends = endsOf(c);
  // Braces that do not stretch leave the piece below them to shorten.
  const reach = reachOf(ends, h);
  const shortened = Math.min(reach.x, reach.y);
  const [xx, xr, rx] = planeStiffness(ends.x, c.E * c.Iy, h);
  const [yy, yr, ry] = planeStiffness(ends.y, c.E * c.Ix, h);
  return { xx, xr: -xr, rx, yy, yr, ry, zz: (c.E * c.area) / shortened, twist: isTopFixed(c) ? (c.GJ ?? 0) / h : 0 };
}

/** Forces the roof must put on a column top to move it by (ux, uy, uz) and turn it by (rx, ry, rz). */
function topForces(k: TopStiffness, ux: number, uy: number, uz: number, rx: number, ry: number, rz: number): MemberForces {
  return {
    P: -k.zz * uz,
    Vx: k.xx * ux + k.xr * ry,
    Vy: k.yy * uy + k.yr * rx,
    Mx: k.yr * uy + k.ry * rx,
    My: k.xr * ux + k.rx * ry,
    Mz: k.twist * rz,
  };
}

/** The mean of the column tops, and a length about as large as their spread for scaling rotations. */
export function middleOfTops(columns: readonly RoofColumn[]): { readonly reference: Vector; readonly length: number } {
  const n = columns.length;
  const reference = {
    x: columns.reduce((sum, c) => sum + c.x, 0) / n,
    y: columns.reduce((sum, c) => sum + c.y, 0) / n,
    z: columns.reduce((sum, c) => sum + c.base + c.height, 0) / n,
  };
  const spread = Math.sqrt(columns.reduce((sum, c) => sum + (c.x - reference.x) ** 2 + (c.y - reference.y) ** 2, 0) / n);
  return { reference, length: spread > 1e-3 * columns[0].height ? spread : columns[0].height };
}

/** Builds the stiffness of the roof, or says in which way it can move freely. */
export function roofModel(columns: readonly RoofColumn[]): RoofModel | RoofMechanism {
  const mechanism = roofMechanism(columns);
  if (mechanism !== undefined) return { mechanism };
  const { reference, length } = middleOfTops(columns);
  const stiffness = new Float64Array(36);
  for (const column of columns) {
    const k = topStiffness(column);
    for (let j = 0; j < 6; j++) {
      const unit = [0, 0, 0, 0, 0, 0];
      unit[j] = j < 3 ? 1 : 1 / length;
      const f = atReference(column, reference, movedTop(column, reference, k, unit));
      for (let i = 0; i < 6; i++) stiffness[i * 6 + j] += i < 3 ? f[i] : f[i] / length;
    }
  }
  const free = freeMovement(stiffness);
  if (free !== undefined) return { mechanism: free };
  const factored = factor(stiffness, 6, 1e-12);
  if (!factored) return { mechanism: tooUnlike };
  return { columns, reference, length, stiffness: factored };
}

/** Top forces of a column for a movement (U, rotation) of the roof at its reference point. */
function movedTop(c: RoofColumn, at: Vector, k: TopStiffness, u: ArrayLike<number>): MemberForces {
  const x = c.x - at.x;
  const y = c.y - at.y;
  const z = c.base + c.height - at.z;
  return topForces(k, u[0] + u[4] * z - u[5] * y, u[1] + u[5] * x - u[3] * z, u[2] + u[3] * y - u[4] * x, u[3], u[4], u[5]);
}

/** Force and moment at the reference point that the top forces of a column stand for. */
function atReference(c: RoofColumn, at: Vector, f: MemberForces): readonly number[] {
  const x = c.x - at.x;
  const y = c.y - at.y;
  const z = c.base + c.height - at.z;
  return [f.Vx, f.Vy, -f.P, f.Mx - y * f.P - z * f.Vy, f.My + z * f.Vx + x * f.P, f.Mz + x * f.Vy - y * f.Vx];
}

/** Shares loads on the roof among its columns. */
export function distributeRoof(model: RoofModel, loads: readonly RoofLoad[]): RoofResult {
  const { columns, reference, length } = model;
  const right = new Float64Array(6);
  for (const load of loads) {
    const x = load.x - reference.x;
    const y = load.y - reference.y;
    const z = load.z - reference.z;
    right[0] += load.Fx;
    right[1] += load.Fy;
    right[2] += load.Fz;
    right[3] += (y * load.Fz - z * load.Fy) / length;
    right[4] += (z * load.Fx - x * load.Fz) / length;
    right[5] += (x * load.Fy - y * load.Fx) / length;
  }
  const u = solve(model.stiffness, right);
  for (let i = 3; i < 6; i++) u[i] /= length;
  return {
    columns: columns.map((column) => {
      const top = movedTop(column, reference, topStiffness(column), u);
      const base = { ...top, Mx: top.Mx - top.Vy * column.height, My: top.My + top.Vx * column.height };
      return { top, base };
    }),
    reference,
    displacement: { x: u[0], y: u[1], z: u[2] },
    rotation: { x: u[3], y: u[4], z: u[5] },
  };
}

export interface RoofArgs {
  readonly columns: readonly RoofColumn[];
  readonly loads: readonly RoofLoad[];
}

/** {@link roofModel} and {@link distributeRoof} at once. */
export function solveRigidRoof({ columns, loads }: RoofArgs): RoofResult | RoofMechanism {
  const model = roofModel(columns);
  return "mechanism" in model ? model : distributeRoof(model, loads);
}

/** {@link solveRigidRoof} as a step of a calculation. */
export const rigidRoof: Routine<RoofArgs, RoofResult | RoofMechanism> = {
  id: "mechanics.rigid-roof",
  title: "Share of each column under a rigid roof",
  method: "each column is a spring at its top by its end conditions, springs below its base and a knee brace that does not stretch among them; the roof a rigid body of six movements",
  source: "first-order theory of structures; common practice, no single source",
  run: solveRigidRoof,
  show: ({ columns, loads }, result) => {
    const total = (pick: (load: RoofLoad) => number): number => loads.reduce((sum, load) => sum + pick(load), 0);
    const given: ShownValue[] = [
      { symbol: "n", meaning: "columns", kind: "number", value: columns.length },
      { symbol: "F_x", meaning: "push to the east", kind: "force", value: total((l) => l.Fx) },
      { symbol: "F_y", meaning: "push to the north", kind: "force", value: total((l) => l.Fy) },
      { symbol: "F_z", meaning: "lift", kind: "force", value: total((l) => l.Fz) },
    ];
    if ("mechanism" in result) return { given, found: [] };
    const found: ShownValue[] = result.columns.flatMap(({ base }, i) => [
      { symbol: `P_${i + 1}`, meaning: `axial force, column ${i + 1}, compression positive`, kind: "force" as const, value: base.P },
      { symbol: `V_${i + 1}`, meaning: `shear at the base, column ${i + 1}`, kind: "force" as const, value: Math.hypot(base.Vx, base.Vy) },
      { symbol: `M_${i + 1}`, meaning: `moment at the base, column ${i + 1}`, kind: "moment" as const, value: Math.hypot(base.Mx, base.My) },
    ]);
    const { displacement } = result;
    found.push({ symbol: "u", meaning: "sideways movement of the roof", kind: "length", value: Math.hypot(displacement.x, displacement.y) });
    return { given, found };
  },
};
