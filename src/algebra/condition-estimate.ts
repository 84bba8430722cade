import { type ProfileFactor, solveProfile } from './profile-factor.js';

/**
 * Estimate of the reciprocal condition number in the 1-norm, 1 / (‖K‖ ‖K⁻¹‖), from a few solutions with the factor
 * (Hager's method with Higham's second start). Never smaller than the truth, and seldom more than three times it.
 *
 * @param factor - factor of K [-]
 * @param norm - 1-norm of K [-]
 * @returns reciprocal condition number, 1 at best [-]
 * After Higham, Accuracy and Stability of Numerical Algorithms, 2nd ed., 2002.
 */
export function reciprocalCondition(factor: ProfileFactor, norm: number): number {
  const n = factor.size;
  if (n === 0) return 1;
  const x = new Float64Array(n).fill(1 / n);
  const sign = new Float64Array(n);
  let estimate = 0;
  let last = -1;
  for (let step = 0; step < STEPS; step++) {
    solveProfile(factor, x);
    const sum = sumOfSizes(x);
    if (sum <= estimate && step > 0) break;
    estimate = sum;
    for (let i = 0; i < n; i++) sign[i] = x[i]! >= 0 ? 1 : -1;
    solveProfile(factor, sign);
    let largest = 0;
    for (let i = 1; i < n; i++) if (Math.abs(sign[i]!) > Math.abs(sign[largest]!)) largest = i;
    if (largest === last) break;
    last = largest;
    x.fill(0);
    x[largest] = 1;
  }
  for (let i = 0; i < n; i++) x[i] = (i % 2 === 0 ? 1 : -1) * (1 + (n > 1 ? i / (n - 1) : 0));
  solveProfile(factor, x);
  estimate = Math.max(estimate, (2 * sumOfSizes(x)) / (3 * n));
  return Math.min(1, 1 / (norm * estimate));
}

/** Rounds of Hager's method; it nearly always ends in two [-]. */
const STEPS = 5;

function sumOfSizes(vector: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < vector.length; i++) sum += Math.abs(vector[i]!);
  return sum;
}
