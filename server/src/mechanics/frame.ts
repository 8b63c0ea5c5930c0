/**
 * A frame in space by the direct stiffness method: straight members of constant section, free ends, springs, groups of nodes that move
 * as one rigid body, loads at nodes, on bodies and between the ends of members. First order, or with the terms of second order for given
 * axial forces. Bernoulli beams; small movements.
 */
import { axesOf, condense, condenseForces, freeRows, heldForces, ownStiffness, toOwn, type Axes, type Condensed, type Turn } from "./frame-member.js";
import { motions, type Frame, type FrameFault, type FrameLoad, type FrameNode, type FrameResult, type LineLoad, type MemberEnds, type PointLoad, type Six, type Vector } from "./frame-types.js";
import { addTerm, emptySkyline, factorSkyline, solveSkyline, type Skyline, type SkylineFactors } from "./skyline.js";

/** One movement of a node as a sum of unknowns. */
interface Tied {
  readonly unknowns: readonly number[];
  readonly factors: readonly number[];
}

interface ReadyMember {
  readonly axes: Axes;
  /** In its own axes, free ends condensed out; the terms of second order in it. */
  readonly stiffness: Float64Array;
  readonly condensed: readonly Condensed[];
  /** Movements of both ends in unknowns. */
  readonly ties: readonly Tied[];
}

/** A frame with its stiffness put together. */
export interface AssembledFrame {
  readonly frame: Frame;
  readonly size: number;
  readonly nodes: readonly (readonly Tied[])[];
  readonly members: readonly ReadyMember[];
  readonly matrix: Skyline;
  /** Node and movement of each unknown. */
  readonly unknowns: readonly (readonly [node: number, motion: number])[];
}

/** A frame with its stiffness factored, for any number of load cases. */
export interface FrameModel extends AssembledFrame {
  readonly factors: SkylineFactors;
}

const fault = (because: string): FrameFault => ({ fault: "input", because });

/** How a node moves when the body it belongs to moves and turns: row by row, on the six movements of the leading node. */
function arm(from: Vector, to: Vector): readonly (readonly (readonly [motion: number, factor: number])[])[] {
  const x = to.x - from.x;
  const y = to.y - from.y;
  const z = to.z - from.z;
  return [
    [[0, 1], [4, z], [5, -y]],
    [[1, 1], [5, x], [3, -z]],
    [[2, 1], [3, y], [4, -x]],
    [[3, 1]],
    [[4, 1]],
    [[5, 1]],
  ];
}

function tieNodes(nodes: readonly FrameNode[]): { readonly ties: readonly (readonly Tied[])[]; readonly size: number; readonly owners: readonly (readonly [number, number])[] } | FrameFault {
  const owners: [number, number][] = [];
  const own = nodes.map((node, n) =>
    motions.map((motion, m): Tied => {
      if (node.follows !== undefined || node.holds?.[motion] === "held") return { unknowns: [], factors: [] };
      owners.push([n, m]);
      return { unknowns: [owners.length - 1], factors: [1] };
    }),
  );
  const ties: (readonly Tied[])[] = [];
  for (const [n, node] of nodes.entries()) {
    if (![node.x, node.y, node.z].every(Number.isFinite)) return fault(`node ${n + 1} has no place`);
    if (node.follows === undefined) {
      ties.push(own[n]);
      continue;
    }
    const leader = nodes[node.follows];
    if (!leader || leader.follows !== undefined) return fault(`node ${n + 1} follows a node that does not lead`);
    if (Object.values(node.holds ?? {}).includes("held")) return fault(`node ${n + 1} is held although it follows another`);
    const led = own[node.follows];
    ties.push(
      arm(leader, node).map((row) => {
        const parts = row.flatMap(([motion, factor]) => led[motion].unknowns.map((unknown) => [unknown, factor] as const));
        return { unknowns: parts.map(([unknown]) => unknown), factors: parts.map(([, factor]) => factor) };
      }),
    );
  }
  return { ties, size: owners.length, owners };
}

