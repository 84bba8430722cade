import type { ProfileMatrix } from './profile-matrix.js';

/** K = L D Lᵀ on the profile of K; `lower` keeps L without its unit diagonal. */
export interface ProfileFactor {
  readonly size: number;
  readonly first: Int32Array;
  readonly diagonal: Int32Array;
  readonly lower: Float64Array;
  /** Diagonal of D [-]. */
  readonly pivots: Float64Array;
  /** Pivots that were below the floor and were set to it, by unknown. */
  readonly raised: readonly number[];
  /** Number of pivots below zero: the number of eigenvalues below zero (Sylvester). */
  readonly negative: number;
  /** Smallest pivot found, before raising. */
  readonly smallest: number;
}

/**
 * Factor of a profile matrix, in place: L D Lᵀ by columns, without exchange of rows.
 *
 *     g_ij = k_ij − Σ l_ik g_kj,   l_ij = g_ij / d_i,   d_j = k_jj − Σ l_kj g_kj
 *
 * @param matrix - symmetric matrix with a diagonal near one; its values are overwritten [-]
 * @param floor - pivots below it are raised to it, so that null vectors can be found afterwards; minus infinity
 *   leaves every pivot as it is, for counting eigenvalues [-]
 * @returns the factor [-]
 * After Golub and Van Loan, Matrix Computations, 4th ed., 2013.
 */
export function factorProfile(matrix: ProfileMatrix, floor: number): ProfileFactor {
  const { size, first, diagonal, values } = matrix;
  const pivots = new Float64Array(size);
  const raised: number[] = [];
  let smallest = Number.POSITIVE_INFINITY;
  let negative = 0;
  for (let j = 0; j < size; j++) {
    const start = first[j]!;
    const baseJ = diagonal[j]! - j;
    for (let i = start + 1; i < j; i++) {
      const baseI = diagonal[i]! - i;
      let sum = 0;
      for (let k = Math.max(first[i]!, start); k < i; k++) sum += values[baseI + k]! * values[baseJ + k]!;
      values[baseJ + i]! -= sum;
    }
    let pivot = values[baseJ + j]!;
    for (let k = start; k < j; k++) {
      const g = values[baseJ + k]!;
      const l = g / pivots[k]!;
      values[baseJ + k] = l;
      pivot -= l * g;
    }
    if (pivot < smallest) smallest = pivot;
    if (pivot < floor) {
      raised.push(j);
      pivot = floor;
    }
    // A pivot of exactly zero would divide by zero; the nearest number counts as positive.
    if (pivot === 0) pivot = Number.EPSILON ** 2;
    if (pivot < 0) negative++;
    pivots[j] = pivot;
  }
  return { size, first, diagonal, lower: values, pivots, raised, negative, smallest };
}

/**
 * Solves L D Lᵀ x = b in place.
 *
 * @param factor - from `factorProfile` [-]
 * @param vector - right-hand side b, becomes x [-]
 * @returns the same vector [-]
 * After Golub and Van Loan, Matrix Computations, 4th ed., 2013.
 */
export function solveProfile(factor: ProfileFactor, vector: Float64Array): Float64Array {
  const { size, first, diagonal, lower, pivots } = factor;
  for (let j = 0; j < size; j++) {
    const base = diagonal[j]! - j;
    let sum = 0;
    for (let k = first[j]!; k < j; k++) sum += lower[base + k]! * vector[k]!;
    vector[j]! -= sum;
  }
  for (let j = 0; j < size; j++) vector[j]! /= pivots[j]!;
  for (let j = size - 1; j > 0; j--) {
    const base = diagonal[j]! - j;
    const own = vector[j]!;
    if (own === 0) continue;
    for (let k = first[j]!; k < j; k++) vector[k]! -= lower[base + k]! * own;
  }
  return vector;
}
