/**
 * Loads somebody adds to those of the roof: a sign, a hoist, planters, a banner. Each goes with the loads of its type. What presses or lifts
 * at a column goes straight down that column; what pushes sideways, and everything on the roof, is shared by the roof.
 */
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import type { RoofLoad } from "../mechanics/rigid-roof.js";
import type { Edge, LoadCase, LoadType } from "./demand.js";
import { uniformLoad } from "./gravity/vertical.js";
import type { RoofCase } from "./roof-case.js";
import { elevationAt, middleOf, type RoofPlane } from "./roof-plane.js";
import type { Reaction, RoofPost } from "./way-down.js";

/** A load somebody adds. Forces N, pressure Pa (down), lengths m. */
export interface AddedLoad {
  readonly name: string;
  readonly type: Exclude<LoadType, "Ev" | "N">;
  /** Posts it acts at, by their places in the list, the same on each; on the roof where left out. */
  readonly posts?: readonly number[];
  /** Place on the roof; its middle where left out. */
  readonly place?: { readonly x: number; readonly y: number };
  readonly down: number;
  readonly up: number;
  readonly pushX: number;
  readonly pushY: number;
  readonly pressure: number;
  /** Of a wind load, the edge the wind comes from; with every wind where left out it would be too much, so it is then a case of its own. */
  readonly from?: Edge;
}

const netDown = formula({
  id: "actions.added.net",
  text: "F_v = F_down - F_up",
  source: "statics",
  symbols: {
    F_v: { kind: "force", meaning: "load as added, down" },
    F_down: { kind: "force", meaning: "force pressing down", field: "loads.*.down" },
    F_up: { kind: "force", meaning: "force lifting", field: "loads.*.up" },
  },
});

const together = formula({
  id: "actions.added.together",
  text: "P = P_0 + k * F_v",
  source: "superposition",
  symbols: {
    P: { kind: "force", meaning: "axial force with the added load" },
    P_0: { kind: "force", meaning: "axial force without it" },
    k: { kind: "ratio", meaning: "part and sense of the added load", range: [-1, 1] },
    F_v: { kind: "force", meaning: "load as added, down" },
  },
});

const scaled = formula({
  id: "actions.added.scaled",
  text: "F = k * F_0",
  source: "superposition",
  symbols: {
    F: { kind: "force", meaning: "force as it acts in this case" },
    k: { kind: "ratio", meaning: "part and sense of the added load", range: [-1, 1] },
    F_0: { kind: "force", meaning: "force as added" },
  },
});

/** What the added loads bring to the roof. `k` scales them: 1, or -1 for an earthquake in the other sense. */
function onRoof(loads: readonly AddedLoad[], k: number, plane: RoofPlane, posts: readonly RoofPost[], calc: Calc): readonly RoofLoad[] {
  const center = middleOf(plane, calc);
  const found: RoofLoad[] = [];
  const add = (x: number, y: number, load: AddedLoad, F_v: number, isThere: boolean): void => {
    const force = (F_0: number): number => calc(scaled, { k, F_0 });
    found.push({ x, y, z: elevationAt(plane, x, y, center, calc), Fx: force(load.pushX), Fy: force(load.pushY), Fz: -force(F_v), over: isThere ? { x1: x, x2: x, y1: y, y2: y } : undefined });
  };
  for (const load of loads) {
    if (load.posts) {
      for (const at of load.posts) if (load.pushX !== 0 || load.pushY !== 0) add(posts[at].x, posts[at].y, load, 0, true);
      continue;
    }
    const F_v = calc(netDown, { F_down: load.down, F_up: load.up });
    if (F_v !== 0 || load.pushX !== 0 || load.pushY !== 0) add(load.place?.x ?? center.x, load.place?.y ?? center.y, load, F_v, load.place !== undefined);
    if (load.pressure !== 0) {
      const { Fz, ...rest } = uniformLoad(plane, load.pressure, calc);
      found.push({ ...rest, Fz: calc(scaled, { k, F_0: Fz }) });
    }
  }
  return found;
}

/** What goes straight down columns, as loads at their tops: part of what the case puts on the structure, and none of the roof's. */
const atColumns = (loads: readonly AddedLoad[], k: number, plane: RoofPlane, posts: readonly RoofPost[], calc: Calc): readonly RoofLoad[] =>
  loads.flatMap((load) =>
    (load.posts ?? []).map((at): RoofLoad => {
      const { x, y } = posts[at];
      const F_v = calc(netDown, { F_down: load.down, F_up: load.up });
      return { x, y, z: elevationAt(plane, x, y, middleOf(plane, calc), calc), Fx: 0, Fy: 0, Fz: -calc(scaled, { k, F_0: F_v }) };
    }),
  );

