/**
 * Water gets into every closed section in the open: through bolt holes, through a weld that is not tight, as damp air that comes in warm and
 * stays as water. In a freezing winter the wall of a column without a drain splits along its foot. A closed section dipped in zinc without
 * vents can burst in the bath.
 *
 * Common practice, no source: a weep of 1/2 in just above whatever closes the foot, and a vent near the top. Vents for dipping: ASTM A385
 * (from memory).
 */
import { isClosed } from "../../catalog/sections.js";
import { readQuantity } from "../../units/parse.js";
import { format } from "../../units/format.js";
import type { UnitSystem } from "../../units/kinds.js";
import type { Support } from "../../project/model.js";
import type { RuleDecl, RuleFinding } from "../contract.js";

const lengthOf = (text: string): number => {
  const read = readQuantity(text, "length");
  return read.ok ? read.value : Number.NaN;
};
const leastWeep = lengthOf("1/2 in");
/** A hole given in other units may miss that by the rounding of its last digit. */
const isSmall = (hole: number): boolean => hole < lengthOf("0.4995 in");

type Judged = Pick<RuleFinding, "verdict" | "message" | "at">;

function judgeSupport({ name, column, site }: Support, system: UnitSystem): Judged | undefined {
  const section = column?.fields.section;
  if (!column || !section || !isClosed(section.value)) return undefined;
  const { galvanized, "weep hole": weep, "vent hole": vent } = column.fields;
  const freezes = (site["frost depth"]?.value ?? 0) > 0;
  const show = (value: number): string => format(value, "length", system);
  if (galvanized?.value && vent?.value === 0) return { verdict: "over", message: `${name}: vent hole 0, and the closed ${section.value.name} is galvanized: without a vent it can burst in the bath. Give it a vent and a drain (ASTM A385).`, at: vent };
  if (galvanized?.value && weep?.value === 0) return { verdict: "over", message: `${name}: weep hole 0, and the closed ${section.value.name} is galvanized: the zinc has to run in and out at the foot. Give it a drain (ASTM A385).`, at: weep };
  if (weep?.value === 0 && freezes) return { verdict: "over", message: `${name}: weep hole 0 in a place that freezes: water that collects in ${section.value.name} splits its wall. Drill ${show(leastWeep)} just above what closes the foot.`, at: weep };
  if (weep && weep.value > 0 && isSmall(weep.value)) return { verdict: "over", message: `${name}: weep hole ${show(weep.value)}; ${show(leastWeep)} is needed so that it does not clog (common practice).`, at: weep };
  if (!weep) return { verdict: "unchecked", message: `${name}: how water leaves the closed ${section.value.name} is not stated. State its weep hole, ${show(leastWeep)} just above what closes the foot, or 0 where there is none.`, at: section };
  if (galvanized?.value && !vent) return { verdict: "unchecked", message: `${name}: the closed ${section.value.name} is galvanized, and its vent hole is not stated.`, at: galvanized };
  return { verdict: "holds", message: weep.value > 0 ? `${name}: ${section.value.name} drains by a weep hole of ${show(weep.value)}.` : `${name}: ${section.value.name} has no weep hole; the place does not freeze.`, at: weep };
}

export const closedSections: RuleDecl = {
  id: "site.closed-sections",
  title: "Weep and vent holes of closed sections",
  link: "site",
  clause: "common practice, no source; ASTM A385 for galvanizing (from memory)",
  fails: "Water stands in a closed column, rusts it from within and splits it when it freezes; one without vents bursts in the zinc bath.",
  seen: "A split along the foot of a tube after a hard winter; rust weeping from a weld.",
  range: "Whether a weep and, where galvanized, a vent are stated and large enough. Whether they lie above the grout, the finish or an encasement, and the strength the holes take, are not looked at. A place freezes where its frost depth is more than nothing.",
  alone: true,
  judge: (structure) =>
    structure.supports.flatMap((support) => {
      const found = judgeSupport(support, structure.project.units?.value ?? "US");
      return found ? [{ support, ...found }] : [];
    }),
};
