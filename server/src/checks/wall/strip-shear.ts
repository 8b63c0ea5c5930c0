/**
 * Toe or heel of the strip footing shears off along an inclined crack. In the field it is hidden below grade; above, the wall has dropped on one side.
 *
 * ACI 318-19 22.5.5.1 without stirrups, lambda_s = 1 by 13.2.6.2. At d from the face of the wall where the ground pushes the side up (13.2.7.2);
 * at the face where soil or dowels push it down, since the wall then pulls on the footing and does not press its end region together (7.4.3.2(a)).
 */
import type { Calc } from "../../formula/types.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import { check, unchecked, weigh } from "../contract.js";
import { oneWayEarlier, oneWayStrength, oneWayWithoutStirrups, rootStrength, shearSection, steelRatio } from "../footing/one-way-shear.js";
import { padEditions } from "../footing/pad.js";
import { calculatedOnce } from "../once.js";
import { isWall } from "./body.js";
import { governs } from "./situations.js";
import { facesOf, readStrip, stripForces, stripFormulas, type StripInputs } from "./strip.js";

const strengthOf = calculatedOnce((inputs: StripInputs, calc: Calc): number => oneWayStrength(inputs, inputs.bottom.area, inputs.run, inputs.bottom.d, calc));

export const wallStripShear = check({
  id: "wall.strip-shear",
  title: "Toe and heel of the strip footing in shear",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 22.5.5.1, 13.2.6.2, 7.4.3.2",
  editions: padEditions,
  fails: "The toe or the heel shears off along an inclined crack.",
  seen: "A wall that has dropped on one side, its footing broken below grade.",
  range: "Normalweight concrete, no stirrups. By the bottom bars, upward and downward alike: the top has no less where its bars are not fewer. At d from the face of the wall where the side is pushed up, at the face where it is pushed down.",
  formulas: [...stripFormulas, shearSection, rootStrength, steelRatio, oneWayWithoutStirrups, oneWayEarlier],
  applies: isWall,
  inputs: readStrip,
  fixedBy: (support) => support.foundation?.fields.footing ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const capacity = strengthOf(inputs, calc);
    const faces = facesOf(inputs, calc);
    const { d } = inputs.bottom;
    const at = { toe: calc(shearSection, { x_f: faces.toe, d }), heel: calc(shearSection, { x_f: faces.heel, d }) };
    const found = stripForces(inputs, demand, "shear", at, calc, faces);
    if ("because" in found) return unchecked(found.because);
    let worst: Pair & { readonly words: string } = { demand: 0, capacity, words: "" };
    for (const { situation, sides, post } of found)
      for (const side of ["toe", "heel"] as const)
        worst = worseOf(worst, { demand: Math.max(sides[side].bottom, sides[side].top), capacity, words: `${governs(inputs, situation, post)} The ${side} is sheared most.` });
    if (worst.words !== "") calc.note(worst.words.trim());
    return weigh(worst.demand, worst.capacity, "force");
  },
  advise: (_, outcome, say) => `${say.show(outcome.demand, "force")} of shear beside the wall; the footing holds ${say.show(outcome.capacity, "force")}. Thicken the footing.`,
});
