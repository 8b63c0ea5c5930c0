/**
 * A roof that is not rigid in its plane: each column takes what lies nearest to it. Purlins and beams in simple spans bring every load, down
 * and sideways, to the column tops by lever; a plain cantilever keeps its own share of a push, and columns in line whose tops are fixed,
 * whose bases are pinned or whose bays are braced share the pushes along their line by stiffness, with the couples that belong to it.
 */
import type { Routine, ShownValue } from "../formula/types.js";
import { gridOf, linesAlong, sharesOf, type ColumnGrid } from "./column-grid.js";
import type { Forces } from "./forces.js";
import { endsOf, type EndsHeld, type PlanArea, type RoofColumn, type RoofLoad, type RoofMechanism } from "./rigid-roof.js";
import type { RoofBrace } from "./roof-frame.js";
import { roofMechanism } from "./roof-mechanism.js";
import { holdsTop, planeStiffness, type PlaneStiffness } from "./sway-stiffness.js";

type Axis = "x" | "y";

/** Columns that share the pushes along an axis. */
export interface SwayGroup {
  readonly columns: readonly number[];
  readonly braces: readonly RoofBrace[];
  /** Push for a movement of one meter, N/m. */
  readonly stiffness: number;
}

export interface TributaryRoof {
  readonly columns: readonly RoofColumn[];
  readonly grid: ColumnGrid;
  readonly plan: PlanArea;
  readonly groups: Readonly<Record<Axis, readonly SwayGroup[]>>;
}

export interface TributaryResult {
  readonly columns: readonly { readonly top: Forces; readonly base: Forces; readonly sway: { readonly x: number; readonly y: number } }[];
}

const inertiaFor = (c: RoofColumn, axis: Axis): number => (axis === "x" ? c.Iy : c.Ix);

/** What a column's top meets when it moves sideways while the beam there stays level: a push, and the moment that goes with it. */
const levelStiffness = (c: RoofColumn, axis: Axis, ends: EndsHeld): PlaneStiffness => planeStiffness(ends, c.E * inertiaFor(c, axis), c.height);

const rodOf = (columns: readonly RoofColumn[], { from, to }: RoofBrace, toward: number, axis: Axis) => {
  // The rod that a push in this sense stretches rises in that sense.
  const isForward = (columns[to][axis] - columns[from][axis]) * toward > 0;
  const [low, high] = isForward ? [from, to] : [to, from];
  const run = Math.abs(columns[high][axis] - columns[low][axis]);
  const rise = columns[high].base + columns[high].height - columns[low].base;
  return { low, high, slope: rise / run, length: Math.hypot(run, rise), run };
};

const rodStiffness = (columns: readonly RoofColumn[], brace: RoofBrace, axis: Axis): number => {
  const { run, length } = rodOf(columns, brace, 1, axis);
  return (brace.E * brace.area * run ** 2) / length ** 3;
};

/** A fixed top is of use only where a beam leads on to another column in that direction. */
const endsIn = (c: RoofColumn, axis: Axis, size: number): EndsHeld => {
  const ends = endsOf(c)[axis];
  return size > 1 ? ends : { base: ends.base, baseSpring: ends.baseSpring, top: false };
};

function groupsAlong(columns: readonly RoofColumn[], braces: readonly RoofBrace[], axis: Axis): readonly SwayGroup[] | RoofMechanism {
  const groups: SwayGroup[] = [];
  const isBracedAlong = ({ from, to }: RoofBrace): boolean => {
    const other = axis === "x" ? "y" : "x";
    return Math.abs(columns[to][axis] - columns[from][axis]) > Math.abs(columns[to][other] - columns[from][other]);
  };
  const along = braces.filter(isBracedAlong);
  for (const line of merged(linesAlong(columns, axis).map((one) => one.columns), along)) {
    const own = along.filter(({ from }) => line.includes(from));
    const isPlain = own.length === 0 && line.every((i) => endsIn(columns[i], axis, line.length).base && !holdsTop(endsIn(columns[i], axis, line.length)));
    for (const members of isPlain ? line.map((i) => [i]) : [line]) {
      const stiffness =
        members.reduce((sum, i) => sum + levelStiffness(columns[i], axis, endsIn(columns[i], axis, members.length))[0], 0) + own.reduce((sum, brace) => sum + rodStiffness(columns, brace, axis), 0);
      if (!(stiffness > 0)) {
        const who = members.length === 1 ? `column ${members[0] + 1}` : `the columns ${members.map((i) => i + 1).join(", ")}`;
        return { mechanism: `nothing holds ${who} against swaying ${axis === "x" ? "east to west" : "north to south"}: a roof that is not rigid in its plane brings no push to other lines. Fix a base, brace a bay, or make the roof rigid in its plane` };
      }
      groups.push({ columns: members, braces: own, stiffness });
    }
  }
  return groups;
}

