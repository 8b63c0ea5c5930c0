/** A rigid footing on ground that takes no tension: linear pressure under a vertical load and moments. */
import type { Routine, ShownValue } from "../formula/types.js";
import { solveContact } from "./contact-solver.js";
import type { Unstable } from "./plate-contact.js";
import type { Point } from "./rectangles.js";

export interface FootingArgs {
  /** Side along x (east), m. */
  readonly width: number;
  /** Side along y (north), m. */
  readonly length: number;
  /** Vertical load at the center of the underside, down positive, N. */
  readonly P: number;
  /** Moments on the footing at its underside, right-handed, N·m: a push to the east gives +My, to the north -Mx. */
  readonly Mx: number;
  readonly My: number;
}

export interface FootingPressure {
  /** Largest pressure, Pa. */
  readonly qmax: number;
  /** Part of the underside in contact. */
  readonly contactRatio: number;
  /** Pressure at each corner, Pa; 0 where lifted. */
  readonly corners: { readonly southwest: number; readonly southeast: number; readonly northeast: number; readonly northwest: number };
  /** Region in contact, anticlockwise, m from the center. */
  readonly contact: readonly Point[];
  /** Pressure q = atCenter + alongX x + alongY y where that is positive; Pa and Pa/m. */
  readonly plane: { readonly atCenter: number; readonly alongX: number; readonly alongY: number };
}

const noLoad: Unstable = { unstable: "there is no net load down on the footing" };
const outside: Unstable = { unstable: "the load lies on or outside the edge of the footing: it tips over" };

/** Pressure under a rectangular footing, from full contact to a corner triangle. */
export function solveFootingContact({ width, length, P, Mx, My }: FootingArgs): FootingPressure | Unstable {
  if (!(width > 0 && length > 0)) return { unstable: "the footing has no size" };
  if (!(P > 0)) return noLoad;
  if (!(2 * Math.abs(My) < width * P && 2 * Math.abs(Mx) < length * P)) return outside;
  const found = solveContact(width, length, [], P, My, -Mx);
  if (!found) return { unstable: "the load lies so near the edge of the footing that no pressure can balance it" };
  const { a, b, c } = found;
  const at = (x: number, y: number): number => Math.max(0, a + (b * x * width) / 2 + (c * y * length) / 2);
  const corners = { southwest: at(-1, -1), southeast: at(1, -1), northeast: at(1, 1), northwest: at(-1, 1) };
  return {
    qmax: Math.max(corners.southwest, corners.southeast, corners.northeast, corners.northwest),
    contactRatio: found.area / (width * length),
    corners,
    contact: found.region.map(({ x, y }) => ({ x, y })),
    plane: { atCenter: a, alongX: b, alongY: c },
  };
}

/** {@link solveFootingContact} as a step of a calculation. */
export const footingContact: Routine<FootingArgs, FootingPressure | Unstable> = {
  id: "mechanics.footing-contact",
  title: "Pressure under a rigid rectangular footing",
  method: "linear pressure without tension; the region in contact is cut exactly and its plane found by Newton's method",
  source: "linear contact pressure under a rigid footing; one-way form qmax = 2P/(3L(B/2 - e)) of foundation textbooks",
  run: solveFootingContact,
  show: ({ width, length, P, Mx, My }, result) => {
    const given: ShownValue[] = [
      { symbol: "B", meaning: "footing, east to west", kind: "distance", value: width },
      { symbol: "L", meaning: "footing, north to south", kind: "distance", value: length },
      { symbol: "P", meaning: "vertical load", kind: "force", value: P },
      { symbol: "e_x", meaning: "eccentricity to the east", kind: "length", value: My / P },
      { symbol: "e_y", meaning: "eccentricity to the north", kind: "length", value: -Mx / P },
    ];
    if ("unstable" in result) return { given, found: [] };
    return {
      given,
      found: [
        { symbol: "q_max", meaning: "largest pressure", kind: "pressure", value: result.qmax },
        { symbol: "A_c/A", meaning: "part of the underside in contact", kind: "ratio", value: result.contactRatio },
      ],
    };
  },
};
