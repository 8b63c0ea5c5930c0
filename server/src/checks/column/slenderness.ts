/**
 * The column is very slender. Nothing breaks at the limit: such a column is hard to set plumb, sways under a hand, and its strength
 * hangs on how straight it is.
 *
 * AISC 360-22 E2, user note: KL/r of a member designed for compression is preferably not above 200. A recommendation.
 */
import { check, weigh } from "../contract.js";
import { steelLevels } from "../steel-strength.js";
import { slendernessRatio, worstSlenderness } from "./compression.js";
import { readColumn } from "./member.js";

/** AISC 360-22 E2, user note (from memory). */
const preferredLimit = 200;

export const columnSlenderness = check({
  id: "column.slenderness",
  title: "Slenderness of the column",
  link: "column",
  level: steelLevels,
  clause: "AISC 360-22 E2, user note (from memory)",
  fails: "The column is more slender than is recommended for a member in compression.",
  seen: "A thin column that can be set swaying by hand, and that shows every bend left from shipping.",
  range: "A recommendation, not a limit of strength, for columns in compression. The base is taken as rigid.",
  formulas: [slendernessRatio],
  applies: (support) => support.column !== undefined,
  inputs: (support, gather) => readColumn(support, gather),
  fixedBy: (support) => support.column?.fields.section ?? support.column,
  evaluate: (inputs, demand, calc) => {
    if (demand.base.P <= 0) return weigh(0, preferredLimit, "number");
    return weigh(worstSlenderness(inputs, calc), preferredLimit, "number");
  },
  advise: (inputs, outcome, say) =>
    `KL/r ${say.show(outcome.demand, "number")}; ${say.show(outcome.capacity, "number")} recommended for ${inputs.section}. Take a wider section.`,
});
