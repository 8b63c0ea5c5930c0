/**
 * The wall turns over on its footing: the soil behind it and the push on its post have more moment about the toe than all that rests on it holds; or,
 * before it is backfilled, the wind turns it over about its heel. In the field walls lean outward, and the posts on them first of all.
 *
 * IBC 2021 1807.2.3: 1.5 on loads that are not reduced; and with reduced dead load (ASCE 7-22 2.4.1) the moment that turns is held. Moments about
 * the edges of the footing, the soil pressing on the upright plane through the end of the heel (Das, Principles of Foundation Engineering, section 8.4).
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Pair } from "../../mechanics/worse.js";
import type { Support } from "../../project/model.js";
import { check, unchecked, weigh } from "../contract.js";
import { hasPinsAlone, isWall, weightFormulas } from "./body.js";
import { earthFormulas } from "./earth.js";
import { openWall } from "./opening.js";
import { earthFactor, readStability, safetyOf, type StabilityInputs } from "./safety.js";
import { type Acting, actingIn, governs, postFromToe, situationFormulas } from "./situations.js";
import { type Tried, worstOf } from "./worst.js";

const range = [-1e5, 1e5] as const;
const axial = { kind: "force", meaning: "axial force at the column base, compression positive", range } as const;
const width = { kind: "length", meaning: "width of the strip footing", field: "foundations.*.footing.width" } as const;
const fromToe = { kind: "length", meaning: "from the edge of the toe to the post" } as const;
const dead = { kind: "ratio", meaning: "factor of dead load in the combination" } as const;
const earth = { kind: "ratio", meaning: "factor of the earth pressure" } as const;
const turns = { kind: "moment", meaning: "moment that turns the wall over" } as const;
const holds = { kind: "moment", meaning: "moment that holds the wall" } as const;
const post = { kind: "moment", meaning: "moment of the post at the underside, across the wall, away from the fill positive", range } as const;
const pressing = { kind: "moment", meaning: "moment of soil, load and water about the underside" } as const;
const lifting = { kind: "moment", meaning: "moment of the water's lift about the edge of the toe" } as const;
const weight = { kind: "force", meaning: "weight of wall, footing and the soil counted on it" } as const;
const ofWeight = { kind: "moment", meaning: "moment of the weights about the edge of the toe" } as const;

export const turnsOnToe = formula({
  id: "wall.turns-on-toe",
  text: "M_o = max(f_H * M_H + M_n, 0 * f_H * M_H) + max(-P, 0 * P) * x_p + M_U",
  source: "statics about the edge of the toe; a pull of the post counts as a load",
  symbols: { M_o: turns, f_H: earth, M_H: pressing, M_n: post, P: axial, x_p: fromToe, M_U: lifting },
});

export const holdsOnToe = formula({
  id: "wall.holds-on-toe",
  text: "M_r = f_D * M_W + max(P, 0 * P) * x_p + min(f_D, 1) * P_e * B",
  source: "statics about the edge of the toe",
  symbols: { M_r: holds, f_D: dead, M_W: ofWeight, P: axial, x_p: fromToe, P_e: { kind: "force", meaning: "vertical part of the soil's push, at the end of the heel" }, B: width },
});

export const turnsOnHeel = formula({
  id: "wall.turns-on-heel",
  text: "M_o = max(-M_n - f_H * M_H, 0 * f_H * M_H) + max(-P, 0 * P) * (B - x_p) + U * B - M_U",
  source: "statics about the edge of the heel; a pull of the post counts as a load",
  symbols: { M_o: turns, f_H: earth, M_H: pressing, M_n: post, P: axial, B: { ...width, range: [2, 3] }, x_p: { ...fromToe, range: [0.1, 1] }, U: { kind: "force", meaning: "lift of the water below the footing", range: [1e5, 2e5] }, M_U: { ...lifting, range: [1e3, 1e4] } },
});

export const holdsOnHeel = formula({
  id: "wall.holds-on-heel",
  text: "M_r = f_D * (W * B - M_W) + max(P, 0 * P) * (B - x_p)",
  source: "statics about the edge of the heel",
  symbols: { M_r: holds, f_D: dead, W: { ...weight, range: [1e5, 2e5] }, B: { ...width, range: [2, 3] }, M_W: { ...ofWeight, range: [1e3, 1e4] }, P: axial, x_p: { ...fromToe, range: [0.1, 1] } },
});

export const safely = formula({
  id: "wall.safe-hold",
  text: "M_a = M_r / FS",
  source: "IBC 2021 1807.2.3",
  symbols: { M_a: { kind: "moment", meaning: "holding moment over the factor of safety" }, M_r: holds, FS: { kind: "number", meaning: "factor of safety" } },
});

/** A wall doweled to rock is held by its dowels, whose pull is weighed by itself. Bars driven dry are pins, and hold nothing down. */
export const isDoweledWall = (support: Support): boolean => isWall(support) && support.ground?.fields.kind?.value === "rock" && support.foundation?.fields.dowels !== undefined && !hasPinsAlone(support);

