/** Reactions at the column bases, by load case. */
import type { SupportReport } from "../../../shared/report.js";
import { h, table, type Child } from "./dom.js";
import { drawing } from "./drawing.js";

type Reaction = SupportReport["reactions"][number];

/** The unit of each force stands in its head, one for all tables of the support, so that columns compare at a glance. */
const columnsOf = ({ reactionHeads }: SupportReport) => [{ head: "Load case" }, { head: "Load" }, ...reactionHeads.map((head) => ({ head, numeric: true }))];

const rowOf = ({ case: name, type, base, cells }: Reaction) => ({
  attributes: { "data-case": name, "data-uplift": base.P.value < 0 },
  cells: [name, type, ...cells],
});

const signs =
  "P presses down on the base; a negative P is uplift. Vx acts toward the east, Vy toward the north. Mx and My turn right-handed about the " +
  "east and the north axis: a push to the north gives a negative Mx, a push to the east a positive My. Not factored, each case alone.";

export const loads = (support: SupportReport, signConvention: string): Child => {
  const numbers = [...new Set(support.reactions.map(({ column }) => column))];
  const tableOf = (number: number, caption: string) =>
    table(caption, columnsOf(support), support.reactions.filter(({ column }) => column === number).map(rowOf));
  return h(
    "section",
    { "data-key": "loads", "aria-labelledby": "loads" },
    h("h2", { id: "loads", tabindex: "-1" }, numbers.length > 1 ? "Loads at the column bases" : "Loads at the column base"),
    support.noActions !== undefined && h("p", { class: "notice" }, support.noActions),
    numbers.length > 0 && h("p", { class: "aside" }, signs),
    numbers.length > 0 && h("figure", { "data-key": "signs" }, drawing(signConvention)),
    numbers.map((number, i) => {
      const caption = numbers.length > 1 ? `Column ${number} of ${support.columns}` : "By load case";
      if (numbers.length === 1) return tableOf(number, caption);
      return h("details", { "data-key": `loads:${number}`, open: i === 0 }, h("summary", {}, caption), tableOf(number, caption));
    }),
  );
};
