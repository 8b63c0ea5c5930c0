/** The summary as blocks, built once and printed as HTML or Markdown. */
import type { FindingReport, Report, StructureReport, SupportReport } from "../../../shared/report.js";
import { signConvention, signConventionWords } from "../drawing/sign-convention.js";
import { governing } from "./governing.js";
import { loadPage } from "./load-page.js";

export type Block =
  | { readonly type: "heading"; readonly level: 1 | 2 | 3; readonly text: string }
  | { readonly type: "paragraph"; readonly text: string; readonly strong?: boolean }
  | { readonly type: "list"; readonly items: readonly string[]; readonly ordered?: boolean }
  | { readonly type: "figure"; readonly svg: string; readonly caption: string }
  /** Small figures side by side. */
  | { readonly type: "figures"; readonly items: readonly { readonly svg: string; readonly caption: string }[] }
  | {
      readonly type: "table";
      readonly caption: string;
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
      /** Columns of numbers, and those that do not wrap. */
      readonly numeric: readonly number[];
      readonly tight?: readonly number[];
      /** Rows that begin a group, which stays on one page. */
      readonly groups?: readonly number[];
    };

const heading = (level: 1 | 2 | 3, text: string): Block => ({ type: "heading", level, text });
const paragraph = (text: string, strong = false): Block => ({ type: "paragraph", text, strong });

export const showRatio = (finding: FindingReport): string =>
  finding.ratio === undefined ? (finding.state === "over" && finding.demand ? "no capacity" : "–") : finding.ratio.toFixed(2);

/** One line that counts the answers and never claims more than they say. */
export function verdict(structure: StructureReport): string {
  const { counts } = structure;
  const parts = (["over", "not checked", "accepted", "near", "holds"] as const)
    .filter((state) => counts[state] > 0)
    .map((state) => `${counts[state]} ${state === "holds" ? (counts[state] === 1 ? "holds" : "hold") : state}`);
  const uncovered = counts["not covered"] > 0 ? ` ${counts["not covered"]} further limit states are not covered and are listed below.` : "";
  return `${parts.length > 0 ? parts.join(", ") : "Nothing was checked"}.${uncovered}`;
}

function loads(support: SupportReport, system: StructureReport["units"]): Block[] {
  if (support.noActions) return [paragraph(`No loads: ${support.noActions}.`)];
  const several = support.columns > 1;
  return [
    {
      type: "table",
      caption: `Reactions at each column base of ${support.name}, unfactored`,
      head: [...(several ? ["Column"] : []), "Load case", ...support.reactionHeads],
      rows: support.reactions.map((row) => [
        ...(several ? [String(row.column)] : []),
        row.case,
        ...row.cells,
      ]),
      numeric: support.reactionHeads.map((_, i) => i + (several ? 2 : 1)),
    },
    ...governing(support, system),
  ];
}

function checks(support: SupportReport): Block[] {
  return [
    {
      type: "table",
      caption: `Checks of ${support.name}`,
      head: ["Check", "Clause", "Demand", "Capacity", "Ratio", "State"],
      rows: support.findings.map((finding) => [
        finding.title,
        finding.clause,
        finding.demand?.shown ?? "–",
        finding.capacity?.shown ?? "–",
        showRatio(finding),
        finding.state,
      ]),
      numeric: [2, 3, 4],
    },
    ...notes(support),
  ];
}

function notes(support: SupportReport): Block[] {
  const said = support.findings.filter((finding) => finding.state !== "holds");
  const governing = support.findings.filter((finding) => finding.combination && finding.ratio !== undefined && finding.ratio > 0);
  return [
    ...(said.length > 0 ? [{ type: "list", items: said.map((finding) => `${finding.state}: ${finding.message}`) } as const] : []),
    ...(governing.length > 0
      ? ([
          paragraph("Governing combinations:"),
          {
            type: "list",
            items: governing.map(
              (finding) => `${finding.title}: ${finding.combination}${finding.column ? `, column ${finding.column.number} of ${finding.column.of}` : ""}`,
            ),
          },
        ] as const)
      : []),
  ];
}

