/** The report as a table for a terminal, and the exit code it calls for. */
import type { FindingReport, Report, StructureReport, SupportReport } from "../../../shared/report.js";
import { notCoveredRows, showRatio, verdict } from "../summary/document.js";

const columns = (rows: readonly (readonly string[])[], right: readonly number[]): string[] => {
  const widths = rows[0].map((_, i) => Math.max(...rows.map((row) => row[i].length)));
  return rows.map((row) => row.map((cell, i) => (right.includes(i) ? cell.padStart(widths[i]) : cell.padEnd(widths[i]))).join("  ").trimEnd());
};

/** Breaks a message at spaces so that it reads in a terminal. */
function wrap(text: string, indent: string, width = 110): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line.length > 0 && indent.length + line.length + word.length + 1 > width) {
      lines.push(indent + line);
      line = word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return line === "" ? lines : [...lines, indent + line];
}

const row = (finding: FindingReport): string[] => [
  "   ",
  finding.state,
  showRatio(finding),
  finding.demand?.shown ?? "–",
  finding.capacity?.shown ?? "–",
  finding.title,
  finding.clause,
];

function supportText(support: SupportReport, file: string): string[] {
  const lines = [`  ${support.name}: ${support.description}`];
  if (support.findings.length > 0) {
    const table = columns([["   ", "state", "ratio", "demand", "capacity", "check", "clause"], ...support.findings.map(row)], [2, 3, 4]);
    lines.push(...table);
  }
  for (const finding of support.findings.filter((item) => item.state !== "holds")) {
    lines.push(...wrap(`${file}:${finding.place.line + 1}:${finding.place.character + 1}: ${finding.state}: ${finding.message} [${finding.check}]`, "    "));
  }
  return lines;
}

const remarks = (structure: StructureReport, file: string): string[] =>
  structure.remarks.length === 0
    ? []
    : ["", "  Remarks on the loads:", ...structure.remarks.flatMap((remark) => wrap(`${file}:${remark.place.line + 1}: ${remark.message}`, "    "))];

function notCovered(structure: StructureReport): string[] {
  const rows = notCoveredRows(structure);
  if (rows.length === 0) return [];
  return ["", "  Not covered:", ...rows.flatMap(([text, where]) => hang(`${text} [${where}]`))];
}

/** A list item: its further lines stand under its first word. */
const hang = (text: string): string[] => wrap(text, "      ").map((line, i) => (i === 0 ? `    - ${line.trimStart()}` : line));

function structureText(structure: StructureReport, file: string): string[] {
  return [
    `${structure.name || file} (${structure.codes.join(", ")})`,
    `  ${verdict(structure)}`,
    ...structure.supports.flatMap((support) => ["", ...supportText(support, file)]),
    ...(structure.asBuilt.length > 0
      ? ["", "  As built:", ...structure.asBuilt.map((row) => `    ${row.path}: ${row.built}, drawn ${row.drawn}${row.noted ? ` (${row.noted})` : ""}`)]
      : []),
    ...remarks(structure, file),
    ...notCovered(structure),
    "",
    "  Assumed:",
    ...(structure.assumptions.length > 0 ? structure.assumptions.map((item) => `    ${item.path}: ${item.text} (${item.source})`) : ["    nothing"]),
    ...(structure.openItems.length > 0 ? ["", "  To be confirmed by others:", ...structure.openItems.map((item) => `    ${item}`)] : []),
  ];
}

export function reportText(report: Report): string {
  const lines: string[] = [];
  for (const problem of report.problems) {
    lines.push(...wrap(`${report.file}:${problem.place.line + 1}:${problem.place.character + 1}: ${problem.severity}: ${problem.message} [${problem.code}]`, ""));
  }
  if (report.problems.length > 0) lines.push("");
  for (const structure of report.structures) lines.push(...structureText(structure, report.file), "");
  lines.push("  Cautions:", ...report.cautions.flatMap((caution) => wrap(caution, "    ")));
  return `${lines.join("\n")}\n`;
}

/** 0 where nothing is over or not checked and the notebook has no error; `strict` counts near and not covered too. */
export function exitCode(report: Report, strict: boolean): 0 | 1 {
  if (report.problems.some((problem) => problem.severity === "error") || report.structures.length === 0) return 1;
  const bad = (structure: StructureReport) => {
    const { counts } = structure;
    const checked = counts.holds + counts.near + counts.accepted + counts.over + counts["not checked"];
    if (counts.over > 0 || counts["not checked"] > 0 || checked === 0) return true;
    return strict && (counts.near > 0 || counts["not covered"] > 0);
  };
  return report.structures.some(bad) ? 1 : 0;
}
