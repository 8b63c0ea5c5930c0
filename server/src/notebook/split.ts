/**
 * Cuts the text into blocks by looking at line beginnings alone, so that an edit parses again only the block it touches.
 *
 * A block is one entry of a section (`foundations/pier`), the heading line of such a section, or a whole section where its
 * lines do not have the plain shape. Blank lines and comments belong to the block above them, because that is what the YAML
 * parser sees after the line that begins the block; what stands before the first key belongs to the first block.
 * Text a line scan may misjudge (tabs in indentation, document markers, directives, flow style at the root) is not cut.
 */
export interface Piece {
  /** Unique within the text: `foundations`, `foundations/pier`, `foundations/pier#2` for a repeated name. */
  readonly key: string;
  readonly kind: "heading" | "entry" | "section";
  readonly start: number;
  readonly end: number;
}

const newline = 10;
const carriageReturn = 13;
const space = 32;
const tab = 9;
const hash = 35;

/** A plain key with its colon. Quotes, indicators, `#` and `<<` are left to the YAML parser. */
const keyLine = /[^\s\-?:,[\]{}#&*!|<>'"%@`][^:\n#]*:(?=[ \r\n]|$)/y;
/** The rest of a heading; a comment that may be a lost bar size keeps its section whole. */
const nothingMore = /[ ]*(?:[ ]#(?!\d)[^\n]*|\r?)(?=\n|$)/y;

const keyAt = (text: string, at: number): string | undefined => {
  keyLine.lastIndex = at;
  return keyLine.exec(text)?.[0];
};

interface OpenSection {
  readonly name: string;
  readonly start: number;
  readonly splittable: boolean;
  /** Column of the entries; 0 until the first is met. */
  indent: number;
  broken: boolean;
  readonly entries: { readonly name: string; readonly start: number }[];
}

/** The pieces in order, or undefined where the text has to be parsed as one. Joined, the pieces give the text back. */
export function split(text: string): readonly Piece[] | undefined {
  const sections: OpenSection[] = [];
  let current: OpenSection | undefined;
  let at = text.charCodeAt(0) === 0xfeff ? 1 : 0;

  while (at < text.length) {
    let first = at;
    while (text.charCodeAt(first) === space) first++;
    const char = text.charCodeAt(first);
    if (char === tab) return undefined;
    const blank = first >= text.length || char === newline || char === hash || (char === carriageReturn && text.charCodeAt(first + 1) === newline);
    if (!blank && first === at) {
      const key = keyAt(text, at);
      if (key === undefined) return undefined;
      nothingMore.lastIndex = at + key.length;
      current = {
        name: key.slice(0, -1),
        start: sections.length === 0 ? 0 : at,
        splittable: nothingMore.test(text),
        indent: 0,
        broken: false,
        entries: [],
      };
      sections.push(current);
    } else if (!blank) {
      if (!current) return undefined;
      noteChild(current, text, at, first);
    }
    const end = text.indexOf("\n", first);
    at = end < 0 ? text.length : end + 1;
  }
  return sections.length === 0 ? undefined : piecesOf(sections, text.length);
}

function noteChild(section: OpenSection, text: string, at: number, first: number): void {
  if (!section.splittable || section.broken) return;
  const indent = first - at;
  if (section.indent === 0) section.indent = indent;
  if (indent > section.indent) return;
  const key = indent === section.indent ? keyAt(text, first) : undefined;
  if (key === undefined) section.broken = true;
  else section.entries.push({ name: key.slice(0, -1), start: at });
}

function piecesOf(sections: readonly OpenSection[], length: number): readonly Piece[] {
  const pieces: Piece[] = [];
  const used = new Map<string, number>();
  const push = (name: string, kind: Piece["kind"], start: number, end: number) => {
    const times = (used.get(name) ?? 0) + 1;
    used.set(name, times);
    pieces.push({ key: times === 1 ? name : `${name}#${times}`, kind, start, end });
  };
  sections.forEach((section, i) => {
    const end = sections[i + 1]?.start ?? length;
    if (section.broken || section.entries.length === 0) {
      push(section.name, "section", section.start, end);
      return;
    }
    push(section.name, "heading", section.start, section.entries[0].start);
    section.entries.forEach((entry, j) => {
      push(`${section.name}/${entry.name}`, "entry", entry.start, section.entries[j + 1]?.start ?? end);
    });
  });
  return pieces;
}
