/**
 * The pad is too thin for its bars to be cast well: what ground and handling take from it is a large part of its depth.
 *
 * ACI 318-19 13.3.1.2: effective depth of the bottom bars at least 6 in.
 */
import { formula } from "../../formula/declare.js";
import { check, sameInAll, weigh } from "../contract.js";
import { padEditions, type PadInputs } from "./pad.js";
import { onSoil, type PadOn } from "./pad-on.js";

export const leastEffective = formula({
  id: "footing.least-effective-depth",
  text: "d_min = d_6",
  source: "ACI 318-19 13.3.1.2 (from memory)",
  symbols: { d_min: { kind: "length", meaning: "least effective depth" } },
  constants: { d_6: "6 inch" },
});

export const leastDepthOf = <I extends PadInputs>(on: PadOn<I>) =>
  check({
    id: on.id("least-depth"),
    title: `Least thickness of ${on.words}`,
    link: on.link,
    level: "strength",
    clause: "ACI 318-19 13.3.1.2",
    editions: padEditions,
    fails: "The pad is too thin for its bars.",
    seen: "Bars bare at the underside of a thin pad.",
    range: "Effective depth of the bottom bars, the mean of the two layers. Depth below grade is for the frost rule.",
    formulas: [leastEffective],
    applies: on.applies,
    inputs: on.read,
    measures: sameInAll,
    fixedBy: (support) => support.foundation?.fields.thickness ?? support.foundation,
    evaluate: (inputs, _demand, calc) => weigh(calc(leastEffective, {}), inputs.bottom.d, "length"),
    advise: (_inputs, outcome, say) => `effective depth ${say.show(outcome.capacity, "length")}; at least ${say.show(outcome.demand, "length")} needed. Thicken the pad.`,
  });

export const footingLeastDepth = leastDepthOf(onSoil);
