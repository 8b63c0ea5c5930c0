/**
 * The ground moves under one foundation otherwise than under the next: the grade beam between them is pulled apart or crushed, and the columns spread.
 *
 * ASCE 7-22 12.13.7.2 and 12.13.8.2, ACI 318-19 18.13.4.3: in tension and in compression a tenth of S_DS times the factored dead and live load of the
 * larger column. IBC 2021 1809.13 and 1810.3.13 allow no more than a quarter of the smaller one's; that lesser force is not taken. From memory.
 */
import { plainCalc } from "../../formula/calc.js";
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { check, type CheckDecl, weigh } from "../contract.js";
import { pullStrength, tiedCompression } from "../pier/concrete-axial.js";
import { concreteEditions, countedShare, verticalBars } from "../pier/concrete-member.js";
import { beamArea, type BeamConcrete, beamField, type BeamInputs, readBeam, readBeamConcrete, tiedFooting, type TiedFoundation, tiedPier } from "./grade-beam.js";

export const tieForce = formula({
  id: "footing.grade-beam-force",
  text: "F_t = 0.1 * S_DS * max(P_u, 0 * P_u)",
  source: "ASCE 7-22 12.13.7.2, ACI 318-19 18.13.4.3 (from memory)",
  symbols: {
    F_t: { kind: "force", meaning: "force the beam takes in tension and in compression" },
    S_DS: { kind: "number", meaning: "design spectral acceleration at short periods, as a part of gravity", field: "site.short-period acceleration" },
    P_u: { kind: "force", meaning: "factored gravity load of the column" },
  },
});

interface StrengthInputs extends BeamInputs, BeamConcrete {
  readonly S_DS: number;
}

const sideways = new Set(["W", "E", "Ev"]);
/** A combination of gravity alone; reactions that came combined do not say, and count. */
const isGravity = ({ combination }: Demand): boolean => !combination.terms.some(({ type }) => sideways.has(type));

/** Design strengths of the beam along its axis, N. */
function strengths({ width: b_g, depth: h_g, bar, count, fprime_c, f_y }: StrengthInputs, calc: Calc): { readonly pulled: number; readonly pressed: number } {
  const A_g = calc(beamArea, { b_g, h_g });
  const A_st = calc(verticalBars, { n: count, A_b: bar.area });
  const k_A = calc(countedShare, { A_st, A_g });
  return { pulled: calc(pullStrength, { A_st, f_y }), pressed: Math.max(0, calc(tiedCompression, { fprime_c, k_A, A_g, A_st, f_y })) };
}

const declare = (tied: TiedFoundation): CheckDecl<StrengthInputs, "strength"> =>
  check<StrengthInputs, "strength">({
    id: tied.id("strength"),
    title: "Grade beam as a tie",
    link: tied.word,
    level: "strength",
    clause: "ASCE 7-22 12.13.7.2, 12.13.8.2; ACI 318-19 18.13.4.3 (from memory)",
    editions: concreteEditions,
    fails: "The ground moves under one foundation otherwise than under the next, and the beam between them is pulled apart or crushed.",
    seen: "Columns that have spread after an earthquake, with a crack right across the beam between them.",
    range:
      "The force of this line's own columns: describe the beam under both foundations it ties, and the larger column governs. Load of gravity combinations, snow among them; a reaction that came combined counts in full. " +
      "Strength along the axis alone, by the concrete, cover and bar grade of the foundation: a beam that also takes moment from its columns, or settles with them, is not looked at.",
    formulas: [tieForce, beamArea, verticalBars, pullStrength, countedShare, tiedCompression],
    applies: tied.is,
    inputs: (support, gather) => ({ ...readBeam(support, gather), ...readBeamConcrete(support, gather), S_DS: gather.need(support.site["short-period acceleration"], "short-period acceleration S_DS of the site") }),
    fixedBy: beamField("bars"),
    evaluate: (inputs, demand, calc) => {
      const { pulled, pressed } = strengths(inputs, calc);
      const capacity = Math.min(pulled, pressed);
      if (!isGravity(demand)) return weigh(0, capacity, "force");
      if (demand.combination.terms.length === 0) calc.note("The reaction came already combined: all of its push counts as gravity load.");
      return weigh(calc(tieForce, { S_DS: inputs.S_DS, P_u: demand.base.P }), capacity, "force");
    },
    advise: (inputs, outcome, say) => {
      const { pulled, pressed } = strengths(inputs, plainCalc);
      return `the beam takes ${say.show(outcome.demand, "force")} along its axis; ${pulled <= pressed ? `its ${inputs.count} ${inputs.bar.name} hold ${say.show(outcome.capacity, "force")} in tension. Add bars or take larger ones.` : `it holds ${say.show(outcome.capacity, "force")} in compression. Widen it, or add bars.`}`;
    },
  });

export const pierBeamStrength = declare(tiedPier);
export const footingBeamStrength = declare(tiedFooting);
