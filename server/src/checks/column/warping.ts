/**
 * Twist of a W shape. Where the roof turns, the flanges of a column fixed at its top bend against each other, most at its ends, and the rest
 * of the twist goes round each plate. Seen as flange tips bent opposite ways just above the base plate.
 *
 * AISC 360-22 H3.3: normal stress of the flanges beside that of axial force and bending, shear stress beside that of shear. Theory of Vlasov
 * as in AISC Design Guide 9 (from memory), both ends held against warping: the stiffness that gave the twist is of the same ends, and an end
 * that gives takes less.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { allowableMoment, available, ofMembers, type SteelDemand } from "../steel-strength.js";
import { flangeDistance } from "./elements.js";
import type { ColumnInputs } from "./member.js";

const torque = { kind: "moment", meaning: "torsion" } as const;
const dying = { kind: "distance", meaning: "length over which the bending of the flanges dies away" } as const;
const h_o = { kind: "length", meaning: "between the middles of the flanges" } as const;
const J = { kind: "inertia", meaning: "torsional constant", field: "columns.*.section" } as const;
const L = { kind: "distance", meaning: "height of the column", field: "columns.*.height" } as const;
const F_y = { kind: "steelStress", meaning: "yield strength", field: "columns.*.grade" } as const;

export const warpingLength = formula({
  id: "column.warping-length",
  text: "a = h_o / 2 * sqrt(E * I_y / (G * J))",
  source: "AISC Design Guide 9, chapter 3 (from memory): sqrt(E C_w / (G J)), with C_w = I_y h_o^2 / 4",
  symbols: { a: dying, h_o, I_y: { kind: "inertia", meaning: "second moment of area about the weak axis", field: "columns.*.section" }, J },
  constants: { E: "29000 ksi", G: "11200 ksi" },
});

export const flangeBending = formula({
  id: "column.flange-bending",
  text: "M_f = abs(T) * a / h_o * (1 - exp(-L / a)) / (1 + exp(-L / a))",
  source: "Vlasov's theory, both ends held against warping: T a tanh(L/2a) over the distance of the flanges",
  symbols: { M_f: { kind: "moment", meaning: "moment of each flange in its own plane, at the ends" }, T: torque, a: dying, h_o, L },
});

export const flangeYield = formula({
  id: "column.flange-yield",
  text: "M_w = phi_T * F_y * S_y",
  source: "AISC 360-22 Eq. H3-7, phi_T = 0.90: first yield of the flange tips, both flanges together",
  symbols: { M_w: { kind: "moment", meaning: "design moment of both flanges against warping" }, F_y, S_y: { kind: "sectionModulus", meaning: "section modulus about the weak axis", field: "columns.*.section" } },
  constants: { phi_T: "0.90" },
});

export const withWarping = formula({
  id: "column.interaction-with-warping",
  text: "U = U_b + 2 * M_f / M_w",
  source: "AISC 360-22 H3.3: normal stresses added; AISC Design Guide 9, 4.7 (from memory)",
  symbols: {
    U: { kind: "ratio", meaning: "axial force, bending and warping against strength" },
    U_b: { kind: "ratio", meaning: "axial force and bending against strength" },
    M_f: { kind: "moment", meaning: "moment of each flange in its own plane" },
    M_w: { kind: "moment", meaning: "design moment of both flanges against warping" },
  },
});

export const middleShare = formula({
  id: "column.twist-share-at-middle",
  text: "k_m = 1 - 2 * exp(-L / (2 * a)) / (1 + exp(-L / a))",
  source: "Vlasov's theory, both ends held against warping: 1 - 1/cosh(L/2a) at middle height",
  symbols: { k_m: { kind: "ratio", meaning: "share of the twist that goes round the plates at middle height" }, L, a: dying },
});

export const wideTorsion = formula({
  id: "column.wide-torsion",
  text: "T_c = phi_T * 0.6 * F_y / (k_m * max(t_w, t_f) / J + 1.5 / (h_o * B * t_f))",
  source: "AISC 360-22 Eq. H3-8, phi_T = 0.90; shear round the plates at middle height and across the flanges at the ends, added though their places differ, the safe side",
  symbols: {
    T_c: { kind: "moment", meaning: "design torsional strength by shear stress" },
    F_y,
    k_m: { kind: "ratio", meaning: "share of the twist that goes round the plates at middle height" },
    t_w: { kind: "length", meaning: "web", field: "columns.*.section" },
    t_f: { kind: "length", meaning: "flange thickness", field: "columns.*.section" },
    J,
    h_o,
    B: { kind: "length", meaning: "flange width", field: "columns.*.section" },
  },
  constants: { phi_T: "0.90" },
});

type Wide = Pick<ColumnInputs, "H" | "B" | "t" | "t_f" | "J" | "L" | "weak" | "F_y">;

/** Distance of the flanges and the length their bending dies away over, m. */
function reach({ H, t_f, J, weak }: Omit<Wide, "L">, calc: Calc): { readonly h_o: number; readonly a: number } {
  const h_o = calc(flangeDistance, { H, t_f });
  return { h_o, a: calc(warpingLength, { h_o, I_y: weak.I, J }) };
}

/** Moment of each flange of a twisted W at its ends, N·m. */
export function flangeMomentOf(column: Wide, T: number, calc: Calc): number {
  const { h_o, a } = reach(column, calc);
  return calc(flangeBending, { T, a, h_o, L: column.L });
}

/** Design torsional strength of a W by its shear stresses, N·m. */
export function wideTorsionStrength(column: Wide, calc: Calc): number {
  const { h_o, a } = reach(column, calc);
  return calc(wideTorsion, { F_y: column.F_y, k_m: calc(middleShare, { L: column.L, a }), t_w: column.t, t_f: column.t_f, J: column.J, h_o, B: column.B });
}

/** Axial force and bending with the normal stress of warping beside them. */
export function addWarping(column: ColumnInputs, demand: SteelDemand, T: number, U_b: number, calc: Calc): number {
  calc.note("The twist bends the flanges against each other at the ends of the column:");
  const M_f = flangeMomentOf(column, T, calc);
  const M_w = available(demand, calc(flangeYield, { F_y: column.F_y, S_y: column.weak.S }), allowableMoment, ofMembers, calc);
  return calc(withWarping, { U_b, M_f, M_w });
}

export const wideTorsionFormulas = [flangeDistance, warpingLength, middleShare, wideTorsion];
export const flangeBendingFormulas = [flangeDistance, warpingLength, flangeBending];
export const warpingFormulas = [...flangeBendingFormulas, flangeYield, withWarping];
