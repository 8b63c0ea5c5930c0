/**
 * A rigid rectangle pressed on a bed that takes compression only, with rods that take tension only. The stress of the bed at (x, y),
 * from the center of the rectangle, is a plane s = a + b x + c y where that is positive and 0 elsewhere; a rod pulls with k times -s
 * where s is negative. Equilibrium is where the strain energy less the work of the loads is least. That function is convex, so
 * Newton's method with a line search reaches it from any start, and it has no least value exactly when no equilibrium exists.
 */

/** A rod at (x, y), m, with its area times its modular ratio, m². */
export interface ContactRod {
  readonly x: number;
  readonly y: number;
  readonly k: number;
}

/** Corners of the region in contact; `x`, `y` in m, `s` in Pa. */
export interface ContactPoint {
  readonly x: number;
  readonly y: number;
  readonly s: number;
}

export interface ContactPlane {
  /** Stress at the center, Pa, and its slopes along x and y, Pa/m. */
  readonly a: number;
  readonly b: number;
  readonly c: number;
  /** The region in contact, anticlockwise; empty when the rectangle is clear of the bed. */
  readonly region: readonly ContactPoint[];
  /** Compression resultant, N, and its first moments, N·m. */
  readonly compression: number;
  readonly compressionX: number;
  readonly compressionY: number;
  /** Area in contact, m². */
  readonly area: number;
  /** Largest difference from equilibrium, as a part of the forces at play. */
  readonly residual: number;
}

/** Work space of one solution, in lengths of half the longer side and stresses that make the load about 1. */
interface Space {
  readonly halfX: number;
  readonly halfY: number;
  readonly rods: readonly ContactRod[];
  readonly load: readonly [number, number, number];
}

/** Energy, residual and second derivatives at one plane, written over at each evaluation. */
class State {
  energy = 0;
  /** Difference of internal from applied force and first moments. */
  r0 = 0;
  r1 = 0;
  r2 = 0;
  h00 = 0;
  h01 = 0;
  h02 = 0;
  h11 = 0;
  h12 = 0;
  h22 = 0;
  force = 0;
  forceX = 0;
  forceY = 0;
  area = 0;
  tension = 0;
  count = 0;
  readonly x = new Float64Array(6);
  readonly y = new Float64Array(6);
  readonly s = new Float64Array(6);

  /** Size of the residual; lengths are of order 1 here, so forces and moments compare. */
  get norm(): number {
    return Math.max(Math.abs(this.r0), Math.abs(this.r1), Math.abs(this.r2));
  }
}

const cornerX = [-1, 1, 1, -1];
const cornerY = [-1, -1, 1, 1];

/** Cuts the rectangle along the line of zero stress and keeps the compressed side. */
function clip(space: Space, a: number, b: number, c: number, out: State): void {
  let n = 0;
  for (let i = 0; i < 4; i++) {
    const j = (i + 1) & 3;
    const xi = cornerX[i] * space.halfX;
    const yi = cornerY[i] * space.halfY;
    const xj = cornerX[j] * space.halfX;
    const yj = cornerY[j] * space.halfY;
    const si = a + b * xi + c * yi;
    const sj = a + b * xj + c * yj;
    if (si > 0) {
      out.x[n] = xi;
      out.y[n] = yi;
      out.s[n++] = si;
    }
    if (si > 0 !== sj > 0) {
      const t = si / (si - sj);
      out.x[n] = xi + t * (xj - xi);
      out.y[n] = yi + t * (yj - yi);
      out.s[n++] = 0;
    }
  }
  out.count = n;
}

function evaluate(space: Space, a: number, b: number, c: number, out: State): void {
  clip(space, a, b, c, out);
  let energy = 0;
  let force = 0;
  let forceX = 0;
  let forceY = 0;
  let [h00, h01, h02, h11, h12, h22] = [0, 0, 0, 0, 0, 0];
  const { x, y, s } = out;
  // The region is a fan of triangles; products of linear functions integrate exactly over each from its corner values.
  for (let i = 1; i + 1 < out.count; i++) {
    const j = i + 1;
    const area = ((x[i] - x[0]) * (y[j] - y[0]) - (x[j] - x[0]) * (y[i] - y[0])) / 2;
    const w = area / 12;
    const sumX = x[0] + x[i] + x[j];
    const sumY = y[0] + y[i] + y[j];
    const sumS = s[0] + s[i] + s[j];
    h00 += area;
    h01 += (area / 3) * sumX;
    h02 += (area / 3) * sumY;
    h11 += w * (sumX * sumX + x[0] * x[0] + x[i] * x[i] + x[j] * x[j]);
    h12 += w * (sumX * sumY + x[0] * y[0] + x[i] * y[i] + x[j] * y[j]);
    h22 += w * (sumY * sumY + y[0] * y[0] + y[i] * y[i] + y[j] * y[j]);
    force += (area / 3) * sumS;
    forceX += w * (sumX * sumS + x[0] * s[0] + x[i] * s[i] + x[j] * s[j]);
    forceY += w * (sumY * sumS + y[0] * s[0] + y[i] * s[i] + y[j] * s[j]);
    energy += (w / 2) * (sumS * sumS + s[0] * s[0] + s[i] * s[i] + s[j] * s[j]);
  }
  out.area = h00;
  out.force = force;
  out.forceX = forceX;
  out.forceY = forceY;
  out.tension = 0;
  for (const rod of space.rods) {
    const stress = a + b * rod.x + c * rod.y;
    if (stress >= 0) continue;
    const pull = rod.k * stress;
    force += pull;
    forceX += pull * rod.x;
    forceY += pull * rod.y;
    energy += (pull * stress) / 2;
    out.tension -= pull;
    h00 += rod.k;
    h01 += rod.k * rod.x;
    h02 += rod.k * rod.y;
    h11 += rod.k * rod.x * rod.x;
    h12 += rod.k * rod.x * rod.y;
    h22 += rod.k * rod.y * rod.y;
  }
  const [f0, f1, f2] = space.load;
  out.energy = energy - a * f0 - b * f1 - c * f2;
  out.r0 = force - f0;
  out.r1 = forceX - f1;
  out.r2 = forceY - f2;
  out.h00 = h00;
  out.h01 = h01;
  out.h02 = h02;
  out.h11 = h11;
  out.h12 = h12;
  out.h22 = h22;
}

