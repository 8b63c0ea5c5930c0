/** What the wind sees of a column, by its section. */
import { placedSection, type ColumnSection, type DeepSide } from "../../catalog/sections.js";
import type { Calc } from "../../formula/types.js";
import { isAbove } from "../../mechanics/compare.js";
import { postCoefficient, relativeDiameter, slender, smoothFrom } from "./force-coefficients.js";
import { otherPressureOf, velocityPressureAt, withDirectionality, type WindSite } from "./velocity-pressure.js";

/** Directionality of round posts, ASCE 7-22 Table 26.6-1 (from memory); earlier editions have 0.95, so that 1.0 is the safe side there. */
const roundPost = 1;

/** Sizes of a column across a wind along x and along y, m, and whether it is round. */
export interface SeenPost {
  readonly width: { readonly x: number; readonly y: number };
  readonly isRound: boolean;
}

/** A wrapped column is as wide both ways as its wrapping, and flat. */
export function seenBy(section: ColumnSection, deep: DeepSide | undefined, wrapped: number | undefined): SeenPost {
  if (wrapped !== undefined) return { width: { x: wrapped, y: wrapped }, isRound: false };
  const { alongX, alongY } = placedSection(section, deep ?? "along x");
  return { width: { x: alongY, y: alongX }, isRound: section.shape === "round" };
}

/** Pressure of the drag on a round column whose middle is at height z, Pa. */
export function roundPostPressure(z: number, height: number, diameter: number, site: WindSite, calc: Calc): number {
  const q = velocityPressureAt(z, site, calc, roundPost);
  const r_D = calc(relativeDiameter, { D: diameter, q_d: withDirectionality(site.standard, q, roundPost, calc) });
  const surface = isAbove(r_D, smoothFrom) ? "round, moderately smooth" : "round, small or slow";
  return otherPressureOf(site.standard, q, roundPost, postCoefficient(surface, calc(slender, { H: height, D: diameter }), calc), calc);
}
