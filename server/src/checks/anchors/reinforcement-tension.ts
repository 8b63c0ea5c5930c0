/**
 * The vertical bars of the pier or wall take the tension of the rods in place of the concrete: inclined struts carry it from the heads to the bars
 * beside them. They fail where they yield, or where they are drawn out of the piece that breaks off, or out of the pier below it.
 *
 * ACI 318-19 17.5.2.1: bars developed by Chapter 25 on both sides of the breakout surface, phi 0.75. They replace breakout, and neither
 * pullout nor side-face blowout. The surface rises from the head at 1 to 1.5; as in AISC Design Guide 1, 3rd ed., Example 4.7-15, straight
 * ends that are shorter than their development length count in part, hooks and heads in full or not at all (25.4.10.2).
 */
import { findBarGrade } from "../../catalog/materials.js";
import { isMissing } from "../../catalog/lookup.js";
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { barsOfRods, turnsOfRing, type RodBars } from "../../mechanics/rod-bars.js";
import { concreteModulus, distribute, isUnstable, modularRatio, tipsOver } from "../base/distribution.js";
import { readBase, type BaseInputs } from "../base/geometry.js";
import { check, unchecked, weigh } from "../contract.js";
import { oncePerInputs } from "../once.js";
import { editionBlock } from "../editions.js";
import { isSetInAdhesive } from "./cone.js";
import { developmentFormulas, developmentOf, type BarEnd, type Developed } from "./development.js";
import { barPlaces, hasBarsForBreakout } from "./pier-bars.js";
import { usedPart } from "./ratio.js";
import { readSeismic, type SeismicAnchors, seismicFormulas, shaken } from "./seismic.js";
import { sharedMode } from "./shared-mode.js";
import { wallBars } from "./wall-bars.js";

export interface ReinforcementInputs extends BaseInputs, Developed {
  readonly seismic: SeismicAnchors;
  readonly h_ef: number;
  readonly A_b: number;
  readonly cover: number;
  readonly top: BarEnd;
  readonly bottom: BarEnd;
  /** Bars of each rod, in the order of the rods, as they stand worst for it. */
  readonly leans: readonly RodBars[];
}

const farthest = { kind: "length", meaning: "from the rod to the farthest of its bars" } as const;
const embedment = { kind: "length", meaning: "embedment", field: "bases.*.anchors.embedment" } as const;
const cover = { kind: "length", meaning: "clear cover of the bars", field: "foundations.*.cover" } as const;
const atHand = { kind: "length", meaning: "length of bar on this side of the breakout surface", range: [-2, 5] } as const;
const needed = { kind: "length", meaning: "development length of the bar's end on this side" } as const;
const part = { kind: "ratio", meaning: "part of the yield strength that is developed on this side" } as const;

export const reinforcementReach = formula({
  id: "anchors.reinforcement-reach",
  text: "r = 0.5 * h_ef",
  source: "ACI 318-19 R17.5.2.1: bars within half the embedment of the rods",
  symbols: { r: { kind: "length", meaning: "how far from a rod a bar counts" }, h_ef: embedment },
});

export const lengthAbove = formula({
  id: "anchors.length-above",
  text: "l_a = h_ef - g / 1.5 - c_c",
  source: "geometry: the breakout surface rises from the head at 1 to 1.5, ACI 318-19 17.6.2.1",
  symbols: { l_a: atHand, h_ef: embedment, g: farthest, c_c: cover },
});

export const lengthBelow = formula({
  id: "anchors.length-below",
  text: "l_u = h - h_ef + g / 1.5 - c_c",
  source: "geometry: the breakout surface rises from the head at 1 to 1.5, ACI 318-19 17.6.2.1",
  symbols: { l_u: atHand, h: { kind: "length", meaning: "depth of the concrete" }, h_ef: embedment, g: farthest, c_c: cover },
});

export const developedPart = formula({
  id: "anchors.developed-part",
  text: "k = min(1, max(0, l) / l_n)",
  source: "ACI 318-19 25.4.10.1, straight bars",
  symbols: { k: part, l: atHand, l_n: needed },
});

export const developedOrNot = formula({
  id: "anchors.developed-or-not",
  text: "k = l >= l_n ? 1 : 0",
  source: "ACI 318-19 25.4.10.2: no part of it for hooks and heads",
  symbols: { k: part, l: atHand, l_n: needed },
});

export const reinforcementStrength = formula({
  id: "anchors.reinforcement-strength",
  text: "phiN_r = phi * n_b * A_b * f_y * min(k_a, k_u)",
  source: "ACI 318-19 17.5.2.1 and Table 17.5.3, anchor reinforcement: phi = 0.75",
  symbols: {
    phiN_r: { kind: "force", meaning: "design strength of the bars of one rod" },
    n_b: { kind: "number", meaning: "bars that the rod leans on, shared ones in part", field: "foundations.*.bars" },
    A_b: { kind: "area", meaning: "area of one bar", field: "foundations.*.bars" },
    f_y: { kind: "steelStress", meaning: "yield strength of the bars", field: "foundations.*.bar grade" },
    k_a: { kind: "ratio", meaning: "part developed above the breakout surface" },
    k_u: { kind: "ratio", meaning: "part developed below it" },
  },
  constants: { phi: "0.75" },
});

