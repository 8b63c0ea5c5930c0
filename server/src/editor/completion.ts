/**
 * What can be written here: keys the schema has and the entry lacks, choices, names, units. Worked out from indentation
 * alone, so that it answers while the line is half written.
 */
import { CompletionItemKind, type CompletionItem } from "vscode-languageserver";
import { describeField, fieldAt } from "../notebook/field-at.js";
import type { Field } from "../notebook/fields.js";
import { likelyUnits } from "../units/likely.js";
import type { Session } from "./sessions.js";

interface Spot {
  /** Keys above the cursor, outermost first. */
  readonly path: readonly string[];
  /** The key on the cursor's line, where the cursor stands behind its colon. */
  readonly key?: string;
  readonly valueSoFar: string;
  readonly siblings: ReadonlySet<string>;
}

const keyLine = /^(\s*)(?:-\s+)?([^\s#:][^#:]*?)\s*:(?:\s|$)/u;
const indentOf = (line: string): number => line.length - line.trimStart().length;

/** Reads where the cursor is from the lines above it. */
export function spotAt(text: string, line: number, character: number): Spot | undefined {
  const lines = text.split(/\r\n|\r|\n/u);
  const current = (lines[line] ?? "").slice(0, character);
  if (/(?:^|\s)#\s/u.test(current)) return undefined;
  const own = keyLine.exec(current) ?? keyLine.exec(`${current} `);
  const behindColon = own !== null && current.length > own[1].length + own[2].length && current.includes(":");
  let indent = indentOf(current);
  const path: string[] = [];
  for (let i = line - 1; i >= 0 && indent > 0; i -= 1) {
    const match = keyLine.exec(lines[i]);
    if (match && match[1].length < indent) {
      path.unshift(match[2].replace(/^["']|["']$/gu, ""));
      indent = match[1].length;
    }
  }
  const at = indentOf(current);
  const siblings = new Set<string>();
  for (const step of [-1, 1]) {
    for (let i = line + step; i >= 0 && i < lines.length; i += step) {
      if (lines[i].trim() === "" || lines[i].trimStart().startsWith("#")) continue;
      if (indentOf(lines[i]) < at) break;
      const match = keyLine.exec(lines[i]);
      if (match && match[1].length === at) siblings.add(match[2]);
    }
  }
  if (behindColon && own) return { path, key: own[2], valueSoFar: current.slice(current.indexOf(":") + 1).trim(), siblings };
  return { path, valueSoFar: current.trim(), siblings };
}

export function completionsAt(session: Session, position: { line: number; character: number }): CompletionItem[] {
  const spot = spotAt(session.checked.text, position.line, position.character);
  if (!spot) return [];
  if (spot.key !== undefined) {
    const found = fieldAt([...spot.path, spot.key]);
    return found ? valuesFor(found.field, spot.valueSoFar, session) : [];
  }
  const holder = fieldAt(spot.path);
  if (holder?.field.type !== "record") return [];
  return Object.entries(holder.field.fields as Readonly<Record<string, Field>>)
    .filter(([name]) => !spot.siblings.has(name))
    .map(([name, field], i) => ({
      label: name,
      kind: CompletionItemKind.Property,
      detail: describeField(field),
      documentation: field.assumed ? `${field.doc} Left out: ${field.assumed.text} (${field.assumed.source}).` : field.doc,
      insertText: takesBlock(field) ? `${name}:\n  ` : `${name}: `,
      sortText: String(i).padStart(3, "0"),
    }));
}

const takesBlock = (field: Field): boolean => (field.type === "record" && !field.short) || field.type === "named" || field.type === "list";

function valuesFor(field: Field, soFar: string, session: Session): CompletionItem[] {
  const item = (label: string, detail: string, kind: CompletionItemKind): CompletionItem => ({ label, detail, kind });
  switch (field.type) {
    case "choice":
      return field.choices.map((label: string) => item(label, field.doc, CompletionItemKind.EnumMember));
    case "yes-no":
      return ["yes", "no"].map((label) => item(label, field.doc, CompletionItemKind.EnumMember));
    case "reference":
      return namesUnder(session, field.to).map((label) => item(label, `an entry under ${field.to}`, CompletionItemKind.Reference));
    case "quantity": {
      const number = /^-?[\d.][\d./\s-]*$/u.exec(soFar);
      const units = field.units ?? likelyUnits[field.kind];
      return number ? units.map((unit: string) => item(unit, field.doc, CompletionItemKind.Unit)) : [];
    }
    case "record":
      return field.short ? [item(field.short.example, field.doc, CompletionItemKind.Snippet)] : [];
    default:
      return [];
  }
}

function namesUnder(session: Session, section: string): string[] {
  return session.shown.parsed.documents.flatMap((document) => {
    const value = document.entries.find((entry) => entry.key === section)?.value;
    return value?.type === "map" ? value.entries.map((entry) => entry.key) : [];
  });
}
