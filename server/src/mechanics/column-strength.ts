/** Design strength of a concrete section in bending at a given axial force, and its interaction curve: ACI 318-19 21.2.2 and 22.4. */
import { routine } from "../formula/calc.js";
import { type ColumnSection, crushingStrain, pullForce, reachOf, type Resultants, resultantsAt, squashForce } from "./column-section.js";

/** How the strength reduction factor goes with the strain of the bar that is pulled most. */
export interface Reduction {
  /** Up to the yield strain: 0.65 with ties, 0.75 with a spiral. */
  readonly pressed: number;
  /** Strain beyond the yield strain, or in all, from which the section is tension-controlled. */
  readonly pulledFrom: number;
}

/** Strength reduction factor of tension-controlled sections. */
export const pulledFactor = 0.9;

/** ACI 318-19 Table 21.2.2, which runs straight between the limits. */
export function reductionAt(strain: number, yieldStrain: number, { pressed, pulledFrom }: Reduction): number {
  const part = Math.min(1, Math.max(0, (strain - yieldStrain) / (pulledFrom - yieldStrain)));
  return pressed + (pulledFactor - pressed) * part;
}

/** A section with its reduction factors and the directions it may be bent in. */
export interface ColumnStrength {
  readonly section: ColumnSection;
  readonly reduction: Reduction;
}

/** One point of the interaction curve: nominal forces, factor, depth of the neutral axis. */
export interface CurvePoint {
  /** N, compression positive; N·m. */
  readonly P_n: number;
  readonly M_n: number;
  readonly phi: number;
  /** m; infinite in pure compression, 0 in pure tension. */
  readonly c: number;
  readonly strain: number;
}

const momentOf = ({ towardX, towardY }: Resultants): number => Math.hypot(towardX, towardY);

const yieldStrain = ({ f_y, E_s }: ColumnSection): number => f_y / E_s;

function pointAt({ section, reduction }: ColumnStrength, angle: number, c: number): CurvePoint & { readonly at: Resultants } {
  const at = resultantsAt(section, angle, c);
  return { P_n: at.P, M_n: momentOf(at), phi: reductionAt(at.strain, yieldStrain(section), reduction), c, strain: at.strain, at };
}

/** Depths of the neutral axis over the depth of the section: close where the curve bends most. */
const steps = [0.02, 0.04, 0.06, 0.08, 0.1, 0.125, 0.15, 0.175, 0.2, 0.225, 0.25, 0.275, 0.3, 0.325, 0.35, 0.375, 0.4, 0.425, 0.45, 0.475, 0.5, 0.525, 0.55, 0.575, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95, 1, 1.1, 1.2, 1.35, 1.5, 2, 3, 10];

/**
 * The interaction curve for bending in the direction `angle`, from pure tension to pure compression. The limit of compression for chance
 * eccentricity is not in it.
 */
export function interactionCurve(strength: ColumnStrength, angle: number): readonly CurvePoint[] {
  const { section, reduction } = strength;
  const depth = 2 * reachOf(section, Math.cos(angle), Math.sin(angle));
  const pulled: CurvePoint = { P_n: -pullForce(section), M_n: 0, phi: pulledFactor, c: 0, strain: Number.POSITIVE_INFINITY };
  const pressed: CurvePoint = { P_n: squashForce(section), M_n: 0, phi: reduction.pressed, c: Number.POSITIVE_INFINITY, strain: -crushingStrain };
  return [pulled, ...steps.map((part) => pointAt(strength, angle, part * depth)), pressed];
}

/** A section bent about one axis at the axial force asked for: design moments toward x and y, N·m. */
interface Bent {
  readonly x: number;
  readonly y: number;
  readonly point: CurvePoint;
}

const none = (point: CurvePoint): Bent => ({ x: 0, y: 0, point });

