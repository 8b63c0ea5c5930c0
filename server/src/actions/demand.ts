/**
 * What the checks take: forces at a column, each with its load level. Level is part of the type, so that a check that takes
 * allowable-stress loads cannot be handed strength loads.
 */
import type { Step } from "../formula/types.js";
import type { Forces } from "../mechanics/forces.js";
import type { PlacedForces } from "../mechanics/forces-together.js";

export type { Forces };

export type Level = "strength" | "allowable" | "service";

/** The edge of the roof the wind comes from. */
export type Edge = "north" | "east" | "south" | "west";

/**
 * `E` is the sideways part of the earthquake, `Ev` its vertical part where that is a case of its own. `N` is the least sideways force, where no
 * earthquake is asked for.
 */
export type LoadType = "D" | "L" | "Lr" | "S" | "R" | "W" | "E" | "Ev" | "N";

/** One load on the structure, before any factor. */
export interface LoadCase {
  /** Stable, for example `wind/south/B/clear`. */
  readonly id: string;
  readonly type: LoadType;
  /** In words: "wind from the south, onto the low edge, case B, clear flow". */
  readonly title: string;
  readonly from?: Edge;
  /** Of a dead load with a least and a most: the light one holds down, the heavy one presses. */
  readonly estimate?: "light" | "heavy";
  /**
   * Pressure on plan, Pa, of a load that is the same all over the roof. Of two such loads that cannot act together the larger one stands for
   * both: the effects of the smaller lie between those of the larger and of none.
   */
  readonly uniform?: number;
}

export interface Term {
  readonly factor: number;
  readonly type: LoadType;
}

/** A load combination, named by its terms: `0.9D + 1.0W`. */
export interface Combination<L extends Level = Level> {
  readonly level: L;
  readonly label: string;
  readonly terms: readonly Term[];
  /** Clause of the load standard. */
  readonly clause: string;
}

/** One combination with its load cases chosen, at one column. */
export interface Demand<L extends Level = Level> {
  readonly level: L;
  /** Unique within a column: combination and cases in words. */
  readonly label: string;
  readonly combination: Combination<L>;
  readonly cases: readonly LoadCase[];
  /** At the top of the column, under the roof. */
  readonly top: Forces;
  /** At the column base, top of the base plate. */
  readonly base: Forces;
  /** The part of the axial force at the column base that is dead load, factored; left out where the reaction came already combined. */
  readonly dead?: number;
  /** The part of the forces at the column base that is the sideways earthquake, factored, before second order; left out without one. */
  readonly earthquake?: Forces;
  /** Movement of the column top in plan, east and north, m; known where the roof's loads were carried down. */
  readonly sway?: { readonly x: number; readonly y: number };
  /** Set where several columns stand on one pad: each from the middle of their line, m, with its own forces; `base` is then all of them together. */
  readonly parts?: readonly PlacedForces[];
  /** In words, why these forces do not hold for the structure: what they try is not checked. */
  readonly beyond?: string;
  /** How far the columns of the story would move out of plumb along each axis, m, second order in it; set where that has to be looked at. */
  readonly outOfPlumb?: { readonly x: number; readonly y: number };
  /** Set where second order has been looked at for the whole story: by how much moments and movements are magnified along each axis. */
  readonly magnified?: { readonly x: number; readonly y: number };
}

/** Everything that reaches one column. */
export interface ColumnActions {
  readonly cases: readonly { readonly loadCase: LoadCase; readonly top: Forces; readonly base: Forces }[];
  readonly strength: readonly Demand<"strength">[];
  /** What tries the connection at the column top: the same, and edge pressures on the roof area nearest to it. */
  readonly atTop: readonly Demand<"strength">[];
  /** The same at allowable-stress level, with second order in it; empty where neither the method of steel nor a stated strength asks for it. */
  readonly atTopAllowable: readonly Demand<"allowable">[];
  /** What bolts and welds at the column top are tried by, as the notebook names the method. */
  readonly atTopSteel: readonly Demand<"strength" | "allowable">[];
  readonly allowable: readonly Demand<"allowable">[];
  /**
   * What steel designed by AISC 360 is tried by: the strength combinations, the allowable-stress ones with second order in them, or both, as the
   * notebook names the method.
   */
  readonly steel: readonly Demand<"strength" | "allowable">[];
  /** Dead load with the wind of service, for sway; none where reactions are given by hand. */
  readonly service: readonly Demand<"service">[];
}

/** Why there are no actions, in words that name what is missing. */
export interface NoActions {
  readonly unknown: string;
}

/** How a load was found, made only when asked for. */
export interface LoadDerivation {
  readonly title: string;
  readonly source: string;
  readonly steps: readonly Step[];
}
