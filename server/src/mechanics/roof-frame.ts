/**
 * The frame that carries a roof down: columns between the ground and the roof, knee braces between columns and roof, springs below the bases, the
 * roof one rigid body, bays braced by crossing rods.
 * A rod works in tension alone: in each load case the rod that the sway pulls is there, and where a bay does not sway, both are with
 * half their area, so that a symmetric bay stays symmetric.
 */
import type { Routine, ShownValue } from "../formula/types.js";
import type { Frame, FrameMember, FrameNode, Motion, NodeLoad } from "./frame-types.js";
import { assembleFrame, factorFrame, solveFrame, type FrameModel } from "./frame.js";
import { endsOf, isTopFixed, middleOfTops, type MemberForces, type RoofColumn, type RoofLoad, type RoofMechanism, type RoofResult, type Vector } from "./rigid-roof.js";
import { freeMovement, roofMechanism, tooUnlike } from "./roof-mechanism.js";
import type { Skyline } from "./skyline.js";
import type { KneeBrace } from "./sway-stiffness.js";

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

interface LaidModel extends Omit<Laid, "frame"> {
  readonly model: FrameModel;
}

export interface RoofFrame {
  readonly columns: readonly RoofColumn[];
  readonly braces: readonly RoofBrace[];
  readonly reference: Vector;
  /** Factored once for each set of rods that comes up. */
  readonly models: Map<string, LaidModel>;
  /** Of each column, for the terms of second order. */
  readonly compression?: readonly number[];
}

/** What the frame is made of, with where its columns are in it. */
interface Laid {
  readonly frame: Frame;
  /** The lowest member of each column: the whole of it, or the piece below its lowest brace. */
  readonly columns: readonly number[];
  /** The first of the two rods of each braced bay; the other follows it. */
  readonly rods: readonly number[];
}

const held = { x: "held", y: "held", z: "held", rx: "held", ry: "held", rz: "held" } as const;

/** Turning of a base: held, against its spring, or held with the column's end let free. */
const groundOf = (c: RoofColumn): NonNullable<FrameNode["holds"]> => {
  const { x, y } = endsOf(c);
  return { ...held, ...(x.base && x.baseSpring !== undefined ? { ry: x.baseSpring } : {}), ...(y.base && y.baseSpring !== undefined ? { rx: y.baseSpring } : {}) };
};

/** A plumb member has its own y to the east and its own z to the north. */
const freeIn = (holds: { readonly x: boolean; readonly y: boolean }): Motion[] => [...(holds.x ? [] : ["rz" as const]), ...(holds.y ? [] : ["ry" as const])];

interface Knee extends KneeBrace {
  readonly axis: "x" | "y";
}

const kneesOf = (c: RoofColumn): readonly Knee[] => {
  const { x, y } = endsOf(c);
  return [...(x.knee ? [{ ...x.knee, axis: "x" as const }] : []), ...(y.knee ? [{ ...y.knee, axis: "y" as const }] : [])];
};

/** A column and its knee braces: nodes at its base, at the feet of its braces, and two or more that go with the roof. */
function layColumn(c: RoofColumn, nodes: FrameNode[], members: FrameMember[]): number {
  const { x, y } = endsOf(c);
  const at = (above: number, more: Partial<FrameNode>): number => nodes.push({ x: c.x, y: c.y, z: c.base + above, ...more }) - 1;
  const knees = kneesOf(c);
  const feet = [...new Set(knees.map(({ foot }) => foot))].sort((a, b) => a - b);
  const base = at(0, { holds: groundOf(c) });
  const inner = feet.map((foot) => at(foot, {}));
  const stops = [base, ...inner, at(c.height, { follows: 0 })];
  const first = members.length;
  for (let i = 1; i < stops.length; i++) {
    const isLast = i === stops.length - 1;
    members.push({
      start: stops[i - 1],
      end: stops[i],
      E: c.E,
      area: c.area,
      Iy: c.Ix,
      Iz: c.Iy,
      GJ: c.GJ ?? 0,
      freeAtStart: i === 1 ? freeIn({ x: x.base, y: y.base }) : [],
      freeAtEnd: isLast ? [...freeIn({ x: x.top, y: y.top }), ...(isTopFixed(c) ? [] : ["rx" as const])] : [],
    });
  }
  for (const { axis, foot, run, sides, E, area } of knees) {
    for (const side of sides === "both" ? [1, -1] : [sides]) {
      const head = nodes.push({ x: c.x + (axis === "x" ? side * run : 0), y: c.y + (axis === "y" ? side * run : 0), z: c.base + c.height, follows: 0 }) - 1;
      members.push({ start: inner[feet.indexOf(foot)], end: head, E, area, isTie: true });
    }
  }
  return first;
}

/** Node 0 is the roof. */
function frameOf(columns: readonly RoofColumn[], braces: readonly RoofBrace[], reference: Vector, rods: readonly Rods[]): Laid {
  const nodes: FrameNode[] = [reference];
  const members: FrameMember[] = [];
  const first = columns.map((c) => layColumn(c, nodes, members));
  const lowest = first.map((at) => members[at].start);
  // The piece that ends at the top comes after one for each foot of a brace.
  const highest = columns.map((c, i) => members[first[i] + new Set(kneesOf(c).map(({ foot }) => foot)).size].end);
  const firstRods = braces.map((brace, i) => {
    const rod = (low: number, high: number, is: Rods): FrameMember => ({
      start: lowest[low],
      end: highest[high],
      E: brace.E,
      // A rod that is slack is left with nothing to carry, so that the list of members stays the same.
      area: brace.area * (rods[i] === is ? 1 : rods[i] === "both" ? 0.5 : 1e-9),
      isTie: true,
    });
    return members.push(rod(brace.from, brace.to, "from"), rod(brace.to, brace.from, "to")) - 2;
  });
  return { frame: { nodes, members }, columns: first, rods: firstRods };
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
  const frame: RoofFrame = { columns, braces, reference, models: new Map(), compression };
  const first = modelFor(frame, braces.map(() => "both"));
  return "mechanism" in first ? first : frame;
}