const step = new Float64Array(3);

/** Newton's step by Cholesky on the second derivatives with `damping` on the diagonal; false when they are singular. */
function newtonStep(at: State, damping: number): boolean {
  const d0 = at.h00 + damping;
  const least = 1e-13 * (at.h00 + at.h11 + at.h22 + damping);
  if (!(d0 > least)) return false;
  const l10 = at.h01 / d0;
  const l20 = at.h02 / d0;
  const d1 = at.h11 + damping - l10 * at.h01;
  if (!(d1 > least)) return false;
  const m21 = at.h12 - l20 * at.h01;
  const l21 = m21 / d1;
  const d2 = at.h22 + damping - l20 * at.h02 - l21 * m21;
  if (!(d2 > least)) return false;
  const z0 = -at.r0;
  const z1 = -at.r1 - l10 * z0;
  const z2 = -at.r2 - l20 * z0 - l21 * z1;
  step[2] = z2 / d2;
  step[1] = z1 / d1 - l21 * step[2];
  step[0] = z0 / d0 - l10 * step[1] - l20 * step[2];
  return true;
}

const mostSteps = 200;
const exact = 1e-14;
const acceptable = 1e-10;

/**
 * Finds the plane in equilibrium with a compression N (N) and its first moments about the center, X = N ex and Y = N ey (N·m), on a
 * rectangle of `width` along x and `length` along y (m). Undefined when there is none.
 */
export function solveContact(width: number, length: number, rods: readonly ContactRod[], N: number, X: number, Y: number): ContactPlane | undefined {
  const unit = Math.max(width, length) / 2;
  const total = Math.abs(N) + (Math.abs(X) + Math.abs(Y)) / unit;
  if (!(unit > 0 && Math.min(width, length) > 0 && Number.isFinite(unit) && Number.isFinite(total))) return undefined;
  if (total === 0) return { a: 0, b: 0, c: 0, region: [], compression: 0, compressionX: 0, compressionY: 0, area: 0, residual: 0 };
  const space: Space = {
    halfX: width / 2 / unit,
    halfY: length / 2 / unit,
    rods: rods.map(({ x, y, k }) => ({ x: x / unit, y: y / unit, k: k / unit ** 2 })),
    load: [N / total, X / total / unit, Y / total / unit],
  };
  // The whole rectangle in contact: exact when the load is within the kern, and a fair start when it is not.
  const full = 4 * space.halfX * space.halfY;
  let a = space.load[0] / full;
  let b = (3 * space.load[1]) / (full * space.halfX ** 2);
  let c = (3 * space.load[2]) / (full * space.halfY ** 2);
  let here = new State();
  let next = new State();
  evaluate(space, a, b, c, here);
  let damping = 0;
  for (let i = 0; i < mostSteps && here.norm > exact * (1 + here.tension); i++) {
    if (!newtonStep(here, damping)) {
      damping = Math.max(10 * damping, 1e-12 * (here.h00 + here.h11 + here.h22) + 1e-12);
      continue;
    }
    const slope = here.r0 * step[0] + here.r1 * step[1] + here.r2 * step[2];
    let part = 1;
    let moved = false;
    for (let halving = 0; halving < 30; halving++, part /= 2) {
      evaluate(space, a + part * step[0], b + part * step[1], c + part * step[2], next);
      // Close to the end the energy is flat to rounding, and the residual is the better judge.
      if (next.energy <= here.energy + 1e-4 * part * slope || next.norm <= here.norm / 2) {
        moved = true;
        break;
      }
    }
    if (!moved) {
      if (here.norm <= acceptable * (1 + here.tension)) break;
      damping = Math.max(10 * damping, 1e-8 * (here.h00 + here.h11 + here.h22) + 1e-12);
      continue;
    }
    a += part * step[0];
    b += part * step[1];
    c += part * step[2];
    [here, next] = [next, here];
    damping = part === 1 ? damping / 100 : damping;
    if (damping < 1e-14) damping = 0;
  }
  const residual = here.norm / (1 + here.tension);
  if (!(residual <= acceptable)) return undefined;
  const stress = total / unit ** 2;
  const region = Array.from({ length: here.count }, (_, i) => ({ x: here.x[i] * unit, y: here.y[i] * unit, s: here.s[i] * stress }));
  return {
    a: a * stress,
    b: (b * stress) / unit,
    c: (c * stress) / unit,
    region,
    compression: here.force * total,
    compressionX: here.forceX * total * unit,
    compressionY: here.forceY * total * unit,
    area: here.area * unit ** 2,
    residual,
  };
}
