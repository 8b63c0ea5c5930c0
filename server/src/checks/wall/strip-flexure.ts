/**
 * The toe of the strip footing bends upward under the pressed ground, or its heel downward under the soil on it, and its bars yield. In the field the
 * footing has cracked along the face of the wall, and the wall leans from there.
 *
 * ACI 318-19 13.2.7.1: full moment at the face of the concrete wall, of the contact pressure less the weights that lie on toe and heel. Without top bars
 * the plain concrete has to carry what pulls at the top (14.5.2.1), not in seismic design categories D to F (14.1.4).
 */
import type { Calc } from "../../formula/types.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import { check, unchecked, weigh } from "../contract.js";
import { bendingFormulas, plainStrength, reinforcedStrength, tooMuchSteel } from "../footing/bending.js";
import { rootStrength } from "../footing/one-way-shear.js";
import { padEditions } from "../footing/pad.js";
import { calculatedOnce } from "../once.js";
import { isWall } from "./body.js";
import { governs } from "./situations.js";
import { facesOf, readStrip, stripForces, stripFormulas, type Across, type StripInputs } from "./strip.js";

const noPlain = new Set(["D", "E", "F"]);

/** Design strength in bending of the length that acts with the post, N·m; undefined where the section is not tension-controlled. */
export const strengthAcross = (inputs: StripInputs, bars: Across, calc: Calc): number | undefined => reinforcedStrength(bars.area, inputs.f_y, inputs.fprime_c, inputs.run, bars.d, calc);

export const strengths = calculatedOnce((inputs: StripInputs, calc: Calc): { readonly bottom: number; readonly top: number } | undefined => {
  const bottom = strengthAcross(inputs, inputs.bottom, calc);
  const top = inputs.top ? strengthAcross(inputs, inputs.top, calc) : calc(plainStrength, { s_c: calc(rootStrength, { fprime_c: inputs.fprime_c }), b: inputs.run, t: inputs.base });
  return bottom === undefined || top === undefined ? undefined : { bottom, top };
});

export const wallStripFlexure = check({
  id: "wall.strip-flexure",
  title: "Toe and heel of the strip footing in bending",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 13.2.6.4, 13.2.7.1, 22.3, 14.5.2.1",
  editions: padEditions,
  fails: "The toe bends upward or the heel downward, and the bars across the wall yield.",
  seen: "A footing cracked along the face of its wall, which leans from there.",
  range:
    "Bars across the wall, evenly spaced over the length that acts with one post; with the fill, without it, and on a length without a post. Earth pressure with a load factor of 1.6. The top by its bars, or as plain concrete where it has none. A footing without bottom bars is not covered.",
  formulas: [...stripFormulas, ...bendingFormulas, rootStrength, plainStrength],
  applies: isWall,
  inputs: readStrip,
  fixedBy: (support) => support.foundation?.fields.footing?.value["bottom bars"] ?? support.foundation?.fields.footing ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const held = strengths(inputs, calc);
    if (!held) return unchecked(tooMuchSteel);
    const found = stripForces(inputs, demand, "moment", facesOf(inputs, calc), calc);
    if ("because" in found) return unchecked(found.because);
    let worst: Pair & { readonly words: string; readonly atTop: boolean } = { demand: 0, capacity: held.bottom, words: "", atTop: false };
    for (const { situation, sides, post } of found)
      for (const side of ["toe", "heel"] as const) {
        const words = `${governs(inputs, situation, post)} `;
        worst = worseOf(worst, { demand: sides[side].bottom, capacity: held.bottom, words: `${words}The ${side} bends upward.`, atTop: false });
        worst = worseOf(worst, { demand: sides[side].top, capacity: held.top, words: `${words}The ${side} bends downward.`, atTop: true });
      }
    if (worst.words !== "") calc.note(worst.words.trim());
    if (worst.atTop && !inputs.top && inputs.category !== undefined && noPlain.has(inputs.category))
      return unchecked(`the footing bends downward, and plain concrete may not carry that in seismic design category ${inputs.category} (ACI 318-19 14.1.4): state top bars`);
    return weigh(worst.demand, worst.capacity, "moment");
  },
  advise: (inputs, outcome, say) =>
    `${say.show(outcome.demand, "moment")} bends ${say.show(inputs.run, "distance")} of the footing at the face of the wall; it holds ${say.show(outcome.capacity, "moment")}. Add bars across the wall${inputs.top ? "" : ", at its top too where soil lies on the heel"}, or thicken the footing.`,
});
