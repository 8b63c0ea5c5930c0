/**
 * Bars that a wall needs by its size, whatever the load: least steel both ways, curtains, spacing and cover. Where they are missing a wall cracks
 * through every few yards as it shrinks, and rust follows the cracks.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import type { Support } from "../../project/model.js";
import { check, type Gather, sameInAll, weighLimit } from "../contract.js";
import { largestSpacing } from "../footing/bar-spacing.js";
import { padEditions } from "../footing/pad.js";
import { coverInForms, coverOnGround } from "../pier/concrete-cover.js";
import { isWall } from "./body.js";
import { type Horizontal, readStem, type StemInputs } from "./stem.js";

const thickness = { kind: "length", meaning: "thickness of the wall", field: "foundations.*.thickness" } as const;
const ratio = { kind: "ratio", meaning: "bars over the section of the wall, all curtains together" } as const;
const largest = { kind: "length", meaning: "diameter of the largest of these bars" } as const;
const yieldStrength = { kind: "steelStress", meaning: "yield strength of the bars", field: "foundations.*.bar grade" } as const;

export const barRatio = formula({
  id: "wall.bar-ratio",
  text: "rho = rho_o + A_b / (s * t_w)",
  source: "ACI 318-19 2.2: of the whole section, both faces together",
  symbols: { rho: ratio, rho_o: { kind: "ratio", meaning: "those counted before" }, A_b: { kind: "area", meaning: "area of one bar" }, s: { kind: "length", meaning: "spacing of the bars" }, t_w: thickness },
});

export const leastUpright = formula({
  id: "wall.least-vertical",
  text: "rho_l = d_m <= d_5 and f_y >= f_60 ? 0.0012 : 0.0015",
  source: "ACI 318-19 Table 11.6.1, low shear (from memory)",
  symbols: { rho_l: { kind: "ratio", meaning: "least vertical bars over the section" }, d_m: largest, f_y: yieldStrength },
  constants: { d_5: "0.64 inch", f_60: "59.9 ksi" },
});

export const leastLevel = formula({
  id: "wall.least-horizontal",
  text: "rho_t = d_m <= d_5 and f_y >= f_60 ? 0.0020 : 0.0025",
  source: "ACI 318-19 Table 11.6.1, low shear (from memory)",
  symbols: { rho_t: { kind: "ratio", meaning: "least horizontal bars over the section" }, d_m: largest, f_y: yieldStrength },
  constants: { d_5: "0.64 inch", f_60: "59.9 ksi" },
});

export const leastOfSlab = formula({
  id: "wall.least-of-slab",
  text: "rho_s = 0.0018",
  source: "ACI 318-19 13.3.6.1, 7.6.1.1, 24.4.3.2: the stem of a cantilever retaining wall is a one-way slab (from memory)",
  symbols: { rho_s: { kind: "ratio", meaning: "least bars each way over the section, the vertical ones at the face against the fill" } },
});

export const curtainsNeeded = formula({
  id: "wall.curtains",
  text: "n_c = t_w > t_10 ? 2 : 1",
  source: "ACI 318-19 11.7.2.3 (from memory)",
  symbols: { n_c: { kind: "number", meaning: "curtains of bars needed" }, t_w: thickness },
  constants: { t_10: "10.0001 inch" },
});

interface Row {
  readonly diameter: number;
  readonly area: number;
  readonly spacing: number;
}

export interface StemDetailInputs extends StemInputs {
  readonly upright: readonly Row[];
  readonly level: readonly Row[];
  readonly isOnGround: boolean;
}

const isRow = (one: Horizontal | undefined): one is Horizontal => one !== undefined;

function readDetails(support: Support, gather: Gather, place: number): StemDetailInputs {
  const stem = readStem(support, gather, place);
  const level = stem.faces.map(({ horizontal }) => horizontal).filter(isRow);
  if (stem.faces.length > 0 && level.length === 0) gather.need(undefined, "horizontal bars of the wall (`stem bars`)");
  // Only bars that go all the way up count everywhere.
  return { ...stem, level, upright: stem.faces.flatMap(({ vertical }) => vertical.filter(({ end }) => !isAbove(end, stem.cover))), isOnGround: gather.may(support.foundation?.fields["cast against"]) === "the ground" };
}

const ratioOf = (rows: readonly Row[], t_w: number, calc: Calc): number => rows.reduce((rho_o, { area: A_b, spacing: s }) => calc(barRatio, { rho_o, A_b, s, t_w }), 0);
const largestOf = (rows: readonly Row[]): number => Math.max(0, ...rows.map(({ diameter }) => diameter));
const stemBars = (support: Support) => support.foundation?.fields["stem bars"] ?? support.foundation;

export const wallStemSteel = check({
  id: "wall.stem-least-steel",
  title: "Least bars of the wall",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 11.6.1, 13.3.6.1, 7.6.1.1, 24.4.3.2",
  editions: padEditions,
  fails: "The wall has too few bars to hold together once its concrete cracks.",
  seen: "A wall cracked through from top to bottom every few yards.",
  range:
    "Walls cast in place, in low shear, by the whole section: all curtains together; of the vertical bars those that go up to the top. A wall that holds soil back as a cantilever has 0.0018 of its section each way, of the vertical bars at the face against the soil.",
  formulas: [barRatio, leastUpright, leastLevel, leastOfSlab],
  applies: isWall,
  inputs: readDetails,
  measures: sameInAll,
  fixedBy: stemBars,
  evaluate: (inputs, _demand, calc) => {
    const { thickness: t_w, f_y, upright, level } = inputs;
    const all = (rows: readonly Row[], least: number): Pair => ({ demand: least, capacity: ratioOf(rows, t_w, calc) });
    if (inputs.earth) {
      calc.note("A cantilever that holds soil back is a one-way slab. Of its vertical bars count those at the face against the soil, or in the middle.");
      const pulled = inputs.faces.flatMap(({ name, vertical }) => (name === "free face" ? [] : vertical));
      const least = calc(leastOfSlab, {});
      const held = worseOf(all(pulled, least), all(level, least));
      return weighLimit(held.demand, held.capacity, "ratio");
    }
    const found = worseOf(all(upright, calc(leastUpright, { d_m: largestOf(upright), f_y })), all(level, calc(leastLevel, { d_m: largestOf(level), f_y })));
    return weighLimit(found.demand, found.capacity, "ratio");
  },
  advise: (_inputs, outcome, say) => `the bars of one direction are ${say.show(outcome.capacity, "ratio")} of the wall's section; at least ${say.show(outcome.demand, "ratio")} are needed. Set them closer or take larger ones.`,
});

export const wallStemCurtains = check({
  id: "wall.stem-curtains",
  title: "Curtains of bars in the wall",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 11.7.2.3",
  editions: padEditions,
  fails: "A thick wall has its bars in one curtain, and its faces crack without any near them.",
  seen: "A thick wall with a net of cracks on its face.",
  range: "Walls thicker than 10 in have bars both ways at both faces. Walls that hold soil back as cantilevers are excepted.",
  formulas: [curtainsNeeded],
  applies: isWall,
  inputs: readDetails,
  measures: sameInAll,
  fixedBy: stemBars,
  evaluate: (inputs, _demand, calc) => {
    const full = inputs.faces.filter(({ name, vertical, horizontal }) => name !== "middle" && vertical.length > 0 && horizontal !== undefined);
    if (inputs.earth) calc.note("A cantilever that holds soil back is excepted from two curtains.");
    return weighLimit(inputs.earth ? 1 : calc(curtainsNeeded, { t_w: inputs.thickness }), Math.max(full.length, 1), "number");
  },
  advise: (inputs, outcome, say) => `${say.show(outcome.capacity, "number")} curtain of bars in a wall ${say.show(inputs.thickness, "length")} thick; ${say.show(outcome.demand, "number")} needed, with bars both ways at both faces.`,
});

export const wallStemSpacing = check({
  id: "wall.stem-bar-spacing",
  title: "Spacing of the bars in the wall",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 11.7.2.1, 11.7.3.1, 7.7.2.3",
  editions: padEditions,
  fails: "The bars stand so far apart that the concrete between them cracks wide.",
  seen: "Wide cracks between rusting bars.",
  range: "Largest spacing of vertical and horizontal bars, three times the thickness of the wall and 18 in. The least clear distance is not checked.",
  formulas: [largestSpacing],
  applies: isWall,
  inputs: readDetails,
  measures: sameInAll,
  fixedBy: stemBars,
  evaluate: (inputs, _demand, calc) => weighLimit(Math.max(...[...inputs.upright, ...inputs.level].map(({ spacing }) => spacing)), calc(largestSpacing, { t: inputs.thickness }), "length"),
  advise: (_inputs, outcome, say) => `bars of the wall ${say.show(outcome.demand, "length")} apart; at most ${say.show(outcome.capacity, "length")} allowed. Add bars.`,
});

export const wallStemCover = check({
  id: "wall.stem-cover",
  title: "Cover of the bars in the wall",
  link: "wall",
  level: "strength",
  clause: "ACI 318-19 Table 20.5.1.3.1",
  editions: padEditions,
  fails: "The cover is thinner than soil or weather asks for.",
  seen: "Rust stains along the bars, then cover in shards.",
  range: "The clear cover stated, over the outer bars, at faces cast in forms against soil or weather; 3 in where the wall is said to be cast against the ground. Deicing salt and sea ask for more, which is left to the durability of the concrete.",
  formulas: [coverOnGround, coverInForms],
  applies: isWall,
  inputs: readDetails,
  measures: sameInAll,
  fixedBy: (support) => support.foundation?.fields["stem cover"] ?? support.foundation,
  evaluate: (inputs, _demand, calc) => weighLimit(inputs.isOnGround ? calc(coverOnGround, {}) : calc(coverInForms, { d_o: largestOf([...inputs.upright, ...inputs.level]) }), inputs.cover, "length"),
  advise: (_inputs, outcome, say) => `${say.show(outcome.capacity, "length")} of cover over the bars of the wall; ${say.show(outcome.demand, "length")} needed. Set the bars deeper.`,
});
