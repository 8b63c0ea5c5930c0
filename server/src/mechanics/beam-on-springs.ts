/**
 * A pier as a beam held by the soil beside it, from grade down: EI y'''' + P y'' + p(y, z) = 0 by finite elements with cubic shapes. Linear
 * springs are solved in one step; curves by Newton's method, each step shortened where it would overshoot, so that a soil that gives way
 * cannot throw the answer off. Movements to the side the head is pushed to are positive; depth runs down.
 */
import { routine } from "../formula/calc.js";
import { kinds } from "../units/kinds.js";
import { factorBanded, solveBanded } from "./banded.js";
import { reactionAt, soilCurve, stiffnessAt, type SoilCurve, type SoilLaw } from "./soil-curves.js";

export interface SoilLayer {
  /** Top of the layer below grade, m; the first one begins at 0. */
  readonly top: number;
  readonly law: SoilLaw;
  /** Unit weight, N/m³, for the curves that ask for the overburden. */
  readonly weight?: number;
}

export interface BeamArgs {
  /** Length in the ground, m. */
  readonly length: number;
  /** Width of the pier, m. */
  readonly width: number;
  /** Modulus of elasticity, Pa, and second moment of area, m⁴. */
  readonly E: number;
  readonly I: number;
  /** Push at grade, N; moment at grade that turns the head the same way, N·m; compression, N. */
  readonly H: number;
  readonly M: number;
  readonly P?: number;
  /** The head cannot move sideways: a slab holds it. */
  readonly held?: boolean;
  readonly layers: readonly SoilLayer[];
  /** Depth below grade at which the ground that counts begins, m; overburden and wedges begin there too. */
  readonly surface?: number;
  /** Depth of the water below grade, m; left out, there is none. */
  readonly water?: number;
  /** Elements along the pier, about. */
  readonly elements?: number;
}

/** Values at every node, from grade down. */
export interface BeamAnswer {
  readonly depth: readonly number[];
  /** m; positive to the side of the push. */
  readonly deflection: readonly number[];
  /** dy/dz, rad; negative where the pier leans to the side of the push. */
  readonly slope: readonly number[];
  /** N·m; positive where the moment at grade is. */
  readonly moment: readonly number[];
  /** N; at grade the push. */
  readonly shear: readonly number[];
  /** What the soil pushes back per length, N/m. */
  readonly reaction: readonly number[];
  /** Force of the slab on a held head against the push, N. */
  readonly heldBy: number;
  /** Largest of the moments and of the shears, without sign, and the depth of that moment. */
  readonly maxMoment: number;
  readonly maxMomentAt: number;
  readonly maxShear: number;
  /** Movement and lean at the head more for one more newton or newton metre there: m/N, 1/N (rad/N and m/(N·m)), rad/(N·m). */
  readonly head: { readonly yH: number; readonly yM: number; readonly leanM: number };
  /** What is left out of balance at the toe over what acts. */
  readonly residual: number;
  readonly steps: number;
  /** The soil cannot hold the load: the movement goes beyond the width of the pier, or the axial force topples it. */
  readonly givesWay: boolean;
}

/** N/m³: 62.4 pcf. */
const waterWeight = 62.4 * kinds.unitWeight.US.factor;

const usualElements = 24;
const mostSteps = 60;
/** Part of the load that may be left out of balance at a node; and the change of movement, against the largest, at which nothing more is to gain. */
const balanced = 1e-10;
const still = 1e-10;
/** A movement of this many widths of the pier in the course of the steps: the soil has given way, and how far is of no interest. */
const lost = 20;
/** A stretch of less than this part of the length is no element of its own: it would be far too stiff beside the others. */
const thinnest = 2e-3;
/** Less than this is no load, N. */
const noLoad = 1e-6;
/** Growth kept in a soil that has given way, as a part of its ultimate push per width of pier: the answer stays finite and far beyond use. */
const afterUltimate = 1e-4;

/** Gauss points and weights on 0 to 1. */
const spots = [0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)];
const shares = [5 / 18, 8 / 18, 5 / 18];

