/**
 * Which supports the text around a line is about. Only indentation is read: the server owns the real reading, and its
 * list of supports decides which candidate is one.
 */

interface Row {
  readonly section: string;
  readonly entry: string;
  readonly key: string;
  readonly value: string;
  readonly line: number;
}

const keyed = /^(\s*)(["']?)([^\s#"'][^#]*?)\2\s*:(?:\s+(.*?))?\s*$/u;

/** Keys with the section and entry they stand in. */
const rowsOf = (lines: readonly string[]): Row[] => {
  const rows: Row[] = [];
  let section = "";
  let entry = "";
  let entryIndent = 0;
  for (const [line, text] of lines.entries()) {
    const match = keyed.exec(text.replace(/(^|\s)#.*$/u, ""));
    if (!match) continue;
    const indent = match[1].length;
    if (indent === 0) {
      section = match[3];
      entry = "";
      entryIndent = 0;
    } else if (entry === "" || indent <= entryIndent) {
      entry = match[3];
      entryIndent = indent;
    }
    rows.push({ section, entry: indent === 0 ? "" : entry, key: match[3], value: match[4] ?? "", line });
  }
  return rows;
};

const supporting: Readonly<Record<string, string>> = { bases: "base", foundations: "stands on" };

/**
 * Paths of supports the line may be about, the likeliest first: the entry it stands in, then the columns that name
 * this entry as their base or as what they stand on.
 */
export const subjectsAt = (lines: readonly string[], line: number): string[] => {
  const rows = rowsOf(lines);
  const here = rows.findLast((row) => row.line <= line);
  if (!here || here.entry === "") return [];
  const link = supporting[here.section];
  const above = rows.filter((row) => row.section === "columns" && row.key === link && row.value === here.entry).map((row) => `columns.${row.entry}`);
  return [`${here.section}.${here.entry}`, ...above];
};
