/**
 * The bars of the pad are too short beyond the face of the pedestal: they pull out before they yield.
 *
 * ACI 318-19 13.2.8 and 25.4: from the face to the end of the bar the length it needs, less where there are more bars than the moment asks for
 * (25.4.10.1, straight bars; not in seismic design categories D to F, 25.4.10.2), at least 12 in straight.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import { check, unchecked, weigh } from "../contract.js";
import { bendingFormulas, reinforcedStrength, tooMuchSteel } from "./bending.js";
import { developmentFormulas, hooked, straight } from "./bar-development.js";
import { bandMoment, bandShare, bottomBending } from "./flexure.js";
import { rootStrength } from "./one-way-shear.js";
import { type BothWays, type Mat, padEditions, type PadInputs } from "./pad.js";
import { onSoil, type PadOn } from "./pad-on.js";
import { farFace, type Acting, largestReverse, overhangs } from "./sections.js";

export const lengthAtHand = formula({
  id: "footing.length-at-hand",
  text: "l_a = b / 2 - x_f - c_c",
  source: "geometry",
  symbols: {
    l_a: { kind: "length", meaning: "length of the bars beyond the face" },
    b: { kind: "length", meaning: "side of the pad along the bars" },
    x_f: { kind: "length", meaning: "face of the pedestal, from the middle" },
    c_c: { kind: "length", meaning: "clear cover", field: "foundations.*.cover" },
  },
});

export const lengthNeeded = formula({
  id: "footing.length-needed",
  text: "l_r = max(l_d * min(M_u / phiM_n, 1), l_12)",
  source: "ACI 318-19 25.4.10.1, 25.4.2.1 (from memory)",
  symbols: {
    l_r: { kind: "length", meaning: "length needed beyond the face" },
    l_d: { kind: "length", meaning: "development length of a straight bar in tension" },
    M_u: { kind: "moment", meaning: "moment at the face" },
    phiM_n: { kind: "moment", meaning: "design strength in bending" },
  },
  constants: { l_12: "12 inch" },
});

export interface Ends {
  readonly isHooked: boolean;
  /** More bars than needed shorten nothing. */
  readonly isFull: boolean;
}

type DevelopmentInputs = PadInputs & Ends;

export const fullCategories = new Set(["D", "E", "F"]);

/** Concrete below a bar from which it counts as a top bar, m: 12 in. */
export const highCast = 0.3048;

function lengths(inputs: DevelopmentInputs, mats: BothWays, moments: { readonly x: Pair; readonly y: Pair }, isHigh: boolean, calc: Calc): Pair {
  const { cover: c_c, face, f_y, fprime_c, edition } = inputs;
  const s_c = calc(rootStrength, { fprime_c });
  const one = (mat: Mat, moment: Pair, b: number, x: number, e: number): Pair => {
    const x_f = e === 0 ? x : calc(farFace, { e, x_f: x });
    const capacity = Math.max(0, calc(lengthAtHand, { b, x_f, c_c }));
    if (inputs.isHooked) return { demand: moment.demand > 0 ? hooked(mat, f_y, fprime_c, s_c, edition, calc) : 0, capacity };
    const l_d = straight(mat, c_c, f_y, s_c, isHigh, edition, calc);
    const M_u = inputs.isFull ? moment.capacity : moment.demand;
    return { demand: moment.demand > 0 ? calc(lengthNeeded, { l_d, M_u, phiM_n: moment.capacity }) : 0, capacity };
  };
  return worseOf(one(mats.x, moments.x, inputs.width, face.x, inputs.offset.x), one(mats.y, moments.y, inputs.length, face.y, inputs.offset.y));
}

function topMoments(inputs: DevelopmentInputs, top: BothWays, acting: Exclude<Acting, { because: string } | undefined>, calc: Calc): { readonly x: Pair; readonly y: Pair } | undefined {
  const capacityX = reinforcedStrength(top.x.area, inputs.f_y, inputs.fprime_c, inputs.length, top.d, calc);
  const capacityY = reinforcedStrength(top.y.area, inputs.f_y, inputs.fprime_c, inputs.width, top.d, calc);
  if (capacityX === undefined || capacityY === undefined) return undefined;
  return {
    x: { demand: largestReverse(overhangs(inputs, acting, "x", inputs.face.x, calc).moment), capacity: capacityX },
    y: { demand: largestReverse(overhangs(inputs, acting, "y", inputs.face.y, calc).moment), capacity: capacityY },
  };
}

export const developmentOf = <I extends PadInputs>(on: PadOn<I>) =>
  check({
    id: on.id("development"),
    title: `Development of the bars of ${on.words}`,
    link: on.link,
    level: "strength",
    clause: "ACI 318-19 13.2.8, 25.4",
    editions: padEditions,
    fails: "The bars are too short beyond the face of the pedestal and pull out before they yield.",
    seen: "A pad cracked at its pedestal, with bars that have slipped at its edge.",
    range: "Uncoated deformed bars that reach from cover to cover, straight or with standard hooks at both ends. Bottom bars, and top bars where the pad lifts.",
    formulas: [...on.formulas, ...bendingFormulas, bandShare, bandMoment, rootStrength, ...developmentFormulas, farFace, lengthAtHand, lengthNeeded],
    applies: on.isOwn,
    inputs: (support, gather, place): I & Ends => {
      const category = gather.may(support.site["seismic design category"]);
      const pad = on.read(support, gather, place);
      const isFull = category !== undefined && fullCategories.has(category);
      if (isFull && on.isPoint(pad)) gather.block(`in seismic design category ${category} the bars are developed in full from the face of what stands on the pad, whose size is not known: describe its pedestal or its base plate`);
      return { ...pad, isHooked: gather.may(support.foundation?.fields["hooked bars"]) ?? false, isFull };
    },
    fixedBy: (support) => support.foundation?.fields["bottom bars"] ?? support.foundation,
    evaluate: (inputs, demand, calc) => {
      const acting = on.acting(inputs, demand, "by factor", calc);
      if (acting && "because" in acting) return unchecked(acting.because);
      const moments = bottomBending(inputs, acting, calc);
      if ("because" in moments) return unchecked(moments.because);
      let worst = lengths(inputs, inputs.bottom, moments, false, calc);
      if (inputs.top && acting) {
        const hogging = topMoments(inputs, inputs.top, acting, calc);
        if (!hogging) return unchecked(tooMuchSteel);
        worst = worseOf(worst, lengths(inputs, inputs.top, hogging, isAbove(inputs.top.d, highCast), calc));
      }
      return weigh(worst.demand, worst.capacity, "length");
    },
    advise: (inputs, outcome, say) =>
      `${say.show(outcome.demand, "length")} of bar needed beyond the face; ${say.show(outcome.capacity, "length")} there. Take smaller bars closer together${inputs.isHooked ? "" : ", hook their ends"}, or widen the pad.`,
  });

export const footingDevelopment = developmentOf(onSoil);