export const barToFace = formula({
  id: "anchors.bar-to-face",
  text: "c_b = min(c_c + d_t + d_b / 2, s / 2)",
  source: "ACI 318-19 25.4.2.4",
  symbols: {
    c_b: { kind: "length", meaning: "from the middle of a bar to the face of the concrete, or half the spacing of the bars" },
    c_c: cover,
    d_t: { kind: "length", meaning: "diameter of the ties or spiral", field: "foundations.*.spiral" },
    d_b: { kind: "length", meaning: "diameter of the vertical bars", field: "foundations.*.bars" },
    s: { kind: "length", meaning: "least distance of two bars" },
  },
});

export const hookSpacingFactor = formula({
  id: "anchors.hook-spacing-factor",
  text: "psi_r = s >= 6 * d_b ? 1 : 1.6",
  source: "ACI 318-19 Table 25.4.3.2; ties beside the hooks are not counted on",
  symbols: {
    psi_r: { kind: "ratio", meaning: "spacing factor of hooks and heads" },
    s: { kind: "length", meaning: "least distance of two bars" },
    d_b: { kind: "length", meaning: "diameter of the vertical bars", field: "foundations.*.bars" },
  },
});

export const hookPlaceFactor = formula({
  id: "anchors.hook-place-factor",
  text: "psi_o = c_c + d_t >= min(c_25, 6 * d_b) ? 1 : 1.25",
  source: "ACI 318-19 Table 25.4.3.2: inside ties with 2.5 in of side cover, or six diameters",
  symbols: {
    psi_o: { kind: "ratio", meaning: "place factor of hooks and heads" },
    c_c: cover,
    d_t: { kind: "length", meaning: "diameter of the ties or spiral", field: "foundations.*.spiral" },
    d_b: { kind: "length", meaning: "diameter of the vertical bars", field: "foundations.*.bars" },
  },
  constants: { c_25: "2.5 inch" },
});

function onOneSide(end: BarEnd, l: number, inputs: Developed, calc: Calc): number {
  const l_n = developmentOf(end, inputs, calc);
  return end === "straight" ? calc(developedPart, { l, l_n }) : calc(developedOrNot, { l, l_n });
}

/** Design strength of the bars of one rod, N. */
function strengthOf({ count: n_b, farthest: g }: RodBars, inputs: ReinforcementInputs, calc: Calc): number {
  const { h_ef, cover: c_c, A_b, f_y } = inputs;
  calc.note("Above the breakout surface:");
  const k_a = onOneSide(inputs.top, calc(lengthAbove, { h_ef, g, c_c }), inputs, calc);
  calc.note("Below it:");
  const k_u = onOneSide(inputs.bottom, calc(lengthBelow, { h: inputs.member.depth, h_ef, g, c_c }), inputs, calc);
  return calc(reinforcementStrength, { n_b, A_b, f_y, k_a, k_u });
}

/** Strengths of the bars of each rod; the same for every combination. */
const strengthsOf = oncePerInputs((inputs: ReinforcementInputs): readonly number[] => inputs.leans.map((lean) => strengthOf(lean, inputs, plainCalc)));

/** For each rod the turn of the bars that leaves it least. */
function worstLeans(inputs: ReinforcementInputs, found: readonly (readonly RodBars[])[]): readonly RodBars[] {
  return inputs.rods.map((_, i) =>
    found.map((leans) => leans[i]).reduce((worst, lean) => (strengthOf(lean, inputs, plainCalc) < strengthOf(worst, inputs, plainCalc) ? lean : worst)),
  );
}

const none = { name: "", diameter: Number.NaN, area: Number.NaN };