/** Depths of the nodes: every change of layer is one. */
function nodesOf({ length, layers, surface = 0, elements = usualElements, width }: BeamArgs): Float64Array {
  const rockBreaks = layers.filter(({ law }) => law.type === "rock").map(({ top }) => top + 3 * width);
  const sorted = [...layers.map(({ top }) => top), surface, ...rockBreaks].filter((z) => z > thinnest * length && z < (1 - thinnest) * length).sort((a, b) => a - b);
  const cuts = [0, ...sorted.filter((z, i) => i === 0 || z - sorted[i - 1] > thinnest * length), length];
  const nodes: number[] = [0];
  for (let i = 1; i < cuts.length; i++) {
    const span = cuts[i] - cuts[i - 1];
    const count = Math.max(1, Math.ceil((span / length) * elements));
    for (let j = 1; j <= count; j++) nodes.push(cuts[i - 1] + (span * j) / count);
  }
  return Float64Array.from(nodes);
}

/** Curve at a depth: of the layer there, under the weight of what lies above it and counts. */
function curveAt({ layers, width, surface = 0, water = Number.POSITIVE_INFINITY }: BeamArgs, z: number): SoilCurve {
  if (z < surface) return soilCurve({ type: "none" }, 0, 0, width, 0);
  let sv = 0;
  let at = layers[0];
  for (let i = 0; i < layers.length && layers[i].top <= z; i++) {
    at = layers[i];
    const bottom = Math.min(z, layers[i + 1]?.top ?? z);
    sv += (at.weight ?? 0) * Math.max(0, bottom - Math.max(at.top, surface));
  }
  sv = Math.max(0, sv - waterWeight * Math.max(0, z - Math.max(water, surface)));
  return soilCurve(at.law, z - surface, z - Math.max(at.top, surface), width, sv);
}

/** Shapes of the four movements of an element of length h at x of 0 to 1. */
const shapeOf = (x: number, h: number): readonly [number, number, number, number] => [
  1 - 3 * x * x + 2 * x ** 3,
  h * x * (1 - x) ** 2,
  3 * x * x - 2 * x ** 3,
  h * x * x * (x - 1),
];
const shapesAt = spots.map((x) => shapeOf(x, 1));

/** The system of one pier: nodes, curves at the Gauss points, and room for the matrix. */
class Beam {
  readonly z: Float64Array;
  readonly size: number;
  readonly isLinear: boolean;
  private readonly curves: SoilCurve[] = [];
  private readonly rest: Float64Array;
  private readonly matrix: Float64Array;

  constructor(private readonly args: BeamArgs) {
    this.z = nodesOf(args);
    this.size = 2 * this.z.length;
    for (let e = 0; e + 1 < this.z.length; e++) for (const x of spots) this.curves.push(curveAt(args, this.z[e] + x * (this.z[e + 1] - this.z[e])));
    this.isLinear = this.curves.every(({ shape }) => shape === "line" || shape === "none");
    this.rest = Float64Array.from(this.curves, ({ ultimate }) => (Number.isFinite(ultimate) ? (afterUltimate * ultimate) / args.width : 0));
    this.matrix = new Float64Array(4 * this.size);
  }

  private movementAt(u: Float64Array, e: number, g: number, h: number): number {
    const [a, b, c, d] = shapesAt[g];
    const i = 2 * e;
    return a * u[i] + b * h * u[i + 1] + c * u[i + 2] + d * h * u[i + 3];
  }

  /** Push of the soil per length at a Gauss point, N/m. */
  pushAt(u: Float64Array, e: number, g: number): number {
    const at = spots.length * e + g;
    const y = this.movementAt(u, e, g, this.z[e + 1] - this.z[e]);
    return reactionAt(this.curves[at], y) + this.rest[at] * y;
  }

  /** Load less what pier and soil hold at the movements `u`. */
  residual(u: Float64Array, into: Float64Array): void {
    const { E, I, P = 0, H, M } = this.args;
    const EI = E * I;
    into.fill(0);
    into[0] = H;
    into[1] = -M;
    for (let e = 0; e + 1 < this.z.length; e++) {
      const h = this.z[e + 1] - this.z[e];
      const i = 2 * e;
      // Turning of the ends against the chord: a rigid movement loses no digits in it.
      const chord = (u[i + 2] - u[i]) / h;
      const a = u[i + 1] - chord;
      const b = u[i + 3] - chord;
      const atTop = ((2 * EI) / h) * (2 * a + b) - (P * h * (4 * a - b)) / 30;
      const atBottom = ((2 * EI) / h) * (2 * b + a) - (P * h * (4 * b - a)) / 30;
      const across = (atTop + atBottom) / h + P * chord;
      into[i] -= across;
      into[i + 1] -= atTop;
      into[i + 2] += across;
      into[i + 3] -= atBottom;
      for (let g = 0; g < spots.length; g++) {
        const p = this.pushAt(u, e, g) * shares[g] * h;
        const [n1, n2, n3, n4] = shapesAt[g];
        into[i] -= n1 * p;
        into[i + 1] -= n2 * h * p;
        into[i + 2] -= n3 * p;
        into[i + 3] -= n4 * h * p;
      }
    }
    if (this.args.held) into[0] = 0;
  }

