/** A rigid round footing or pier base on ground that takes no tension. */
import type { Routine, ShownValue } from "../formula/types.js";
import type { Unstable } from "./plate-contact.js";

export interface RoundFootingArgs {
  /** m */
  readonly diameter: number;
  /** Vertical load at the center, down positive, N. */
  readonly P: number;
  /** Resultant moment, N·m; its direction does not matter. */
  readonly M: number;
}

export interface RoundPressure {
  /** Pressure at the pressed edge and at the opposite edge (0 where lifted), Pa. */
  readonly qmax: number;
  readonly qmin: number;
  /** Part of the underside in contact. */
  readonly contactRatio: number;
  /** Extent of the contact along the eccentricity, m. */
  readonly contactDepth: number;
}

/** Force and first moment of the pressure x - cos(alpha) over the segment x > cos(alpha) of a unit circle. */
function segment(alpha: number): { readonly force: number; readonly moment: number; readonly area: number } {
  const edge = Math.cos(alpha);
  const area = alpha - Math.sin(2 * alpha) / 2;
  const first = (2 / 3) * Math.sin(alpha) ** 3;
  const second = alpha / 4 - Math.sin(4 * alpha) / 16;
  return { force: first - edge * area, moment: second - edge * first, area };
}

/**
 * Pressure under a round footing: P/A ± M/S within the kern of D/8, beyond it a segment in contact whose half angle is found by
 * bisection from the integrals of the segment.
 */
export function solveRoundContact({ diameter, P, M }: RoundFootingArgs): RoundPressure | Unstable {
  if (!(diameter > 0)) return { unstable: "the footing has no size" };
  if (!(P > 0)) return { unstable: "there is no net load down on the footing" };
  const radius = diameter / 2;
  const e = Math.abs(M) / P / radius;
  if (!(e < 0.9999)) return { unstable: "the load lies on or outside the edge of the footing: it tips over" };
  const mean = P / (Math.PI * radius ** 2);
  if (e <= 0.25) return { qmax: mean * (1 + 4 * e), qmin: mean * (1 - 4 * e), contactRatio: 1, contactDepth: diameter };
  let low = 0.01;
  let high = Math.PI;
  // The eccentricity falls as the segment grows, from the edge of the circle to the kern at full contact.
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    const { force, moment } = segment(middle);
    if (moment / force > e) low = middle;
    else high = middle;
  }
  const alpha = (low + high) / 2;
  const { force, area } = segment(alpha);
  return {
    qmax: (P * (1 - Math.cos(alpha))) / (force * radius ** 2),
    qmin: 0,
    contactRatio: area / Math.PI,
    contactDepth: radius * (1 - Math.cos(alpha)),
  };
}

/** {@link solveRoundContact} as a step of a calculation. */
export const roundContact: Routine<RoundFootingArgs, RoundPressure | Unstable> = {
  id: "mechanics.round-contact",
  title: "Pressure under a rigid round footing",
  method: "linear pressure without tension; closed form within the kern D/8, beyond it the integrals of a circular segment, solved by bisection",
  source: "linear contact pressure under a rigid footing; geometry of the circular segment",
  run: solveRoundContact,
  show: ({ diameter, P, M }, result) => {
    const given: ShownValue[] = [
      { symbol: "D", meaning: "diameter", kind: "distance", value: diameter },
      { symbol: "P", meaning: "vertical load", kind: "force", value: P },
      { symbol: "e", meaning: "eccentricity", kind: "length", value: Math.abs(M) / P },
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
