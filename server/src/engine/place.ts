/** Spans as line and character, for whatever leaves the engine. */
import type { Place } from "../../../shared/report.js";
import type { LineIndex } from "../notebook/lines.js";
import { absolute, type Span } from "../notebook/tree.js";

export function placeOf(span: Span, lines: LineIndex): Place {
  const { start, end } = absolute(span);
  const from = lines.positionAt(start);
  const to = lines.positionAt(end);
  return { line: from.line, character: from.character, endLine: to.line, endCharacter: to.character };
}
