/** Places in a text as the protocol counts them: lines from 0, characters in UTF-16 units. Made without the server's code. */
export interface Position {
  readonly line: number;
  readonly character: number;
}
export interface Range {
  readonly start: Position;
  readonly end: Position;
}
export interface TextEdit {
  readonly range: Range;
  readonly newText: string;
}

export function positionAt(text: string, offset: number): Position {
  if (text[offset - 1] === "\r" && text[offset] === "\n") throw new Error("An editor has no place between the two characters of a line end.");
  const before = text.slice(0, offset).split(/\r\n|\r|\n/u);
  return { line: before.length - 1, character: before[before.length - 1].length };
}

export function offsetAt(text: string, position: Position): number {
  const ends = /\r\n|\r|\n/gu;
  for (let line = 0; line < position.line; line += 1) {
    if (!ends.exec(text)) throw new Error(`The text has no line ${position.line}.`);
  }
  const start = position.line === 0 ? 0 : ends.lastIndex;
  const length = text.slice(start).search(/\r\n|\r|\n|$/u);
  if (position.character > length) throw new Error(`Line ${position.line} has ${length} characters, not ${position.character}.`);
  return start + position.character;
}

export const textIn = (text: string, range: Range): string => text.slice(offsetAt(text, range.start), offsetAt(text, range.end));

/** Applies edits the way an editor does: none may overlap, all are made to the text as it was. */
export function applyEdits(text: string, edits: readonly TextEdit[]): string {
  const placed = edits.map(({ range, newText }) => ({ start: offsetAt(text, range.start), end: offsetAt(text, range.end), newText })).sort((a, b) => a.start - b.start);
  placed.forEach((edit, i) => {
    if (edit.end < edit.start) throw new Error("An edit ends before it starts.");
    if (i > 0 && edit.start < placed[i - 1].end) throw new Error("Two edits overlap.");
  });
  return placed.reduceRight((whole, { start, end, newText }) => whole.slice(0, start) + newText + whole.slice(end), text);
}

/** Offset of the `|` in a stretch of the text, `depth: 3| ft`; the stretch has to occur once. */
export function cursorIn(text: string, marked: string): number {
  const bar = marked.indexOf("|");
  if (bar < 0) throw new Error(`There is no | in ${JSON.stringify(marked)}.`);
  const plain = marked.slice(0, bar) + marked.slice(bar + 1);
  const at = text.indexOf(plain);
  if (at < 0) throw new Error(`${JSON.stringify(plain)} is not in the text.`);
  if (text.indexOf(plain, at + 1) >= 0) throw new Error(`${JSON.stringify(plain)} is in the text more than once.`);
  return at + bar;
}
