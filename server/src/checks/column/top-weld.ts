/**
 * The weld at the column top tears: between the column and its cap plate, or the roof beam itself. In the field the roof lies beside its
 * columns with clean tube ends.
 *
 * AISC 360-22 J2.4, the weld an elastic line all around the column.
 */
import { check } from "../contract.js";
import { steelLevels } from "../steel-strength.js";
import { carriesTop, topOf } from "./top-parts.js";
import { adviseWeld, electrodeStrength, readWeld, weighWeld, weldFormulas } from "./weld.js";

export const topWeld = check({
  id: "column.top-weld",
  title: "Weld at the column top",
  link: "column",
  level: steelLevels,
  demands: "column top",
  clause: "AISC 360-22 J2.4, Table J2.5",
  fails: "The fillet weld at the column top, or the wall beside it, tears.",
  seen: "A roof beside its columns, the tube ends clean.",
  range: "A fillet all around the column, as an elastic line, without the increase by direction. The cap plate and the roof beam are not looked at.",
  formulas: [...weldFormulas, electrodeStrength],
  applies: (support) => carriesTop(support) && topOf(support)?.value.weld !== undefined,
  inputs: (support, gather) => readWeld(support, gather, topOf(support)?.value.weld, "fillet weld at the column top"),
  fixedBy: (support) => topOf(support)?.value.weld ?? support.column,
  evaluate: (inputs, demand, calc) => weighWeld(inputs, demand, demand.top, calc),
  advise: adviseWeld,
});
