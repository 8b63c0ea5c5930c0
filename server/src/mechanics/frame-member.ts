/**
 * One member of a frame: its stiffness in its own axes with the terms of axial force on a bent member, its free ends condensed out, and
 * the forces that loads between its ends put on them. Bernoulli beam: plane sections, no shear deformation.
 */
import type { FrameMember, LineLoad, Motion, PointLoad, Vector } from "./frame-types.js";
import { motions } from "./frame-types.js";

/** Rows are the member's own x, y and z in the axes of the structure. */
export type Turn = readonly [Vector, Vector, Vector];

const minus = (a: Vector, b: Vector): Vector => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
export const cross = (a: Vector, b: Vector): Vector => ({ x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x });
const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z;
export const sizeOf = (a: Vector): number => Math.hypot(a.x, a.y, a.z);
const scaled = (a: Vector, by: number): Vector => ({ x: a.x * by, y: a.y * by, z: a.z * by });

export interface Axes {
  readonly length: number;
  readonly turn: Turn;
}

/** Length and own axes of a member, or why it has none. */
export function axesOf(member: FrameMember, start: Vector, end: Vector): Axes | string {
  const along = minus(end, start);
  const length = sizeOf(along);
  if (!(length > 0 && Number.isFinite(length))) return "has no length";
  const x = scaled(along, 1 / length);
  const isPlumb = Math.hypot(x.x, x.y) < 1e-9;
  const toward = member.zAxis ?? (isPlumb ? { x: 0, y: 1, z: 0 } : { x: 0, y: 0, z: 1 });
  const squared = (v: Vector): Vector => minus(v, scaled(x, dot(v, x)));
  const across = squared(toward);
  const size = sizeOf(across);
  if (!(size > 1e-9 * sizeOf(toward))) return "has its z axis along itself";
  // What is left of an axis almost along the member has few true digits, so it is squared to the member once more.
  const square = squared(scaled(across, 1 / size));
  const z = scaled(square, 1 / sizeOf(square));
  return { length, turn: [x, cross(z, x), z] };
}

/** A vector of the structure in the member's own axes. */
export const toOwn = ([x, y, z]: Turn, v: Vector): Vector => ({ x: dot(x, v), y: dot(y, v), z: dot(z, v) });

const at = (row: number, column: number): number => row * 12 + column;

function put(k: Float64Array, row: number, column: number, value: number): void {
  k[at(row, column)] += value;
  if (row !== column) k[at(column, row)] += value;
}

/** Bending in one plane: the places of the four movements, and the sense in which a rotation goes with a sideways movement. */
function bending(k: Float64Array, [u, r, v, s]: readonly number[], sense: number, L: number, EI: number, N: number): void {
  // Stiffness of the beam, and of the axial force N (tension positive) on its bent shape.
  const a = (12 * EI) / L ** 3 + (6 * N) / (5 * L);
  const b = sense * ((6 * EI) / L ** 2 + N / 10);
  const near = (4 * EI) / L + (2 * N * L) / 15;
  const far = (2 * EI) / L - (N * L) / 30;
  put(k, u, u, a);
  put(k, v, v, a);
  put(k, u, v, -a);
  put(k, u, r, b);
  put(k, u, s, b);
  put(k, v, r, -b);
  put(k, v, s, -b);
  put(k, r, r, near);
  put(k, s, s, near);
  put(k, r, s, far);
}

/** Stiffness of a member in its own axes, 12 by 12; `compression` is its axial force for the terms of second order, N. */
export function ownStiffness(member: FrameMember, length: number, compression = 0): Float64Array {
  const k = new Float64Array(144);
  const { E, area, Iy = 0, Iz = 0, GJ = 0 } = member;
  const axial = (E * area) / length;
  put(k, 0, 0, axial);
  put(k, 6, 6, axial);
  put(k, 0, 6, -axial);
  if (member.isTie) {
    // A tie turns with its ends and resists that by its tension alone.
    const string = -compression / length;
    for (const i of [1, 2]) {
      put(k, i, i, string);
      put(k, i + 6, i + 6, string);
      put(k, i, i + 6, -string);
    }
    return k;
  }
  const twist = GJ / length;
  put(k, 3, 3, twist);
  put(k, 9, 9, twist);
  put(k, 3, 9, -twist);
  bending(k, [1, 5, 7, 11], 1, length, E * Iz, -compression);
  bending(k, [2, 4, 8, 10], -1, length, E * Iy, -compression);
  return k;
}

