/** Writing text so that YAML reads the same text back. */
import type { ScalarNode } from "./tree.js";

const plainStart = /^[\p{L}\p{N}_($=+./\\~^;<]|^-(?=[^\s-])/u;
const control = /[\u0000-\u001f\u007f\u0085\u2028\u2029\ufeff]/u;
const readsAsNothing = new Set(["", "~", "null", "Null", "NULL", "<<", "="]);

/** Whether the text may stand without quotes, as a key or as a value. `inFlow` is inside `{ }` or `[ ]`. */
export function isPlainSafe(text: string, inFlow = false): boolean {
  if (readsAsNothing.has(text) || text !== text.trim() || control.test(text)) return false;
  if (!plainStart.test(text)) return false;
  if (/:(?:\s|$)|\s#/u.test(text)) return false;
  if (/^(?:---|\.\.\.)/u.test(text)) return false;
  return !(inFlow && /[,[\]{}]/u.test(text));
}

const escaped = (char: string): string => {
  if (char === "\n") return "\\n";
  if (char === "\t") return "\\t";
  if (char === "\r") return "\\r";
  return `\\u${(char.codePointAt(0) ?? 0).toString(16).padStart(4, "0")}`;
};

/** The text in quotes: double ones where it has no backslash or quotation mark, single ones otherwise. */
export function quoted(text: string): string {
  if (control.test(text)) return `"${inDouble(text)}"`;
  return /["\\]/u.test(text) ? `'${text.replaceAll("'", "''")}'` : `"${text}"`;
}

const inDouble = (text: string): string =>
  text.replaceAll("\\", "\\\\").replaceAll('"', '\\"').replace(new RegExp(control.source, "gu"), escaped);

/** The text as YAML has to have it: plain where that is safe, quoted otherwise. */
export const asYaml = (text: string, inFlow = false): string => (isPlainSafe(text, inFlow) ? text : quoted(text));

/** What replaces the stretch `node.span` so that the scalar says `text`; the quotes it stands in are kept. */
export function asScalar(node: Pick<ScalarNode, "style">, text: string, inFlow = false): string {
  if (node.style === "double") return inDouble(text);
  if (node.style === "single") return text.replaceAll("'", "''");
  return asYaml(text, inFlow);
}