/** The point of the curve at which the design axial force is `P`; no moment beyond pure tension and pure compression. */
function bentAt(strength: ColumnStrength, angle: number, P: number): Bent {
  const { section, reduction } = strength;
  const most = reduction.pressed * squashForce(section);
  const least = -pulledFactor * pullForce(section);
  const ends = (c: number, P_n: number): CurvePoint => ({ P_n, M_n: 0, phi: P > 0 ? reduction.pressed : pulledFactor, c, strain: c > 0 ? -crushingStrain : Number.POSITIVE_INFINITY });
  if (!(P < most)) return none(ends(Number.POSITIVE_INFINITY, squashForce(section)));
  if (!(P > least)) return none(ends(0, -pullForce(section)));
  const depth = 2 * reachOf(section, Math.cos(angle), Math.sin(angle));
  // In the depth as a share of itself and the section the curve is even, from nothing to without end.
  let [low, high] = [1e-4, 1 - 1e-6];
  let found = pointAt(strength, angle, (depth * low) / (1 - low));
  let [atLow, atHigh] = [found.phi * found.P_n - P, most - P];
  if (atLow >= 0) return none(ends(0, -pullForce(section)));
  let side = 0;
  for (let i = 0; i < 60; i += 1) {
    // False position that halves the end which stays, so that both ends close in.
    let at = (low * atHigh - high * atLow) / (atHigh - atLow);
    if (i % 8 === 7 || !(at > low && at < high)) at = (low + high) / 2;
    found = pointAt(strength, angle, (depth * at) / (1 - at));
    const over = found.phi * found.P_n - P;
    if (Math.abs(over) <= 1e-9 * most || high - low < 1e-13) break;
    if (over > 0) {
      [high, atHigh] = [at, over];
      if (side === 1) atLow /= 2;
      side = 1;
    } else {
      [low, atLow] = [at, over];
      if (side === -1) atHigh /= 2;
      side = -1;
    }
  }
  return { x: found.phi * found.at.towardX, y: found.phi * found.at.towardY, point: found };
}

/** Directions from x to y, in steps of 7.5 degrees, in which a rectangle is bent. */
const quarter = Array.from({ length: 13 }, (_, i) => (i * Math.PI) / 24);

/** Both orientations of a ring of bars: one bar at the pulled edge, or two beside it. */
const orientations = (count: number): readonly number[] => [0, Math.PI / count];

export interface BendingArgs extends ColumnStrength {
  /** N, compression positive. */
  readonly P: number;
  /** Moment toward x and toward y, N·m; left out where its direction is not known: then the weakest counts. */
  readonly toward?: { readonly x: number; readonly y: number };
}

export interface BendingStrength {
  /** Design moment, N·m. */
  readonly phiM_n: number;
  /** Point of the nominal curve it is found at, or the nearer of two. */
  readonly point: CurvePoint;
}

/** From the middle to the nearest point of a straight piece of the contour. */
function nearestOf(a: Bent, b: Bent): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const size = dx * dx + dy * dy;
  const t = size > 0 ? Math.min(1, Math.max(0, -(a.x * dx + a.y * dy) / size)) : 0;
  return Math.hypot(a.x + t * dx, a.y + t * dy);
}

/** Where a ray in the direction meets the contour, whose points turn from x to y: the piece is found by halving. */
function along(at: (i: number) => Bent, toward: { readonly x: number; readonly y: number }): BendingStrength {
  const side = ({ x, y }: Bent): number => toward.x * y - toward.y * x;
  let [low, high] = [0, quarter.length - 1];
  let [a, b] = [at(low), at(high)];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    const found = at(middle);
    if (side(found) <= 0) [low, a] = [middle, found];
    else [high, b] = [middle, found];
  }
  const [before, after] = [side(a), side(b)];
  // The ends of the contour lie on the axes but for rounding.
  const t = after > before ? Math.min(1, Math.max(0, -before / (after - before))) : 0;
  return { phiM_n: Math.hypot(a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)), point: t < 0.5 ? a.point : b.point };
}

