/** Dead load: the roof's on its plan area, at its middle; each column's own weight at its base. */
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import type { Forces } from "../mechanics/forces.js";
import type { RoofLoad } from "../mechanics/rigid-roof.js";
import type { LoadCase } from "./demand.js";
import { middleOf, type RoofPlane } from "./roof-plane.js";

export const deadSource = "ASCE 7-22 3.1; the roof's dead load is uniform on plan, so its resultant is at the middle";

export const deadCase: LoadCase = { id: "dead", type: "D", title: "dead load" };

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
  return { ...middleOf(roof, calc), Fx: 0, Fy: 0, Fz: -W_D };
}

/** Forces at a column base with the column's own weight in them; `weight` N/m, `height` m. */
export const addOwnWeight = (base: Forces, weight: number, height: number, calc: Calc): Forces => ({
  ...base,
  P: calc(withOwnWeight, { P_r: base.P, g: weight, H: height }),
});
