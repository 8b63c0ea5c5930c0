/**
 * Dead load: the roof's on its plan area, at its middle; each column's own weight at its base. The roof's may be one number, or a least
 * and a most, or built up from layers that weigh on the sloped surface. What holds down must not be overestimated, and what presses must
 * not be underestimated: a light and a heavy estimate are cases of their own where they differ.
 */
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import type { Forces } from "../mechanics/forces.js";
import type { RoofLoad } from "../mechanics/rigid-roof.js";
import type { LoadCase } from "./demand.js";
import type { RoofCase } from "./roof-case.js";
import { middleOf, type RoofPlane } from "./roof-plane.js";
import type { RoofPost } from "./way-down.js";

/** A layer of the roof. Weights in Pa over the surface, or in N/m³ where a thickness (m) is given. */
export interface Layer {
  readonly name: string;
  readonly light: number;
  readonly heavy: number;
  readonly thickness?: number;
  /** Where the weight is read from. */
  readonly source: string;
}

/** The roof's dead load: on plan (Pa) as stated, or by its layers. */
export type RoofDead = { readonly light: number; readonly heavy: number } | { readonly layers: readonly Layer[] };

type Estimate = "light" | "heavy";

export const deadSource = "ASCE 7-22 3.1; the roof's dead load is uniform on plan, so its resultant is at the middle";

const roofWeight = formula({
  id: "actions.dead.roof",
  text: "W_D = D * l * w",
  source: "ASCE 7-22 3.1.1",
  symbols: {
    W_D: { kind: "force", meaning: "dead load of the roof" },
    D: { kind: "pressure", meaning: "dead load of the roof on plan", field: "roof.dead" },
    l: { kind: "distance", meaning: "length of the roof in plan", field: "roof.length" },
    w: { kind: "distance", meaning: "width of the roof in plan", field: "roof.width" },
  },
});

const layerByThickness = formula({
  id: "actions.dead.layer",
  text: "d = g * t",
  source: "ASCE 7-22 3.1.2",
  symbols: {
    d: { kind: "pressure", meaning: "weight of the layer over the surface" },
    g: { kind: "unitWeight", meaning: "weight of the material per thickness", field: "roof.layers.*.material" },
    t: { kind: "length", meaning: "thickness of the layer", field: "roof.layers.*.thickness" },
  },
});

const layersTogether = formula({
  id: "actions.dead.layers",
  text: "D_s = D_0 + d",
  source: "ASCE 7-22 3.1.1",
  symbols: {
    D_s: { kind: "pressure", meaning: "dead load over the surface with this layer" },
    D_0: { kind: "pressure", meaning: "dead load of the layers before", range: [0, 2000] },
    d: { kind: "pressure", meaning: "weight of the layer over the surface", field: "roof.layers.*.weight" },
  },
});

const onPlan = formula({
  id: "actions.dead.on-plan",
  text: "D = D_s * sqrt(1 + s^2)",
  source: "geometry: the sloped surface is larger than its plan",
  symbols: {
    D: { kind: "pressure", meaning: "dead load of the roof on plan" },
    D_s: { kind: "pressure", meaning: "dead load over the surface" },
    s: { kind: "slope", meaning: "roof slope, rise over run", field: "roof.slope" },
  },
});

/** Dead load of the roof on plan, Pa. */
export function deadOnPlan(dead: RoofDead, slope: number, estimate: Estimate, calc: Calc): number {
  if (!("layers" in dead)) return dead[estimate];
  let D_s = 0;
  for (const layer of dead.layers) {
    calc.note(`${layer.name}: ${layer.source}.`);
    const d = layer.thickness === undefined ? layer[estimate] : calc(layerByThickness, { g: layer[estimate], t: layer.thickness });
    D_s = calc(layersTogether, { D_0: D_s, d });
  }
  return calc(onPlan, { D_s, s: slope });
}

const withOwnWeight = formula({
  id: "actions.dead.with-column",
  text: "P_D = P_r + g * H",
  source: "ASCE 7-22 3.1.2; weight of the section by its nominal wall at 490 pcf",
  symbols: {
    P_D: { kind: "force", meaning: "dead load at the column base" },
    P_r: { kind: "force", meaning: "share of the roof's dead load" },
    g: { kind: "lineLoad", meaning: "weight of the column per length", field: "columns.*.section" },
    H: { kind: "distance", meaning: "column height", field: "columns.*.height" },
  },
});

/** The roof's dead load, N, with `dead` in Pa on plan. */
export function deadLoad(roof: RoofPlane, dead: number, calc: Calc): RoofLoad {
  const W_D = calc(roofWeight, { D: dead, l: roof.length, w: roof.width });
  return { ...middleOf(roof, calc), Fx: 0, Fy: 0, Fz: -W_D, over: { x1: 0, x2: roof.length, y1: 0, y2: roof.width } };
}

/** Forces at a column base with the column's own weight in them; `weight` N/m, `height` m. */
export const addOwnWeight = (base: Forces, weight: number, height: number, calc: Calc): Forces => ({
  ...base,
  P: calc(withOwnWeight, { P_r: base.P, g: weight, H: height }),
});

const isOneNumber = (dead: RoofDead): boolean => ("layers" in dead ? dead.layers.every(({ light, heavy }) => light === heavy) : dead.light === dead.heavy);

/** The cases of dead load: one, or a light and a heavy estimate of the roof. The columns' own weight is the same in both. */
export function deadCases(plane: RoofPlane, dead: RoofDead, posts: readonly RoofPost[]): readonly RoofCase[] {
  const of = (estimate: Estimate, loadCase: LoadCase): RoofCase => ({
    loadCase,
    source: deadSource,
    loads: (calc) => [deadLoad(plane, deadOnPlan(dead, plane.slope, estimate, calc), calc)],
    finish: (reactions, calc) => reactions.map((one, i) => ({ ...one, base: addOwnWeight(one.base, posts[i].section.weight, posts[i].height, calc) })),
  });
  if (isOneNumber(dead)) return [of("heavy", { id: "dead", type: "D", title: "dead load" })];
  return (["light", "heavy"] as const).map((estimate) => of(estimate, { id: `dead/${estimate}`, type: "D", title: `${estimate} dead load`, estimate }));
}
