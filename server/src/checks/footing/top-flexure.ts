/**
 * The lifted side of the pad hangs by its weight and that of the soil on it, and the pad cracks at its top. In the field it breaks beside the
 * pedestal at the first storm that lifts it, and the hold of the soil on it is gone.
 *
 * Where the pressure is less than the weight above it the pad needs bars at its top (ACI 318-19 13.2.6.4); without them plain concrete has to
 * do (14.5.2.1), which is not allowed in seismic design categories D to F (14.1.4).
 */
import { worseOf } from "../../mechanics/worse.js";
import { check, unchecked, weigh } from "../contract.js";
import { bendingFormulas, plainStrength, reinforcedStrength, tooMuchSteel } from "./bending.js";
import { rootStrength } from "./one-way-shear.js";
import { padEditions, type PadInputs, readPad } from "./pad.js";
import { isOwn } from "./shared-pad.js";
import { actingOn, largestReverse, overhangs, sectionFormulas } from "./sections.js";

export interface TopInputs extends PadInputs {
  /** Set where plain concrete may not carry. */
  readonly plainBarred: string | undefined;
}

const barred = new Set(["D", "E", "F"]);

export const footingTopFlexure = check({
  id: "footing.top-flexure",
  title: "Top of the pad where it lifts",
  link: "footing",
  level: "strength",
  clause: "ACI 318-19 13.2.6.4, 14.5.2.1",
  editions: padEditions,
  fails: "The lifted side of the pad hangs by its own weight and the soil on it, and cracks at its top.",
  seen: "A pad broken beside its pedestal after the first storm that lifted it.",
  range: "By top bars where there are some, otherwise as plain concrete. Weight of the soil above is counted both ways: as it holds, and in full as it hangs on the pad. Soil held by a cone or by friction is not hung on the pad.",
  formulas: [...sectionFormulas, ...bendingFormulas, rootStrength, plainStrength],
  applies: isOwn,
  inputs: (support, gather): TopInputs => {
    const category = gather.may(support.site["seismic design category"]);
    return { ...readPad(support, gather), plainBarred: category !== undefined && barred.has(category) ? category : undefined };
  },
  fixedBy: (support) => support.foundation?.fields["top bars"] ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { top, width, length, f_y, fprime_c, face } = inputs;
    const strengthOf = (area: number | undefined, b: number): number | undefined =>
      top && area !== undefined ? reinforcedStrength(area, f_y, fprime_c, b, top.d, calc) : calc(plainStrength, { s_c: calc(rootStrength, { fprime_c }), b, t: inputs.thickness });
    if (!top) calc.note("There are no top bars: the pad is held as plain concrete.");
    const capacityX = strengthOf(top?.x.area, length);
    const capacityY = strengthOf(top?.y.area, width);
    if (capacityX === undefined || capacityY === undefined) return unchecked(tooMuchSteel);
    let worst = worseOf({ demand: 0, capacity: capacityX }, { demand: 0, capacity: capacityY });
    for (const purpose of ["holds", "presses"] as const) {
      const acting = actingOn(inputs, demand, purpose, calc);
      if (!acting) continue;
      if ("because" in acting) return unchecked(acting.because);
      worst = worseOf(worst, { demand: largestReverse(overhangs(inputs, acting, "x", face.x, calc).moment), capacity: capacityX });
      worst = worseOf(worst, { demand: largestReverse(overhangs(inputs, acting, "y", face.y, calc).moment), capacity: capacityY });
    }
    if (!top && inputs.plainBarred !== undefined && worst.demand > 0)
      return unchecked(`the pad lifts, and plain concrete may not carry that in seismic design category ${inputs.plainBarred} (ACI 318-19 14.1.4): state top bars`);
    return weigh(worst.demand, worst.capacity, "moment");
  },
  advise: (inputs, outcome, say) =>
    `${say.show(outcome.demand, "moment")} bends the lifted pad downward; its top holds ${say.show(outcome.capacity, "moment")}. ${inputs.top ? "Add top bars" : "Put in top bars"}, or thicken the pad.`,
});
