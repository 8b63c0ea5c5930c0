/**
 * Where the shear is more than half of what the concrete may carry, ties have to be there to carry it on when it cracks; with fewer, the section parts
 * without a warning.
 *
 * ACI 318-19 10.6.2.1 and 10.6.2.2.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import { check, unchecked, weighLimit } from "../contract.js";
import { axialAlong, shearAlong } from "./concrete-forces.js";
import { concreteEditions, type ConcreteMember, pedestalMember, pierMember, withBars } from "./concrete-member.js";
import { readShear, shearFormulas, type ShearInputs, shearMeasures, webStrength } from "./concrete-shear.js";

export const halfStrength = formula({
  id: "pier.half-shear-strength",
  text: "V_h = 0.5 * phi * V_c",
  source: "ACI 318-19 10.6.2.1",
  symbols: { V_h: { kind: "force", meaning: "shear above which least ties are needed" }, V_c: { kind: "force", meaning: "shear strength of the concrete" } },
  constants: { phi: "0.75" },
});

function onAxis(inputs: ShearInputs, axis: "x" | "y", V_u: number, N_u: number, calc: Calc): Pair {
  const { concrete, legs, leastLegs } = webStrength(inputs, axis, N_u, calc);
  return { demand: V_u > calc(halfStrength, { V_c: concrete }) ? leastLegs : 0, capacity: legs };
}

const declare = (member: ConcreteMember) =>
  check({
    id: member.id("least-ties"),
    title: `Least ties of the ${member.word} for shear`,
    link: member.link,
    level: "strength",
    clause: "ACI 318-19 10.6.2",
    editions: concreteEditions,
    fails: "There are too few ties to carry the shear on when the concrete cracks.",
    seen: `A ${member.word} that came apart at its first inclined crack.`,
    range: "Asked for where the shear is more than half the design strength of the concrete. Two legs of each tie count.",
    formulas: [...shearFormulas, halfStrength],
    applies: withBars(member),
    inputs: readShear(member),
    measures: shearMeasures,
    fixedBy: (support) => support.foundation?.fields.ties ?? support.foundation?.fields.spiral ?? support.foundation,
    evaluate: (inputs, demand, calc) => {
      const V = shearAlong(inputs, demand, calc);
      if ("because" in V) return unchecked(V.because);
      const { least } = axialAlong(inputs, demand, calc);
      const x = onAxis(inputs, "x", V.x, least, calc);
      const worst = inputs.shape === "round" ? x : worseOf(x, onAxis(inputs, "y", V.y, least, calc));
      return weighLimit(worst.demand, worst.capacity, "area");
    },
    advise: (inputs, outcome, say) =>
      `two legs of ${inputs.transverse.name} have ${say.show(outcome.capacity, "area")}; at ${say.show(inputs.transverse.spacing, "length")} apart ${say.show(outcome.demand, "area")} is needed. Set the ties closer or take larger ones.`,
  });

export const pierLeastTies = declare(pierMember);
export const pedestalLeastTies = declare(pedestalMember);
