/** Flexural strength of a column about both plan axes, by the kind of its section. */
import type { Calc } from "../../formula/types.js";
import { calculatedOnce } from "../once.js";
import { boxFormulas, boxStrength } from "./flexure.js";
import { roundFormulas, roundStrength } from "./flexure-round.js";
import { strongStrength, weakStrength, wideFormulas, type OutsideWide } from "./flexure-wide.js";
import type { ColumnInputs } from "./member.js";

/** Design moments about the east and about the north axis, N·m. */
export interface FlexuralStrength {
  readonly x: number;
  readonly y: number;
}

/** Why it is not known. */
export type OutsideFlexure = OutsideWide;

const slenderWeb: OutsideFlexure = { because: "the webs of this section are slender in bending, which this method leaves out; take a thicker wall" };
const thinRound: OutsideFlexure = { because: "the wall of this round section is thinner than the method holds for, D/t of 0.45 E/Fy; take a thicker wall" };

const strongOf = (column: ColumnInputs, calc: Calc): number | OutsideFlexure =>
  column.shape === "W" ? strongStrength(column, calc) : (boxStrength(column, column.strong, column.H, column.B, calc) ?? slenderWeb);

const weakOf = (column: ColumnInputs, calc: Calc): number | OutsideFlexure =>
  column.shape === "W" ? weakStrength(column, calc) : (boxStrength(column, column.weak, column.B, column.H, calc) ?? slenderWeb);

/** Design flexural strength about both plan axes, or why it is not known. */
export const flexuralStrength = calculatedOnce((column: ColumnInputs, calc: Calc): FlexuralStrength | OutsideFlexure => {
  if (column.shape === "round") {
    const M_c = roundStrength(column, calc);
    return M_c === undefined ? thinRound : { x: M_c, y: M_c };
  }
  if (column.shape === "square") {
    const M_c = strongOf(column, calc);
    return typeof M_c === "number" ? { x: M_c, y: M_c } : M_c;
  }
  calc.note("About the strong axis:");
  const strong = strongOf(column, calc);
  if (typeof strong !== "number") return strong;
  calc.note("About the weak axis:");
  const weak = weakOf(column, calc);
  if (typeof weak !== "number") return weak;
  return column.deep === "along x" ? { x: weak, y: strong } : { x: strong, y: weak };
});

export const flexureFormulas = [...boxFormulas, ...roundFormulas, ...wideFormulas];
