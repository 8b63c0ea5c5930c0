/**
 * The pier or pedestal shears along an inclined crack, most of all low in a short pier, where the soil throws the moment back within a few feet.
 *
 * ACI 318-19 22.5.5.1: 2 sqrt(f'c) needs least ties; without them the strength goes with the cube root of the bars and falls with the size. Pull takes
 * strength away, push adds some. ACI 318-14 22.5.6 and 22.5.7. Round sections count as D wide and 0.8 D deep (22.5.2.2).
 */
import type { Demand } from "../../actions/demand.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { tensionBars } from "../../mechanics/column-section.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import type { Support } from "../../project/model.js";
import { check, type Gather, unchecked, weigh } from "../contract.js";
import { oncePerInputs } from "../once.js";
import { rootStrength } from "../footing/one-way-shear.js";
import { betweenBars } from "./concrete-turn.js";
import { type AlongMember, axialAlong, bentFormulas, lateralMeasures, readAlong, shearAlong } from "./concrete-forces.js";
import { areaFormulas, concreteEditions, type ConcreteMember, memberArea, type MemberInputs, pedestalMember, pierMember, readMember, withBars } from "./concrete-member.js";

export interface ShearInputs extends MemberInputs, AlongMember {}

const s_c = { kind: "stress", meaning: "square root of the concrete strength, as a stress" } as const;
const b_w = { kind: "length", meaning: "width in shear" } as const;
const d = { kind: "length", meaning: "effective depth in shear" } as const;
const V_c = { kind: "force", meaning: "shear strength of the concrete" } as const;
const N_u = { kind: "force", meaning: "axial force, compression positive", range: [-1e5, 1e5] } as const;
const A_g = { kind: "planArea", meaning: "area of the section" } as const;
const n_u = { kind: "stress", meaning: "stress that the axial force adds to the shear strength", range: [-1e6, 1e6] } as const;
const rho_w = { kind: "ratio", meaning: "tension bars over width and depth", range: [0.001, 0.05] } as const;
const A_v = { kind: "area", meaning: "area of the tie legs across the crack" } as const;
const s = { kind: "length", meaning: "spacing of the ties", field: "foundations.*.ties.spacing" } as const;
const f_yt = { kind: "steelStress", meaning: "yield strength of the ties that may be used" } as const;

export const roundShearDepth = formula({
  id: "pier.round-shear-depth",
  text: "d = 0.8 * D",
  source: "ACI 318-19 22.5.2.2",
  symbols: { d, D: { kind: "length", meaning: "diameter of the section" } },
});

export const tensionRatio = formula({
  id: "pier.tension-ratio",
  text: "rho_w = A_s / (b_w * d)",
  source: "ACI 318-19 2.2, R22.5.5.1: bars beyond two thirds of the depth",
  symbols: { rho_w, A_s: { kind: "area", meaning: "tension bars" }, b_w, d },
});

export const axialStress = formula({
  id: "pier.shear-axial-stress",
  text: "n_u = min(N_u / (6 * A_g), 0.05 * fprime_c)",
  source: "ACI 318-19 Table 22.5.5.1, 22.5.5.1.2",
  symbols: { n_u, N_u, A_g, fprime_c: { kind: "stress", meaning: "concrete strength", field: "foundations.*.concrete" } },
});

export const concreteWithTies = formula({
  id: "pier.shear-with-ties",
  text: "V_c = max(0, min(max(2, 8 * cbrt(rho_w)) * s_c + n_u, 5 * s_c) * b_w * d)",
  source: "ACI 318-19 Table 22.5.5.1 (a), (b), 22.5.5.1.1: with least ties",
  symbols: { V_c, rho_w, s_c, n_u, b_w, d },
});

export const concreteWithoutTies = formula({
  id: "pier.shear-without-ties",
  text: "V_c = max(0, min(8 * min(1, sqrt(2 / (1 + d / d_10))) * cbrt(rho_w) * s_c + n_u, 5 * s_c) * b_w * d)",
  source: "ACI 318-19 Table 22.5.5.1 (c), 22.5.5.1.1, 22.5.5.1.3: fewer than least ties, size effect",
  symbols: { V_c, rho_w, s_c, n_u, b_w, d },
  constants: { d_10: "10 inch" },
});

export const concreteEarlier = formula({
  id: "pier.shear-earlier",
  text: "V_c = max(0, 2 * (N_u < 0 * N_u ? 1 + N_u / (k_p * A_g) : 1 + N_u / (k_c * A_g)) * s_c * b_w * d)",
  source: "ACI 318-14 22.5.6.1, 22.5.7.1",
  symbols: { V_c, N_u, A_g, s_c, b_w, d },
  constants: { k_p: "500 psi", k_c: "2000 psi" },
});

export const tieYield = formula({
  id: "pier.tie-yield",
  text: "f_yt = min(f_y, f_60)",
  source: "ACI 318-19 Table 20.2.2.4(a): 60 ksi for shear",
  symbols: { f_yt, f_y: { kind: "steelStress", meaning: "yield strength of the bars", field: "foundations.*.bar grade" } },
  constants: { f_60: "60 ksi" },
});

