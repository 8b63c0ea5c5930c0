/** One-line forms of the records a drawing also writes on one line. Each is split into field texts with their places. */
import type { ShortForm, ShortPart } from "./fields.js";

interface Piece {
  readonly text: string;
  readonly start: number;
}

/** Pieces between separators, trimmed, with their places. */
const pieces = (text: string, separator: RegExp, from = 0): Piece[] => {
  const found: Piece[] = [];
  let start = 0;
  const push = (end: number) => {
    const raw = text.slice(start, end);
    const lead = raw.length - raw.trimStart().length;
    found.push({ text: raw.trim(), start: from + start + lead });
  };
  for (const match of text.matchAll(separator)) {
    push(match.index);
    start = match.index + match[0].length;
  }
  push(text.length);
  return found;
};

const part = (field: string, piece: Piece): ShortPart => ({
  field,
  text: piece.text,
  start: piece.start,
  end: piece.start + piece.text.length,
});

const whole = (text: string) => ({ at: 0, length: text.length });
const by = /\s+(?:x|×|by)\s+|\s*×\s*/giu;

/** Sizes joined by `x`, given to the named fields in turn; the first is repeated where `square` allows a single size. */
const sizes =
  (example: string, fields: readonly string[]): ShortForm["split"] =>
  (text) => {
    const found = pieces(text, by);
    if (found.length !== fields.length) {
      return { problem: `${found.length} size${found.length === 1 ? "" : "s"} where ${fields.length} are needed; write it like ${example}.`, ...whole(text) };
    }
    return found.map((piece, i) => part(fields[i], piece));
  };

export const plateShortForm: ShortForm = {
  example: "14 in x 14 in x 1 in",
  split: sizes("14 in x 14 in x 1 in", ["width", "length", "thickness"]),
};

export const washerShortForm: ShortForm = {
  example: "2 in x 1/4 in",
  split: sizes("2 in x 1/4 in", ["width", "thickness"]),
};

/** A shear lug: across the shear, below the plate, thick. */
export const lugShortForm: ShortForm = {
  example: "6 in x 4 in x 1 in",
  split: sizes("6 in x 4 in x 1 in", ["width", "depth", "thickness"]),
};

export const stripShortForm: ShortForm = {
  example: "42 in x 14 in",
  split: sizes("42 in x 14 in", ["width", "thickness"]),
};

/** Wide, deep. */
export const keyShortForm: ShortForm = {
  example: "12 in x 10 in",
  split: sizes("12 in x 10 in", ["width", "depth"]),
};

/** `8 no. 6`: how many, then the bar. */
export const barsShortForm: ShortForm = {
  example: "8 no. 6",
  split: (text) => {
    const match = /^(\s*)(\d+)(\s*(?:x|×|-)?\s*)(\S.*?)\s*$/iu.exec(text);
    if (!match || /^\s*\d+\s*(?:m|mm)\s*$/iu.test(text)) {
      return { problem: "Bars need a count and a size; write it like 8 no. 6.", ...whole(text) };
    }
    const start = match[1].length;
    const size = start + match[2].length + match[3].length;
    return [part("count", { text: match[2], start }), part("bar", { text: match[4], start: size })];
  },
};

/** `no. 4 at 3 in`: the bar, then its spacing or pitch. */
export const spacedShortForm = (spacing: string): ShortForm => ({
  example: "no. 4 at 3 in",
  split: (text) => {
    const found = pieces(text, /\s+(?:at|@)\s+|\s*@\s*/giu);
    if (found.length !== 2) return { problem: "A bar and a spacing are needed; write it like no. 4 at 3 in.", ...whole(text) };
    return [part("bar", found[0]), part(spacing, found[1])];
  },
});

/** `no. 5 at 12 in, 4 ft up`: the bar, its spacing, and the height at which it ends. */
export const lowerBarsShortForm: ShortForm = {
  example: "no. 5 at 12 in, 4 ft up",
  split: (text) => {
    const found = pieces(text, /,/gu);
    const up = found.length === 2 ? /^(.+?)\s+up$/iu.exec(found[1].text) : null;
    const spaced = up && spacedShortForm("spacing").split(found[0].text);
    if (!up || !spaced || "problem" in spaced) return { problem: "A bar, a spacing and the height it reaches are needed; write it like no. 5 at 12 in, 4 ft up.", ...whole(text) };
    const moved = spaced.map((piece) => ({ ...piece, start: piece.start + found[0].start, end: piece.end + found[0].start }));
    return [...moved, part("reach", { text: up[1], start: found[1].start })];
  },
};

/** `no. 5 at 10 in` or `6 no. 5`: bars of one direction by their spacing or by their number. */
export const matShortForm: ShortForm = {
  example: "no. 5 at 10 in, or 6 no. 5",
  split: (text) => (/\s(?:at|@)\s|@/iu.test(text) ? spacedShortForm("spacing") : barsShortForm).split(text),
};

