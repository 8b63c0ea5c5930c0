/** The column and its top. */
import { linesOf } from "./line.js";

const hasColumn = (support: { readonly column?: unknown }): boolean => support.column !== undefined;

export const columnLines = linesOf("column", hasColumn, [
  {
    id: "column.members",
    line: "Steel columns: compression, flexure, shear, their interaction, slenderness and local limits.",
    by: ["column.interaction", "column.slenderness"],
    left: "Columns other than square HSS.",
  },
  { id: "column.shear", line: "Shear and torsion of the column.", by: [] },
  { id: "column.sway", line: "Sway of the column at strength and under a service wind.", by: ["column.drift", "column.drift-strength"], left: "What the turning of the bracket, pier or footing below a column adds to its sway, and the bending of roof beams that cantilever." },
  { id: "column.weld", line: "Weld of the column to its base plate.", by: [] },
  { id: "column.holes", line: "Weep and vent holes of closed sections.", by: [] },
  {
    id: "column.top",
    line: "Connection at the column top: bolts, weld, strap, or a rated connector with its stated value.",
    by: ["site.load-path", "column.top-connection"],
    left: "Shear and moment on the connection at the column top, and the bolts, welds or straps it is made of: its stated strength in uplift is taken.",
  },
  { id: "column.wood", line: "Wood posts in a bracket with a rated value.", by: [] },
]);
