/**
 * The overhang of the pad bends upward and its bottom bars yield. In the field the pad has cracked along the face of its pedestal.
 *
 * ACI 318-19 13.2.6.4, 13.2.7.1: full moment of the soil pressure on one side of the face of the pedestal, or of halfway between column and
 * plate edge. In an oblong pad the short bars stand closer under the column (13.3.3.3); evenly spaced ones have to have that much all over.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import { check, unchecked, weigh } from "../contract.js";
import { bendingFormulas, reinforcedStrength, tooMuchSteel } from "./bending.js";
import { padEditions, type PadInputs } from "./pad.js";
import { onSoil, type PadOn } from "./pad-on.js";
import { type Acting, largest, overhangs } from "./sections.js";

export const bandShare = formula({
  id: "footing.band",
  text: "k_b = 2 / (1 + min(b, c) / max(b, c))",
  source: "ACI 318-19 13.3.3.3: 2/(beta + 1) of the short bars in a band as wide as the short side, met by evenly spaced bars all over (from memory)",
  symbols: { k_b: { kind: "ratio", meaning: "rise of the steel needed for evenly spaced short bars" }, b: { kind: "length", meaning: "pad along x", field: "foundations.*.width" }, c: { kind: "length", meaning: "pad along y", field: "foundations.*.length" } },
});

export const bandMoment = formula({
  id: "footing.band-moment",
  text: "M_ub = k_b * M_u",
  source: "ACI 318-19 13.3.3.3",
  symbols: { M_ub: { kind: "moment", meaning: "moment for evenly spaced short bars" }, k_b: { kind: "ratio", meaning: "rise of the steel needed for evenly spaced short bars" }, M_u: { kind: "moment", meaning: "moment at the face" } },
});

/** Demand and strength along x and y; or why there is none. */
export function bottomBending(inputs: PadInputs, acting: Exclude<Acting, { because: string }>, calc: Calc): { readonly x: Pair; readonly y: Pair } | { readonly because: string } {
  const { bottom, face, width, length, f_y, fprime_c } = inputs;
  const capacityX = reinforcedStrength(bottom.x.area, f_y, fprime_c, length, bottom.d, calc);
  const capacityY = reinforcedStrength(bottom.y.area, f_y, fprime_c, width, bottom.d, calc);
  if (capacityX === undefined || capacityY === undefined) return { because: tooMuchSteel };
  if (!acting) return { x: { demand: 0, capacity: capacityX }, y: { demand: 0, capacity: capacityY } };
  let x = largest(overhangs(inputs, acting, "x", face.x, calc).moment);
  let y = largest(overhangs(inputs, acting, "y", face.y, calc).moment);
  if (width !== length) {
    const k_b = calc(bandShare, { b: width, c: length });
    if (width < length) x = calc(bandMoment, { k_b, M_u: x });
    else y = calc(bandMoment, { k_b, M_u: y });
  }
  return { x: { demand: x, capacity: capacityX }, y: { demand: y, capacity: capacityY } };
}

export const flexureOf = <I extends PadInputs>(on: PadOn<I>) =>
  check({
    id: on.id("flexure"),
    title: `Bottom bars of ${on.words}`,
    link: on.link,
    level: "strength",
    clause: "ACI 318-19 13.2.6.4, 13.2.7.1, 22.3",
    editions: padEditions,
    fails: "The overhang bends upward and its bottom bars yield.",
    seen: "A pad cracked along the face of its pedestal.",
    range: `Bars evenly spaced, effective depth the mean of the two layers. ${on.net}`,
    formulas: [...on.formulas, ...bendingFormulas, bandShare, bandMoment],
    applies: on.isOwn,
    inputs: on.read,
    fixedBy: (support) => support.foundation?.fields["bottom bars"] ?? support.foundation,
    evaluate: (inputs, demand, calc) => {
      const acting = on.acting(inputs, demand, "by factor", calc);
      if (acting && "because" in acting) return unchecked(acting.because);
      const found = bottomBending(inputs, acting, calc);
      if ("because" in found) return unchecked(found.because);
      const worst = worseOf(found.x, found.y);
      return weigh(worst.demand, worst.capacity, "moment");
    },
    advise: (_inputs, outcome, say) => `${say.show(outcome.demand, "moment")} bends the pad; its bottom bars hold ${say.show(outcome.capacity, "moment")}. Add bars, or thicken the pad.`,
  });

export const footingFlexure = flexureOf(onSoil);
