/**
 * A thin pedestal that stands far out of the ground is a column of concrete: without bars it cracks at its foot and tips its pad. In the field: a 12 in
 * pier five feet out of a small pad, leaning with its post.
 *
 * ACI 318-19 2.3 and 14.3.3.1 (from memory): a pedestal without bars is no taller than three times its least width. Where a column of concrete is
 * meant, common practice takes a push of 2 % of its load and an inch of eccentricity at the least (no source).
 */
import { formula } from "../../formula/declare.js";
import { isAbove } from "../../mechanics/compare.js";
import type { Foundation, Support } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { judgeFoundations, type Judgment, type ShowAs } from "./judge.js";

const width = { kind: "length", meaning: "least width of the pedestal", field: "foundations.*.pedestal" } as const;

export const tallest = formula({
  id: "site.tallest-pedestal",
  text: "h_m = 3 * b",
  source: "ACI 318-19 2.3 and 14.3.3.1 (from memory)",
  symbols: { h_m: { kind: "length", meaning: "most a pedestal stands free" }, b: width },
});

export const widthForHeight = formula({
  id: "site.width-for-height",
  text: "b = h / 3",
  source: "ACI 318-19 2.3 and 14.3.3.1 (from memory)",
  symbols: { b: width, h: { kind: "length", meaning: "height above grade", field: "foundations.*.above grade" } },
});

/** Least width of the pedestal of a pad. */
function leastWidth({ kind, pedestal }: Foundation): number | undefined {
  const sides = [pedestal?.value.diameter, pedestal?.value.width, pedestal?.value.length].flatMap((one) => (one ? [one.value] : []));
  return kind?.value === "footing" && sides.length > 0 ? Math.min(...sides) : undefined;
}

function judgeHeight(_: Support, fields: Foundation, show: ShowAs): Judgment | undefined {
  const above = fields["above grade"];
  const b = leastWidth(fields);
  if (!above || b === undefined || fields.bars) return undefined;
  const most = tallest.value({ b });
  const says = `${show(above.value, "length")} out of the ground; ${show(most, "length")} is the most for a pedestal ${show(b, "length")} wide without bars`;
  if (!isAbove(above.value, most)) return { over: [], unchecked: [], holds: { message: `${says}.`, at: above } };
  const ways = `Shorten it and run the column down, widen it to ${show(widthForHeight.value({ h: above.value }), "length")}, or give it bars and ties and count a push of 2 % of its load and an inch off its middle at the least (common practice).`;
  return { over: [{ message: `${says}. ${ways}`, at: above }], unchecked: [], holds: { message: "" } };
}

export const tallPedestal: RuleDecl = {
  id: "site.tall-pedestal",
  title: "Height of a pedestal without bars",
  link: "site",
  clause: "ACI 318-19 2.3, 14.3.3.1 (from memory)",
  fails: "A thin pedestal cracks at its foot, as a column of concrete would, and tips its pad.",
  seen: "A 12 in pier that stands five feet out of its small pad and leans with its post.",
  range: "Pedestals of pads without bars, by their height above grade. Piers without bars, and slender piers and pedestals with them, have checks of their own.",
  alone: true,
  judge: (structure) => judgeFoundations(structure, judgeHeight),
};
