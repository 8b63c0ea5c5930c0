/** One check as a part of the sheet: its state in a word and a shape, what governs, and the calculation. */
import type { FindingReport } from "../../../shared/report.js";
import { markOf, ratioText } from "../states.js";
import { fact, h, type Child } from "./dom.js";
import { figures } from "./drawing.js";
import { steps, symbols } from "./steps.js";

export const anchorOf = (key: string): string => `check-${key}`;

/** Mark, word and ratio, for headings and for the list at the top. */
export const verdict = ({ state, ratio }: { readonly state: string; readonly ratio?: number }): Child => [
  h("span", { class: "mark", "aria-hidden": "true" }, markOf(state)),
  " ",
  h("span", { class: "state" }, state),
  ratio !== undefined && h("span", { class: "ratio" }, ` ${ratioText(ratio)}`),
];

const calculation = (finding: FindingReport, key: string, wanted: boolean): Child => {
  const list = finding.steps ?? [];
  if (list.length === 0) return undefined;
  return [
    h(
      "details",
      { "data-key": `${key}:steps`, open: wanted },
      h("summary", {}, `Calculation, ${list.length} step${list.length === 1 ? "" : "s"}`),
      steps(list),
    ),
    h("details", { "data-key": `${key}:symbols` }, h("summary", {}, "Symbols"), symbols(list, finding.related ?? [])),
  ];
};

const facts = (finding: FindingReport): HTMLElement =>
  h(
    "dl",
    { class: "facts" },
    fact("Governs", finding.combination),
    fact("Load level", finding.level),
    fact("Column", finding.column && `${finding.column.number} of ${finding.column.of}`),
    fact("Demand", finding.demand?.shown),
    fact("Capacity", finding.capacity?.shown),
    fact("Demand over capacity", finding.ratio === undefined ? undefined : ratioText(finding.ratio)),
    fact("Clause", finding.clause),
  );

/** The reader's eye goes to what is over or near first, so these calculations begin open. */
const beginsOpen = (finding: FindingReport): boolean => finding.state === "over" || finding.state === "near";

export const checkSection = (finding: FindingReport, key: string): HTMLElement => {
  const id = anchorOf(key);
  return h(
    "section",
    {
      class: "check",
      "data-key": key,
      "data-check": finding.check,
      "data-state": finding.state,
      "data-ratio": finding.ratio === undefined ? undefined : String(finding.ratio),
      "aria-labelledby": id,
    },
    h("h3", { id, tabindex: "-1" }, h("span", { class: "title" }, finding.title), " ", h("span", { class: "verdict" }, verdict(finding))),
    h("p", { class: "message" }, finding.message),
    facts(finding),
    figures(finding.drawings, key),
    calculation(finding, key, beginsOpen(finding)),
    h("p", { class: "actions" }, h("button", { type: "button", "data-reveal": JSON.stringify(finding.place) }, "Show in the notebook")),
  );
};