  /** Factors the stiffness at the movements `u`: tangents of the curves, or their secants. */
  factor(u: Float64Array, secant: boolean): Float64Array | undefined {
    const { E, I, P = 0 } = this.args;
    const EI = E * I;
    const { matrix } = this;
    matrix.fill(0);
    for (let e = 0; e + 1 < this.z.length; e++) {
      const h = this.z[e + 1] - this.z[e];
      const s = (12 * EI) / h ** 3 - (36 * P) / (30 * h);
      const t = (6 * EI) / h ** 2 - (3 * P) / 30;
      const r = (4 * EI) / h - (4 * P * h) / 30;
      const o = (2 * EI) / h + (P * h) / 30;
      const i = 8 * e;
      // Columns of the lower triangle: diagonal, then the terms below it.
      matrix[i] += s;
      matrix[i + 1] += t;
      matrix[i + 2] -= s;
      matrix[i + 3] += t;
      matrix[i + 4] += r;
      matrix[i + 5] -= t;
      matrix[i + 6] += o;
      matrix[i + 8] += s;
      matrix[i + 9] -= t;
      matrix[i + 12] += r;
      for (let g = 0; g < spots.length; g++) {
        const at = spots.length * e + g;
        const y = this.movementAt(u, e, g, h);
        const curve = this.curves[at];
        const own = secant && y !== 0 ? reactionAt(curve, y) / y : stiffnessAt(curve, y);
        const k = (own + this.rest[at]) * shares[g] * h;
        const [n1, m2, n3, m4] = shapesAt[g];
        const n2 = m2 * h;
        const n4 = m4 * h;
        matrix[i] += k * n1 * n1;
        matrix[i + 1] += k * n1 * n2;
        matrix[i + 2] += k * n1 * n3;
        matrix[i + 3] += k * n1 * n4;
        matrix[i + 4] += k * n2 * n2;
        matrix[i + 5] += k * n2 * n3;
        matrix[i + 6] += k * n2 * n4;
        matrix[i + 8] += k * n3 * n3;
        matrix[i + 9] += k * n3 * n4;
        matrix[i + 12] += k * n4 * n4;
      }
    }
    if (this.args.held) {
      matrix[1] = matrix[2] = matrix[3] = 0;
      matrix[0] = 1;
    }
    return factorBanded(matrix, this.size) ? matrix : undefined;
  }
}

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
};

/** What is out of balance, as a force: moments count over the length. */
const size = (r: Float64Array, length: number): number => {
  let most = 0;
  for (let i = 0; i < r.length; i += 2) most = Math.max(most, Math.abs(r[i]), Math.abs(r[i + 1]) / length);
  return most;
};

/** Largest movement of a node, m. */
const farthest = (u: Float64Array): number => {
  let most = 0;
  for (let i = 0; i < u.length; i += 2) most = Math.max(most, Math.abs(u[i]));
  return most;
};

/** How far to go along a step: all the way unless the energy would rise behind its least; then about to the least. */
function partOf(beam: Beam, u: Float64Array, step: Float64Array, slope: number, trial: Float64Array, r: Float64Array): number {
  const slopeAt = (s: number): number => {
    for (let i = 0; i < u.length; i++) trial[i] = u[i] + s * step[i];
    beam.residual(trial, r);
    return dot(r, step);
  };
  let far = slopeAt(1);
  if (far >= -0.1 * slope) return 1;
  let low = 0;
  let high = 1;
  let near = slope;
  for (let i = 0; i < 12; i++) {
    const guess = low + ((high - low) * near) / (near - far);
    const s = Math.min(Math.max(guess, low + 0.05 * (high - low)), high - 0.05 * (high - low));
    const at = slopeAt(s);
    if (Math.abs(at) <= 0.2 * slope) return s;
    if (at > 0) [low, near] = [s, at];
    else [high, far] = [s, at];
  }
  return low > 0 ? low : high;
}

