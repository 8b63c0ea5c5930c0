/**
 * A symmetric matrix with three terms beside the diagonal, as that of a beam with two movements to a node: rows of four, the diagonal first,
 * then the terms below it in its column.
 */
const width = 4;

/** Factors in place as L·D·Lᵀ; false where a pivot is not positive, so that the system has no stable answer. */
export function factorBanded(matrix: Float64Array, size: number): boolean {
  for (let j = 0; j < size; j++) {
    const pivot = matrix[j * width];
    if (!(pivot > 0)) return false;
    const last = Math.min(width - 1, size - 1 - j);
    for (let i = 1; i <= last; i++) {
      const ratio = matrix[j * width + i] / pivot;
      for (let k = i; k <= last; k++) matrix[(j + i) * width + k - i] -= ratio * matrix[j * width + k];
    }
    for (let i = 1; i <= last; i++) matrix[j * width + i] /= pivot;
  }
  return true;
}

/** Solves with a factored matrix; the right side becomes the answer. */
export function solveBanded(factored: Float64Array, size: number, right: Float64Array): void {
  for (let j = 0; j < size; j++) {
    const last = Math.min(width - 1, size - 1 - j);
    for (let i = 1; i <= last; i++) right[j + i] -= factored[j * width + i] * right[j];
  }
  for (let j = size - 1; j >= 0; j--) {
    let value = right[j] / factored[j * width];
    const last = Math.min(width - 1, size - 1 - j);
    for (let i = 1; i <= last; i++) value -= factored[j * width + i] * right[j + i];
    right[j] = value;
  }
}
