/**
 * Solves a small square system by elimination with exchange of rows.
 *
 * @param matrix - n × n by rows, not changed [-]
 * @param right - right-hand side, n numbers, not changed [-]
 * @returns the solution, or undefined when the matrix is singular to rounding [-]
 * After Golub and Van Loan, Matrix Computations, 4th ed., 2013.
 */
export function solveSmall(matrix: Float64Array, right: Float64Array): Float64Array | undefined {
  const n = right.length;
  const a = Float64Array.from(matrix);
  const x = Float64Array.from(right);
  const largest = a.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  for (let column = 0; column < n; column++) {
    let best = column;
    for (let row = column + 1; row < n; row++) {
      if (Math.abs(a[row * n + column]!) > Math.abs(a[best * n + column]!)) best = row;
    }
    const pivot = a[best * n + column]!;
    if (!(Math.abs(pivot) > 1e-14 * largest)) return undefined;
    if (best !== column) {
      for (let k = 0; k < n; k++) {
        [a[best * n + k], a[column * n + k]] = [a[column * n + k]!, a[best * n + k]!];
      }
      [x[best], x[column]] = [x[column]!, x[best]!];
    }
    for (let row = column + 1; row < n; row++) {
      const factor = a[row * n + column]! / pivot;
      if (factor === 0) continue;
      for (let k = column; k < n; k++) a[row * n + k]! -= factor * a[column * n + k]!;
      x[row]! -= factor * x[column]!;
    }
  }
  for (let row = n - 1; row >= 0; row--) {
    for (let k = row + 1; k < n; k++) x[row]! -= a[row * n + k]! * x[k]!;
    x[row]! /= a[row * n + row]!;
  }
  return x;
}
