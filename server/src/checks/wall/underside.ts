/** Resultant at the middle of the strip footing in one situation, and the pressure it makes. */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { footingContact, type FootingPressure } from "../../mechanics/partial-contact.js";
import type { Unstable } from "../../mechanics/plate-contact.js";
import type { WallBody } from "./body.js";
import { type Acting, postFromToe } from "./situations.js";

const range = [-1e5, 1e5] as const;
const vertical = { kind: "force", meaning: "vertical force on the ground, down positive", range } as const;
const axial = { kind: "force", meaning: "axial force at the column base, compression positive", range } as const;
const width = { kind: "length", meaning: "width of the strip footing", field: "foundations.*.footing.width" } as const;
const dead = { kind: "ratio", meaning: "factor of dead load in the combination" } as const;
const earth = { kind: "ratio", meaning: "factor of the earth pressure" } as const;
const drag = { kind: "force", meaning: "vertical part of the soil's push, at the end of the heel" } as const;
const load = { kind: "force", meaning: "load on the ground above the heel" } as const;
const heel = { kind: "length", meaning: "heel of the strip footing", field: "foundations.*.footing.heel" } as const;
const weight = { kind: "force", meaning: "weight of wall, footing and the soil counted on it" } as const;
const lift = { kind: "force", meaning: "lift of the water below the footing" } as const;

export const netDown = formula({
  id: "wall.net-down",
  text: "N = P + f_D * W + f_v * P_e + f_H * Q - U",
  source: "statics",
  symbols: { N: vertical, P: axial, f_D: dead, W: weight, f_v: { ...earth, meaning: "factor of the vertical part of the earth pressure" }, P_e: drag, f_H: earth, Q: load, U: lift },
});

export const netTurn = formula({
  id: "wall.net-turn",
  text: "M_c = M_n + P * (B / 2 - x_p) + f_D * (W * B / 2 - M_W) + f_H * M_H - f_v * P_e * B / 2 - f_H * Q * (B - b_h) / 2 + M_U - U * B / 2",
  source: "statics about the middle of the footing",
  symbols: {
    M_c: { kind: "moment", meaning: "moment about the middle of the footing, toward the toe positive", range },
    M_n: { kind: "moment", meaning: "moment of the post at the underside, across the wall, away from the fill positive", range },
    P: axial,
    B: width,
    x_p: { kind: "length", meaning: "from the edge of the toe to the post" },
    f_D: dead,
    W: weight,
    M_W: { kind: "moment", meaning: "moment of the weights about the edge of the toe" },
    f_H: earth,
    M_H: { kind: "moment", meaning: "moment of soil, load and water about the underside" },
    f_v: { ...earth, meaning: "factor of the vertical part of the earth pressure" },
    P_e: drag,
    Q: load,
    b_h: heel,
    M_U: { kind: "moment", meaning: "moment of the water's lift about the edge of the toe" },
    U: lift,
  },
});

export const loadOnHeel = formula({
  id: "wall.load-on-heel",
  text: "Q = q * b_h * L_r",
  source: "statics",
  symbols: { Q: load, q: { kind: "pressure", meaning: "load on the ground behind the wall", field: "foundations.*.fill.surcharge" }, b_h: heel, L_r: { kind: "distance", meaning: "length of wall that acts with the post" } },
});

export interface Resultant {
  readonly N: number;
  /** About the middle of the footing, toward the toe positive, N·m. */
  readonly M_c: number;
  /** About the middle of the length that acts with the post, N·m. */
  readonly M_l: number;
}

/** Factors on what the notebook's combinations do not carry: own weight, earth pressure and its vertical part. */
export interface Factors {
  readonly f_D: number;
  readonly f_H: number;
  readonly f_v: number;
}

/** `heelLoad`: whether the load on the ground is counted above the heel, where it presses. */
export function resultantOf(body: WallBody, acting: Acting, factors: Factors, heelLoad: boolean, calc: Calc): Resultant {
  const { post: { P, turn: M_n, turnAlong: M_l }, fill, weights, lift: U, liftTurn: M_U } = acting;
  const { f_D, f_H, f_v } = factors;
  const q = fill.push > 0 && heelLoad ? (body.earth?.surcharge ?? 0) : 0;
  const Q = q > 0 && body.heel > 0 ? calc(loadOnHeel, { q, b_h: body.heel, L_r: body.run }) : 0;
  const x_p = calc(postFromToe, { b_t: body.toe, t_w: body.thickness });
  const N = calc(netDown, { P, f_D, W: weights.total, f_v, P_e: fill.drag, f_H, Q, U });
  const M_c = calc(netTurn, { M_n, P, B: body.width, x_p, f_D, W: weights.total, M_W: weights.moment, f_H, M_H: fill.moment, f_v, P_e: fill.drag, Q, b_h: body.heel, M_U, U });
  return { N, M_c, M_l };
}

/** Pressure on the length that acts with the post: x across it, toward the toe; y along it. */
export const contactOf = (body: WallBody, { N, M_c, M_l }: Resultant, calc: Calc): FootingPressure | Unstable =>
  calc.routine(footingContact, { width: body.width, length: body.run, P: N, Mx: M_l, My: M_c });

export const undersideFormulas = [loadOnHeel, postFromToe, netDown, netTurn] as const;
