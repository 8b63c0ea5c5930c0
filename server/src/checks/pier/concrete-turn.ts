/** Turns in plan that bring a section into its other orientation. */
import { formula } from "../../formula/declare.js";

/** Half a space between two of `n` bars on a ring; with two, from the x axis to the y axis. */
export const betweenBars = formula({
  id: "pier.between-bars",
  text: "alpha = half_turn / n",
  source: "geometry",
  symbols: { alpha: { kind: "angle", meaning: "turn of a ring of bars by half a space" }, n: { kind: "number", meaning: "vertical bars" } },
  constants: { half_turn: "180 deg" },
});
