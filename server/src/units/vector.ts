/** Exponents of mass, length and time. An angle counts as a plain number. */
export interface Dimension {
  readonly mass: number;
  readonly length: number;
  readonly time: number;
}

export const dimension = (mass: number, length: number, time: number): Dimension => ({ mass, length, time });

export const plain = dimension(0, 0, 0);

export const times = (a: Dimension, b: Dimension): Dimension =>
  dimension(a.mass + b.mass, a.length + b.length, a.time + b.time);

export const over = (a: Dimension, b: Dimension): Dimension =>
  dimension(a.mass - b.mass, a.length - b.length, a.time - b.time);

export const power = (a: Dimension, exponent: number): Dimension =>
  dimension(a.mass * exponent, a.length * exponent, a.time * exponent);

// Fractional powers of units leave rounding in the exponents.
const near = (a: number, b: number) => Math.abs(a - b) < 1e-9;

/** Whether two quantities can be added or compared. */
export const sameDimension = (a: Dimension, b: Dimension): boolean =>
  near(a.mass, b.mass) && near(a.length, b.length) && near(a.time, b.time);
