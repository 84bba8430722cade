// Source   NIOSH Applications Manual for the Revised NIOSH Lifting Equation (1994), a public manual.
// Printed  load constant 51 lb (23 kg); multipliers 10/H, 1 - 0.0075 |V - 30|, 0.82 + 1.8/D with H, V, D in inches. Worked
//          from them: H 15, V 30, D 10, all else ideal: 51 × 0.667 = 34.0 lb.
// Checked  by hand: in metres 0.25/0.381 = 0.656, 23 kg × 0.656 × 0.99 = 15.0 kg, 33.0 lb: the metric form rounds its
//          constants, so that both forms agree to the 3 % that 25 cm and 10 in, and 23 kg and 51 lb, are apart.
import { expect, test } from 'vitest';
import { LOAD_CONSTANT, recommendedWeight } from '../../src/model/room/hand-lift.js';
import { relativeError, withinPrintedRounding } from './printed-value.js';

const INCH = 0.0254;
const POUND = 0.45359237;
const METRIC_ROUNDING = 0.03;

/** The form in inches and pounds, as printed. */
const inPounds = (h: number, v: number, d: number) =>
  51 * Math.min(1, 10 / h) * (1 - 0.0075 * Math.abs(v - 30)) * Math.min(1, 0.82 + 1.8 / d);

test('the form in inches gives the 34.0 lb worked from it', () => {
  expect(
    withinPrintedRounding(inPounds(15, 30, 10) * POUND, { text: '34.0', lastDigit: 0.1, toSi: POUND }),
  ).toBe(true);
});

test.each([
  [10, 30, 10],
  [15, 30, 10],
  [15, 30, 30],
  [20, 50, 30],
  [12, 10, 40],
])('both forms agree at %s, %s and %s in', (h, v, d) => {
  const ours = recommendedWeight({ horizontal: h * INCH, vertical: v * INCH, travel: d * INCH });
  expect(relativeError(ours, inPounds(h, v, d) * POUND)).toBeLessThan(METRIC_ROUNDING);
});

test('the ideal posture allows the load constant', () => {
  const ours = recommendedWeight({ horizontal: 0.25, vertical: 0.75, travel: 0.25 });
  expect(ours).toBeCloseTo(LOAD_CONSTANT, 9);
  expect(withinPrintedRounding(ours, { text: '23', lastDigit: 1, toSi: 1 })).toBe(true);
});

test('a reach taken in the wrong unit would be seen', () => {
  const wrong = recommendedWeight({ horizontal: 0.15, vertical: 30 * INCH, travel: 10 * INCH });
  expect(relativeError(wrong, inPounds(15, 30, 10) * POUND)).toBeGreaterThan(METRIC_ROUNDING);
});

test('beyond the reach of the equation nothing is allowed', () => {
  expect(recommendedWeight({ horizontal: 0.64, vertical: 0.75, travel: 0.3 })).toBe(0);
  expect(recommendedWeight({ horizontal: 0.3, vertical: 1.8, travel: 0.3 })).toBe(0);
});
