import { endsOf, isTopFixed, type RoofColumn } from "./rigid-roof.js";
import { holdsTop } from "./sway-stiffness.js";

/** Tops closer to a line than this part of the roof's extent count as being in line: the roof would hardly be held. */
const inLine = 1e-4;

export const tooUnlike = "the columns differ so much in stiffness that the share of each cannot be found";

/**
 * Says in which way a rigid roof on its columns can move freely, or undefined when nothing is found against it: first a column that lacks
 * something, then a direction in which nothing holds against sway, then tops in one point or one line. `isBraced` tells the directions in
 * which bays are braced.
 */
export function roofMechanism(columns: readonly RoofColumn[], isBraced: { readonly x: boolean; readonly y: boolean } = { x: false, y: false }): string | undefined {
  if (columns.length === 0) return "there is no column under the roof";
  for (const [i, c] of columns.entries()) {
    const lacking = lackOf(c);
    if (lacking !== undefined) return `column ${i + 1} has no ${lacking}`;
  }
  const ends = columns.map(endsOf);
  for (const axis of ["x", "y"] as const) {
    if (!isBraced[axis] && !ends.some((one) => one[axis].base || holdsTop(one[axis]))) return swaying(axis);
  }
  // The rest is about a roof whose every column stands up by itself; other roofs are judged by their stiffness.
  return ends.every(({ x, y }) => x.base && y.base) && !isBraced.x && !isBraced.y ? aboutALine(columns) : undefined;
}

const wordsOf = { x: "east to west", y: "north to south" } as const;

const swaying = (axis: "x" | "y"): string =>
  `nothing holds the roof against swaying ${wordsOf[axis]}: no column is fixed at its base or top or knee-braced along ${axis}, and no bay is braced. Fix column bases, or brace a bay along ${axis}`;

function aboutALine(columns: readonly RoofColumn[]): string | undefined {
  const [first] = columns;
  const arms = columns.map((c) => [c.x - first.x, c.y - first.y, c.base + c.height - first.base - first.height] as const);
  const farthest = arms.reduce((a, b) => (Math.hypot(...b) > Math.hypot(...a) ? b : a));
  const span = Math.hypot(...farthest);
  const isFixed = columns.some((c) => holdsTop(endsOf(c).x) && holdsTop(endsOf(c).y));
  const isTwistHeld = columns.some((c) => isTopFixed(c) && (c.GJ ?? 0) > 0);
  const planSpan = Math.max(...arms.map(([x, y]) => Math.hypot(x, y)));
  if (planSpan <= inLine * first.height) {
    if (isTwistHeld) return undefined;
    if (isFixed) return "the roof can turn about its one column like a flag, as no torsional stiffness of the column is known";
    return "the roof sits on one pinned column top: it can tip over in any direction and turn about the column. Fix the column top to the roof, or add columns";
  }
  if (isFixed) return undefined;
  const offLine = Math.max(...arms.map((arm) => Math.hypot(...cross(arm, farthest)) / span));
  if (offLine > inLine * span) return undefined;
  // A top fixed against tilting across the line holds the roof there too.
  const isEastWest = Math.abs(farthest[1]) < inLine * span;
  const isNorthSouth = Math.abs(farthest[0]) < inLine * span;
  if (columns.some((c) => (isEastWest ? holdsTop(endsOf(c).y) : isNorthSouth ? holdsTop(endsOf(c).x) : holdsTop(endsOf(c).x) || holdsTop(endsOf(c).y)))) return undefined;
  const line = isNorthSouth ? "running north to south" : isEastWest ? "running east to west" : "";
  return `all columns stand in one line${line && `, ${line},`} with pinned tops: the roof can rotate about that line. Fix the column tops to the roof, or add a column off the line`;
}

/** A movement that meets less than this part of the resistance its parts would meet alone is free. */
const nearlyFree = 1e-10;

