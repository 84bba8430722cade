// Source   DOE Fundamentals Handbook, Thermodynamics, Heat Transfer, and Fluid Flow, part HT-03, p. 50, example on
//          centrifugal pump laws.
// Printed  400 gpm, 48 ft and 45 kW at 1800 rpm become 800 gpm, 192 ft and 360 kW at 3600 rpm.
// Checked  by hand: 400 × 2, 48 × 4, 45 × 8.
// Limits   one point of the curve, equal efficiency at both speeds.
import { expect, test } from 'vitest';
import { atOtherSpeed } from '../../src/mechanics/start/affinity.js';
import { withinPrintedRounding } from './printed-value.js';

const GALLON_A_MINUTE = (231 * 0.0254 ** 3) / 60;
const FOOT = 0.3048;
const slow = { flow: 400 * GALLON_A_MINUTE, head: 48 * FOOT, power: 45_000 };
const fast = atOtherSpeed(slow, 3600 / 1800);

test.each([
  ['flow', fast.flow, { text: '800', lastDigit: 1, toSi: GALLON_A_MINUTE }],
  ['head', fast.head, { text: '192', lastDigit: 1, toSi: FOOT }],
  ['power', fast.power, { text: '360', lastDigit: 1, toSi: 1000 }],
])('twice the speed gives the printed %s', (_what, ours, printed) => {
  expect(withinPrintedRounding(ours, printed)).toBe(true);
});

test('the check can fail: a head that grows with the cube is refused', () => {
  expect(withinPrintedRounding(slow.head * 2 ** 3, { text: '192', lastDigit: 1, toSi: FOOT })).toBe(false);
});

test('torque grows with the square of the speed, as power over speed', () => {
  expect(fast.power / 2 / slow.power).toBeCloseTo(2 ** 2, 12);
});
