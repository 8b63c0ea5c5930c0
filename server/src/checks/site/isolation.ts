/**
 * A slab poured tight against a pier or a column: frost lifts the slab and the pier with it, or the pier settles and breaks the slab.
 *
 * Common practice, no source: a joint through the whole depth of the slab, 1/2 in or more, round or on its corner about the column; a slab that is
 * tied to the pier must not be lifted by frost.
 */
import { isBelow } from "../../mechanics/compare.js";
import type { Foundation, Support } from "../../project/model.js";
import { readQuantity } from "../../units/parse.js";
import type { RuleDecl } from "../contract.js";
import { judgeFoundations, type Judgment, type ShowAs } from "./judge.js";

const read = readQuantity("1/2 in", "length");
const leastJoint = read.ok ? read.value : Number.NaN;

const over = (message: string, at: Judgment["holds"]["at"]): Judgment => ({ over: [{ message, at }], unchecked: [], holds: { message: "" } });
const unchecked = (message: string, at: Judgment["holds"]["at"]): Judgment => ({ over: [], unchecked: [{ message, at }], holds: { message: "" } });
const holds = (message: string, at: Judgment["holds"]["at"]): Judgment => ({ over: [], unchecked: [], holds: { message, at } });

function judgeTied(support: Support, fields: Foundation, show: ShowAs): Judgment {
  const slab = fields["slab at grade"];
  const isProtected = slab?.value["frost protected"];
  const frost = support.site["frost depth"];
  if (!frost) return unchecked("A slab is tied to the pier, and the frost depth of the site is not given.", slab);
  if (frost.value === 0) return holds("The slab is tied to the pier, and the ground does not freeze.", slab);
  if (isProtected?.value) return holds("The slab is tied to the pier, and frost is kept from below it.", isProtected);
  const says = `Slab tied to the pier where the ground freezes to ${show(frost.value, "distance")}`;
  if (!isProtected) return unchecked(`${says}: whether frost is kept from lifting it is not stated (frost protected).`, slab);
  return over(`${says}: it lifts the pier with it. Insulate it or lay it on drained gravel to that depth (frost protected: yes), or cut it free with a joint of ${show(leastJoint, "length")} and count it as a loose slab.`, isProtected);
}

function judgeSlab(support: Support, fields: Foundation, show: ShowAs): Judgment | undefined {
  const slab = fields["slab at grade"];
  const kind = slab?.value.kind?.value;
  if (!slab || !kind) return undefined;
  if (kind === "pavers") return holds("Pavers move by themselves and need no joint.", slab);
  if (kind === "tied slab") return judgeTied(support, fields, show);
  const joint = slab.value.joint;
  if (!joint) return unchecked("Whether a joint parts the slab from the pier is not stated (joint; 0 in where it is poured tight).", slab);
  const freezes = (support.site["frost depth"]?.value ?? 0) > 0;
  const why = freezes ? "frost lifts the slab and the pier with it" : "either cracks when the other settles";
  if (joint.value === 0) return over(`Joint 0 in: the slab is poured tight to the pier, and ${why}. Part them by a joint of ${show(leastJoint, "length")} through the whole depth of the slab.`, joint);
  if (isBelow(joint.value, leastJoint)) return over(`Joint ${show(joint.value, "length")}; ${show(leastJoint, "length")} needed between slab and pier, through the whole depth. Widen it.`, joint);
  return holds(`A joint of ${show(joint.value, "length")} parts the slab from the pier.`, joint);
}

export const isolation: RuleDecl = {
  id: "site.isolation",
  title: "Joint between slab and pier",
  link: "site",
  clause: "common practice, no source",
  fails: "Frost lifts the slab and the pier or column with it, or one settles and cracks the other.",
  seen: "A post pushed up with its patio; a crack that runs from each corner of a column.",
  range: "By what the notebook says lies at grade beside the foundation; where nothing is said, nothing is asked. The shape of the joint and joints of the slab itself are for the drawing.",
  alone: true,
  judge: (structure) => judgeFoundations(structure, judgeSlab),
};
