/** A lens over each column line, base and foundation: its worst answer; it opens the derivation. */
import type { CodeLens, Range } from "vscode-languageserver";
import { commands, type OpenDerivationArgs } from "../../../shared/protocol.js";
import type { CheckedDocument } from "../engine/check-text.js";
import { resultsAt, worstOf, type Worst } from "../engine/worst.js";
import { showRatio } from "../findings/message.js";
import { isRule } from "../findings/result.js";
import type { ParsedNotebook } from "../notebook/parse.js";
import { absolute, entryOf, type Span } from "../notebook/tree.js";
import { rangeBetween } from "./positions.js";
import type { Session } from "./sessions.js";

export function lensesOf(session: Session): CodeLens[] {
  return session.shown.documents.flatMap((document, index) =>
    entriesWithLens(document).flatMap(({ path, subject }) => {
      const range = placeInPresentText(session, index, path);
      return range ? [lens(session, document, path, subject, range)] : [];
    }),
  );
}

/** Column lines and what stands alone, then bases and foundations with the first support that uses them. */
function entriesWithLens(document: CheckedDocument): { path: string; subject: string }[] {
  const found = new Map<string, string>();
  for (const support of document.structure.supports) {
    found.set(support.path, support.path);
    for (const part of [support.base, support.foundation]) if (part && !found.has(part.path)) found.set(part.path, support.path);
  }
  return [...found].map(([path, subject]) => ({ path, subject }));
}

function lens(session: Session, document: CheckedDocument, path: string, subject: string, range: Range): CodeLens {
  const worst = worstOf(resultsAt(document, path));
  const governing = worst.result?.support?.path ?? subject;
  const args: OpenDerivationArgs = { uri: session.uri, subject: governing, check: worst.check };
  return { range, command: { title: `${session.stale ? "last readable text: " : ""}${titleOf(worst)}`, command: commands.openDerivation, arguments: [args] } };
}

function titleOf(worst: Worst): string {
  if (!worst.result) return "nothing checked here yet";
  const name = worst.title ?? "";
  if (isRule(worst.result) || worst.ratio === undefined) return `${worst.state}: ${name}`;
  return `${showRatio(worst.ratio)} ${worst.state}: ${name}`;
}

/** Entries are found again by their path, so that a lens stays on its line while the text above it is broken. */
function placeInPresentText(session: Session, index: number, path: string): Range | undefined {
  const span = keyOf(session.checked.parsed, index, path);
  if (!span) return session.stale ? lineOfEntry(session, path) : undefined;
  const { start, end } = absolute(span);
  return rangeBetween(start, end, session.lines);
}

/** In a text the parser cannot take apart, an entry is still told by the line that names it. */
function lineOfEntry(session: Session, path: string): Range | undefined {
  const name = path.slice(path.indexOf(".") + 1);
  const written = [name, `"${name}"`, `'${name}'`].map((text) => text.replace(/[\\^$.*+?()[\]{}|]/gu, "\\$&")).join("|");
  const found = new RegExp(`^[ \\t]+(?:${written})[ \\t]*:`, "mu").exec(session.checked.text);
  if (!found) return undefined;
  const start = found.index + found[0].length - found[0].trimStart().length;
  return rangeBetween(start, found.index + found[0].length - 1, session.lines);
}

export function keyOf(parsed: ParsedNotebook, index: number, path: string): Span | undefined {
  const [section, ...rest] = path.split(".");
  const inside = entryOf(parsed.documents[index], section)?.value;
  return inside?.type === "map" ? entryOf(inside, rest.join("."))?.keySpan : undefined;
}
