/**
 * Earthquake on the roof: its weight, with that of the columns and a part of the snow, pushed sideways at the middle of the roof in
 * either sense along both plan axes; and the vertical part, a share of the dead load, as a case of its own. In categories C to F the push
 * goes with 30 % of it across and is moved by 5 % of the plan size; in category B neither is asked for. No overturning is reduced.
 */
import { snowThatShakes } from "../../catalog/snow.js";
import { plainCalc } from "../../formula/calc.js";
import type { SeismicCategory } from "../../catalog/seismic-systems.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { RoofLoad } from "../../mechanics/rigid-roof.js";
import { addedDead } from "../added.js";
import { deadOnPlan } from "../dead.js";
import type { Edge } from "../demand.js";
import { uniformLoad } from "../gravity/vertical.js";
import type { RoofCase } from "../roof-case.js";
import type { RoofInputs } from "../roof-inputs.js";
import { edges, extents, inward, middleOf, oppositeEdge, type RoofPlane } from "../roof-plane.js";
import { flatSnow } from "../snow/editions.js";
import { earthquakeOn, verticalFactor, type SeismicSite } from "./coefficient.js";

export interface SeismicInputs {
  readonly site: SeismicSite;
  readonly category: Exclude<SeismicCategory, "A">;
}

const g = { kind: "lineLoad", meaning: "weight of the column per length", field: "columns.*.section" } as const;
const H = { kind: "distance", meaning: "column height", field: "columns.*.height" } as const;

const columnsTogether = formula({
  id: "seismic.columns",
  text: "W_c = W_0 + g * H",
  source: "ASCE 7-16 12.7.2; whole columns, on the safe side",
  symbols: { W_c: { kind: "force", meaning: "weight of the columns with this one" }, W_0: { kind: "force", meaning: "weight of the columns before", range: [0, 1e5] }, g, H },
});

export const effectiveWeight = formula({
  id: "seismic.weight",
  text: "W = (D + f_s * p_f) * l * w + W_c",
  source: "ASCE 7-16 12.7.2: 20 % of flat snow above 30 psf, in ASCE 7-22 15 % above 45 psf",
  symbols: {
    W: { kind: "force", meaning: "effective seismic weight" },
    D: { kind: "pressure", meaning: "dead load of the roof on plan" },
    f_s: { kind: "ratio", meaning: "part of the snow that shakes with the roof" },
    p_f: { kind: "pressure", meaning: "flat roof snow load" },
    l: { kind: "distance", meaning: "length of the roof in plan", field: "roof.length" },
    w: { kind: "distance", meaning: "width of the roof in plan", field: "roof.width" },
    W_c: { kind: "force", meaning: "weight of the columns" },
  },
});

const push = formula({
  id: "seismic.push",
  text: "F = k * E_h",
  source: "ASCE 7-16 12.5: 100 % along one axis, 30 % along the other where asked for",
  symbols: {
    F: { kind: "force", meaning: "push along a plan axis" },
    k: { kind: "ratio", meaning: "part and sense of the push", range: [-1, 1] },
    E_h: { kind: "force", meaning: "sideways earthquake load" },
  },
});

const accidental = formula({
  id: "seismic.accidental",
  text: "t = m + k * 0.05 * B",
  source: "ASCE 7-16 12.8.4.2",
  symbols: {
    t: { kind: "distance", meaning: "place of the push across its way" },
    m: { kind: "distance", meaning: "middle of the roof" },
    k: { kind: "ratio", meaning: "side the weight is moved to, 1 or -1", range: [-1, 1] },
    B: { kind: "distance", meaning: "plan size of the roof across the push" },
  },
});

const verticalPressure = formula({
  id: "seismic.vertical-pressure",
  text: "p_v = f_v * D",
  source: "ASCE 7-16 Eq. 12.4-4a",
  symbols: {
    p_v: { kind: "pressure", meaning: "vertical earthquake load of the roof" },
    f_v: { kind: "ratio", meaning: "vertical earthquake load as a part of the dead load" },
    D: { kind: "pressure", meaning: "dead load of the roof on plan" },
  },
});

const verticalOfColumn = formula({
  id: "seismic.vertical-column",
  text: "P_v = P_r + f_v * g * H",
  source: "ASCE 7-16 Eq. 12.4-4a",
  symbols: {
    P_v: { kind: "force", meaning: "vertical earthquake load at the column base" },
    P_r: { kind: "force", meaning: "share of the roof's" },
    f_v: { kind: "ratio", meaning: "vertical earthquake load as a part of the dead load" },
    g,
    H,
  },
});

const withAdded = formula({
  id: "seismic.added",
  text: "W_c = W_0 + max(F_v, 0)",
  source: "ASCE 7-16 12.7.2: dead loads added to the roof's",
  symbols: { W_c: { kind: "force", meaning: "weight with this load" }, W_0: { kind: "force", meaning: "weight before", range: [0, 1e5] }, F_v: { kind: "force", meaning: "dead load as added, down" } },
});

