/** A load case on the roof with how its loads are found; the same functions run while typing and when the reasons are asked for. */
import type { Calc } from "../formula/types.js";
import type { PlanArea, RoofLoad } from "../mechanics/rigid-roof.js";
import type { LoadCase } from "./demand.js";
import type { Reaction } from "./way-down.js";

/** One pressure or push of a case, for a reader who asks where it comes from. */
export interface LoadPart {
  /** The part of the roof, in words. */
  readonly where: string;
  /** Its ends as distances from the windward edge, m. */
  readonly between?: readonly [number, number];
  /** The rectangle in plan, where it is not the whole roof, m. */
  readonly area?: PlanArea;
  readonly coefficient?: { readonly symbol: string; readonly value: number };
  /** Pa, positive down. */
  readonly pressure?: number;
  /** Push to the east and to the north, N. */
  readonly push?: { readonly x: number; readonly y: number };
  /** Figure or clause, with the row and the case it is read from. */
  readonly read: string;
}

export interface RoofCase {
  readonly loadCase: LoadCase;
  readonly source: string;
  /** In words, why the case is information only: its coefficients are used outside their range. */
  readonly outside?: string;
  readonly loads: (calc: Calc) => readonly RoofLoad[];
  /** What the loads leave out of the case's total, where not all of it goes through the roof. */
  readonly beside?: (calc: Calc) => readonly RoofLoad[];
  /** Its pressures with where each is read from; left out where the loads and the source tell all. */
  readonly parts?: () => readonly LoadPart[];
  /** What goes to the columns past the roof, added to what the roof brings. */
  readonly finish?: (reactions: readonly Reaction[], calc: Calc) => readonly Reaction[];
}
