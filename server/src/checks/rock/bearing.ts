/**
 * The rock under the footing crushes or breaks along its joints at the pressed edge.
 *
 * IBC 2021 1806.2: largest pressure under a rigid pad or strip, on the part that stays in contact, against allowable bearing. Where dowels hold an
 * edge down, the pressure is that of the state their pull is found from: axial force and pull press together. Allowable-stress loads.
 */
import type { Demand } from "../../actions/demand.js";
import type { Calc } from "../../formula/types.js";
import { footingContact } from "../../mechanics/partial-contact.js";
import { check, unchecked, weigh } from "../contract.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import { hasPinsAlone } from "../wall/body.js";
import { blockUnsound, isFreeOnRock, readBlock, type RockBlock, sharedLength } from "./block.js";
import { acrossWall, atUnderside, type DowelInputs, dowelPull, dowelPullFormulas, heldPressure, heldPressureFormulas, readDowels, wallDirection } from "./dowel-force.js";
import { pressureIn } from "./rows.js";

export interface RockBearingInputs {
  readonly block: RockBlock;
  readonly dowels: DowelInputs | undefined;
  readonly bearing: GroundValue;
}

/** Pressure on the rock, Pa; or why there is none to tell. */
export type Pressed = { readonly pressure: number } | { readonly because: string };

function underPad(block: RockBlock, dowels: DowelInputs | undefined, demand: Demand, calc: Calc): Pressed {
  const { body } = block;
  if (body.type !== "pad") return { because: "only a pad is pressed both ways" };
  const forces = atUnderside(block, demand, calc);
  const { N, M_x, M_y } = forces;
  if (N <= 0 && M_x === 0 && M_y === 0) return { pressure: 0 };
  if (dowels) {
    const pulls = dowelPull(dowels, demand, calc);
    if ("pull" in pulls && pulls.pull > 0) {
      calc.note("The dowels hold an edge of the pad down: the axial force and their pull press the other one.");
      return heldPressure(dowels, forces, calc);
    }
  }
  const found = calc.routine(footingContact, { width: body.width, length: body.length, P: N, Mx: M_x, My: M_y });
  return "unstable" in found ? { because: `${found.unstable}; no dowels hold it down. Widen or thicken the pad to have its load stand within it, or hold it down by dowels` } : { pressure: found.qmax };
}

function underWall(block: RockBlock, dowels: DowelInputs | undefined, demand: Demand, calc: Calc): Pressed {
  const shared = sharedLength(block, calc);
  if (shared !== undefined || block.body.type !== "wall") return { because: shared ?? "" };
  const forces = atUnderside(block, demand, calc);
  const M_c = acrossWall(block, forces, calc);
  if (forces.N <= 0 && M_c === 0) return { pressure: 0 };
  const direction = dowels && wallDirection(dowels, calc);
  if (direction) return { pressure: pressureIn(direction, forces.N, M_c, calc) };
  const found = calc.routine(footingContact, { width: block.body.footingWidth, length: block.body.lengthPerPost, P: forces.N, Mx: 0, My: M_c });
  return "unstable" in found ? { because: `${found.unstable}; no dowels hold it down. Widen the footing, or hold it down by dowels` } : { pressure: found.qmax };
}

export const pressureOnRock = ({ block, dowels }: Pick<RockBearingInputs, "block" | "dowels">, demand: Demand, calc: Calc): Pressed =>
  block.body.type === "pad" ? underPad(block, dowels, demand, calc) : underWall(block, dowels, demand, calc);

export const rockBearing = check({
  id: "rock.bearing",
  title: "Bearing on the rock",
  link: "rock",
  level: "allowable",
  clause: "IBC 2021 1806.2, Table 1806.2",
  fails: "The rock under the pressed edge of the footing crushes or breaks along its joints.",
  seen: "Spalled rock and an open joint along the opposite edge of the footing.",
  range: "A rigid rectangular pad, or the length of a wall that acts with one post, on level rock; concentric, lifted at one edge or corner, or held down by dowels; bars driven dry hold nothing down. Settlement is not checked. Pressure along a wall is even over the length per post.",
  formulas: [...dowelPullFormulas, ...heldPressureFormulas],
  applies: isFreeOnRock,
  inputs: (support, gather, place): RockBearingInputs => {
    const stated = support.ground?.fields.bearing;
    blockUnsound(support, gather, stated, "bearing");
    return {
      block: readBlock(support, gather, place),
      dowels: support.foundation?.fields.dowels && !hasPinsAlone(support) ? readDowels(support, gather, place) : undefined,
      bearing: groundValue(support, gather, stated, "bearing", (soil) => soil.verticalBearing),
    };
  },
  fixedBy: (support) => support.foundation?.fields.width ?? support.foundation?.fields.footing ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    calc.note(inputs.bearing.from);
    const found = pressureOnRock(inputs, demand, calc);
    if ("because" in found) return unchecked(found.because);
    return weigh(found.pressure, inputs.bearing.value, "pressure");
  },
  advise: (inputs, outcome, say) =>
    `the pressed edge bears ${say.show(outcome.demand, "pressure")}; ${say.show(outcome.capacity, "pressure")} allowed. Widen the ${inputs.block.body.type === "pad" ? "pad" : "footing"}${inputs.dowels ? "" : ", or hold its other edge down by dowels"}.`,
});
