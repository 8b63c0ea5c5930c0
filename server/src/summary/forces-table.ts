/** The table of forces at every column as CSV, Markdown or JSON. */
import type { ColumnActions } from "../actions/demand.js";
import type { Support } from "../project/model.js";
import { kinds, type KindName, type UnitSystem } from "../units/kinds.js";
import { components, forceRows, type Component, type ForceRow } from "./force-rows.js";
import { escapeMarkdown } from "./markdown.js";

/** One structure of a notebook with its rows. */
export interface StructureForces {
  readonly structure: string;
  readonly system: UnitSystem;
  readonly rows: readonly ForceRow[];
  /** Supports without loads, each with the reason. */
  readonly without: readonly { readonly support: string; readonly because: string }[];
}

/** What stands in a table: a twist about the column's own axis only where some row has one. */
type Shown = Component | "Mz";

const kindOf: Readonly<Record<Shown, KindName>> = { P: "force", Vx: "force", Vy: "force", Mx: "moment", My: "moment", Mz: "moment" };

const shownOf = (rows: readonly ForceRow[]): readonly Shown[] => (rows.some(({ forces }) => (forces.Mz ?? 0) !== 0) ? [...components, "Mz"] : components);

/** The forces of a structure: its supports with what reaches them. */
export function structureForces(
  structure: string,
  system: UnitSystem,
  supports: readonly { readonly support: Support; readonly actions: readonly ColumnActions[] | { readonly unknown: string } }[],
): StructureForces {
  const rows: ForceRow[] = [];
  const without: { support: string; because: string }[] = [];
  for (const { support, actions } of supports) {
    if ("unknown" in actions) without.push({ support: support.name, because: actions.unknown });
    else rows.push(...forceRows(support, actions));
  }
  return { structure, system, rows, without };
}

/** A number in the unit of its kind, to the digits of a calculation by hand and a few more. */
const numeral = (value: number | undefined, kind: KindName, system: UnitSystem): string => {
  if (value === undefined) return "";
  const shown = Number((value / kinds[kind][system].factor).toPrecision(6));
  return String(Math.abs(shown) < 1e-9 ? 0 : shown);
};

const unitOf = (kind: KindName, system: UnitSystem): string => kinds[kind][system].unit;

const heads = (system: UnitSystem, shown: readonly Shown[]): readonly string[] => [
  "structure",
  "support",
  "column",
  `x (${unitOf("distance", system)})`,
  `y (${unitOf("distance", system)})`,
  "level",
  "load case or combination",
  "section",
  ...shown.map((component) => `${component} (${unitOf(kindOf[component], system)})`),
];

const numbersOf = ({ forces }: ForceRow, system: UnitSystem, shown: readonly Shown[]): readonly string[] => shown.map((component) => numeral(component === "Mz" ? (forces.Mz ?? 0) : forces[component], kindOf[component], system));

const cellsOf = (structure: string, row: ForceRow, system: UnitSystem, shown: readonly Shown[]): readonly string[] => [
  structure,
  row.support,
  String(row.column),
  numeral(row.place?.x, "distance", system),
  numeral(row.place?.y, "distance", system),
  row.level,
  row.what,
  row.section,
  ...numbersOf(row, system, shown),
];

/** How many of the first cells are words; what looks like a formula in them is kept from being one in a spreadsheet. */
const isWords = (column: number): boolean => [0, 1, 5, 6, 7].includes(column);

const csvCell = (text: string, column: number): string => {
  const plain = isWords(column) && /^[=+\-@\t\r]/u.test(text) ? `'${text}` : text;
  return /[",\r\n]/u.test(plain) ? `"${plain.replace(/"/gu, '""')}"` : plain;
};

const csvLine = (cells: readonly string[]): string => `${cells.map(csvCell).join(",")}\r\n`;

/** Comma-separated values (RFC 4180), one row to a section; the heads carry the units, and begin again where another structure has others. */
export function forcesCsv(structures: readonly StructureForces[]): string {
  // One set of columns for the whole file.
  const shown = shownOf(structures.flatMap(({ rows }) => rows));
  let system: UnitSystem | undefined;
  let text = "";
  for (const { structure, rows, system: own } of structures) {
    if (own !== system) text += csvLine(heads(own, shown));
    system = own;
    for (const row of rows) text += csvLine(cellsOf(structure, row, own, shown));
  }
  return text;
}

/** A table for each column, level and section. */
export function forcesMarkdown(structures: readonly StructureForces[]): string {
  const parts: string[] = [];
  for (const { structure, rows, system, without } of structures) {
    if (structure) parts.push(`# ${escapeMarkdown(structure)}`);
    const groups = new Map<string, ForceRow[]>();
    for (const row of rows) {
      const title = `${row.support}, column ${row.column}, ${row.level}, at the ${row.section}`;
      const group = groups.get(title);
      if (group) group.push(row);
      else groups.set(title, [row]);
    }
    const shown = shownOf(rows);
    const head = ["Load case or combination", ...shown.map((component) => `${component} (${unitOf(kindOf[component], system)})`)];
    for (const [title, group] of groups) {
      const body = group.map((row) => [row.what, ...numbersOf(row, system, shown)]);
      const lines = [head, ...body].map((cells) => `| ${cells.map(escapeMarkdown).join(" | ")} |`);
      parts.push(`## ${escapeMarkdown(title)}`, [lines[0], `| --- ${"| ---: ".repeat(shown.length)}|`, ...lines.slice(1)].join("\n"));
    }
    for (const { support, because } of without) parts.push(escapeMarkdown(`${support}: no loads, ${because}.`));
  }
  return `${parts.join("\n\n")}\n`;
}

/** Rows as plain data in SI: N, N·m and m. */
export const forcesJson = (structures: readonly StructureForces[]): string => JSON.stringify({ units: { force: "N", moment: "N*m", length: "m" }, structures: structures.map(({ system: _, ...rest }) => rest) }, undefined, 2);
