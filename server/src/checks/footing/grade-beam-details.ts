/**
 * A tie between foundations that is too slender bows out of the ground when it is pushed; with too few bars or ties it breaks where it first cracks.
 *
 * ACI 318-19 18.13.3, 18.13.4 (ACI 318-14 18.13.3.2): least side a twentieth of the clear span, 18 in at most; closed ties at half the least side, 12 in at
 * most. 10.6.1.1, 10.3.1.2 and 10.7.3.1: bars as of a compression member wider than it need be, one in each corner. From memory.
 */
import type { Calc } from "../../formula/types.js";
import { formula } from "../../formula/declare.js";
import { check, type CheckDecl, type Gather, sameInAll, weighLimit } from "../contract.js";
import type { Support } from "../../project/model.js";
import { leastBars } from "../pier/concrete-bar-area.js";
import { concreteEditions, verticalBars } from "../pier/concrete-member.js";
import { tieSize } from "../pier/concrete-ties.js";
import { beamArea, beamField, type BeamInputs, beamSide, needBeam, readBeam, tiedFooting, type TiedFoundation, tiedPier } from "./grade-beam.js";

export const sideNeeded = formula({
  id: "footing.grade-beam-side-needed",
  text: "h_r = min(l_n / 20, h_18)",
  source: "ACI 318-19 18.13.3, 18.13.4 (from memory)",
  symbols: {
    h_r: { kind: "length", meaning: "least side the beam needs" },
    l_n: { kind: "distance", meaning: "clear span of the beam", field: "foundations.*.grade beam.clear span" },
  },
  constants: { h_18: "18 inch" },
});

export const beamTieSpacing = formula({
  id: "footing.grade-beam-tie-spacing",
  text: "s_m = min(h_l / 2, s_12)",
  source: "ACI 318-19 18.13.3, 18.13.4 (from memory)",
  symbols: { s_m: { kind: "length", meaning: "largest spacing of the closed ties" }, h_l: { kind: "length", meaning: "least side of the grade beam" } },
  constants: { s_12: "12 inch" },
});

export const cornerBars = formula({ id: "footing.grade-beam-corner-bars", text: "n_r = 4", source: "ACI 318-19 10.7.3.1: one in each corner of the ties", symbols: { n_r: { kind: "number", meaning: "bars needed" } } });

interface SizeInputs extends BeamInputs {
  readonly span: number;
}

interface TieInputs extends BeamInputs {
  readonly tie: { readonly name: string; readonly diameter: number };
  readonly spacing: number;
}

function readSize(support: Support, gather: Gather): SizeInputs {
  const beam = needBeam(support, gather);
  return { ...readBeam(support, gather), span: beam ? gather.need(beam["clear span"], "clear span of the grade beam") : Number.NaN };
}

function readTies(support: Support, gather: Gather): TieInputs {
  const beam = needBeam(support, gather);
  const ties = beam && gather.needs(beam.ties, "closed ties of the grade beam");
  const tie = ties && gather.needs(ties.bar, "size of the ties of the grade beam");
  return { ...readBeam(support, gather), tie: tie ?? { name: "", diameter: Number.NaN }, spacing: ties ? gather.need(ties.spacing, "spacing of the ties of the grade beam") : Number.NaN };
}

const sideOf = ({ width: b_g, depth: h_g }: BeamInputs, calc: Calc): number => calc(beamSide, { b_g, h_g });

const declareSize = (tied: TiedFoundation): CheckDecl<SizeInputs, "strength"> =>
  check<SizeInputs, "strength">({
    id: tied.id("size"),
    title: "Least side of the grade beam",
    link: tied.word,
    level: "strength",
    clause: "ACI 318-19 18.13.3, 18.13.4 (from memory)",
    editions: concreteEditions,
    fails: "The beam is so slender that it bows out when the foundations are pushed together.",
    seen: "A thin beam broken upward out of the ground.",
    range: "A twentieth of the clear span, 18 in at most. In place of a calculation of its slenderness.",
    formulas: [sideNeeded, beamSide],
    applies: tied.is,
    inputs: readSize,
    measures: sameInAll,
    fixedBy: beamField("width"),
    evaluate: (inputs, _demand, calc) => weighLimit(calc(sideNeeded, { l_n: inputs.span }), sideOf(inputs, calc), "length"),
    advise: (_inputs, outcome, say) => `the least side of the grade beam is ${say.show(outcome.capacity, "length")}; ${say.show(outcome.demand, "length")} needed for its span. Widen or deepen it.`,
  });