function modelFor({ columns, braces, reference, models, compression }: RoofFrame, rods: readonly Rods[]): LaidModel | RoofMechanism {
  const key = rods.join();
  const known = models.get(key);
  if (known) return known;
  const laid = frameOf(columns, braces, reference, rods);
  const assembled = assembleFrame(laid.frame, compression && compressions(laid, compression));
  if ("fault" in assembled) return { mechanism: tooUnlike };
  const model = factorFrame(assembled);
  if (!compression) {
    const { length } = middleOfTops(columns);
    const free = freeMovement(scaledStiffness(stiffnessOfRoof(assembled.matrix), length));
    if (free !== undefined) return { mechanism: free };
  }
  if ("fault" in model) return { mechanism: model.fault === "buckled" ? "the columns buckle under the vertical loads" : tooUnlike };
  const found = { model, columns: laid.columns, rods: laid.rods };
  models.set(key, found);
  return found;
}

/** Every piece of a column has the column's compression, braces and rods have none. */
function compressions({ frame, columns }: Laid, of: readonly number[]): readonly number[] {
  const next = (i: number): number => columns[i + 1] ?? frame.members.length;
  const found = frame.members.map(() => 0);
  for (const [i, first] of columns.entries()) for (let m = first; m < next(i) && !frame.members[m].isTie; m++) found[m] = of[i];
  return found;
}

/** The stiffness against the roof's own six movements, every other movement of the frame free to follow them. */
function stiffnessOfRoof({ size, first, begins, terms }: Skyline): Float64Array {
  const rows = Array.from({ length: size }, () => new Map<number, number>());
  for (let i = 0; i < size; i++) {
    for (let j = first[i]; j <= i; j++) {
      const term = terms[begins[i] + j - first[i]];
      if (term === 0) continue;
      rows[i].set(j, term);
      rows[j].set(i, term);
    }
  }
  for (let k = size - 1; k >= 6; k--) {
    const pivot = rows[k].get(k) ?? 0;
    if (!(pivot > 0)) continue;
    const others = [...rows[k]].filter(([i]) => i < k);
    for (const [i, a] of others) for (const [j, b] of others) rows[i].set(j, (rows[i].get(j) ?? 0) - (a * b) / pivot);
  }
  return Float64Array.from({ length: 36 }, (_, at) => rows[Math.floor(at / 6)].get(at % 6) ?? 0);
}

/** Rotations scaled by a length, so that all terms have one dimension. */
const scaledStiffness = (stiffness: Float64Array, length: number): Float64Array => stiffness.map((term, at) => term * (at < 18 ? 1 : 1 / length) * (at % 6 < 3 ? 1 : 1 / length));

/** Forces of the structure above on a section, from the forces on a member's end there. */
const memberForces = (six: ArrayLike<number>, sign: number): MemberForces => ({ P: -sign * six[2], Vx: sign * six[0], Vy: sign * six[1], Mx: sign * six[3], My: sign * six[4], Mz: sign * six[5] });

const plus = (a: MemberForces, b: MemberForces): MemberForces => ({ P: a.P + b.P, Vx: a.Vx + b.Vx, Vy: a.Vy + b.Vy, Mx: a.Mx + b.Mx, My: a.My + b.My, Mz: a.Mz + b.Mz });

/** What the roof and the braces of a column do to it, carried up to its top. */
const atTop = (base: MemberForces, height: number): MemberForces => ({ ...base, Mx: base.Mx + base.Vy * height, My: base.My - base.Vx * height });

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
    const laid = modelFor(roof, rods);
    if ("mechanism" in laid) return laid;
    const { members, displacements } = solveFrame(laid.model, frameLoads);
    // Push of the rods of a bay on the roof, from column `from` toward column `to`.
    const wanted = braces.map((brace, i): Rods => {
      const first = laid.rods[i];
      const span = Math.hypot(columns[brace.to].x - columns[brace.from].x, columns[brace.to].y - columns[brace.from].y);
      const along = (six: ArrayLike<number>): number => ((columns[brace.to].x - columns[brace.from].x) * six[0] + (columns[brace.to].y - columns[brace.from].y) * six[1]) / span;
      const taken = along(members[first].end) + along(members[first + 1].end);
      return Math.abs(taken) <= sways * size ? "both" : taken > 0 ? "from" : "to";
    });
    if (turn < 8 && wanted.some((one, i) => one !== rods[i])) {
      rods = wanted;
      continue;
    }
    const results = columns.map((c, i) => {
      const { start, end } = members[laid.columns[i]];
      const base = memberForces(start, -1);
      return { base, top: kneesOf(c).length === 0 ? memberForces(end, 1) : atTop(base, c.height) };
    });
    for (const [i, brace] of braces.entries()) {
      for (const [rod, low, high] of [[0, brace.from, brace.to], [1, brace.to, brace.from]]) {
        const { start, end } = members[laid.rods[i] + rod];
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
  method: "direct stiffness: columns as members of twelve end movements with their free ends, on springs where their bases give, the roof one rigid body, knee braces as bars, rods as ties that work in tension",
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
