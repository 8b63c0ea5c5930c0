/**
 * What holds a column against sway in one plane, and how stiff it is at the roof: ends that hold a moment or do not, a base that gives like a
 * spring, a knee brace below the top. Displacement method; first order, no shear deformation.
 */

/** A brace from the column up to the roof. By hand it does not stretch: its foot then moves as a point of the roof. */
export interface KneeBrace {
  /** Height of its foot above the column base, m. */
  readonly foot: number;
  /** Level distance from the column to where it meets the roof framing, which is taken as high as the column top, m. */
  readonly run: number;
  /** Modulus of elasticity, Pa, and area of one brace, m². */
  readonly E: number;
  readonly area: number;
  /** Braces to both sides of the column, or one toward the positive (1) or the negative (-1) axis. */
  readonly sides: "both" | 1 | -1;
}

export interface EndsHeld {
  readonly base: boolean;
  readonly top: boolean;
  /** Moment at a base that holds one, per turning, N·m/rad; left out of a base that does not turn. */
  readonly baseSpring?: number;
  /** A brace below a top that holds no moment itself. */
  readonly knee?: KneeBrace;
}

/** Whether the roof resists the turning of the column below it. */
export const holdsTop = ({ top, knee }: EndsHeld): boolean => top || knee !== undefined;

/** Heights above the base at which the roof takes hold of a column: the foot of its knee brace, or its top. */
export const reachOf = (ends: { readonly x: EndsHeld; readonly y: EndsHeld }, height: number): { readonly x: number; readonly y: number } => ({ x: ends.x.knee?.foot ?? height, y: ends.y.knee?.foot ?? height });

/** Turning stiffness of the base, N·m/rad. */
const baseStiffness = ({ base, baseSpring }: EndsHeld): number => (base ? (baseSpring ?? Number.POSITIVE_INFINITY) : 0);

/** Push, push with turning, and turning at the top of a column for a unit of sideways movement and of turning there. */
export type PlaneStiffness = readonly [push: number, mixed: number, turning: number];

/** A column whose base turns against a spring and whose top is one with the roof: the turning of the base condensed out. */
function fixedTop(k_b: number, EI: number, h: number): PlaneStiffness {
  const far = (2 * EI) / h;
  const slant = (6 * EI) / h ** 2;
  // Nothing at a base that does not turn.
  const give = 1 / (2 * far + k_b);
  return [(12 * EI) / h ** 3 - slant ** 2 * give, slant - slant * far * give, 2 * far - far ** 2 * give];
}

/** The same with a spring k_t between the column and the roof. */
function springTop([push, mixed, turning]: PlaneStiffness, k_t: number): PlaneStiffness {
  const part = 1 / (turning + k_t);
  return [push - mixed ** 2 * part, mixed * k_t * part, turning * k_t * part];
}

/**
 * Stiffness at the top of a column. Below a knee brace the column reaches to the foot of the brace, where the piece above it, a beam between brace and
 * top, holds it by 3EI over its length; forces there are then carried up to the top as those of one body.
 */
export function planeStiffness(ends: EndsHeld, EI: number, h: number): PlaneStiffness {
  const { base, top, knee, baseSpring } = ends;
  if (knee) {
    const a = h - knee.foot;
    const [push, mixed, turning] = springTop(fixedTop(baseStiffness(ends), EI, knee.foot), (3 * EI) / a);
    return [push, mixed + a * push, turning + 2 * a * mixed + a ** 2 * push];
  }
  if (base && baseSpring !== undefined) {
    const whole = fixedTop(baseSpring, EI, h);
    return top ? whole : springTop(whole, 0);
  }
  if (base && top) return [(12 * EI) / h ** 3, (6 * EI) / h ** 2, (4 * EI) / h];
  if (base) return [(3 * EI) / h ** 3, 0, 0];
  return top ? [(3 * EI) / h ** 3, (3 * EI) / h ** 2, (3 * EI) / h] : [0, 0, 0];
}
