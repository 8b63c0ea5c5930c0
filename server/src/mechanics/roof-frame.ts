/**
 * The frame that carries a roof down: columns between the ground and the roof, the roof one rigid body, bays braced by crossing rods.
 * A rod works in tension alone: in each load case the rod that the sway pulls is there, and where a bay does not sway, both are with
 * half their area, so that a symmetric bay stays symmetric.
 */
import type { Routine, ShownValue } from "../formula/types.js";
import type { Frame, FrameMember, FrameNode, Motion, NodeLoad } from "./frame-types.js";
import { assembleFrame, factorFrame, solveFrame, type FrameModel } from "./frame.js";
import { endsOf, isTopFixed, middleOfTops, type MemberForces, type RoofColumn, type RoofLoad, type RoofMechanism, type RoofResult, type Vector } from "./rigid-roof.js";
import { freeMovement, roofMechanism, tooUnlike } from "./roof-mechanism.js";

/** A bay braced by two crossing rods, each from the base of one column to the top of the other. */
export interface RoofBrace {
  /** Places of the two columns in the list of columns. */
  readonly from: number;
  readonly to: number;
  /** Modulus of elasticity, Pa, and area of one rod, m². */
  readonly E: number;
  readonly area: number;
}

/** Which rods of a bay are there: from the base of `from` upward, from the base of `to` upward, or both by half. */
type Rods = "from" | "to" | "both";

export interface RoofFrame {
  readonly columns: readonly RoofColumn[];
  readonly braces: readonly RoofBrace[];
  readonly reference: Vector;
  /** Factored once for each set of rods that comes up. */
  readonly models: Map<string, FrameModel>;
  readonly compression?: readonly number[];
}

const held = { x: "held", y: "held", z: "held", rx: "held", ry: "held", rz: "held" } as const;

/** A plumb member has its own y to the east and its own z to the north. */
function columnMember(c: RoofColumn, start: number, end: number): FrameMember {
  const { x, y } = endsOf(c);
  const free = (holds: { readonly x: boolean; readonly y: boolean }): Motion[] => [...(holds.x ? [] : ["rz" as const]), ...(holds.y ? [] : ["ry" as const])];
  return {
    start,
    end,
    E: c.E,
    area: c.area,
    Iy: c.Ix,
    Iz: c.Iy,
    GJ: c.GJ ?? 0,
    freeAtStart: free({ x: x.base, y: y.base }),
    freeAtEnd: [...free({ x: x.top, y: y.top }), ...(isTopFixed(c) ? [] : ["rx" as const])],
  };
}

/** Node 0 is the roof; then base and top of each column. */
const baseNode = (column: number): number => 1 + 2 * column;
const topNode = (column: number): number => 2 + 2 * column;

function frameOf(columns: readonly RoofColumn[], braces: readonly RoofBrace[], reference: Vector, rods: readonly Rods[]): Frame {
  const nodes: FrameNode[] = [reference];
  for (const c of columns) nodes.push({ x: c.x, y: c.y, z: c.base, holds: held }, { x: c.x, y: c.y, z: c.base + c.height, follows: 0 });
  const members = columns.map((c, i) => columnMember(c, baseNode(i), topNode(i)));
  for (const [i, brace] of braces.entries()) {
    const rod = (low: number, high: number, is: Rods): FrameMember => ({
      start: baseNode(low),
      end: topNode(high),
      E: brace.E,
      // A rod that is slack is left with nothing to carry, so that the list of members stays the same.
      area: brace.area * (rods[i] === is ? 1 : rods[i] === "both" ? 0.5 : 1e-9),
      isTie: true,
    });
    members.push(rod(brace.from, brace.to, "from"), rod(brace.to, brace.from, "to"));
  }
  return { nodes, members };
}

const isAlong = (columns: readonly RoofColumn[], { from, to }: RoofBrace, axis: "x" | "y"): boolean => {
  const east = Math.abs(columns[to].x - columns[from].x);
  const north = Math.abs(columns[to].y - columns[from].y);
  return axis === "x" ? east > 1e-3 * north : north > 1e-3 * east;
};