/** Turns a stiffness from the member's own axes into those of the structure. */
function turned(k: Float64Array, [rx, ry, rz]: Turn): Float64Array {
  const rows = [rx, ry, rz].map(({ x, y, z }) => [x, y, z]);
  const half = new Float64Array(144);
  const out = new Float64Array(144);
  for (let i = 0; i < 12; i++) {
    for (let block = 0; block < 12; block += 3) {
      for (let c = 0; c < 3; c++) {
        let sum = 0;
        for (let m = 0; m < 3; m++) sum += k[i * 12 + block + m] * rows[m][c];
        half[i * 12 + block + c] = sum;
      }
    }
  }
  for (let j = 0; j < 12; j++) {
    for (let block = 0; block < 12; block += 3) {
      for (let c = 0; c < 3; c++) {
        let sum = 0;
        for (let m = 0; m < 3; m++) sum += rows[m][c] * half[(block + m) * 12 + j];
        out[(block + c) * 12 + j] = sum;
      }
    }
  }
  return out;
}

/** Builds the stiffness. `compression` holds the axial force of each member for the terms of second order, N. */
export function assembleFrame(frame: Frame, compression?: readonly number[]): AssembledFrame | FrameFault {
  const tied = tieNodes(frame.nodes);
  if ("fault" in tied) return tied;
  const { ties, size, owners } = tied;
  const members: ReadyMember[] = [];
  for (const [i, member] of frame.members.entries()) {
    const start = frame.nodes[member.start];
    const end = frame.nodes[member.end];
    if (!start || !end) return fault(`member ${i + 1} has no node at one end`);
    const axes = axesOf(member, start, end);
    if (typeof axes === "string") return fault(`member ${i + 1} ${axes}`);
    if (!(member.E * member.area > 0) || (!member.isTie && !((member.Iy ?? 0) > 0 && (member.Iz ?? 0) > 0))) return fault(`member ${i + 1} has no stiffness`);
    const stiffness = ownStiffness(member, axes.length, compression?.[i] ?? 0);
    if (!stiffness.every(Number.isFinite)) return fault(`member ${i + 1} has no stiffness`);
    const condensed = condense(stiffness, freeRows(member));
    members.push({ axes, stiffness, condensed, ties: [...ties[member.start], ...ties[member.end]] });
  }
  const springs = frame.nodes.flatMap((node, n) =>
    motions.flatMap((motion, m) => {
      const hold = node.holds?.[motion];
      return typeof hold === "number" && hold > 0 ? [{ tie: ties[n][m], hold }] : [];
    }),
  );
  const matrix = emptySkyline(size, [...members.map(({ ties: own }) => own.flatMap(({ unknowns }) => unknowns)), ...springs.map(({ tie }) => tie.unknowns)]);
  const spread = (a: Tied, b: Tied, value: number): void => {
    for (const [i, row] of a.unknowns.entries()) {
      // Each pair comes up from both sides, so that only the lower half is added.
      for (const [j, column] of b.unknowns.entries()) if (column <= row) addTerm(matrix, row, column, value * a.factors[i] * b.factors[j]);
    }
  };
  for (const { stiffness, axes, ties: own } of members) {
    const k = turned(stiffness, axes.turn);
    for (let i = 0; i < 12; i++) for (let j = 0; j < 12; j++) if (k[i * 12 + j] !== 0) spread(own[i], own[j], k[i * 12 + j]);
  }
  for (const { tie, hold } of springs) spread(tie, tie, hold);
  return { frame, size, nodes: ties, members, matrix, unknowns: owners };
}

/** Factors the stiffness, or says which node moves freely or has buckled. */
export function factorFrame(assembled: AssembledFrame): FrameModel | FrameFault {
  const factors = factorSkyline(assembled.matrix);
  if (!("row" in factors)) return { ...assembled, factors };
  const [node, motion] = assembled.unknowns[factors.row];
  return { fault: factors.because, node, motion: motions[motion] };
}

/** {@link assembleFrame} and {@link factorFrame} at once. */
export function frameModel(frame: Frame, compression?: readonly number[]): FrameModel | FrameFault {
  const assembled = assembleFrame(frame, compression);
  return "fault" in assembled ? assembled : factorFrame(assembled);
}

const isOnMember = (load: FrameLoad): load is PointLoad | LineLoad => "member" in load;

const movement = ({ unknowns, factors }: Tied, u: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < unknowns.length; i++) sum += factors[i] * u[unknowns[i]];
  return sum;
};

/** Six forces at a node for a load there. */
function atNode(node: Vector, { force, moment, place }: { readonly force?: Vector; readonly moment?: Vector; readonly place?: Vector }): Six {
  const f = force ?? { x: 0, y: 0, z: 0 };
  const m = moment ?? { x: 0, y: 0, z: 0 };
  const x = place ? place.x - node.x : 0;
  const y = place ? place.y - node.y : 0;
  const z = place ? place.z - node.z : 0;
  return Float64Array.of(f.x, f.y, f.z, m.x + y * f.z - z * f.y, m.y + z * f.x - x * f.z, m.z + x * f.y - y * f.x);
}