/** Lines joined where a brace leads from one to the other. */
function merged(lines: readonly (readonly number[])[], braces: readonly RoofBrace[]): readonly (readonly number[])[] {
  let groups = lines.map((line) => [...line]);
  for (const { from, to } of braces) {
    const a = groups.find((group) => group.includes(from));
    const b = groups.find((group) => group.includes(to));
    if (a && b && a !== b) groups = [...groups.filter((group) => group !== a && group !== b), [...a, ...b]];
  }
  return groups;
}

/** Finds the grid and the groups once, or says why the roof cannot be shared by tributary width. */
export function tributaryRoof(columns: readonly RoofColumn[], braces: readonly RoofBrace[], plan: PlanArea): TributaryRoof | RoofMechanism {
  const isBraced = { x: braces.length > 0, y: braces.length > 0 };
  const mechanism = roofMechanism(columns, isBraced);
  if (mechanism !== undefined) return { mechanism };
  const grid = gridOf(columns);
  if (!grid) return { mechanism: "sharing by tributary width needs two lines of columns or more, each of two columns or more, all along x or all along y. Make the roof rigid in its plane, or state each column's reactions" };
  const x = groupsAlong(columns, braces, "x");
  if ("mechanism" in x) return x;
  const y = groupsAlong(columns, braces, "y");
  if ("mechanism" in y) return y;
  return { columns, grid, plan, groups: { x, y } };
}

interface Both {
  x: number;
  y: number;
}

/** Running totals at one column while a load case is shared. */
interface Working {
  /** From the roof. */
  P: number;
  /** Pushes as they come to the top; later what bends the column. */
  V: Both;
  /** Pushes that rods take at the top, and bring to the base, with the force down that goes with them. */
  hung: Both;
  landed: Both;
  down: number;
  topMoment: Both;
  sway: Both;
}

const areaOf = (load: RoofLoad, plan: PlanArea): PlanArea => {
  if (load.over) return load.over;
  // A push without an area is the whole roof's; a force down without one acts where it is.
  return load.Fz === 0 ? plan : { x1: load.x, x2: load.x, y1: load.y, y2: load.y };
};

/** Shares the pushes along one axis within each group, with the couples that belong to them. */
function swayAlong({ columns, groups }: TributaryRoof, working: readonly Working[], axis: Axis): void {
  // A push to the east bends about the north axis with its own sign, one to the north about the east axis with the other.
  const sign = axis === "x" ? 1 : -1;
  for (const { columns: members, braces, stiffness } of groups[axis]) {
    const push = members.reduce((sum, i) => sum + working[i].V[axis], 0);
    const topOf = (i: number): number => columns[i].base + columns[i].height;
    const movement = push / stiffness;
    let couple = members.reduce((sum, i) => sum + working[i].V[axis] * topOf(i), 0);
    for (const i of members) {
      const c = columns[i];
      const ends = endsIn(c, axis, members.length);
      const [push, mixed] = levelStiffness(c, axis, ends);
      const V = movement * push;
      const M = movement * mixed;
      working[i].V[axis] = V;
      working[i].topMoment[axis] = -sign * M;
      working[i].sway[axis] = movement;
      couple -= V * topOf(i) - M;
    }
    for (const brace of braces) {
      const { low, high, slope } = rodOf(columns, brace, movement < 0 ? -1 : 1, axis);
      const H = movement * rodStiffness(columns, brace, axis);
      working[high].hung[axis] += H;
      working[low].landed[axis] += H;
      working[high].down += Math.abs(H) * slope;
      working[low].down -= Math.abs(H) * slope;
      couple -= H * topOf(high);
    }
    overturn(columns, working, members, axis, couple);
  }
}

/** Adds vertical forces in a group, linear along it, for a couple: a push times its arm, positive where it presses the far side. */
function overturn(columns: readonly RoofColumn[], working: readonly Working[], members: readonly number[], axis: Axis, couple: number): void {
  const middle = members.reduce((sum, i) => sum + columns[i][axis], 0) / members.length;
  const spread = members.reduce((sum, i) => sum + (columns[i][axis] - middle) ** 2, 0);
  if (!(spread > 0)) return;
  for (const i of members) working[i].P += (couple * (columns[i][axis] - middle)) / spread;
}

