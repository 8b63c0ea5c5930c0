/**
 * Speed-up of the wind over a ridge, an escarpment or a hill. The factor is taken for every direction of the wind, although the wind
 * crosses the hill from one side only: the safe side. ASCE 7-22 Section 26.8; the same section in ASCE 7-10 and 7-16.
 */
import { formula } from "../../formula/declare.js";
import type { Calc } from "../../formula/types.js";
import { isAbove, isBelow } from "../../mechanics/compare.js";

export type HillShape = "ridge" | "escarpment" | "hill";
type Exposure = "B" | "C" | "D";

/** A hill and where the structure stands on it. Lengths m. */
export interface Hill {
  readonly shape: HillShape;
  /** Height above the ground upwind. */
  readonly height: number;
  /** From the crest upwind to half the height. */
  readonly halfLength: number;
  /** From the crest to the structure. */
  readonly distance: number;
  readonly side: "upwind" | "downwind";
}

const source = "ASCE 7-22 Figure 26.8-1 (from memory)";

const hillHeight = { kind: "distance", meaning: "height of the hill above the ground upwind", field: "site.hill.height" } as const;
const halfLength = { kind: "distance", meaning: "distance upwind of the crest to half the height", field: "site.hill.half length" } as const;

export const hillSteepness = formula({
  id: "wind.hill-steepness",
  text: "r_H = H / L_h",
  source: "ASCE 7-22 26.8.1 and Figure 26.8-1",
  symbols: { r_H: { kind: "ratio", meaning: "height over half length of the hill" }, H: hillHeight, L_h: halfLength },
});

export const shapeFactor = formula({
  id: "wind.hill-shape-factor",
  text: "K_1 = k_1 * min(r_H, 0.5)",
  source: "ASCE 7-22 Figure 26.8-1; that a ridge of 0.5 in exposure C gives 0.72 is confirmed, the others are from memory",
  symbols: {
    K_1: { kind: "ratio", meaning: "factor for the shape of the hill" },
    k_1: { kind: "ratio", meaning: "K_1 over H / L_h for the shape and the exposure", field: "site.hill.shape" },
    r_H: { kind: "ratio", meaning: "height over half length of the hill" },
  },
});

export const effectiveLength = formula({
  id: "wind.hill-effective-length",
  text: "L_e = max(L_h, 2 * H)",
  source: `${source}: from H / L_h = 0.5 on, 2H stands for L_h in K_2 and K_3`,
  symbols: { L_e: { kind: "distance", meaning: "half length used for distance and height" }, L_h: halfLength, H: hillHeight },
});

export const distanceFactor = formula({
  id: "wind.hill-distance-factor",
  text: "K_2 = max(0, 1 - x / (mu * L_e))",
  source,
  symbols: {
    K_2: { kind: "ratio", meaning: "factor for the distance from the crest" },
    x: { kind: "distance", meaning: "distance from the crest", field: "site.hill.distance" },
    mu: { kind: "ratio", meaning: "reach of the hill on this side", field: "site.hill.side" },
    L_e: { kind: "distance", meaning: "half length used for distance and height" },
  },
});

export const heightFactor = formula({
  id: "wind.hill-height-factor",
  text: "K_3 = exp(-gamma * z / L_e)",
  source,
  symbols: {
    K_3: { kind: "ratio", meaning: "factor for the height above the ground" },
    gamma: { kind: "ratio", meaning: "how fast the speed-up fades with height, by shape", field: "site.hill.shape" },
    z: { kind: "distance", meaning: "height above grade" },
    L_e: { kind: "distance", meaning: "half length used for distance and height" },
  },
});

export const topographicFactor = formula({
  id: "wind.topographic-factor",
  text: "K_zt = (1 + K_1 * K_2 * K_3)^2",
  source: "ASCE 7-22 Eq. 26.8-1",
  symbols: {
    K_zt: { kind: "ratio", meaning: "topographic factor" },
    K_1: { kind: "ratio", meaning: "factor for the shape of the hill" },
    K_2: { kind: "ratio", meaning: "factor for the distance from the crest" },
    K_3: { kind: "ratio", meaning: "factor for the height above the ground" },
  },
});

interface ShapeRow {
  readonly k_1: Readonly<Record<Exposure, number>>;
  readonly gamma: number;
  readonly mu: Readonly<Record<Hill["side"], number>>;
}

/** ASCE 7-22 Figure 26.8-1, parameters for speed-up (from memory). */
const shapes: Readonly<Record<HillShape, ShapeRow>> = {
  ridge: { k_1: { B: 1.3, C: 1.45, D: 1.55 }, gamma: 3, mu: { upwind: 1.5, downwind: 1.5 } },
  escarpment: { k_1: { B: 0.75, C: 0.85, D: 0.95 }, gamma: 2.5, mu: { upwind: 1.5, downwind: 4 } },
  hill: { k_1: { B: 0.95, C: 1.05, D: 1.15 }, gamma: 4, mu: { upwind: 1.5, downwind: 1.5 } },
};

/** Below these a hill does not count: ASCE 7-22 26.8.1, conditions 4 and 5 (from memory). */
const leastSteepness = 0.2;
/** 60 ft in exposure B, 15 ft in C and D, written in meters exactly. */
const leastHeight: Readonly<Record<Exposure, number>> = { B: 18.288, C: 4.572, D: 4.572 };

/** K_zt at a height above grade; 1 where the hill is too low or too gentle to count. */
export function topographicFactorAt(z: number, hill: Hill, exposure: Exposure, calc: Calc): number {
  const r_H = calc(hillSteepness, { H: hill.height, L_h: hill.halfLength });
  if (isBelow(r_H, leastSteepness)) {
    calc.note(`The ${hill.shape} rises less than ${leastSteepness} of its half length: it does not count, and K_zt is 1.0 (ASCE 7-22 26.8.1).`);
    return 1;
  }
  if (isBelow(hill.height, leastHeight[exposure])) {
    calc.note(`The ${hill.shape} is lower than ${exposure === "B" ? "60 ft, the least height that counts in exposure B" : "15 ft, the least height that counts in exposures C and D"}: K_zt is 1.0 (ASCE 7-22 26.8.1).`);
    return 1;
  }
  calc.note("The hill is taken as standing alone, higher than the ground around, and its factor for every direction of the wind: the safe side.");
  if (isAbove(r_H, 0.5)) calc.note("The hill is steeper than H / L_h = 0.5: 0.5 stands in K_1, and 2H for L_h in K_2 and K_3.");
  const { k_1, gamma, mu } = shapes[hill.shape];
  const L_e = calc(effectiveLength, { L_h: hill.halfLength, H: hill.height });
  return calc(topographicFactor, {
    K_1: calc(shapeFactor, { k_1: k_1[exposure], r_H }),
    K_2: calc(distanceFactor, { x: hill.distance, mu: mu[hill.side], L_e }),
    K_3: calc(heightFactor, { gamma, z, L_e }),
  });
}
