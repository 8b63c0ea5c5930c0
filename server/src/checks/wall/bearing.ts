/**
 * The ground under the pressed edge of the strip footing gives way, and the wall leans over its toe. In the field it has settled outward, most of it
 * beside its posts.
 *
 * IBC 2021 1806.2: largest pressure under the rigid footing, on the part that stays in contact, against the allowable bearing. Gross pressure: wall,
 * footing, soil and the load on it. On rock with dowels the footing may lift; the dowels then pull, and the pressed strip ends at or before their row.
 */
import type { Calc } from "../../formula/types.js";
import type { Pair } from "../../mechanics/worse.js";
import type { Support } from "../../project/model.js";
import { check, type Gather, unchecked, weigh } from "../contract.js";
import type { Direction } from "../rock/rows.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import { weightFormulas } from "./body.js";
import { dowelRowFormulas, heldByDowels, readDowelRows } from "./dowel-rows.js";
import { earthFormulas } from "./earth.js";
import { openWall } from "./opening.js";
import { isBesideRock } from "./overturning.js";
import { earthFactor, readStability, type StabilityInputs } from "./safety.js";
import { actingIn, governs, type Post, type Situation, situationFormulas } from "./situations.js";
import { contactOf, resultantOf, undersideFormulas } from "./underside.js";
import { type Tried, worstOf } from "./worst.js";

export interface WallBearingInputs extends StabilityInputs {
  readonly bearing: GroundValue;
  /** Rows of dowels that hold the footing down to rock. */
  readonly rows: Direction | undefined;
}

/** Larger than any allowable pressure, Pa: the footing tips over, and no pressure balances it. */
const tipping = Number.POSITIVE_INFINITY;

function bears(inputs: WallBearingInputs, situation: Situation, post: Post, f_D: number, calc: Calc): Pair {
  const acting = actingIn(inputs, situation, post, f_D < 1 ? situation.soil : situation.hasFill || !inputs.earth ? "all" : "all but the fill", calc);
  const result = resultantOf(inputs, acting, { f_D, f_H: earthFactor.allowable.adds, f_v: Math.min(f_D, 1) }, true, calc);
  const capacity = inputs.bearing.value;
  if (result.N <= 0 && result.M_c === 0 && result.M_l === 0) return { demand: 0, capacity };
  const held = heldByDowels(inputs, inputs.rows, result, calc);
  if (held) return { demand: "unstable" in held ? tipping : held.pressure.qmax, capacity };
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
    "A rigid strip footing under the length of wall that acts with one post, with moments both ways, wholly in contact or lifted at an edge; and a length without a post, where soil is held back. With the fill, and without it. Where the combination presses, all of the soil and the load on it count. On rock with one or two rows of dowels the pressure is that of the state their pull is found from; bars driven dry hold nothing down. Settlement is not checked.",
  formulas: [...situationFormulas, ...weightFormulas, ...earthFormulas, ...undersideFormulas, ...dowelRowFormulas],
  applies: isBesideRock,
  inputs: (support: Support, gather: Gather, place: number): WallBearingInputs => {
    const body = readStability(support, gather, place);
    return {
      ...body,
      bearing: groundValue(support, gather, support.ground?.fields.bearing, "bearing", (soil) => soil.verticalBearing),
      rows: readDowelRows(support, gather, body),
    };
  },
  fixedBy: (support) => support.foundation?.fields.footing ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const opened = openWall(inputs, demand, calc);
    if ("because" in opened) return unchecked(opened.because);
    const { f_D, post, situations } = opened;
    calc.note(inputs.bearing.from);
    const tried = situations.map((situation): Tried => (c) => {
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
