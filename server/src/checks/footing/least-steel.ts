/**
 * The pad has too few bars: it cracks from shrinkage and temperature, and breaks without warning when its concrete does.
 *
 * ACI 318-19 13.3.3.1 with 8.6.1.1 (two-way) and 24.4.3.2: 0.0018 of the gross section each way.
 */
import { formula } from "../../formula/declare.js";
import { worseOf } from "../../mechanics/worse.js";
import { check, sameInAll, weigh } from "../contract.js";
import { padEditions, type PadInputs } from "./pad.js";
import { onSoil, type PadOn } from "./pad-on.js";

export const leastArea = formula({
  id: "footing.least-area",
  text: "A_smin = 0.0018 * b * t",
  source: "ACI 318-19 8.6.1.1, 24.4.3.2",
  symbols: {
    A_smin: { kind: "area", meaning: "least area of the bars of a direction" },
    b: { kind: "length", meaning: "side of the pad across the bars" },
    t: { kind: "length", meaning: "thickness of the pad", field: "foundations.*.thickness" },
  },
});

export const leastSteelOf = <I extends PadInputs>(on: PadOn<I>) =>
  check({
    id: on.id("least-steel"),
    title: `Least bars of ${on.words}`,
    link: on.link,
    level: "strength",
    clause: "ACI 318-19 13.3.3.1, 8.6.1.1",
    editions: padEditions,
    fails: "The pad has too few bars to hold together once its concrete cracks.",
    seen: "A pad split in two by a load it had carried for years.",
    range: "Bottom bars both ways; 0.0018 of the gross section, of any grade. Plain footings are not covered.",
    formulas: [leastArea],
    applies: on.applies,
    inputs: on.read,
    measures: sameInAll,
    fixedBy: (support) => support.foundation?.fields["bottom bars"] ?? support.foundation,
    evaluate: (inputs, _demand, calc) => {
      const { bottom, width, length, thickness: t } = inputs;
      const worst = worseOf({ demand: calc(leastArea, { b: length, t }), capacity: bottom.x.area }, { demand: calc(leastArea, { b: width, t }), capacity: bottom.y.area });
      return weigh(worst.demand, worst.capacity, "area");
    },
    advise: (_inputs, outcome, say) => `the bottom bars of one direction have ${say.show(outcome.capacity, "area")}; at least ${say.show(outcome.demand, "area")} are needed. Add bars or take larger ones.`,
  });

export const footingLeastSteel = leastSteelOf(onSoil);
