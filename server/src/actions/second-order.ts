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

/** From this magnifier on columns out of plumb count beside sideways forces too: AISC 360-22 C2.2b(d), at the reduced stiffness. */
const plumbCountsFrom = 1.7;

export const outOfPlumbMovement = formula({
  id: "actions.second-order.out-of-plumb",
  text: "u_n = B_2 * r_n * k_P * h / K_s",
  source: "AISC 360-22 C2.2b: notional loads of 0.002 of the vertical ones, columns 1/500 out of plumb; the height is that of the tallest column, the safe side (from memory)",
  symbols: {
    u_n: { kind: "length", meaning: "movement of the story by its notional loads" },
    B_2: { kind: "ratio", meaning: "magnifier of the story" },
    k_P: { kind: "stiffness", meaning: "push of the vertical loads per movement" },
    h: { kind: "distance", meaning: "height of the tallest column" },
    K_s: { kind: "stiffness", meaning: "push that moves the story by a unit, first order" },
  },
  constants: { r_n: "0.002" },
});

/** Whether a combination pushes sideways, so that columns out of plumb are little beside it; of reactions combined by others nobody knows. */
const pushes = ({ combination }: Demand): boolean => combination.terms.some(({ type }) => type === "W" || type === "E" || type === "N");

/** What a story does under one combination. */
interface Leaning {
  readonly B_2: number;
  /** Movement out of plumb, m; 0 where it need not be looked at. */
  readonly u_n: number;
}

/** The magnifier of a story, 1 where it is a trifle, with its movement out of plumb; or undefined where the story does not stand. */
function leaningOf({ columns, stiffness }: Story, compression: readonly number[], heights: readonly number[], alpha: number, isPushed: boolean, calc: Calc): Leaning | undefined {
  const k_P = calc.routine(leaning, { P: columns.map((i) => compression[i]), h: columns.map((i) => heights[i]) });
  const B_2 = calc(storyMagnifier, { alpha, k_P, K_s: stiffness });
  if (!(B_2 >= 1)) return undefined;
  const u_n = k_P > 0 && (!isPushed || B_2 > plumbCountsFrom) ? calc(outOfPlumbMovement, { B_2, k_P, h: Math.max(...columns.map((i) => heights[i])), K_s: stiffness }) : 0;
  if (B_2 > magnifierLeftOut) return { B_2, u_n };
  calc.note(`The magnifier is within ${magnifierLeftOut} and left out.`);
  return { B_2: 1, u_n };
}

function magnifiedForces(forces: Forces, by: Magnifiers, calc: Calc): Forces {
  return { ...forces, Mx: calc(magnifiedMoment, { B_2: by.y, M: forces.Mx }), My: calc(magnifiedMoment, { B_2: by.x, M: forces.My }) };
}

function magnify<L extends CombinedLevel>(first: Demand<L>, { outOfPlumb, ...by }: Under, calc: Calc): Demand<L> {
  const demand: Demand<L> = outOfPlumb.x > 0 || outOfPlumb.y > 0 ? { ...first, outOfPlumb } : first;
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

/** The magnifiers of one column, and how far its story moves out of plumb. */
interface Under extends Magnifiers {
  readonly outOfPlumb: { readonly x: number; readonly y: number };
}

/** The magnifiers of every column under one combination, or a direction in which its story does not stand. */
function magnifiersUnder(compression: readonly number[], heights: readonly number[], stories: Sharing["stories"], alpha: number, isPushed: boolean, calc: Calc): readonly Under[] | { readonly falls: "x" | "y" } {
  const found = heights.map(() => ({ x: 1, y: 1, outOfPlumb: { x: 0, y: 0 } }));
  for (const axis of ["x", "y"] as const) {
    for (const story of stories[axis]) {
      const leans = leaningOf(story, compression, heights, alpha, isPushed, calc);
      if (leans === undefined) return { falls: axis };
      for (const column of story.columns) {
        found[column][axis] = leans.B_2;
        found[column].outOfPlumb[axis] = leans.u_n;
      }
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
      pushes(demands[0][k]),
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
    pushes(demand),
    calc,
  );
}
