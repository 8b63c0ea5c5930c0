/** The outline: sections and their entries. */
import { SymbolKind, type DocumentSymbol } from "vscode-languageserver";
import { absolute, type Entry } from "../notebook/tree.js";
import { rangeBetween } from "./positions.js";
import type { Session } from "./sessions.js";

/** Deep enough for an entry's fields; an outline of everything would slow a long notebook. */
const depth = 3;

export const symbolsOf = (session: Session): DocumentSymbol[] =>
  session.checked.parsed.documents.flatMap((document) => document.entries.map((entry) => symbolOf(entry, 1, session)));

function symbolOf(entry: Entry, level: number, session: Session): DocumentSymbol {
  const key = absolute(entry.keySpan);
  const value = entry.value.via ? key : absolute(entry.value.span);
  const inner = entry.value.type === "map" && !entry.value.via && level < depth ? entry.value.entries.filter((item) => !item.via) : [];
  return {
    name: entry.key === "" ? "(empty)" : entry.key,
    detail: entry.value.type === "scalar" && entry.value.style !== "block" ? entry.value.text.slice(0, 60) : undefined,
    kind: level === 1 ? SymbolKind.Namespace : entry.value.type === "map" ? SymbolKind.Object : SymbolKind.Field,
    range: rangeBetween(key.start, Math.max(key.end, value.end), session.lines),
    selectionRange: rangeBetween(key.start, key.end, session.lines),
    children: inner.map((item) => symbolOf(item, level + 1, session)),
  };
}
