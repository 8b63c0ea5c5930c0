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
import { padEditions, type PadInputs } from "./pad.js";
import { onSoil, type PadOn } from "./pad-on.js";
import { largestReverse, overhangs } from "./sections.js";

interface Barred {
  /** Set where plain concrete may not carry. */
  readonly plainBarred: string | undefined;
}

const barred = new Set(["D", "E", "F"]);

export const topFlexureOf = <I extends PadInputs>(on: PadOn<I>) =>
  check({
    id: on.id("top-flexure"),
    title: on.top.title,
    link: on.link,
    level: "strength",
    clause: "ACI 318-19 13.2.6.4, 14.5.2.1",
    editions: padEditions,
    fails: on.top.fails,
    seen: on.top.seen,
    range: `By top bars where there are some, otherwise as plain concrete. ${on.top.range}`,
    formulas: [...on.formulas, ...bendingFormulas, rootStrength, plainStrength],
    applies: on.isOwn,
    inputs: (support, gather, place): I & Barred => {
      const category = gather.may(support.site["seismic design category"]);
      return { ...on.read(support, gather, place), plainBarred: category !== undefined && barred.has(category) ? category : undefined };
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
      for (const purpose of on.purposes) {
        const acting = on.acting(inputs, demand, purpose, calc);
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

export const footingTopFlexure = topFlexureOf(onSoil);
