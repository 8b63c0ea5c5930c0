/**
 * Too few bars: the pier cracks and the bars yield in the same moment. Too many: concrete does not pass between them. A pier is wider than its column's
 * load asks, so that 1 % of half of it will do.
 *
 * ACI 318-19 10.6.1.1 (0.01 to 0.08), 10.3.1.2 (of a reduced area, at least half). Piers held by soil are given the same, common practice.
 */
import { formula } from "../../formula/declare.js";
import { weighLimit } from "../contract.js";
import { barsOf, detail } from "./concrete-detail.js";
import { areaFormulas, type ConcreteMember, memberArea, pedestalMember, pierMember, verticalBars } from "./concrete-member.js";

const A_g = { kind: "planArea", meaning: "area of the section" } as const;

export const leastBars = formula({
  id: "pier.least-bar-area",
  text: "A_sr = 0.5 * 0.01 * A_g",
  source: "ACI 318-19 10.6.1.1 on the half of the section that 10.3.1.2 asks for",
  symbols: { A_sr: { kind: "area", meaning: "least area of vertical bars" }, A_g },
});

export const mostBars = formula({
  id: "pier.most-bar-area",
  text: "A_sm = 0.08 * A_g",
  source: "ACI 318-19 10.6.1.1",
  symbols: { A_sm: { kind: "area", meaning: "largest area of vertical bars" }, A_g },
});

export const pierLeastBars = detail(pierMember, {
  name: "least-bars",
  title: "Least bars of the pier",
  clause: "ACI 318-19 10.6.1.1, 10.3.1.2",
  fails: "The pier has so few bars that they yield when it first cracks.",
  seen: "One wide crack across a pier, its few bars snapped.",
  range: "Half of 1 % of the section; up to 1 % its strength is counted on the reduced area they allow. The pedestal's is that of its joint with the pad. Seismic design category C asks for 0.25 % and D to F for 0.5 %, which are in it.",
  formulas: [...areaFormulas, leastBars, verticalBars],
  fixedBy: barsOf,
  evaluate: (inputs, calc) => weighLimit(calc(leastBars, { A_g: memberArea(inputs, calc) }), calc(verticalBars, { n: inputs.count, A_b: inputs.bar.area }), "area"),
  advise: (inputs, outcome, say) => `${inputs.count} ${inputs.bar.name} have ${say.show(outcome.capacity, "area")}; ${say.show(outcome.demand, "area")} needed, half of 1 % of the section. Add bars or take larger ones.`,
});

const declareMost = (member: ConcreteMember) =>
  detail(member, {
    name: "most-bars",
    title: `Most bars of the ${member.word}`,
    clause: "ACI 318-19 10.6.1.1",
    fails: "There are so many bars that the concrete between them is not sound.",
    seen: "Honeycombed concrete behind a wall of bars.",
    range: "Eight in a hundred of the section. Where bars lap, half of that is customary.",
    formulas: [...areaFormulas, verticalBars, mostBars],
    fixedBy: barsOf,
    evaluate: (inputs, calc) => weighLimit(calc(verticalBars, { n: inputs.count, A_b: inputs.bar.area }), calc(mostBars, { A_g: memberArea(inputs, calc) }), "area"),
    advise: (inputs, outcome, say) => `${inputs.count} ${inputs.bar.name} have ${say.show(outcome.demand, "area")}; ${say.show(outcome.capacity, "area")} at most. Take fewer or smaller bars, or widen the ${member.word}.`,
  });

export const pierMostBars = declareMost(pierMember);
export const pedestalMostBars = declareMost(pedestalMember);
