import { expect, test } from 'vitest';
import { latinHypercube, seedOf } from '../../src/study/bands/latin-hypercube.js';

test('every column has one sample in each stratum', () => {
  const rows = latinHypercube(5, 40, 7);
  for (let column = 0; column < 5; column++) {
    const strata = rows.map((row) => Math.floor((((row[column] ?? Number.NaN) + 1) / 2) * 40));
    expect([...strata].sort((a, b) => a - b)).toEqual(Array.from({ length: 40 }, (_, index) => index));
  }
});

test('columns go their own ways', () => {
  const rows = latinHypercube(2, 400, 11);
  const product = rows.reduce((sum, [a = 0, b = 0]) => sum + a * b, 0) / 400;
  // Of two independent columns of variance 1/3 each, the mean product is within four standard errors of nothing.
  expect(Math.abs(product)).toBeLessThan((4 * (1 / 3)) / 20);
});

test('the same seed gives the same samples, another gives others', () => {
  expect(latinHypercube(3, 10, 5)).toEqual(latinHypercube(3, 10, 5));
  expect(latinHypercube(3, 10, 5)).not.toEqual(latinHypercube(3, 10, 6));
});

test('the seed follows the fingerprint of the input', () => {
  expect(seedOf(`ffffffff${'0'.repeat(56)}`)).toBe(2 ** 32 - 1);
  expect(seedOf(`00000001${'f'.repeat(56)}`)).toBe(1);
});
