/**
 * Forces at the underside of the strip footing, in each situation of its fill. The same wind is looked at with the soil behind the wall, as it will
 * stand, and without it, as before backfilling or after it has been dug away; toward the soil and away from it comes with the wind cases.
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { momentX, momentY } from "../pier/grade-forces.js";
import { calculatedOnce } from "../once.js";
import { heelPlane, type Soil, type WallBody, type Weights, weightsOf } from "./body.js";
import { beyondHeel, downDrag, type EarthInputs, earthOf, pushAbove } from "./earth.js";
import { pushWithQuake, quakeOn, shakingFormulas, turnWithQuake } from "./shaking.js";

const range = [-1e5, 1e5] as const;
const axial = { kind: "force", meaning: "axial force at the column base, compression positive", range } as const;
const across = { kind: "force", meaning: "push of the post across the wall, away from the fill positive", range } as const;
const along = { kind: "force", meaning: "push of the post along the wall", range } as const;
const momentAcross = { kind: "moment", meaning: "moment of the post at the underside, across the wall, away from the fill positive", range } as const;
const momentAlong = { kind: "moment", meaning: "moment of the post at the underside, along the wall", range } as const;
const run = { kind: "distance", meaning: "length of wall that acts with the post" } as const;
const width = { kind: "length", meaning: "width of the strip footing", field: "foundations.*.footing.width" } as const;
export const direction = (axis: string) => ({ kind: "ratio", meaning: `${axis} part of the direction away from the fill`, range: [-1, 1] }) as const;
export const alongDirection = (axis: string) => ({ kind: "ratio", meaning: `${axis} part of the direction of the wall`, range: [0, 1] }) as const;

export const wallArm = formula({
  id: "wall.arm",
  text: "a = h + t_f + t_g + t_p",
  source: "geometry",
  symbols: {
    a: { kind: "length", meaning: "height of the column base above the underside" },
    h: { kind: "distance", meaning: "height of the wall above its footing", field: "foundations.*.height" },
    t_f: { kind: "length", meaning: "thickness of the strip footing", field: "foundations.*.footing.thickness" },
    t_g: { kind: "length", meaning: "thickness of the grout", field: "bases.*.grout" },
    t_p: { kind: "length", meaning: "thickness of the base plate", field: "bases.*.plate.thickness" },
  },
});

const V = { V_x: { kind: "force", meaning: "shear at the column base toward the east", range }, V_y: { kind: "force", meaning: "shear at the column base toward the north", range } } as const;
const M = { M_x: { kind: "moment", meaning: "moment about the east axis at the underside", range }, M_y: { kind: "moment", meaning: "moment about the north axis at the underside", range } } as const;

export const pushAcross = formula({
  id: "wall.push-across",
  text: "V_n = n_x * V_x + n_y * V_y",
  source: "statics",
  symbols: { V_n: across, n_x: direction("east"), n_y: direction("north"), ...V },
});

export const pushAlong = formula({
  id: "wall.push-along",
  text: "V_l = l_x * V_x + l_y * V_y",
  source: "statics",
  symbols: { V_l: along, l_x: alongDirection("east"), l_y: alongDirection("north"), ...V },
});

export const turnAcross = formula({
  id: "wall.turn-across",
  text: "M_n = n_x * M_y - n_y * M_x",
  source: "statics",
  symbols: { M_n: momentAcross, n_x: direction("east"), n_y: direction("north"), ...M },
});

export const turnAlong = formula({
  id: "wall.turn-along",
  text: "M_l = l_x * M_y - l_y * M_x - P * e_r",
  source: "statics: about the middle of the length that acts with the post",
  symbols: { M_l: momentAlong, l_x: alongDirection("east"), l_y: alongDirection("north"), ...M, P: axial, e_r: { kind: "distance", meaning: "from the post to the middle of that length", range: [-3, 3] } },
});

export const postFromToe = formula({
  id: "wall.post-from-toe",
  text: "x_p = b_t + t_w / 2",
  source: "geometry: the post on the middle of the wall's thickness",
  symbols: { x_p: { kind: "length", meaning: "from the edge of the toe to the post" }, b_t: { kind: "length", meaning: "toe of the strip footing", field: "foundations.*.footing.toe" }, t_w: { kind: "length", meaning: "thickness of the wall", field: "foundations.*.thickness" } },
});

export const waterInPlane = formula({
  id: "wall.water-in-plane",
  text: "z_w = H - h_w",
  source: "geometry",
  symbols: { z_w: { kind: "distance", meaning: "depth of the water below the ground at that plane", range: [0, 8] }, H: { kind: "distance", meaning: "height of the plane the soil presses on" }, h_w: { kind: "distance", meaning: "height of the water above the underside" } },
});

export const overRun = formula({
  id: "wall.push-over-run",
  text: "H_e = V_e * L_r",
  source: "statics",
  symbols: { H_e: { kind: "force", meaning: "push of soil, load and water on the length that acts with the post" }, V_e: { kind: "lineLoad", meaning: "push of soil, load and water, per length of wall" }, L_r: run },
});

export const momentOverRun = formula({
  id: "wall.moment-over-run",
  text: "M_H = M_e * L_r",
  source: "statics",
  symbols: { M_H: { kind: "moment", meaning: "moment of that push about the underside" }, M_e: { kind: "momentPerLength", meaning: "moment of soil, load and water, per length of wall" }, L_r: run },
});

export const dragOverRun = formula({
  id: "wall.drag-over-run",
  text: "P_e = P_v * L_r",
  source: "statics",
  symbols: { P_e: { kind: "force", meaning: "vertical part of the soil's push, at the end of the heel" }, P_v: { kind: "lineLoad", meaning: "vertical part of the soil's push, per length of wall" }, L_r: run },
});

export const waterLift = formula({
  id: "wall.water-lift",
  text: "U = gamma_w * (h_wt + h_wh) / 2 * B * L_r",
  source: "hydrostatic pressure, growing in a straight line from toe to heel; common practice, no source",
  symbols: { U: { kind: "force", meaning: "lift of the water below the footing" }, h_wt: { kind: "distance", meaning: "height of the water above the underside at the toe" }, h_wh: { kind: "distance", meaning: "height of the water above the underside at the heel" }, B: width, L_r: run },
  constants: { gamma_w: "62.4 lbf/ft^3" },
});

export const waterTurn = formula({
  id: "wall.water-turn",
  text: "M_U = gamma_w * (h_wt / 6 + h_wh / 3) * B^2 * L_r",
  source: "statics about the edge of the toe",
  symbols: { M_U: { kind: "moment", meaning: "moment of the water's lift about the edge of the toe" }, h_wt: { kind: "distance", meaning: "height of the water above the underside at the toe" }, h_wh: { kind: "distance", meaning: "height of the water above the underside at the heel" }, B: width, L_r: run },
  constants: { gamma_w: "62.4 lbf/ft^3" },
});

/** What the fill does to the length that acts with the post; zero where there is none. N and N·m, without load factor. */
export interface Fill {
  readonly push: number;
  readonly moment: number;
  readonly drag: number;
}

