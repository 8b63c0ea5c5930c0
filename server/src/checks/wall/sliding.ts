/**
 * The wall slides on its footing's underside, pushed by the soil behind it and by its post. In the field the foot of the wall has moved out and soil is
 * heaped before it.
 *
 * IBC 2021 1807.2.3: what the ground below and before the footing holds, over 1.5, against the push across the wall; with reduced dead load it has to
 * hold (ASCE 7-22 2.4.1). Friction by the coefficient of Table 1806.2 or by two thirds of the ground's friction angle and cohesion.
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import type { Support } from "../../project/model.js";
import { check, type Gather, unchecked, weigh } from "../contract.js";
import { restingDead } from "../footing/sliding.js";
import { dowelPullFormulas } from "../rock/dowel-force.js";
import { pinFormulas, type Pins, pinsHold, readPins, secondToFriction } from "../rock/pins.js";
import { weightFormulas } from "./body.js";
import { earthFormulas } from "./earth.js";
import { type Before, beforeOf, gripFormulas, gripOf, readBefore, readWallGrip, type WallGrip } from "./grip.js";
import { openWall } from "./opening.js";
import { isBesideRock } from "./overturning.js";
import { earthFactor, readStability, safetyOf, type StabilityInputs } from "./safety.js";
import { actingIn, governs, type Post, type Situation, situationFormulas } from "./situations.js";
import { contactOf, resultantOf, undersideFormulas } from "./underside.js";
import { type Tried, worstOf } from "./worst.js";

const range = [-1e5, 1e5] as const;

export const netPush = formula({
  id: "wall.net-push",
  text: "V = abs(V_n + f_H * H_e)",
  source: "statics",
  symbols: {
    V: { kind: "force", meaning: "push across the wall" },
    V_n: { kind: "force", meaning: "push of the post across the wall, away from the fill positive", range },
    f_H: { kind: "ratio", meaning: "factor of the earth pressure" },
    H_e: { kind: "force", meaning: "push of soil, load and water on the length that acts with the post" },
  },
});

export const leftAcross = formula({
  id: "wall.grip-left",
  text: "R_n = sqrt(max(R_f^2 - V_l^2, 0 * R_f^2))",
  source: "statics: what the push along the wall leaves of the friction",
  symbols: { R_n: { kind: "force", meaning: "friction left against the push across the wall" }, R_f: { kind: "force", meaning: "friction and adhesion along the underside, over its factor of safety" }, V_l: { kind: "force", meaning: "push of the post along the wall", range } },
});

export const gripSafely = formula({
  id: "wall.grip-safely",
  text: "R_s = R_f / FS",
  source: "IBC 2021 1807.2.3",
  symbols: { R_s: { kind: "force", meaning: "resistance over its factor of safety" }, R_f: { kind: "force", meaning: "resistance" }, FS: { kind: "number", meaning: "factor of safety" } },
});

export const gripTogether = formula({
  id: "wall.grip-together",
  text: "R = R_n + R_s",
  source: "IBC 2021 1806.3.1: lateral bearing and sliding resistance may be combined",
  symbols: { R: { kind: "force", meaning: "resistance to sliding" }, R_n: { kind: "force", meaning: "friction left against the push across the wall" }, R_s: { kind: "force", meaning: "what the ground before the wall holds, over its factor of safety" } },
});

export const gripWithPins = formula({
  id: "wall.grip-with-pins",
  text: "R_g = R_s + R_d",
  source: "dowels besides friction by practice; each with its own safety",
  symbols: { R_g: { kind: "force", meaning: "friction and dowels, allowable" }, R_s: { kind: "force", meaning: "friction over its factor of safety" }, R_d: { kind: "force", meaning: "allowable shear of the dowels as pins" } },
});

export const sizeOf = formula({
  id: "wall.push-size",
  text: "V = abs(V_l)",
  source: "arithmetic",
  symbols: { V: { kind: "force", meaning: "push along the wall" }, V_l: { kind: "force", meaning: "push of the post along the wall", range } },
});

export interface WallSlidingInputs extends StabilityInputs {
  readonly grip: WallGrip;
  readonly before: Before;
  readonly ignored: number;
  /** Dowels into rock below the footing. */
  readonly pins: Pins | undefined;
}

export function readSliding(support: Support, gather: Gather, place: number): WallSlidingInputs {
  const body = readStability(support, gather, place);
  return { ...body, grip: readWallGrip(support, gather), before: readBefore(support, gather, body), ignored: gather.may(support.foundation?.fields["ignored depth"]) ?? 0, pins: support.ground?.fields.kind?.value === "rock" ? readPins(support, gather, place) : undefined };
}

/** Strengths of the ground are ultimate: they take the factor of 1.5 wherever they are used. */
const onStrength = 1.5;

