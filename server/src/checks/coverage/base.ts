/** The base plate and what it stands on. */
import { linesOf } from "./line.js";

const hasBase = (support: { readonly base?: unknown }): boolean => support.base !== undefined;

export const baseLines = linesOf("base", hasBase, [
  {
    id: "base.plate",
    line: "Bearing under the plate, its bending by compression, moment and uplift, and the rods by the one-way formulas beside the exact contact.",
    by: ["base.bearing", "base.plate-compression", "base.plate-uplift", "base.one-way"],
    left: "Stiffened plates.",
  },
  {
    id: "base.details",
    line: "Details of the plate: least thickness, hole size and washers, edge distance, room for nuts and weld.",
    by: ["base.details"],
    left: "Room beside stiffeners.",
  },
  { id: "base.erection", line: "Four rods for erection, and 300 lb at 18 in from the column face.", by: ["base.erection"], left: "The foundation under the 300 lb, and whether a light post is excepted from the rule." },
  { id: "base.shear-path", line: "Path of the shear: friction never together with uplift, rods with loose washers, shear lug.", by: ["anchors.steel-shear", "base.shear-lug"], left: "Bearing of the plate's edge against a curb or a slab." },
  {
    id: "base.leveling-nuts",
    line: "Standing on leveling nuts: bending of the rods, the gap against the rod diameter, grout thickness, rod projection.",
    by: ["base.leveling-nuts", "base.grout-thickness", "base.projection"],
    left: "Wind on bare steel before the grout, what rods that press do to the concrete, tightening of the nuts.",
  },
  { id: "base.below-finish", line: "Plate hidden below the finish: corrosion, encasement, room for rods and nuts.", by: ["base.below-finish"], left: "Cover and reinforcement of the encasement, and unlike metals that touch." },
]);
