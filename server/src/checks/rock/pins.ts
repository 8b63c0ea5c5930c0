/**
 * Dowels as pins in shear, the second to friction and a key: how many act, whether they go deep enough, and what their pull leaves of them. Bars
 * driven dry are pins too, and hold nothing but the slide.
 */
import type { Demand } from "../../actions/demand.js";
import { findBarGrade } from "../../catalog/materials.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";
import { pinDepth } from "./dowel-depth.js";
import { dowelPull, type DowelInputs, readDowels, wallDirection } from "./dowel-force.js";

const steel = { kind: "area", meaning: "nominal area of the bar", field: "foundations.*.dowels.bar" } as const;
const yieldStrength = { kind: "steelStress", meaning: "yield strength of the bar", field: "foundations.*.dowels.grade" } as const;

export const pinsTogether = formula({
  id: "rock.pins",
  text: "R_d = n * 0.6 * f_y * A_s / 2 * max(1 - 1.67 * T_1 / (f_y * A_s), 0)",
  source: "shear yield 0.6 f_y over 2, less what the pull takes of f_y A_s/1.67, in a straight line; after AISC 360-22 J3 and D2 (practice for dowels, from memory)",
  symbols: {
    R_d: { kind: "force", meaning: "allowable shear of the dowels as pins" },
    n: { kind: "number", meaning: "dowels that act with the support" },
    f_y: yieldStrength,
    A_s: steel,
    T_1: { kind: "force", meaning: "pull on one dowel" },
  },
});

export const inAll = formula({
  id: "rock.dowels-in-all",
  text: "n = n_r * m",
  source: "arithmetic",
  symbols: { n: { kind: "number", meaning: "dowels that act with the support" }, n_r: { kind: "number", meaning: "dowels in one row" }, m: { kind: "number", meaning: "rows one behind the other" } },
});

export interface Pins {
  readonly dowels: DowelInputs;
  readonly area: number;
  readonly diameter: number;
  readonly f_y: number;
  readonly intoRock: number;
  /** Driven dry: they take no pull. */
  readonly isDry: boolean;
}

export function readPins(support: Support, gather: Gather, place: number): Pins | undefined {
  const dowels = support.foundation?.fields.dowels?.value;
  if (!dowels) return undefined;
  const bar = gather.needs(dowels.bar, "size of the dowel bars");
  const grade = findBarGrade(gather.needs(dowels.grade, "grade of the dowel bars") ?? "60");
  return {
    dowels: readDowels(support, gather, place),
    area: bar?.area ?? Number.NaN,
    diameter: bar?.diameter ?? Number.NaN,
    f_y: "fy" in grade ? grade.fy : Number.NaN,
    intoRock: gather.need(dowels["into rock"], "depth of the dowel holes in rock"),
    isDry: gather.may(dowels["set in"]) === "nothing",
  };
}

/** What is said where dowels are counted against sliding. */
export const secondToFriction = (N: number): string =>
  N <= 0 ? "There is a net pull: friction does not count, and dowels and key alone are relied on." : "Friction and key come first; the dowels are counted besides, as pins.";

/** Allowable shear of all the dowels that act with the support, N. */
export function pinsHold(pins: Pins | undefined, demand: Demand, calc: Calc): number {
  if (!pins) return 0;
  if (pins.intoRock < calc(pinDepth, { d_b: pins.diameter })) {
    calc.note("The dowels are not deep enough to be pins, and are not counted.");
    return 0;
  }
  if (pins.isDry) calc.note("The bars are driven dry: they are pins alone, and take no pull.");
  const found = pins.isDry ? { pull: 0 } : dowelPull(pins.dowels, demand, calc);
  if ("because" in found) {
    calc.note("What the dowels pull is not known, and they are not counted against sliding.");
    return 0;
  }
  const direction = wallDirection(pins.dowels, calc);
  const n = direction ? calc(inAll, { n_r: direction.inRow, m: direction.rows }) : (pins.dowels.count ?? 0);
  return calc(pinsTogether, { n, f_y: pins.f_y, A_s: pins.area, T_1: found.pull });
}

export const pinFormulas = [pinDepth, inAll, pinsTogether] as const;
