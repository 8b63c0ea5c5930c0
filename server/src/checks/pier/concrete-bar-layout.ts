/**
 * Too few bars do not hold ties or spiral in shape; bars too close to each other keep the concrete from passing and from gripping them.
 *
 * ACI 318-19 10.7.3.1 (four within ties, six within a spiral) and 25.2.3 (clear distance).
 */
import { formula } from "../../formula/declare.js";
import { clearNeeded } from "../anchors/fit.js";
import { weighLimit } from "../contract.js";
import { barsOf, detail, detailOf } from "./concrete-detail.js";
import { type ConcreteMember, type MemberInputs, pedestalMember, pierMember, readMember } from "./concrete-member.js";

const n_r = { kind: "number", meaning: "least number of bars" } as const;

export const countInTies = formula({ id: "pier.count-in-ties", text: "n_r = 4", source: "ACI 318-19 10.7.3.1(b): within rectangular or circular ties", symbols: { n_r } });
export const countInSpiral = formula({ id: "pier.count-in-spiral", text: "n_r = 6", source: "ACI 318-19 10.7.3.1(c): within a spiral", symbols: { n_r } });

export const clearBetween = formula({
  id: "pier.clear-between-bars",
  text: "s_n = s_b - d_b",
  source: "geometry",
  symbols: {
    s_n: { kind: "length", meaning: "clear distance of two bars", range: [-1, 1] },
    s_b: { kind: "length", meaning: "least distance of two bars, center to center" },
    d_b: { kind: "length", meaning: "diameter of the vertical bars", field: "foundations.*.bars" },
  },
});

export const clearByAggregate = formula({
  id: "pier.clear-by-aggregate",
  text: "s_a = 4 / 3 * d_agg",
  source: "ACI 318-19 25.2.3",
  symbols: { s_a: { kind: "length", meaning: "clear distance for the aggregate" }, d_agg: { kind: "length", meaning: "largest aggregate", field: "foundations.*.aggregate size" } },
});

const declareCount = (member: ConcreteMember) =>
  detail(member, {
    name: "bar-count",
    title: `Number of bars of the ${member.word}`,
    clause: "ACI 318-19 10.7.3.1",
    fails: "There are too few bars for the ties or the spiral to stand on.",
    seen: "A cage that leans in its hole before the concrete comes.",
    range: "Four bars within ties, six within a spiral. Triangular ties round three bars are not followed.",
    formulas: [countInTies, countInSpiral],
    fixedBy: barsOf,
    evaluate: (inputs, calc) => weighLimit(calc(inputs.transverse.kind === "spiral" ? countInSpiral : countInTies, {}), inputs.count, "number"),
    advise: (inputs, outcome, say) => `${inputs.count} bars; ${say.show(outcome.demand, "number")} needed within ${inputs.transverse.kind === "spiral" ? "a spiral" : "ties"}. Add bars.`,
  });

interface GapInputs extends MemberInputs {
  readonly aggregate: number | undefined;
}

const declareGap = (member: ConcreteMember) =>
  detailOf(member, (support, gather): GapInputs => ({ ...readMember(member, support, gather), aggregate: gather.may(support.foundation?.fields["aggregate size"]) }), {
    name: "bar-gap",
    title: `Clear distance of the bars of the ${member.word}`,
    clause: "ACI 318-19 25.2.3",
    fails: "The bars stand so close that concrete does not pass between them.",
    seen: "Hollows behind the bars, and cover that sounds loose.",
    range: "Bars evenly round the section behind cover and ties. 1.5 in, 1.5 bar diameters, and four thirds of the aggregate where its size is stated. Laps are not looked at.",
    formulas: [clearBetween, clearNeeded, clearByAggregate],
    fixedBy: barsOf,
    evaluate: (inputs, calc) => {
      const d_b = inputs.bar.diameter;
      const clear = calc(clearBetween, { s_b: inputs.barSpacing, d_b });
      const least = calc(clearNeeded, { d_b });
      return weighLimit(inputs.aggregate === undefined ? least : Math.max(least, calc(clearByAggregate, { d_agg: inputs.aggregate })), Math.max(0, clear), "length");
    },
    advise: (_inputs, outcome, say) => `${say.show(outcome.capacity, "length")} clear between bars; ${say.show(outcome.demand, "length")} needed. Take fewer and larger bars, or widen the ${member.word}.`,
  });

export const pierBarCount = declareCount(pierMember);
export const pedestalBarCount = declareCount(pedestalMember);
export const pierBarGap = declareGap(pierMember);
export const pedestalBarGap = declareGap(pedestalMember);
