/**
 * The concrete of the pedestal crushes where it stands on the pad.
 *
 * ACI 318-19 16.3.3.4 and 22.8.3.2: 0.85 f'c over the pedestal; the pad below, wider on all sides, has up to twice as much. With a moment, the
 * largest stress of the cracked elastic section. Bars in compression are not counted.
 */
import { formula } from "../../formula/declare.js";
import { check, unchecked, weigh } from "../contract.js";
import { padEditions } from "./pad.js";
import { atJoint, hasPedestal, readJoint, shareAtJoint, shareFormulas } from "./pedestal.js";

export const jointStress = formula({
  id: "footing.joint-bearing-stress",
  text: "f_d = phi * 0.85 * fprime_c",
  source: "ACI 318-19 Table 22.8.3.2, 21.2.1",
  symbols: { f_d: { kind: "stress", meaning: "design bearing strength, as a stress" }, fprime_c: { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" } },
  constants: { phi: "0.65" },
});

export const jointForce = formula({
  id: "footing.joint-bearing-force",
  text: "phiB_n = f_d * A_p",
  source: "ACI 318-19 Table 22.8.3.2",
  symbols: { phiB_n: { kind: "force", meaning: "design bearing strength of the pedestal" }, f_d: { kind: "stress", meaning: "design bearing strength, as a stress" }, A_p: { kind: "planArea", meaning: "area of the pedestal in plan" } },
});

export const footingJointBearing = check({
  id: "footing.joint-bearing",
  title: "Bearing of the pedestal on the pad",
  link: "footing",
  level: "strength",
  clause: "ACI 318-19 16.3.3.4, 22.8.3.2",
  editions: padEditions,
  fails: "The concrete of the pedestal crushes where it stands on the pad.",
  seen: "Spalled edges at the foot of the pedestal.",
  range: "Pedestal and pad of the same concrete, the pedestal on the middle of the pad. Bars in compression are not counted. Elastic stresses where there is a moment; an even stress block would give less.",
  formulas: [...shareFormulas, jointStress, jointForce],
  applies: hasPedestal,
  inputs: readJoint,
  fixedBy: (support) => support.foundation?.fields.pedestal ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const joint = atJoint(inputs, demand, calc);
    const f_d = calc(jointStress, { fprime_c: inputs.fprime_c });
    if (joint.M_x === 0 && joint.M_y === 0) return weigh(Math.max(0, joint.N_j), calc(jointForce, { f_d, A_p: joint.A_p }), "force");
    const found = shareAtJoint(inputs, joint, calc);
    if ("unstable" in found) return unchecked(`bars and bearing at the foot of the pedestal cannot hold this combination: ${found.unstable}`);
    return weigh(found.maxBearing, f_d, "stress");
  },
  advise: (_inputs, outcome, say) => `${say.show(outcome.demand, outcome.quantity)} at the foot of the pedestal; its concrete carries ${say.show(outcome.capacity, outcome.quantity)}. Widen the pedestal or take stronger concrete.`,
});
