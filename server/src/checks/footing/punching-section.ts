/**
 * Which section a column punches through: the least of those round it (ACI 318-19 22.6.4.1), closed on four sides, or open toward the edge or the corner
 * of the pad that it stands near.
 */
import { plainCalc } from "../../formula/calc.js";
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import type { Rectangle } from "../../mechanics/rectangles.js";

const along = { kind: "length", meaning: "critical section along x" } as const;
const acrossIt = { kind: "length", meaning: "critical section along y" } as const;
const perimeter = { kind: "length", meaning: "perimeter of the critical section" } as const;
const reach = { kind: "length", meaning: "from the far side of the section to the edge of the pad" } as const;
const b_2 = { kind: "length", meaning: "the other side" } as const;

export const criticalPerimeter = formula({
  id: "footing.critical-perimeter",
  text: "b_o = 2 * (b_x + b_y)",
  source: "ACI 318-19 22.6.4.1",
  symbols: { b_o: perimeter, b_x: along, b_y: acrossIt },
});

export const edgeReach = formula({
  id: "footing.edge-reach",
  text: "l_e = b / 2 - abs(e) + b_1 / 2",
  source: "geometry: the section goes on to the edge the column is nearer to",
  symbols: {
    l_e: reach,
    b: { kind: "length", meaning: "side of the pad", range: [2, 3] },
    e: { kind: "length", meaning: "column off the middle", field: "foundations.*.off middle.x", range: [-1, 1] },
    b_1: { kind: "length", meaning: "side of the critical section" },
  },
});

export const edgePerimeter = formula({ id: "footing.edge-perimeter", text: "b_o = 2 * l_e + b_2", source: "ACI 318-19 22.6.4.1: three sides", symbols: { b_o: perimeter, l_e: reach, b_2 } });

export const cornerPerimeter = formula({
  id: "footing.corner-perimeter",
  text: "b_o = l_x + l_y",
  source: "ACI 318-19 22.6.4.1: two sides",
  symbols: { b_o: perimeter, l_x: { ...reach, meaning: "from the far side of the section to the edge, along x" }, l_y: { ...reach, meaning: "from the far side of the section to the edge, along y" } },
});

export const sectionStart = formula({
  id: "footing.section-start",
  text: "x_1 = e - b_1 / 2",
  source: "geometry",
  symbols: { x_1: { kind: "length", meaning: "low side of the section, from the middle of the pad" }, e: { kind: "length", meaning: "column off the middle", field: "foundations.*.off middle.x", range: [-1, 1] }, b_1: { kind: "length", meaning: "side of the critical section" } },
});

export const sectionEnd = formula({
  id: "footing.section-end",
  text: "x_2 = e + b_1 / 2",
  source: "geometry",
  symbols: { x_2: { kind: "length", meaning: "high side of the section, from the middle of the pad" }, e: { kind: "length", meaning: "column off the middle", field: "foundations.*.off middle.x", range: [-1, 1] }, b_1: { kind: "length", meaning: "side of the critical section" } },
});

export const padEdge = formula({ id: "footing.pad-edge", text: "x_e = b / 2", source: "geometry", symbols: { x_e: { kind: "length", meaning: "edge of the pad from its middle" }, b: { kind: "length", meaning: "side of the pad" } } });
export const farEdge = formula({ id: "footing.far-edge", text: "x_w = -b / 2", source: "geometry", symbols: { x_w: { kind: "length", meaning: "west or south edge of the pad from its middle" }, b: { kind: "length", meaning: "side of the pad" } } });
export const middleOf = formula({
  id: "footing.section-middle",
  text: "x_m = (x_1 + x_2) / 2",
  source: "geometry",
  symbols: { x_m: { kind: "length", meaning: "middle of what is inside the section" }, x_1: { kind: "length", meaning: "its low side" }, x_2: { kind: "length", meaning: "its high side" } },
});

export const sideOf = formula({ id: "footing.section-side", text: "b_1 = x_2 - x_1", source: "geometry", symbols: { b_1: { kind: "length", meaning: "side of the section" }, x_1: { kind: "length", meaning: "its low side" }, x_2: { kind: "length", meaning: "its high side", range: [1.1, 2] } } });

export const sectionChoice = [criticalPerimeter, edgeReach, edgePerimeter, cornerPerimeter, padEdge, farEdge, sectionStart, sectionEnd, middleOf, sideOf] as const;

export interface PunchingSection {
  readonly b_o: number;
  /** 40, 30 or 20 by the sides it has. */
  readonly alpha_s: number;
  /** Open toward the edge the column is nearer to. */
  readonly openX: boolean;
  readonly openY: boolean;
  /** Side of the column's part of the pad, m, from the middle of the pad. */
  readonly inside: Rectangle;
}

interface Around {
  readonly width: number;
  readonly length: number;
  /** Place of the column from the middle of the pad, m. */
  readonly x: number;
  readonly y: number;
  /** Sides of the section at d/2 round the column. */
  readonly b_x: number;
  readonly b_y: number;
}

const noEdge = Number.POSITIVE_INFINITY;

/** Off the middle by less than this, m, is on it. */
const onMiddle = 1e-6;
const isOff = (e: number): boolean => e > onMiddle || e < -onMiddle;

/** The least section; one that leaves the pad is none. The section closed on four sides is smaller than the pad. */
export function leastSection({ width, length, x, y, b_x, b_y }: Around, calc: Calc): PunchingSection {
  // A column on the middle stands near no edge more than near another; one-way shear answers for a narrow pad.
  const l_x = isOff(x) ? calc(edgeReach, { b: width, e: x, b_1: b_x }) : noEdge;
  const l_y = isOff(y) ? calc(edgeReach, { b: length, e: y, b_1: b_y }) : noEdge;
  type Choice = readonly [b_o: (calc: Calc) => number, openX: boolean, openY: boolean];
  const choices: Choice[] = [];
  const isClosed = (l: number, b_1: number): boolean => l > b_1;
  const [closedX, closedY] = [isClosed(l_x, b_x), isClosed(l_y, b_y)];
  if (closedX && closedY) choices.push([(by) => by(criticalPerimeter, { b_x, b_y }), false, false]);
  if (closedY && l_x < noEdge) choices.push([(by) => by(edgePerimeter, { l_e: l_x, b_2: b_y }), true, false]);
  if (closedX && l_y < noEdge) choices.push([(by) => by(edgePerimeter, { l_e: l_y, b_2: b_x }), false, true]);
  if (l_x < noEdge && l_y < noEdge) choices.push([(by) => by(cornerPerimeter, { l_x, l_y }), true, true]);
  const [perimeterOf, openX, openY] = choices.reduce((least, one) => (one[0](plainCalc) < least[0](plainCalc) ? one : least));
  const b_o = perimeterOf(calc);
  const span = (e: number, b: number, b_1: number, isOpen: boolean): readonly [number, number] => [
    isOpen && e < 0 ? calc(farEdge, { b }) : calc(sectionStart, { e, b_1 }),
    isOpen && e > 0 ? calc(padEdge, { b }) : calc(sectionEnd, { e, b_1 }),
  ];
  const [west, east] = span(x, width, b_x, openX);
  const [south, north] = span(y, length, b_y, openY);
  return { b_o, alpha_s: openX && openY ? 20 : openX || openY ? 30 : 40, openX, openY, inside: { west, east, south, north } };
}
