/**
 * The bars are pulled apart by the uplift, or bars and concrete are crushed by the weight. In the field a crack right round the pier, or spalled cover.
 *
 * ACI 318-19 22.4.2 (compression, 0.80 of it with ties and 0.85 with a spiral for chance eccentricity), 22.4.3 (pull: bars alone), 21.2.2.
 */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import { worseOf } from "../../mechanics/worse.js";
import type { Calc } from "../../formula/types.js";
import { check, weigh } from "../contract.js";
import { axialAlong, axialFormulas } from "./concrete-forces.js";
import { areaFormulas, concreteEditions, type ConcreteMember, countedShare, memberArea, type MemberInputs, pedestalMember, pierMember, readMember, verticalBars, withBars } from "./concrete-member.js";
import { isSpiral } from "./concrete-spiral.js";

const steel = { kind: "area", meaning: "area of the vertical bars" } as const;
const f_y = { kind: "steelStress", meaning: "yield strength of the bars", field: "foundations.*.bar grade" } as const;
const pressed = {
  phiP_n: { kind: "force", meaning: "largest design compression" },
  fprime_c: { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" },
  k_A: { kind: "ratio", meaning: "share of the concrete that is counted" },
  A_g: { kind: "planArea", meaning: "area of the section" },
  A_st: steel,
  f_y,
} as const;

export const pullStrength = formula({
  id: "pier.pull-strength",
  text: "phiT_n = phi * A_st * f_y",
  source: "ACI 318-19 22.4.3.1, Table 21.2.2",
  symbols: { phiT_n: { kind: "force", meaning: "design strength of the bars in tension" }, A_st: steel, f_y },
  constants: { phi: "0.9" },
});

export const tiedCompression = formula({
  id: "pier.tied-compression",
  text: "phiP_n = phi * k_e * (0.85 * fprime_c * k_A * (A_g - A_st) + f_y * A_st)",
  source: "ACI 318-19 Table 22.4.2.1, 22.4.2.2, Table 21.2.2, ties",
  symbols: pressed,
  constants: { phi: "0.65", k_e: "0.80" },
});

export const spiralCompression = formula({
  id: "pier.spiral-compression",
  text: "phiP_n = phi * k_e * (0.85 * fprime_c * k_A * (A_g - A_st) + f_y * A_st)",
  source: "ACI 318-19 Table 22.4.2.1, 22.4.2.2, Table 21.2.2, spiral by 25.7.3",
  symbols: pressed,
  constants: { phi: "0.75", k_e: "0.85" },
});

/** Largest design compression and design pull, N. */
export function axialLimits(inputs: MemberInputs, calc: Calc): { readonly pressed: number; readonly pulled: number } {
  const A_g = memberArea(inputs, calc);
  const A_st = calc(verticalBars, { n: inputs.count, A_b: inputs.bar.area });
  const k_A = calc(countedShare, { A_st, A_g });
  const { fprime_c, f_y } = inputs;
  const pressed = calc(isSpiral(inputs) ? spiralCompression : tiedCompression, { fprime_c, k_A, A_g, A_st, f_y });
  return { pressed: Math.max(0, pressed), pulled: calc(pullStrength, { A_st, f_y }) };
}

const declare = (member: ConcreteMember) =>
  check({
    id: member.id("axial"),
    title: `Push and pull on the ${member.word}`,
    link: member.link,
    level: "strength",
    clause: "ACI 318-19 22.4.2, 22.4.3",
    editions: concreteEditions,
    fails: "The bars are pulled apart by uplift, or concrete and bars are crushed.",
    seen: `A crack right round the ${member.word} that opens in a storm; spalled cover.`,
    range: "Axial force alone; bending goes with it in a check of its own. All of the weight presses at the foot, none of it holds against a pull at the top, and the soil along a pier takes nothing off. Bars go all the way. A slender one that stands free has a check of its own.",
    formulas: [...areaFormulas, ...axialFormulas, verticalBars, pullStrength, countedShare, tiedCompression, spiralCompression],
    applies: withBars(member),
    inputs: (support, gather) => readMember(member, support, gather),
    fixedBy: (support) => support.foundation?.fields.bars ?? support.foundation,
    evaluate: (inputs, demand, calc) => {
      const { least, most } = axialAlong(inputs, demand, calc);
      const { pressed, pulled } = axialLimits(inputs, calc);
      const worst = worseOf({ demand: Math.max(0, most), capacity: pressed }, { demand: least < 0 ? Math.abs(least) : 0, capacity: pulled });
      return weigh(worst.demand, worst.capacity, "force");
    },
    advise: (inputs, outcome, say) => {
      const isPull = outcome.capacity === axialLimits(inputs, plainCalc).pulled;
      return isPull
        ? `${say.show(outcome.demand, "force")} pulls at the ${member.word}; its ${inputs.count} ${inputs.bar.name} bars hold ${say.show(outcome.capacity, "force")}. Add bars or take larger ones.`
        : `${say.show(outcome.demand, "force")} presses on the ${member.word}; it carries ${say.show(outcome.capacity, "force")}. Widen it, add bars or take stronger concrete.`;
    },
  });

export const pierAxial = declare(pierMember);
export const pedestalAxial = declare(pedestalMember);
