/** Concrete and bars of the strip footing, and what bends and shears its toe and heel in one strength combination. */
import type { Demand } from "../../actions/demand.js";
import { findBarGrade } from "../../catalog/materials.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { footingOverhang, type FromBelow, type Overhang } from "../../mechanics/footing-section.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { areaBySpacing } from "../footing/pad.js";
import type { Direction } from "../rock/rows.js";
import { type Soil, weightFormulas } from "./body.js";
import { dowelRowFormulas, heldByDowels, readDowelRows } from "./dowel-rows.js";
import { earthFormulas } from "./earth.js";
import { openWall } from "./opening.js";
import { earthFactor, readStability, type StabilityInputs } from "./safety.js";
import { type Acting, actingIn, type Post, type Situation, situationFormulas } from "./situations.js";
import { contactOf, type Resultant, resultantOf, undersideFormulas } from "./underside.js";

/** Bars across the strip at one face. */
export interface Across {
  readonly diameter: number;
  readonly spacing: number;
  /** Of all the bars in the length that acts with the post, m². */
  readonly area: number;
  readonly d: number;
}

export interface StripInputs extends StabilityInputs {
  readonly edition: string;
  readonly fprime_c: number;
  readonly f_y: number;
  readonly cover: number;
  readonly bottom: Across;
  readonly top: Across | undefined;
  /** Rows of dowels that hold the footing down to rock. */
  readonly rows: Direction | undefined;
}

const thickness = { kind: "length", meaning: "thickness of the strip footing", field: "foundations.*.footing.thickness" } as const;
const deadShare = { kind: "ratio", meaning: "factor of dead load in the combination" } as const;
const run = { kind: "distance", meaning: "length of wall that acts with the post" } as const;
const heel = { kind: "length", meaning: "heel of the strip footing", field: "foundations.*.footing.heel" } as const;
const toe = { kind: "length", meaning: "toe of the strip footing", field: "foundations.*.footing.toe" } as const;
const width = { kind: "length", meaning: "width of the strip footing", field: "foundations.*.footing.width" } as const;
const lowWater = { kind: "distance", meaning: "height of the water above the underside at the toe", range: [0, 1] } as const;
const highWater = { kind: "distance", meaning: "height of the water above the underside at the heel", range: [1, 3] } as const;

export const barDepth = formula({
  id: "wall.strip-depth",
  text: "d = t_f - c_c - d_b / 2",
  source: "geometry: the bars across the wall are the outer ones",
  symbols: { d: { kind: "length", meaning: "effective depth of the bars across" }, t_f: thickness, c_c: { kind: "length", meaning: "clear cover", field: "foundations.*.cover" }, d_b: { kind: "length", meaning: "bar diameter" } },
});

export const faceFromMiddle = formula({
  id: "wall.face-from-middle",
  text: "x_f = B / 2 - b",
  source: "ACI 318-19 Table 13.2.7.1: the face of the concrete wall",
  symbols: { x_f: { kind: "length", meaning: "face of the wall, from the middle of the footing", range: [-1, 1] }, B: width, b: { kind: "length", meaning: "reach of the footing beyond the wall" } },
});

export const downOnToe = formula({
  id: "wall.down-on-toe",
  text: "w = f_D * (gamma_c * t_f + gamma_t * h_t) - gamma_w * (h_wt + (h_wh - h_wt) * b_t / B)",
  source: "statics: footing and soil, less the lift of the water at the face of the wall",
  symbols: {
    w: { kind: "pressure", meaning: "weight on the toe", range: [-1e4, 1e5] },
    f_D: deadShare,
    t_f: thickness,
    gamma_t: { kind: "unitWeight", meaning: "unit weight of the soil on the toe", field: "foundations.*.backfill weight" },
    h_t: { kind: "distance", meaning: "height of the soil on the toe" },
    h_wt: lowWater,
    h_wh: highWater,
    b_t: toe,
    B: width,
  },
  constants: { gamma_c: "150 lbf/ft^3", gamma_w: "62.4 lbf/ft^3" },
});

export const downOnHeel = formula({
  id: "wall.down-on-heel",
  text: "w = f_D * (gamma_c * t_f + W_h / (b_h * L_r)) + f_H * q - gamma_w * h_wt",
  source: "statics: footing, soil and the load on it, less the least lift of the water",
  symbols: {
    w: { kind: "pressure", meaning: "weight on the heel", range: [-1e4, 1e5] },
    f_D: deadShare,
    t_f: thickness,
    W_h: { kind: "force", meaning: "weight of the soil on the heel" },
    b_h: heel,
    L_r: run,
    f_H: { kind: "ratio", meaning: "factor of the earth pressure" },
    q: { kind: "pressure", meaning: "load on the ground behind the wall", field: "foundations.*.fill.surcharge" },
    h_wt: lowWater,
  },
  constants: { gamma_c: "150 lbf/ft^3", gamma_w: "62.4 lbf/ft^3" },
});

