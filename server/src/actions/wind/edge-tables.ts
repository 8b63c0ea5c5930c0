/**
 * Net pressure coefficients of components and cladding of free roofs, as data. One published copy was read whole; every cell of it follows
 * one pattern (zone 2 is 1.5 times zone 1, zone 3 twice or, for uplift below 10 degrees, three times zone 1), by which its few misprints were
 * put right.
 */
import type { RoofShape } from "../roof-plane.js";
import type { Flow } from "./free-roof-tables.js";
import type { LoadStandard } from "./velocity-pressure.js";

/** Zone 3, zone 2, zone 1, each toward the roof and then away from it. */
export type Cells = readonly [down3: number, up3: number, down2: number, up2: number, down1: number, up1: number];

/** Rows by effective wind area: up to a², up to 4a², and more. */
export interface EdgeRow extends Readonly<Record<Flow, readonly [small: Cells, middle: Cells, large: Cells]>> {
  /** Roof angle, degrees. */
  readonly angle: number;
}

const level: EdgeRow = {
  angle: 0,
  clear: [[2.4, -3.3, 1.8, -1.7, 1.2, -1.1], [1.8, -1.7, 1.8, -1.7, 1.2, -1.1], [1.2, -1.1, 1.2, -1.1, 1.2, -1.1]],
  obstructed: [[1.0, -3.6, 0.8, -1.8, 0.5, -1.2], [0.8, -1.8, 0.8, -1.8, 0.5, -1.2], [0.5, -1.2, 0.5, -1.2, 0.5, -1.2]],
};

const monoslope: readonly EdgeRow[] = [
  level,
  {
    angle: 7.5,
    clear: [[3.2, -4.2, 2.4, -2.1, 1.6, -1.4], [2.4, -2.1, 2.4, -2.1, 1.6, -1.4], [1.6, -1.4, 1.6, -1.4, 1.6, -1.4]],
    obstructed: [[1.6, -5.1, 1.2, -2.6, 0.8, -1.7], [1.2, -2.6, 1.2, -2.6, 0.8, -1.7], [0.8, -1.7, 0.8, -1.7, 0.8, -1.7]],
  },
  {
    angle: 15,
    clear: [[3.6, -3.8, 2.7, -2.9, 1.8, -1.9], [2.7, -2.9, 2.7, -2.9, 1.8, -1.9], [1.8, -1.9, 1.8, -1.9, 1.8, -1.9]],
    obstructed: [[2.4, -4.2, 1.8, -3.2, 1.2, -2.1], [1.8, -3.2, 1.8, -3.2, 1.2, -2.1], [1.2, -2.1, 1.2, -2.1, 1.2, -2.1]],
  },
  {
    angle: 30,
    clear: [[5.2, -5.0, 3.9, -3.8, 2.6, -2.5], [3.9, -3.8, 3.9, -3.8, 2.6, -2.5], [2.6, -2.5, 2.6, -2.5, 2.6, -2.5]],
    obstructed: [[3.2, -4.6, 2.4, -3.5, 1.6, -2.3], [2.4, -3.5, 2.4, -3.5, 1.6, -2.3], [1.6, -2.3, 1.6, -2.3, 1.6, -2.3]],
  },
  {
    angle: 45,
    clear: [[5.2, -4.6, 3.9, -3.5, 2.6, -2.3], [3.9, -3.5, 3.9, -3.5, 2.6, -2.3], [2.6, -2.3, 2.6, -2.3, 2.6, -2.3]],
    obstructed: [[4.2, -3.8, 3.2, -2.9, 2.1, -1.9], [3.2, -2.9, 3.2, -2.9, 2.1, -1.9], [2.1, -1.9, 2.1, -1.9, 2.1, -1.9]],
  },
];

