import fc from 'fast-check';
import { EigenvalueDecomposition, inverse, Matrix, SingularValueDecomposition } from 'ml-matrix';
import { expect, test } from 'vitest';
import { gaussLegendre } from '../../src/algebra/gauss-legendre.js';
import { largestOnUnit } from '../../src/algebra/largest-on-unit.js';
import { orthogonalComplement, product, singularValues } from '../../src/algebra/singular-values.js';
import { symmetricInverse } from '../../src/algebra/small-inverse.js';
import { solveSmall } from '../../src/algebra/small-solve.js';
import { symmetricEigen } from '../../src/algebra/symmetric-eigen.js';

/** Multiples of a thousandth: denormal numbers upset the general library. */
const number = fc.integer({ min: -3000, max: 3000 }).map((value) => value / 1000);
const square = (n: number) => fc.array(number, { minLength: n * n, maxLength: n * n });

test('singular values are those of a general library, and the vectors rebuild the matrix', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 5 }),
      fc.array(number, { minLength: 30, maxLength: 30 }),
      (rows, numbers) => {
        const lines = Array.from({ length: rows }, (_, i) =>
          Float64Array.from(numbers.slice(6 * i, 6 * i + 6)),
        );
        fc.pre(lines.every((line) => product(line, line) > 1e-6));
        const ours = singularValues(lines, 1e-9);
        const theirs = new SingularValueDecomposition(new Matrix(lines.map((line) => [...line])), {
          autoTranspose: true,
        }).diagonal;
        const kept = theirs.filter((value) => value > 1e-9 * Math.max(...theirs));
        [...ours.values]
          .sort((a, b) => b - a)
          .forEach((value, i) => {
            expect(Math.abs(value - (kept[i] ?? Number.NaN))).toBeLessThan(1e-9);
          });
        lines.forEach((line, r) => {
          line.forEach((value, c) => {
            const rebuilt = ours.values.reduce(
              (sum, s, k) => sum + s * (ours.left[k]?.[r] ?? 0) * (ours.right[k]?.[c] ?? 0),
              0,
            );
            expect(Math.abs(rebuilt - value)).toBeLessThan(1e-8);
          });
        });
      },
    ),
  );
});

test('a row said twice counts once', () => {
  const row = Float64Array.from([1, 2, 0, 0, 0, 3]);
  expect(
    singularValues([row, row.map((value) => -2 * value), Float64Array.from([0, 0, 1, 0, 0, 0])], 1e-9).rank,
  ).toBe(2);
});

test('the complement is orthonormal, square to what is taken, and keeps plain axes plain', () => {
  const taken = singularValues(
    [Float64Array.from([1, 1, 0, 0, 0, 0]), Float64Array.from([0, 0, 0, 1, 0, 2])],
    1e-9,
  ).right;
  const basis = orthogonalComplement(taken, 6);
  expect(basis).toHaveLength(4);
  const all = [...taken, ...basis];
  all.forEach((a, i) => {
    all.forEach((b, j) => {
      expect(product(a, b)).toBeCloseTo(i === j ? 1 : 0, 14);
    });
  });
  const plain = basis.filter((vector) => [...vector].filter((value) => Math.abs(value) > 1e-12).length === 1);
  expect(plain).toHaveLength(2);
});

test('the inverse of a positive matrix with mixed sizes is that of a general library', () => {
  fc.assert(
    fc.property(square(4), (numbers) => {
      const a = new Matrix(Array.from({ length: 4 }, (_, i) => numbers.slice(4 * i, 4 * i + 4)));
      const size = Matrix.diag([1, 1e3, 1e-3, 10]);
      const positive = size.mmul(a.mmul(a.transpose()).add(Matrix.eye(4))).mmul(size);
      const exact = inverse(positive);
      const ours = symmetricInverse(Float64Array.from(positive.to1DArray()), 4);
      exact.to1DArray().forEach((value, i) => {
        const scale = Math.sqrt(exact.get(i >> 2, i >> 2) * exact.get(i & 3, i & 3));
        expect(Math.abs((ours[i] ?? Number.NaN) - value) / scale).toBeLessThan(1e-9);
      });
    }),
  );
});

test('a matrix that is not positive has no inverse here', () => {
  expect(() => symmetricInverse(Float64Array.from([1, 2, 2, 1]), 2)).toThrow('algebra.not-positive');
  expect(() => symmetricInverse(Float64Array.from([0]), 1)).toThrow('algebra.not-positive');
});

test('eigenvalues of a symmetric matrix are those of a general library, and the vectors are right', () => {
  fc.assert(
    fc.property(square(6), (numbers) => {
      const a = new Matrix(Array.from({ length: 6 }, (_, i) => numbers.slice(6 * i, 6 * i + 6)));
      const symmetric = a.add(a.transpose());
      const ours = symmetricEigen(Float64Array.from(symmetric.to1DArray()), 6);
      const theirs = new EigenvalueDecomposition(symmetric).realEigenvalues.sort((p, q) => p - q);
      ours.values.forEach((value, i) => {
        expect(Math.abs(value - (theirs[i] ?? Number.NaN))).toBeLessThan(1e-10);
        const vector = ours.vectors[i] ?? new Float64Array(6);
        const image = symmetric.mmul(Matrix.columnVector([...vector])).to1DArray();
        image.forEach((part, r) => {
          expect(Math.abs(part - value * (vector[r] ?? 0))).toBeLessThan(1e-10);
        });
      });
    }),
  );
});

test('elimination with exchange of rows solves, and says when it cannot', () => {
  expect([...(solveSmall(Float64Array.from([0, 2, 1, 1]), Float64Array.from([4, 3])) ?? [])]).toEqual([1, 2]);
  expect(solveSmall(Float64Array.from([1, 2, 2, 4]), Float64Array.from([1, 1]))).toBeUndefined();
});

test.each([1, 4, 10, 20])(
  '%i Gauss points are exact for polynomials of twice that degree less one',
  (count) => {
    const { points, weights } = gaussLegendre(count);
    for (let degree = 0; degree < 2 * count; degree++) {
      const sum = points.reduce((total, x, i) => total + (weights[i] ?? 0) * x ** degree, 0);
      expect(Math.abs(sum - 1 / (degree + 1))).toBeLessThan(1e-14);
    }
    const beyond = points.reduce((total, x, i) => total + (weights[i] ?? 0) * (2 * x - 1) ** (2 * count), 0);
    expect(Math.abs(beyond - 1 / (2 * count + 1))).toBeGreaterThan(1e-13);
  },
);

test('the largest value of a hump between samples is found, and ends win ties', () => {
  const hump = largestOnUnit((x) => -((x - 0.37) ** 2), 8);
  expect(hump.at).toBeCloseTo(0.37, 7);
  expect(largestOnUnit((x) => x, 8)).toEqual({ at: 1, value: 1 });
  expect(largestOnUnit(() => 5, 8)).toEqual({ at: 0, value: 5 });
});
