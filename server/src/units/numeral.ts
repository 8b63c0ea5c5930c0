/** A number as a practitioner writes it: `5.5`, `.5`, `1e3`, `3/4`, `1-1/2`, `1 1/2`. */
export interface Numeral {
  readonly value: number;
  readonly text: string;
  readonly end: number;
  readonly form: "whole" | "decimal" | "fraction" | "mixed";
}

const mixed = /(\d+)(?:-| +)(\d+)\/(\d+)(?![\d.])/y;
const fraction = /(\d+)\/(\d+)(?![\d.])/y;
const decimal = /(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?/iy;

/** Reads the unsigned number at a position. Its value may be infinite (`1e999`, `1/0`): the caller refuses that. */
export function readNumeral(source: string, at: number): Numeral | undefined {
  const parts = (pattern: RegExp) => {
    pattern.lastIndex = at;
    return pattern.exec(source);
  };
  const make = (text: string, value: number, form: Numeral["form"]): Numeral => ({ value, text, end: at + text.length, form });

  const m = parts(mixed);
  if (m) return make(m[0], Number(m[1]) + Number(m[2]) / Number(m[3]), "mixed");
  const f = parts(fraction);
  if (f) return make(f[0], Number(f[1]) / Number(f[2]), "fraction");
  const d = parts(decimal);
  if (d) return make(d[0], Number(d[0]), /^\d+$/.test(d[0]) ? "whole" : "decimal");
  return undefined;
}
