/**
 * Twist of a W shape whose flanges are held against warping at both ends, by the base plate below and the roof framing above. Vlasov's theory
 * of thin open sections: part of the twist is carried by the flanges bending against each other, most of it near the ends.
 */

/** Length over which the bending of the flanges dies away, m: sqrt(E C_w / (G J)) with C_w = I_y h_o²/4. */
export const dyingLength = (E: number, G: number, weakInertia: number, betweenFlanges: number, torsion: number): number => (betweenFlanges / 2) * Math.sqrt((E * weakInertia) / (G * torsion));

/** What the torsional stiffness GJ/L of a member grows by where both of its ends are held against warping. */
export function warpingStiffening(length: number, dying: number): number {
  const x = length / (2 * dying);
  // Where the member is very short the difference is lost in rounding; its flanges then bend as beams fixed at both ends, by 12 E I/L³.
  if (x < 1e-3) return 3 / x ** 2;
  return 1 / (1 - Math.tanh(x) / x);
}
