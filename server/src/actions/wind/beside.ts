/** What the wind does beside the pressures on the roof: pushes on what hangs on the roof, and loads along the columns, which the roof props at their tops. */
import { plainCalc } from "../../formula/calc.js";
import type { Calc } from "../../formula/types.js";
import type { RoofColumn, RoofLoad } from "../../mechanics/rigid-roof.js";
import { columnEffects, forcesOfColumnLoads, propsBack, propsOnRoof, withEffects, type ColumnEffect, type ColumnLoad } from "../column-loads.js";
import type { RoofCase } from "../roof-case.js";
import { once } from "./once.js";

/** The same for every pressure case of one wind. */
export interface Beside {
  /** Pushes on the roof, those of the props among them. */
  readonly onRoof: (calc: Calc) => readonly RoofLoad[];
  /** What takes the props out again and puts the loads where they act. */
  readonly offRoof: (calc: Calc) => readonly RoofLoad[];
  readonly effects: (calc: Calc) => readonly ColumnEffect[];
}

/** Pushes on the roof and loads along the columns, found when first asked for. */
export function besideOf(columns: readonly RoofColumn[], pushes: (calc: Calc) => readonly RoofLoad[], alongColumns: (calc: Calc) => readonly ColumnLoad[]): Beside {
  const loads = once(alongColumns);
  const props = once((calc) => propsOnRoof(columns, loads(calc), calc));
  return {
    onRoof: once((calc) => {
      const pushed = pushes(calc);
      if (loads(plainCalc).length > 0) calc.note("Wind on the columns and on what they carry, propped by the roof at their tops:");
      return [...pushed, ...props(calc)];
    }),
    offRoof: once((calc) => [...forcesOfColumnLoads(columns, loads(plainCalc), calc), ...propsBack(props(plainCalc))]),
    effects: once((calc) => columnEffects(columns, loads(plainCalc), calc)),
  };
}

/** A case of the wind: loads on the roof, with what the wind does beside them. */
export function caseWith(of: Pick<RoofCase, "loadCase" | "source" | "outside" | "parts">, onRoof: (calc: Calc) => readonly RoofLoad[], beside: Beside): RoofCase {
  return {
    ...of,
    loads: once((calc) => [...onRoof(calc), ...beside.onRoof(calc)]),
    beside: beside.offRoof,
    finish: (reactions, calc) => withEffects(reactions, beside.effects(calc)),
  };
}
