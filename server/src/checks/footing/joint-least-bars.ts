/**
 * Too few bars tie the pedestal to its pad to hold them together against what nobody reckoned with.
 *
 * ACI 318-19 16.3.4.1: at least 0.005 of the area of the pedestal crosses the joint.
 */
import { formula } from "../../formula/declare.js";
import { check, sameInAll, weigh } from "../contract.js";
import { pedestalAreaOf, roundPedestal, squaredPedestal } from "./body.js";
import { areaByCount, padEditions } from "./pad.js";
import { hasPedestal, readJoint } from "./pedestal.js";

export const leastJointArea = formula({
  id: "footing.least-joint-area",
  text: "A_smin = 0.005 * A_p",
  source: "ACI 318-19 16.3.4.1",
  symbols: { A_smin: { kind: "area", meaning: "least area of bars across the joint" }, A_p: { kind: "planArea", meaning: "area of the pedestal in plan" } },
});

export const footingJointLeastBars = check({
  id: "footing.joint-least-bars",
  title: "Least bars between pedestal and pad",
  link: "footing",
  level: "strength",
  clause: "ACI 318-19 16.3.4.1",
  editions: padEditions,
  fails: "Too few bars tie the pedestal to its pad.",
  seen: "A pedestal knocked off its pad by a small blow.",
  range: "All vertical bars of the pedestal are taken to go down into the pad.",
  formulas: [roundPedestal, squaredPedestal, leastJointArea, areaByCount],
  applies: hasPedestal,
  inputs: readJoint,
  measures: sameInAll,
  fixedBy: (support) => support.foundation?.fields.bars ?? support.foundation,
  evaluate: (inputs, _demand, calc) => weigh(calc(leastJointArea, { A_p: pedestalAreaOf(inputs, calc) }), calc(areaByCount, { n: inputs.count, A_b: inputs.bar.area }), "area"),
  advise: (_inputs, outcome, say) => `the bars of the pedestal have ${say.show(outcome.capacity, "area")}; at least ${say.show(outcome.demand, "area")} are needed across the joint. Add bars or take larger ones.`,
});
