/** Eigenvalues in rising order with their vectors. */
export interface SymmetricEigen {
  readonly values: readonly number[];
  readonly vectors: readonly Float64Array[];
}

/**
 * All eigenvalues and vectors of a small symmetric matrix by turning pairs of axes until nothing is left off the
 * diagonal (cyclic Jacobi).
 *
 * @param matrix - n × n by rows, not changed [-]
 * @param n - number of rows [-]
 * @returns eigenvalues in rising order and orthonormal vectors [-]
 * After Golub and Van Loan, Matrix Computations, 4th ed., 2013.
 */
export function symmetricEigen(matrix: Float64Array, n: number): SymmetricEigen {
  const a = Float64Array.from(matrix);
  const turns = new Float64Array(n * n);
  for (let i = 0; i < n; i++) turns[i * n + i] = 1;
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    let turned = false;
    for (let p = 0; p < n - 1; p++) {
      for (let q = p + 1; q < n; q++) turned = turn(a, turns, n, p, q) || turned;
    }
    if (!turned) break;
  }
  const order = Array.from({ length: n }, (_, i) => i).sort((i, j) => a[i * n + i]! - a[j * n + j]! || i - j);
  return {
    values: order.map((i) => a[i * n + i]!),
    vectors: order.map((i) => Float64Array.from({ length: n }, (_, row) => turns[row * n + i]!)),
  };
}

const SWEEPS = 60;

function turn(a: Float64Array, turns: Float64Array, n: number, p: number, q: number): boolean {
  const off = a[p * n + q]!;
  const app = a[p * n + p]!;
  const aqq = a[q * n + q]!;
  if (Math.abs(off) <= 1e-17 * Math.sqrt(Math.abs(app * aqq)) || off === 0) {
    a[p * n + q] = 0;
    a[q * n + p] = 0;
    return false;
  }
  const theta = (aqq - app) / (2 * off);
  const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.hypot(1, theta));
  const c = 1 / Math.hypot(1, t);
  const s = c * t;
  for (let i = 0; i < n; i++) {
    if (i !== p && i !== q) {
      const aip = a[i * n + p]!;
      const aiq = a[i * n + q]!;
      a[i * n + p] = c * aip - s * aiq;
      a[i * n + q] = s * aip + c * aiq;
      a[p * n + i] = a[i * n + p]!;
      a[q * n + i] = a[i * n + q]!;
    }
    const vip = turns[i * n + p]!;
    const viq = turns[i * n + q]!;
    turns[i * n + p] = c * vip - s * viq;
    turns[i * n + q] = s * vip + c * viq;
  }
  a[p * n + p] = app - t * off;
  a[q * n + q] = aqq + t * off;
  a[p * n + q] = 0;
  a[q * n + p] = 0;
  return true;
}
