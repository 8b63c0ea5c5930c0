/**
 * Pull on the dowels of a wall on rock that holds soil back: the soil, the load on it and the water turn the wall with its post, and the dowels answer
 * what the weight does not. Every situation of the fill is looked at, about either edge.
 *
 * Moments about the middle of the underside, then the rows as in `rows.ts`. Where rock cuts the footing short its bars pull T = M/arm this way.
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { weightFormulas } from "../wall/body.js";
import { earthFormulas } from "../wall/earth.js";
import { openWall } from "../wall/opening.js";
import { holdsOnHeel, holdsOnToe, turnsOnHeel, turnsOnToe } from "../wall/overturning.js";
import { earthFactor, type StabilityInputs } from "../wall/safety.js";
import { type Acting, actingIn, postFromToe, situationFormulas } from "../wall/situations.js";

const net = { kind: "force", meaning: "force on the rock, down positive", range: [-1e5, 1e5] } as const;
const turns = { kind: "moment", meaning: "moment that turns the wall over about the edge" } as const;
const holds = { kind: "moment", meaning: "moment that holds the wall about the edge" } as const;

export const netOnRock = formula({
  id: "rock.net-below-fill",
  text: "N = P + f_D * W + min(f_D, 1) * P_e - U",
  source: "statics",
  symbols: {
    N: net,
    P: { kind: "force", meaning: "axial force at the column base, compression positive", range: [-1e5, 1e5] },
    f_D: { kind: "ratio", meaning: "factor of dead load in the combination" },
    W: { kind: "force", meaning: "weight of wall, footing and the soil counted on it" },
    P_e: { kind: "force", meaning: "vertical part of the soil's push, at the end of the heel" },
    U: { kind: "force", meaning: "lift of the water below the footing" },
  },
});

export const aboutMiddle = formula({
  id: "rock.about-middle",
  text: "M_c = max(N * B / 2 - M_r + M_o, 0 * M_o)",
  source: "statics: from the edge to the middle of the underside",
  symbols: { M_c: { kind: "moment", meaning: "moment at the middle of the underside, toward the edge" }, N: net, B: { kind: "length", meaning: "width of the strip footing", field: "foundations.*.footing.width" }, M_r: holds, M_o: turns },
});

export interface AtMiddle {
  readonly N: number;
  readonly M_c: number;
}

function aboutEdge(edge: "toe" | "heel", inputs: StabilityInputs, acting: Acting, f_D: number, adds: number, resists: number, calc: Calc): AtMiddle {
  const { width: B } = inputs;
  const { post: { P, turn: M_n }, fill, weights, lift: U, liftTurn: M_U } = acting;
  const x_p = calc(postFromToe, { b_t: inputs.toe, t_w: inputs.thickness });
  const M_o = edge === "toe" ? calc(turnsOnToe, { f_H: adds, M_H: fill.moment, M_n, P, x_p, M_U }) : calc(turnsOnHeel, { f_H: resists, M_H: fill.moment, M_n, P, B, x_p, U, M_U });
  const M_r = edge === "toe" ? calc(holdsOnToe, { f_D, M_W: weights.moment, P, x_p, P_e: fill.drag, B }) : calc(holdsOnHeel, { f_D, W: weights.total, B, M_W: weights.moment, P, x_p });
  const N = calc(netOnRock, { P, f_D, W: weights.total, P_e: fill.drag, U });
  return { N, M_c: calc(aboutMiddle, { N, B, M_r, M_o }) };
}

/** The largest pull over all situations of the fill, by what `pullOf` finds for each of them; or why it cannot be told. */
export function retainingPull(inputs: StabilityInputs, demand: Demand, pullOf: (at: AtMiddle) => number, calc: Calc): { readonly pull: number } | { readonly because: string } {
  const opened = openWall(inputs, demand, calc);
  if ("because" in opened) return opened;
  const { f_D, post, situations } = opened;
  const { adds, resists } = earthFactor[demand.level === "strength" ? "strength" : "allowable"];
  let pull = 0;
  for (const situation of situations) {
    const acting = actingIn(inputs, situation, post, situation.soil, calc);
    for (const edge of ["toe", "heel"] as const) pull = Math.max(pull, pullOf(aboutEdge(edge, inputs, acting, f_D, adds, resists, calc)));
  }
  return { pull };
}

export const retainingFormulas = [...situationFormulas, ...weightFormulas, ...earthFormulas, turnsOnToe, holdsOnToe, turnsOnHeel, holdsOnHeel, netOnRock, aboutMiddle] as const;