export const heelTipMoment = formula({
  id: "wall.heel-tip-moment",
  text: "M_x = f_D * W_s * 2 / 3 * b_h + f_H * P_e * b_h",
  source: "statics: the wedge below the slope, and the vertical part of the soil's push at the end of the heel",
  symbols: { M_x: { kind: "moment", meaning: "moment on the heel beside the even load" }, f_D: deadShare, W_s: { kind: "force", meaning: "weight of the wedge of soil below the slope" }, b_h: heel, f_H: { kind: "ratio", meaning: "factor of the earth pressure" }, P_e: { kind: "force", meaning: "vertical part of the soil's push, at the end of the heel" } },
});

export const heelTipShear = formula({
  id: "wall.heel-tip-shear",
  text: "V_x = f_D * W_s + f_H * P_e",
  source: "statics: taken in full at every section of the heel",
  symbols: { V_x: { kind: "force", meaning: "shear on the heel beside the even load" }, f_D: deadShare, W_s: { kind: "force", meaning: "weight of the wedge of soil below the slope" }, f_H: { kind: "ratio", meaning: "factor of the earth pressure" }, P_e: { kind: "force", meaning: "vertical part of the soil's push, at the end of the heel" } },
});

export const lessTip = formula({
  id: "wall.heel-net-moment",
  text: "M = M_1 - M_x",
  source: "statics",
  symbols: { M: { kind: "moment", meaning: "moment of the heel at the face of the wall, tension at the bottom positive", range: [-1e5, 1e5] }, M_1: { kind: "moment", meaning: "moment of pressure and even load", range: [-1e5, 1e5] }, M_x: { kind: "moment", meaning: "moment on the heel beside the even load" } },
});

export const lessTipShear = formula({
  id: "wall.heel-net-shear",
  text: "V = V_1 - V_x",
  source: "statics",
  symbols: { V: { kind: "force", meaning: "shear of the heel, upward positive", range: [-1e5, 1e5] }, V_1: { kind: "force", meaning: "shear of pressure and even load", range: [-1e5, 1e5] }, V_x: { kind: "force", meaning: "shear on the heel beside the even load" } },
});

type BarFields = NonNullable<NonNullable<NonNullable<Support["foundation"]>["fields"]["footing"]>["value"]["bottom bars"]>;

function readAcross(stated: BarFields | undefined, what: string, body: StabilityInputs, c_c: number, gather: Gather): Across {
  const fields = gather.needs(stated, what);
  // Where the bars are missing as a whole, one message says so.
  const bar = fields && gather.needs(fields.bar, `size of the ${what}`);
  const s = fields ? gather.need(fields.spacing, `spacing of the ${what}`) : Number.NaN;
  if (!bar) return { diameter: Number.NaN, spacing: Number.NaN, area: Number.NaN, d: Number.NaN };
  const d = barDepth.value({ t_f: body.base, c_c, d_b: bar.diameter });
  if (d <= 0) gather.block(`the ${what} with their cover do not fit into the thickness of the footing`);
  return { diameter: bar.diameter, spacing: s, area: areaBySpacing.value({ A_b: bar.area, b: body.run, s }), d };
}

export function readStrip(support: Support, gather: Gather, place: number): StripInputs {
  const f = support.foundation?.fields;
  const strip = f?.footing?.value;
  const body = readStability(support, gather, place);
  const cover = gather.need(f?.cover, "clear cover of the bars");
  const grade = findBarGrade(gather.needs(f?.["bar grade"], "grade of the bars") ?? "60");
  return {
    ...body,
    edition: gather.needs(support.codes.concrete, "edition of the concrete standard") ?? "",
    fprime_c: gather.need(f?.concrete, "concrete strength"),
    f_y: "fy" in grade ? grade.fy : Number.NaN,
    cover,
    bottom: readAcross(strip?.["bottom bars"], "bars across the wall at the bottom of its footing (`footing: bottom bars`)", body, cover, gather),
    top: strip?.["top bars"] ? readAcross(strip["top bars"], "bars across the wall at the top of its footing", body, cover, gather) : undefined,
    rows: readDowelRows(support, gather, body),
  };
}

/** What bends or shears a side of the strip, N·m or N: tension at the bottom, and at the top, positive each. */
export interface Bent {
  readonly bottom: number;
  readonly top: number;
}

export interface Sides {
  readonly toe: Bent;
  readonly heel: Bent;
}

/** `down`: what is found at the section that counts where the side is pushed down, if it is another one. */
const split = (value: number, down = value): Bent => ({ bottom: Math.max(value, 0), top: Math.max(-value, -down, 0) });

