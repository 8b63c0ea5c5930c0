/**
 * Ties too far apart, too thin, or with no corner at a bar let the vertical bars buckle outward under a push, and the cover goes with them.
 *
 * ACI 318-19 25.7.2.1 (spacing), 25.7.2.2 (size), 25.7.2.3 (every corner and every other bar held, none more than 6 in clear from one that is).
 */
import { formula } from "../../formula/declare.js";
import { barsBetweenCorners } from "../../mechanics/bars-around.js";
import type { Support } from "../../project/model.js";
import { weighLimit } from "../contract.js";
import { detail, tiesOf } from "./concrete-detail.js";
import { type ConcreteMember, pedestalMember, pierMember } from "./concrete-member.js";

const d_b = { kind: "length", meaning: "diameter of the vertical bars", field: "foundations.*.bars" } as const;

export const tieSpacing = formula({
  id: "pier.tie-spacing-limit",
  text: "s_m = min(16 * d_b, 48 * d_t, h_l)",
  source: "ACI 318-19 25.7.2.1(b)",
  symbols: {
    s_m: { kind: "length", meaning: "largest spacing of ties" },
    d_b,
    d_t: { kind: "length", meaning: "diameter of the ties", field: "foundations.*.ties.bar" },
    h_l: { kind: "length", meaning: "least side or diameter of the section" },
  },
});

export const tieSize = formula({
  id: "pier.tie-size-needed",
  text: "d_r = d_b > d_10 ? d_4 : d_3",
  source: "ACI 318-19 25.7.2.2: no. 3 round bars to no. 10, no. 4 round larger ones",
  symbols: { d_r: { kind: "length", meaning: "least diameter of the ties" }, d_b },
  // A hair below the nominal sizes, so that 10 mm and 12 mm bars count.
  constants: { d_10: "1.3 inch", d_4: "0.47 inch", d_3: "0.37 inch" },
});

export const farthestBar = formula({ id: "pier.farthest-bar", text: "a_6 = six", source: "ACI 318-19 25.7.2.3(b)", symbols: { a_6: { kind: "length", meaning: "clear distance up to which a bar need not be held itself" } }, constants: { six: "6 inch" } });
export const barsUnheld = formula({ id: "pier.bars-unheld", text: "n_u = 1", source: "ACI 318-19 25.7.2.3(a): every other bar is held", symbols: { n_u: { kind: "number", meaning: "bars between two that are held" } } });

export const clearToCorner = formula({
  id: "pier.clear-to-corner",
  text: "a_c = s_b - d_b",
  source: "geometry",
  symbols: { a_c: { kind: "length", meaning: "clear distance from a bar to one held by a corner of the ties", range: [-1, 1] }, s_b: { kind: "length", meaning: "distance of the two, center to center" }, d_b },
});

const isTied = ({ foundation }: Support): boolean => foundation?.fields.ties !== undefined || foundation?.fields.spiral === undefined;
const isRectangle = (member: ConcreteMember) => ({ foundation }: Support): boolean => (member.word === "pier" ? foundation?.fields.diameter : foundation?.fields.pedestal?.value.diameter) === undefined;

const declareSpacing = (member: ConcreteMember) =>
  detail(member, {
    name: "tie-spacing",
    title: `Spacing of the ties of the ${member.word}`,
    clause: "ACI 318-19 25.7.2.1",
    fails: "The ties stand so far apart that the vertical bars buckle between them.",
    seen: "Bars bowed out between two ties, the cover beside them gone.",
    range: "The whole height alike. Closer ties that seismic design category C to F asks of a pier near its top, and those round the rods, are looked at on their own.",
    formulas: [tieSpacing],
    applies: (support) => isTied(support) || isRectangle(member)(support),
    fixedBy: tiesOf,
    evaluate: (inputs, calc) => weighLimit(inputs.transverse.spacing, calc(tieSpacing, { d_b: inputs.bar.diameter, d_t: inputs.transverse.diameter, h_l: Math.min(inputs.width, inputs.length) }), "length"),
    advise: (_inputs, outcome, say) => `ties ${say.show(outcome.demand, "length")} apart; ${say.show(outcome.capacity, "length")} at most. Set them closer.`,
  });

const declareSize = (member: ConcreteMember) =>
  detail(member, {
    name: "tie-size",
    title: `Size of the ties of the ${member.word}`,
    clause: "ACI 318-19 25.7.2.2, 25.7.3.2",
    fails: "The ties are too thin to hold the vertical bars.",
    seen: "Ties that opened at their hooks.",
    range: "No. 3 round bars to no. 10 and as a spiral, no. 4 round larger bars.",
    formulas: [tieSize],
    fixedBy: tiesOf,
    evaluate: (inputs, calc) => weighLimit(calc(tieSize, { d_b: inputs.bar.diameter }), inputs.transverse.diameter, "length"),
    advise: (inputs, outcome, say) => `${inputs.transverse.name} round ${inputs.bar.name}; ${say.show(outcome.demand, "length")} of diameter needed. Take larger ties.`,
  });

const declareHeld = (member: ConcreteMember) =>
  detail(member, {
    name: "bars-held",
    title: `Vertical bars of the ${member.word} held by ties`,
    clause: "ACI 318-19 25.7.2.3",
    fails: "A vertical bar between the corners is held by no tie and buckles outward.",
    seen: "A bulge in the middle of a face.",
    range: "A rectangle of bars with one tie round it, whose corners hold the corner bars; inner ties hold the rest where they are stated. Ties in a circle hold every bar.",
    formulas: [clearToCorner, farthestBar, barsUnheld],
    applies: isRectangle(member),
    fixedBy: tiesOf,
    evaluate: (inputs, calc) => {
      if (inputs.transverse.inner) {
        calc.note("Inner ties hold the bars between the corners.");
        return weighLimit(0, calc(farthestBar, {}), "length");
      }
      const { most, farthest } = barsBetweenCorners(inputs.places);
      const allowed = calc(barsUnheld, {});
      if (most > allowed) return weighLimit(most, allowed, "number");
      return weighLimit(most === 0 ? 0 : Math.max(0, calc(clearToCorner, { s_b: farthest, d_b: inputs.bar.diameter })), calc(farthestBar, {}), "length");
    },
    advise: (_inputs, outcome, say) =>
      outcome.quantity === "number"
        ? `${say.show(outcome.demand, "number")} bars between the corners of a side are held by no tie; 1 at most. Hold them by inner ties (inner: yes under ties), or take fewer and larger bars.`
        : `a bar between the corners is ${say.show(outcome.demand, "length")} clear of the next that a tie holds; 6 in at most. Hold it by inner ties (inner: yes under ties), or add bars.`,
  });

export const pierTieSpacing = declareSpacing(pierMember);
export const pedestalTieSpacing = declareSpacing(pedestalMember);
export const pierTieSize = declareSize(pierMember);
export const pedestalTieSize = declareSize(pedestalMember);
export const pierBarsHeld = declareHeld(pierMember);
export const pedestalBarsHeld = declareHeld(pedestalMember);
