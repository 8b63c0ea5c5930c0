/** A square matrix factored as row-scaled LU with partial pivoting, row-major. */
export interface Factored {
  readonly size: number;
  readonly lu: Float64Array;
  readonly order: Int32Array;
  readonly matrix: Float64Array;
}

/**
 * Factors a square matrix, row-major, or gives undefined when a pivot falls below `tolerance` of the largest term of its
 * scaled row: the matrix is singular, or too near it to be trusted.
 */
export function factor(matrix: Float64Array, size: number, tolerance = 1e-13): Factored | undefined {
  const lu = matrix.slice();
  const order = new Int32Array(size);
  const scale = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    order[i] = i;
    for (let j = 0; j < size; j++) scale[i] = Math.max(scale[i], Math.abs(lu[i * size + j]));
    if (!(scale[i] > 0)) return undefined;
  }
  for (let k = 0; k < size; k++) {
    let best = k;
    let largest = -1;
    for (let i = k; i < size; i++) {
      const value = Math.abs(lu[i * size + k]) / scale[i];
      if (value > largest) [best, largest] = [i, value];
    }
    if (!(largest > tolerance)) return undefined;
    if (best !== k) {
      for (let j = 0; j < size; j++) {
        const held = lu[k * size + j];
        lu[k * size + j] = lu[best * size + j];
        lu[best * size + j] = held;
      }
      [order[k], order[best]] = [order[best], order[k]];
      [scale[k], scale[best]] = [scale[best], scale[k]];
    }
    for (let i = k + 1; i < size; i++) {
      const ratio = (lu[i * size + k] /= lu[k * size + k]);
      for (let j = k + 1; j < size; j++) lu[i * size + j] -= ratio * lu[k * size + j];
    }
  }
  return { size, lu, order, matrix };
}

function substitute({ size, lu, order }: Factored, right: ArrayLike<number>): Float64Array {
  const x = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    let sum = right[order[i]];
    for (let j = 0; j < i; j++) sum -= lu[i * size + j] * x[j];
    x[i] = sum;
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = x[i];
    for (let j = i + 1; j < size; j++) sum -= lu[i * size + j] * x[j];
    x[i] = sum / lu[i * size + i];
  }
  return x;
}

/** Solves A x = b with a factored A and one step of refinement on the residual. */
export function solve(factored: Factored, right: ArrayLike<number>): Float64Array {
  const { size, matrix } = factored;
  const x = substitute(factored, right);
  const residual = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    let sum = right[i];
    for (let j = 0; j < size; j++) sum -= matrix[i * size + j] * x[j];
    residual[i] = sum;
  }
  const correction = substitute(factored, residual);
  for (let i = 0; i < size; i++) x[i] += correction[i];
  return x;
}
