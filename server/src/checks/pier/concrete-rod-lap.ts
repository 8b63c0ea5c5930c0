/**
 * Rods end in the top of the pier, its bars begin beside them, and the pull has to pass from the ones to the others through the concrete between: too short
 * or too far apart, and the top is drawn off over the bars.
 *
 * Non-contact lap: 1.7 times the development length of the bars and the distance between (as of columns in drilled shafts; practice of a state's bridge
 * office, from memory); distance by ACI 318-19 25.5.1.3. Asked for where the notebook says that rods lap bars.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { turnsOfRing } from "../../mechanics/rod-bars.js";
import type { Point } from "../../mechanics/rectangles.js";
import type { Support } from "../../project/model.js";
import { developmentFormulas, developmentOf } from "../anchors/development.js";
import { barPlaces } from "../anchors/pier-bars.js";
import { barToFace } from "../anchors/reinforcement-tension.js";
import { distanceBetween, rodsInConcrete } from "../anchors/rod-edges.js";
import { type Gather, weighLimit } from "../contract.js";
import { detailOf } from "./concrete-detail.js";
import { type ConcreteMember, type MemberInputs, pedestalMember, pierMember, readMember } from "./concrete-member.js";

interface LapInputs extends MemberInputs {
  readonly h_ef: number;
  /** From a rod to the bar nearest to it, of the rod that has it farthest, the ring turned to its worst; m. */
  readonly apart: number;
}

const apart = { kind: "length", meaning: "from a rod to the nearest bar, center to center" } as const;
const l_d = { kind: "length", meaning: "development length of the bars" } as const;

export const lapNeeded = formula({
  id: "pier.rod-lap-needed",
  text: "l_n = 1.7 * l_d + s_p",
  source: "non-contact lap of column bars in a drilled shaft: 1.7 development lengths and the distance between (from memory)",
  symbols: { l_n: { kind: "length", meaning: "lap of rods and bars that is needed" }, l_d, s_p: apart },
});

export const lapAtHand = formula({
  id: "pier.rod-lap-at-hand",
  text: "l_a = h_ef - c_c",
  source: "geometry: from the top of the bars to the head of the rods",
  symbols: {
    l_a: { kind: "length", meaning: "lap of rods and bars", range: [-2, 5] },
    h_ef: { kind: "length", meaning: "embedment of the rods", field: "bases.*.anchors.embedment" },
    c_c: { kind: "length", meaning: "clear cover at the top of the bars", field: "foundations.*.cover" },
  },
});

export const lapApart = formula({
  id: "pier.rod-lap-distance-limit",
  text: "s_m = min(1.7 * l_d / 5, s_6)",
  source: "ACI 318-19 25.5.1.3",
  symbols: { s_m: { kind: "length", meaning: "largest distance of rods and bars that lap" }, l_d },
  constants: { s_6: "6 inch" },
});

function farthestApart(rods: readonly Point[], turns: readonly (readonly Point[])[]): number {
  return Math.max(...turns.flatMap((bars) => rods.map((rod) => Math.min(...bars.map((bar) => distanceBetween(rod, bar))))));
}

const readLap = (member: ConcreteMember) => (support: Support, gather: Gather): LapInputs => {
  const read = readMember(member, support, gather);
  const found = rodsInConcrete(support);
  const bars = barPlaces(support, gather);
  if ("lacks" in found) gather.block(`where the rods stand is not known: ${found.lacks}`);
  return {
    ...read,
    h_ef: gather.need(support.base?.fields.anchors?.value.embedment, "anchor embedment"),
    apart: "lacks" in found || !bars ? Number.NaN : farthestApart(found.rods, bars.isRing ? turnsOfRing(bars.places) : [bars.places]),
  };
};

function development(inputs: LapInputs, calc: Calc): number {
  const { bar, f_y, fprime_c, cover, transverse, barSpacing } = inputs;
  const c_b = calc(barToFace, { c_c: cover, d_t: transverse.diameter, d_b: bar.diameter, s: barSpacing });
  return developmentOf("straight", { d_b: bar.diameter, f_y, fprime_c, c_b, psi_r: 1, psi_o: 1 }, calc);
}

const laps = ({ foundation, base }: Support): boolean => foundation?.fields["rods lap bars"]?.value === true && base?.fields.anchors !== undefined;

const declareLength = (member: ConcreteMember) =>
  detailOf(member, readLap(member), {
    name: "rod-lap",
    title: `Lap of the rods with the bars of the ${member.word}`,
    clause: "ACI 318-19 25.4.2.4, 25.5.1.3",
    fails: "The pull of the rods does not pass into the bars beside them, and the top is drawn off over the bars.",
    seen: "A cone of concrete on the rods, the bars left standing straight and clean.",
    range: "Straight uncoated bars at their full yield strength, ties across the lap not counted, a ring of bars turned to its worst. Rods with heads. The ties that the lap needs are those of the top of the concrete.",
    formulas: [lapAtHand, barToFace, ...developmentFormulas.slice(0, 1), lapNeeded],
    applies: laps,
    fixedBy: (support) => support.base?.fields.anchors?.value.embedment,
    evaluate: (inputs, calc) => {
      const at = calc(lapAtHand, { h_ef: inputs.h_ef, c_c: inputs.cover });
      return weighLimit(calc(lapNeeded, { l_d: development(inputs, calc), s_p: inputs.apart }), Math.max(0, at), "length");
    },
    advise: (_inputs, outcome, say) => `rods and bars lap by ${say.show(outcome.capacity, "length")}; ${say.show(outcome.demand, "length")} needed. Set the rods deeper, bring bars to them, or take smaller bars.`,
  });

const declareApart = (member: ConcreteMember) =>
  detailOf(member, readLap(member), {
    name: "rod-lap-distance",
    title: `Distance of rods and bars that lap in the ${member.word}`,
    clause: "ACI 318-19 25.5.1.3",
    fails: "Rods and bars stand so far apart that the concrete between them splits in a zigzag.",
    seen: "Cracks along the rods at the top.",
    range: "Center to center of each rod and the bar nearest to it, a ring of bars turned to its worst.",
    formulas: [barToFace, ...developmentFormulas.slice(0, 1), lapApart],
    applies: laps,
    fixedBy: (support) => support.foundation?.fields.bars,
    evaluate: (inputs, calc) => weighLimit(inputs.apart, calc(lapApart, { l_d: development(inputs, calc) }), "length"),
    advise: (_inputs, outcome, say) => `a rod is ${say.show(outcome.demand, "length")} from the bar nearest to it; ${say.show(outcome.capacity, "length")} at most. Add bars near the rods, or bring the cage in.`,
  });

export const pierRodLap = declareLength(pierMember);
export const pedestalRodLap = declareLength(pedestalMember);
export const pierRodLapDistance = declareApart(pierMember);
export const pedestalRodLapDistance = declareApart(pedestalMember);
