/**
 * A size that is called two different things in two places, or two sizes that cannot both be: a plate larger than its pedestal, a pedestal larger
 * than its pad, heights that do not close, a column outside its roof. In the field it is found when the pieces do not fit.
 *
 * Geometry.
 */
import { isAbove } from "../../mechanics/compare.js";
import type { Support } from "../../project/model.js";
import type { RuleDecl } from "../contract.js";
import { showAs, spoken, type Found, type ShowAs } from "./judge.js";
import { concreteFound } from "./sizes-of-concrete.js";
import { steelFound } from "./sizes-of-steel.js";

function* outsideRoof({ roof, places, column }: Support, show: ShowAs): Generator<Found> {
  const { length, width } = roof?.fields ?? {};
  const at = column?.fields.at ?? column?.fields.to ?? column?.fields.from;
  if (!column || column.fields.reactions || column.fields.combined || !length || !width || !at) return;
  const out = places.find(({ x, y }) => x < 0 || y < 0 || isAbove(x, length.value) || isAbove(y, width.value));
  if (!out) return;
  yield { message: `A column stands at ${show(out.x, "distance")}, ${show(out.y, "distance")}, outside the roof of ${show(length.value, "distance")} by ${show(width.value, "distance")} whose southwest corner is at 0, 0. Correct its place or the roof.`, at };
}

function foundIn(support: Support, show: ShowAs): readonly Found[] {
  return [...outsideRoof(support, show), ...(support.foundation ? concreteFound(support, support.foundation.fields, show) : []), ...steelFound(support, show)];
}

export const sizes: RuleDecl = {
  id: "site.sizes",
  title: "Sizes held against each other",
  link: "site",
  clause: "geometry",
  fails: "Two sizes cannot both be, and an answer rests on one of them by chance.",
  seen: "A plate that hangs over its pedestal; bars that do not go into their pier.",
  range:
    "Plates against columns, pads and walls; pedestals against pads; depth and top of concrete against thickness and height; bars and cover against the pier; posts against wall and roof; bolts in words against bolts in numbers. Rods against the depth of their concrete and against its faces are looked at among the anchors, plates on piers and pedestals among these.",
  alone: true,
  judge: (structure) => {
    const show = showAs(structure);
    return structure.supports.map((support) => {
      const over = foundIn(support, show);
      return spoken(support, { over, unchecked: [], holds: { message: "No size contradicts another." } }, support);
    });
  },
};
