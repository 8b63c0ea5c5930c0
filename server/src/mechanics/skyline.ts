/**
 * A symmetric matrix kept by rows from its first term to the diagonal, factored as L D Lᵀ without pivoting. A structure that stands
 * has positive pivots only; a pivot that vanishes is a free movement, a negative one a structure that has buckled.
 */
export interface Skyline {
  readonly size: number;
  /** Column of the first term kept in each row. */
  readonly first: Int32Array;
  /** Where each row begins in `terms`; one more entry than rows. */
  readonly begins: Int32Array;
  readonly terms: Float64Array;
}

/** An empty matrix in which the named pairs of rows meet. */
export function emptySkyline(size: number, meetings: Iterable<readonly number[]>): Skyline {
  const first = Int32Array.from({ length: size }, (_, i) => i);
  for (const rows of meetings) {
    let least = size;
    for (const row of rows) least = Math.min(least, row);
    for (const row of rows) first[row] = Math.min(first[row], least);
  }
  const begins = new Int32Array(size + 1);
  for (let i = 0; i < size; i++) begins[i + 1] = begins[i] + i - first[i] + 1;
  return { size, first, begins, terms: new Float64Array(begins[size]) };
}

/** Adds to the term at (row, column) and its mirror; each pair is named once. */
export function addTerm({ first, begins, terms }: Skyline, row: number, column: number, value: number): void {
  const [i, j] = row >= column ? [row, column] : [column, row];
  terms[begins[i] + j - first[i]] += value;
}

export interface SkylineFactors {
  readonly matrix: Skyline;
  /** L below the diagonal, D on it. */
  readonly factors: Float64Array;
}

/** The row whose pivot is not positive, and whether it vanished or turned negative. */
export interface Unsteady {
  readonly row: number;
  readonly because: "free" | "buckled";
}

/** Factors the matrix. `tolerance` is the part of a diagonal term below which its pivot counts as zero. */
export function factorSkyline(matrix: Skyline, tolerance = 1e-12): SkylineFactors | Unsteady {
  const { size, first, begins, terms } = matrix;
  const factors = terms.slice();
  for (let i = 0; i < size; i++) {
    const rowAt = begins[i] - first[i];
    for (let j = first[i]; j < i; j++) {
      const otherAt = begins[j] - first[j];
      let sum = factors[rowAt + j];
      for (let k = Math.max(first[i], first[j]); k < j; k++) sum -= factors[rowAt + k] * factors[otherAt + k];
      factors[rowAt + j] = sum;
    }
    let pivot = factors[rowAt + i];
    for (let j = first[i]; j < i; j++) {
      const scaled = factors[rowAt + j] / factors[begins[j + 1] - 1];
      pivot -= scaled * factors[rowAt + j];
      factors[rowAt + j] = scaled;
    }
    const own = Math.abs(terms[rowAt + i]);
    if (!(Math.abs(pivot) > tolerance * own)) return { row: i, because: "free" };
    if (pivot < 0) return { row: i, because: "buckled" };
    factors[rowAt + i] = pivot;
  }
  return { matrix, factors };
}

function substitute({ matrix: { size, first, begins }, factors }: SkylineFactors, right: Float64Array): Float64Array {
  const x = right.slice();
  for (let i = 0; i < size; i++) {
    const at = begins[i] - first[i];
    for (let j = first[i]; j < i; j++) x[i] -= factors[at + j] * x[j];
  }
  for (let i = 0; i < size; i++) x[i] /= factors[begins[i + 1] - 1];
  for (let i = size - 1; i >= 0; i--) {
    const at = begins[i] - first[i];
    for (let j = first[i]; j < i; j++) x[j] -= factors[at + j] * x[i];
  }
  return x;
}

/** Matrix times vector. */
export function timesSkyline({ size, first, begins, terms }: Skyline, x: Float64Array): Float64Array {
  const out = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const at = begins[i] - first[i];
    out[i] += terms[at + i] * x[i];
    for (let j = first[i]; j < i; j++) {
      out[i] += terms[at + j] * x[j];
      out[j] += terms[at + j] * x[i];
    }
  }
  return out;
}

/** Solves with one step of refinement on the residual. */
export function solveSkyline(factored: SkylineFactors, right: Float64Array): Float64Array {
  const x = substitute(factored, right);
  const product = timesSkyline(factored.matrix, x);
  const correction = substitute(factored, right.map((value, i) => value - product[i]));
  return x.map((value, i) => value + correction[i]);
}
