/** A square hollow structural section. Lengths m; properties in m², m³, m⁴; weight N/m. */
export interface ColumnSection {
  readonly name: string;
  readonly shape: "square HSS";
  /** Outside width. */
  readonly width: number;
  /** Nominal wall. */
  readonly nominalWall: number;
  /** Design wall, 0.93 of nominal (AISC 360-22 B4.2, ASTM A500). */
  readonly wall: number;
  readonly area: number;
  readonly inertia: number;
  readonly sectionModulus: number;
  readonly plasticModulus: number;
  readonly gyration: number;
  /** Flat width over wall, (B - 3t)/t. */
  readonly slenderness: number;
  /** Self weight per length, N/m. */
  readonly weight: number;
}
