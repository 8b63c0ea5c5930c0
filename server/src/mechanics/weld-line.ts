/**
 * A weld all around a column, treated as a line: its length, and its section moduli per unit of throat about both plan axes. A tube is
 * welded along its outside with rounded corners, a W along both sides of its flanges and of its web.
 */
import { routine } from "../formula/calc.js";

export interface WeldLineArgs {
  readonly shape: "square" | "rectangle" | "round" | "W";
  /** Sizes across the strong and across the weak axis, m. */
  readonly depth: number;
  readonly width: number;
  /** Wall or web, and flange, m. */
  readonly wall: number;
  readonly flange: number;
  readonly deep: "along x" | "along y";
}

export interface WeldLine {
  /** m */
  readonly length: number;
  /** About the east and the north axis, m². */
  readonly aboutX: number;
  readonly aboutY: number;
  /** Area a closed line encloses, m²; 0 of an open section. */
  readonly enclosed: number;
}

/** Modulus of a rounded rectangle of line about the axis across which it is `across`. */
function roundedModulus(across: number, along: number, r: number): number {
  const center = across / 2 - r;
  const arcs = 4 * r * ((center ** 2 * Math.PI) / 2 + 2 * center * r + (r ** 2 * Math.PI) / 4);
  const inertia = 2 * (along - 2 * r) * (across / 2) ** 2 + (across - 2 * r) ** 3 / 6 + arcs;
  return inertia / (across / 2);
}

export function weldLineOf({ shape, depth, width, wall, flange, deep }: WeldLineArgs): WeldLine {
  let strong: number;
  let weak: number;
  let length: number;
  let enclosed: number;
  if (shape === "round") {
    length = Math.PI * depth;
    strong = weak = enclosed = (Math.PI / 4) * depth ** 2;
  } else if (shape === "W") {
    const clear = depth - 2 * flange;
    length = 4 * width - 2 * wall + 2 * clear;
    strong = (2 * width * (depth / 2) ** 2 + 2 * (width - wall) * (clear / 2) ** 2 + clear ** 3 / 6) / (depth / 2);
    weak = ((2 * width ** 3 - wall ** 3) / 6 + 2 * clear * (wall / 2) ** 2) / (width / 2);
    enclosed = 0;
  } else {
    const r = 2 * wall;
    length = 2 * (depth + width) - (8 - 2 * Math.PI) * r;
    strong = roundedModulus(depth, width, r);
    weak = roundedModulus(width, depth, r);
    enclosed = depth * width - (4 - Math.PI) * r ** 2;
  }
  return deep === "along x" ? { length, aboutX: weak, aboutY: strong, enclosed } : { length, aboutX: strong, aboutY: weak, enclosed };
}

/** {@link weldLineOf} as a step of a calculation. */
export const weldLine = routine<WeldLineArgs, WeldLine>({
  id: "mechanics.weld-line",
  title: "Weld all around as a line",
  method: "length and section moduli of the outline, taken as a line without thickness",
  source: "elastic line method; AISC Steel Construction Manual, Part 8 (from memory)",
  run: weldLineOf,
  show: ({ depth, width }, { length, aboutX, aboutY }) => ({
    given: [
      { symbol: "H", meaning: "size of the section across its strong axis", kind: "length", value: depth },
      { symbol: "B", meaning: "size across its weak axis", kind: "length", value: width },
    ],
    found: [
      { symbol: "L_w", meaning: "length of the weld", kind: "length", value: length },
      { symbol: "S_wx", meaning: "modulus of the line about the east axis", kind: "area", value: aboutX },
      { symbol: "S_wy", meaning: "modulus of the line about the north axis", kind: "area", value: aboutY },
    ],
  }),
});
