/** What stands around the checks: criteria, how the loads come about, what is not covered, assumed, open, and the cautions. */
import type { DerivationReply } from "../../../shared/protocol.js";
import { markOf } from "../states.js";
import { h, table, type Child } from "./dom.js";
import { steps } from "./steps.js";

type Structure = NonNullable<DerivationReply["structure"]>;

const part = (id: string, heading: string, ...content: Child[]): HTMLElement =>
  h("section", { "data-key": id, "aria-labelledby": id }, h("h2", { id, tabindex: "-1" }, heading), content);

export const criteria = ({ codes, criteria: rows }: Structure): Child =>
  (codes.length > 0 || rows.length > 0) &&
  part(
    "criteria",
    "Criteria",
    codes.length > 0 && h("p", {}, codes.join(", ")),
    rows.length > 0 &&
      table(
        "Criteria of the site and the job",
        [{ head: "Criterion" }, { head: "Value" }, { head: "Assumed, from" }],
        rows.map(({ label, shown, assumed }) => ({ cells: [label, shown, assumed ?? ""] })),
      ),
  );

/** These run to many hundreds of formulas, so the steps of one are drawn when it is opened. */
export const loadDerivations = ({ loadDerivations: list }: Structure, isOpen: (key: string) => boolean): Child =>
  list !== undefined &&
  list.length > 0 &&
  part(
    "load-derivations",
    "How the loads come about",
    list.map((one, i) => {
      const key = `load-derivation:${one.title}:${i}`;
      return h(
        "details",
        { "data-key": key, "data-lazy": one.title },
        h("summary", {}, one.title, h("span", { class: "source" }, ` ${one.source}`)),
        isOpen(key) && steps(one.steps),
      );
    }),
  );

export const notCovered = (list: readonly { readonly id: string; readonly text: string }[]): Child =>
  list.length > 0 &&
  part(
    "not-covered",
    "Not covered",
    h("p", { class: "aside" }, "Limit states known to matter here that are not checked by this sheet:"),
    h(
      "ul",
      {},
      list.map(({ id, text }) => h("li", { "data-not-covered": id }, h("span", { class: "mark", "aria-hidden": "true" }, markOf("not covered")), ` ${text}`)),
    ),
  );

export const assumptions = ({ assumptions: list }: Structure): Child =>
  list.length > 0 &&
  part(
    "assumptions",
    "Assumptions",
    table(
      "Values the notebook leaves out",
      [{ head: "Field" }, { head: "Taken as" }, { head: "Because" }, { head: "In the notebook" }],
      list.map(({ field, text, source, path, place }) => ({
        attributes: { "data-assumption": path },
        cells: [field, text, source, h("button", { type: "button", "data-reveal": JSON.stringify(place), title: "Show in the notebook" }, path)],
      })),
    ),
  );

export const openItems = ({ openItems: list }: Structure): Child =>
  list.length > 0 && part("open-items", "To be confirmed by others", h("ul", {}, list.map((text) => h("li", {}, text))));

export const cautions = (list: readonly string[]): Child =>
  list.length > 0 && part("cautions", "Cautions", h("ul", {}, list.map((text) => h("li", {}, text))));
