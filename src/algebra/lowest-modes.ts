import { EngineError } from '../issues/issue.js';
import { type ProfileFactor, solveProfile } from './profile-factor.js';
import { multiplyProfile, type ProfileMatrix } from './profile-matrix.js';
import { product } from './singular-values.js';
import { tridiagonalEigen } from './tridiagonal-eigen.js';

/** Eigenpairs of K x = λ M x, lowest first. */
export interface LowestModes {
  readonly values: readonly number[];
  /** Vectors with xᵀ K x = 1. */
  readonly vectors: readonly Float64Array[];
  /** Steps of iteration taken, one solve each. */
  readonly rounds: number;
}

/**
 * Lowest eigenpairs of K x = λ M x by the Lanczos process with the factor of K, every step made square to all before.
 * M may be singular: freedoms without mass have no eigenvalue, and fewer pairs than asked for come back when M has not
 * rank enough.
 *
 *     K⁻¹ M q_j = β_(j−1) q_(j−1) + α_j q_j + β_j q_(j+1),   q_iᵀ M q_j = δ_ij,   λ = 1/μ of the matrix of α and β
 *
 * One start finds one vector of several with the same value. So another start follows, square to all that was found,
 * until one brings nothing below the highest that is wanted.
 *
 * @param factor - factor of K [-]
 * @param mass - M, positive semidefinite, same profile as K [-]
 * @param count - how many are wanted [-]
 * @returns eigenvalues in rising order and vectors [-]
 * @throws EngineError `algebra.not-converged`; data: `what`, `rounds`
 * After Parlett, The Symmetric Eigenvalue Problem, 1980.
 */
export function lowestModes(factor: ProfileFactor, mass: ProfileMatrix, count: number): LowestModes {
  let found: Pair[] = [];
  let rounds = 0;
  for (let start = 0; ; start++) {
    const bound = found[count - 1]?.value ?? Number.POSITIVE_INFINITY;
    const isFirst = start === 0;
    const run = oneStart(factor, mass, found, start, (values) =>
      isFirst ? values.length >= count : (values[values.length - 1] ?? 0) > bound,
    );
    rounds += run.rounds;
    const fresh = run.pairs.filter(({ value }) => value < bound);
    if (fresh.length === 0 || count === 0) break;
    found = [...found, ...fresh].sort((a, b) => a.value - b.value).slice(0, count);
  }
  return {
    values: found.map(({ value }) => value),
    vectors: found.map(({ value, vector }) => vector.map((part) => part / Math.sqrt(value))),
    rounds,
  };
}

/** Eigenvalue, vector with xᵀ M x = 1, and M x. */
interface Pair {
  readonly value: number;
  readonly vector: Float64Array;
  readonly carried: Float64Array;
}

/** Steps of one start at most [-]. */
const STEPS = 600;
/** Steps between two looks at what has settled [-]. */
const BETWEEN_LOOKS = 5;
/** Remainder of a pair over its value under which it has settled [-]. */
const SETTLED = 1e-10;
/** What is left of a vector after taking out all found ones, under which nothing is left but rounding [-]. */
const NOTHING_LEFT = 1e-10;
/** What a step adds over the largest before, under which the space is spent [-]. */
const SPENT = 1e-12;

function oneStart(
  factor: ProfileFactor,
  mass: ProfileMatrix,
  found: readonly Pair[],
  start: number,
  isEnough: (values: readonly number[]) => boolean,
): { readonly pairs: readonly Pair[]; readonly rounds: number } {
  const basis: Float64Array[] = [];
  const carried: Float64Array[] = [];
  const [alphas, betas]: [number[], number[]] = [[], []];
  const bases = [found.map((pair) => pair.vector), basis];
  const images = [found.map((pair) => pair.carried), carried];
  const square = (vector: Float64Array) => {
    // Twice is enough: what is left of rounding after the second time is rounding itself.
    for (let pass = 0; pass < 2; pass++) {
      bases.forEach((some, list) => {
        some.forEach((known, i) => {
          addTimes(vector, known, -product(images[list]![i]!, vector));
        });
      });
    }
  };
  // Judged before K⁻¹ makes light vibrations small beside heavy ones.
  const first = noise(factor.size, start);
  const before = sizeOf(first, multiplyProfile(mass, first));
  square(first);
  let image = multiplyProfile(mass, first);
  if (!(sizeOf(first, image) > NOTHING_LEFT * before)) return { pairs: [], rounds: 0 };
  let next = solveProfile(factor, image);
  square(next);
  image = multiplyProfile(mass, next);
  let size = sizeOf(next, image);
  let largest = 0;
  for (let step = 1; step <= STEPS; step++) {
    const unit = next.map((part) => part / size);
    const unitImage = image.map((part) => part / size);
    basis.push(unit);
    carried.push(unitImage);
    next = solveProfile(factor, Float64Array.from(unitImage));
    const alpha = product(unitImage, next);
    square(next);
    image = multiplyProfile(mass, next);
    size = sizeOf(next, image);
    alphas.push(alpha);
    largest = Math.max(largest, alpha);
    const isSpent = !(size > SPENT * largest) || step === factor.size;
    if (isSpent || step % BETWEEN_LOOKS === 0) {
      const settled = settledPairs(alphas, betas, step === factor.size ? 0 : size);
      if (isSpent || isEnough(settled.map(({ value }) => value))) {
        return {
          pairs: settled.map(({ value, mix }) => ({
            value,
            vector: mixed(basis, mix),
            carried: mixed(carried, mix),
          })),
          rounds: step,
        };
      }
    }
    betas.push(size);
  }
  throw new EngineError('algebra.not-converged', { what: 'natural frequencies', rounds: STEPS });
}

/** Pairs from the lowest eigenvalue on, as far as they have settled without a gap. */
function settledPairs(
  alphas: readonly number[],
  betas: readonly number[],
  size: number,
): readonly { readonly value: number; readonly mix: Float64Array }[] {
  const { values, vectors } = tridiagonalEigen(alphas, betas);
  const pairs: { value: number; mix: Float64Array }[] = [];
  for (let i = 0; i < values.length; i++) {
    const mu = values[i]!;
    const mix = vectors[i]!;
    if (!(mu > 1e-13 * values[0]!) || Math.abs(size * mix[mix.length - 1]!) > SETTLED * mu) break;
    pairs.push({ value: 1 / mu, mix });
  }
  return pairs;
}

/** Numbers that look random, others for each start. */
function noise(size: number, start: number): Float64Array {
  let state = 20071 + 7919 * start;
  return Float64Array.from({ length: size }, () => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state / 1073741824 - 1;
  });
}

const sizeOf = (vector: Float64Array, image: Float64Array): number =>
  Math.sqrt(Math.max(0, product(vector, image)));

function addTimes(vector: Float64Array, other: Float64Array, times: number): void {
  for (let i = 0; i < vector.length; i++) vector[i]! += times * other[i]!;
}

function mixed(vectors: readonly Float64Array[], mix: Float64Array): Float64Array {
  const sum = new Float64Array(vectors[0]!.length);
  vectors.forEach((vector, v) => {
    addTimes(sum, vector, mix[v]!);
  });
  return sum;
}
