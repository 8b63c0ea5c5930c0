/**
 * A spiral wound too wide, or of too thin a bar, bursts when the cover has gone, and the core it should have held goes with it. A spiral wound too
 * close keeps the concrete from passing.
 *
 * ACI 318-19 25.7.3.3 (ratio), 25.7.3.1 (clear 1 to 3 in). Under a thick cover the ratio asks for more than can be wound: then the message says so. No
 * spiral is asked for in a pier; as ties it counts with phi 0.65 in place of 0.75.
 */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isBelow } from "../../mechanics/compare.js";
import type { Support } from "../../project/model.js";
import { check, sameInAll, weighLimit } from "../contract.js";
import { oncePerInputs } from "../once.js";
import { areaFormulas, concreteEditions, type ConcreteMember, memberArea, type MemberInputs, pedestalMember, pierMember, readMember, withBars } from "./concrete-member.js";

const core = { kind: "length", meaning: "diameter of the core, to the outside of the spiral" } as const;
const wire = { kind: "length", meaning: "diameter of the spiral bar", field: "foundations.*.spiral.bar" } as const;
const pitch = { kind: "length", meaning: "pitch of the spiral", field: "foundations.*.spiral.pitch" } as const;
const ratio = { kind: "ratio", meaning: "volume of the spiral over that of the core" } as const;

export const coreDiameter = formula({
  id: "pier.core-diameter",
  text: "D_c = D - 2 * c_c",
  source: "ACI 318-19 2.2",
  symbols: { D_c: core, D: { kind: "length", meaning: "diameter of the section" }, c_c: { kind: "length", meaning: "clear cover of the spiral", field: "foundations.*.cover" } },
});

