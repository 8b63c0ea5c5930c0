/**
 * The pier or pedestal breaks in bending: its bars yield on the pulled side or its concrete crushes on the other. In the field a crack across it a few
 * feet below grade, hidden, and a column that leans.
 *
 * ACI 318-19 22.2, 22.4, 21.2.2 by strain compatibility. Moment of a pier from springs or p-y curves where the ground's are stated; else of a rigid pier on
 * springs of two spreads, the worse, which any stiffness of soil stays below. Pull counts with its moment.
 */
import { steelModulus } from "../../catalog/materials.js";
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { bendingStrength, bestAxial, type ColumnStrength, type CurvePoint, interactionCurve, type Reduction } from "../../mechanics/column-strength.js";
import { worseOf } from "../../mechanics/worse.js";
import type { Demand } from "../../actions/demand.js";
import { check, unchecked, weigh } from "../contract.js";
import { oncePerInputs } from "../once.js";
import { axialLimits } from "./concrete-axial.js";
import { type AlongMember, axialAlong, bentFormulas, bentSections, lateralMeasures, readAlong } from "./concrete-forces.js";
import { concreteEditions, type ConcreteMember, memberFormulas, type MemberInputs, pedestalMember, pierMember, readMember, sectionOf, withBars } from "./concrete-member.js";
import { isSpiral } from "./concrete-spiral.js";
import { betweenBars } from "./concrete-turn.js";

export interface BendingInputs extends MemberInputs, AlongMember {}

export const pulledStrain = formula({
  id: "pier.pulled-strain",
  text: "epsilon_tc = f_y / E_s + 0.003",
  source: "ACI 318-19 Table 21.2.2",
  symbols: {
    epsilon_tc: { kind: "number", meaning: "strain of the bars from which phi is 0.9" },
    f_y: { kind: "steelStress", meaning: "yield strength of the bars", field: "foundations.*.bar grade" },
    E_s: { kind: "steelStress", meaning: "modulus of the bars" },
  },
});

export const pulledStrainEarlier = formula({
  id: "pier.pulled-strain-earlier",
  text: "epsilon_tc = 0.005",
  source: "ACI 318-14 Table 21.2.2",
  symbols: { epsilon_tc: { kind: "number", meaning: "strain of the bars from which phi is 0.9" } },
});

function reductionOf(inputs: MemberInputs, calc: Calc): Reduction {
  const { f_y } = inputs;
  const pulledFrom = inputs.edition === "ACI 318-14" ? calc(pulledStrainEarlier, {}) : calc(pulledStrain, { f_y, E_s: steelModulus.value });
  const spiral = isSpiral(inputs);
  calc.note(spiral ? "The spiral is one by 25.7.3: phi is 0.75 where compression controls." : "Ties, or a spiral that falls short of 25.7.3: phi is 0.65 where compression controls.");
  return { pressed: spiral ? 0.75 : 0.65, pulledFrom };
}

/** What a section holds in bending depends on. */
export const strengthOf = (inputs: MemberInputs, calc: Calc): ColumnStrength => ({ section: sectionOf(inputs, calc), reduction: reductionOf(inputs, calc) });

/** Compression up to which it helps, N. */
const helpful = oncePerInputs((inputs: BendingInputs): number => bestAxial(strengthOf(inputs, plainCalc)));

/** Formulas of {@link strengthOf} that are this check's own. */
export const bendingFormulas = [pulledStrain, pulledStrainEarlier] as const;

const aboveZero = (value: number): number => Math.max(0, value);

export const overHelpful = formula({
  id: "pier.over-helpful",
  text: "N_o = N - N_h",
  source: "arithmetic",
  symbols: {
    N_o: { kind: "force", meaning: "axial force beyond the one at which the section holds most", range: [-1e6, 1e6] },
    N: { kind: "force", meaning: "axial force, compression positive", range: [-1e6, 1e6] },
    N_h: { kind: "force", meaning: "axial force at which the section holds most", range: [-1e6, 1e6] },
  },
});

