/**
 * Water stands in the hole when the concrete comes: it washes the cement out, the bottom turns to mud, and the foundation stands on that.
 *
 * Common practice, no source: a hole kept dry, or concrete placed through a pipe from the bottom up, which is for piers alone.
 */
import { isBelow } from "../../mechanics/compare.js";
import type { Foundation, Support } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { judgeFoundations, type Judgment, type ShowAs } from "./judge.js";

function judgeHole(support: Support, fields: Foundation, show: ShowAs): Judgment | undefined {
  const table = support.ground?.fields["water table"];
  const depth = fields.depth;
  if (!table || !depth || !isBelow(table.value, depth.value)) return undefined;
  const nothing = { message: "" };
  const placed = fields["water in the hole"];
  const says = `Water at ${show(table.value, "distance")}, underside at ${show(depth.value, "distance")}`;
  if (!placed) return { over: [], unchecked: [{ message: `${says}: how the concrete is placed is not stated. State whether the hole is pumped dry or the concrete placed under water (water in the hole).`, at: table }], holds: nothing };
  if (placed.value === "placed under water" && fields.kind?.value !== "pier")
    return { over: [{ message: `${says}: only a pier is filled under water, through a pipe from the bottom up. Pump the hole dry, or raise the underside above the water.`, at: placed }], unchecked: [], holds: nothing };
  return { over: [], unchecked: [], holds: { message: `${says}: ${placed.value === "pumped dry" ? "the hole is pumped dry" : "the concrete goes in through a pipe from the bottom up"}.`, at: placed } };
}

export const water: RuleDecl = {
  id: "site.water",
  title: "Water in the hole",
  link: "site",
  clause: "common practice, no source",
  fails: "Water washes the cement out of the concrete and turns the bottom of the hole to mud.",
  seen: "A pier that sinks under its first snow; gravel without cement at its foot.",
  range: "Where the water table stated under the ground lies above the underside. Surface water that runs into the hole, and soil that caves in, are for the site. What the water takes from the weight is in the checks of uplift.",
  alone: true,
  judge: (structure) => judgeFoundations(structure, judgeHole),
};
