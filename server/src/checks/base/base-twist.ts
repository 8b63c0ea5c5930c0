/**
 * A base twisted about the column's own axis, where a roof that turns twists its columns or a stated reaction does. The rods hold it: all of them by
 * their distances from the middle where washers are welded, two of them as a couple where they are loose. What one rod gets by the twist is
 * added to its part of the shear as if both pointed one way, the safe side; for the concrete about the rods the twist stands as a shear toward
 * every side, as if each rod had what the worst one has.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Point } from "../../mechanics/rectangles.js";
import { rodTwist } from "../../mechanics/rod-twist.js";

const source = "statics: a stiff plate turning about the middle of its rods, each in proportion to its distance; common practice, no single source";
const torque = { kind: "moment", meaning: "twist of the base" } as const;
const ofOne = { kind: "force", meaning: "shear of one rod by the twist" } as const;

export const twistShear = formula({
  id: "base.twist-shear",
  text: "V_t = abs(T) * c / J_r",
  source,
  symbols: { V_t: ofOne, T: torque, c: { kind: "length", meaning: "farthest rod from the middle, straight out or across the direction" }, J_r: { kind: "area", meaning: "sum of the squares of the rods' distances from their middle" } },
});

export const twistCouple = formula({
  id: "base.twist-couple",
  text: "V_t = abs(T) / s",
  source: "statics: with loose washers two rods bear, here the two that stand nearest to each other; common practice, no source",
  symbols: { V_t: ofOne, T: torque, s: { kind: "length", meaning: "least distance of two rods" } },
});

export const twistOfGroup = formula({
  id: "base.twist-of-group",
  text: "V_T = n_v * V_t",
  source: "the safe side: each rod that takes shear as the one that has most by the twist",
  symbols: { V_T: { kind: "force", meaning: "shear of the group that stands for the twist" }, n_v: { kind: "number", meaning: "rods that take shear" }, V_t: ofOne },
});

export const towardWithTwist = formula({
  id: "base.toward-with-twist",
  text: "V_n = max(0, V + V_T)",
  source: "the safe side: the twist pushes toward every side",
  symbols: { V_n: { kind: "force", meaning: "shear toward this side, with the twist" }, V: { kind: "force", meaning: "shear toward this side" }, V_T: { kind: "force", meaning: "shear of the group that stands for the twist" } },
});

/** Formulas that {@link twistOnRods} and its users may calculate with. */
export const twistFormulas = [twistShear, twistCouple, twistOfGroup, towardWithTwist] as const;

/** What a base has against a twist. */
export interface TwistPath {
  readonly rods: readonly Point[];
  readonly isWelded: boolean;
}

/** What a twist asks of the rods, N: of the worst one, and of the group along x and along y. */
export interface Twist {
  readonly ofRod: number;
  readonly x: number;
  readonly y: number;
}

/** Rods that bear when the washers are loose in wide holes. */
const bearingLoose = 2;

/** What a twist asks of the rods; or why they cannot hold it. */
export function twistOnRods({ rods, isWelded }: TwistPath, T: number, calc: Calc): Twist | { readonly because: string } {
  const found = calc.routine(rodTwist, rods);
  if (!found) return { because: "the base is twisted, and one rod cannot hold it; give it a second one" };
  const { x, y, r, squares: J_r, pair: s } = found;
  if (!isWelded) {
    calc.note("The base is twisted: with loose washers two rods hold it as a couple.");
    const V_t = calc(twistCouple, { T, s });
    const V_T = calc(twistOfGroup, { n_v: Math.min(rods.length, bearingLoose), V_t });
    return { ofRod: V_t, x: V_T, y: V_T };
  }
  calc.note("The base is twisted: all rods hold it, by their distances from their middle.");
  const ofRod = calc(twistShear, { T, c: r, J_r });
  const n_v = rods.length;
  return { ofRod, x: calc(twistOfGroup, { n_v, V_t: calc(twistShear, { T, c: y, J_r }) }), y: calc(twistOfGroup, { n_v, V_t: calc(twistShear, { T, c: x, J_r }) }) };
}