/** Builds the frame of a roof, or says in which way it can move freely. `compression` of each column is for the terms of second order. */
export function roofFrame(columns: readonly RoofColumn[], braces: readonly RoofBrace[] = [], compression?: readonly number[]): RoofFrame | RoofMechanism {
  const isBraced = { x: braces.some((brace) => isAlong(columns, brace, "x")), y: braces.some((brace) => isAlong(columns, brace, "y")) };
  const mechanism = roofMechanism(columns, isBraced);
  if (mechanism !== undefined) return { mechanism };
  const { reference } = middleOfTops(columns);
  const frame: RoofFrame = { columns, braces, reference, models: new Map(), compression: compression && [...compression, ...braces.flatMap(() => [0, 0])] };
  const first = modelFor(frame, braces.map(() => "both"));
  return "mechanism" in first ? first : frame;
}

function modelFor({ columns, braces, reference, models, compression }: RoofFrame, rods: readonly Rods[]): FrameModel | RoofMechanism {
  const key = rods.join();
  const known = models.get(key);
  if (known) return known;
  const assembled = assembleFrame(frameOf(columns, braces, reference, rods), compression);
  if ("fault" in assembled) return { mechanism: tooUnlike };
  const model = factorFrame(assembled);
  if (!compression) {
    const { length } = middleOfTops(columns);
    const free = freeMovement(scaledStiffness(assembled.matrix.terms, length));
    if (free !== undefined) return { mechanism: free };
  }
  if ("fault" in model) return { mechanism: model.fault === "buckled" ? "the columns buckle under the vertical loads" : tooUnlike };
  models.set(key, model);
  return model;
}

/** The roof's own six movements are the only unknowns: the packed lower half as a full matrix, rotations scaled by a length. */
function scaledStiffness(packed: Float64Array, length: number): Float64Array {
  const full = new Float64Array(36);
  for (let i = 0; i < 6; i++) {
    for (let j = 0; j <= i; j++) {
      const by = (i < 3 ? 1 : 1 / length) * (j < 3 ? 1 : 1 / length);
      full[i * 6 + j] = full[j * 6 + i] = packed[(i * (i + 1)) / 2 + j] * by;
    }
  }
  return full;
}

/** Forces of the structure above on a section, from the forces on a member's end there. */
const memberForces = (six: ArrayLike<number>, sign: number): MemberForces => ({ P: -sign * six[2], Vx: sign * six[0], Vy: sign * six[1], Mx: sign * six[3], My: sign * six[4], Mz: sign * six[5] });

const plus = (a: MemberForces, b: MemberForces): MemberForces => ({ P: a.P + b.P, Vx: a.Vx + b.Vx, Vy: a.Vy + b.Vy, Mx: a.Mx + b.Mx, My: a.My + b.My, Mz: a.Mz + b.Mz });

/** A bay sways if its rods take more than this part of the loads. */
const sways = 1e-7;

/** The loads as one force and one moment at the roof's node. */
function asOne(loads: readonly RoofLoad[], at: Vector): NodeLoad {
  const force = { x: 0, y: 0, z: 0 };
  const moment = { x: 0, y: 0, z: 0 };
  for (const load of loads) {
    const x = load.x - at.x;
    const y = load.y - at.y;
    const z = load.z - at.z;
    force.x += load.Fx;
    force.y += load.Fy;
    force.z += load.Fz;
    moment.x += y * load.Fz - z * load.Fy;
    moment.y += z * load.Fx - x * load.Fz;
    moment.z += x * load.Fy - y * load.Fx;
  }
  return { node: 0, force, moment };
}

