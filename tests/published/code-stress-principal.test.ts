// Source   S. Timoshenko, Strength of Materials, Part I, 3rd ed., 1955, p. 299, problem 2, as reproduced in an open
//          collection of finite-element examples
// Printed  a bar with section modulus 10 in³ carries 250 lb at a height of 25 ft on an arm of 3 ft: bending stress 7500
//          psi, torsional shear 450 psi, principal stress 7527 psi, largest shear stress 3777 psi.
// Checked  by hand: 250 × 300 / 10 = 7500; 250 × 36 / 20 = 450; 3750 + √(3750² + 450²) = 7526.9.
// Limits   plane stress at the surface of the bar; the direct shear of the load is left out, as in the problem.
import { expect, test } from 'vitest';
import { maximumShearStress, principalStress } from '../../src/mechanics/stress/nozzle-stress.js';
import { withinPrintedRounding } from './printed-value.js';

const INCH = 0.0254;
const POUND_FORCE = 4.4482216152605;
const PSI = POUND_FORCE / INCH ** 2;

const modulus = 10 * INCH ** 3;
const force = 250 * POUND_FORCE;
const stress = {
  normal: (force * 25 * 12 * INCH) / modulus,
  shear: (force * 3 * 12 * INCH) / (2 * modulus),
};

test('the principal stress of a bent and twisted bar', () => {
  const printed = { text: '7527', lastDigit: 1, toSi: PSI };
  expect(withinPrintedRounding(principalStress(stress), printed)).toBe(true);
});

test('its largest shear stress', () => {
  const printed = { text: '3777', lastDigit: 1, toSi: PSI };
  expect(withinPrintedRounding(maximumShearStress(stress), printed)).toBe(true);
});

test('the check can fail: without the twist the principal stress is refused', () => {
  const printed = { text: '7527', lastDigit: 1, toSi: PSI };
  expect(withinPrintedRounding(principalStress({ ...stress, shear: 0 }), printed)).toBe(false);
});
