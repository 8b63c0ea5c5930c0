/**
 * A strip of a reinforced concrete wall under axial force and bending across its thickness, per length of wall: strain compatibility with the
 * rectangular stress block of ACI 318-19 22.2. Layers of bars may differ in area and in the stress they can take up where they are not developed.
 */
import { routine } from "../formula/calc.js";
import { type Reduction, pulledFactor, reductionAt } from "./column-strength.js";
import { blockRatio, crushingStrain } from "./column-section.js";

export interface WallLayer {
  /** From the fill face to the middle of the bars, m. */
  readonly from: number;
  /** Area per length of wall, m. */
  readonly area: number;
  /** Largest stress of the bars at the section, Pa: their yield strength, or less where they are not developed. */
  readonly stress: number;
}

export interface WallSection {
  readonly thickness: number;
  readonly layers: readonly WallLayer[];
  readonly fprime_c: number;
  /** Yield strength and modulus of the bars, Pa. */
  readonly f_y: number;
  readonly E_s: number;
}

/** The face that is pulled: against the fill, or the free one. */
export type PulledFace = "fill" | "free";

/** One point of the design curve, per length of wall: axial force N/m, compression positive; moment N·m/m, tension at the pulled face positive. */
export interface WallPoint {
  readonly P: number;
  readonly M: number;
  readonly phi: number;
  /** Depth of the neutral axis, m; 0 in pure tension. */
  readonly c: number;
}

/** ACI 318-19 Table 22.4.2.1: members without spirals. */
const chance = 0.8;

const depthFrom = (pulled: PulledFace, t: number, from: number): number => (pulled === "fill" ? t - from : from);

/** Nominal forces with the neutral axis `c` below the pressed face, and the strain of the layer that is pulled most. */
export function wallForcesAt({ thickness: t, layers, fprime_c, E_s }: WallSection, pulled: PulledFace, c: number): { readonly P: number; readonly M: number; readonly strain: number } {
  const a = Math.min(t, blockRatio(fprime_c) * c);
  const stress = 0.85 * fprime_c;
  let P = stress * a;
  let M = P * (t / 2 - a / 2);
  let strain = Number.NEGATIVE_INFINITY;
  for (const layer of layers) {
    const d = depthFrom(pulled, t, layer.from);
    const stretched = (crushingStrain * (d - c)) / c;
    strain = Math.max(strain, stretched);
    const inSteel = Math.max(-layer.stress, Math.min(layer.stress, E_s * stretched));
    const force = layer.area * (-inSteel - (d < a && inSteel < 0 ? Math.min(stress, -inSteel) : 0));
    P += force;
    M += force * (t / 2 - d);
  }
  return { P, M, strain };
}

/** Depths of the neutral axis over the thickness, close where the section is bent with little axial force. */
const shares = Array.from({ length: 121 }, (_, i) => 1e-3 * 1e4 ** (i / 120));

/** The design curve from pure tension to the largest compression; straight between its points. */
export function wallCurve(section: WallSection, reduction: Reduction, pulled: PulledFace): readonly WallPoint[] {
  const { thickness: t, layers, f_y, E_s, fprime_c } = section;
  let T = 0;
  let M_T = 0;
  let steel = 0;
  for (const layer of layers) {
    const force = layer.area * layer.stress;
    T += force;
    M_T -= force * (t / 2 - depthFrom(pulled, t, layer.from));
    steel += layer.area;
  }
  const most = reduction.pressed * chance * (0.85 * fprime_c * (t - steel) + T);
  const points: WallPoint[] = [{ P: -pulledFactor * T, M: pulledFactor * M_T, phi: pulledFactor, c: 0 }];
  for (const share of shares) {
    const c = share * t;
    const { P, M, strain } = wallForcesAt(section, pulled, c);
    const phi = layers.length > 0 ? reductionAt(strain, f_y / E_s, reduction) : reduction.pressed;
    const last = points[points.length - 1];
    const next: WallPoint = { P: phi * P, M: phi * M, phi, c };
    if (next.P >= most) {
      if (next.P > last.P) points.push(between(last, next, most));
      break;
    }
    if (next.P > last.P) points.push(next);
    // Where the factor falls faster than the force grows, the smaller moment stands for both.
    else if (next.M < last.M) points[points.length - 1] = { ...last, M: next.M };
  }
  return points;
}

function between(low: WallPoint, high: WallPoint, P: number): WallPoint {
  const part = (P - low.P) / (high.P - low.P);
  return { P, M: low.M + part * (high.M - low.M), phi: low.phi + part * (high.phi - low.phi), c: low.c + part * (high.c - low.c) };
}

