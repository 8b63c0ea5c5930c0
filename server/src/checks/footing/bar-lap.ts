/**
 * Bars of a long pad that are not in one piece lap too little: they slip past each other before they yield. In the field a wide crack right across a strip
 * where its bars end beside each other.
 *
 * ACI 318-19 25.5.2.1, class B: 1.3 of the development length of a straight bar, 12 in at least; every bar may lap in one place.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import { check, type Gather, sameInAll, weighLimit } from "../contract.js";
import type { Support } from "../../project/model.js";
import { developmentFormulas, straight } from "./bar-development.js";
import { isFooting } from "./body.js";
import { highCast } from "./development.js";
import { rootStrength } from "./one-way-shear.js";
import { type BothWays, padEditions, type PadInputs, readPad } from "./pad.js";

export const classB = formula({
  id: "footing.lap-needed",
  text: "l_st = max(1.3 * l_d, l_12)",
  source: "ACI 318-19 Table 25.5.2.1, class B",
  symbols: { l_st: { kind: "length", meaning: "lap needed" }, l_d: { kind: "length", meaning: "development length of a straight bar in tension" } },
  constants: { l_12: "12 inch" },
});

interface LapInputs extends PadInputs {
  readonly lap: number;
}

/** The longest lap the bars of one face need, m. */
function neededBy({ cover, f_y, fprime_c, edition }: LapInputs, mats: BothWays, isHigh: boolean, calc: Calc): number {
  const s_c = calc(rootStrength, { fprime_c });
  const lapOf = (mat: BothWays["x"]): number => calc(classB, { l_d: straight(mat, cover, f_y, s_c, isHigh, edition, calc) });
  return Math.max(lapOf(mats.x), lapOf(mats.y));
}

export const footingBarLap = check({
  id: "footing.bar-lap",
  title: "Lap of the bars of the pad",
  link: "footing",
  level: "strength",
  clause: "ACI 318-19 25.5.2.1",
  editions: padEditions,
  fails: "The bars lap too little and slip past each other before they yield.",
  seen: "A strip parted where its bars end beside each other.",
  range: "Straight uncoated bars up to no. 11 that touch, all of them lapped in one place: class B, for their full strength. The spacing of the bars is taken as it is beside the lap.",
  formulas: [rootStrength, ...developmentFormulas, classB],
  applies: (support: Support) => isFooting(support) && support.foundation?.fields["bar lap"] !== undefined,
  inputs: (support: Support, gather: Gather): LapInputs => ({ ...readPad(support, gather), lap: gather.need(support.foundation?.fields["bar lap"], "lap of the bars of the pad") }),
  measures: sameInAll,
  fixedBy: (support) => support.foundation?.fields["bar lap"] ?? support.foundation,
  evaluate: (inputs, _demand, calc) => {
    const bottom = neededBy(inputs, inputs.bottom, false, calc);
    const top = inputs.top ? neededBy(inputs, inputs.top, isAbove(inputs.top.d, highCast), calc) : 0;
    return weighLimit(Math.max(bottom, top), inputs.lap, "length");
  },
  advise: (_inputs, outcome, say) => `the bars lap ${say.show(outcome.capacity, "length")}; ${say.show(outcome.demand, "length")} needed. Lap them longer, take smaller bars, or couple them.`,
});