/** Each line once, with the supports it concerns. */
export function notCoveredRows(structure: StructureReport): readonly (readonly [text: string, where: string])[] {
  const rows = new Map<string, { text: string; names: string[] }>();
  for (const support of structure.supports) {
    for (const { id, text } of support.notCovered) {
      const row = rows.get(id);
      if (row) row.names.push(support.name);
      else rows.set(id, { text, names: [support.name] });
    }
  }
  const all = structure.supports.length;
  return [...rows.values()].map(({ text, names }) => [text, names.length === all ? "every support" : names.join(", ")]);
}

function structureBlocks(structure: StructureReport, file: string): Block[] {
  const blocks: Block[] = [heading(1, structure.name || file), paragraph([structure.stage, structure.codes.join(", ")].filter(Boolean).join(" · "))];
  blocks.push(paragraph(verdict(structure), true));
  blocks.push(heading(2, "Design criteria"));
  blocks.push({
    type: "table",
    caption: "Criteria of the site and the codes",
    head: ["Criterion", "Value", "Source"],
    rows: structure.criteria.map((row) => [row.label, row.shown, row.assumed ? `assumed: ${row.assumed}` : "stated"]),
    numeric: [],
  });
  blocks.push(heading(2, "Assumptions"));
  blocks.push(
    structure.assumptions.length > 0
      ? {
          type: "table",
          caption: "Values taken where the notebook is silent",
          head: ["Field", "Value", "Taken from"],
          rows: structure.assumptions.map((row) => [row.path, row.text, row.source]),
          numeric: [],
        }
      : paragraph("None: every value that was used is stated."),
  );
  blocks.push(...loadPage(structure));
  if (structure.loadPath) blocks.push(heading(2, "Load path"), ...structure.loadPath.map((drawn): Block => ({ type: "figure", ...drawn })));
  blocks.push(heading(2, "Loads and checks by support"));
  if (structure.plan) blocks.push({ type: "figure", ...structure.plan });
  blocks.push({ type: "figure", svg: signConvention(), caption: signConventionWords });
  for (const support of structure.supports) {
    const drawn = support.drawings ?? [];
    blocks.push(heading(3, `${support.name}: ${support.description}`), ...(drawn.length > 0 ? [{ type: "figures", items: drawn } as const] : []), ...loads(support, structure.units), ...checks(support));
  }
  blocks.push(heading(2, "Not covered"));
  blocks.push(paragraph("Known limit states and loads that were not looked at. Somebody has to."));
  blocks.push({ type: "table", caption: "Not covered, by support", head: ["What", "Where"], rows: notCoveredRows(structure), numeric: [], tight: structure.supports.length < 4 ? [1] : [] });
  if (structure.remarks.length > 0) {
    blocks.push(heading(2, "Remarks on the loads"), { type: "list", items: structure.remarks.map((remark) => remark.message) });
  }
  if (structure.asBuilt.length > 0) {
    blocks.push(heading(2, "As built"), {
      type: "table",
      caption: "Found on site otherwise than drawn; the checks run on what was built",
      head: ["Value", "Drawn", "Built", "Noted"],
      rows: structure.asBuilt.map((row) => [row.path, row.drawn, row.built, row.noted ?? ""]),
      numeric: [],
    });
  }
  blocks.push(heading(2, "Open items"));
  blocks.push(structure.openItems.length > 0 ? { type: "list", items: structure.openItems } : paragraph("None listed."));
  return blocks;
}

/** Everything the summary of a report says, in order. */
export function summaryBlocks(report: Report): readonly Block[] {
  const problems = report.problems.filter((problem) => problem.severity === "error");
  return [
    ...(problems.length > 0
      ? [
          paragraph(`The notebook has ${problems.length} error${problems.length === 1 ? "" : "s"}; the results below leave out what could not be read.`, true),
          { type: "list", items: problems.map((problem) => `line ${problem.place.line + 1}: ${problem.message}`) } as const,
        ]
      : []),
    ...report.structures.flatMap((structure) => structureBlocks(structure, report.file)),
    heading(2, "Cautions"),
    { type: "list", items: report.cautions },
  ];
}
