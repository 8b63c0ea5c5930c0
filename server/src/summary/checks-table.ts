/** The list of checks and rules for the README: a folded Markdown table for each link of the chain. */
import type { CheckDecl, RuleDecl } from "../checks/contract.js";
import { allChecks, allRules } from "../checks/registry.js";

type Item = CheckDecl | RuleDecl;

const titles: { readonly [link in Item["link"]]: string } = {
  column: "Column and its top",
  base: "Base plate, its rods and its grout",
  anchors: "Anchors in the concrete",
  pier: "Pier in soil",
  footing: "Footing on soil",
  wall: "Wall with posts on it",
  rock: "Footing on rock and its dowels",
  site: "Site and job",
};

const row = ({ title, clause, id }: Item): string => `| ${title} | ${clause} | \`${id}\` |`;

function folded(title: string, items: readonly Item[]): string {
  const rows = ["| check | clause | id |", "|---|---|---|", ...items.map(row)];
  return [`<details><summary>${title}: ${items.length} ${items.length === 1 ? "check" : "checks"}</summary>`, "", ...rows, "", "</details>"].join("\n");
}

export function checksTable(): string {
  const all: readonly Item[] = [...allChecks, ...allRules];
  return Object.entries(titles)
    .map(([link, title]) => folded(title, all.filter((item) => item.link === link)))
    .join("\n\n");
}
