/**
 * A pier without bars breaks where it first cracks: it has nothing that holds the crack. Bars are compulsory where it is pulled, where the moment is more
 * than 0.4 of the cracking moment, and in seismic design category C to F.
 *
 * ACI 318-19 13.4.4.1 and IBC 2021 1810.3.9.1 (phi M_n = 3 sqrt(f'c) S_m, which is 0.4 of 7.5); ACI 318-19 14.5.3, 14.5.4, 14.5.5.
 */
import type { Demand } from "../../actions/demand.js";
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import { check, type Gather, unchecked, weigh, weighLimit } from "../contract.js";
import { rootStrength } from "../footing/one-way-shear.js";
import { isPier } from "./body.js";
import { type AlongMember, axialAlong, bentFormulas, bentSections, lateralMeasures, readAlong, shearAlong } from "./concrete-forces.js";
import { areaFormulas, concreteEditions, memberArea, type MemberShape, pierMember, readShape } from "./concrete-member.js";
import { pullAtTop } from "./concrete-shear.js";

export interface PlainInputs extends MemberShape, AlongMember {
  readonly category: string;
  readonly isFormed: boolean;
}

const S_m = { kind: "sectionModulus", meaning: "section modulus, bars left out" } as const;
const h = { kind: "length", meaning: "diameter or side that counts" } as const;
const s_c = { kind: "stress", meaning: "square root of the concrete strength, as a stress" } as const;
const A_g = { kind: "planArea", meaning: "area of the section" } as const;

export const plainSize = formula({
  id: "pier.plain-size",
  text: "h = D - t_e",
  source: "ACI 318-19 14.5.1.7: 2 in left out of what is cast against the ground (from memory)",
  symbols: { h, D: { kind: "length", meaning: "diameter or side of the pier", field: "foundations.*.diameter", range: [0.2, 2] } },
  constants: { t_e: "2 inch" },
});

export const roundModulus = formula({ id: "pier.round-modulus", text: "S_m = pi * h^3 / 32", source: "geometry", symbols: { S_m, h } });

export const diagonalModulus = formula({ id: "pier.diagonal-modulus", text: "S_m = h^3 / (6 * sqrt(2))", source: "geometry: a square bent over its corner, which is its weakest way", symbols: { S_m, h } });

export const plainMoment = formula({
  id: "pier.plain-moment",
  text: "phiM_n = 3 * s_c * S_m",
  source: "IBC 2021 1810.3.9.1; ACI 318-19 14.5.2.1 with phi = 0.6 (from memory)",
  symbols: { phiM_n: { kind: "moment", meaning: "moment up to which a pier may go without bars" }, s_c, S_m },
});