function slides(inputs: WallSlidingInputs, situation: Situation, post: Post, f_D: number, R_d: number, demand: Demand, calc: Calc): Pair {
  const acting = actingIn(inputs, situation, post, situation.soil, calc);
  const { adds, resists } = earthFactor.allowable;
  const { across: V_n, along: V_l, P } = acting.post;
  const H_e = acting.fill.push;
  // A push toward the fill is looked at with the pressure that is sure to be there.
  const isBack = V_n < 0 && situation.hasFill && netPush.value({ V_n, f_H: resists, H_e }) > netPush.value({ V_n, f_H: adds, H_e });
  const { factor: FS, note } = safetyOf(inputs, situation.hasFill && !isBack, f_D, demand);
  if (note !== "") calc.note(note);
  const V = calc(netPush, { V_n, f_H: isBack ? resists : adds, H_e });
  const result = resultantOf(inputs, acting, { f_D, f_H: adds, f_v: Math.min(f_D, 1) }, false, calc);
  const P_D = situation.hasPost ? (demand.dead ?? 0) : 0;
  const N_D = calc(restingDead, { N: result.N, P_D: demand.dead === undefined && P < 0 ? 0 : P_D, f_D, W_c: acting.weights.total, W_s: 0 });
  const needsContact = inputs.grip.by === "strength" ? inputs.grip.cohesion > 0 : inputs.grip.grip.by === "cohesion";
  const pressure = needsContact && result.N > 0 ? contactOf(inputs, result, calc) : undefined;
  const r_c = pressure === undefined ? 1 : "unstable" in pressure ? 0 : pressure.contactRatio;
  const R_f = gripOf(inputs.grip, inputs, { N: result.N, N_D, r_c }, calc);
  const rubs = calc(gripSafely, { R_f, FS: inputs.grip.by === "strength" ? Math.max(FS, onStrength) : FS });
  if (R_d > 0) calc.note(secondToFriction(result.N));
  const held = R_d > 0 ? calc(gripWithPins, { R_s: rubs, R_d }) : rubs;
  // Toward the side of a fill that is not there yet nothing stands before the footing; a wall that holds none back has its ground on both sides.
  const before = acting.post.across < 0 && inputs.earth && !situation.hasFill ? 0 : beforeOf(inputs.before, inputs, calc);
  const R_s = calc(gripSafely, { R_f: before, FS: inputs.before?.by === "passive" ? Math.max(FS, onStrength) : FS });
  const R_n = calc(leftAcross, { R_f: held, V_l });
  const across = { demand: V, capacity: calc(gripTogether, { R_n, R_s }) };
  return V_l === 0 ? across : worseOf(across, { demand: calc(sizeOf, { V_l }), capacity: held });
}

export const wallSliding = check({
  id: "wall.sliding",
  title: "Sliding of the wall",
  link: "wall",
  level: "allowable",
  clause: "IBC 2021 1807.2.3, 1806.3",
  fails: "The soil behind the wall and its post push harder than the ground below and before the footing holds.",
  seen: "A wall whose foot has moved out, with soil heaped before it.",
  range:
    "The length of wall that acts with one post, and a length without a post where soil is held back; with the fill, and without it. By a coefficient only dead load gives friction, uplift taken off. The soil before the wall counts where it is compacted and tested, from the ignored depth down, and only on the lower side; a key counts besides, into ground that has not been dug. The push along the wall takes its part of the friction; the ends of the wall press on nothing. Dowels into rock count as pins in shear besides friction, less what they pull, where they go deep enough to be pins; the rock crushed beside them is left out, and so is the slope of the rock.",
  formulas: [...situationFormulas, ...weightFormulas, ...earthFormulas, ...undersideFormulas, restingDead, ...gripFormulas, ...dowelPullFormulas, ...pinFormulas, netPush, gripSafely, gripWithPins, leftAcross, gripTogether, sizeOf],
  applies: isBesideRock,
  inputs: readSliding,
  fixedBy: (support) => support.foundation?.fields.footing ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const opened = openWall(inputs, demand, calc);
    if ("because" in opened) return unchecked(opened.because);
    const { f_D, post, situations } = opened;
    const R_d = pinsHold(inputs.pins, demand, calc);
    const tried = situations.map((situation): Tried => (c) => {
      const governing = governs(inputs, situation, post);
      if (governing !== "") c.note(governing);
      return slides(inputs, situation, post, f_D, R_d, demand, c);
    });
    const found = worstOf(tried, calc);
    return weigh(found.demand, found.capacity, "force");
  },
  advise: (inputs, outcome, say) =>
    `${say.show(outcome.demand, "force")} pushes ${say.show(inputs.run, "distance")} of the wall; ${say.show(outcome.capacity, "force")} holds it. Widen the footing${inputs.keyDepth > 0 ? "" : ", put a key below it"}${inputs.pins ? ", or add dowels as pins" : inputs.isSoilCounted ? "" : ", or compact and test the soil before it"}.`,
});
