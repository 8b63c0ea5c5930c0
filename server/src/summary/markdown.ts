/** The summary as Markdown. */
import type { Report } from "../../../shared/report.js";
import { summaryBlocks, type Block } from "./document.js";

/** Keeps text from being read as Markdown or HTML. */
export const escapeMarkdown = (text: string): string => text.replace(/[\\`*_{}[\]<>|#]/gu, "\\$&").replace(/\r?\n/gu, " ");

const cells = (row: readonly string[]): string => `| ${row.map(escapeMarkdown).join(" | ")} |`;

function print(block: Block): string {
  switch (block.type) {
    case "heading":
      return `${"#".repeat(block.level)} ${escapeMarkdown(block.text)}`;
    case "paragraph":
      return block.strong ? `**${escapeMarkdown(block.text)}**` : escapeMarkdown(block.text);
    case "list":
      return block.items.map((item) => `- ${escapeMarkdown(item)}`).join("\n");
    case "figure":
      return escapeMarkdown(block.caption);
    case "figures":
      return block.items.map(({ caption }) => escapeMarkdown(caption)).join("\n\n");
    case "table":
      return [cells(block.head), `|${block.head.map((_, i) => (block.numeric.includes(i) ? " ---: " : " --- ")).join("|")}|`, ...block.rows.map(cells)].join("\n");
  }
}

export const summaryMarkdown = (report: Report): string => `${summaryBlocks(report).map(print).join("\n\n")}\n`;