const opposite = { north: "south", south: "north", east: "west", west: "east" } as const;

/** On rock a wall that holds nothing back is looked at among the footings on rock. */
export const isBesideRock = (support: Support): boolean => isWall(support) && (support.ground?.fields.kind?.value !== "rock" || (support.foundation?.fields.retains?.value ?? 0) > 0);

function about(edge: "toe" | "heel", inputs: StabilityInputs, acting: Acting, f_D: number, FS: number, calc: Calc): Pair {
  const { width: B } = inputs;
  const { post: { P, turn: M_n }, fill, weights, lift: U, liftTurn: M_U } = acting;
  const x_p = calc(postFromToe, { b_t: inputs.toe, t_w: inputs.thickness });
  const { adds, resists } = earthFactor.allowable;
  const demand =
    edge === "toe" ? calc(turnsOnToe, { f_H: adds, M_H: fill.moment, M_n, P, x_p, M_U }) : calc(turnsOnHeel, { f_H: resists, M_H: fill.moment, M_n, P, B, x_p, U, M_U });
  const M_r =
    edge === "toe" ? calc(holdsOnToe, { f_D, M_W: weights.moment, P, x_p, P_e: fill.drag, B }) : calc(holdsOnHeel, { f_D, W: weights.total, B, M_W: weights.moment, P, x_p });
  return { demand, capacity: calc(safely, { M_r, FS }) };
}

export const wallOverturning = check({
  id: "wall.overturning",
  title: "Overturning of the wall",
  link: "wall",
  level: "allowable",
  clause: "IBC 2021 1807.2.3; ASCE 7-22 2.4.1",
  fails: "The soil behind the wall and the push on its post have more moment about an edge of the footing than all that rests on it holds.",
  seen: "A wall that leans outward, its posts leaning with it.",
  range:
    "The length of wall that acts with one post as a rigid body, the post on the middle of its thickness; and a length without a post, where soil is held back. Where both stand the whole wall stands, for its moments are the sums of theirs. With the fill, and without it; about the toe, and about the heel. Soil before the wall holds nothing here, and soil on the footing only where it is held back or is compacted and tested. A surcharge presses and does not hold; a key weighs nothing. An earthquake shakes the fill outward by the seismic coefficient stated for it. A wall doweled to rock is held by its dowels instead.",
  formulas: [...situationFormulas, ...weightFormulas, ...earthFormulas, turnsOnToe, holdsOnToe, turnsOnHeel, holdsOnHeel, safely],
  applies: (support) => isWall(support) && !isDoweledWall(support),
  inputs: readStability,
  fixedBy: (support) => support.foundation?.fields.footing ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const opened = openWall(inputs, demand, calc);
    if ("because" in opened) return unchecked(opened.because);
    const { f_D, post, situations } = opened;
    const tried = situations.flatMap((situation) =>
      (["toe", "heel"] as const).map((edge): Tried => (c) => {
        const { factor: FS, note: why } = safetyOf(inputs, situation.hasFill && edge === "toe", f_D, demand);
        const governing = governs(inputs, situation, post);
        if (governing !== "") c.note(governing);
        const acting = actingIn(inputs, situation, post, situation.soil, c);
        if (why !== "") c.note(why);
        c.note(`Moments about the ${edge === "toe" ? opposite[inputs.fillSide] : inputs.fillSide} edge of the footing${inputs.earth ? `, the ${edge}` : ""}.`);
        return about(edge, inputs, acting, f_D, FS, c);
      }),
    );
    const found = worstOf(tried, calc);
    return weigh(found.demand, found.capacity, "moment");
  },
  advise: (inputs, outcome, say) =>
    `${say.show(outcome.demand, "moment")} turns ${say.show(inputs.run, "distance")} of the wall over; ${say.show(outcome.capacity, "moment")} holds it. Widen the footing${inputs.earth ? " under the fill" : ""}, or let more of the wall act with the post.`,
});
