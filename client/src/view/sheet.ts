/** The whole sheet of one support, top to bottom. */
import type { DerivationReply } from "../../../shared/protocol.js";
import type { FindingReport, SupportReport } from "../../../shared/report.js";
import { markOf, ratioText } from "../states.js";
import { anchorOf, checkSection, verdict } from "./check-section.js";
import { h, type Child } from "./dom.js";
import { figures } from "./drawing.js";
import { assumptions, cautions, criteria, loadDerivations, notCovered, openItems } from "./lists.js";
import { loads } from "./loads.js";

export interface SheetInput {
  readonly file: string;
  readonly subject?: string;
  readonly reply: DerivationReply;
  /** A remark over numbers that are no longer renewed. */
  readonly notice?: string;
}

/** What is already on the page, and what the reader has opened there. */
export interface Drawn {
  /** Whether this finding stands on the page under this key just as it is. */
  readonly same: (key: string) => boolean;
  readonly isOpen: (key: string) => boolean;
}

/** A key for each finding, the check's id; a second finding of the same check gets its number. */
export const keysOf = (findings: readonly FindingReport[]): { readonly finding: FindingReport; readonly key: string }[] => {
  const times = new Map<string, number>();
  return findings.map((finding) => {
    const time = (times.get(finding.check) ?? 0) + 1;
    times.set(finding.check, time);
    return { finding, key: time === 1 ? finding.check : `${finding.check}:${time}` };
  });
};

const skipLinks = (support: SupportReport | undefined): HTMLElement =>
  h(
    "nav",
    { class: "skip", "aria-label": "Skip to" },
    support && [h("a", { href: "#loads" }, "Skip to the loads"), " ", h("a", { href: "#checks" }, "Skip to the checks")],
  );

const chooser = ({ reply, subject }: SheetInput): Child =>
  reply.subjects.length > 0 &&
  h(
    "p",
    { class: "chooser" },
    h("label", { for: "subject" }, "Support "),
    h(
      "select",
      { id: "subject", "data-value": subject },
      !reply.subjects.some(({ path }) => path === subject) && h("option", { value: "", disabled: true, selected: true }, "Choose a support"),
      reply.subjects.map(({ path, name, state, ratio }) =>
        h("option", { value: path, selected: path === subject }, `${markOf(state)} ${name}, ${state}${ratio === undefined ? "" : ` ${ratioText(ratio)}`}`),
      ),
    ),
  );

const contents = (list: ReturnType<typeof keysOf>): HTMLElement =>
  h(
    "table",
    { class: "contents" },
    h("caption", {}, "Checks, the governing first"),
    h("thead", {}, h("tr", {}, ["Check", "Link", "State"].map((head) => h("th", { scope: "col" }, head)))),
    h(
      "tbody",
      {},
      list.map(({ finding, key }) =>
        h(
          "tr",
          { "data-key": `row:${key}`, "data-row-state": finding.state },
          h("th", { scope: "row" }, h("a", { href: `#${anchorOf(key)}` }, finding.title)),
          h("td", {}, finding.link),
          h("td", { class: "verdict" }, verdict(finding)),
        ),
      ),
    ),
  );

const checks = (support: SupportReport, drawn: Drawn): Child => {
  const list = keysOf(support.findings);
  return h(
    "section",
    { "data-key": "checks", "aria-labelledby": "checks" },
    h("h2", { id: "checks", tabindex: "-1" }, "Checks"),
    list.length === 0 ? h("p", {}, "No check applies to this support yet.") : contents(list),
    list.map(({ finding, key }) => (drawn.same(key) ? h("section", { "data-key": key, "data-same": true }) : checkSection(finding, key))),
  );
};

const banner = ({ reply, notice }: SheetInput): Child => [
  reply.stale && h("p", { class: "notice", "data-key": "stale" }, "The text has errors; these are the numbers of the last readable text."),
  notice !== undefined && h("p", { class: "notice", "data-key": "notice" }, notice),
];

const heading = ({ file, reply }: SheetInput): Child => {
  const { structure, support } = reply;
  const job = [structure?.name, structure?.stage, file].filter((text) => text !== undefined && text !== "").join(" · ");
  return h(
    "header",
    { "data-key": "heading" },
    h("p", { class: "job" }, job),
    h("h1", {}, support ? support.name : "Derivation"),
    support && h("p", { class: "description" }, support.description),
    support && h("p", { class: "verdict worst", "data-state": support.worst.state }, "Governing: ", verdict(support.worst)),
  );
};

const missing = ({ reply, subject, notice }: SheetInput): Child =>
  !reply.support &&
  notice === undefined &&
  h(
    "p",
    { class: "notice", "data-key": "missing" },
    reply.subjects.length === 0
      ? "The notebook has no support yet: columns that stand on something, or a foundation with reactions stated."
      : `${subject ?? "This support"} is not in the notebook; choose one of its supports above.`,
  );

export const sheet = (input: SheetInput, drawn: Drawn): HTMLElement => {
  const { structure, support, cautions: warned } = input.reply;
  return h(
    "div",
    {},
    skipLinks(support),
    banner(input),
    h(
      "main",
      { "data-key": "main", "data-version": String(input.reply.version), "data-stale": String(input.reply.stale) },
      heading(input),
      chooser(input),
      missing(input),
      support && (support.drawings ?? []).length > 0 && h("section", { "data-key": "drawings", "aria-labelledby": "drawings" }, h("h2", { id: "drawings" }, "Drawn to scale"), figures(support.drawings, "support")),
      support && [checks(support, drawn), loads(support, input.reply.signConvention), notCovered(support.notCovered)],
      structure?.plan && h("section", { "data-key": "plan", "aria-labelledby": "plan" }, h("h2", { id: "plan" }, "Plan of the columns"), figures([structure.plan], "plan")),
      structure && (structure.loadPath ?? []).length > 0 && h("section", { "data-key": "load-path", "aria-labelledby": "load-path" }, h("h2", { id: "load-path" }, "Load path"), figures(structure.loadPath, "load-path")),
      structure && [loadDerivations(structure, drawn.isOpen), assumptions(structure), openItems(structure), criteria(structure)],
      cautions(warned),
    ),
  );
};
