/** A wall whose footing is held down by dowels in rock: their rows, and what presses once they pull. */
import type { Calc } from "../../formula/types.js";
import { type HeldRows, pulledDown } from "../../mechanics/held-rows.js";
import type { Unstable } from "../../mechanics/plate-contact.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { momentResultant } from "../pier/grade-forces.js";
import { bearingFormulas, type Direction, heldIn, pullFormulas, pullIn, readWallRows } from "../rock/rows.js";
import type { WallBody } from "./body.js";
import { isDoweledWall } from "./overturning.js";
import { contactOf, type Resultant } from "./underside.js";

/** Rows across the footing, each counted as one dowel; undefined where none holds the wall down. */
export function readDowelRows(support: Support, gather: Gather, { width, run }: WallBody): Direction | undefined {
  if (!isDoweledWall(support)) return undefined;
  const { rows, rowSpacing } = readWallRows(support, gather, width);
  return { across: width, along: run, rows, inRow: 1, spacing: rowSpacing };
}

/** What presses and pulls where the dowels pull; undefined where the footing stands by itself. */
export function heldByDowels(body: WallBody, rows: Direction | undefined, { N, M_c, M_l }: Resultant, calc: Calc): HeldRows | Unstable | undefined {
  if (!rows) return undefined;
  const M_h = calc(momentResultant, { M_x: M_c, M_y: M_l });
  if (!(pullIn(rows, N, M_h, calc) > 0)) return undefined;
  calc.note(`The dowels pull, as much as if all of the moment stood across the wall, and the footing presses from its edge toward the ${rows.rows === 1 ? "row" : "far row"} of them.`);
  const across = heldIn(rows, "x", [0], N, M_c < 0 ? -M_h : M_h, calc);
  if (M_l === 0 || across.pressure.qmax === 0) return across;
  // A moment along the wall presses one end of the length more; taken across like the rest it would press all of it alike.
  const borne = calc.routine(pulledDown, { N, M: M_c, pulls: across.pulls });
  const pressure = contactOf(body, { N: borne.N, M_c: borne.M, M_l }, calc);
  return "unstable" in pressure ? pressure : { pressure, pulls: across.pulls };
}

export const dowelRowFormulas = [momentResultant, ...pullFormulas, ...bearingFormulas] as const;
