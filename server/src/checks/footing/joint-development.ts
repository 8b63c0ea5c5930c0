/**
 * The bars of the pedestal do not go deep enough into the pad: they pull out, or push through to its underside.
 *
 * ACI 318-19 16.3.5 with 25.4.3 for hooks in tension and 25.4.9 in compression. They stand on the bottom bars; hooks count in tension alone.
 */
import { formula } from "../../formula/declare.js";
import { check, unchecked, weigh } from "../contract.js";
import { compressionLength, developmentFormulas, hooked } from "./bar-development.js";
import { rootStrength } from "./one-way-shear.js";
import { padEditions } from "./pad.js";
import { atJoint, hasPedestal, readJoint, shareAtJoint, shareFormulas } from "./pedestal.js";

export const depthAtHand = formula({
  id: "footing.dowel-depth",
  text: "l_a = t - c_c - d_bx - d_by",
  source: "geometry: down to the bottom bars",
  symbols: {
    l_a: { kind: "length", meaning: "depth of the pad above its bottom bars" },
    t: { kind: "length", meaning: "thickness of the pad", field: "foundations.*.thickness" },
    c_c: { kind: "length", meaning: "clear cover", field: "foundations.*.cover" },
    d_bx: { kind: "length", meaning: "diameter of the bars along x" },
    d_by: { kind: "length", meaning: "diameter of the bars along y" },
  },
});

export const footingJointDevelopment = check({
  id: "footing.joint-development",
  title: "Pedestal bars in the pad",
  link: "footing",
  level: "strength",
  clause: "ACI 318-19 16.3.5, 25.4.3, 25.4.9",
  editions: padEditions,
  fails: "The bars of the pedestal do not go deep enough into the pad to take up their force.",
  seen: "A pedestal lifted off its pad with its bars drawn out.",
  range: "Bars end in standard hooks on the bottom bars. In compression they are developed for their full yield strength; in tension with their hooks, whatever the tension is.",
  formulas: [...shareFormulas, rootStrength, compressionLength, ...developmentFormulas, depthAtHand],
  applies: hasPedestal,
  inputs: readJoint,
  fixedBy: (support) => support.foundation?.fields.thickness ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const { f_y, fprime_c, bar, bottom } = inputs;
    const s_c = calc(rootStrength, { fprime_c });
    const capacity = Math.max(0, calc(depthAtHand, { t: inputs.thickness, c_c: inputs.cover, d_bx: bottom.x.diameter, d_by: bottom.y.diameter }));
    const pressed = calc(compressionLength, { f_y, s_c, d_b: bar.diameter });
    const joint = atJoint(inputs, demand, calc);
    if (joint.N_j >= 0 && joint.M_x === 0 && joint.M_y === 0) return weigh(pressed, capacity, "length");
    const found = shareAtJoint(inputs, joint, calc);
    if ("unstable" in found) return unchecked(`bars and bearing at the foot of the pedestal cannot hold this combination: ${found.unstable}`);
    const pulls = found.tensions.some((tension) => tension > 0);
    const pulled = pulls ? hooked({ diameter: bar.diameter, spacing: inputs.barSpacing }, f_y, fprime_c, s_c, inputs.edition, calc) : 0;
    return weigh(Math.max(pressed, pulled), capacity, "length");
  },
  advise: (_inputs, outcome, say) => `the bars of the pedestal need ${say.show(outcome.demand, "length")} in the pad; ${say.show(outcome.capacity, "length")} there above its bottom bars. Thicken the pad or take smaller bars.`,
});
