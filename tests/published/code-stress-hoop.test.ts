// Source   ASME B31.3, appendix S, example 1 (S301), text of the example as reproduced on a page
// Printed  P = 3795 kPa, D = 406.4 mm, 288 °C, S = 125 MPa, E = 1, Y = 0.4: t = 6.10 mm, with 1.59 mm corrosion allowance
//          7.69 mm.
// Checked  by hand: 3795 × 406.4 / [2 (125 000 + 1518)] = 6.095 mm.
// Limits   pressure design alone; loads and geometry of the example were not at hand.
import { expect, test } from 'vitest';
import { hoopStress, pressureDesignWall } from '../../src/mechanics/stress/code-stress-hoop.js';
import { withinPrintedRounding } from './printed-value.js';

const MILLIMETRE = 0.001;
const design = { pressure: 3.795e6, outsideDiameter: 0.4064, allowable: 125e6, quality: 1, coefficient: 0.4 };

test('the wall that pressure asks for', () => {
  const wall = pressureDesignWall(design);
  expect(withinPrintedRounding(wall, { text: '6.10', lastDigit: 0.01, toSi: MILLIMETRE })).toBe(true);
});

test('the wall with corrosion allowance, in millimetres', () => {
  // The example adds the allowance to the rounded 6.10, so the sum differs from the exact one by up to its rounding.
  const wall = 0.0061 + 0.00159;
  expect(Math.abs(pressureDesignWall(design) + 0.00159 - wall)).toBeLessThan(0.005 * MILLIMETRE * 1.0001);
  expect(withinPrintedRounding(wall, { text: '7.69', lastDigit: 0.01, toSi: MILLIMETRE })).toBe(true);
});

test('the hoop stress of that wall is the allowable stress, less what the coefficient grants', () => {
  const wall = pressureDesignWall(design);
  const stress = hoopStress({
    tube: { outsideDiameter: design.outsideDiameter, wall },
    pressure: design.pressure,
  });
  expect(stress).toBeCloseTo(125e6 + 0.4 * 3.795e6, 0);
});

test('the check can fail: without the coefficient the wall is refused', () => {
  const wall = pressureDesignWall({ ...design, coefficient: 0 });
  expect(withinPrintedRounding(wall, { text: '6.10', lastDigit: 0.01, toSi: MILLIMETRE })).toBe(false);
});