/** Weight of the columns and of dead loads added to the roof's, N. */
export function weightBeside({ plane, posts, added }: Pick<RoofInputs, "plane" | "posts" | "added">, calc: Calc): number {
  let W_c = 0;
  for (const { section, height } of posts) W_c = calc(columnsTogether, { W_0: W_c, g: section.weight, H: height });
  for (const F_v of addedDead(added, plane, calc)) W_c = calc(withAdded, { W_0: W_c, F_v });
  return W_c;
}

/** Weight that shakes, N. */
export function seismicWeight(inputs: RoofInputs, site: SeismicSite, calc: Calc): number {
  const { plane, dead, snow } = inputs;
  const W_c = weightBeside(inputs, calc);
  const D = deadOnPlan(dead, plane.slope, "heavy", calc);
  const p_f = snow ? flatSnow(snow.site, calc) : 0;
  const { part, above } = snowThatShakes[site.standard];
  return calc(effectiveWeight, { D, f_s: p_f > above ? part : 0, p_f, l: plane.length, w: plane.width, W_c });
}

/** One push: toward an edge, with a part across and the weight moved aside. */
interface Push {
  readonly id: string;
  readonly title: string;
  readonly toward: Edge;
  readonly across?: { readonly toward: Edge; readonly aside: Edge };
}

const sidesOf = (toward: Edge): readonly Edge[] => (toward === "north" || toward === "south" ? ["east", "west"] : ["north", "south"]);

function pushes(category: SeismicInputs["category"]): readonly Push[] {
  if (category === "B") return edges.map((toward) => ({ id: toward, title: `earthquake toward the ${toward}`, toward }));
  return edges.flatMap((toward) =>
    sidesOf(toward).flatMap((other) =>
      sidesOf(toward).map((aside): Push => ({
        id: `${toward}/${other}/${aside}`,
        title: `earthquake toward the ${toward}, 30 % of it toward the ${other}, the weight moved to the ${aside}`,
        toward,
        across: { toward: other, aside },
      })),
    ),
  );
}

/** Unit vector toward an edge. */
export const outward = (edge: Edge) => inward[oppositeEdge[edge]];

function pushLoad(plane: RoofPlane, { toward, across }: Push, E_h: number, calc: Calc): RoofLoad {
  const way = outward(toward);
  const middle = middleOf(plane, calc);
  const main = { Fx: calc(push, { k: way.x, E_h }), Fy: calc(push, { k: way.y, E_h }) };
  if (!across) return { ...middle, ...main, Fz: 0 };
  const small = calc(push, { k: across.toward === "north" || across.toward === "east" ? 0.3 : -0.3, E_h });
  const k = across.aside === "north" || across.aside === "east" ? 1 : -1;
  const t = calc(accidental, { m: way.x === 0 ? middle.x : middle.y, k, B: extents(plane, toward).across });
  return way.x === 0 ? { ...middle, x: t, ...main, Fx: small, Fz: 0 } : { ...middle, y: t, ...main, Fy: small, Fz: 0 };
}

/** The cases of an earthquake, sideways and vertical. */
export function seismicCases(inputs: RoofInputs, { site, category }: SeismicInputs): readonly RoofCase[] {
  const { plane, dead, posts } = inputs;
  const source = `${site.standard} chapter 12, equivalent lateral force; ${site.system.name}, R = ${site.system.R}, ${site.system.source}`;
  const force = (calc: Calc): number => earthquakeOn(seismicWeight(inputs, site, calc), plane.meanHeight, site, calc);
  const known = force(plainCalc);
  const sideways = pushes(category).map(
    (one): RoofCase => ({
      loadCase: { id: `earthquake/${one.id}`, type: "E", title: one.title },
      source,
      loads: (calc) => [pushLoad(plane, one, calc === plainCalc ? known : force(calc), calc)],
    }),
  );
  const vertical: RoofCase = {
    loadCase: { id: "earthquake/vertical", type: "Ev", title: "vertical part of the earthquake" },
    source: `${site.standard} 12.4.2.2`,
    loads: (calc) => {
      const p_v = calc(verticalPressure, { f_v: calc(verticalFactor, { S_DS: site.S_DS }), D: deadOnPlan(dead, plane.slope, "heavy", calc) });
      return [uniformLoad(plane, p_v, calc)];
    },
    finish: (reactions, calc) => {
      const f_v = calc(verticalFactor, { S_DS: site.S_DS });
      return reactions.map((one, i) => ({ ...one, base: { ...one.base, P: calc(verticalOfColumn, { P_r: one.base.P, f_v, g: posts[i].section.weight, H: posts[i].height }) } }));
    },
  };
  return [vertical, ...sideways];
}

/** The part of a dead load that shakes up and down; nothing without an earthquake. */
export const verticalPartOf = (seismic: SeismicInputs | undefined): number => (seismic ? plainCalc(verticalFactor, { S_DS: seismic.site.S_DS }) : 0);