/** The same bars each way. */
export const eachWayShortForm: ShortForm = {
  example: "no. 5 at 10 in, or 6 no. 5, each way",
  split: (text) => {
    const bare = text.replace(/[,\s]+each\s+way\s*$/iu, "");
    const [piece] = pieces(bare, /$^/gu);
    return [part("along x", piece), part("along y", piece)];
  },
};

const round = /^(.+?)\s+(?:diameter|dia\.?|round)$/iu;

/** `16 in x 20 in`, `16 in square`, `18 in diameter`. */
export const pedestalShortForm: ShortForm = {
  example: "16 in x 16 in, or 18 in diameter",
  split: (text) => {
    const [piece] = pieces(text, /$^/gu);
    const single = round.exec(piece.text);
    if (single) return [part("diameter", { text: single[1], start: piece.start })];
    const square = /^(.+?)\s+square$/iu.exec(piece.text);
    if (square) return [part("width", { text: square[1], start: piece.start }), part("length", { text: square[1], start: piece.start })];
    return sizes("16 in x 16 in, 16 in square or 18 in diameter", ["width", "length"])(text);
  },
};

/** `4 x 1 in F1554 Gr 36, headed, 20 in deep, 10 in square`. */
export const anchorsShortForm: ShortForm = {
  example: "4 x 1 in F1554 Gr 36, headed, 20 in deep, 10 in square",
  split: (text) => {
    const found: ShortPart[] = [];
    for (const [index, piece] of pieces(text, /,/gu).entries()) {
      const lower = piece.text.toLowerCase();
      if (index === 0) {
        const head = /^(\d+)\s*(?:x|×)\s*(.+?)(?:\s+(F1554\s+.*))?$/iu.exec(piece.text);
        if (!head) return { problem: "Begin with the count and the rod size, like 4 x 1 in F1554 Gr 36.", at: piece.start, length: piece.text.length };
        found.push(part("count", { text: head[1], start: piece.start }));
        const size = piece.text.indexOf(head[2], head[1].length);
        found.push(part("diameter", { text: head[2], start: piece.start + size }));
        if (head[3]) found.push(part("grade", { text: head[3], start: piece.start + piece.text.length - head[3].length }));
        continue;
      }
      const deep = /^(.+?)\s+(?:deep|embedment|embedded)$/iu.exec(piece.text);
      const square = /^(.+?)\s+square$/iu.exec(piece.text);
      const hook = /^(.+?)\s+hook$/iu.exec(piece.text);
      const circle = /^(.+?)\s+bolt\s+circle$/iu.exec(piece.text);
      const pattern = pieces(piece.text, by, piece.start);
      if (deep) found.push(part("embedment", { text: deep[1], start: piece.start }));
      else if (hook) found.push(part("hook length", { text: hook[1], start: piece.start }));
      else if (circle) found.push(part("bolt circle", { text: circle[1], start: piece.start }));
      else if (square) found.push(part("spacing x", { text: square[1], start: piece.start }), part("spacing y", { text: square[1], start: piece.start }));
      else if (lower === "headed" || lower === "hooked" || lower === "set in adhesive") found.push(part("end", piece));
      else if (pattern.length === 2) found.push(part("spacing x", pattern[0]), part("spacing y", pattern[1]));
      else {
        return {
          problem: `"${piece.text}" is not understood here; after the rods come headed, hooked or set in adhesive, the depth (20 in deep) and the pattern (10 in square, 10 in x 6 in, or 12 in bolt circle).`,
          at: piece.start,
          length: piece.text.length,
        };
      }
    }
    return found;
  },
};

/** `3 psf`, `asphalt shingles`, or `5/8 in plywood`: a weight, a material, or a thickness of a material. */
export const layerShortForm: ShortForm = {
  example: "5/8 in plywood, asphalt shingles or 3 psf",
  split: (text) => {
    const start = text.length - text.trimStart().length;
    const trimmed = text.trim();
    const thick = /^([\d\s./-]+(?:in|inch|mm|"|″)\.?)\s+(\S.*)$/iu.exec(trimmed);
    if (thick) return [part("thickness", { text: thick[1], start }), part("material", { text: thick[2], start: start + trimmed.length - thick[2].length })];
    return [part(/^[=\d.]/u.test(trimmed) ? "weight" : "material", { text: trimmed, start })];
  },
};

/** `1/4 in fillet all around, E70`: the leg, then the electrode where one is named. */
export const weldShortForm: ShortForm = {
  example: "1/4 in fillet all around",
  split: (text) => {
    const match = /^(\s*)(\S.*?)\s+fillet(?:\s+weld)?(?:,?\s+all\s+(?:a)?round)?\s*(?:,\s*(E\d+)\S*\s*)?$/iu.exec(text);
    if (!match) return { problem: "A fillet is written by its leg, like 1/4 in fillet all around.", ...whole(text) };
    const leg = part("fillet", { text: match[2], start: match[1].length });
    if (match[3] === undefined) return [leg];
    return [leg, part("electrode", { text: match[3].toUpperCase(), start: text.lastIndexOf(match[3]) })];
  },
};
