import { EngineError } from '../issues/issue.js';

/**
 * Inverse of a small symmetric positive matrix, scaled to a unit diagonal first so that metres and radians may mix.
 *
 * @param matrix - n × n entries by rows, not changed [-]
 * @param n - number of rows [-]
 * @returns the inverse, n × n, exactly symmetric [-]
 * @throws EngineError `algebra.not-positive` when the matrix is not positive definite
 * After Golub and Van Loan, Matrix Computations, 4th ed., 2013.
 */
export function symmetricInverse(matrix: Float64Array, n: number): Float64Array {
  const scale = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const value = matrix[i * n + i]!;
    if (!(value > 0)) throw new EngineError('algebra.not-positive', { row: i });
    scale[i] = 1 / Math.sqrt(value);
  }
  const factor = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    for (let i = j; i < n; i++) {
      let sum = matrix[i * n + j]! * scale[i]! * scale[j]!;
      for (let k = 0; k < j; k++) sum -= factor[i * n + k]! * factor[j * n + k]!;
      if (i > j) factor[i * n + j] = sum / factor[j * n + j]!;
      else if (sum > 0) factor[j * n + j] = Math.sqrt(sum);
      else throw new EngineError('algebra.not-positive', { row: j });
    }
  }
  const inverse = new Float64Array(n * n);
  const column = new Float64Array(n);
  for (let c = 0; c < n; c++) {
    column.fill(0);
    column[c] = 1;
    for (let i = 0; i < n; i++) {
      for (let k = 0; k < i; k++) column[i]! -= factor[i * n + k]! * column[k]!;
      column[i]! /= factor[i * n + i]!;
    }
    for (let i = n - 1; i >= 0; i--) {
      for (let k = i + 1; k < n; k++) column[i]! -= factor[k * n + i]! * column[k]!;
      column[i]! /= factor[i * n + i]!;
    }
    for (let i = 0; i < n; i++) inverse[i * n + c] = column[i]! * scale[i]! * scale[c]!;
  }
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < i; j++) {
      const mean = (inverse[i * n + j]! + inverse[j * n + i]!) / 2;
      inverse[i * n + j] = mean;
      inverse[j * n + i] = mean;
    }
  }
  return inverse;
}