/** Movements, forces and soil reactions of a pier under a push and a moment at grade; undefined where a number is missing or none can be found. */
export function solveBeamOnSprings(args: BeamArgs): BeamAnswer | undefined {
  const { length, width, E, I, H, M, P = 0 } = args;
  if (!(length > 0 && width > 0 && E > 0 && I > 0) || ![length, width, E, I, H, M, P].every(Number.isFinite) || args.layers.length === 0) return undefined;
  const beam = new Beam(args);
  const u = new Float64Array(beam.size);
  const r = new Float64Array(beam.size);
  const step = new Float64Array(beam.size);
  const trial = new Float64Array(beam.size);
  const load = Math.max(args.held ? 0 : Math.abs(H), Math.abs(M) / length);
  let factored: Float64Array | undefined;
  let steps = 0;
  if (load < noLoad && Math.abs(H) < noLoad) {
    // At rest.
    factored = beam.factor(u, false);
    return factored ? answerOf(beam, { ...args, H: 0, M: 0 }, u, factored, 0, 0) : toppled(args);
  }
  // The first steps take the springs as straight to where the pier stands: from rest a tangent would be far too stiff or too soft.
  const secants = beam.isLinear ? 0 : 3;
  for (; steps < mostSteps; steps++) {
    const isSecant = steps < secants;
    if (isSecant && steps === 0) for (let i = 0; i < beam.size; i += 2) u[i] = 0.005 * width;
    // A tangent that holds nothing up may still lie on the way to an answer: there the secant leads on. Without that either, the pier topples.
    factored = beam.factor(u, isSecant) ?? (isSecant ? undefined : beam.factor(u, true));
    if (!factored) return toppled(args);
    if (isSecant) {
      u.fill(0);
      if (!args.held) u[0] = H;
      u[1] = -M;
      solveBanded(factored, beam.size, u);
      continue;
    }
    beam.residual(u, r);
    if (size(r, length) <= balanced * load) break;
    step.set(r);
    solveBanded(factored, beam.size, step);
    const part = beam.isLinear ? 1 : partOf(beam, u, step, dot(r, step), trial, r);
    for (let i = 0; i < u.length; i++) u[i] += part * step[i];
    if (!Number.isFinite(u[0]) || !Number.isFinite(u[1])) return undefined;
    const most = farthest(u);
    if (beam.isLinear ? steps >= 2 : most > lost * width || farthest(step) <= still * most) break;
  }
  if (steps === mostSteps) return toppled(args);
  return factored && answerOf(beam, args, u, factored, load, steps);
}

/** The forces without second order, of a pier that does not stand under its axial force. */
function toppled(args: BeamArgs): BeamAnswer | undefined {
  const upright = args.P === undefined || args.P === 0 ? undefined : solveBeamOnSprings({ ...args, P: 0 });
  return upright && { ...upright, givesWay: true };
}

