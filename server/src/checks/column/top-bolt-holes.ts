/**
 * What holds a bolt sideways besides its own shank: the steel before it in the cap plate and in the flange of the roof beam, which stretches or
 * tears out, and the grip of a pretensioned bolt, where slip is not allowed. AISC 360-22 J3.11 (J3.10 before 2022) and J3.9 (J3.8).
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";

const length = (meaning: string, field?: string) => ({ kind: "length", meaning, field }) as const;
const force = (meaning: string) => ({ kind: "force", meaning }) as const;

const top = "columns.*.top connection";

export const clearAtEdge = formula({
  id: "column.clear-at-edge",
  text: "l_c = max(0, a - d_h / 2)",
  source: "AISC 360-22 J3.11: clear distance from the hole to the edge, taken as ahead of the bolt whichever way it is pushed",
  symbols: { l_c: length("clear steel before the bolt"), a: length("from the middle of the bolt to the edge", `${top}.cap plate.edge`), d_h: length("hole") },
});

export const clearToNext = formula({
  id: "column.clear-to-next",
  text: "l_c = max(0, s - d_h)",
  source: "AISC 360-22 J3.11: clear distance between holes",
  symbols: { l_c: length("clear steel before the bolt"), s: length("spacing of the bolts", `${top}.bolts.spacing x`), d_h: length("hole") },
});

export const bearingAtHole = formula({
  id: "column.bearing-at-hole",
  text: "R_c = phi * min(2.4 * d, 1.2 * l_c) * t * F_u",
  source: "AISC 360-22 Eq. J3-6a and J3-6c, phi = 0.75, where a hole may not stretch under service loads",
  symbols: {
    R_c: force("design strength of the steel at one bolt, in bearing and tear-out"),
    d: length("diameter of the bolts", `${top}.bolts.diameter`),
    l_c: length("clear steel before the bolt"),
    t: length("thickness of that part", `${top}.cap plate.thickness`),
    F_u: { kind: "steelStress", meaning: "tensile strength of that part" },
  },
  constants: { phi: "0.75" },
});

export const gripLeft = formula({
  id: "column.grip-left",
  text: "k_sc = max(0, 1 - alpha * T_u / (D_u * T_m))",
  source: "AISC 360-22 Eq. J3-5a and J3-5b, D_u = 1.13; alpha of 1.0 with strength loads, 1.5 with allowable-stress ones",
  symbols: { k_sc: { kind: "ratio", meaning: "what tension leaves of the grip" }, alpha: { kind: "ratio", meaning: "by the method of design" }, T_u: force("tension of the bolt"), T_m: force("least pretension of the bolt") },
  constants: { D_u: "1.13" },
});

export const slipStrength = formula({
  id: "column.slip-strength",
  text: "R_s = mu * D_u * T_m * k_sc",
  source: "AISC 360-22 Eq. J3-4, phi = 1.00 for standard holes, one surface, D_u = 1.13",
  symbols: { R_s: force("design slip strength of one bolt"), mu: { kind: "ratio", meaning: "mean slip coefficient of the surfaces", field: `${top}.bolts.slip critical` }, T_m: force("least pretension of the bolt"), k_sc: { kind: "ratio", meaning: "what tension leaves of the grip" } },
  constants: { D_u: "1.13" },
});

/** A part that the bolts go through; m and Pa. */
export interface Part {
  readonly t: number;
  /** From the middle of a bolt to its edge. */
  readonly a: number;
  readonly F_u: number;
}

/** Design strength of a part at one bolt, N. */
export function strengthAtHole({ t, a, F_u }: Part, d: number, d_h: number, spacings: readonly (number | undefined)[], calc: Calc): number {
  let l_c = calc(clearAtEdge, { a, d_h });
  for (const s of spacings) {
    if (s === undefined) continue;
    const between = calc(clearToNext, { s, d_h });
    if (between < l_c) l_c = between;
  }
  return calc(bearingAtHole, { d, l_c, t, F_u });
}

/** Bolts that may not slip. */
export interface Grip {
  readonly mu: number;
  /** Least pretension, N. */
  readonly T_m: number;
}

export const holeFormulas = [clearAtEdge, clearToNext, bearingAtHole, gripLeft, slipStrength];
