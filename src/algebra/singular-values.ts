/** Thin decomposition A = U Σ Vᵀ with only the singular values that count. */
export interface SingularValues {
  /** How many singular values count: the rank. */
  readonly rank: number;
  /** Singular values, not sorted [-]. */
  readonly values: readonly number[];
  /** Left vectors, one per singular value, as long as A has rows. */
  readonly left: readonly Float64Array[];
  /** Right vectors, one per singular value, as long as A has columns. */
  readonly right: readonly Float64Array[];
}

/**
 * Singular values and vectors of a small matrix by turning pairs of rows until all are square to each other
 * (one-sided Jacobi). Rows that are already square to each other, as supports along the axes give, take no turn.
 *
 * @param rows - rows of A, not changed [-]
 * @param tolerance - singular values below this share of the largest count as zero [-]
 * @returns rank and vectors [-]
 * After Golub and Van Loan, Matrix Computations, 4th ed., 2013.
 */
export function singularValues(rows: readonly Float64Array[], tolerance: number): SingularValues {
  const m = rows.length;
  const work = rows.map((row) => Float64Array.from(row));
  const turns = rows.map((_, i) => {
    const unit = new Float64Array(m);
    unit[i] = 1;
    return unit;
  });
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    let turned = false;
    for (let p = 0; p < m - 1; p++) {
      for (let q = p + 1; q < m; q++) turned = turnPair(work, turns, p, q) || turned;
    }
    if (!turned) break;
  }
  const lengths = work.map((row) => Math.sqrt(product(row, row)));
  const largest = lengths.reduce((a, b) => Math.max(a, b), 0);
  const values: number[] = [];
  const left: Float64Array[] = [];
  const right: Float64Array[] = [];
  for (let i = 0; i < m; i++) {
    const length = lengths[i]!;
    if (length === 0 || length <= tolerance * largest) continue;
    values.push(length);
    left.push(turns[i]!);
    right.push(work[i]!.map((value) => value / length));
  }
  return { rank: values.length, values, left, right };
}

const SWEEPS = 60;

function turnPair(work: Float64Array[], turns: Float64Array[], p: number, q: number): boolean {
  const a = work[p]!;
  const b = work[q]!;
  const alpha = product(a, a);
  const beta = product(b, b);
  const gamma = product(a, b);
  if (gamma === 0 || Math.abs(gamma) <= 1e-16 * Math.sqrt(alpha * beta)) return false;
  const zeta = (beta - alpha) / (2 * gamma);
  const t = (zeta >= 0 ? 1 : -1) / (Math.abs(zeta) + Math.hypot(1, zeta));
  const c = 1 / Math.hypot(1, t);
  turnRows(a, b, c, c * t);
  turnRows(turns[p]!, turns[q]!, c, c * t);
  return true;
}

function turnRows(a: Float64Array, b: Float64Array, c: number, s: number): void {
  for (let i = 0; i < a.length; i++) {
    const x = a[i]!;
    const y = b[i]!;
    a[i] = c * x - s * y;
    b[i] = s * x + c * y;
  }
}

/**
 * Scalar product of two long vectors.
 *
 * @param a - first [-]
 * @param b - second, as long [-]
 * @returns the product [-]
 * After Golub and Van Loan, Matrix Computations, 4th ed., 2013.
 */
export function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

/**
 * Orthonormal basis of everything square to given orthonormal vectors. Directions along the axes are taken first,
 * so that a point held north and up keeps plain `east` as a basis vector.
 *
 * @param taken - orthonormal vectors [-]
 * @param size - their length [-]
 * @returns size − taken.length orthonormal vectors [-]
 * After Golub and Van Loan, Matrix Computations, 4th ed., 2013.
 */
export function orthogonalComplement(taken: readonly Float64Array[], size: number): Float64Array[] {
  const basis: Float64Array[] = [];
  const used = new Uint8Array(size);
  while (basis.length < size - taken.length) {
    // The axis with most left of it after taking away what is already spanned.
    let best = -1;
    let bestLength = -1;
    for (let i = 0; i < size; i++) {
      if (used[i] === 1) continue;
      let left = 1;
      for (const vector of taken) left -= vector[i]! ** 2;
      for (const vector of basis) left -= vector[i]! ** 2;
      if (left > bestLength + 1e-9) {
        best = i;
        bestLength = left;
      }
    }
    used[best] = 1;
    const vector = new Float64Array(size);
    vector[best] = 1;
    // Twice is enough: the second pass removes what rounding left.
    for (let pass = 0; pass < 2; pass++) {
      for (const other of taken) takeAway(vector, other);
      for (const other of basis) takeAway(vector, other);
    }
    const length = Math.sqrt(product(vector, vector));
    basis.push(vector.map((value) => value / length));
  }
  return basis;
}

function takeAway(vector: Float64Array, other: Float64Array): void {
  const share = product(vector, other);
  if (share === 0) return;
  for (let i = 0; i < vector.length; i++) vector[i]! -= share * other[i]!;
}