function answerOf(beam: Beam, args: BeamArgs, u: Float64Array, factored: Float64Array, load: number, steps: number): BeamAnswer {
  const { H, M, P = 0, width, length } = args;
  const { z } = beam;
  const count = z.length;
  const shear = new Array<number>(count);
  const moment = new Array<number>(count);
  const reaction = Array.from(z, (at, i) => reactionAt(curveAt(args, at), u[2 * i]));
  const heldBy = args.held ? heldForce(beam, args, u) : 0;
  shear[0] = H - heldBy;
  moment[0] = M;
  // Statics of what stands above each node, with the soil's push as the elements count it: at the toe nothing may be left.
  for (let e = 0; e + 1 < count; e++) {
    const h = z[e + 1] - z[e];
    let push = 0;
    let turn = 0;
    for (let g = 0; g < spots.length; g++) {
      const p = beam.pushAt(u, e, g) * shares[g] * h;
      push += p;
      turn += p * (1 - spots[g]) * h;
    }
    shear[e + 1] = shear[e] - push;
    moment[e + 1] = moment[e] + shear[e] * h - turn + P * (u[2 * e] - u[2 * e + 2]);
  }
  let peak = 0;
  for (let i = 1; i < count; i++) if (Math.abs(moment[i]) > Math.abs(moment[peak])) peak = i;
  const [maxMoment, maxMomentAt] = peakOf(z, moment, shear, peak);
  const unit = (at: number, by: number): Float64Array => {
    const x = new Float64Array(beam.size);
    x[at] = by;
    solveBanded(factored, beam.size, x);
    return x;
  };
  const byH = args.held ? new Float64Array(2) : unit(0, 1);
  const byM = unit(1, -1);
  const toe = Math.max(Math.abs(shear[count - 1]), Math.abs(moment[count - 1]) / length);
  return {
    depth: Array.from(z),
    deflection: Array.from(z, (_, i) => u[2 * i]),
    slope: Array.from(z, (_, i) => u[2 * i + 1]),
    moment,
    shear,
    reaction,
    heldBy,
    maxMoment,
    maxMomentAt,
    maxShear: shear.reduce((most, v) => Math.max(most, Math.abs(v)), 0),
    head: { yH: byH[0], yM: args.held ? 0 : byM[0], leanM: -byM[1] },
    residual: load > 0 ? toe / Math.max(load, Math.abs(H)) : 0,
    steps,
    givesWay: farthest(u) > width,
  };
}

/** Force a slab holds the head back with: what the push leaves over. */
function heldForce(beam: Beam, { H, M, length }: BeamArgs, u: Float64Array): number {
  let push = 0;
  for (let e = 0; e + 1 < beam.z.length; e++) for (let g = 0; g < spots.length; g++) push += beam.pushAt(u, e, g) * shares[g] * (beam.z[e + 1] - beam.z[e]);
  return Number.isFinite(push) ? H - push : (H * length + M) / length;
}

/** The greatest moment lies where the shear changes sign, between nodes as a rule: taken along the cubic through both. */
function peakOf(z: Float64Array, moment: readonly number[], shear: readonly number[], peak: number): readonly [number, number] {
  let most = Math.abs(moment[peak]);
  let at = z[peak];
  for (const e of [peak - 1, peak]) {
    if (e < 0 || e + 1 >= z.length || shear[e] * shear[e + 1] >= 0) continue;
    const h = z[e + 1] - z[e];
    const x = shear[e] / (shear[e] - shear[e + 1]);
    const [a, b, c, d] = shapeOf(x, h);
    const m = Math.abs(a * moment[e] + b * shear[e] + c * moment[e + 1] + d * shear[e + 1]);
    if (m > most) [most, at] = [m, z[e] + x * h];
  }
  return [most, at];
}

/** {@link solveBeamOnSprings} as a step of a calculation. */
export const beamOnSprings = routine<BeamArgs, BeamAnswer | undefined>({
  id: "mechanics.beam-on-springs",
  title: "The pier as a beam held by the soil beside it",
  method: "finite elements with cubic shapes on springs or p-y curves, by Newton's method; statics close at the toe",
  source: "Hetenyi, Beams on Elastic Foundation; p-y curves by Matlock (soft clay), Reese, Cox and Koop and API RP 2GEO (sand) and Reese (weak rock), from memory",
  run: solveBeamOnSprings,
  show: ({ length, E, I, H, M, P = 0 }, found) => ({
    given: [
      { symbol: "L", meaning: "length in the ground", kind: "distance", value: length },
      { symbol: "E", meaning: "modulus of elasticity of the pier", kind: "steelStress", value: E },
      { symbol: "I", meaning: "second moment of area of the pier", kind: "inertia", value: I },
      { symbol: "H", meaning: "push at grade", kind: "force", value: H },
      { symbol: "M", meaning: "moment at grade", kind: "moment", value: M },
      { symbol: "P", meaning: "compression", kind: "force", value: P },
    ],
    found: found
      ? [
          { symbol: "y_0", meaning: "movement at grade", kind: "length", value: found.deflection[0] },
          { symbol: "theta_0", meaning: "lean at grade", kind: "angle", value: -found.slope[0] },
          { symbol: "M_max", meaning: "largest moment", kind: "moment", value: found.maxMoment },
          { symbol: "z_M", meaning: "depth of the largest moment", kind: "distance", value: found.maxMomentAt },
          { symbol: "V_max", meaning: "largest shear", kind: "force", value: found.maxShear },
        ]
      : [],
  }),
});