export const tieLegs = formula({
  id: "pier.tie-legs",
  text: "A_v = 2 * A_t",
  source: "ACI 318-19 22.5.8.5.6: two legs of a circular tie or spiral; two sides of a rectangular one, inner ties not counted",
  symbols: { A_v, A_t: { kind: "area", meaning: "area of the tie bar", field: "foundations.*.ties.bar" } },
});

export const leastTies = formula({
  id: "pier.least-tie-legs",
  text: "A_vr = max(0.75 * s_c, v_50) * b_w * s / f_yt",
  source: "ACI 318-19 10.6.2.2",
  symbols: { A_vr: { kind: "area", meaning: "least area of the tie legs" }, s_c, b_w, s, f_yt },
  constants: { v_50: "50 psi" },
});

/** Ties farther apart than half the depth may miss the crack, and heavy shear asks for half of that. */
export const tieShear = formula({
  id: "pier.tie-shear",
  text: "V_s = s > min(d / 2, s_24) ? 0 * b_w * d * s_c : min(A_v * f_yt * d / s, (s > min(d / 4, s_12) ? 4 : 8) * s_c * b_w * d)",
  source: "ACI 318-19 22.5.8.5.3, 22.5.1.2, Table 10.7.6.5.2",
  symbols: { V_s: { kind: "force", meaning: "shear strength of the ties" }, A_v, f_yt, d, s, s_c, b_w },
  constants: { s_24: "24 inch", s_12: "12 inch" },
});

export const shearStrength = formula({
  id: "pier.shear-strength",
  text: "phiV_n = phi * (V_c + V_s)",
  source: "ACI 318-19 22.5.1.1, Table 21.2.1",
  symbols: { phiV_n: { kind: "force", meaning: "design shear strength" }, V_c, V_s: { kind: "force", meaning: "shear strength of the ties" } },
  constants: { phi: "0.75" },
});

export const bothWaysUsed = formula({
  id: "pier.shear-both-ways",
  text: "u = (V_x / phiV_x + V_y / phiV_y) / 1.5",
  source: "ACI 318-19 22.5.1.11",
  symbols: {
    u: { kind: "ratio", meaning: "share of the strength that both directions take together" },
    V_x: { kind: "force", meaning: "shear along x" },
    phiV_x: { kind: "force", meaning: "design strength along x" },
    V_y: { kind: "force", meaning: "shear along y" },
    phiV_y: { kind: "force", meaning: "design strength along y" },
  },
});

/** Width, depth and tension bars of a section in shear along one axis. */
interface Web {
  readonly b_w: number;
  readonly d: number;
  readonly A_s: number;
}

const websOf = oncePerInputs((inputs: MemberInputs): { readonly x: Web; readonly y: Web } => {
  const section = { shape: inputs.shape, width: inputs.width, length: inputs.length, bars: inputs.places, barArea: inputs.bar.area };
  if (inputs.shape === "round") {
    const A_s = Math.min(tensionBars(section, 0).area, tensionBars(section, betweenBars.value({ n: inputs.count })).area);
    const web = { b_w: inputs.width, d: roundShearDepth.value({ D: inputs.width }), A_s };
    return { x: web, y: web };
  }
  const along = (angle: number, b: number): Web => {
    const bars = tensionBars(section, angle);
    return { b_w: b, d: bars.depth, A_s: bars.area };
  };
  return { x: along(0, inputs.length), y: along(betweenBars.value({ n: 2 }), inputs.width) };
});

/** Strength of the concrete alone and with ties, and the ties there are and need be; along one axis. */
export interface WebStrength {
  readonly concrete: number;
  readonly design: number;
  readonly legs: number;
  readonly leastLegs: number;
}

export function webStrength(inputs: ShearInputs, axis: "x" | "y", N_u: number, calc: Calc): WebStrength {
  const { b_w: b, d: depth, A_s } = websOf(inputs)[axis];
  if (inputs.shape === "round") calc(roundShearDepth, { D: inputs.width });
  const root = calc(rootStrength, { fprime_c: inputs.fprime_c });
  const A = memberArea(inputs, calc);
  const yields = calc(tieYield, { f_y: inputs.f_y });
  const spacing = inputs.transverse.spacing;
  const legs = calc(tieLegs, { A_t: inputs.transverse.area });
  const leastLegs = calc(leastTies, { s_c: root, b_w: b, s: spacing, f_yt: yields });
  const concrete = concreteShear(inputs, { b, depth, A_s, A, root, N_u, isTied: legs >= leastLegs }, calc);
  const V_s = calc(tieShear, { A_v: legs, f_yt: yields, d: depth, s: spacing, s_c: root, b_w: b });
  if (V_s === 0) calc.note("The ties stand farther apart than half the depth, so that a crack may pass between two of them: none is counted in shear.");
  return { concrete, design: calc(shearStrength, { V_c: concrete, V_s }), legs, leastLegs };
}

