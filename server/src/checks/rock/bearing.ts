/**
 * The rock under the pad crushes or breaks along its joints at the pressed edge.
 *
 * IBC 2021 1806.2: largest pressure under a rigid pad, on the part that stays in contact, against allowable bearing. Allowable-stress loads.
 */
import { footingContact } from "../../mechanics/partial-contact.js";
import { check, unchecked, weigh } from "../contract.js";
import { groundValue, type GroundValue } from "../site/ground-values.js";
import { buoyantWeight, isPadOnRock, padArm, padWeight, readBlock, type RockBlock, wallArm, wallWeight } from "./block.js";
import { atUnderside, netAxial } from "./dowel-force.js";
import { momentX, momentY } from "../pier/grade-forces.js";

export interface RockBearingInputs {
  readonly block: RockBlock;
  readonly bearing: GroundValue;
}

export const rockBearing = check({
  id: "rock.bearing",
  title: "Bearing on the rock",
  link: "rock",
  level: "allowable",
  clause: "IBC 2021 1806.2, Table 1806.2",
  fails: "The rock under the pressed edge of the pad crushes or breaks along its joints.",
  seen: "Spalled rock and an open joint along the opposite edge of the pad.",
  range: "A rigid rectangular pad on level rock, concentric or lifted at one edge or corner, as long as its own load stands within it. Pressure that the dowels add where they hold the pad down is not checked. Settlement and sliding are not checked.",
  formulas: [padWeight, wallWeight, buoyantWeight, padArm, wallArm, netAxial, momentX, momentY],
  applies: isPadOnRock,
  inputs: (support, gather, place): RockBearingInputs => ({
    block: readBlock(support, gather, place),
    bearing: groundValue(support, gather, support.ground?.fields.bearing, "bearing", (soil) => soil.verticalBearing),
  }),
  fixedBy: (support) => support.foundation?.fields.width ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { body } = inputs.block;
    const allowed = inputs.bearing.value;
    if (body.type !== "pad") return unchecked("only pads are checked for bearing on rock");
    const { N, M_x, M_y } = atUnderside(inputs.block, demand, calc);
    calc.note(inputs.bearing.from);
    if (N <= 0 && M_x === 0 && M_y === 0) return weigh(0, allowed, "pressure");
    const found = calc.routine(footingContact, { width: body.width, length: body.length, P: N, Mx: M_x, My: M_y });
    if ("unstable" in found) return unchecked(`${found.unstable}, but for its dowels; the bearing of a pad held down by dowels is not worked out. Widen or thicken the pad to have its load stand within it`);
    return weigh(found.qmax, allowed, "pressure");
  },
  advise: (_inputs, outcome, say) => `the pressed edge bears ${say.show(outcome.demand, "pressure")}; ${say.show(outcome.capacity, "pressure")} allowed. Widen the pad.`,
});
