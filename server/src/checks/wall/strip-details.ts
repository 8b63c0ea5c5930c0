/** Bars of the strip footing that its size asks for, whatever the load: least steel both ways, and the spacing of the bars across. */
import type { Support } from "../../project/model.js";
import { worseOf } from "../../mechanics/worse.js";
import { check, type Gather, sameInAll, weighLimit } from "../contract.js";
import { largestSpacing } from "../footing/bar-spacing.js";
import { leastArea } from "../footing/least-steel.js";
import { areaByCount, padEditions } from "../footing/pad.js";
import { isWall } from "./body.js";
import { readStrip, type StripInputs } from "./strip.js";


export interface StripSteelInputs extends StripInputs {
  /** All the bars along the wall, m². */
  readonly longArea: number;
}

function readLong(support: Support, gather: Gather): number {
  const fields = gather.needs(support.foundation?.fields.footing?.value["long bars"], "bars along the wall in its footing (`footing: long bars`)");
  const bar = gather.needs(fields?.bar, "size of the bars along the wall");
  const n = gather.need(fields?.count, "number of the bars along the wall");
  return bar ? areaByCount.value({ n, A_b: bar.area }) : Number.NaN;
}

export const wallStripSteel = check({
  id: "wall.strip-least-steel",
  title: "Least bars of the strip footing",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 13.3.2.1, 7.6.1.1, 24.4.3.2",
  editions: padEditions,
  fails: "The footing has too few bars to hold together once its concrete cracks.",
  seen: "A wall and its footing cracked through every few yards.",
  range: "Bottom bars across the wall, and all bars along it: 0.0018 of the gross section each, of any grade. Plain footings are not covered.",
  formulas: [leastArea],
  applies: isWall,
  inputs: (support, gather, place): StripSteelInputs => ({ ...readStrip(support, gather, place), longArea: readLong(support, gather) }),
  measures: sameInAll,
  fixedBy: (support) => support.foundation?.fields.footing?.value["long bars"] ?? support.foundation?.fields.footing ?? support.foundation,
  evaluate: (inputs, _demand, calc) => {
    const { base: t } = inputs;
    const found = worseOf({ demand: calc(leastArea, { b: inputs.run, t }), capacity: inputs.bottom.area }, { demand: calc(leastArea, { b: inputs.width, t }), capacity: inputs.longArea });
    return weighLimit(found.demand, found.capacity, "area");
  },
  advise: (_inputs, outcome, say) => `the bars of one direction of the footing have ${say.show(outcome.capacity, "area")}; at least ${say.show(outcome.demand, "area")} are needed. Add bars or take larger ones.`,
});

export const wallStripSpacing = check({
  id: "wall.strip-bar-spacing",
  title: "Spacing of the bars across the strip footing",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 7.7.2.3",
  editions: padEditions,
  fails: "The bars across lie so far apart that the concrete between them cracks wide.",
  seen: "Wide cracks between rusting bars.",
  range: "Largest spacing of the bars across the wall, at the bottom and the top. The least clear distance is not checked.",
  formulas: [largestSpacing],
  applies: isWall,
  inputs: readStrip,
  measures: sameInAll,
  fixedBy: (support) => support.foundation?.fields.footing?.value["bottom bars"] ?? support.foundation?.fields.footing ?? support.foundation,
  evaluate: (inputs, _demand, calc) => weighLimit(Math.max(inputs.bottom.spacing, inputs.top?.spacing ?? 0), calc(largestSpacing, { t: inputs.base }), "length"),
  advise: (_inputs, outcome, say) => `bars across the footing ${say.show(outcome.demand, "length")} apart; at most ${say.show(outcome.capacity, "length")} allowed. Add bars.`,
});