interface Concrete {
  readonly b: number;
  readonly depth: number;
  readonly A_s: number;
  readonly A: number;
  readonly root: number;
  readonly N_u: number;
  readonly isTied: boolean;
}

function concreteShear({ edition, fprime_c }: ShearInputs, { b, depth, A_s, A, root, N_u: N, isTied }: Concrete, calc: Calc): number {
  if (edition === "ACI 318-14") return calc(concreteEarlier, { N_u: N, A_g: A, s_c: root, b_w: b, d: depth });
  const ratio = calc(tensionRatio, { A_s, b_w: b, d: depth });
  const stress = calc(axialStress, { N_u: N, A_g: A, fprime_c });
  calc.note(isTied ? "The ties are the least ones or more: 2 sqrt(f'c) may be used." : "The ties are fewer than the least ones: the strength falls with the size of the section.");
  return calc(isTied ? concreteWithTies : concreteWithoutTies, { rho_w: ratio, s_c: root, n_u: stress, b_w: b, d: depth });
}

export const shearFormulas = [...bentFormulas, ...areaFormulas, roundShearDepth, rootStrength, tieYield, tieLegs, leastTies, tensionRatio, axialStress, concreteWithTies, concreteWithoutTies, concreteEarlier, tieShear, shearStrength] as const;

export const readShear = (member: ConcreteMember) => (support: Support, gather: Gather): ShearInputs => ({ ...readMember(member, support, gather), ...readAlong(member, support, gather) });

export const pullAtTop = formula({
  id: "pier.pull-at-top",
  text: "T = -P",
  source: "arithmetic",
  symbols: { T: { kind: "force", meaning: "pull at the column base", range: [-1e5, 1e5] }, P: { kind: "force", meaning: "axial force at the column base, compression positive", range: [-1e5, 1e5] } },
});

/** Shear grows with what bends the member, and its strength falls with the pull. */
export const shearMeasures = (inputs: ShearInputs, demand: Demand): readonly number[] => [...lateralMeasures(inputs, demand), pullAtTop.value({ P: demand.base.P })];

const declare = (member: ConcreteMember) =>
  check({
    id: member.id("shear"),
    title: `Shear of the ${member.word}`,
    link: member.link,
    level: "strength",
    clause: "ACI 318-19 22.5",
    editions: concreteEditions,
    fails: `The ${member.word} shears along an inclined crack.`,
    seen: member.word === "pier" ? "An inclined crack below grade, found when a leaning pier is dug out." : "An inclined crack across a pedestal beside its ties.",
    range:
      "Normalweight concrete. Round sections as wide as their diameter and 0.8 of it deep. Two legs of each tie count. A pull at the column base counts in full, its push without the weight of the concrete. The resultant of a pier's shear, both directions of a pedestal's together by 22.5.1.11. " +
      "Tension bars are those beyond two thirds of the depth, or the farthest ones where cover leaves none there. Where the ground does not say how it moves, shear is that of a rigid pier, the worse of two spreads of the soil's stiffness.",
    formulas: [...shearFormulas, bothWaysUsed],
    applies: withBars(member),
    inputs: readShear(member),
    measures: shearMeasures,
    fixedBy: (support) => support.foundation?.fields.ties ?? support.foundation?.fields.spiral ?? support.foundation,
    evaluate: (inputs, demand, calc) => {
      const V = shearAlong(inputs, demand, calc);
      if ("because" in V) return unchecked(V.because);
      const { least } = axialAlong(inputs, demand, calc);
      const x = webStrength(inputs, "x", least, calc).design;
      if (member.word === "pier" || inputs.shape === "round") return weigh(V.most, inputs.shape === "round" ? x : Math.min(x, webStrength(inputs, "y", least, calc).design), "force");
      calc.note("Along y:");
      const y = webStrength(inputs, "y", least, calc).design;
      const worst: Pair = worseOf({ demand: V.x, capacity: x }, { demand: V.y, capacity: y });
      const u = x > 0 && y > 0 ? calc(bothWaysUsed, { V_x: V.x, phiV_x: x, V_y: V.y, phiV_y: y }) : 0;
      return worseOf({ ...worst, isBoth: false }, { demand: u, capacity: 1, isBoth: true }).isBoth ? weigh(u, 1, "ratio") : weigh(worst.demand, worst.capacity, "force");
    },
    advise: (inputs, outcome, say) => {
      const ties = inputs.transverse.kind === "spiral" ? "Wind the spiral closer" : "Set the ties closer";
      return outcome.quantity === "ratio"
        ? `shear along both sides takes ${say.show(outcome.demand, "ratio")} of the strength together. ${ties}, take larger ones, or widen the ${member.word}.`
        : `${say.show(outcome.demand, "force")} of shear; the ${member.word} holds ${say.show(outcome.capacity, "force")}. ${ties}, take larger ones, or widen it.`;
    },
  });

export const pierShear = declare(pierMember);
export const pedestalShear = declare(pedestalMember);
