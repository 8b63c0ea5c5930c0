/**
 * Second order: vertical loads on columns that lean add to the moments of a push. Demands on strength get the moments and movements of their
 * story magnified where that is more than a trifle; those of allowable-stress design of steel with 1.6 of their vertical loads, as the load at
 * which a column gives way is not the one it is allowed. A story is what sways together: all columns under a roof rigid in its plane, or each line
 * or column by itself. Turning of the roof in plan is not magnified apart.
 */
import { formula } from "../formula/declare.js";
import type { Calc } from "../formula/types.js";
import type { Forces } from "../mechanics/forces.js";
import { leaning } from "../mechanics/story.js";
import type { CombinedLevel } from "./combination-rows.js";
import type { Demand, NoActions } from "./demand.js";
import type { Sharing, Story } from "./sharing.js";

export const secondOrderSource = "AISC 360-22 Appendix 8, Eq. A-8-6 to A-8-8 (from memory)";

/** A magnifier no larger than this is left out: one part in a hundred. */
export const magnifierLeftOut = 1.01;

export const storyMagnifier = formula({
  id: "actions.second-order.magnifier",
  text: "B_2 = 1 / (1 - alpha * max(k_P, 0) / (R_M * r_E * K_s))",
  source: "AISC 360-22 Appendix 8, Eq. A-8-6 to A-8-8 with R_M = 0.85 of a story of moment frames alone; stiffness reduced to 0.8 by C2.3 (from memory)",
  symbols: {
    B_2: { kind: "ratio", meaning: "magnifier of the story for its leaning columns" },
    alpha: { kind: "ratio", meaning: "1.0 with strength combinations, 1.6 with allowable-stress ones (C2.1)", range: [1, 1.6] },
    k_P: { kind: "stiffness", meaning: "push of the vertical loads per movement", range: [0, 5e5] },
    K_s: { kind: "stiffness", meaning: "push that moves the story by a unit, first order", range: [1e6, 1e7] },
  },
  constants: { R_M: "0.85", r_E: "0.8" },
});

export const magnifiedMoment = formula({
  id: "actions.second-order.moment",
  text: "M_2 = B_2 * M",
  source: "AISC 360-22 Appendix 8, Eq. A-8-1, all of the moment taken as one of sway (from memory)",
  symbols: {
    M_2: { kind: "moment", meaning: "moment, second order" },
    B_2: { kind: "ratio", meaning: "magnifier of the story" },
    M: { kind: "moment", meaning: "moment, first order" },
  },
});

const magnifiedSway = formula({
  id: "actions.second-order.sway",
  text: "u_2 = B_2 * u",
  source: "AISC 360-22 Appendix 8 (from memory)",
  symbols: {
    u_2: { kind: "length", meaning: "movement of the column top, second order" },
    B_2: { kind: "ratio", meaning: "magnifier of the story" },
    u: { kind: "length", meaning: "movement of the column top, first order" },
  },
});

/** AISC 360-22 C2.1(d): second order of allowable-stress design is found at 1.6 times its loads. */
export const alphaOf: Readonly<Record<CombinedLevel, number>> = { strength: 1, allowable: 1.6 };

/** Magnifiers of one column under one combination, 1 where left out. */
export interface Magnifiers {
  readonly x: number;
  readonly y: number;
}

const none: Magnifiers = { x: 1, y: 1 };

/** The magnifier of a story, 1 where it is a trifle, or undefined where the story does not stand. */
function magnifierOf({ columns, stiffness }: Story, compression: readonly number[], heights: readonly number[], alpha: number, calc: Calc): number | undefined {
  const k_P = calc.routine(leaning, { P: columns.map((i) => compression[i]), h: columns.map((i) => heights[i]) });
  const B_2 = calc(storyMagnifier, { alpha, k_P, K_s: stiffness });
  if (!(B_2 >= 1)) return undefined;
  if (B_2 > magnifierLeftOut) return B_2;
  calc.note(`The magnifier is within ${magnifierLeftOut} and left out.`);
  return 1;
}

function magnifiedForces(forces: Forces, by: Magnifiers, calc: Calc): Forces {
  return { ...forces, Mx: calc(magnifiedMoment, { B_2: by.y, M: forces.Mx }), My: calc(magnifiedMoment, { B_2: by.x, M: forces.My }) };
}

function magnify<L extends CombinedLevel>(demand: Demand<L>, by: Magnifiers, calc: Calc): Demand<L> {
  if (by.x === 1 && by.y === 1) return { ...demand, magnified: none };
  const { sway } = demand;
  return {
    ...demand,
    top: magnifiedForces(demand.top, by, calc),
    base: magnifiedForces(demand.base, by, calc),
    sway: sway && { x: calc(magnifiedSway, { B_2: by.x, u: sway.x }), y: calc(magnifiedSway, { B_2: by.y, u: sway.y }) },
    magnified: by,
  };
}

/** The magnifiers of every column under one combination, or a direction in which its story does not stand. */
function magnifiersUnder(compression: readonly number[], heights: readonly number[], stories: Sharing["stories"], alpha: number, calc: Calc): readonly Magnifiers[] | { readonly falls: "x" | "y" } {
  const found = heights.map(() => ({ x: 1, y: 1 }));
  for (const axis of ["x", "y"] as const) {
    for (const story of stories[axis]) {
      const B_2 = magnifierOf(story, compression, heights, alpha, calc);
      if (B_2 === undefined) return { falls: axis };
      for (const column of story.columns) found[column][axis] = B_2;
    }
  }
  return found;
}

/**
 * Demands of every column with their second order in; each list has the same combinations in the same order. Or, in words, that a story
 * does not stand.
 */
export function withSecondOrder<L extends CombinedLevel>(demands: readonly (readonly Demand<L>[])[], heights: readonly number[], stories: Sharing["stories"], calc: Calc): readonly (readonly Demand<L>[])[] | NoActions {
  const magnified: Demand<L>[][] = demands.map(() => []);
  for (const k of demands[0]?.keys() ?? []) {
    const magnifiers = magnifiersUnder(
      demands.map((list) => list[k].base.P),
      heights,
      stories,
      alphaOf[demands[0][k].level],
      calc,
    );
    if ("falls" in magnifiers) {
      const way = magnifiers.falls === "x" ? "east to west" : "north to south";
      return { unknown: `the columns under the roof do not stand up to ${demands[0][k].label}: leaning ${way}, the vertical loads push more than the columns hold (${secondOrderSource}). Take stiffer columns, or brace a bay` };
    }
    demands.forEach((list, place) => magnified[place].push(magnify(list[k], magnifiers[place], calc)));
  }
  return magnified;
}

/** The same for one combination, recorded: the worst of all in the sum of its magnifiers. */
export function deriveSecondOrder(demands: readonly (readonly Demand<CombinedLevel>[])[], heights: readonly number[], stories: Sharing["stories"], calc: Calc): void {
  const columns = demands[0] ?? [];
  let worst = 0;
  columns.forEach(({ magnified }, k) => {
    const most = (at: number): number => Math.max(...demands.map((list) => Math.max(list[at].magnified?.x ?? 1, list[at].magnified?.y ?? 1)));
    if (magnified && most(k) > most(worst)) worst = k;
  });
  const demand = columns[worst];
  if (!demand) return;
  calc.note(`Under ${demand.label}, which leans the most of all ${demand.level === "strength" ? "strength" : "allowable-stress"} combinations; each story once along x, then along y:`);
  magnifiersUnder(
    demands.map((list) => list[worst].base.P),
    heights,
    stories,
    alphaOf[demand.level],
    calc,
  );
}