/** Both curves of a section, and the largest pull and push it takes without bending, N/m. */
export interface WallStrength {
  readonly fill: readonly WallPoint[];
  readonly free: readonly WallPoint[];
  readonly pull: number;
  readonly push: number;
}

/** Point of the curve at the axial force; undefined beyond its ends. */
export function pointAt(curve: readonly WallPoint[], P: number): WallPoint | undefined {
  let [low, high] = [0, curve.length - 1];
  if (!(P >= curve[low].P && P <= curve[high].P)) return undefined;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (curve[middle].P <= P) low = middle;
    else high = middle;
  }
  return low === high || curve[high].P === curve[low].P ? curve[low] : between(curve[low], curve[high], P);
}

/** Least force of the curve from which the section is in balance without a moment, N/m. */
function firstWithout(curve: readonly WallPoint[]): number {
  if (curve[0].M >= 0) return curve[0].P;
  for (let i = 1; i < curve.length; i += 1) {
    const [a, b] = [curve[i - 1], curve[i]];
    if (b.M >= 0) return a.P + ((b.P - a.P) * -a.M) / (b.M - a.M);
  }
  return curve[curve.length - 1].P;
}

export function wallStrength(section: WallSection, reduction: Reduction): WallStrength {
  const fill = wallCurve(section, reduction, "fill");
  const free = wallCurve(section, reduction, "free");
  const least = Math.max(firstWithout(fill), firstWithout(free));
  return { fill, free, pull: Math.max(0, -least), push: Math.max(0, Math.min(fill[fill.length - 1].P, free[free.length - 1].P)) };
}

export interface WallBendingArgs {
  readonly section: WallSection;
  readonly strength: WallStrength;
  readonly pulled: PulledFace;
  /** N/m, compression positive. */
  readonly N: number;
}

export interface WallBending {
  /** Design moment, N·m/m; 0 where the axial force alone is too much. */
  readonly phiM_n: number;
  readonly point: WallPoint | undefined;
}

export function solveWallBending({ strength, pulled, N }: Pick<WallBendingArgs, "strength" | "pulled" | "N">): WallBending {
  const point = pointAt(strength[pulled], N);
  return { phiM_n: N < -strength.pull ? 0 : Math.max(0, point?.M ?? 0), point };
}

/** {@link solveWallBending} as a step of a calculation. */
export const wallBending = routine<WallBendingArgs, WallBending>({
  id: "mechanics.wall-bending",
  title: "Strength of the wall in bending at this axial force",
  method: "strain compatibility with the rectangular stress block, the design curve of moment and axial force by 121 depths of the neutral axis with straight pieces between; each layer of bars up to the stress it is developed for",
  source: "ACI 318-19 22.2, 22.4, Table 21.2.2",
  run: solveWallBending,
  show: ({ section, strength, N, pulled }, { phiM_n, point }) => ({
    given: [
      { symbol: "N_w", meaning: "axial force per length of wall, compression positive", kind: "lineLoad", value: N },
      { symbol: "t_w", meaning: "thickness of the wall", kind: "length", value: section.thickness },
      { symbol: "fprime_c", meaning: "concrete strength", kind: "stress", value: section.fprime_c },
      ...section.layers.flatMap(({ from, area, stress }, i) => [
        { symbol: `d_${i + 1}`, meaning: `layer ${i + 1} of bars, from the face that is pressed`, kind: "length" as const, value: depthFrom(pulled, section.thickness, from) },
        { symbol: `rho_${i + 1}`, meaning: `layer ${i + 1} of bars over the thickness of the wall`, kind: "ratio" as const, value: area / section.thickness },
        { symbol: `f_s${i + 1}`, meaning: `stress that layer ${i + 1} of bars can take up`, kind: "steelStress" as const, value: stress },
      ]),
    ],
    found: [
      ...(point ? [{ symbol: "c", meaning: "depth of the neutral axis", kind: "length" as const, value: point.c }, { symbol: "phi", meaning: "strength reduction factor", kind: "ratio" as const, value: point.phi }] : []),
      { symbol: "phiM_n", meaning: "design moment per length of wall", kind: "momentPerLength", value: phiM_n },
      N < 0
        ? { symbol: "phiT_n", meaning: "design pull per length without bending", kind: "lineLoad", value: strength.pull }
        : { symbol: "phiP_n", meaning: "largest design compression per length", kind: "lineLoad", value: strength.push },
    ],
  }),
});