export const reinforcementTension = sharedMode(check({
  id: "anchors.reinforcement-tension",
  title: "Vertical bars in place of concrete breakout",
  link: "anchors",
  level: "strength",
  clause: "ACI 318-19 17.5.2.1, 25.4",
  fails: "The bars that are to take the tension of the rods yield, or are too short above or below the breakout surface and slip.",
  seen: "A pier top broken off and lifted, its bars drawn out of it clean.",
  range:
    "Uncoated bars in a pier, pedestal or wall, within half the embedment of a rod; each bar is taken by the rods nearest to it, shared among rods that are equally near. Development is counted for the farthest bar of a rod, without ties across it. A ring of bars in a round pier stands turned to its worst, the rows of a wall shifted to theirs; what a wall's bars carry beside, by the soil it holds back, is not taken off. Bars of a pier or wall end straight at the bottom, those of a pedestal in hooks on the bars of the pad. " +
    "The bars replace breakout in tension alone: pullout, side-face blowout and shear stay. Ties that hold the struts together are a rule of their own.",
  formulas: [concreteModulus, modularRatio, reinforcementReach, lengthAbove, lengthBelow, ...developmentFormulas, developedPart, developedOrNot, reinforcementStrength, ...seismicFormulas],
  applies: (support) => support.base !== undefined && hasBarsForBreakout(support),
  inputs: (support, gather, place): ReinforcementInputs => {
    const base = readBase(support, gather, place);
    gather.may(support.base?.fields["anchor reinforcement"]);
    if (isSetInAdhesive(support)) gather.block("bars are counted in place of breakout for cast-in rods alone; rods set in adhesive have no head for the struts to lean on");
    const because = editionBlock({ clause: "ACI 318-19 25.4" }, support.codes);
    if (because !== undefined) gather.block(because);
    const fields = support.foundation?.fields;
    const h_ef = gather.need(support.base?.fields.anchors?.value.embedment, "anchor embedment");
    if (h_ef >= base.member.depth) gather.block("the rods reach through the concrete: their embedment is not less than its depth");
    const grade = findBarGrade(gather.needs(fields?.["bar grade"], "grade of the bars") ?? "");
    const bars = support.base?.fields["anchor reinforcement"]?.value === "wall bars" ? wallBars(support, gather, place) : barPlaces(support, gather);
    const { diameter: d_b, area: A_b } = bars?.bar ?? none;
    const d_t = bars?.tie ?? Number.NaN;
    const c_c = bars?.cover ?? Number.NaN;
    const s = bars?.spacing ?? Number.NaN;
    const inputs: ReinforcementInputs = {
      ...base,
      seismic: readSeismic(support, gather, "tension"),
      h_ef,
      A_b,
      d_b,
      cover: c_c,
      f_y: isMissing(grade) ? Number.NaN : grade.fy,
      c_b: barToFace.value({ c_c, d_t, d_b, s }),
      psi_r: hookSpacingFactor.value({ s, d_b }),
      psi_o: hookPlaceFactor.value({ c_c, d_t, d_b }),
      top: gather.needs(fields?.["bar tops"], "how the vertical bars end at the top") ?? "straight",
      bottom: fields?.pedestal ? "hooked" : "straight",
      leans: [],
    };
    if (!bars || base.rods.length === 0) return inputs;
    const reach = reinforcementReach.value({ h_ef });
    const turns = "rows" in bars ? bars.arrangements(base.rods, reach) : bars.isRing ? turnsOfRing(bars.places) : [bars.places];
    return { ...inputs, leans: worstLeans(inputs, turns.map((places) => barsOfRods({ rods: base.rods, bars: places, reach }))) };
  },
  fixedBy: (support) => support.foundation?.fields.bars ?? support.base?.fields["anchor reinforcement"] ?? support.base,
  evaluate: (inputs, stated, calc) => {
    const demand = shaken(inputs.seismic, stated, calc);
    if ("because" in demand) return unchecked(demand.because);
    const contact = distribute(inputs, demand, calc);
    if (isUnstable(contact)) return unchecked(tipsOver(contact));
    if (inputs.leans.length === 0) return unchecked("no rod or no vertical bar is known");
    const strengths = strengthsOf(inputs);
    let rod = 0;
    let most = -1;
    for (const [i, S_d] of strengths.entries()) {
      const S_u = contact.tensions[i];
      const used = S_u > 0 ? (S_d > 0 ? usedPart.value({ S_u, S_d }) : Number.POSITIVE_INFINITY) : 0;
      if (used > most) [rod, most] = [i, used];
    }
    calc(reinforcementReach, { h_ef: inputs.h_ef });
    const lean = inputs.leans[rod];
    if (lean.count === 0) calc.note("No vertical bar stands within reach of this rod.");
    return weigh(Math.max(0, contact.tensions[rod]), strengthOf(lean, inputs, calc), "force");
  },
  advise: (inputs, outcome, say) => {
    const reach = say.show(reinforcementReach.value({ h_ef: inputs.h_ef }), "length");
    if (outcome.capacity > 0) return `${say.show(outcome.demand, "force")} in one rod; the bars it leans on carry ${say.show(outcome.capacity, "force")} with what is developed of them. Take more or thicker bars near the rods, hook their tops, or set the rods deeper.`;
    const isNear = inputs.leans.some(({ count }) => count > 0);
    return isNear
      ? `${say.show(outcome.demand, "force")} in one rod; the bars beside it are too short above or below the breakout surface to carry anything. Set the rods deeper, or deepen the pier.`
      : `${say.show(outcome.demand, "force")} in one rod; no vertical bar stands within ${reach} of it, half its embedment. Bring bars to the rods, or set the rods deeper.`;
  },
}));
