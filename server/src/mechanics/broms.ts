/**
 * Push that bends a long pier to its strength before the soil along it gives way (Broms): the soil yields down to the depth where the shear is
 * nothing, and there the moment is that of the pier. With a head held against turning a second hinge forms at the head. Ultimate values.
 */

export interface LongPier {
  /** Width, m. */
  readonly D: number;
  /** Height of the push above the ground, m; of no account where the head is held against turning. */
  readonly e: number;
  /** Moment the pier yields at, N·m. */
  readonly My: number;
  readonly isHeadFixed?: boolean;
}

const sumOf = ({ My, isHeadFixed }: LongPier): number => (isHeadFixed ? 2 * My : My);
const armOf = ({ e, isHeadFixed }: LongPier): number => (isHeadFixed ? 0 : e);

/** Ultimate push, N, in clay of undrained strength `c`, Pa: H (e + 1.5 D + f/2) = My with f = H/(9 c D). Broms 1964 (from memory). */
export function longInClay(pier: LongPier, c: number): number {
  const a = 1 / (18 * c * pier.D);
  const b = armOf(pier) + 1.5 * pier.D;
  return (2 * sumOf(pier)) / (b + Math.sqrt(b ** 2 + 4 * a * sumOf(pier)));
}

/** Ultimate push, N, in sand of effective unit weight `gamma`, N/m³, and friction angle `phi`, rad: H (e + 2 f/3) = My with f² = H/(1.5 Kp gamma D). Broms 1964 (from memory). */
export function longInSand(pier: LongPier, gamma: number, phi: number): number {
  const Kp = Math.tan(Math.PI / 4 + phi / 2) ** 2;
  const a = 2 / 3 / Math.sqrt(1.5 * Kp * gamma * pier.D);
  const e = armOf(pier);
  // In t = sqrt(H) the left side grows and is convex: Newton from above falls onto the root.
  let t = Math.cbrt(sumOf(pier) / a);
  for (let i = 0; i < 60; i++) {
    const next = t - (a * t ** 3 + e * t ** 2 - sumOf(pier)) / (3 * a * t ** 2 + 2 * e * t);
    if (!(next < t)) break;
    t = next;
  }
  return t ** 2;
}
