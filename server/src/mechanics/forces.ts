/**
 * Forces the structure above exerts on the section, SI. Axes x east, y north, z up. `P` is compression positive, so uplift
 * is negative; moments are about the named axis, right-handed (a push to the east above the section gives +My; a push to the
 * north gives -Mx).
 */
export interface Forces {
  readonly P: number;
  readonly Vx: number;
  readonly Vy: number;
  readonly Mx: number;
  readonly My: number;
  /** Torsion about the column's own axis, counterclockwise seen from above; left out where none is known. */
  readonly Mz?: number;
}
