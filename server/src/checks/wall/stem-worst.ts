/** The worst of all heights of a wall, all situations of its fill, found by plain numbers and then shown alone with its steps. */
import { plainCalc } from "../../formula/calc.js";
import type { Calc } from "../../formula/types.js";
import { type Pair, worseOf } from "../../mechanics/worse.js";
import { oncePerInputs } from "../once.js";
import type { Situation } from "./situations.js";
import type { StemInputs } from "./stem.js";
import { type Combined, sectionAt, type StemSection } from "./stem-forces.js";
import type { Height } from "./stem-heights.js";

/** One height with what is known there of all combinations. */
export interface Prepared<K> {
  readonly height: Height;
  readonly section: StemSection;
  readonly known: K;
}

export const prepared = <I extends StemInputs, K>(heights: (inputs: I) => readonly Height[], know: (inputs: I, section: StemSection, calc: Calc) => K) =>
  oncePerInputs((inputs: I): readonly Prepared<K>[] =>
    heights(inputs).map((height) => {
      const section = sectionAt(inputs, height.y, plainCalc);
      return { height, section, known: know(inputs, section, plainCalc) };
    }),
  );

/** What is tried at a height in a situation: demand and capacity, and what they are of. */
export interface Tried<Q> extends Pair {
  readonly of: Q;
}

export interface WorstAsked<I, K, Q> {
  readonly inputs: I;
  readonly combined: Combined;
  readonly all: readonly Prepared<K>[];
  readonly know: (inputs: I, section: StemSection, calc: Calc) => K;
  readonly attempt: (section: StemSection, known: K, situation: Situation, calc: Calc) => Tried<Q>;
}

/** Where it is, in words. */
function said(words: string, { words: fill }: Situation, turn: number): string {
  const push = fill === "" || turn === 0 ? "" : turn > 0 ? ", the post pushed away from the fill" : ", the post pushed toward the fill";
  return `Governs: ${words}${fill === "" ? "" : `, ${fill}`}${push}.`;
}

export function worstOfStem<I extends StemInputs, K, Q>({ inputs, combined, all, know, attempt }: WorstAsked<I, K, Q>, calc: Calc): Tried<Q> {
  const { situations } = combined;
  let at = all[all.length - 1];
  let by = situations[0];
  let found = attempt(at.section, at.known, by, plainCalc);
  for (const one of all) {
    for (const situation of situations) {
      if (!situation.hasPost && !one.height.isDeveloped) continue;
      const next = attempt(one.section, one.known, situation, plainCalc);
      if (worseOf<Tried<Q>>(found, next) === next) [at, by, found] = [one, situation, next];
    }
  }
  if (calc === plainCalc) return found;
  const { top } = combined;
  calc.note(said(at.height.words, by, by.hasPost ? top.turn || top.across : 0));
  const section = sectionAt(inputs, at.height.y, calc);
  return attempt(section, know(inputs, section, calc), by, calc);
}
