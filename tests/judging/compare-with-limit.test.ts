import { describe, expect, test } from 'vitest';
import {
  compareWithLimit,
  isPlainlyLarger,
  isWithinLimit,
  judgeForbidden,
  type Sense,
} from '../../src/judging/compare-with-limit.js';

const senses: readonly Sense[] = ['at most', 'within', 'at least'];

describe('a size that may not be above its limit', () => {
  test('meets below and at the limit, exceeds above it, with the ratio of the two', () => {
    expect(compareWithLimit({ demand: 50, limit: 200 })).toEqual({
      demand: 50,
      limit: 200,
      ratio: 0.25,
      verdict: 'meets',
    });
    expect(compareWithLimit({ demand: 200, limit: 200 }).verdict).toBe('meets');
    expect(compareWithLimit({ demand: 300, limit: 200 })).toMatchObject({ ratio: 1.5, verdict: 'exceeds' });
  });

  test('the last binary digits do not exceed, and nothing more is forgiven', () => {
    expect(compareWithLimit({ demand: 0.1 + 0.2, limit: 0.3 }).verdict).toBe('meets');
    expect(compareWithLimit({ demand: 0.3 * (1 + 1e-8), limit: 0.3 }).verdict).toBe('exceeds');
  });

  test('a size below nothing is none', () => {
    expect(compareWithLimit({ demand: -1, limit: 200 })).toMatchObject({
      verdict: 'cannot-tell',
      why: 'demand-unusable',
    });
  });
});

test('a number to either side of nothing is compared by its size', () => {
  expect(compareWithLimit({ demand: -0.5, limit: 1, sense: 'within' })).toMatchObject({
    demand: -0.5,
    ratio: 0.5,
    verdict: 'meets',
  });
  expect(compareWithLimit({ demand: -1.5, limit: 1, sense: 'within' }).verdict).toBe('exceeds');
});

describe('a number that may not be below its limit', () => {
  test('meets at it and above it, exceeds below it, with the limit over the number', () => {
    expect(compareWithLimit({ demand: 4, limit: 3, sense: 'at least' })).toMatchObject({
      ratio: 0.75,
      verdict: 'meets',
    });
    expect(compareWithLimit({ demand: 0.3, limit: 0.1 + 0.2, sense: 'at least' }).verdict).toBe('meets');
    expect(compareWithLimit({ demand: 2, limit: 3, sense: 'at least' }).verdict).toBe('exceeds');
  });

  test.each([0, -0, -5])('%d never reaches a least value, and has no ratio', (demand) => {
    const outcome = compareWithLimit({ demand, limit: 3, sense: 'at least' });
    expect(outcome.verdict).toBe('exceeds');
    expect(outcome.ratio).toBeUndefined();
  });
});

describe.each(senses)('%s', (sense) => {
  test('a missing number is neither a pass nor a fail', () => {
    expect(compareWithLimit({ demand: 1, limit: undefined, sense })).toEqual({
      demand: 1,
      verdict: 'cannot-tell',
      why: 'limit-missing',
    });
    expect(compareWithLimit({ demand: undefined, limit: 1, sense })).toEqual({
      limit: 1,
      verdict: 'cannot-tell',
      why: 'demand-missing',
    });
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('no limit is %d', (limit) => {
    expect(compareWithLimit({ demand: 1, limit, sense })).toMatchObject({
      verdict: 'cannot-tell',
      why: 'limit-unusable',
    });
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('no demand is %d', (demand) => {
    expect(compareWithLimit({ demand, limit: 1, sense })).toEqual({
      limit: 1,
      verdict: 'cannot-tell',
      why: 'demand-unusable',
    });
  });
});

test('what must not happen exceeds where it does, whatever its size', () => {
  expect(judgeForbidden({ happens: true, demand: 3 })).toEqual({ verdict: 'exceeds', demand: 3 });
  expect(judgeForbidden({ happens: false })).toEqual({ verdict: 'meets' });
  expect(judgeForbidden({ happens: undefined })).toMatchObject({ verdict: 'cannot-tell' });
  expect(judgeForbidden({ happens: false, demand: Number.NaN })).toMatchObject({ verdict: 'cannot-tell' });
});

test('"not a number" is within no limit and larger than nothing', () => {
  expect(isWithinLimit(Number.NaN)).toBe(false);
  expect(isPlainlyLarger(Number.NaN, 0)).toBe(false);
});

test('of numbers that differ in their last digits none is larger', () => {
  expect(isPlainlyLarger(0.1 + 0.2, 0.3)).toBe(false);
  expect(isPlainlyLarger(0.301, 0.3)).toBe(true);
});
