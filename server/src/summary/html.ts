/** The summary as one HTML page that prints on letter paper. No script, nothing fetched. */
import type { Report } from "../../../shared/report.js";
import { summaryBlocks, type Block } from "./document.js";

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };
export const escapeHtml = (text: string): string => text.replace(/[&<>"']/gu, (sign) => entities[sign]);

const style = `
:root { color-scheme: light dark; }
body { font: 10.5pt/1.4 "Liberation Sans", Arial, Helvetica, sans-serif; max-width: 7.5in; margin: 2em auto; padding: 0 1em; color: CanvasText; background: Canvas; }
h1 { font-size: 17pt; border-bottom: 1.5pt solid; padding-bottom: 3pt; margin-bottom: 4pt; }
h2 { font-size: 12.5pt; margin-top: 18pt; border-bottom: .5pt solid; }
h3 { font-size: 11pt; margin: 14pt 0 4pt; }
h1, h2, h3 { break-after: avoid; }
table { border-collapse: collapse; width: 100%; margin: 6pt 0 10pt; font-size: 9pt; }
caption { text-align: left; font-style: italic; padding-bottom: 2pt; break-after: avoid; }
thead { break-after: avoid; }
tbody:first-of-type tr:first-child { break-before: avoid; }
tbody.g { break-inside: avoid; }
th, td { border: .5pt solid; padding: 2pt 4pt; text-align: left; vertical-align: top; overflow-wrap: anywhere; }
th { border-bottom-width: 1.2pt; overflow-wrap: normal; }
td.n, th.n { text-align: right; white-space: nowrap; overflow-wrap: normal; }
td.t, th.t { white-space: nowrap; overflow-wrap: normal; }
tr { break-inside: avoid; }
thead { display: table-header-group; }
ul { padding-left: 1.3em; }
figure { margin: 8pt 0; break-inside: avoid; }
figure svg { max-width: 100%; height: auto; }
figcaption { font-size: 9pt; }
.pair { display: grid; grid-template-columns: 1fr 1fr; gap: 0 12pt; break-inside: avoid; }
@page { size: letter; margin: .75in; }
@media print { :root { color-scheme: light; } body { margin: 0; max-width: none; padding: 0; } table { font-size: 8pt; line-height: 1.25; } th, td { padding: 1.5pt 3pt; } }
`;

function print(block: Block): string {
  switch (block.type) {
    case "heading":
      return `<h${block.level}>${escapeHtml(block.text)}</h${block.level}>`;
    case "paragraph":
      return block.strong ? `<p><strong>${escapeHtml(block.text)}</strong></p>` : `<p>${escapeHtml(block.text)}</p>`;
    case "list":
      return `<ul>${block.items.map((item) => `<li>${escapeHtml(item)}</li>`).join("")}</ul>`;
    case "figure":
      return `<figure>${block.svg}<figcaption>${escapeHtml(block.caption)}</figcaption></figure>`;
    case "figures":
      return `<div class="pair">${block.items.map(({ svg, caption }) => `<figure>${svg}<figcaption>${escapeHtml(caption)}</figcaption></figure>`).join("")}</div>`;
    case "table": {
      const mark = (i: number) => (block.numeric.includes(i) ? ' class="n"' : block.tight?.includes(i) ? ' class="t"' : "");
      const head = block.head.map((cell, i) => `<th scope="col"${mark(i)}>${escapeHtml(cell)}</th>`).join("");
      const begins = block.groups ?? [];
      const rows = block.rows
        .map((row, at) => `${at > 0 && begins.includes(at) ? '</tbody><tbody class="g">' : ""}<tr>${row.map((cell, i) => `<td${mark(i)}>${escapeHtml(cell)}</td>`).join("")}</tr>`)
        .join("\n");
      return `<table><caption>${escapeHtml(block.caption)}</caption><thead><tr>${head}</tr></thead><tbody${begins.length > 0 ? ' class="g"' : ""}>\n${rows}\n</tbody></table>`;
    }
  }
}

export function summaryHtml(report: Report): string {
  const title = report.structures[0]?.name || report.file;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${escapeHtml(title)}</title>
<style>${style}</style>
</head>
<body>
<main>
${summaryBlocks(report).map(print).join("\n")}
</main>
</body>
</html>
`;
}
