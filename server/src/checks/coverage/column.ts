/** The column and its top. */
import { linesOf } from "./line.js";

const hasColumn = (support: { readonly column?: unknown }): boolean => support.column !== undefined;

export const columnLines = linesOf("column", hasColumn, [
  {
    id: "column.members",
    line: "Steel columns: compression, flexure, shear, their interaction, slenderness and local limits.",
    by: ["column.interaction", "column.slenderness"],
    left: "Notional loads beside reactions given by hand, and what the turning of the pier or footing below takes from a column's stability where the base rotation stiffness is not stated: K of 2.1 assumes a rigid base. Holes in the column.",
  },
  { id: "column.shear", line: "Shear and torsion of the column.", by: ["column.shear", "column.interaction"], left: "Torsion that comes of a roof that is not rigid in its plane, and second order in torsion." },
  { id: "column.sway", line: "Sway of the column at strength and under a service wind.", by: ["column.drift", "column.drift-strength"], left: "Where the base rotation stiffness is not stated, what the turning of the bracket or footing below a column adds to its sway, or of a pier where the stiffness of the soil beside it is not stated either, and the bending of roof beams that cantilever." },
  { id: "column.weld", line: "Weld of the column to its base plate.", by: ["column.base-weld", "column.base-weld-size"], left: "Welds other than a fillet all around, and the fatigue of welds." },
  { id: "column.holes", line: "Weep and vent holes of closed sections.", by: ["site.closed-sections", "base.below-finish"], left: "Whether the weep lies above grout that fills the foot of the tube, and the strength the holes take." },
  {
    id: "column.top",
    line: "Connection at the column top: bolts, weld, strap, or a rated connector with its stated value.",
    by: ["site.load-path", "column.top-connection", "column.top-shear", "column.top-bolts", "column.top-weld"],
    left: "Bearing and tear-out in cap plate and beam flange and the cap plate in bending where their sizes are not stated, web yielding and crippling of the roof beam, and straps other than by their stated strengths.",
  },
  { id: "column.wood", line: "Wood posts in a bracket with a rated value.", by: [] },
]);
