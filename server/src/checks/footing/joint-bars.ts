/**
 * The bars that go from the pedestal into the pad yield: the pedestal is drawn off its pad, or tilts on it.
 *
 * ACI 318-19 16.3.3.1 to 16.3.3.3 and 22.4.3.1: all tension across the joint is carried by bars; phi 0.9 (21.2.2). Tension of the bar that
 * pulls most in the cracked elastic section.
 */
import { check, unchecked, weigh } from "../contract.js";
import { barStrength } from "../rock/dowel-steel.js";
import { padEditions } from "./pad.js";
import { atJoint, hasPedestal, readJoint, shareAtJoint, shareFormulas } from "./pedestal.js";

export const footingJointBars = check({
  id: "footing.joint-bars",
  title: "Bars between pedestal and pad",
  link: "footing",
  level: "strength",
  clause: "ACI 318-19 16.3.3, 22.4.3.1",
  editions: padEditions,
  fails: "The bars from the pedestal into the pad yield, and the pedestal lifts or tilts off it.",
  seen: "A crack round the foot of the pedestal that opens in the wind.",
  range: "Bars evenly round the pedestal behind their cover. The pedestal above the joint has checks of its own; shear friction across the joint is not checked.",
  formulas: [...shareFormulas, barStrength],
  applies: hasPedestal,
  inputs: readJoint,
  fixedBy: (support) => support.foundation?.fields.bars ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const joint = atJoint(inputs, demand, calc);
    const capacity = calc(barStrength, { f_y: inputs.f_y, A_s: inputs.bar.area });
    if (joint.N_j >= 0 && joint.M_x === 0 && joint.M_y === 0) return weigh(0, capacity, "force");
    const found = shareAtJoint(inputs, joint, calc);
    if ("unstable" in found) return unchecked(`bars and bearing at the foot of the pedestal cannot hold this combination: ${found.unstable}`);
    return weigh(Math.max(0, ...found.tensions), capacity, "force");
  },
  advise: (inputs, outcome, say) => `one ${inputs.bar.name} bar at the foot of the pedestal pulls ${say.show(outcome.demand, "force")}; it holds ${say.show(outcome.capacity, "force")}. Use more or larger bars, or a wider pedestal.`,
});
