import { expect, test } from 'vitest';
import { pumpModes } from '../../../src/analysis/motion/pump-modes.js';
import { solveInstallation } from '../../../src/analysis/solve-installation.js';
import { calibrateBracket } from '../../../src/study/bounds/calibrate.js';
import { changed, fileText, installationOf } from '../../input/sample-text.js';

const pool = fileText('../../samples/pool-hot-water.yaml');
const withBracket = (frequency: number) =>
  solveInstallation(installationOf(changed(pool, ['frequency: 95 Hz', `frequency: ${frequency} Hz`])));
const leading = (subject: ReturnType<typeof withBracket>) =>
  [...pumpModes(subject)].sort((a, b) => b.share - a.share)[0]?.mode.frequency ?? 0;

test('a knock read on a line with another bracket finds that bracket', () => {
  const truth = withBracket(80);
  const found = calibrateBracket(withBracket(95), leading(truth));
  expect((found?.bracketFrequency ?? 0) / 80).toBeCloseTo(1, 2);
  // Stiffness by the square of the frequency.
  expect((found?.factor ?? 0) / (80 / 95) ** 2).toBeCloseTo(1, 2);
  expect(found?.isUsual).toBe(true);
  expect(found?.frequencies.some((one) => Math.abs(one / leading(truth) - 1) < 2e-3)).toBe(true);
});

test('a fit that asks for much less than was stated is said to be unusual', () => {
  const found = calibrateBracket(withBracket(95), leading(withBracket(55)));
  expect(found?.factor).toBeLessThan(0.5);
  expect(found?.isUsual).toBe(false);
});

test('a frequency that no bracket gives is not fitted', () => {
  expect(calibrateBracket(withBracket(95), 300)).toBeUndefined();
  expect(calibrateBracket(withBracket(95), 0)).toBeUndefined();
});