/** What the added loads bring straight to the columns they act at. */
function onColumns(loads: readonly AddedLoad[], k: number, reactions: readonly Reaction[], calc: Calc): readonly Reaction[] {
  const found = [...reactions];
  for (const load of loads) {
    for (const at of load.posts ?? []) {
      const F_v = calc(netDown, { F_down: load.down, F_up: load.up });
      const with_ = (P_0: number): number => calc(together, { P_0, k, F_v });
      const { top, base } = found[at];
      found[at] = { ...found[at], top: { ...top, P: with_(top.P) }, base: { ...base, P: with_(base.P) } };
    }
  }
  return found;
}

/** A case with added loads in it. It is no longer the same all over the roof. */
function withAdded(one: RoofCase, loads: readonly AddedLoad[], k: number, plane: RoofPlane, posts: readonly RoofPost[]): RoofCase {
  if (loads.length === 0) return one;
  const { uniform: _, ...loadCase } = one.loadCase;
  return {
    ...one,
    loadCase,
    loads: (calc) => [...one.loads(calc), ...onRoof(loads, k, plane, posts, calc)],
    beside: (calc) => [...(one.beside?.(calc) ?? []), ...atColumns(loads, k, plane, posts, calc)],
    finish: (reactions, calc) => onColumns(loads, k, one.finish?.(reactions, calc) ?? reactions, calc),
  };
}

/** The dead loads among the added ones, each where it acts, N down. */
export function addedDead(added: readonly AddedLoad[], plane: RoofPlane, calc: Calc): readonly number[] {
  return added
    .filter(({ type }) => type === "D")
    .flatMap(({ posts, down, up, pressure }) => {
      const force = calc(netDown, { F_down: down, F_up: up });
      return [...(posts ?? [0]).map(() => force), ...(pressure === 0 ? [] : [-uniformLoad(plane, pressure, calc).Fz])];
    });
}

const words: Readonly<Record<AddedLoad["type"], string>> = { D: "dead load", L: "live load", Lr: "roof live load", S: "snow", R: "rain", W: "wind", E: "earthquake" };

const empty = (loadCase: LoadCase): RoofCase => ({ loadCase, source: "as stated under loads", loads: () => [] });

/** Types whose loads act together in every case of theirs; wind and earthquakes come one at a time. */
const gathered = ["D", "L", "Lr", "S", "R"] as const;

/**
 * The cases with the added loads in them. Loads that press down join every case of their type, or make one where there is none. Wind from
 * an edge joins the wind cases of that edge. Other wind, and an earthquake in either sense, are cases of their own. `verticalPart` is the
 * part of a dead load that an earthquake shakes up and down.
 */
export function casesWithAdded(cases: readonly RoofCase[], added: readonly AddedLoad[], plane: RoofPlane, posts: readonly RoofPost[], verticalPart = 0): readonly RoofCase[] {
  if (added.length === 0) return cases;
  const of = (type: LoadType): readonly AddedLoad[] => added.filter((load) => load.type === type);
  const joined = cases.map((one) => {
    const { type, from } = one.loadCase;
    const loads = type === "W" ? of("W").filter((load) => load.from !== undefined && load.from === from) : type === "Ev" ? of("D") : type === "E" || type === "N" ? [] : of(type);
    return withAdded(one, loads, type === "Ev" ? verticalPart : 1, plane, posts);
  });
  const fresh = gathered
    .filter((type) => of(type).length > 0 && !cases.some(({ loadCase }) => loadCase.type === type))
    .map((type) => withAdded(empty({ id: `added/${words[type].replace(/ /gu, "-")}`, type, title: `${words[type]} as added` }), of(type), 1, plane, posts));
  const single = [...of("W").filter(({ from }) => from === undefined), ...of("E")].flatMap((load) => {
    const title = `${words[load.type]}: ${load.name}`;
    const id = `added/${load.name.trim().toLowerCase().replace(/\s+/gu, "-")}`;
    const own = withAdded(empty({ id, type: load.type, title }), [load], 1, plane, posts);
    return load.type === "W" ? [own] : [own, withAdded(empty({ id: `${id}/reversed`, type: "E", title: `${title}, in the other sense` }), [load], -1, plane, posts)];
  });
  return [...joined, ...fresh, ...single];
}
