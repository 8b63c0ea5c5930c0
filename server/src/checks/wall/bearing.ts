/**
 * The ground under the pressed edge of the strip footing gives way, and the wall leans over its toe. In the field it has settled outward, most of it
 * beside its posts.
 *
 * IBC 2021 1806.2: largest pressure under the rigid footing, on the part that stays in contact, against the allowable bearing. Gross pressure: wall,
 * footing, soil and the load on it. On rock with dowels the footing may lift; the dowels then pull, and the pressed strip ends at their row.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Pair } from "../../mechanics/worse.js";
import type { Support } from "../../project/model.js";
import { check, type Gather, unchecked, weigh } from "../contract.js";
import { momentResultant } from "../pier/grade-forces.js";
import { deadFactor } from "../site/dead-factor.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import { weightFormulas } from "./body.js";
import { earthFormulas } from "./earth.js";
import { isBesideRock, isDoweledWall } from "./overturning.js";
import { earthFactor, readStability, shakenFill, type StabilityInputs } from "./safety.js";
import { actingIn, governs, type Post, postAt, type Situation, situationFormulas, situationsOf } from "./situations.js";
import { contactOf, type Resultant, resultantOf, undersideFormulas } from "./underside.js";
import { type Tried, worstOf } from "./worst.js";

const range = [-1e5, 1e5] as const;
const moment = { kind: "moment", meaning: "moment about the middle of the footing, resultant of both directions" } as const;
const vertical = { kind: "force", meaning: "vertical force on the ground, down positive", range } as const;
const width = { kind: "length", meaning: "width of the strip footing", field: "foundations.*.footing.width" } as const;

export const liftsAtDowels = formula({
  id: "wall.third-moment",
  text: "M_3 = N * B / 3",
  source: "linear pressure: beyond this moment less than half the footing is pressed, and a row of dowels on its middle pulls",
  symbols: { M_3: { kind: "moment", meaning: "moment at which the middle of the footing lifts", range }, N: vertical, B: width },
});

export const doweledPressure = formula({
  id: "wall.doweled-pressure",
  text: "q_max = 12 * M_h / (B^2 * L_r)",
  source: "statics: linear pressure from the edge to the row of dowels on the middle, its resultant B/3 from there; derived",
  symbols: { q_max: { kind: "pressure", meaning: "largest pressure under the footing" }, M_h: moment, B: width, L_r: { kind: "distance", meaning: "length of wall that acts with the post" } },
});

export interface WallBearingInputs extends StabilityInputs {
  readonly bearing: GroundValue;
  readonly isDoweled: boolean;
}

/** Pressure with dowels that pull, Pa; undefined where the footing bears by itself. */
function doweled({ width: B, run: L_r }: WallBearingInputs, { N, M_c, M_l }: Resultant, calc: Calc): number | undefined {
  const M_h = calc(momentResultant, { M_x: M_c, M_y: M_l });
  if (M_h <= calc(liftsAtDowels, { N, B })) return undefined;
  calc.note("The middle of the footing lifts: the dowels pull, and the footing presses from its edge to their row. All of the moment is taken across the wall.");
  return calc(doweledPressure, { M_h, B, L_r });
}

/** Larger than any allowable pressure, Pa: the footing tips over, and no pressure balances it. */
const tipping = Number.POSITIVE_INFINITY;

function bears(inputs: WallBearingInputs, situation: Situation, post: Post, f_D: number, calc: Calc): Pair {
  const acting = actingIn(inputs, situation, post, f_D < 1 ? situation.soil : situation.hasFill || !inputs.earth ? "all" : "all but the fill", calc);
  const result = resultantOf(inputs, acting, { f_D, f_H: earthFactor.allowable.adds, f_v: Math.min(f_D, 1) }, true, calc);
  const capacity = inputs.bearing.value;
  if (result.N <= 0 && result.M_c === 0 && result.M_l === 0) return { demand: 0, capacity };
  const pulled = inputs.isDoweled ? doweled(inputs, result, calc) : undefined;
  if (pulled !== undefined) return { demand: pulled, capacity };
  const pressure = contactOf(inputs, result, calc);
  if ("unstable" in pressure) return { demand: tipping, capacity };
  if (pressure.contactRatio < 1) calc.note("A part of the footing has lifted; the pressure is that of the part in contact.");
  return { demand: pressure.qmax, capacity };
}

export const wallBearing = check({
  id: "wall.bearing",
  title: "Bearing under the wall",
  link: "wall",
  level: "allowable",
  clause: "IBC 2021 1806.2, Table 1806.2",
  fails: "The ground under the pressed edge of the footing gives way.",
  seen: "A wall that has settled outward and leans, most of it beside its posts.",
  range:
    "A rigid strip footing under the length of wall that acts with one post, with moments both ways, wholly in contact or lifted at an edge; and a length without a post, where soil is held back. With the fill, and without it. Where the combination presses, all of the soil and the load on it count. On rock with dowels one row on the middle of the footing. Settlement is not checked.",
  formulas: [...situationFormulas, ...weightFormulas, ...earthFormulas, ...undersideFormulas, momentResultant, liftsAtDowels, doweledPressure],
  applies: isBesideRock,
  inputs: (support: Support, gather: Gather, place: number): WallBearingInputs => ({
    ...readStability(support, gather, place),
    bearing: groundValue(support, gather, support.ground?.fields.bearing, "bearing", (soil) => soil.verticalBearing),
    isDoweled: isDoweledWall(support),
  }),
  fixedBy: (support) => support.foundation?.fields.footing ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const shaken = shakenFill(inputs, demand);
    if (shaken !== undefined) return unchecked(shaken);
    const { factor: f_D, note } = deadFactor(demand);
    const post = postAt(inputs, demand, calc);
    calc.note(note);
    calc.note(inputs.bearing.from);
    if (inputs.stretch !== "") calc.note(inputs.stretch);
    const tried = situationsOf(inputs).map((situation): Tried => (c) => {
      const governing = governs(inputs, situation, post);
      if (governing !== "") c.note(governing);
      return bears(inputs, situation, post, f_D, c);
    });
    const found = worstOf(tried, calc);
    if (found.demand === tipping) return unchecked("the load lies on or outside the edge of the footing: the wall tips over, and no pressure balances it. Widen the footing, or let more of the wall act with the post");
    return weigh(found.demand, found.capacity, "pressure");
  },
  advise: (_inputs, outcome, say) => `the pressed edge bears ${say.show(outcome.demand, "pressure")}; ${say.show(outcome.capacity, "pressure")} allowed. Widen the footing, most of all its toe.`,
});