const noFill: Fill = { push: 0, moment: 0, drag: 0 };

const fillOf = calculatedOnce((body: WallBody, calc: Calc): Fill => {
  if (!body.earth) return noFill;
  const fill = beyondHeel(body.earth, body.heel, calc);
  const earth = earthOf(fill, calc);
  const H = calc(heelPlane, { h_h: body.high, t_f: body.base, m: fill.slope, b_h: body.heel });
  const z_w = fill.water === undefined ? H : calc(waterInPlane, { H, h_w: body.highWater });
  const { shear, moment, soil } = pushAbove(earth, H, z_w, calc);
  const L_r = body.run;
  const push = calc(overRun, { V_e: shear, L_r });
  const M_H = calc(momentOverRun, { M_e: moment, L_r });
  if (!(earth.K_v > 0)) return { push, moment: M_H, drag: 0 };
  return { push, moment: M_H, drag: calc(dragOverRun, { P_v: calc(downDrag, { V_s: soil, K_v: earth.K_v, K_h: earth.K_h }), L_r }) };
});

/** Forces of the post at the underside. */
export interface Post {
  readonly P: number;
  readonly across: number;
  readonly along: number;
  readonly turn: number;
  readonly turnAlong: number;
}

const outward = { north: [0, -1], south: [0, 1], east: [-1, 0], west: [1, 0] } as const;
const noPost: Post = { P: 0, across: 0, along: 0, turn: 0, turnAlong: 0 };

