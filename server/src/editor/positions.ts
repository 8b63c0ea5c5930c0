/** Conversions between our spans and the editor's ranges. The only place they are made. */
import type { Range } from "vscode-languageserver";
import type { Place } from "../../../shared/report.js";
import { placeOf } from "../engine/place.js";
import type { LineIndex } from "../notebook/lines.js";
import type { Span } from "../notebook/tree.js";

export const rangeFromPlace = (place: Place): Range => ({
  start: { line: place.line, character: place.character },
  end: { line: place.endLine, character: place.endCharacter },
});

export const rangeOf = (span: Span, lines: LineIndex): Range => rangeFromPlace(placeOf(span, lines));

export const rangeBetween = (start: number, end: number, lines: LineIndex): Range => ({
  start: lines.positionAt(start),
  end: lines.positionAt(end),
});
