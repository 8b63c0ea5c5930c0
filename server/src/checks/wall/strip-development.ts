/**
 * The bars across the strip footing are too short beyond the face of the wall: they pull out before they yield. In the field a narrow toe has broken
 * off with straight bars sticking out of it.
 *
 * ACI 318-19 13.2.8 and 25.4: from the face of the wall to the end of the bar the length it needs, less where there are more bars than the moment asks
 * for (25.4.10.1, straight bars; not in seismic design categories D to F), at least 12 in straight. Hooks are not shortened.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import { check, unchecked, weigh } from "../contract.js";
import { bendingFormulas, plainStrength, tooMuchSteel } from "../footing/bending.js";
import { developmentFormulas, hooked, straight } from "../footing/bar-development.js";
import { lengthNeeded } from "../footing/development.js";
import { rootStrength } from "../footing/one-way-shear.js";
import { padEditions } from "../footing/pad.js";
import { isWall } from "./body.js";
import { strengths } from "./strip-flexure.js";
import { type Across, facesOf, readStrip, stripForces, stripFormulas, type StripInputs } from "./strip.js";

export const lengthBeyond = formula({
  id: "wall.length-beyond",
  text: "l_a = b - c_c",
  source: "geometry",
  symbols: { l_a: { kind: "length", meaning: "length of the bars beyond the face of the wall", range: [0.1, 2] }, b: { kind: "length", meaning: "reach of the footing beyond the wall", range: [0.5, 2] }, c_c: { kind: "length", meaning: "clear cover", field: "foundations.*.cover", range: [0.05, 0.1] } },
});

export interface StripDevelopmentInputs extends StripInputs {
  readonly isHooked: boolean;
  readonly isFull: boolean;
}

const fullCategories = new Set(["D", "E", "F"]);

/** Concrete below a bar from which it counts as a top bar, m: 12 in. */
const highCast = 0.3048;

function lengthFor(inputs: StripDevelopmentInputs, bars: Across, moment: Pair, reach: number, isHigh: boolean, calc: Calc): Pair {
  const capacity = Math.max(0, calc(lengthBeyond, { b: reach, c_c: inputs.cover }));
  if (!(moment.demand > 0)) return { demand: 0, capacity };
  const s_c = calc(rootStrength, { fprime_c: inputs.fprime_c });
  if (inputs.isHooked) return { demand: hooked(bars, inputs.f_y, inputs.fprime_c, s_c, inputs.edition, calc), capacity };
  const l_d = straight(bars, inputs.cover, inputs.f_y, s_c, isHigh, inputs.edition, calc);
  return { demand: calc(lengthNeeded, { l_d, M_u: inputs.isFull ? moment.capacity : moment.demand, phiM_n: moment.capacity }), capacity };
}

export const wallStripDevelopment = check({
  id: "wall.strip-development",
  title: "Development of the bars across the strip footing",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 13.2.8, 25.4",
  editions: padEditions,
  fails: "The bars across are too short beyond the face of the wall and pull out before they yield.",
  seen: "A narrow toe broken off, with straight bars sticking out of it.",
  range: "Uncoated deformed bars from cover to cover, straight or with standard hooks at both ends, beyond the faces of the wall on both sides.",
  formulas: [...stripFormulas, ...bendingFormulas, rootStrength, plainStrength, ...developmentFormulas, lengthBeyond, lengthNeeded],
  applies: isWall,
  inputs: (support, gather, place): StripDevelopmentInputs => {
    const strip = readStrip(support, gather, place);
    return { ...strip, isHooked: gather.may(support.foundation?.fields["hooked bars"]) ?? false, isFull: strip.category !== undefined && fullCategories.has(strip.category) };
  },
  fixedBy: (support) => support.foundation?.fields["hooked bars"] ?? support.foundation?.fields.footing?.value["bottom bars"] ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const held = strengths(inputs, calc);
    if (!held) return unchecked(tooMuchSteel);
    const found = stripForces(inputs, demand, "moment", facesOf(inputs, calc), calc);
    if ("because" in found) return unchecked(found.because);
    let worst: Pair = { demand: 0, capacity: Math.max(0, lengthBeyond.value({ b: Math.max(inputs.toe, inputs.heel), c_c: inputs.cover })) };
    for (const { sides } of found)
      for (const side of ["toe", "heel"] as const) {
        const reach = side === "toe" ? inputs.toe : inputs.heel;
        worst = worseOf(worst, lengthFor(inputs, inputs.bottom, { demand: sides[side].bottom, capacity: held.bottom }, reach, false, calc));
        if (inputs.top) worst = worseOf(worst, lengthFor(inputs, inputs.top, { demand: sides[side].top, capacity: held.top }, reach, isAbove(inputs.top.d, highCast), calc));
      }
    return weigh(worst.demand, worst.capacity, "length");
  },
  advise: (inputs, outcome, say) =>
    `${say.show(outcome.demand, "length")} of bar needed beyond the face of the wall; ${say.show(outcome.capacity, "length")} there. Take smaller bars closer together${inputs.isHooked ? "" : ", hook their ends"}, or widen the footing.`,
});