export function postAt(body: WallBody, { base }: Demand, calc: Calc): Post {
  const a = calc(wallArm, { h: body.height, t_f: body.base, t_g: body.grout, t_p: body.plate });
  const M_x = calc(momentX, { M_xb: base.Mx, V_y: base.Vy, a });
  const M_y = calc(momentY, { M_yb: base.My, V_x: base.Vx, a });
  const [n_x, n_y] = outward[body.fillSide];
  const [l_x, l_y] = n_x === 0 ? [1, 0] : [0, 1];
  const shears = { V_x: base.Vx, V_y: base.Vy };
  return {
    P: base.P,
    across: calc(pushAcross, { n_x, n_y, ...shears }),
    along: calc(pushAlong, { l_x, l_y, ...shears }),
    turn: calc(turnAcross, { n_x, n_y, M_x, M_y }),
    turnAlong: calc(turnAlong, { l_x, l_y, M_x, M_y, P: base.P, e_r: body.offset }),
  };
}

/** One state of the fill, with the post or for the wall away from it. */
export interface Situation {
  readonly words: string;
  readonly hasFill: boolean;
  readonly hasPost: boolean;
  readonly soil: Soil;
  /** Factor of an earthquake that shakes the fill; left out where none does. */
  readonly quake?: number;
}

/** The situations of a wall: one where it holds nothing back. */
export const situationsOf = (body: WallBody): readonly Situation[] => (body.earth ? retaining : free);

const free: readonly Situation[] = [{ words: "", hasFill: false, hasPost: true, soil: "holds without the fill" }];

const retaining: readonly Situation[] = [
  { words: "with the fill behind the wall", hasFill: true, hasPost: true, soil: "holds with the fill" },
  { words: "without the fill", hasFill: false, hasPost: true, soil: "holds without the fill" },
  { words: "with the fill, on a length of wall without a post", hasFill: true, hasPost: false, soil: "holds with the fill" },
];

/** The fill shaken by an earthquake of that factor, with the post and away from it. */
export const shakenSituations = (quake: number): readonly Situation[] => [
  { words: "with the fill behind the wall, which the earthquake shakes outward", hasFill: true, hasPost: true, soil: "holds with the fill", quake },
  { words: "with the fill, which the earthquake shakes outward, on a length of wall without a post", hasFill: true, hasPost: false, soil: "holds with the fill", quake },
];

function withQuake(body: WallBody, post: Post, f_E: number, calc: Calc): Post {
  const { earth } = body;
  if (!earth) return post;
  const { P_q, M_q, F_i, M_i } = quakeOn(body as WallBody & { earth: EarthInputs }, calc);
  return { ...post, across: calc(pushWithQuake, { V_n: post.across, f_E, P_q, F_i }), turn: calc(turnWithQuake, { M_n: post.turn, f_E, M_q, M_i }) };
}

export interface Acting {
  readonly post: Post;
  readonly fill: Fill;
  readonly weights: Weights;
  /** Lift of the water and its moment about the edge of the toe. */
  readonly lift: number;
  readonly liftTurn: number;
}

/** Everything that acts in one situation, without load factor but for the post's forces, which carry those of the combination. */
export function actingIn(body: WallBody, situation: Situation, post: Post, soil: Soil, calc: Calc): Acting {
  const hasWater = body.lowWater > 0 || (situation.hasFill && body.highWater > 0);
  const water = { h_wt: body.lowWater, h_wh: situation.hasFill ? body.highWater : body.lowWater, B: body.width, L_r: body.run };
  const forces = situation.hasPost ? post : noPost;
  return {
    post: situation.quake === undefined ? forces : withQuake(body, forces, situation.quake, calc),
    fill: situation.hasFill ? fillOf(body, calc) : noFill,
    weights: weightsOf(body, soil, calc),
    lift: hasWater ? calc(waterLift, water) : 0,
    liftTurn: hasWater ? calc(waterTurn, water) : 0,
  };
}

/** The governing situation in words, for a remark. */
export function governs(body: WallBody, { words, hasPost }: Situation, { turn }: Post): string {
  if (!body.earth) return "";
  const wind = !hasPost || turn === 0 ? "" : turn > 0 ? ", the post pushed away from the fill" : ", the post pushed toward the fill";
  return `Governs: ${words}${wind}.`;
}

export const situationFormulas = [wallArm, momentX, momentY, pushAcross, pushAlong, turnAcross, turnAlong, postFromToe, heelPlane, waterInPlane, overRun, momentOverRun, downDrag, dragOverRun, waterLift, waterTurn, ...shakingFormulas] as const;
