import { EngineError } from '../issues/issue.js';
import { type ProfileFactor, solveProfile } from './profile-factor.js';
import { multiplyProfile, type ProfileMatrix } from './profile-matrix.js';
import { product } from './singular-values.js';
import { symmetricEigen } from './symmetric-eigen.js';

/** Eigenpairs of K x = λ M x, lowest first. */
export interface LowestModes {
  readonly values: readonly number[];
  /** Vectors with xᵀ K x = 1. */
  readonly vectors: readonly Float64Array[];
  /** Rounds of iteration taken. */
  readonly rounds: number;
}

/**
 * Lowest eigenpairs of K x = λ M x by subspace iteration with the factor of K. M may be singular: freedoms without
 * mass have no eigenvalue, and fewer pairs than asked for come back when M has not rank enough.
 *
 *     Y = K⁻¹ M X,   solve (Yᵀ M Y) q = μ (Yᵀ K Y) q,   X = Y q,   λ = 1/μ
 *
 * @param factor - factor of K [-]
 * @param mass - M, positive semidefinite, same profile as K [-]
 * @param count - how many are wanted [-]
 * @param spare - vectors carried along besides, at least one [-]
 * @returns eigenvalues in rising order and vectors [-]
 * @throws EngineError `algebra.not-converged`; data: `what`, `rounds`
 * After Bathe and Wilson, Numerical Methods in Finite Element Analysis, 1976.
 */
export function lowestModes(
  factor: ProfileFactor,
  mass: ProfileMatrix,
  count: number,
  spare: number,
): LowestModes {
  const n = factor.size;
  let vectors = startVectors(mass, Math.min(n, count + spare));
  let before: readonly number[] = [];
  for (let rounds = 1; rounds <= ROUNDS; rounds++) {
    const images = vectors.map((vector) => multiplyProfile(mass, vector));
    const solved = images.map((image) => solveProfile(factor, Float64Array.from(image)));
    const { values, mixes } = project(solved, images, mass);
    vectors = mixes.map((mix) => combine(solved, mix, n));
    const wanted = values.slice(0, count);
    const settled =
      wanted.length === Math.min(count, before.length) &&
      wanted.every((value, i) => Math.abs(value - before[i]!) <= TOLERANCE * value);
    // One round more than it takes the values to settle: vectors settle half as fast.
    if (settled && rounds > 3) return { values: wanted, vectors: vectors.slice(0, wanted.length), rounds };
    if (values.length === 0) return { values: [], vectors: [], rounds };
    before = wanted;
  }
  throw new EngineError('algebra.not-converged', { what: 'natural frequencies', rounds: ROUNDS });
}

const ROUNDS = 200;
/** Relative change of an eigenvalue under which it has settled [-]. */
const TOLERANCE = 1e-12;
/** Directions with less than this share of the largest energy carry no mode of their own [-]. */
const RANK_TOLERANCE = 1e-13;

/** The mass itself, single freedoms with much mass for little stiffness, and numbers that look random. */
function startVectors(mass: ProfileMatrix, count: number): Float64Array[] {
  const n = mass.size;
  const own = Float64Array.from({ length: n }, (_, i) => mass.values[mass.diagonal[i]!]!);
  const byMass = Array.from({ length: n }, (_, i) => i).sort((a, b) => own[b]! - own[a]! || a - b);
  let state = 20071;
  return Array.from({ length: count }, (_, v) => {
    const vector = new Float64Array(n);
    if (v === 0) vector.set(own);
    else if (v < count / 2) vector[byMass[v - 1]!] = 1;
    else {
      for (let i = 0; i < n; i++) {
        state = (state * 1103515245 + 12345) % 2147483648;
        vector[i] = state / 1073741824 - 1;
      }
    }
    return vector;
  });
}

/** Eigenpairs in the space of the solved vectors; directions that have become one are dropped. */
function project(
  solved: readonly Float64Array[],
  images: readonly Float64Array[],
  mass: ProfileMatrix,
): { readonly values: readonly number[]; readonly mixes: readonly Float64Array[] } {
  const m = solved.length;
  const stiff = new Float64Array(m * m);
  const heavy = new Float64Array(m * m);
  const size = solved.map((vector, i) => Math.sqrt(Math.max(0, product(vector, images[i]!))));
  const scaled = (i: number, j: number, value: number) =>
    size[i] === 0 || size[j] === 0 ? 0 : value / (size[i]! * size[j]!);
  const carried = solved.map((vector) => multiplyProfile(mass, vector));
  for (let i = 0; i < m; i++) {
    for (let j = 0; j <= i; j++) {
      const k = scaled(i, j, (product(solved[i]!, images[j]!) + product(solved[j]!, images[i]!)) / 2);
      const h = scaled(i, j, product(solved[i]!, carried[j]!));
      stiff[i * m + j] = stiff[j * m + i] = k;
      heavy[i * m + j] = heavy[j * m + i] = h;
    }
  }
  const energy = symmetricEigen(stiff, m);
  const largest = energy.values[m - 1] ?? 0;
  const kept = energy.values
    .map((value, i) => ({ value, vector: energy.vectors[i]! }))
    .filter(({ value }) => value > RANK_TOLERANCE * largest && value > 0)
    .map(({ value, vector }) => vector.map((part) => part / Math.sqrt(value)));
  const r = kept.length;
  const small = new Float64Array(r * r);
  for (let i = 0; i < r; i++) {
    const row = Float64Array.from({ length: m }, (_, c) => {
      let sum = 0;
      for (let k = 0; k < m; k++) sum += kept[i]![k]! * heavy[k * m + c]!;
      return sum;
    });
    for (let j = 0; j < r; j++) small[i * r + j] = product(row, kept[j]!);
  }
  for (let i = 0; i < r; i++) {
    for (let j = 0; j < i; j++) {
      const mean = (small[i * r + j]! + small[j * r + i]!) / 2;
      small[i * r + j] = small[j * r + i] = mean;
    }
  }
  const modes = symmetricEigen(small, r);
  const values: number[] = [];
  const mixes: Float64Array[] = [];
  for (let i = r - 1; i >= 0; i--) {
    const mu = modes.values[i]!;
    if (!(mu > 1e-14 * modes.values[r - 1]!)) break;
    values.push(1 / mu);
    const mix = new Float64Array(m);
    for (let k = 0; k < r; k++) {
      const part = modes.vectors[i]![k]!;
      for (let c = 0; c < m; c++) if (size[c]! > 0) mix[c]! += (part * kept[k]![c]!) / size[c]!;
    }
    mixes.push(mix);
  }
  return { values, mixes };
}

function combine(vectors: readonly Float64Array[], mix: Float64Array, n: number): Float64Array {
  const sum = new Float64Array(n);
  vectors.forEach((vector, v) => {
    const share = mix[v]!;
    if (share === 0) return;
    for (let i = 0; i < n; i++) sum[i]! += share * vector[i]!;
  });
  return sum;
}
