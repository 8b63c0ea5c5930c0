/** Going to, finding and renaming the names of the user's own. */
import { ErrorCodes, ResponseError, type Location, type Position, type Range, type WorkspaceEdit } from "vscode-languageserver";
import type { NotebookReading } from "../notebook/read-notebook.js";
import { definitionOf, findSymbolAt, usesOf, type SymbolAt } from "../notebook/references.js";
import { renameEdits } from "../notebook/rename.js";
import { absolute } from "../notebook/tree.js";
import { rangeOf } from "./positions.js";
import type { Session } from "./sessions.js";

function symbolAt(session: Session, position: Position): { reading: NotebookReading; symbol: SymbolAt } | undefined {
  const offset = session.lines.offsetAt(position);
  for (const { reading } of session.checked.documents) {
    const symbol = findSymbolAt(session.checked.parsed, reading, offset);
    if (symbol) return { reading, symbol };
  }
  return undefined;
}

export function definitionAt(session: Session, position: Position): Location | null {
  const found = symbolAt(session, position);
  const definition = found && definitionOf(found.reading, found.symbol.section, found.symbol.name);
  return definition ? { uri: session.uri, range: rangeOf(definition.span, session.lines) } : null;
}

export function referencesAt(session: Session, position: Position, withDefinition: boolean): Location[] {
  const found = symbolAt(session, position);
  if (!found) return [];
  const { reading, symbol } = found;
  const definition = withDefinition ? definitionOf(reading, symbol.section, symbol.name) : undefined;
  const spans = [...(definition ? [definition.span] : []), ...usesOf(reading, symbol.section, symbol.name).map((use) => use.span)];
  return spans.sort((a, b) => absolute(a).start - absolute(b).start).map((span) => ({ uri: session.uri, range: rangeOf(span, session.lines) }));
}

export function prepareRenameAt(session: Session, position: Position): { range: Range; placeholder: string } | null {
  const found = symbolAt(session, position);
  if (!found || !definitionOf(found.reading, found.symbol.section, found.symbol.name)) return null;
  return { range: rangeOf(found.symbol.span, session.lines), placeholder: found.symbol.name };
}

/** Throws a response error with the reason where the new name cannot be taken, so that the user reads it. */
export function renameAt(session: Session, position: Position, newName: string): WorkspaceEdit | null {
  const found = symbolAt(session, position);
  if (!found) return null;
  const renaming = renameEdits(found.reading, found.symbol, newName);
  if (!renaming.ok) throw new ResponseError(ErrorCodes.InvalidParams, renaming.message);
  return { changes: { [session.uri]: renaming.edits.map(({ span, text }) => ({ range: rangeOf(span, session.lines), newText: text })) } };
}
