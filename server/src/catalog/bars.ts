/** Reinforcing bars by callout. Nominal values of ASTM A615/A615M, Table 1. */
export interface Bar {
  /** As the trade writes it: `no. 6`, `16 mm`. */
  readonly name: string;
  /** Nominal diameter, m. */
  readonly diameter: number;
  /** Nominal area, m². */
  readonly area: number;
}