/** Two vectors of six, from the member's own axes into those of the structure. */
function fromOwn([rx, ry, rz]: Turn, own: Float64Array): Float64Array {
  const out = new Float64Array(own.length);
  for (let block = 0; block < own.length; block += 3) {
    out[block] = rx.x * own[block] + ry.x * own[block + 1] + rz.x * own[block + 2];
    out[block + 1] = rx.y * own[block] + ry.y * own[block + 1] + rz.y * own[block + 2];
    out[block + 2] = rx.z * own[block] + ry.z * own[block + 1] + rz.z * own[block + 2];
  }
  return out;
}

function ownMovements({ axes: { turn }, ties }: ReadyMember, u: Float64Array): Float64Array {
  const moved = ties.map((tie) => movement(tie, u));
  const own = new Float64Array(12);
  for (let block = 0; block < 12; block += 3) {
    const { x, y, z } = toOwn(turn, { x: moved[block], y: moved[block + 1], z: moved[block + 2] });
    own[block] = x;
    own[block + 1] = y;
    own[block + 2] = z;
  }
  return own;
}

/** Movements, member forces and reactions under one load case. */
export function solveFrame(model: FrameModel, loads: readonly FrameLoad[]): FrameResult {
  const { frame, size, nodes, members, factors } = model;
  const right = new Float64Array(size);
  const push = (ties: readonly Tied[], forces: Float64Array, sign: number): void => {
    for (const [i, { unknowns, factors: by }] of ties.entries()) for (const [k, unknown] of unknowns.entries()) right[unknown] += sign * by[k] * forces[i];
  };
  const applied = frame.nodes.map(() => new Float64Array(6));
  const between = new Map<number, (PointLoad | LineLoad)[]>();
  for (const load of loads) {
    if (isOnMember(load)) {
      between.set(load.member, [...(between.get(load.member) ?? []), load]);
      continue;
    }
    const forces = atNode(frame.nodes[load.node], load);
    for (let i = 0; i < 6; i++) applied[load.node][i] += forces[i];
    push(nodes[load.node], forces, 1);
  }
  const held = members.map(({ axes, condensed, ties }, i) => {
    const own = between.get(i);
    if (!own) return undefined;
    const forces = heldForces(frame.members[i], axes, own);
    condenseForces(forces, condensed);
    push(ties, fromOwn(axes.turn, forces), -1);
    return forces;
  });
  const u = solveSkyline(factors, right);
  const displacements = nodes.map((ties) => {
    const moved = new Float64Array(6);
    for (let i = 0; i < 6; i++) moved[i] = movement(ties[i], u);
    return moved;
  });
  const ends = members.map((member, i): MemberEnds => {
    const moved = ownMovements(member, u);
    const own = held[i]?.slice() ?? new Float64Array(12);
    for (let r = 0; r < 12; r++) {
      let sum = 0;
      for (let c = 0; c < 12; c++) sum += member.stiffness[r * 12 + c] * moved[c];
      own[r] += sum;
    }
    const both = fromOwn(member.axes.turn, own);
    return { start: both.slice(0, 6), end: both.slice(6), compression: own[0] };
  });
  let reactions: readonly Six[] | undefined;
  return {
    displacements,
    members: ends,
    // A roof on its columns reads the ends of its members alone.
    get reactions() {
      return (reactions ??= reactionsOf(model, ends, applied, displacements));
    },
  };
}

function reactionsOf({ frame }: FrameModel, ends: readonly MemberEnds[], applied: readonly Six[], displacements: readonly Six[]): readonly Six[] {
  const met = frame.nodes.map(() => new Float64Array(6));
  for (const [i, { start, end }] of frame.members.entries()) {
    for (let m = 0; m < 6; m++) {
      met[start][m] += ends[i].start[m];
      met[end][m] += ends[i].end[m];
    }
  }
  return frame.nodes.map((node, n) =>
    Float64Array.from(motions, (motion, m) => {
      const hold = node.holds?.[motion];
      if (hold === "held") return met[n][m] - applied[n][m];
      return hold === undefined ? 0 : -hold * displacements[n][m];
    }),
  );
}
