/**
 * What the soil beside a pier pushes back per length of pier, p, when the pier moves by y there: linear springs, and the curves of soft clay,
 * sand and weak rock. A curve is odd in y, never falls, and holds its ultimate value from some movement on.
 */

/** Spring stiffness per length, N/m², and what it grows by per depth below the surface that counts, N/m³. */
export interface SpringLaw {
  readonly type: "springs";
  readonly k: number;
  readonly growth: number;
}

/** Soft clay below the water, static load (Matlock). */
export interface ClayLaw {
  readonly type: "clay";
  /** Undrained shear strength, Pa. */
  readonly c: number;
  /** Strain at half the strength. */
  readonly eps50: number;
}

/** Sand, static or cyclic load (Reese, Cox and Koop in the form of API RP 2GEO). */
export interface SandLaw {
  readonly type: "sand";
  /** Friction angle, rad. */
  readonly phi: number;
  /** Growth of the initial modulus with depth, N/m³. */
  readonly k: number;
  readonly cyclic?: boolean;
}

/** Weak rock (Reese). */
export interface RockLaw {
  readonly type: "rock";
  /** Unconfined compressive strength of the rock, Pa. */
  readonly q: number;
  /** Rock quality designation, percent. */
  readonly rqd: number;
  /** Strain constant k_rm, 5e-5 to 5e-4. */
  readonly strain: number;
}

/** Nothing pushes back: loose backfill, the depth that is ignored. */
export interface NoLaw {
  readonly type: "none";
}

export type SoilLaw = SpringLaw | ClayLaw | SandLaw | RockLaw | NoLaw;

/** A curve at one depth. `shape` tells how p grows, `ultimate` is its end, N/m; `scale` is k, y50, k·z or y_rm as the shape asks. */
export interface SoilCurve {
  readonly shape: "line" | "cube root" | "tanh" | "fourth root" | "none";
  readonly ultimate: number;
  readonly scale: number;
}

const none: SoilCurve = { shape: "none", ultimate: 0, scale: 0 };

/** J of soft clay. */
const claySlope = 0.5;

/** Where on a root curve its steep start is replaced by a line, as a part of the scale: the modulus at rest would be endless. */
const startOfRoot = { "cube root": 1e-3, "fourth root": 1e-4 } as const;

/** Coefficients C1 to C3 of sand by its friction angle, rad; K0 = 0.4. API RP 2GEO and Reese, Cox and Koop 1974 (from memory). */
export function sandCoefficients(phi: number): { readonly C1: number; readonly C2: number; readonly C3: number } {
  const alpha = phi / 2;
  const beta = Math.PI / 4 + phi / 2;
  const K0 = 0.4;
  const Kp = Math.tan(beta) ** 2;
  const Ka = 1 / Kp;
  const C1 = Math.tan(beta) * (Kp * Math.tan(alpha) + K0 * (Math.tan(phi) * Math.sin(beta) * (1 / Math.cos(alpha) + 1) - Math.tan(alpha)));
  return { C1, C2: Kp - Ka, C3: Kp ** 2 * (Kp + K0 * Math.tan(phi)) - Ka };
}

/**
 * The curve of a soil at depth `z` below the surface that counts, m, on a pier of width `D`, m, under an effective overburden `sv`, Pa.
 * `into` is the depth below the top of its own layer, m, on which the wedge of rock depends. Soft clay: Matlock, OTC 1204 (1970); sand: Reese, Cox
 * and Koop (1974) and API RP 2GEO; weak rock: Reese (1997); all from memory.
 */
export function soilCurve(law: SoilLaw, z: number, into: number, D: number, sv: number): SoilCurve {
  switch (law.type) {
    case "none":
      return none;
    case "springs":
      return { shape: "line", ultimate: Number.POSITIVE_INFINITY, scale: law.k + law.growth * z };
    case "clay":
      return { shape: "cube root", ultimate: Math.min(3 + sv / law.c + (claySlope * z) / D, 9) * law.c * D, scale: 2.5 * law.eps50 * D };
    case "sand": {
      const { C1, C2, C3 } = sandCoefficients(law.phi);
      const A = law.cyclic ? 0.9 : Math.max(3 - (0.8 * z) / D, 0.9);
      return { shape: "tanh", ultimate: A * Math.min((C1 * z + C2 * D) * sv, C3 * D * sv), scale: law.k * z };
    }
    case "rock": {
      const alpha = 1 - ((2 / 3) * law.rqd) / 100;
      return { shape: "fourth root", ultimate: alpha * law.q * D * Math.min(1 + (1.4 * into) / D, 5.2), scale: law.strain * D };
    }
  }
}

/** Push back per length, N/m, at a movement `y`, m. */
export function reactionAt(curve: SoilCurve, y: number): number {
  const { shape, ultimate, scale } = curve;
  if (shape === "line") return scale * y;
  if (!(ultimate > 0)) return 0;
  if (shape === "tanh") return ultimate * Math.tanh((scale * y) / ultimate);
  const power = shape === "cube root" ? 1 / 3 : 0.25;
  const x = Math.abs(y) / scale;
  const start = startOfRoot[shape as keyof typeof startOfRoot];
  const part = x <= start ? 0.5 * start ** (power - 1) * x : Math.min(1, 0.5 * (shape === "cube root" ? Math.cbrt(x) : Math.sqrt(Math.sqrt(x))));
  return Math.sign(y) * ultimate * part;
}

/** How fast the push grows with the movement, N/m². */
export function stiffnessAt(curve: SoilCurve, y: number): number {
  const { shape, ultimate, scale } = curve;
  if (shape === "line") return scale;
  if (!(ultimate > 0)) return 0;
  if (shape === "tanh") return scale / Math.cosh(Math.min(300, Math.abs((scale * y) / ultimate))) ** 2;
  const power = shape === "cube root" ? 1 / 3 : 0.25;
  const x = Math.abs(y) / scale;
  const start = startOfRoot[shape as keyof typeof startOfRoot];
  if (x <= start) return (ultimate / scale) * 0.5 * start ** (power - 1);
  const root = 0.5 * x ** power;
  return root >= 1 ? 0 : ((ultimate / scale) * power * root) / x;
}
