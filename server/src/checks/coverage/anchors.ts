/** Anchor rods cast into the concrete. */
import { isSeismic, linesOf } from "./line.js";

const hasBase = (support: { readonly base?: unknown }): boolean => support.base !== undefined;

export const anchorLines = linesOf("anchors", hasBase, [
  {
    id: "anchors.tension",
    line: "Cast-in anchors in tension: steel, breakout by the exact union of their areas, pullout, and the tension of each rod under moments in both directions.",
    by: ["anchors.steel-tension", "anchors.breakout-tension", "anchors.pullout"],
  },
  { id: "anchors.blowout", line: "Blowout of the concrete beside a headed anchor near an edge.", by: ["anchors.side-face-blowout"] },
  {
    id: "anchors.shear",
    line: "Cast-in anchors in shear, and in the twist of a base about its own axis: steel, breakout toward every edge and corner, pryout.",
    by: ["anchors.steel-shear", "anchors.breakout-shear", "anchors.pryout"],
    left: "What the twist of a base does to the foundation below its rods.",
  },
  { id: "anchors.interaction", line: "Tension and shear of anchors acting together.", by: ["anchors.interaction"] },
  {
    id: "anchors.reinforcement",
    line: "Anchor reinforcement in place of concrete breakout: vertical bars of a pier, pedestal or wall developed on both sides and within reach, hairpins in place of breakout in shear, and ties at the top of the pier.",
    by: ["anchors.reinforcement-tension", "anchors.hairpins", "anchors.top-ties"],
    left: "Bars set upright in a pad, and struts to bars that slope.",
  },
  { id: "anchors.spacing", line: "Least spacing, edge distance and cover of the anchors, and room for them in their concrete.", by: ["anchors.spacing", "anchors.fit"] },
  { id: "anchors.rods", line: "Ductility and bending of the rods, their marks, and errors of the pattern as built.", by: ["anchors.rod-steel", "anchors.as-built"] },
  {
    id: "anchors.adhesive",
    line: "Rods and bars set in adhesive by bond, with the sustained part of their tension.",
    by: ["anchors.bond", "anchors.breakout-tension", "anchors.pryout"],
    left: "Adhesive in an earthquake of category C to F, rods drilled in sideways or upward, and holes that are not drilled with a hammer or rock drill.",
  },
  {
    id: "anchors.seismic",
    line: "Anchors in seismic design categories C to F (ACI 318-19 17.10).",
    by: ["anchors.steel-tension", "anchors.breakout-tension", "anchors.pullout", "anchors.side-face-blowout", "anchors.steel-governs", "anchors.stretch-length", "anchors.steel-shear", "anchors.breakout-shear", "anchors.pryout"],
    left: "Anchors held by an attachment that yields in an earthquake; overstrength, and rods that stretch, are the ways done.",
    applies: (support) => hasBase(support) && isSeismic(support),
  },
]);