/**
 * Says which movement of a rigid roof meets no resistance. `stiffness` is 6 by 6, on the movements east, north and up and the rotations
 * about those axes, rotations scaled by a length so that all terms have one dimension.
 */
export function freeMovement(stiffness: Float64Array): string | undefined {
  const alone = Array.from({ length: 6 }, (_, i) => stiffness[i * 7]);
  const zero = alone.findIndex((one) => !(one > 0));
  if (zero >= 0) return wordsForMovement(alone.map((_, i) => (i === zero ? 1 : 0)));
  const { values, vectors } = eigen(stiffness.map((term, i) => term / Math.sqrt(alone[Math.floor(i / 6)] * alone[i % 6])), 6);
  const least = values.indexOf(Math.min(...values));
  if (values[least] > nearlyFree) return undefined;
  const movement = vectors[least].map((part, i) => part / Math.sqrt(alone[i]));
  const size = Math.hypot(...movement);
  return wordsForMovement(movement.map((part) => part / size));
}

function wordsForMovement(movement: readonly number[]): string {
  const [x, y, , , ry, rz] = movement.map(Math.abs);
  if (rz > 0.3) return "the roof can turn about a plumb line: what holds it against sway stands in one line. Fix or brace columns of another line too";
  if (x > 0.5) return swaying("x");
  if (y > 0.5) return swaying("y");
  return `the roof can tip over about a line running ${ry > 0.5 ? "north to south" : "east to west"}. Fix the column tops to the roof, or add columns off that line`;
}

/** Eigenvalues and vectors of a symmetric matrix by Jacobi rotations. */
function eigen(matrix: Float64Array, n: number): { readonly values: readonly number[]; readonly vectors: readonly (readonly number[])[] } {
  const a = matrix.slice();
  const v = Float64Array.from({ length: n * n }, (_, i) => (i % (n + 1) === 0 ? 1 : 0));
  for (let sweep = 0; sweep < 60; sweep++) {
    let off = 0;
    let all = 0;
    for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) [off, all] = [off + (i === j ? 0 : a[i * n + j] ** 2), all + a[i * n + j] ** 2];
    if (!(off > 1e-30 * all)) break;
    for (let p = 0; p < n; p++) {
      for (let q = p + 1; q < n; q++) {
        if (a[p * n + q] === 0) continue;
        const theta = (a[q * n + q] - a[p * n + p]) / (2 * a[p * n + q]);
        const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.hypot(theta, 1));
        const c = 1 / Math.hypot(t, 1);
        const s = t * c;
        for (let i = 0; i < n; i++) rotate(a, i * n + p, i * n + q, c, s);
        for (let i = 0; i < n; i++) rotate(a, p * n + i, q * n + i, c, s);
        for (let i = 0; i < n; i++) rotate(v, i * n + p, i * n + q, c, s);
      }
    }
  }
  return {
    values: Array.from({ length: n }, (_, i) => a[i * n + i]),
    vectors: Array.from({ length: n }, (_, i) => Array.from({ length: n }, (__, j) => v[j * n + i])),
  };
}

function rotate(m: Float64Array, i: number, j: number, c: number, s: number): void {
  const x = m[i];
  const y = m[j];
  m[i] = c * x - s * y;
  m[j] = s * x + c * y;
}

function lackOf(c: RoofColumn): string | undefined {
  if (!(Number.isFinite(c.x) && Number.isFinite(c.y) && Number.isFinite(c.base))) return "position";
  if (!(c.height > 0 && Number.isFinite(c.height))) return "height";
  if (!(c.E > 0 && c.Ix > 0 && c.Iy > 0 && Number.isFinite(c.E * c.Ix * c.Iy))) return "bending stiffness";
  if (!(c.area > 0 && Number.isFinite(c.area))) return "area";
  if (!((c.GJ ?? 0) >= 0)) return "valid torsional stiffness";
  return undefined;
}

type Arm = readonly [number, number, number];

function cross(a: Arm, b: Arm): Arm {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}
