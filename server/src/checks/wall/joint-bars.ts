/**
 * The bars that tie the wall to its footing yield, and the wall lifts or tilts along the joint. In the field a crack along the foot of the wall that opens in the wind.
 *
 * ACI 318-19 16.3.3, 22.2, 22.4 by strain compatibility of the section at the joint; and by 16.3.4.2 at least the vertical bars that a wall has to have (11.6.1).
 */
import type { Calc } from "../../formula/types.js";
import { check, sameInAll, unchecked, weigh, weighLimit } from "../contract.js";
import { padEditions } from "../footing/pad.js";
import { isWall } from "./body.js";
import { allDowels, atJoint, dowelsIn, jointField, type JointInputs, readJoint } from "./joint.js";
import type { Situation } from "./situations.js";
import { barRatio, leastUpright } from "./stem-details.js";
import { bendingAt, quantityOf } from "./stem-flexure.js";
import { type Barred, combinedAt, pulledApart, stemForceFormulas, type StemSection } from "./stem-forces.js";
import { worstOfStem } from "./stem-worst.js";

export const wallJointBars = check({
  id: "wall.joint-bars",
  title: "Bars between the wall and its footing",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 16.3.3, 22.2, 22.4",
  editions: padEditions,
  fails: "The bars from the footing into the wall yield, and the wall lifts or tilts along the joint.",
  seen: "A crack along the foot of the wall that opens in the wind.",
  range: "The section at the joint with its dowels, developed on both sides; per length of wall, over the length that carries the post at that depth. With the fill and without it, and on a length without a post; earth pressure with a load factor of 1.6, and what an earthquake adds where the fill states its coefficient.",
  formulas: [...stemForceFormulas, pulledApart],
  applies: isWall,
  inputs: readJoint,
  fixedBy: jointField,
  evaluate: (inputs, demand, calc) => {
    const combined = combinedAt(inputs, demand, calc);
    if ("because" in combined) return unchecked(combined.because);
    const attempt = (section: StemSection, known: Barred, situation: Situation, c: Calc) => bendingAt(inputs, combined, section, known, situation, c);
    const { demand: acts, capacity, of } = worstOfStem({ inputs, combined, all: atJoint(inputs), know: dowelsIn, attempt }, calc);
    return weigh(acts, capacity, quantityOf[of]);
  },
  advise: (_inputs, outcome, say) => {
    const kind = outcome.quantity === "momentPerLength" ? "momentPerLength" : "lineLoad";
    return `${say.show(outcome.demand, kind)} at the foot of the wall; its dowels hold ${say.show(outcome.capacity, kind)}. Set them closer or take larger ones.`;
  },
});

export const wallJointLeastBars = check({
  id: "wall.joint-least-bars",
  title: "Least bars between the wall and its footing",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 16.3.4.2, 11.6.1",
  editions: padEditions,
  fails: "Too few bars tie the wall to its footing.",
  seen: "A wall pushed off its footing by a small blow.",
  range: "All dowels over the section of the wall, against the least vertical bars of a wall in low shear.",
  formulas: [leastUpright, barRatio],
  applies: isWall,
  inputs: readJoint,
  measures: sameInAll,
  fixedBy: jointField,
  evaluate: (inputs: JointInputs, _demand, calc) => {
    const { thickness: t_w, f_y } = inputs;
    const dowels = allDowels(inputs);
    const d_m = Math.max(...dowels.map(({ diameter }) => diameter));
    const rho = dowels.reduce((rho_o, { area: A_b, spacing: s }) => calc(barRatio, { rho_o, A_b, s, t_w }), 0);
    return weighLimit(calc(leastUpright, { d_m, f_y }), rho, "ratio");
  },
  advise: (_inputs, outcome, say) => `the dowels are ${say.show(outcome.capacity, "ratio")} of the wall's section; at least ${say.show(outcome.demand, "ratio")} are needed. Set them closer or take larger ones.`,
});