/**
 * Design moment at an axial force. A round section in the worse of the two orientations of its bars; a rectangle along its contour of both
 * moments, which is convex, so that straight pieces between its points are on the safe side.
 */
export function solveBending({ section, reduction, P, toward }: BendingArgs): BendingStrength {
  const strength = { section, reduction };
  if (section.shape === "round") {
    const [a, b] = orientations(section.bars.length).map((angle) => bentAt(strength, angle, P));
    const [of, with_] = [Math.hypot(a.x, a.y), Math.hypot(b.x, b.y)];
    return of <= with_ ? { phiM_n: of, point: a.point } : { phiM_n: with_, point: b.point };
  }
  const at = (i: number): Bent => bentAt(strength, quarter[i], P);
  if (toward && (toward.x !== 0 || toward.y !== 0)) return along(at, unit(Math.abs(toward.x), Math.abs(toward.y)));
  const contour = quarter.map((_, i) => at(i));
  let phiM_n = Number.POSITIVE_INFINITY;
  let point = contour[0].point;
  for (let i = 0; i + 1 < contour.length; i += 1) {
    const found = nearestOf(contour[i], contour[i + 1]);
    if (found >= phiM_n) continue;
    phiM_n = found;
    point = contour[i].point;
  }
  return { phiM_n: Number.isFinite(phiM_n) ? phiM_n : 0, point };
}

const unit = (x: number, y: number): { readonly x: number; readonly y: number } => {
  const size = Math.hypot(x, y);
  return { x: x / size, y: y / size };
};

/** {@link solveBending} as a step of a calculation. */
export const bendingStrength = routine<BendingArgs, BendingStrength>({
  id: "mechanics.bending-strength",
  title: "Strength of the section in bending at this axial force",
  method: "strain compatibility with the rectangular stress block in closed form, the neutral axis moved until the design axial force is met; the worse orientation of a ring of bars, the contour of both moments of a rectangle",
  source: "ACI 318-19 22.2, 22.4, Table 21.2.2",
  run: solveBending,
  show: ({ section, P }, { phiM_n, point }) => ({
    given: [
      { symbol: "P_u", meaning: "axial force, compression positive", kind: "force", value: P },
      { symbol: "fprime_c", meaning: "concrete strength", kind: "stress", value: section.fprime_c },
      { symbol: "f_y", meaning: "yield strength of the bars", kind: "steelStress", value: section.f_y },
      { symbol: "A_st", meaning: "area of the bars", kind: "area", value: section.bars.length * section.barArea },
      { symbol: "k_A", meaning: "share of the concrete that is counted", kind: "ratio", value: section.share },
    ],
    found: [
      ...(Number.isFinite(point.c) ? [{ symbol: "c", meaning: "depth of the neutral axis", kind: "length" as const, value: point.c }] : []),
      ...(Number.isFinite(point.strain) ? [{ symbol: "epsilon_t", meaning: "strain of the bar pulled most", kind: "number" as const, value: point.strain }] : []),
      { symbol: "phi", meaning: "strength reduction factor", kind: "ratio", value: point.phi },
      { symbol: "P_n", meaning: "nominal axial force there", kind: "force", value: point.P_n },
      { symbol: "M_n", meaning: "nominal moment there", kind: "moment", value: point.M_n },
      { symbol: "phiM_n", meaning: "design moment", kind: "moment", value: phiM_n },
    ],
  }),
});

/** Axial force, N, at which the design moment is largest in the weakest direction: below it, compression helps. */
export function bestAxial(strength: ColumnStrength): number {
  const { section } = strength;
  const angles = section.shape === "round" ? orientations(section.bars.length) : [0, Math.PI / 4, Math.PI / 2];
  // The least of the directions, each at the force of its own largest moment: up to there compression helps in all of them.
  return Math.min(...angles.map((angle) => {
    const points = interactionCurve(strength, angle);
    const best = points.reduce((most, point) => (point.phi * point.M_n > most.phi * most.M_n ? point : most));
    return best.phi * best.P_n;
  }));
}
