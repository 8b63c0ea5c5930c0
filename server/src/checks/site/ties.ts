/**
 * In an earthquake the ground moves under one foundation otherwise than under the next; without a tie between them the columns are pulled apart.
 *
 * IBC 2021 1810.3.13: piers of seismic design categories C to F are tied to each other, but where rock or stiff soil holds them alike; 1809.13:
 * footings of D to F on site class E or F. From memory. The force of grade beams has checks of its own.
 */
import type { Support } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { judgeFoundations, type Judgment } from "./judge.js";

const nothing = { message: "" };
const softClasses: readonly string[] = ["E", "F"];

/** Whether ties are asked for; in words where that cannot be said. */
function needsTies(support: Support, category: string): boolean | string {
  if (category === "A" || category === "B") return false;
  const foundation = support.foundation?.fields.kind?.value;
  if (support.ground?.fields.kind?.value === "rock" || foundation === "footing on rock") return false;
  if (foundation === "pier") return true;
  if (foundation !== "footing" || category === "C") return false;
  const site = support.site["site class"];
  return site ? softClasses.includes(site.value) : "the site class is not stated; footings on class E or F are tied to each other";
}

/** Ties are asked for, and grade beams are said to be them. */
export function isTiedByBeams(support: Support): boolean {
  const category = support.site["seismic design category"];
  return category !== undefined && support.foundation?.fields["tied by"]?.value === "grade beams" && needsTies(support, category.value) === true;
}

function judgeTies(support: Support, isAlone: boolean): Judgment | undefined {
  const category = support.site["seismic design category"];
  const fields = support.foundation?.fields;
  const kind = fields?.kind?.value;
  if (!category || !fields || isAlone || (kind !== "pier" && kind !== "footing" && kind !== "footing on rock")) return undefined;
  const holds = (message: string, at: Judgment["holds"]["at"] = category): Judgment => ({ over: [], unchecked: [], holds: { message, at } });
  const needed = needsTies(support, category.value);
  const tied = fields["tied by"];
  if (typeof needed === "string") return { over: [], unchecked: [{ message: `Seismic design category ${category.value}: ${needed}.`, at: category }], holds: nothing };
  if (!needed) return holds(`No ties to the other foundations are asked for in seismic design category ${category.value}${category.value > "B" ? " on this ground" : ""}: each takes its own shear.`);
  if (!tied) return { over: [], unchecked: [{ message: `Seismic design category ${category.value}: what ties this foundation to the others at grade is not stated (tied by).`, at: category }], holds: nothing };
  if (tied.value === "nothing")
    return { over: [{ message: `Seismic design category ${category.value}, and nothing ties this foundation to the others. Tie them at grade, both ways, with grade beams or a slab (tied by).`, at: tied }], unchecked: [], holds: nothing };
  return holds(`Tied to the others by ${tied.value === "slab" ? "the slab" : "grade beams"}, as seismic design category ${category.value} asks.`, tied);
}

export const ties: RuleDecl = {
  id: "site.ties",
  title: "Ties between foundations",
  link: "site",
  clause: "IBC 2021 1809.13, 1810.3.13 (from memory)",
  fails: "The ground moves under one foundation otherwise than under the next, and the columns are pulled apart.",
  seen: "A canopy standing on splayed columns after an earthquake.",
  range: "Whether ties are asked for by the seismic design category, the ground and the kind of foundation, and whether they are there. The force of grade beams, their size and bars have checks of their own; a slab is taken at its word, and exceptions for light frames of dwellings are left to the official.",
  judge: (structure) => {
    const places = structure.supports.flatMap((support) => support.places);
    return judgeFoundations(structure, (support) => judgeTies(support, places.length < 2));
  },
};
