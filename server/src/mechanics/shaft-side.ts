/**
 * Ultimate side resistance of a drilled shaft: in clay a part alpha of the undrained strength, in sand the part beta of the effective weight of what
 * lies above. Depths run down from grade.
 */
import { routine } from "../formula/calc.js";
import { kinds } from "../units/kinds.js";

export type SideLaw =
  /** Undrained shear strength, Pa. */
  | { readonly type: "clay"; readonly c: number }
  /** Blow count of the standard penetration test at 60 % energy. */
  | { readonly type: "sand"; readonly blows: number };

export interface SideLayer {
  /** Top of the layer below grade, m; the first one begins at 0. */
  readonly top: number;
  readonly law: SideLaw;
  /** Unit weight, N/m³; of no account where no sand lies below. */
  readonly weight: number;
}

export interface ShaftSideArgs {
  readonly layers: readonly SideLayer[];
  /** m */
  readonly perimeter: number;
  /** Stretch of the shaft with side resistance, m below grade. */
  readonly from: number;
  readonly to: number;
  /** Depth of the water below grade, m; left out, there is none. */
  readonly water?: number;
}

export interface ShaftSide {
  /** N */
  readonly force: number;
  /** Length of shaft that holds, m, and the mean resistance over it, Pa. */
  readonly length: number;
  readonly mean: number;
}

const foot = kinds.distance.US.factor;
/** N/m³: 62.4 pcf. */
const waterWeight = 62.4 * kinds.unitWeight.US.factor;
/** One atmosphere, Pa. */
const atmosphere = 101_325;
/** The top of clay, m, that dries and swells with the seasons holds nothing: 5 ft. */
const seasonal = 5 * foot;
/** Depths at which beta leaves its upper and comes to its lower bound, m. */
const betaBounds = [((1.5 - 1.2) / 0.135) ** 2 * foot, ((1.5 - 0.25) / 0.135) ** 2 * foot];

/** Part of the undrained strength that acts on the side of a shaft. Strength beyond two and a half atmospheres is rock and counts as that much. */
export const alphaOf = (c: number): number => 0.55 - 0.1 * Math.max(0, Math.min(c / atmosphere, 2.5) - 1.5);

/** Part of the effective weight of what lies above, at a depth, m; loose sand below 15 blows in proportion. */
export const betaOf = (depth: number, blows: number): number => Math.min(1.2, Math.max(0.25, 1.5 - 0.135 * Math.sqrt(depth / foot))) * Math.min(1, blows / 15);

const unitSide = ({ layers, water = Number.POSITIVE_INFINITY }: ShaftSideArgs, z: number): number => {
  let sv = 0;
  let law = layers[0].law;
  for (let i = 0; i < layers.length && layers[i].top <= z; i++) {
    law = layers[i].law;
    sv += layers[i].weight * (Math.min(z, layers[i + 1]?.top ?? z) - layers[i].top);
  }
  if (law.type === "clay") return z < seasonal ? 0 : alphaOf(law.c) * Math.min(law.c, 2.5 * atmosphere);
  return betaOf(z, law.blows) * Math.max(0, sv - waterWeight * Math.max(0, z - water));
};

/** Gauss points and weights on 0 to 1. */
const spots = [0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)];
const shares = [5 / 18, 8 / 18, 5 / 18];

/** Side resistance between two depths, integrated piece by piece between the depths where its law changes. */
export function solveShaftSide(args: ShaftSideArgs): ShaftSide {
  const { layers, perimeter, from, to, water = Number.POSITIVE_INFINITY } = args;
  if (layers.length === 0 || !(to > from)) return { force: 0, length: 0, mean: 0 };
  const cuts = [from, ...layers.map(({ top }) => top), water, seasonal, ...betaBounds, to].filter((z) => z >= from && z <= to).sort((a, b) => a - b);
  let area = 0;
  for (let i = 1; i < cuts.length; i++) {
    const h = cuts[i] - cuts[i - 1];
    for (let g = 0; g < spots.length; g++) area += shares[g] * h * unitSide(args, cuts[i - 1] + spots[g] * h);
  }
  return { force: area * perimeter, length: to - from, mean: area / (to - from) };
}

/** {@link solveShaftSide} as a step of a calculation. */
export const shaftSide = routine<ShaftSideArgs, ShaftSide>({
  id: "mechanics.shaft-side",
  title: "Ultimate side resistance of the shaft",
  method:
    "clay: alpha s_u with alpha 0.55 to 1.5 atmospheres, falling by 0.1 for one more, nothing in the top 5 ft; sand: beta times the effective weight above, beta = 1.5 - 0.135 sqrt(depth in ft) between 0.25 and 1.2, times N60/15 in loose sand; integrated along the shaft",
  source: "AASHTO LRFD 10.8.3.5 (alpha, from memory); O'Neill and Reese, Drilled Shafts, FHWA-IF-99-025 (beta, from memory)",
  run: solveShaftSide,
  show: ({ perimeter, from, to }, found) => ({
    given: [
      { symbol: "p_s", meaning: "perimeter of the shaft", kind: "distance", value: perimeter },
      { symbol: "z_1", meaning: "depth from which the side holds", kind: "distance", value: from },
      { symbol: "z_2", meaning: "depth to which the side holds", kind: "distance", value: to },
    ],
    found: [
      { symbol: "f_u", meaning: "mean ultimate side resistance", kind: "pressure", value: found.mean },
      { symbol: "R_u", meaning: "ultimate side resistance of the shaft", kind: "force", value: found.force },
    ],
  }),
});
