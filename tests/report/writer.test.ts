import { describe, expect, test } from 'vitest';
import { createWriter } from '../../src/report/writer.js';

const us = createWriter('us');
const si = createWriter('si');
const POUND = 4.4482216152605;

describe('one table of numbers', () => {
  test('each number has three digits, but none is finer than the largest is worth', () => {
    const show = us.scaled('force', [1244.4 * POUND, 12.34 * POUND, 0.3 * POUND]);
    expect([1244.4, 87.65, 12.34, 0.3].map((pounds) => show(pounds * POUND))).toEqual([
      '1,240',
      '88',
      '12',
      '0',
    ]);
  });

  test('a negative number keeps its sign, and what rounds to nothing loses it', () => {
    const show = us.scaled('force', [-1244.4 * POUND]);
    expect(show(-1244.4 * POUND)).toBe('−1,240');
    expect(show(-0.2 * POUND)).toBe('0');
  });

  test('forces in SI stand in one unit, whatever their size', () => {
    const show = si.scaled('force', [12_340, 456]);
    expect([12_340, 456].map(show)).toEqual(['12.3', '0.46']);
    expect(si.unit('force')).toBe('kN');
  });

  test('more digits are printed where a sum is to be checked', () => {
    const show = us.scaled('force', [4321.57 * POUND], { significant: 5 });
    expect(show(4321.57 * POUND)).toBe('4,321.6');
  });

  test('a table of zeros prints zeros, and a missing number a dash', () => {
    const show = us.scaled('force', [0, 0]);
    expect([show(0), show(undefined), show(Number.NaN)]).toEqual(['0', '–', '–']);
  });
});

describe('ratios', () => {
  test.each([
    [0.8312, '0.83'],
    [1.004, '1.0040'],
    [0.996, '0.9960'],
    [1, '1.00'],
    [12.34, '12.3'],
    [undefined, '–'],
  ])('%s prints as %s', (ratio, text) => {
    expect(us.ratio(ratio)).toBe(text);
  });
});

describe('directions', () => {
  const third = Math.PI / 6;
  test.each([
    [[0, 1, 0], 'north'],
    [[0, 0, 1], 'up'],
    [[0, 0, -1], 'down'],
    [[-Math.SQRT1_2, -Math.SQRT1_2, 0], 'south-west'],
    [[0, -1, 0], 'south'],
    [[Math.sin(third), Math.cos(third), 0], 'bearing 30°'],
    [[0, Math.cos(third), Math.sin(third)], 'north, rising 30°'],
    [[0, Math.cos(third), -Math.sin(third)], 'north, falling 30°'],
  ] as const)('%j is %s', (direction, words) => {
    expect(us.bearing(direction)).toBe(words);
  });
});

test('a very small number prints as a power of ten', () => {
  expect(us.power(3.24e-15)).toBe('3.2 × 10⁻¹⁵');
});

test('a quantity that is not there prints as a dash in both systems', () => {
  expect(us.quantity(undefined, 'length')).toBe('–');
  expect(si.number(Number.POSITIVE_INFINITY, 'force')).toBe('–');
});
