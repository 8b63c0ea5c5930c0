/**
 * What the rods are made of, how that is seen on the site, and what may be done to them: a bent rod straightened that must not be, a high-strength
 * rod welded or heated, a soft rod set for a hard one.
 *
 * ASTM F1554 for grade marks and weldability; ACI 318-19 2.3 for ductile steel; bending by trade practice.
 */
import { findRodGrade, rodByDiameter, rodDuctility, type RodGrade } from "../../catalog/rods.js";
import { isMissing } from "../../catalog/lookup.js";
import { formula } from "../../formula/declare.js";
import { isAbove } from "../../mechanics/compare.js";
import type { Base, Structure } from "../../project/model.js";
import { format } from "../../units/format.js";
import { judgeBases, type Found, type Show } from "../base/judge.js";
import type { RuleDecl } from "../contract.js";

export const mostBent = formula({
  id: "anchors.most-bent",
  text: "a_b = 45 * deg",
  source: "common practice, no source: field bending of grade 36 alone, to 45°, cold to 1 in",
  symbols: { a_b: { kind: "angle", meaning: "most that a rod may be bent or straightened on the site" } },
  constants: { deg: "1 deg" },
});

export const mostLean = formula({
  id: "anchors.most-lean",
  text: "i_r = 1 / 40",
  source: "AISC Design Guide 1, 2nd ed., Appendix A: anchor rods within 1:40 of plumb (from memory)",
  symbols: { i_r: { kind: "slope", meaning: "most that a rod may lean" } },
});

/** Largest rod that is bent cold: 1 in; m. */
const coldTo = 0.0255;

/** What the standard allows of welding, by grade. */
const welding: Readonly<Record<RodGrade["grade"], string>> = {
  36: "may be welded",
  55: "may be welded only where ordered weldable (supplement S1)",
  105: "must not be welded or heated",
};

/** What is to be done about a rod found bent; nothing where it may be bent back. */
function bentFound(base: Base, grade: RodGrade, structure: Structure): Found | undefined {
  const bent = base["as built"]?.value.anchors?.value.bent;
  if (!bent || bent.value === 0) return undefined;
  const angle = format(bent.value, "angle", structure.project.units?.value ?? "US");
  const most = mostBent.value({});
  const ask = "Ask the engineer of record in writing; a rod that may not be bent is cut off and replaced.";
  if (grade.grade !== 36) return { message: `Rod bent ${angle}: field bending is for grade 36 alone, and this is grade ${grade.grade}. ${ask}`, at: bent };
  if (bent.value > most) return { message: `Rod bent ${angle}; 45° is the most that is bent back. ${ask}`, at: bent };
  return undefined;
}

function leanFound(base: Base): Found | undefined {
  const lean = base["as built"]?.value.anchors?.value.lean;
  if (!lean || !isAbove(lean.value, mostLean.value({}))) return undefined;
  return { message: "A rod leans more than 1 in 40: its nut bears on one side and bends it. Set beveled washers, or straighten a rod of grade 36; ask the engineer of record.", at: lean };
}

const markOf = (grade: RodGrade, d_a: number, show: Show): string => {
  const { ductile, because } = rodDuctility(grade, d_a);
  return `Rods ${show(d_a)} ${grade.name}, marked ${grade.color} at the end: ${ductile ? "ductile steel" : "not a ductile steel element"} (${because}); ${welding[grade.grade]}${grade.grade === 36 ? "" : ", not to be bent on the site"}.`;
};

export const rodSteel: RuleDecl = {
  id: "anchors.rod-steel",
  title: "Steel of the rods: mark, ductility, bending and welding",
  link: "anchors",
  clause: "ASTM F1554; ACI 318-19 2.3; common practice for bending",
  fails: "A hardened rod cracks where it was bent, welded or heated on the site, or a soft one stands where a hard one was drawn.",
  seen: "A rod hammered straight with a crack at its thread; a rod end of another color than the schedule.",
  range: "Rods of ASTM F1554: color of the exposed end, elongation and reduction of area, welding. Rods found bent (bent, under as built) and leaning (lean). Cracks are found by looking, and galvanized threads by trying a nut.",
  alone: true,
  judge: (structure) =>
    judgeBases(structure, (_, base, show) => {
      const anchors = base.anchors?.value;
      const d_a = anchors?.diameter?.value;
      const grade = findRodGrade(anchors?.grade?.value ?? "");
      if (d_a === undefined || !rodByDiameter(d_a) || isMissing(grade)) return { over: [], unchecked: [{ message: "The diameter and the grade of the rods are needed to say how they are marked and what may be done to them.", at: base.anchors }], holds: { message: "" } };
      const over = [bentFound(base, grade, structure), leanFound(base)].filter((found) => found !== undefined);
      const bent = base["as built"]?.value.anchors?.value.bent;
      const back = bent && over.length === 0 ? ` The rod found bent may be bent back, ${d_a > coldTo ? "heated to no more than 1200 °F" : "cold"}; look for cracks after it.` : "";
      return { over, unchecked: [], holds: { message: `${markOf(grade, d_a, show)}${back}`, at: anchors?.grade ?? base.anchors } };
    }),
};
