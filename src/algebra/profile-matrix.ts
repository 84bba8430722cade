import { EngineError } from '../issues/issue.js';

/**
 * Symmetric matrix kept by columns from the first entry that can differ from zero down to the diagonal
 * (profile, also called skyline). Entry (i, j) with first[j] ≤ i ≤ j stands at `diagonal[j] - j + i`.
 */
export interface ProfileMatrix {
  readonly size: number;
  readonly first: Int32Array;
  readonly diagonal: Int32Array;
  readonly values: Float64Array;
}

/**
 * An empty profile matrix.
 *
 * @param first - first row of each column [-]
 * @returns matrix of zeros [-]
 * @throws EngineError `algebra.too-large` when the profile does not fit in memory
 * After George and Liu, Computer Solution of Large Sparse Positive Definite Systems, 1981.
 */
export function emptyProfile(first: Int32Array): ProfileMatrix {
  const size = first.length;
  const diagonal = new Int32Array(size);
  let total = 0;
  for (let j = 0; j < size; j++) {
    total += j - first[j]! + 1;
    if (total > LARGEST_PROFILE)
      throw new EngineError('algebra.too-large', { unknowns: size, limit: LARGEST_PROFILE });
    diagonal[j] = total - 1;
  }
  return { size, first, diagonal, values: new Float64Array(total) };
}

/** Entries a profile may have: 1.6 GB of numbers [-]. */
const LARGEST_PROFILE = 200_000_000;

/**
 * Product of a profile matrix and a vector.
 *
 * @param matrix - symmetric matrix [-]
 * @param vector - as long as the matrix [-]
 * @returns the product [-]
 * After Golub and Van Loan, Matrix Computations, 4th ed., 2013.
 */
export function multiplyProfile(matrix: ProfileMatrix, vector: Float64Array): Float64Array {
  const { size, first, diagonal, values } = matrix;
  const product = new Float64Array(size);
  for (let j = 0; j < size; j++) {
    const base = diagonal[j]! - j;
    const own = vector[j]!;
    let sum = values[base + j]! * own;
    for (let i = first[j]!; i < j; i++) {
      const value = values[base + i]!;
      sum += value * vector[i]!;
      product[i]! += value * own;
    }
    product[j]! += sum;
  }
  return product;
}

/**
 * Scales a matrix in place so that its diagonal is one: K → S K S with S = 1/√(diagonal). A diagonal entry that is
 * not above zero keeps its scale of one, and shows itself as a vanishing pivot.
 *
 * @param matrix - symmetric matrix, changed [-]
 * @returns the scales S and the 1-norm of the scaled matrix [-]
 * After Higham, Accuracy and Stability of Numerical Algorithms, 2nd ed., 2002.
 */
export function scaleProfile(matrix: ProfileMatrix): { readonly scale: Float64Array; readonly norm: number } {
  const { size, first, diagonal, values } = matrix;
  const scale = new Float64Array(size);
  for (let j = 0; j < size; j++) {
    const value = values[diagonal[j]!]!;
    scale[j] = value > 0 ? 1 / Math.sqrt(value) : 1;
  }
  const sums = new Float64Array(size);
  for (let j = 0; j < size; j++) {
    const base = diagonal[j]! - j;
    const own = scale[j]!;
    for (let i = first[j]!; i < j; i++) {
      const value = values[base + i]! * own * scale[i]!;
      values[base + i] = value;
      sums[i]! += Math.abs(value);
      sums[j]! += Math.abs(value);
    }
    values[base + j]! *= own * own;
    sums[j]! += Math.abs(values[base + j]!);
  }
  let norm = 0;
  for (let j = 0; j < size; j++) if (sums[j]! > norm) norm = sums[j]!;
  return { scale, norm };
}
