/**
 * Rods that are to stretch in an earthquake and cannot: too short between what holds them, of a steel that breaks at the thread before the
 * shank yields, or not ductile at all.
 *
 * ACI 318-19 17.10.5.3(a)(ii) to (iv) (from memory).
 */
import { findRodGrade, rodDuctility } from "../../catalog/rods.js";
import { isMissing } from "../../catalog/lookup.js";
import { formula } from "../../formula/declare.js";
import { isBelow } from "../../mechanics/compare.js";
import { judgeBases, type Found } from "../base/judge.js";
import type { RuleDecl } from "../contract.js";
import { stretches } from "./seismic.js";

export const stretchNeeded = formula({
  id: "anchors.stretch-needed",
  text: "l_st = 8 * d_a",
  source: "ACI 318-19 17.10.5.3(a)(ii) (from memory)",
  symbols: { l_st: { kind: "length", meaning: "least stretch length" }, d_a: { kind: "length", meaning: "rod diameter", field: "bases.*.anchors.diameter" } },
});

export const strengthOverYield = formula({
  id: "anchors.strength-over-yield",
  text: "k_u = f_uta / f_ya",
  source: "ACI 318-19 17.10.5.3(a)(iv) (from memory)",
  symbols: {
    k_u: { kind: "ratio", meaning: "tensile strength over yield strength" },
    f_uta: { kind: "steelStress", meaning: "specified tensile strength", field: "bases.*.anchors.grade" },
    f_ya: { kind: "steelStress", meaning: "specified yield strength", field: "bases.*.anchors.grade" },
  },
});

export const leastStrengthOverYield = formula({
  id: "anchors.least-strength-over-yield",
  text: "k_min = 1.3",
  source: "ACI 318-19 17.10.5.3(a)(iv): threaded rods that are not threaded over their whole length (from memory)",
  symbols: { k_min: { kind: "ratio", meaning: "least tensile strength over yield strength" } },
});

export const stretchLength: RuleDecl = {
  id: "anchors.stretch-length",
  title: "Stretch length and steel of rods that yield in an earthquake",
  link: "anchors",
  clause: "ACI 318-19 17.10.5.3(a)",
  fails: "A rod that is to stretch breaks at its first thread, or has no length to stretch over.",
  seen: "Rods snapped flush with the nut after an earthquake, the rest of them undrawn.",
  range:
    "Where rods are to stretch in seismic design category C to F: eight diameters free to stretch, a ductile grade, and tensile strength of 1.3 times the yield strength, since rods are threaded at their ends alone. That a rod free over this length cannot buckle as the shaking turns round is for the drawing: a sleeve filled or snug about it.",
  alone: true,
  judge: (structure) =>
    judgeBases(structure, (support, base, show) => {
      const anchors = base.anchors?.value;
      if (!stretches(support)) return { over: [], unchecked: [], holds: { message: "The rods are not designed to stretch in an earthquake.", at: base.anchors } };
      const grade = findRodGrade(anchors?.grade?.value ?? "");
      const d_a = anchors?.diameter?.value;
      const length = anchors?.["stretch length"];
      if (isMissing(grade) || d_a === undefined || !length) {
        return { over: [], unchecked: [{ message: "Whether the rods can stretch in an earthquake is not known: their grade, diameter and stretch length are needed (anchors, stretch length).", at: base.anchors }], holds: { message: "" } };
      }
      const over: Found[] = [];
      const l_st = stretchNeeded.value({ d_a });
      if (isBelow(length.value, l_st)) over.push({ message: `Stretch length ${show(length.value)}; ${show(l_st)} needed, eight rod diameters. Lengthen the sleeve or take thinner rods.`, at: length });
      const { ductile, because } = rodDuctility(grade, d_a);
      if (!ductile) over.push({ message: `${grade.name} is not a ductile steel element at ${show(d_a)} (${because}). Take another grade, or design for the overstrength.`, at: anchors?.grade });
      const k_u = strengthOverYield.value({ f_uta: grade.futa, f_ya: grade.fya });
      const least = leastStrengthOverYield.value({});
      if (isBelow(k_u, least)) over.push({ message: `${grade.name} breaks at ${k_u.toFixed(2)} times its yield strength; ${least} needed, for the shank to yield before the thread breaks. Take grade 36 or 55.`, at: anchors?.grade });
      return { over, unchecked: [], holds: { message: `Stretch length ${show(length.value)}; ${show(l_st)} needed. ${grade.name} yields along it before its thread breaks.`, at: length } };
    }),
};