export const spiralNeeded = formula({
  id: "pier.spiral-needed",
  text: "rho_r = 0.45 * (A_g / (pi * D_c^2 / 4) - 1) * fprime_c / f_yt",
  source: "ACI 318-19 Eq. 25.7.3.3",
  symbols: {
    rho_r: { kind: "ratio", meaning: "ratio the spiral needs" },
    A_g: { kind: "planArea", meaning: "area of the section" },
    D_c: core,
    fprime_c: { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" },
    f_yt: { kind: "steelStress", meaning: "yield strength of the spiral" },
  },
});

/** The wire runs along its own middle line, so that the core diameter less one wire counts. */
export const spiralRatio = formula({
  id: "pier.spiral-ratio-of",
  text: "rho_s = 4 * A_sp * (D_c - d_s) / (s * D_c^2)",
  source: "volume of the wire along its middle line over that of the core, ACI 318-19 2.2",
  symbols: { rho_s: ratio, A_sp: { kind: "area", meaning: "area of the spiral bar", field: "foundations.*.spiral.bar" }, D_c: core, d_s: wire, s: pitch },
});

export const pitchNeeded = formula({
  id: "pier.pitch-needed",
  text: "s_r = 4 * A_sp * (D_c - d_s) / (rho_r * D_c^2)",
  source: "ACI 318-19 25.7.3.3, solved for the pitch",
  symbols: { s_r: { kind: "length", meaning: "largest pitch by the ratio" }, A_sp: { kind: "area", meaning: "area of the spiral bar" }, D_c: core, d_s: wire, rho_r: { kind: "ratio", meaning: "ratio the spiral needs" } },
});

export const spiralGap = formula({
  id: "pier.spiral-gap",
  text: "s_n = s - d_s",
  source: "geometry",
  symbols: { s_n: { kind: "length", meaning: "clear distance between turns" }, s: pitch, d_s: wire },
});

export const leastGap = formula({
  id: "pier.least-gap",
  text: "s_1 = one",
  source: "ACI 318-19 25.7.3.1: at least 1 in clear; 4/3 of the aggregate on top of that is for the mix",
  symbols: { s_1: { kind: "length", meaning: "least clear distance between turns" } },
  constants: { one: "1 inch" },
});

export const largestGap = formula({
  id: "pier.largest-gap",
  text: "s_3 = three",
  source: "ACI 318-19 25.7.3.1",
  symbols: { s_3: { kind: "length", meaning: "largest clear distance between turns" } },
  constants: { three: "3 inch" },
});

/** No. 3 or 10 mm, ACI 318-19 25.7.3.2, m. */
const leastWire = 0.0094;

/** What a spiral is and needs. */
export interface SpiralFound {
  readonly have: number;
  readonly need: number;
  readonly gap: number;
  readonly most: number;
}

/** The spiral may not count on more than 100 ksi; here it is of the grade of the bars. */
export function spiralOf(inputs: MemberInputs, calc: Calc): SpiralFound {
  const { diameter: d_s, area: A_sp, spacing: s } = inputs.transverse;
  const D_c = calc(coreDiameter, { D: inputs.width, c_c: inputs.cover });
  const need = calc(spiralNeeded, { A_g: memberArea(inputs, calc), D_c, fprime_c: inputs.fprime_c, f_yt: inputs.f_y });
  const have = calc(spiralRatio, { A_sp, D_c, d_s, s });
  return { have, need, gap: calc(spiralGap, { s, d_s }), most: calc(pitchNeeded, { A_sp, D_c, d_s, rho_r: need }) };
}

/** Whether the section may be designed as one with a spiral. */
export const isSpiral = oncePerInputs((inputs: MemberInputs): boolean => {
  if (inputs.transverse.kind !== "spiral" || inputs.transverse.diameter < leastWire) return false;
  const { have, need, gap } = spiralOf(inputs, plainCalc);
  return !isBelow(have, need) && !isBelow(gap, leastGap.value({})) && !isBelow(largestGap.value({}), gap);
});

/** A spiral round a circle of bars is given, and no ties. */
const isWound = (member: ConcreteMember) => (support: Support): boolean => {
  const fields = support.foundation?.fields;
  const isRound = (member.word === "pier" ? fields?.diameter : fields?.pedestal?.value.diameter) !== undefined;
  return isRound && withBars(member)(support) && fields?.spiral !== undefined && fields.ties === undefined;
};

const declareRatio = (member: ConcreteMember) =>
  check({
    id: member.id("spiral-ratio"),
    title: `Spiral of the ${member.word}`,
    link: member.link,
    level: "strength",
    clause: "ACI 318-19 25.7.3.3",
    editions: concreteEditions,
    fails: "The spiral is too light to hold the core when the cover has gone.",
    seen: `A ${member.word} whose spiral has snapped and whose bars have bowed out.`,
    range: "A round section; a spiral of the grade of the vertical bars. The ratio is taken along the middle line of the wire. A spiral that falls short still works as ties: state it so, and it counts with phi 0.65.",
    formulas: [coreDiameter, ...areaFormulas, spiralNeeded, spiralRatio, spiralGap, pitchNeeded],
    applies: isWound(member),
    inputs: (support, gather) => readMember(member, support, gather),
    measures: sameInAll,
    fixedBy: (support) => support.foundation?.fields.spiral ?? support.foundation,
    evaluate: (inputs, _demand, calc) => {
      const { have, need } = spiralOf(inputs, calc);
      return weighLimit(need, have, "ratio");
    },
    advise: (inputs, outcome, say) => {
      const { most } = spiralOf(inputs, plainCalc);
      const { name, diameter: d_s, spacing } = inputs.transverse;
      const found = `${name} at ${say.show(spacing, "length")} is ${say.show(outcome.capacity, "ratio")} of the core; ${say.show(outcome.demand, "ratio")} needed under ${say.show(inputs.cover, "length")} of cover`;
      return spiralGap.value({ s: most, d_s }) >= leastGap.value({})
        ? `${found}, a pitch of ${say.show(most, "length")}. Wind it closer, or write it as ties, which count with phi 0.65.`
        : `${found}. No pitch of ${name} gives that and leaves 1 in between turns: take a larger spiral bar, or write it as ties, which count with phi 0.65.`;
    },
  });

const declareGap = (member: ConcreteMember) =>
  check({
    id: member.id("spiral-gap"),
    title: `Clear distance between turns of the spiral`,
    link: member.link,
    level: "strength",
    clause: "ACI 318-19 25.7.3.1",
    editions: concreteEditions,
    fails: "The turns of the spiral stand so close that concrete does not pass, or so far apart that the core bulges between them.",
    seen: `Honeycombed cover over the spiral of the ${member.word}.`,
    range: "1 in to 3 in between turns. Four thirds of the aggregate is not looked at.",
    formulas: [spiralGap, leastGap, largestGap],
    applies: isWound(member),
    inputs: (support, gather) => readMember(member, support, gather),
    measures: sameInAll,
    fixedBy: (support) => support.foundation?.fields.spiral ?? support.foundation,
    evaluate: ({ transverse }, _demand, calc) => {
      const s_n = calc(spiralGap, { s: transverse.spacing, d_s: transverse.diameter });
      const least = calc(leastGap, {});
      return s_n < least ? weighLimit(least, Math.max(0, s_n), "length") : weighLimit(s_n, calc(largestGap, {}), "length");
    },
    advise: (_inputs, outcome, say) =>
      outcome.demand === leastGap.value({})
        ? `${say.show(outcome.capacity, "length")} between turns of the spiral; 1 in needed for concrete to pass. Wind it wider, of a larger bar.`
        : `${say.show(outcome.demand, "length")} between turns of the spiral; 3 in at most. Wind it closer, or write it as ties.`,
  });

export const pierSpiralRatio = declareRatio(pierMember);
export const pedestalSpiralRatio = declareRatio(pedestalMember);
export const pierSpiralGap = declareGap(pierMember);
export const pedestalSpiralGap = declareGap(pedestalMember);