const pitched: readonly EdgeRow[] = [
  level,
  {
    angle: 7.5,
    clear: [[2.2, -3.6, 1.7, -1.8, 1.1, -1.2], [1.7, -1.8, 1.7, -1.8, 1.1, -1.2], [1.1, -1.2, 1.1, -1.2, 1.1, -1.2]],
    obstructed: [[1.0, -5.1, 0.8, -2.6, 0.5, -1.7], [0.8, -2.6, 0.8, -2.6, 0.5, -1.7], [0.5, -1.7, 0.5, -1.7, 0.5, -1.7]],
  },
  {
    angle: 15,
    clear: [[2.2, -2.2, 1.7, -1.7, 1.1, -1.1], [1.7, -1.7, 1.7, -1.7, 1.1, -1.1], [1.1, -1.1, 1.1, -1.1, 1.1, -1.1]],
    obstructed: [[1.0, -3.2, 0.8, -2.4, 0.5, -1.6], [0.8, -2.4, 0.8, -2.4, 0.5, -1.6], [0.5, -1.6, 0.5, -1.6, 0.5, -1.6]],
  },
  {
    angle: 30,
    clear: [[2.6, -1.8, 2.0, -1.4, 1.3, -0.9], [2.0, -1.4, 2.0, -1.4, 1.3, -0.9], [1.3, -0.9, 1.3, -0.9, 1.3, -0.9]],
    obstructed: [[1.0, -2.4, 0.8, -1.8, 0.5, -1.2], [0.8, -1.8, 0.8, -1.8, 0.5, -1.2], [0.5, -1.2, 0.5, -1.2, 0.5, -1.2]],
  },
  {
    angle: 45,
    clear: [[2.2, -1.6, 1.7, -1.2, 1.1, -0.8], [1.7, -1.2, 1.7, -1.2, 1.1, -0.8], [1.1, -0.8, 1.1, -0.8, 1.1, -0.8]],
    obstructed: [[1.0, -2.4, 0.8, -1.8, 0.5, -1.2], [0.8, -1.8, 0.8, -1.8, 0.5, -1.2], [0.5, -1.2, 0.5, -1.2, 0.5, -1.2]],
  },
];

const troughed: readonly EdgeRow[] = [
  level,
  {
    angle: 7.5,
    clear: [[2.4, -3.3, 1.8, -1.7, 1.2, -1.1], [1.8, -1.7, 1.8, -1.7, 1.2, -1.1], [1.2, -1.1, 1.2, -1.1, 1.2, -1.1]],
    obstructed: [[1.0, -4.8, 0.8, -2.4, 0.5, -1.6], [0.8, -2.4, 0.8, -2.4, 0.5, -1.6], [0.5, -1.6, 0.5, -1.6, 0.5, -1.6]],
  },
  {
    angle: 15,
    clear: [[2.2, -2.2, 1.7, -1.7, 1.1, -1.1], [1.7, -1.7, 1.7, -1.7, 1.1, -1.1], [1.1, -1.1, 1.1, -1.1, 1.1, -1.1]],
    obstructed: [[1.0, -2.4, 0.8, -1.8, 0.5, -1.2], [0.8, -1.8, 0.8, -1.8, 0.5, -1.2], [0.5, -1.2, 0.5, -1.2, 0.5, -1.2]],
  },
  {
    angle: 30,
    clear: [[1.8, -2.6, 1.4, -2.0, 0.9, -1.3], [1.4, -2.0, 1.4, -2.0, 0.9, -1.3], [0.9, -1.3, 0.9, -1.3, 0.9, -1.3]],
    obstructed: [[1.0, -2.8, 0.8, -2.1, 0.5, -1.4], [0.8, -2.1, 0.8, -2.1, 0.5, -1.4], [0.5, -1.4, 0.5, -1.4, 0.5, -1.4]],
  },
  {
    angle: 45,
    clear: [[1.6, -2.2, 1.2, -1.7, 0.8, -1.1], [1.2, -1.7, 1.2, -1.7, 0.8, -1.1], [0.8, -1.1, 0.8, -1.1, 0.8, -1.1]],
    obstructed: [[1.0, -2.4, 0.8, -1.8, 0.5, -1.2], [0.8, -1.8, 0.8, -1.8, 0.5, -1.2], [0.5, -1.2, 0.5, -1.2, 0.5, -1.2]],
  },
];

const readAgainst = "read in BNBC 2020 (Figures 6.2.19), which follows ASCE 7-05 Figure 6-19, misprints put right by the pattern of the table";

export interface EdgeTable {
  readonly figure: string;
  readonly source: string;
  readonly rows: readonly EdgeRow[];
}

/** Section of the figures of each edition. */
const sections: Readonly<Record<LoadStandard, string>> = { "ASCE 7-10": "30.8", "ASCE 7-16": "30.7", "ASCE 7-22": "30.5" };

const shapes: Readonly<Record<RoofShape, { readonly number: number; readonly rows: readonly EdgeRow[] }>> = {
  monoslope: { number: 1, rows: monoslope },
  pitched: { number: 2, rows: pitched },
  troughed: { number: 3, rows: troughed },
};

/** The table of a shape, under the number its figure has in the edition. */
export function edgeTable(standard: LoadStandard, shape: RoofShape): EdgeTable {
  const { number, rows } = shapes[shape];
  const figure = `${standard} Figure ${sections[standard]}-${number}`;
  return { figure, source: `${figure}, ${readAgainst}`, rows };
}
