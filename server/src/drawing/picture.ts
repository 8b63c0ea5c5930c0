/** A drawing with what it shows in words, and how values are written on it. */
import type { KindName } from "../units/kinds.js";

export interface Picture {
  /** SVG in the color of the text around it. */
  readonly svg: string;
  readonly caption: string;
}

/** Writes a value in the units of the notebook. */
export type Show = (value: number, kind: KindName) => string;