export const plainPush = formula({
  id: "pier.plain-push",
  text: "phiP_n = phi * 0.6 * fprime_c * A_g",
  source: "ACI 318-19 14.5.3.1, Table 21.2.1, held by the soil along its height (from memory)",
  symbols: { phiP_n: { kind: "force", meaning: "design compression of the plain section" }, fprime_c: { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" }, A_g },
  constants: { phi: "0.6" },
});

export const leftByPush = formula({
  id: "pier.plain-left",
  text: "phiM_p = phiM_n * max(0, 1 - N / phiP_n)",
  source: "ACI 318-19 Table 14.5.4.1",
  symbols: {
    phiM_p: { kind: "moment", meaning: "moment left beside the push" },
    phiM_n: { kind: "moment", meaning: "moment up to which a pier may go without bars" },
    N: { kind: "force", meaning: "push" },
    phiP_n: { kind: "force", meaning: "design compression of the plain section" },
  },
});

export const plainShear = formula({
  id: "pier.plain-shear-strength",
  text: "phiV_n = phi * 4 / 3 * s_c * A_h",
  source: "ACI 318-19 Table 14.5.5.1, Table 21.2.1 (from memory)",
  symbols: { phiV_n: { kind: "force", meaning: "design shear strength of the plain section" }, s_c, A_h: { kind: "planArea", meaning: "area of the section that counts" } },
  constants: { phi: "0.6" },
});

export const plainRoundArea = formula({ id: "pier.plain-round-area", text: "A_h = pi * h^2 / 4", source: "geometry", symbols: { A_h: { kind: "planArea", meaning: "area of the section that counts" }, h } });
export const plainSquareArea = formula({ id: "pier.plain-square-area", text: "A_h = h^2", source: "geometry", symbols: { A_h: { kind: "planArea", meaning: "area of the section that counts" }, h } });

export const seismicBars = formula({
  id: "pier.seismic-least-bars",
  text: "A_sr = rho * A_g",
  source: "IBC 2021 1810.3.9.4.1: 0.0025 in seismic design category C (from memory)",
  symbols: { A_sr: { kind: "area", meaning: "least area of vertical bars" }, A_g },
  constants: { rho: "0.0025" },
});

export const tallest = formula({
  id: "pier.plain-tallest",
  text: "h_m = 3 * D",
  source: "ACI 318-19 2.3, 14.1.3: a pedestal is no taller than three of its least sides; a column may not be plain (from memory)",
  symbols: { h_m: { kind: "length", meaning: "height above grade up to which no bars are needed" }, D: { kind: "length", meaning: "diameter or side of the pier", field: "foundations.*.diameter" } },
});

const isPlain = (support: Support): boolean => isPier(support) && support.foundation?.fields.bars === undefined;

const readPlain = (support: Support, gather: Gather): PlainInputs => ({
  ...readShape(pierMember, support, gather),
  ...readAlong(pierMember, support, gather),
  category: gather.needs(support.site["seismic design category"], "seismic design category") ?? "",
  isFormed: gather.may(support.foundation?.fields["cast against"]) === "forms",
});

/** Pull and push each make it worse, the push by what it takes of the moment. */
const measures = (inputs: PlainInputs, demand: Demand): readonly number[] => {
  const { least, most } = axialAlong(inputs, demand, plainCalc);
  return [...lateralMeasures(inputs, demand), Math.max(0, pullAtTop.value({ P: least })), Math.max(0, most)];
};

const sizeOf = (inputs: PlainInputs, calc: Calc): number => (inputs.isFormed ? inputs.width : Math.max(0, calc(plainSize, { D: inputs.width })));

const shaken = new Set(["C", "D", "E", "F"]);

export const pierPlain = check({
  id: "pier.plain",
  title: "Pier without bars",
  link: "pier",
  level: "strength",
  clause: "ACI 318-19 13.4.4.1, 14.5; IBC 2021 1810.3.9.1",
  editions: concreteEditions,
  fails: "The pier has no bars and breaks across where it first cracks.",
  seen: "A column that rocks on its pier: the pier is in two pieces a few feet below grade.",
  range: "A pier for which no vertical bars are stated. None are needed where nothing pulls it, its moment stays below 0.4 of the cracking moment, less what the push takes, it stands no more than three widths above grade, and the seismic design category is A or B. Moment as for a pier with bars.",
  formulas: [...bentFormulas, ...areaFormulas, seismicBars, tallest, pullAtTop, rootStrength, plainSize, roundModulus, diagonalModulus, plainMoment, plainPush, leftByPush],
  applies: isPlain,
  inputs: readPlain,
  measures,
  fixedBy: (support) => support.foundation?.fields.diameter ?? support.foundation?.fields.width ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const A = memberArea(inputs, calc);
    if (shaken.has(inputs.category)) {
      calc.note(`Seismic design category ${inputs.category} asks for bars in every pier.`);
      return weigh(calc(seismicBars, { A_g: A }), 0, "area");
    }
    const highest = calc(tallest, { D: inputs.width });
    const { aboveGrade } = inputs.body.of === "pier" ? inputs.body.pier : { aboveGrade: 0 };
    if (aboveGrade > highest) return weighLimit(aboveGrade, highest, "length");
    const { least, most } = axialAlong(inputs, demand, calc);
    if (least < 0) {
      calc.note("The combination pulls at the pier: bars are compulsory.");
      return weigh(calc(pullAtTop, { P: least }), 0, "force");
    }
    const sections = bentSections(inputs, demand, calc);
    if ("because" in sections) return unchecked(sections.because);
    const size = sizeOf(inputs, calc);
    const modulus = calc(inputs.shape === "round" ? roundModulus : diagonalModulus, { h: size });
    const phiM_n = calc(plainMoment, { s_c: calc(rootStrength, { fprime_c: inputs.fprime_c }), S_m: modulus });
    const phiP_n = calc(plainPush, { fprime_c: inputs.fprime_c, A_g: A });
    return weigh(sections[0].M, calc(leftByPush, { phiM_n, N: most, phiP_n }), "moment");
  },
  advise: (inputs, outcome, say) => {
    if (outcome.quantity === "area") return `no bars are stated; seismic design category ${inputs.category} asks for ${say.show(outcome.demand, "area")} at least. State \`bars\` and \`ties\`.`;
    if (outcome.quantity === "force") return `${say.show(outcome.demand, "force")} pulls at the pier, and no bars are stated. A pier that is pulled needs bars: state \`bars\` and \`ties\`.`;
    if (outcome.quantity === "length") return `the pier stands ${say.show(outcome.demand, "length")} above grade; without bars ${say.show(outcome.capacity, "length")} at most. State \`bars\` and \`ties\`.`;
    return `${say.show(outcome.demand, "moment")} bends the pier; without bars it may take ${say.show(outcome.capacity, "moment")}. State \`bars\` and \`ties\`, or widen it.`;
  },
});

export const pierPlainShear = check({
  id: "pier.plain-shear",
  title: "Shear of a pier without bars",
  link: "pier",
  level: "strength",
  clause: "ACI 318-19 14.5.5",
  editions: concreteEditions,
  fails: "The pier has no bars and shears through.",
  seen: "A stub of a pier pushed off at an incline below grade.",
  range: "A pier for which no vertical bars are stated. Resultant of the shear along it, as for a pier with bars; push is not counted to help.",
  formulas: [...bentFormulas, rootStrength, plainSize, plainRoundArea, plainSquareArea, plainShear],
  applies: isPlain,
  inputs: readPlain,
  measures,
  fixedBy: (support) => support.foundation?.fields.diameter ?? support.foundation?.fields.width ?? support.foundation,
  evaluate: (inputs, demand, calc) => {
    const V = shearAlong(inputs, demand, calc);
    if ("because" in V) return unchecked(V.because);
    const A_h = calc(inputs.shape === "round" ? plainRoundArea : plainSquareArea, { h: sizeOf(inputs, calc) });
    return weigh(V.most, calc(plainShear, { s_c: calc(rootStrength, { fprime_c: inputs.fprime_c }), A_h }), "force");
  },
  advise: (_inputs, outcome, say) => `${say.show(outcome.demand, "force")} of shear; the pier without bars holds ${say.show(outcome.capacity, "force")}. Widen it, or state bars and ties.`,
});
