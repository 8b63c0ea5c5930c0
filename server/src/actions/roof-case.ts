/** A load case on the roof with how its loads are found; the same functions run while typing and when the reasons are asked for. */
import type { Calc } from "../formula/types.js";
import type { RoofLoad } from "../mechanics/rigid-roof.js";
import type { LoadCase } from "./demand.js";
import type { Reaction } from "./way-down.js";

export interface RoofCase {
  readonly loadCase: LoadCase;
  readonly source: string;
  /** In words, why the case is information only: its coefficients are used outside their range. */
  readonly outside?: string;
  readonly loads: (calc: Calc) => readonly RoofLoad[];
  /** What the loads leave out of the case's total, where not all of it goes through the roof. */
  readonly beside?: (calc: Calc) => readonly RoofLoad[];
  /** What goes to the columns past the roof, added to what the roof brings. */
  readonly finish?: (reactions: readonly Reaction[], calc: Calc) => readonly Reaction[];
}
