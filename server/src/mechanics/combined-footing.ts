/** A pad under several columns in one line as a beam: the pressure of the ground from below, columns and weight from above. */
import type { Routine } from "../formula/types.js";
import { type FootingPressure } from "./partial-contact.js";
import { pressureOver } from "./footing-section.js";

export interface ColumnOnPad {
  /** Place along the line from the middle of the pad, and half its width, m. */
  readonly at: number;
  readonly half: number;
  /** Load down, N; moment toward the high end of the line at the underside, N·m. */
  readonly P: number;
  readonly M: number;
}

export interface CombinedArgs {
  readonly pressure: Pick<FootingPressure, "contact" | "plane">;
  /** Sides of the pad along x and y, m. */
  readonly width: number;
  readonly length: number;
  /** Weight on the underside, Pa. */
  readonly down: number;
  readonly along: "x" | "y";
  readonly columns: readonly ColumnOnPad[];
  /** Shear is looked at from this distance from the faces on, m; beside a column that pulls, from its face on. */
  readonly d: number;
  /** Vertical force on the ground, N: what it is more than columns and weight lies evenly on the columns, as the pedestals do. */
  readonly N: number;
}

export interface CombinedForces {
  /** Largest moments with tension at the bottom and at the top, N·m, neither below zero. */
  readonly sagging: number;
  readonly hogging: number;
  /** Largest shear from there on, N. */
  readonly shear: number;
  /** Moment left over at the end, over the largest; equilibrium asks for none. */
  readonly residual: number;
}

/** Stretches between the sections looked at, over the whole pad. */
const stretches = 48;

export function solveCombined({ pressure, width, length, down, along, columns, d, N }: CombinedArgs): CombinedForces {
  const half = (along === "x" ? width : length) / 2;
  const side = along === "x" ? length : width;
  const extra = (N - down * width * length - columns.reduce((sum, { P }) => sum + P, 0)) / columns.length;
  const at = (s: number): readonly [shear: number, moment: number] => {
    const part = along === "x" ? { west: -half, east: s, south: -side / 2, north: side / 2 } : { west: -side / 2, east: side / 2, south: -half, north: s };
    const up = pressureOver(pressure, part);
    const reach = s + half;
    const weight = down * side * reach;
    let shear = up.force - weight;
    let moment = s * up.force - (along === "x" ? up.alongX : up.alongY) - (weight * reach) / 2;
    for (const column of columns) {
      if (column.at >= s) continue;
      shear -= column.P + extra;
      moment += column.M - (column.P + extra) * (s - column.at);
    }
    return [shear, moment];
  };
  const isUnder = (s: number, more: (column: ColumnOnPad) => number): boolean => columns.some((column) => Math.abs(s - column.at) < column.half + more(column) - 1e-9);
  // A column that pulls presses nothing together beside it: the shear there counts from its face on.
  const clear = ({ P }: ColumnOnPad): number => (P + extra < 0 ? 0 : d);
  const faces = (more: number): number[] => columns.flatMap((column) => [column.at - column.half - more, column.at + column.half + more]);
  const sections = [...Array.from({ length: stretches + 1 }, (_, i) => -half + (2 * half * i) / stretches), ...faces(0), ...faces(d)].filter((s) => s >= -half && s <= half);
  let sagging = 0;
  let hogging = 0;
  let shear = 0;
  for (const s of sections) {
    const [V, M] = at(s);
    if (!isUnder(s, () => 0)) {
      sagging = Math.max(sagging, M);
      hogging = Math.max(hogging, -M);
    }
    if (!isUnder(s, clear)) shear = Math.max(shear, Math.abs(V));
  }
  return { sagging, hogging, shear, residual: Math.abs(at(half)[1]) / Math.max(sagging, hogging, 1) };
}

/** {@link solveCombined} as a step of a calculation. */
export const combinedFooting: Routine<CombinedArgs, CombinedForces> = {
  id: "mechanics.combined-footing",
  title: "Moment and shear along a pad under several columns",
  method: "statics of the part of the pad on one side of each section, the contact pressure integrated exactly",
  source: "statics",
  run: solveCombined,
  show: ({ columns, d }, { sagging, hogging, shear }) => ({
    given: [
      ...columns.flatMap(({ at, P }, i) => [
        { symbol: `x_${i + 1}`, meaning: `place of column ${i + 1} along the pad`, kind: "distance" as const, value: at },
        { symbol: `P_${i + 1}`, meaning: `load of column ${i + 1}`, kind: "force" as const, value: P },
      ]),
      { symbol: "d", meaning: "distance of the sections in shear from the faces", kind: "length" as const, value: d },
    ],
    found: [
      { symbol: "M_b", meaning: "largest moment with tension at the bottom", kind: "moment", value: sagging },
      { symbol: "M_t", meaning: "largest moment with tension at the top", kind: "moment", value: hogging },
      { symbol: "V_u", meaning: "largest shear", kind: "force", value: shear },
    ],
  }),
};
