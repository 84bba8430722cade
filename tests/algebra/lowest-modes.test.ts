import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { expect, test } from 'vitest';
import { lowestModes } from '../../src/algebra/lowest-modes.js';
import { factorProfile } from '../../src/algebra/profile-factor.js';
import { emptyProfile, multiplyProfile, type ProfileMatrix } from '../../src/algebra/profile-matrix.js';
import { tridiagonalEigen } from '../../src/algebra/tridiagonal-eigen.js';

/** A full matrix kept by profile. */
function profile(rows: readonly (readonly number[])[]): ProfileMatrix {
  const matrix = emptyProfile(Int32Array.from(rows, () => 0));
  rows.forEach((row, j) => {
    for (let i = 0; i <= j; i++) matrix.values[(matrix.diagonal[j] ?? 0) - j + i] = row[i] ?? 0;
  });
  return matrix;
}

const factored = (rows: readonly (readonly number[])[]) =>
  factorProfile(profile(rows), Number.NEGATIVE_INFINITY);
const diagonal = (values: readonly number[]) =>
  values.map((value, i) => values.map((_, j) => (i === j ? value : 0)));

/** Masses in a row between two walls: k = 2 − 2 cos(jπ/(n+1)). */
const chain = (n: number): number[][] =>
  Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (_2, j) => (i === j ? 2 : Math.abs(i - j) === 1 ? -1 : 0)),
  );
const chainValue = (n: number, j: number) => 2 - 2 * Math.cos((j * Math.PI) / (n + 1));

test('the eigenvalues of a chain with one diagonal beside the main one are those of the closed form', () => {
  const n = 24;
  const { values, vectors } = tridiagonalEigen(new Array(n).fill(2), new Array(n - 1).fill(-1));
  values.forEach((value, i) => {
    expect(value).toBeCloseTo(chainValue(n, n - i), 12);
  });
  for (const [i, vector] of vectors.entries()) {
    const image = chain(n).map((row) => row.reduce((sum, part, k) => sum + part * (vector[k] ?? 0), 0));
    image.forEach((part, k) => {
      expect(part).toBeCloseTo((values[i] ?? 0) * (vector[k] ?? 0), 11);
    });
  }
});

test('a matrix of one row and one without coupling need no sweep', () => {
  expect(tridiagonalEigen([7], []).values).toEqual([7]);
  expect(tridiagonalEigen([1, 3, 2], [0, 0]).values).toEqual([3, 2, 1]);
});

test('the lowest values of a chain are found, with vectors of stiffness one', () => {
  const n = 60;
  const stiffness = chain(n);
  const found = lowestModes(factored(stiffness), profile(diagonal(new Array(n).fill(1))), 8);
  expect(found.values).toHaveLength(8);
  found.values.forEach((value, i) => {
    expect(value / chainValue(n, i + 1)).toBeCloseTo(1, 11);
  });
  const whole = profile(stiffness);
  for (const [i, a] of found.vectors.entries()) {
    const image = multiplyProfile(whole, a);
    for (const [j, b] of found.vectors.entries()) {
      const product = b.reduce((sum, part, k) => sum + part * (image[k] ?? 0), 0);
      expect(product).toBeCloseTo(i === j ? 1 : 0, 7);
    }
  }
});

test('all copies of one value are found: three chains that know nothing of each other', () => {
  const n = 15;
  const one = chain(n);
  const three = Array.from({ length: 3 * n }, (_, i) =>
    Array.from({ length: 3 * n }, (_2, j) =>
      Math.floor(i / n) === Math.floor(j / n) ? (one[i % n]?.[j % n] ?? 0) : 0,
    ),
  );
  const { values } = lowestModes(factored(three), profile(diagonal(new Array(3 * n).fill(1))), 7);
  const wanted = [1, 1, 1, 2, 2, 2, 3].map((j) => chainValue(n, j));
  values.forEach((value, i) => {
    expect(value / (wanted[i] ?? 0)).toBeCloseTo(1, 9);
  });
});

test('freedoms without mass have no value: fewer come back than are asked for', () => {
  const n = 12;
  const masses = Array.from({ length: n }, (_, i) => (i % 4 === 1 ? 2 : 0));
  const { values } = lowestModes(factored(chain(n)), profile(diagonal(masses)), 10);
  expect(values).toHaveLength(3);
  // Condensed by hand: masses at 2, 6, 10 of a string held at 0 and 13.
  const condensed = [
    [1 / 2 + 1 / 4, -1 / 4, 0],
    [-1 / 4, 1 / 4 + 1 / 4, -1 / 4],
    [0, -1 / 4, 1 / 4 + 1 / 3],
  ];
  const exact = new EigenvalueDecomposition(new Matrix(condensed)).realEigenvalues
    .map((value) => value / 2)
    .sort((a, b) => a - b);
  values.forEach((value, i) => {
    expect(value).toBeCloseTo(exact[i] ?? Number.NaN, 11);
  });
});

test('nothing is asked for, nothing is found', () => {
  expect(lowestModes(factored(chain(3)), profile(diagonal([1, 1, 1])), 0).values).toEqual([]);
  expect(lowestModes(factored(chain(3)), profile(diagonal([0, 0, 0])), 2).values).toEqual([]);
});

test('values far apart in size are all found', () => {
  const masses = [1e6, 1, 1e-6];
  const stiffness = diagonal([1, 1, 1]);
  const { values } = lowestModes(factored(stiffness), profile(diagonal(masses)), 3);
  expect(values.map((value) => Math.round(Math.log10(value)))).toEqual([-6, 0, 6]);
});