/** Shares loads on the roof among its columns, the rods that land on a base included in what reaches it. */
export function solveRoofFrame(roof: RoofFrame, loads: readonly RoofLoad[]): RoofResult | RoofMechanism {
  const { columns, braces, reference } = roof;
  const frameLoads = [asOne(loads, reference)];
  const size = loads.reduce((sum, { Fx, Fy, Fz }) => sum + Math.abs(Fx) + Math.abs(Fy) + Math.abs(Fz), 0);
  let rods: readonly Rods[] = braces.map(() => "both");
  for (let turn = 0; ; turn++) {
    const model = modelFor(roof, rods);
    if ("mechanism" in model) return model;
    const { members, displacements } = solveFrame(model, frameLoads);
    // Push of the rods of a bay on the roof, from column `from` toward column `to`.
    const wanted = braces.map((brace, i): Rods => {
      const first = columns.length + 2 * i;
      const span = Math.hypot(columns[brace.to].x - columns[brace.from].x, columns[brace.to].y - columns[brace.from].y);
      const along = (six: ArrayLike<number>): number => ((columns[brace.to].x - columns[brace.from].x) * six[0] + (columns[brace.to].y - columns[brace.from].y) * six[1]) / span;
      const taken = along(members[first].end) + along(members[first + 1].end);
      return Math.abs(taken) <= sways * size ? "both" : taken > 0 ? "from" : "to";
    });
    if (turn < 8 && wanted.some((one, i) => one !== rods[i])) {
      rods = wanted;
      continue;
    }
    const results = columns.map((_, i) => ({ top: memberForces(members[i].end, 1), base: memberForces(members[i].start, -1) }));
    for (const [i, brace] of braces.entries()) {
      for (const [rod, low, high] of [[0, brace.from, brace.to], [1, brace.to, brace.from]]) {
        const { start, end } = members[columns.length + 2 * i + rod];
        results[high] = { ...results[high], top: plus(results[high].top, memberForces(end, 1)) };
        results[low] = { ...results[low], base: plus(results[low].base, memberForces(start, -1)) };
      }
    }
    const [u] = displacements;
    return { columns: results, reference, displacement: { x: u[0], y: u[1], z: u[2] }, rotation: { x: u[3], y: u[4], z: u[5] } };
  }
}

/** The push through the middle of the column tops that moves the roof there by a unit, along each axis, N/m. */
export function storyStiffness(roof: RoofFrame): { readonly x: number; readonly y: number } {
  const along = (axis: "x" | "y"): number => {
    const moved = solveRoofFrame(roof, [{ ...roof.reference, Fx: axis === "x" ? 1000 : 0, Fy: axis === "y" ? 1000 : 0, Fz: 0 }]);
    return "mechanism" in moved ? Number.NaN : 1000 / moved.displacement[axis];
  };
  return { x: along("x"), y: along("y") };
}

export interface RoofFrameArgs {
  readonly frame: RoofFrame;
  readonly loads: readonly RoofLoad[];
}

/** {@link solveRoofFrame} as a step of a calculation. */
export const framedRoof: Routine<RoofFrameArgs, RoofResult | RoofMechanism> = {
  id: "mechanics.roof-frame",
  title: "Share of each column by a frame in space",
  method: "direct stiffness: columns as members of twelve end movements with their free ends, the roof one rigid body, rods as ties that work in tension",
  source: "first-order theory of structures; common practice, no single source",
  run: ({ frame, loads }) => solveRoofFrame(frame, loads),
  show: ({ frame: { columns, braces }, loads }, result) => {
    const total = (pick: (load: RoofLoad) => number): number => loads.reduce((sum, load) => sum + pick(load), 0);
    const given: ShownValue[] = [
      { symbol: "n", meaning: "columns", kind: "number", value: columns.length },
      ...(braces.length > 0 ? [{ symbol: "n_b", meaning: "braced bays", kind: "number" as const, value: braces.length }] : []),
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

/** Movement of a column top in plan, m, when the roof has moved so. */
export function topMovement({ reference, displacement, rotation }: RoofResult, c: RoofColumn): { readonly x: number; readonly y: number } {
  const x = c.x - reference.x;
  const y = c.y - reference.y;
  const z = c.base + c.height - reference.z;
  return { x: displacement.x + rotation.y * z - rotation.z * y, y: displacement.y + rotation.z * x - rotation.x * z };
}