const declare = (member: ConcreteMember) =>
  check({
    id: member.id("bending"),
    title: `Bending of the ${member.word} with its axial force`,
    link: member.link,
    level: "strength",
    clause: "ACI 318-19 22.2, 22.4, 21.2.2",
    editions: concreteEditions,
    fails: `The ${member.word} breaks in bending: its bars yield on one side or its concrete crushes on the other.`,
    seen: member.word === "pier" ? "A column that leans, its pier cracked across a few feet below grade." : "A pedestal cracked across above its pad.",
    range:
      "The largest moment along it, with none and with all of its own weight. A pier's moment comes from springs or p-y curves where the ground states them; where not, from a rigid pier on springs even with depth and growing with it, the worse of the two, which piers in soil of any stiffness stay below. " +
      "Bars go all the way and are developed where they are needed. A ring of bars stands turned to its worst, a square pier is bent in its weakest direction. A slender one that stands free has a check of its own.",
    formulas: [...bentFormulas, ...memberFormulas, pulledStrain, pulledStrainEarlier],
    applies: withBars(member),
    inputs: (support, gather): BendingInputs => ({ ...readMember(member, support, gather), ...readAlong(member, support, gather) }),
    measures: (inputs, demand) => {
      const { least, most } = axialAlong(inputs, demand, plainCalc);
      const N_h = helpful(inputs);
      // Less compression is worse up to the helpful one, more of it beyond. The little that compression adds to the moment by second order is less than what it adds to the strength.
      return [...lateralMeasures(inputs, demand), aboveZero(overHelpful.value({ N: N_h, N_h: least })), aboveZero(overHelpful.value({ N: most, N_h }))];
    },
    fixedBy: (support) => support.foundation?.fields.bars ?? support.foundation,
    evaluate: (inputs, demand, calc) => {
      const sections = bentSections(inputs, demand, calc);
      if ("because" in sections) return unchecked(sections.because);
      const strength = strengthOf(inputs, calc);
      const tried = sections.map(({ N, M, toward }) => ({ demand: M, capacity: calc.routine(bendingStrength, { ...strength, P: N, toward }).phiM_n }));
      const worst = tried.reduce((a, b) => worseOf(a, b));
      return weigh(worst.demand, worst.capacity, "moment");
    },
    advise: (inputs, outcome, say) =>
      outcome.capacity > 0
        ? `${say.show(outcome.demand, "moment")} bends the ${member.word}; with its axial force it holds ${say.show(outcome.capacity, "moment")}. Add bars to its ${inputs.count} ${inputs.bar.name}, or widen it.`
        : `${say.show(outcome.demand, "moment")} bends the ${member.word}, and its axial force alone takes all its strength. Add bars to its ${inputs.count} ${inputs.bar.name}, or widen it.`,
  });

export const pierBending = declare(pierMember);
export const pedestalBending = declare(pedestalMember);

/** The interaction curve of a section and the combinations as points, for a drawing. */
export interface InteractionPicture {
  /** From pure tension to pure compression, one list for each direction of bending. */
  readonly curves: readonly { readonly direction: string; readonly points: readonly CurvePoint[] }[];
  /** Largest design compression, N: the design curve is cut off there. */
  readonly cap: number;
  /** One for each section of each combination; N and N·m, without sign of the moment. */
  readonly points: readonly { readonly label: string; readonly N: number; readonly M: number }[];
}

/** The directions a section is shown bent in. */
const shown = ({ shape, count }: MemberInputs): readonly (readonly [direction: string, angle: number])[] =>
  shape === "round"
    ? [["a bar at the edge", 0], ["two bars beside the edge", betweenBars.value({ n: count })]]
    : [["along x", 0], ["along y", betweenBars.value({ n: 2 })]];

/**
 * Interaction curves of a pier or pedestal, nominal (`P_n`, `M_n`) and design (`phi` times both), with the combinations as points. Pure; `inputs` are those of
 * `pier.bending` or `footing.pedestal-bending`. A combination under which the soil gives way has no point.
 */
export function interactionPicture(inputs: BendingInputs, demands: readonly Demand[]): InteractionPicture {
  const strength = strengthOf(inputs, plainCalc);
  return {
    curves: shown(inputs).map(([direction, angle]) => ({ direction, points: interactionCurve(strength, angle) })),
    cap: axialLimits(inputs, plainCalc).pressed,
    points: demands.flatMap((demand) => {
      const sections = bentSections(inputs, demand, plainCalc);
      return "because" in sections ? [] : sections.map(({ N, M }) => ({ label: demand.label, N, M }));
    }),
  };
}
