/** How a state is written: a word, a mark that differs by shape and weight, and words for a count of links. */
import type { State } from "../../shared/report.js";

interface Written {
  /** Drawn beside the word; a solid shape weighs more than an open one, so no color is needed. */
  readonly mark: string;
  /** After a number: `2 over`. */
  readonly counted: (count: number) => string;
}

const after = (words: string) => () => words;

const written: Readonly<Record<State, Written>> = {
  over: { mark: "■", counted: after("over") },
  near: { mark: "△", counted: after("near") },
  "not checked": { mark: "◇", counted: after("not checked") },
  accepted: { mark: "▣", counted: after("over and accepted") },
  holds: { mark: "○", counted: (count) => (count === 1 ? "holds" : "hold") },
  "not covered": { mark: "◌", counted: (count) => `known limit state${count === 1 ? "" : "s"} not covered` },
};

/** From the one that needs attention first to the one that needs it least. */
export const statesByWeight = Object.keys(written) as readonly State[];

const isState = (state: string): state is State => Object.hasOwn(written, state);

/** The mark of a state; a state of a newer server than this client gets a neutral one. */
export const markOf = (state: string): string => (isState(state) ? written[state].mark : "–");

/** `2 over`, `1 holds`, `9 known limit states not covered`. */
export const counted = (state: State, count: number): string => `${count} ${written[state].counted(count)}`;

/** Demand over capacity, in as many digits as help. */
export const ratioText = (ratio: number): string => ratio.toFixed(ratio >= 100 ? 0 : ratio >= 10 ? 1 : 2);
