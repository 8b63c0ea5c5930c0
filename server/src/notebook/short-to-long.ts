/** From `plate: 14 in x 14 in x 1 in` to the same fields on lines of their own. */
import type { Located, RecordField } from "./fields.js";
import { asYaml } from "./quoting.js";
import type { Fix } from "./problem.js";
import type { Span } from "./tree.js";

/** The conversion of a record written in its short form; undefined where it is written out already, or cannot be split. */
export function shortToLong(located: Located<unknown>, field: RecordField): Fix | undefined {
  const { node, entry } = located;
  if (node.type !== "scalar" || !field.short || !entry || node.via) return undefined;
  const parts = field.short.split(node.text);
  if (!Array.isArray(parts)) return undefined;
  const { block } = node.span;
  const key = entry.keySpan;
  const title = "Write it out, one field a line";
  // The quotes go with the value they stood around.
  const quotes = node.style === "single" || node.style === "double" ? 1 : 0;
  const span: Span = { block, start: node.span.start - quotes, end: node.span.end + quotes };
  const column = blockColumn(block.text, key);
  if (column === undefined || key.block !== block) {
    const inner = parts.map((part) => `${asYaml(part.field, true)}: ${asYaml(part.text, true)}`).join(", ");
    return { title, edits: [{ span, text: `{ ${inner} }` }] };
  }
  const newline = block.text.includes("\r\n") ? "\r\n" : "\n";
  const indent = " ".repeat(column + 2);
  const colon = block.text.indexOf(":", key.end);
  const text = parts.map((part) => `${newline}${indent}${asYaml(part.field)}: ${asYaml(part.text)}`).join("");
  return { title, edits: [{ span: { block, start: colon < 0 ? span.start : colon + 1, end: span.end }, text }] };
}

/** The column of a key in block style; undefined inside `{ }`. */
function blockColumn(text: string, key: Span): number | undefined {
  const line = text.lastIndexOf("\n", key.start - 1) + 1;
  const before = text.slice(line, key.start).replace(/["']$/u, "");
  return /^\ufeff?(?: |- )*$/u.test(before) ? before.replace("\ufeff", "").length : undefined;
}