const declareTies = (tied: TiedFoundation): CheckDecl<TieInputs, "strength"> =>
  check<TieInputs, "strength">({
    id: tied.id("ties"),
    title: "Closed ties of the grade beam",
    link: tied.word,
    level: "strength",
    clause: "ACI 318-19 18.13.3, 18.13.4, 25.7.2.2 (from memory)",
    editions: concreteEditions,
    fails: "The ties stand so far apart, or are so thin, that the bars buckle between them.",
    seen: "Bars bowed out of a grade beam after an earthquake.",
    range: "Half the least side, 12 in at most, alike over the whole beam; no. 3 round bars to no. 10. A beam bent by its columns in an earthquake needs closer hoops at its ends, which are not looked at.",
    formulas: [beamSide, beamTieSpacing, tieSize],
    applies: tied.is,
    inputs: readTies,
    measures: sameInAll,
    fixedBy: beamField("ties"),
    evaluate: (inputs, _demand, calc) => {
      const d_r = calc(tieSize, { d_b: inputs.bar.diameter });
      if (inputs.tie.diameter < d_r) return weighLimit(d_r, inputs.tie.diameter, "length");
      return weighLimit(inputs.spacing, calc(beamTieSpacing, { h_l: sideOf(inputs, calc) }), "length");
    },
    advise: (inputs, outcome, say) =>
      outcome.capacity === inputs.tie.diameter
        ? `${inputs.tie.name} round ${inputs.bar.name}; ${say.show(outcome.demand, "length")} of diameter needed. Take larger ties.`
        : `ties ${say.show(outcome.demand, "length")} apart; ${say.show(outcome.capacity, "length")} at most. Set them closer.`,
  });

const declareBars = (tied: TiedFoundation): CheckDecl<BeamInputs, "strength"> =>
  check<BeamInputs, "strength">({
    id: tied.id("bars"),
    title: "Least bars of the grade beam",
    link: tied.word,
    level: "strength",
    clause: "ACI 318-19 10.6.1.1, 10.3.1.2, 10.7.3.1",
    editions: concreteEditions,
    fails: "The beam has so few bars that it parts at its first crack.",
    seen: "One wide crack across a grade beam, its few bars snapped.",
    range: "Four bars, and half of 1 % of the section, as of a compression member wider than its load asks. Least bars of a beam in bending are not looked at.",
    formulas: [beamArea, leastBars, verticalBars, cornerBars],
    applies: tied.is,
    inputs: readBeam,
    measures: sameInAll,
    fixedBy: beamField("bars"),
    evaluate: ({ width: b_g, depth: h_g, bar, count }, _demand, calc) => {
      const n_r = calc(cornerBars, {});
      if (count < n_r) return weighLimit(n_r, count, "number");
      return weighLimit(calc(leastBars, { A_g: calc(beamArea, { b_g, h_g }) }), calc(verticalBars, { n: count, A_b: bar.area }), "area");
    },
    advise: (inputs, outcome, say) =>
      outcome.quantity === "number"
        ? `${inputs.count} bars along the grade beam; ${say.show(outcome.demand, "number")} needed, one in each corner. Add bars.`
        : `${inputs.count} ${inputs.bar.name} have ${say.show(outcome.capacity, "area")}; ${say.show(outcome.demand, "area")} needed, half of 1 % of the section. Add bars or take larger ones.`,
  });

export const pierBeamDetails = [declareSize(tiedPier), declareTies(tiedPier), declareBars(tiedPier)] as const;
export const footingBeamDetails = [declareSize(tiedFooting), declareTies(tiedFooting), declareBars(tiedFooting)] as const;