/** Rows of the movements in which the ends are free. */
export const freeRows = ({ freeAtStart = [], freeAtEnd = [] }: FrameMember): readonly number[] => [
  ...freeAtStart.map((motion: Motion) => motions.indexOf(motion)),
  ...freeAtEnd.map((motion: Motion) => motions.indexOf(motion) + 6),
];

/** How a free row was condensed out, so that later loads can follow. */
export interface Condensed {
  readonly row: number;
  readonly pivot: number;
  /** The row before it was cleared. */
  readonly terms: Float64Array;
}

/** Takes the free movements out of a stiffness, in place. A movement with no stiffness of its own left is free anyway. */
export function condense(k: Float64Array, rows: readonly number[]): readonly Condensed[] {
  const done: Condensed[] = [];
  const before = k.slice();
  for (const row of rows) {
    const pivot = k[at(row, row)];
    const terms = k.slice(row * 12, row * 12 + 12);
    if (pivot > 1e-12 * before[at(row, row)]) {
      for (let i = 0; i < 12; i++) {
        const ratio = terms[i] / pivot;
        if (ratio !== 0 && i !== row) for (let j = 0; j < 12; j++) k[at(i, j)] -= ratio * terms[j];
      }
      done.push({ row, pivot, terms });
    }
    for (let i = 0; i < 12; i++) k[at(row, i)] = k[at(i, row)] = 0;
  }
  return done;
}

/** The same for the forces that loads put on held ends. */
export function condenseForces(forces: Float64Array, done: readonly Condensed[]): void {
  for (const { row, pivot, terms } of done) {
    const ratio = forces[row] / pivot;
    for (let i = 0; i < 12; i++) forces[i] -= ratio * terms[i];
    forces[row] = 0;
  }
}

/** Adds what a force at a distance from the start puts on the ends while both are held: minus the shapes of the bent beam there. */
function holdPoint(forces: Float64Array, isTie: boolean, length: number, distance: number, force: Vector): void {
  const t = distance / length;
  const near = isTie ? 1 - t : 1 - 3 * t ** 2 + 2 * t ** 3;
  const nearTurn = isTie ? 0 : distance * (1 - t) ** 2;
  const farTurn = isTie ? 0 : -distance * t * (1 - t);
  forces[0] -= (1 - t) * force.x;
  forces[6] -= t * force.x;
  forces[1] -= near * force.y;
  forces[7] -= (1 - near) * force.y;
  forces[5] -= nearTurn * force.y;
  forces[11] -= farTurn * force.y;
  forces[2] -= near * force.z;
  forces[8] -= (1 - near) * force.z;
  forces[4] += nearTurn * force.z;
  forces[10] += farTurn * force.z;
}

/** Gauss points on -1 to 1; three are exact for a cubic shape under a load that changes evenly. */
const gauss = [[-Math.sqrt(0.6), 5 / 9], [0, 8 / 9], [Math.sqrt(0.6), 5 / 9]] as const;

/** Forces on the held ends of a member, in its own axes, from the loads between them. */
export function heldForces(member: FrameMember, { length, turn }: Axes, loads: readonly (PointLoad | LineLoad)[]): Float64Array {
  const forces = new Float64Array(12);
  const isTie = member.isTie === true;
  for (const load of loads) {
    if ("at" in load) {
      holdPoint(forces, isTie, length, load.at, toOwn(turn, load.force));
      continue;
    }
    const half = (load.to - load.from) / 2;
    const first = toOwn(turn, load.intensity);
    const last = toOwn(turn, load.atTo ?? load.intensity);
    for (const [place, weight] of gauss) {
      const share = (1 + place) / 2;
      const by = weight * half;
      const force = { x: by * (first.x + share * (last.x - first.x)), y: by * (first.y + share * (last.y - first.y)), z: by * (first.z + share * (last.z - first.z)) };
      holdPoint(forces, isTie, length, load.from + half * (1 + place), force);
    }
  }
  return forces;
}