/** Shares loads on the roof among its columns, by tributary width. */
export function solveTributary(roof: TributaryRoof, loads: readonly RoofLoad[]): TributaryResult {
  const { columns, grid, plan } = roof;
  const none = (): Both => ({ x: 0, y: 0 });
  const working = columns.map((): Working => ({ P: 0, V: none(), hung: none(), landed: none(), down: 0, topMoment: none(), sway: none() }));
  for (const load of loads) {
    const shares = sharesOf(grid, areaOf(load, plan), columns.length);
    working.forEach((one, i) => {
      one.P -= shares[i] * load.Fz;
      one.V.x += shares[i] * load.Fx;
      one.V.y += shares[i] * load.Fy;
    });
  }
  swayAlong(roof, working, "x");
  swayAlong(roof, working, "y");
  const results = columns.map((c, i) => {
    const { P, V, hung, landed, down, topMoment, sway } = working[i];
    const top = { P, Vx: V.x + hung.x, Vy: V.y + hung.y, Mx: topMoment.y, My: topMoment.x };
    const base = { P: P + down, Vx: V.x + landed.x, Vy: V.y + landed.y, Mx: topMoment.y - V.y * c.height, My: topMoment.x + V.x * c.height };
    return { top, base, sway };
  });
  const extra = leaning(columns, ...restOf(columns, results, loads));
  return { columns: results.map(({ top, base, sway }, i) => ({ top: { ...top, P: top.P + extra[i] }, base: { ...base, P: base.P + extra[i] }, sway })) };
}

/** What the moments of the loads have over those of the reactions: a push above or below the column tops, columns a little off their line. */
function restOf(columns: readonly RoofColumn[], results: TributaryResult["columns"], loads: readonly RoofLoad[]): [east: number, north: number] {
  let [east, north] = [0, 0];
  for (const { x, y, z, Fx, Fy, Fz } of loads) {
    east += z * Fx - x * Fz;
    north += z * Fy - y * Fz;
  }
  results.forEach(({ base }, i) => {
    const { x, y, base: z } = columns[i];
    east -= base.My + z * base.Vx + x * base.P;
    north -= -base.Mx + z * base.Vy + y * base.P;
  });
  return [east, north];
}

/** Vertical forces in all columns, linear in plan and adding up to nothing, for what is left of the moments. */
function leaning(columns: readonly RoofColumn[], east: number, north: number): readonly number[] {
  const n = columns.length;
  const x0 = columns.reduce((sum, c) => sum + c.x, 0) / n;
  const y0 = columns.reduce((sum, c) => sum + c.y, 0) / n;
  const [xx, yy, xy] = columns.reduce(([a, b, m], c) => [a + (c.x - x0) ** 2, b + (c.y - y0) ** 2, m + (c.x - x0) * (c.y - y0)], [0, 0, 0]);
  const whole = xx * yy - xy ** 2;
  const a = (east * yy - north * xy) / whole;
  const b = (north * xx - east * xy) / whole;
  return columns.map((c) => a * (c.x - x0) + b * (c.y - y0));
}

export interface TributaryArgs {
  readonly roof: TributaryRoof;
  readonly loads: readonly RoofLoad[];
}

/** {@link solveTributary} as a step of a calculation. */
export const sharedByTributary: Routine<TributaryArgs, TributaryResult> = {
  id: "mechanics.tributary-roof",
  title: "Share of each column by tributary width",
  method: "purlins and beams in simple spans with overhangs, by lever, for forces down and pushes alike; columns of a line that is braced, fixed at the top or pinned at the base share along it by stiffness",
  source: "statics of simple spans; common practice for roofs that are not rigid in their plane, no single source",
  run: ({ roof, loads }) => solveTributary(roof, loads),
  show: ({ roof: { grid }, loads }, { columns }) => {
    const total = (pick: (load: RoofLoad) => number): number => loads.reduce((sum, load) => sum + pick(load), 0);
    const given: ShownValue[] = [
      { symbol: "n_l", meaning: `lines of columns along ${grid.axis}`, kind: "number", value: grid.lines.length },
      { symbol: "F_x", meaning: "push to the east", kind: "force", value: total((l) => l.Fx) },
      { symbol: "F_y", meaning: "push to the north", kind: "force", value: total((l) => l.Fy) },
      { symbol: "F_z", meaning: "lift", kind: "force", value: total((l) => l.Fz) },
    ];
    const found: ShownValue[] = columns.flatMap(({ base }, i) => [
      { symbol: `P_${i + 1}`, meaning: `axial force, column ${i + 1}, compression positive`, kind: "force" as const, value: base.P },
      { symbol: `V_${i + 1}`, meaning: `shear at the base, column ${i + 1}`, kind: "force" as const, value: Math.hypot(base.Vx, base.Vy) },
      { symbol: `M_${i + 1}`, meaning: `moment at the base, column ${i + 1}`, kind: "moment" as const, value: Math.hypot(base.Mx, base.My) },
    ]);
    return { given, found };
  },
};
