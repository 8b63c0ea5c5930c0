/** Strength of one rod's steel: what tension and shear share. */
import { findRodGrade, rodByDiameter, rodDuctility } from "../../catalog/rods.js";
import { isMissing } from "../../catalog/lookup.js";
import { formula } from "../../formula/declare.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";

export interface RodSteel {
  readonly A_se: number;
  readonly f_ya: number;
  readonly f_uta: number;
  readonly isDuctile: boolean;
  /** For words: `1 in F1554 Gr 36`. */
  readonly rod: string;
}

export const tensileStrengthUsed = formula({
  id: "anchors.tensile-strength-used",
  text: "f_u = min(f_uta, 1.9 * f_ya, f_cap)",
  source: "ACI 318-19 17.6.1.2",
  symbols: {
    f_u: { kind: "steelStress", meaning: "tensile strength of the rod that may be used" },
    f_uta: { kind: "steelStress", meaning: "specified tensile strength", field: "bases.*.anchors.grade" },
    f_ya: { kind: "steelStress", meaning: "specified yield strength", field: "bases.*.anchors.grade" },
  },
  constants: { f_cap: "125 ksi" },
});

/** Reads the rod's steel out of the base. */
export function readRod(support: Support, gather: Gather): RodSteel {
  const anchors = gather.needs(support.base?.fields.anchors, "anchor rods");
  const diameter = anchors ? gather.need(anchors.diameter, "diameter of the anchor rods") : Number.NaN;
  const gradeName = anchors ? gather.needs(anchors.grade, "grade of the anchor rods") : undefined;
  const grade = gradeName === undefined ? undefined : findRodGrade(gradeName);
  if (grade && isMissing(grade)) gather.block(grade.problem);
  const rod = Number.isFinite(diameter) ? rodByDiameter(diameter) : undefined;
  if (Number.isFinite(diameter) && !rod) gather.block("no anchor rod of this diameter is known here: 1/2 to 2 in in the sizes of ASTM F1554");
  const known = grade && !isMissing(grade) ? grade : undefined;
  return {
    A_se: rod?.tensileArea ?? Number.NaN,
    f_ya: known?.fya ?? Number.NaN,
    f_uta: known?.futa ?? Number.NaN,
    isDuctile: known && rod ? rodDuctility(known, rod.diameter).ductile : false,
    rod: `${rod?.name ?? ""} ${known?.name ?? ""}`.trim(),
  };
}

/** The words for the branch of the strength reduction factor. */
export const ductilityNote = (isDuctile: boolean): string =>
  isDuctile ? "The rod is a ductile steel element (ACI 318-19 2.3)." : "The rod is not a ductile steel element (ACI 318-19 2.3): the lower phi applies.";