function pressureFor(inputs: StripInputs, result: Resultant, calc: Calc): FromBelow | { readonly because: string } {
  const held = heldByDowels(inputs, inputs.rows, result, calc);
  if (held && "pressure" in held) return held;
  const pressure = held ?? contactOf(inputs, result, calc);
  return "unstable" in pressure ? { because: `${pressure.unstable} under this factored load, so that no pressure balances it. Widen the footing, or let more of the wall act with the post` } : { pressure };
}

interface Sections {
  readonly toe: number;
  readonly heel: number;
}

/** Moments at the faces of the wall, or shears `d` beyond them and, where `downAt` is given, the downward ones at those sections too; in one situation. */
function inSituation(inputs: StripInputs, situation: Situation, post: Post, f_D: number, at: Sections, downAt: Sections | undefined, part: "moment" | "shear", calc: Calc): Sides | { readonly because: string } {
  const { width: B, run: L_r, base: t_f, earth } = inputs;
  const soil: Soil = f_D < 1 ? situation.soil : situation.hasFill || !earth ? "all" : "all but the fill";
  const acting: Acting = actingIn(inputs, situation, post, soil, calc);
  const { adds } = earthFactor.strength;
  const result = resultantOf(inputs, acting, { f_D, f_H: adds, f_v: Math.min(f_D, 1) }, f_D >= 1, calc);
  if (result.N <= 0 && result.M_c === 0 && result.M_l === 0 && !inputs.rows) return { because: "nothing presses the footing to the ground under this factored load. Make the wall heavier" };
  const below = pressureFor(inputs, result, calc);
  if ("because" in below) return below;
  const counted = soil === "all" || soil === "all but the fill" || inputs.isSoilCounted;
  const h_wh = situation.hasFill ? inputs.highWater : inputs.lowWater;
  const section = (down: number, x: number): Overhang => calc.routine(footingOverhang, { ...below, width: B, length: L_r, down, across: "x", at: x });
  const bothOf = (down: number, side: "toe" | "heel"): readonly [number, number] => {
    const which = side === "toe" ? 1 : 0;
    const far = section(down, at[side])[part][which];
    return [far, downAt ? section(down, downAt[side])[part][which] : far];
  };
  const toe = inputs.toe > 0 ? split(...bothOf(calc(downOnToe, { f_D, t_f, gamma_t: inputs.toeWeight, h_t: counted ? inputs.low : 0, h_wt: inputs.lowWater, h_wh, b_t: inputs.toe, B }), "toe")) : split(0);
  if (!(inputs.heel > 0)) return { toe, heel: split(0) };
  const { heelSoil: W_h, wedge: W_s } = acting.weights;
  const f_H = adds;
  const q = situation.hasFill && earth && f_D >= 1 ? earth.surcharge : 0;
  const [even, evenDown] = bothOf(calc(downOnHeel, { f_D, t_f, W_h, b_h: inputs.heel, L_r, f_H, q, h_wt: inputs.lowWater }), "heel");
  if (!(W_s > 0 || acting.fill.drag > 0)) return { toe, heel: split(even, evenDown) };
  const tip = { f_D, W_s, f_H, P_e: acting.fill.drag };
  if (part === "moment") return { toe, heel: split(calc(lessTip, { M_1: even, M_x: calc(heelTipMoment, { ...tip, b_h: inputs.heel }) })) };
  const V_x = calc(heelTipShear, tip);
  return { toe, heel: split(calc(lessTipShear, { V_1: even, V_x }), calc(lessTipShear, { V_1: evenDown, V_x })) };
}

/** Every situation of one combination, or why it cannot be told. */
export function stripForces(inputs: StripInputs, demand: Demand<"strength">, part: "moment" | "shear", at: Sections, calc: Calc, downAt?: Sections): readonly { readonly situation: Situation; readonly sides: Sides; readonly post: Post }[] | { readonly because: string } {
  const opened = openWall(inputs, demand, calc);
  if ("because" in opened) return opened;
  const { f_D, post, situations } = opened;
  const found = [];
  for (const situation of situations) {
    if (situation.words !== "") calc.note(`Now ${situation.words}.`);
    const sides = inSituation(inputs, situation, post, f_D, at, downAt, part, calc);
    if ("because" in sides) return sides;
    found.push({ situation, sides, post });
  }
  return found;
}

/** Faces of the wall, from the middle of the footing. */
export const facesOf = ({ width: B, toe, heel }: StripInputs, calc: Calc): { readonly toe: number; readonly heel: number } => ({ toe: calc(faceFromMiddle, { B, b: toe }), heel: calc(faceFromMiddle, { B, b: heel }) });

export const stripFormulas = [...situationFormulas, ...weightFormulas, ...earthFormulas, ...undersideFormulas, ...dowelRowFormulas, faceFromMiddle, downOnToe, downOnHeel, heelTipMoment, heelTipShear, lessTip, lessTipShear] as const;
