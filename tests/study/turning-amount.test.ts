import { expect, test } from 'vitest';
import { turningAmount } from '../../src/study/bands/turning-amount.js';

const search = (ratio: (amount: number) => number, side: 1 | -1) =>
  turningAmount(async (amount) => ratio(amount), ratio(0), side, ratio(side));

test('a straight ratio is found at once', async () => {
  expect(await search((s) => 0.9 + 0.2 * s, 1)).toBeCloseTo(0.5, 4);
  expect(await search((s) => 1.1 + 0.2 * s, -1)).toBeCloseTo(-0.5, 4);
});

test('a bent ratio and one with a corner are found, on the side that meets', async () => {
  const bent = (s: number) => 0.8 + 0.1 * s + 0.3 * s * s;
  const found = (await search(bent, 1)) ?? Number.NaN;
  expect(bent(found)).toBeLessThanOrEqual(1 + 1e-5);
  expect(bent(found)).toBeGreaterThan(1 - 1e-3);
  const corner = (s: number) => Math.max(0.9, 0.5 + s);
  expect(await search(corner, 1)).toBeCloseTo(0.5, 3);
});

test('a ratio that turns more than once gives no single value', async () => {
  const wave = (s: number) => (s < 0.2 ? 0.9 : s < 0.5 ? 1.1 : s < 0.8 ? 0.9 : 1.2);
  expect(await search(wave, 1)).toBeUndefined();
});

test('where nothing can be worked out on the way, no value is given', async () => {
  expect(await search((s) => (s > 0.2 && s < 0.9 ? Number.NaN : 0.9 + 0.2 * s), 1)).toBeUndefined();
});
